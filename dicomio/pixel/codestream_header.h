// What a compressed frame says about its own size, read before any decoder may allocate for it.
#pragma once

#include "core/result.h"
#include "dicomio/scan/pixel_format.h"
#include "dicomio/scan/transfer_syntax.h"

#include <cstddef>
#include <span>

namespace gauge::dicomio {

/// Proves that the frame's own header agrees with the attributes: width, height, components, and a depth that
/// fits into BitsAllocated; for JPEG 2000 also a sane number of tiles and components without subsampling; for
/// RLE the number of segments and their places.
/// @errors FileDamaged when it does not, or when there is no such header.
core::Result<void> checkCodestream(std::span<const std::byte> frame, PixelCoding coding,
                                   const PixelFormat& format);

} // namespace gauge::dicomio
