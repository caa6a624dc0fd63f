// Simulated radiographs against line sums by SciPy's interpolation.
#include "core/volume/radiograph.h"

#include "tests/outside/python_reference.h"

#include <gtest/gtest.h>
#include <random>

using namespace gauge::core;
using namespace gauge::test;

namespace {

// The same rule by another hand: floats of sums of some thirty slices.
constexpr double kSameRule = 1e-5;
// Slices sampled at their middle against fine steps through noise: the sampling's own error, at most what is stated of it.
constexpr double kFineSteps = 0.01;

std::shared_ptr<const Volume> randomVolume(const Eigen::Vector3i& size, unsigned seed, bool calm) {
    std::mt19937 random(seed);
    std::vector<std::int16_t> voxels;
    for (int k = 0; k < size.z(); ++k)
        for (int j = 0; j < size.y(); ++j)
            for (int i = 0; i < size.x(); ++i) {
                const int noise = std::uniform_int_distribution<int>(-1100, 1500)(random);
                const double smooth = 200.0 + 300.0 * std::sin(0.7 * i + 0.2 * j) * std::cos(0.5 * k);
                voxels.push_back(static_cast<std::int16_t>(calm ? std::lround(smooth + 0.1 * noise) : noise));
            }
    Eigen::Affine3d placement = Eigen::Affine3d::Identity();
    placement.rotate(Eigen::AngleAxisd(0.5, Eigen::Vector3d(1, -1, 2).normalized()));
    Eigen::Matrix3d edges = Eigen::Vector3d(0.5, 0.45, 0.8).asDiagonal();
    edges(1, 2) = 0.25;
    placement.linear() = placement.linear() * edges;
    placement.translation() = Eigen::Vector3d(40, -90, 1200);
    return Volume::make(size, voxels, placement, VoxelQuantity::HounsfieldUnits, "").value();
}

PinholeCamera cameraAlong(const Volume& volume, const Eigen::Vector3d& ijkDirection) {
    const Eigen::Vector3d middle = volume.patientFromVoxel() * (0.5 * (volume.size().array() - 1).cast<double>()).matrix();
    const Eigen::Vector3d d = (volume.patientFromVoxel().linear() * ijkDirection).normalized();
    const Eigen::Vector3d right = d.unitOrthogonal(), down = d.cross(right);
    PinholeCamera camera;
    camera.source = {middle - 300.0 * d};
    camera.columns = 23;
    camera.rows = 19;
    camera.columnStep = {0.9 * right};
    camera.rowStep = {0.9 * down};
    camera.firstPixel = {middle + 100.0 * d - 0.9 * 11 * right - 0.9 * 9 * down};
    return camera;
}

nlohmann::json question(const Volume& volume, const PinholeCamera& camera) {
    std::vector<std::vector<double>> affine;
    for (int row = 0; row < 3; ++row) {
        const Eigen::RowVector4d r = volume.voxelFromPatient().matrix().row(row);
        affine.push_back({r[0], r[1], r[2], r[3]});
    }
    const auto list = [](const Eigen::Vector3d& v) { return std::vector<double>{v.x(), v.y(), v.z()}; };
    return {{"values", std::vector<std::int16_t>(volume.data(), volume.data() + volume.voxelCount())},
            {"shape", {volume.size().x(), volume.size().y(), volume.size().z()}},
            {"voxel_from_patient", affine},
            {"source", list(camera.source.mm)},
            {"first", list(camera.firstPixel.mm)},
            {"column_step", list(camera.columnStep.mm)},
            {"row_step", list(camera.rowStep.mm)},
            {"columns", camera.columns},
            {"rows", camera.rows}};
}

void expectNear(const Radiograph& picture, const nlohmann::json& other, double relative) {
    ASSERT_EQ(other.size(), picture.waterMm.size());
    double greatest = 0.0, worst = 0.0;
    for (const auto& value : other)
        greatest = std::max(greatest, value.get<double>());
    ASSERT_GT(greatest, 10.0);
    for (std::size_t i = 0; i < picture.waterMm.size(); ++i) {
        const double exact = other[i].get<double>();
        worst = std::max(worst, std::abs(picture.waterMm[i] - exact) / greatest);
        EXPECT_NEAR(picture.waterMm[i], exact, relative * greatest) << i;
    }
    std::cout << "worst difference " << worst << " of the greatest\n";
}

const Eigen::Vector3d kDirections[] = {{1, 0.2, -0.1}, {0.25, 1, 0.4}, {-0.3, 0.1, 1}, {-0.8, -1, 0.6}};

} // namespace

TEST(RadiographOutside, SlicesOfNoiseSumUpAsScipyInterpolatesThem) {
    const auto volume = randomVolume({31, 27, 24}, 5, false);
    for (const Eigen::Vector3d& direction : kDirections) {
        const auto camera = cameraAlong(*volume, direction);
        expectNear(simulateRadiograph(*volume, camera).value(), askPython("slice_sums", question(*volume, camera)),
                   kSameRule);
    }
}

TEST(RadiographOutside, LineIntegralsEqualScipysFineSteps) {
    const auto volume = randomVolume({31, 27, 24}, 5, true);
    for (const Eigen::Vector3d& direction : kDirections) {
        const auto camera = cameraAlong(*volume, direction);
        expectNear(simulateRadiograph(*volume, camera).value(), askPython("line_integrals", question(*volume, camera)),
                   kFineSteps);
    }
}
