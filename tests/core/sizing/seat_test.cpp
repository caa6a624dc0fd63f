#include "core/sizing/seat.h"

#include "core/geometry/planar_contour.h"
#include "core/geometry/polyline.h"
#include "core/sizing/seat_inputs.h"
#include "core/sizing/seat_json.h"
#include "core/sizing/seat_numbers.h"
#include "core/sizing/seat_words.h"
#include "tests/core/access/analytic_walls.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <gtest/gtest.h>
#include <numbers>

using namespace gauge::core;
using namespace gauge::test;

namespace {

// A trilinear field on 0.5 mm, and 0.01 mm of the search along the line.
constexpr double kSeatMm = 0.05;
constexpr double kLandingMm = 10.0;

/// An invented size of 20 mm by the perimeter, compressed by 5 to 30 %: narrowest width 14 mm. From its seat 10 mm before the landing zone, or
/// from there, to 18 mm from the ostium.
DeviceChart chartOf(DeviceKind kind, double nominal = 20.0) {
    DeviceChart chart;
    chart.kind = kind;
    chart.depthFrom = DepthFrom::Ostium;
    ChartSize size;
    size.name = "20 (invented)";
    size.nominalMm = nominal;
    size.compressionPercent = {5.0, 30.0};
    size.leastDepthMm = 18.0;
    size.landingOffsetMm = 10.0;
    if (kind == DeviceKind::LobeAndDisc) {
        size.lobeDiameterMm = nominal;
        size.discDiameterMm = nominal + 6.0;
    }
    chart.sizes = {size};
    return chart;
}

struct Laid {
    LaidLumen lumen;
    SeatQuestion question;

    Seat seat() const { return answer().sizes.front(); }
    SeatAnswer answer() const { return seatSizes(lumen.wall, question).value(); }
};

Laid laidQuestion(LaidLumen lumen, DeviceKind kind) {
    Laid laid{std::move(lumen), {}};
    laid.question.chart = chartOf(kind);
    laid.question.landingNormal = laid.lumen.towards(Eigen::Vector3d::UnitZ());
    laid.question.landingCentre = laid.lumen.at(0, 0, 0);
    laid.question.landingDepthMm = kLandingMm;
    laid.question.direction = laid.question.axisAtLanding = laid.lumen.towards(Eigen::Vector3d::UnitZ());
    return laid;
}

Laid anywhere(const Lumen& lumen, std::mt19937& random, DeviceKind kind = DeviceKind::LobeAndDisc) {
    return laidQuestion(laidAnywhere(lumen, random), kind);
}

/// Local axes along the patient's: z of the lumen forward, x of the lumen to the head.
Laid upright(const Lumen& lumen, DeviceKind kind = DeviceKind::LobeAndDisc) {
    Eigen::Isometry3d pose = Eigen::Isometry3d::Identity();
    pose.linear().col(0) = Eigen::Vector3d::UnitZ();
    pose.linear().col(1) = Eigen::Vector3d::UnitX();
    pose.linear().col(2) = Eigen::Vector3d::UnitY();
    return laidQuestion(laid(lumen, pose, Eigen::Matrix3d::Identity()), kind);
}

std::vector<PatientPoint> roundOstium(const LaidLumen& lumen, double radius, double asideX) {
    std::vector<PatientPoint> contour;
    for (int i = 0; i < 360; ++i) {
        const double angle = 2.0 * std::numbers::pi * i / 360;
        contour.push_back(lumen.at(asideX + radius * std::cos(angle), radius * std::sin(angle), -kLandingMm));
    }
    return contour;
}

/// Area that two circles share; d between |r - s| and r + s.
double lens(double r, double s, double d) {
    const double a = std::acos((d * d + r * r - s * s) / (2 * d * r)), b = std::acos((d * d + s * s - r * r) / (2 * d * s));
    return r * r * (a - 0.5 * std::sin(2 * a)) + s * s * (b - 0.5 * std::sin(2 * b));
}

bool has(const std::vector<Notice>& notices, std::string_view code) {
    return std::any_of(notices.begin(), notices.end(), [&](const Notice& n) { return n.code == code; });
}

std::string sentenceOf(const std::vector<Notice>& notices, std::string_view code) {
    const auto found = std::find_if(notices.begin(), notices.end(), [&](const Notice& n) { return n.code == code; });
    return found == notices.end() ? "" : found->text;
}

} // namespace

TEST(SeatSizes, CountTheReachAsTheChartCountsDepth) {
    std::mt19937 random(1);
    Laid laid = anywhere(cylinder(9.0, 15.0), random);
    EXPECT_NEAR(laid.seat().reachMm->value, kLandingMm + 15.0, kSeatMm) << "from the ostium";
    EXPECT_EQ(laid.seat().reaches, true);
    EXPECT_EQ(laid.seat().end, SeatEnd::Ahead);
    laid.question.chart.depthFrom = DepthFrom::LandingZone;
    EXPECT_NEAR(laid.seat().reachMm->value, 15.0, kSeatMm) << "from the landing plane";
    EXPECT_EQ(laid.seat().reaches, false) << "18 mm are asked for";
    EXPECT_NEAR(laid.seat().standsBackMm, 3.0, kSeatMm);
    EXPECT_NEAR(laid.seat().seated->farMm(), 15.0, kSeatMm) << "the body lies where it is stopped";
    EXPECT_NEAR(laid.seat().seated->nearMm(), -3.0, kSeatMm);
    EXPECT_NEAR(laid.seat().seated->disc->tMm, -13.0, kSeatMm) << "and its disc with it";
}

TEST(SeatSizes, AreStoppedByABendAtTheClosedForm) {
    std::mt19937 random(2);
    std::uniform_real_distribution<double> bends(15.0, 40.0);
    for (int seed = 0; seed < 5; ++seed) {
        const double bend = bends(random);
        const Laid laid = anywhere(bentTube(9.0, bend), random);
        // Pushed aside where the outer wall is nearer than 10 - 6 mm: that side then takes all of the compression.
        const double outer = bend + 9.0, inner = bend + 4.0;
        const Seat seat = laid.seat();
        EXPECT_NEAR(seat.reachMm->value, kLandingMm + std::sqrt(outer * outer - inner * inner), kSeatMm) << bend;
        EXPECT_EQ(seat.end, SeatEnd::Aside);
    }
}

TEST(SeatSizes, TellWhenThereIsNoRoomAtAllAndThenNothingOfThemInPlace) {
    std::mt19937 random(3);
    Laid laid = anywhere(ovalTube(7.2, 5.5, 30.0), random); // 12.7 mm by the perimeter
    laid.question.ostium = roundOstium(laid.lumen, 12.0, 1.0);
    laid.question.circumflex = laid.lumen.at(10.5, 3.0, 2.0);
    laid.question.neighbours = {{Structure::CircumflexArtery, {laid.lumen.at(0, 10.5, 4)}, false}};
    const Seat seat = laid.seat();
    EXPECT_FALSE(seat.hasRoom);
    EXPECT_EQ(seat.end, SeatEnd::Narrow);
    EXPECT_EQ(seat.reaches, false);
    EXPECT_TRUE(seat.facts.empty());
    ASSERT_EQ(seat.warnings.size(), 1u);
    EXPECT_EQ(seat.warnings.front().text,
              "Size 20 (invented) finds no room along the sheath: square to it the landing zone leaves 12.7 mm by the chart's own "
              "measure, and its narrowest width is 14.0 mm.");
    EXPECT_FALSE(seat.seated || seat.landingWidthMm || seat.reachMm || seat.beyondCircumflexPercent || seat.disc || seat.gapInferiorMm ||
                 seat.gapSuperiorMm || !seat.clearances.empty());
    const auto json = seatJson(laid.answer(), laid.question)["sizes"][0];
    EXPECT_EQ(json["has_room"], false);
    EXPECT_EQ(json["end"], "narrow");
    for (const char* key : {"landing_width_mm", "reach_mm", "stands_back_mm", "beyond_circumflex_percent", "disc", "gap_superior_mm"})
        EXPECT_TRUE(json[key].is_null()) << key;
}

// What the fit counts as compression within the chart's band at the landing zone finds room there, however oval, by whatever measure.
TEST(SeatSizes, FindRoomWhereverTheFitSaysSoAndTheSheathRunsAlongTheAxis) {
    std::mt19937 random(31);
    std::uniform_real_distribution<double> halves(4.5, 12.0), shares(0.0, 1.0);
    int narrowSides = 0;
    for (int seed = 0; seed < 24; ++seed) {
        const double a = halves(random), b = std::max(3.0, a * (0.45 + 0.55 * shares(random)));
        const double perimeter = 4.0 * a * std::comp_ellint_2(std::sqrt(std::max(0.0, 1.0 - b * b / (a * a)))) / std::numbers::pi;
        const std::array<double, 3> measures{perimeter, 2.0 * std::sqrt(a * b), 2.0 * a};
        const std::size_t by = seed % 3;
        const double least = 30.0 * shares(random) * 0.3, most = least + 5.0 + 25.0 * shares(random);
        const double compression = least + (most - least) * shares(random); // percent, in the band
        Eigen::Isometry3d pose = Eigen::Isometry3d::Identity();
        pose.linear() = randomTurn(random);
        Laid laid = laidQuestion(gauge::test::laid(ovalTube(a, b, 9.0), pose, randomTurn(random), 4.0, 11.0, 16.0), DeviceKind::Plug);
        ChartSize& size = laid.question.chart.sizes.front();
        size.nominalMm = measures[by] / (1.0 - compression / 100.0);
        size.compressionPercent = {least, most};
        laid.question.chart.reading.by3d.quantity = std::array{Quantity::LandingZonePerimeterDerivedDiameter,
                                                               Quantity::LandingZoneAreaDerivedDiameter,
                                                               Quantity::LandingZoneLongestDiameter}[by];
        laid.question.landingNormal = laid.question.direction;
        laid.question.landingWidthMm = measures[by];
        laid.question.landingDepthMm = 2.0;
        const Seat seat = laid.seat();
        EXPECT_TRUE(seat.hasRoom) << "seed " << seed << ": " << 2 * a << " x " << 2 * b << " mm, nominal " << size.nominalMm
                                  << ", narrowest " << seat.narrowestMm << ", end " << static_cast<int>(seat.end);
        if (!seat.hasRoom) continue;
        EXPECT_NEAR(seat.landingWidthMm->value, measures[by], 0.01) << "the fit's own width";
        narrowSides += 2.0 * b < seat.narrowestMm;
    }
    EXPECT_GE(narrowSides, 4) << "among them ovals into which a rigid body would not go";
}

TEST(SeatSizes, BlameTheDirectionWhereThePlaneItselfWouldLeaveRoom) {
    std::mt19937 random(32);
    Laid laid = anywhere(cylinder(6.8, 30.0), random); // 13.6 mm round
    const double tilt = 30.0 * std::numbers::pi / 180.0;
    laid.question.landingNormal = laid.lumen.towards({std::sin(tilt), 0.0, std::cos(tilt)});
    laid.question.landingWidthMm = 14.7; // 13.6 by 15.7 mm
    const Seat seat = laid.seat();
    EXPECT_FALSE(seat.hasRoom);
    EXPECT_NE(sentenceOf(seat.warnings, "seat-no-room").find("The landing plane itself, 30 degrees off that direction, measures 14.7 mm."),
              std::string::npos)
        << sentenceOf(seat.warnings, "seat-no-room");
}

TEST(SeatSizes, AreAsWideAtTheLandingZoneAsTheChartMeasuresItWithinTheirBand) {
    std::mt19937 random(4);
    const double perimeter = 4.0 * 9.0 * std::comp_ellint_2(std::sqrt(1.0 - 64.0 / 81.0)) / std::numbers::pi;
    EXPECT_NEAR(anywhere(ovalTube(9.0, 8.0, 30.0), random).seat().landingWidthMm->value, perimeter, kSeatMm);
    EXPECT_NEAR(anywhere(cylinder(12.0, 30.0), random).seat().landingWidthMm->value, 20.0, 0.01) << "no wider than free";
    Laid area = anywhere(ovalTube(9.0, 8.0, 30.0), random);
    area.question.chart.reading.by3d.quantity = Quantity::LandingZoneAreaDerivedDiameter;
    EXPECT_NEAR(area.seat().landingWidthMm->value, 2.0 * std::sqrt(72.0), kSeatMm);
}

TEST(SeatSizes, TellTheShareBeyondTheCircumflexArteryInClosedForm) {
    std::mt19937 random(5);
    // The body reaches from t = 0 to t = 8.
    for (const auto& [t, share] : {std::pair{2.0, 75.0}, {-4.0, 100.0}, {7.0, 12.5}, {9.0, 0.0}}) {
        Laid laid = anywhere(cylinder(9.0, 25.0), random);
        laid.question.circumflex = laid.lumen.at(10.5, 3.0, t);
        EXPECT_NEAR(laid.seat().beyondCircumflexPercent->value, share, 0.01) << t;
        EXPECT_EQ(has(laid.seat().warnings, "seat-share-low"), share < 66.0);
    }
    // Stopped 3 mm early, as much less lies beyond.
    Laid stopped = anywhere(cylinder(9.0, 5.0), random);
    stopped.question.circumflex = stopped.lumen.at(10.5, 0.0, 1.0);
    EXPECT_NEAR(stopped.seat().beyondCircumflexPercent->value, 100.0 * 4.0 / 8.0, 1.0);
}

TEST(SeatSizes, TellHowMuchOfTheOstiumTheDiscCovers) {
    std::mt19937 random(6);
    std::uniform_real_distribution<double> asides(0.0, 6.0);
    for (int seed = 0; seed < 6; ++seed) {
        const double aside = asides(random);
        Laid laid = anywhere(cylinder(9.0, 25.0), random);
        laid.question.ostium = roundOstium(laid.lumen, 12.0, aside);
        const Seat seat = laid.seat();
        ASSERT_TRUE(seat.disc);
        EXPECT_NEAR(seat.disc->overlapMm.value, 13.0 - 12.0 - aside, 0.01) << aside;
        const double covered = aside <= 1.0 ? 1.0 : lens(13.0, 12.0, aside) / (144.0 * std::numbers::pi);
        EXPECT_NEAR(seat.disc->sharePercent.value, 100.0 * covered, 0.02) << aside;
        EXPECT_EQ(has(seat.warnings, "seat-disc-short"), aside > 1.0);
        EXPECT_GT(seat.disc->leastAt.dot(laid.lumen.towards(Eigen::Vector3d::UnitX())), 0.99);
    }
    EXPECT_FALSE(anywhere(cylinder(9.0, 25.0), random).seat().disc) << "no ostium, no cover";
}

TEST(SeatSizes, SeeAnObliqueOstiumAlongTheSheath) {
    // An ostium whose plane is tilted by 40 degrees, and whose shadow along the sheath is a circle of 12 mm: the disc covers the same.
    std::mt19937 random(7);
    Laid laid = anywhere(cylinder(9.0, 25.0), random);
    laid.question.ostium = roundOstium(laid.lumen, 12.0, 3.0);
    const double flat = laid.seat().disc->sharePercent.value;
    for (PatientPoint& p : laid.question.ostium)
        p = p + std::tan(40.0 * std::numbers::pi / 180.0) * (p - laid.question.landingCentre).dot(laid.lumen.towards({1, 0, 0})) *
                    laid.question.direction;
    EXPECT_NEAR(laid.seat().disc->sharePercent.value, flat, 1e-6);
}

TEST(SeatSizes, TellTheGapsAboveAndBelow) {
    // x of the lumen points to the head. The body takes the oval's form; a wider lumen leaves it free.
    const Seat seat = upright(ovalTube(10.0, 8.0, 30.0)).seat();
    EXPECT_NEAR(seat.gapSuperiorMm->value, 0.0, kSeatMm);
    EXPECT_NEAR(seat.gapInferiorMm->value, 0.0, kSeatMm);
    EXPECT_NEAR(upright(cylinder(12.0, 30.0)).seat().gapSuperiorMm->value, 2.0, kSeatMm) << "free, 10 mm in 12";
    // A line 1 mm nearer to the head than the middle.
    Laid aside = upright(cylinder(12.0, 30.0));
    aside.question.landingCentre = aside.lumen.at(1.0, 0.0, 0.0);
    const Seat off = aside.seat();
    EXPECT_NEAR(off.gapInferiorMm->value - off.gapSuperiorMm->value, 2.0, kSeatMm);
    // Head to foot there is no above.
    Eigen::Isometry3d pose = Eigen::Isometry3d::Identity();
    const Laid vertical = laidQuestion(laid(cylinder(9.0, 30.0), pose, Eigen::Matrix3d::Identity()), DeviceKind::Plug);
    EXPECT_FALSE(vertical.seat().gapSuperiorMm);
    EXPECT_FALSE(vertical.answer().hasSides);
    EXPECT_TRUE(has(vertical.answer().notices, "seat-no-sides"));
}

TEST(SeatSizes, HoldClearancesAgainstTheChart) {
    std::mt19937 random(8);
    Laid laid = anywhere(cylinder(9.0, 25.0), random);
    laid.question.chart.leastClearanceMm[Structure::CircumflexArtery] = 2.0;
    // Body of 9 mm radius from t = 0 to 8; disc of 13 mm radius from t = -11.5 to -10.
    laid.question.neighbours = {{Structure::CircumflexArtery, {laid.lumen.at(0, 10.5, 4)}, false},
                                {Structure::Ridge, {laid.lumen.at(0, 16.0, -6.0)}, false}};
    std::vector<PatientPoint> ring; // about the disc, 5 mm outside; the chords come 0.07 mm nearer
    for (int i = 0; i < 24; ++i) {
        const double angle = 2.0 * std::numbers::pi * i / 24;
        ring.push_back(laid.lumen.at(18.0 * std::cos(angle), 18.0 * std::sin(angle), -10.5));
    }
    laid.question.neighbours.push_back({Structure::MitralAnnulus, ring, true});
    const Seat seat = laid.seat();
    ASSERT_EQ(seat.clearances.size(), 3u);
    EXPECT_NEAR(seat.clearances[0].mm.value, 1.5, kSeatMm);
    EXPECT_FALSE(seat.clearances[0].ok());
    EXPECT_NEAR(seat.clearances[1].mm.value, 5.0, kSeatMm);
    EXPECT_TRUE(seat.clearances[1].ok()) << "the chart names none";
    EXPECT_NEAR(seat.clearances[2].mm.value, 18.0 * std::cos(std::numbers::pi / 24) - 13.0, 0.02);
    EXPECT_EQ(sentenceOf(seat.warnings, "too-near"),
              "Size 20 (invented) would lie 1.5 mm from the circumflex artery; at least 2.0 mm is wanted.");
}

TEST(SeatSizes, AreUnchangedByRigidMotion) {
    std::mt19937 random(9);
    // A smooth wall: where a strand's shadow ends is known to one ray only, which makes tenths along the line.
    const Lumen lumen = bentTube(9.5, 25.0);
    std::vector<Seat> seats;
    for (int seed = 0; seed < 6; ++seed) {
        Laid laid = anywhere(lumen, random);
        laid.question.ostium = roundOstium(laid.lumen, 12.0, 2.0);
        laid.question.circumflex = laid.lumen.at(10.0, 1.0, 2.0);
        laid.question.neighbours = {{Structure::Ridge, {laid.lumen.at(-12.0, 1.0, -4.0)}, false}};
        laid.question.spread = {0.5, 2.0};
        seats.push_back(laid.seat());
    }
    for (const Seat& seat : seats) {
        EXPECT_NEAR(seat.reachMm->value, seats[0].reachMm->value, 0.1);
        EXPECT_NEAR(seat.landingWidthMm->value, seats[0].landingWidthMm->value, kSeatMm);
        EXPECT_NEAR(seat.beyondCircumflexPercent->value, seats[0].beyondCircumflexPercent->value, 1.0);
        EXPECT_NEAR(seat.disc->sharePercent.value, seats[0].disc->sharePercent.value, 0.01);
        EXPECT_NEAR(seat.clearances[0].mm.value, seats[0].clearances[0].mm.value, kSeatMm);
        EXPECT_NEAR(seat.reachMm->standardUncertainty(), seats[0].reachMm->standardUncertainty(),
                    0.15 * seats[0].reachMm->standardUncertainty() + kSeatMm);
    }
}

TEST(SeatSizes, StateTheSpreadOfTheirPlacement) {
    std::mt19937 random(10);
    // A wide cylinder with a flat end: only the shift along the line moves the reach.
    Laid laid = anywhere(cylinder(12.0, 25.0), random);
    laid.question.spread = {1.0, 0.0};
    EXPECT_NEAR(laid.seat().reachMm->components.plane, 1.0, 0.1);
    laid.question.circumflex = laid.lumen.at(10.5, 0.0, 4.0);
    EXPECT_NEAR(laid.seat().beyondCircumflexPercent->components.plane, 100.0 / 8.0, 0.1);
    EXPECT_NEAR(laid.seat().beyondCircumflexPercent->components.observer, 100.0 / 8.0, 1e-9) << "a mark to 1 mm";
    // In a cone of slope 1/2 a wall uncertain by 0.1 mm moves the reach by 0.2 mm; 0.1 mm more for the place itself.
    Laid narrowing = anywhere(cone(9.0, 0.5), random);
    narrowing.lumen.wall.placeSdMm = 0.1;
    EXPECT_NEAR(narrowing.seat().reachMm->components.edge, std::hypot(0.2, 0.1), 0.03);
}

TEST(SeatSizes, MoveTheWallOutwardsAtAHigherPressure) {
    std::mt19937 random(11);
    Laid laid = anywhere(cone(9.0, 0.5), random);
    const double before = laid.seat().reachMm->value;
    laid.question.widenedByMm = 1.0; // half a millimetre outwards: 1 mm more of reach in this cone
    EXPECT_NEAR(laid.seat().reachMm->value - before, 1.0, kSeatMm);
    EXPECT_NEAR(laid.seat().landingWidthMm->value, 19.0, 2 * kSeatMm);
}

TEST(SeatSizes, GiveNoVerdictOnDepthWhereTheTipWasNotFilled) {
    std::mt19937 random(12);
    Laid laid = anywhere(cylinder(9.0, 3.0), random);
    EXPECT_EQ(laid.seat().reaches, false);
    EXPECT_TRUE(has(laid.seat().warnings, "seat-short"));
    laid.question.tipUnfilled = true;
    EXPECT_FALSE(laid.seat().reaches);
    EXPECT_FALSE(has(laid.seat().warnings, "seat-short"));
    EXPECT_EQ(sentenceOf(laid.answer().notices, "seat-no-verdict"),
              "The tip was not filled: along the sheath the reach is a lower bound. No verdict on depth.");
    // Beyond the box nothing is known, but what lies within it is enough here.
    const Seat open = anywhere(cylinder(9.0, 500.0), random).seat();
    EXPECT_EQ(open.end, SeatEnd::Open);
    EXPECT_EQ(open.reaches, true);
}

TEST(SeatSizes, SayWhatTheyWentBy) {
    std::mt19937 random(13);
    Laid laid = anywhere(cylinder(9.0, 30.0), random);
    EXPECT_EQ(sentenceOf(laid.answer().notices, "seat-basis"),
              "The sizes slide along the appendage's proximal axis, as no crossing is chosen.");
    EXPECT_EQ(sentenceOf(laid.answer().notices, "seat-not-marked"),
              "Not marked, and so not judged: circumflex artery, ridge to the upper left pulmonary vein, pulmonary artery, mitral "
              "annulus.");
    laid.question.basis = SheathBasis::Crossing;
    const double a = 20.0 * std::numbers::pi / 180.0;
    laid.question.direction = laid.lumen.towards({std::sin(a), 0.0, std::cos(a)});
    EXPECT_NEAR(laid.answer().angleToAxisDeg, 20.0, 1e-6);
    EXPECT_EQ(sentenceOf(laid.answer().notices, "seat-basis"), "The sizes slide along the sheath from the chosen crossing.");
    EXPECT_TRUE(has(laid.answer().notices, "seat-oblique"));
}

TEST(SeatSizes, RefuseWhatCannotBeSeated) {
    std::mt19937 random(14);
    Laid laid = anywhere(cylinder(9.0, 30.0), random);
    const auto error = [&] { return seatSizes(laid.lumen.wall, laid.question).error(); };
    const SeatQuestion good = laid.question;
    laid.question.direction = laid.lumen.towards({std::sin(1.2), 0.0, std::cos(1.2)});
    EXPECT_EQ(error().code, ErrorCode::InvalidArgument);
    EXPECT_EQ(error().message, "Cannot seat the sizes: the sheath comes in at 69 degrees to the appendage's axis at the landing zone, "
                               "and a straight body says nothing beyond 60. Choose another crossing or check the axis.");
    laid.question = good;
    laid.question.landingCentre = laid.lumen.at(15.0, 0.0, 0.0);
    EXPECT_EQ(error().code, ErrorCode::LandingOutsideAppendage);
    EXPECT_EQ(error().message, "Cannot seat the sizes: the middle of the landing zone lies in no blood. Move the landing zone.");
    laid.question = good;
    laid.question.landingDepthMm = 0.0;
    EXPECT_EQ(error().message, "Cannot seat the sizes: the landing zone lies 0.0 mm from the ostium; it must lie beyond it.");
    laid.question = good;
    laid.question.direction.mm *= 2.0;
    EXPECT_EQ(error().message, "Cannot seat the sizes: the sheath's direction, the axis and the landing plane's normal need length 1.");
    laid.question = good;
    laid.question.landingCentre.mm.x() = std::nan("");
    EXPECT_EQ(error().code, ErrorCode::NonFinite);
    EXPECT_EQ(error().message,
              "Cannot seat the sizes: the landing zone's place, its depth or the sheath's direction is not a number.");
    laid.question = good;
    std::stop_source stop;
    stop.request_stop();
    EXPECT_EQ(seatSizes(laid.lumen.wall, laid.question, {stop.get_token(), {}}).error().code, ErrorCode::Cancelled);
    // One size alone: the others are seated.
    laid.question.chart.sizes.push_back(laid.question.chart.sizes.front());
    laid.question.chart.sizes.front().leastDepthMm = 9.0;
    const SeatAnswer answer = laid.answer();
    EXPECT_EQ(answer.sizes.front().problem,
              "Cannot seat size 20 (invented): its least depth of 9.0 mm does not reach beyond the landing zone. Check the chart, or "
              "move the landing zone towards the ostium.");
    EXPECT_TRUE(answer.sizes.back().problem.empty());
    EXPECT_FALSE(answer.sizes.back().facts.empty());
    EXPECT_EQ(seatQuestionOf(AppendageMeasurement{}).error().message,
              "Cannot seat the sizes: there is no landing zone. Set one in the depth strip.");
    EXPECT_EQ(seatWallOf(AppendageMeasurement{}).error().message,
              "Cannot look for the wall around the sizes: the measurement came without its blood pool. Measure again.");
}

TEST(SeatJson, HoldsTheNumbersAndNullsForWhatIsNotKnown) {
    std::mt19937 random(17);
    const Laid laid = anywhere(cylinder(9.0, 15.0), random);
    const SeatAnswer answer = laid.answer();
    const auto json = seatJson(answer, laid.question);
    EXPECT_EQ(json["basis"], "proximal-axis");
    const auto& size = json["sizes"][0];
    EXPECT_EQ(size["reach_mm"]["value"].get<double>(), answer.sizes[0].reachMm->value);
    EXPECT_EQ(size["end"], "ahead");
    EXPECT_TRUE(size["reaches"].get<bool>());
    EXPECT_TRUE(size["beyond_circumflex_percent"].is_null());
    EXPECT_TRUE(size["disc"].is_null());
    EXPECT_EQ(size["facts"][0]["code"], "seat-reach");
    EXPECT_TRUE(seatJson(answer, laid.question, "another")["sizes"].empty());
}
