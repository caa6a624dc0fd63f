#include "dicomio/pixel/photometric.h"

#include <array>
#include <string_view>

namespace gauge::dicomio {
namespace {

using core::ErrorCode;
using core::failure;

struct Known {
    std::string_view name;
    Photometric value;
    int samples;
};

constexpr std::array<Known, 8> kKnown{{
    {"MONOCHROME1", Photometric::Monochrome1, 1},
    {"MONOCHROME2", Photometric::Monochrome2, 1},
    {"PALETTE COLOR", Photometric::Palette, 1},
    {"RGB", Photometric::Rgb, 3},
    {"YBR_FULL", Photometric::YbrFull, 3},
    {"YBR_FULL_422", Photometric::YbrFull422, 3},
    {"YBR_ICT", Photometric::YbrIct, 3},
    {"YBR_RCT", Photometric::YbrRct, 3},
}};

std::string named(const PixelFormat& format) {
    return describe(tags::PhotometricInterpretation) + " is " + format.photometric;
}

tl::unexpected<core::Error> invalid(const std::string& finding) {
    return failure(ErrorCode::AttributeInvalid, finding,
                   {{"tag", describe(tags::PhotometricInterpretation)}});
}

} // namespace

core::Result<Photometric> photometricOf(const PixelFormat& format, const TransferSyntax& syntax) {
    if (format.photometric.empty())
        return failure(ErrorCode::AttributeMissing,
                       describe(tags::PhotometricInterpretation) +
                           " is absent or empty: what the samples mean is not known.",
                       {{"tag", describe(tags::PhotometricInterpretation)}});
    const Known* known = nullptr;
    for (const Known& candidate : kKnown)
        if (candidate.name == format.photometric) known = &candidate;
    if (!known)
        return failure(ErrorCode::ObjectUnsupported,
                       named(format) +
                           ", which is not read here; have the image exported as MONOCHROME2 or RGB.",
                       {{"tag", describe(tags::PhotometricInterpretation)}, {"value", format.photometric}});
    if (known->samples != format.samplesPerPixel)
        return invalid(named(format) + ", which has " + std::to_string(known->samples) +
                       " samples a pixel, but " + describe(tags::SamplesPerPixel) + " is " +
                       std::to_string(format.samplesPerPixel) + ".");
    const bool transformed = known->value == Photometric::YbrIct || known->value == Photometric::YbrRct;
    if (transformed && syntax.coding != PixelCoding::Jpeg2000)
        return invalid(named(format) + ", which only JPEG 2000 knows, but the transfer syntax is " +
                       syntax.name + ".");
    if (known->value == Photometric::YbrFull422 && !syntax.encapsulated() && format.columns % 2 != 0)
        return invalid(named(format) + ", which halves the chroma along a row, but " +
                       describe(tags::Columns) + " is " + std::to_string(format.columns) +
                       ", an odd number.");
    return known->value;
}

} // namespace gauge::dicomio
