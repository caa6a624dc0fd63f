// The pinhole camera of an angiographic C-arm (PS3.3 C.8.7.5: LAO and cranial angles are positive).
//
//    source o----------- isocentre +------------------| detector: columns along `right`, rows along `down`
//           |<-- SOD ------------->|                  |
//           |<-- SID -------------------------------->|      towardsDetector ->
//
// At angles 0/0 the detector is in front of the patient, the patient's left on the picture's right, the feet below.
#pragma once

#include "core/geometry/points.h"

#include <Eigen/Core>

namespace gauge::sample_case {

struct CArm {
    core::PatientPoint isocentre;
    double primaryDeg = 0.0;   ///< LAO +, RAO -
    double secondaryDeg = 0.0; ///< cranial +, caudal -
    double sidMm = 1100.0;     ///< source to detector
    double sodMm = 750.0;      ///< source to isocentre
    int columns = 512, rows = 512;
    double imagerSpacingMm = 0.3;

    core::PatientVector towardsDetector() const;
    core::PatientVector right() const;
    core::PatientVector down() const;
    core::PatientPoint source() const { return isocentre - towardsDetector() * sodMm; }
    /// Of a place between source and detector; whole numbers at pixel centres, the isocentre at the middle.
    Eigen::Vector2d pixelOf(const core::PatientPoint& p) const;
    core::PatientPoint detectorPoint(const Eigen::Vector2d& pixel) const;
    /// Millimetres at the detector for one in a plane through `p` parallel to it.
    double magnificationAt(const core::PatientPoint& p) const {
        return sidMm / (p - source()).dot(towardsDetector());
    }
};

} // namespace gauge::sample_case
