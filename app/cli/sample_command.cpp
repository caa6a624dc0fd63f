#include "app/cli/command_line.h"
#include "app/document/sample_record.h"
#include "sample-data/case/sample_case.h"

#include <QCommandLineParser>
#include <QFile>
#include <algorithm>
#include <cmath>
#include <filesystem>
#include <iomanip>
#include <locale>
#include <ostream>
#include <sstream>

namespace gauge::app {
namespace {

constexpr auto kUsage = "Usage: ostium-gauge sample FOLDER";

constexpr auto kHelp = R"(
Writes the invented teaching case into a folder:
  FOLDER/dicom                       a gated cardiac CT of three phases; transoesophageal echo at four probe angles
                                     before and after a mitral repair, a Doppler still, a 3D echo; two fluoroscopy
                                     runs (about 200 MB together)
  FOLDER/answers.json                the exact answers: sections phase by phase, the places to mark, the widths that
                                     each view shows, the pressures
  FOLDER/sample.case.json            the case on these images, as the workstation keeps it: marks, widths drawn on echo
                                     and X-ray, pressures, a demonstration chart, looks at the implant, a draft
  FOLDER/observations-passing.json   readings under anaesthesia, the pressure low for a while
  FOLDER/observations-lasting.json   readings after the repair, the pressure low for good
A sample case that an earlier run left in the same folder is replaced; other files are never touched.

  --help         show this help

Exit: 0 written, 2 wrong usage, 5 the folder or a file in it cannot be written.
)";

/// The phase that is measured by default.
constexpr double kPreferredPercent = 45.0;

ExitCode wrongUsage(std::ostream& err, const QString& finding) {
    err << "ostium-gauge sample: " << finding.toStdString() << '\n' << kUsage << '\n';
    return ExitCode::WrongUsage;
}

/// For a POSIX shell; names without special characters stay as they are.
std::string inQuotes(const std::string& text) {
    constexpr auto kPlain = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789/._-+";
    if (!text.empty() && text.find_first_not_of(kPlain) == std::string::npos) return text;
    std::string result = "'";
    for (const char c : text) {
        if (c == '\'')
            result += "'\\''";
        else
            result += c;
    }
    return result + "'";
}

std::string coordinates(const core::PatientPoint& p) {
    std::ostringstream text;
    text.imbue(std::locale::classic());
    text << std::fixed << std::setprecision(2) << p.mm.x() << ',' << p.mm.y() << ',' << p.mm.z();
    return text.str();
}

const sample_case::SamplePhase& preferredPhase(const sample_case::SampleCase& sample) {
    const auto distance = [](const auto& phase) { return std::abs(phase.percent - kPreferredPercent); };
    return *std::min_element(sample.phases.begin(), sample.phases.end(),
                             [&](const auto& a, const auto& b) { return distance(a) < distance(b); });
}

void report(const sample_case::SampleCase& sample, const sample_case::SampleFiles& files,
            const std::filesystem::path& caseFile, std::ostream& out) {
    const sample_case::Marks& marks = preferredPhase(sample).marks;
    out << "Wrote " << files.images << " images in " << sample.phases.size() << " phases to "
        << files.dicomFolder.string();
    if (files.procedureSeries > 0)
        out << "\nWrote " << files.procedureSeries << " series of echo and fluoroscopy beside them";
    out << "\nWrote the exact answers to " << files.answersFile.string();
    for (const auto& file : files.observationFiles)
        out << "\nWrote observations to " << file.string();
    out << "\nWrote the case to " << caseFile.string();
    out << "\n\nThe patient is invented. To open the case:\n  ostium-gauge " << inQuotes(caseFile.string())
        << "\nTo measure without a window:\n  ostium-gauge measure "
        << inQuotes(files.dicomFolder.string()) << " --atrium " << coordinates(marks.atrium) << " --tip "
        << coordinates(marks.tip) << " --circumflex " << coordinates(marks.circumflex) << " --ridge "
        << coordinates(marks.ridge) << " --aorta " << coordinates(marks.aorta) << '\n';
}

} // namespace

ExitCode sampleCommand(const QStringList& arguments, std::ostream& out, std::ostream& err) {
    QCommandLineParser parser;
    parser.setSingleDashWordOptionMode(QCommandLineParser::ParseAsLongOptions);
    const QCommandLineOption help(QStringList{"h", "help"});
    parser.addOption(help);
    if (!parser.parse(QStringList{"sample"} + arguments)) // the parser takes the first for the program's name
        return wrongUsage(err, parser.errorText());
    if (parser.isSet(help)) {
        out << kUsage << '\n' << kHelp;
        return ExitCode::Ok;
    }
    const QStringList folders = parser.positionalArguments();
    if (folders.size() != 1 || folders.front().isEmpty())
        return wrongUsage(err, folders.isEmpty() ? QStringLiteral("a folder to write to is needed.")
                                                 : QStringLiteral("exactly one folder is needed."));
    const auto sample = sample_case::readSampleCase(sample_case::builtInDescription());
    if (!sample) { // the description comes with the program: a fault of ours
        err << "ostium-gauge sample: " << sample.error().message << '\n';
        return ExitCode::InternalError;
    }
    const std::filesystem::path folder = QFile::encodeName(folders.front()).toStdString();
    const auto files = sample_case::writeSampleCase(*sample, folder);
    if (!files) {
        err << "ostium-gauge sample: " << files.error().message << '\n';
        return exitCodeFor(files.error().code);
    }
    const auto caseFile = writeSampleRecord(*sample, folder);
    if (!caseFile) {
        err << "ostium-gauge sample: " << caseFile.error().message << '\n';
        return exitCodeFor(caseFile.error().code);
    }
    report(*sample, *files, *caseFile, out);
    return ExitCode::Ok;
}

} // namespace gauge::app
