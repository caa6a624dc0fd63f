#include "dicomio/angiography/xray_reader.h"

#include "dicomio/pixel/scanned_frames.h"

#include <algorithm>
#include <array>
#include <utility>

namespace gauge::dicomio {
namespace {

using core::ErrorCode;
using core::failure;

constexpr std::array<std::string_view, 5> kClasses = {
    "1.2.840.10008.5.1.4.1.1.12.1",   // X-Ray Angiographic Image
    "1.2.840.10008.5.1.4.1.1.12.1.1", // Enhanced XA Image
    "1.2.840.10008.5.1.4.1.1.12.2",   // X-Ray Radiofluoroscopic Image
    "1.2.840.10008.5.1.4.1.1.12.2.1", // Enhanced XRF Image
    "1.2.840.10008.5.1.4.1.1.12.3",   // X-Ray Angiographic Bi-plane Image, retired
};

tl::unexpected<core::Error> cannotRead(const std::filesystem::path& path, const core::Error& cause) {
    return failure(cause.code, "Cannot read the X-ray run of " + path.string() + ": " + cause.message, cause);
}

} // namespace

bool isXray(std::string_view sopClassUid) {
    return std::find(kClasses.begin(), kClasses.end(), sopClassUid) != kClasses.end();
}

core::Result<XrayCine> readXray(std::shared_ptr<const ScannedFile> scanned) {
    const ScannedFile& file = *scanned;
    if (!isXray(file.sopClassUid()))
        return cannotRead(file.path,
                          {ErrorCode::ObjectUnsupported,
                           describe(tags::SopClassUid) + " is \"" + file.sopClassUid() +
                               "\", which is no X-ray run. Choose an angiography or fluoroscopy file.",
                           {{"tag", describe(tags::SopClassUid)}, {"value", file.sopClassUid()}},
                           nullptr});
    XrayCine cine;
    cine.notices = file.notices;
    auto frames = openFrames(scanned, cine.notices);
    if (!frames) return cannotRead(file.path, frames.error());
    cine.frames = std::move(*frames);
    auto greyscale = greyscaleOf(file, 0);
    if (!greyscale) return cannotRead(file.path, greyscale.error());
    cine.greyscale = std::move(*greyscale);
    const int count = cine.frames->count();
    cine.facts = xrayFacts(file.dataset, cine.frames->columns(), cine.frames->rows(), count);
    cine.notices.insert(cine.notices.end(), cine.facts.notices.begin(), cine.facts.notices.end());
    cine.masks = xrayMasks(file.dataset, count, cine.notices);
    if (file.format->isSigned && file.format->bitsStored <= 31)
        cine.lowestStored = -(1 << (file.format->bitsStored - 1));
    cine.sopInstanceUid = file.dataset.text(tags::SopInstanceUid);
    return cine;
}

core::Result<XrayCine> readXray(const std::filesystem::path& path) {
    auto scanned = scanFile(path);
    if (!scanned) return cannotRead(path, scanned.error());
    return readXray(std::make_shared<const ScannedFile>(std::move(*scanned)));
}

} // namespace gauge::dicomio
