// A pinhole camera: source, flat detector and the straight rays between them. Fluoroscopes and simulated
// radiographs share it; the angles of a C-arm are in core/fluoro/c_arm.h.
//
//     source *------------------------------------. |
//             \  ray through a point p             \| (x, y) = picture coordinates in pixels:
//              '-----------p-----------------------'|   whole numbers at pixel centres, x along a row (column
//              index),
//                                                   |   y along a column (row index), (0, 0) the first pixel
//                                            detector
#pragma once

#include "core/geometry/points.h"

#include <Eigen/Core>
#include <optional>

namespace gauge::core {

struct PinholeCamera {
    PatientPoint source;
    PatientPoint firstPixel;  ///< centre of the pixel (0, 0) on the detector
    PatientVector columnStep; ///< from a pixel to its neighbour in the next column, mm
    PatientVector rowStep;    ///< from a pixel to its neighbour in the next row, mm
    int columns = 0;
    int rows = 0;

    /// Place on the detector in the patient's axes.
    PatientPoint detectorPoint(const Eigen::Vector2d& pixel) const {
        return firstPixel + pixel.x() * columnStep + pixel.y() * rowStep;
    }

    /// Distance from the source to the detector's plane along its normal, mm; > 0. Precondition: steps not
    /// parallel, source not in the plane.
    double sourceToDetectorMm() const;

    /// Distance of `p` from the source along the detector's normal, mm; positive towards the detector.
    double depthMm(const PatientPoint& p) const;

    /// Where the ray through `p` meets the detector's plane, pixels; may lie outside the picture. nullopt for
    /// points level with the source or behind it, which have no image.
    std::optional<Eigen::Vector2d> project(const PatientPoint& p) const;

    /// Unit vector of the ray from the source to a place on the detector.
    PatientVector rayThrough(const Eigen::Vector2d& pixel) const;

    /// How much larger than life an object parallel to the detector at the depth of `p` is on the detector;
    /// nullopt as project().
    std::optional<double> magnificationAt(const PatientPoint& p) const;

    /// True for places that the detector covers: pixel centres and half a pixel around.
    bool covers(const Eigen::Vector2d& pixel) const {
        return pixel.x() >= -0.5 && pixel.x() <= columns - 0.5 && pixel.y() >= -0.5 &&
               pixel.y() <= rows - 0.5;
    }
};

} // namespace gauge::core
