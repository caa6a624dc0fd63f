#include "app/window/screens_command.h"

#include "app/cli/command_line.h"
#include "app/window/language.h"
#include "app/window/screen_tour.h"
#include "app/window/theme.h"

#include <QApplication>
#include <QCommandLineParser>
#include <QDir>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QSettings>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <ostream>
#include <sstream>

namespace gauge::app {
namespace {

constexpr auto kUsage = "Usage: ostium-gauge screens FOLDER [--case CASE] [--language en|de|fr] [--theme dark|light]";

constexpr auto kHelp = R"(
Opens the teaching case without a display and writes a picture of every page and mode into FOLDER, each at 1x (NAME.png) and
2x (NAME@2x.png), and screens.json, which lists them with page, mode, theme, language and scale.

  --case CASE        folder of an earlier `ostium-gauge sample`; otherwise the case is made for the purpose, and removed
  --language LANG    en (default), de or fr
  --theme THEME      dark (default) or light
  --scale N          only this scale: 1, 1.5 or 2
  --help             show this help

Exit: 0 written, 2 wrong usage, 3 the case cannot be read, 4 the case cannot be measured, 5 a picture cannot be written.
)";

struct Wanted {
    QString folder, caseFolder, language = QStringLiteral("en"), theme = QStringLiteral("dark"), scale;
};

ExitCode failed(std::ostream& err, const QString& finding, ExitCode code) {
    err << "ostium-gauge screens: " << finding.toStdString() << '\n';
    if (code == ExitCode::WrongUsage) err << kUsage << '\n';
    return code;
}

QString listName(const QString& scale) {
    return QStringLiteral("screens-%1.json").arg(scale);
}

QJsonObject asJson(const Screen& screen, const Wanted& wanted) {
    return {{"file", screen.file},         {"page", screen.page},     {"mode", screen.mode},
            {"theme", wanted.theme},       {"language", wanted.language}, {"scale", wanted.scale.toDouble()},
            {"width", screen.size.width()}, {"height", screen.size.height()}};
}

bool writeList(const QString& path, const QJsonArray& screens) {
    QFile file(path);
    const QByteArray text = QJsonDocument(QJsonObject{{"screens", screens}}).toJson();
    return file.open(QIODevice::WriteOnly) && file.write(text) == text.size();
}

/// One scale, in this process: Qt takes the scale when the application is made.
ExitCode takeAtScale(const QString& program, const Wanted& wanted, std::ostream& err) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("QT_SCALE_FACTOR", wanted.scale.toLatin1());
    QStandardPaths::setTestModeEnabled(true); // the person's settings stay untouched
    QByteArray name = program.toLocal8Bit();
    char* arguments[] = {name.data(), nullptr};
    int count = 1;
    QApplication application(count, arguments);
    QApplication::setOrganizationName(QStringLiteral("ostium-gauge-screens"));
    QApplication::setApplicationName(QStringLiteral("Ostium Gauge"));
    QSettings().clear();
    useLanguage(application, wanted.language);
    applyTheme(application, themeFrom(wanted.theme));
    const auto screens = takeScreens(wanted.caseFolder, wanted.folder, wanted.scale.toDouble());
    if (!screens)
        return failed(err, QString::fromStdString(screens.error().message), exitCodeFor(screens.error().code));
    QJsonArray list;
    for (const Screen& screen : *screens)
        list.append(asJson(screen, wanted));
    const QString path = QDir(wanted.folder).filePath(listName(wanted.scale));
    if (!writeList(path, list))
        return failed(err, QStringLiteral("cannot write %1.").arg(path), ExitCode::OutputUnwritable);
    return ExitCode::Ok;
}

/// Both scales, each in a process of its own, and one list of all.
ExitCode takeAll(const QString& program, Wanted wanted, std::ostream& out, std::ostream& err) {
    QTemporaryDir made;
    if (wanted.caseFolder.isEmpty()) {
        std::ostringstream said;
        wanted.caseFolder = made.filePath(QStringLiteral("case"));
        if (!QDir().mkpath(wanted.caseFolder))
            return failed(err, QStringLiteral("cannot make %1 for the teaching case.").arg(wanted.caseFolder),
                          ExitCode::OutputUnwritable);
        if (const ExitCode code = sampleCommand({wanted.caseFolder}, said, err); code != ExitCode::Ok) return code;
    }
    QJsonArray all;
    for (const QString& scale : {QStringLiteral("1"), QStringLiteral("2")}) {
        QProcess child;
        child.setProcessChannelMode(QProcess::ForwardedChannels);
        child.start(program, {"screens", wanted.folder, "--case", wanted.caseFolder, "--language", wanted.language, "--theme",
                              wanted.theme, "--scale", scale});
        if (!child.waitForStarted() || !child.waitForFinished(-1))
            return failed(err, QStringLiteral("cannot run %1: %2.").arg(program, child.errorString()), ExitCode::InternalError);
        if (child.exitStatus() != QProcess::NormalExit) return ExitCode::InternalError;
        if (child.exitCode() != 0) return static_cast<ExitCode>(child.exitCode());
        QFile part(QDir(wanted.folder).filePath(listName(scale)));
        if (!part.open(QIODevice::ReadOnly)) return ExitCode::InternalError;
        for (const QJsonValue& screen : QJsonDocument::fromJson(part.readAll())["screens"].toArray())
            all.append(screen);
        part.close();
        part.remove();
    }
    const QString list = QDir(wanted.folder).filePath(QStringLiteral("screens.json"));
    if (!writeList(list, all)) return failed(err, QStringLiteral("cannot write %1.").arg(list), ExitCode::OutputUnwritable);
    out << all.size() << " pictures in " << wanted.folder.toStdString() << '\n';
    return ExitCode::Ok;
}

} // namespace

ExitCode screensCommand(const QString& program, const QStringList& arguments, std::ostream& out, std::ostream& err) {
    QCommandLineParser parser;
    parser.addOptions({{"case", "", "CASE"}, {"language", "", "LANG"}, {"theme", "", "THEME"}, {"scale", "", "N"}, {"help", ""}});
    if (!parser.parse(QStringList{"screens"} + arguments)) return failed(err, parser.errorText() + '.', ExitCode::WrongUsage);
    if (parser.isSet("help")) {
        out << kUsage << '\n' << kHelp;
        return ExitCode::Ok;
    }
    if (parser.positionalArguments().size() != 1)
        return failed(err, QStringLiteral("one folder to write into is needed."), ExitCode::WrongUsage);
    Wanted wanted;
    wanted.folder = QDir(parser.positionalArguments().front()).absolutePath();
    wanted.caseFolder = parser.value("case");
    if (parser.isSet("language")) wanted.language = parser.value("language");
    if (parser.isSet("theme")) wanted.theme = parser.value("theme");
    wanted.scale = parser.value("scale");
    if (!languages().contains(wanted.language))
        return failed(err, QStringLiteral("there is no language %1; there are en, de and fr.").arg(wanted.language),
                      ExitCode::WrongUsage);
    if (wanted.theme != QLatin1String("dark") && wanted.theme != QLatin1String("light"))
        return failed(err, QStringLiteral("there is no theme %1; there are dark and light.").arg(wanted.theme),
                      ExitCode::WrongUsage);
    if (!QStringList{"", "1", "1.5", "2"}.contains(wanted.scale))
        return failed(err, QStringLiteral("there is no scale %1; there are 1, 1.5 and 2.").arg(wanted.scale), ExitCode::WrongUsage);
    if (!QDir().mkpath(wanted.folder))
        return failed(err, QStringLiteral("cannot make the folder %1.").arg(wanted.folder), ExitCode::OutputUnwritable);
    if (!wanted.caseFolder.isEmpty() && !QDir(wanted.caseFolder).exists())
        return failed(err, QStringLiteral("there is no case in %1.").arg(wanted.caseFolder), ExitCode::InputUnreadable);
    if (!wanted.scale.isEmpty() && wanted.caseFolder.isEmpty())
        return failed(err, QStringLiteral("--scale needs --case."), ExitCode::WrongUsage);
    return wanted.scale.isEmpty() ? takeAll(program, wanted, out, err) : takeAtScale(program, wanted, err);
}

} // namespace gauge::app
