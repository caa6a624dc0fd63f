// A size as it would sit: a body about a straight line, round or in the form that the wall gives it, and a round disc before it where
// the device has one. Its distance to a place, its outline in a section, its surface. What the numbers rest on: seat.h.
//
//        disc ┌┐   ____________            t along `direction`, from the middle of the landing zone
//             ││  /            \  radius(t)
//   ------ ---++--+------o------+----> t
//             ││  \____________/
//             └┘ near    0     far
#pragma once

#include "core/geometry/plane.h"
#include "core/volume/surface_mesh.h"

#include <Eigen/Core>
#include <optional>
#include <vector>

namespace gauge::core {

inline constexpr int kSeatSides = 72;

struct SeatedBody {
    struct Ring {
        double tMm = 0.0;
        double radiusMm = 0.0; ///< half its width by the chart's own measure
        /// From the line, at kSeatSides equal angles from u of frameOf({origin, direction}) towards v; empty: round.
        std::vector<double> radiiMm = {};
        bool operator==(const Ring&) const = default;
    };
    /// A flat cylinder. Charts give no thickness: drawn and measured as `kDiscMm` thick, as core/sizing/device_outline.h draws it.
    struct Disc {
        static constexpr double kDiscMm = 1.5;
        double tMm = 0.0; ///< of its face towards the tip
        double radiusMm = 0.0;
        bool operator==(const Disc&) const = default;
    };
    PatientPoint origin;
    PatientVector direction{Eigen::Vector3d::UnitZ()}; ///< unit, towards the tip
    std::vector<Ring> body;                            ///< at least 2, ascending in t; flat ends; all round or none
    std::optional<Disc> disc;

    double nearMm() const { return body.front().tMm; }
    double farMm() const { return body.back().tMm; }
    PatientPoint at(double tMm) const { return origin + tMm * direction; }
    /// Half the width at t, straight between rings, held at the ends.
    double radiusMm(double tMm) const;
    bool isRound() const { return body.front().radiiMm.empty(); }

    bool operator==(const SeatedBody&) const = default;
};

/// Least distance of `p` from body and disc, mm; below 0 inside either, by the distance to its surface. Exact for round bodies of
/// straight pieces; of others to 0.05 mm at rings every 0.5 mm.
double distanceMm(const SeatedBody& seated, const PatientPoint& p);

/// Closed lines in which a plane cuts body and disc, in the section coordinates of `frame`; none where it passes by. The body
/// first. Of the solid with `kSeatSides` sides (0.2 % narrow at most).
std::vector<std::vector<Eigen::Vector2d>> outlinesIn(const SeatedBody& seated, const SectionFrame& frame);
/// Closed surface of body and disc, counter-clockwise seen from outside; two pieces where there is a disc.
SurfaceMesh seatedMesh(const SeatedBody& seated);

/// Rings and side lines for drawing on a surface or an X-ray frame: each a line of patient points, closed ones with their
/// first point again at the end.
std::vector<std::vector<PatientPoint>> seatedLines(const SeatedBody& seated);

} // namespace gauge::core
