// From one X-ray file (XA, Enhanced XA, RF) to its run: frames, angles, times, scale, masks and window.
#pragma once

#include "core/cine/frame_source.h"
#include "dicomio/angiography/xray_facts.h"
#include "dicomio/angiography/xray_mask.h"
#include "dicomio/pixel/greyscale.h"
#include "dicomio/scan/scanner.h"

#include <filesystem>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

namespace gauge::dicomio {

struct XrayCine {
    std::shared_ptr<const core::FrameSource> frames; ///< never null
    XrayFacts facts;                                 ///< its notices are in `notices` too
    XrayMasks masks;                                 ///< for looking only, see core/fluoro/mask_subtraction.h
    Greyscale greyscale;                             ///< window of the first frame
    std::int32_t lowestStored = 0; ///< lowest value that a pixel can have, for subtractMask()
    std::string sopInstanceUid;
    std::vector<core::Notice> notices;
};

/// X-Ray Angiographic, Enhanced XA, X-Ray Radiofluoroscopic and Enhanced XRF Image Storage, and the retired
/// biplane form (PS3.4 B.5; the retired one from memory).
bool isXray(std::string_view sopClassUid);

/// Headers now, frames when they are asked for.
/// @errors ObjectUnsupported for another kind of file; those of the scanner, of openFrames() and of
/// greyscaleOf(). The message names the file.
core::Result<XrayCine> readXray(const std::filesystem::path& path);

/// The same from a scan. @param scanned  not null.
core::Result<XrayCine> readXray(std::shared_ptr<const ScannedFile> scanned);

} // namespace gauge::dicomio
