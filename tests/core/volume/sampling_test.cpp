#include "core/volume/sampling.h"

#include "core/volume/section_image.h"

#include <gtest/gtest.h>
#include <random>

using namespace gauge::core;

namespace {

// Rounding of a few products of values of at most 1e4.
constexpr double kRounding = 1e-9;
// A section keeps floats: 24 bits of values of at most 1e4.
constexpr double kFloatRounding = 1e-3;

/// value = 3 i + 40 j + 500 k + 7: trilinear interpolation is exact for it.
std::shared_ptr<const Volume> linearVolume(const Eigen::Vector3i& size, const Eigen::Affine3d& placement) {
    std::vector<std::int16_t> voxels;
    for (int k = 0; k < size.z(); ++k)
        for (int j = 0; j < size.y(); ++j)
            for (int i = 0; i < size.x(); ++i)
                voxels.push_back(static_cast<std::int16_t>(3 * i + 40 * j + 500 * k + 7));
    return Volume::make(size, voxels, placement, VoxelQuantity::HounsfieldUnits, "").value();
}

double linearValue(const Eigen::Vector3d& c) {
    return 3 * c.x() + 40 * c.y() + 500 * c.z() + 7;
}

/// Oblique rows and columns, slices sheared by a tilt.
Eigen::Affine3d obliqueTilted() {
    Eigen::Affine3d out = Eigen::Affine3d::Identity();
    out.rotate(Eigen::AngleAxisd(0.4, Eigen::Vector3d(1, 2, -0.5).normalized()));
    Eigen::Matrix3d shear = Eigen::Vector3d(0.4, 0.6, 1.5).asDiagonal();
    shear(1, 2) = 0.5;
    out.linear() = out.linear() * shear;
    out.translation() = Eigen::Vector3d(-30, 12, 400);
    return out;
}

SectionGrid gridOn(const SectionFrame& frame, int columns, int rows, double pixelMm) {
    return {frame, columns, rows, pixelMm};
}

} // namespace

TEST(TrilinearSampler, HandValues) {
    const auto volume = Volume::make({2, 2, 2}, {0, 10, 20, 30, 40, 50, 60, 100}, Eigen::Affine3d::Identity(),
                                     VoxelQuantity::HounsfieldUnits, "")
                            .value();
    const TrilinearSampler sample(*volume);
    EXPECT_DOUBLE_EQ(sample({{0, 0, 0}}), 0.0);
    EXPECT_DOUBLE_EQ(sample({{1, 1, 1}}), 100.0);
    EXPECT_DOUBLE_EQ(sample({{0.25, 0, 0}}), 2.5);
    EXPECT_DOUBLE_EQ(sample({{0.5, 0.5, 0.5}}), 310.0 / 8.0) << "the mean of all eight";
    EXPECT_DOUBLE_EQ(sample({{1, 1, 0.75}}), 0.25 * 30 + 0.75 * 100);
}

TEST(TrilinearSampler, HoldsTheNearestValueOutside) {
    const auto volume = linearVolume({4, 3, 2}, Eigen::Affine3d::Identity());
    const TrilinearSampler sample(*volume);
    EXPECT_DOUBLE_EQ(sample({{-5, 1, 1}}), linearValue({0, 1, 1}));
    EXPECT_DOUBLE_EQ(sample({{9, 9, 9}}), linearValue({3, 2, 1}));
}

TEST(TrilinearSampler, TakesAVolumeOfOneSlice) {
    const auto volume = linearVolume({4, 3, 1}, Eigen::Affine3d::Identity());
    EXPECT_DOUBLE_EQ(TrilinearSampler(*volume)({{1.5, 0.5, 0.3}}), linearValue({1.5, 0.5, 0}));
}

TEST(TrilinearSampler, IsExactForLinearValuesInATiltedObliqueStack) {
    const auto volume = linearVolume({9, 8, 7}, obliqueTilted());
    const TrilinearSampler sample(*volume);
    std::mt19937 random(5);
    for (int n = 0; n < 500; ++n) {
        const Eigen::Vector3d c(std::uniform_real_distribution<>(0, 8)(random),
                                std::uniform_real_distribution<>(0, 7)(random),
                                std::uniform_real_distribution<>(0, 6)(random));
        EXPECT_NEAR(sample({volume->patientFromVoxel() * c}), linearValue(c), kRounding);
    }
}

TEST(CutSection, AxialGridOnTheVoxelsIsTheSlice) {
    const auto volume = linearVolume({5, 3, 4}, Eigen::Affine3d::Identity());
    const SectionImage image = cutSection(*volume, gridOn({{{2, 1, 2}}}, 5, 3, 1.0));
    ASSERT_EQ(image.values.size(), 15u);
    for (int j = 0; j < 3; ++j)
        for (int i = 0; i < 5; ++i)
            EXPECT_EQ(image.at(i, j), volume->at(i, j, 2)) << i << ' ' << j;
}

TEST(CutSection, PixelsLieWhereTheGridSays) {
    const SectionGrid grid = gridOn({}, 5, 4, 0.5);
    EXPECT_TRUE(grid.sectionFromPixel(2, 1.5).isApprox(Eigen::Vector2d(0, 0), 1e-12)) << "the middle";
    EXPECT_TRUE(grid.sectionFromPixel(0, 0).isApprox(Eigen::Vector2d(-1, -0.75)));
    EXPECT_TRUE(grid.pixelFromSection({-1, -0.75}).isZero(1e-12));
}

TEST(CutSection, ObliqueThroughATiltedStackHasItsExactAffine) {
    const auto volume = linearVolume({9, 8, 7}, obliqueTilted());
    const PatientPoint middle{volume->patientFromVoxel() * Eigen::Vector3d(4, 3.5, 3)};
    const SectionFrame frame = frameOf(Plane{middle, {{0.3, -0.5, 0.8}}});
    const SectionImage image = cutSection(*volume, gridOn(frame, 21, 17, 0.1));
    int inside = 0;
    for (int row = 0; row < 17; ++row)
        for (int column = 0; column < 21; ++column) {
            const PatientPoint p = frame.patientFromSection(image.grid.sectionFromPixel(column, row));
            if (!volume->contains(p)) continue;
            ++inside;
            EXPECT_NEAR(image.at(column, row), linearValue(volume->voxelFrom(p).ijk), kFloatRounding);
        }
    EXPECT_EQ(inside, 21 * 17);
}

TEST(CutSection, MarksWhatLiesOutsideTheVolume) {
    const auto volume = linearVolume({3, 3, 3}, Eigen::Affine3d::Identity());
    const SectionImage image = cutSection(*volume, gridOn({{{1, 1, 1}}}, 5, 5, 1.0));
    EXPECT_EQ(image.at(0, 2), kOutsideVolume);
    EXPECT_EQ(image.at(4, 4), kOutsideVolume);
    EXPECT_EQ(image.at(1, 1), volume->at(0, 0, 1)) << "a voxel centre on the face counts as inside";
    EXPECT_EQ(image.at(3, 3), volume->at(2, 2, 1));
}

TEST(CutSection, EmptyGridGivesAnEmptyPicture) {
    const auto volume = linearVolume({3, 3, 3}, Eigen::Affine3d::Identity());
    EXPECT_TRUE(cutSection(*volume, gridOn({}, 0, 5, 1.0)).values.empty());
    EXPECT_TRUE(cutSection(*volume, gridOn({}, 5, -1, 1.0)).values.empty());
}
