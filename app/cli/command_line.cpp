#include "app/cli/command_line.h"

#include <ostream>

namespace gauge::app {
namespace {

constexpr auto kHelp = R"(Ostium Gauge: sizing of left atrial appendage closure from CT, echo and fluoroscopy.

  ostium-gauge [FOLDER]                open the workstation, on the images in FOLDER
  ostium-gauge index FOLDER            list the series found in a folder
  ostium-gauge measure FOLDER …        measure the appendage between marked points
  ostium-gauge echo --widths …         the ellipse through widths read on echo
  ostium-gauge sample FOLDER           write the invented teaching case as DICOM

`ostium-gauge VERB --help` tells the options of a verb.

Exit: 0 result, 1 internal error, 2 wrong usage, 3 input cannot be read,
      4 measurement cannot be made, 5 output cannot be written.

Research and teaching software, not a medical device; not for sole use in clinical decisions.
)";

} // namespace

bool isVerb(const QStringList& arguments) {
    static const QStringList words{"index", "measure", "echo", "sample", "help", "--help", "-h", "--version"};
    return !arguments.isEmpty() && words.contains(arguments.front());
}

ExitCode runVerb(const QStringList& arguments, std::ostream& out, std::ostream& err) {
    const QString verb = arguments.front();
    const QStringList rest = arguments.mid(1);
    if (verb == "index")
        return indexCommand(rest, out, err);
    if (verb == "measure")
        return measureCommand(rest, out, err);
    if (verb == "echo")
        return echoCommand(rest, out, err);
    if (verb == "sample")
        return sampleCommand(rest, out, err);
    if (verb == "--version") {
        out << "ostium-gauge " << GAUGE_VERSION << '\n';
        return ExitCode::Ok;
    }
    out << kHelp;
    return ExitCode::Ok;
}

} // namespace gauge::app
