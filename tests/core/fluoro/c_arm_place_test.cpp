#include "core/fluoro/c_arm_place.h"

#include "core/fluoro/projected_width.h"

#include <cmath>
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

TEST(CameraOfATurnedPatient, SeesWhatTheRoomsCameraSeesOfTheTurnedPatient) {
    // Two routes: the camera turned back into the CT, and the patient turned in the room.
    const CArm arm = someArm();
    for (const PatientTurn& turn : {PatientTurn{15, 0}, PatientTurn{0, -10}, PatientTurn{-20, 12}}) {
        const PinholeCamera inPatient = cameraOf(arm, turn).value();
        const PinholeCamera inRoom = cameraOf(arm).value();
        for (const Eigen::Vector3d& off : {Eigen::Vector3d(0, 0, 0), {30, -10, 5}, {-12, 25, -40}}) {
            const PatientPoint turned{arm.isocentre.mm + roomFromPatient(turn) * off};
            EXPECT_LT((inPatient.project({arm.isocentre.mm + off}).value() - inRoom.project(turned).value()).norm(), 1e-9);
        }
        const PatientPoint point{{-20, 35, 1100}};
        const CArm aimed = aimedAt(arm, point, {100, 40}, turn).value();
        EXPECT_LT((cameraOf(aimed, turn)->project(point).value() - Eigen::Vector2d(100, 40)).norm(), 1e-9);
    }
}

TEST(CameraOfATurnedPatient, IsForARollThatOfTheAnglesWithTheOffset) {
    // [Blake2012]: a roll of the patient is an offset of the primary angle.
    const CArm arm = someArm();
    CArm offset = arm;
    offset.angles.primaryDeg -= 15.0;
    const PinholeCamera turned = cameraOf(arm, PatientTurn{15, 0}).value(), plain = cameraOf(offset).value();
    EXPECT_LT((turned.source - plain.source).norm(), 1e-9);
    EXPECT_LT((turned.firstPixel - plain.firstPixel).norm(), 1e-9);
    EXPECT_LT((turned.rowStep.mm - plain.rowStep.mm).norm(), 1e-12);
    EXPECT_EQ(cameraOf(arm, PatientTurn{100, 0}).error().code, ErrorCode::InvalidArgument);
}

TEST(RoomPoints, HaveTheWidthsOfThePatientsAngles) {
    std::vector<PatientPoint> contour;
    for (int i = 0; i < 60; ++i) {
        const double a = 2 * M_PI * i / 60;
        contour.push_back({Eigen::Vector3d(40 + 3 * std::sin(a), 12 * std::cos(a), 900 + 9 * std::sin(a))});
    }
    const CArmAngles room{-25, 18};
    for (const PatientTurn& turn : {PatientTurn{}, PatientTurn{14, -6}}) {
        const double turned = *projectedWidth(roomPoints(contour, turn), room)->widthMm;
        EXPECT_NEAR(turned, *projectedWidth(contour, patientAngles(room, turn))->widthMm, 1e-9);
    }
}

TEST(CArmDistances, AreRefusedInWordsWhenNoArmHasThem) {
    EXPECT_TRUE(validate(CArmDistances{}));
    EXPECT_EQ(validate(CArmDistances{1100, 750}).error().message,
              "Cannot use the distances of the C-arm: from the source 1100 mm to the isocentre and 750 mm to the detector; they must lie "
              "within 300 mm to 2000 mm, and the detector beyond the isocentre.");
    EXPECT_FALSE(validate(CArmDistances{100, 750}));
    EXPECT_FALSE(validate(CArmDistances{750, 2500}));
    EXPECT_EQ(validate(CArmDistances{std::nan(""), 1100}).error().code, ErrorCode::NonFinite);
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
