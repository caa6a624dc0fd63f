#include "core/cine/spectral.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <limits>
#include <numbers>
#include <random>

using namespace gauge::core;
using testing::HasSubstr;

namespace {

// A few roundings of numbers up to 1e4.
constexpr double kRounding = 1e-8;
constexpr double kPi = std::numbers::pi;

/// 5 ms and 2 cm/s a pixel, velocity 0 at row 300, positive upwards.
EchoRegion spectral() {
    EchoRegion region;
    region.kind = EchoRegionKind::Spectral;
    region.box = {0, 0, 999, 599};
    region.x = {PhysicalUnit::Second, 0.005, 0.0, 0.0};
    region.y = {PhysicalUnit::CentimetrePerSecond, -2.0, 300.0, 0.0};
    return region;
}

Eigen::Vector2d at(const EchoRegion& r, double seconds, double cmPerS) {
    return {seconds / r.x.delta, *r.y.referencePixel + (cmPerS - r.y.referenceValue) / r.y.delta};
}

template <class Shape>
std::vector<Eigen::Vector2d> traced(const EchoRegion& r, double start, double length, int points,
                                    Shape shape) {
    std::vector<Eigen::Vector2d> out;
    for (int i = 0; i < points; ++i) {
        const double t = static_cast<double>(i) / (points - 1);
        out.push_back(at(r, start + length * t, shape(t)));
    }
    return out;
}

EnvelopeMeasures measured(const EchoRegion& r, const std::vector<Eigen::Vector2d>& points,
                          double endPixels = 1.0) {
    const auto result = measureEnvelope(r, points, endPixels);
    if (!result) throw std::runtime_error(result.error().message);
    return *result;
}

template <class T> Error refused(const Result<T>& result) {
    if (!result) return result.error();
    ADD_FAILURE() << "an error was expected";
    return {};
}

} // namespace

TEST(VelocityCaliper, HandValues) {
    const EchoRegion r = spectral();
    EXPECT_NEAR(velocityCmPerS(r, {100, 250})->value, 100.0, kRounding) << "50 pixels above the baseline";
    EXPECT_NEAR(velocityCmPerS(r, {100, 400})->value, -200.0, kRounding);
    EXPECT_NEAR(velocityCmPerS(r, {100, 300})->value, 0.0, kRounding);
    const Estimate e = velocityCmPerS(r, {100, 250}, 1.5).value();
    EXPECT_NEAR(e.components.observer, 3.0, kRounding);
    EXPECT_NEAR(e.components.scale, 100.0 * kSpectralScaleUncertainty, kRounding);
    EXPECT_NEAR(velocityDifferenceCmPerS(r, {0, 250}, {10, 350})->value, -200.0, kRounding);
}

TEST(VelocityCaliper, KeepsABaselineThatIsNotZero) {
    EchoRegion r = spectral();
    r.y.referencePixel = 0.0;
    r.y.referenceValue = 600.0; // the top row is 600 cm/s
    EXPECT_NEAR(velocityCmPerS(r, {100, 250})->value, 100.0, kRounding);
    r.y.delta = 2.0;
    r.y.referenceValue = -600.0; // values rise downwards
    EXPECT_NEAR(velocityCmPerS(r, {100, 250})->value, -100.0, kRounding);
}

TEST(VelocityCaliper, SaysWhyThereIsNoVelocity) {
    EchoRegion r = spectral();
    r.y.referencePixel.reset();
    Error error = refused(velocityCmPerS(r, {100, 250}));
    EXPECT_EQ(error.code, ErrorCode::ScaleMissing);
    EXPECT_THAT(error.message, HasSubstr("the file does not say where its baseline is"));
    EXPECT_TRUE(velocityDifferenceCmPerS(r, {0, 250}, {10, 350})) << "needs no baseline";
    r = spectral();
    r.y.unit = PhysicalUnit::Hertz;
    error = refused(velocityCmPerS(r, {100, 250}));
    EXPECT_THAT(error.message, HasSubstr("its vertical axis is Hz, not cm/s"));
    r = spectral();
    r.kind = EchoRegionKind::Tissue;
    r.y.unit = PhysicalUnit::Centimetre;
    EXPECT_THAT(refused(velocityCmPerS(r, {1, 1})).message, HasSubstr("a region of kind tissue"));
    r = spectral();
    r.scaleFault = "a pixel of its velocity axis would be 9000.00000 cm/s, which cannot be true";
    EXPECT_THAT(refused(velocityCmPerS(r, {1, 1})).message, HasSubstr("9000.00000 cm/s"));
    error = refused(velocityCmPerS(spectral(), {1200, 1}));
    EXPECT_EQ(error.code, ErrorCode::RegionsMixed);
    EXPECT_THAT(error.message, HasSubstr("the mark at (1200.0, 1.0) lies outside it"));
    EXPECT_EQ(refused(velocityCmPerS(spectral(), {1, std::numeric_limits<double>::quiet_NaN()})).code,
              ErrorCode::NonFinite);
}

TEST(TimeCaliper, HandValues) {
    const EchoRegion r = spectral();
    EXPECT_NEAR(intervalMs(r, {100, 0}, {300, 50})->value, 1000.0, kRounding);
    EXPECT_NEAR(intervalMs(r, {300, 0}, {100, 50})->value, 1000.0, kRounding) << "either way";
    EXPECT_NEAR(intervalMs(r, {300, 0}, {100, 50})->components.observer, std::sqrt(2.0) * 5.0, kRounding);
    EchoRegion ecg = r;
    ecg.kind = EchoRegionKind::Ecg;
    ecg.y = {};
    EXPECT_NEAR(intervalMs(ecg, {100, 0}, {300, 50})->value, 1000.0, kRounding) << "an ECG has a time axis";
    ecg.x.unit = PhysicalUnit::Centimetre;
    EXPECT_THAT(refused(intervalMs(ecg, {1, 1}, {2, 2})).message,
                HasSubstr("its horizontal axis is cm, not s"));
}

TEST(HeartRate, FromMarksOneOrMoreBeatsApart) {
    const EchoRegion r = spectral();
    EXPECT_NEAR(heartRatePerMinute(r, {100, 0}, {250, 0})->value, 80.0, kRounding); // 750 ms
    const Estimate three = heartRatePerMinute(r, {100, 0}, {550, 0}, 3).value();
    EXPECT_NEAR(three.value, 80.0, kRounding);
    EXPECT_NEAR(three.components.observer, 80.0 * std::sqrt(2.0) * 5.0 / 2250.0, kRounding);
}

TEST(HeartRate, RefusesMarksThatAreNoBeats) {
    const EchoRegion r = spectral();
    Error error = refused(heartRatePerMinute(r, {100, 0}, {101, 0}));
    EXPECT_EQ(error.code, ErrorCode::InvalidArgument);
    EXPECT_THAT(error.message,
                HasSubstr("Two marks 5 ms apart for 1 beat(s) give no heart rate between 20 and 300"));
    EXPECT_EQ(refused(heartRatePerMinute(r, {100, 0}, {100, 0})).code, ErrorCode::InvalidArgument);
    EXPECT_THAT(refused(heartRatePerMinute(r, {100, 0}, {200, 0}, 0)).message, HasSubstr("over 0 beats"));
}

TEST(MeasureEnvelope, TriangleInClosedForm) {
    // v rises to V at a third of the time and falls: mean V/2, integral V T/2, mean of 4 v^2 = 4 V^2/3.
    const EchoRegion r = spectral();
    const auto e = measured(r, {at(r, 0.5, 0), at(r, 0.6, 400), at(r, 0.8, 0)});
    EXPECT_NEAR(e.peakCmPerS.value, 400.0, kRounding);
    EXPECT_NEAR(e.meanCmPerS.value, 200.0, kRounding);
    EXPECT_NEAR(e.velocityTimeIntegralCm.value, 60.0, kRounding);
    EXPECT_NEAR(e.durationMs.value, 300.0, kRounding);
    // Peak 4 m/s is 64 mmHg: the simplified Bernoulli equation's usual example (from memory).
    EXPECT_NEAR(e.peakGradientMmHg.value, 64.0, kRounding);
    EXPECT_NEAR(e.meanGradientMmHg.value, 64.0 / 3.0, kRounding);
    EXPECT_GT(e.meanGradientMmHg.value, 4.0 * 2.0 * 2.0) << "not 4 times the square of the mean, which is 16";
    EXPECT_TRUE(e.towardsProbe);
    EXPECT_TRUE(e.notices.empty());
    EXPECT_THAT(e.meanGradientMmHg.method, HasSubstr("simplified Bernoulli"));
}

TEST(MeasureEnvelope, HalfSineInClosedForm) {
    // v = V sin(pi t/T): mean 2V/pi, integral 2VT/pi, mean of 4 v^2 = 2 V^2.
    const EchoRegion r = spectral();
    const double peak = 150.0, seconds = 0.4;
    const auto e =
        measured(r, traced(r, 1.0, seconds, 201, [&](double t) { return peak * std::sin(kPi * t); }));
    constexpr double kChords = 1e-4; // a chord of 1/200 of the half wave: pi^2/(12 * 200^2) of the value
    EXPECT_NEAR(e.peakCmPerS.value, peak, kRounding);
    EXPECT_NEAR(e.meanCmPerS.value, 2 * peak / kPi, kChords * peak);
    EXPECT_NEAR(e.velocityTimeIntegralCm.value, 2 * peak * seconds / kPi, kChords * peak * seconds);
    EXPECT_NEAR(e.meanGradientMmHg.value, 2.0 * 1.5 * 1.5, kChords * 4.5);
}

TEST(MeasureEnvelope, RectangleHasOneGradient) {
    const EchoRegion r = spectral();
    const auto e = measured(r, traced(r, 0.1, 0.3, 5, [](double) { return 250.0; }));
    EXPECT_NEAR(e.meanGradientMmHg.value, 25.0, kRounding); // 4 * 2.5^2
    EXPECT_NEAR(e.peakGradientMmHg.value, e.meanGradientMmHg.value, kRounding);
}

TEST(MeasureEnvelope, IsTheSameForFlowAwayFromTheProbeAndForATraceDrawnBackwards) {
    const EchoRegion r = spectral();
    const auto shape = [](double t) { return 300.0 * t * (1 - t); };
    auto points = traced(r, 0.5, 0.5, 41, shape);
    const auto up = measured(r, points);
    const auto down = measured(r, traced(r, 0.5, 0.5, 41, [&](double t) { return -shape(t); }));
    EXPECT_FALSE(down.towardsProbe);
    std::reverse(points.begin(), points.end());
    const auto back = measured(r, points);
    for (const auto& other : {down, back}) {
        EXPECT_NEAR(other.peakCmPerS.value, up.peakCmPerS.value, kRounding);
        EXPECT_NEAR(other.meanGradientMmHg.value, up.meanGradientMmHg.value, kRounding);
        EXPECT_NEAR(other.velocityTimeIntegralCm.value, up.velocityTimeIntegralCm.value, kRounding);
        EXPECT_NEAR(other.meanGradientMmHg.components.observer, up.meanGradientMmHg.components.observer,
                    kRounding);
    }
}

TEST(MeasureEnvelope, EqualsAFineSumOverRandomTraces) {
    for (unsigned seed = 1; seed <= 50; ++seed) {
        std::mt19937 random(seed);
        const auto real = [&](double a, double b) {
            return std::uniform_real_distribution<double>(a, b)(random);
        };
        const EchoRegion r = spectral();
        std::vector<double> time{0.2}, speed{real(0, 300)};
        for (int i = 0, n = 3 + static_cast<int>(real(0, 20)); i < n; ++i) {
            time.push_back(time.back() + real(0.001, 0.1));
            speed.push_back(real(0, 300));
        }
        std::vector<Eigen::Vector2d> points;
        for (std::size_t i = 0; i < time.size(); ++i)
            points.push_back(at(r, time[i], speed[i]));
        constexpr int kFine = 20000;
        const double length = time.back() - time.front();
        double first = 0.0, second = 0.0;
        std::size_t k = 1;
        for (int i = 0; i < kFine; ++i) {
            const double t = time.front() + (i + 0.5) * length / kFine;
            while (time[k] < t)
                ++k;
            const double v =
                speed[k - 1] + (speed[k] - speed[k - 1]) * (t - time[k - 1]) / (time[k] - time[k - 1]);
            first += v / kFine;
            second += 4.0e-4 * v * v / kFine;
        }
        const auto e = measured(r, points);
        constexpr double kMidpoints = 1e-4; // of the fine sum, at corners of the trace
        EXPECT_NEAR(e.meanCmPerS.value, first, kMidpoints * 300) << "seed " << seed;
        EXPECT_NEAR(e.meanGradientMmHg.value, second, kMidpoints * 36) << "seed " << seed;
        EXPECT_NEAR(e.velocityTimeIntegralCm.value, first * length, kMidpoints * 300 * length)
            << "seed " << seed;
    }
}

TEST(MeasureEnvelope, ObserverPartIsTheEffectOfAShiftedHand) {
    const EchoRegion r = spectral();
    auto points = traced(r, 0.5, 0.4, 41, [](double t) { return 40 + 200.0 * std::sin(kPi * t); });
    const auto e = measured(r, points, 1.0);
    const auto moved = [&](double alongY, double firstX, double lastX) {
        auto p = points;
        for (auto& q : p)
            q.y() += alongY;
        p.front().x() += firstX;
        p.back().x() += lastX;
        return measured(r, p);
    };
    constexpr double kStep = 1e-3; // pixels
    const auto sensitivity = [&](auto member, double y, double a, double b) {
        return ((moved(y * kStep, a * kStep, b * kStep).*member).value -
                (moved(-y * kStep, -a * kStep, -b * kStep).*member).value) /
               (2 * kStep);
    };
    for (const auto member :
         {&EnvelopeMeasures::meanCmPerS, &EnvelopeMeasures::meanGradientMmHg,
          &EnvelopeMeasures::velocityTimeIntegralCm, &EnvelopeMeasures::peakGradientMmHg}) {
        const double shift = sensitivity(member, 1, 0, 0);
        EXPECT_GE((e.*member).components.observer, 0.999 * std::abs(shift));
        const double ends = std::hypot(sensitivity(member, 0, 1, 0), sensitivity(member, 0, 0, 1));
        // An end that is dragged tilts its segment too, which a trace that ends earlier does not: hence the
        // margin.
        EXPECT_NEAR((e.*member).components.observer, std::hypot(shift, ends), 0.05 * std::hypot(shift, ends));
    }
}

TEST(MeasureEnvelope, CountsTheOtherSideAsNoFlowAndSaysSo) {
    const EchoRegion r = spectral();
    const auto clean = measured(r, {at(r, 0.5, 0), at(r, 0.6, 200), at(r, 0.7, 0), at(r, 0.8, 0)});
    const auto little = measured(r, {at(r, 0.5, 0), at(r, 0.6, 200), at(r, 0.7, 0), at(r, 0.8, -4)});
    EXPECT_NEAR(little.meanGradientMmHg.value, clean.meanGradientMmHg.value, kRounding);
    EXPECT_TRUE(little.notices.empty()) << "two pixels over the baseline are a hand's width";
    const auto much = measured(r, {at(r, 0.5, 0), at(r, 0.6, 200), at(r, 0.7, 0), at(r, 0.8, -60)});
    ASSERT_EQ(much.notices.size(), 1u);
    EXPECT_EQ(much.notices[0].code, "envelope-crosses-baseline");
    EXPECT_THAT(much.notices[0].text, HasSubstr("crosses the baseline by 60 cm/s"));
}

TEST(MeasureEnvelope, RefusesWhatIsNoEnvelope) {
    const EchoRegion r = spectral();
    Error error = refused(measureEnvelope(r, std::vector{at(r, 0.5, 0), at(r, 0.6, 10)}));
    EXPECT_EQ(error.code, ErrorCode::TooFewPoints);
    EXPECT_THAT(error.message, HasSubstr("of 2 points: at least 3 are needed"));
    error = refused(
        measureEnvelope(r, std::vector{at(r, 0.5, 0), at(r, 0.7, 10), at(r, 0.6, 10), at(r, 0.8, 0)}));
    EXPECT_EQ(error.code, ErrorCode::Degenerate);
    EXPECT_THAT(error.message, HasSubstr("turns back in time at (120.0, 295.0)"));
    error = refused(measureEnvelope(r, std::vector{at(r, 0.5, 0), at(r, 0.5, 10), at(r, 0.5, 0)}));
    EXPECT_THAT(error.message, HasSubstr("its points take no time"));
    error = refused(measureEnvelope(r, std::vector{at(r, 0.5, 0), at(r, 0.6, 0), at(r, 0.7, 0)}));
    EXPECT_THAT(error.message, HasSubstr("all its points lie on the baseline"));
    error =
        refused(measureEnvelope(r, std::vector{at(r, 0.5, 0), at(r, 0.6, 10), Eigen::Vector2d(2000, 10)}));
    EXPECT_EQ(error.code, ErrorCode::RegionsMixed);
}

TEST(MeanOverBeats, IsThePlainMeanWithTheSpreadBetweenBeats) {
    const EchoRegion r = spectral();
    std::vector<EnvelopeMeasures> beats;
    for (const double peak : {100.0, 140.0, 120.0})
        beats.push_back(measured(r, {at(r, 0.5, 0), at(r, 0.6, peak), at(r, 0.8, 0)}, 0.0));
    const auto mean = meanOverBeats(beats).value();
    EXPECT_NEAR(mean.peakCmPerS.value, 120.0, kRounding);
    EXPECT_NEAR(mean.peakCmPerS.components.observer, 20.0 / std::sqrt(3.0), kRounding); // SD 20 of three
    // The mean of gradients, not the gradient of the mean velocity.
    EXPECT_NEAR(mean.meanGradientMmHg.value, 4.0 / 3.0 * (1.0 + 1.96 + 1.44) / 3.0, kRounding);
    EXPECT_THAT(mean.peakCmPerS.method, HasSubstr("mean of 3 beats"));
    EXPECT_NEAR(meanOverBeats(std::span(beats).first(1))->peakCmPerS.value, 100.0, kRounding);
}

TEST(MeanOverBeats, RefusesNothingAndMixedSides) {
    const EchoRegion r = spectral();
    EXPECT_THAT(refused(meanOverBeats({})).message, HasSubstr("Cannot average over no beats"));
    const std::vector<EnvelopeMeasures> mixed{measured(r, {at(r, 0.5, 0), at(r, 0.6, 100), at(r, 0.8, 0)}),
                                              measured(r, {at(r, 0.5, 0), at(r, 0.6, -100), at(r, 0.8, 0)})};
    EXPECT_THAT(refused(meanOverBeats(mixed)).message,
                HasSubstr("flow towards the probe with others away from it"));
}
