#include "app/jobs/job_runner.h"

#include <QCoreApplication>
#include <chrono>
#include <utility>
#ifdef Q_OS_LINUX
#include <sys/resource.h>
#include <unistd.h>
#endif

namespace gauge::app {
namespace {

/// Passes progress on at most every 40 ms, so that a fast loop does not flood the event queue.
class ProgressThrottle {
public:
    bool passes(double share) {
        const auto now = std::chrono::steady_clock::now();
        if (share < 1.0 && now - m_last < std::chrono::milliseconds(40)) return false;
        m_last = now;
        return true;
    }

private:
    std::chrono::steady_clock::time_point m_last{};
};

/// The thread that calls this gives way to the window's where there are fewer cores than work: a picture that follows the hand must
/// not wait for a measurement. Elsewhere the system decides.
void giveWayToTheWindow() {
#ifdef Q_OS_LINUX
    constexpr int kNicer = 10;
    setpriority(PRIO_PROCESS, static_cast<id_t>(gettid()), kNicer); // of this thread alone; were it refused, it would only be slower
#endif
}

} // namespace

JobRunner::JobRunner(QObject* parent) : QObject(parent) {
    m_painted.setSingleShot(true);
    connect(&m_painted, &QTimer::timeout, this, &JobRunner::begin);
}

JobRunner::~JobRunner() {
    for (const auto& run : m_runs)
        run->thread.request_stop();
    m_runs.clear(); // joins
}

void JobRunner::launch(Work work, Done done, Begin when) {
    drop();
    forgetEnded();
    m_runs.push_back(std::make_unique<Run>());
    m_running = true;
    m_toBegin = [this, run = m_runs.back().get(), number = ++m_newest, work = std::move(work), done = std::move(done)] {
        run->thread = std::jthread([this, run, number, work, done](const std::stop_token& stop) {
            giveWayToTheWindow();
            carryOut(number, work, done, stop);
            run->ended = true;
        });
    };
    if (when == Begin::Now)
        begin();
    else
        m_painted.start(0); // of no length: events that wait, painting among them, come first
    emit started();
}

void JobRunner::begin() {
    m_painted.stop();
    if (const auto toBegin = std::exchange(m_toBegin, nullptr)) toBegin();
}

/// On the run's own thread; all that it tells is told on this object's.
void JobRunner::carryOut(std::uint64_t number, const Work& work, const Done& done, const std::stop_token& stop) {
    const auto throttle = std::make_shared<ProgressThrottle>();
    const auto isNewest = [this, number] { return m_running && m_newest == number; };
    core::WorkContext context;
    context.stop = stop;
    context.progress = [this, isNewest, throttle](double share) {
        if (throttle->passes(share))
            QMetaObject::invokeMethod(
                this,
                [this, isNewest, share] {
                    if (isNewest()) emit progressed(share);
                },
                Qt::QueuedConnection);
    };
    const std::shared_ptr<void> result = work(context);
    QMetaObject::invokeMethod(
        this,
        [this, isNewest, result, done] {
            if (!isNewest()) return;
            m_running = false;
            done(result);
            emit finished();
        },
        Qt::QueuedConnection);
}

void JobRunner::cancel() {
    if (!m_running) return;
    begin(); // its `done` is to run
    m_runs.back()->thread.request_stop();
}

void JobRunner::drop() {
    if (!m_running) return;
    if (m_toBegin) {
        m_painted.stop();
        m_toBegin = nullptr;
        m_runs.pop_back();
    } else {
        m_runs.back()->thread.request_stop();
    }
    m_running = false;
    emit finished();
}

void JobRunner::letEnd(std::unique_ptr<JobRunner> runner) {
    constexpr int kLookAgainMs = 200;
    runner->drop();
    runner->forgetEnded();
    if (runner->m_runs.empty()) return;
    JobRunner* left = runner.release();
    left->disconnect();
    left->setParent(QCoreApplication::instance());
    auto* look = new QTimer(left);
    connect(look, &QTimer::timeout, left, [left] {
        left->forgetEnded();
        if (left->m_runs.empty()) left->deleteLater();
    });
    look->start(kLookAgainMs);
}

void JobRunner::forgetEnded() {
    m_runs.remove_if([](const auto& run) { return run->ended.load(); });
}

} // namespace gauge::app
