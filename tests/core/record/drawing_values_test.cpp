#include "core/record/drawing_values.h"

#include "core/record/edit.h"

#include <algorithm>
#include <cmath>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <numbers>
#include <random>

using namespace gauge::core;
using testing::HasSubstr;

namespace {

constexpr double kPi = std::numbers::pi;
constexpr double kRounding = 1e-9;
constexpr double kVoxelMm = 0.5;
const SectionGround kSection{kVoxelMm};

Drawing drawing(DrawingKind kind, std::vector<Eigen::Vector2d> points) {
    Drawing d;
    d.kind = kind;
    d.site = SectionSite{};
    d.points = std::move(points);
    return d;
}

Estimate valueOf(const Drawing& d, const DrawingGround& ground, const std::string& id) {
    const auto values = measureDrawing(d, ground);
    if (!values) throw std::runtime_error(values.error().message);
    for (const auto& value : *values)
        if (value.id == id) return value.estimate;
    throw std::runtime_error("no value " + id);
}

std::vector<Eigen::Vector2d> circle(int count, double radius) {
    std::vector<Eigen::Vector2d> points;
    for (int i = 0; i < count; ++i)
        points.emplace_back(radius * std::cos(2 * kPi * i / count), radius * std::sin(2 * kPi * i / count));
    return points;
}

PictureGround xRay(double xMm, double yMm, double relative) {
    PictureGround ground;
    ground.whole = PlanarScale{{xMm, yMm}, relative, ScaleOrigin::ImagerAtIsocentre, ""};
    return ground;
}

EchoRegion spectral() {
    EchoRegion region;
    region.kind = EchoRegionKind::Spectral;
    region.box = {0, 0, 999, 599};
    region.x = {PhysicalUnit::Second, 0.005, 0.0, 0.0};
    region.y = {PhysicalUnit::CentimetrePerSecond, -2.0, 300.0, 0.0};
    return region;
}

/// Spread of a value over redraws in which a hand sets every point anew.
double redrawnSpread(const Drawing& d, const DrawingGround& ground, const std::string& id, double sd) {
    std::mt19937 random(7);
    std::normal_distribution<double> off(0.0, sd);
    constexpr int kDraws = 4000;
    double mean = 0.0, squares = 0.0;
    for (int i = 1; i <= kDraws; ++i) {
        Drawing again = d;
        for (auto& p : again.points)
            p += Eigen::Vector2d(off(random), off(random));
        const double v = valueOf(again, ground, id).value, from = v - mean;
        mean += from / i;
        squares += from * (v - mean);
    }
    return std::sqrt(squares / (kDraws - 1));
}
constexpr double kSpreadTolerance = 0.05; // 4000 draws know a spread to 1 %; the rest is the curvature of the value

} // namespace

TEST(MeasureDrawing, StraightOnASectionIsInMillimetresWithBothEndsUncertain) {
    const Estimate e = valueOf(drawing(DrawingKind::Straight, {{1, 2}, {4, 6}}), kSection, "length");
    EXPECT_NEAR(e.value, 5.0, kRounding);
    EXPECT_NEAR(e.components.observer, std::sqrt(2.0) * kVoxelMm, kRounding);
    EXPECT_EQ(e.components.scale, 0.0);
    EXPECT_THAT(e.method, HasSubstr("drawn by hand; section through a volume"));
}

TEST(MeasureDrawing, StraightOnAPictureTakesItsScaleAndSharesItsUncertainty) {
    const Estimate e = valueOf(drawing(DrawingKind::Straight, {{0, 0}, {30, 20}}), xRay(0.2, 0.4, 0.05), "length");
    EXPECT_NEAR(e.value, 10.0, kRounding) << "6 mm across, 8 mm down";
    EXPECT_NEAR(e.components.scale, 0.5, kRounding);
    EXPECT_THAT(e.method, HasSubstr(std::string(words(ScaleOrigin::ImagerAtIsocentre))));
}

TEST(MeasureDrawing, CurveFollowsAHalfCircleAndItsUncertaintyIsTheSpreadOverRedraws) {
    std::vector<Eigen::Vector2d> half;
    for (int i = 0; i <= 8; ++i)
        half.emplace_back(10 * std::cos(kPi * i / 8), 10 * std::sin(kPi * i / 8));
    const Drawing d = drawing(DrawingKind::Curve, half);
    const Estimate e = valueOf(d, kSection, "length");
    EXPECT_NEAR(e.value, 10 * kPi, 0.01);
    const SectionGround fine{0.1}; // redraws that bend the line little, so that the value stays near linear
    EXPECT_NEAR(valueOf(d, fine, "length").components.observer / redrawnSpread(d, fine, "length", 0.1), 1.0,
                kSpreadTolerance);
}

TEST(MeasureDrawing, AngleIsThatAtTheMiddlePointWhateverTheOrderAndTheScale) {
    const Drawing d = drawing(DrawingKind::Angle, {{10, 0}, {0, 0}, {10, 10}});
    EXPECT_NEAR(valueOf(d, kSection, "angle").value, 45.0, kRounding);
    EXPECT_NEAR(valueOf(drawing(DrawingKind::Angle, {{10, 10}, {0, 0}, {10, 0}}), kSection, "angle").value, 45.0, kRounding);
    EXPECT_NEAR(valueOf(drawing(DrawingKind::Angle, {{10, 0}, {0, 0}, {-10, 0}}), kSection, "angle").value, 180.0, kRounding);
    EXPECT_NEAR(valueOf(d, xRay(0.2, 0.4, 0.1), "angle").value, std::atan(2.0) * 180 / kPi, kRounding) << "oblong pixels";
    EXPECT_NEAR(valueOf(d, kSection, "angle").components.observer / redrawnSpread(d, kSection, "angle", kVoxelMm), 1.0,
                kSpreadTolerance);
}

TEST(MeasureDrawing, AngleNeedsNoScaleButArms) {
    const Drawing d = drawing(DrawingKind::Angle, {{100, 0}, {0, 0}, {0, 100}});
    EXPECT_NEAR(valueOf(d, PictureGround{}, "angle").value, 90.0, kRounding);
    const auto none = measureDrawing(drawing(DrawingKind::Angle, {{1, 0}, {0, 0}, {0, 10}}), kSection);
    EXPECT_EQ(none.error().code, ErrorCode::Degenerate);
    EXPECT_THAT(none.error().message, HasSubstr("Draw longer arms"));
}

TEST(MeasureDrawing, AreaOfACircleByFewPointsIsThatOfTheCircle) {
    for (const int count : {8, 16, 40}) {
        const Drawing d = drawing(DrawingKind::Area, circle(count, 10));
        EXPECT_NEAR(valueOf(d, kSection, "area").value / (100 * kPi), 1.0, 3e-3) << count;
        EXPECT_NEAR(valueOf(d, kSection, "perimeter").value / (20 * kPi), 1.0, 2e-3) << count;
        EXPECT_NEAR(valueOf(d, kSection, "longest-diameter").value, 20.0, 0.06) << count;
        EXPECT_NEAR(valueOf(d, kSection, "shortest-diameter").value, 20.0, 0.06) << count;
        EXPECT_GT(valueOf(d, kSection, "area").components.observer, 0.0);
    }
    // Three points are enough for a line, though not for a circle: SciPy's spline too encloses 13 % less.
    EXPECT_NEAR(valueOf(drawing(DrawingKind::Area, circle(3, 10)), kSection, "area").value / (100 * kPi), 1.0, 0.14);
}

TEST(MeasureDrawing, EllipseIsMeasuredInClosedForm) {
    // Half-axes 12 and 9, turned; the third point off square is taken square.
    const Eigen::Vector2d along(0.8, 0.6), across(-0.6, 0.8), center(3, 4);
    const Drawing d = drawing(DrawingKind::Ellipse, {center, center + 12 * along, center + 9 * across + 2 * along});
    EXPECT_NEAR(valueOf(d, kSection, "longest-diameter").value, 24.0, kRounding);
    EXPECT_NEAR(valueOf(d, kSection, "shortest-diameter").value, 18.0, kRounding);
    EXPECT_NEAR(valueOf(d, kSection, "area").value, 108 * kPi, kRounding);
    // Ramanujan's second formula, 3e-5 relative at worst.
    const double h = std::pow(3.0 / 21.0, 2);
    EXPECT_NEAR(valueOf(d, kSection, "perimeter").value, 21 * kPi * (1 + 3 * h / (10 + std::sqrt(4 - 3 * h))), 1e-4);
    EXPECT_NEAR(valueOf(d, kSection, "longest-diameter").components.observer, std::sqrt(2.0) * kVoxelMm, kRounding);
    // d(area) = pi/4 (D2 dD1 + D1 dD2)
    EXPECT_NEAR(valueOf(d, kSection, "area").components.observer,
                kPi / 4 * std::hypot(18.0, 24.0) * std::sqrt(2.0) * kVoxelMm, 0.01);
    const Eigen::Vector2d squared = ellipseSquared(d.points);
    EXPECT_NEAR((squared - center).dot(along), 0.0, kRounding);
    EXPECT_NEAR((squared - center).norm(), 9.0, kRounding);
}

TEST(MeasureDrawing, ScaleGrowsLengthsOnceAndAreasTwice) {
    const Drawing d = drawing(DrawingKind::Area, circle(12, 50));
    const auto ground = xRay(0.2, 0.2, 0.03);
    EXPECT_NEAR(valueOf(d, ground, "perimeter").components.scale / valueOf(d, ground, "perimeter").value, 0.03, kRounding);
    EXPECT_NEAR(valueOf(d, ground, "area").components.scale / valueOf(d, ground, "area").value, 0.06, kRounding);
    EXPECT_EQ(valueOf(d, ground, "eccentricity-index").components.scale, 0.0);
}

TEST(MeasureDrawing, SpectralKindsGoByTheRegionsAxes) {
    PictureGround ground;
    ground.regions.push_back(spectral());
    EXPECT_NEAR(valueOf(drawing(DrawingKind::Velocity, {{10, 250}}), ground, "velocity").value, 100.0, kRounding);
    const Drawing beats = drawing(DrawingKind::Interval, {{100, 10}, {300, 40}});
    EXPECT_NEAR(valueOf(beats, ground, "interval").value, 1000.0, 1e-6);
    EXPECT_NEAR(valueOf(beats, ground, "heart-rate").value, 60.0, 1e-6);
    const Drawing triangle = drawing(DrawingKind::Envelope, {{100, 300}, {150, 250}, {200, 300}});
    EXPECT_NEAR(valueOf(triangle, ground, "peak-velocity").value, 100.0, 1e-6);
    EXPECT_NEAR(valueOf(triangle, ground, "velocity-time-integral").value, 25.0, 1e-6) << "0.5 s x 100 cm/s / 2";
    const auto none = measureDrawing(drawing(DrawingKind::Velocity, {{10, 250}}), kSection);
    EXPECT_EQ(none.error().code, ErrorCode::ScaleMissing);
    EXPECT_THAT(none.error().message, HasSubstr("Draw it on the spectrum"));
}

TEST(MeasureDrawing, RefusesWhatHasNoScaleOrMixesThem) {
    const auto bare = measureDrawing(drawing(DrawingKind::Straight, {{0, 0}, {9, 9}}), PictureGround{});
    EXPECT_EQ(bare.error().code, ErrorCode::ScaleMissing);
    PictureGround two;
    for (const int left : {0, 100}) {
        EchoRegion tissue;
        tissue.kind = EchoRegionKind::Tissue;
        tissue.box = {left, 0, left + 99, 99};
        tissue.x = tissue.y = {PhysicalUnit::Centimetre, 0.02, 0.0, 0.0};
        tissue.scale = PlanarScale{{0.2, 0.2}, kRegionScaleUncertainty, ScaleOrigin::RegionCalibration, ""};
        two.regions.push_back(tissue);
    }
    EXPECT_EQ(measureDrawing(drawing(DrawingKind::Curve, {{10, 10}, {50, 50}, {150, 50}}), two).error().code,
              ErrorCode::RegionsMixed);
    EXPECT_TRUE(measureDrawing(drawing(DrawingKind::Curve, {{10, 10}, {50, 50}, {90, 50}}), two));
}

TEST(MeasureDrawing, SaysWhatIsWrongWithTheDrawing) {
    const auto few = measureDrawing(drawing(DrawingKind::Area, {{0, 0}, {1, 1}}), kSection);
    EXPECT_EQ(few.error().code, ErrorCode::TooFewPoints);
    EXPECT_THAT(few.error().message, HasSubstr("it has 2 point(s), its kind has 3 or more"));
    EXPECT_EQ(measureDrawing(drawing(DrawingKind::Straight, {{0, 0}, {1, 1}, {2, 2}}), kSection).error().code,
              ErrorCode::InvalidArgument);
    EXPECT_EQ(measureDrawing(drawing(DrawingKind::Straight, {{0, NAN}, {1, 1}}), kSection).error().code, ErrorCode::NonFinite);
    EXPECT_THAT(measureDrawing(drawing(DrawingKind::Straight, {{0, 0}, {1, 1}}), SectionGround{0.0}).error().message,
                HasSubstr("voxels of its volume have no size"));
    EXPECT_EQ(measureDrawing(drawing(DrawingKind::Ellipse, {{0, 0}, {9, 0}, {5, 0}}), kSection).error().code,
              ErrorCode::Degenerate);
    EXPECT_FALSE(measureDrawing(drawing(DrawingKind::Area, {{0, 0}, {1, 1}, {2, 2}}), kSection));
}

TEST(DrawingValues, NameWhatTheyRestOnAndAreStaleWhenThePlaneMovesUntilConfirmed) {
    CaseRecord record;
    record.images.emplace();
    record.images->revision = 1;
    Drawing d = drawing(DrawingKind::Straight, {{0, 0}, {5, 0}});
    d.site = SectionSite{{}, std::string(input::kLanding), revisionOf(record, input::placeOf(input::kLanding))};
    record.drawings["4"] = {d, 2, UnknownFields::object()};
    const auto values = drawingValues(record, "4", kSection, std::make_shared<const Provenance>()).value();
    ASSERT_EQ(values.size(), 1u);
    EXPECT_EQ(values[0].group, "drawing/4");
    EXPECT_EQ(values[0].inputs[0], (InputRevision{"drawing/4", 2}));
    EXPECT_FALSE(isStale(record, values[0]));
    EXPECT_FALSE(isPlaneMoved(record, d));

    const auto landingAt = [](double depthMm, Revision revision) {
        LandingPlanes planes;
        planes.depthsMm = {depthMm};
        planes.revision = revision;
        return SetLanding{planes};
    };
    // Everything that decides where a landing plane lies moves it; an unrelated mark does not.
    for (const auto& move : std::vector<Edit>{landingAt(12.0, 9),
                                              SetOstium{OstiumPlane{{}, true, 9, UnknownFields::object()}},
                                              SetMark{MarkKind::Tip, Mark{{}, 9, UnknownFields::object()}}}) {
        const Edit back = apply(record, move);
        EXPECT_TRUE(isStale(record, values[0]));
        EXPECT_TRUE(isPlaneMoved(record, d));
        apply(record, back);
        EXPECT_FALSE(isStale(record, values[0])) << "undo makes it current again";
    }
    apply(record, SetMark{MarkKind::Aorta, Mark{{}, 9, UnknownFields::object()}});
    EXPECT_FALSE(isStale(record, values[0]));

    apply(record, landingAt(12.0, 10));
    std::get<SectionSite>(d.site).planeRevision = revisionOf(record, input::placeOf(input::kLanding));
    record.drawings["4"] = {d, 11, UnknownFields::object()};
    EXPECT_FALSE(isStale(record, drawingValues(record, "4", kSection, nullptr)->front())) << "confirmed";
}

TEST(DrawingValues, AnOstiumThatThePersonSetDoesNotMoveWithTheMarks) {
    CaseRecord record;
    record.ostium = OstiumPlane{{}, true, 3, UnknownFields::object()};
    const Revision before = revisionOf(record, input::placeOf(input::kOstium));
    record.marks[MarkKind::Tip] = Mark{{}, 8, UnknownFields::object()};
    EXPECT_EQ(revisionOf(record, input::placeOf(input::kOstium)), before);
    record.ostium->revision = 9;
    EXPECT_NE(revisionOf(record, input::placeOf(input::kOstium)), before);
    EXPECT_EQ(revisionOf(record, "plane/elsewhere"), 0u);
    EXPECT_LT(before, 1ull << 53);
}

TEST(DrawingValues, OnAPictureRestOnThePersonsScale) {
    CaseRecord record;
    Drawing d = drawing(DrawingKind::Straight, {{0, 0}, {5, 0}});
    d.site = PictureSite{"2.25.7", 3};
    record.drawings["1"] = {d, 2, UnknownFields::object()};
    const auto values = drawingValues(record, "1", xRay(0.2, 0.2, 0.0), nullptr).value();
    EXPECT_FALSE(isStale(record, values[0]));
    apply(record, SetEntry<PictureScale>{"2.25.7", Entry<PictureScale>{{}, 5, UnknownFields::object()}});
    EXPECT_TRUE(isStale(record, values[0]));
    EXPECT_THAT(drawingValues(record, "2", kSection, nullptr).error().message, HasSubstr("Cannot measure drawing 2"));
}

TEST(HandScaleOf, KeepsTheOriginAndTheRegionOfTheMarks) {
    PictureScale scale;
    scale.origin = ScaleOrigin::MarkerSpacing;
    scale.from = {10, 10};
    scale.to = {110, 10};
    scale.knownMm = 20.0;
    scale.within = PixelBox{0, 0, 200, 200};
    const HandScale hand = handScaleOf(scale).value();
    EXPECT_NEAR(hand.scale.mmPerPixel.x(), 0.2, kRounding);
    EXPECT_EQ(hand.scale.origin, ScaleOrigin::MarkerSpacing);
    EXPECT_EQ(hand.within, scale.within);
}

TEST(DrawingLine, IsTheLineThatIsMeasured) {
    const auto ring = drawingLine(DrawingKind::Ellipse, std::vector<Eigen::Vector2d>{{0, 0}, {10, 0}, {0, 5}});
    for (const auto& p : ring)
        EXPECT_NEAR(std::pow(p.x() / 10, 2) + std::pow(p.y() / 5, 2), 1.0, kRounding);
    // On pixels twice as high as wide a round ellipse looks flat.
    const auto flat = drawingLine(DrawingKind::Ellipse, std::vector<Eigen::Vector2d>{{0, 0}, {10, 0}, {0, 5}}, {1.0, 2.0});
    for (const auto& p : flat)
        EXPECT_NEAR(std::hypot(p.x(), 2 * p.y()), 10.0, kRounding);
    EXPECT_EQ(drawingLine(DrawingKind::Straight, std::vector<Eigen::Vector2d>{{0, 0}, {1, 1}}).size(), 2u);
}

TEST(CanBegin, TheUnitsOfTheRegionDecide) {
    // PS3.3 C.8.5.5.1.15: 3 = cm, 4 = s, 7 = cm/s.
    EchoRegion tissue;
    tissue.kind = EchoRegionKind::Tissue;
    tissue.box = {0, 0, 999, 299};
    tissue.x = tissue.y = {PhysicalUnit::Centimetre, 0.05, std::nullopt, 0.0};
    EchoRegion spectrum = spectral();
    spectrum.box = {0, 300, 999, 599};
    EchoRegion trace;
    trace.kind = EchoRegionKind::Ecg;
    trace.box = {0, 600, 999, 699};
    trace.x = {PhysicalUnit::Second, 0.005, 0.0, 0.0};
    PictureGround ground;
    ground.regions = {tissue, spectrum, trace};
    const Eigen::Vector2d onTissue(100, 100), onSpectrum(100, 400), onTrace(100, 650), outside(100, 800);
    for (const auto kind : {DrawingKind::Straight, DrawingKind::Curve, DrawingKind::Angle, DrawingKind::Area, DrawingKind::Ellipse}) {
        EXPECT_TRUE(canBegin(kind, ground, onTissue));
        EXPECT_TRUE(canBegin(kind, ground, outside)) << "a scale may still be given there";
        for (const auto& place : {onSpectrum, onTrace}) {
            const auto refused = canBegin(kind, ground, place);
            ASSERT_FALSE(refused);
            EXPECT_EQ(refused.error().code, ErrorCode::ScaleMissing);
            EXPECT_THAT(refused.error().message, HasSubstr("Cannot measure lengths in the"));
            EXPECT_THAT(refused.error().message, HasSubstr("s across"));
        }
        EXPECT_TRUE(canBegin(kind, kSection, onSpectrum)) << "CT has lengths everywhere";
    }
    for (const auto kind : {DrawingKind::Velocity, DrawingKind::Envelope}) {
        EXPECT_TRUE(canBegin(kind, ground, onSpectrum));
        for (const auto& place : {onTissue, onTrace, outside})
            EXPECT_FALSE(canBegin(kind, ground, place));
        EXPECT_FALSE(canBegin(kind, kSection, onSpectrum));
    }
    EXPECT_TRUE(canBegin(DrawingKind::Interval, ground, onSpectrum));
    EXPECT_TRUE(canBegin(DrawingKind::Interval, ground, onTrace));
    EXPECT_FALSE(canBegin(DrawingKind::Interval, ground, onTissue));
}

TEST(CanBegin, AHandGivenScaleDoesNotMakeLengthsOfASpectrum) {
    PictureGround ground;
    ground.regions = {spectral()};
    ground.hand = HandScale{{{0.5, 0.5}, 0.01, ScaleOrigin::HandCalibration, ""}, std::nullopt};
    EXPECT_FALSE(canBegin(DrawingKind::Straight, ground, {100, 100}));
}

TEST(MeasureDrawing, SaysWhyAPictureHasNoScale) {
    const Drawing line = drawing(DrawingKind::Straight, {{0, 0}, {100, 0}});
    PictureGround ground;
    ground.noScale = "The file tells no spacing.";
    const auto none = measureDrawing(line, ground);
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().message, "Cannot measure a length on the picture: The file tells no spacing. Calibrate it by hand to measure.");
    ground.whole = PlanarScale{{0.5, 0.5}, 0.01, ScaleOrigin::ImagerAtIsocentre, ""};
    EXPECT_TRUE(measureDrawing(line, ground));
    ground.handFault = Error{ErrorCode::Degenerate, "No edges were found.", {}, nullptr};
    const auto fault = measureDrawing(line, ground);
    ASSERT_FALSE(fault) << "the person's scale comes first: the file's must not stand in silently";
    EXPECT_EQ(fault.error().message, "Cannot measure on the picture by the scale that was given to it: No edges were found.");
}
