#include "core/volume/radiograph_scene.h"

#include "core/volume/chamber_volume.h"
#include "tests/core/volume/convex_bodies.h"

#include <gtest/gtest.h>

using namespace gauge::core;
using namespace gauge::test;

namespace {

PinholeCamera cameraInFront() {
    PinholeCamera camera;
    camera.columns = camera.rows = 31;
    camera.columnStep = {{1.2, 0, 0}};
    camera.rowStep = {{0, 0, -1.2}};
    camera.source = {{0, 700, 0}};
    camera.firstPixel = {{-18, -300, 18}};
    return camera;
}

std::shared_ptr<const Volume> ball(double radiusMm, double hu) {
    const Eigen::Vector3i size(60, 60, 60);
    return volumeWith({{ConvexBody::Kind::Ball, {0, 0, 0}, Eigen::Matrix3d::Identity(), Eigen::Vector3d::Constant(radiusMm)}}, hu,
                      size, gridAbout({0, 0, 0}, size, {0.6, 0.6, 0.6}, Eigen::AngleAxisd::Identity(), 0.0));
}

} // namespace

TEST(RadiographScene, AFilledChamberAddsItsLengthTimesTheFilling) {
    RadiographScene scene{ball(14.0, 40.0), ball(6.0, 0.0)};
    const auto camera = cameraInFront();
    const auto plain = simulateRadiograph(*scene.ct, camera).value(), chamber = simulateRadiograph(*scene.chamber, camera).value();
    const auto filled = simulateRadiograph(scene, camera).value();
    for (std::size_t i = 0; i < plain.waterMm.size(); ++i)
        ASSERT_NEAR(filled.waterMm[i], plain.waterMm[i] + kContrastMediumOverWater * chamber.waterMm[i], 1e-3);
    // Through the middle: 28 mm of 1.04, and 12 mm of chamber.
    EXPECT_NEAR(filled.at(15, 15), 28.0 * 1.04 + 3.7 * 12.0, 0.01 * 73.5);
    scene.alone = true;
    EXPECT_EQ(simulateRadiograph(scene, camera)->waterMm, chamber.waterMm);
}

TEST(RadiographScene, SaysWhatIsMissing) {
    EXPECT_EQ(simulateRadiograph(RadiographScene{}, cameraInFront()).error().message,
              "Cannot simulate a radiograph: there is no CT.");
    RadiographScene scene;
    scene.alone = true;
    EXPECT_EQ(simulateRadiograph(scene, cameraInFront()).error().message,
              "Cannot simulate a radiograph: there is no chamber to show alone.");
}
