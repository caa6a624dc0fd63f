// A simulated radiograph: what a fluoroscope of the same geometry would see of a CT, as line integrals of attenuation along
// the rays of a pinhole camera. The C-arm's camera is in core/fluoro/c_arm.h; chambers as volumes of their own, to enhance
// them or to see them alone, in chamber_volume.h.
//
//   source *-----[ first voxel's face … last voxel's face ]-----| pixel      pixel value = sum of (HU + 1000)/1000 x mm
#pragma once

#include "core/geometry/camera.h"
#include "core/parallel/progress.h"
#include "core/result.h"
#include "core/volume/volume.h"

#include <cstddef>
#include <vector>

namespace gauge::core {

struct RadiographOptions {
    /// Slices (of the axis that the rays cross most steeply) that are sampled: 1 all, 2 every second and so on, up to 8. For
    /// pictures that move.
    int everySlice = 1;
};

/// Line integrals, row after row; placed in the patient by the camera.
struct Radiograph {
    PinholeCamera camera;
    std::vector<float> waterMm; ///< water-equivalent length along each pixel's ray, mm; 0 where it misses the volume

    float at(int column, int row) const {
        return waterMm[static_cast<std::size_t>(row) * static_cast<std::size_t>(camera.columns) +
                       static_cast<std::size_t>(column)];
    }
};

/// Integrates attenuation relative to water, (HU + 1000)/1000 and never below 0, from the source to each pixel's centre. A
/// voxel fills its cell, so that the volume ends half a voxel outside its outermost centres; outside there is nothing.
/// @param volume  in Hounsfield units; any affine.
/// @param camera  at most 64 million pixels.
/// @errors InvalidArgument for another quantity, options out of range, or a picture without pixels or with too many;
/// NonFinite or Degenerate for a camera without a picture (source in the detector's plane, steps parallel); Cancelled.
/// Accuracy: bilinear within a slice, so that structures keep their integral; float sums. Bodies a few voxels thick or more
/// within 1 % of their line integral (tests/core/volume/radiograph_test.cpp, with the numbers in DEVELOPERS.md).
Result<Radiograph> simulateRadiograph(const Volume& volume, const PinholeCamera& camera,
                                      const RadiographOptions& options = {}, const WorkContext& work = {});

/// Between which line integrals a picture lies, leaving out `share` (0 to 0.5) of its pixels at either end; pixels whose ray misses
/// the volume do not count. low = high = 0 for a picture of nothing.
struct AttenuationRange {
    double lowMm = 0.0, highMm = 0.0;
    bool operator==(const AttenuationRange&) const = default;
};
AttenuationRange attenuationRange(const Radiograph& picture, double share = 0.01);

/// base + factor x extra, pixel by pixel. Precondition: both have the same number of pixels.
void addTo(Radiograph& base, const Radiograph& extra, double factor);

} // namespace gauge::core
