#include "core/access/crossing.h"

#include "tests/core/access/upright_septum.h"
#include "tests/core/geometry/shape_zoo.h"

#include <gmock/gmock.h>
#include <rapidcheck/gtest.h>

using namespace gauge::core;
using namespace gauge::test;
using testing::HasSubstr;

namespace {

const Steering kSteering;

} // namespace

// By hand, see upright_septum.h; the middle of the outline is exact to kOutlineMm.
TEST(CrossingAt, HandWorkedPoints) {
    const auto scene = uprightScene(30.0);
    const auto middle = crossingAt(scene, {0, 0}, kSteering);
    EXPECT_NEAR(*middle.overAnnulusMm, 35.0, kOutlineMm);
    EXPECT_NEAR(*middle.overCoaptationMm, 43.0, kOutlineMm);
    EXPECT_NEAR(*middle.distanceMm, 40.0, kOutlineMm);
    EXPECT_NEAR(*middle.angleDeg, 30.0, 0.01);

    // 3 mm back and 6 mm down: the line is (40, -3, 6), its length sqrt(1645), cos = (40 cos 30 + 6 sin 30) / length.
    const auto low = crossingAt(scene, {3, -6}, kSteering);
    EXPECT_NEAR(*low.overAnnulusMm, 29.0, kOutlineMm);
    EXPECT_NEAR(*low.overCoaptationMm, 37.0, kOutlineMm);
    EXPECT_NEAR(*low.distanceMm, std::sqrt(1645.0), kOutlineMm);
    EXPECT_NEAR(*low.angleDeg, 21.865, 0.01);
    EXPECT_LT((low.point.mm - Eigen::Vector3d(-20, 8, -6)).norm(), kOutlineMm);
}

// The two data part when the annulus is tilted. Its normal (0.6, 0, 0.8) still leads straight up along the upright septum, so the
// height over the coaptation stays 43; square to the annulus, with its middle at (0, -10, -35), the height is
// 0.6 (-20 - 0) + 0.8 (0 + 35) = 16.
TEST(CrossingAt, HeightsOverATiltedAnnulusAreTwoThings) {
    auto marks = uprightMarks();
    marks.annulus = ring({0, -10, -35}, {0, 15, 0}, {12, 0, -9}, 12);
    marks.coaptation = {{{0, -10, -43}}};
    const auto scene = need(crossingScene(marks, uprightTarget(0.0), {{0, 0, 0}}));
    EXPECT_LT((scene.alongSeptum->mm - Eigen::Vector3d::UnitZ()).norm(), 1e-9);
    const auto values = crossingAt(scene, {0, 0}, kSteering);
    EXPECT_NEAR(*values.overCoaptationMm, 43.0, kOutlineMm);
    EXPECT_NEAR(*values.overAnnulusMm, 16.0, kOutlineMm);
    EXPECT_NEAR(need(crossingScene(marks, uprightTarget(0.0), {{0, 0, 0}})).mitral->coaptation->belowAnnulusMm, 6.4, 1e-9);
}

TEST(CrossingAt, TellsWhatIsKnown) {
    auto marks = uprightMarks();
    marks.coaptation.clear();
    const auto noTarget = crossingAt(need(crossingScene(marks, std::nullopt, {{0, 0, 0}})), {0, 0}, kSteering);
    EXPECT_TRUE(noTarget.overAnnulusMm);
    EXPECT_FALSE(noTarget.overCoaptationMm);
    EXPECT_FALSE(noTarget.angleDeg);
    marks.annulus.clear();
    const auto faceOnly = crossingAt(need(crossingScene(marks, uprightTarget(0.0), {{0, 0, 0}})), {0, 0}, kSteering);
    EXPECT_FALSE(faceOnly.overAnnulusMm);
    EXPECT_TRUE(faceOnly.angleDeg);
}

TEST(CrossingScene, RefusesInWords) {
    auto marks = uprightMarks();
    marks.annulus.clear();
    EXPECT_THAT(refused(crossingScene(marks, std::nullopt, {{0, 0, 0}})).message, HasSubstr("no points of the mitral annulus are marked"));
    marks = uprightMarks();
    marks.annulus = ring({-60, 5, 0}, {0, 15, 0}, {0, 0, 15}, 8); // parallel to the septum
    EXPECT_THAT(refused(crossingScene(marks, std::nullopt, {{0, 0, 0}})).message, HasSubstr("almost parallel to that of the mitral annulus"));
}

TEST(CrossingLimits, AreChecked) {
    EXPECT_TRUE(validate(CrossingLimits{}));
    CrossingLimits limits;
    limits.lowestMm = 46.0;
    EXPECT_THAT(refused(validate(limits)).message, HasSubstr("reaches from 46 to 45 mm"));
    limits = {};
    limits.mostAngleDeg = 95.0;
    EXPECT_THAT(refused(validate(limits)).message, HasSubstr("it is 95°"));
    limits = {};
    limits.highestMm = NAN;
    EXPECT_EQ(refused(validate(limits)).code, ErrorCode::NonFinite);
    limits = {};
    limits.steering.radiusMm = -1.0;
    EXPECT_EQ(refused(validate(limits)).code, ErrorCode::InvalidArgument);
}

TEST(CrossingLimits, DefaultsAreThoseThatWereRead) {
    const CrossingLimits limits;
    EXPECT_EQ(limits.mostAngleDeg, 30.0); // Fukutomi and others, doi 10.4244/EIJ-D-21-00555: "sheath-LAA axis angle <30 degrees"
    // PMC5752829, figure 21: 4 cm (functional) and more (degenerate) above the annulus; 35 to 45 mm from memory.
    EXPECT_EQ(limits.datum, HeightDatum::Annulus);
    EXPECT_LT(limits.lowestMm, 40.0);
    EXPECT_GT(limits.highestMm, 40.0);
}

TEST(Serves, ByTheDatumThatIsSet) {
    const auto scene = uprightScene(20.0);
    const auto low = crossingAt(scene, {0, -5}, kSteering); // 30 over the annulus, 38 over the coaptation
    CrossingLimits limits;
    EXPECT_EQ(servesRepair(low, limits), false);
    limits.datum = HeightDatum::Coaptation;
    EXPECT_EQ(servesRepair(low, limits), true);
    EXPECT_EQ(servesClosure(low, limits), true);
    limits.mostAngleDeg = 5.0;
    EXPECT_EQ(servesClosure(low, limits), false);
    EXPECT_EQ(servesClosureSteered(low, limits), true);
    EXPECT_FALSE(servesRepair(CrossingValues{}, limits).has_value());
    EXPECT_FALSE(servesClosure(CrossingValues{}, limits).has_value());
}

/// A shift and a turn about the body's long axis move everything along: "up" stays up, all values stay.
RC_GTEST_PROP(CrossingAt, MovesWithTheHeart, ()) {
    auto marks = uprightMarks();
    for (auto* list : {&marks.annulus, &marks.fossa, &marks.coaptation})
        for (auto& point : *list)
            point.mm += Eigen::Vector3d(*reals(-1, 1), *reals(-1, 1), *reals(-1, 1));
    const AppendageTarget target = uprightTarget(*reals(-50, 50), *reals(-50, 50));
    Eigen::Isometry3d motion = Eigen::Isometry3d::Identity();
    motion.rotate(Eigen::AngleAxisd(*reals(-0.5, 0.5), Eigen::Vector3d::UnitZ()));
    motion.pretranslate(Eigen::Vector3d(*reals(-90, 90), *reals(-90, 90), *reals(-90, 90)));
    const auto here = crossingScene(marks, target, {{0, 0, 0}});
    const auto there = crossingScene(moved(marks, motion), AppendageTarget{{motion * target.ostiumCentre.mm}, {motion.linear() * target.axis.mm}},
                                     {{0, 0, 0}});
    RC_ASSERT(here && there);
    const Eigen::Vector2d place(*reals(-9, 9), *reals(-9, 9));
    const auto a = crossingAt(*here, place, kSteering), b = crossingAt(*there, place, kSteering);
    RC_ASSERT((motion * a.point.mm - b.point.mm).norm() < 1e-6);
    RC_ASSERT(std::abs(*a.overAnnulusMm - *b.overAnnulusMm) < 1e-6);
    RC_ASSERT(std::abs(*a.overCoaptationMm - *b.overCoaptationMm) < 1e-6);
    RC_ASSERT(std::abs(*a.distanceMm - *b.distanceMm) < 1e-6);
    RC_ASSERT(std::abs(*a.angleDeg - *b.angleDeg) < 1e-6);
}

/// Any rigid motion that keeps heads up leaves heights and angles at one point of the patient as they are, however the frame turns.
RC_GTEST_PROP(CrossingAt, AnyMotionKeepsThePointsValues, ()) {
    const auto marks = uprightMarks();
    const AppendageTarget target = uprightTarget(25.0, -15.0);
    Eigen::Isometry3d motion = Eigen::Isometry3d::Identity();
    motion.rotate(Eigen::AngleAxisd(*reals(-0.6, 0.6), Eigen::Vector3d(*reals(0.2, 1), *reals(-1, 1), *reals(-1, 1)).normalized()));
    motion.pretranslate(Eigen::Vector3d(10, 20, -30));
    const auto here = crossingScene(marks, target, {{0, 0, 0}});
    const auto there = crossingScene(moved(marks, motion), AppendageTarget{{motion * target.ostiumCentre.mm}, {motion.linear() * target.axis.mm}},
                                     {{0, 0, 0}});
    RC_ASSERT(here && there);
    const auto a = crossingAt(*here, {3, -4}, kSteering);
    const auto b = crossingAt(*there, there->face.frame.sectionFromPatient({motion * a.point.mm}), kSteering);
    RC_ASSERT(std::abs(*a.overAnnulusMm - *b.overAnnulusMm) < 1e-6);
    RC_ASSERT(std::abs(*a.overCoaptationMm - *b.overCoaptationMm) < 1e-6);
    RC_ASSERT(std::abs(*a.angleDeg - *b.angleDeg) < 1e-6);
    RC_ASSERT(std::abs(*a.steeredAngleDeg - *b.steeredAngleDeg) < 1e-4);
}
