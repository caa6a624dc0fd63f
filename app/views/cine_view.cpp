#include "app/views/cine_view.h"

#include "app/commands/picture_commands.h"
#include "app/document/picture_drawings.h"
#include "app/drawing/marks_drawing.h"
#include "app/format/evidence_words.h"
#include "app/format/quantity.h"
#include "core/cine/beat_position.h"

#include <QDoubleSpinBox>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QMouseEvent>
#include <QPainter>
#include <QPushButton>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>
#include <utility>

namespace gauge::app {
namespace {

constexpr double kScrubberHeight = 26.0;
constexpr double kSmallPicturePx = 300.0;
constexpr double kMargin = 10.0;

/// The strip of a picture that has no calibrated regions, above and below, in which names are usually burned in.
constexpr double kNameStrip = 0.12;

QPointF pointOf(const Eigen::Vector2d& p) {
    return {p.x(), p.y()};
}

} // namespace

CineView::CineView(Session& session, ViewState& state, EvidenceImages& images, QWidget* parent)
    : QWidget(parent), m_session(session), m_state(state), m_images(images),
      m_layer(new DrawingLayer(session, state, *this, *this)), m_ask(new QFrame(this)),
      m_askText(new QLabel(m_ask)), m_askMm(new QDoubleSpinBox(m_ask)) {
    setMouseTracking(true);
    setFocusPolicy(Qt::StrongFocus);
    setAttribute(Qt::WA_OpaquePaintEvent);
    setAccessibleName(tr("Cine"));
    m_ask->setObjectName("side");
    m_ask->setFrameShape(QFrame::StyledPanel);
    m_ask->setAutoFillBackground(true);
    m_askText->setWordWrap(true);
    m_askMm->setRange(0.1, 500.0);
    m_askMm->setDecimals(2);
    m_askMm->setSuffix(tr(" mm"));
    m_askMm->setAccessibleName(tr("Known length"));
    auto* use = new QPushButton(tr("Use it (Enter)"), m_ask);
    auto* leave = new QPushButton(tr("Cancel (Esc)"), m_ask);
    auto* layout = new QGridLayout(m_ask);
    layout->setContentsMargins(8, 6, 8, 6);
    layout->addWidget(m_askText, 0, 0, 1, 3);
    layout->addWidget(m_askMm, 1, 0);
    layout->addWidget(use, 1, 1);
    layout->addWidget(leave, 1, 2);
    m_ask->hide();
    connect(use, &QPushButton::clicked, this, [this] { finishCalibration(m_askMm->value()); });
    connect(leave, &QPushButton::clicked, this, &CineView::leaveCalibration);

    connect(&state, &ViewState::toolChanged, this, [this] {
        if (!m_state.tool()) return;
        m_player.setPlaying(false);
        leaveCalibration();
        pickPlace({});
    });
    connect(&m_player, &CinePlayer::frameChanged, this, [this](int frame) {
        m_layer->dropBegun(); // it lies on another frame
        update();
        emit frameShown(frame);
    });
    connect(&m_player, &CinePlayer::playingChanged, this, [this] { update(); });
    connect(&session.document(), &CaseDocument::changed, this, [this] { update(); });
    connect(&state, &ViewState::namesHiddenChanged, this, [this] { update(); });
    connect(&session, &Session::imagesChanged, this, [this] { // the same evidence is read from other files now
        if (m_cine) m_cine->disconnect(this);
        m_cine.reset();
        setEvidence(m_evidence);
    });
}

const core::Evidence* CineView::content() const {
    const auto found = m_session.record().evidence.find(m_evidence.toStdString());
    return found == m_session.record().evidence.end() ? nullptr : &found->second.content;
}

std::string CineView::sopInstanceUid() const {
    const core::Evidence* evidence = content();
    if (evidence && !evidence->sopInstanceUid.empty()) return evidence->sopInstanceUid;
    return data() ? data()->sopInstanceUid : std::string();
}

void CineView::setEvidence(const QString& id) {
    // After other images were opened the same evidence is another cine.
    if (id == m_evidence && m_cine && m_cine == m_images.openCine(id.toStdString())) return;
    if (m_cine) m_cine->disconnect(this);
    m_evidence = id;
    m_wantedFrame.reset();
    leaveCalibration();
    m_layer->dropBegun();
    m_window.reset();
    resetView();
    m_player.setCine({}, 0);
    m_cine = m_images.cine(id.toStdString());
    if (m_cine) {
        connect(m_cine.get(), &EvidenceCine::opened, this, &CineView::onOpened);
        connect(m_cine.get(), &EvidenceCine::failed, this, [this] { update(); });
        connect(m_cine.get(), &EvidenceCine::frameDecoded, this, [this](int frame) {
            if (frame == m_player.frame()) update();
        });
        if (m_cine->data()) onOpened();
    }
    const core::Evidence* evidence = content();
    setAccessibleName(evidence ? evidenceTitle(*evidence) : tr("Cine"));
    update();
}

void CineView::onOpened() {
    m_player.setCine(data()->times, m_cine->frameCount());
    if (data()->stack) m_player.setFrame(data()->stack->slices / 2); // its edges show little
    if (const auto frame = std::exchange(m_wantedFrame, std::nullopt)) m_player.setFrame(*frame);
    update();
    emit opened();
}

void CineView::showFrame(int frame) {
    m_player.setPlaying(false);
    if (data())
        m_player.setFrame(frame);
    else
        m_wantedFrame = frame;
}

void CineView::setOverlay(std::function<void(QPainter&, const QTransform&)> overlay) {
    m_overlay = std::move(overlay);
    update();
}

void CineView::pickPlace(std::function<void(const Eigen::Vector2d&)> picked) {
    if (picked) m_state.armTool(std::nullopt);
    if (!picked && !m_picked) return;
    m_picked = std::move(picked);
    setCursor(m_picked ? Qt::CrossCursor : Qt::ArrowCursor);
}

void CineView::resetView() {
    m_zoom = 1.0;
    m_pan = {};
    update();
}

QRectF CineView::scrubberArea() const {
    return {0.0, height() - kScrubberHeight, static_cast<double>(width()), kScrubberHeight};
}

QRectF CineView::pictureArea() const {
    return QRectF(rect()).adjusted(0, 0, 0, m_player.count() > 1 ? -kScrubberHeight : 0);
}

QTransform CineView::screenFromPixel() const {
    const QRectF area = pictureArea();
    const CineData* cine = data();
    if (!cine) return {};
    const double columns = cine->frames->columns(), rows = cine->frames->rows() * cine->pixelAspect;
    const double fit = std::min(area.width() / columns, area.height() / rows) * m_zoom;
    QTransform screen;
    screen.translate(area.center().x() + m_pan.x(), area.center().y() + m_pan.y());
    screen.scale(fit, fit * cine->pixelAspect);
    // Whole numbers are pixel centres.
    screen.translate(-0.5 * (columns - 1.0), -0.5 * (cine->frames->rows() - 1.0));
    return screen;
}

std::optional<core::Result<core::HandScale>> CineView::byHand() const {
    const core::Evidence* evidence = content();
    return evidence && data() ? scaleByHand(m_session.record(), sopInstanceUid(), *m_cine) : std::nullopt;
}

QString CineView::scaleText() const {
    return data() ? scaleWords(*data(), m_player.frame(), byHand()) : QString();
}

QString CineView::problem() const {
    if (m_evidence.isEmpty()) return tr("Choose evidence in the list on the left.");
    if (!m_cine) return tr("This evidence has no frames to show here.");
    if (m_cine->failure()) return QString::fromStdString(m_cine->failure()->message);
    return {};
}

std::optional<core::Drawing> CineView::blank(core::DrawingKind kind) const {
    const core::Evidence* evidence = content();
    if (!evidence || !data()) return std::nullopt;
    core::Drawing drawing;
    drawing.kind = kind;
    drawing.site = core::PictureSite{sopInstanceUid(), m_player.frame()};
    drawing.evidence = m_evidence.toStdString();
    return drawing;
}

bool CineView::shows(const core::Drawing& drawing) const {
    const auto* site = std::get_if<core::PictureSite>(&drawing.site);
    return site && data() && drawing.evidence == m_evidence.toStdString() && site->frame == m_player.frame() &&
           !drawing.points.empty();
}

bool CineView::isPicture(const QPointF& at) const {
    return data() && pictureArea().contains(at);
}

void CineView::armLine(core::DrawingRole role) {
    if (!data()) return;
    leaveCalibration();
    m_state.selectDrawing({});
    m_state.armTool(core::DrawingKind::Straight, role);
    setFocus();
}

QImage CineView::picture(const CineFrame& frame) {
    QImage image = frame.colour;
    if (frame.grey) {
        const auto& grey = *frame.grey;
        const auto shades = dicomio::shown(grey.values, data()->xray ? data()->xray->greyscale : dicomio::Greyscale{}, m_window);
        image = QImage(grey.columns, grey.rows, QImage::Format_Grayscale8);
        for (int y = 0; y < grey.rows; ++y)
            std::copy_n(shades.begin() + static_cast<std::ptrdiff_t>(y) * grey.columns, grey.columns, image.scanLine(y));
    }
    if (m_state.namesHidden()) hideNames(image);
    return image;
}

/// Names are burned in beside the calibrated regions; where an echo picture tells none, in the strips above and below.
void CineView::hideNames(QImage& image) const {
    if (data()->xray) return;
    QRegion outside(image.rect());
    for (const core::EchoRegion& region : data()->regions)
        outside -= QRect(QPoint(region.box.minX, region.box.minY), QPoint(region.box.maxX, region.box.maxY));
    if (data()->regions.empty()) {
        const int strip = static_cast<int>(std::lround(kNameStrip * image.height()));
        outside -= QRect(0, strip, image.width(), image.height() - 2 * strip);
    }
    QPainter painter(&image);
    for (const QRect& part : outside)
        painter.fillRect(part, Qt::black);
}

void CineView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::TextAntialiasing);
    painter.fillRect(rect(), tone::image);
    const QString why = problem();
    if (!data() || !why.isEmpty()) {
        painter.setFont(labelFont(13));
        painter.setPen(tone::onImageSoft);
        painter.drawText(rect().adjusted(16, 16, -16, -16), Qt::AlignCenter | Qt::TextWordWrap,
                         why.isEmpty() ? tr("Opening …") : why);
        return;
    }
    if (const CineFrame frame = m_cine->frame(m_player.frame()); !frame.isNull()) m_shown = picture(frame);
    const QTransform screen = screenFromPixel();
    painter.save();
    painter.setClipRect(pictureArea());
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.drawImage(screen.mapRect(QRectF(-0.5, -0.5, data()->frames->columns(), data()->frames->rows())), m_shown);
    painter.setRenderHint(QPainter::Antialiasing);
    if (m_overlay) m_overlay(painter, screen);
    m_layer->paint(painter, pictureArea());
    paintCalibration(painter, screen);
    painter.restore();
    paintWords(painter);
    if (m_player.count() > 1) paintScrubber(painter);
    if (hasFocus()) {
        painter.setBrush(Qt::NoBrush); // the time line left its own
        painter.setPen(QPen(tone::onImageSoft, 1));
        painter.drawRect(rect().adjusted(0, 0, -1, -1));
    }
}

void CineView::paintWords(QPainter& painter) {
    const QRectF area = pictureArea();
    const core::Evidence* evidence = content();
    QString title = evidence ? evidenceTitle(*evidence) : QString();
    if (data()->xray && static_cast<std::size_t>(m_player.frame()) < data()->xray->facts.frames.size())
        if (const auto& angles = data()->xray->facts.frames[static_cast<std::size_t>(m_player.frame())].angles)
            title = QString::fromStdString(core::words(*angles));
    drawLabel(painter, QPointF(0, 16), title, tone::onImage, LabelSide::Right, area);
    const bool scaled = hasScale(*data(), m_player.frame(), byHand());
    QString words = scaleText();
    // Beside other views there is room for the scale, not for where it comes from: that stands on the view alone.
    const qsizetype origin = words.contains(QLatin1Char('\n')) ? -1 : words.indexOf(QLatin1String(" ("));
    if (scaled && origin > 0 && area.height() < kSmallPicturePx)
        words.truncate(origin);
    if (m_state.namesHidden())
        words += QLatin1Char('\n') + (data()->xray ? tr("X-ray pictures are shown whole: look for burned-in names.")
                                                   : tr("Text outside the calibrated regions is blanked."));
    painter.setFont(labelFont(11));
    const QRectF box(area.left() + 6, area.top(), area.width() - 12, area.height() - 5);
    const QRectF needed = painter.boundingRect(box, Qt::AlignLeft | Qt::AlignBottom | Qt::TextWordWrap, words);
    painter.fillRect(needed.adjusted(-4, -2, 4, 3), QColor(0, 0, 0, 170));
    painter.setPen(scaled ? tone::onImageSoft : tone::onImageWarning);
    painter.drawText(box, Qt::AlignLeft | Qt::AlignBottom | Qt::TextWordWrap, words);
}

double CineView::frameX(int frame) const {
    const double left = kMargin, right = width() - kMargin;
    return left + (right - left) * frame / std::max(1, m_player.count() - 1);
}

void CineView::paintScrubber(QPainter& painter) {
    const QRectF area = scrubberArea();
    painter.fillRect(area, QColor(0x14, 0x18, 0x1C));
    painter.setRenderHint(QPainter::Antialiasing);
    const double line = area.bottom() - 7.0;
    painter.setPen(QPen(tone::onImageSoft, 1));
    painter.drawLine(QPointF(frameX(0), line), QPointF(frameX(m_player.count() - 1), line));
    // R waves, where the file tells them, between the frames that they fall between.
    const auto& times = m_player.times();
    for (const double r : times.rWaveMs) {
        if (times.startMs.size() < 2 || r < 0.0 || r > times.startMs.back()) continue;
        const auto next = std::lower_bound(times.startMs.begin(), times.startMs.end(), r);
        const auto frame = static_cast<int>(next - times.startMs.begin());
        const double x = frameX(frame);
        painter.setPen(QPen(tone::onImage, 1));
        painter.drawLine(QPointF(x, line - 5), QPointF(x, line + 2));
    }
    // Frames with drawings.
    painter.setBrush(colourOf(Role::Drawing));
    painter.setPen(Qt::NoPen);
    for (const auto& [id, entry] : m_session.record().drawings)
        if (const auto* site = std::get_if<core::PictureSite>(&entry.content.site);
            site && entry.content.evidence == m_evidence.toStdString())
            painter.drawEllipse(QPointF(frameX(site->frame), line), 2.5, 2.5);
    painter.setBrush(tone::onImage);
    const double x = frameX(m_player.frame());
    painter.drawPolygon(QPolygonF{{x, line - 1}, {x - 4, line + 6}, {x + 4, line + 6}});
    QStringList parts{tr("%1 of %2").arg(m_player.frame() + 1).arg(m_player.count())};
    if (const auto ms = times.betweenMs(0, m_player.frame())) parts << tr("%1 ms").arg(std::lround(*ms));
    if (const auto beat = core::beatPosition(times, m_player.frame()))
        parts << tr("%1 % of R-R").arg(static_cast<int>(100.0 * core::shareOfBeat(*beat)));
    if (m_player.speed() != 1.0) parts << tr("speed %1").arg(QString::number(m_player.speed(), 'g', 2));
    painter.setFont(labelFont(10));
    painter.setPen(tone::onImageSoft);
    const QString state = m_player.isPlaying() ? QStringLiteral("▶ ") : QString();
    painter.drawText(area.adjusted(kMargin, 1, -kMargin, -10), Qt::AlignLeft | Qt::AlignVCenter,
                     state + parts.join(QStringLiteral(" · ")));
}

void CineView::paintCalibration(QPainter& painter, const QTransform& screen) {
    if (!m_calibration) return;
    QPolygonF marks;
    for (const Eigen::Vector2d& p : m_calibration->points)
        marks << screen.map(pointOf(p));
    const QPen pen = penOf(Role::Drawing);
    if (marks.size() == 2) drawHaloLine(painter, marks[0], marks[1], pen);
    for (const QPointF& at : marks)
        drawMarker(painter, at, Role::Drawing, 1.0, 4.0);
    if (marks.size() == 2) return;
    QString words;
    switch (m_calibration->kind) {
    case Calibration::KnownLength:
        words = tr("Click both ends of a known length. Escape leaves.");
        break;
    case Calibration::CatheterWidth:
        words = tr("Click both edges of the catheter, square to it. Escape leaves.");
        break;
    case Calibration::CatheterShadow:
        words = tr("Click two places along the middle of a straight piece of the catheter. Escape leaves.");
        break;
    }
    drawLabel(painter, QPointF(pictureArea().left(), pictureArea().top() + 42), words, tone::onImageWarning, LabelSide::Right,
              pictureArea());
}

void CineView::startCalibration(Calibration kind) {
    if (!data()) return;
    m_player.setPlaying(false);
    m_state.armTool(std::nullopt);
    m_calibration = CalibrationMarks{kind, {}, m_player.frame()};
    m_ask->hide();
    setCursor(Qt::CrossCursor);
    setFocus();
    update();
}

void CineView::leaveCalibration() {
    if (!m_calibration) return;
    m_calibration.reset();
    m_ask->hide();
    setCursor(Qt::ArrowCursor);
    setFocus();
    update();
}

void CineView::askLength() {
    m_askText->setText(m_calibration->kind == Calibration::KnownLength
                           ? tr("How long is it between the marks?")
                           : tr("What is the catheter's outer diameter, as printed? (French divided by 3 is only near it.)"));
    m_askMm->setValue(m_calibration->kind == Calibration::KnownLength ? 10.0 : 2.0);
    const int room = std::max(200, width() - 16);
    m_ask->setFixedWidth(std::min(room, 380));
    m_ask->adjustSize();
    m_ask->move(8, std::max(0, height() - m_ask->height() - static_cast<int>(kScrubberHeight) - 8));
    m_ask->show();
    m_ask->raise();
    m_askMm->setFocus();
    m_askMm->selectAll();
}

void CineView::finishCalibration(double knownMm) {
    const core::Evidence* evidence = content();
    if (!m_calibration || m_calibration->points.size() != 2 || !evidence || !data()) return;
    core::PictureScale scale;
    scale.origin = m_calibration->kind == Calibration::KnownLength ? core::ScaleOrigin::HandCalibration
                                                                   : core::ScaleOrigin::Catheter;
    scale.byEdgeProfile = m_calibration->kind == Calibration::CatheterShadow;
    scale.frame = m_calibration->frame;
    scale.from = m_calibration->points[0];
    scale.to = m_calibration->points[1];
    scale.knownMm = knownMm;
    // A length marked in one region of an echo picture holds there alone.
    if (const auto region = core::regionAt(data()->regions, scale.from)) scale.within = data()->regions[*region].box;
    if (const auto made = handScale(scale, *data()); !made) {
        m_session.say(Message::Kind::Error, QString::fromStdString(made.error().message));
        m_calibration->points.clear();
        m_ask->hide();
        update();
        return;
    }
    const std::string uid = sopInstanceUid();
    leaveCalibration();
    m_session.document().push(std::make_unique<CalibratePicture>(m_session.document(), uid, scale));
}

bool CineView::isKey(int key) const {
    switch (key) {
    case Qt::Key_Space: case Qt::Key_Comma: case Qt::Key_Period: case Qt::Key_Left: case Qt::Key_Right: case Qt::Key_Home:
    case Qt::Key_End: case Qt::Key_BracketLeft: case Qt::Key_BracketRight: case Qt::Key_R: case Qt::Key_Plus:
    case Qt::Key_Minus: case Qt::Key_0: case Qt::Key_K:
        return true;
    case Qt::Key_Escape: case Qt::Key_Return: case Qt::Key_Enter:
        return m_calibration.has_value() || m_picked;
    default:
        return false;
    }
}

bool CineView::event(QEvent* event) {
    // While the view has the focus its keys are its own, whatever the menus use them for.
    if (event->type() == QEvent::ShortcutOverride) {
        const auto* key = static_cast<QKeyEvent*>(event);
        const bool plain = !(key->modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::ShiftModifier));
        if (plain && isKey(key->key())) {
            event->accept();
            return true;
        }
    }
    return QWidget::event(event);
}

void CineView::keyPressEvent(QKeyEvent* event) {
    if (event->modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::ShiftModifier) || !isKey(event->key())) {
        QWidget::keyPressEvent(event);
        return;
    }
    switch (event->key()) {
    case Qt::Key_Space: case Qt::Key_Comma: case Qt::Key_Left: case Qt::Key_Period: case Qt::Key_Right: case Qt::Key_Home:
    case Qt::Key_End:
        if (holdsFrame()) return;
        break;
    default:
        break;
    }
    switch (event->key()) {
    case Qt::Key_Space:
        m_player.toggle();
        break;
    case Qt::Key_Comma: case Qt::Key_Left:
        m_player.step(-1);
        break;
    case Qt::Key_Period: case Qt::Key_Right:
        m_player.step(1);
        break;
    case Qt::Key_Home:
        m_player.setFrame(0);
        break;
    case Qt::Key_End:
        m_player.setFrame(m_player.count() - 1);
        break;
    case Qt::Key_BracketLeft:
        m_player.setSpeed(m_player.speed() / 2.0);
        break;
    case Qt::Key_BracketRight:
        m_player.setSpeed(m_player.speed() * 2.0);
        break;
    case Qt::Key_R:
        m_player.setLooping(!m_player.isLooping());
        break;
    case Qt::Key_Plus:
        zoomBy(1.25, pictureArea().center());
        break;
    case Qt::Key_Minus:
        zoomBy(0.8, pictureArea().center());
        break;
    case Qt::Key_0:
        resetView();
        break;
    case Qt::Key_K:
        startCalibration(Calibration::KnownLength);
        break;
    case Qt::Key_Return: case Qt::Key_Enter:
        if (m_ask->isVisible()) finishCalibration(m_askMm->value());
        break;
    case Qt::Key_Escape:
        pickPlace({});
        leaveCalibration();
        break;
    }
}

/// While something is being drawn the frame stays, and the person is told why.
bool CineView::holdsFrame() {
    if (!isDrawing()) return false;
    m_session.say(Message::Kind::Information, tr("Finish the drawing on this frame first, or leave it with Escape."));
    return true;
}

void CineView::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    update();
    emit entered();
}

void CineView::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    if (m_ask->isVisible()) askLength();
}

void CineView::scrubTo(double x) {
    const double share = (x - kMargin) / std::max(1.0, width() - 2.0 * kMargin);
    m_player.setFrame(static_cast<int>(std::lround(share * (m_player.count() - 1))));
}

void CineView::mousePressEvent(QMouseEvent* event) {
    setFocus();
    emit entered();
    if (!data()) return;
    const QPointF at = event->position();
    if (event->button() == Qt::LeftButton && m_player.count() > 1 && scrubberArea().contains(at)) {
        if (holdsFrame()) return;
        m_player.setPlaying(false);
        m_scrubbing = true;
        scrubTo(at.x());
    } else if (event->button() == Qt::LeftButton && (m_picked || m_calibration)) {
        const QPointF pixel = screenFromPixel().inverted().map(at);
        const Eigen::Vector2d place(pixel.x(), pixel.y());
        if (m_picked) {
            const auto picked = std::exchange(m_picked, {});
            setCursor(Qt::ArrowCursor);
            picked(place);
        } else if (m_calibration->points.size() < 2) {
            m_calibration->points.push_back(place);
            if (m_calibration->points.size() == 2) askLength();
        }
        update();
    } else if (event->button() == Qt::RightButton && !data()->frames->isColour()) {
        if (const CineFrame frame = m_cine->frame(m_player.frame()); frame.grey && data()->xray)
            m_windowDrag.emplace(at, m_window.value_or(dicomio::firstWindow(data()->xray->greyscale, frame.grey->values)));
    } else if (event->button() == Qt::MiddleButton) {
        m_panDrag.emplace(at, m_pan);
    }
}

void CineView::mouseMoveEvent(QMouseEvent* event) {
    const QPointF at = event->position();
    if (m_scrubbing) {
        scrubTo(at.x());
    } else if (m_panDrag) {
        m_pan = m_panDrag->at(at);
        update();
    } else if (m_windowDrag) {
        // The whole picture's width of drag is as much as the window was wide.
        dicomio::Window window = m_windowDrag->second;
        const QPointF moved = (at - m_windowDrag->first) / std::max(100, width());
        window.centre += moved.y() * window.width;
        window.width = std::max(1.0, window.width * std::exp(2.0 * moved.x()));
        m_window = window;
        update();
    }
}

void CineView::mouseReleaseEvent(QMouseEvent*) {
    m_scrubbing = false;
    m_panDrag.reset();
    m_windowDrag.reset();
}

void CineView::zoomBy(double factor, const QPointF& at) {
    const double before = m_zoom;
    m_zoom = std::clamp(m_zoom * factor, 0.5, 20.0);
    const QPointF centre = pictureArea().center();
    m_pan = (at - centre) - (at - centre - m_pan) * (m_zoom / before);
    update();
}

void CineView::wheelEvent(QWheelEvent* event) {
    event->accept();
    if (event->modifiers() & Qt::ControlModifier) {
        zoomBy(zoomFactor(event->angleDelta().y()), event->position());
        return;
    }
    constexpr int kNotch = 120;
    m_wheelRest += event->angleDelta().y();
    const int steps = m_wheelRest / kNotch;
    m_wheelRest -= steps * kNotch;
    if (steps != 0 && !holdsFrame()) m_player.step(-steps);
}

} // namespace gauge::app
