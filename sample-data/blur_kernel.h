// Taps of a Gaussian on a grid finer than the voxels.
#pragma once

#include <cmath>
#include <numbers>
#include <vector>

namespace gauge::sample_case {

inline double gaussianSigmaFromFwhm(double fwhm) {
    return fwhm / (2.0 * std::sqrt(2.0 * std::numbers::ln2));
}

/// Symmetric taps about a voxel centre over cells of width `cell`, `factor` cells to a voxel.
struct BlurKernel {
    int first = 0; ///< index of the first tap's cell, counted from the voxel's own first cell
    std::vector<float> taps;
    double achievedVariance = 0.0;
};

/// Taps whose variance together with that of a box of one cell (cells hold averages) is `sigma`^2 exactly,
/// where the grid is fine enough for it; otherwise as close as it can be (see `achievedVariance`).
BlurKernel blurKernel(double sigma, double cell, int factor, bool cellsAreAverages = true);

} // namespace gauge::sample_case
