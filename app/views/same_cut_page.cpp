#include "app/views/same_cut_page.h"

#include "app/commands/picture_commands.h"
#include "app/document/seats.h"
#include "app/drawing/labels.h"
#include "app/drawing/mark_roles.h"
#include "app/drawing/marks_drawing.h"
#include "app/drawing/seat_drawing.h"
#include "app/format/core_sentences.h"
#include "app/format/decision_words.h"
#include "app/format/evidence_words.h"
#include "app/format/quantity.h"
#include "app/format/rich_text.h"
#include "app/panels/editor_parts.h"
#include "app/views/wrapping_row.h"
#include "core/record/case_readings.h"
#include "core/record/echo_values.h"
#include "core/record/picture_readings.h"

#include <QAction>
#include <QComboBox>
#include <QLabel>
#include <QPainter>
#include <QSplitter>
#include <QTextDocument>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

namespace gauge::app {
namespace {

constexpr int kLeastLetters = 16; // of a choice: the rest shows when the list is open

struct Part {
    QString name;
    core::DifferencePart part;
    Qt::BrushStyle brush;
};

std::vector<Part> partsOf(const core::DifferenceSplit& split) {
    std::vector<Part> parts;
    if (split.plane) parts.push_back({SameCutPage::tr("plane"), *split.plane, Qt::Dense4Pattern});
    if (split.phase) parts.push_back({SameCutPage::tr("phase"), *split.phase, Qt::VerPattern});
    parts.push_back({SameCutPage::tr("pressure"), split.pressure, Qt::SolidPattern});
    parts.push_back({SameCutPage::tr("modality"), split.modality, Qt::BDiagPattern});
    parts.push_back({SameCutPage::tr("unexplained"), split.remainder, Qt::DiagCrossPattern});
    return parts;
}

QString partWords(const core::DifferencePart& part) {
    core::Estimate e;
    e.value = part.valueMm;
    e.components.observer = part.standardUncertaintyMm;
    return estimate(e, Unit::Millimetre);
}

} // namespace

void DifferenceBar::setSplit(const std::optional<core::DifferenceSplit>& split) {
    m_split = split;
    setVisible(split.has_value());
    update();
}

/// Parts that widen CT against echo stand right of the middle, the others left of it.
void DifferenceBar::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), tone::panel);
    if (!m_split) return;
    const auto parts = partsOf(*m_split);
    double right = 0.0, left = 0.0;
    for (const Part& part : parts)
        (part.part.valueMm >= 0.0 ? right : left) += std::abs(part.part.valueMm);
    const double perMm = (0.5 * width() - 12.0) / std::max({right, left, 0.5});
    const double middle = 0.5 * width();
    double toRight = middle, toLeft = middle;
    for (const Part& part : parts) {
        const double length = std::abs(part.part.valueMm) * perMm;
        const double x = part.part.valueMm >= 0.0 ? toRight : toLeft - length;
        (part.part.valueMm >= 0.0 ? toRight : toLeft) += part.part.valueMm >= 0.0 ? length : -length;
        const QRectF box(x, 8, length, height() - 16.0);
        painter.fillRect(box, QBrush(tone::soft, part.brush));
        painter.setPen(QPen(tone::text, 1));
        painter.drawRect(box);
    }
    painter.setPen(QPen(tone::text, 2));
    painter.drawLine(QPointF(middle, 2), QPointF(middle, height() - 2));
}

/// The CT in the plane of the echo frame, at the echo frame's size and place.
class SameCutPage::CutView : public QWidget {
public:
    CutView(SameCutPage& page) : QWidget(&page), m_page(page) {
        setAttribute(Qt::WA_OpaquePaintEvent);
        setMinimumSize(160, 150);
        setAccessibleName(SameCutPage::tr("CT in the plane of the echo frame"));
    }

protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        painter.fillRect(rect(), tone::image);
        const auto frame = m_page.cutFrame();
        const auto where = m_page.coordinatesOf(m_page.m_view->evidence().toStdString());
        if (!m_page.m_session.volume() || !frame || !where) {
            painter.setFont(labelFont(13));
            painter.setPen(tone::onImageSoft);
            painter.drawText(rect().adjusted(16, 16, -16, -16), Qt::AlignCenter | Qt::TextWordWrap,
                             m_page.m_session.volume()
                                 ? SameCutPage::tr("Mark at least three places in both CT and echo: then CT is cut in this plane.")
                                 : SameCutPage::tr("There is no CT to cut."));
            return;
        }
        const QTransform screen = m_page.m_view->screenFromPixel();
        SectionMap map;
        map.frame = *frame;
        map.zero = screen.map(QPointF(where->tipPixel.x(), where->tipPixel.y()));
        map.pixelsPerMm = screen.m11() / where->mmPerPixel.x();
        painter.drawImage(QPointF(0, 0), cutGrey(*m_page.m_session.volume(), map, QRectF(rect()), m_page.m_state.window(),
                                                 devicePixelRatioF()));
        painter.setRenderHint(QPainter::Antialiasing);
        for (const auto& [id, entry] : m_page.m_session.record().landmarks)
            drawMarker(painter, map.fromPatient(entry.content.ct), Role::Drawing);
        if (const core::Seat* seat = m_page.m_seats ? m_page.m_seats->chosen() : nullptr; seat && seat->seated)
            drawSeatLabel(painter, drawSeat(painter, map, *seat->seated), seatLabel(*seat), QRectF(rect()));
        drawTitle(painter, SameCutPage::tr("CT in this plane"), QRectF(rect()));
        drawScaleBar(painter, QRectF(rect()), map.pixelsPerMm);
    }

private:
    SameCutPage& m_page;
};

SameCutPage::SameCutPage(Session& session, ViewState& state, EvidenceImages& images, QWidget* parent)
    : QWidget(parent), m_session(session), m_state(state), m_images(images), m_views(new QComboBox(this)),
      m_places(new QComboBox(this)), m_view(new CineView(session, state, images, this)), m_cut(new CutView(*this)),
      m_bar(new DifferenceBar(this)), m_words(new QLabel) {
    setFocusProxy(m_view);
    m_views->setAccessibleName(tr("Echo view"));
    m_views->setToolTip(tr("The echo view whose plane CT is cut in"));
    m_places->setAccessibleName(tr("Place in CT"));
    m_places->setToolTip(tr("The place in CT that you mark on the echo frame next"));
    auto* mark = new QAction(tr("Mark it on echo"), this);
    mark->setShortcut(Qt::SHIFT | Qt::Key_P);
    mark->setShortcutContext(Qt::WidgetWithChildrenShortcut);
    mark->setToolTip(tr("Click the same place on the echo frame (key Shift+P)"));
    connect(mark, &QAction::triggered, this, &SameCutPage::markLandmark);
    auto* clear = new QAction(tr("Remove the last"), this);
    clear->setToolTip(tr("Remove the place that was marked last"));
    connect(clear, &QAction::triggered, this, [this] {
        if (m_session.record().landmarks.empty()) return;
        const auto last = std::max_element(m_session.record().landmarks.begin(), m_session.record().landmarks.end(),
                                           [](const auto& a, const auto& b) { return a.second.revision < b.second.revision; });
        m_session.document().push(std::make_unique<RemovePoseLandmark>(m_session.document(), std::string(last->first)));
    });
    m_actions = {mark, clear};
    addActions(m_actions);
    auto* choices = new QHBoxLayout;
    choices->setContentsMargins(10, 4, 10, 4);
    for (QComboBox* box : {m_views, m_places}) {
        box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        box->setMinimumContentsLength(kLeastLetters);
        choices->addWidget(box, 1);
    }
    auto* buttons = new WrappingRow;
    buttons->setContentsMargins(10, 0, 10, 4);
    for (QAction* action : m_actions) {
        auto* button = new QToolButton(this);
        button->setDefaultAction(action);
        buttons->addWidget(button);
    }
    auto* pair = new QHBoxLayout;
    pair->setSpacing(1);
    pair->addWidget(m_view, 1);
    pair->addWidget(m_cut, 1);
    m_words->setWordWrap(true);
    m_words->setTextFormat(Qt::RichText);
    m_words->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_words->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    m_words->setContentsMargins(12, 4, 12, 8);
    auto* scroll = scrolled(m_words);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addLayout(choices);
    layout->addLayout(buttons);
    layout->addLayout(pair, 3);
    layout->addWidget(m_bar);
    layout->addWidget(scroll, 2);

    connect(m_views, &QComboBox::activated, this, [this](int row) {
        m_chosen = true;
        m_view->setEvidence(m_views->itemData(row).toString());
        refresh();
    });
    m_view->setOverlay([this](QPainter& painter, const QTransform& screen) {
        const QPainterPath planned = drawPlannedSize(painter, screen);
        const LabelPlaces places = drawLandmarks(painter, screen);
        if (!planned.isEmpty())
            drawSeatLabel(painter, planned, tr("planned %1").arg(seatLabel(*m_seats->chosen())), QRectF(m_view->rect()), places);
    });
    connect(m_view, &CineView::opened, this, &SameCutPage::refresh);
    connect(m_view, &CineView::frameShown, m_cut, qOverload<>(&QWidget::update));
    connect(&images, &EvidenceImages::opened, this, &SameCutPage::refresh);
    connect(&session, &Session::imagesChanged, this, &SameCutPage::refreshViews);
    connect(&session, &Session::measurementChanged, this, &SameCutPage::refresh);
    connect(&session, &Session::landingChanged, this, &SameCutPage::refresh);
    connect(&state, &ViewState::windowChanged, m_cut, qOverload<>(&QWidget::update));
    connect(&state, &ViewState::crossingChanged, this, &SameCutPage::refresh);
    connect(&session.document(), &CaseDocument::changed, this, [this](CaseDocument::Part part) {
        using Changed = CaseDocument::Part;
        part == Changed::Evidence || part == Changed::Everything ? refreshViews() : refresh();
    });
    connect(&state, &ViewState::placeChanged, this, &SameCutPage::goToPlace);
    refreshViews();
}

void SameCutPage::setSeats(const Seats& seats) {
    m_seats = &seats;
    connect(&seats, &Seats::changed, m_view, qOverload<>(&QWidget::update));
    connect(&seats, &Seats::changed, m_cut, qOverload<>(&QWidget::update));
}

/// Markers first, so that no label lies over one; then as many labels as find a place. Returns what is taken.
LabelPlaces SameCutPage::drawLandmarks(QPainter& painter, const QTransform& screen) const {
    constexpr double kMarker = 6.0;
    LabelPlaces places;
    std::vector<std::pair<QPointF, QString>> labels;
    const core::Evidence* shown = m_view->content();
    for (const auto& [id, entry] : m_session.record().landmarks) {
        if (!shown || entry.content.echo.sopInstanceUid != shown->sopInstanceUid) continue;
        const QPointF at = screen.map(QPointF(entry.content.echoPoint.x(), entry.content.echoPoint.y()));
        drawMarker(painter, at, Role::Drawing, entry.content.echo.frame == m_view->player().frame() ? 1.0 : 0.5);
        places.keepFree({at - QPointF(kMarker, kMarker), at + QPointF(kMarker, kMarker)});
        labels.emplace_back(at, QString::fromStdString(entry.content.label));
    }
    for (const auto& [at, label] : labels)
        places.draw(painter, at, label, tone::onImage, {LabelSide::Right, LabelSide::Left, LabelSide::Above, LabelSide::Below},
                    QRectF(m_view->rect()), 11);
    return places;
}

/// The chosen size where the plane of the echo frame cuts it, by the probe's pose; its outline on the screen.
QPainterPath SameCutPage::drawPlannedSize(QPainter& painter, const QTransform& screen) const {
    const core::Seat* seat = m_seats ? m_seats->chosen() : nullptr;
    const auto frame = seat && seat->seated ? cutFrame() : std::nullopt;
    const auto where = coordinatesOf(m_view->evidence().toStdString());
    if (!frame || !where) return {};
    auto outlines = core::outlinesIn(*seat->seated, *frame);
    for (auto& outline : outlines)
        for (Eigen::Vector2d& p : outline)
            p = where->pixelFromMm(p);
    return drawSeatOutlines(painter, outlines, screen);
}

std::string SameCutPage::moment() const {
    const core::Evidence* evidence = m_view->content();
    return evidence ? core::momentKey(*evidence) : std::string();
}

void SameCutPage::refreshViews() {
    const QString shown = m_view->evidence();
    m_views->clear();
    for (const auto& [id, entry] : m_session.record().evidence)
        if (entry.content.kind == core::EvidenceKind::EchoCine)
            m_views->addItem(tr("%1, %2").arg(evidenceTitle(entry.content),
                                              momentWords(m_session.record(), core::momentKey(entry.content))),
                             QString::fromStdString(id));
    // What the person chose stays; before that the view on which most is marked.
    m_chosen = m_chosen && m_views->findData(shown) >= 0; // not in another case
    const int row = std::max(0, m_views->findData(m_chosen ? shown : mostMarked()));
    m_views->setCurrentIndex(m_views->count() ? row : -1);
    m_view->setEvidence(m_views->itemData(row).toString());
    refresh();
}

/// The echo view with the most places marked in it, then the one with a drawn width; the first of the list where there is neither.
QString SameCutPage::mostMarked() const {
    const core::CaseRecord& record = m_session.record();
    QString best;
    std::pair<std::ptrdiff_t, std::ptrdiff_t> most{0, 0};
    for (const auto& [id, entry] : record.evidence) {
        if (entry.content.kind != core::EvidenceKind::EchoCine) continue;
        const std::pair marked{
            std::count_if(record.landmarks.begin(), record.landmarks.end(),
                          [&](const auto& one) { return one.second.content.echo.sopInstanceUid == entry.content.sopInstanceUid; }),
            std::count_if(record.drawings.begin(), record.drawings.end(), [&](const auto& one) { return one.second.content.evidence == id; })};
        if (marked <= most) continue;
        most = marked;
        best = QString::fromStdString(id);
    }
    return best;
}

void SameCutPage::goToPlace() {
    const Place& place = m_state.place();
    const int row = m_views->findData(place.evidence);
    if ((place.page != Page::SameCut && place.page != Page::Echo) || row < 0) return;
    m_chosen = true;
    m_views->setCurrentIndex(row);
    m_view->setEvidence(place.evidence);
    m_view->showFrame(place.frame);
    refresh();
}

std::optional<core::ViewCoordinates> SameCutPage::coordinatesOf(const std::string& evidence) const {
    const auto cine = m_images.openCine(evidence);
    if (!cine || !cine->data()) return std::nullopt;
    for (const core::EchoRegion& region : cine->data()->regions)
        if (region.kind == core::EchoRegionKind::Tissue)
            if (const auto coordinates = core::viewCoordinates(region)) return coordinates;
    return std::nullopt;
}

core::Result<core::ProbePose> SameCutPage::pose() const {
    std::vector<core::SharedLandmark> landmarks;
    for (const auto& [id, entry] : m_session.record().landmarks) {
        for (const auto& [uid, evidence] : m_session.record().evidence) {
            const core::Evidence& e = evidence.content;
            if (e.sopInstanceUid != entry.content.echo.sopInstanceUid || core::momentKey(e) != moment() || !e.probeAngleDeg)
                continue;
            m_images.cine(uid); // its scale is needed
            if (const auto coordinates = coordinatesOf(uid))
                landmarks.push_back({entry.content.label, *e.probeAngleDeg, coordinates->mmFromPixel(entry.content.echoPoint),
                                     entry.content.ct});
        }
    }
    return core::fitProbePose(landmarks);
}

std::optional<core::SectionFrame> SameCutPage::cutFrame() const {
    const core::Evidence* evidence = m_view->content();
    const auto fitted = pose();
    if (!evidence || !evidence->probeAngleDeg || !fitted) return std::nullopt;
    return fitted->viewFrame(*evidence->probeAngleDeg);
}

void SameCutPage::markLandmark() {
    if (!m_view->data() || m_places->currentIndex() < 0) return;
    m_chosen = true; // the view stays under the hand
    const QString label = m_places->currentText();
    const int kind = m_places->currentData().toInt();
    core::PatientPoint ct = m_state.crossing();
    if (kind >= 0) {
        const auto mark = m_session.record().marks.find(static_cast<core::MarkKind>(kind));
        if (mark == m_session.record().marks.end()) return;
        ct = mark->second.point;
    }
    m_session.say(Message::Kind::Information, tr("Click the same place on the echo frame: %1. Escape leaves.").arg(label));
    m_view->setFocus();
    m_view->pickPlace([this, ct, label](const Eigen::Vector2d& pixel) { addLandmark(ct, pixel, label); });
}

void SameCutPage::addLandmark(const core::PatientPoint& ct, const Eigen::Vector2d& echoPixel, const QString& label) {
    const core::Evidence* evidence = m_view->content();
    if (!evidence) return;
    core::PoseLandmark landmark;
    landmark.ct = ct;
    landmark.echo = {evidence->sopInstanceUid, m_view->player().frame()};
    landmark.echoPoint = echoPixel;
    landmark.label = label.toStdString();
    m_session.document().push(std::make_unique<MarkPoseLandmark>(
        m_session.document(), core::freshId<core::PoseLandmark>(m_session.record()), landmark));
}

/// The landing-zone widths drawn on the views of this moment, in the views' millimetres.
std::vector<core::EchoLine> SameCutPage::landingLines() const {
    std::vector<core::EchoLine> lines;
    const core::CaseRecord& record = m_session.record();
    for (const core::DrawnReading& reading : core::drawnReadings(record, core::EvidenceKind::EchoCine, moment())) {
        const auto angle = record.evidence.at(reading.evidence).content.probeAngleDeg;
        const core::Drawing& drawing = record.drawings.at(reading.drawing).content;
        if (reading.role != core::DrawingRole::LandingWidth || !angle || drawing.points.size() != 2) continue;
        m_images.cine(reading.evidence); // its scale is needed
        if (const auto where = coordinatesOf(reading.evidence))
            lines.push_back({*angle, where->mmFromPixel(drawing.points[0]), where->mmFromPixel(drawing.points[1])});
    }
    return lines;
}

/// At what depth echo was read against CT.
QString SameCutPage::depthWords(const core::ProbePose& fitted) const {
    const core::LandingZone* landing = m_session.landing();
    const auto lines = landingLines();
    if (!landing || !m_session.isLandingMeasured() || lines.empty()) return {};
    const auto depth = core::depthBeyondSection(landing->section, fitted, lines);
    if (!depth) return paragraph(QString::fromStdString(depth.error().message));
    return paragraph(tr("The widths on echo lie %1 beyond the landing zone of CT, towards the tip (a negative number: nearer to the "
                        "atrium).")
                         .arg(estimate(*depth, Unit::Millimetre)));
}

std::optional<core::DifferenceSplit> SameCutPage::split(const core::Result<core::ProbePose>& fitted, QString& words) const {
    const core::CaseReadings readings = core::caseReadings(m_session.record());
    constexpr auto kQuantity = core::Quantity::LandingZoneAreaDerivedDiameter;
    const core::Observation *ct = nullptr, *echo = nullptr;
    for (std::size_t i = 0; i < readings.observations.size(); ++i) {
        if (readings.observations[i].quantity != kQuantity) continue;
        if (readings.origins[i].group == core::kCtValues) ct = &readings.observations[i];
        if (readings.origins[i].group == std::string(core::kEchoValues) + moment()) echo = &readings.observations[i];
    }
    if (!ct || !echo) {
        words += paragraph(tr("Why CT and echo differ can be told once the landing zone is measured on CT and on the echo views of "
                              "this moment."));
        return std::nullopt;
    }
    std::optional<core::DifferencePart> plane;
    if (const core::LandingZone* landing = m_session.landing(); landing && m_session.isLandingMeasured() && fitted) {
        std::vector<double> angles;
        const core::EchoMoment drawn = core::echoMoment(m_session.record(), moment());
        for (const core::EchoView& view : drawn.study.views)
            if (view.landingZoneMm) angles.push_back(view.angleDeg);
        if (const auto asEcho = core::ctAsEchoWouldRead(landing->section, *fitted, angles)) {
            const core::Estimate part = core::planePart(landing->section.metrics.areaDerivedDiameterMm,
                                                        asEcho->metrics.areaDerivedDiameterMm);
            plane = core::DifferencePart{part.value, part.standardUncertainty()};
        } else {
            words += paragraph(QString::fromStdString(asEcho.error().message));
        }
    }
    const auto made = core::splitDifference(*ct, *echo, core::PressureLaw::Logarithmic, {}, plane);
    if (!made) {
        words += paragraph(QString::fromStdString(made.error().message));
        return std::nullopt;
    }
    words += paragraph(tr("Area-derived diameter of the landing zone, CT less echo: %1. Of this:").arg(partWords(made->difference)));
    QStringList parts;
    for (const Part& part : partsOf(*made))
        parts << tr("%1: %2").arg(part.name, partWords(part.part));
    words += paragraph(parts.join(QStringLiteral("; ")));
    if (!made->plane)
        words += paragraph(tr("The plane's part is not told: it needs the probe's place, from places marked in both."));
    if (fitted) words += depthWords(*fitted);
    if (!made->phase && ct->phase != echo->phase)
        words += paragraph(tr("CT was read at %1, echo at %2: what the phase changes beyond its pressure lies in the unexplained part.")
                               .arg(phaseWords(ct->phase), phaseWords(echo->phase)));
    for (const core::Notice& notice : made->notices)
        words += paragraph(sentence(notice));
    return *made;
}

void SameCutPage::bringUpToDate() {
    const int chosen = m_places->currentIndex();
    m_places->clear();
    for (const auto& [kind, mark] : m_session.record().marks)
        m_places->addItem(capitalised(wordOf(roleOf(kind))), static_cast<int>(kind));
    if (m_session.volume()) m_places->addItem(tr("Crossing of the scanner-axis sections"), -1);
    m_places->setCurrentIndex(std::clamp(chosen, 0, std::max(0, m_places->count() - 1)));

    QString words;
    const auto fitted = pose();
    if (m_views->count() == 0) {
        words = paragraph(tr("There are no echo views in this case."));
    } else if (!fitted) {
        words = paragraph(QString::fromStdString(fitted.error().message));
    } else {
        words = paragraph(tr("The probe is placed by %n place(s) marked in both; they lie %1 apart after the fit (root mean square).",
                             nullptr, static_cast<int>(fitted->residualMm.size()))
                              .arg(quantity(fitted->rmsResidualMm, Unit::Millimetre)));
        for (const core::Notice& notice : fitted->notices)
            words += paragraph(sentence(notice));
        const core::Evidence* evidence = m_view->content();
        const core::LandingZone* landing = m_session.landing();
        if (evidence && evidence->probeAngleDeg && landing && m_session.isLandingMeasured()) {
            const auto width = core::ctWidthInView(landing->section, *fitted, *evidence->probeAngleDeg);
            words += paragraph(width ? tr("The landing zone as CT reads it in this view: %1").arg(estimate(*width, Unit::Millimetre))
                                     : QString::fromStdString(width.error().message));
        }
    }
    if (const auto coordinates = coordinatesOf(m_view->evidence().toStdString()); coordinates && !coordinates->tipIsTold)
        words += paragraph(tr("The file does not tell where the tip of the sector lies: the middle of the region's upper edge stands "
                              "for it."));
    m_bar->setSplit(split(fitted, words));
    m_words->setText(words);
    m_cut->update();
}

QString SameCutPage::text() const {
    QTextDocument document;
    document.setHtml(m_words->text());
    return document.toPlainText();
}

} // namespace gauge::app
