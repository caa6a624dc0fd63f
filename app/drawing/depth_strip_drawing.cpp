#include "app/drawing/depth_strip_drawing.h"

#include "app/drawing/marks_drawing.h"
#include "app/format/quantity.h"

#include <QFontMetricsF>
#include <QPainterPath>
#include <algorithm>
#include <array>
#include <cmath>

namespace gauge::app {
namespace {

constexpr std::array kCurves{StripCurve::Longest, StripCurve::PerimeterDerived, StripCurve::Shortest};
constexpr double kHeadPx = 26.0, kFootPx = 24.0;

double niceStep(double pixelsPerMm, double leastPixels) {
    for (const double step : {1.0, 2.0, 5.0, 10.0, 20.0, 50.0})
        if (step * pixelsPerMm >= leastPixels) return step;
    return 100.0;
}

void drawGrid(QPainter& painter, const WidthScale& widths, const DepthScale& depth) {
    const QRectF& plot = widths.plot;
    painter.setFont(labelFont(11));
    const double widthStep = niceStep(plot.height() / widths.topMm, 26.0);
    for (double mm = 0; mm <= widths.topMm + 1e-6; mm += widthStep) {
        const double y = std::round(widths.yFromMm(mm)) + 0.5;
        painter.setPen(QPen(mm == 0 ? tone::border.lighter(140) : tone::border, 1));
        painter.drawLine(QPointF(plot.left(), y), QPointF(plot.right(), y));
        if (mm > 0 && y > plot.top() + 12) {
            painter.setPen(tone::faint);
            painter.drawText(QRectF(plot.left() + 4, y - 15, 60, 14), Qt::AlignLeft | Qt::AlignBottom,
                             quantity(mm, Unit::Millimetre).replace(QStringLiteral(".0"), QString()));
        }
    }
    const double depthStep = niceStep(depth.pixelsPerMm, 44.0);
    const double first = std::ceil(depth.mmFromX(plot.left() + 14) / depthStep) * depthStep;
    for (double mm = first; depth.xFromMm(mm) < plot.right() - 14; mm += depthStep) {
        const double x = std::round(depth.xFromMm(mm)) + 0.5;
        painter.setPen(QPen(tone::border.lighter(140), 1));
        painter.drawLine(QPointF(x, plot.bottom()), QPointF(x, plot.bottom() + 4));
        painter.setPen(tone::faint);
        const QString text = QString::number(mm, 'f', 0).replace(QLatin1Char('-'), QChar(0x2212));
        painter.drawText(QRectF(x - 30, plot.bottom() + 5, 60, 15), Qt::AlignCenter, text);
    }
}

/// Consecutive runs of the profile; a gap of several steps is not bridged.
void drawCurve(QPainter& painter, const WidthScale& widths, const DepthScale& depth,
               const core::AppendageMeasurement& m, StripCurve curve) {
    constexpr double kGapMm = 1.6;
    const auto& profile = m.profile;
    for (std::size_t begin = 0; begin < profile.size();) {
        std::size_t end = begin + 1;
        while (end < profile.size() && profile[end].sMm - profile[end - 1].sMm <= kGapMm)
            ++end;
        QPolygonF line, band, lower;
        for (std::size_t i = begin; i < end; ++i) {
            const core::Estimate& e = estimateOf(profile[i].section, curve);
            const double x = depth.xFromMm(profile[i].sMm), u = e.standardUncertainty();
            line << QPointF(x, widths.yFromMm(e.value));
            band << QPointF(x, widths.yFromMm(e.value + u));
            lower << QPointF(x, widths.yFromMm(e.value - u));
        }
        std::reverse(lower.begin(), lower.end());
        band += lower;
        QColor fill = penOf(curve).color();
        fill.setAlpha(curve == StripCurve::PerimeterDerived ? 70 : 42);
        painter.setPen(Qt::NoPen);
        painter.setBrush(fill);
        painter.drawPolygon(band);
        painter.setPen(penOf(curve));
        painter.drawPolyline(line);
        begin = end;
    }
}

void drawLegend(QPainter& painter, const QRectF& area) {
    const QFont font = labelFont(11);
    painter.setFont(font);
    const QFontMetricsF metrics(font);
    double words = 0;
    for (const StripCurve curve : kCurves)
        words += metrics.horizontalAdvance(wordOf(curve));
    // Samples and gaps give way first where the strip is narrow.
    const double room = (area.width() - words - 20) / static_cast<double>(kCurves.size());
    const double sample = std::clamp(0.5 * room, 12.0, 26.0), gap = std::clamp(0.3 * room, 6.0, 18.0);
    double x = area.right() - 10;
    for (auto it = kCurves.rbegin(); it != kCurves.rend(); ++it) {
        const QString word = wordOf(*it);
        x -= metrics.horizontalAdvance(word);
        painter.setPen(tone::soft);
        painter.drawText(QPointF(x, area.top() + 17), word);
        x -= sample + 5;
        painter.setPen(penOf(*it));
        painter.drawLine(QPointF(x, area.top() + 13), QPointF(x + sample, area.top() + 13));
        x -= gap;
    }
}

/// What the strip shows; a narrow one has room for the legend only.
void drawTitle(QPainter& painter, const QRectF& area) {
    constexpr double kRoomPx = 640.0;
    if (area.width() < kRoomPx) return;
    painter.setFont(labelFont(11));
    painter.setPen(tone::soft);
    painter.drawText(QPointF(area.left() + 10, area.top() + 17),
                     QStringLiteral("Width against depth along the axis, mm"));
}

void drawUpright(QPainter& painter, const QRectF& plot, double x, const QPen& pen) {
    drawHaloLine(painter, {x, plot.top()}, {x, plot.bottom()}, pen);
}

void drawGrip(QPainter& painter, const QRectF& plot, double x, bool active) {
    const QRectF grip(x - 6, plot.top() + plot.height() * 0.5 - 14, 12, 28);
    painter.setPen(QPen(QColor(0, 0, 0, 170), 1));
    painter.setBrush(active ? colourOf(Role::Landing).lighter(125) : colourOf(Role::Landing));
    painter.drawRoundedRect(grip, 4, 4);
    painter.setPen(QPen(QColor(10, 20, 30), 1.4));
    for (const double dx : {-2.0, 2.0})
        painter.drawLine(QPointF(x + dx, grip.top() + 8), QPointF(x + dx, grip.bottom() - 8));
}

void drawCursor(QPainter& painter, const QRectF& plot, double x) {
    painter.setPen(QPen(tone::text, 1, Qt::DotLine));
    painter.drawLine(QPointF(x, plot.top()), QPointF(x, plot.bottom()));
    painter.setPen(Qt::NoPen);
    painter.setBrush(tone::text);
    painter.drawPolygon(
        QPolygonF{{x, plot.bottom() - 7}, {x + 5, plot.bottom() + 1}, {x - 5, plot.bottom() + 1}});
}

void drawHover(QPainter& painter, const WidthScale& widths, const DepthScale& depth,
               const core::ProfileSection& at) {
    const double x = depth.xFromMm(at.sMm);
    painter.setPen(QPen(tone::soft, 1));
    painter.drawLine(QPointF(x, widths.plot.top()), QPointF(x, widths.plot.bottom()));
    painter.setPen(Qt::NoPen);
    painter.setBrush(tone::text);
    for (const StripCurve curve : kCurves)
        painter.drawEllipse(QPointF(x, widths.yFromMm(estimateOf(at.section, curve).value)), 3, 3);
}

/// Ostium, tip, landing zones and the shown depth as upright lines.
void drawPlaces(QPainter& painter, const QRectF& plot, const DepthScale& depth,
                const DepthStripScene& scene) {
    drawUpright(painter, plot, depth.xFromMm(0), penOf(Role::Ostium, 2.0));
    drawUpright(painter, plot, depth.xFromMm(scene.measurement->axis.lengthMm), penOf(Role::Tip, 2.0));
    if (scene.cursorMm) drawCursor(painter, plot, depth.xFromMm(*scene.cursorMm));
    for (std::size_t i = 0; i < scene.landingsMm.size(); ++i) {
        const double x = depth.xFromMm(scene.landingsMm[i]);
        drawUpright(painter, plot, x, penOf(Role::Landing, 2.0));
        if (i == 0) drawGrip(painter, plot, x, scene.active);
    }
}

/// Their words, over every line: ostium to the left of its line, the others where there is room.
void drawPlaceWords(QPainter& painter, const QRectF& area, const QRectF& plot, const DepthScale& depth,
                    const DepthStripScene& scene) {
    constexpr double kRoomPx = 160.0;
    const core::AppendageMeasurement& m = *scene.measurement;
    const auto side = [&](double x) {
        return x + kRoomPx < area.right() ? LabelSide::Right : LabelSide::Left;
    };
    drawLabel(painter, {depth.xFromMm(0), plot.top() + 12}, wordOf(Role::Ostium), colourOf(Role::Ostium),
              LabelSide::Left, area);
    const double tipX = depth.xFromMm(m.axis.lengthMm);
    drawLabel(painter, {tipX, plot.top() + 12},
              wordOf(Role::Tip) + QLatin1Char(' ') + estimate(m.depthAlongAxisMm, Unit::Millimetre),
              colourOf(Role::Tip), side(tipX), area);
    for (const double mm : scene.landingsMm)
        drawLabel(painter, {depth.xFromMm(mm), plot.bottom() - 14},
                  wordOf(Role::Landing) + QLatin1Char(' ') + quantity(mm, Unit::Millimetre),
                  colourOf(Role::Landing), side(depth.xFromMm(mm)), area);
}

} // namespace

QString wordOf(StripCurve curve) {
    switch (curve) {
    case StripCurve::PerimeterDerived:
        return QStringLiteral("perimeter-derived");
    case StripCurve::Longest:
        return QStringLiteral("longest");
    case StripCurve::Shortest:
        return QStringLiteral("shortest");
    }
    return {};
}

QPen penOf(StripCurve curve) {
    switch (curve) {
    case StripCurve::PerimeterDerived:
        return QPen(tone::text, 2.2);
    case StripCurve::Longest: {
        QPen pen(tone::text, 1.5, Qt::CustomDashLine, Qt::FlatCap);
        pen.setDashPattern({6.0, 3.0});
        return pen;
    }
    case StripCurve::Shortest: {
        QPen pen(tone::text, 1.5, Qt::CustomDashLine, Qt::FlatCap);
        pen.setDashPattern({1.5, 2.5});
        return pen;
    }
    }
    return QPen(tone::text);
}

const core::Estimate& estimateOf(const core::Section& section, StripCurve curve) {
    switch (curve) {
    case StripCurve::Longest:
        return section.metrics.longestDiameterMm;
    case StripCurve::Shortest:
        return section.metrics.shortestDiameterMm;
    case StripCurve::PerimeterDerived:
        break;
    }
    return section.metrics.perimeterDerivedDiameterMm;
}

WidthScale widthScale(const core::AppendageMeasurement& measurement, const QRectF& area) {
    WidthScale scale{area.adjusted(0, kHeadPx, 0, -kFootPx), 20.0};
    for (const auto& entry : measurement.profile) {
        const core::Estimate& e = entry.section.metrics.longestDiameterMm;
        scale.topMm = std::max(scale.topMm, e.value + e.standardUncertainty());
    }
    scale.topMm = 10.0 * std::ceil(scale.topMm * 1.1 / 10.0);
    return scale;
}

const core::ProfileSection* nearestProfile(const core::AppendageMeasurement& measurement, double mm) {
    const auto& profile = measurement.profile;
    const auto best = std::min_element(profile.begin(), profile.end(), [&](const auto& a, const auto& b) {
        return std::abs(a.sMm - mm) < std::abs(b.sMm - mm);
    });
    return best == profile.end() ? nullptr : &*best;
}

void drawDepthStrip(QPainter& painter, const QRectF& area, const DepthScale& depth,
                    const DepthStripScene& scene) {
    const core::AppendageMeasurement& m = *scene.measurement;
    const WidthScale widths = widthScale(m, area);
    const QRectF& plot = widths.plot;
    painter.save();
    painter.fillRect(area, tone::image);
    painter.setClipRect(area);
    painter.setRenderHint(QPainter::Antialiasing);
    drawGrid(painter, widths, depth);
    for (const StripCurve curve : kCurves)
        drawCurve(painter, widths, depth, m, curve);
    drawTitle(painter, area);
    drawLegend(painter, area);

    drawPlaces(painter, plot, depth, scene);
    drawPlaceWords(painter, area, plot, depth, scene);
    if (scene.hoverMm) {
        if (const auto* at = nearestProfile(m, *scene.hoverMm)) drawHover(painter, widths, depth, *at);
    }
    painter.restore();
}

} // namespace gauge::app
