#include "core/access/mitral_datum.h"

#include "tests/core/access/upright_septum.h"

#include <gmock/gmock.h>

using namespace gauge::core;
using namespace gauge::test;
using testing::HasSubstr;

TEST(MitralDatum, NormalPointsToTheAtriumWhateverTheOrder) {
    auto marks = uprightMarks();
    const auto datum = need(mitralDatum(marks.annulus, marks.coaptation, {{-20, 5, 0}}));
    EXPECT_NEAR(datum.annulus.plane.normal.mm.z(), 1.0, 1e-12);
    std::reverse(marks.annulus.begin(), marks.annulus.end());
    EXPECT_NEAR(need(mitralDatum(marks.annulus, {}, {{-20, 5, 0}})).annulus.plane.normal.mm.z(), 1.0, 1e-12);
    EXPECT_NEAR(need(mitralDatum(marks.annulus, {}, {{-20, 5, -70}})).annulus.plane.normal.mm.z(), -1.0, 1e-12);
}

TEST(MitralDatum, CoaptationLiesBelowTheAnnulusWhenLeafletsAreTethered) {
    const auto marks = uprightMarks();
    const auto level = need(mitralDatum(marks.annulus, marks.coaptation, {{-20, 5, 0}})).coaptation;
    ASSERT_TRUE(level);
    EXPECT_EQ(level->count, 3u);
    EXPECT_NEAR(level->belowAnnulusMm, 8.0, kAccessRounding);
    EXPECT_NEAR(level->spreadMm, 0.0, kAccessRounding);
}

// Levels -43, -41, -39: mean -41, root mean square about it sqrt((4 + 0 + 4) / 3).
TEST(MitralDatum, SpreadOfTheCoaptationIsAboutItsMean) {
    const auto marks = uprightMarks();
    const std::vector<PatientPoint> leaflets{{{0, -10, -43}}, {{0, -8, -41}}, {{0, -12, -39}}};
    const auto level = need(mitralDatum(marks.annulus, leaflets, {{-20, 5, 0}})).coaptation;
    ASSERT_TRUE(level);
    EXPECT_NEAR(level->belowAnnulusMm, 6.0, kAccessRounding);
    EXPECT_NEAR(level->spreadMm, std::sqrt(8.0 / 3.0), kAccessRounding);
}

TEST(MitralDatum, RefusesInWords) {
    const auto marks = uprightMarks();
    const std::vector<PatientPoint> line{{{0, 0, 0}}, {{1, 0, 0}}, {{2, 0, 0}}, {{30, 1, 0}}};
    const Error onLine = refused(mitralDatum(line, {}, {{0, 0, 20}}));
    EXPECT_EQ(onLine.code, ErrorCode::Degenerate);
    EXPECT_THAT(onLine.message, HasSubstr("mitral annulus: its points lie almost on one line"));
    const Error level = refused(mitralDatum(marks.annulus, {}, {{20, 5, -34.8}}));
    EXPECT_EQ(level.code, ErrorCode::Degenerate);
    EXPECT_THAT(level.message, HasSubstr("the fossa lies in the plane of the annulus (0.2 mm from it)"));
    EXPECT_EQ(refused(mitralDatum(marks.annulus, std::vector<PatientPoint>{{{NAN, 0, 0}}}, {{0, 0, 0}})).code, ErrorCode::NonFinite);
    EXPECT_EQ(refused(mitralDatum(std::vector<PatientPoint>(2), {}, {{0, 0, 0}})).code, ErrorCode::TooFewPoints);
}
