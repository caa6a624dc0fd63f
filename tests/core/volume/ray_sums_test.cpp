// The twins of the inner loop of simulated radiographs.
#include "core/volume/ray_sums.h"

#include "core/fast/fast_path.h"
#include "core/fluoro/c_arm.h"
#include "core/volume/radiograph.h"

#include <algorithm>
#include <array>
#include <gtest/gtest.h>
#include <memory>
#include <random>
#include <vector>

using namespace gauge::core;

namespace {

/// A random block, and random rays along one of its axes: also along its faces, outside it, and through a few slices only.
struct RandomBundle {
    std::vector<std::int16_t> voxels;
    RayBundle rays;

    RandomBundle(std::mt19937& random, int axis) {
        const auto whole = [&](int low, int high) { return std::uniform_int_distribution<int>(low, high)(random); };
        const auto real = [&](double low, double high) {
            return static_cast<float>(std::uniform_real_distribution<double>(low, high)(random));
        };
        const std::array<int, 3> size{whole(2, 40), whole(2, 40), whole(2, 40)};
        const std::array<std::ptrdiff_t, 3> strides{1, size[0], static_cast<std::ptrdiff_t>(size[0]) * size[1]};
        voxels.resize(static_cast<std::size_t>(size[0]) * static_cast<std::size_t>(size[1]) *
                      static_cast<std::size_t>(size[2]));
        for (auto& v : voxels)
            v = static_cast<std::int16_t>(whole(0, 20) == 0 ? whole(-32768, 32767) : whole(-1100, 3000));
        const auto p = static_cast<std::size_t>(axis == 0 ? 1 : 0), q = static_cast<std::size_t>(axis == 2 ? 1 : 2);
        rays.voxels = voxels.data();
        rays.strideP = strides[p];
        rays.strideQ = strides[q];
        rays.strideSlice = strides[static_cast<std::size_t>(axis)];
        rays.sizeP = size[p];
        rays.sizeQ = size[q];
        rays.slices = size[static_cast<std::size_t>(axis)];
        rays.every = whole(1, 3);
        rays.middle = static_cast<float>(rays.slices / 2);
        rays.count = RayBundle::kLanes * whole(1, RayBundle::kMost / RayBundle::kLanes);
        float last = -1.0f;
        for (int r = 0; r < rays.count; ++r) {
            rays.p[r] = real(-2.0, rays.sizeP + 1.0);
            rays.q[r] = whole(0, 5) == 0 ? static_cast<float>(whole(0, rays.sizeQ - 1)) : real(-2.0, rays.sizeQ + 1.0);
            rays.alongP[r] = whole(0, 5) == 0 ? 0.0f : real(-1.5, 1.5);
            rays.alongQ[r] = real(-1.5, 1.5);
            rays.begin[r] = whole(0, 2) == 0 ? -0.5f : real(-0.5, rays.slices - 0.5);
            rays.end[r] = whole(0, 2) == 0 ? static_cast<float>(rays.slices) - 0.5f : real(-0.5, rays.slices - 0.5);
            last = std::max(last, rays.end[r]);
        }
        rays.first = 0;
        rays.last = static_cast<std::int32_t>(last + 0.5f * static_cast<float>(rays.every));
    }
};

} // namespace

TEST(SumAlongRays, TwinsAgreeToTheLastBitOverRandomBlocks) {
    for (unsigned seed = 1; seed <= 300; ++seed)
        for (int axis = 0; axis < 3; ++axis) {
            std::mt19937 random(seed);
            const auto bundle = std::make_unique<RandomBundle>(random, axis);
            if (bestFastPath() != FastPath::Avx2) GTEST_SKIP() << "this processor has no AVX2: there is one twin only";
            ASSERT_TRUE(avx2Serves(bundle->rays));
            const auto plain = std::make_unique<RayBundle>(bundle->rays), fast = std::make_unique<RayBundle>(bundle->rays);
            kRaySums.alongRays(*plain);
            raySumsAvx2()->alongRays(*fast);
            for (int r = 0; r < plain->count; ++r)
                ASSERT_EQ(plain->sum[r], fast->sum[r]) << "seed " << seed << ", axis " << axis << ", ray " << r;
            EXPECT_TRUE(std::any_of(plain->sum, plain->sum + plain->count, [](float sum) { return sum > 0.0f; }));
        }
}

// Worked by hand: three slices of 2 x 2 voxels, 1.0 of water's attenuation (0 HU) but for one voxel of 2.0.
TEST(SumAlongRays, IsTheBilinearSumOfTheSlicesSharesWorkedByHand) {
    std::vector<std::int16_t> voxels(12, 0);
    voxels[4] = 1000; // slice 1, p = q = 0
    const auto rays = std::make_unique<RayBundle>();
    rays->voxels = voxels.data();
    rays->strideP = 1, rays->strideQ = 2, rays->strideSlice = 4;
    rays->sizeP = rays->sizeQ = 2;
    rays->slices = 3;
    rays->first = 0, rays->last = 2;
    rays->middle = 1.0f;
    rays->count = RayBundle::kLanes;
    for (int r = 0; r < rays->count; ++r) {
        rays->p[r] = 0.25f, rays->q[r] = 0.5f;
        rays->alongP[r] = rays->alongQ[r] = 0.0f;
        rays->begin[r] = -0.25f, rays->end[r] = 2.5f;
    }
    // Slice 0 with three quarters of its length, 1 with 1000 + 0.75 * 0.5 * 1000, 2 whole: 750 + 1375 + 1000.
    sumAlongRays(*rays);
    EXPECT_FLOAT_EQ(rays->sum[0], 3125.0f);
}

TEST(SimulateRadiographTwins, WholePicturesAgreeToTheLastBit) {
    std::mt19937 random(7);
    const Eigen::Vector3i size(45, 38, 33);
    std::vector<std::int16_t> voxels(static_cast<std::size_t>(size.prod()));
    for (auto& v : voxels)
        v = static_cast<std::int16_t>(std::uniform_int_distribution<int>(-1100, 2000)(random));
    Eigen::Affine3d placement = Eigen::Affine3d::Identity();
    placement.rotate(Eigen::AngleAxisd(0.4, Eigen::Vector3d(1, 2, 3).normalized()));
    placement.scale(0.5);
    const auto volume = Volume::make(size, voxels, placement, VoxelQuantity::HounsfieldUnits, "").value();
    for (int view = 0; view < 12; ++view) {
        CArm arm;
        arm.angles = {std::uniform_real_distribution<>(-180, 180)(random), std::uniform_real_distribution<>(-90, 90)(random)};
        arm.isocentre = volume->patientFrom({Eigen::Vector3d(22, 19, 16)});
        arm.sourceToIsocentreMm = 100.0;
        arm.sourceToDetectorMm = 150.0;
        arm.imagerSpacingMm = Eigen::Vector2d::Constant(0.6);
        arm.columns = arm.rows = 83;
        const auto camera = cameraOf(arm).value();
        const FastPathScope plainly(FastPath::Portable);
        const auto plain = simulateRadiograph(*volume, camera).value();
        const FastPathScope fast(FastPath::Avx2);
        EXPECT_EQ(simulateRadiograph(*volume, camera)->waterMm, plain.waterMm) << words(arm.angles);
    }
}

TEST(SumAlongRays, TheFastTwinIsLeftAloneWhereItCannotServe) {
    RayBundle rays;
    rays.sizeP = 1, rays.sizeQ = 5, rays.slices = 5;
    EXPECT_FALSE(avx2Serves(rays));
    rays.sizeP = 50'000, rays.sizeQ = 50'000, rays.strideQ = 50'000;
    EXPECT_FALSE(avx2Serves(rays));
}
