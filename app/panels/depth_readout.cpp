#include "app/panels/depth_readout.h"

#include "app/drawing/depth_strip_bands.h"
#include "app/drawing/depth_strip_drawing.h"
#include "app/format/decision_words.h"
#include "app/format/quantity.h"
#include "app/views/shown_section.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

namespace gauge::app {
namespace {

constexpr StripCurve kCurves[] = {StripCurve::PerimeterDerived, StripCurve::Longest, StripCurve::Shortest};

struct Reading {
    QString where;
    const core::Section* section;
    double depthMm;
    bool measured;
};

std::optional<Reading> reading(const Session& session, const ViewState& state, std::optional<double> hover) {
    const auto* m = session.measurement();
    if (!m) return std::nullopt;
    if (hover && *hover >= 0.0 && *hover <= m->axis.lengthMm && !session.isPreviewing())
        if (const auto* at = nearestProfile(*m, *hover))
            return Reading{DepthReadout::tr("pointer, depth %1").arg(quantity(at->sMm, Unit::Millimetre)), &at->section,
                           at->sMm, true};
    const auto shown = shownSection(session, state);
    return shown ? std::optional(Reading{shown->title, shown->section, shown->depthMm, shown->measured}) : std::nullopt;
}

} // namespace

DepthReadout::DepthReadout(Session& session, ViewState& state, QWidget* parent)
    : QWidget(parent), m_session(session), m_state(state) {
    const auto repaint = [this] { update(); };
    connect(&session, &Session::measurementChanged, this, repaint);
    connect(&session, &Session::landingChanged, this, repaint);
    connect(&state, &ViewState::depthChanged, this, repaint);
}

void DepthReadout::setHover(std::optional<double> mm) {
    m_hover = mm;
    update();
}

void DepthReadout::setAnswers(Answers& answers) {
    m_answers = &answers;
    const auto repaint = [this] { update(); };
    connect(&answers, &Answers::changed, this, repaint);
    connect(&answers, &Answers::sizingChanged, this, repaint);
}

std::optional<DepthReadout::Content> DepthReadout::content() const {
    const auto r = reading(m_session, m_state, m_hover);
    if (!r) return std::nullopt;
    Content content{r->where, {}};
    const auto told = [&](const core::Estimate& value, Unit unit) { return r->measured ? estimate(value, unit) : tr("measuring …"); };
    for (const StripCurve curve : kCurves)
        content.lines.push_back({std::nullopt, wordOf(curve), told(estimateOf(*r->section, curve), Unit::Millimetre), {}});
    content.lines.push_back({std::nullopt, tr("area"), told(r->section->metrics.areaMm2, Unit::SquareMillimetre), {}});
    const auto answer = m_answers ? stripAnswer(m_session, *m_answers) : std::nullopt;
    if (!answer) {
        for (std::size_t i = 0; i < std::size(kCurves); ++i)
            content.lines[i].pen = penOf(kCurves[i]);
        return content;
    }
    if (const auto at = answer->nearest(r->depthMm))
        for (const StripBand band : kStripBands)
            content.lines.push_back({penOf(band), wordsOf(*answer, band), wordsOf(answer->band(band).widths[*at]),
                                     pressureWords(answer->band(band).pressureMmHg)});
    return content;
}

QStringList DepthReadout::lines() const {
    QStringList text;
    if (const auto shown = content()) {
        text << shown->title;
        for (const Line& line : shown->lines)
            text << line.words + QLatin1Char(' ') + line.value;
    }
    return text;
}

QSize DepthReadout::minimumSizeHint() const {
    constexpr double kLeastPx = 272; // that words and value stand beside each other with the usual letters
    return {static_cast<int>(std::lround(kLeastPx * labelScale())), 160};
}

void DepthReadout::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), tone::panel);
    const auto shown = content();
    if (!shown) return;
    painter.setRenderHint(QPainter::Antialiasing);
    constexpr double kLeft = 10, kSample = 20, kTop = 8, kMostLine = 24;
    const QFontMetricsF metrics(labelFont(12));
    const auto fits = [&](const Line& entry) {
        return kSample + 6 + metrics.horizontalAdvance(entry.words) + 8 + metrics.horizontalAdvance(entry.value) <=
               width() - 2 * kLeft;
    };
    // A value that does not fit beside its words goes below them; where there is no height for that, the words are shortened.
    const auto tooWide = std::count_if(shown->lines.begin(), shown->lines.end(), [&](const Line& entry) { return !fits(entry); });
    const auto heightOf = [&](std::ptrdiff_t rows) { return (height() - 1.5 * kTop) / static_cast<double>(rows); };
    const auto rows = static_cast<std::ptrdiff_t>(shown->lines.size()) + 1;
    const bool below = heightOf(rows + tooWide) >= metrics.height();
    const double line = std::min(kMostLine, heightOf(below ? rows + tooWide : rows));
    double y = kTop;
    painter.setFont(labelFont(12, true));
    painter.setPen(tone::text);
    painter.drawText(QRectF(kLeft, y, width() - 2 * kLeft, line), Qt::AlignVCenter, shown->title);
    for (const Line& entry : shown->lines) {
        y += line;
        QRectF row(kLeft, y, width() - 2 * kLeft, line);
        if (entry.pen) {
            painter.setPen(*entry.pen);
            painter.drawLine(QPointF(row.left(), row.center().y()), QPointF(row.left() + kSample, row.center().y()));
        }
        painter.setFont(labelFont(12));
        painter.setPen(tone::soft);
        const bool isShort = !fits(entry) && !below && !entry.shortWords.isEmpty();
        painter.drawText(row.adjusted(kSample + 6, 0, 0, 0), Qt::AlignVCenter, isShort ? entry.shortWords : entry.words);
        if (!fits(entry) && below) row.moveTop(y += line);
        painter.setPen(tone::text);
        painter.drawText(row, Qt::AlignVCenter | Qt::AlignRight, entry.value);
    }
}

} // namespace gauge::app
