#include "core/cine/beat_position.h"

#include <algorithm>
#include <cmath>

namespace gauge::core {

std::optional<double> beatPosition(const FrameTimes& times, int frame) {
    const auto& r = times.rWaveMs;
    if (r.size() < 2 || frame < 0 || static_cast<std::size_t>(frame) >= times.startMs.size()) return std::nullopt;
    const double mean = (r.back() - r.front()) / static_cast<double>(r.size() - 1);
    if (!(mean > 0.0)) return std::nullopt;
    const double t = times.startMs[static_cast<std::size_t>(frame)];
    if (t < r.front()) return (t - r.front()) / mean;
    if (t >= r.back()) return static_cast<double>(r.size() - 1) + (t - r.back()) / mean;
    const auto next = std::upper_bound(r.begin(), r.end(), t);
    const double before = *std::prev(next);
    const auto whole = static_cast<double>(std::distance(r.begin(), next) - 1);
    return *next > before ? whole + (t - before) / (*next - before) : whole;
}

std::optional<int> frameAtBeatPosition(const FrameTimes& times, double position) {
    const auto first = beatPosition(times, 0);
    const auto last = beatPosition(times, static_cast<int>(times.startMs.size()) - 1);
    if (!first || !last || !std::isfinite(position)) return std::nullopt;
    // Whole beats bring it into the run; a run shorter than a beat has the nearest end.
    if (position > *last) position -= std::ceil(position - *last);
    if (position < *first) position += std::ceil(*first - position);
    int best = 0;
    double least = std::abs(*first - position);
    for (int frame = 1; frame < static_cast<int>(times.startMs.size()); ++frame) {
        const double distance = std::abs(*beatPosition(times, frame) - position);
        if (distance < least) {
            least = distance;
            best = frame;
        }
    }
    return best;
}

double shareOfBeat(double position) {
    return position - std::floor(position);
}

} // namespace gauge::core
