#include "core/echo/view_coordinates.h"

namespace gauge::core {

std::optional<ViewCoordinates> viewCoordinates(const EchoRegion& region) {
    if (!region.scale) return std::nullopt;
    ViewCoordinates view;
    view.mmPerPixel = region.scale->mmPerPixel;
    view.tipIsTold = region.x.referencePixel && region.y.referencePixel;
    view.tipPixel = view.tipIsTold ? Eigen::Vector2d(*region.x.referencePixel, *region.y.referencePixel)
                                   : Eigen::Vector2d(0.5 * (region.box.minX + region.box.maxX), region.box.minY);
    return view;
}

} // namespace gauge::core
