// From the pixels of an echo picture to millimetres in the view, as probe_pose.h counts them: sideways from the tip of the
// sector, and along the beam.
#pragma once

#include "core/cine/echo_region.h"

#include <Eigen/Core>
#include <optional>

namespace gauge::core {

struct ViewCoordinates {
    Eigen::Vector2d tipPixel{0.0, 0.0}; ///< where the tip of the sector lies, picture coordinates
    Eigen::Vector2d mmPerPixel{1.0, 1.0};
    bool tipIsTold = false; ///< the file told it; else the middle of the region's upper edge stands for it

    Eigen::Vector2d mmFromPixel(const Eigen::Vector2d& p) const { return (p - tipPixel).cwiseProduct(mmPerPixel); }
    Eigen::Vector2d pixelFromMm(const Eigen::Vector2d& mm) const { return tipPixel + mm.cwiseQuotient(mmPerPixel); }
};

/// Those of a calibrated tissue region; the reference pixel of a sector is its tip (PS3.3 C.8.5.5.1.12). nullopt for a region
/// without a believable scale.
std::optional<ViewCoordinates> viewCoordinates(const EchoRegion& region);

} // namespace gauge::core
