#include "app/drawing/labels.h"

#include <QFontMetricsF>
#include <QStringList>
#include <algorithm>

namespace gauge::app {
namespace {

constexpr double kGap = 7.0, kEdge = 2.0; // from the anchor, from the bounds
constexpr QSizeF kPadding{10.0, 4.0};     // of both sides together

QPointF plateCorner(const QPointF& anchor, const QSizeF& size, LabelSide side) {
    switch (side) {
    case LabelSide::Right:
        return {anchor.x() + kGap, anchor.y() - size.height() / 2};
    case LabelSide::Left:
        return {anchor.x() - kGap - size.width(), anchor.y() - size.height() / 2};
    case LabelSide::Above:
        return {anchor.x() - size.width() / 2, anchor.y() - kGap - size.height()};
    case LabelSide::Below:
        return {anchor.x() - size.width() / 2, anchor.y() + kGap};
    }
    return anchor;
}

/// Words one after the other, a new line where the next one would pass `room`.
QStringList filled(const QStringList& words, const QFontMetricsF& metrics, double room) {
    QStringList lines;
    for (const QString& word : words) {
        const QString longer = lines.isEmpty() ? word : lines.last() + QLatin1Char(' ') + word;
        if (lines.isEmpty() || metrics.horizontalAdvance(longer) > room)
            lines << word;
        else
            lines.last() = longer;
    }
    return lines;
}

double widest(const QStringList& lines, const QFontMetricsF& metrics) {
    double width = 0.0;
    for (const QString& line : lines)
        width = std::max(width, metrics.horizontalAdvance(line));
    return width;
}

/// One line where there is room; else as few as fit, about equally long.
QStringList linesOf(const QString& text, const QFontMetricsF& metrics, double room) {
    if (metrics.horizontalAdvance(text) <= room) return {text};
    const QStringList words = text.split(QLatin1Char(' '), Qt::SkipEmptyParts); // a value stays with its unit: no plain space between them
    QStringList lines = filled(words, metrics, room);
    for (double narrower = room; narrower > 0.0;) {
        const QStringList tried = filled(words, metrics, narrower);
        if (tried.size() > lines.size()) break;
        lines = tried;
        narrower = std::min(narrower, widest(tried, metrics)) - 1.0;
    }
    return lines;
}

QStringList linesWithin(const QString& text, const QRectF& bounds, const QFontMetricsF& metrics) {
    return linesOf(text, metrics, bounds.width() - 2 * kEdge - kPadding.width());
}

} // namespace

double labelWidth(const QString& text, int pixelSize) {
    return QFontMetricsF(labelFont(pixelSize)).horizontalAdvance(text) + kPadding.width();
}

QRectF labelPlate(const QPointF& anchor, const QString& text, LabelSide side, const QRectF& bounds, int pixelSize) {
    const QFontMetricsF metrics(labelFont(pixelSize));
    const QStringList lines = linesWithin(text, bounds, metrics);
    const QSizeF size(widest(lines, metrics) + kPadding.width(), static_cast<double>(lines.size()) * metrics.height() + kPadding.height());
    QRectF plate(plateCorner(anchor, size, side), size);
    const QRectF room = bounds.adjusted(kEdge, kEdge, -kEdge, -kEdge);
    plate.moveLeft(std::clamp(plate.left(), room.left(), std::max(room.left(), room.right() - size.width())));
    plate.moveTop(std::clamp(plate.top(), room.top(), std::max(room.top(), room.bottom() - size.height())));
    return plate;
}

QRectF drawLabel(QPainter& painter, const QPointF& anchor, const QString& text, const QColor& colour,
                 LabelSide side, const QRectF& bounds, int pixelSize, const QColor& plateColour) {
    const QFont font = labelFont(pixelSize);
    const QRectF plate = labelPlate(anchor, text, side, bounds, pixelSize);
    painter.save();
    painter.setPen(Qt::NoPen);
    painter.setBrush(plateColour);
    painter.drawRoundedRect(plate, 3, 3);
    painter.setFont(font);
    painter.setPen(colour);
    painter.drawText(plate, Qt::AlignCenter | Qt::TextDontClip, linesWithin(text, bounds, QFontMetricsF(font)).join(QLatin1Char('\n')));
    painter.restore();
    return plate;
}

QRectF titlePlate(const QString& title, const QRectF& area, int pixelSize) {
    return title.isEmpty() ? QRectF() : labelPlate(area.topLeft() + QPointF(0, 16), title, LabelSide::Right, area, pixelSize);
}

QRectF drawTitle(QPainter& painter, const QString& title, const QRectF& area, const QColor& colour, int pixelSize) {
    if (title.isEmpty()) return {};
    return drawLabel(painter, area.topLeft() + QPointF(0, 16), title, colour, LabelSide::Right, area, pixelSize);
}

bool LabelPlaces::draw(QPainter& painter, const QPointF& anchor, const QString& text, const QColor& colour,
                       std::initializer_list<LabelSide> sides, const QRectF& bounds, int pixelSize,
                       const QColor& plateColour) {
    for (const LabelSide side : sides) {
        const QRectF plate = labelPlate(anchor, text, side, bounds, pixelSize);
        const bool free = std::none_of(m_taken.begin(), m_taken.end(), [&](const QRectF& r) { return r.intersects(plate); });
        if (!free) continue;
        m_taken.push_back(drawLabel(painter, anchor, text, colour, side, bounds, pixelSize, plateColour));
        return true;
    }
    return false;
}

bool LabelPlaces::draw(QPainter& painter, const Label& label, const QRectF& bounds) {
    constexpr int kRowsAway = 5;
    const double row = QFontMetricsF(labelFont(label.pixelSize)).height() + kPadding.height() + 1.0;
    for (int away = 0; away <= kRowsAway; ++away)
        for (const double way : {1.0, -1.0})
            for (const auto& [anchor, sides] : label.spots)
                for (const LabelSide side : sides)
                    if (draw(painter, anchor + QPointF(0, way * away * row), label.text, label.colour, {side}, bounds, label.pixelSize, label.plate)) return true;
    return false;
}

} // namespace gauge::app
