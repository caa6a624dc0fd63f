#include "core/measure/section_outline.h"

#include "core/geometry/planar_contour.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <numbers>

using namespace gauge::core;

namespace {

constexpr double kVoxelMm = 0.4;
constexpr double kRoundingMm = 1e-4; // of places held as single floats of Hounsfield units
constexpr int kBloodHu = 400, kWallHu = 40;

/// Rods of blood along z in wall: (x, y, radius) each; blurred over one voxel.
std::shared_ptr<const Volume> rods(const std::vector<Eigen::Vector3d>& all) {
    const Eigen::Vector3i size(120, 120, 8);
    std::vector<std::int16_t> voxels;
    for (int k = 0; k < size.z(); ++k)
        for (int j = 0; j < size.y(); ++j)
            for (int i = 0; i < size.x(); ++i) {
                double depth = -1e9;
                for (const auto& rod : all)
                    depth = std::max(depth, rod.z() - std::hypot(kVoxelMm * (i - 60) - rod.x(), kVoxelMm * (j - 60) - rod.y()));
                const double share = std::clamp(0.5 + depth / kVoxelMm, 0.0, 1.0);
                voxels.push_back(static_cast<std::int16_t>(std::lround(kWallHu + share * (kBloodHu - kWallHu))));
            }
    Eigen::Affine3d place = Eigen::Affine3d::Identity();
    place.linear() *= kVoxelMm;
    place.translation() << -60 * kVoxelMm, -60 * kVoxelMm, -4 * kVoxelMm;
    return Volume::make(size, std::move(voxels), place, VoxelQuantity::HounsfieldUnits, "").value();
}

SectionFrame across() {
    return frameOf(Plane{{Eigen::Vector3d(0.1, -0.2, 0.3)}, {Eigen::Vector3d(0.1, 0.05, 1.0).normalized()}});
}

Result<Outline> traced(const Volume& volume, double firstReachMm, double greatestReachMm = 20.0) {
    OutlineOptions options;
    options.levelHu = 0.5 * (kBloodHu + kWallHu);
    options.firstReachMm = firstReachMm;
    options.greatestReachMm = greatestReachMm;
    return traceOutline(volume, across(), options);
}

} // namespace

TEST(TraceOutline, FindsTheRodWhateverFieldItLooksAtFirst) {
    const auto volume = rods({{0, 0, 6.0}, {9, 9, 3.0}});
    const auto wide = traced(*volume, 20.0);
    ASSERT_TRUE(wide) << wide.error().message;
    EXPECT_NEAR(signedAreaMm2(wide->contour), 36.0 * std::numbers::pi, 1.5); // calmed by half a pixel, 0.3 mm grid
    for (double reach = 4.0; reach < 20.0; reach += 0.3) { // some end just beside the rod, some within it
        const auto narrow = traced(*volume, reach);
        ASSERT_TRUE(narrow) << "first field of " << reach << " mm: " << narrow.error().message;
        ASSERT_EQ(narrow->contour.size(), wide->contour.size()) << reach;
        for (std::size_t i = 0; i < wide->contour.size(); ++i)
            ASSERT_LT((narrow->contour[i] - wide->contour[i]).norm(), kRoundingMm) << reach;
        ASSERT_EQ(narrow->insideHu.size(), wide->insideHu.size()) << reach;
    }
}

TEST(TraceOutline, CutsAThinBridgeAndLeavesAThickOne) {
    const double alone = 36.0 * std::numbers::pi;
    const auto thin = traced(*rods({{0, 0, 6.0}, {6.2, 0, 0.45}, {6.8, 0, 0.45}, {10.5, 0, 3.6}}), 20.0);
    ASSERT_TRUE(thin) << thin.error().message;
    EXPECT_NEAR(signedAreaMm2(thin->contour), alone, 3.0); // with up to two pixels of the bridge
    const auto thick = traced(*rods({{0, 0, 6.0}, {6.5, 0, 2.0}, {10.5, 0, 3.6}}), 20.0);
    ASSERT_TRUE(thick) << thick.error().message;
    EXPECT_GT(signedAreaMm2(thick->contour), alone + 30.0);
}

TEST(TraceOutline, SaysWhereThereIsNoBloodOrItRunsOn) {
    const auto none = traced(*rods({{15, 0, 3.0}}), 16.0);
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().code, ErrorCode::SectionNotFound);
    EXPECT_EQ(none.error().message, "Cannot measure this section: no blood was found within 2 mm of its middle. Move the plane so "
                                    "that it crosses the filled appendage.");
    const auto open = traced(*rods({{0, 0, 18.0}}), 8.0, 12.0);
    ASSERT_FALSE(open);
    EXPECT_EQ(open.error().code, ErrorCode::SectionOpen);
    EXPECT_EQ(open.error().message, "Cannot measure this section: its blood runs on beyond 12 mm, so the plane opens into a "
                                    "chamber. Move it towards the tip or tilt it.");
    // The bright half of the field deepens towards its border: the way uphill ends there.
    const auto half = traced(*rods({{30, 0, 30.5}}), 8.0, 12.0);
    ASSERT_FALSE(half);
    EXPECT_EQ(half.error().code, ErrorCode::SectionOpen);
}
