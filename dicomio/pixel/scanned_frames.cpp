#include "dicomio/pixel/scanned_frames.h"

#include "dicomio/pixel/colour.h"

#include <string>
#include <utility>

namespace gauge::dicomio {
namespace {

class ScannedFrames final : public core::FrameSource {
public:
    ScannedFrames(std::shared_ptr<const ScannedFile> scanned, ColourReader reader)
        : m_scanned(std::move(scanned)), m_reader(std::move(reader)) {}

    int columns() const override { return m_reader.columns(); }
    int rows() const override { return m_reader.rows(); }
    int count() const override { return m_reader.count(); }
    bool isColour() const override { return m_reader.isColour(); }

    core::Result<core::RgbFrame> rgb(int frame) const override { return m_reader.readRgb(frame); }

    core::Result<core::GreyFrame> grey(int frame) const override {
        if (isColour())
            return core::failure(core::ErrorCode::ObjectUnsupported,
                                 "Cannot read grey values: the image is in colour. Read its colours.");
        auto values = m_reader.readSamples(frame);
        if (!values) return tl::make_unexpected(values.error());
        return core::GreyFrame{columns(), rows(), std::move(*values)};
    }

private:
    std::shared_ptr<const ScannedFile> m_scanned; // the reader points into it
    ColourReader m_reader;
};

} // namespace

core::Result<std::shared_ptr<const core::FrameSource>> openFrames(std::shared_ptr<const ScannedFile> scanned,
                                                                  std::vector<core::Notice>& notices) {
    auto reader = ColourReader::open(*scanned);
    if (!reader) return tl::make_unexpected(reader.error());
    notices.insert(notices.end(), reader->notices().begin(), reader->notices().end());
    return std::make_shared<const ScannedFrames>(std::move(scanned), std::move(*reader));
}

} // namespace gauge::dicomio
