#include "app/drawing/pressure_course_drawing.h"

#include "app/drawing/palette.h"
#include "app/format/decision_words.h"
#include "app/format/terms.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace gauge::app {
namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(PressureCourse)
};

using Reader = std::optional<double> (*)(const core::Moment&);
std::optional<double> mean(const core::Moment& m) { return m.circulation.meanPressureMmHg; }
std::optional<double> vWave(const core::Moment& m) { return m.circulation.vWaveMmHg; }
std::optional<double> gradient(const core::Moment& m) { return m.circulation.meanMitralGradientMmHg; }

enum class Marker { Disc, Triangle, Square };

struct Curve {
    Reader read;
    Marker marker;
    Qt::PenStyle style;
    QString words;
    QColor colour;
};

std::vector<Curve> curves() {
    return {{mean, Marker::Disc, Qt::SolidLine, Words::tr("mean pressure"), tone::text},
            {vWave, Marker::Triangle, Qt::DashLine, Words::tr("v wave"), tone::link},
            {gradient, Marker::Square, Qt::DotLine, Words::tr("mean mitral gradient"), tone::warning}};
}

/// Where things are: moments evenly spaced, pressures from 0 upwards.
struct Frame {
    QRectF plot;
    double mostMmHg = 40.0;
    double lineHeight = 14.0;
    std::size_t count = 1;

    double x(std::size_t i) const { return plot.left() + plot.width() * (static_cast<double>(i) + 0.5) / static_cast<double>(count); }
    double y(double mmHg) const { return plot.bottom() - plot.height() * mmHg / mostMmHg; }
};

Frame frameOf(const QRectF& area, const std::vector<CoursePoint>& course, const QFont& font) {
    const QFontMetricsF metrics(font);
    Frame frame;
    frame.lineHeight = metrics.height();
    frame.count = std::max<std::size_t>(1, course.size());
    double most = 20.0;
    for (const CoursePoint& point : course)
        for (const Reader read : {mean, vWave, gradient})
            most = std::max(most, read(point.moment).value_or(0.0));
    frame.mostMmHg = 10.0 * std::ceil(most / 10.0 + 0.25);
    frame.plot = area.adjusted(metrics.horizontalAdvance(QStringLiteral("100 ")) + 10, 3.2 * frame.lineHeight, -12,
                               -3.8 * frame.lineHeight);
    return frame;
}

void drawMarker(QPainter& painter, const QPointF& at, Marker marker, const QColor& colour) {
    constexpr double r = 4.5;
    painter.setPen(QPen(colour, 1.5));
    painter.setBrush(colour);
    if (marker == Marker::Disc)
        painter.drawEllipse(at, r, r);
    else if (marker == Marker::Square)
        painter.drawRect(QRectF(at.x() - r + 0.5, at.y() - r + 0.5, 2 * r - 1, 2 * r - 1));
    else
        painter.drawPolygon(QPolygonF({at + QPointF(0, -r - 1), at + QPointF(r + 0.5, r - 0.5), at + QPointF(-r - 0.5, r - 0.5)}));
    painter.setBrush(Qt::NoBrush);
}

void drawScale(QPainter& painter, const Frame& f, const QRectF& area) {
    for (double mmHg = 0.0; mmHg <= f.mostMmHg + 0.1; mmHg += 10.0) {
        painter.setPen(QPen(tone::border, 1.0));
        painter.drawLine(QPointF(f.plot.left(), f.y(mmHg)), QPointF(f.plot.right(), f.y(mmHg)));
        painter.setPen(tone::soft);
        painter.drawText(QRectF(area.left(), f.y(mmHg) - 10, f.plot.left() - area.left() - 6, 20),
                         Qt::AlignRight | Qt::AlignVCenter, QString::number(mmHg, 'f', 0));
    }
    painter.setPen(tone::faint);
    painter.drawText(QPointF(area.left() + 2, f.plot.top() - f.lineHeight), QStringLiteral("mmHg")); // clear of the highest number
}

/// What each line is, in one row or, where that is too narrow, in two.
void drawLegend(QPainter& painter, const Frame& f, const QRectF& area, std::optional<double> decisionMmHg) {
    constexpr double kLinePx = 26.0, kWordsPx = 32.0, kGapPx = 22.0;
    const QFontMetricsF metrics(painter.font());
    const double left = f.plot.left() + 44;
    double x = left, y = area.top() + 0.7 * f.lineHeight;
    const auto entry = [&](const QPen& pen, std::optional<Marker> marker, const QString& words) {
        const double width = kWordsPx + metrics.horizontalAdvance(words);
        if (x > left && x + width > area.right()) {
            x = left;
            y += 1.15 * f.lineHeight;
        }
        painter.setPen(pen);
        painter.drawLine(QPointF(x, y), QPointF(x + kLinePx, y));
        if (marker) drawMarker(painter, {x + kLinePx / 2, y}, *marker, pen.color());
        painter.setPen(tone::text);
        painter.drawText(QPointF(x + kWordsPx, y + metrics.ascent() / 2 - 1), words);
        x += width + kGapPx;
    };
    for (const Curve& curve : curves())
        entry(QPen(curve.colour, 1.5, curve.style), curve.marker, curve.words);
    if (decisionMmHg)
        entry(penOf(Role::Landing, 1.5, Ground::Page), std::nullopt,
              Words::tr("decision pressure, %1").arg(pressureWords(*decisionMmHg)));
}

void drawCurve(QPainter& painter, const Frame& f, const std::vector<CoursePoint>& course, const Curve& curve) {
    std::optional<QPointF> last;
    for (std::size_t i = 0; i < course.size(); ++i) {
        const auto value = curve.read(course[i].moment);
        if (!value) {
            last.reset(); // no line across what was not recorded
            continue;
        }
        const QPointF at(f.x(i), f.y(std::clamp(*value, 0.0, f.mostMmHg)));
        painter.setPen(QPen(curve.colour, 1.5, curve.style));
        if (last) painter.drawLine(*last, at);
        last = at;
    }
    for (std::size_t i = 0; i < course.size(); ++i) {
        const auto value = curve.read(course[i].moment);
        if (!value) continue;
        const QPointF at(f.x(i), f.y(std::clamp(*value, 0.0, f.mostMmHg)));
        drawMarker(painter, at, curve.marker, curve.colour);
        painter.setPen(curve.colour);
        painter.drawText(QRectF(at.x() + 8, at.y() - f.lineHeight, 120, f.lineHeight), Qt::AlignLeft | Qt::AlignVCenter,
                         plainNumber(*value));
    }
}

void drawMoment(QPainter& painter, const Frame& f, const QRectF& area, const CoursePoint& point, std::size_t i, bool chosen) {
    const double width = f.plot.width() / static_cast<double>(f.count);
    const QRectF column(f.x(i) - width / 2, f.plot.top(), width, f.plot.height());
    if (chosen) painter.fillRect(column, tone::raised);
    const core::HaemodynamicState& c = point.moment.circulation;
    QStringList words{stageName(c.stage)};
    words << (c.rhythm ? rhythmName(*c.rhythm) : Words::tr("rhythm not recorded"));
    if (!c.meanPressureMmHg) words << Words::tr("pressure not measured");
    painter.setPen(chosen ? tone::text : tone::soft);
    painter.drawText(QRectF(column.left() + 2, f.plot.bottom() + 4, column.width() - 4, area.bottom() - f.plot.bottom() - 4),
                     Qt::AlignHCenter | Qt::AlignTop | Qt::TextWordWrap, words.join(QLatin1Char('\n')));
}

} // namespace

std::vector<CoursePoint> courseOf(const core::CaseRecord& record) {
    std::vector<CoursePoint> course;
    for (const auto& [id, entry] : record.moments)
        course.push_back({id, entry.content});
    std::stable_sort(course.begin(), course.end(), [](const CoursePoint& a, const CoursePoint& b) {
        return std::pair(a.moment.circulation.stage, a.moment.circulation.time) <
               std::pair(b.moment.circulation.stage, b.moment.circulation.time);
    });
    return course;
}

void drawPressureCourse(QPainter& painter, const QRectF& area, const std::vector<CoursePoint>& course,
                        const std::string& chosen, std::optional<double> decisionMmHg, const QFont& font) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(area, tone::panel);
    painter.setFont(font);
    const Frame f = frameOf(area, course, font);
    for (std::size_t i = 0; i < course.size(); ++i)
        drawMoment(painter, f, area, course[i], i, course[i].id == chosen);
    drawScale(painter, f, area);
    drawLegend(painter, f, area, decisionMmHg);
    if (decisionMmHg) {
        painter.setPen(penOf(Role::Landing, 1.5, Ground::Page));
        painter.drawLine(QPointF(f.plot.left(), f.y(*decisionMmHg)), QPointF(f.plot.right(), f.y(*decisionMmHg)));
    }
    for (const Curve& curve : curves())
        drawCurve(painter, f, course, curve);
    painter.restore();
}

std::string courseAt(const QRectF& area, const std::vector<CoursePoint>& course, double x, const QFont& font) {
    if (course.empty()) return {};
    const Frame f = frameOf(area, course, font);
    const double at = (x - f.plot.left()) / f.plot.width() * static_cast<double>(f.count);
    const auto index = static_cast<std::size_t>(std::clamp(at, 0.0, static_cast<double>(f.count) - 0.5));
    return course[index].id;
}

} // namespace gauge::app
