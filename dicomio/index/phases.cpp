#include "dicomio/index/phases.h"

#include "core/number_text.h"

#include "dicomio/ct/stack_geometry.h"
#include "dicomio/index/beats.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <functional>
#include <map>

namespace gauge::dicomio {
namespace {

using Key = std::function<std::optional<double>(const SliceFacts&)>;

/// Indices of the slices by place: slices nearer to each other than kSamePlaceMm along the normal share one.
std::vector<std::vector<std::size_t>> places(const std::vector<SliceFacts>& slices) {
    const Eigen::Vector3d normal = slices.front().rowDirection.cross(slices.front().columnDirection);
    std::vector<std::pair<double, std::size_t>> along;
    for (std::size_t i = 0; i < slices.size(); ++i)
        along.emplace_back(normal.dot(slices[i].position), i);
    std::sort(along.begin(), along.end());
    std::vector<std::vector<std::size_t>> result;
    double last = 0.0;
    for (const auto& [place, index] : along) {
        if (result.empty() || place - last >= kSamePlaceMm) result.emplace_back();
        result.back().push_back(index);
        last = place;
    }
    return result;
}

std::size_t mostAtOnePlace(const std::vector<SliceFacts>& slices) {
    std::size_t most = 0;
    for (const auto& place : places(slices))
        most = std::max(most, place.size());
    return most;
}

std::optional<double> common(const std::vector<SliceFacts>& slices, const Key& key) {
    const auto first = key(slices.front());
    const bool same =
        std::all_of(slices.begin(), slices.end(), [&](const SliceFacts& s) { return key(s) == first; });
    return same ? first : std::nullopt;
}

std::optional<double> mean(const std::vector<SliceFacts>& slices, const Key& key) {
    double sum = 0.0;
    for (const SliceFacts& slice : slices) {
        const auto value = key(slice);
        if (!value) return std::nullopt;
        sum += *value;
    }
    return sum / static_cast<double>(slices.size());
}

std::optional<double> percentOf(const SliceFacts& s) {
    return s.phase.percent;
}
std::optional<double> triggerOf(const SliceFacts& s) {
    return s.phase.triggerMs;
}
std::optional<double> temporalOf(const SliceFacts& s) {
    return s.phase.temporal;
}

PhaseGroup finished(std::vector<SliceFacts> slices) {
    PhaseGroup group;
    group.percent = common(slices, percentOf);
    if (group.percent && !(*group.percent >= 0.0 && *group.percent <= 100.0)) group.percent.reset();
    group.triggerMs = mean(slices, triggerOf);
    group.beatMs = beatLength(slices);
    const auto temporal = common(slices, temporalOf);
    if (group.percent)
        group.label = core::general(*group.percent) + " %";
    else if (group.triggerMs)
        group.label = core::general(std::round(*group.triggerMs)) + " ms";
    else
        group.label = temporal ? "time " + core::general(*temporal) : "ungated";
    group.slices = std::move(slices);
    return group;
}

/// Groups by equal values of a key; nothing unless every slice has one and the groups are as many as the
/// slices at the fullest place, with no place twice in a group.
std::vector<PhaseGroup> byValue(const std::vector<SliceFacts>& slices, const Key& key, std::size_t phases) {
    std::map<double, std::vector<SliceFacts>> groups;
    for (const SliceFacts& slice : slices) {
        const auto value = key(slice);
        if (!value) return {};
        groups[*value].push_back(slice);
    }
    if (groups.size() != phases) return {};
    std::vector<PhaseGroup> result;
    for (auto& [value, members] : groups) {
        if (mostAtOnePlace(members) > 1) return {};
        result.push_back(finished(std::move(members)));
    }
    return result;
}

/// Groups by the rank of the trigger time at each place; nothing unless every place has as many different
/// times.
std::vector<PhaseGroup> byTriggerRank(const std::vector<SliceFacts>& slices, std::size_t phases) {
    if (!std::all_of(slices.begin(), slices.end(),
                     [](const SliceFacts& s) { return triggerOf(s).has_value(); }))
        return {};
    std::vector<std::vector<SliceFacts>> groups(phases);
    for (auto& place : places(slices)) {
        if (place.size() != phases) return {};
        std::sort(place.begin(), place.end(),
                  [&](std::size_t a, std::size_t b) { return triggerOf(slices[a]) < triggerOf(slices[b]); });
        for (std::size_t rank = 0; rank < phases; ++rank) {
            if (rank > 0 && triggerOf(slices[place[rank]]) == triggerOf(slices[place[rank - 1]])) return {};
            groups[rank].push_back(slices[place[rank]]);
        }
    }
    std::vector<PhaseGroup> result;
    for (auto& members : groups)
        result.push_back(finished(std::move(members)));
    return result;
}

/// Groups by the dimension indices that count moments.
std::vector<PhaseGroup> byDimension(const std::vector<SliceFacts>& slices, std::size_t phases) {
    std::map<std::vector<double>, double> rank;
    for (const SliceFacts& slice : slices) {
        if (slice.phase.dimension.empty()) return {};
        rank.try_emplace(slice.phase.dimension, 0.0);
    }
    double next = 1.0;
    for (auto& [indices, place] : rank)
        place = next++;
    auto groups = byValue(
        slices, [&](const SliceFacts& s) { return std::optional(rank.at(s.phase.dimension)); }, phases);
    for (PhaseGroup& group : groups)
        if (group.label == "ungated")
            group.label = "time " + core::general(rank.at(group.slices.front().phase.dimension));
    return groups;
}

std::vector<PhaseGroup> byDescription(const std::vector<SliceFacts>& slices, std::size_t phases) {
    std::map<std::string, double> rank;
    for (const SliceFacts& slice : slices)
        rank.try_emplace(slice.phase.description, static_cast<double>(rank.size()));
    return byValue(
        slices, [&](const SliceFacts& s) { return std::optional(rank.at(s.phase.description)); }, phases);
}

std::vector<PhaseGroup> split(const std::vector<SliceFacts>& slices, std::size_t phases) {
    for (const Key& key : {Key(percentOf), Key(triggerOf)})
        if (auto groups = byValue(slices, key, phases); !groups.empty()) return groups;
    if (auto groups = byTriggerRank(slices, phases); !groups.empty()) return groups;
    if (auto groups = byValue(slices, temporalOf, phases); !groups.empty()) return groups;
    if (auto groups = byDimension(slices, phases); !groups.empty()) return groups;
    return byDescription(slices, phases);
}

/// Last resort for a phase that knows neither percent nor time: what its description says.
void percentFromDescription(PhaseSplit& result) {
    for (PhaseGroup& group : result.phases) {
        const std::string& description = group.slices.front().phase.description;
        const auto percent = group.percent || group.triggerMs ? std::nullopt : percentInText(description);
        if (!percent) continue;
        group.percent = percent;
        group.label = core::general(*percent) + " %";
        result.notices.push_back({"phase-from-description",
                                  "The phase of " + group.label + " is taken from " +
                                      describe(tags::SeriesDescription) + " \"" + description +
                                      "\"; no other attribute tells it.",
                                  {}});
    }
}

/// The phases of one stack, in the order of time.
PhaseSplit splitStack(std::vector<SliceFacts> slices) {
    PhaseSplit result;
    const std::size_t phases = mostAtOnePlace(slices);
    if (phases > 1) result.phases = split(slices, phases);
    if (result.phases.empty()) result.phases.push_back(finished(std::move(slices)));
    percentFromDescription(result);
    const auto inTime = [](const PhaseGroup& g) {
        return std::pair(g.percent.value_or(-1.0), g.triggerMs.value_or(-1.0));
    };
    std::stable_sort(result.phases.begin(), result.phases.end(),
                     [&](const PhaseGroup& a, const PhaseGroup& b) { return inTime(a) < inTime(b); });
    return result;
}

} // namespace

std::optional<double> percentInText(const std::string& description) {
    std::optional<double> found;
    for (std::size_t sign = description.find('%'); sign != std::string::npos;
         sign = description.find('%', sign + 1)) {
        const auto isNumber = [](char c) { return (c >= '0' && c <= '9') || c == '.'; };
        std::size_t end = sign;
        while (end > 0 && description[end - 1] == ' ')
            --end;
        std::size_t begin = end;
        while (begin > 0 && end - begin < 8 && isNumber(description[begin - 1]))
            --begin;
        double value = 0.0;
        const auto [stop, error] =
            std::from_chars(description.data() + begin, description.data() + end, value);
        if (error != std::errc{} || stop != description.data() + end) continue;
        if (found) return std::nullopt;
        found = value;
    }
    return found && *found >= 0.0 && *found <= 100.0 ? found : std::nullopt;
}

PhaseSplit splitPhases(std::vector<SliceFacts> slices) {
    std::map<std::string, std::vector<SliceFacts>> stacks;
    for (SliceFacts& slice : slices)
        stacks[slice.stack].push_back(std::move(slice));
    PhaseSplit result;
    for (auto& [stack, members] : stacks) {
        PhaseSplit one = splitStack(std::move(members));
        for (PhaseGroup& group : one.phases) {
            if (stacks.size() > 1) {
                group.stack = stack;
                group.label = "stack " + (stack.empty() ? "without a name" : stack) +
                              (group.label == "ungated" ? "" : ", " + group.label);
            }
            result.phases.push_back(std::move(group));
        }
        result.notices.insert(result.notices.end(), one.notices.begin(), one.notices.end());
    }
    if (stacks.size() > 1)
        result.notices.push_back({"several-stacks",
                                  "The series holds " + std::to_string(stacks.size()) + " stacks (" +
                                      describe(tags::StackId) + "); each is a volume of its own.",
                                  {}});
    return result;
}

} // namespace gauge::dicomio
