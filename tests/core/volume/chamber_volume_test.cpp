#include "core/volume/chamber_volume.h"

#include "core/volume/radiograph.h"
#include "tests/core/volume/convex_bodies.h"

#include <gtest/gtest.h>

using namespace gauge::core;
using namespace gauge::test;

namespace {

BoxMask ballMask(double radiusMm) {
    BoxGrid grid;
    grid.stepMm = 0.5;
    grid.size = {60, 56, 64};
    grid.axes = Eigen::AngleAxisd(0.3, Eigen::Vector3d(1, 1, 1).normalized()).toRotationMatrix();
    grid.origin = {{-12, 30, 900}};
    BoxMask mask(grid);
    const PatientPoint middle = grid.patientFrom(Eigen::Vector3d(30, 28, 31));
    for (std::size_t i = 0; i < grid.count(); ++i)
        mask[i] = distanceMm(grid.patientFrom(i), middle) <= radiusMm;
    return mask;
}

} // namespace

TEST(ChamberVolume, ItsRadiographIsTheLengthWithinTheMask) {
    const BoxMask mask = ballMask(10.0);
    const PatientPoint middle = mask.grid.patientFrom(Eigen::Vector3d(30, 28, 31));
    const auto volume = chamberVolume(mask).value();
    PinholeCamera camera;
    camera.columns = camera.rows = 41;
    camera.columnStep = {{0.9, 0, 0}};
    camera.rowStep = {{0, 0, -0.9}};
    camera.source = {middle.mm + Eigen::Vector3d(0, 700, 0)};
    camera.firstPixel = {middle.mm + Eigen::Vector3d(-18, -300, 18)};
    const auto picture = simulateRadiograph(*volume, camera).value();
    const ConvexBody ball{ConvexBody::Kind::Ball, middle.mm, Eigen::Matrix3d::Identity(), Eigen::Vector3d::Constant(10.0)};
    double sum = 0.0, exactSum = 0.0;
    for (int row = 0; row < 41; ++row)
        for (int column = 0; column < 41; ++column) {
            const double exact = ball.chordMm(camera.source.mm, camera.rayThrough({column * 1.0, row * 1.0}).mm);
            // A mask of 0.5 mm knows each of the two walls to half a node.
            if (exact > 10.0) {
                EXPECT_NEAR(picture.at(column, row), exact, 0.6) << column << ", " << row;
            }
            sum += picture.at(column, row);
            exactSum += exact;
        }
    EXPECT_NEAR(sum, exactSum, 0.01 * exactSum);
}

TEST(ChamberVolume, IsNoLargerThanTheMaskNeeds) {
    const auto volume = chamberVolume(ballMask(5.0), 0.0).value();
    // 10 mm in steps of 0.5 and a margin on both sides.
    EXPECT_LE(volume->size().maxCoeff(), 24);
    for (std::size_t i = 0; i < volume->voxelCount(); ++i)
        EXPECT_TRUE(volume->data()[i] == 0 || volume->data()[i] == -1000);
}

TEST(ChamberVolume, AMaskAtTheBoxsFaceIsKeptWhole) {
    BoxGrid grid;
    grid.size = {4, 4, 4};
    const auto volume = chamberVolume(BoxMask(grid, 1), 0.8).value();
    double water = 0.0;
    for (std::size_t i = 0; i < volume->voxelCount(); ++i)
        water += (volume->data()[i] + 1000) / 1000.0;
    EXPECT_NEAR(water, 64.0, 0.2);
}

TEST(ChamberVolume, SaysWhatCannotBe) {
    BoxGrid grid;
    grid.size = {4, 4, 4};
    EXPECT_EQ(chamberVolume(BoxMask(grid)).error().message, "Cannot make a volume of a mask: nothing is marked in it.");
    EXPECT_EQ(chamberVolume(BoxMask(grid, 1), -1.0).error().message,
              "Cannot make a volume of a mask: its edges cannot be smoothed by less than nothing.");
}
