#include "app/jobs/job_runner.h"

#include <QCoreApplication>
#include <QTimer>
#include <chrono>

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

} // namespace

JobRunner::JobRunner(QObject* parent) : QObject(parent) {}

JobRunner::~JobRunner() {
    for (const auto& run : m_runs)
        run->thread.request_stop();
    m_runs.clear(); // joins
}

void JobRunner::launch(Work work, Done done) {
    drop();
    forgetEnded();
    m_runs.push_back(std::make_unique<Run>());
    Run* run = m_runs.back().get();
    const std::uint64_t number = ++m_newest;
    m_running = true;
    run->thread = std::jthread(
        [this, run, number, work = std::move(work), done = std::move(done)](const std::stop_token& stop) {
            const auto throttle = std::make_shared<ProgressThrottle>();
            const auto isNewest = [this, number] {
                return m_running && m_newest == number;
            }; // on this object's thread
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
            run->ended = true;
        });
    emit started();
}

void JobRunner::cancel() {
    if (m_running) m_runs.back()->thread.request_stop();
}

void JobRunner::drop() {
    if (!m_running) return;
    m_runs.back()->thread.request_stop();
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
