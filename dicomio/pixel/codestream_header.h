// What a compressed frame says about its own size, read before any decoder may allocate for it.
#pragma once

#include "core/result.h"
#include "dicomio/scan/pixel_format.h"
#include "dicomio/scan/transfer_syntax.h"

#include <cstddef>
#include <optional>
#include <span>

namespace gauge::dicomio {

/// The JPEG 2000 code stream of a frame: the frame itself, or the part of it that a JP2 file wraps (ISO/IEC
/// 15444-1 annex I). The frame again where there is none.
std::span<const std::byte> withoutWrapper(std::span<const std::byte> frame, PixelCoding coding);

/// What a code stream says about the meaning of its components.
struct StreamColour {
    std::optional<int> adobeTransform;       ///< of the Adobe APP14 segment: 0 none, 1 YCbCr
    bool rgbNames = false;                   ///< JPEG components are named 'R', 'G', 'B'
    bool subsampled = false;                 ///< JPEG components of different resolution
    bool multipleComponentTransform = false; ///< JPEG 2000 (T.800 annex G), undone by the decoder
};
StreamColour streamColour(std::span<const std::byte> frame, PixelCoding coding);

/// Proves that the frame's own header agrees with the attributes: width, height, components, and a depth that
/// fits into BitsAllocated; for JPEG 2000 also a sane number of tiles and components without subsampling; for
/// RLE the number of segments and their places. A large frame must not be absurdly small when compressed.
/// @errors FileDamaged when it does not, or when there is no such header.
core::Result<void> checkCodestream(std::span<const std::byte> frame, PixelCoding coding,
                                   const PixelFormat& format);

} // namespace gauge::dicomio
