// Exact answers of a scene, straight from its defining functions: root-finding and brute force, sharing
// nothing with the code that measures images. Patient coordinates throughout, LPS mm.
#pragma once

#include "core/geometry/plane.h"
#include "sample-data/scene/scene.h"

#include <optional>
#include <utility>
#include <vector>

namespace gauge::sample_case {

/// Metrics of a closed polygon by brute force. Definitions as in DEVELOPERS.md, "Section metrics".
struct TrueMetrics {
    double areaMm2 = 0.0;
    double perimeterMm = 0.0;
    double longestDiameterMm = 0.0;
    double shortestDiameterMm = 0.0; ///< widest extent perpendicular to the longest diameter
    double leastWidthMm = 0.0;       ///< smallest distance between parallel lines that enclose the polygon
    double meanDiameterMm = 0.0;
    double perimeterDerivedDiameterMm = 0.0;
    double areaDerivedDiameterMm = 0.0;
    double eccentricityIndex = 0.0;
    Eigen::Vector2d centroid = Eigen::Vector2d::Zero();
};

/// @param polygon  at least 3 points, counter-clockwise.
TrueMetrics trueMetrics(const std::vector<Eigen::Vector2d>& polygon);

/// The section of the left atrial pool in a plane: the connected part that holds a given point.
struct TrueSection {
    core::SectionFrame frame; ///< origin: the plane's point
    std::vector<Eigen::Vector2d>
        contour; ///< counter-clockwise seen from the side of the normal, about every 0.1 mm
    TrueMetrics metrics;
    core::PatientPoint center; ///< area centroid

    bool contains(const Eigen::Vector2d& ab) const;
};

/// Contour vertices lie on the boundary to 1e-6 mm; between them the chord errs by less than 0.002 mm at 1 mm
/// radius of curvature.
/// @param near  a point of the plane (it is projected) inside the pool.
/// @return nullopt when that point is not in the pool, or when the section reaches farther than `reachMm`
/// from it (it opens into the atrium).
std::optional<TrueSection> trueSection(const Scene& scene, const core::Plane& plane,
                                       const core::PatientPoint& near, double reachMm = 45.0);

/// The ostium plane through two landmarks, turned about the line between them to be as perpendicular to the
/// axis as possible there: n = normalize(t - (t.u) u), u the direction between the landmarks, t the tangent
/// of lobe 0's centre line where that line crosses the plane.
struct TrueOstium {
    core::Plane plane; ///< through the section's centre; the normal points to the tip
    TrueSection section;
    double axisS = 0.0; ///< where lobe 0's centre line crosses the plane
};

/// Normal n (in the scene's frame, towards the tip) of that plane, and `axisS`.
std::pair<Eigen::Vector3d, double> ostiumDirection(const Scene& scene, const core::PatientPoint& circumflex,
                                                   const core::PatientPoint& ridge);

/// @return nullopt when the section through the landmarks is not closed.
std::optional<TrueOstium> trueOstium(const Scene& scene, const core::PatientPoint& circumflex,
                                     const core::PatientPoint& ridge);

/// The centre line of lobe 0 from the ostium to the tip's apex: points about every `stepMm`, the last at the
/// apex.
std::vector<core::PatientPoint> trueAxis(const Scene& scene, const TrueOstium& ostium, double stepMm = 0.5);
/// Its length.
double trueAxisLengthMm(const Scene& scene, const TrueOstium& ostium);
/// Point and direction (towards the tip) of lobe 0's centre line at distance `sMm` beyond the ostium.
core::Plane trueAxisPlane(const Scene& scene, const TrueOstium& ostium, double sMm);

/// What lies beyond the ostium: the part of the pool that is connected with the tip without passing the
/// ostium.
struct TrueInterior {
    double volumeMl = 0.0;
    double farthestFromPlaneMm = 0.0; ///< of the whole appendage: the standard's depth
    double farthestOfTipLobeMm = 0.0; ///< of lobe 0 alone
};
/// Volume by cells of `cellMm` whose edges are weighted: within 0.3 % at the default size; distances within
/// 0.05 mm.
TrueInterior trueInterior(const Scene& scene, const TrueOstium& ostium, double cellMm = 0.35);

bool insidePool(const Scene& scene, const core::PatientPoint& p);
/// In any blood: pool, ventricle, aorta, artery…
bool insideBlood(const Scene& scene, const core::PatientPoint& p);
/// In the pool, beyond the ostium plane, and in (or filleted to) an appendage lobe.
bool insideAppendage(const Scene& scene, const TrueOstium& ostium, const core::PatientPoint& p);
/// Distance from a point inside the pool along `direction` (unit) to where it leaves the pool; 0 when
/// outside.
double distanceToWallMm(const Scene& scene, const core::PatientPoint& from,
                        const core::PatientVector& direction);

/// A straight line across the pool, end to end, through a point inside it.
struct TrueChord {
    core::PatientPoint first, second; ///< `second` lies in the given direction
    double lengthMm = 0.0;
};
/// @return nullopt when the point is not in the pool. Ends to 1e-6 mm.
std::optional<TrueChord> trueChord(const Scene& scene, const core::PatientPoint& through,
                                   const core::PatientVector& direction);

} // namespace gauge::sample_case
