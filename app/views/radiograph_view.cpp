#include "app/views/radiograph_view.h"

#include "app/document/seats.h"
#include "app/document/view_planner.h"
#include "app/drawing/labels.h"
#include "app/drawing/mark_roles.h"
#include "app/drawing/projection_drawing.h"
#include "app/drawing/seat_drawing.h"
#include "app/format/core_sentences.h"
#include "app/format/quantity.h"
#include "app/panels/c_arm_settings.h"
#include "core/anatomy/chamber_mask.h"
#include "core/volume/chamber_volume.h"

#include <QComboBox>
#include <QLineEdit>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace gauge::app {
namespace {

constexpr int kTurningSide = 256, kSharpestSide = 768; // pixels along the longer side
constexpr int kTurningSlices = 2;                      // every second slice while it turns
constexpr int kSharpenMs = 160;
constexpr double kUsualFieldMm = 120.0;
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

RadiographView::RadiographView(Session& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_fieldMm(kUsualFieldMm), m_ask(new QLineEdit(this)) {
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
    connect(&session.document(), &CaseDocument::changed, this, [this] {
        const auto lies = turn();
        (lies ? std::optional(*lies) : std::nullopt) == m_turn ? update() : moved();
    });
    m_distances = usualDistances();
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
    if (filling == m_filling) return;
    m_filling = filling;
    m_window.reset();
    moved();
    emit fillingChanged();
}

QComboBox* RadiographView::makeFillingBox(QWidget* parent) {
    auto* box = new QComboBox(parent);
    box->addItems({tr("as CT has it"), tr("appendage filled"), tr("atrium and appendage filled"), tr("appendage alone"), tr("atrium and appendage alone")});
    box->setAccessibleName(tr("What is filled with contrast medium"));
    box->setToolTip(tr("What the simulated radiograph shows filled with contrast medium, or alone (key F)"));
    box->setCurrentIndex(static_cast<int>(m_filling));
    connect(box, &QComboBox::activated, this, [this](int row) { setFilling(static_cast<Filling>(row)); });
    connect(this, &RadiographView::fillingChanged, box, [this, box] { box->setCurrentIndex(static_cast<int>(m_filling)); });
    return box;
}

void RadiographView::setSeats(const Seats& seats) {
    m_seats = &seats;
    connect(&seats, &Seats::changed, this, qOverload<>(&QWidget::update));
    update();
}

core::Result<core::PatientTurn> RadiographView::turn() const {
    return patientTurn(m_session);
}

void RadiographView::setDistances(const std::optional<core::CArmDistances>& distances) {
    if (distances == m_distances) return;
    m_distances = distances;
    moved();
}

void RadiographView::turnTo(core::CArmAngles angles) {
    angles.primaryDeg = wrapped(angles.primaryDeg);
    angles.secondaryDeg = std::clamp(angles.secondaryDeg, -90.0, 90.0);
    if (angles == m_angles) return;
    m_angles = angles;
    moved();
    emit anglesChanged(m_angles);
}

void RadiographView::refreshChambers() {
    m_chambers = {};
    m_chambersAreNew = true;
    m_chamberJob.drop();
    if (isVisible()) makeChambers();
    moved();
}

/// The chambers of the measurement, as volumes of their own: once, in the background.
void RadiographView::makeChambers() {
    m_chambersAreNew = false;
    const core::AppendageMeasurement* m = m_session.measurement();
    if (!m || !m->trace) return;
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
    const auto lies = turn();
    if (!m_session.volume() || !lies) return std::nullopt;
    core::CArm arm = m_frame ? m_frame->arm : core::CArm{};
    arm.angles = m_angles;
    const QSizeF field = fieldPixels();
    arm.columns = static_cast<int>(field.width());
    arm.rows = static_cast<int>(field.height());
    if (!(arm.sourceToIsocentreMm > 0.0 && arm.sourceToDetectorMm > arm.sourceToIsocentreMm)) {
        const core::CArmDistances distances = m_distances.value_or(core::CArmDistances{});
        arm.sourceToIsocentreMm = distances.sourceToIsocentreMm;
        arm.sourceToDetectorMm = distances.sourceToDetectorMm;
    }
    if (!(arm.imagerSpacingMm.x() > 0.0 && arm.imagerSpacingMm.y() > 0.0))
        arm.imagerSpacingMm = Eigen::Vector2d::Constant(m_fieldMm * arm.magnification() / std::min(arm.columns, arm.rows));
    const Eigen::Vector2d middle = 0.5 * Eigen::Vector2d(arm.columns - 1, arm.rows - 1);
    const auto aimed = core::aimedAt(arm, aim(), m_frame && m_frame->landingPixel ? *m_frame->landingPixel : middle, *lies);
    return aimed ? std::optional(*aimed) : std::nullopt;
}

void RadiographView::moved() {
    m_isSharp = false;
    m_isMovedSince = true;
    const auto lies = turn();
    m_turn = lies ? std::optional(*lies) : std::nullopt;
    update();
    if (!m_session.volume() || !m_turn) {
        m_still.stop();
        m_job.drop();
        m_picture.reset();
        return;
    }
    if (!isVisible()) return;
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
        [arm, lies = *turn(), scene = scene(), everySlice](const core::WorkContext& work) -> core::Result<core::Radiograph> {
            const auto camera = core::cameraOf(arm, lies);
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
    if (const core::Seat* seat = m_seats ? m_seats->chosen() : nullptr)
        for (const SurfaceLine& line : seatSurfaceLines(*seat))
            lines.push_back({line.role, line.points, line.closed, line.label});
    return lines;
}

QString RadiographView::title() const {
    return tr("Simulated from CT · %1").arg(viewWords(m_angles));
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
    const QString distances = told                      ? tr("Distances from the file: source to isocentre %1, to detector %2.")
                              : m_distances           ? tr("Distances as you set them: source to isocentre %1, to detector %2.")
                                                      : tr("Distances assumed: source to isocentre %1, to detector %2.");
    QString text = distances.arg(millimetres(used->sourceToIsocentreMm), millimetres(used->sourceToDetectorMm));
    if (m_frame)
        text += QLatin1Char(' ') + (m_frame->landingPixel ? tr("The landing zone is put where it was drawn on the frame.")
                                                          : tr("No file tells where the isocentre lies in the CT: the landing zone is put in the middle."));
    if (const auto lies = turn(); lies && !lies->isNone())
        text += QLatin1Char(' ') + tr("The patient lies turned against the CT: %1.").arg(viewWords({lies->primaryDeg, lies->secondaryDeg}));
    return tr("%1. %2").arg(fillingWords(), text);
}

QString RadiographView::problem() const {
    if (!m_session.volume())
        return m_session.hasCase() ? tr("This case has no CT: there is nothing to simulate a radiograph from.") : tr("Nothing is open.");
    if (const auto lies = turn(); !lies)
        return tr("%1 The place for it is on the page Projection, under C-arm and patient.").arg(sentence(lies.error().message));
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
        const QRectF head = titlePlate(title(), QRectF(rect()), kTitlePx);
        painter.setFont(labelFont(kSmallestLabelPx));
        const QRectF noteArea = painter.boundingRect(QRectF(10, 0, width() - 20.0, height() - 8.0),
                                                     Qt::AlignBottom | Qt::AlignLeft | Qt::TextWordWrap, note());
        drawPatientLines(painter, area, m_picture->camera, screen, lines(), {head, noteArea});
        drawTitle(painter, title(), QRectF(rect()), tone::onImage, kTitlePx);
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
    if (m_chambersAreNew) makeChambers();
    if (!m_isSharp) moved();
}

} // namespace gauge::app
