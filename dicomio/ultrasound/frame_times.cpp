#include "dicomio/ultrasound/frame_times.h"

#include "core/number_text.h"

#include "dicomio/scan/tag.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <string>

namespace gauge::dicomio {
namespace {

using core::FrameTimes;
using core::FrameTimeSource;

/// CineRate is a whole number: half a frame a second of rounding, and as much again for how it is rounded.
constexpr double kRateRounding = 1.0;
/// Relative difference between two statements of one interval that is still called agreement.
constexpr double kSameInterval = 0.05;
/// Frames slower or faster than this are no moving picture of a heart, ms.
constexpr double kShortestFrameMs = 0.1;
constexpr double kLongestFrameMs = 10000.0;

class Reading {
public:
    Reading(const Dataset& dataset, int frames, std::vector<core::Notice>& notices)
        : m_dataset(dataset), m_frames(frames), m_notices(notices) {}

    FrameTimes times() {
        const auto vector = byVector();
        const auto interval = byFrameTime();
        FrameTimes out;
        if (vector && !(interval && pointsTo(tags::FrameTime))) {
            out = {FrameTimeSource::FrameTimeVector, *vector, {}};
        } else if (interval) {
            out = {FrameTimeSource::FrameTime, even(*interval), {}};
        } else if (const auto rate = byRate()) {
            out = {FrameTimeSource::Rate, even(1000.0 / *rate), {}};
            contradiction("frame-rate-only", "Frame times follow from a rate of " + core::fixed(*rate, 2) +
                                                 " frames a second alone, which may be that of showing.");
        }
        compare(out, vector, interval);
        return out;
    }

    std::vector<double> rWaves() {
        auto waves = numbers(tags::RWaveTimeVector);
        if (!std::is_sorted(waves.begin(), waves.end())) {
            contradiction("frame-times-contradictory",
                          describe(tags::RWaveTimeVector) + " does not rise; its times were sorted.");
            std::sort(waves.begin(), waves.end());
        }
        return waves;
    }

private:
    void contradiction(const char* code, std::string text) {
        m_notices.push_back({code, std::move(text), {}});
    }

    std::vector<double> numbers(Tag tag) {
        const auto values = m_dataset.numbers(tag);
        if (!values) {
            contradiction("frame-times-contradictory", values.error().message + " It is not used.");
            return {};
        }
        return values->value_or(std::vector<double>{});
    }

    bool pointsTo(Tag tag) const {
        const Attribute* pointer = m_dataset.find(tags::FrameIncrementPointer);
        if (!pointer || pointer->value.size() < 4) return false;
        const auto word = [&](std::size_t at) {
            return static_cast<std::uint16_t>(static_cast<unsigned char>(pointer->value[at]) |
                                              static_cast<unsigned char>(pointer->value[at + 1]) << 8);
        };
        return word(0) == tag.group && word(2) == tag.element;
    }

    std::vector<double> even(double intervalMs) const {
        std::vector<double> start(static_cast<std::size_t>(m_frames));
        for (std::size_t i = 0; i < start.size(); ++i)
            start[i] = static_cast<double>(i) * intervalMs;
        return start;
    }

    /// Times from the vector; its first value, by PS3.3 C.7.6.5.1.2, is the start and no interval.
    std::optional<std::vector<double>> byVector() {
        const auto steps = numbers(tags::FrameTimeVector);
        if (steps.empty()) {
            if (pointsTo(tags::FrameTimeVector))
                contradiction("frame-times-contradictory",
                              describe(tags::FrameIncrementPointer) + " points to " +
                                  describe(tags::FrameTimeVector) + ", which is absent or empty.");
            return std::nullopt;
        }
        if (steps.size() != static_cast<std::size_t>(m_frames)) {
            contradiction("frame-times-contradictory",
                          describe(tags::FrameTimeVector) + " has " + std::to_string(steps.size()) +
                              " values for " + std::to_string(m_frames) + " frames; it is not used.");
            return std::nullopt;
        }
        std::vector<double> start{0.0};
        for (std::size_t i = 1; i < steps.size(); ++i) {
            if (steps[i] < 0.0) {
                contradiction("frame-times-contradictory", describe(tags::FrameTimeVector) +
                                                               " goes back in time at frame " +
                                                               std::to_string(i + 1) + "; it is not used.");
                return std::nullopt;
            }
            start.push_back(start.back() + steps[i]);
        }
        const double mean = start.back() / (m_frames - 1.0);
        if (!(mean >= kShortestFrameMs && mean <= kLongestFrameMs)) {
            contradiction("frame-times-contradictory", describe(tags::FrameTimeVector) + " has frames " +
                                                           core::fixed(mean, 3) +
                                                           " ms apart on average; it is not used.");
            return std::nullopt;
        }
        return start;
    }

    std::optional<double> byFrameTime() {
        const auto value = numbers(tags::FrameTime);
        if (value.empty()) return std::nullopt;
        if (value.front() >= kShortestFrameMs && value.front() <= kLongestFrameMs) return value.front();
        contradiction("frame-times-contradictory",
                      describe(tags::FrameTime) + " is " + core::fixed(value.front(), 3) + " ms; it is not used.");
        return std::nullopt;
    }

    std::optional<double> byRate() {
        for (const Tag tag : {tags::CineRate, tags::RecommendedDisplayFrameRate}) {
            const auto value = numbers(tag);
            if (!value.empty() && value.front() >= 1000.0 / kLongestFrameMs &&
                value.front() <= 1000.0 / kShortestFrameMs)
                return value.front();
        }
        return std::nullopt;
    }

    void compare(const FrameTimes& used, const std::optional<std::vector<double>>& vector,
                 const std::optional<double>& interval) {
        if (!used.known()) return;
        const double stepMs = used.startMs.back() / (m_frames - 1.0);
        const std::string kept = " The " + std::string(core::words(used.source)) + " is used.";
        if (vector && interval) {
            const double vectorMs = vector->back() / (m_frames - 1.0);
            if (std::abs(vectorMs - *interval) > kSameInterval * *interval)
                contradiction("frame-times-contradictory", describe(tags::FrameTimeVector) + " has frames " +
                                                               core::fixed(vectorMs, 2) + " ms apart on average, " +
                                                               describe(tags::FrameTime) + " says " +
                                                               core::fixed(*interval, 2) + " ms." + kept);
        }
        const auto rate = numbers(tags::CineRate);
        if (used.source != FrameTimeSource::Rate && !rate.empty() && rate.front() > 0.0 &&
            std::abs(1000.0 / stepMs - rate.front()) > std::max(kRateRounding, kSameInterval * rate.front()))
            contradiction("frame-times-contradictory",
                          describe(tags::CineRate) + " says " + core::fixed(rate.front(), 1) +
                              " frames a second, the frames are " + core::fixed(stepMs, 2) +
                              " ms apart, which is " + core::fixed(1000.0 / stepMs, 1) + " a second." + kept);
        const auto seconds = numbers(tags::EffectiveDuration);
        const double runMs = used.startMs.back();
        if (!seconds.empty() && seconds.front() > 0.0 &&
            std::abs(1000.0 * seconds.front() - runMs - 0.5 * stepMs) > 1.5 * stepMs + kSameInterval * runMs)
            contradiction("frame-times-contradictory",
                          describe(tags::EffectiveDuration) + " says " + core::fixed(seconds.front(), 3) +
                              " s, the frames take " + core::fixed(runMs / 1000.0, 3) + " s." + kept);
    }

    const Dataset& m_dataset;
    int m_frames;
    std::vector<core::Notice>& m_notices;
};

} // namespace

core::FrameTimes readFrameTimes(const Dataset& dataset, int frames, std::vector<core::Notice>& notices) {
    if (frames < 2) return {};
    Reading reading(dataset, frames, notices);
    core::FrameTimes times = reading.times();
    times.rWaveMs = reading.rWaves();
    return times;
}

} // namespace gauge::dicomio
