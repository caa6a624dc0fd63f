#include "app/drawing/depth_strip_drawing.h"

#include "app/drawing/depth_strip_bands.h"
#include "app/drawing/labels.h"
#include "app/format/decision_words.h"
#include "app/format/quantity.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainterPath>
#include <algorithm>
#include <array>
#include <cmath>

namespace gauge::app {
namespace {

constexpr std::array kCurves{StripCurve::Longest, StripCurve::PerimeterDerived, StripCurve::Shortest};
constexpr double kHeadLinePx = 17.0, kHeadPx = 4.0, kFootPx = 24.0;

/// One entry of the legend: its line and its words.
struct LegendEntry {
    QPen pen;
    QString words;
};

/// `brief`: pressures alone; which is which, the readout says in full.
std::vector<LegendEntry> legendOf(const DepthStripScene& scene, bool brief) {
    std::vector<LegendEntry> entries;
    if (scene.answer)
        for (const StripBand band : kStripBands)
            entries.push_back({penOf(band), brief ? pressureWords(scene.answer->band(band).pressureMmHg)
                                                  : wordsOf(*scene.answer, band)});
    else
        for (const StripCurve curve : kCurves)
            entries.push_back({penOf(curve), wordOf(curve)});
    return entries;
}

QString titleOf(const DepthStripScene& scene) {
    return scene.answer ? QCoreApplication::translate("DepthStrip", "Perimeter-derived width and its 95 % interval at")
                        : QCoreApplication::translate("DepthStrip", "Width against depth along the axis, mm");
}

/// Title and legend in lines from the left; what does not fit begins a new line.
struct HeadItem {
    QRectF place;
    std::optional<QPen> pen; ///< of a sample before the words
    QString words;
};

constexpr double kSamplePx = 26.0, kSampleGapPx = 5.0, kItemGapPx = 16.0, kSidePx = 10.0;

std::vector<HeadItem> headOf(const DepthStripScene& scene, const QRectF& area) {
    const QFontMetricsF metrics(labelFont(11));
    std::vector<HeadItem> items;
    double x = area.left() + kSidePx, y = area.top() + kHeadPx;
    const auto add = [&](const std::optional<QPen>& pen, const QString& words) {
        const double width = metrics.horizontalAdvance(words) + (pen ? kSamplePx + kSampleGapPx : 0.0);
        if (x + width > area.right() - kSidePx && x > area.left() + kSidePx) {
            x = area.left() + kSidePx;
            y += kHeadLinePx;
        }
        items.push_back({QRectF(x, y, width, kHeadLinePx), pen, words});
        x += width + kItemGapPx;
    };
    const auto widthOf = [&](const std::vector<LegendEntry>& entries) {
        double width = 2 * kSidePx - kItemGapPx;
        for (const LegendEntry& entry : entries)
            width += metrics.horizontalAdvance(entry.words) + kSamplePx + kSampleGapPx + kItemGapPx;
        return width;
    };
    auto legend = legendOf(scene, false);
    if (widthOf(legend) > area.width()) legend = legendOf(scene, true);
    QString line; // of the title, which may need several
    for (const QString& word : titleOf(scene).split(QLatin1Char(' '))) {
        const QString longer = line.isEmpty() ? word : line + QLatin1Char(' ') + word;
        if (!line.isEmpty() && metrics.horizontalAdvance(longer) > area.width() - 2 * kSidePx) {
            add(std::nullopt, line);
            line = word;
        } else {
            line = longer;
        }
    }
    add(std::nullopt, line);
    if (x + widthOf(legend) - kSidePx > area.right()) { // the legend stays together
        x = area.left() + kSidePx;
        y += kHeadLinePx;
    }
    for (const LegendEntry& entry : legend)
        add(entry.pen, entry.words);
    return items;
}

void drawHead(QPainter& painter, const DepthStripScene& scene, const QRectF& area) {
    painter.setFont(labelFont(11));
    for (const HeadItem& item : headOf(scene, area)) {
        QRectF words = item.place;
        if (item.pen) {
            painter.setPen(*item.pen);
            painter.drawLine(QPointF(words.left(), words.center().y()),
                             QPointF(words.left() + kSamplePx, words.center().y()));
            words.setLeft(words.left() + kSamplePx + kSampleGapPx);
        }
        painter.setPen(tone::soft);
        painter.drawText(words, Qt::AlignLeft | Qt::AlignVCenter, item.words);
    }
}

/// A line of a role on the page, without the halo of pictures.
void drawPageLine(QPainter& painter, const QPointF& from, const QPointF& to, Role role, double width) {
    painter.setPen(penOf(role, width, Ground::Page));
    painter.drawLine(from, to);
}

QColor pagePlate() {
    QColor plate = tone::panel;
    plate.setAlpha(225);
    return plate;
}

double niceStep(double pixelsPerMm, double leastPixels) {
    for (const double step : {1.0, 2.0, 5.0, 10.0, 20.0, 50.0})
        if (step * pixelsPerMm >= leastPixels) return step;
    return 100.0;
}

double widthStepMm(const WidthScale& widths) {
    return niceStep(widths.plot.height() / widths.topMm, 26.0);
}

void drawGrid(QPainter& painter, const WidthScale& widths, const DepthScale& depth) {
    const QRectF& plot = widths.plot;
    painter.setFont(labelFont(11));
    for (double mm = 0; mm <= widths.topMm + 1e-6; mm += widthStepMm(widths)) {
        const double y = std::round(widths.yFromMm(mm)) + 0.5;
        painter.setPen(QPen(mm == 0 ? tone::border.lighter(140) : tone::border, 1));
        painter.drawLine(QPointF(plot.left(), y), QPointF(plot.right(), y));
    }
    const double depthStep = niceStep(depth.pixelsPerMm, 44.0);
    const double first = std::ceil(depth.mmFromX(plot.left() + 14) / depthStep) * depthStep;
    for (double mm = first; depth.xFromMm(mm) < plot.right() - 14; mm += depthStep) {
        const double x = std::round(depth.xFromMm(mm)) + 0.5;
        painter.setPen(QPen(tone::border.lighter(140), 1));
        painter.drawLine(QPointF(x, plot.bottom()), QPointF(x, plot.bottom() + 4));
        painter.setPen(tone::faint);
        const QString text = QString::number(mm, 'f', 0).replace(QLatin1Char('-'), QChar(0x2212));
        painter.drawText(QRectF(x - 30, plot.bottom() + 5, 60, 15), Qt::AlignCenter | Qt::TextDontClip, text);
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

void drawGrip(QPainter& painter, const QRectF& plot, double x, bool active) {
    const QRectF grip(x - 6, plot.top() + plot.height() * 0.5 - 14, 12, 28);
    painter.setPen(QPen(QColor(0, 0, 0, 170), 1));
    painter.setBrush(active ? colourOf(Role::Landing, Ground::Page).lighter(125) : colourOf(Role::Landing, Ground::Page));
    painter.drawRoundedRect(grip, 4, 4);
    painter.setPen(QPen(tone::panel, 1.4));
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

void drawHover(QPainter& painter, const WidthScale& widths, const DepthScale& depth, const DepthStripScene& scene) {
    const auto* at = nearestProfile(*scene.measurement, *scene.hoverMm);
    if (!at) return;
    const double x = depth.xFromMm(at->sMm);
    painter.setPen(QPen(tone::soft, 1));
    painter.drawLine(QPointF(x, widths.plot.top()), QPointF(x, widths.plot.bottom()));
    painter.setPen(Qt::NoPen);
    painter.setBrush(tone::text);
    const auto dot = [&](double mm) { painter.drawEllipse(QPointF(x, widths.yFromMm(mm)), 3, 3); };
    if (scene.answer) {
        const auto i = scene.answer->nearest(at->sMm);
        for (const StripBand band : kStripBands)
            dot(scene.answer->band(band).widths[*i].medianMm);
    } else {
        for (const StripCurve curve : kCurves)
            dot(estimateOf(at->section, curve).value);
    }
}

/// Ostium, tip, landing zones and the shown depth as upright lines.
void drawPlaces(QPainter& painter, const QRectF& plot, const DepthScale& depth,
                const DepthStripScene& scene) {
    const auto upright = [&](double mm, Role role) {
        const double x = depth.xFromMm(mm);
        drawPageLine(painter, {x, plot.top()}, {x, plot.bottom()}, role, 2.0);
    };
    upright(0.0, Role::Ostium);
    upright(scene.measurement->axis.lengthMm, Role::Tip);
    if (scene.cursorMm) drawCursor(painter, plot, depth.xFromMm(*scene.cursorMm));
    for (std::size_t i = 0; i < scene.landingsMm.size(); ++i) {
        const double x = depth.xFromMm(scene.landingsMm[i]);
        upright(scene.landingsMm[i], Role::Landing);
        if (i == 0) drawGrip(painter, plot, x, scene.active);
    }
}

/// From the landing zone as far as it goes straight on: a line with ends, above the axis of depths.
QRectF usableLine(const DepthStripScene& scene, const QRectF& plot, const DepthScale& depth) {
    const double from = depth.xFromMm(scene.landingsMm.front());
    return {QPointF(from, plot.bottom() - 8), QPointF(depth.xFromMm(scene.landingsMm.front() + scene.usableMm->value),
                                                      plot.bottom() - 8)};
}

void drawUsable(QPainter& painter, const QRectF& line) {
    painter.setPen(QPen(colourOf(Role::Axis, Ground::Page), 1.6));
    painter.drawLine(line.topLeft(), line.topRight());
    for (const double x : {line.left(), line.right()})
        painter.drawLine(QPointF(x, line.top() - 4), QPointF(x, line.top() + 4));
}

/// The numbers of the widths, over every line. Returns where they stand.
std::vector<QRectF> drawWidthNumbers(QPainter& painter, const WidthScale& widths) {
    std::vector<QRectF> places;
    const QRectF& plot = widths.plot;
    const double lineHigh = QFontMetricsF(labelFont(11)).height();
    for (double mm = widthStepMm(widths); mm <= widths.topMm + 1e-6; mm += widthStepMm(widths)) {
        const double y = widths.yFromMm(mm);
        if (y <= plot.top() + 12) continue;
        const QString words = quantity(mm, Unit::Millimetre).replace(QStringLiteral(".0"), QString());
        places.push_back(drawLabel(painter, QPointF(plot.left() - 6, y - 0.5 * lineHigh - 3), words, tone::soft, LabelSide::Right, plot, 11, pagePlate()));
    }
    return places;
}

/// Their words, over every line, each where it covers no other.
void drawPlaceWords(QPainter& painter, const WidthScale& widths, const DepthScale& depth, const DepthStripScene& scene) {
    using enum LabelSide;
    const QRectF& plot = widths.plot;
    const core::AppendageMeasurement& m = *scene.measurement;
    LabelPlaces places;
    for (const QRectF& number : drawWidthNumbers(painter, widths))
        places.keepFree(number);
    const auto label = [&](const QPointF& anchor, const QString& words, Role role, bool leftFirst) {
        const QColor colour = colourOf(role, Ground::Page);
        if (leftFirst)
            places.draw(painter, anchor, words, colour, {Left, Right, Above, Below}, plot, 12, pagePlate());
        else
            places.draw(painter, anchor, words, colour, {Right, Left, Below, Above}, plot, 12, pagePlate());
    };
    for (const double mm : scene.landingsMm)
        label({depth.xFromMm(mm), plot.bottom() - 26}, wordOf(Role::Landing) + QLatin1Char(' ') +
                                                           quantity(mm, Unit::Millimetre), Role::Landing, true);
    label({depth.xFromMm(0), plot.top() + 12}, wordOf(Role::Ostium), Role::Ostium, true);
    label({depth.xFromMm(m.axis.lengthMm), plot.top() + 12},
          wordOf(Role::Tip) + QLatin1Char(' ') + estimate(m.depthAlongAxisMm, Unit::Millimetre), Role::Tip, false);
    if (scene.usableMm && !scene.landingsMm.empty()) {
        const QRectF line = usableLine(scene, plot, depth);
        const QString words = QCoreApplication::translate("DepthStrip", "usable depth %1")
                                  .arg(estimate(*scene.usableMm, Unit::Millimetre));
        const QColor colour = colourOf(Role::Axis, Ground::Page);
        if (!places.draw(painter, {line.center().x(), line.top() - 2}, words, colour, {Above}, plot, 12, pagePlate()))
            places.draw(painter, line.topRight(), words, colour, {Right}, plot, 12, pagePlate());
    }
    if (scene.answer && scene.answer->device) {
        const auto& body = scene.answer->device->body;
        const auto& middle = body[body.size() / 2];
        label({depth.xFromMm(middle.depthMm), widths.yFromMm(0.5 * middle.widthMm)},
              QCoreApplication::translate("DepthStrip", "size %1").arg(scene.answer->deviceName), Role::Device, false);
    }
}

} // namespace

QString wordOf(StripCurve curve) {
    switch (curve) {
    case StripCurve::PerimeterDerived:
        return QCoreApplication::translate("DepthStrip", "perimeter-derived");
    case StripCurve::Longest:
        return QCoreApplication::translate("DepthStrip", "longest");
    case StripCurve::Shortest:
        return QCoreApplication::translate("DepthStrip", "shortest");
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

WidthScale widthScale(const DepthStripScene& scene, const QRectF& area) {
    const double head = headOf(scene, area).back().place.bottom() - area.top() + kHeadPx;
    WidthScale scale{area.adjusted(0, head, 0, -kFootPx), 20.0};
    for (const auto& entry : scene.measurement->profile) {
        const core::Estimate& e = scene.answer ? entry.section.metrics.perimeterDerivedDiameterMm
                                               : entry.section.metrics.longestDiameterMm;
        scale.topMm = std::max(scale.topMm, e.value + e.standardUncertainty());
    }
    if (scene.answer) scale.topMm = std::max(scale.topMm, greatestWidthMm(*scene.answer));
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
    const WidthScale widths = widthScale(scene, area);
    const QRectF& plot = widths.plot;
    painter.save();
    painter.fillRect(area, tone::panel);
    painter.setClipRect(area);
    painter.setRenderHint(QPainter::Antialiasing);
    drawGrid(painter, widths, depth);
    drawHead(painter, scene, area);
    painter.setClipRect(plot.adjusted(0, 0, 0, 1));
    if (scene.answer) {
        drawBands(painter, widths, depth, *scene.answer);
        if (scene.answer->device) drawDevice(painter, widths, depth, *scene.answer->device);
    } else {
        for (const StripCurve curve : kCurves)
            drawCurve(painter, widths, depth, *scene.measurement, curve);
    }
    drawPlaces(painter, plot, depth, scene);
    if (scene.usableMm && !scene.landingsMm.empty()) drawUsable(painter, usableLine(scene, plot, depth));
    drawPlaceWords(painter, widths, depth, scene);
    if (scene.hoverMm) drawHover(painter, widths, depth, scene);
    painter.restore();
}

} // namespace gauge::app
