// Which C-arm angles show a plane edge-on, and which from the front.
//
// A plane with unit normal n is edge-on where n . d = 0 for the beam direction d: a great circle of views. It
// is seen from the front (en face) where d is along n. Source: [Blake2012].
#pragma once

#include "core/fluoro/c_arm_reach.h"
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

/// A unit normal from numbers that somebody gave, of any length but zero. @errors NonFinite; Degenerate for the zero vector.
Result<PatientVector> planeNormal(const Eigen::Vector3d& given);

/// The primary angle, -90 < … <= 90, of all edge-on views of a plane whose normal lies in the transverse plane (n_z = 0);
/// nullopt for any other plane.
std::optional<double> onlyPrimaryDeg(const PatientVector& normal);

/// Edge-on views as a table: one for each primary angle -90, -85 … 90; where onlyPrimaryDeg() serves every tilt, one for each
/// secondary angle -90, -85 … 90 instead. Of exactly 37 entries.
std::vector<CArmAngles> edgeOnTable(const PatientVector& normal);

/// The parts of the great circle that the arm can reach, each from end to end in steps of at most `stepDeg` (> 0) along the
/// circle; its ends lie within 0.001 degrees of the border. Empty when the plane cannot be seen edge-on.
std::vector<std::vector<CArmAngles>> edgeOnWithin(const PatientVector& normal, const CArmReach& reach, double stepDeg = 1.0);

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

/// How far a projected width may differ when the arm's angles are a little off.
struct WidthTolerance {
    double lowestMm = 0.0;
    double highestMm = 0.0;
};

/// C-arm displays and the patient's place on the table are good for about this. Assumption.
inline constexpr double kAngleToleranceDeg = 5.0;

/// Range of the projected width over all views within +- `toleranceDeg` (0 … 30) of both angles, looked at on a grid of 9 x 9.
/// Views without a width (nearly en face) are left out.
/// @errors those of projectedWidth(); InvalidArgument for another tolerance; Degenerate when the view itself shows no width.
Result<WidthTolerance> widthWithin(std::span<const PatientPoint> contour, const CArmAngles& angles,
                                   double toleranceDeg = kAngleToleranceDeg);

/// How much of the longest diameter one edge-on or other view leaves out, mm, >= 0.
/// @errors those of projectedWidth(); Degenerate for a view without a width.
Result<double> lostOfLongestMm(std::span<const PatientPoint> contour, const CArmAngles& angles);

} // namespace gauge::core
