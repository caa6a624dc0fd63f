// Surfaces against scikit-image's marching cubes (method "lorensen", which also interpolates along grid edges).
#include "core/volume/iso_surface.h"

#include "tests/outside/python_reference.h"

#include <cmath>
#include <gtest/gtest.h>
#include <random>

using namespace gauge::core;
using namespace gauge::test;

namespace {

// Both put points where the value along a grid edge crosses the level; the other library computes in single precision.
constexpr double kSameVoxels = 1e-3;
// Where a cube or face has several fillings the two may choose different ones: seen in area and volume only.
constexpr double kShareOfFillings = 2e-3;

} // namespace

TEST(SurfaceOutside, OfABentBodyHasThePointsAreaAndVolumeOfScikitImages) {
    const Eigen::Vector3i size(44, 38, 41);
    std::mt19937 random(8);
    std::normal_distribution<double> noise(0.0, 8.0);
    std::vector<std::int16_t> values;
    for (int k = 0; k < size.z(); ++k)
        for (int j = 0; j < size.y(); ++j)
            for (int i = 0; i < size.x(); ++i) {
                const Eigen::Vector3d p(i - 21.3, j - 18.2, k - 20.1);
                const double ball = p.norm() - 10.0, arm = std::hypot(p.y() - 0.02 * p.x() * p.x(), p.z()) - 4.0;
                const double d = std::min(ball, p.x() > 0 && p.x() < 17 ? arm : 99.0);
                values.push_back(static_cast<std::int16_t>(std::lround(200.0 * std::erfc(d) + noise(random))));
            }
    const double level = 200.5;
    const auto mesh = isoSurface(ValueBlock{values.data(), size, Eigen::Affine3d::Identity()}, level);
    ASSERT_TRUE(mesh);
    std::vector<Eigen::Vector3d> places;
    for (std::size_t i = 0; i < mesh->points.size(); ++i)
        places.push_back(mesh->point(i).mm);
    const auto other = askPython("surface", {{"values", values},
                                             {"shape", {size.x(), size.y(), size.z()}},
                                             {"level", level},
                                             {"places", toJson(places)}});
    EXPECT_LT(other["there"].get<double>(), kSameVoxels) << "each of our points is one of theirs";
    EXPECT_LT(other["back"].get<double>(), kSameVoxels) << "and theirs of ours";
    EXPECT_EQ(mesh->points.size(), other["points"].get<std::size_t>());
    EXPECT_NEAR(areaMm2(*mesh) / other["area"].get<double>(), 1.0, kShareOfFillings);
    EXPECT_NEAR(enclosedVolumeMm3(*mesh) / other["volume"].get<double>(), 1.0, kShareOfFillings);
}
