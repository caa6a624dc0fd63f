#include "core/echo/difference_split.h"

#include <array>
#include <cassert>
#include <cmath>
#include <cstdio>

namespace gauge::core {
namespace {

std::string signedMm(double value) {
    char text[40];
    std::snprintf(text, sizeof text, "%+.1f", value);
    return text;
}

DifferenceShare shareOf(DifferencePart part, const std::optional<Estimate>& e) {
    return e ? DifferenceShare{part, true, e->value, e->standardUncertainty()} : DifferenceShare{part, false, 0.0, 0.0};
}

} // namespace

std::string_view words(DifferencePart part) {
    switch (part) {
    case DifferencePart::Plane: return "plane and few views";
    case DifferencePart::Phase: return "phase";
    case DifferencePart::Pressure: return "pressure";
    case DifferencePart::Modality: return "modality";
    case DifferencePart::Remainder: break;
    }
    return "not explained";
}

const DifferenceShare& DifferenceSplit::share(DifferencePart part) const {
    for (const auto& s : shares)
        if (s.part == part) return s;
    assert(false && "splitDifference fills every part");
    return shares.back();
}

Result<DifferenceSplit> splitDifference(const DifferenceKnowledge& k) {
    DifferenceSplit split;
    split.differenceMm = k.ct.value - k.echo.value;
    split.standardUncertaintyMm = std::hypot(k.ct.standardUncertainty(), k.echo.standardUncertainty());
    split.shares = {shareOf(DifferencePart::Plane, k.plane), shareOf(DifferencePart::Phase, k.phase),
                    shareOf(DifferencePart::Pressure, k.pressure), shareOf(DifferencePart::Modality, k.modality)};
    double rest = split.differenceMm, variance = std::pow(split.standardUncertaintyMm, 2);
    for (const auto& s : split.shares) {
        rest -= s.mm;
        variance += s.standardUncertaintyMm * s.standardUncertaintyMm;
        if (!s.known)
            split.notices.push_back({"difference-part-unknown",
                                     "Nothing is known of the part \"" + std::string(words(s.part)) +
                                         "\" of the difference between CT and echo; it stays in what is not explained.",
                                     {}});
    }
    if (!std::isfinite(rest) || !std::isfinite(variance))
        return failure(ErrorCode::NonFinite, "Cannot split the difference between CT and echo: a value is no number.");
    const double u = std::sqrt(variance);
    split.shares.push_back({DifferencePart::Remainder, true, rest, u});
    if (std::abs(rest) > 2.0 * u)
        split.notices.push_back({"difference-unexplained",
                                 "CT minus echo is " + signedMm(split.differenceMm) + " mm; " + signedMm(rest) +
                                     " mm of it is explained by none of plane, phase, pressure and modality. Look at both "
                                     "readings again.",
                                 {}});
    return split;
}

Estimate planePart(const Estimate& ct, const Estimate& asEcho) {
    Estimate e;
    e.value = ct.value - asEcho.value;
    e.components.plane = std::hypot(ct.components.plane, asEcho.standardUncertainty());
    e.method = "CT contour against the CT as echo would read it";
    return e;
}

} // namespace gauge::core
