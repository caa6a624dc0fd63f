#include "app/window/screen_tour.h"

#include "app/commands/decision_commands.h"
#include "app/models/demo_charts.h"
#include "app/window/help_pages.h"
#include "app/window/main_window.h"
#include "app/window/meeting_view.h"
#include "app/window/page_shelf.h"
#include "app/window/settings_dialog.h"

#include <QCoreApplication>
#include <QDialog>
#include <QDir>
#include <QElapsedTimer>
#include <QMetaEnum>
#include <QPixmap>
#include <algorithm>
#include <functional>
#include <map>

namespace gauge::app {
namespace {

constexpr int kLongestMs = 180'000, kSettleMs = 400;
constexpr QSize kWindow(1440, 900);

/// Lets the program work until nothing has run for a moment.
bool waitUntilQuiet(MainWindow& window, const std::function<bool()>& done) {
    QElapsedTimer whole, quiet;
    whole.start();
    quiet.start();
    while (whole.elapsed() < kLongestMs) {
        QCoreApplication::processEvents(QEventLoop::AllEvents, 50);
        Session& session = window.session();
        if (session.isLoading() || session.isMeasuring() || window.answers().isWorking() || !done()) quiet.restart();
        if (quiet.elapsed() > kSettleMs) return true;
    }
    return false;
}

QString nameOf(Page page) {
    static const std::map<Page, QString> names{
        {Page::Appendage, QStringLiteral("appendage")}, {Page::Scanner, QStringLiteral("scanner")},
        {Page::Echo, QStringLiteral("echo")},           {Page::SameCut, QStringLiteral("same-cut")},
        {Page::Fluoroscopy, QStringLiteral("fluoroscopy")}, {Page::Septum, QStringLiteral("septum")},
        {Page::Course, QStringLiteral("course")}};
    const auto found = names.find(page);
    return found == names.end() ? QStringLiteral("page") : found->second;
}

class Tour {
public:
    Tour(MainWindow& window, const QString& folder, double scale) : m_window(window), m_folder(folder), m_scale(scale) {}

    core::Result<void> run() {
        for (const PageShelf::Entry& entry : m_window.shelf().entries()) {
            m_window.state().setPage(entry.page);
            if (auto taken = takeWindow(nameOf(entry.page), nameOf(entry.page)); !taken) return taken;
        }
        m_window.state().setPage(Page::Appendage);
        m_window.state().showOstium();
        if (auto taken = takeWindow(QStringLiteral("appendage-ostium"), nameOf(Page::Appendage)); !taken) return taken;
        m_window.state().setNamesHidden(true);
        if (auto taken = takeWindow(QStringLiteral("appendage-without-names"), nameOf(Page::Appendage)); !taken) return taken;
        m_window.state().setNamesHidden(false);
        if (auto taken = runMeeting(); !taken) return taken;
        return runDialogs();
    }

    core::Result<void> takeWindow(const QString& name, const QString& page) {
        return take(m_window, name, page, QStringLiteral("reading"));
    }

    std::vector<Screen> screens;

private:
    core::Result<void> runMeeting() {
        m_window.state().setMode(ViewState::Mode::Meeting);
        m_window.showNormal(); // without a display there is no screen to fill
        m_window.resize(kWindow);
        for (int at = 0; at < m_window.meeting().slideCount(); ++at) {
            m_window.meeting().showSlide(at);
            const QString name = QStringLiteral("meeting-%1").arg(at + 1);
            if (auto taken = take(m_window, name, QStringLiteral("meeting"), QStringLiteral("meeting")); !taken) return taken;
        }
        m_window.state().setMode(ViewState::Mode::Reading);
        m_window.resize(kWindow);
        return {};
    }

    core::Result<void> runDialogs() {
        const std::pair<QString, std::function<void()>> dialogs[] = {
            {QStringLiteral("settings"), [this] { m_window.showSettings(); }},
            {QStringLiteral("help"), [this] { showHelp(&m_window, {}); }},
            {QStringLiteral("keys"), [this] { showKeys(&m_window); }},
            {QStringLiteral("cautions"), [this] { showCautions(&m_window); }},
            {QStringLiteral("about"), [this] { showAbout(&m_window); }},
        };
        for (const auto& [name, open] : dialogs) {
            open();
            QDialog* dialog = nullptr;
            for (QDialog* one : m_window.findChildren<QDialog*>())
                if (one->isVisible()) dialog = one;
            if (!dialog) continue;
            if (auto taken = take(*dialog, name, name, QStringLiteral("reading")); !taken) return taken;
            delete dialog;
        }
        return {};
    }

    core::Result<void> take(QWidget& widget, const QString& name, const QString& page, const QString& mode) {
        waitUntilQuiet(m_window, [] { return true; });
        const QString file = m_scale == 1.0 ? name + QStringLiteral(".png")
                                            : QStringLiteral("%1@%2x.png").arg(name).arg(m_scale);
        const QPixmap picture = widget.grab();
        const QString path = QDir(m_folder).filePath(file);
        if (!picture.save(path, "PNG"))
            return core::failure(core::ErrorCode::OutputUnwritable,
                                 "Cannot write the picture " + path.toStdString() +
                                     ": choose a folder that can be written to and has space.");
        screens.push_back({file, page, mode, picture.size()});
        return {};
    }

    MainWindow& m_window;
    QString m_folder;
    double m_scale;
};

/// Without a chart of its own the case gets an invented one, and the size that fits best.
void chooseSize(MainWindow& window) {
    CaseDocument& document = window.session().document();
    if (!document.record().sizing)
        if (const auto charts = demoCharts(); !charts.isEmpty())
            if (auto chart = readChartFile(charts.front().path))
                document.push(std::make_unique<LoadChart>(document, chart->text, chart->source.toStdString()));
    waitUntilQuiet(window, [] { return true; });
    const core::SizingAnswer* answer = window.answers().sizing();
    if (!answer || (document.record().sizing && !document.record().sizing->content.size.empty())) return;
    const auto best = std::max_element(answer->sizes.begin(), answer->sizes.end(),
                                       [](const auto& a, const auto& b) { return a.fitChance < b.fitChance; });
    if (best != answer->sizes.end()) document.push(std::make_unique<ChooseSize>(document, best->name));
    waitUntilQuiet(window, [] { return true; });
}

} // namespace

core::Result<std::vector<Screen>> takeScreens(const QString& caseFolder, const QString& folder, double scale) {
    MainWindow window;
    window.resize(kWindow);
    window.show();
    Tour tour(window, folder, scale);
    if (auto taken = tour.takeWindow(QStringLiteral("start"), QStringLiteral("start")); !taken)
        return tl::unexpected(taken.error());
    const QString images = QDir(caseFolder).filePath(QStringLiteral("dicom"));
    window.openFolder(QDir(images).exists() ? images : caseFolder);
    const bool quiet = waitUntilQuiet(window, [] { return true; });
    const std::string said = window.session().message().text.toStdString();
    if (!window.session().images())
        return core::failure(core::ErrorCode::FileUnreadable, "Cannot open the case in " + images.toStdString() + ": " + said);
    if (!quiet || !window.session().measurement())
        return core::failure(core::ErrorCode::SectionNotFound,
                             "The case in " + images.toStdString() + " was not measured within three minutes: " + said);
    chooseSize(window);
    if (auto toured = tour.run(); !toured) return tl::unexpected(toured.error());
    return tour.screens;
}

} // namespace gauge::app
