#include "core/geometry/camera.h"

#include <gtest/gtest.h>
#include <random>

using namespace gauge::core;
using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

constexpr double kRoundingMm = 1e-9;

/// Source at the origin, detector 1000 mm along +z, 0.2 x 0.25 mm pixels, the ray along z in the middle of
/// 101 x 51.
PinholeCamera simple() {
    PinholeCamera camera;
    camera.firstPixel = {Vector3d(-50 * 0.2, -25 * 0.25, 1000.0)};
    camera.columnStep = {Vector3d(0.2, 0.0, 0.0)};
    camera.rowStep = {Vector3d(0.0, 0.25, 0.0)};
    camera.columns = 101;
    camera.rows = 51;
    return camera;
}

} // namespace

TEST(PinholeCamera, ProjectsByHandValues) {
    const auto camera = simple();
    EXPECT_NEAR(camera.sourceToDetectorMm(), 1000.0, kRoundingMm);
    // A point 4 mm beside the axis, half way: 8 mm on the detector, 40 columns.
    const Vector2d pixel = *camera.project({Vector3d(4.0, -1.0, 500.0)});
    EXPECT_NEAR(pixel.x(), 50.0 + 40.0, kRoundingMm);
    EXPECT_NEAR(pixel.y(), 25.0 - 8.0, kRoundingMm);
    EXPECT_NEAR(*camera.magnificationAt({Vector3d(7.0, 3.0, 500.0)}), 2.0, kRoundingMm);
    EXPECT_TRUE(camera.covers(pixel));
    EXPECT_FALSE(camera.covers({101.0, 0.0}));
}

TEST(PinholeCamera, HasNoImageOfWhatIsLevelWithTheSourceOrBehindIt) {
    const auto camera = simple();
    EXPECT_FALSE(camera.project({Vector3d(1.0, 0.0, 0.0)}));
    EXPECT_FALSE(camera.project({Vector3d(0.0, 0.0, -10.0)}));
    EXPECT_FALSE(camera.magnificationAt({Vector3d(0.0, 0.0, -10.0)}));
}

TEST(PinholeCamera, RayThroughAPixelAndProjectionAreInverse) {
    std::mt19937 random(7);
    std::uniform_real_distribution<double> unit(-1.0, 1.0);
    for (int i = 0; i < 200; ++i) {
        PinholeCamera camera = simple();
        // Anywhere, turned anyhow, steps not perpendicular.
        const Eigen::Matrix3d turn =
            Eigen::AngleAxisd(3.0 * unit(random), Vector3d(unit(random), unit(random), 1.5).normalized())
                .toRotationMatrix();
        camera.rowStep.mm.x() = 0.1 * unit(random);
        const Vector3d shift(100 * unit(random), 100 * unit(random), 100 * unit(random));
        camera.source.mm = shift;
        camera.firstPixel.mm = turn * camera.firstPixel.mm + shift;
        camera.columnStep.mm = turn * camera.columnStep.mm;
        camera.rowStep.mm = turn * camera.rowStep.mm;
        const Vector2d pixel(50 + 60 * unit(random), 25 + 40 * unit(random));
        const PatientPoint onRay = camera.source + 300.0 * camera.rayThrough(pixel);
        const auto seen = camera.project(onRay);
        ASSERT_TRUE(seen);
        EXPECT_NEAR((*seen - pixel).norm(), 0.0, 1e-8) << "case " << i;
    }
}
