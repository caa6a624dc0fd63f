#include "app/jobs/job_runner.h"

#include "tests/app/support/synthetic_session.h"

#include <QCoreApplication>
#include <QPointer>
#include <QThread>
#include <atomic>
#include <gtest/gtest.h>

using namespace gauge;
using app::JobRunner;
using fixture::waitUntil;

namespace {

/// Works until stopped.
core::Result<int> endless(const core::WorkContext& work) {
    while (!work.stopped())
        QThread::msleep(1);
    return core::failure(core::ErrorCode::Cancelled, "Stopped.");
}

} // namespace

TEST(JobRunner, HandsTheResultOverOnItsOwnThread) {
    JobRunner runner;
    int answer = 0;
    QThread* where = nullptr;
    QThread* worker = nullptr;
    runner.start<int>(
        [&worker](const core::WorkContext&) -> core::Result<int> {
            worker = QThread::currentThread();
            return 42;
        },
        [&](core::Result<int> result) {
            answer = result.value_or(-1);
            where = QThread::currentThread();
        });
    ASSERT_TRUE(waitUntil([&] { return answer != 0; }));
    EXPECT_EQ(answer, 42);
    EXPECT_EQ(where, QThread::currentThread());
    EXPECT_NE(worker, QThread::currentThread());
    EXPECT_FALSE(runner.isRunning());
}

TEST(JobRunner, TheNewestWins) {
    JobRunner runner;
    std::vector<int> answers;
    const auto note = [&](core::Result<int> result) { answers.push_back(result.value_or(-1)); };
    for (int number = 1; number <= 20; ++number)
        runner.start<int>(
            [number](const core::WorkContext& work) -> core::Result<int> {
                for (int i = 0; i < 20 && !work.stopped(); ++i)
                    QThread::msleep(1);
                return number;
            },
            note);
    ASSERT_TRUE(waitUntil([&] { return !runner.isRunning(); }));
    EXPECT_EQ(answers, std::vector<int>{20});
}

TEST(JobRunner, CancelGivesCancelled) {
    JobRunner runner;
    std::optional<core::ErrorCode> code;
    runner.start<int>(endless, [&](core::Result<int> result) { code = result.error().code; });
    runner.cancel();
    ASSERT_TRUE(waitUntil([&] { return code.has_value(); }));
    EXPECT_EQ(*code, core::ErrorCode::Cancelled);
}

TEST(JobRunner, StopsItsWorkWhenDestroyed) {
    bool called = false;
    {
        JobRunner runner;
        runner.start<int>(endless, [&](const core::Result<int>&) { called = true; });
    }
    QCoreApplication::processEvents();
    EXPECT_FALSE(called);
}

TEST(JobRunner, ReportsProgressUpToTheEnd) {
    JobRunner runner;
    double last = 0;
    bool done = false;
    QObject::connect(&runner, &JobRunner::progressed, [&](double share) {
        EXPECT_GE(share, last);
        last = share;
    });
    runner.start<int>(
        [](const core::WorkContext& work) -> core::Result<int> {
            for (int i = 1; i <= 1000; ++i)
                work.report(i / 1000.0);
            return 1;
        },
        [&](const core::Result<int>&) { done = true; });
    ASSERT_TRUE(waitUntil([&] { return done; }));
    EXPECT_EQ(last, 1.0);
}

TEST(JobRunner, LetsWorkEndThatDoesNotLookUpWithoutWaitingForIt) {
    constexpr int kWorkMs = 700; // long against the time in which the runner must be given up
    std::atomic<bool> ended = false;
    bool told = false;
    auto runner = std::make_unique<JobRunner>();
    const QPointer<JobRunner> left = runner.get();
    runner->start<int>(
        [&ended](const core::WorkContext&) -> core::Result<int> {
            QThread::msleep(kWorkMs);
            ended = true;
            return 1;
        },
        [&told](core::Result<int>) { told = true; });
    JobRunner::letEnd(std::move(runner));
    EXPECT_FALSE(ended) << "it was not waited for";
    ASSERT_TRUE(left);
    ASSERT_TRUE(waitUntil([&] { return !left; })) << "the runner goes when its work has ended";
    EXPECT_TRUE(ended);
    EXPECT_FALSE(told);
}

TEST(JobRunner, GoesAtOnceWhenNothingRuns) {
    auto runner = std::make_unique<JobRunner>();
    const QPointer<JobRunner> left = runner.get();
    JobRunner::letEnd(std::move(runner));
    EXPECT_FALSE(left);
}

namespace {

/// Starts work that notes its end.
void startAfterPainting(JobRunner& runner, std::vector<std::string>& done) {
    runner.start<int>(
        [](const core::WorkContext&) -> core::Result<int> { return 1; },
        [&done](core::Result<int> result) { done.push_back(result ? "result" : "error"); }, JobRunner::Begin::AfterPainting);
}

} // namespace

TEST(JobRunner, LetsWhatIsOnScreenBePaintedFirst) {
    JobRunner runner;
    std::atomic<bool> painted = false, early = false;
    int answer = 0;
    runner.start<int>(
        [&](const core::WorkContext&) -> core::Result<int> {
            early = !painted;
            return 42;
        },
        [&](core::Result<int> result) { answer = result.value_or(-1); }, JobRunner::Begin::AfterPainting);
    EXPECT_TRUE(runner.isRunning()) << "whoever asks is told of it at once";
    QThread::msleep(20);
    QMetaObject::invokeMethod(&runner, [&] { painted = true; }, Qt::QueuedConnection);
    ASSERT_TRUE(waitUntil([&] { return answer == 42; }));
    EXPECT_FALSE(early);
}

TEST(JobRunner, CancelledBeforeItBeganItStillTellsSo) {
    JobRunner runner;
    std::vector<core::ErrorCode> done;
    runner.start<int>(endless, [&](core::Result<int> result) { done.push_back(result.error().code); }, JobRunner::Begin::AfterPainting);
    runner.cancel();
    ASSERT_TRUE(waitUntil([&] { return !runner.isRunning(); }));
    EXPECT_EQ(done, std::vector<core::ErrorCode>{core::ErrorCode::Cancelled});
}

TEST(JobRunner, DroppedBeforeItBeganItNeverBegins) {
    JobRunner runner;
    std::vector<std::string> done;
    int finished = 0;
    QObject::connect(&runner, &JobRunner::finished, [&] { ++finished; });
    startAfterPainting(runner, done);
    runner.drop();
    EXPECT_FALSE(runner.isRunning());
    EXPECT_EQ(finished, 1);
    startAfterPainting(runner, done);
    startAfterPainting(runner, done); // the newest wins here too
    ASSERT_TRUE(waitUntil([&] { return !runner.isRunning(); }));
    EXPECT_EQ(done, std::vector<std::string>{"result"});
    EXPECT_EQ(finished, 3);
}
