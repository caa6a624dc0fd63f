// The benchmarks of the window: apart from the others, because they need the application. No display is needed.
#include "app/window/theme.h"
#include "tests/bench/report.h"
#include "tests/bench/window_stage.h"

#include <QApplication>
#include <QStandardPaths>
#include <benchmark/benchmark.h>

int main(int argc, char** argv) {
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    QStandardPaths::setTestModeEnabled(true); // the person's settings stay untouched
    QApplication application(argc, argv);
    QApplication::setOrganizationName(QStringLiteral("ostium-gauge-bench"));
    gauge::app::applyTheme(application);
    benchmark::Initialize(&argc, argv);
    if (benchmark::ReportUnrecognizedArguments(argc, argv)) return 1;
    benchmark::RunSpecifiedBenchmarks();
    benchmark::Shutdown();
    gauge::bench::printFrames();
    gauge::bench::printReport();
    return 0;
}
