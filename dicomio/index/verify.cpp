#include "dicomio/index/verify.h"

#include "core/parallel/parallel_for.h"
#include "dicomio/index/series_builder.h"
#include "dicomio/index/shared_progress.h"
#include "dicomio/pixel/frame_reader.h"

#include <optional>

namespace gauge::dicomio {
namespace {

constexpr double kIndexShare = 0.2;

/// The first thing that hinders decoding, if any.
std::optional<core::Error> fault(const std::filesystem::path& file, const core::WorkContext& work) {
    const auto scanned = scanFile(file);
    if (!scanned) return scanned.error();
    if (!scanned->pixels) return std::nullopt;
    const auto reader = FrameReader::open(*scanned);
    if (!reader) return reader.error();
    for (int frame = 0; frame < scanned->format->frames && !work.stopped(); ++frame) {
        const auto values = reader->readValues(frame);
        if (values) continue;
        core::Error error = values.error();
        if (scanned->format->frames > 1)
            error.message = "Frame " + std::to_string(frame + 1) + ": " + error.message;
        return error;
    }
    return std::nullopt;
}

} // namespace

core::Result<void> verifyImages(const std::vector<IndexedFile>& files, SeriesIndex& index,
                                const core::WorkContext& work) {
    std::vector<std::optional<core::Error>> faults(files.size());
    SharedProgress progress(work, files.size(), kIndexShare, 1.0);
    core::parallelFor(files.size(), 1, [&](std::size_t begin, std::size_t end) {
        for (std::size_t i = begin; i < end && !work.stopped(); ++i) {
            faults[i] = fault(files[i].file, work);
            progress.add(1);
        }
    });
    if (work.stopped())
        return core::failure(core::ErrorCode::Cancelled, "Decoding the images was cancelled.");
    std::vector<std::size_t> good(index.series.size()), bad(index.series.size());
    for (std::size_t i = 0; i < files.size(); ++i)
        ++(faults[i] ? bad : good)[files[i].series];
    for (std::size_t i = 0; i < files.size(); ++i) {
        if (!faults[i]) continue;
        SeriesEntry& series = index.series[files[i].series];
        core::Notice notice = noticeOf(*faults[i]);
        notice.text = "Cannot decode " + files[i].file.string() + ": " + notice.text;
        notice.facts.push_back({"file", files[i].file.string()});
        const bool ct = series.kind == "ct" || series.kind == "ct-enhanced";
        addMessage(series, std::move(notice), ct || good[files[i].series] == 0);
    }
    return {};
}

} // namespace gauge::dicomio
