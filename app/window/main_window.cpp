#include "app/window/main_window.h"

#include "app/panels/caution_strip.h"
#include "app/panels/depth_readout.h"
#include "app/panels/evidence_panel.h"
#include "app/panels/marks_panel.h"
#include "app/panels/message_line.h"
#include "app/panels/start_page.h"
#include "app/panels/value_panel.h"
#include "app/views/cross_section_view.h"
#include "app/views/depth_strip_view.h"
#include "app/views/long_section_view.h"
#include "app/views/scanner_section_view.h"
#include "app/views/shown_section.h"

#include <QCloseEvent>
#include <QDragEnterEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QGridLayout>
#include <QLabel>
#include <QMimeData>
#include <QSplitter>
#include <QStackedWidget>
#include <QToolButton>
#include <QVBoxLayout>

namespace gauge::app {
namespace {

QString droppedFolder(const QMimeData& data) {
    for (const QUrl& url : data.urls()) {
        if (!url.isLocalFile()) continue;
        const QFileInfo info(url.toLocalFile());
        return info.isDir() ? info.absoluteFilePath() : info.absolutePath();
    }
    return {};
}

QToolButton* segment(const QString& text, const QString& tip, QWidget* parent) {
    auto* button = new QToolButton(parent);
    button->setText(text);
    button->setToolTip(tip);
    button->setCheckable(true);
    button->setFocusPolicy(Qt::TabFocus);
    return button;
}

} // namespace

MainWindow::MainWindow(QWidget* parent) : QMainWindow(parent) {
    setWindowTitle(tr("Ostium Gauge"));
    setAcceptDrops(true);
    auto* body = new QSplitter(Qt::Horizontal);
    m_values = new ValuePanel(m_session);
    QWidget* left = makeLeft();
    QWidget* centre = makeCentre();
    m_values->setMinimumWidth(416);
    body->addWidget(left);
    body->addWidget(centre);
    body->addWidget(m_values);
    body->setStretchFactor(1, 1);
    body->setChildrenCollapsible(false);
    body->setSizes({270, 754, 416});

    auto* whole = new QWidget(this);
    auto* layout = new QVBoxLayout(whole);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    m_caution = new CautionStrip;
    layout->addWidget(m_caution);
    layout->addWidget(body, 1);
    layout->addWidget(new MessageLine(m_session));
    setCentralWidget(whole);

    makeMenus();
    connectSession();
    m_caution->setVisible(m_settings.cautionsDismissed() != QStringLiteral(GAUGE_VERSION));
    resize(1440, 900);
    restoreGeometry(m_settings.windowGeometry());
    showPage();
    refreshHeader();
}

MainWindow::~MainWindow() = default;

QWidget* MainWindow::makeLeft() {
    auto* side = new QFrame;
    side->setObjectName("side");
    auto* evidence = new EvidencePanel(m_session);
    connect(evidence, &EvidencePanel::openRequested, this, &MainWindow::chooseFolder);
    m_marks = new MarksPanel(m_session, m_state);
    auto* rule = new QWidget;
    rule->setObjectName("rule");
    rule->setFixedHeight(1);
    auto* layout = new QVBoxLayout(side);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addWidget(evidence, 1);
    layout->addWidget(rule);
    layout->addWidget(m_marks);
    return side;
}

QWidget* MainWindow::makeCentreHeader() {
    auto* header = new QWidget;
    auto* layout = new QHBoxLayout(header);
    layout->setContentsMargins(10, 6, 10, 6);
    layout->setSpacing(6);
    m_appendageButton = segment(tr("Appendage axis"),
                                tr("Long section, cross-section and depth strip (key T changes)"), header);
    m_scannerButton = segment(
        tr("Scanner axes"), tr("Axial, coronal and sagittal sections, for marking (key T changes)"), header);
    m_ostiumButton = segment(tr("Ostium"), tr("Cross-section at the ostium (key O)"), header);
    m_landingButton = segment(tr("Landing zone"), tr("Cross-section at the landing zone (key L)"), header);
    layout->addWidget(m_appendageButton);
    layout->addWidget(m_scannerButton);
    layout->addStretch(1);
    auto* which = m_whichLabel = new QLabel(tr("Cross-section at"), header);
    which->setObjectName("soft");
    layout->addWidget(which);
    layout->addWidget(m_ostiumButton);
    layout->addWidget(m_landingButton);
    connect(m_appendageButton, &QToolButton::clicked, this, [this] {
        m_state.setPage(ViewState::Page::Appendage);
        refreshHeader();
    });
    connect(m_scannerButton, &QToolButton::clicked, this, [this] {
        m_state.setPage(ViewState::Page::Scanner);
        refreshHeader();
    });
    connect(m_ostiumButton, &QToolButton::clicked, &m_state, &ViewState::showOstium);
    connect(m_landingButton, &QToolButton::clicked, &m_state, &ViewState::showLanding);
    return header;
}

QWidget* MainWindow::makeAppendagePage() {
    auto* page = new QWidget;
    m_longSection = new LongSectionView(m_session, m_state);
    m_crossSection = new CrossSectionView(m_session, m_state);
    m_strip = new DepthStripView(m_session, m_state);
    auto* readout = new DepthReadout(m_session, m_state);
    connect(m_strip, &DepthStripView::hovered, readout, &DepthReadout::setHover);
    auto* grid = new QGridLayout(page);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(1);
    grid->addWidget(m_longSection, 0, 0);
    grid->addWidget(m_crossSection, 0, 1);
    grid->addWidget(m_strip, 1, 0);
    grid->addWidget(readout, 1, 1);
    grid->setColumnStretch(0, 3);
    grid->setColumnStretch(1, 2);
    grid->setRowStretch(0, 5);
    grid->setRowStretch(1, 2);
    readout->setMinimumSize(272, 160);
    return page;
}

QWidget* MainWindow::makeScannerPage() {
    auto* page = new QWidget;
    auto* grid = new QGridLayout(page);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(1);
    for (const ScannerAxis axis : {ScannerAxis::Axial, ScannerAxis::Coronal, ScannerAxis::Sagittal})
        m_scanner.push_back(new ScannerSectionView(axis, m_session, m_state));
    grid->addWidget(m_scanner[0], 0, 0, 2, 1);
    grid->addWidget(m_scanner[1], 0, 1);
    grid->addWidget(m_scanner[2], 1, 1);
    grid->setColumnStretch(0, 3);
    grid->setColumnStretch(1, 2);
    return page;
}

QWidget* MainWindow::makeCentre() {
    auto* centre = new QWidget;
    m_header = makeCentreHeader();
    auto* start = new StartPage;
    connect(start, &StartPage::openRequested, this, &MainWindow::chooseFolder);
    m_startPage = start;
    m_appendagePage = makeAppendagePage();
    m_scannerPage = makeScannerPage();
    m_pages = new QStackedWidget;
    for (QWidget* page : {m_startPage, m_appendagePage, m_scannerPage})
        m_pages->addWidget(page);
    auto* layout = new QVBoxLayout(centre);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addWidget(m_header);
    layout->addWidget(m_pages, 1);
    return centre;
}

void MainWindow::connectSession() {
    connect(m_caution, &CautionStrip::dismissed, this,
            [this] { m_settings.setCautionsDismissed(QStringLiteral(GAUGE_VERSION)); });
    connect(&m_session, &Session::imagesChanged, this, &MainWindow::onImages);
    connect(&m_session, &Session::measurementChanged, this, &MainWindow::onMeasurement);
    connect(&m_session, &Session::landingChanged, this, &MainWindow::refreshHeader);
    connect(&m_state, &ViewState::depthChanged, this, &MainWindow::refreshHeader);
    connect(&m_state, &ViewState::pageChanged, this, &MainWindow::showPage);
}

void MainWindow::onImages() {
    const core::Volume* volume = m_session.volume();
    if (volume)
        m_state.setCrossing(
            volume->patientFrom({0.5 * (volume->size().array() - 1).cast<double>().matrix()}));
    if (const auto* images = m_session.images())
        setWindowTitle(tr("%1 — Ostium Gauge")
                           .arg(QString::fromStdString(images->index->series[images->series].description)));
    m_hadMeasurement = m_session.measurement();
    if (!m_hadMeasurement) m_state.setPage(ViewState::Page::Scanner);
    showPage();
}

void MainWindow::onMeasurement() {
    const bool has = m_session.measurement();
    if (has && !m_hadMeasurement) {
        m_state.showLanding();
        m_state.setPage(ViewState::Page::Appendage);
    }
    m_hadMeasurement = has;
    refreshHeader();
}

void MainWindow::showPage() {
    const bool open = m_session.images();
    m_header->setVisible(open);
    const bool scanner = m_state.page() == ViewState::Page::Scanner;
    m_pages->setCurrentWidget(!open ? m_startPage : scanner ? m_scannerPage : m_appendagePage);
    (!open ? m_startPage : scanner ? static_cast<QWidget*>(m_scanner.front()) : m_longSection)->setFocus();
    if (!scanner) m_state.arm(std::nullopt);
    refreshHeader();
}

void MainWindow::refreshHeader() {
    const bool scanner = m_state.page() == ViewState::Page::Scanner;
    m_scannerButton->setChecked(scanner);
    m_appendageButton->setChecked(!scanner);
    const auto shown = shownSection(m_session, m_state);
    for (QWidget* widget : std::initializer_list<QWidget*>{m_ostiumButton, m_landingButton, m_whichLabel})
        widget->setVisible(!scanner && shown);
    m_ostiumButton->setChecked(shown && shown->role == Role::Ostium);
    m_landingButton->setChecked(shown && shown->role == Role::Landing);
}

void MainWindow::resetViews() {
    m_longSection->resetView();
    m_crossSection->resetView();
    for (ScannerSectionView* view : m_scanner)
        view->resetView();
    m_state.setWindow({});
}

void MainWindow::chooseFolder() {
    const QString folder =
        QFileDialog::getExistingDirectory(this, tr("Open a folder of DICOM images"), m_settings.lastFolder());
    if (!folder.isEmpty()) openFolder(folder);
}

void MainWindow::openFolder(const QString& folder) {
    m_settings.setLastFolder(QFileInfo(folder).absoluteFilePath());
    m_session.openFolder(folder);
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
    if (!droppedFolder(*event->mimeData()).isEmpty()) event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event) {
    event->acceptProposedAction();
    openFolder(droppedFolder(*event->mimeData()));
}

void MainWindow::closeEvent(QCloseEvent* event) {
    m_settings.setWindowGeometry(saveGeometry());
    QMainWindow::closeEvent(event);
}

} // namespace gauge::app
