#include "app/window/screens_command.h"

#include "app/cli/command_line.h"
#include "app/format/language.h"
#include "app/window/screen_tour.h"

#include <QApplication>
#include <QCommandLineParser>
#include <QDir>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QSettings>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <ostream>
#include <sstream>

namespace gauge::app {
namespace {

constexpr auto kUsage = "Usage: ostium-gauge screens FOLDER [--case CASE] [--language en|de|fr] [--theme dark|light] [--help-pages]";

constexpr auto kHelp = R"(
Opens the teaching case without a display and writes a picture of every page, panel and mode into FOLDER, each at 1x (NAME.png)
and 2x (NAME@2x.png), the pages in the other theme too (light-NAME.png), and screens.json, which lists them with page, mode,
theme, language and scale.

  --case CASE        folder of an earlier `ostium-gauge sample`, or the case file in it; otherwise the case is made for the purpose, and removed
  --language LANG    en (default), de or fr
  --theme THEME      only this theme: dark or light
  --scale N          only this scale: 1 or 2
  --help-pages       instead: the small pictures of the help pages, as resources/help/pictures keeps them
  --help             show this help

Exit: 0 written, 2 wrong usage, 3 the case cannot be read, 4 the case cannot be measured, 5 a picture cannot be written.
)";

ExitCode failed(std::ostream& err, const QString& finding, ExitCode code) {
    err << "ostium-gauge screens: " << finding.toStdString() << '\n';
    if (code == ExitCode::WrongUsage) err << kUsage << '\n';
    return code;
}

bool writeList(const QString& path, const std::vector<Screen>& screens, const QString& language) {
    QJsonArray list;
    for (const Screen& screen : screens)
        list.append(QJsonObject{{"file", screen.file},   {"page", screen.page},         {"mode", screen.mode},
                                {"theme", screen.theme}, {"language", language},        {"scale", screen.scale},
                                {"width", screen.size.width()}, {"height", screen.size.height()}});
    QFile file(path);
    const QByteArray text = QJsonDocument(QJsonObject{{"screens", list}}).toJson();
    return file.open(QIODevice::WriteOnly) && file.write(text) == text.size();
}

ExitCode take(const QString& program, const Tour& tour, const QString& language, std::ostream& out, std::ostream& err) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("QT_SCALE_FACTOR", "1");
    QStandardPaths::setTestModeEnabled(true); // the person's settings stay untouched
    QByteArray name = program.toLocal8Bit();
    char* arguments[] = {name.data(), nullptr};
    int count = 1;
    QApplication application(count, arguments);
    QApplication::setOrganizationName(QStringLiteral("ostium-gauge-screens"));
    QApplication::setApplicationName(QStringLiteral("Ostium Gauge"));
    QSettings().clear();
    useLanguage(application, language);
    const auto screens = takeScreens(tour);
    if (!screens) return failed(err, QString::fromStdString(screens.error().message), exitCodeFor(screens.error().code));
    const QString list = QDir(tour.folder).filePath(QStringLiteral("screens.json"));
    if (!tour.forHelp && !writeList(list, *screens, language))
        return failed(err, QStringLiteral("cannot write %1.").arg(list), ExitCode::OutputUnwritable);
    out << screens->size() << " pictures in " << tour.folder.toStdString() << '\n';
    return ExitCode::Ok;
}

} // namespace

ExitCode screensCommand(const QString& program, const QStringList& arguments, std::ostream& out, std::ostream& err) {
    QCommandLineParser parser;
    parser.addOptions({{"case", "", "CASE"}, {"language", "", "LANG"}, {"theme", "", "THEME"}, {"scale", "", "N"}, {"help-pages", ""}, {"help", ""}});
    if (!parser.parse(QStringList{"screens"} + arguments)) return failed(err, parser.errorText() + '.', ExitCode::WrongUsage);
    if (parser.isSet("help")) {
        out << kUsage << '\n' << kHelp;
        return ExitCode::Ok;
    }
    if (parser.positionalArguments().size() != 1)
        return failed(err, QStringLiteral("one folder to write into is needed."), ExitCode::WrongUsage);
    Tour tour;
    tour.folder = QDir(parser.positionalArguments().front()).absolutePath();
    tour.caseFolder = parser.value("case");
    tour.forHelp = parser.isSet("help-pages");
    const QString language = parser.isSet("language") ? parser.value("language") : QStringLiteral("en");
    const QString theme = parser.value("theme"), scale = parser.value("scale");
    if (!languages().contains(language))
        return failed(err, QStringLiteral("there is no language %1; there are en, de and fr.").arg(language), ExitCode::WrongUsage);
    if (!theme.isEmpty() && !tour.themes.contains(theme))
        return failed(err, QStringLiteral("there is no theme %1; there are dark and light.").arg(theme), ExitCode::WrongUsage);
    if (!QStringList{"", "1", "2"}.contains(scale))
        return failed(err, QStringLiteral("there is no scale %1; there are 1 and 2.").arg(scale), ExitCode::WrongUsage);
    if (!theme.isEmpty()) tour.themes = {theme};
    if (!scale.isEmpty()) tour.scales = {scale.toDouble()};
    if (!QDir().mkpath(tour.folder))
        return failed(err, QStringLiteral("cannot make the folder %1.").arg(tour.folder), ExitCode::OutputUnwritable);
    if (const QFileInfo given(tour.caseFolder); given.isFile()) tour.caseFolder = given.absolutePath(); // the case file itself
    if (!tour.caseFolder.isEmpty() && !QDir(tour.caseFolder).exists())
        return failed(err, QStringLiteral("there is no case in %1.").arg(tour.caseFolder), ExitCode::InputUnreadable);
    QTemporaryDir made;
    if (tour.caseFolder.isEmpty()) {
        std::ostringstream said;
        tour.caseFolder = made.filePath(QStringLiteral("case"));
        if (!QDir().mkpath(tour.caseFolder))
            return failed(err, QStringLiteral("cannot make %1 for the teaching case.").arg(tour.caseFolder), ExitCode::OutputUnwritable);
        if (const ExitCode code = sampleCommand({tour.caseFolder}, said, err); code != ExitCode::Ok) return code;
    }
    return take(program, tour, language, out, err);
}

} // namespace gauge::app
