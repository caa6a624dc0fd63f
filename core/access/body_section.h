// What a body that takes the form of the wall may fill of one section square to its line. The wall is a ring of rays
// (sheath_walls.h); what the numbers are good for: slide_body.h, core/sizing/seat.h.
//
//      .-------.      The body is an expanding mesh: its section is convex, pressed in from outside only, and no wider by the
//    .'  fills  '.    chart's own measure than its free width. It fills the hull of the blood that it can reach from the line.
//    |     o     |
//    '.         .'    o  the line
//      '-------'
#pragma once

#include "core/access/sheath_walls.h"

#include <Eigen/Core>
#include <vector>

namespace gauge::core {

/// The measure by which a chart sizes its devices.
enum class BodyMeasure { PerimeterDerived, AreaDerived, Longest };

/// How a body gives way.
struct BodyLimits {
    BodyMeasure by = BodyMeasure::PerimeterDerived;
    double freeMm = 0.0;       ///< free width
    double narrowestMm = 0.0;  ///< width, by the chart's own measure, below which it must not be pressed
    double outwardsMm = 0.0;   ///< by how much the wall is taken to lie farther out than its rays say
    double measuresMoreMm = 0.0; ///< added to the measure of every section: what an outside measure of the first one reads more

    /// By how much one side gives way: half of what the whole width does.
    double playMm() const { return 0.5 * (freeMm - narrowestMm); }
    /// No place of a closed band of the free circumference lies farther from its middle: the band folded flat.
    double farthestMm() const;
};

struct BodySection {
    double widthMm = 0.0;      ///< by the chart's own measure, of all that the body can reach; may exceed its free width
    std::vector<double> sidesMm; ///< from the line to the wall, one a ray, cut at the free radius; empty where the line lies in the wall
    double indentMm = 0.0;     ///< greatest depth of wall within the hull of that blood: a trabecula, a strand, a fold
    std::size_t indentRay = 0; ///< where
};

/// By how much the middle between opposite sides has moved since `start`, along the ray from which it moved away most; 0 where either is empty.
struct MovedAside {
    double mm = 0.0;
    std::size_t awayFromRay = 0;
};
MovedAside movedAside(const BodySection& section, const BodySection& start);

/// Numbers of a ring of an even number of rays, at least 8. For rays to n points of an oval the width reads low by less than
/// 1.7/n^2 of itself (0.02 % at 96).
BodySection bodySection(const SheathWalls& around, const WallRing& ring, const BodyLimits& limits);

/// A section of the body in place.
struct BodyOutline {
    double widthMm = 0.0;         ///< by the chart's own measure, between narrowest and free width
    std::vector<double> radiiMm;  ///< from the line, at `count` equal angles from frame.u towards frame.v
};

/// The body spreads from the line as far as the wall lets it or until it is as wide as it is free: the hull of the blood within
/// the radius at which the measure is the free width. Pressed below the narrowest width it presses the wall out, alike all round.
BodyOutline bodyOutline(const SheathWalls& around, const WallRing& ring, const BodyLimits& limits, int count);

} // namespace gauge::core
