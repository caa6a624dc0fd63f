// What an index tells of one ultrasound or X-ray object: its regions, scale, probe angle, frame times and
// C-arm angles, from its header alone. The readers in ../ultrasound and ../angiography say more.
#pragma once

#include "core/cine/echo_region.h"
#include "core/fluoro/c_arm.h"
#include "core/result.h"
#include "dicomio/scan/scanner.h"

#include <Eigen/Core>
#include <optional>
#include <string>
#include <vector>

namespace gauge::dicomio {

struct ListedScale {
    /// "ultrasound-region", "volume" (of Enhanced ultrasound), "fiducial", "geometry", "isocentre",
    /// "not-told" (X-ray; see XrayScaleSource), "pixel-spacing" (CT).
    std::string source;
    Eigen::Vector2d mmPerPixel = Eigen::Vector2d::Zero(); ///< along a row, along a column
    std::optional<double> relativeUncertainty; ///< standard, relative; nothing where none is stated
    bool operator==(const ListedScale&) const = default;
};

/// One time point of an Enhanced ultrasound volume.
struct VolumeMoment {
    std::optional<double> offsetMs; ///< from the first
    std::vector<int> frames;        ///< 0-based, slice after slice
};

struct PictureFacts {
    std::string sopInstanceUid;
    int firstImage = 0; ///< place of its first frame in the images of its SeriesEntry
    int frames = 1;
    /// Of an Enhanced ultrasound volume with proved geometry: along a row, along a column, between slices,
    /// mm.
    std::optional<Eigen::Vector3d> volumeSpacingMm;
    std::vector<VolumeMoment> moments;
    std::optional<core::Error> volumeError; ///< why a volume has no geometry
    std::vector<core::EchoRegion> regions;
    std::optional<ListedScale>
        scale;                      ///< of the first region with lengths; of the first frame of an X-ray run
    std::optional<double> angleDeg; ///< of the probe
    std::vector<double> frameTimesMs;              ///< from the first frame; empty when not known
    std::optional<core::CArmAngles> positioner;    ///< of the first frame
    std::optional<core::CArmAngles> positionerEnd; ///< of the last frame, where the arm moves
    std::string scaleText;                         ///< of X-ray: which scale was used, or why there is none
    std::vector<core::Notice> notices;
};

/// @param kind  "ultrasound" or "x-ray". Precondition: the file has pixels.
PictureFacts pictureFacts(const ScannedFile& scanned, const std::string& kind);

} // namespace gauge::dicomio
