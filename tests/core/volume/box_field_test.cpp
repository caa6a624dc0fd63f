#include "core/volume/box_field.h"

#include "core/volume/distance_transform.h"

#include <gtest/gtest.h>
#include <limits>
#include <random>

using namespace gauge::core;

namespace {

// Floats of values up to a thousand.
constexpr double kFloatRounding = 1e-3;

BoxGrid grid(const Eigen::Vector3i& size, double stepMm = 0.5) {
    BoxGrid g;
    g.origin = {{10, -20, 30}};
    g.axes = Eigen::AngleAxisd(0.3, Eigen::Vector3d(1, 1, 0).normalized()).toRotationMatrix();
    g.stepMm = stepMm;
    g.size = size;
    return g;
}

std::shared_ptr<const Volume> tiltedVolume() {
    Eigen::Affine3d placement = Eigen::Affine3d::Identity();
    Eigen::Matrix3d shear = Eigen::Vector3d(0.5, 0.5, 1.0).asDiagonal();
    shear(1, 2) = 0.4;
    placement.linear() = shear;
    std::vector<std::int16_t> voxels;
    for (int k = 0; k < 20; ++k)
        for (int j = 0; j < 30; ++j)
            for (int i = 0; i < 30; ++i)
                voxels.push_back(static_cast<std::int16_t>(4 * i + 10 * j + 20 * k));
    return Volume::make({30, 30, 20}, voxels, placement, VoxelQuantity::HounsfieldUnits, "").value();
}

/// Brute-force twin of distanceInsideMm.
double nearestBackgroundMm(const BoxMask& mask, const Eigen::Vector3i& node) {
    double best = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < mask.values.size(); ++i)
        if (!mask[i]) best = std::min(best, (mask.grid.node(i) - node).cast<double>().norm() * mask.grid.stepMm);
    return best;
}

} // namespace

TEST(BoxGrid, IndexAndNodeAreInverse) {
    const BoxGrid g = grid({4, 3, 5});
    for (std::size_t i = 0; i < g.count(); ++i)
        EXPECT_EQ(g.index(g.node(i)), i);
    EXPECT_EQ(g.index({1, 2, 3}), 1u + 4u * 2u + 12u * 3u);
}

TEST(BoxGrid, PlacesItsNodesAndFindsThem) {
    const BoxGrid g = grid({4, 3, 5});
    const PatientPoint p = g.patientFrom(Eigen::Vector3d(1, 2, 3));
    EXPECT_NEAR(distanceMm(p, g.origin), 0.5 * std::sqrt(14.0), 1e-12);
    EXPECT_TRUE(g.coordFrom(p).isApprox(Eigen::Vector3d(1, 2, 3), 1e-12));
    EXPECT_EQ(g.nearest(p + PatientVector{{0.1, 0.1, -0.1}}), Eigen::Vector3i(1, 2, 3));
    EXPECT_EQ(g.nearest(g.patientFrom(Eigen::Vector3d(-7, 1, 99))), Eigen::Vector3i(0, 1, 4)) << "held at the faces";
    EXPECT_TRUE(g.contains(p));
    EXPECT_FALSE(g.contains(g.patientFrom(Eigen::Vector3d(3.2, 0, 0))));
}

TEST(BoxAround, IsOrthonormalAndCoversThePointsInATiltedStack) {
    const auto volume = tiltedVolume();
    const std::vector<PatientPoint> points{{{5, 6, 7}}, {{8, 9, 9}}};
    const BoxGrid g = boxAround(*volume, points, 2.0, 0.5);
    EXPECT_TRUE((g.axes.transpose() * g.axes).isIdentity(1e-12));
    for (const auto& p : points) {
        EXPECT_TRUE(g.contains(p));
        for (const int axis : {0, 1, 2}) { // the margin, to a step
            EXPECT_GT(g.coordFrom(p)[axis], 2.0 / 0.5 - 1.0);
            EXPECT_LT(g.coordFrom(p)[axis], g.size[axis] - 1 - 2.0 / 0.5 + 1.0);
        }
    }
}

TEST(BoxAround, IsCutToTheVolume) {
    const auto volume = tiltedVolume();
    const BoxGrid g = boxAround(*volume, {{{1, 1, 1}}}, 500.0, 0.5);
    EXPECT_LE(g.size.x(), 30);
    EXPECT_LE(g.size.z(), 39);
}

TEST(Resample, IsExactForLinearValuesUnderTiltAndMarksTheOutside) {
    const auto volume = tiltedVolume();
    const BoxGrid g = boxAround(*volume, {{{7, 8, 9}}}, 500.0, 0.8);
    const auto field = resample(*volume, g, -5000.0f);
    int inside = 0, outside = 0;
    for (std::size_t i = 0; i < g.count(); ++i) {
        const PatientPoint p = g.patientFrom(i);
        if (!volume->contains(p)) {
            outside += field[i] == -5000.0f;
            continue;
        }
        ++inside;
        const Eigen::Vector3d c = volume->voxelFrom(p).ijk;
        EXPECT_NEAR(field[i], 4 * c.x() + 10 * c.y() + 20 * c.z(), kFloatRounding);
    }
    EXPECT_GT(inside, 1000);
    EXPECT_GT(outside, 100) << "the sheared stack leaves corners of the box empty";
}

TEST(Interpolate, IsTrilinearAndHeldAtTheFaces) {
    BoxField<float> field(grid({2, 2, 2}));
    field.values = {0, 10, 20, 30, 40, 50, 60, 100};
    const BoxGrid& g = field.grid;
    EXPECT_NEAR(interpolate(field, g.patientFrom(Eigen::Vector3d(0.5, 0.5, 0.5))), 310.0 / 8.0, kFloatRounding);
    EXPECT_NEAR(interpolate(field, g.patientFrom(Eigen::Vector3d(9, 9, 9))), 100.0, kFloatRounding);
    EXPECT_NEAR(interpolate(field, g.patientFrom(Eigen::Vector3d(0.25, -3, 0))), 2.5, kFloatRounding);
}

TEST(Smoothed, KeepsConstantsAndSpreadsAPeakByItsSigma) {
    BoxField<float> flat(grid({9, 9, 9}), 7.0f);
    for (const float v : smoothed(flat, 1.2).values)
        EXPECT_NEAR(v, 7.0, kFloatRounding);

    BoxField<float> peak(grid({41, 1, 1}));
    peak.values[20] = 1000.0f;
    const auto out = smoothed(peak, 1.0); // 2 steps of 0.5 mm
    double mass = 0, second = 0;
    for (int i = 0; i < 41; ++i) {
        mass += out.values[static_cast<std::size_t>(i)];
        second += out.values[static_cast<std::size_t>(i)] * std::pow(0.5 * (i - 20), 2);
    }
    EXPECT_NEAR(mass, 1000.0, 0.01);
    // Cut at 3 sigma, a normal distribution keeps 0.987 of its standard deviation; the grid's cut is a bit wider.
    EXPECT_GT(std::sqrt(second / mass), 0.985);
    EXPECT_LT(std::sqrt(second / mass), 1.0);
}

TEST(DistanceInside, HandValues) {
    BoxMask mask(grid({5, 4, 3}, 0.5), 1);
    mask.values[mask.grid.index({0, 0, 0})] = 0;
    const auto distance = distanceInsideMm(mask);
    EXPECT_EQ(distance[mask.grid.index({0, 0, 0})], 0.0f);
    EXPECT_FLOAT_EQ(distance[mask.grid.index({3, 0, 0})], 1.5f);
    EXPECT_FLOAT_EQ(distance[mask.grid.index({3, 2, 2})], 0.5f * std::sqrt(17.0f));
}

TEST(DistanceInside, EqualsItsBruteForceTwin) {
    std::mt19937 random(3);
    for (const double share : {0.02, 0.2, 0.7}) {
        BoxMask mask(grid({13, 9, 11}, 0.37), 1);
        for (auto& v : mask.values)
            v = std::uniform_real_distribution<>()(random) > share ? 1 : 0;
        const auto distance = distanceInsideMm(mask);
        for (std::size_t i = 0; i < mask.values.size(); ++i)
            ASSERT_NEAR(distance[i], nearestBackgroundMm(mask, mask.grid.node(i)), 1e-6) << i << " share " << share;
    }
}

TEST(DistanceInside, WithoutBackgroundIsTheGreatestFloat) {
    const auto distance = distanceInsideMm(BoxMask(grid({4, 4, 4}), 1));
    for (const float v : distance.values)
        EXPECT_EQ(v, std::numeric_limits<float>::max());
}
