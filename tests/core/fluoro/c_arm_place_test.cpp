#include "core/fluoro/c_arm_place.h"

#include <gtest/gtest.h>

using namespace gauge::core;

namespace {

CArm someArm() {
    CArm arm;
    arm.angles = {-30.0, -12.0};
    arm.isocentre = {{100, 200, 300}};
    arm.sourceToIsocentreMm = 740.0;
    arm.sourceToDetectorMm = 1080.0;
    arm.imagerSpacingMm = {0.3, 0.35};
    arm.columns = 512;
    arm.rows = 480;
    return arm;
}

} // namespace

TEST(AimedAt, PutsThePointInTheIsocentresPlaneAtThePixel) {
    const PatientPoint point{{-20, 35, 1100}};
    for (const Eigen::Vector2d& pixel : {Eigen::Vector2d(255.5, 239.5), {100.0, 40.0}, {480.3, 333.7}}) {
        const CArm aimed = aimedAt(someArm(), point, pixel).value();
        const PinholeCamera camera = cameraOf(aimed).value();
        EXPECT_LT((camera.project(point).value() - pixel).norm(), 1e-9);
        EXPECT_NEAR(camera.depthMm(point), 740.0, 1e-9);
        EXPECT_EQ(aimed.angles, someArm().angles);
    }
    EXPECT_LT((aimedAt(someArm(), point, {255.5, 239.5})->isocentre - point).norm(), 1e-9);
}

TEST(AimedAt, SaysWhatCannotBe) {
    EXPECT_EQ(aimedAt(someArm(), {{std::nan(""), 0, 0}}, {0, 0}).error().message,
              "Cannot aim the C-arm: the place to aim at is not finite.");
    CArm wrong = someArm();
    wrong.sourceToDetectorMm = 100.0;
    EXPECT_EQ(aimedAt(wrong, {}, {0, 0}).error().code, ErrorCode::InvalidArgument);
}

TEST(AnglesFromText, ReadsWhatPeopleType) {
    const auto expect = [](std::string_view text, double primary, double secondary) {
        const auto angles = anglesFromText(text);
        ASSERT_TRUE(angles) << angles.error().message;
        EXPECT_NEAR(angles->primaryDeg, primary, 1e-12) << text;
        EXPECT_NEAR(angles->secondaryDeg, secondary, 1e-12) << text;
    };
    expect("RAO 30, CAUD 12", -30, -12);
    expect("rao30 caud12", -30, -12);
    expect("LAO 20.5 cranial 5", 20.5, 5);
    expect("CRA 7,5; LAO 1", 1, 7.5);
    expect("cau 10", 0, -10);
    expect("LAO 40", 40, 0);
    expect("-30 -12", -30, -12);
    expect("-30, 12.25", -30, 12.25);
    expect("RAO 30\u00B0, CAU 12\u00B0", -30, -12);
    expect(" RAO 30 / CRAN 12 ", -30, 12);
}

TEST(AnglesFromText, ReadsItsOwnWordsBack) {
    for (const CArmAngles& angles : {CArmAngles{-32, 2}, {0, 0}, {45, -20}, {-90, 40}}) {
        EXPECT_EQ(anglesFromText(words(angles)).value(), angles);
    }
}

TEST(AnglesFromText, SaysWhatItDidNotUnderstand) {
    const auto found = [](std::string_view text) {
        const auto angles = anglesFromText(text);
        return angles ? std::string("no error") : angles.error().message;
    };
    const auto whole = [](const std::string& text, const std::string& what) {
        return "Cannot read \"" + text + "\" as angles of a C-arm: " + what + ". Type for example RAO 30 CAUD 12.";
    };
    EXPECT_EQ(found("RAQ 30"), whole("RAQ 30", "\"RAQ\" is none of LAO, RAO, CRA, CAUD"));
    EXPECT_EQ(found("RAO LAO 3"), whole("RAO LAO 3", "there is no number behind \"RAO\""));
    EXPECT_EQ(found("RAO"), whole("RAO", "there is no number behind \"RAO\""));
    EXPECT_EQ(found("RAO -30"), whole("RAO -30", "behind \"RAO\" stands a number below 0"));
    EXPECT_EQ(found("RAO 3 LAO 4"), whole("RAO 3 LAO 4", "LAO or RAO is said twice"));
    EXPECT_EQ(found("1 2 3"), whole("1 2 3", "CRA or CAUD is said twice"));
    EXPECT_EQ(found(""), whole("", "there is no number"));
    EXPECT_EQ(found("30 ? 12"), whole("30 ? 12", "\"?\" is neither word nor number"));
    EXPECT_EQ(anglesFromText("LAO 300").error().message,
              "Cannot use the C-arm's angles: 300 and 0 degrees; the primary (LAO +, RAO -) must lie within -180 to 180, the "
              "secondary (CRA +, CAU -) within -90 to 90.");
}
