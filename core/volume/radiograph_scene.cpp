#include "core/volume/radiograph_scene.h"

namespace gauge::core {

Result<Radiograph> simulateRadiograph(const RadiographScene& scene, const PinholeCamera& camera, const RadiographOptions& options,
                                      const WorkContext& work) {
    const Volume* first = scene.alone ? scene.chamber.get() : scene.ct.get();
    if (!first)
        return failure(ErrorCode::InvalidArgument, scene.alone ? "Cannot simulate a radiograph: there is no chamber to show alone."
                                                               : "Cannot simulate a radiograph: there is no CT.");
    auto picture = simulateRadiograph(*first, camera, options, work);
    if (!picture || scene.alone || !scene.chamber) return picture;
    // A chamber is small against the CT: all of its slices cost little.
    const auto filled = simulateRadiograph(*scene.chamber, camera, {}, {work.stop, {}});
    if (!filled) return tl::make_unexpected(filled.error());
    addTo(*picture, *filled, scene.filling);
    return picture;
}

} // namespace gauge::core
