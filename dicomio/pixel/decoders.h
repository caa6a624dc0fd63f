// One compressed frame to samples. Part of frame_reader; call checkCodestream first.
#pragma once

#include "core/result.h"
#include "dicomio/scan/pixel_format.h"
#include "dicomio/scan/transfer_syntax.h"

#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

namespace gauge::dicomio {

/// Samples of a frame as the decoder gives them, pixel by pixel, in 16 bits each, or in 32 where `wide` is
/// used.
struct DecodedSamples {
    std::vector<std::uint16_t> words;
    std::vector<std::int32_t> wide; ///< for more than 16 bits; `words` is empty then
};

/// RLE, JPEG and JPEG-LS by the DICOM toolkit's codecs.
core::Result<DecodedSamples> decodeByToolkit(std::span<const std::byte> frame, const TransferSyntax& syntax,
                                             const PixelFormat& format);

/// JPEG 2000 by OpenJPEG.
core::Result<DecodedSamples> decodeJpeg2000(std::span<const std::byte> frame, const PixelFormat& format);

} // namespace gauge::dicomio
