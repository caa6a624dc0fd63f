#include "dicomio/index/beats.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <set>

namespace gauge::dicomio {
namespace {

using Value = std::function<std::optional<double>(const SliceFacts&)>;

struct Range {
    double low = 0.0;
    double high = 0.0;
    double middle() const { return (low + high) / 2.0; }
    double spread() const { return middle() > 0.0 ? (high - low) / middle() : 0.0; }
};

/// Of those slices that tell the value.
std::optional<Range> rangeOf(std::span<const SliceFacts> slices, const Value& value) {
    std::optional<Range> range;
    for (const SliceFacts& slice : slices) {
        const auto v = value(slice);
        if (!v) continue;
        if (!range) range = Range{*v, *v};
        range->low = std::min(range->low, *v);
        range->high = std::max(range->high, *v);
    }
    return range;
}

std::string whole(double value) {
    return std::to_string(std::lround(value));
}

std::string milliseconds(const Range& range) {
    return whole(range.low) + " to " + whole(range.high) + " ms";
}

const std::string kMeaning =
    " It is not one moment of the heart, as in atrial fibrillation; look for steps between slices.";

/// Where neither interval nor rate is told, percentage and delay give the beat together.
std::optional<double> impliedBeat(const SliceFacts& slice) {
    constexpr double kEarliestPercent = 10.0; // before, rounding of the delay weighs too much
    if (!slice.phase.percent || !slice.beats.delayMs || *slice.phase.percent < kEarliestPercent)
        return std::nullopt;
    return 100.0 * *slice.beats.delayMs / *slice.phase.percent;
}

std::optional<core::Notice> mixedBeats(std::span<const SliceFacts> slices, const std::string& label) {
    auto beats = rangeOf(slices, [](const SliceFacts& s) { return s.beats.beatMs; });
    const bool told = beats.has_value();
    if (!told) beats = rangeOf(slices, impliedBeat);
    if (beats && beats->spread() > kBeatSpread)
        return core::Notice{"mixed-beats",
                            "Phase " + label + " is made of heart beats of different length, R-R " +
                                milliseconds(*beats) +
                                (told ? "." : ", by percentage and delay after the R wave.") + kMeaning,
                            {}};
    const auto delays = rangeOf(slices, [](const SliceFacts& s) { return s.beats.delayMs; });
    if (delays && delays->high - delays->low > kDelaySpreadMs)
        return core::Notice{"mixed-beats",
                            "The slices of phase " + label +
                                " were taken at different delays after the R wave, " + milliseconds(*delays) +
                                "." + kMeaning,
                            {}};
    return std::nullopt;
}

std::optional<core::Notice> acceptedBeats(std::span<const SliceFacts> slices, const std::string& label) {
    const auto shortest = rangeOf(slices, [](const SliceFacts& s) { return s.beats.shortestMs; });
    const auto longest = rangeOf(slices, [](const SliceFacts& s) { return s.beats.longestMs; });
    if (!shortest || !longest) return std::nullopt;
    const Range accepted{shortest->low, longest->high};
    if (accepted.spread() <= kAcceptedSpread) return std::nullopt;
    return core::Notice{"mixed-beats-possible",
                        "For phase " + label + " beats of " + milliseconds(accepted) +
                            " were accepted: its slices may come from beats of different length.",
                        {}};
}

std::optional<core::Notice> acquisitions(std::span<const SliceFacts> slices, const std::string& label) {
    std::set<double> numbers;
    for (const SliceFacts& slice : slices)
        if (slice.beats.acquisitionNumber) numbers.insert(*slice.beats.acquisitionNumber);
    if (numbers.size() < 2) return std::nullopt;
    return core::Notice{"several-acquisitions",
                        "The slices of phase " + label + " come from " + std::to_string(numbers.size()) +
                            " passes of the scanner (" + describe(tags::AcquisitionNumber) +
                            "), each from other heart beats; look for steps between them.",
                        {}};
}

bool tellsTheHeart(const SliceFacts& slice) {
    return slice.phase.percent || slice.phase.triggerMs || slice.beats.delayMs || slice.beats.beatMs;
}

} // namespace

std::optional<double> beatLength(std::span<const SliceFacts> slices) {
    double sum = 0.0;
    for (const SliceFacts& slice : slices) {
        if (!slice.beats.beatMs) return std::nullopt;
        sum += *slice.beats.beatMs;
    }
    return slices.empty() ? std::nullopt : std::optional(sum / static_cast<double>(slices.size()));
}

std::vector<core::Notice> beatNotices(std::span<const SliceFacts> slices, const std::string& label) {
    std::vector<core::Notice> notices;
    if (std::none_of(slices.begin(), slices.end(), tellsTheHeart)) return notices;
    for (const auto find : {mixedBeats, acceptedBeats, acquisitions})
        if (auto notice = find(slices, label)) {
            notice->facts.push_back({"phase", label});
            notices.push_back(std::move(*notice));
        }
    return notices;
}

} // namespace gauge::dicomio
