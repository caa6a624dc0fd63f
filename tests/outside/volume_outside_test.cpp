// Volumes against SciPy, and the patient-space affine against the standard's equation.
#include "core/volume/box_field.h"
#include "core/volume/distance_transform.h"
#include "core/volume/sampling.h"
#include "core/volume/section_image.h"

#include "tests/outside/python_reference.h"

#include <gtest/gtest.h>
#include <random>

using namespace gauge::core;
using namespace gauge::test;

namespace {

// Floats of values up to a few thousand.
constexpr double kFloatRounding = 1e-3;

std::shared_ptr<const Volume> noisyTiltedVolume(const Eigen::Vector3i& size, unsigned seed) {
    std::mt19937 random(seed);
    std::vector<std::int16_t> voxels(static_cast<std::size_t>(size.prod()));
    for (auto& v : voxels)
        v = static_cast<std::int16_t>(std::uniform_int_distribution<int>(-1000, 1500)(random));
    Eigen::Affine3d placement = Eigen::Affine3d::Identity();
    placement.rotate(Eigen::AngleAxisd(0.5, Eigen::Vector3d(1, -1, 2).normalized()));
    Eigen::Matrix3d shear = Eigen::Vector3d(0.4, 0.4, 0.9).asDiagonal();
    shear(1, 2) = 0.3;
    placement.linear() = placement.linear() * shear;
    placement.translation() = Eigen::Vector3d(40, -90, 1200);
    return Volume::make(size, voxels, placement, VoxelQuantity::HounsfieldUnits, "").value();
}

nlohmann::json shapeOf(const Eigen::Vector3i& size) {
    return {size.x(), size.y(), size.z()};
}

} // namespace

TEST(VolumeOutside, DistanceEqualsScipysExactEuclideanTransform) {
    BoxGrid grid;
    grid.size = {40, 33, 27};
    grid.stepMm = 0.45;
    BoxMask mask(grid);
    std::mt19937 random(2);
    // A few balls, so that there are long distances, and specks of background in them.
    for (std::size_t i = 0; i < grid.count(); ++i) {
        const Eigen::Vector3d n = grid.node(i).cast<double>();
        const bool ball =
            (n - Eigen::Vector3d(14, 15, 12)).norm() < 11 || (n - Eigen::Vector3d(30, 20, 14)).norm() < 9;
        mask[i] = ball && std::uniform_int_distribution<int>(0, 200)(random) != 0;
    }
    const auto other =
        askPython("distance_inside", {{"mask", mask.values}, {"shape", shapeOf(grid.size)}, {"step", grid.stepMm}});
    const auto distance = distanceInsideMm(mask);
    for (std::size_t i = 0; i < grid.count(); ++i)
        ASSERT_NEAR(distance[i], other[i].get<double>(), 1e-5) << "node " << grid.node(i).transpose();
}

TEST(VolumeOutside, GaussianEqualsScipys) {
    BoxGrid grid;
    grid.size = {24, 19, 15};
    grid.stepMm = 0.5;
    BoxField<float> field(grid);
    std::mt19937 random(6);
    for (auto& v : field.values)
        v = std::uniform_real_distribution<float>(-500, 500)(random);
    const double sigmaSteps = 2.0; // both cut the kernel at 6 steps
    const auto other =
        askPython("gaussian", {{"values", field.values}, {"shape", shapeOf(grid.size)}, {"sigma", sigmaSteps}});
    const auto out = smoothed(field, sigmaSteps * grid.stepMm);
    for (std::size_t i = 0; i < grid.count(); ++i)
        ASSERT_NEAR(out[i], other[i].get<double>(), kFloatRounding) << i;
}

TEST(VolumeOutside, TrilinearValuesEqualScipys) {
    const auto volume = noisyTiltedVolume({17, 14, 11}, 3);
    std::mt19937 random(1);
    std::vector<Eigen::Vector3d> places;
    for (int i = 0; i < 2000; ++i)
        places.emplace_back(std::uniform_real_distribution<>(-2, 18)(random),
                            std::uniform_real_distribution<>(-2, 15)(random),
                            std::uniform_real_distribution<>(-2, 12)(random));
    const std::vector<std::int16_t> voxels(volume->data(), volume->data() + volume->voxelCount());
    const auto other =
        askPython("trilinear", {{"values", voxels}, {"shape", shapeOf(volume->size())}, {"places", toJson(places)}});
    const TrilinearSampler sample(*volume);
    for (std::size_t i = 0; i < places.size(); ++i)
        EXPECT_NEAR(sample.atVoxel(places[i]), other[i].get<double>(), 1e-9);
}

TEST(VolumeOutside, ObliqueSectionOfATiltedStackEqualsScipys) {
    const auto volume = noisyTiltedVolume({30, 26, 22}, 9);
    const PatientPoint middle{volume->patientFromVoxel() * Eigen::Vector3d(14, 12, 10)};
    const SectionGrid grid{frameOf(Plane{middle, {{0.4, 0.7, -0.6}}}), 60, 50, 0.2};
    std::vector<Eigen::Vector3d> places;
    for (int row = 0; row < grid.rows; ++row)
        for (int column = 0; column < grid.columns; ++column) {
            const PatientPoint p = grid.frame.patientFromSection(grid.sectionFromPixel(column, row));
            places.push_back(volume->voxelFrom(p).ijk);
        }
    const std::vector<std::int16_t> voxels(volume->data(), volume->data() + volume->voxelCount());
    const auto other =
        askPython("trilinear", {{"values", voxels}, {"shape", shapeOf(volume->size())}, {"places", toJson(places)}});
    const SectionImage image = cutSection(*volume, grid);
    std::size_t inside = 0;
    for (std::size_t i = 0; i < places.size(); ++i) {
        if (image.values[i] == kOutsideVolume) continue;
        ++inside;
        ASSERT_NEAR(image.values[i], other[i].get<double>(), kFloatRounding) << i;
    }
    EXPECT_GT(inside, places.size() / 2);
}

// PS3.3 C.7.6.2.1.1, equation C.7.6.2.1-1: P = S + X di i + Y dj j, with X the row direction (first triplet of Image
// Orientation (Patient)), di the column spacing (second value of Pixel Spacing), i the column index. Worked by hand for
//   Image Position -100\50\-30, Image Orientation 0.8\0.6\0\0\0\-1, Pixel Spacing 0.5\0.4 (row spacing first).
// Column 10, row 20:  -100 + 0.8*0.4*10 = -96.8;  50 + 0.6*0.4*10 = 52.4;  -30 - 1*0.5*20 = -40.
TEST(VolumeOutside, AffineIsTheStandardsEquation) {
    Eigen::Affine3d placement = Eigen::Affine3d::Identity();
    const Eigen::Vector3d row(0.8, 0.6, 0), column(0, 0, -1);
    placement.linear() << row * 0.4, column * 0.5, row.cross(column) * 0.7;
    placement.translation() = Eigen::Vector3d(-100, 50, -30);
    const auto volume = Volume::make({11, 21, 2}, std::vector<std::int16_t>(11 * 21 * 2), placement,
                                     VoxelQuantity::HounsfieldUnits, "")
                            .value();
    EXPECT_TRUE(volume->patientFrom(VoxelCoord{{10, 20, 0}}).mm.isApprox(Eigen::Vector3d(-96.8, 52.4, -40.0), 1e-12));
    // The next slice lies along row x column = (0.6*-1 - 0*0, 0*0 - 0.8*-1, 0) = (-0.6, 0.8, 0), 0.7 mm on.
    EXPECT_TRUE(volume->patientFrom(VoxelCoord{{10, 20, 1}})
                    .mm.isApprox(Eigen::Vector3d(-96.8 - 0.42, 52.4 + 0.56, -40.0), 1e-12));
}
