#include "app/views/angle_dial.h"

#include "app/drawing/labels.h"
#include "app/drawing/palette.h"
#include "app/format/core_sentences.h"
#include "app/format/quantity.h"
#include "app/format/rich_text.h"
#include "app/models/echo_pass.h"
#include "app/panels/editor_parts.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QTextDocument>
#include <algorithm>
#include <cmath>
#include <map>

namespace gauge::app {
namespace {

constexpr double kUnknownAngle = 1e9; ///< sorts last

Role roleColour(core::DrawingRole role) {
    return role == core::DrawingRole::OstiumWidth ? Role::Ostium : Role::Landing;
}

/// A line of the table beside the dial.
QString line(const QString& what, const core::Estimate& value, Unit unit) {
    return QStringLiteral("<tr><td style='padding-right:8px'>%1</td><td align='right'><b>%2</b></td></tr>")
        .arg(what.toHtmlEscaped(), estimate(value, unit));
}

QString noticesOf(const std::vector<core::Notice>& notices) {
    QString text;
    for (const core::Notice& notice : notices)
        text += QStringLiteral("<p>%1</p>").arg(sentence(notice).toHtmlEscaped());
    return text;
}

QString sectionWords(const QString& title, const core::Result<core::EchoSection>& section,
                     const std::optional<core::LargestOfViews>& largest) {
    QString text = QStringLiteral("<p><b>%1</b></p><table>").arg(title.toHtmlEscaped());
    if (section) {
        const core::SectionMetrics& m = section->metrics;
        text += line(AngleDial::tr("longest diameter"), m.longestDiameterMm, Unit::Millimetre) +
                line(AngleDial::tr("shortest diameter"), m.shortestDiameterMm, Unit::Millimetre) +
                line(AngleDial::tr("perimeter-derived diameter"), m.perimeterDerivedDiameterMm, Unit::Millimetre) +
                line(AngleDial::tr("area-derived diameter"), m.areaDerivedDiameterMm, Unit::Millimetre) +
                line(AngleDial::tr("probe angle of the longest"), section->directionDeg, Unit::Degree);
    }
    if (largest) text += line(AngleDial::tr("largest of the views"), largest->valueMm, Unit::Millimetre);
    text += QStringLiteral("</table>");
    if (section)
        text += noticesOf(section->notices);
    else
        text += QStringLiteral("<p>%1</p>").arg(QString::fromStdString(section.error().message).toHtmlEscaped());
    return text;
}

/// The readings themselves, one row a view in the order of the angles.
QString viewsTable(const core::CaseRecord& record, const core::EchoMoment& moment) {
    std::map<double, std::map<core::DrawingRole, QStringList>> rows;
    for (const core::DrawnReading& reading : moment.readings) {
        const auto angle = record.evidence.at(reading.evidence).content.probeAngleDeg;
        rows[angle.value_or(kUnknownAngle)][reading.role] << estimate(reading.lengthMm, Unit::Millimetre);
    }
    const auto cell = [](const QString& text) {
        return QStringLiteral("<td style='padding-right:8px'>%1</td>").arg(cellHtml(text));
    };
    QString text = QStringLiteral("<p><b>%1</b></p><table><tr>").arg(AngleDial::tr("Readings of the views").toHtmlEscaped());
    for (const QString& head : {AngleDial::tr("probe angle"), AngleDial::tr("ostium"), AngleDial::tr("landing zone"),
                                AngleDial::tr("depth")})
        text += cell(head);
    text += QStringLiteral("</tr>");
    for (const auto& [angle, row] : rows) {
        text += QStringLiteral("<tr>") + cell(angle == kUnknownAngle ? AngleDial::tr("unknown") : quantity(angle, Unit::Degree));
        for (const auto role : {core::DrawingRole::OstiumWidth, core::DrawingRole::LandingWidth, core::DrawingRole::Depth}) {
            const auto found = row.find(role);
            text += cell(found == row.end() ? QStringLiteral("–") : found->second.join(QStringLiteral("; ")));
        }
        text += QStringLiteral("</tr>");
    }
    return text + QStringLiteral("</table>");
}

} // namespace

void DialFace::show(std::vector<Spoke> spokes, std::vector<Oval> ovals) {
    m_spokes = std::move(spokes);
    m_ovals = std::move(ovals);
    update();
}

void DialFace::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), tone::panel);
    const QPointF centre = QRectF(rect()).center();
    const double radius = std::max(40.0, 0.5 * std::min(width(), height()) - 26.0);
    double greatest = 20.0;
    for (const Spoke& spoke : m_spokes)
        greatest = std::max(greatest, spoke.widthMm + spoke.uncertaintyMm);
    for (const Oval& oval : m_ovals)
        greatest = std::max(greatest, oval.longestMm);
    constexpr double kRingMm = 10.0;
    const double outerMm = kRingMm * std::ceil(greatest / kRingMm);
    const double perMm = 2.0 * radius / outerMm;
    painter.setFont(labelFont(10));
    for (double mm = kRingMm; mm <= outerMm + 0.1; mm += kRingMm) {
        painter.setPen(QPen(tone::border, 1));
        painter.drawEllipse(centre, 0.5 * mm * perMm, 0.5 * mm * perMm);
    }
    const auto along = [&](double deg, double lengthPx) {
        QTransform turn;
        turn.rotate(-deg); // probe angles count against the clock, screens turn with it
        return turn.map(QPointF(lengthPx, 0.0));
    };
    for (int deg = 0; deg < 180; deg += 45) {
        painter.setPen(QPen(tone::border, 1, Qt::DotLine));
        painter.drawLine(centre - along(deg, radius), centre + along(deg, radius));
        painter.setPen(tone::soft);
        const QPointF at = centre + along(deg, radius + 14);
        painter.drawText(QRectF(at.x() - 20, at.y() - 8, 40, 16), Qt::AlignCenter | Qt::TextDontClip, quantity(deg, Unit::Degree));
    }
    for (const Oval& oval : m_ovals) {
        painter.save();
        painter.translate(centre);
        painter.rotate(-oval.directionDeg);
        painter.setPen(penOf(roleColour(oval.role), 2.0, Ground::Page));
        painter.setBrush(Qt::NoBrush);
        painter.drawEllipse(QPointF(0, 0), 0.5 * oval.longestMm * perMm, 0.5 * oval.shortestMm * perMm);
        painter.restore();
    }
    std::vector<QRectF> ends;
    for (const Spoke& spoke : m_spokes) {
        const QColor colour = colourOf(roleColour(spoke.role), Ground::Page);
        const QPointF half = along(spoke.angleDeg, 0.5 * spoke.widthMm * perMm);
        painter.setPen(QPen(colour, 1.5));
        painter.drawLine(centre - half, centre + half);
        painter.setBrush(colour);
        // The ends in the shape of their role: square for the ostium, round for the landing zone.
        for (const QPointF& end : {centre - half, centre + half}) {
            ends.emplace_back(end - QPointF(3.5, 3.5), QSizeF(7, 7));
            if (spoke.role == core::DrawingRole::OstiumWidth)
                painter.drawRect(QRectF(end.x() - 3, end.y() - 3, 6, 6));
            else
                painter.drawEllipse(end, 3.0, 3.0);
        }
    }
    // What the rings measure, written last, between the spokes of the usual angles and clear of the ends.
    for (double mm = kRingMm; mm <= outerMm + 0.1; mm += kRingMm)
        for (const double deg : {-67.5, -112.5, -22.5, -157.5, 67.5, 112.5}) {
            const QPointF at = centre + along(deg, 0.5 * mm * perMm) - QPointF(0.5 * labelWidth(quantity(mm, Unit::Millimetre), 11) + 7.0, 0.0);
            const QRectF plate = labelPlate(at, quantity(mm, Unit::Millimetre), LabelSide::Right, QRectF(rect()), 11);
            if (std::any_of(ends.begin(), ends.end(), [&](const QRectF& end) { return end.intersects(plate); })) continue;
            drawLabel(painter, at, quantity(mm, Unit::Millimetre), tone::soft, LabelSide::Right, QRectF(rect()), 11, tone::panel);
            break;
        }
}

AngleDial::AngleDial(QWidget* parent) : QWidget(parent), m_face(new DialFace(this)), m_words(new QLabel) {
    m_words->setWordWrap(true);
    m_words->setTextFormat(Qt::RichText);
    m_words->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_words->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    m_words->setContentsMargins(12, 8, 12, 8);
    m_face->setAccessibleName(tr("Dial of the probe angles"));
    auto* scroll = scrolled(m_words);
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(1);
    layout->addWidget(m_face, 1);
    layout->addWidget(scroll, 2);
}

QString AngleDial::text() const {
    QTextDocument document;
    document.setHtml(m_words->text());
    return document.toPlainText();
}

void AngleDial::setMoment(const core::CaseRecord& record, const std::string& key) {
    const core::EchoMoment moment = core::echoMoment(record, key);
    std::vector<DialFace::Spoke> spokes;
    std::vector<DialFace::Oval> ovals;
    QString text;
    if (!moment.measurement) {
        text = QStringLiteral("<p>%1</p>").arg(
            tr("No width is drawn on the echo views of this moment yet. Press M to measure them in one pass.").toHtmlEscaped());
    } else {
        const core::EchoMeasurement& m = *moment.measurement;
        const auto take = [&](core::DrawingRole role, const QString& title,
                              const std::optional<core::Result<core::EchoSection>>& section,
                              const std::optional<core::LargestOfViews>& largest, std::optional<double> core::EchoView::*width) {
            for (const core::EchoView& view : moment.study.views)
                if (view.*width)
                    spokes.push_back({role, view.angleDeg, *(view.*width),
                                      moment.study.widthUncertaintyMm.value_or(core::kAssumedWidthUncertaintyMm)});
            if (!section) return;
            if (*section)
                ovals.push_back({role, (**section).metrics.longestDiameterMm.value, (**section).metrics.shortestDiameterMm.value,
                                 (**section).directionDeg.value});
            text += sectionWords(title, *section, largest);
        };
        take(core::DrawingRole::LandingWidth, tr("Landing zone (round ends)"), m.landingZone, m.largestLandingZone,
             &core::EchoView::landingZoneMm);
        take(core::DrawingRole::OstiumWidth, tr("Ostium (square ends)"), m.ostium, m.largestOstium, &core::EchoView::ostiumMm);
        if (m.depth)
            text += QStringLiteral("<p><b>%1</b></p><table>").arg(tr("Depth").toHtmlEscaped()) +
                    line(tr("greatest of the views"), m.depth->greatestMm, Unit::Millimetre) + QStringLiteral("</table>");
        text += noticesOf(m.notices);
    }
    text += noticesOf(moment.notices);
    if (!moment.readings.empty()) text = viewsTable(record, moment) + text;
    m_words->setText(text);
    m_face->show(std::move(spokes), std::move(ovals));
}

} // namespace gauge::app
