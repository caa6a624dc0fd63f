// Frames as colours, whatever their photometric interpretation, palette, planar configuration, depth and
// transfer syntax. Neighbours: frame_reader.h for the samples before any conversion, greyscale.h for windows.
#pragma once

#include "core/cine/frame_source.h"
#include "core/result.h"
#include "dicomio/pixel/frame_reader.h"
#include "dicomio/pixel/palette.h"
#include "dicomio/pixel/photometric.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace gauge::dicomio {

/// Reads one frame at a time; nothing is kept between frames. Safe to use from several threads at once.
class ColourReader {
public:
    /// @param scanned  must outlive the reader and have pixels.
    /// @errors those of FrameReader::open and photometricOf; AttributeMissing and AttributeInvalid for a
    /// palette that is absent or unusable; ObjectUnsupported for colour of more than 16 bits a sample.
    static core::Result<ColourReader> open(const ScannedFile& scanned);

    int rows() const { return m_scanned->format->rows; }
    int columns() const { return m_scanned->format->columns; }
    int count() const { return m_scanned->format->frames; }
    Photometric photometric() const { return m_photometric; }
    /// False for MONOCHROME1 and MONOCHROME2.
    bool isColour() const { return !isGrey(m_photometric); }

    /// A frame as red, green, blue in 8 bits. Deeper colour is scaled down to 8 bits. Grey gives r = g = b
    /// over the whole range of BitsStored, its lowest value black (white for MONOCHROME1); for a window see
    /// greyscale.h.
    /// @param frame  0-based. @errors InvalidArgument outside 0 … count() - 1; those of
    /// FrameReader::readValues.
    core::Result<core::RgbFrame> readRgb(int frame) const;

    /// The samples before any conversion of colour or palette, pixel by pixel, one or three each. Halved
    /// chroma of uncompressed YBR_FULL_422 is repeated for both of its pixels, as a decoder does.
    /// @errors as readRgb.
    core::Result<std::vector<std::int32_t>> readSamples(int frame) const;

    /// The frames behind the colours.
    const FrameReader& frames() const { return m_frames; }
    /// Deviations of palette or code stream that were worked around.
    const std::vector<core::Notice>& notices() const { return m_notices; }

private:
    ColourReader(const ScannedFile& scanned, FrameReader frames, Photometric photometric)
        : m_scanned(&scanned), m_frames(std::move(frames)), m_photometric(photometric) {}

    const ScannedFile* m_scanned;
    FrameReader m_frames;
    Photometric m_photometric;
    std::optional<Palette> m_palette;
    std::vector<core::Notice> m_notices;
};

} // namespace gauge::dicomio
