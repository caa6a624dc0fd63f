#include "core/volume/sampling.h"
#include "core/volume/section_image.h"

#include <cmath>
#include <gtest/gtest.h>
#include <random>

using namespace gauge::core;

namespace {

constexpr double kFloatHu = 1e-3; // pictures are float

std::shared_ptr<const Volume> noise() {
    std::mt19937 random(3);
    std::uniform_int_distribution<int> hu(-1000, 1500);
    std::vector<std::int16_t> voxels(24 * 20 * 16);
    for (auto& v : voxels)
        v = static_cast<std::int16_t>(hu(random));
    Eigen::Affine3d place = Eigen::Affine3d::Identity();
    place.linear() << 0.5, 0.02, 0.1, 0, 0.5, 0, 0, 0, 0.8; // sheared a little
    place.translation() = Eigen::Vector3d(-5, 3, 11);
    return Volume::make({24, 20, 16}, voxels, place, VoxelQuantity::HounsfieldUnits, "").value();
}

SectionGrid oblique(const Volume& volume, int side) {
    const PatientPoint middle{volume.patientFromVoxel() * Eigen::Vector3d(12, 10, 8)};
    return {frameOf(Plane{middle, {Eigen::Vector3d(0.3, -0.5, 0.8).normalized()}}), side, side, 0.45};
}

/// The definition written down: every plane of the slab, point by point.
float twin(const Volume& volume, const SectionGrid& grid, const Slab& slab, int column, int row) {
    const int half = static_cast<int>(std::ceil(0.5 * slab.thicknessMm / volume.edgesMm().minCoeff()));
    const TrilinearSampler sample(volume);
    double sum = 0, greatest = -1e9;
    int count = 0;
    for (int k = -half; k <= half; ++k) {
        const PatientPoint p = grid.frame.patientFromSection(grid.sectionFromPixel(column, row)) +
                               (0.5 * slab.thicknessMm * k / half) * grid.frame.normal;
        if (!volume.contains(p)) continue;
        sum += sample(p);
        greatest = std::max(greatest, sample(p));
        ++count;
    }
    if (count == 0) return kOutsideVolume;
    return static_cast<float>(slab.shows == SlabValue::Mean ? sum / count : greatest);
}

} // namespace

TEST(CutSlab, EqualsItsDefinitionPlaneByPlane) {
    const auto volume = noise();
    const SectionGrid grid = oblique(*volume, 41); // reaches beyond the volume
    int outside = 0;
    for (const Slab slab : {Slab{3.0, SlabValue::Mean}, Slab{3.0, SlabValue::Maximum}, Slab{0.4, SlabValue::Mean}}) {
        const SectionImage image = cutSlab(*volume, grid, slab);
        for (int row = 0; row < grid.rows; ++row)
            for (int column = 0; column < grid.columns; ++column) {
                ASSERT_NEAR(image.at(column, row), twin(*volume, grid, slab, column, row), kFloatHu) << column << ' ' << row;
                outside += image.at(column, row) == kOutsideVolume;
            }
    }
    EXPECT_GT(outside, 0);
}

TEST(CutSlab, WithoutThicknessIsTheSection) {
    const auto volume = noise();
    const SectionGrid grid = oblique(*volume, 30);
    EXPECT_EQ(cutSlab(*volume, grid, {}).values, cutSection(*volume, grid).values);
    EXPECT_TRUE(cutSlab(*volume, oblique(*volume, 0), {5.0, SlabValue::Mean}).values.empty());
}

TEST(CutSlab, OfAConstantIsThatConstantAndTheMaximumIsNeverBelowTheMean) {
    const auto flat = Volume::make({12, 12, 12}, std::vector<std::int16_t>(12 * 12 * 12, 77), Eigen::Affine3d::Identity(),
                                   VoxelQuantity::HounsfieldUnits, "").value();
    for (const float value : cutSlab(*flat, {frameOf(Plane{{Eigen::Vector3d(6, 6, 6)}, {}}), 5, 5, 1.0}, {4.0, SlabValue::Mean}).values)
        EXPECT_NEAR(value, 77.0, kFloatHu);
    const auto volume = noise();
    const SectionGrid grid = oblique(*volume, 20);
    const auto mean = cutSlab(*volume, grid, {4.0, SlabValue::Mean}), greatest = cutSlab(*volume, grid, {4.0, SlabValue::Maximum});
    for (std::size_t i = 0; i < mean.values.size(); ++i)
        EXPECT_GE(greatest.values[i], mean.values[i] - kFloatHu);
}
