// From stored grey values to what is shown (PS3.3 C.11): modality rescale or table, then window or VOI table,
// frame by frame. Computed tomography keeps its Hounsfield units in dicomio/ct; this is for pictures.
#pragma once

#include "core/result.h"
#include "dicomio/scan/scanner.h"

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace gauge::dicomio {

/// A lookup table of PS3.3 C.11.1 or C.11.2: values below the first take the first entry, values beyond the
/// last the last one.
struct LookupTable {
    int firstMapped = 0;
    int bits = 16; ///< of an entry
    std::vector<std::uint16_t> entries;
    std::string explanation; ///< bytes as in the file

    double at(double value) const;
};

/// PS3.3 C.11.2.1.2 and C.11.2.1.3.
enum class WindowFunction { Linear, LinearExact, Sigmoid };

struct Window {
    double centre = 0.0; ///< in values after the modality step
    double width = 1.0;
    WindowFunction function = WindowFunction::Linear;
    std::string explanation; ///< bytes as in the file
};

struct Greyscale {
    double slope = 1.0; ///< modality value = slope * stored + intercept, unless there is a modality table
    double intercept = 0.0;
    std::string rescaleType;                  ///< RescaleType; empty when absent
    std::optional<LookupTable> modalityTable; ///< in place of slope and intercept
    std::vector<Window> windows;              ///< in the file's order
    std::vector<LookupTable> voiTables;       ///< in the file's order
    bool inverted = false;                    ///< the lowest value shows white: MONOCHROME1
    std::vector<core::Notice> notices;        ///< unusable windows and tables, left out

    double modalityValue(std::int32_t stored) const;
};

/// What holds for one frame: its functional groups before the shared ones before the data set itself.
/// @param frame  0-based, within the image.
/// @errors AttributeInvalid for a rescale that is no number or has slope 0: values would be wrong. What only
/// concerns the look is left out with a notice instead.
core::Result<Greyscale> greyscaleOf(const ScannedFile& scanned, int frame);

/// Shown brightness 0 (black) … 255 of a modality value under a window, before inversion.
double windowed(double value, const Window& window);

/// The window that a frame is first shown with: the file's first; else the full range of `values`.
Window firstWindow(const Greyscale& grey, std::span<const std::int32_t> values);

/// Brightness of each stored value, 0 … 255, inverted where the file says so: through the file's first VOI
/// table when it has one and no window is given, else through `window` or firstWindow().
std::vector<std::uint8_t> shown(std::span<const std::int32_t> values, const Greyscale& grey,
                                const std::optional<Window>& window = {});

} // namespace gauge::dicomio
