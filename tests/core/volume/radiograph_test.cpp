#include "core/volume/radiograph.h"

#include "core/volume/sampling.h"
#include "tests/core/volume/convex_bodies.h"

#include <gtest/gtest.h>
#include <random>

using namespace gauge::core;
using namespace gauge::test;

namespace {

// Sums of floats: 1e-6 of the greatest.
constexpr double kFloatTolerance = 2e-5;

PinholeCamera cameraFrom(const Eigen::Vector3d& source, const Eigen::Vector3d& towards, double distanceMm, double pixelMm,
                         int columns, int rows) {
    const Eigen::Vector3d d = towards.normalized();
    const Eigen::Vector3d right =
        d.cross(std::abs(d.z()) < 0.9 ? Eigen::Vector3d::UnitZ() : Eigen::Vector3d::UnitX()).normalized();
    const Eigen::Vector3d down = d.cross(right);
    PinholeCamera camera;
    camera.source = {source};
    camera.columnStep = {pixelMm * right};
    camera.rowStep = {pixelMm * down};
    camera.firstPixel = {source + distanceMm * d - 0.5 * (columns - 1) * pixelMm * right -
                         0.5 * (rows - 1) * pixelMm * down};
    camera.columns = columns;
    camera.rows = rows;
    return camera;
}

std::shared_ptr<const Volume> uniform(const Eigen::Vector3i& size, std::int16_t hu, const Eigen::Affine3d& placement) {
    return Volume::make(size, std::vector<std::int16_t>(static_cast<std::size_t>(size.prod()), hu), placement,
                        VoxelQuantity::HounsfieldUnits, "")
        .value();
}

/// Length of the segment from the source to a pixel within the block's cells.
double blockLengthMm(const Volume& volume, const PinholeCamera& camera, int column, int row) {
    const Eigen::Vector3d from = camera.source.mm, to = camera.detectorPoint({column * 1.0, row * 1.0}).mm;
    const Eigen::Vector3d a = volume.voxelFromPatient() * from, b = volume.voxelFromPatient() * to;
    Span span{0.0, 1.0};
    for (int axis = 0; axis < 3; ++axis) {
        const double d = b[axis] - a[axis];
        if (d == 0.0 && (a[axis] < -0.5 || a[axis] > volume.size()[axis] - 0.5)) return 0.0;
        if (d != 0.0) span.cut((-0.5 - a[axis]) / d, (volume.size()[axis] - 0.5 - a[axis]) / d);
    }
    return span.length() * (to - from).norm();
}

const Eigen::Affine3d kSheared = gridAbout({10, -20, 30}, {21, 34, 13}, {0.5, 0.4, 1.1},
                                           Eigen::AngleAxisd(0.4, Eigen::Vector3d(1, 2, 0.5).normalized()), 0.3);

} // namespace

TEST(SimulateRadiograph, OfAUniformBlockIsTheLengthWithinIt) {
    const auto volume = uniform({21, 34, 13}, 500, kSheared);
    for (const Eigen::Vector3d& direction :
         {Eigen::Vector3d(1, 0, 0), {0, -1, 0}, {0, 0, 1}, {1, 1, 1}, {-0.7, 0.71, 0.05}, {0.3, -0.2, -0.9}})
        for (const int every : {1, 2, 3}) {
            const auto camera =
                cameraFrom(Eigen::Vector3d(10, -20, 30) - 90.0 * direction.normalized(), direction, 150.0, 0.7, 61, 47);
            const auto picture = simulateRadiograph(*volume, camera, {.everySlice = every}).value();
            int met = 0;
            for (int row = 0; row < camera.rows; ++row)
                for (int column = 0; column < camera.columns; ++column) {
                    const double exact = 1.5 * blockLengthMm(*volume, camera, column, row);
                    ASSERT_NEAR(picture.at(column, row), exact, kFloatTolerance * 60.0) << column << ", " << row;
                    met += exact > 0.0;
                }
            EXPECT_GT(met, 200);
        }
}

TEST(SimulateRadiograph, BeginsAtTheSourceAndEndsAtTheDetector) {
    const auto volume = uniform({21, 34, 13}, 0, kSheared);
    // Source in the middle of the block, rays in more than a half circle: no axis serves all of them.
    const auto camera = cameraFrom({10, -20, 30}, {0.3, 1, 0.2}, 3.0, 0.9, 40, 30);
    const auto picture = simulateRadiograph(*volume, camera).value();
    for (int row = 0; row < camera.rows; ++row)
        for (int column = 0; column < camera.columns; ++column)
            ASSERT_NEAR(picture.at(column, row), blockLengthMm(*volume, camera, column, row), kFloatTolerance * 60.0)
                << column << ", " << row;
}

TEST(SimulateRadiograph, MissesGiveZero) {
    const auto volume = uniform({21, 34, 13}, 0, kSheared);
    const auto camera = cameraFrom({200, 0, 0}, {1, 0, 0}, 100.0, 0.5, 9, 7);
    const auto picture = simulateRadiograph(*volume, camera).value();
    for (const float value : picture.waterMm)
        EXPECT_EQ(value, 0.0f);
}

TEST(SimulateRadiograph, WhatReadsBelowAirIsAir) {
    const auto camera = cameraFrom({10, -20, -60}, {0, 0, 1}, 200.0, 0.7, 20, 20);
    for (const std::int16_t hu : {-1000, -1001, -1024, -32768}) {
        const auto picture = simulateRadiograph(*uniform({21, 34, 13}, hu, kSheared), camera).value();
        for (const float value : picture.waterMm)
            ASSERT_EQ(value, 0.0f) << hu;
    }
    EXPECT_GT(simulateRadiograph(*uniform({21, 34, 13}, 32767, kSheared), camera)->at(10, 10), 33.0f);
}

TEST(SimulateRadiograph, OfThinBlocksIsTheLengthToo) {
    for (const Eigen::Vector3i& size : {Eigen::Vector3i(1, 1, 1), Eigen::Vector3i(1, 30, 2), Eigen::Vector3i(30, 1, 5)}) {
        const auto volume = uniform(
            size, 0, gridAbout({0, 0, 0}, size, {0.5, 0.5, 2.0}, Eigen::AngleAxisd(0.3, Eigen::Vector3d::UnitX()), 0.1));
        const auto camera = cameraFrom({-40, -30, 20}, {40, 30, -20}, 80.0, 0.4, 50, 50);
        const auto picture = simulateRadiograph(*volume, camera).value();
        for (int row = 0; row < 50; ++row)
            for (int column = 0; column < 50; ++column)
                ASSERT_NEAR(picture.at(column, row), blockLengthMm(*volume, camera, column, row), 1e-3)
                    << column << ", " << row;
    }
}

// Another way to the number: trilinear values at steps of a fiftieth of a voxel.
TEST(SimulateRadiograph, AgreesWithFineStepsThroughASmoothVolume) {
    constexpr double kSmoothTolerance = 0.004; // between a slice and the next the value is not linear
    const Eigen::Vector3i size(40, 36, 30);
    std::vector<std::int16_t> voxels;
    for (int k = 0; k < size.z(); ++k)
        for (int j = 0; j < size.y(); ++j)
            for (int i = 0; i < size.x(); ++i)
                voxels.push_back(
                    static_cast<std::int16_t>(300 + 400 * std::sin(0.3 * i) * std::cos(0.25 * j + 0.2 * k) + 5 * i));
    const auto volume = Volume::make(size, voxels,
                                     gridAbout({0, 0, 0}, size, {0.6, 0.5, 0.8},
                                               Eigen::AngleAxisd(0.5, Eigen::Vector3d(1, 1, 0).normalized()), 0.2),
                                     VoxelQuantity::HounsfieldUnits, "")
                            .value();
    const TrilinearSampler sample(*volume);
    for (const Eigen::Vector3d& direction : {Eigen::Vector3d(1, 0.2, 0.1), {0.2, -1, 0.6}, {0.5, 0.4, -1}}) {
        const auto camera = cameraFrom(-70.0 * direction.normalized(), direction, 120.0, 1.1, 24, 24);
        const auto picture = simulateRadiograph(*volume, camera).value();
        for (int row = 0; row < 24; ++row)
            for (int column = 0; column < 24; ++column) {
                const Eigen::Vector3d from = camera.source.mm, to = camera.detectorPoint({column * 1.0, row * 1.0}).mm;
                const int steps = 12000;
                double sum = 0.0;
                for (int s = 0; s < steps; ++s) {
                    const Eigen::Vector3d c = volume->voxelFromPatient() * (from + (s + 0.5) / steps * (to - from));
                    if ((c.array() < -0.5).any() || (c.array() > size.array().cast<double>() - 0.5).any()) continue;
                    sum += (sample.atVoxel(c) + 1000.0) / 1000.0;
                }
                const double exact = sum * (to - from).norm() / steps;
                if (exact < 5.0) continue; // corners: a cell outside the outermost centres holds its value
                ASSERT_NEAR(picture.at(column, row), exact, kSmoothTolerance * exact) << column << ", " << row;
            }
    }
}

TEST(SimulateRadiograph, IsTheSameWhenPatientAndCameraMoveTogether) {
    const ConvexBody box{ConvexBody::Kind::Box, {0, 0, 0}, Eigen::Matrix3d::Identity(), {5, 4, 3}};
    const Eigen::Vector3i size(30, 30, 30);
    const Eigen::Affine3d placement = gridAbout({0, 0, 0}, size, {0.5, 0.5, 0.5}, Eigen::AngleAxisd::Identity(), 0.0);
    const auto volume = volumeWith({box}, 0.0, size, placement);
    const auto camera = cameraFrom({-60, -20, 10}, {60, 20, -10}, 110.0, 0.5, 40, 40);
    Eigen::Affine3d move = Eigen::Affine3d::Identity();
    move.rotate(Eigen::AngleAxisd(1.1, Eigen::Vector3d(1, 2, 3).normalized()));
    move.pretranslate(Eigen::Vector3d(100, -50, 800));
    const auto moved = Volume::make(size, std::vector<std::int16_t>(volume->data(), volume->data() + volume->voxelCount()),
                                    move * placement, VoxelQuantity::HounsfieldUnits, "")
                           .value();
    PinholeCamera other = camera;
    other.source = {move * camera.source.mm};
    other.firstPixel = {move * camera.firstPixel.mm};
    other.columnStep = {move.linear() * camera.columnStep.mm};
    other.rowStep = {move.linear() * camera.rowStep.mm};
    const auto here = simulateRadiograph(*volume, camera).value(), there = simulateRadiograph(*moved, other).value();
    for (std::size_t i = 0; i < here.waterMm.size(); ++i)
        ASSERT_NEAR(here.waterMm[i], there.waterMm[i], 1e-3) << i;
}

TEST(SimulateRadiograph, AddsPictures) {
    const auto camera = cameraFrom({10, -20, -60}, {0, 0, 1}, 200.0, 0.7, 20, 20);
    auto base = simulateRadiograph(*uniform({21, 34, 13}, 0, kSheared), camera).value();
    const auto extra = base;
    addTo(base, extra, 2.5);
    for (std::size_t i = 0; i < base.waterMm.size(); ++i)
        EXPECT_FLOAT_EQ(base.waterMm[i], 3.5f * extra.waterMm[i]);
}

TEST(AttenuationRange, LeavesOutTheEndsAndWhatMissesTheVolume) {
    Radiograph picture;
    picture.camera.columns = 202;
    picture.camera.rows = 1;
    for (int i = 0; i <= 100; ++i)
        picture.waterMm.insert(picture.waterMm.end(), {0.0f, static_cast<float>(200 - i)});
    const AttenuationRange range = attenuationRange(picture, 0.05);
    EXPECT_EQ(range.lowMm, 105.0);
    EXPECT_EQ(range.highMm, 195.0);
    picture.waterMm.assign(202, 0.0f);
    EXPECT_EQ(attenuationRange(picture), AttenuationRange{});
}

TEST(SimulateRadiograph, StopsWhenAsked) {
    std::stop_source stop;
    stop.request_stop();
    const auto camera = cameraFrom({10, -20, -60}, {0, 0, 1}, 200.0, 0.7, 200, 200);
    const auto picture = simulateRadiograph(*uniform({21, 34, 13}, 0, kSheared), camera, {}, {stop.get_token(), {}});
    ASSERT_FALSE(picture);
    EXPECT_EQ(picture.error().code, ErrorCode::Cancelled);
    EXPECT_EQ(picture.error().message, "The simulated radiograph was cancelled.");
}

TEST(SimulateRadiograph, TellsItsProgressUpToTheEnd) {
    double last = 0.0;
    const auto camera = cameraFrom({10, -20, -60}, {0, 0, 1}, 200.0, 0.7, 200, 200);
    ASSERT_TRUE(simulateRadiograph(*uniform({21, 34, 13}, 0, kSheared), camera, {}, {{}, [&](double share) {
                                                                                         EXPECT_GE(share, last);
                                                                                         last = share;
                                                                                     }}));
    EXPECT_DOUBLE_EQ(last, 1.0);
}

TEST(SimulateRadiograph, SaysWhatCannotBeSimulated) {
    const auto camera = cameraFrom({10, -20, -60}, {0, 0, 1}, 200.0, 0.7, 20, 20);
    const auto volume = uniform({21, 34, 13}, 0, kSheared);
    const auto messageOf = [](const auto& result) { return result ? std::string("no error") : result.error().message; };
    const auto echo =
        Volume::make({2, 2, 2}, std::vector<std::int16_t>(8), kSheared, VoxelQuantity::EchoIntensity, "").value();
    EXPECT_EQ(messageOf(simulateRadiograph(*echo, camera)),
              "Cannot simulate a radiograph: the volume is not in Hounsfield units.");
    EXPECT_EQ(messageOf(simulateRadiograph(*volume, camera, {.everySlice = 0})),
              "Cannot simulate a radiograph: every 0th slice was asked for; 1 to 8 can be.");
    PinholeCamera empty = camera;
    empty.rows = 0;
    EXPECT_EQ(messageOf(simulateRadiograph(*volume, empty)), "Cannot simulate a radiograph: a picture of 20 x 0 pixels was "
                                                             "asked for; at least one and at most 64 million can be.");
    PinholeCamera huge = camera;
    huge.columns = huge.rows = 2'000'000'000;
    EXPECT_FALSE(simulateRadiograph(*volume, huge));
    PinholeCamera nowhere = camera;
    nowhere.source.mm.x() = std::nan("");
    EXPECT_EQ(messageOf(simulateRadiograph(*volume, nowhere)),
              "Cannot simulate a radiograph: the camera's place is not finite.");
    PinholeCamera flat = camera;
    flat.rowStep = flat.columnStep;
    EXPECT_EQ(messageOf(simulateRadiograph(*volume, flat)),
              "Cannot simulate a radiograph: its detector is no plane apart from the source, so that no ray meets it.");
    flat = camera;
    flat.source = camera.firstPixel + camera.columnStep;
    EXPECT_EQ(simulateRadiograph(*volume, flat).error().code, ErrorCode::Degenerate);
}
