#include "app/cli/command_line.h"
#include "app/cli/copied_case.h"
#include "app/document/answers.h"
#include "app/document/picture_drawings.h"
#include "app/document/picture_values.h"
#include "app/document/session.h"
#include "app/format/language.h"
#include "app/report/graphics_session.h"
#include "app/report/report_files.h"

#include <QCommandLineParser>
#include <QFile>
#include <QFileInfo>
#include <ostream>

namespace gauge::app {
namespace {

constexpr auto kUsage = "Usage: ostium-gauge report CASE FOLDER [--images FOLDER] [--paper a4|letter] [--language en|de|fr]\n"
                        "                           [--hide-names]";

constexpr auto kHelp = R"(
Writes the report of a case (a .case.json file) into FOLDER:
  report.pdf                 the printed report, with pictures, comparison, sizes, warnings, cautions
  report-sr.dcm              the measurements as a DICOM Structured Report (TID 1500)
  report-pdf.dcm             the printed report as Encapsulated PDF
  values.csv, report.json    every value with its uncertainty, source and method
  pictures/                  key images, as PNG and as Secondary Capture
  surface.stl, surface-stl.dcm
                             the surface of the blood, mm
The case itself is not changed. Its images are looked for where the case remembers them and beside it; without them
there are neither pictures nor DICOM objects, and the values are those of the case.

  --images FOLDER            where the images of the case are
  --paper a4|letter          paper of the printed report (otherwise as usual where you are)
  --language LANG            of the printed report: en (default), de or fr; DICOM objects and tables are in English
  --hide-names               no identity anywhere, and therefore no DICOM objects
  --help                     show this help

Exit: 0 written, 2 wrong usage, 3 the case or its images cannot be read, 5 output cannot be written.
)";

struct ReportArguments {
    QString caseFile, folder, images, language = QStringLiteral("en");
    ReportRequest request;
    bool help = false;
};

core::Result<ReportArguments> parse(const QStringList& arguments) {
    const auto wrong = [](const QString& finding) {
        return core::failure(core::ErrorCode::InvalidArgument, finding.toStdString());
    };
    QCommandLineParser parser;
    parser.setSingleDashWordOptionMode(QCommandLineParser::ParseAsLongOptions);
    const QCommandLineOption help(QStringList{"h", "help"}), images("images", {}, "FOLDER"), paper("paper", {}, "a4|letter"),
        language("language", {}, "en|de|fr"), hideNames("hide-names");
    parser.addOptions({help, images, paper, language, hideNames});
    if (!parser.parse(QStringList{"report"} + arguments)) return wrong(parser.errorText() + '.');
    ReportArguments a;
    a.help = parser.isSet(help);
    if (a.help) return a;
    const QStringList names = parser.positionalArguments();
    if (names.size() != 2 || names.contains(QString())) return wrong("a case file and a folder to write to are needed.");
    a.caseFile = names[0];
    a.folder = names[1];
    a.images = parser.value(images);
    a.request.namesHidden = parser.isSet(hideNames);
    a.request.paper = usualPaper();
    if (parser.isSet(language)) {
        a.language = parser.value(language).toLower();
        if (!languages().contains(a.language))
            return wrong("--language is en, de or fr; \"" + parser.value(language) + "\" is none of them.");
    }
    if (parser.isSet(paper)) {
        const QString word = parser.value(paper).toLower();
        if (word != "a4" && word != "letter") return wrong("--paper is a4 or letter; \"" + parser.value(paper) + "\" is neither.");
        a.request.paper = word == "a4" ? Paper::A4 : Paper::Letter;
    }
    return a;
}

ExitCode say(std::ostream& err, const std::string& text, ExitCode code) {
    err << "ostium-gauge report: " << text << '\n';
    return code;
}

ExitCode writeReport(const ReportArguments& a, std::ostream& out, std::ostream& err) {
    const QFileInfo original(a.caseFile);
    if (!original.isFile() || !original.isReadable())
        return say(err, "Cannot read the case " + a.caseFile.toStdString() + ": there is no such file, or it may not be read.",
                   ExitCode::InputUnreadable);
    const CopiedCase copy(original.absoluteFilePath());
    if (copy.path().isEmpty())
        return say(err, "Cannot copy the case into the folder for temporary files; make room there.", ExitCode::OutputUnwritable);
    Session session;
    EvidenceImages pictures(session);
    PictureDrawings drawings(session, pictures);
    Answers answers(session);
    ViewPlanner planner(session);
    if (!session.openCase(copy.path())) return say(err, session.message().text.toStdString(), ExitCode::InputUnreadable);
    waitForWork(session, &drawings, &planner);
    // The copy lies elsewhere: a folder that the case remembers relative to itself is looked for from the original.
    if (!a.images.isEmpty() || !session.images()) {
        session.findImagesIn(a.images.isEmpty() ? original.absolutePath() : a.images);
        waitForWork(session, &drawings, &planner);
    }
    if (!a.images.isEmpty() && !session.index())
        return say(err, session.message().text.toStdString(), ExitCode::InputUnreadable);
    if (session.failure()) err << session.failure()->message << '\n';
    session.pictureValues().refresh();
    session.septumRecorder().refresh();
    answers.finishNow();
    const auto files = writeReportFiles(answers, QFile::encodeName(a.folder).toStdString(), a.request);
    if (!files) return say(err, files.error().message, exitCodeFor(files.error().code));
    for (const core::Notice& notice : files->notices)
        err << notice.text << '\n';
    for (const auto& file : files->written)
        out << file.string() << '\n';
    return ExitCode::Ok;
}

} // namespace

ExitCode reportCommand(const QStringList& arguments, std::ostream& out, std::ostream& err) {
    const auto a = parse(arguments);
    if (!a) {
        err << "ostium-gauge report: " << a.error().message << '\n' << kUsage << '\n';
        return ExitCode::WrongUsage;
    }
    if (a->help) {
        out << kUsage << '\n' << kHelp;
        return ExitCode::Ok;
    }
    const GraphicsSession graphics;
    const ScreenLanguage language(a->language);
    return writeReport(*a, out, err);
}

} // namespace gauge::app
