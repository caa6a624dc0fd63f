// What the header of an X-ray cine (XA, Enhanced XA, RF) says of its angles, scale and times; no pixels are
// read. Neighbours: xray_reader.h gives the frames too.
//
// Which scale is used, the first that the file allows (PS3.3 10.7, C.8.7.5, C.8.19.6.9):
//   1. PixelSpacing calibrated by the device on an object of known size (FIDUCIAL);
//   2. PixelSpacing or ObjectPixelSpacingInCenterOfBeam that the device derived from its geometry (GEOMETRY);
//   3. ImagerPixelSpacing reduced to the isocentre by SOD/SID or by the magnification factor;
//   4. PixelSpacing that differs from ImagerPixelSpacing but does not say how it was calibrated.
// ImagerPixelSpacing alone, and a PixelSpacing equal to it, measure at the detector: no scale of the patient.
#pragma once

#include "core/cine/frame_times.h"
#include "core/fluoro/c_arm.h"
#include "core/fluoro/fluoro_scale.h"
#include "core/result.h"
#include "dicomio/scan/dataset.h"

#include <Eigen/Core>
#include <optional>
#include <string>
#include <vector>

namespace gauge::dicomio {

/// What is told for one frame; what is not told, or cannot be true, is nullopt.
struct XrayFrame {
    std::optional<core::CArmAngles> angles; ///< about the patient
    std::optional<core::CArmAngles>
        isocentreAngles; ///< about the table; those of the patient only if supine, head first
    std::optional<Eigen::Vector2d> imagerSpacingMm; ///< at the detector: along a row, along a column
    std::optional<double> sourceToDetectorMm;       ///< SID
    std::optional<double> sourceToIsocentreMm;      ///< SOD
    std::optional<double> magnification;            ///< as told by the file
    std::optional<core::FluoroScale> scale;         ///< of the patient; nullopt: no millimetres
};

/// In falling order of trust, None first.
enum class XrayScaleSource { None, Fiducial, Geometry, Isocentre, Untold };

struct XrayFacts {
    std::vector<XrayFrame> frames; ///< one a frame of the image
    core::FrameTimes times;
    bool moving = false; ///< the arm turns during the run: angles differ between frames
    XrayScaleSource scaleSource = XrayScaleSource::None; ///< of the first frame
    /// Which scale was used, or why there is none, in a sentence.
    std::string scaleText;
    std::vector<core::Notice> notices;
};

/// Never fails: what cannot be read or cannot be true becomes a notice, and gives no number.
/// @param columns, rows, frames  of the image, each >= 1.
XrayFacts xrayFacts(const Dataset& dataset, int columns, int rows, int frames);

/// "fiducial", "geometry", "isocentre", "not-told", "none".
std::string_view words(XrayScaleSource source);

} // namespace gauge::dicomio
