#include "core/fluoro/c_arm.h"

#include "tests/core/fluoro/expect.h"

#include <cmath>
#include <gmock/gmock.h>
#include <numbers>
#include <random>

using namespace gauge::core;
using Eigen::Vector3d;
using gauge::test::errorOf;
using gauge::test::valueOf;
using testing::HasSubstr;

namespace {

constexpr double kRounding = 1e-12;
constexpr double kPrinted = 5e-9; // the reference's vectors are printed to 8 decimals

CArm arm(CArmAngles angles) {
    return {angles, {Vector3d(10.0, -20.0, 30.0)}, 720.0, 1080.0, {0.3, 0.3}, 512, 512};
}

} // namespace

TEST(BeamDirection, IsThatOfDicomsAngles) {
    EXPECT_NEAR((beamDirection({0, 0}).mm - Vector3d(0, -1, 0)).norm(), 0.0,
                kRounding); // detector before the chest
    EXPECT_NEAR((beamDirection({90, 0}).mm - Vector3d(1, 0, 0)).norm(), 0.0,
                kRounding); // LAO 90: at the left side
    EXPECT_NEAR((beamDirection({-90, 0}).mm - Vector3d(-1, 0, 0)).norm(), 0.0, kRounding); // RAO 90
    EXPECT_NEAR((beamDirection({0, 90}).mm - Vector3d(0, 0, 1)).norm(), 0.0,
                kRounding); // CRA 90: at the head
}

TEST(BeamDirection, AgreesWithVectorsComputedApart) {
    // Vectors computed apart from this code: en face at LAO 40 CRA 20 and at LAO 54
    // CAU 15.
    EXPECT_NEAR((beamDirection({40, 20}).mm - Vector3d(0.60402277, -0.71984631, 0.34202014)).norm(), 0.0,
                2 * kPrinted);
    EXPECT_NEAR((beamDirection({54, -15}).mm - Vector3d(0.78145041, -0.56775696, -0.25881905)).norm(), 0.0,
                2 * kPrinted);
}

TEST(AnglesOf, IsTheInverseOfBeamDirection) {
    std::mt19937 random(1);
    std::uniform_real_distribution<double> primary(-179.9, 179.9), secondary(-89.9, 89.9);
    for (int i = 0; i < 500; ++i) {
        const CArmAngles angles{primary(random), secondary(random)};
        const CArmAngles back = anglesOf(3.7 * beamDirection(angles));
        EXPECT_NEAR(back.primaryDeg, angles.primaryDeg, 1e-9);
        EXPECT_NEAR(back.secondaryDeg, angles.secondaryDeg, 1e-9);
    }
    EXPECT_EQ(anglesOf({Vector3d::UnitZ()}).primaryDeg, 0.0);
    EXPECT_NEAR(anglesOf({-Vector3d::UnitZ()}).secondaryDeg, -90.0, kRounding);
}

TEST(PictureAxes, AreRightHandedWithTheHeadUpAndThePatientsLeftOnTheRight) {
    EXPECT_NEAR((pictureAxes({0, 0}).right.mm - Vector3d::UnitX()).norm(), 0.0, kRounding);
    EXPECT_NEAR((pictureAxes({0, 0}).up.mm - Vector3d::UnitZ()).norm(), 0.0, kRounding);
    EXPECT_NEAR((pictureAxes({90, 0}).right.mm - Vector3d::UnitY()).norm(), 0.0, kRounding);
    for (double primary = -180; primary <= 180; primary += 30) {
        for (double secondary = -90; secondary <= 90; secondary += 30) {
            const auto axes = pictureAxes({primary, secondary});
            EXPECT_NEAR((axes.right.cross(axes.up).mm - axes.towardDetector.mm).norm(), 0.0, kRounding);
            EXPECT_NEAR(axes.right.norm(), 1.0, kRounding);
            EXPECT_GE(axes.up.mm.z(), -kRounding);
        }
    }
}

TEST(CArmAngles, AreSaidAsTheTradeDoes) {
    EXPECT_EQ(words(CArmAngles{-32.0, 2.0}), "RAO 32, CRA 2");
    EXPECT_EQ(words(CArmAngles{54.4, -15.0}), "LAO 54, CAU 15");
    EXPECT_EQ(words(CArmAngles{-0.2, -0.3}), "LAO 0, CRA 0");
}

TEST(CArmAngles, OutOfRangeOrNotFiniteAreRefused) {
    EXPECT_THAT(errorOf(validate(CArmAngles{181, 0})).message, HasSubstr("181 and 0 degrees"));
    EXPECT_EQ(errorOf(validate(CArmAngles{0, 91})).code, ErrorCode::InvalidArgument);
    EXPECT_EQ(errorOf(validate(CArmAngles{std::nan(""), 0})).code, ErrorCode::NonFinite);
}

TEST(CameraOf, PutsTheIsocentreInTheMiddleOfThePicture) {
    for (const CArmAngles angles : {CArmAngles{0, 0}, CArmAngles{-32, 2}, CArmAngles{60, -25}}) {
        const CArm place = arm(angles);
        const auto camera = valueOf(cameraOf(place));
        const auto centre = *camera.project(place.isocentre);
        EXPECT_NEAR(centre.x(), 255.5, 1e-9);
        EXPECT_NEAR(centre.y(), 255.5, 1e-9);
        EXPECT_NEAR(camera.sourceToDetectorMm(), 1080.0, 1e-9);
        EXPECT_NEAR(*camera.magnificationAt(place.isocentre), 1.5, 1e-12);
        // 2 mm to the picture's right and 3 mm up at the isocentre: 10 columns right, 15 rows up.
        const auto axes = pictureAxes(angles);
        const auto moved = *camera.project(place.isocentre + 2.0 * axes.right + 3.0 * axes.up);
        EXPECT_NEAR(moved.x() - centre.x(), 10.0, 1e-9);
        EXPECT_NEAR(moved.y() - centre.y(), -15.0, 1e-9);
    }
}

TEST(CameraOf, RefusesArmsThatCannotBe) {
    CArm place = arm({0, 0});
    place.sourceToDetectorMm = 700.0;
    EXPECT_THAT(errorOf(cameraOf(place)).message,
                HasSubstr("isocentre must lie between source and detector"));
    place = arm({0, 0});
    place.imagerSpacingMm.x() = 0.0;
    EXPECT_THAT(errorOf(cameraOf(place)).message, HasSubstr("is none"));
    EXPECT_EQ(errorOf(cameraOf(arm({0, 100}))).code, ErrorCode::InvalidArgument);
}
