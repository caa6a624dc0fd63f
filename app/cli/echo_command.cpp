#include "app/cli/command_line.h"
#include "app/cli/echo_arguments.h"
#include "app/cli/echo_report.h"

#include <QSaveFile>
#include <ostream>

namespace gauge::app {
namespace {

constexpr auto kHelp = R"(
Measures a section from widths read on echo at known rotations of the probe: the ellipse through them, every
section metric with its standard uncertainty, and for each view the width that would agree with the others.

  --widths ANGLE:MM,...     three or more views, angle in degrees; 0 and 180 are the same view, repeats are averaged
  --width-uncertainty MM    standard uncertainty of one width (otherwise 0.8 mm, an assumption)
  --json FILE               write the result as JSON (format ostium-gauge/echo/1)
  --help                    show this help

Noise makes a round neck look oval: ovality that cannot be told from noise is taken off; the plain ellipse is kept in
the JSON as "uncorrected".

Exit: 0 measured, 1 internal error, 2 wrong usage, 4 no ellipse can be drawn, 5 output cannot be written.
)";

bool writeJson(const QString& path, const std::string& content, std::ostream& err) {
    QSaveFile file(path);
    const auto size = static_cast<qint64>(content.size());
    if (file.open(QIODevice::WriteOnly) && file.write(content.data(), size) == size && file.commit()) return true;
    err << "ostium-gauge echo: cannot write " << path.toStdString() << ": " << file.errorString().toStdString() << '\n';
    return false;
}

} // namespace

ExitCode echoCommand(const QStringList& arguments, std::ostream& out, std::ostream& err) {
    const auto a = parseEchoArguments(arguments);
    if (!a) {
        err << "ostium-gauge echo: " << a.error().message << '\n' << echoUsage() << '\n';
        return ExitCode::WrongUsage;
    }
    if (a->help) {
        out << echoUsage() << '\n' << kHelp;
        return ExitCode::Ok;
    }
    const auto section = core::measureEchoSection(a->readings);
    if (!section) {
        err << "ostium-gauge echo: " << section.error().message << '\n';
        return exitCodeFor(section.error().code);
    }
    out << echoSummary(*section);
    if (!a->jsonFile.isEmpty() && !writeJson(a->jsonFile, echoJson(*section, a->typedAngles), err))
        return ExitCode::OutputUnwritable;
    return ExitCode::Ok;
}

} // namespace gauge::app
