#include "core/access/septal_face.h"

#include "core/fluoro/view_planning.h"
#include "core/geometry/planar_contour.h"
#include "tests/core/access/upright_septum.h"
#include "tests/core/geometry/shape_zoo.h"

#include <algorithm>
#include <gmock/gmock.h>
#include <random>
#include <rapidcheck/gtest.h>

using namespace gauge::core;
using namespace gauge::test;
using testing::HasSubstr;

namespace {

const PatientPoint kLeft{{20, 5, 0}};

SeptalFace upright(bool withRoot = true) {
    const auto marks = uprightMarks();
    return need(septalFace(marks.fossa, kLeft, withRoot ? marks.aorticRoot : std::nullopt));
}

std::string refusalAt(const SeptalFace& face, const Eigen::Vector2d& place) {
    const auto inside = insideFossa(face, place);
    EXPECT_FALSE(inside);
    if (inside) return {};
    EXPECT_EQ(inside.error().code, ErrorCode::OutsideFossa);
    return inside.error().message;
}

} // namespace

TEST(SeptalFace, AxesAreTheSeptumsOwn) {
    const SeptalFace face = upright();
    EXPECT_LT((face.frame.normal.mm - Eigen::Vector3d::UnitX()).norm(), 1e-12);
    EXPECT_LT((face.frame.v.mm - Eigen::Vector3d::UnitZ()).norm(), 1e-12);
    EXPECT_LT((face.frame.u.mm - Eigen::Vector3d::UnitY()).norm(), 1e-12); // u to the back
    EXPECT_LT((face.frame.origin.mm - Eigen::Vector3d(-20, 5, 0)).norm(), kOutlineMm);
    EXPECT_EQ(face.posteriorSign, 1.0);
    EXPECT_NEAR(face.areaMm2(), 100.0 * std::numbers::pi, 0.05);
    EXPECT_NEAR(face.high.y() - face.low.y(), 20.0, kOutlineMm);
    EXPECT_NEAR(face.fit.rmsMm, 0.0, kAccessRounding);
}

TEST(SeptalFace, DoesNotDependOnTheOrderOfMarking) {
    auto marks = uprightMarks();
    const auto before = upright();
    std::mt19937 random(3);
    std::shuffle(marks.fossa.begin(), marks.fossa.end(), random);
    const auto after = need(septalFace(marks.fossa, kLeft, marks.aorticRoot));
    EXPECT_NEAR(before.areaMm2(), after.areaMm2(), 1e-6);
    EXPECT_GT(signedAreaMm2(after.outline), 0.0) << "counter-clockwise";
}

// Xiong and others, EuroIntervention, doi 10.4244/EIJ-D-19-00618: the atrial septum is seen en face at RAO 33 CAUD 33 on average
// (n = 44, CT). A septum with that normal gives these angles back, and its u points to the back: seen from the left atrium the
// aortic root lies on the left.
TEST(SeptalFace, PublishedEnFaceAnglesComeBack) {
    const Eigen::Vector3d n = -beamDirection({-33.0, -33.0}).mm; // into the left atrium: left, back and up
    const Eigen::Vector3d a = n.unitOrthogonal(), b = n.cross(a);
    const auto face = need(septalFace(ring({-20, 0, 0}, 12 * a, 9 * b, 10), {Eigen::Vector3d(-20, 0, 0) + 30 * n}, std::nullopt));
    const CArmAngles view = enFace(face.frame.normal);
    EXPECT_NEAR(view.primaryDeg, -33.0, 1e-6);
    EXPECT_NEAR(view.secondaryDeg, -33.0, 1e-6);
    EXPECT_EQ(face.posteriorSign, 1.0);
    EXPECT_GT(face.frame.u.mm.y(), 0.5);
    EXPECT_LT(face.frame.u.mm.x(), 0.0); // the septum's back edge lies farther to the right
}

TEST(SeptalFace, OutsideIsRefusedWithItsSide) {
    const SeptalFace face = upright();
    EXPECT_TRUE(insideFossa(face, {0, 0}));
    EXPECT_TRUE(insideFossa(face, {9.9, 0}));
    EXPECT_THAT(refusalAt(face, {-14, 2}), HasSubstr("aortic-root side (anterior) (told by the marked aortic root)"));
    EXPECT_THAT(refusalAt(face, {14, 0}), HasSubstr("4.0 mm outside the fossa's outline, towards the posterior wall"));
    EXPECT_THAT(refusalAt(face, {2, 15}), HasSubstr("superior side"));
    EXPECT_THAT(refusalAt(face, {-1, -15}), HasSubstr("inferior side"));
    EXPECT_THAT(refusalAt(upright(false), {-14, 2}), HasSubstr("by the patient's axes: no aortic root is marked"));
    EXPECT_EQ(refused(insideFossa(face, {NAN, 0})).code, ErrorCode::NonFinite);
}

TEST(SeptalFace, ARootMarkedElsewhereTurnsFrontAndBack) {
    const auto marks = uprightMarks();
    const auto face = need(septalFace(marks.fossa, kLeft, PatientPoint{{-22, 35, 4}}));
    EXPECT_EQ(face.posteriorSign, -1.0);
    EXPECT_EQ(sideOf(face, {14, 0}), SeptalSide::AorticRoot);
    EXPECT_EQ(sideOf(face, {-14, 0}), SeptalSide::PosteriorWall);
}

TEST(SeptalFace, AHighRootTakesTheDirectionsInDoubt) {
    const auto marks = uprightMarks();
    const auto face = need(septalFace(marks.fossa, kLeft, PatientPoint{{-22, -15, 20}})); // front and up by 45 degrees
    EXPECT_EQ(sideOf(face, {-12, 12}), SeptalSide::AorticRoot);
    EXPECT_EQ(sideOf(face, {-14, 0}), SeptalSide::AorticRoot);
    EXPECT_EQ(sideOf(face, {4, 14}), SeptalSide::Superior);
}

TEST(SeptalFace, PositionIsToldByThirds) {
    const SeptalFace face = upright();
    EXPECT_EQ(words(positionOf(face, {0, 0})), "central");
    EXPECT_EQ(words(positionOf(face, {5, -5})), "inferior-posterior");
    EXPECT_EQ(words(positionOf(face, {0, -5})), "inferior-central");
    EXPECT_EQ(words(positionOf(face, {-5, -5})), "inferior-anterior");
    EXPECT_EQ(words(positionOf(face, {5, 5})), "superior-posterior");
    EXPECT_EQ(words(positionOf(face, {-5, 5})), "superior-anterior");
    EXPECT_EQ(words(positionOf(face, {5, 0})), "posterior");
    EXPECT_EQ(words(positionOf(face, {-5, 0})), "anterior");
    EXPECT_EQ(words(positionOf(face, {0, 5})), "superior-central");
}

TEST(SeptalFace, RefusesWhatIsNoSeptum) {
    const auto few = refused(septalFace(std::vector<PatientPoint>(3), kLeft, std::nullopt));
    EXPECT_EQ(few.code, ErrorCode::TooFewPoints);
    EXPECT_THAT(few.message, HasSubstr("points marked on its rim: 3; at least 4"));
    EXPECT_THAT(refused(septalFace(ring({0, 0, 0}, {10, 0, 0}, {0, 10, 0}, 8), {{0, 0, 20}}, std::nullopt)).message,
                HasSubstr("almost across the body"));
    EXPECT_THAT(refused(septalFace(ring({0, 0, 0}, {10, 0, 0}, {0, 0, 10}, 8), {{0, 20, 0}}, std::nullopt)).message,
                HasSubstr("faces the front"));
    EXPECT_TRUE(septalFace(ring({0, 0, 0}, {10, 0, 0}, {0, 0, 10}, 8), {{0, 20, 0}}, PatientPoint{{20, 0, 5}}));
    EXPECT_THAT(refused(septalFace(uprightMarks().fossa, {{-20, 9, 9}}, std::nullopt)).message, HasSubstr("its two sides cannot be told apart"));
    EXPECT_THAT(refused(septalFace(uprightMarks().fossa, kLeft, PatientPoint{{-40, 5, 0}})).message, HasSubstr("shows no side"));
    EXPECT_THAT(refused(septalFace(std::vector<PatientPoint>{{{0, 0, 0}}, {{0, 1, 1}}, {{0, 20, 20}}, {{0, 30, 30}}}, kLeft, std::nullopt)).message,
                HasSubstr("rim of the fossa: its points lie almost on one line"));
}

TEST(SeptalFace, DistanceToTheOutlineIsToTheCircle) {
    const SeptalFace face = upright();
    EXPECT_NEAR(distanceToOutlineMm(face, {0, 0}), 10.0, 5e-3);
    EXPECT_NEAR(distanceToOutlineMm(face, {6, 8}), 0.0, 5e-3);
    EXPECT_NEAR(distanceToOutlineMm(face, {12, 9}), 5.0, 5e-3);
}
