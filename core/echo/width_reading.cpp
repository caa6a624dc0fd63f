#include "core/echo/width_reading.h"

#include "core/number_text.h"

#include <algorithm>
#include <cmath>

namespace gauge::core {
namespace {

constexpr double kSameViewDeg = 0.5; // the scale on the screen is read to 1 degree
constexpr double kLeastPlausibleMm = 4.0, kGreatestPlausibleMm = 60.0;

double apartDeg(double a, double b) { return std::abs(std::remainder(a - b, 180.0)); }

Result<void> check(const WidthReading& r) {
    if (!std::isfinite(r.angleDeg) || !std::isfinite(r.widthMm) ||
        (r.standardUncertaintyMm && !std::isfinite(*r.standardUncertaintyMm)))
        return failure(ErrorCode::NonFinite, "Cannot use an echo width: its angle, width or uncertainty is no number.");
    if (r.widthMm <= 0.0)
        return failure(ErrorCode::InvalidArgument, "Cannot use the echo width at " + fixed(r.angleDeg, 0) +
                                                       " degrees: it is " + fixed(r.widthMm, 2) +
                                                       " mm; a width above 0 is needed.");
    if (r.standardUncertaintyMm && *r.standardUncertaintyMm < 0.0)
        return failure(ErrorCode::InvalidArgument, "Cannot use the echo width at " + fixed(r.angleDeg, 0) +
                                                       " degrees: its uncertainty is below 0.");
    return {};
}

/// Standard deviation within views, pooled; 0 without repeats.
double pooledSpread(std::span<const WidthReading> readings, const ViewWidths& w) {
    double squares = 0.0;
    for (std::size_t i = 0; i < readings.size(); ++i)
        squares += std::pow(readings[i].widthMm - w.views[w.viewOfReading[i]].widthMm, 2);
    const double freedom = static_cast<double>(readings.size() - w.views.size());
    return freedom > 0.0 ? std::sqrt(squares / freedom) : 0.0;
}

void group(std::span<const WidthReading> readings, ViewWidths& w) {
    for (const auto& r : readings) {
        const auto same = std::find_if(w.views.begin(), w.views.end(),
                                       [&](const ViewWidth& v) { return apartDeg(v.angleDeg, r.angleDeg) <= kSameViewDeg; });
        w.viewOfReading.push_back(static_cast<std::size_t>(same - w.views.begin()));
        if (same == w.views.end()) {
            w.views.push_back({probeAngleIn180(r.angleDeg), r.widthMm, 0.0, 1, std::nullopt, r.phase});
            continue;
        }
        ++same->readings;
        same->widthMm += (r.widthMm - same->widthMm) / static_cast<double>(same->readings);
        if (same->phase != r.phase) same->phase = BeatPhase::Unknown;
    }
}

void spreads(std::span<const WidthReading> readings, ViewWidths& w) {
    std::vector<double> squares(w.views.size()), variance(w.views.size());
    for (std::size_t i = 0; i < readings.size(); ++i) {
        const std::size_t v = w.viewOfReading[i];
        squares[v] += std::pow(readings[i].widthMm - w.views[v].widthMm, 2);
        const double u = readings[i].standardUncertaintyMm.value_or(kAssumedWidthUncertaintyMm);
        variance[v] += u * u / static_cast<double>(w.views[v].readings);
    }
    const double s2 = std::pow(pooledSpread(readings, w), 2);
    for (std::size_t v = 0; v < w.views.size(); ++v) {
        const double n = static_cast<double>(w.views[v].readings);
        if (n > 1.0) w.views[v].spreadMm = std::sqrt(squares[v] / (n - 1.0));
        w.views[v].standardUncertaintyMm =
            n > 1.0 ? std::sqrt(std::max(variance[v] - s2, 0.0) + s2 / n) : std::sqrt(variance[v]);
    }
}

void phaseNotices(std::span<const WidthReading> readings, ViewWidths& w) {
    bool unknown = false, differ = false;
    std::optional<BeatPhase> first;
    for (const auto& r : readings) {
        unknown |= r.phase == BeatPhase::Unknown;
        if (r.phase == BeatPhase::Unknown) continue;
        differ |= first && *first != r.phase;
        if (!first) first = r.phase;
    }
    if (differ)
        w.notices.push_back({"phases-differ",
                             "The widths were read in different phases of the beat; one ellipse through them mixes "
                             "two sizes. Read all views in the same phase, best at end-systole.",
                             {}});
    else if (unknown)
        w.notices.push_back({"phase-unknown",
                             "The phase of the beat is unknown for at least one width; the appendage is widest at "
                             "end-systole.",
                             {}});
}

} // namespace

std::string_view words(BeatPhase phase) {
    switch (phase) {
    case BeatPhase::EndSystole: return "end-systole";
    case BeatPhase::EndDiastole: return "end-diastole";
    case BeatPhase::Other: return "another phase";
    case BeatPhase::Unknown: break;
    }
    return "unknown phase";
}

double probeAngleIn180(double angleDeg) {
    const double rest = std::fmod(angleDeg, 180.0);
    const double in = rest < 0.0 ? rest + 180.0 : rest;
    return in >= 180.0 ? 0.0 : in;
}

Result<ViewWidths> averageViews(std::span<const WidthReading> readings) {
    if (readings.empty())
        return failure(ErrorCode::InvalidArgument, "Cannot measure on echo: no width was given.");
    ViewWidths w;
    w.uncertaintyStated = true;
    for (const auto& r : readings) {
        if (const auto ok = check(r); !ok) return tl::make_unexpected(ok.error());
        w.uncertaintyStated &= r.standardUncertaintyMm.has_value();
        if (r.widthMm < kLeastPlausibleMm || r.widthMm > kGreatestPlausibleMm)
            w.notices.push_back({"width-implausible",
                                 "A width of " + fixed(r.widthMm, 1) + " mm at " + fixed(r.angleDeg, 0) +
                                     " degrees is unusual for an appendage (4 to 60 mm): check unit and scale.",
                                 {}});
    }
    group(readings, w);
    spreads(readings, w);
    phaseNotices(readings, w);
    return w;
}

} // namespace gauge::core
