// How wide a contour of the CT looks on a fluoroscopy at given angles.
//
//        picture              A closed contour around an axis (its normal n) is seen as an oval or, edge-on,
//        as a line.
//      projected axis         Its width is its extent across the projected axis: what a caliper from wall to
//      wall of
//            ^                the neck reads. Along the axis the picture shows only axisVisible of a length:
//            the rest
//       .----|----.           is foreshortening.
//      (     |     )          Edge-on: openingDeg = 0, the axis at full length. En face: openingDeg = 90, the
//      axis
//       '----|----'           is a point, there is no direction across it and no width: only the longest
//       diameter.
//      |<- width ->|
#pragma once

#include "core/fluoro/c_arm.h"
#include "core/geometry/points.h"
#include "core/measure/estimate.h"
#include "core/result.h"

#include <optional>
#include <span>

namespace gauge::core {

/// Closer to en face than this an axis is too short in the picture to measure across it. Assumption.
inline constexpr double kLargestOpeningDeg = 75.0;

struct ProjectedWidth {
    std::optional<double> widthMm; ///< across the projected axis; nullopt beyond kLargestOpeningDeg
    double longestMm = 0.0;        ///< longest diameter of the projected contour
    double openingDeg = 0.0;  ///< between the line of sight and the contour's plane: 0 edge-on, 90 en face
    double axisVisible = 1.0; ///< seen length over true length of a line along the normal: 1 - foreshortening
};

/// Seen length over true length of a line along `direction` (not zero), [0, 1], by parallel rays.
double visibleFraction(const PatientVector& direction, const CArmAngles& angles);

/// Unit normal of a closed contour, right-handed about its vertices (area vector): exact when it is planar.
/// @errors TooFewPoints below 3, NonFinite, Degenerate when it encloses no area.
Result<PatientVector> contourNormal(std::span<const PatientPoint> contour);

/// By parallel rays: mm as life-size, at any depth.
/// @param contour  closed, first point not repeated, LPS mm. @errors those of contourNormal() and
/// validate(angles). Accuracy: that of the polygon; an ellipse of 64 points reads at most 0.12 % low.
Result<ProjectedWidth> projectedWidth(std::span<const PatientPoint> contour, const CArmAngles& angles);

/// With the perspective of the arm's camera: mm as a caliper reads that was scaled at the isocentre.
/// @errors as above, those of cameraOf(), and InvalidArgument when a part lies level with or behind the
/// source.
Result<ProjectedWidth> projectedWidth(std::span<const PatientPoint> contour, const CArm& arm);

/// How sure a predicted width is.
struct PredictionOptions {
    double contourUncertaintyMm = 0.5; ///< of a diameter of the CT contour; assumption
    /// Standard deviation of each C-arm angle against the patient: its display, and how the patient lies on
    /// the two tables. Assumption.
    double angleUncertaintyDeg = 5.0;
};

/// The width that the contour predicts at these angles, with the shares of the contour (`edge`) and of the
/// angles
/// (`plane`: spread over both angles' distributions, by 5-point Gauss-Hermite rules).
/// @errors those of projectedWidth(); Degenerate when the view is too near en face to have a width;
/// InvalidArgument for options that are negative or not finite.
Result<Estimate> predictedWidth(std::span<const PatientPoint> contour, const CArmAngles& angles,
                                const PredictionOptions& options = {});

} // namespace gauge::core
