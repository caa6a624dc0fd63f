#include "app/window/meeting_view.h"

#include "app/drawing/palette.h"
#include "app/format/evidence_words.h"
#include "app/format/words.h"
#include "app/models/key_values.h"
#include "app/views/cine_view.h"
#include "app/views/cross_section_view.h"
#include "app/views/long_section_view.h"
#include "app/views/surface_view.h"
#include "app/window/theme.h"
#include "core/record/picture_readings.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QScrollArea>
#include <QStackedWidget>
#include <QVBoxLayout>
#include <algorithm>
#include <set>
#include <tuple>

namespace gauge::app {
namespace {

// Smallest text of a meeting: 1/40 of the window's height.
constexpr int kLinesPerWindow = 40;

QLabel* wrapping(QWidget* parent) {
    auto* label = new QLabel(parent);
    label->setWordWrap(true);
    label->setTextFormat(Qt::RichText);
    label->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    return label;
}

QString coloured(const QString& text, const QColor& colour) {
    return QStringLiteral("<span style='color:%1'>%2</span>").arg(colour.name(), text.toHtmlEscaped());
}

/// The frame on which this evidence was measured first; the first one where nothing is drawn.
int measuredFrame(const core::CaseRecord& record, const std::string& evidence) {
    for (const auto& [id, drawing] : record.drawings)
        if (const auto* site = std::get_if<core::PictureSite>(&drawing.content.site); site && drawing.content.evidence == evidence)
            return site->frame;
    return 0;
}

} // namespace

int MeetingView::textPixels(int windowHeight) {
    return std::max(12, (windowHeight + kLinesPerWindow - 1) / kLinesPerWindow);
}

MeetingView::MeetingView(Session& session, ViewState& state, Answers& answers, EvidenceImages& images, QWidget* parent)
    : QWidget(parent), m_session(session), m_state(state), m_answers(answers), m_cine(new CineView(session, state, images)),
      m_pictures(new QStackedWidget(this)),
      m_title(new QLabel(this)), m_count(new QLabel(this)), m_values(wrapping(this)), m_size(wrapping(this)),
      m_caution(new QLabel(this)), m_side(new QScrollArea(this)) {
    setFocusPolicy(Qt::StrongFocus);
    setObjectName("meeting");
    auto* column = new QWidget;
    auto* inner = new QVBoxLayout(column);
    inner->setContentsMargins(18, 6, 18, 12);
    inner->setSpacing(24);
    inner->addWidget(m_values);
    inner->addWidget(m_size);
    inner->addStretch(1);
    m_side->setWidget(column);
    m_side->setWidgetResizable(true);
    m_side->setFrameShape(QFrame::NoFrame);
    m_side->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_side->setFocusPolicy(Qt::NoFocus);

    auto* head = new QHBoxLayout;
    head->setContentsMargins(18, 8, 18, 8);
    head->addWidget(m_title, 1);
    head->addWidget(m_count);
    auto* parts = new QHBoxLayout;
    parts->setSpacing(0);
    parts->addWidget(m_pictures, 60);
    parts->addWidget(m_side, 40);
    m_caution->setWordWrap(true);
    m_caution->setContentsMargins(18, 6, 18, 8);
    m_caution->setText(cautionParagraphs().front());
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addLayout(head);
    layout->addLayout(parts, 1);
    layout->addWidget(m_caution);

    const auto measured = [&session] { return session.measurement() != nullptr; };
    auto* longSection = new LongSectionView(session, state);
    auto* cross = new CrossSectionView(session, state);
    addSlide(tr("CT: long section"), longSection, {}, measured);
    addSlide(tr("CT: cross-section at the ostium"), cross, [&state] { state.showOstium(); }, measured);
    addSlide(tr("CT: cross-section at the landing zone"), cross, [&state] { state.showLanding(); }, measured);

    addSlide(tr("CT: surface of the blood"), new SurfaceView(session, state), {}, measured);
    addSlide(tr("CT, echo and fluoroscopy side by side"), makeComparison(), {}, [this] { return m_comparison.columnCount() > 1; });

    m_pictures->addWidget(m_cine);
    m_cine->setFocusPolicy(Qt::NoFocus);
    connect(&session.document(), &CaseDocument::changed, this, &MeetingView::refresh);
    connect(&session, &Session::measurementChanged, this, &MeetingView::refresh);
    connect(&answers, &Answers::changed, this, &MeetingView::refresh);
    connect(&answers, &Answers::sizingChanged, this, &MeetingView::refresh);
}

QWidget* MeetingView::makeComparison() {
    m_table = wrapping(this);
    m_table->setContentsMargins(18, 12, 18, 12);
    auto* scroll = new QScrollArea;
    scroll->setWidget(m_table);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_comparison.setAnswers(m_answers);
    return scroll;
}

/// The rows that have a value in more than one column, or all where there is one column only; and where each column comes from.
void MeetingView::refreshComparison() {
    m_comparison.setAnswers(m_answers);
    QString html = QStringLiteral("<table cellspacing='0' cellpadding='5' width='100%'><tr><td></td>");
    for (int column = 1; column < m_comparison.columnCount(); ++column) {
        html += QStringLiteral("<td align='right'><b>%1</b>").arg(m_comparison.headerData(column, Qt::Horizontal, Qt::DisplayRole).toString().toHtmlEscaped());
        for (const int role : {int(ComparisonModel::CarriedRole), int(ComparisonModel::DifferenceRole)})
            html += QStringLiteral("<br>") + coloured(m_comparison.headerData(column, Qt::Horizontal, role).toString(), tone::soft);
        html += QStringLiteral("</td>");
    }
    html += QStringLiteral("</tr>");
    QString heading;
    for (int row = 0; row < m_comparison.rowCount(); ++row) {
        const QModelIndex first = m_comparison.index(row, 0);
        if (first.data(ComparisonModel::IsHeadingRole).toBool()) heading = first.data().toString();
        int values = 0;
        for (int column = 1; column < m_comparison.columnCount(); ++column)
            values += m_comparison.index(row, column).data(ComparisonModel::NumberRole).isValid();
        if (values < std::min(2, m_comparison.columnCount() - 1)) continue;
        html += QStringLiteral("<tr><td>") + coloured(QStringLiteral("%1: %2").arg(heading, first.data().toString()), tone::soft) + QStringLiteral("</td>");
        for (int column = 1; column < m_comparison.columnCount(); ++column) {
            const QModelIndex cell = m_comparison.index(row, column);
            html += QStringLiteral("<td align='right'><b>") +
                    coloured(cell.data().toString(), cell.data(ComparisonModel::IsStaleRole).toBool() ? tone::warning : tone::text) + QStringLiteral("</b>");
            if (const QString difference = cell.data(ComparisonModel::DifferenceRole).toString(); !difference.isEmpty())
                html += QStringLiteral("<br>") + coloured(difference, cell.data(ComparisonModel::IsOutsideRole).toBool() ? tone::warning : tone::soft);
            html += QStringLiteral("</td>");
        }
        html += QStringLiteral("</tr>");
    }
    m_table->setText(html + QStringLiteral("</table>"));
}

void MeetingView::addSlide(const QString& title, QWidget* widget, std::function<void()> enter,
                           std::function<bool()> isThere) {
    if (m_pictures->indexOf(widget) < 0) m_pictures->addWidget(widget);
    widget->setFocusPolicy(Qt::NoFocus); // keys page here
    m_slides.push_back({title, widget, std::move(enter), std::move(isThere)});
}

/// Those of CT, then echo and X-ray in the order of the course, at last the comparison.
std::vector<const MeetingView::Slide*> MeetingView::present() const {
    std::vector<const Slide*> there;
    for (const Slide& slide : m_slides) {
        if (slide.widget->isAncestorOf(m_table))
            for (const Slide& evidence : m_evidence)
                there.push_back(&evidence);
        if (!slide.isThere || slide.isThere()) there.push_back(&slide);
    }
    return there;
}

/// Each echo view and X-ray run on which something is drawn, at the frame where it is drawn.
void MeetingView::refreshEvidence() {
    const core::CaseRecord& record = m_session.record();
    std::set<std::string> drawn;
    for (const auto& [id, drawing] : record.drawings)
        if (std::holds_alternative<core::PictureSite>(drawing.content.site)) drawn.insert(drawing.content.evidence);
    std::vector<std::pair<std::tuple<core::Stage, bool, double, std::string>, Slide>> slides;
    for (const auto& [id, entry] : record.evidence) {
        const core::Evidence& e = entry.content;
        if (e.kind == core::EvidenceKind::Ct || !drawn.contains(id)) continue;
        const QString title = tr("%1, %2").arg(evidenceTitle(e), momentWords(record, core::momentKey(e)));
        const auto enter = [this, id = QString::fromStdString(id), frame = measuredFrame(record, id)] { showEvidence(id, frame); };
        slides.push_back({{e.stage, e.kind == core::EvidenceKind::Fluoroscopy, e.probeAngleDeg.value_or(360.0), id},
                          Slide{title, m_cine, enter, {}}});
    }
    std::sort(slides.begin(), slides.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
    m_evidence.clear();
    for (auto& slide : slides)
        m_evidence.push_back(std::move(slide.second));
}

void MeetingView::showEvidence(const QString& id, int frame) {
    m_cine->setEvidence(id);
    m_cine->showFrame(frame);
}

int MeetingView::slideCount() const {
    return static_cast<int>(present().size());
}

void MeetingView::showSlide(int at) {
    const auto slides = present();
    if (slides.empty()) {
        m_title->setText(tr("Nothing is measured yet."));
        m_count->clear();
        return;
    }
    m_at = std::clamp(at, 0, static_cast<int>(slides.size()) - 1);
    const Slide& slide = *slides[static_cast<std::size_t>(m_at)];
    m_title->setText(slide.title);
    m_count->setText(tr("%1 of %2").arg(m_at + 1).arg(slides.size()));
    m_pictures->setCurrentWidget(slide.widget);
    m_side->setVisible(!slide.widget->isAncestorOf(m_table)); // the table needs the whole width, and says the values itself
    if (slide.enter) slide.enter();
}

void MeetingView::refresh() {
    if (!isVisible()) return;
    refreshEvidence();
    m_pictures->setVisible(slideCount() > 0);
    refreshValues();
    refreshSize();
    refreshComparison();
    useLargeType();
}

void MeetingView::refreshValues() {
    QString html;
    for (const KeyValue& line : keyValues(m_session.record())) {
        html += QStringLiteral("<p style='margin:0 0 10px 0'>") + coloured(line.what, tone::soft) + QStringLiteral("<br><b>") +
                coloured(line.value, line.stale ? tone::warning : tone::text) + QStringLiteral("</b>");
        if (line.stale) html += QLatin1Char(' ') + coloured(tr("out of date"), tone::warning);
        html += QStringLiteral("</p>");
    }
    m_values->setText(html);
}

void MeetingView::refreshSize() {
    m_sizes.setAnswers(m_answers);
    const auto& choice = m_session.record().sizing;
    const int row = choice && !choice->content.size.empty() ? m_sizes.rowOf(choice->content.size) : -1;
    if (row < 0) {
        m_size->setText(coloured(choice && !choice->content.size.empty()
                                     ? tr("Chosen size: %1. Its fit is not known yet.")
                                           .arg(QString::fromStdString(choice->content.size))
                                     : tr("No size is chosen yet."),
                                 tone::soft));
        return;
    }
    QString html = QStringLiteral("<p><b>") +
                   coloured(tr("Chosen size: %1").arg(QString::fromStdString(choice->content.size)), tone::text) +
                   QStringLiteral("</b></p>");
    for (const int column : {SizesModel::Fit, SizesModel::Lasting, SizesModel::Compression, SizesModel::DepthCheck}) {
        const QString what = m_sizes.headerData(column, Qt::Horizontal, Qt::DisplayRole).toString();
        html += QStringLiteral("<p style='margin:0 0 6px 0'>");
        if (column != SizesModel::Compression) html += coloured(what, tone::soft) + QLatin1Char(' '); // its words say what they are
        html += coloured(m_sizes.index(row, column).data().toString(), tone::text) + QStringLiteral("</p>");
    }
    for (const QString& warning : m_sizes.index(row, 0).data(SizesModel::WarningsRole).toStringList())
        html += QStringLiteral("<p style='margin:6px 0 0 0'>") + coloured(warning, tone::warning) + QStringLiteral("</p>");
    m_size->setText(html);
}

void MeetingView::useLargeType() {
    if (!isVisible()) return;
    const int small = textPixels(window()->height());
    setLabelScale(static_cast<double>(small) / kSmallestLabelPx);
    QFont font = this->font();
    font.setPixelSize(small);
    m_values->setFont(font);
    m_size->setFont(font);
    m_table->setFont(font);
    // Under the program's style sheet a size must stand in the label's own.
    const auto style = [](const QColor& colour, int pixels, const QString& more = {}) {
        return QStringLiteral("color: %1; font-size: %2px; %3").arg(colour.name()).arg(pixels).arg(more);
    };
    m_title->setStyleSheet(style(tone::text, small * 5 / 4, QStringLiteral("font-weight: 600;")));
    m_count->setStyleSheet(style(tone::soft, small));
    m_caution->setStyleSheet(style(tone::soft, small));
}

void MeetingView::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_PageDown:
    case Qt::Key_Right:
    case Qt::Key_Down:
    case Qt::Key_Space:
        showSlide(m_at + 1);
        break;
    case Qt::Key_PageUp:
    case Qt::Key_Left:
    case Qt::Key_Up:
    case Qt::Key_Backspace:
        showSlide(m_at - 1);
        break;
    case Qt::Key_Home:
        showSlide(0);
        break;
    case Qt::Key_End:
        showSlide(slideCount() - 1);
        break;
    case Qt::Key_Escape:
        emit left();
        break;
    default:
        QWidget::keyPressEvent(event);
    }
}

void MeetingView::resizeEvent(QResizeEvent* event) {
    useLargeType();
    QWidget::resizeEvent(event);
}

void MeetingView::hideEvent(QHideEvent* event) {
    setLabelScale(textScale());
    QWidget::hideEvent(event);
}

void MeetingView::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    useLargeType();
    refresh();
    showSlide(m_at);
    setFocus();
}

} // namespace gauge::app
