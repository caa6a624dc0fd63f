#include "app/cli/command_line.h"

#include <map>
#include <ostream>

namespace gauge::app {
namespace {

constexpr auto kHelp = R"(Ostium Gauge: sizing of left atrial appendage closure from CT, echo and fluoroscopy.

  ostium-gauge [FOLDER]                open the workstation, on the images in FOLDER
  ostium-gauge index FOLDER            list the series found in a folder
  ostium-gauge measure FOLDER …        measure the appendage between marked points
  ostium-gauge echo --widths …         the ellipse through widths read on echo
  ostium-gauge size …                  carry widths to one pressure and judge every size of a device chart
  ostium-gauge projection …            angles of the C-arm for a plane, and the working views of a case
  ostium-gauge report CASE FOLDER      write the report of a case: PDF, DICOM, tables, pictures
  ostium-gauge deidentify FOLDER TARGET  write images, and a case, without identity
  ostium-gauge screens FOLDER          pictures of every page and mode of the workstation, without a display
  ostium-gauge sample FOLDER           write the invented teaching case as DICOM

`ostium-gauge VERB --help` tells the options of a verb.

Exit: 0 result, 1 internal error, 2 wrong usage, 3 input cannot be read,
      4 measurement cannot be made, 5 output cannot be written.

Research and teaching software, not a medical device; not for sole use in clinical decisions.
)";

using Verb = ExitCode (*)(const QStringList&, std::ostream&, std::ostream&);

const std::map<QString, Verb>& verbs() {
    static const std::map<QString, Verb> all{
        {"deidentify", deidentifyCommand},
        {"echo", echoCommand},
        {"index", indexCommand},
        {"measure", measureCommand},
        {"projection", projectionCommand},
        {"report", reportCommand},
        {"sample", sampleCommand},
        {"size", sizeCommand},
    };
    return all;
}

} // namespace

bool isVerb(const QStringList& arguments) {
    static const QStringList words{"help", "--help", "-h", "--version"};
    return !arguments.isEmpty() && (verbs().contains(arguments.front()) || words.contains(arguments.front()));
}

ExitCode runVerb(const QStringList& arguments, std::ostream& out, std::ostream& err) {
    const QString& word = arguments.front();
    if (const auto verb = verbs().find(word); verb != verbs().end())
        return verb->second(arguments.mid(1), out, err);
    if (word == "--version") {
        out << "ostium-gauge " << GAUGE_VERSION << '\n';
        return ExitCode::Ok;
    }
    out << kHelp;
    return ExitCode::Ok;
}

} // namespace gauge::app
