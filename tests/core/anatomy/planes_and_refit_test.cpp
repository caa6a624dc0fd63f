// Sections on any plane, tilted landing planes and refitted contours, on invented hearts with exact answers.
#include "core/anatomy/appendage.h"
#include "core/anatomy/refit.h"
#include "core/geometry/planar_contour.h"
#include "core/geometry/plane_moves.h"
#include "core/geometry/polyline.h"

#include "sample-data/phantom.h"

#include <gtest/gtest.h>
#include <map>
#include <numbers>

using namespace gauge::core;
using namespace gauge::sample_case;

namespace {

struct Case {
    Phantom phantom;
    std::shared_ptr<const Volume> volume;
    AppendageMeasurement measurement;
};

const Case& caseOf(std::uint64_t seed) {
    static std::map<std::uint64_t, Case> made;
    if (const auto found = made.find(seed); found != made.end()) return found->second;
    Case one;
    one.phantom = makePhantom(seed % 2 ? Shape::Oval : Shape::RoundStraight, seed);
    one.volume = one.phantom.rasterise();
    AppendageOptions options;
    options.profileStepMm = 5.0;
    const AppendageMarks marks{one.phantom.marks.atrium, one.phantom.marks.tip, one.phantom.marks.circumflex,
                               one.phantom.marks.ridge,  {}, {}};
    one.measurement = measureAppendage(one.volume, marks, options).value();
    return made.emplace(seed, std::move(one)).first->second;
}

constexpr std::uint64_t kSeeds[] = {1, 2, 3, 4};
// About twice the 95th percentiles of sections on such hearts under "Accuracy" in DEVELOPERS.md: 0.044 mm and 0.42 %.
constexpr double kWidthMm = 0.1, kAreaShare = 0.01;

void expectTrue(const Case& one, const Plane& plane, double widthMm, double areaMm2) {
    const auto truth = one.phantom.section(plane, plane.point);
    ASSERT_TRUE(truth) << one.phantom.description();
    EXPECT_NEAR(widthMm, truth->metrics.perimeterDerivedDiameterMm, kWidthMm) << one.phantom.description();
    EXPECT_NEAR(areaMm2 / truth->metrics.areaMm2, 1.0, kAreaShare) << one.phantom.description();
}

/// Planes about the landing zone: as it is, tilted about either axis, shifted.
std::vector<Plane> planesAbout(const Section& section) {
    const Plane plane = section.frame.plane();
    return {plane, tilted(plane, section.frame.u, 12.0), tilted(plane, section.frame.v, -9.0), shifted(plane, 1.5)};
}

} // namespace

TEST(SectionOnPlane, EqualsTheTruthOnAnyPlane) {
    for (const auto seed : kSeeds) {
        const Case& one = caseOf(seed);
        for (const Plane& plane : planesAbout(one.measurement.landingZones.front().section)) {
            const auto section = sectionOnPlane(*one.volume, one.measurement, plane);
            ASSERT_TRUE(section) << section.error().message;
            EXPECT_LT(angleBetweenDeg(section->frame.normal, plane.normal), 1e-6);
            expectTrue(one, plane, section->metrics.perimeterDerivedDiameterMm.value, section->metrics.areaMm2.value);
        }
    }
}

TEST(SectionOnPlane, SaysThatAPlaneThroughNoBloodHasNoSection) {
    const Case& one = caseOf(1);
    Plane outside = one.measurement.landingZones.front().section.frame.plane();
    outside.point = one.phantom.wrong.fat;
    const auto section = sectionOnPlane(*one.volume, one.measurement, outside);
    ASSERT_FALSE(section);
    EXPECT_EQ(section.error().code, ErrorCode::SectionNotFound) << section.error().message;
}

TEST(LandingZoneAt, EqualsTheTruthOnATiltedPlane) {
    for (const auto seed : kSeeds) {
        const Case& one = caseOf(seed);
        const Section& straight = one.measurement.landingZones.front().section;
        const Plane plane = tilted(straight.frame.plane(), straight.frame.v, 15.0);
        const auto zone = landingZoneAt(*one.volume, one.measurement, 10.0, plane.normal);
        ASSERT_TRUE(zone) << zone.error().message;
        EXPECT_NEAR(zone->tiltDeg.value(), 15.0, 1e-6);
        EXPECT_LT(distanceMm(zone->section.frame.origin, straight.frame.origin), 1e-9) << "through the same place of the axis";
        expectTrue(one, plane, zone->section.metrics.perimeterDerivedDiameterMm.value, zone->section.metrics.areaMm2.value);
        EXPECT_GT(zone->section.metrics.areaMm2.components.plane, 0.0) << "with all uncertainties";
    }
}

TEST(LandingZoneAt, SquareToTheAxisIsTheSameWithAndWithoutANormal) {
    const Case& one = caseOf(1);
    const auto with = landingZoneAt(*one.volume, one.measurement, 10.0, axisDirectionAt(one.measurement, 10.0));
    const auto without = landingZoneAt(*one.volume, one.measurement, 10.0);
    ASSERT_TRUE(with && without);
    EXPECT_NEAR(with->section.metrics.areaMm2.value, without->section.metrics.areaMm2.value, 1e-6);
    EXPECT_NEAR(with->tiltDeg.value(), 0.0, 1e-5);
    EXPECT_FALSE(without->tiltDeg);
}

TEST(LandingZoneAt, IsKnownRoughlyFromTheProfileBeforeItIsMeasured) {
    const Case& one = caseOf(1);
    constexpr double kStepMm = 0.5; // of the profile: the neighbour lies within half of it
    for (const double depthMm : {4.2, 10.0, 13.7}) {
        const auto rough = unmeasuredLanding(one.measurement, depthMm);
        const auto exact = landingZoneAt(*one.volume, one.measurement, depthMm);
        ASSERT_TRUE(rough && exact) << depthMm;
        EXPECT_EQ(rough->depthMm, depthMm);
        EXPECT_LT(distanceMm(rough->section.frame.origin, exact->section.frame.origin), 1e-9);
        EXPECT_LT(angleBetweenDeg(rough->section.frame.normal, exact->section.frame.normal), 1e-6);
        EXPECT_LT(distanceMm(rough->section.center, exact->section.center), kStepMm);
        EXPECT_FALSE(rough->tiltDeg);
    }
    const auto straight = landingZoneAt(*one.volume, one.measurement, 10.0)->section.frame;
    const auto tiltedRough = unmeasuredLanding(one.measurement, 10.0, tilted(straight.plane(), straight.u, 12.0).normal);
    EXPECT_NEAR(tiltedRough->tiltDeg.value(), 12.0, 0.1);
    AppendageMeasurement bare = one.measurement;
    bare.profile.clear();
    EXPECT_FALSE(unmeasuredLanding(bare, 10.0));
}

TEST(LandingZoneAt, IsCheckedWithoutMeasuring) {
    const Case& one = caseOf(1);
    const auto straight = landingZoneAt(*one.volume, one.measurement, 10.0)->section.frame;
    const auto steep = tilted(straight.plane(), straight.u, 70.0).normal;
    EXPECT_TRUE(checkLandingPlane(one.measurement, 10.0, std::nullopt));
    EXPECT_EQ(checkLandingPlane(one.measurement, 10.0, steep).error().message,
              landingZoneAt(*one.volume, one.measurement, 10.0, steep).error().message);
    EXPECT_EQ(checkLandingPlane(one.measurement, 500.0, std::nullopt).error().code, ErrorCode::LandingOutsideAppendage);
}

TEST(LandingZoneAt, RefusesAPlaneThatIsNoCrossSectionAnyMore) {
    const Case& one = caseOf(1);
    const Section& straight = one.measurement.landingZones.front().section;
    const auto zone = landingZoneAt(*one.volume, one.measurement, 10.0, tilted(straight.frame.plane(), straight.frame.u, 70.0).normal);
    ASSERT_FALSE(zone);
    EXPECT_EQ(zone.error().message, "Cannot measure the landing zone 10.0 mm beyond the ostium: its plane is tilted 70 degrees from "
                                    "square to the axis; at most 60 can be used. Tilt it back, or make it square again.");
}

TEST(RefitContour, BringsADisplacedLineOntoTheTrueBorder) {
    for (const auto seed : kSeeds) {
        const Case& one = caseOf(seed);
        const SectionFrame frame = one.measurement.landingZones.front().section.frame;
        const auto truth = one.phantom.section(frame.plane(), frame.origin);
        ASSERT_TRUE(truth);
        std::vector<Eigen::Vector2d> exact;
        for (const auto& p : truth->contour)
            exact.push_back(frame.sectionFromPatient(truth->frame.patientFromSection(p)));
        const Eigen::Vector2d center = areaCentroid(exact);
        // A hand's line: a tenth too wide, too narrow, and moved by most of a millimetre.
        for (const auto& [scale, off] : {std::pair{1.1, Eigen::Vector2d(0, 0)}, {0.92, Eigen::Vector2d(0, 0)}, {1.0, Eigen::Vector2d(0.7, -0.4)}}) {
            std::vector<Eigen::Vector2d> drawn;
            for (const auto& p : exact)
                drawn.push_back(center + scale * (p - center) + off);
            const auto fitted = refitContour(*one.volume, one.measurement, frame, drawn);
            ASSERT_TRUE(fitted) << fitted.error().message;
            EXPECT_NEAR(perimeterMm(*fitted) / std::numbers::pi, truth->metrics.perimeterDerivedDiameterMm, kWidthMm)
                << one.phantom.description() << ", scale " << scale;
            EXPECT_NEAR(signedAreaMm2(*fitted) / truth->metrics.areaMm2, 1.0, kAreaShare) << one.phantom.description();
            EXPECT_LT((areaCentroid(*fitted) - center).norm(), 0.3) << one.phantom.description(); // as the noise moves a mean of points
        }
    }
}

TEST(RefitContour, DoesNotDependOnTheSenseInWhichTheLineIsDrawn) {
    const Case& one = caseOf(1);
    const Section& section = one.measurement.landingZones.front().section;
    std::vector<Eigen::Vector2d> turned(section.contour.rbegin(), section.contour.rend());
    const auto a = refitContour(*one.volume, one.measurement, section.frame, section.contour);
    const auto b = refitContour(*one.volume, one.measurement, section.frame, turned);
    ASSERT_TRUE(a && b);
    EXPECT_NEAR(signedAreaMm2(*a) / signedAreaMm2(*b), 1.0, 2e-3); // other points of the same line are probed
}

TEST(RefitContour, SaysWhenThereIsNoBorderNearIt) {
    const Case& one = caseOf(1);
    SectionFrame frame = one.measurement.landingZones.front().section.frame;
    frame.origin = one.phantom.wrong.outside;
    std::vector<Eigen::Vector2d> circle;
    for (int i = 0; i < 24; ++i)
        circle.emplace_back(5.0 * std::cos(i * std::numbers::pi / 12), 5.0 * std::sin(i * std::numbers::pi / 12));
    const auto fitted = refitContour(*one.volume, one.measurement, frame, circle);
    ASSERT_FALSE(fitted);
    EXPECT_EQ(fitted.error().message, "Cannot refit this contour: there is no border of blood near it.");
    EXPECT_EQ(refitContour(*one.volume, one.measurement, frame, std::span(circle).first(2)).error().code, ErrorCode::TooFewPoints);
}
