// Which C-arm angles show a plane edge-on, and which from the front.
//
// A plane with unit normal n is edge-on where n . d = 0 for the beam direction d: a great circle of views. It
// is seen from the front (en face) where d is along n. Source: [Blake2012].
#pragma once

#include "core/fluoro/c_arm.h"
#include "core/fluoro/projected_width.h"
#include "core/geometry/points.h"
#include "core/result.h"

#include <optional>
#include <span>
#include <vector>

namespace gauge::core {

/// The secondary angle at which the plane is edge-on for a given primary angle: tan b = (n_y cos a - n_x sin
/// a) / n_z. nullopt for a plane whose edge-on views all have one primary angle (n_z = 0) unless `primaryDeg`
/// is that one, when every secondary angle will do and 0 is returned.
std::optional<double> edgeOnSecondaryDeg(const PatientVector& normal, double primaryDeg);

/// The whole great circle of edge-on views, `count` (>= 1) of them evenly spaced along it, |primary| up to
/// 180. Parametrised by the circle, so that steep planes and n_z = 0 need no special case.
std::vector<CArmAngles> edgeOnCurve(const PatientVector& normal, int count);

/// The view from the front: of the two (d = n and d = -n) the one with |primary| <= 90.
CArmAngles enFace(const PatientVector& normal);

/// The edge-on view with the line of sight along `inPlane` (its part along the normal is left out); of the
/// two opposite ones that with |primary| <= 90. @errors Degenerate when `inPlane` is along the normal.
Result<CArmAngles> edgeOnAlong(const PatientVector& normal, const PatientVector& inPlane);

/// The edge-on views of a section that show the most and the least of it.
struct SectionViews {
    CArmAngles showsLongest;  ///< line of sight along the shortest diameter
    CArmAngles showsShortest; ///< line of sight along the longest diameter
    CArmAngles enFace;
    double longestMm = 0.0;  ///< seen in the first
    double shortestMm = 0.0; ///< seen in the second
};

/// @errors those of contourNormal().
Result<SectionViews> sectionViews(std::span<const PatientPoint> contour);

/// How much of the longest diameter one edge-on or other view leaves out, mm, >= 0.
/// @errors those of projectedWidth(); Degenerate for a view without a width.
Result<double> lostOfLongestMm(std::span<const PatientPoint> contour, const CArmAngles& angles);

} // namespace gauge::core
