// Work for a picture that follows the hand: what runs is finished and delivered, and of what is wished meanwhile only the newest
// is done after it. With JobRunner alone a hand that is faster than the work would see nothing until it rests; here results
// arrive all the while, and work never piles up.
#pragma once

#include "app/jobs/job_runner.h"

#include <utility>

namespace gauge::app {

class FollowingJob {
public:
    template <class T> using Work = std::function<core::Result<T>(const core::WorkContext&)>;

    /// `prepare` is called when the work starts, on this thread, and copies what it needs; `done` runs on this thread.
    template <class T> void want(std::function<Work<T>()> prepare, std::function<void(core::Result<T>)> done) {
        auto begin = [this, prepare = std::move(prepare), done = std::move(done)] {
            m_runner.start<T>(prepare(), [this, done](core::Result<T> result) {
                done(std::move(result));
                if (!m_runner.isRunning())
                    if (const auto next = std::exchange(m_next, nullptr)) next();
            });
        };
        if (m_runner.isRunning()) {
            m_next = std::move(begin);
        } else {
            m_next = nullptr;
            begin();
        }
    }
    /// Drops what runs and what waits.
    void drop() {
        m_next = nullptr;
        m_runner.drop();
    }
    /// Something runs, or waits.
    bool isRunning() const { return m_runner.isRunning() || m_next; }
    /// For its signals: `finished` may be followed by the next work already.
    const JobRunner& runner() const { return m_runner; }

private:
    std::function<void()> m_next;
    JobRunner m_runner;
};

} // namespace gauge::app
