#include "app/views/radiograph_view.h"

#include "app/drawing/mark_roles.h"
#include "app/format/core_sentences.h"
#include "app/format/quantity.h"
#include "app/interaction/drags.h"
#include "core/anatomy/chamber_mask.h"
#include "core/fluoro/c_arm_place.h"
#include "core/volume/chamber_volume.h"

#include <QKeyEvent>
#include <QLineEdit>
#include <QMouseEvent>
#include <QPainter>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

namespace gauge::app {
namespace {

constexpr int kTurningSide = 256, kSharpestSide = 768; // pixels along the longer side
constexpr int kTurningSlices = 2;                      // every second slice while it turns
constexpr int kSharpenMs = 160;
constexpr double kArmDegPerPixel = 0.4, kArmKeyDeg = 1.0, kLargeKeyDeg = 10.0, kArmKeyZoom = 1.2;
constexpr double kUsualFieldMm = 120.0, kLeastFieldMm = 30.0, kMostFieldMm = 400.0;
constexpr double kLeastWindowMm = 2.0;
constexpr int kTitlePx = 12;

double wrapped(double deg) {
    const double turns = std::remainder(deg, 360.0);
    return turns <= -180.0 ? turns + 360.0 : turns;
}

QString millimetres(double mm) {
    return QStringLiteral("%1 mm").arg(std::lround(mm));
}

} // namespace

bool FrameGeometry::operator==(const FrameGeometry& other) const {
    return arm.angles == other.arm.angles && arm.sourceToIsocentreMm == other.arm.sourceToIsocentreMm &&
           arm.sourceToDetectorMm == other.arm.sourceToDetectorMm && arm.imagerSpacingMm == other.arm.imagerSpacingMm &&
           arm.columns == other.arm.columns && arm.rows == other.arm.rows && landingPixel == other.landingPixel;
}

RadiographView::RadiographView(Session& session, ViewState& state, QWidget* parent)
    : QWidget(parent), m_session(session), m_state(state), m_fieldMm(kUsualFieldMm), m_ask(new QLineEdit(this)) {
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::OpenHandCursor);
    setAccessibleName(tr("Simulated radiograph from CT"));
    setToolTip(tr("Simulated from CT. Drag turns the heart, arrow keys move the C-arm by 1° (Shift: 10°), A types the angles, Home comes "
                  "back, F changes what is filled with contrast medium, right drag changes the window, W finds it again, + and − change "
                  "the field of view."));
    m_ask->hide();
    m_ask->setAccessibleName(tr("Angles of the C-arm"));
    m_ask->setPlaceholderText(tr("RAO 30 CAUD 12"));
    connect(m_ask, &QLineEdit::returnPressed, this, [this] { typeAngles(m_ask->text()); });
    connect(m_ask, &QLineEdit::editingFinished, this, [this] { m_ask->hide(); });
    m_still.setSingleShot(true);
    m_still.setInterval(kSharpenMs);
    connect(&m_still, &QTimer::timeout, this, &RadiographView::makeSharp);
    makeActions();
    connect(&session, &Session::imagesChanged, this, [this] {
        m_picture.reset();
        m_failure.reset();
        m_job.drop();
        moved();
    });
    connect(&session, &Session::measurementChanged, this, &RadiographView::refreshChambers);
    connect(&session, &Session::landingChanged, this, &RadiographView::moved); // it is what the C-arm is steered to
    connect(&session.document(), &CaseDocument::changed, this, [this] { update(); });
    refreshChambers();
}

void RadiographView::makeActions() {
    const auto add = [this](const QString& text, auto slot) {
        auto* action = new QAction(text, this);
        connect(action, &QAction::triggered, this, slot);
        m_actions << action;
    };
    // Their keys are the view's own (keyPressEvent): other pages use the same ones.
    add(tr("Simulated radiograph: type the angles"), [this] { askAngles(); });
    add(tr("Simulated radiograph: back to its angles"), [this] { turnTo(m_home); });
    add(tr("Simulated radiograph: fill another chamber"), [this] { setFilling(static_cast<Filling>((static_cast<int>(m_filling) + 1) % 5)); });
}

void RadiographView::setAngles(const core::CArmAngles& angles) {
    m_home = angles;
    turnTo(angles);
}

void RadiographView::setFrame(const std::optional<FrameGeometry>& frame) {
    if (frame == m_frame) return;
    const bool sameAngles = frame && m_frame && frame->arm.angles == m_frame->arm.angles;
    m_frame = frame;
    if (frame && !sameAngles)
        setAngles(frame->arm.angles);
    else
        moved();
}

void RadiographView::setFilling(Filling filling) {
    m_filling = filling;
    m_window.reset();
    moved();
}

void RadiographView::setLines(std::function<std::vector<PatientLine>()> lines) {
    m_more = std::move(lines);
    update();
}

void RadiographView::turnTo(core::CArmAngles angles) {
    angles.primaryDeg = wrapped(angles.primaryDeg);
    angles.secondaryDeg = std::clamp(angles.secondaryDeg, -90.0, 90.0);
    if (angles == m_angles) return;
    m_angles = angles;
    moved();
    emit anglesChanged(m_angles);
}

void RadiographView::typeAngles(const QString& text) {
    m_ask->hide();
    setFocus();
    if (text.trimmed().isEmpty()) return;
    const auto angles = core::anglesFromText(text.toStdString());
    if (angles)
        turnTo(*angles);
    else
        m_session.say(Message::Kind::Error, sentence(angles.error().message));
}

void RadiographView::askAngles() {
    m_ask->setText(QString::fromStdString(core::words(m_angles)));
    m_ask->resize(std::min(width() - 20, std::max(m_ask->sizeHint().width(), 180)), m_ask->sizeHint().height());
    m_ask->move(10, 34);
    m_ask->show();
    m_ask->selectAll();
    m_ask->setFocus();
}

/// The chambers of the measurement, as volumes of their own: once, in the background.
void RadiographView::refreshChambers() {
    m_chambers = {};
    const core::AppendageMeasurement* m = m_session.measurement();
    if (!m || !m->trace) {
        m_chamberJob.drop();
        return moved();
    }
    m_chamberJob.start<Chambers>(
        [measured = std::make_shared<const core::AppendageMeasurement>(*m)](const core::WorkContext&) -> core::Result<Chambers> {
            const auto volumeOf = [&](core::Chamber chamber) -> std::shared_ptr<const core::Volume> {
                const auto mask = core::chamberMask(*measured, chamber);
                if (!mask) return nullptr;
                return core::chamberVolume(*mask).value_or(nullptr);
            };
            return Chambers{volumeOf(core::Chamber::Appendage), volumeOf(core::Chamber::AtriumAndAppendage)};
        },
        [this](core::Result<Chambers> made) {
            if (made) m_chambers = std::move(*made);
            moved();
        });
    moved();
}

core::RadiographScene RadiographView::scene() const {
    core::RadiographScene scene;
    if (m_session.images()) scene.ct = m_session.images()->ct.volume;
    switch (m_filling) {
    case Filling::Nothing:
        break;
    case Filling::Appendage:
    case Filling::AppendageAlone:
        scene.chamber = m_chambers.appendage;
        break;
    case Filling::AtriumAndAppendage:
    case Filling::AtriumAndAppendageAlone:
        scene.chamber = m_chambers.both;
        break;
    }
    const bool alone = m_filling == Filling::AppendageAlone || m_filling == Filling::AtriumAndAppendageAlone;
    scene.alone = alone && scene.chamber;
    return scene;
}

/// What the C-arm is steered to.
core::PatientPoint RadiographView::aim() const {
    if (const core::LandingZone* landing = m_session.landing()) return landing->section.center;
    if (const core::AppendageMeasurement* m = m_session.measurement()) return m->ostium.section.center;
    if (const auto marks = appendageMarks(m_session.record())) return marks->tip;
    const core::Volume& volume = *m_session.volume();
    return volume.patientFrom({(0.5 * (volume.size().array() - 1).cast<double>()).matrix()});
}

/// Width and height of the detector: the frame's, or as the view's own.
QSizeF RadiographView::fieldPixels() const {
    if (m_frame && m_frame->arm.columns > 0 && m_frame->arm.rows > 0) return QSizeF(m_frame->arm.columns, m_frame->arm.rows);
    return QSizeF(std::max(width(), 16), std::max(height(), 16));
}

std::optional<core::CArm> RadiographView::arm() const {
    if (!m_session.volume()) return std::nullopt;
    core::CArm arm = m_frame ? m_frame->arm : core::CArm{};
    arm.angles = m_angles;
    const QSizeF field = fieldPixels();
    arm.columns = static_cast<int>(field.width());
    arm.rows = static_cast<int>(field.height());
    if (!(arm.sourceToIsocentreMm > 0.0 && arm.sourceToDetectorMm > arm.sourceToIsocentreMm)) {
        arm.sourceToIsocentreMm = core::kAssumedSourceToIsocentreMm;
        arm.sourceToDetectorMm = core::kAssumedSourceToDetectorMm;
    }
    if (!(arm.imagerSpacingMm.x() > 0.0 && arm.imagerSpacingMm.y() > 0.0))
        arm.imagerSpacingMm = Eigen::Vector2d::Constant(m_fieldMm * arm.magnification() / std::min(arm.columns, arm.rows));
    const Eigen::Vector2d middle = 0.5 * Eigen::Vector2d(arm.columns - 1, arm.rows - 1);
    const auto aimed = core::aimedAt(arm, aim(), m_frame && m_frame->landingPixel ? *m_frame->landingPixel : middle);
    return aimed ? std::optional(*aimed) : std::nullopt;
}

void RadiographView::moved() {
    m_isSharp = false;
    m_isMovedSince = true;
    update();
    if (!isVisible() || !m_session.volume()) return;
    m_still.start();
    if (!m_job.isRunning() || m_jobIsSharp) makeCoarse();
}

void RadiographView::makeCoarse() {
    make(kTurningSide, kTurningSlices, false);
}

void RadiographView::makeSharp() {
    const double side = std::max(width(), height()) * devicePixelRatioF();
    make(std::clamp(static_cast<int>(side), kTurningSide, kSharpestSide), 1, true);
}

void RadiographView::make(int greatestSide, int everySlice, bool sharp) {
    const auto whole = arm();
    if (!whole) return;
    core::CArm arm = *whole;
    const double shrink = static_cast<double>(greatestSide) / std::max(arm.columns, arm.rows);
    arm.columns = std::max(1, static_cast<int>(std::lround(shrink * whole->columns)));
    arm.rows = std::max(1, static_cast<int>(std::lround(shrink * whole->rows)));
    arm.imagerSpacingMm = arm.imagerSpacingMm.cwiseProduct(
        Eigen::Vector2d(static_cast<double>(whole->columns) / arm.columns, static_cast<double>(whole->rows) / arm.rows));
    m_isMovedSince = false;
    m_jobIsSharp = sharp;
    m_job.start<core::Radiograph>(
        [arm, scene = scene(), everySlice](const core::WorkContext& work) -> core::Result<core::Radiograph> {
            const auto camera = core::cameraOf(arm);
            if (!camera) return tl::make_unexpected(camera.error());
            return core::simulateRadiograph(scene, *camera, {.everySlice = everySlice}, work);
        },
        [this, sharp](core::Result<core::Radiograph> made) {
            if (made) {
                m_picture = std::move(*made);
                m_failure.reset();
                m_found = core::attenuationRange(*m_picture);
                m_shown = {};
                m_isSharp = sharp && !m_isMovedSince;
            } else if (made.error().code != core::ErrorCode::Cancelled) {
                m_failure = made.error();
                m_picture.reset();
            }
            // Newest wins: angles that came while this picture was being made are next; sharpness waits until they rest.
            if (m_isMovedSince && isVisible()) makeCoarse();
            update();
            emit pictureShown();
        });
}

QTransform RadiographView::screenFromPixel() const {
    const double columns = m_picture->camera.columns, rows = m_picture->camera.rows;
    const double scale = std::min(width() / columns, height() / rows);
    QTransform screen;
    screen.translate(0.5 * (width() - scale * columns), 0.5 * (height() - scale * rows));
    screen.scale(scale, scale);
    screen.translate(0.5, 0.5); // whole numbers lie at pixel centres
    return screen;
}

std::vector<PatientLine> RadiographView::lines() const {
    const auto marks = appendageMarks(m_session.record());
    std::vector<PatientLine> lines = appendageLines(m_session.measurement(), m_session.landing(), marks ? &*marks : nullptr);
    if (const auto& plan = m_session.record().septumPlan; plan && plan->content.crossing)
        lines.push_back({Role::Crossing, {*plan->content.crossing}, false, wordOf(Role::Crossing)});
    if (m_more)
        for (PatientLine& line : m_more())
            lines.push_back(std::move(line));
    return lines;
}

QString RadiographView::title() const {
    return tr("Simulated from CT · %1").arg(QString::fromStdString(core::words(m_angles)));
}

QString RadiographView::fillingWords() const {
    const auto made = scene();
    if (m_filling != Filling::Nothing && !made.chamber) return tr("nothing filled: no appendage is measured");
    switch (m_filling) {
    case Filling::Nothing:
        return tr("as CT has it");
    case Filling::Appendage:
        return tr("appendage filled with contrast medium");
    case Filling::AtriumAndAppendage:
        return tr("atrium and appendage filled with contrast medium");
    case Filling::AppendageAlone:
        return tr("appendage alone");
    case Filling::AtriumAndAppendageAlone:
        return tr("atrium and appendage alone");
    }
    return {};
}

QString RadiographView::note() const {
    const auto used = arm();
    if (!used) return {};
    const bool told = m_frame && m_frame->arm.sourceToIsocentreMm > 0.0 &&
                      m_frame->arm.sourceToDetectorMm > m_frame->arm.sourceToIsocentreMm;
    const QString distances =
        told ? tr("Distances from the file: source to isocentre %1, to detector %2.")
             : tr("Distances assumed: source to isocentre %1, to detector %2.");
    QString text = distances.arg(millimetres(used->sourceToIsocentreMm), millimetres(used->sourceToDetectorMm));
    if (m_frame)
        text += QLatin1Char(' ') + (m_frame->landingPixel ? tr("The landing zone is put where it was drawn on the frame.")
                                                          : tr("No file tells where the isocentre lies in the CT: the landing zone is put in the middle."));
    return tr("%1. %2").arg(fillingWords(), text);
}

QString RadiographView::problem() const {
    if (!m_session.volume())
        return m_session.hasCase() ? tr("This case has no CT: there is nothing to simulate a radiograph from.") : tr("Nothing is open.");
    return m_failure ? sentence(m_failure->message) : QString();
}

void RadiographView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHints(QPainter::TextAntialiasing | QPainter::SmoothPixmapTransform);
    painter.fillRect(rect(), tone::image);
    if (!m_picture || !m_session.volume()) {
        painter.setFont(labelFont(kTitlePx));
        painter.setPen(tone::onImageSoft);
        const QString why = problem();
        painter.drawText(rect().adjusted(16, 16, -16, -16), Qt::AlignCenter | Qt::TextWordWrap,
                         why.isEmpty() ? tr("Simulating the radiograph …") : why);
    } else {
        const bool alone = scene().alone;
        if (m_shown.isNull()) {
            RadiographWindow window = m_window.value_or(m_found);
            if (alone && !m_window) window.lowMm = 0.0;
            m_shown = radiographImage(*m_picture, window, alone ? EmptyRay::Light : EmptyRay::NoPicture);
        }
        const QTransform screen = screenFromPixel();
        const QRectF area = screen.mapRect(QRectF(-0.5, -0.5, m_shown.width(), m_shown.height()));
        painter.drawImage(area, m_shown);
        const QRectF head = labelPlate(QPointF(0, 16), title(), LabelSide::Right, QRectF(rect()), kTitlePx);
        painter.setFont(labelFont(kSmallestLabelPx));
        const QRectF noteArea = painter.boundingRect(QRectF(10, 0, width() - 20.0, height() - 8.0),
                                                     Qt::AlignBottom | Qt::AlignLeft | Qt::TextWordWrap, note());
        drawPatientLines(painter, area, m_picture->camera, screen, lines(), {head, noteArea});
        drawLabel(painter, QPointF(0, 16), title(), tone::onImage, LabelSide::Right, QRectF(rect()), kTitlePx);
        painter.setFont(labelFont(kSmallestLabelPx));
        painter.fillRect(noteArea.adjusted(-4, -2, 4, 2), kImagePlate);
        painter.setPen(tone::onImageSoft);
        painter.drawText(noteArea, Qt::AlignLeft | Qt::TextWordWrap, note());
    }
    if (hasFocus()) {
        painter.setPen(QPen(tone::onImageSoft, 1));
        painter.drawRect(rect().adjusted(0, 0, -1, -1));
    }
}

void RadiographView::resizeEvent(QResizeEvent*) {
    moved();
}

void RadiographView::showEvent(QShowEvent*) {
    if (!m_isSharp) moved();
}

bool RadiographView::event(QEvent* event) {
    // These keys are the view's while it has the focus, whatever the window does with them.
    if (event->type() == QEvent::ShortcutOverride) {
        const auto* key = static_cast<QKeyEvent*>(event);
        const bool plain = !(key->modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier));
        const bool letter = !(key->modifiers() & Qt::ShiftModifier) &&
                            (key->key() == Qt::Key_A || key->key() == Qt::Key_F || key->key() == Qt::Key_W);
        const bool arrow = key->key() == Qt::Key_Left || key->key() == Qt::Key_Right || key->key() == Qt::Key_Up ||
                           key->key() == Qt::Key_Down || key->key() == Qt::Key_Home;
        if (plain && (letter || arrow)) {
            event->accept();
            return true;
        }
    }
    return QWidget::event(event);
}

void RadiographView::keyPressEvent(QKeyEvent* event) {
    const double step = event->modifiers() & Qt::ShiftModifier ? kLargeKeyDeg : kArmKeyDeg;
    const auto turn = [&](double primary, double secondary) {
        turnTo({m_angles.primaryDeg + primary, m_angles.secondaryDeg + secondary});
    };
    switch (event->key()) {
    case Qt::Key_Left:
        return turn(-step, 0.0);
    case Qt::Key_Right:
        return turn(step, 0.0);
    case Qt::Key_Up:
        return turn(0.0, step);
    case Qt::Key_Down:
        return turn(0.0, -step);
    case Qt::Key_Home:
        return turnTo(m_home);
    case Qt::Key_A:
        return askAngles();
    case Qt::Key_F:
        return setFilling(static_cast<Filling>((static_cast<int>(m_filling) + 1) % 5));
    case Qt::Key_W:
        m_window.reset();
        m_shown = {};
        return update();
    case Qt::Key_Plus:
    case Qt::Key_Equal:
        return zoom(kArmKeyZoom);
    case Qt::Key_Minus:
        return zoom(1.0 / kArmKeyZoom);
    default:
        QWidget::keyPressEvent(event);
    }
}

/// A frame's field is its detector's.
void RadiographView::zoom(double factor) {
    if (m_frame && m_frame->arm.imagerSpacingMm.x() > 0.0) return;
    m_fieldMm = std::clamp(m_fieldMm / factor, kLeastFieldMm, kMostFieldMm);
    moved();
}

void RadiographView::mousePressEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton) {
        m_dragFrom = event->position();
        m_dragAngles = m_angles;
        setCursor(Qt::ClosedHandCursor);
    } else if (event->button() == Qt::RightButton && m_picture) {
        m_windowDrag = std::pair(event->position(), m_window.value_or(m_found));
    }
}

void RadiographView::mouseMoveEvent(QMouseEvent* event) {
    if (m_dragFrom) {
        // The heart's near side follows the hand: the detector goes the other way.
        const QPointF moved = event->position() - *m_dragFrom;
        turnTo({m_dragAngles.primaryDeg - kArmDegPerPixel * moved.x(), m_dragAngles.secondaryDeg + kArmDegPerPixel * moved.y()});
    } else if (m_windowDrag) {
        // As on CT: to the right widens, downwards makes darker. A pixel is a two-hundredth of what was found.
        const auto& [from, window] = *m_windowDrag;
        const double perPixel = std::max(m_found.highMm - m_found.lowMm, kLeastWindowMm) / 200.0;
        const QPointF moved = event->position() - from;
        const double centre = 0.5 * (window.lowMm + window.highMm) - perPixel * moved.y();
        const double width = std::max(window.highMm - window.lowMm + perPixel * moved.x(), kLeastWindowMm);
        m_window = RadiographWindow{centre - 0.5 * width, centre + 0.5 * width};
        m_shown = {};
        update();
    }
}

void RadiographView::mouseReleaseEvent(QMouseEvent*) {
    m_dragFrom.reset();
    m_windowDrag.reset();
    setCursor(Qt::OpenHandCursor);
}

void RadiographView::wheelEvent(QWheelEvent* event) {
    if (!(event->modifiers() & Qt::ControlModifier)) return event->ignore();
    zoom(zoomFactor(event->angleDelta().y()));
}

} // namespace gauge::app
