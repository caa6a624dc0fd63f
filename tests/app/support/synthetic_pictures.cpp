#include "tests/app/support/synthetic_pictures.h"

#include "tests/app/support/synthetic_session.h"

#include <cmath>

namespace gauge::fixture {
namespace {

constexpr int kEchoColumns = 160, kEchoRows = 120, kXraySize = 100;

core::Error noSuchFrame() {
    return {core::ErrorCode::InvalidArgument, "There is no such frame.", {}, nullptr};
}

class EchoFrames : public core::FrameSource {
public:
    EchoFrames(int count, double widthMm) : m_count(count), m_widthMm(widthMm) {}
    int columns() const override { return kEchoColumns; }
    int rows() const override { return kEchoRows; }
    int count() const override { return m_count; }
    bool isColour() const override { return true; }
    core::Result<core::RgbFrame> rgb(int frame) const override {
        if (frame < 0 || frame >= m_count) return tl::unexpected(noSuchFrame());
        core::RgbFrame picture{kEchoColumns, kEchoRows, {}};
        for (int y = 0; y < kEchoRows; ++y)
            for (int x = 0; x < kEchoColumns; ++x) {
                const bool blood = std::abs(x - kEchoColumns / 2) * kEchoPixelMm < m_widthMm / 2;
                const auto grey = static_cast<std::uint8_t>(x + y == 0 ? frame : blood ? 20 : 150);
                picture.samples.insert(picture.samples.end(), {grey, grey, grey});
            }
        return picture;
    }
    core::Result<core::GreyFrame> grey(int) const override { return tl::unexpected(noSuchFrame()); }

private:
    int m_count;
    double m_widthMm;
};

class XrayFrames : public core::FrameSource {
public:
    explicit XrayFrames(int count) : m_count(count) {}
    int columns() const override { return kXraySize; }
    int rows() const override { return kXraySize; }
    int count() const override { return m_count; }
    bool isColour() const override { return false; }
    core::Result<core::RgbFrame> rgb(int frame) const override {
        auto values = grey(frame);
        if (!values) return tl::unexpected(values.error());
        core::RgbFrame picture{kXraySize, kXraySize, {}};
        for (const std::int32_t v : values->values)
            picture.samples.insert(picture.samples.end(), 3, static_cast<std::uint8_t>(v / 16));
        return picture;
    }
    core::Result<core::GreyFrame> grey(int frame) const override {
        if (frame < 0 || frame >= m_count) return tl::unexpected(noSuchFrame());
        core::GreyFrame picture{kXraySize, kXraySize, std::vector<std::int32_t>(kXraySize * kXraySize, 2000)};
        for (int y = 30; y < 70; ++y)
            for (int x = 40; x < 60; ++x)
                picture.values[static_cast<std::size_t>(y * kXraySize + x)] = 800;
        return picture;
    }

private:
    int m_count;
};

void addEcho(dicomio::SeriesIndex& index, int number, std::optional<double> angleDeg) {
    dicomio::SeriesEntry& series = index.series.emplace_back();
    series.seriesUid = "2.25.9" + std::to_string(number);
    series.modality = "US";
    series.kind = "ultrasound";
    series.description = "View " + std::to_string(number);
    series.status = dicomio::SeriesStatus::Notice;
    series.stage.duringProcedure = true;
    series.acquired = dicomio::AcquisitionTime{2026, 1, 13, 36000.0 + number, std::nullopt};
    dicomio::PictureFacts picture;
    picture.sopInstanceUid = "2.25." + std::to_string(number);
    picture.frames = 20;
    picture.angleDeg = angleDeg;
    series.pictures.push_back(picture);
}

} // namespace

std::shared_ptr<const core::FrameSource> echoFrames(int count, double widthMm) {
    return std::make_shared<EchoFrames>(count, widthMm);
}

std::shared_ptr<const core::FrameSource> xrayFrames(int count) {
    return std::make_shared<XrayFrames>(count);
}

core::EchoCine echoCine(const std::string& sopInstanceUid, double angleDeg, double widthMm) {
    core::EchoCine cine;
    cine.frames = echoFrames(20, widthMm);
    cine.sopInstanceUid = sopInstanceUid;
    cine.angle = core::ProbeAngle{angleDeg, core::ProbeAngleSource::File};
    cine.times.source = core::FrameTimeSource::FrameTime;
    for (int i = 0; i < 20; ++i)
        cine.times.startMs.push_back(40.0 * i);
    cine.times.rWaveMs = {100.0, 900.0};
    core::EchoRegion region;
    region.kind = core::EchoRegionKind::Tissue;
    region.box = {0, 0, kEchoColumns - 1, kEchoRows - 1};
    region.x = {core::PhysicalUnit::Centimetre, kEchoPixelMm / 10.0, std::nullopt, 0.0};
    region.y = region.x;
    region.scale = core::PlanarScale{{kEchoPixelMm, kEchoPixelMm}, core::kRegionScaleUncertainty,
                                     core::ScaleOrigin::RegionCalibration, {}};
    cine.regions.push_back(region);
    return cine;
}

std::shared_ptr<const dicomio::SeriesIndex> indexWithPictures() {
    auto index = std::make_shared<dicomio::SeriesIndex>(*syntheticImages().index);
    index->series.front().measurable = true;
    addEcho(*index, 200, 0.0);
    addEcho(*index, 201, 45.0);
    addEcho(*index, 202, 90.0);
    addEcho(*index, 203, std::nullopt);
    addEcho(*index, 300, std::nullopt);
    dicomio::SeriesEntry& run = index->series.back();
    run.kind = "x-ray";
    run.modality = "XA";
    run.description = "RAO 30 CRA 20";
    dicomio::SeriesEntry refused;
    refused.kind = "ct";
    refused.description = "Broken";
    refused.status = dicomio::SeriesStatus::Refused;
    refused.phases.resize(1);
    refused.messages.push_back({"slice-missing", "A slice is missing between 12 and 13.", {}});
    index->series.push_back(refused);
    return index;
}

} // namespace gauge::fixture
