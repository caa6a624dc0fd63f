// The C-arm of a fluoroscopy: its angles in DICOM's sense, the direction in which it looks at the patient,
// and the camera that it is. Neighbours: projected_width.h (what a contour looks like), view_planning.h
// (which angles to use).
//
//   Seen from the feet, table below, detector above at angle 0:        Angles of PS3.3 C.8.7.5:
//                     detector, primary 0                                primary    LAO +, RAO -   -180 … 180
//            RAO -  \      |      /  LAO +                               secondary  CRA +, CAU -    -90 … 90
//                     \    |    /                                      Patient axes LPS: x left, y back, z
//                     head.
//   patient's right      --o--      patient's left                     Direction from the patient to the
//   detector:
//                          |                                           d = (sin a cos b, -cos a cos b, sin b)
//                        source
#pragma once

#include "core/geometry/camera.h"
#include "core/geometry/points.h"
#include "core/result.h"

#include <Eigen/Core>
#include <string>

namespace gauge::core {

/// Positioner angles about the patient, degrees: LAO and CRA positive, RAO and CAU negative.
struct CArmAngles {
    double primaryDeg = 0.0;
    double secondaryDeg = 0.0;
    bool operator==(const CArmAngles&) const = default;
};

/// @errors NonFinite; InvalidArgument outside -180 … 180 and -90 … 90.
Result<void> validate(const CArmAngles& angles);

/// "RAO 32, CRA 2": whole degrees, as the trade says them; "LAO 0, CRA 0" straight from the front.
std::string words(const CArmAngles& angles);

/// Unit vector from the patient to the detector, LPS. Source: PS3.3 C.8.7.5; the formula is drawn above.
PatientVector beamDirection(const CArmAngles& angles);

/// The angles whose beam direction is `towardDetector` (need not be a unit vector, not zero). At the poles,
/// where the primary angle has no meaning, it is 0. Inverse of beamDirection() for primary in (-180, 180].
CArmAngles anglesOf(const PatientVector& towardDetector);

/// Axes of the picture, seen from the detector towards the source with the patient's head up: at 0/0 the
/// patient's left is on the right. Right-handed: right x up = toward the detector. A detector that is turned
/// or a picture that is mirrored is not covered; widths do not depend on it.
struct PictureAxes {
    PatientVector right;
    PatientVector up;
    PatientVector towardDetector;
};
PictureAxes pictureAxes(const CArmAngles& angles);

/// A C-arm in place: the isocentre in the patient, and how far source and detector are from it.
struct CArm {
    CArmAngles angles;
    PatientPoint isocentre;
    double sourceToIsocentreMm = 0.0; ///< SOD
    double sourceToDetectorMm = 0.0;  ///< SID
    Eigen::Vector2d imagerSpacingMm =
        Eigen::Vector2d::Zero(); ///< at the detector: along a row, along a column
    int columns = 0;
    int rows = 0;

    /// Magnification at the isocentre: SID / SOD.
    double magnification() const { return sourceToDetectorMm / sourceToIsocentreMm; }
};

/// The camera of the arm, the isocentre's image in the middle of the picture.
/// @errors those of validate(angles); InvalidArgument unless 0 < SOD < SID, spacings above 0, picture not
/// empty.
Result<PinholeCamera> cameraOf(const CArm& arm);

} // namespace gauge::core
