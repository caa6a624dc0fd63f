#include "core/fluoro/view_planning.h"

#include "tests/core/fluoro/bodies.h"
#include "tests/core/fluoro/expect.h"

#include <cmath>
#include <gmock/gmock.h>
#include <limits>
#include <rapidcheck/gtest.h>

using namespace gauge::core;
using namespace gauge::test;
using Eigen::Vector3d;
using testing::HasSubstr;

namespace {

/// Test vectors computed apart from this code, from [Blake2012]'s formula: printed to 1e-4 degrees.
constexpr double kPrintedDeg = 6e-5;
const PatientVector kFirst{Vector3d(0.60402277, -0.71984631, 0.34202014)};   // en face LAO 40 CRA 20
const PatientVector kSecond{Vector3d(0.78145041, -0.56775696, -0.25881905)}; // en face LAO 54 CAU 15

/// A component of a normal, -1 … 1.
double component() {
    return *rc::gen::inRange(-1000000, 1000001) / 1e6;
}

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

// Xiong T-Y et al., EuroIntervention, doi 10.4244/EIJ-D-19-00618 (CT, n = 44): published mean en-face angles. The direction
// formula of PS3.3 C.8.7.5 gives the normal; the way back must end at the published pair.
TEST(EnFace, GivesThePublishedAnglesBack) {
    const double published[][2] = {{54, -15}, {-10, -66}, {27, 59}, {-28, 19}, {-33, -33}, {13, -52},
                                   {55, -15}, {-59, -54}, {-27, 19}, {5, 60}};
    for (const auto& [primary, secondary] : published) {
        const double a = primary * M_PI / 180.0, b = secondary * M_PI / 180.0;
        for (const double length : {1.0, -1.0, 1e-200, -3e150}) {
            const Vector3d n = length * Vector3d(std::sin(a) * std::cos(b), -std::cos(a) * std::cos(b), std::sin(b));
            const auto found = enFace(valueOf(planeNormal(n)));
            EXPECT_NEAR(found.primaryDeg, primary, 0.01);
            EXPECT_NEAR(found.secondaryDeg, secondary, 0.01);
        }
    }
}

TEST(PlaneNormal, TakesAnyLengthAndRefusesNone) {
    EXPECT_NEAR(valueOf(planeNormal({0, 0, 5e-324})).mm.z(), 1.0, 1e-12);
    EXPECT_NEAR(valueOf(planeNormal({1e308, -1e308, 0})).norm(), 1.0, 1e-12);
    EXPECT_EQ(errorOf(planeNormal({0, 0, 0})).code, ErrorCode::Degenerate);
    EXPECT_THAT(errorOf(planeNormal({0, -0.0, 0})).message, HasSubstr("all its components are 0"));
    EXPECT_EQ(errorOf(planeNormal({0, std::numeric_limits<double>::quiet_NaN(), 1})).code, ErrorCode::NonFinite);
    EXPECT_EQ(errorOf(planeNormal({std::numeric_limits<double>::infinity(), 0, 1})).code, ErrorCode::NonFinite);
}

TEST(EdgeOnTable, HasEveryFifthPrimaryAngle) {
    const auto table = edgeOnTable(kFirst);
    ASSERT_EQ(table.size(), 37u);
    for (int i = 0; i < 37; ++i)
        EXPECT_EQ(table[static_cast<std::size_t>(i)].primaryDeg, -90.0 + 5.0 * i);
    EXPECT_NEAR(table[6].secondaryDeg, 25.5056, kPrintedDeg); // RAO 60, as above
    EXPECT_NEAR(table[18].secondaryDeg, -64.5862, kPrintedDeg);
}

TEST(EdgeOnTable, OfAnUprightPlaneRunsOverTheSecondaryAngle) {
    const double normals[][3] = {{1, 0, 0}, {-1, 0, 0}, {0, 1, 0}, {0, -1, 0}, {1, 1, 0}, {-3, 4, 0}};
    const double primary[] = {0, 0, 90, 90, 45, -53.130102354155978};
    for (int k = 0; k < 6; ++k) {
        const auto table = edgeOnTable({Vector3d(normals[k][0], normals[k][1], normals[k][2])});
        ASSERT_EQ(table.size(), 37u);
        for (int i = 0; i < 37; ++i) {
            EXPECT_NEAR(table[static_cast<std::size_t>(i)].primaryDeg, primary[k], 1e-12);
            EXPECT_EQ(table[static_cast<std::size_t>(i)].secondaryDeg, -90.0 + 5.0 * i);
        }
    }
}

RC_GTEST_PROP(EdgeOnTable, LooksAlongThePlaneInEveryRow, ()) {
    Vector3d n(component(), component(), *rc::gen::element(0, 1) ? component() : 0.0);
    RC_PRE(n.norm() > 1e-3);
    for (const auto& view : edgeOnTable({n}))
        RC_ASSERT(std::abs(beamDirection(view).mm.dot(n.normalized())) < 1e-9);
}

RC_GTEST_PROP(EdgeOnWithin, IsTheReachablePartOfTheCircle, ()) {
    const Vector3d n(component(), component(), component());
    RC_PRE(n.norm() > 1e-3);
    const CArmReach reach{*rc::gen::inRange(1, 90) * 1.0, *rc::gen::inRange(1, 90) * 1.0, *rc::gen::inRange(1, 80) * 1.0,
                          *rc::gen::inRange(1, 80) * 1.0};
    std::size_t inside = 0;
    for (const auto& part : edgeOnWithin({n}, reach, 1.0)) {
        RC_ASSERT(part.size() >= 2u);
        inside += part.size();
        for (const auto& view : part) {
            RC_ASSERT(reach.contains(view));
            RC_ASSERT(std::abs(beamDirection(view).mm.dot(n.normalized())) < 1e-7);
        }
        for (const auto& end : {part.front(), part.back()}) { // at the border
            const double gap = std::min({std::abs(end.primaryDeg + reach.mostRaoDeg), std::abs(end.primaryDeg - reach.mostLaoDeg),
                                         std::abs(end.secondaryDeg - reach.mostCraDeg), std::abs(end.secondaryDeg + reach.mostCauDeg)});
            RC_ASSERT(gap < 0.1); // a steep curve runs far in primary angle within 0.0006 degrees of the circle
        }
    }
    std::size_t expected = 0;
    for (const auto& view : edgeOnCurve({n}, 360))
        expected += reach.contains(view) ? 1 : 0;
    RC_ASSERT(inside >= expected); // the ends come on top
}

TEST(EdgeOnWithin, IsEmptyWhereNoViewIsEdgeOnAndWholeWhereAllAre) {
    EXPECT_TRUE(edgeOnWithin({Vector3d(0, -1, 0)}, {60, 60, 40, 40}).empty()); // en face from the front
    const auto whole = edgeOnWithin({Vector3d(0, 0, 1)}, {180, 180, 90, 90});
    ASSERT_EQ(whole.size(), 1u);
    EXPECT_EQ(whole.front().size(), 360u);
}

TEST(WidthWithin, HoldsTheWidthsOfAllViewsNear) {
    const auto contour = ellipseIn3d({3, 4, 5}, kSecond.mm, 13.0, 9.0, 90);
    const auto views = valueOf(sectionViews(contour));
    const auto range = valueOf(widthWithin(contour, views.showsShortest));
    EXPECT_NEAR(range.lowestMm, 18.0, 0.02);
    EXPECT_GT(range.highestMm, 18.02); // turned, it shows more than the shortest
    for (double da = -5; da <= 5; da += 0.7)
        for (double db = -5; db <= 5; db += 0.7) {
            const CArmAngles near{views.showsShortest.primaryDeg + da, views.showsShortest.secondaryDeg + db};
            const double width = *valueOf(projectedWidth(contour, near)).widthMm;
            EXPECT_GE(width, range.lowestMm - 0.01);
            EXPECT_LE(width, range.highestMm + 0.01);
        }
    EXPECT_NEAR(valueOf(widthWithin(contour, views.showsLongest, 0.0)).lowestMm, 26.0, 0.05);
    EXPECT_THAT(errorOf(widthWithin(contour, views.enFace)).message, HasSubstr("shows no width"));
    EXPECT_THAT(errorOf(widthWithin(contour, views.showsLongest, 45.0)).message, HasSubstr("within 0 to 30"));
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
