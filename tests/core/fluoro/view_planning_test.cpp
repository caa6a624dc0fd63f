#include "core/fluoro/view_planning.h"

#include "tests/core/fluoro/bodies.h"
#include "tests/core/fluoro/expect.h"

#include <cmath>
#include <gmock/gmock.h>

using namespace gauge::core;
using namespace gauge::test;
using Eigen::Vector3d;
using testing::HasSubstr;

namespace {

/// Test vectors computed apart from this code, from [Blake2012]'s formula: printed to 1e-4 degrees.
constexpr double kPrintedDeg = 6e-5;
const PatientVector kFirst{Vector3d(0.60402277, -0.71984631, 0.34202014)};   // en face LAO 40 CRA 20
const PatientVector kSecond{Vector3d(0.78145041, -0.56775696, -0.25881905)}; // en face LAO 54 CAU 15

} // namespace

TEST(EdgeOnSecondary, AgreesWithVectorsComputedApart) {
    const double first[][2] = {{-60, 25.5056},  {-50, 0},      {-40, -25.5056}, {-30, -43.2192},
                               {-20, -53.9476}, {0, -64.5862}, {20, -68.8272}};
    for (const auto& [primary, secondary] : first)
        EXPECT_NEAR(edgeOnSecondaryDeg(kFirst, primary).value(), secondary, kPrintedDeg) << primary;
    const double second[][2] = {{-60, -56.6240}, {-50, -42.0778}, {-36, 0},     {-30, 21.3110},
                                {-20, 45.8103},  {0, 65.4935},    {20, 72.0889}};
    for (const auto& [primary, secondary] : second)
        EXPECT_NEAR(edgeOnSecondaryDeg(kSecond, primary).value(), secondary, kPrintedDeg) << primary;
}

TEST(EdgeOnSecondary, OfAnUprightPlaneExistsAtOnePrimaryAngle) {
    const PatientVector left{Vector3d(1, 0, 0)};
    EXPECT_EQ(edgeOnSecondaryDeg(left, 0.0).value(), 0.0);
    EXPECT_FALSE(edgeOnSecondaryDeg(left, 20.0));
}

TEST(EnFace, AgreesWithVectorsComputedApart) {
    EXPECT_NEAR(enFace(kFirst).primaryDeg, 40.0, 1e-5);
    EXPECT_NEAR(enFace(kFirst).secondaryDeg, 20.0, 1e-5);
    EXPECT_NEAR(enFace(-kSecond).primaryDeg, 54.0,
                1e-5); // turned round: the detector stays before the patient
    EXPECT_NEAR(enFace(-kSecond).secondaryDeg, -15.0, 1e-5);
}

TEST(EdgeOnCurve, LooksAlongThePlaneEverywhere) {
    for (const auto& normal :
         {kFirst, kSecond, PatientVector{Vector3d(1, 0, 0)}, PatientVector{Vector3d(0, 0, 1)}}) {
        const auto curve = edgeOnCurve(normal, 72);
        ASSERT_EQ(curve.size(), 72u);
        for (const auto& view : curve)
            EXPECT_NEAR(beamDirection(view).dot(normal), 0.0, 1e-7);
        // Evenly spaced along the circle: 5 degrees from one to the next.
        for (std::size_t i = 1; i < curve.size(); ++i)
            EXPECT_NEAR(beamDirection(curve[i]).dot(beamDirection(curve[i - 1])),
                        std::cos(5.0 * M_PI / 180.0), 1e-9);
    }
}

TEST(EdgeOnAlong, LooksAlongTheGivenDirection) {
    const auto axes = axesOf(kFirst.mm);
    const auto view = valueOf(edgeOnAlong(kFirst, {axes[0] + 0.3 * kFirst.mm}));
    EXPECT_NEAR(std::abs(beamDirection(view).mm.dot(axes[0])), 1.0, 1e-9);
    EXPECT_LE(std::abs(view.primaryDeg), 90.0);
    EXPECT_THAT(errorOf(edgeOnAlong(kFirst, 2.0 * kFirst)).message, HasSubstr("perpendicular to the plane"));
}

TEST(SectionViews, ShowTheLongestAndTheShortestDiameter) {
    const auto contour = ellipseIn3d({3, 4, 5}, kSecond.mm, 13.0, 9.0);
    const auto views = valueOf(sectionViews(contour));
    EXPECT_NEAR(views.longestMm, 26.0, 1e-3);
    EXPECT_NEAR(views.shortestMm, 18.0, 1e-3);
    EXPECT_NEAR(*valueOf(projectedWidth(contour, views.showsLongest)).widthMm, 26.0, 1e-3);
    EXPECT_NEAR(*valueOf(projectedWidth(contour, views.showsShortest)).widthMm, 18.0, 1e-3);
    EXPECT_NEAR(valueOf(projectedWidth(contour, views.showsLongest)).openingDeg, 0.0, 1e-5);
    EXPECT_NEAR(valueOf(lostOfLongestMm(contour, views.showsLongest)), 0.0, 1e-3);
    EXPECT_NEAR(valueOf(lostOfLongestMm(contour, views.showsShortest)), 8.0, 2e-3);
    EXPECT_THAT(errorOf(lostOfLongestMm(contour, views.enFace)).message, HasSubstr("looks along the axis"));
}
