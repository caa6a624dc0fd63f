// One compressed frame to stored values. Part of frame_reader; call checkCodestream first.
#pragma once

#include "core/result.h"
#include "dicomio/scan/pixel_format.h"
#include "dicomio/scan/transfer_syntax.h"

#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

namespace gauge::dicomio {

/// Samples of a frame as the decoder gives them, pixel by pixel, before any conversion of colour: words of
/// BitsAllocated, not yet values (see storedValue()).
using DecodedWords = std::vector<std::int32_t>;

/// RLE, JPEG and JPEG-LS by the DICOM toolkit's codecs.
core::Result<DecodedWords> decodeByToolkit(std::span<const std::byte> frame, const TransferSyntax& syntax,
                                           const PixelFormat& format);

/// The same for one greyscale frame with 8 or 16 bits allocated, straight into `out` (rows x columns words).
core::Result<void> decodeGreyByToolkit(std::span<const std::byte> frame, const TransferSyntax& syntax,
                                       const PixelFormat& format, std::span<std::uint16_t> out);

/// RLE of one greyscale frame with 8 or 16 bits allocated, by our own decoder, straight into `out`.
/// @errors FileDamaged.
core::Result<void> decodeGreyRle(std::span<const std::byte> frame, const PixelFormat& format,
                                 std::span<std::uint16_t> out);

/// JPEG 2000 by OpenJPEG. A transform of its components (YBR_RCT, YBR_ICT) is undone: the samples are RGB
/// then.
core::Result<DecodedWords> decodeJpeg2000(std::span<const std::byte> frame, const PixelFormat& format);

} // namespace gauge::dicomio
