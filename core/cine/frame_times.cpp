#include "core/cine/frame_times.h"

#include <cstddef>

namespace gauge::core {

std::optional<double> FrameTimes::betweenMs(int a, int b) const {
    const auto count = static_cast<int>(startMs.size());
    if (a < 0 || b < 0 || a >= count || b >= count) return std::nullopt;
    return startMs[static_cast<std::size_t>(b)] - startMs[static_cast<std::size_t>(a)];
}

std::optional<double> FrameTimes::heartRatePerMinute() const {
    if (rWaveMs.size() < 2) return std::nullopt;
    const double intervalMs = (rWaveMs.back() - rWaveMs.front()) / static_cast<double>(rWaveMs.size() - 1);
    if (!(intervalMs > 0.0)) return std::nullopt;
    return 60000.0 / intervalMs;
}

std::string_view words(FrameTimeSource source) {
    switch (source) {
    case FrameTimeSource::None:
        return "not known";
    case FrameTimeSource::FrameTimeVector:
        return "frame time vector";
    case FrameTimeSource::FrameTime:
        return "frame time";
    case FrameTimeSource::Rate:
        return "frame rate";
    }
    return "not known";
}

} // namespace gauge::core
