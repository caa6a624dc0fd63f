#include "core/fluoro/working_views.h"

#include "core/geometry/polyline.h"

#include "tests/core/fluoro/bodies.h"
#include "tests/core/fluoro/expect.h"

#include <cmath>
#include <gmock/gmock.h>

using namespace gauge::core;
using namespace gauge::test;
using Eigen::Vector3d;
using testing::HasSubstr;
using testing::IsSupersetOf;

namespace {

constexpr double kPolygonMm = 0.05; // 90 points on an ellipse of 26 mm read at most 0.03 mm low
constexpr CArmReach kAnywhere{180, 180, 90, 90};

/// A neck looking to the patient's left, front and head, whose axis then bends by 60 degrees towards `towards`.
ProjectionSubject bentNeck(const Vector3d& normal, const Vector3d& towards) {
    ProjectionSubject subject;
    subject.contour = ellipseIn3d({30, -20, 40}, normal, 13.0, 9.0, 90);
    const Vector3d n = normal.normalized(), side = (towards - towards.dot(n) * n).normalized();
    const Vector3d after = std::cos(M_PI / 3) * n + std::sin(M_PI / 3) * side;
    Vector3d at(30, -20, 40);
    for (int i = 0; i <= 40; ++i) {
        subject.axis.push_back({at});
        at += 0.5 * (i < 20 ? n : after);
    }
    return subject;
}

double betweenDeg(const CArmAngles& a, const CArmAngles& b) {
    const double deg = angleBetweenDeg(beamDirection(a), beamDirection(b));
    return std::min(deg, 180.0 - deg);
}

const Vector3d kNormal = Vector3d(0.6, -0.7, 0.2).normalized();

} // namespace

TEST(BendPlane, IsThatOfTheTwoStraightParts) {
    const auto subject = bentNeck(kNormal, axesOf(kNormal)[0]);
    const auto bend = bendPlane(subject.axis);
    ASSERT_TRUE(bend);
    EXPECT_NEAR(bend->turnDeg, 60.0, 1e-6);
    EXPECT_NEAR(std::abs(bend->normal.mm.dot(axesOf(kNormal)[1])), 1.0, 1e-9);
    EXPECT_NEAR(bend->before.mm.dot(kNormal), 1.0, 1e-9);
}

TEST(BendPlane, IsNotNamedForAStraightOrShortAxis) {
    std::vector<PatientPoint> straight, brief;
    for (int i = 0; i <= 60; ++i)
        straight.push_back({Vector3d(0.5 * i, 0, 0)});
    brief = {straight.begin(), straight.begin() + 20};
    EXPECT_FALSE(bendPlane(straight));
    EXPECT_FALSE(bendPlane(brief));
    EXPECT_FALSE(bendPlane({}));
}

TEST(PlanViews, NamesTheViewsOfAKnownNeck) {
    const Vector3d longest = axesOf(kNormal)[0], shortest = axesOf(kNormal)[1];
    const auto plan = valueOf(planViews(bentNeck(kNormal, longest), nullptr, {kAnywhere, {}, {}}));
    EXPECT_NEAR(plan.longestMm, 26.0, kPolygonMm);
    EXPECT_NEAR(plan.shortestMm, 18.0, kPolygonMm);
    const auto* most = plan.view(ViewAim::LongestWidth);
    ASSERT_TRUE(most);
    EXPECT_NEAR(std::abs(beamDirection(most->seen.angles).mm.dot(shortest)), 1.0, 1e-6);
    EXPECT_NEAR(*most->seen.widthMm, 26.0, kPolygonMm);
    EXPECT_NEAR(most->seen.openingDeg, 0.0, 1e-5);
    EXPECT_NEAR(most->movedDeg, 0.0, 1e-5);
    const auto* least = plan.view(ViewAim::ShortestWidth);
    EXPECT_NEAR(*least->seen.widthMm, 18.0, kPolygonMm);
    EXPECT_NEAR(*least->seen.lostOfLongestMm, 8.0, 2 * kPolygonMm);
    // The bend lies towards the longest diameter: it is in profile from the side of the shortest one.
    const auto* profile = plan.view(ViewAim::BendInProfile);
    ASSERT_TRUE(profile);
    EXPECT_NEAR(*profile->seen.offProfileDeg, 0.0, 1e-4);
    EXPECT_NEAR(betweenDeg(profile->seen.angles, most->seen.angles), 0.0, 0.1);
    EXPECT_NEAR(plan.view(ViewAim::EnFace)->seen.offNormalDeg, 0.0, 1e-5);
    EXPECT_FALSE(plan.view(ViewAim::EnFace)->seen.widthMm);
    EXPECT_FALSE(plan.view(ViewAim::LeastOverlap));
    std::vector<std::string> codes;
    for (const auto& notice : plan.notices)
        codes.push_back(notice.code);
    EXPECT_EQ(codes, std::vector<std::string>{"no-surface"});
}

TEST(PlanViews, StayWithinTheReachAndSayWhatThatCosts) {
    const CArmReach reach{60, 40, 20, 25};
    const auto subject = bentNeck(kNormal, axesOf(kNormal)[0]);
    const auto plan = valueOf(planViews(subject, nullptr, {reach, {}, {}}));
    for (const auto& view : plan.views) {
        EXPECT_TRUE(reach.contains(view.seen.angles)) << name(view.aim);
        EXPECT_NEAR(view.movedDeg, betweenDeg(view.ideal, view.seen.angles), 1e-9);
    }
    // Brute force along the reachable part of the curve.
    double best = 0.0;
    for (const auto& part : edgeOnWithin({kNormal}, reach, 0.25))
        for (const auto& view : part)
            best = std::max(best, *valueOf(projectedWidth(subject.contour, view)).widthMm);
    ASSERT_GT(best, 0.0);
    EXPECT_NEAR(*plan.view(ViewAim::LongestWidth)->seen.widthMm, best, 0.05);
    EXPECT_NEAR(plan.view(ViewAim::LongestWidth)->seen.openingDeg, 0.0, 1e-4);
}

TEST(PlanViews, WithoutAnyEdgeOnViewTakeTheNearestAndSaySo) {
    const Vector3d front(0.05, -1, 0.02); // seen en face from where the arm stands
    const auto plan = valueOf(planViews(bentNeck(front, axesOf(front)[0]), nullptr, {{30, 30, 20, 20}, {}, {}}));
    EXPECT_TRUE(plan.edgeOn.empty());
    std::vector<std::string> codes;
    for (const auto& notice : plan.notices)
        codes.push_back(notice.code);
    EXPECT_THAT(codes, IsSupersetOf({"not-edge-on-within-reach"}));
    double least = 90.0;
    for (double a = -30; a <= 30; a += 1)
        for (double b = -20; b <= 20; b += 1)
            least = std::min(least, std::abs(std::asin(beamDirection({a, b}).mm.dot(front.normalized()))) * 180 / M_PI);
    EXPECT_NEAR(plan.view(ViewAim::LongestWidth)->seen.openingDeg, least, 0.5);
}

TEST(PlanViews, OneForAllIsTheBestCompromise) {
    const CArmReach reach{60, 60, 40, 40};
    const auto subject = bentNeck(kNormal, axesOf(kNormal)[0]);
    const ViewPlanOptions options{reach, {}, {}};
    const auto plan = valueOf(planViews(subject, nullptr, options));
    const auto cost = [&](const ViewReading& r) {
        const double parts[] = {r.openingDeg / 10.0, *r.lostOfLongestMm / 1.0, *r.beyondShortestMm / 1.0, *r.offProfileDeg / 15.0};
        double sum = 0.0;
        for (const double part : parts)
            sum += part * part;
        return sum;
    };
    const double found = cost(plan.view(ViewAim::OneForAll)->seen);
    for (double a = -60; a <= 60; a += 4)
        for (double b = -40; b <= 40; b += 4) {
            const auto r = valueOf(readView(subject, nullptr, {a, b}, options));
            if (r.widthMm) {
                EXPECT_GE(cost(r), found - 0.25) << a << " " << b; // within the search's grid of 1 degree
            }
        }
}

TEST(PlanViews, TurnWithThePatient) {
    const auto subject = bentNeck(kNormal, axesOf(kNormal)[1]);
    const PatientTurn turn{-12, 8};
    const auto lying = valueOf(planViews(subject, nullptr, {kAnywhere, {}, {}})),
               turned = valueOf(planViews(subject, nullptr, {kAnywhere, turn, {}}));
    for (const ViewAim aim : {ViewAim::LongestWidth, ViewAim::ShortestWidth, ViewAim::BendInProfile, ViewAim::EnFace}) {
        const auto expected = roomAngles(lying.view(aim)->ideal, turn);
        EXPECT_NEAR(betweenDeg(turned.view(aim)->ideal, expected), 0.0, 1e-5) << name(aim);
        if (lying.view(aim)->seen.widthMm) {
            EXPECT_NEAR(*turned.view(aim)->seen.widthMm, *lying.view(aim)->seen.widthMm, 1e-6);
        }
    }
}

TEST(PlanViews, RefuseAContourThatIsNoneAndALimitThatIsNone) {
    EXPECT_EQ(errorOf(planViews({}, nullptr, {})).code, ErrorCode::TooFewPoints);
    const auto subject = bentNeck(kNormal, axesOf(kNormal)[0]);
    EXPECT_EQ(errorOf(planViews(subject, nullptr, {{-1, 60, 40, 40}, {}, {}})).code, ErrorCode::InvalidArgument);
    EXPECT_EQ(errorOf(planViews(subject, nullptr, {{}, {95, 0}, {}})).code, ErrorCode::InvalidArgument);
    std::stop_source source;
    source.request_stop();
    EXPECT_EQ(errorOf(planViews(subject, nullptr, {}, {source.get_token(), {}})).code, ErrorCode::Cancelled);
}

TEST(ViewAim, NamesComeBack) {
    for (const ViewAim aim : kViewAims)
        EXPECT_EQ(viewAimFrom(name(aim)), aim);
    EXPECT_FALSE(viewAimFrom("spider"));
}
