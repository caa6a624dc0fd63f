#include "app/cli/command_line.h"
#include "app/cli/index_report.h"
#include "dicomio/index/series_index.h"

#include <QCommandLineParser>
#include <QFile>
#include <QSaveFile>
#include <ostream>
#include <string>

namespace gauge::app {
namespace {

constexpr auto kUsage = "Usage: ostium-gauge index FOLDER [--verify] [--json FILE]";

constexpr auto kHelp = R"(
Lists every DICOM series in a folder and below it, patient by patient in the order of time: its kind, phases,
spacing and tilt as proved from the positions of the images; of echo and fluoroscopy the scale, angles and frame
times; to which stage it seems to belong; and whether it can be used. Only headers are read.

  --verify       decode every image as well
  --json FILE    write the list as JSON (format ostium-gauge/index/1)
  --help         show this help

Exit: 0 something can be used, 2 wrong usage, 3 nothing can be used or read, 5 the JSON cannot be written.
)";

/// Writes all or nothing. Returns the reason for a failure.
QString writeFile(const QString& path, const std::string& content) {
    QSaveFile file(path);
    const bool written = file.open(QIODevice::WriteOnly) &&
                         file.write(content.data(), static_cast<qint64>(content.size())) ==
                             static_cast<qint64>(content.size()) &&
                         file.commit();
    return written ? QString() : file.errorString();
}

std::filesystem::path pathOf(const QString& text) {
    return {QFile::encodeName(text).toStdString()};
}

ExitCode wrongUsage(std::ostream& err, const QString& finding) {
    err << "ostium-gauge index: " << finding.toStdString() << '\n' << kUsage << '\n';
    return ExitCode::WrongUsage;
}

ExitCode listed(const dicomio::SeriesIndex& index, const QString& folder, const QString& json,
                std::ostream& out, std::ostream& err) {
    out << indexListing(index);
    if (!json.isEmpty()) {
        const QString reason = writeFile(json, indexJson(index));
        if (!reason.isEmpty()) {
            err << "ostium-gauge index: cannot write " << json.toStdString() << ": " << reason.toStdString()
                << '\n';
            return ExitCode::OutputUnwritable;
        }
    }
    const std::string why = whyUnusable(index, folder.toStdString());
    if (why.empty()) return ExitCode::Ok;
    err << "ostium-gauge index: " << why << '\n';
    return ExitCode::InputUnreadable;
}

} // namespace

ExitCode indexCommand(const QStringList& arguments, std::ostream& out, std::ostream& err) {
    QCommandLineParser parser;
    parser.setSingleDashWordOptionMode(QCommandLineParser::ParseAsLongOptions);
    const QCommandLineOption help(QStringList{"h", "help"}), verify("verify"), json("json", {}, "FILE");
    parser.addOptions({help, verify, json});
    if (!parser.parse(QStringList{"index"} + arguments)) // the parser takes the first for the program's name
        return wrongUsage(err, parser.errorText());
    if (parser.isSet(help)) {
        out << kUsage << '\n' << kHelp;
        return ExitCode::Ok;
    }
    const QStringList folders = parser.positionalArguments();
    if (folders.size() != 1 || folders.front().isEmpty())
        return wrongUsage(err, folders.isEmpty() ? QStringLiteral("a folder is needed.")
                                                 : QStringLiteral("exactly one folder is needed."));
    if (parser.isSet(json) && parser.value(json).isEmpty())
        return wrongUsage(err, QStringLiteral("--json needs the name of a file."));
    dicomio::IndexOptions options;
    options.verify = parser.isSet(verify);
    const auto index = dicomio::listFolder(pathOf(folders.front()), options);
    if (!index) {
        err << "ostium-gauge index: " << index.error().message << '\n';
        return exitCodeFor(index.error().code);
    }
    return listed(*index, folders.front(), parser.value(json), out, err);
}

} // namespace gauge::app
