// The stated uncertainty of a section covers its error as often as it should (GUM, JCGM 100:2008: about 95 % at k = 2).
// Straight oval tubes of random size, pose, voxels, blur and noise; the truth is an ellipse.
#include "core/geometry/planar_contour.h"
#include "core/measure/section_measure.h"
#include "core/parallel/parallel_for.h"
#include "tests/phantoms/long_run.h"
#include "tests/phantoms/tube_phantom.h"

#include <Eigen/Geometry>
#include <atomic>
#include <cmath>
#include <gtest/gtest.h>
#include <numbers>

namespace gauge::tests {
namespace {

using core::Metric;

const std::size_t kDraws = longRun() ? 600 : 240;

core::SectionGuide guideFor(const TubeShape& s) {
    core::SectionGuide guide;
    guide.bloodHu = s.bloodHu;
    guide.wallHu = 85.0; // not told the truth: a scan does not tell it either
    guide.noiseLineDensity = s.noiseHu * s.noiseHu * (4.0 / 9.0) * s.spacingMm.mean();
    const double interpolation = s.spacingMm.squaredNorm() / 3.0 / 6.0;
    guide.edgeSigmaMm = std::sqrt(std::pow(s.blurFwhmMm / 2.3548, 2) + interpolation);
    return guide;
}

TubeShape randomShape(std::mt19937_64& random) {
    std::uniform_real_distribution<double> unit;
    TubeShape s;
    s.semiLongMm = 8.0 + 4.0 * unit(random);
    s.semiShortMm = s.semiLongMm * (0.6 + 0.4 * unit(random));
    s.wallMm = 1.5 + unit(random);
    s.bloodHu = 300.0 + 150.0 * unit(random);
    s.wallHu = 60.0 + 50.0 * unit(random);
    s.outsideHu = unit(random) < 0.5 ? -90.0 : -850.0;
    s.blurFwhmMm = 0.5 + 0.4 * unit(random);
    s.noiseHu = 15.0 + 25.0 * unit(random);
    const double inPlane = 0.35 + 0.25 * unit(random);
    s.spacingMm = {inPlane, inPlane, 0.35 + 0.25 * unit(random)};
    s.sizeVoxels = static_cast<int>(2.0 * (s.semiLongMm + 4.0) / s.spacingMm.minCoeff());
    return s;
}

core::MetricValues ellipseMetrics(const TubeShape& s) {
    std::vector<Eigen::Vector2d> ellipse;
    for (int i = 0; i < 2000; ++i) {
        const double a = 2.0 * std::numbers::pi * i / 2000;
        ellipse.push_back({s.semiLongMm * std::cos(a), s.semiShortMm * std::sin(a)});
    }
    return core::metricValues(ellipse);
}

TEST(EdgeComponent, CoversTheContourErrorAtTwoStandardUncertainties) {
    std::atomic<int> measured{0};
    std::array<std::atomic<int>, core::kMetricCount> covered{};
    core::parallelFor(kDraws, 1, [&](std::size_t begin, std::size_t) {
        std::mt19937_64 random(1000 + begin);
        const TubeShape shape = randomShape(random);
        const Tube tube = makeTube(shape, random);
        const auto section = core::measureSection(*tube.volume, tube.section, guideFor(shape), {std::nullopt, true});
        if (!section) return;
        ++measured;
        const auto truth = ellipseMetrics(shape);
        for (std::size_t m = 0; m < core::kMetricCount; ++m) {
            const auto& e = core::estimateOf(section->metrics, static_cast<Metric>(m));
            covered[m] += std::abs(e.value - truth[m]) <= 2.0 * e.components.edge;
        }
    });
    ASSERT_EQ(measured, static_cast<int>(kDraws));
    const char* const names[] = {"area", "perimeter", "longest", "shortest", "least width",
                                 "mean", "D_P",       "D_A",     "eccentricity"};
    for (std::size_t m = 0; m < core::kMetricCount; ++m)
        std::printf("edge component covers %-12s %.1f %%\n", names[m], 100.0 * covered[m] / static_cast<double>(kDraws));
    for (const Metric metric : {Metric::Area, Metric::Perimeter, Metric::PerimeterDerivedDiameter,
                                Metric::AreaDerivedDiameter, Metric::LongestDiameter, Metric::ShortestDiameter}) {
        const double share = static_cast<double>(covered[static_cast<std::size_t>(metric)]) / static_cast<double>(kDraws);
        // 93 to 97 % is asked for; n draws know a share of 95 % to 0.218 / sqrt(n) (binomial), which is allowed.
        const double drawing = std::sqrt(0.95 * 0.05 / static_cast<double>(kDraws));
        EXPECT_GE(share, 0.93 - drawing) << names[static_cast<std::size_t>(metric)];
        EXPECT_LE(share, 0.97 + drawing) << names[static_cast<std::size_t>(metric)];
    }
}

TEST(PlaneComponent, CoversPlanesDrawnFromTheStatedSpread) {
    const int kTubes = longRun() ? 4 : 2;
    constexpr int kPlanes = 120;
    int covered = 0, all = 0;
    for (int t = 0; t < kTubes; ++t) {
        std::mt19937_64 random(77 + static_cast<unsigned>(t));
        TubeShape shape = randomShape(random);
        shape.noiseHu = 1.0; // planes alone
        const Tube tube = makeTube(shape, random);
        // A plane 20 degrees off the tube's cross-section: there a tilt matters to first order.
        core::SectionFrame oblique = tube.section;
        const Eigen::AngleAxisd lean(20.0 * std::numbers::pi / 180.0, oblique.u.mm);
        oblique.v = {lean * oblique.v.mm};
        oblique.normal = {lean * oblique.normal.mm};
        const auto guide = guideFor(shape);
        const auto spread = core::PlacementSpread::confirmed();
        const auto placed = core::measureSection(*tube.volume, oblique, guide, {spread, true});
        ASSERT_TRUE(placed);
        const auto& stated = placed->metrics.longestDiameterMm;
        const auto& statedArea = placed->metrics.areaMm2;
        std::normal_distribution<double> normal;
        for (int p = 0; p < kPlanes; ++p) {
            const double toRad = std::numbers::pi / 180.0 * spread.tiltDeg;
            const Eigen::AngleAxisd aboutU(normal(random) * toRad, oblique.u.mm);
            const Eigen::AngleAxisd aboutV(normal(random) * toRad, oblique.v.mm);
            core::SectionFrame moved = oblique;
            moved.origin = oblique.origin + (normal(random) * spread.shiftMm) * oblique.normal;
            moved.u = {aboutU * (aboutV * oblique.u.mm)};
            moved.v = {aboutU * (aboutV * oblique.v.mm)};
            moved.normal = {aboutU * (aboutV * oblique.normal.mm)};
            const auto section = core::measureSection(*tube.volume, moved, guide, {std::nullopt, false});
            ASSERT_TRUE(section);
            const auto within = [&](const core::Estimate& drawn, const core::Estimate& s) {
                covered += std::abs(drawn.value - s.value) <=
                           2.0 * std::hypot(s.components.plane, s.components.edge);
                ++all;
            };
            within(section->metrics.longestDiameterMm, stated);
            within(section->metrics.areaMm2, statedArea);
        }
    }
    std::printf("plane component covers %.1f %% of %d\n", 100.0 * covered / all, all);
    EXPECT_GE(covered, 0.92 * all);
}

} // namespace
} // namespace gauge::tests
