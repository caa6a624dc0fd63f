// The evidence on the view and its scale. Painting: cine_view_painting.cpp; mouse, keys and calibration: cine_view_input.cpp.
#include "app/views/cine_view.h"

#include "app/format/evidence_words.h"
#include "app/document/picture_drawings.h"

#include <QDoubleSpinBox>
#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <algorithm>
#include <utility>

namespace gauge::app {

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

} // namespace gauge::app
