// Burned-in text: pixels outside the calibrated regions of an ultrasound picture are made black. Private to deidentify.
#pragma once

#include "core/cine/echo_region.h"
#include "core/result.h"
#include "dicomio/scan/scanner.h"

#include <cstdint>
#include <vector>

namespace gauge::dicomio {

/// Frames as red, green, blue in 8 bits, one after the other, black outside all boxes.
struct CleanFrames {
    int columns = 0, rows = 0, frames = 0;
    std::vector<std::uint8_t> samples;
};

/// Whether the picture may carry text about the patient: BurnedInAnnotation is not NO and it is ultrasound, a secondary
/// capture, or BurnedInAnnotation is YES. @param burnedIn  value of (0028,0301), "" when absent.
bool mayHaveBurnedInText(const ScannedFile& scanned, const std::string& burnedIn);

/// Calibrated regions of the picture: tissue, colour, Doppler and traces; only there pixels stay.
std::vector<core::PixelBox> calibratedBoxes(const ScannedFile& scanned);

/// @errors those of ColourReader; ObjectUnsupported above 2 GiB of pixels.
core::Result<CleanFrames> framesWithin(const ScannedFile& scanned, const std::vector<core::PixelBox>& boxes);

} // namespace gauge::dicomio
