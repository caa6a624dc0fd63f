// From the start of the real program, its files in the page cache, to a window that has painted and answers. No display is needed.
#include "app/window/start_watch.h"
#include "tests/bench/report.h"

#include <QElapsedTimer>
#include <QProcess>
#include <QTemporaryDir>
#include <algorithm>
#include <benchmark/benchmark.h>
#include <vector>

namespace {

using namespace gauge;

constexpr int kStarts = 9;

/// The settings and the library of a person who starts it for the first time; nothing of this person's is touched.
QProcessEnvironment environmentIn(const QTemporaryDir& home) {
    auto environment = QProcessEnvironment::systemEnvironment();
    for (const char* name : {"HOME", "XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME", "XDG_STATE_HOME", "XDG_RUNTIME_DIR"})
        environment.insert(QString::fromLatin1(name), home.path());
    if (!environment.contains(QStringLiteral("QT_QPA_PLATFORM")))
        environment.insert(QStringLiteral("QT_QPA_PLATFORM"), QStringLiteral("offscreen"));
    environment.insert(QString::fromLatin1(app::kStartOnlyVariable), QStringLiteral("1"));
    return environment;
}

/// Seconds to the line that says so; below 0 when it does not come.
double secondsToUsable(const QProcessEnvironment& environment) {
    constexpr int kMostMs = 60'000;
    QProcess program;
    program.setProcessEnvironment(environment);
    QElapsedTimer clock;
    clock.start();
    program.start(QStringLiteral(GAUGE_PROGRAM), {});
    QByteArray said;
    while (!said.contains(app::kUsableLine) && clock.elapsed() < kMostMs && program.waitForReadyRead(kMostMs))
        said += program.readAllStandardOutput();
    const double seconds = 1e-9 * static_cast<double>(clock.nsecsElapsed());
    program.waitForFinished(kMostMs);
    return said.contains(app::kUsableLine) ? seconds : -1.0;
}

void startOfTheProgram(benchmark::State& state) {
    const QTemporaryDir home;
    const QProcessEnvironment environment = environmentIn(home);
    secondsToUsable(environment); // warms the page cache
    std::vector<double> seconds;
    for (auto _ : state) {
        seconds.push_back(secondsToUsable(environment));
        if (seconds.back() < 0.0) {
            state.SkipWithError("the program did not say that its window can be used");
            return;
        }
        state.SetIterationTime(seconds.back());
    }
    std::sort(seconds.begin(), seconds.end());
    bench::reportLine("start of the program to usable window (median of 9)", 1e3 * seconds[seconds.size() / 2], "ms", 1000.0);
}
BENCHMARK(startOfTheProgram)->UseManualTime()->Unit(benchmark::kMillisecond)->Iterations(kStarts);

} // namespace
