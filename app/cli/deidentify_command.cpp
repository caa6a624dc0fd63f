#include "app/cli/command_line.h"
#include "app/report/export_without_identity.h"

#include <QCommandLineParser>
#include <QFile>
#include <ostream>

namespace gauge::app {
namespace {

constexpr auto kUsage = "Usage: ostium-gauge deidentify FOLDER TARGET [--case FILE] [--key-file FILE] [options]";

constexpr auto kHelp = R"(
Writes the images of FOLDER without identity to TARGET/images, and a case that was measured on them to
TARGET/case.case.json (DICOM PS3.15 Annex E, basic profile). UIDs, patient number and dates are replaced alike in all
of them. Ultrasound is made black outside its calibrated regions; a picture whose text cannot be told from the image is
left out. Look at the pictures before you pass them on.

  --case FILE            a case file (.case.json) to go with the images
  --key-file FILE        a text of at least 16 characters, kept secret, from which the replacements follow, so that a
                         later export fits this one; without it each export has replacements of its own
  --remove-dates         leave dates and times out, instead of moving the dates
  --remove-characteristics
                         leave sex, age, size and weight out
  --keep-device          keep maker, model, software and serial number of the scanner
  --help                 show this help

Exit: 0 written, 2 wrong usage, 3 nothing could be exported, 5 output cannot be written.
)";

ExitCode wrongUsage(std::ostream& err, const QString& finding) {
    err << "ostium-gauge deidentify: " << finding.toStdString() << '\n' << kUsage << '\n';
    return ExitCode::WrongUsage;
}

ExitCode say(std::ostream& err, const core::Error& error) {
    err << "ostium-gauge deidentify: " << error.message << '\n';
    return exitCodeFor(error.code);
}

core::Result<std::string> contentOf(const QString& path, const char* what) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return core::failure(core::ErrorCode::FileUnreadable, std::string("Cannot read the ") + what + " " + path.toStdString() +
                                                                  ": " + file.errorString().toStdString() + ".");
    return file.readAll().toStdString();
}

core::Result<std::string> keyOf(const QString& path) {
    constexpr std::size_t kShortest = 16;
    auto key = contentOf(path, "key file");
    if (!key) return key;
    while (!key->empty() && (key->back() == '\n' || key->back() == '\r' || key->back() == ' '))
        key->pop_back();
    if (key->size() < kShortest)
        return core::failure(core::ErrorCode::InvalidArgument,
                             "The key file " + path.toStdString() + " holds " + std::to_string(key->size()) +
                                 " characters; a key that keeps its secret needs at least 16.");
    return key;
}

} // namespace

ExitCode deidentifyCommand(const QStringList& arguments, std::ostream& out, std::ostream& err) {
    QCommandLineParser parser;
    parser.setSingleDashWordOptionMode(QCommandLineParser::ParseAsLongOptions);
    const QCommandLineOption help(QStringList{"h", "help"}), caseFile("case", {}, "FILE"), keyFile("key-file", {}, "FILE"),
        removeDates("remove-dates"), removeCharacteristics("remove-characteristics"), keepDevice("keep-device");
    parser.addOptions({help, caseFile, keyFile, removeDates, removeCharacteristics, keepDevice});
    if (!parser.parse(QStringList{"deidentify"} + arguments)) return wrongUsage(err, parser.errorText() + '.');
    if (parser.isSet(help)) {
        out << kUsage << '\n' << kHelp;
        return ExitCode::Ok;
    }
    const QStringList folders = parser.positionalArguments();
    if (folders.size() != 2 || folders.contains(QString()))
        return wrongUsage(err, QStringLiteral("a folder of images and a folder to write to are needed."));

    ExportRequest request;
    request.images = QFile::encodeName(folders[0]).toStdString();
    request.target = QFile::encodeName(folders[1]).toStdString();
    request.options.keepModifiedDates = !parser.isSet(removeDates);
    request.options.keepPatientCharacteristics = !parser.isSet(removeCharacteristics);
    request.options.keepDeviceIdentity = parser.isSet(keepDevice);
    if (parser.isSet(keyFile)) {
        auto key = keyOf(parser.value(keyFile));
        if (!key) return say(err, key.error());
        request.key = std::move(*key);
    }
    if (parser.isSet(caseFile)) {
        const auto text = contentOf(parser.value(caseFile), "case");
        if (!text) return say(err, text.error());
        auto file = core::caseFromJson(*text);
        if (!file) return say(err, file.error());
        request.record = std::move(file->record);
    }
    const auto result = exportWithoutIdentity(request, {});
    if (!result) return say(err, result.error());
    for (const core::Notice& notice : result->images.refused)
        err << notice.text << '\n';
    for (const core::Notice& notice : result->notices)
        out << notice.text << '\n';
    out << "Wrote " << result->images.written.size() << " images to " << (request.target / "images").string();
    if (!result->images.refused.empty()) out << "; left out " << result->images.refused.size();
    out << '\n';
    if (!result->caseFile.empty()) out << "Wrote the case to " << result->caseFile.string() << '\n';
    out << "Look at the pictures before you pass them on: text within the image is not removed.\n";
    if (result->images.written.empty()) {
        err << "ostium-gauge deidentify: no image in " << request.images.string() << " could be exported.\n";
        return exitCodeFor(core::ErrorCode::NothingUsable);
    }
    return ExitCode::Ok;
}

} // namespace gauge::app
