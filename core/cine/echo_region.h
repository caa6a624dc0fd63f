// The calibrated rectangles of an ultrasound picture (PS3.3 C.8.5.5): what each shows, what its axes mean,
// and whether its lengths can be believed. Calipers on them: region_caliper.h, spectral.h.
//
//   (0,0)                     The box is in pixels of the whole picture, both corners included.
//     +------------------+    A place (x, y) of the picture means
//     |  min +--------+  |       value.x = x.referenceValue + (x - x.referencePixel) * x.delta
//     |      |  R     |  |       value.y = y.referenceValue + (y - y.referencePixel) * y.delta
//     |      +--------+  |    with R the reference pixel, here already in pixels of the whole picture (the
//     attribute |              max |    counts from the box's corner). R may lie outside the box. A negative
//     delta means that
//     +------------------+    values fall towards the right or downwards.
#pragma once

#include "core/cine/planar_scale.h"

#include <Eigen/Core>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace gauge::core {

enum class EchoRegionKind { Tissue, Colour, MMode, Spectral, Ecg, Other };

/// "tissue", "colour", "m-mode", "spectral", "ecg", "other".
std::string_view words(EchoRegionKind kind);

/// Physical units of an axis; the numbers are those of the attribute (PS3.3 C.8.5.5.1.15).
enum class PhysicalUnit {
    None = 0,
    Percent = 1,
    Decibel = 2,
    Centimetre = 3,
    Second = 4,
    Hertz = 5,
    DecibelPerSecond = 6,
    CentimetrePerSecond = 7,
    SquareCentimetre = 8,
    SquareCentimetrePerSecond = 9,
    CubicCentimetre = 10,
    CubicCentimetrePerSecond = 11,
    Degree = 12,
    Unknown = -1, ///< absent, or a number without a meaning
};

/// "none", "%", "dB", "cm", "s", "Hz", "dB/s", "cm/s", "cm2", "cm2/s", "cm3", "cm3/s", "deg", "not known".
std::string_view words(PhysicalUnit unit);

struct PixelBox {
    int minX = 0;
    int minY = 0;
    int maxX = -1;
    int maxY = -1;

    /// The area that the pixels cover: their centres and half a pixel around.
    bool contains(const Eigen::Vector2d& p) const {
        return p.x() >= minX - 0.5 && p.x() <= maxX + 0.5 && p.y() >= minY - 0.5 && p.y() <= maxY + 0.5;
    }
    double area() const { return (maxX - minX + 1.0) * (maxY - minY + 1.0); }
    bool operator==(const PixelBox&) const = default;
};

struct RegionAxis {
    PhysicalUnit unit = PhysicalUnit::Unknown;
    double delta = 0.0; ///< units a pixel, with sign
    /// Picture coordinate of the reference pixel; nullopt when the file does not tell (differences are known,
    /// values are not).
    std::optional<double> referencePixel;
    double referenceValue = 0.0;
};

struct EchoRegion {
    EchoRegionKind kind = EchoRegionKind::Other;
    PixelBox box;
    RegionAxis x, y;
    bool highPriority = false; ///< covers others where they overlap (region flags, bit 0)
    /// Why no length may be read here although both axes are said to be lengths; empty when nothing is wrong.
    std::string scaleFault;
    /// The scale of a region whose both axes are believable lengths; nullopt elsewhere.
    std::optional<PlanarScale> scale;
};

/// Standard uncertainty of a scanner's own calibration, relative. Assumption, after the usual acceptance
/// limits of distance accuracy in quality assurance of ultrasound scanners (2 % as limits of a rectangular
/// distribution).
inline constexpr double kRegionScaleUncertainty = 0.0115;

/// The region that speaks for a place: of those that contain it, one of high priority before others, then the
/// smallest (the most specific), then the first listed. nullopt outside all.
std::optional<std::size_t> regionAt(std::span<const EchoRegion> regions, const Eigen::Vector2d& place);

} // namespace gauge::core
