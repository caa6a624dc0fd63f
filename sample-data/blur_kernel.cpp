#include "sample-data/blur_kernel.h"

#include <algorithm>
#include <numeric>

namespace gauge::sample_case {
namespace {

struct Taps {
    int first;
    std::vector<double> weights;
    double variance;
};

Taps gaussianTaps(double width, double cell, int factor, double reach) {
    const double centre = 0.5 * (factor - 1); // in cells, from the voxel's first cell
    const int half = static_cast<int>(std::ceil(reach / cell));
    Taps taps{static_cast<int>(std::ceil(centre - half)), {}, 0.0};
    const int last = static_cast<int>(std::floor(centre + half));
    for (int i = taps.first; i <= last; ++i) {
        const double x = (i - centre) * cell;
        taps.weights.push_back(std::exp(-0.5 * x * x / (width * width)));
    }
    const double sum = std::accumulate(taps.weights.begin(), taps.weights.end(), 0.0);
    for (std::size_t i = 0; i < taps.weights.size(); ++i) {
        taps.weights[i] /= sum;
        const double x = (taps.first + static_cast<int>(i) - centre) * cell;
        taps.variance += taps.weights[i] * x * x;
    }
    return taps;
}

} // namespace

BlurKernel blurKernel(double sigma, double cell, int factor, bool cellsAreAverages) {
    const double box = cellsAreAverages ? cell * cell / 12.0 : 0.0;
    const double wanted = std::max(sigma * sigma - box, 0.0);
    const double reach = 3.7 * sigma + 0.5 * cell;
    double low = 0.02 * sigma, high = 2.0 * sigma;
    for (int step = 0; step < 60; ++step) {
        const double middle = 0.5 * (low + high);
        (gaussianTaps(middle, cell, factor, reach).variance < wanted ? low : high) = middle;
    }
    const Taps found = gaussianTaps(0.5 * (low + high), cell, factor, reach);
    BlurKernel kernel;
    kernel.first = found.first;
    kernel.achievedVariance = found.variance + box;
    kernel.taps.assign(found.weights.begin(), found.weights.end());
    return kernel;
}

} // namespace gauge::sample_case
