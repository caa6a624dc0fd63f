// ITK's side of the comparison behind plain types: ITK brings an Eigen of its own, so its headers and ours never meet in one
// file.
#pragma once

#include "tests/bench/compare/comparison.h"

#include <array>
#include <cstdint>
#include <string>
#include <vector>

namespace gauge::bench {

/// Values that are not its own, i fastest.
template <class T> struct ItkBlock {
    const T* values = nullptr;
    std::array<int, 3> size{};
    std::array<double, 3> spacing{1.0, 1.0, 1.0}, origin{};
};

/// Where a picture's pixel (0, 0) lies, its unit axes, its spacing and size.
struct ItkPlane {
    std::array<double, 3> first{}, u{}, v{}, normal{};
    double pixelMm = 1.0;
    int columns = 0, rows = 0;
};

using ItkNode = std::array<int, 3>;

void setItkThreads(unsigned threads);
std::function<Check()> itkGrow(ItkBlock<std::int16_t> ct, ItkNode seed, int level);
std::function<Check()> itkComponents(ItkBlock<std::int16_t> ct, int level);
/// Check: the sum over what lies outside of the mask, where the filter counts to the mask's nearest voxel, in metres.
std::function<Check()> itkDistanceOutside(ItkBlock<std::uint8_t> mask);
std::function<Check()> itkOblique(ItkBlock<std::int16_t> ct, ItkPlane plane);
std::function<Check()> itkSectionContour(const float* picture, int columns, int rows, int level);
std::function<Check()> itkArrival(ItkBlock<float> speed, ItkNode from, ItkNode to);
std::function<Check()> itkLoad(std::vector<std::string> files);

} // namespace gauge::bench
