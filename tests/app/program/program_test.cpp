// The program as a process: what happens before any window is made.
#include <QProcess>
#include <QProcessEnvironment>
#include <gtest/gtest.h>

namespace {

struct Outcome {
    int code = -1;
    QString out, err;
};

/// Runs the program where there is no display.
Outcome run(const QStringList& arguments) {
    QProcess process;
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    for (const char* name : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"})
        environment.remove(name);
    process.setProcessEnvironment(environment);
    process.start(GAUGE_PROGRAM, arguments);
    process.waitForFinished(30000);
    return {process.exitStatus() == QProcess::NormalExit ? process.exitCode() : -1,
            process.readAllStandardOutput(), process.readAllStandardError()};
}

} // namespace

TEST(Program, VerbsNeedNoDisplay) {
    const Outcome version = run({"--version"});
    EXPECT_EQ(version.code, 0);
    EXPECT_TRUE(version.out.startsWith("ostium-gauge "));
}

TEST(Program, SaysInsteadOfCrashingThatThereIsNoDisplay) {
    const Outcome outcome = run({});
    EXPECT_EQ(outcome.code, 2);
    EXPECT_TRUE(outcome.err.contains("cannot open the workstation: there is no display here"))
        << outcome.err.toStdString();
}

TEST(Program, RefusesAnUnknownOption) {
    const Outcome outcome = run({"--sharpen"});
    EXPECT_EQ(outcome.code, 2);
    EXPECT_TRUE(outcome.err.contains("there is no option --sharpen")) << outcome.err.toStdString();
}
