// What the samples of a pixel mean (PS3.3 C.7.6.3.1.2), and whether that agrees with their number and size.
#pragma once

#include "core/result.h"
#include "dicomio/scan/pixel_format.h"
#include "dicomio/scan/transfer_syntax.h"

namespace gauge::dicomio {

enum class Photometric { Monochrome1, Monochrome2, Palette, Rgb, YbrFull, YbrFull422, YbrIct, YbrRct };

/// @errors AttributeMissing when PhotometricInterpretation is absent; AttributeInvalid when it contradicts
/// SamplesPerPixel, or halves the chroma of an odd number of columns; ObjectUnsupported naming the value for
/// what is not read here (YBR_PARTIAL_*, ARGB, CMYK, HSV…).
core::Result<Photometric> photometricOf(const PixelFormat& format, const TransferSyntax& syntax);

inline bool isGrey(Photometric p) {
    return p == Photometric::Monochrome1 || p == Photometric::Monochrome2;
}

} // namespace gauge::dicomio
