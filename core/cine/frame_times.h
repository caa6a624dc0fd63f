// When each frame of a cine was taken, and how that is known. What the file does not tell stays unknown.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

namespace gauge::core {

/// Where the times come from, in falling order of trust.
enum class FrameTimeSource {
    None,            ///< nothing tells: frames have an order but no times
    FrameTimeVector, ///< one interval a frame
    FrameTime,       ///< one interval for all
    Rate,            ///< frames per second, of taking or of showing
};

struct FrameTimes {
    FrameTimeSource source = FrameTimeSource::None;
    /// Time of each frame from the first one, ms, never falling, the first 0. Empty when the source is None,
    /// as it is for a still.
    std::vector<double> startMs;
    /// R waves from the first frame, ms, ascending, as far as the file tells; may lie outside the run.
    std::vector<double> rWaveMs;

    bool known() const { return !startMs.empty(); }
    /// Milliseconds from frame `a` to frame `b` (negative when b comes first); nullopt when not known or out
    /// of range.
    std::optional<double> betweenMs(int a, int b) const;
    /// Heart rate from the mean R-R interval, beats a minute; nullopt with fewer than two R waves.
    std::optional<double> heartRatePerMinute() const;
};

/// In words fit for a report: "frame time vector", "frame time", "frame rate", "not known".
std::string_view words(FrameTimeSource source);

} // namespace gauge::core
