// Verbs run without any application or display; everything else opens the workstation.
#include "app/cli/command_line.h"
#include "app/window/screens_command.h"
#include "app/window/workstation.h"

#include <QStringList>
#include <iostream>

namespace {

using gauge::app::ExitCode;

/// Where a window cannot be shown, Qt would abort; we say what to do instead.
bool hasDisplay() {
#ifdef Q_OS_LINUX
    return qEnvironmentVariableIsSet("DISPLAY") || qEnvironmentVariableIsSet("WAYLAND_DISPLAY") ||
           qEnvironmentVariableIsSet("QT_QPA_PLATFORM");
#else
    return true;
#endif
}

int wrongUsage(const QString& finding) {
    std::cerr << "ostium-gauge: " << finding.toStdString() << '\n';
    return static_cast<int>(ExitCode::WrongUsage);
}

} // namespace

int main(int argc, char** argv) {
    QStringList arguments;
    for (int i = 1; i < argc; ++i)
        arguments << QString::fromLocal8Bit(argv[i]);
    if (gauge::app::isVerb(arguments))
        return static_cast<int>(gauge::app::runVerb(arguments, std::cout, std::cerr));
    if (!arguments.isEmpty() && arguments.front() == QLatin1String("screens"))
        return static_cast<int>(gauge::app::screensCommand(QString::fromLocal8Bit(argv[0]), arguments.mid(1), std::cout, std::cerr));
    for (const QString& argument : arguments)
        if (argument.startsWith(QStringLiteral("--")))
            return wrongUsage("there is no option " + argument +
                              ". `ostium-gauge --help` lists what there is.");
    if (!hasDisplay())
        return wrongUsage(
            "cannot open the workstation: there is no display here. `ostium-gauge measure FOLDER …` "
            "measures without one; `ostium-gauge --help` lists all verbs.");
    return gauge::app::runWorkstation(argc, argv);
}
