// Where the appendage begins: from the person's plane, from two landmarks, or proposed.
#pragma once

#include "core/anatomy/appendage.h"
#include "core/anatomy/neck.h"

namespace gauge::core {

/// A plane for the ostium with the axis' crossing of it.
struct OstiumPlane {
    Plane plane;             ///< through the axis; the normal points to the tip
    double axisMm = 0.0;     ///< distance of the crossing from the tip end of the neck's axis
    bool proposed = false;
    std::optional<double> confidence;
};

/// The plane through circumflex and ridge points, turned about the line between them to be as perpendicular to the
/// axis as possible where the axis crosses it: n = normalize(t - (t.u) u).
/// @errors LandmarksUnusable when the points are closer than 4 mm or farther than 60 mm apart, when the axis does
/// not cross their plane, or when it passes so that they cannot lie on both sides of the ostium; SeedInVein when the
/// axis passes beyond the ridge.
Result<OstiumPlane> ostiumFromLandmarks(const Neck& neck, const PatientPoint& circumflex, const PatientPoint& ridge);

/// The person's plane; its normal is turned to the tip.
/// @errors OstiumNotFound when the axis does not cross it within 25 mm of the plane's point; InvalidArgument for a
/// zero normal.
Result<OstiumPlane> ostiumFromPlane(const Neck& neck, const Plane& plane);

/// Proposal: perpendicular to the axis at the first place, seen from the tip, where the neck begins to lose its wall
/// (the crest of the ridge), a little inside it. The confidence says how often such a proposal lies within 2 mm and
/// 10 degrees; DEVELOPERS.md, "Accuracy", has the calibration.
/// @errors OstiumNotFound when no rim is seen.
Result<OstiumPlane> proposeOstium(const Neck& neck);

} // namespace gauge::core
