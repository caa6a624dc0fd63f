#include "app/panels/depth_readout.h"

#include "app/drawing/depth_strip_drawing.h"
#include "app/format/quantity.h"
#include "app/views/shown_section.h"

#include <QPainter>

namespace gauge::app {
namespace {

constexpr StripCurve kCurves[] = {StripCurve::PerimeterDerived, StripCurve::Longest, StripCurve::Shortest};

struct Reading {
    QString where;
    const core::Section* section;
};

std::optional<Reading> reading(const Session& session, const ViewState& state, std::optional<double> hover) {
    const auto* m = session.measurement();
    if (!m) return std::nullopt;
    if (hover && *hover >= 0.0 && *hover <= m->axis.lengthMm && !session.isPreviewing())
        if (const auto* at = nearestProfile(*m, *hover))
            return Reading{QStringLiteral("pointer, depth ") + quantity(at->sMm, Unit::Millimetre),
                           &at->section};
    const auto shown = shownSection(session, state);
    return shown ? std::optional(Reading{shown->title, shown->section}) : std::nullopt;
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

QStringList DepthReadout::lines() const {
    QStringList text;
    if (const auto r = reading(m_session, m_state, m_hover)) {
        text << r->where;
        for (const StripCurve curve : kCurves)
            text << wordOf(curve) + QLatin1Char(' ') +
                        estimate(estimateOf(*r->section, curve), Unit::Millimetre);
        text << QStringLiteral("area ") + estimate(r->section->metrics.areaMm2, Unit::SquareMillimetre);
    }
    return text;
}

void DepthReadout::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), tone::panel);
    const auto r = reading(m_session, m_state, m_hover);
    if (!r) return;
    painter.setRenderHint(QPainter::Antialiasing);
    constexpr int kLinePx = 24, kLeft = 12, kSample = 22;
    int y = 12;
    painter.setFont(labelFont(12, true));
    painter.setPen(tone::text);
    painter.drawText(QRect(kLeft, y, width() - 2 * kLeft, kLinePx), Qt::AlignVCenter, r->where);
    const auto line = [&](const QString& word, const QString& value) {
        painter.setFont(labelFont(12));
        painter.setPen(tone::soft);
        painter.drawText(QRect(kLeft + kSample + 8, y, width() - 2 * kLeft, kLinePx), Qt::AlignVCenter, word);
        painter.setPen(tone::text);
        painter.drawText(QRect(kLeft, y, width() - 2 * kLeft, kLinePx), Qt::AlignVCenter | Qt::AlignRight,
                         value);
    };
    y += kLinePx + 2;
    for (const StripCurve curve : kCurves) {
        painter.setPen(penOf(curve));
        painter.drawLine(QPointF(kLeft, y + kLinePx / 2.0), QPointF(kLeft + kSample, y + kLinePx / 2.0));
        line(wordOf(curve), estimate(estimateOf(*r->section, curve), Unit::Millimetre));
        y += kLinePx;
    }
    line(tr("area"), estimate(r->section->metrics.areaMm2, Unit::SquareMillimetre));
}

} // namespace gauge::app
