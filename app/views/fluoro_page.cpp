#include "app/views/fluoro_page.h"

#include "app/document/seats.h"
#include "app/drawing/labels.h"
#include "app/drawing/marks_drawing.h"
#include "app/drawing/seat_drawing.h"
#include "app/format/core_sentences.h"
#include "app/format/evidence_words.h"
#include "app/format/quantity.h"
#include "app/format/rich_text.h"
#include "app/models/echo_pass.h"
#include "app/panels/editor_parts.h"
#include "app/views/wrapping_row.h"
#include "core/access/seat_shadow.h"
#include "core/fluoro/projected_outline.h"
#include "core/fluoro/projected_width.h"

#include <QAction>
#include <QComboBox>
#include <QLabel>
#include <QPainter>
#include <QPainterPath>
#include <QSplitter>
#include <QTextDocument>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

namespace gauge::app {
namespace {

QString heading(const QString& text) {
    return QStringLiteral("<p><b>%1</b></p>").arg(text.toHtmlEscaped());
}

} // namespace

FluoroPage::FluoroPage(Session& session, ViewState& state, EvidenceImages& images, QWidget* parent)
    : QWidget(parent), m_session(session), m_state(state), m_view(new CineView(session, state, images, this)),
      m_radiograph(new RadiographView(session, this)), m_runs(new QComboBox(this)), m_words(new QLabel), m_roles(new QActionGroup(this)) {
    setFocusProxy(m_view);
    m_words->setWordWrap(true);
    m_words->setTextFormat(Qt::RichText);
    m_words->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_words->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    m_words->setContentsMargins(12, 8, 12, 8);
    m_runs->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_runs->setMinimumContentsLength(24); // the rest shows when the list is open
    m_runs->setProperty("mayBeCut", true);
    m_runs->setAccessibleName(tr("X-ray run"));
    m_runs->setToolTip(tr("Choose the X-ray run that is shown"));
    m_view->setOverlay([this](QPainter& painter, const QTransform& screen) {
        drawOutlines(painter, screen);
        drawPlannedSize(painter, screen);
    });
    makeActions();
    auto* tools = new QHBoxLayout;
    tools->setContentsMargins(10, 4, 10, 4);
    tools->addWidget(m_runs, 1);
    auto* buttons = new WrappingRow;
    buttons->setContentsMargins(10, 0, 10, 4);
    buttons->addWidget(m_radiograph->makeFillingBox(this));
    for (QAction* action : m_actions) {
        auto* button = new QToolButton(this);
        button->setDefaultAction(action);
        buttons->addWidget(button);
    }
    auto* scroll = scrolled(m_words);
    auto* split = m_split = new QSplitter(Qt::Vertical, this);
    split->setChildrenCollapsible(false);
    auto* pictures = new QSplitter(Qt::Horizontal, this);
    pictures->setChildrenCollapsible(false);
    pictures->addWidget(m_view);
    pictures->addWidget(m_radiograph);
    pictures->setSizes({500, 500});
    split->addWidget(pictures);
    split->addWidget(scroll);
    split->setStretchFactor(0, 4);
    split->setStretchFactor(1, 1);
    split->setSizes({560, 200});
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addLayout(tools);
    layout->addLayout(buttons);
    layout->addWidget(split, 1);

    connect(m_runs, &QComboBox::activated, this, [this](int row) { m_view->setEvidence(m_runs->itemData(row).toString()); });
    connect(&state, &ViewState::toolChanged, this, [this] {
        for (QAction* action : m_roles->actions())
            action->setChecked(m_state.tool() && action->data().toInt() == static_cast<int>(m_state.toolRole()));
    });
    connect(m_view, &CineView::opened, this, &FluoroPage::refreshText);
    connect(m_view, &CineView::frameShown, this, &FluoroPage::refreshText);
    connect(&session, &Session::imagesChanged, this, &FluoroPage::refreshRuns);
    connect(&session, &Session::measurementChanged, this, &FluoroPage::refreshText);
    connect(&session, &Session::landingChanged, this, &FluoroPage::refreshText);
    connect(&session.document(), &CaseDocument::changed, this, [this](CaseDocument::Part part) {
        using Part = CaseDocument::Part;
        if (part == Part::Evidence || part == Part::Everything) refreshRuns();
        if (part == Part::Projection) m_view->update(); // the patient's turn is in the outlines
        refreshText();
    });
    connect(&state, &ViewState::placeChanged, this, &FluoroPage::goToPlace);
    refreshRuns();
}

void FluoroPage::makeActions() {
    const auto add = [this](const QString& text, const QString& tip, const QKeySequence& key, auto slot) {
        auto* action = new QAction(text, this);
        action->setShortcut(key);
        action->setShortcutContext(Qt::WidgetWithChildrenShortcut);
        action->setToolTip(tr("%1 (key %2)").arg(tip, key.toString(QKeySequence::NativeText)));
        connect(action, &QAction::triggered, this, slot);
        addAction(action);
        m_actions << action;
        return action;
    };
    const auto role = [&](const QString& text, const QString& tip, const QKeySequence& key, core::DrawingRole which) {
        QAction* action = add(text, tip, key, [this, which] {
            m_state.tool() && m_state.toolRole() == which ? m_state.armTool(std::nullopt) : m_view->armLine(which);
        });
        action->setCheckable(true);
        action->setData(static_cast<int>(which));
        m_roles->addAction(action);
    };
    m_roles->setExclusionPolicy(QActionGroup::ExclusionPolicy::ExclusiveOptional);
    role(tr("Ostium width"), tr("Draw the width of the ostium"), Qt::SHIFT | Qt::Key_O, core::DrawingRole::OstiumWidth);
    role(tr("Landing-zone width"), tr("Draw the width of the landing zone"), Qt::SHIFT | Qt::Key_L, core::DrawingRole::LandingWidth);
    role(tr("Depth"), tr("Draw the depth from the ostium to the tip"), Qt::SHIFT | Qt::Key_D, core::DrawingRole::Depth);
    add(tr("Known length"), tr("Calibrate by two ends of a known length"), Qt::SHIFT | Qt::Key_K,
        [this] { m_view->startCalibration(Calibration::KnownLength); });
    add(tr("Catheter edges"), tr("Calibrate by a click on either edge of a catheter"), Qt::SHIFT | Qt::Key_C,
        [this] { m_view->startCalibration(Calibration::CatheterWidth); });
    add(tr("Catheter shadow"), tr("Calibrate by the program's own reading of a catheter's edges along a piece of it"),
        Qt::SHIFT | Qt::Key_E, [this] { m_view->startCalibration(Calibration::CatheterShadow); });
}

/// A width of fluoroscopy is not to be drawn on another page by accident.
void FluoroPage::hideEvent(QHideEvent* event) {
    QWidget::hideEvent(event);
    if (m_state.toolRole() != core::DrawingRole::None) m_state.armTool(std::nullopt);
}

void FluoroPage::refreshRuns() {
    const QString shown = m_view->evidence();
    m_runs->clear();
    for (const auto& [id, entry] : m_session.record().evidence)
        if (entry.content.kind == core::EvidenceKind::Fluoroscopy)
            m_runs->addItem(tr("%1, %2").arg(evidenceTitle(entry.content),
                                             momentWords(m_session.record(), core::momentKey(entry.content))),
                            QString::fromStdString(id));
    m_runs->setVisible(m_runs->count() > 0);
    const int row = std::max(0, m_runs->findData(shown));
    m_runs->setCurrentIndex(m_runs->count() ? row : -1);
    m_view->setEvidence(m_runs->itemData(row).toString());
    refreshText();
}

std::optional<FrameGeometry> FluoroPage::frameGeometry() const {
    const int frame = m_view->player().frame();
    const auto angles = anglesOf(frame);
    if (!angles) return std::nullopt;
    const dicomio::XrayFrame& told = m_view->data()->xray->facts.frames[static_cast<std::size_t>(frame)];
    FrameGeometry geometry;
    core::CArm& arm = geometry.arm;
    arm.angles = *angles;
    arm.columns = m_view->data()->frames->columns();
    arm.rows = m_view->data()->frames->rows();
    arm.sourceToDetectorMm = told.sourceToDetectorMm.value_or(0.0);
    arm.sourceToIsocentreMm = told.sourceToIsocentreMm.value_or(0.0);
    arm.imagerSpacingMm = told.imagerSpacingMm.value_or(Eigen::Vector2d::Zero());
    const auto landing = drawn(core::DrawingRole::LandingWidth, frame);
    if (landing && std::get<core::PictureSite>(landing->drawing->site).frame == frame && landing->drawing->points.size() == 2)
        geometry.landingPixel = 0.5 * (landing->drawing->points[0] + landing->drawing->points[1]);
    return geometry;
}

void FluoroPage::refreshRadiograph() {
    m_radiograph->setVisible(!m_view->evidence().isEmpty());
    // Before a file is open nothing is known yet: the view stays as it is.
    if (m_view->evidence().isEmpty() || m_view->data()) m_radiograph->setFrame(frameGeometry());
}

void FluoroPage::goToPlace() {
    const Place& place = m_state.place();
    const int row = m_runs->findData(place.evidence);
    if (place.page != Page::Fluoroscopy || row < 0) return;
    m_runs->setCurrentIndex(row);
    m_view->setEvidence(place.evidence);
    m_view->showFrame(place.frame);
}

std::optional<core::CArmAngles> FluoroPage::anglesOf(int frame) const {
    const CineData* cine = m_view->data();
    if (!cine || !cine->xray || frame < 0 || static_cast<std::size_t>(frame) >= cine->xray->facts.frames.size())
        return std::nullopt;
    return cine->xray->facts.frames[static_cast<std::size_t>(frame)].angles;
}

std::optional<FluoroPage::Drawn> FluoroPage::drawn(core::DrawingRole role, int frame) const {
    const core::CaseRecord& record = m_session.record();
    std::optional<Drawn> found;
    for (const auto& [id, entry] : record.drawings) {
        const auto* site = std::get_if<core::PictureSite>(&entry.content.site);
        if (!site || entry.content.role != role || entry.content.evidence != m_view->evidence().toStdString()) continue;
        const auto value = std::find_if(record.values.begin(), record.values.end(), [&, group = "drawing/" + id](const auto& v) {
            return v.group == group && v.unit == "mm";
        });
        if (value == record.values.end()) continue;
        // The one on this frame before one on another: angles may change along the run.
        if (!found || site->frame == frame) found = Drawn{id, &entry.content, value->estimate};
    }
    return found;
}

std::vector<core::PatientPoint> FluoroPage::contourOf(core::DrawingRole role) const {
    const core::AppendageMeasurement* measurement = m_session.measurement();
    const core::LandingZone* landing = m_session.landingShown();
    const core::Section* section = role == core::DrawingRole::OstiumWidth
                                       ? (measurement ? &measurement->ostium.section : nullptr)
                                       : (landing ? &landing->section : nullptr);
    std::vector<core::PatientPoint> points;
    if (section)
        for (const Eigen::Vector2d& p : section->contour)
            points.push_back(section->frame.patientFromSection(p));
    return points;
}

QString FluoroPage::comparisonWords(core::DrawingRole role, const QString& title) const {
    QString text = heading(title);
    const auto measured = drawn(role, m_view->player().frame());
    const int frame = measured ? std::get<core::PictureSite>(measured->drawing->site).frame : m_view->player().frame();
    const auto angles = anglesOf(frame);
    const auto lies = m_radiograph->turn();
    const auto contour = lies ? core::roomPoints(contourOf(role), *lies) : contourOf(role);
    if (measured) text += paragraph(tr("Drawn here: %1").arg(estimate(measured->lengthMm, Unit::Millimetre)));
    else text += paragraph(tr("Not drawn on this run."));
    if (contour.empty()) return text + paragraph(tr("CT predicts nothing: it is not measured."));
    if (!angles) return text + paragraph(tr("CT predicts nothing: the file does not tell the C-arm's angles."));
    if (!lies) return text + paragraph(sentence(lies.error().message));
    const auto predicted = core::predictedWidth(contour, *angles);
    if (!predicted) return text + paragraph(sentence(predicted.error().message));
    text += paragraph(tr("CT predicts at these angles: %1").arg(estimate(*predicted, Unit::Millimetre)));
    if (const auto shape = core::projectedWidth(contour, *angles))
        text += paragraph(tr("The plane is turned by %1 from edge-on; of lengths along the axis %2 is seen.")
                              .arg(quantity(shape->openingDeg, Unit::Degree), quantity(100.0 * shape->axisVisible, Unit::Percent)));
    if (!measured) return text;
    const auto comparison = core::compareWidth(measured->lengthMm, *angles, contour);
    return text + paragraph(sentence(comparison ? comparison->text : comparison.error().message));
}

void FluoroPage::setBelow(QWidget* widget) {
    m_split->addWidget(widget);
    m_split->setSizes({440, 130, 230});
}

void FluoroPage::refreshText() {
    emit anglesShown(m_view->evidence().isEmpty() ? std::nullopt : anglesOf(m_view->player().frame()));
    m_upToDate.want();
}

void FluoroPage::bringUpToDate() {
    refreshRadiograph();
    if (m_view->evidence().isEmpty()) {
        m_words->setText(paragraph(m_session.hasCase() ? tr("There is no X-ray run in this case.") : tr("Nothing is open.")));
        return;
    }
    QString text;
    const auto angles = anglesOf(m_view->player().frame());
    text += paragraph(angles ? tr("C-arm: %1").arg(QString::fromStdString(core::words(*angles)))
                             : tr("The file does not tell the C-arm's angles for this frame."));
    if (m_view->data()) text += paragraph(m_view->scaleText());
    text += comparisonWords(core::DrawingRole::LandingWidth, tr("Landing-zone width"));
    text += comparisonWords(core::DrawingRole::OstiumWidth, tr("Ostium width"));
    if (const auto depth = drawn(core::DrawingRole::Depth, m_view->player().frame()))
        text += heading(tr("Depth")) + paragraph(tr("Drawn here: %1. Foreshortening can only make it shorter.")
                                                     .arg(estimate(depth->lengthMm, Unit::Millimetre)));
    if (const core::Seat* seat = m_seats ? m_seats->chosen() : nullptr)
        text += heading(tr("Planned size")) +
                paragraph(tr("The outline of size %1, as it would sit by the CT, is laid over the frame by the line of the landing zone, "
                             "or else of the ostium, that is drawn on it. A frame after release shows beside it how the implant lies.")
                              .arg(QString::fromStdString(seat->name)));
    if (m_view->data())
        for (const core::Notice& notice : m_view->data()->notices)
            text += paragraph(sentence(notice));
    m_words->setText(text);
}

QString FluoroPage::text() const {
    QTextDocument document;
    document.setHtml(m_words->text());
    return document.toPlainText();
}

void FluoroPage::setSeats(const Seats& seats) {
    m_seats = &seats;
    connect(&seats, &Seats::changed, m_view, qOverload<>(&QWidget::update));
    connect(&seats, &Seats::changed, this, &FluoroPage::refreshText);
    m_radiograph->setSeats(seats);
}

/// The chosen size where it would sit, laid as the CT's outlines are: by the landing zone's line, else by the ostium's.
void FluoroPage::drawPlannedSize(QPainter& painter, const QTransform& screen) const {
    const core::Seat* seat = m_seats ? m_seats->chosen() : nullptr;
    const int frame = m_view->player().frame();
    const auto angles = anglesOf(frame);
    const core::AppendageMeasurement* measurement = m_session.measurement();
    const core::LandingZone* landing = m_session.landing();
    const auto lies = m_radiograph->turn();
    if (!seat || !seat->seated || !angles || !measurement || !landing || !lies) return;
    for (const auto role : {core::DrawingRole::LandingWidth, core::DrawingRole::OstiumWidth}) {
        const auto measured = drawn(role, frame);
        if (!measured || std::get<core::PictureSite>(measured->drawing->site).frame != frame || measured->drawing->points.size() != 2)
            continue;
        const Eigen::Vector2d ends = measured->drawing->points[1] - measured->drawing->points[0];
        if (!(ends.norm() > 0.0)) continue;
        core::PlanarScale scale;
        scale.mmPerPixel = Eigen::Vector2d::Constant(measured->lengthMm.value / ends.norm());
        const auto& section = role == core::DrawingRole::LandingWidth ? landing->section : measurement->ostium.section;
        const auto shadows = core::shadowsOf(*seat->seated, section.center, *angles, scale,
                                             0.5 * (measured->drawing->points[0] + measured->drawing->points[1]), *lies);
        if (!shadows) continue;
        const QPainterPath body = drawSeatOutlines(painter, *shadows, screen);
        drawSeatLabel(painter, body, tr("planned %1").arg(seatLabel(*seat)), QRectF(m_view->rect()));
        return;
    }
}

/// The CT's outlines laid onto the middle of what was drawn: the file does not tell where the isocentre lies in the CT.
void FluoroPage::drawOutlines(QPainter& painter, const QTransform& screen) const {
    const int frame = m_view->player().frame();
    const auto angles = anglesOf(frame);
    const auto lies = m_radiograph->turn();
    if (!angles || !lies) return;
    for (const auto role : {core::DrawingRole::OstiumWidth, core::DrawingRole::LandingWidth}) {
        const auto measured = drawn(role, frame);
        const auto contour = core::roomPoints(contourOf(role), *lies);
        if (!measured || contour.empty() || std::get<core::PictureSite>(measured->drawing->site).frame != frame ||
            measured->drawing->points.size() != 2)
            continue;
        const Eigen::Vector2d ends = measured->drawing->points[1] - measured->drawing->points[0];
        if (!(ends.norm() > 0.0)) continue;
        core::PlanarScale scale;
        scale.mmPerPixel = Eigen::Vector2d::Constant(measured->lengthMm.value / ends.norm());
        const auto outline = core::projectedOutline(contour, *angles, scale,
                                                    0.5 * (measured->drawing->points[0] + measured->drawing->points[1]));
        if (!outline) continue;
        QPolygonF line;
        for (const Eigen::Vector2d& p : *outline)
            line << screen.map(QPointF(p.x(), p.y()));
        QPainterPath path;
        path.addPolygon(line);
        path.closeSubpath();
        const Role colour = role == core::DrawingRole::OstiumWidth ? Role::Ostium : Role::Landing;
        drawHaloPath(painter, path, penOf(colour));
        drawLabel(painter, path.boundingRect().topRight(), tr("%1 of CT").arg(wordOf(colour)), colourOf(colour), LabelSide::Right,
                  QRectF(m_view->rect()));
    }
}

} // namespace gauge::app
