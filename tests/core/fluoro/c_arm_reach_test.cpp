#include "core/fluoro/c_arm_reach.h"

#include "tests/core/fluoro/expect.h"

#include <cmath>
#include <gmock/gmock.h>
#include <limits>

using namespace gauge::core;
using namespace gauge::test;
using testing::AllOf;
using testing::HasSubstr;

namespace {

constexpr double kRoundingDeg = 1e-9;

void expectView(const CArmAngles& found, double primary, double secondary, double tolerance = kRoundingDeg) {
    EXPECT_NEAR(found.primaryDeg, primary, tolerance);
    EXPECT_NEAR(found.secondaryDeg, secondary, tolerance);
}

} // namespace

TEST(CArmReach, KnowsItsBordersAndRefusesWhatIsNone) {
    const CArmReach reach{30, 50, 40, 20};
    EXPECT_TRUE(reach.contains({-30, 40}));
    EXPECT_TRUE(reach.contains({50, -20}));
    EXPECT_FALSE(reach.contains({-30.1, 0}));
    EXPECT_FALSE(reach.contains({0, -20.1}));
    EXPECT_TRUE(validate(reach));
    EXPECT_THAT(errorOf(validate(CArmReach{30, 200, 40, 20})).message, HasSubstr("must lie within 0 to 180"));
    EXPECT_THAT(errorOf(validate(CArmReach{30, 50, -1, 20})).message, HasSubstr("CRA and CAU within 0 to 90"));
    EXPECT_THAT(errorOf(validate(CArmReach{0, 0, 0, 0})).message, HasSubstr("leaves one view only"));
    EXPECT_EQ(errorOf(validate(CArmReach{std::numeric_limits<double>::quiet_NaN(), 0, 0, 0})).code, ErrorCode::NonFinite);
}

TEST(HeldWithin, IsTheNearestReachableView) {
    const CArmReach reach{60, 60, 40, 40};
    EXPECT_EQ(heldWithin(reach, {10, -20}), (CArmAngles{10, -20}));
    for (const CArmAngles far : {CArmAngles{80, 10}, CArmAngles{20, 70}, CArmAngles{-75, -60}, CArmAngles{170, 5}}) {
        const CArmAngles held = heldWithin(reach, far);
        EXPECT_TRUE(reach.contains(held));
        const double best = beamDirection(held).dot(beamDirection(far));
        for (double primary = -60; primary <= 60; primary += 1.0) // brute force over the whole reach
            for (double secondary = -40; secondary <= 40; secondary += 1.0)
                EXPECT_LE(beamDirection({primary, secondary}).dot(beamDirection(far)), best + 1e-5) << words(far);
    }
}

TEST(PatientTurn, RollIsExactlyAnOffsetOfThePrimaryAngle) {
    // [Blake2012]: rotation of the patient on the table is corrected by an offset in the rotation angle.
    expectView(roomAngles({-30, 25}, {12, 0}), -18, 25);
    expectView(patientAngles({-18, 25}, {12, 0}), -30, 25);
}

TEST(PatientTurn, TiltIsAnOffsetOfTheSecondaryAngleFromTheFrontAndNoneFromTheSide) {
    expectView(roomAngles({0, 10}, {0, 7}), 0, 17);
    expectView(roomAngles({90, 0}, {0, 7}), 90, 0);
}

TEST(PatientTurn, IsARotationWithAnInverse) {
    const PatientTurn turn{-20, 15};
    const Eigen::Matrix3d m = roomFromPatient(turn);
    EXPECT_TRUE((m.transpose() * m).isApprox(Eigen::Matrix3d::Identity(), 1e-14));
    EXPECT_NEAR(m.determinant(), 1.0, 1e-14);
    for (double primary = -80; primary <= 80; primary += 20)
        for (double secondary = -60; secondary <= 60; secondary += 20)
            expectView(patientAngles(roomAngles({primary, secondary}, turn), turn), primary, secondary);
    EXPECT_THAT(errorOf(validate(PatientTurn{120, 0})).message, HasSubstr("must lie within -90 to 90"));
    EXPECT_EQ(errorOf(validate(PatientTurn{0, std::numeric_limits<double>::infinity()})).code, ErrorCode::NonFinite);
}

TEST(LyingPosition, ReadsTheStandardsDefinedTerms) {
    // DICOM PS3.3 C.7.3.1.1.2.
    for (const char* word : {"HFS", "FFS", "LFS", "RFS", " hfs "})
        EXPECT_EQ(lyingPosition(word), LyingPosition::Supine) << word;
    for (const char* word : {"HFP", "FFP", "LFP", "RFP"})
        EXPECT_EQ(lyingPosition(word), LyingPosition::Prone) << word;
    for (const char* word : {"HFDL", "FFDL", "AFDL", "PFDL"})
        EXPECT_EQ(lyingPosition(word), LyingPosition::LeftSideDown) << word;
    for (const char* word : {"HFDR", "FFDR", "AFDR", "PFDR"})
        EXPECT_EQ(lyingPosition(word), LyingPosition::RightSideDown) << word;
    EXPECT_EQ(lyingPosition(""), LyingPosition::Unknown);
    EXPECT_EQ(lyingPosition("SITTING"), LyingPosition::Other);
    EXPECT_EQ(lyingPosition("H"), LyingPosition::Other);
}

TEST(UsableTurn, RefusesWhatIsNotKnownToBeSupineUnlessAnOffsetIsStated) {
    EXPECT_TRUE(valueOf(usableTurn("HFS", std::nullopt)).isNone());
    EXPECT_TRUE(valueOf(usableTurn("FFS", std::nullopt)).isNone());
    const Error unknown = errorOf(usableTurn("", std::nullopt));
    EXPECT_EQ(unknown.code, ErrorCode::AttributeMissing);
    EXPECT_THAT(unknown.message, AllOf(HasSubstr("(0018,5100) PatientPosition is absent or empty"), HasSubstr("offset of 0")));
    const Error prone = errorOf(usableTurn("HFP", std::nullopt));
    EXPECT_EQ(prone.code, ErrorCode::ObjectUnsupported);
    EXPECT_THAT(prone.message, AllOf(HasSubstr("the patient lay on the face"), HasSubstr("\"HFP\"")));
    EXPECT_THAT(errorOf(usableTurn("FFDL", std::nullopt)).message, HasSubstr("on the left side"));
    EXPECT_EQ(valueOf(usableTurn("HFP", PatientTurn{5, 0})), (PatientTurn{5, 0}));
    EXPECT_EQ(valueOf(usableTurn("HFS", PatientTurn{-8, 2})), (PatientTurn{-8, 2}));
    EXPECT_EQ(errorOf(usableTurn("", PatientTurn{100, 0})).code, ErrorCode::InvalidArgument);
}
