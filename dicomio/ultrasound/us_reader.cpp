#include "dicomio/ultrasound/us_reader.h"

#include "dicomio/pixel/scanned_frames.h"
#include "dicomio/ultrasound/us_facts.h"
#include "dicomio/ultrasound/us_volume.h"

#include <algorithm>
#include <array>
#include <string>
#include <utility>

namespace gauge::dicomio {
namespace {

using core::ErrorCode;
using core::failure;

constexpr std::array<std::string_view, 4> kFlatClasses = {
    "1.2.840.10008.5.1.4.1.1.6",   // Ultrasound Image, retired
    "1.2.840.10008.5.1.4.1.1.6.1", // Ultrasound Image
    "1.2.840.10008.5.1.4.1.1.3",   // Ultrasound Multi-frame Image, retired
    "1.2.840.10008.5.1.4.1.1.3.1", // Ultrasound Multi-frame Image
};

tl::unexpected<core::Error> cannotRead(const std::filesystem::path& path, const core::Error& cause) {
    return failure(cause.code, "Cannot read the ultrasound images of " + path.string() + ": " + cause.message,
                   cause);
}

core::Error otherKind(const ScannedFile& scanned) {
    const std::string uid = scanned.sopClassUid();
    return {ErrorCode::ObjectUnsupported,
            describe(tags::SopClassUid) + " is \"" + uid + "\", which is no flat ultrasound picture" +
                (isUltrasoundVolume(uid) ? "; it is an ultrasound volume, which is opened as a volume."
                                         : ". Choose an ultrasound file."),
            {{"tag", describe(tags::SopClassUid)}, {"value", uid}},
            nullptr};
}

} // namespace

bool isFlatUltrasound(std::string_view sopClassUid) {
    return std::find(kFlatClasses.begin(), kFlatClasses.end(), sopClassUid) != kFlatClasses.end();
}

core::Result<core::EchoCine> readUltrasound(std::shared_ptr<const ScannedFile> scanned) {
    const ScannedFile& file = *scanned;
    if (!isFlatUltrasound(file.sopClassUid())) return cannotRead(file.path, otherKind(file));
    core::EchoCine cine;
    cine.notices = file.notices;
    auto frames = openFrames(scanned, cine.notices);
    if (!frames) return cannotRead(file.path, frames.error());
    cine.frames = std::move(*frames);
    UltrasoundFacts facts =
        usFacts(file.dataset, cine.frames->columns(), cine.frames->rows(), cine.frames->count());
    cine.times = std::move(facts.times);
    cine.regions = std::move(facts.regions);
    cine.angle = facts.angle;
    cine.pixelAspect = facts.pixelAspect;
    cine.sopInstanceUid = file.dataset.text(tags::SopInstanceUid);
    cine.notices.insert(cine.notices.end(), facts.notices.begin(), facts.notices.end());
    return cine;
}

core::Result<core::EchoCine> readUltrasound(const std::filesystem::path& path) {
    auto scanned = scanFile(path);
    if (!scanned) return cannotRead(path, scanned.error());
    return readUltrasound(std::make_shared<const ScannedFile>(std::move(*scanned)));
}

} // namespace gauge::dicomio
