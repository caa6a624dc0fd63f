#include "dicomio/ct/ct_requirements.h"

#include <cmath>

namespace gauge::dicomio {
namespace {

using core::ErrorCode;

tl::unexpected<core::Error> refused(ErrorCode code, const SliceFacts& slice, Tag tag,
                                    const std::string& finding) {
    return core::failure(code, "Cannot read Hounsfield units from " + label(slice) + ": " + finding,
                         {{"tag", describe(tag)}, {"file", slice.file.string()}});
}

} // namespace

bool isOtherQuantity(const SliceFacts& slice) {
    return slice.rescale && !slice.rescale->type.empty() && slice.rescale->type != "HU";
}

core::Result<void> checkHounsfield(const SliceFacts& slice, const PixelFormat& format) {
    if (format.samplesPerPixel != 1 || (format.bitsAllocated != 8 && format.bitsAllocated != 16) ||
        format.photometric == "PALETTE COLOR")
        return refused(ErrorCode::ObjectUnsupported, slice, tags::BitsAllocated,
                       describe(tags::BitsAllocated) + " is " + std::to_string(format.bitsAllocated) +
                           " and " + describe(tags::SamplesPerPixel) + " is " +
                           std::to_string(format.samplesPerPixel) + "; greyscale in 8 or 16 bits is needed.");
    if (!slice.rescale)
        return refused(ErrorCode::AttributeMissing, slice, tags::RescaleSlope,
                       describe(tags::RescaleSlope) + " or " + describe(tags::RescaleIntercept) +
                           " is absent or empty, and without both the values have no unit.");
    if (slice.rescale->slope == 0.0)
        return refused(ErrorCode::AttributeInvalid, slice, tags::RescaleSlope,
                       describe(tags::RescaleSlope) + " is 0.");
    if (isOtherQuantity(slice))
        return refused(ErrorCode::AttributeInvalid, slice, tags::RescaleType,
                       describe(tags::RescaleType) + " is \"" + slice.rescale->type +
                           "\", not HU: the values are not Hounsfield units.");
    return {};
}

} // namespace gauge::dicomio
