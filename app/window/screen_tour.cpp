#include "app/window/screen_tour.h"

#include "app/commands/decision_commands.h"
#include "app/models/demo_charts.h"
#include "app/panels/comparison_panel.h"
#include "app/panels/decision_tabs.h"
#include "app/panels/evidence_panel.h"
#include "app/panels/start_page.h"
#include "app/window/help_pages.h"
#include "app/window/main_window.h"
#include "app/window/meeting_view.h"
#include "app/window/page_shelf.h"
#include "app/window/settings_dialog.h"
#include "app/window/theme.h"

#include <QApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QTabWidget>
#include <QTemporaryDir>
#include <algorithm>
#include <functional>
#include <map>

namespace gauge::app {
namespace {

constexpr int kLongestMs = 180'000;
constexpr int kQuietMs = 150; // nothing has run for so long: pictures that a page asked for are there
constexpr QSize kWindow(1440, 900), kMeetingWindow(1600, 900), kHelpWindow(1180, 760);
constexpr int kHelpWidth = 600;
constexpr int kFastCompression = 80; // of Qt's PNG writer: the second level of zlib

/// Lets the program work until nothing has run for a moment.
bool settle(MainWindow& window) {
    QElapsedTimer whole, quiet;
    whole.start();
    quiet.start();
    while (whole.elapsed() < kLongestMs) {
        QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
        if (window.isWorking()) quiet.restart();
        if (quiet.elapsed() > kQuietMs) return true;
    }
    return false;
}

QString nameOf(Page page) {
    static const std::map<Page, QString> names{
        {Page::Appendage, QStringLiteral("appendage")}, {Page::Scanner, QStringLiteral("scanner")},
        {Page::Echo, QStringLiteral("echo")},           {Page::SameCut, QStringLiteral("same-cut")},
        {Page::Fluoroscopy, QStringLiteral("fluoroscopy")}, {Page::Septum, QStringLiteral("septum")},
        {Page::Projection, QStringLiteral("projection")}, {Page::Course, QStringLiteral("course")}};
    const auto found = names.find(page);
    return found == names.end() ? QStringLiteral("page") : found->second;
}

/// Without a chart of its own the case gets an invented one, and the size that fits best.
void chooseSize(MainWindow& window) {
    CaseDocument& document = window.session().document();
    if (!document.record().sizing)
        if (const auto charts = demoCharts(); !charts.isEmpty())
            if (auto chart = readChartFile(charts.front().path))
                document.push(std::make_unique<LoadChart>(document, chart->text, chart->source.toStdString()));
    settle(window);
    const core::SizingAnswer* answer = window.answers().sizing();
    if (!answer || (document.record().sizing && !document.record().sizing->content.size.empty())) return;
    const auto best = std::max_element(answer->sizes.begin(), answer->sizes.end(),
                                       [](const auto& a, const auto& b) { return a.fitChance < b.fitChance; });
    if (best != answer->sizes.end()) document.push(std::make_unique<ChooseSize>(document, best->name));
    settle(window);
}

class Pictures {
public:
    Pictures(MainWindow& window, const Tour& tour) : m_window(window), m_tour(tour) {}

    core::Result<void> empty();
    core::Result<void> open();
    core::Result<void> whole();
    core::Result<void> pages();
    core::Result<void> help();
    void useTheme(const QString& theme) {
        m_theme = theme;
        applyTheme(*qApp, themeFrom(theme));
    }
    std::vector<Screen> screens;

private:
    core::Result<void> panels();
    core::Result<void> meeting();
    core::Result<void> dialogs();
    core::Result<void> tabs(QTabWidget& tabs, QWidget& shown, const QString& name, const QString& page);
    core::Result<void> window(const QString& name, const QString& page) {
        settle(m_window);
        return take(m_window, name, page);
    }
    core::Result<void> take(QWidget& widget, const QString& name, const QString& page, const QString& mode = QStringLiteral("reading"));
    core::Result<void> takeForHelp(QWidget& widget, const QString& topic);
    core::Result<void> save(const QImage& picture, const QString& file, int quality);

    MainWindow& m_window;
    const Tour& m_tour;
    QString m_theme = QStringLiteral("dark");
};

core::Result<void> Pictures::save(const QImage& picture, const QString& file, int quality) {
    const QString path = QDir(m_tour.folder).filePath(file);
    if (picture.save(path, "PNG", quality)) return {};
    return core::failure(core::ErrorCode::OutputUnwritable, "Cannot write the picture " + path.toStdString() +
                                                                ": choose a folder that can be written to and has space.");
}

core::Result<void> Pictures::take(QWidget& widget, const QString& name, const QString& page, const QString& mode) {
    for (const double scale : m_tour.scales) {
        const QString stem = m_theme == m_tour.themes.front() ? name : QStringLiteral("%1-%2").arg(m_theme, name);
        const QString file = scale == 1.0 ? stem + QStringLiteral(".png") : QStringLiteral("%1@%2x.png").arg(stem).arg(scale);
        const QImage picture = pictureOf(widget, scale);
        if (auto saved = save(picture, file, kFastCompression); !saved) return saved;
        screens.push_back({file, page, mode, m_theme, scale, picture.size()});
    }
    return {};
}

/// What there is before any case, and what goes wrong then.
core::Result<void> Pictures::empty() {
    if (auto taken = window(QStringLiteral("start"), QStringLiteral("start")); !taken) return taken;
    m_window.start().showRecent({QDir(m_tour.caseFolder).filePath(QStringLiteral("sample.case.json")),
                                 QDir(m_tour.caseFolder).filePath(QStringLiteral("earlier.case.json"))}, {});
    if (auto taken = window(QStringLiteral("start-recent"), QStringLiteral("start")); !taken) return taken;
    const QTemporaryDir nothing;
    m_window.openFolder(nothing.path());
    if (auto taken = window(QStringLiteral("error-no-images"), QStringLiteral("start")); !taken) return taken;
    m_window.beginWithoutImages();
    for (const PageShelf::Entry& entry : m_window.shelf().entries()) {
        m_window.state().setPage(entry.page);
        if (auto taken = window(QStringLiteral("empty-") + nameOf(entry.page), nameOf(entry.page)); !taken) return taken;
    }
    return {};
}

core::Result<void> Pictures::open() {
    const QDir folder(m_tour.caseFolder);
    const QString file = folder.filePath(QStringLiteral("sample.case.json")), images = folder.filePath(QStringLiteral("dicom"));
    if (QFileInfo::exists(file))
        m_window.openCase(file);
    else
        m_window.openFolder(QDir(images).exists() ? images : m_tour.caseFolder);
    const bool quiet = settle(m_window);
    const std::string said = m_window.session().message().text.toStdString();
    if (!m_window.session().images())
        return core::failure(core::ErrorCode::FileUnreadable, "Cannot open the case in " + m_tour.caseFolder.toStdString() + ": " + said);
    if (!quiet || !m_window.session().measurement())
        return core::failure(core::ErrorCode::SectionNotFound,
                             "The case in " + m_tour.caseFolder.toStdString() + " was not measured within three minutes: " + said);
    chooseSize(m_window);
    return {};
}

core::Result<void> Pictures::pages() {
    for (const PageShelf::Entry& entry : m_window.shelf().entries()) {
        m_window.state().setPage(entry.page);
        if (auto taken = window(nameOf(entry.page), nameOf(entry.page)); !taken) return taken;
    }
    return {};
}

core::Result<void> Pictures::whole() {
    if (auto taken = pages(); !taken) return taken;
    if (const PageShelf::Entry* course = m_window.shelf().entry(Page::Course)) {
        m_window.state().setPage(Page::Course);
        for (auto* tabWidget : course->widget->findChildren<QTabWidget*>())
            if (auto taken = tabs(*tabWidget, m_window, QStringLiteral("course"), nameOf(Page::Course)); !taken) return taken;
    }
    m_window.state().setPage(Page::Appendage);
    m_window.state().showOstium();
    if (auto taken = window(QStringLiteral("appendage-ostium"), nameOf(Page::Appendage)); !taken) return taken;
    m_window.state().arm(core::MarkKind::Ridge);
    m_window.state().setPage(Page::Scanner);
    if (auto taken = window(QStringLiteral("scanner-marking"), nameOf(Page::Scanner)); !taken) return taken;
    m_window.state().arm(std::nullopt);
    m_window.state().setPage(Page::Appendage);
    m_window.state().setNamesHidden(true);
    if (auto taken = window(QStringLiteral("appendage-without-names"), nameOf(Page::Appendage)); !taken) return taken;
    m_window.state().setNamesHidden(false);
    if (auto taken = panels(); !taken) return taken;
    if (auto taken = meeting(); !taken) return taken;
    return dialogs();
}

/// Each tab of a tab widget, as it shows in `shown`.
core::Result<void> Pictures::tabs(QTabWidget& tabWidget, QWidget& shown, const QString& name, const QString& page) {
    const int before = tabWidget.currentIndex();
    for (int at = 0; at < tabWidget.count(); ++at) {
        tabWidget.setCurrentIndex(at);
        settle(m_window);
        if (auto taken = take(shown, QStringLiteral("%1-%2").arg(name).arg(at + 1), page); !taken) return taken;
    }
    tabWidget.setCurrentIndex(before);
    return {};
}

core::Result<void> Pictures::panels() {
    auto* evidence = m_window.findChild<EvidencePanel*>();
    auto* comparison = m_window.findChild<ComparisonPanel*>();
    auto* decision = m_window.findChild<DecisionTabs*>();
    if (auto taken = take(*evidence, QStringLiteral("panel-evidence"), QStringLiteral("panel")); !taken) return taken;
    if (auto taken = take(*comparison, QStringLiteral("panel-comparison"), QStringLiteral("panel")); !taken) return taken;
    return tabs(*decision, *decision, QStringLiteral("panel-decision"), QStringLiteral("panel"));
}

core::Result<void> Pictures::meeting() {
    m_window.state().setMode(ViewState::Mode::Meeting);
    m_window.showNormal(); // without a display there is no screen to fill
    m_window.resize(kMeetingWindow);
    for (int at = 0; at < m_window.meeting().slideCount(); ++at) {
        m_window.meeting().showSlide(at);
        settle(m_window);
        const QString name = QStringLiteral("meeting-%1").arg(at + 1);
        if (auto taken = take(m_window, name, QStringLiteral("meeting"), QStringLiteral("meeting")); !taken) return taken;
    }
    m_window.state().setMode(ViewState::Mode::Reading);
    m_window.resize(kWindow);
    return {};
}

core::Result<void> Pictures::dialogs() {
    const std::pair<QString, std::function<void()>> all[] = {
        {QStringLiteral("settings"), [this] { m_window.showSettings(); }},
        {QStringLiteral("help"), [this] { showHelp(&m_window, QStringLiteral("appendage")); }},
        {QStringLiteral("keys"), [this] { showKeys(&m_window); }},
        {QStringLiteral("cautions"), [this] { showCautions(&m_window); }},
        {QStringLiteral("about"), [this] { showAbout(&m_window); }},
    };
    for (const auto& [name, show] : all) {
        show();
        QDialog* dialog = nullptr;
        for (QDialog* one : m_window.findChildren<QDialog*>())
            if (one->isVisible()) dialog = one;
        if (!dialog) continue;
        QCoreApplication::processEvents();
        auto* parts = dialog->findChild<QTabWidget*>();
        auto taken = parts ? tabs(*parts, *dialog, name, name) : take(*dialog, name, name);
        delete dialog;
        if (!taken) return taken;
    }
    return {};
}

/// Small: they are kept with the sources.
core::Result<void> Pictures::takeForHelp(QWidget& widget, const QString& topic) {
    settle(m_window);
    QImage picture = pictureOf(widget, 1.0);
    if (picture.width() > kHelpWidth) picture = picture.scaledToWidth(kHelpWidth, Qt::SmoothTransformation);
    picture.setDevicePixelRatio(1.0);
    const QString file = topic + QStringLiteral(".png");
    screens.push_back({file, topic, QStringLiteral("help"), m_theme, 1.0, picture.size()});
    return save(picture, file, 0);
}

core::Result<void> Pictures::help() {
    m_window.resize(kHelpWindow);
    if (auto taken = takeForHelp(m_window.start(), QStringLiteral("open")); !taken) return taken;
    if (auto opened = open(); !opened) return opened;
    for (const auto& [page, topic] : {std::pair(Page::Scanner, "marks"), std::pair(Page::Appendage, "appendage"), std::pair(Page::Echo, "echo"),
                                      std::pair(Page::Fluoroscopy, "fluoroscopy"), std::pair(Page::Septum, "septum"), std::pair(Page::Projection, "projection"),
                                      std::pair(Page::Course, "course")}) {
        m_window.state().setPage(page);
        settle(m_window);
        if (auto taken = takeForHelp(*m_window.shelf().entry(page)->widget, QString::fromLatin1(topic)); !taken) return taken;
    }
    m_window.state().setPage(Page::Appendage);
    m_window.resize(kWindow);
    if (auto taken = takeForHelp(*m_window.findChild<ComparisonPanel*>(), QStringLiteral("comparison")); !taken) return taken;
    if (auto taken = takeForHelp(*m_window.findChild<DecisionTabs*>(), QStringLiteral("sizes")); !taken) return taken;
    m_window.state().setMode(ViewState::Mode::Meeting);
    m_window.showNormal();
    m_window.resize(kMeetingWindow);
    m_window.meeting().showSlide(0);
    return takeForHelp(m_window, QStringLiteral("meeting"));
}

} // namespace

QImage pictureOf(QWidget& widget, double scale) {
    widget.ensurePolished();
    QCoreApplication::sendPostedEvents(&widget, QEvent::LayoutRequest);
    QImage picture((QSizeF(widget.size()) * scale).toSize(), QImage::Format_RGB32);
    picture.setDevicePixelRatio(scale);
    picture.fill(tone::window);
    widget.render(&picture);
    return picture;
}

core::Result<std::vector<Screen>> takeScreens(const Tour& tour) {
    MainWindow window;
    window.resize(kWindow);
    window.show();
    Pictures pictures(window, tour);
    pictures.useTheme(tour.themes.front());
    if (tour.forHelp) {
        if (auto taken = pictures.help(); !taken) return tl::unexpected(taken.error());
        return pictures.screens;
    }
    if (auto taken = pictures.empty(); !taken) return tl::unexpected(taken.error());
    if (auto opened = pictures.open(); !opened) return tl::unexpected(opened.error());
    if (auto taken = pictures.whole(); !taken) return tl::unexpected(taken.error());
    for (const QString& theme : tour.themes.mid(1)) {
        pictures.useTheme(theme);
        if (auto taken = pictures.pages(); !taken) return tl::unexpected(taken.error());
    }
    return pictures.screens;
}

} // namespace gauge::app
