#include "core/cine/spectral.h"

#include "core/number_text.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace gauge::core {
namespace {

constexpr double kCrossingShare = 0.05;
constexpr double kSlowestHeart = 20.0;
constexpr double kFastestHeart = 300.0;

std::string named(const EchoRegion& region) {
    return "a region of kind " + std::string(words(region.kind));
}

Result<void> checkPlaces(const EchoRegion& region, std::span<const Eigen::Vector2d> places,
                         double endPixels) {
    if (!std::isfinite(endPixels) || endPixels < 0.0)
        return failure(ErrorCode::NonFinite,
                       "Cannot measure: the accuracy of the marks is no usable number.");
    for (const auto& place : places) {
        if (!place.allFinite())
            return failure(ErrorCode::NonFinite, "Cannot measure: a mark is no number. Set it again.");
        if (!region.box.contains(place))
            return failure(ErrorCode::RegionsMixed, "Cannot measure in " + named(region) + ": the mark at (" +
                                                        fixed(place.x(), 1) + ", " + fixed(place.y(), 1) +
                                                        ") lies outside it. Place all marks in one region.");
    }
    return {};
}

Result<void> checkAxis(const EchoRegion& region, const RegionAxis& axis, PhysicalUnit unit,
                       const std::string& what, const std::string& which) {
    const std::string head = "Cannot measure " + what + " in " + named(region) + ": ";
    if (!region.scaleFault.empty()) return failure(ErrorCode::ScaleMissing, head + region.scaleFault + ".");
    if (axis.unit != unit)
        return failure(ErrorCode::ScaleMissing,
                       head + "its " + which + " axis is " + std::string(words(axis.unit)) + ", not " +
                           std::string(words(unit)) + ". Place the marks in a spectral region.");
    if (!std::isfinite(axis.delta) || axis.delta == 0.0)
        return failure(ErrorCode::ScaleMissing,
                       head + "the file does not say how much a pixel of its " + which + " axis is.");
    return {};
}

Result<void> checkVelocity(const EchoRegion& region, bool baseline) {
    if (auto axis = checkAxis(region, region.y, PhysicalUnit::CentimetrePerSecond, "a velocity", "vertical");
        !axis)
        return axis;
    if (baseline && !region.y.referencePixel)
        return failure(
            ErrorCode::ScaleMissing,
            "Cannot measure a velocity in " + named(region) +
                ": the file does not say where its baseline is. The difference between two marks can be "
                "measured.");
    return {};
}

Result<void> checkTime(const EchoRegion& region) {
    return checkAxis(region, region.x, PhysicalUnit::Second, "a time", "horizontal");
}

double velocityAt(const EchoRegion& region, double y) {
    return region.y.referenceValue + (y - *region.y.referencePixel) * region.y.delta;
}

Estimate estimate(double value, double observer, double relativeScale, const char* method) {
    Estimate out;
    out.value = value;
    out.components.observer = observer;
    out.components.scale = std::abs(value) * relativeScale;
    out.method = method;
    return out;
}

/// An envelope as times and speeds on the side of its peak.
struct Envelope {
    std::vector<double> seconds; // rising
    std::vector<double> cmPerS;  // >= 0
    bool towards = true;
    double otherSide = 0.0; // greatest speed on the other side
};

Result<std::vector<Eigen::Vector2d>> inTime(std::span<const Eigen::Vector2d> points, double secondsPerPixel) {
    std::vector<Eigen::Vector2d> ordered(points.begin(), points.end());
    if ((ordered.back().x() - ordered.front().x()) * secondsPerPixel < 0.0)
        std::reverse(ordered.begin(), ordered.end());
    for (std::size_t i = 1; i < ordered.size(); ++i)
        if ((ordered[i].x() - ordered[i - 1].x()) * secondsPerPixel < 0.0)
            return failure(ErrorCode::Degenerate,
                           "Cannot measure the envelope: the trace turns back in time at (" +
                               fixed(ordered[i].x(), 1) + ", " + fixed(ordered[i].y(), 1) +
                               "). Trace from the start of the flow to its end.");
    if (ordered.front().x() == ordered.back().x())
        return failure(
            ErrorCode::Degenerate,
            "Cannot measure the envelope: its points take no time. Trace from the start of the flow to "
            "its end.");
    return ordered;
}

Result<Envelope> envelopeOf(const EchoRegion& region, std::span<const Eigen::Vector2d> points) {
    const auto ordered = inTime(points, region.x.delta);
    if (!ordered) return tl::make_unexpected(ordered.error());
    Envelope out;
    double highest = 0.0, lowest = 0.0;
    for (const auto& p : *ordered) {
        out.seconds.push_back((p.x() - ordered->front().x()) * region.x.delta);
        out.cmPerS.push_back(velocityAt(region, p.y()));
        highest = std::max(highest, out.cmPerS.back());
        lowest = std::min(lowest, out.cmPerS.back());
    }
    out.towards = highest >= -lowest;
    out.otherSide = out.towards ? -lowest : highest;
    if (highest == 0.0 && lowest == 0.0)
        return failure(
            ErrorCode::Degenerate,
            "Cannot measure the envelope: all its points lie on the baseline. Trace the outer edge of the "
            "spectrum.");
    for (double& v : out.cmPerS)
        v = std::max(0.0, out.towards ? v : -v);
    return out;
}

struct Integrals {
    double cm = 0.0;      // of v
    double cm2PerS = 0.0; // of v^2
    double peak = 0.0;
    double seconds = 0.0;
};

Integrals integrate(const Envelope& e) {
    Integrals sum;
    for (std::size_t i = 1; i < e.seconds.size(); ++i) {
        const double dt = e.seconds[i] - e.seconds[i - 1], a = e.cmPerS[i - 1], b = e.cmPerS[i];
        sum.cm += 0.5 * dt * (a + b);
        sum.cm2PerS += dt * (a * a + a * b + b * b) / 3.0;
    }
    sum.peak = *std::max_element(e.cmPerS.begin(), e.cmPerS.end());
    sum.seconds = e.seconds.back();
    return sum;
}

/// mmHg of a velocity squared in (cm/s)^2: 4 v^2 with v in m/s.
constexpr double kMmHgPerCm2PerS2 = 4.0e-4;

constexpr const char* kTraced = "traced envelope, no angle correction";
constexpr const char* kBernoulli =
    "traced envelope, simplified Bernoulli equation 4 v^2, no angle correction";

EnvelopeMeasures measuresOf(const Envelope& e, double dv, double dt) {
    const Integrals sum = integrate(e);
    const double first = e.cmPerS.front(), last = e.cmPerS.back(), time = sum.seconds;
    const double mean = sum.cm / time, meanSquare = sum.cm2PerS / time;
    const auto byEnds = [&](double atFirst, double atLast) { return dt * std::hypot(atFirst, atLast); };
    const double rel = kSpectralScaleUncertainty;
    EnvelopeMeasures out;
    out.towardsProbe = e.towards;
    out.peakCmPerS = estimate(sum.peak, dv, rel, kTraced);
    out.meanCmPerS =
        estimate(mean, std::hypot(dv, byEnds((mean - first) / time, (mean - last) / time)), rel, kTraced);
    out.velocityTimeIntegralCm =
        estimate(sum.cm, std::hypot(dv * time, byEnds(first, last)), std::sqrt(2.0) * rel, kTraced);
    out.peakGradientMmHg = estimate(kMmHgPerCm2PerS2 * sum.peak * sum.peak,
                                    kMmHgPerCm2PerS2 * 2.0 * sum.peak * dv, 2.0 * rel, kBernoulli);
    out.meanGradientMmHg =
        estimate(kMmHgPerCm2PerS2 * meanSquare,
                 kMmHgPerCm2PerS2 * std::hypot(2.0 * mean * dv, byEnds((meanSquare - first * first) / time,
                                                                       (meanSquare - last * last) / time)),
                 2.0 * rel, kBernoulli);
    out.durationMs = estimate(1000.0 * time, 1000.0 * std::sqrt(2.0) * dt, rel, kTraced);
    if (e.otherSide > kCrossingShare * sum.peak)
        out.notices.push_back({"envelope-crosses-baseline",
                               "The trace crosses the baseline by " + fixed(e.otherSide, 0) +
                                   " cm/s; those points count as no flow. Trace one side of the baseline.",
                               {}});
    return out;
}

} // namespace

Result<Estimate> velocityCmPerS(const EchoRegion& region, const Eigen::Vector2d& place, double endPixels) {
    if (auto ok = checkVelocity(region, true); !ok) return tl::make_unexpected(ok.error());
    if (auto ok = checkPlaces(region, {&place, 1}, endPixels); !ok) return tl::make_unexpected(ok.error());
    return estimate(velocityAt(region, place.y()), endPixels * std::abs(region.y.delta),
                    kSpectralScaleUncertainty, "velocity caliper, no angle correction");
}

Result<Estimate> velocityDifferenceCmPerS(const EchoRegion& region, const Eigen::Vector2d& from,
                                          const Eigen::Vector2d& to, double endPixels) {
    if (auto ok = checkVelocity(region, false); !ok) return tl::make_unexpected(ok.error());
    const Eigen::Vector2d places[] = {from, to};
    if (auto ok = checkPlaces(region, places, endPixels); !ok) return tl::make_unexpected(ok.error());
    return estimate((to.y() - from.y()) * region.y.delta,
                    std::sqrt(2.0) * endPixels * std::abs(region.y.delta), kSpectralScaleUncertainty,
                    "velocity caliper, no angle correction");
}

Result<Estimate> intervalMs(const EchoRegion& region, const Eigen::Vector2d& from, const Eigen::Vector2d& to,
                            double endPixels) {
    if (auto ok = checkTime(region); !ok) return tl::make_unexpected(ok.error());
    const Eigen::Vector2d places[] = {from, to};
    if (auto ok = checkPlaces(region, places, endPixels); !ok) return tl::make_unexpected(ok.error());
    const double msPerPixel = 1000.0 * std::abs(region.x.delta);
    return estimate(std::abs(to.x() - from.x()) * msPerPixel, std::sqrt(2.0) * endPixels * msPerPixel,
                    kSpectralScaleUncertainty, "time caliper");
}

Result<Estimate> heartRatePerMinute(const EchoRegion& region, const Eigen::Vector2d& from,
                                    const Eigen::Vector2d& to, int beats, double endPixels) {
    if (beats < 1)
        return failure(ErrorCode::InvalidArgument,
                       "Cannot measure a heart rate over " + std::to_string(beats) +
                           " beats: at least one is needed. Mark the same moment of two beats.");
    const auto interval = intervalMs(region, from, to, endPixels);
    if (!interval) return interval;
    const double rate = 60000.0 * beats / interval->value; // infinite for equal marks: refused below
    if (!(rate >= kSlowestHeart && rate <= kFastestHeart))
        return failure(
            ErrorCode::InvalidArgument,
            "Two marks " + fixed(interval->value, 0) + " ms apart for " + std::to_string(beats) +
                " beat(s) give no heart rate between 20 and 300 a minute. Mark the same moment of two "
                "beats.");
    return estimate(rate, rate * interval->components.observer / interval->value, kSpectralScaleUncertainty,
                    "heart rate from two marks");
}

Result<EnvelopeMeasures> measureEnvelope(const EchoRegion& region, std::span<const Eigen::Vector2d> points,
                                         double endPixels) {
    if (points.size() < 3)
        return failure(ErrorCode::TooFewPoints, "Cannot measure an envelope of " +
                                                    std::to_string(points.size()) +
                                                    " points: at least 3 are needed.");
    if (auto ok = checkVelocity(region, true); !ok) return tl::make_unexpected(ok.error());
    if (auto ok = checkTime(region); !ok) return tl::make_unexpected(ok.error());
    if (auto ok = checkPlaces(region, points, endPixels); !ok) return tl::make_unexpected(ok.error());
    const auto envelope = envelopeOf(region, points);
    if (!envelope) return tl::make_unexpected(envelope.error());
    return measuresOf(*envelope, endPixels * std::abs(region.y.delta), endPixels * std::abs(region.x.delta));
}

namespace {

using Member = Estimate EnvelopeMeasures::*;
constexpr Member kMembers[] = {&EnvelopeMeasures::peakCmPerS,
                               &EnvelopeMeasures::meanCmPerS,
                               &EnvelopeMeasures::velocityTimeIntegralCm,
                               &EnvelopeMeasures::peakGradientMmHg,
                               &EnvelopeMeasures::meanGradientMmHg,
                               &EnvelopeMeasures::durationMs};

Estimate meanOf(std::span<const EnvelopeMeasures> beats, Member member) {
    const auto n = static_cast<double>(beats.size());
    double value = 0.0, observer = 0.0, scale = 0.0, squares = 0.0;
    for (const auto& beat : beats) {
        value += (beat.*member).value / n;
        observer += (beat.*member).components.observer / n;
        scale += (beat.*member).components.scale / n;
    }
    for (const auto& beat : beats)
        squares += ((beat.*member).value - value) * ((beat.*member).value - value);
    const double between = beats.size() > 1 ? std::sqrt(squares / (n - 1.0) / n) : 0.0;
    Estimate out = beats.front().*member;
    out.value = value;
    out.components.observer = std::max(observer, between);
    out.components.scale = scale;
    if (beats.size() > 1) out.method += "; mean of " + std::to_string(beats.size()) + " beats";
    return out;
}

} // namespace

Result<EnvelopeMeasures> meanOverBeats(std::span<const EnvelopeMeasures> beats) {
    if (beats.empty())
        return failure(ErrorCode::InvalidArgument,
                       "Cannot average over no beats. Trace at least one envelope.");
    EnvelopeMeasures out;
    out.towardsProbe = beats.front().towardsProbe;
    for (const auto& beat : beats) {
        if (beat.towardsProbe != out.towardsProbe)
            return failure(
                ErrorCode::InvalidArgument,
                "Cannot average envelopes of flow towards the probe with others away from it. Average "
                "one side of the baseline.");
        out.notices.insert(out.notices.end(), beat.notices.begin(), beat.notices.end());
    }
    for (const Member member : kMembers)
        out.*member = meanOf(beats, member);
    return out;
}

} // namespace gauge::core
