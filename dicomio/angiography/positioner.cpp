#include "dicomio/angiography/positioner.h"

#include "core/number_text.h"

#include "dicomio/angiography/finding_list.h"
#include "dicomio/angiography/frame_scope.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace gauge::dicomio {
namespace {

using core::CArmAngles;

/// The number of `tag`; absent and unusable are nullopt, the latter with a finding.
std::optional<double> angle(const Dataset& dataset, Tag tag, double limit, FindingList& findings) {
    const auto value = dataset.number(tag);
    if (!value) {
        findings.add("positioner-angle-unusable", value.error().message + " The angle is not known.");
        return std::nullopt;
    }
    if (*value && std::abs(**value) > limit) {
        findings.add("positioner-angle-unusable", describe(tag) + " is " + core::general(**value) +
                                                      " degrees, outside -" + core::general(limit) + " to " +
                                                      core::general(limit) + ". The angle is not known.");
        return std::nullopt;
    }
    return *value;
}

std::optional<CArmAngles> both(const Dataset& first, Tag primary, const Dataset& second, Tag secondary,
                               FindingList& findings) {
    const auto a = angle(first, primary, 180.0, findings);
    const auto b = angle(second, secondary, 90.0, findings);
    if (a && b) return CArmAngles{*a, *b};
    if (a || b)
        findings.add("positioner-angle-unusable", describe(a ? primary : secondary) + " is told without " +
                                                      describe(a ? secondary : primary) +
                                                      ": the direction is not known.");
    return std::nullopt;
}

/// Steps from frame to frame along one axis: frames - 1 of them; nullopt when they cannot be known.
struct Steps {
    bool told = false; ///< the attribute has a value
    std::optional<std::vector<double>> deg;
};

/// Offsets from the first frame that grow evenly would read as steps of an arm that speeds up to the very
/// end.
bool mayBeOffsets(const std::vector<double>& increments) {
    constexpr std::size_t kFewest = 4;
    constexpr double kEven = 0.2; ///< relative scatter of a turning arm's steps
    if (increments.size() < kFewest || increments.front() != 0.0) return false;
    const double mean = increments.back() / static_cast<double>(increments.size() - 1);
    if (mean == 0.0) return false;
    for (std::size_t i = 1; i < increments.size(); ++i)
        if (std::abs(increments[i] - increments[i - 1] - mean) > kEven * std::abs(mean)) return false;
    return true;
}

Steps steps(const Dataset& dataset, Tag tag, int frames, FindingList& findings) {
    const std::string only = " Only the first frame's angles are known.";
    const auto count = static_cast<std::size_t>(frames);
    const auto read = dataset.numbers(tag);
    if (!read) {
        findings.add("positioner-increments-unusable", read.error().message + only);
        return {true, std::nullopt};
    }
    if (!*read) return {false, std::vector<double>(count - 1, 0.0)};
    const std::vector<double>& told = **read;
    if (told.size() == 1) return {true, std::vector<double>(count - 1, told.front())};
    if (told.size() != count) {
        findings.add("positioner-increments-unusable", describe(tag) + " has " + std::to_string(told.size()) +
                                                           " values for " + std::to_string(frames) +
                                                           " frames." + only);
        return {true, std::nullopt};
    }
    if (mayBeOffsets(told)) {
        findings.add("positioner-increments-unusable",
                     describe(tag) + " grows evenly to " + core::general(told.back()) +
                         " degrees: its values may be steps or offsets from the first frame." + only);
        return {true, std::nullopt};
    }
    return {true, std::vector<double>(told.begin() + 1, told.end())};
}

bool turns(const Steps& steps) {
    return !steps.deg || std::any_of(steps.deg->begin(), steps.deg->end(), [](double s) { return s != 0.0; });
}

/// First frame whose angles leave their range or whose step is too fast; `angles.size()` when none does.
std::size_t firstImpossible(const std::vector<CArmAngles>& angles, std::span<const double> startMs) {
    for (std::size_t i = 1; i < angles.size(); ++i) {
        if (!core::validate(angles[i])) return i;
        if (startMs.size() != angles.size()) continue;
        const double seconds = (startMs[i] - startMs[i - 1]) / 1000.0;
        const double turned = std::max(std::abs(angles[i].primaryDeg - angles[i - 1].primaryDeg),
                                       std::abs(angles[i].secondaryDeg - angles[i - 1].secondaryDeg));
        if (seconds > 0.0 && turned > kFastestTurnDegPerSecond * seconds) return i;
    }
    return angles.size();
}

/// Angles of a classic object: one position, and increments when the arm moves.
void classic(const Dataset& dataset, std::span<const double> startMs, std::vector<PositionerAngles>& out,
             FindingList& findings) {
    const auto first =
        both(dataset, tags::PositionerPrimaryAngle, dataset, tags::PositionerSecondaryAngle, findings);
    if (!first) return;
    out.front().patient = first;
    const int frames = static_cast<int>(out.size());
    if (frames == 1) return;
    const std::string motion = dataset.text(tags::PositionerMotion);
    const Steps primary = steps(dataset, tags::PositionerPrimaryAngleIncrement, frames, findings);
    const Steps secondary = steps(dataset, tags::PositionerSecondaryAngleIncrement, frames, findings);
    const bool told = primary.told || secondary.told;
    if (motion == "STATIC" && told && (turns(primary) || turns(secondary))) {
        findings.add("positioner-contradictory",
                     describe(tags::PositionerMotion) +
                         " is STATIC, yet increments say that the arm turned. Only the first frame's angles "
                         "are known.");
        return;
    }
    if (motion == "DYNAMIC" && !told) {
        findings.add("positioner-increments-unusable",
                     describe(tags::PositionerMotion) + " is DYNAMIC, but " +
                         describe(tags::PositionerPrimaryAngleIncrement) +
                         " is absent. Only the first frame's angles are known.");
        return;
    }
    if (!primary.deg || !secondary.deg) return;
    std::vector<CArmAngles> angles{*first};
    for (std::size_t i = 1; i < out.size(); ++i)
        angles.push_back({angles.back().primaryDeg + (*primary.deg)[i - 1],
                          angles.back().secondaryDeg + (*secondary.deg)[i - 1]});
    const std::size_t impossible = firstImpossible(angles, startMs);
    if (impossible < angles.size()) {
        findings.add(
            "positioner-increments-unusable",
            "The angles' increments lead to " + core::words(angles[impossible]) + " at frame " +
                std::to_string(impossible + 1) +
                ", out of range or faster than any arm turns. Only the first frame's angles are known.");
        return;
    }
    for (std::size_t i = 1; i < out.size(); ++i)
        out[i].patient = angles[i];
}

void enhanced(const Dataset& dataset, std::vector<PositionerAngles>& out, FindingList& findings) {
    for (std::size_t i = 0; i < out.size(); ++i) {
        const XrayScope scope(dataset, static_cast<int>(i));
        const auto of = [&](Tag group, Tag primary, Tag secondary) {
            return both(scope.holding(group, primary), primary, scope.holding(group, secondary), secondary,
                        findings);
        };
        out[i].patient = of(tags::PositionerPositionSequence, tags::PositionerPrimaryAngle,
                            tags::PositionerSecondaryAngle);
        out[i].isocentre = of(tags::IsocenterReferenceSystemSequence, tags::PositionerIsocenterPrimaryAngle,
                              tags::PositionerIsocenterSecondaryAngle);
    }
    const auto told = [&](auto member) {
        return std::any_of(out.begin(), out.end(),
                           [&](const PositionerAngles& a) { return (a.*member).has_value(); });
    };
    if (told(&PositionerAngles::isocentre) && !told(&PositionerAngles::patient))
        findings.add(
            "positioner-isocentre-only",
            "Angles are told about the table only; they are those about the patient only if the patient "
            "lies supine, head first and straight.");
}

} // namespace

std::vector<PositionerAngles> positionerAngles(const Dataset& dataset, int frames,
                                               std::span<const double> startMs,
                                               std::vector<core::Notice>& notices) {
    std::vector<PositionerAngles> out(static_cast<std::size_t>(frames));
    FindingList findings;
    const bool groups = dataset.has(tags::PerFrameFunctionalGroupsSequence) ||
                        dataset.has(tags::SharedFunctionalGroupsSequence);
    if (groups)
        enhanced(dataset, out, findings);
    else
        classic(dataset, startMs, out, findings);
    findings.moveTo(notices, groups);
    return out;
}

} // namespace gauge::dicomio
