// Frames of a moving picture (or of a still, a cine of one frame), fetched one at a time: the frames of a
// long run need not fit into memory. Readers of dicomio implement it; views, calipers and traces use it.
#pragma once

#include "core/result.h"

#include <cstddef>
#include <cstdint>
#include <vector>

namespace gauge::core {

/// One colour frame, 8 bits a sample: red, green, blue of a pixel beside each other, row after row from the
/// top left.
struct RgbFrame {
    int columns = 0;
    int rows = 0;
    std::vector<std::uint8_t> samples; ///< 3 x columns x rows

    const std::uint8_t* at(int column, int row) const {
        return samples.data() + 3 * (static_cast<std::size_t>(row) * static_cast<std::size_t>(columns) +
                                     static_cast<std::size_t>(column));
    }
};

/// One grey frame: stored values as in the file, row after row from the top left, before any window.
struct GreyFrame {
    int columns = 0;
    int rows = 0;
    std::vector<std::int32_t> values; ///< columns x rows

    std::int32_t at(int column, int row) const {
        return values[static_cast<std::size_t>(row) * static_cast<std::size_t>(columns) +
                      static_cast<std::size_t>(column)];
    }
};

/// Pixel coordinates everywhere: (x, y) = (column, row), whole numbers at pixel centres, (0, 0) the top left
/// pixel. All members are safe to call from several threads at once.
class FrameSource {
public:
    virtual ~FrameSource() = default;

    virtual int columns() const = 0;
    virtual int rows() const = 0;
    /// Number of frames, >= 1.
    virtual int count() const = 0;
    /// False when the frames are grey values.
    virtual bool isColour() const = 0;

    /// A frame as colours. Grey sources give r = g = b over their whole range of stored values, so that the
    /// lowest shows black (white for MONOCHROME1).
    /// @param frame  0-based. @errors InvalidArgument outside 0 … count() - 1; those of reading the file.
    virtual Result<RgbFrame> rgb(int frame) const = 0;

    /// A frame as stored grey values. @errors as rgb(); ObjectUnsupported for colour sources.
    virtual Result<GreyFrame> grey(int frame) const = 0;

protected:
    FrameSource() = default;
    FrameSource(const FrameSource&) = default;
    FrameSource& operator=(const FrameSource&) = default;
};

} // namespace gauge::core
