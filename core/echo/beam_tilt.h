// What a tilt between the probe's beam and the appendage's axis does to widths read across the seen axis, and its
// undoing.
//
//        beam  axis        Each view contains the beam and is turned about it by the probe angle t. A width drawn
//          \ .'            across the appendage as seen in the view lies in the true cross-section (it is perpendicular
//           V  tilt        to the axis), but in another direction than t says: with t counted from the view that
//                          holds the axis, tan(direction) = cos(tilt) tan(t).
//                          A width drawn across the beam instead is stretched by up to 1 / cos(tilt).
#pragma once

#include "core/geometry/points.h"
#include "core/result.h"

#include <Eigen/Core>
#include <span>

namespace gauge::core {

struct BeamTilt {
    double tiltDeg = 0.0;    ///< between beam and axis, [0, 90)
    double towardsDeg = 0.0; ///< probe angle of the view that holds the axis
    bool drawnAcrossBeam = false; ///< widths were drawn across the beam, not across the seen axis
};

/// Direction in the cross-section of a width read at `probeAngleRad`, radians; 0 is where probe angle 0 falls.
double sectionDirectionRad(const BeamTilt& tilt, double probeAngleRad);

/// The probe angle whose view shows the width in `sectionDirectionRad`.
double probeAngleRad(const BeamTilt& tilt, double sectionDirectionRad);

/// Length in the cross-section of a width read as `widthMm` at `probeAngleRad`: shorter where it was drawn across the
/// beam, unchanged otherwise.
double sectionWidthMm(const BeamTilt& tilt, double probeAngleRad, double widthMm);

/// Tilt of `axis` (atrium to tip) against a beam frame: `lateral0` is the direction of the sector's width at probe
/// angle 0, `beam` points away from the probe. Precondition: unit vectors, lateral0 perpendicular to beam.
BeamTilt tiltOf(const PatientVector& axis, const PatientVector& beam, const PatientVector& lateral0);

/// Tilt from the angles that the appendage makes with the beam in the views: tan(seen) = tan(tilt) cos(t - towards).
/// @param seenDeg  positive towards the side of the sector that probe angle 0 calls positive (right on the screen).
/// @errors TooFewPoints below two different views; InvalidArgument for angles of 90 degrees or more.
Result<BeamTilt> tiltFromViews(std::span<const double> probeAnglesDeg, std::span<const double> seenDeg);

/// Least and greatest error of the longest diameter (read - true) when a tilt is ignored, over all directions of the
/// ellipse and of the tilt, for an ellipse fitted to widths drawn across the seen axis at these probe angles.
struct TiltEffect {
    double leastMm = 0.0, greatestMm = 0.0;
};
TiltEffect longestErrorFromTilt(double longestMm, double shortestMm, double tiltDeg,
                                std::span<const double> probeAnglesDeg);

} // namespace gauge::core
