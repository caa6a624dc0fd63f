// Before a case is open: the start page, the sample case; and what a new case begins with.
#include "app/commands/decision_commands.h"
#include "app/document/sample_record.h"
#include "app/library/ui/library_window.h"
#include "app/models/demo_charts.h"
#include "app/panels/caution_strip.h"
#include "app/panels/start_page.h"
#include "app/views/first_picture_view.h"
#include "app/window/main_window.h"
#include "app/window/page_shelf.h"

#include <QAction>
#include <QDir>
#include <QFileInfo>
#include <QSplitter>
#include <QStandardPaths>

namespace gauge::app {
namespace {

using Kind = Message::Kind;

QString sampleFolder() {
    return QDir(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation)).filePath(QStringLiteral("sample-case"));
}

core::Result<QString> makeSampleCase(const QString& folder, const core::WorkContext& work) {
    const auto sample = sample_case::readSampleCase(sample_case::builtInDescription());
    if (!sample) return tl::unexpected(sample.error());
    QDir().mkpath(folder);
    if (const auto files = sample_case::writeSampleCase(*sample, folder.toStdString(), work); !files)
        return tl::unexpected(files.error());
    const auto file = writeSampleRecord(*sample, folder.toStdString());
    if (!file) return tl::unexpected(file.error());
    return QString::fromStdString(file->string());
}

} // namespace

bool MainWindow::isOpen() const {
    const core::CaseRecord& record = m_session.record();
    return m_session.index() || m_begun || record.images || record.patient || !record.evidence.empty() || !record.moments.empty();
}

void MainWindow::connectStart() {
    connect(m_start, &StartPage::openRequested, this, &MainWindow::chooseFolder);
    connect(m_start, &StartPage::openCaseRequested, this, &MainWindow::chooseCase);
    connect(m_start, &StartPage::sampleRequested, this, &MainWindow::openSampleCase);
    connect(m_start, &StartPage::beginRequested, this, &MainWindow::beginWithoutImages);
    connect(m_start, &StartPage::libraryRequested, this, [this] { m_library->actions().front()->trigger(); });
    connect(m_start, &StartPage::caseChosen, this, &MainWindow::openCase);
    connect(m_start, &StartPage::leftCaseChosen, this, [this](const QString& journal) {
        m_session.openLeftCase(journal);
        refreshOpen();
    });
    connect(m_start, &StartPage::forgetRequested, this, [this](const QString& path) {
        m_settings.removeRecentCase(path);
        m_start->showRecent(m_settings.recentCases(), unsavedFolder());
    });
    m_start->showRecent(m_settings.recentCases(), unsavedFolder());
}

/// While nothing is open there is nothing to say beside the start page; nor beside the first picture of another case.
void MainWindow::refreshOpen() {
    const FirstPicture* first = m_session.firstPicture();
    const bool open = isOpen() && !(first && first->ofNewCase);
    m_shelf->setWaiting(first ? m_first : nullptr);
    m_shelf->setOpen(open);
    m_leftSide->setVisible(open);
    m_right->setVisible(open);
    m_caution->setVisible(open && m_settings.cautionsDismissed() != QStringLiteral(GAUGE_VERSION));
}

void MainWindow::openSampleCase() {
    const QString folder = sampleFolder(), file = QDir(folder).filePath(QStringLiteral("sample.case.json"));
    if (QFileInfo::exists(file)) {
        openCase(file);
        return;
    }
    if (m_sample.isRunning()) return;
    m_session.say(Kind::Working, tr("The sample case is being made, about 200 MB; it opens by itself when it is ready …"));
    m_sample.start<QString>([folder](const core::WorkContext& work) { return makeSampleCase(folder, work); },
                            [this](core::Result<QString> made) {
                                if (made)
                                    openCase(*made);
                                else
                                    m_session.say(Kind::Error, QString::fromStdString(made.error().message));
                            });
}

void MainWindow::beginWithoutImages() {
    m_begun = true;
    m_state.setPage(Page::Course);
    refreshOpen();
    refreshTitle();
    m_session.say(Kind::Information, tr("A case without images: add the moments and type in what was read. Open a folder of images at any time."));
}

/// The chart of the settings, in a case that has none yet. The person did not decide it now, so it is no step of undo.
void MainWindow::loadUsualChart() {
    CaseDocument& document = m_session.document();
    if (document.record().sizing || !document.path().isEmpty() || m_settings.defaultChart().isEmpty()) return;
    const QString path = m_settings.defaultChart();
    const auto chart = readChartFile(path);
    if (!chart) {
        m_session.say(Kind::Warning, tr("The size chart of the settings cannot be used. %1").arg(QString::fromStdString(chart.error().message)));
        return;
    }
    const LoadChart load(document, chart->text, QFileInfo(path).fileName().toStdString());
    document.apply(static_cast<const EditCommand&>(load).edit());
}

} // namespace gauge::app
