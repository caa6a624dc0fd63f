// What a simulated radiograph shows of a patient: the CT as it is, a chamber as if filled with contrast medium, or the chamber alone.
#pragma once

#include "core/volume/radiograph.h"

#include <memory>

namespace gauge::core {

/// What undiluted contrast medium attenuates beyond blood, as a multiple of water: 0.070 against 0.019 per mm near 33 keV. Common
/// practice, no source; for the look of the picture alone.
inline constexpr double kContrastMediumOverWater = 3.7;

struct RadiographScene {
    std::shared_ptr<const Volume> ct;      ///< may be null while a chamber is shown alone
    std::shared_ptr<const Volume> chamber; ///< as chamberVolume() makes it; null: none is filled
    double filling = kContrastMediumOverWater; ///< attenuation added per mm of chamber, relative to water
    bool alone = false;                    ///< the chamber without the CT: its length along each ray, mm
};

/// @errors InvalidArgument without any volume to show; those of simulateRadiograph() of a volume.
Result<Radiograph> simulateRadiograph(const RadiographScene& scene, const PinholeCamera& camera,
                                      const RadiographOptions& options = {}, const WorkContext& work = {});

} // namespace gauge::core
