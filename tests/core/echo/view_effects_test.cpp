#include "core/echo/view_effects.h"

#include "core/echo/drawn_contour.h"
#include "core/echo/echo_study.h"
#include "core/measure/section_measure.h"
#include "tests/core/echo/simulated_widths.h"

#include <gmock/gmock.h>

using namespace gauge::core;
using namespace gauge::test;
using testing::HasSubstr;

namespace {

const std::vector<double> kFour{0, 45, 90, 135};

} // namespace

TEST(LargestOfViews, MissesTheLongestAsSimulated) {
    // The design's figure for 24 x 18 mm and 20 degrees of tilt: 0.4 mm on average, up to 1.2 [computed]; the greatest
    // over every direction, which a simulation of a few draws does not reach, is 1.38.
    const Shortfall s = expectedShortfall(24, 18, kFour, 20);
    std::printf("largest of four views, 24 x 18 mm, 20 degrees: %.2f mm on average, up to %.2f\n", s.meanMm, s.greatestMm);
    EXPECT_NEAR(s.meanMm, 0.43, 0.03);
    EXPECT_NEAR(s.greatestMm, 1.38, 0.03);
    std::mt19937_64 random(1);
    std::uniform_real_distribution<double> angle(0, 180);
    double mean = 0.0, greatest = 0.0;
    const int n = 50000;
    for (int i = 0; i < n; ++i) { // brute force, no tilt
        double largest = 0.0;
        const double direction = angle(random);
        for (const double a : kFour)
            largest = std::max(largest, chord(24, 18, direction, a));
        mean += (24 - largest) / n;
        greatest = std::max(greatest, 24 - largest);
    }
    const Shortfall flat = expectedShortfall(24, 18, kFour);
    EXPECT_NEAR(flat.meanMm, mean, 0.02);
    EXPECT_NEAR(flat.greatestMm, greatest, 0.03);
    EXPECT_NEAR(expectedShortfall(20, 20, kFour, 20).greatestMm, 0.0, 1e-12);
}

TEST(LargestOfViews, IsAQuantityOfItsOwn) {
    const auto l = largestOfViews(std::vector<WidthReading>{{0, 21, 0.8}, {45, 23.5, 0.8}, {90, 25.1, 0.8}, {135, 22.4, 0.8}});
    ASSERT_TRUE(l);
    EXPECT_EQ(l->valueMm.value, 25.1);
    EXPECT_EQ(l->angleDeg, 90);
    EXPECT_EQ(l->valueMm.method, "largest of 4 echo views");
}

TEST(OffCentre, ChordsShortenByPythagorasInACircle) {
    EXPECT_NEAR(chordThroughMm(20, 20, {0, 6}, 0), 16.0, 1e-12);
    EXPECT_NEAR(chordThroughMm(20, 20, {0, 6}, 90 * kRad), 20.0, 1e-12);
    EXPECT_NEAR(chordThroughMm(24, 18, {0, 0}, 30 * kRad), chord(24, 18, 0, 30), 1e-12);
    EXPECT_EQ(chordThroughMm(24, 18, {13, 0}, 0), 0.0);
}

TEST(OffCentre, MakesAnEllipseSmaller) {
    const auto none = offCentreEffect(24, 18, 20, {0, 0}, kFour);
    ASSERT_TRUE(none);
    EXPECT_NEAR(none->longestMm, 0.0, 1e-9);
    const auto beside = offCentreEffect(20, 20, 0, {3, 0}, kFour);
    ASSERT_TRUE(beside);
    EXPECT_LT(beside->areaDerivedMm, -0.2); // widths 20, 19.5, 19.1, 19.5 mm
    EXPECT_GT(beside->areaDerivedMm, -0.6);
    EXPECT_THAT(offCentreEffect(20, 20, 0, {11, 0}, kFour).error().message, HasSubstr("passes outside the section"));
}

TEST(DrawnContour, MeasuresADozenClicks) {
    std::vector<Eigen::Vector2d> clicks;
    for (int i = 0; i < 12; ++i)
        clicks.push_back({12 * std::cos(-i * 30 * kRad) + 5, 12 * std::sin(-i * 30 * kRad)}); // clockwise
    const auto s = measureDrawnContour({}, clicks);
    ASSERT_TRUE(s);
    EXPECT_NEAR(s->metrics.perimeterDerivedDiameterMm.value, 24, 0.03); // 0.1 %
    EXPECT_NEAR(s->metrics.areaDerivedDiameterMm.value, 24, 0.05);
    EXPECT_NEAR(s->center.mm.x(), 5, 1e-3);
    EXPECT_GT(signedAreaMm2(s->contour), 0.0);
    const auto& area = s->metrics.areaDerivedDiameterMm;
    EXPECT_EQ(area.components.edge, 0.0);
    EXPECT_EQ(area.method, "contour drawn by hand");
}

TEST(DrawnContour, ObserverPartFollowsFromTheStraying) {
    std::vector<Eigen::Vector2d> clicks;
    for (int i = 0; i < 40; ++i)
        clicks.push_back({10 * std::cos(i * 9 * kRad), 10 * std::sin(i * 9 * kRad)});
    // A common stray alone: every diameter changes by twice it.
    DrawnContourOptions common{.observerMm = 0, .correlationMm = 8, .commonMm = 0.5, .scaleUncertainty = 0};
    EXPECT_NEAR(measureDrawnContour({}, clicks, common)->metrics.areaDerivedDiameterMm.components.observer, 1.0, 0.15);
    // Waves alone do not change the enclosed area to first order (their mean round the circle is 0).
    DrawnContourOptions waves{.observerMm = 0.7, .correlationMm = 8, .commonMm = 0, .scaleUncertainty = 0};
    const auto s = measureDrawnContour({}, clicks, waves);
    EXPECT_LT(s->metrics.areaDerivedDiameterMm.components.observer, 0.1);
    EXPECT_GT(s->metrics.longestDiameterMm.components.observer, 0.3);
    // 200 draws: the spread itself is known to 5 %.
    DrawnContourOptions twice = waves;
    twice.observerMm = 1.4;
    EXPECT_GT(measureDrawnContour({}, clicks, twice)->metrics.longestDiameterMm.components.observer,
              1.5 * s->metrics.longestDiameterMm.components.observer);
}

TEST(DrawnContour, RefusesWhatIsNoContour) {
    EXPECT_THAT(measureDrawnContour({}, std::vector<Eigen::Vector2d>(3)).error().message, HasSubstr("it has 3 point(s)"));
    EXPECT_EQ(measureDrawnContour({}, std::vector<Eigen::Vector2d>(8, {1, 1})).error().code, ErrorCode::Degenerate);
    EXPECT_EQ(measureDrawnContour({}, std::vector<Eigen::Vector2d>(8, {1, NAN})).error().code, ErrorCode::NonFinite);
    EXPECT_EQ(measureDrawnContour({}, std::vector<Eigen::Vector2d>(8, {1, 1}), {.observerMm = -1}).error().code,
              ErrorCode::InvalidArgument);
}

TEST(BrightBlood, LetsTheAutomaticBorderMeasureEcho) {
    // Dark blood (20) in a tube of 20 mm diameter, bright tissue (180), 0.5 mm voxels, edge over 1 mm.
    std::vector<std::int16_t> voxels;
    for (int k = 0; k < 24; ++k)
        for (int j = 0; j < 90; ++j)
            for (int i = 0; i < 90; ++i)
                voxels.push_back(static_cast<std::int16_t>(
                    std::lround(180 - 160 * std::clamp(10.5 - 0.5 * std::hypot(i - 44.5, j - 44.5), 0.0, 1.0))));
    Eigen::Affine3d affine = Eigen::Affine3d::Identity();
    affine.linear() *= 0.5;
    const auto echo = Volume::make({90, 90, 24}, voxels, affine, VoxelQuantity::EchoIntensity, "1.2");
    ASSERT_TRUE(echo);
    const auto bright = brightBlood(**echo);
    ASSERT_TRUE(bright);
    EXPECT_EQ((*bright)->quantity(), VoxelQuantity::EchoIntensity);
    EXPECT_EQ((*bright)->frameOfReferenceUid(), "1.2");
    EXPECT_EQ((*bright)->at(44, 44, 3), 180);
    SectionGuide guide;
    guide.bloodHu = 180;
    guide.wallHu = 20;
    guide.noiseLineDensity = 1.0;
    SectionOptions options;
    options.placement.reset();
    const SectionFrame frame = frameOf(Plane{{Eigen::Vector3d(22.25, 22.25, 6)}, {Eigen::Vector3d::UnitZ()}});
    const auto section = measureSection(**bright, frame, guide, options);
    ASSERT_TRUE(section) << section.error().message;
    EXPECT_NEAR(section->metrics.areaDerivedDiameterMm.value, 20.0, 0.1);
    const auto ct = Volume::make({90, 90, 24}, voxels, affine, VoxelQuantity::HounsfieldUnits, "1.2");
    EXPECT_THAT(brightBlood(**ct).error().message, HasSubstr("it is no echo"));
}

TEST(EchoStudy, MeasuresOstiumLandingZoneAndDepth) {
    EchoReadings r;
    for (const double a : kFour)
        r.views.push_back({a, BeatPhase::EndSystole, chord(28, 20, 20, a), chord(24, 17, 20, a), a == 90 ? 18.0 : 27.0, "1.2.3#4"});
    const auto m = measureEcho(r);
    ASSERT_TRUE(m);
    EXPECT_NEAR((*m->ostium)->metrics.longestDiameterMm.value, 28, 1e-9);
    EXPECT_NEAR((*m->landingZone)->metrics.shortestDiameterMm.value, 17, 1e-9);
    EXPECT_EQ(m->depth->greatestMm.value, 27.0);
    EXPECT_EQ(m->depth->leastMm, 18.0);
    EXPECT_TRUE(hasNotice(m->notices, "depth-short-in-a-view"));
    EXPECT_GT(m->largestOstium->valueMm.value, m->largestLandingZone->valueMm.value);
    EXPECT_FALSE(hasNotice((*m->ostium)->notices, "phase-unknown"));
}

TEST(EchoStudy, KeepsWhatStandsWhenAPartCannotBeMeasured) {
    EchoReadings r;
    r.views = {{0, BeatPhase::EndSystole, 25.0, {}, 22.0, ""}, {90, BeatPhase::EndSystole, 24.0, {}, {}, ""}};
    const auto m = measureEcho(r);
    ASSERT_TRUE(m);
    ASSERT_TRUE(m->ostium);
    EXPECT_EQ(m->ostium->error().code, ErrorCode::TooFewPoints);
    EXPECT_FALSE(m->landingZone);
    EXPECT_EQ(m->largestOstium->valueMm.value, 25.0);
    EXPECT_TRUE(hasNotice(m->notices, "depth-from-one-view"));
    EXPECT_THAT(measureEcho({}).error().message, HasSubstr("no width and no depth"));
    r.views[0].depthMm = -1;
    EXPECT_THAT(measureEcho(r).error().message, HasSubstr("depth above 0"));
}
