// Background work of one kind (loading, measuring): one at a time, the newest wins, the result comes back on
// the GUI thread. The work itself spreads over the cores through core/parallel.
#pragma once

#include "core/parallel/progress.h"
#include "core/result.h"

#include <QMetaObject>
#include <QObject>
#include <QTimer>
#include <atomic>
#include <cstdint>
#include <functional>
#include <list>
#include <memory>
#include <thread>

namespace gauge::app {

class JobRunner : public QObject {
    Q_OBJECT
public:
    explicit JobRunner(QObject* parent = nullptr);
    /// Asks running work to stop and waits for it (core and dicomio answer within 100 ms).
    ~JobRunner() override;

    /// When work begins: at once, or when what its start changes on screen has been painted, so that it takes no core from that.
    enum class Begin { Now, AfterPainting };

    /// Starts `work` on another thread. Work that was running is asked to stop and its result is dropped.
    /// `done` runs on this object's thread; after `cancel()` it is given ErrorCode::Cancelled.
    template <class T>
    void start(std::function<core::Result<T>(const core::WorkContext&)> work,
               std::function<void(core::Result<T>)> done, Begin begin = Begin::Now) {
        launch(
            [work = std::move(work)](const core::WorkContext& context) {
                return std::make_shared<core::Result<T>>(work(context));
            },
            [done = std::move(done)](const std::shared_ptr<void>& result) {
                done(std::move(*std::static_pointer_cast<core::Result<T>>(result)));
            },
            begin);
    }

    /// Asks the running work to stop; its `done` still runs.
    void cancel();
    /// Asks the running work to stop and drops its result.
    void drop();
    bool isRunning() const { return m_running; }

    /// Gives up a runner without waiting: its work ends by itself, unheard, for work that cannot look at its stop token (a
    /// connection that is being made). The runner goes when its work has ended, at the latest with the application.
    static void letEnd(std::unique_ptr<JobRunner> runner);

signals:
    void started();
    /// Finished share, 0 to 1.
    void progressed(double share);
    /// After `done`, or when the running work was dropped.
    void finished();

private:
    using Work = std::function<std::shared_ptr<void>(const core::WorkContext&)>;
    using Done = std::function<void(const std::shared_ptr<void>&)>;
    struct Run {
        std::atomic<bool> ended = false;
        std::jthread thread;
    };

    void launch(Work work, Done done, Begin begin);
    /// Begins the newest run, if that is still to come.
    void begin();
    void carryOut(std::uint64_t number, const Work& work, const Done& done, const std::stop_token& stop);
    void forgetEnded();

    std::list<std::unique_ptr<Run>> m_runs; ///< the last one is the newest
    std::function<void()> m_toBegin;        ///< the newest, until its work begins
    QTimer m_painted{this};
    std::uint64_t m_newest = 0;             ///< number of the newest run: results of others are dropped
    bool m_running = false;
};

} // namespace gauge::app
