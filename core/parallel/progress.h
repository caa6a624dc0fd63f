// How long work tells where it is and hears that it should stop.
#pragma once

#include <functional>
#include <stop_token>

namespace gauge::core {

/// Called with the finished share, 0 to 1, from any thread, never concurrently. May be empty.
using ProgressCallback = std::function<void(double)>;

/// What long work is given: where to report, and when to stop. A stop is answered within 100 ms with
/// `ErrorCode::Cancelled`.
struct WorkContext {
    std::stop_token stop;
    ProgressCallback progress;

    bool stopped() const { return stop.stop_requested(); }
    void report(double share) const {
        if (progress)
            progress(share);
    }
};

} // namespace gauge::core
