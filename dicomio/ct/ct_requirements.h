// What a CT image must say so that its values are Hounsfield units.
#pragma once

#include "core/result.h"
#include "dicomio/ct/slice_facts.h"
#include "dicomio/scan/pixel_format.h"

namespace gauge::dicomio {

/// @errors AttributeMissing when RescaleSlope or RescaleIntercept is absent (both are required of CT, PS3.3
/// C.8.2.1; a missing one is not guessed), AttributeInvalid for a slope of zero or another RescaleType than
/// HU, ObjectUnsupported for pixels that are not greyscale in 8 or 16 bits. The message names the file.
core::Result<void> checkHounsfield(const SliceFacts& slice, const PixelFormat& format);

/// True when the only objection is that the values are, by RescaleType, no Hounsfield units.
bool isOtherQuantity(const SliceFacts& slice);

} // namespace gauge::dicomio
