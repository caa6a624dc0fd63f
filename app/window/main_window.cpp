#include "app/window/main_window.h"

#include "app/document/report_offer.h"

#include "app/library/ui/library_window.h"
#include "app/panels/caution_strip.h"
#include "app/panels/comparison_panel.h"
#include "app/panels/decision_tabs.h"
#include "app/panels/evidence_panel.h"
#include "app/panels/marks_panel.h"
#include "app/panels/message_line.h"
#include "app/panels/start_page.h"
#include "app/views/course_page.h"
#include "app/views/echo_page.h"
#include "app/views/first_picture_view.h"
#include "app/views/fluoro_page.h"
#include "app/views/projection_panel.h"
#include "app/views/same_cut_page.h"
#include "app/views/septum_page.h"
#include "app/window/appendage_page.h"
#include "app/window/meeting_view.h"
#include "app/window/page_shelf.h"
#include "app/window/scanner_page.h"
#include "app/window/theme.h"

#include <QCloseEvent>
#include <QDragEnterEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QMimeData>
#include <QScrollArea>
#include <QSplitter>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace gauge::app {
namespace {

QString droppedPath(const QMimeData& data) {
    for (const QUrl& url : data.urls())
        if (url.isLocalFile()) return QFileInfo(url.toLocalFile()).absoluteFilePath();
    return {};
}

/// The first page that has something to show of a case without CT.
Page pageWithoutCt(const core::CaseRecord& record) {
    bool xray = false;
    for (const auto& [id, entry] : record.evidence) {
        if (entry.content.kind == core::EvidenceKind::Fluoroscopy)
            xray = true;
        else if (entry.content.kind != core::EvidenceKind::Ct)
            return Page::Echo;
    }
    return xray ? Page::Fluoroscopy : record.evidence.empty() && !record.images ? Page::Course : Page::Echo;
}

} // namespace

MainWindow::MainWindow(QWidget* parent) : QMainWindow(parent) {
    setAcceptDrops(true);
    m_state.setNamesHidden(m_settings.namesHidden());
    makePages();
    m_body = new QSplitter(Qt::Horizontal);
    m_leftSide = makeLeft();
    auto* right = makeRight();
    for (QWidget* side : {m_leftSide, right})
        side->hide(); // from the first: the window is not to be made wide enough for them beside the start page
    m_body->addWidget(m_leftSide);
    m_body->addWidget(m_shelf);
    m_body->addWidget(right);
    m_body->setStretchFactor(1, 1);
    m_body->setChildrenCollapsible(false);
    m_body->setSizes({262, 678, 500});

    auto* whole = new QWidget;
    auto* layout = new QVBoxLayout(whole);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    m_caution = new CautionStrip;
    layout->addWidget(m_caution);
    layout->addWidget(m_shelf->bar());
    layout->addWidget(m_body, 1);
    m_message = new MessageLine(m_session);
    m_message->setNamesHidden(m_state.namesHidden());
    layout->addWidget(m_message);
    m_whole = new QStackedWidget(this);
    m_whole->addWidget(whole);
    setCentralWidget(m_whole);
    makeMeeting();

    // The keyboard scrolls them, so a reader must be able to say where it is.
    for (QScrollArea* area : findChildren<QScrollArea*>())
        if (area->accessibleName().isEmpty()) area->setAccessibleName(tr("Part that scrolls"));
    setHelpTopics();
    makeMenus();
    connectSession();
    setLeastWidths();
    restorePlaces();
    connectStart();
    refreshOpen();
    refreshTitle();
    m_start->setFocus();
}

MainWindow::~MainWindow() = default;

void MainWindow::makePages() {
    m_shelf = new PageShelf(m_state);
    m_start = new StartPage(m_state);
    m_appendage = new AppendagePage(m_session, m_state);
    m_appendage->setAnswers(m_answers);
    m_scanner = new ScannerPage(m_session, m_state);
    m_shelf->add(Page::Appendage, tr("Appendage axis"), tr("Long section, cross-section and depth strip"),
                 QKeySequence(Qt::CTRL | Qt::Key_1), m_appendage);
    m_shelf->add(Page::Scanner, tr("Scanner axes"), tr("Axial, coronal and sagittal sections, for marking"),
                 QKeySequence(Qt::CTRL | Qt::Key_2), m_scanner);
    m_shelf->addBeside(Page::Appendage, new CrossSectionChoice(m_session, m_state));
    auto* sameCut = new SameCutPage(m_session, m_state, m_images);
    sameCut->setSeats(m_answers.seats());
    auto* fluoroscopy = new FluoroPage(m_session, m_state, m_images);
    fluoroscopy->setSeats(m_answers.seats());
    m_shelf->add(Page::Echo, tr("Echo"), tr("Echo views side by side, and the dial of their widths"),
                 QKeySequence(Qt::CTRL | Qt::Key_3), new EchoPage(m_session, m_state, m_images));
    m_shelf->add(Page::SameCut, tr("Same cut"), tr("An echo frame beside the CT cut in its own plane"),
                 QKeySequence(Qt::CTRL | Qt::Key_4), sameCut);
    auto* views = new ProjectionPanel(m_session, m_planner, ProjectionPanel::Extent::Short);
    fluoroscopy->setBelow(views);
    connect(fluoroscopy, &FluoroPage::anglesShown, views, &ProjectionPanel::setFluoroscopy);
    m_shelf->add(Page::Fluoroscopy, tr("Fluoroscopy"), tr("X-ray frames, beside what the CT predicts"),
                 QKeySequence(Qt::CTRL | Qt::Key_5), fluoroscopy);
    m_shelf->add(Page::Septum, tr("Septum"), tr("Where to cross the septum: height for the repair, angle for the closure"),
                 QKeySequence(Qt::CTRL | Qt::Key_6), new SeptumPage(m_session, m_state));
    auto* projection = new ProjectionPanel(m_session, m_planner, ProjectionPanel::Extent::Whole);
    projection->setSeats(m_answers.seats());
    connect(projection, &ProjectionPanel::distancesChanged, &fluoroscopy->radiograph(), &RadiographView::setDistances);
    m_shelf->add(Page::Projection, tr("Projection"), tr("Angles of the C-arm that show ostium and landing zone"),
                 QKeySequence(Qt::CTRL | Qt::Key_8), projection);
    // The last: it grows with what the evidence says, and ends in the decision.
    m_shelf->add(Page::Course, tr("Course"), tr("Pressures and stasis over time, release check, scores, decision"),
                 QKeySequence(Qt::CTRL | Qt::Key_7), new CoursePage(m_answers, m_state));
    m_shelf->setStart(m_start);
    m_first = new FirstPictureView(m_session, m_state, this);
    m_first->hide();
}

QWidget* MainWindow::makeLeft() {
    auto* side = new QFrame;
    side->setObjectName("side");
    auto* evidence = new EvidencePanel(m_session, m_state);
    connect(evidence, &EvidencePanel::openRequested, this, &MainWindow::chooseFolder);
    m_marks = new MarksPanel(m_session, m_state);
    m_left = new QSplitter(Qt::Vertical);
    m_left->addWidget(evidence);
    m_left->addWidget(m_marks);
    m_left->setStretchFactor(0, 1);
    m_left->setChildrenCollapsible(false);
    auto* layout = new QVBoxLayout(side);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_left);
    return side;
}

QWidget* MainWindow::makeRight() {
    m_right = new QSplitter(Qt::Vertical);
    m_right->setChildrenCollapsible(false);
    m_values = new ComparisonPanel(m_answers, m_state);
    m_decision = new DecisionTabs(m_answers);
    m_right->addWidget(m_values);
    m_right->addWidget(m_decision);
    m_right->setSizes({460, 380});
    return m_right;
}

/// F1 opens the page on what lies under the pointer.
void MainWindow::setHelpTopics() {
    const std::pair<QWidget*, const char*> topics[] = {
        {m_start, "open"},       {m_left, "open"},     {m_marks, "marks"},   {m_scanner, "marks"}, {m_appendage, "appendage"},
        {m_values, "comparison"}, {m_decision, "sizes"}, {m_meeting, "meeting"}};
    for (const auto& [widget, topic] : topics)
        widget->setProperty("help", topic);
    for (const auto& [page, topic] : {std::pair(Page::Echo, "echo"), std::pair(Page::SameCut, "echo"),
                                      std::pair(Page::Fluoroscopy, "fluoroscopy"), std::pair(Page::Septum, "septum"), std::pair(Page::Projection, "projection"),
                                      std::pair(Page::Course, "course")})
        if (const PageShelf::Entry* entry = m_shelf->entry(page)) entry->widget->setProperty("help", topic);
}

void MainWindow::connectSession() {
    connect(m_caution, &CautionStrip::dismissed, this,
            [this] { m_settings.setCautionsDismissed(QStringLiteral(GAUGE_VERSION)); });
    connect(&m_session, &Session::imagesChanged, this, &MainWindow::onImages);
    connect(&m_session, &Session::firstPictureChanged, this, &MainWindow::refreshOpen);
    connect(&m_session, &Session::measurementChanged, this, &MainWindow::onMeasurement);
    connect(&m_session.document(), &CaseDocument::changed, this, &MainWindow::refreshTitle);
    connect(&m_session.document(), &CaseDocument::fileChanged, this, &MainWindow::refreshTitle);
    connect(&m_session.document(), &CaseDocument::saved, this, &MainWindow::refreshTitle);
    connect(&m_state, &ViewState::namesHiddenChanged, this, [this] {
        refreshTitle();
        m_message->setNamesHidden(m_state.namesHidden());
    });
    connect(&m_state, &ViewState::modeChanged, this, &MainWindow::refreshMode);
    connect(m_shelf, &PageShelf::shown, this, &MainWindow::showTools);
    connect(&m_state, &ViewState::pageChanged, this, [this] {
        if (m_state.page() != Page::Scanner) m_state.arm(std::nullopt);
        if (const PageShelf::Entry* page = m_shelf->current()) page->widget->setFocus();
    });
}

void MainWindow::onImages() {
    const core::Volume* volume = m_session.volume();
    if (volume)
        m_state.setCrossing(
            volume->patientFrom({0.5 * (volume->size().array() - 1).cast<double>().matrix()}));
    m_hadMeasurement = m_session.measurement();
    if (!m_hadMeasurement) m_state.setPage(volume ? Page::Scanner : pageWithoutCt(m_session.record()));
    if (m_session.index()) loadUsualChart();
    refreshOpen();
    refreshTitle();
}

void MainWindow::onMeasurement() {
    const bool has = m_session.measurement();
    if (has && !m_hadMeasurement) {
        m_state.showLanding();
        m_state.setPage(Page::Appendage);
    }
    m_hadMeasurement = has;
}

void MainWindow::resetViews() {
    m_appendage->resetViews();
    m_scanner->resetViews();
    m_state.setWindow({});
}

void MainWindow::chooseFolder() {
    const QString folder =
        QFileDialog::getExistingDirectory(this, tr("Open a folder of DICOM images"), startFolder());
    if (!folder.isEmpty()) openFolder(folder);
}

void MainWindow::openFolder(const QString& path) {
    m_settings.setLastFolder(QFileInfo(path).absoluteFilePath());
    m_session.openFolder(path);
}

void MainWindow::openPath(const QString& path) {
    const QFileInfo info(path);
    if (isCaseFile(path))
        openCase(path);
    else if (info.isFile() && isReportFile(path))
        readReport(path);
    else
        openFolder(info.isFile() ? info.absolutePath() : path);
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
    if (!droppedPath(*event->mimeData()).isEmpty()) event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event) {
    event->acceptProposedAction();
    openPath(droppedPath(*event->mimeData()));
}

void MainWindow::closeEvent(QCloseEvent* event) {
    if (!mayLeaveCase()) {
        event->ignore();
        return;
    }
    keepPlaces();
    QMainWindow::closeEvent(event);
}

} // namespace gauge::app
