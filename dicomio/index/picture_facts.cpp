#include "dicomio/index/picture_facts.h"

#include "dicomio/angiography/xray_facts.h"
#include "dicomio/index/picture_needs.h"
#include "dicomio/ultrasound/us_facts.h"
#include "dicomio/ultrasound/us_volume.h"

#include <algorithm>
#include <memory>

namespace gauge::dicomio {
namespace {

/// Regions of one picture may be calibrated alike: the first with lengths speaks for it.
std::optional<ListedScale> regionScale(const std::vector<core::EchoRegion>& regions) {
    for (const core::EchoRegion& region : regions)
        if (region.scale)
            return ListedScale{"ultrasound-region", region.scale->mmPerPixel,
                               region.scale->relativeUncertainty};
    return std::nullopt;
}

void takeFlat(const ScannedFile& scanned, PictureFacts& facts) {
    const PixelFormat& format = *scanned.format;
    UltrasoundFacts told = usFacts(scanned.dataset, format.columns, format.rows, format.frames);
    facts.scale = regionScale(told.regions);
    facts.regions = std::move(told.regions);
    facts.frameTimesMs = std::move(told.times.startMs);
    if (told.angle) facts.angleDeg = told.angle->deg;
    facts.notices = std::move(told.notices);
    // The series says it once for all its pictures.
    std::erase_if(facts.notices, [](const core::Notice& n) { return n.code == "no-length-scale"; });
}

/// Each frame has the time of its moment; nothing unless all are told.
std::vector<double> timesOf(const std::vector<VolumeMoment>& moments, int frames) {
    std::vector<double> times(static_cast<std::size_t>(frames), -1.0);
    for (const VolumeMoment& moment : moments)
        for (const int frame : moment.frames)
            if (moment.offsetMs) times[static_cast<std::size_t>(frame)] = *moment.offsetMs;
    return std::find(times.begin(), times.end(), -1.0) == times.end() ? times : std::vector<double>();
}

void takeVolume(const ScannedFile& scanned, PictureFacts& facts) {
    const auto volume = UltrasoundVolume::open(std::make_shared<const ScannedFile>(scanned));
    if (!volume) {
        facts.volumeError = volume.error();
        return;
    }
    facts.volumeSpacingMm = volume->spacingMm();
    facts.scale = ListedScale{"volume", volume->spacingMm().head<2>(), std::nullopt};
    for (const EchoTimePoint& point : volume->timePoints())
        facts.moments.push_back({point.offsetMs, point.frames});
    facts.frameTimesMs = timesOf(facts.moments, facts.frames);
    facts.notices = volume->notices();
}

void takeXray(const ScannedFile& scanned, PictureFacts& facts) {
    const PixelFormat& format = *scanned.format;
    XrayFacts told = xrayFacts(scanned.dataset, format.columns, format.rows, format.frames);
    facts.frameTimesMs = std::move(told.times.startMs);
    facts.scaleText = std::move(told.scaleText);
    facts.notices = std::move(told.notices);
    std::erase_if(facts.notices, [](const core::Notice& n) { return n.code == "no-length-scale"; });
    if (told.frames.empty()) return;
    const XrayFrame& first = told.frames.front();
    if (first.scale)
        facts.scale = ListedScale{std::string(words(told.scaleSource)), first.scale->planar.mmPerPixel,
                                  first.scale->planar.relativeUncertainty};
    facts.positioner = first.angles;
    if (told.moving) facts.positionerEnd = told.frames.back().angles;
}

} // namespace

bool isVelocityOnly(const PictureFacts& picture) {
    return !picture.scale &&
           std::any_of(picture.regions.begin(), picture.regions.end(), [](const core::EchoRegion& region) {
               return region.kind == core::EchoRegionKind::Spectral &&
                      region.y.unit == core::PhysicalUnit::CentimetrePerSecond;
           });
}

PictureFacts pictureFacts(const ScannedFile& scanned, const std::string& kind) {
    PictureFacts facts;
    facts.sopInstanceUid = scanned.dataset.text(tags::SopInstanceUid);
    facts.frames = scanned.format->frames;
    if (kind == "x-ray")
        takeXray(scanned, facts);
    else if (isUltrasoundVolume(scanned.sopClassUid()))
        takeVolume(scanned, facts);
    else
        takeFlat(scanned, facts);
    return facts;
}

} // namespace gauge::dicomio
