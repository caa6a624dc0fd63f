#include "app/drawing/septum_drawing.h"

#include "app/drawing/labels.h"
#include "app/format/quantity.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

namespace gauge::app {
namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(SeptumDrawing)
};

constexpr double kAngleStepDeg = 5.0, kHeightStepMm = 5.0;
constexpr double kProposalReach = 7.0, kCrossingReach = 16.0; // pixels from the middle of a sign to its end
constexpr double kRootReach = 4.0; ///< mm outside the outline where the sides are named

/// One hue, lighter or darker by the angle: told apart without colour vision. Nearer to the axis stands out more.
QColor angleColour(double deg) {
    const double t = std::clamp(deg / 60.0, 0.0, 1.0);
    const QColor near = theme() == Theme::Dark ? QColor(0x5E, 0x8F, 0xB8) : QColor(0x7F, 0xB2, 0xDA);
    const QColor far = theme() == Theme::Dark ? QColor(0x20, 0x2A, 0x33) : QColor(0xF2, 0xF6, 0xF9);
    const auto mix = [t](int a, int b) { return static_cast<int>(std::lround(a + t * (b - a))); };
    return QColor(mix(near.red(), far.red()), mix(near.green(), far.green()), mix(near.blue(), far.blue()));
}

QColor plateColour() {
    QColor plate = tone::panel;
    plate.setAlpha(215);
    return plate;
}

QPainterPath pathOf(const FaceMap& map, const std::vector<std::vector<Eigen::Vector2d>>& lines) {
    QPainterPath path;
    for (const auto& line : lines) {
        QPolygonF polygon;
        for (const auto& place : line)
            polygon << map.from(place);
        path.addPolygon(polygon);
        path.closeSubpath();
    }
    return path;
}

const core::CrossingField kAngleField = [](const core::CrossingValues& v) { return v.angleDeg; };

core::CrossingField heightField(const SeptumState& state) {
    return [datum = state.plan.limits.datum](const core::CrossingValues& v) { return core::heightMm(v, datum); };
}

/// Draws one face; the parts in the order in which they lie over each other.
class FaceDrawing {
public:
    FaceDrawing(QPainter& painter, const QRectF& area, const SeptumState& state, const FaceLook& look)
        : m_painter(painter), m_area(area), m_state(state), m_look(look), m_face(state.scene->face),
          m_map(faceMap(m_face, area, look.fromRight)), m_outline(pathOf(m_map, {m_face.outline})) {}

    FacePlaces draw() {
        m_painter.save();
        m_painter.setRenderHint(QPainter::Antialiasing);
        m_painter.setClipRect(m_area, Qt::IntersectClip);
        keepFree();
        drawAngles();
        drawRegion();
        drawHeights();
        drawOutline();
        drawSides();
        nameLines();
        drawCrossings();
        drawScale();
        m_painter.restore();
        return std::move(m_drawn);
    }

private:
    static constexpr double kRimMark = 6.0; // pixels from the middle of a mark of the rim to its end

    /// Whether it would lie over a mark of the rim.
    bool overRim(const QRectF& plate) const {
        return std::any_of(m_state.marks.fossa.begin(), m_state.marks.fossa.end(), [&](const core::PatientPoint& point) {
            const QPointF at = m_map.from(m_face.frame.sectionFromPatient(point));
            return plate.intersects({at - QPointF(kRimMark, kRimMark), at + QPointF(kRimMark, kRimMark)});
        });
    }

    /// The scale and the signs of the crossing: no label lies under them.
    void keepFree() {
        m_places.keepFree(QRectF(m_area.left(), m_area.bottom() - 34, 0.3 * m_area.width(), 34));
        const auto sign = [this](const Eigen::Vector2d& place, double reach) {
            const QPointF at = m_map.from(place);
            m_drawn.signs.emplace_back(at - QPointF(reach, reach), at + QPointF(reach, reach));
            m_places.keepFree(m_drawn.signs.back());
        };
        if (const auto place = proposal()) sign(*place, kProposalReach);
        if (m_state.crossing) sign(m_state.crossing->place, kCrossingReach);
    }

    /// Where there is most room, unless the crossing stands there.
    std::optional<Eigen::Vector2d> proposal() const {
        const auto place = m_state.answer ? m_state.answer->place : std::nullopt;
        return place && m_state.crossing && (*place - m_state.crossing->place).norm() <= 1.5 ? std::nullopt : place;
    }

    bool label(const QPointF& at, const QString& text, const QColor& colour, std::initializer_list<LabelSide> sides) {
        return label(at, text, colour, sides, m_area);
    }

    bool label(const QPointF& at, const QString& text, const QColor& colour, std::initializer_list<LabelSide> sides, const QRectF& room) {
        if (!m_places.draw(m_painter, at, text, colour, sides, room, 12, plateColour())) return false;
        m_drawn.labels.push_back(m_places.taken().back());
        return true;
    }

    /// Beside a sign: outside of what is kept free for it.
    bool labelOfSign(const QPointF& at, double reach, const QString& text, const QColor& colour) {
        for (const auto& [away, side] : {std::pair(QPointF(1, 0), LabelSide::Right), std::pair(QPointF(-1, 0), LabelSide::Left),
                                         std::pair(QPointF(0, -1), LabelSide::Above), std::pair(QPointF(0, 1), LabelSide::Below)})
            if (label(at + reach * away, text, colour, {side})) return true;
        return false;
    }

    void drawAngles() {
        m_painter.save();
        m_painter.setClipPath(m_outline, Qt::IntersectClip);
        m_painter.fillRect(m_area, tone::raised);
        const auto found = m_state.map ? core::rangeOf(*m_state.map, kAngleField) : std::nullopt;
        const std::pair<double, double> range = found.value_or(std::pair(0.0, 0.0));
        if (found) {
            // Each band is painted over the one below it.
            m_painter.setPen(Qt::NoPen);
            const double first = kAngleStepDeg * std::floor(range.first / kAngleStepDeg);
            m_painter.fillRect(m_area, angleColour(first + 0.5 * kAngleStepDeg));
            for (double deg = first + kAngleStepDeg; deg < range.second; deg += kAngleStepDeg) {
                m_painter.setBrush(angleColour(deg + 0.5 * kAngleStepDeg));
                m_painter.drawPath(pathOf(m_map, core::linesOfEqual(*m_state.map, kAngleField, deg)));
            }
            m_painter.setBrush(Qt::NoBrush);
            for (double deg = first + kAngleStepDeg; deg < range.second; deg += kAngleStepDeg)
                if (deg != m_state.plan.limits.mostAngleDeg) angleLine(deg, QPen(tone::soft, 1.0, Qt::DotLine));
            angleLine(m_state.plan.limits.mostAngleDeg, QPen(tone::text, 2.0, Qt::DashLine));
        }
        m_painter.restore();
        if (!found) return;
        const double first = kAngleStepDeg * std::ceil(range.first / kAngleStepDeg);
        nameLater(kAngleField, m_state.plan.limits.mostAngleDeg,
                  Words::tr("limit %1").arg(quantity(m_state.plan.limits.mostAngleDeg, Unit::Degree)), tone::text, 0.12, true);
        for (double deg = first; deg < range.second; deg += kAngleStepDeg)
            if (deg != m_state.plan.limits.mostAngleDeg) nameLater(kAngleField, deg, quantity(deg, Unit::Degree), tone::soft, 0.12, false);
    }

    void angleLine(double deg, const QPen& pen) {
        m_painter.setPen(pen);
        m_painter.drawPath(pathOf(m_map, core::linesOfEqual(*m_state.map, kAngleField, deg)));
    }

    core::Service service() const {
        const core::CrossingLimits& limits = m_state.plan.limits;
        const bool steered = m_state.answer && m_state.answer->both.areaMm2 < core::kLeastRegionMm2 && limits.steerableAtHand;
        if (!limits.repairPlanned)
            return m_state.answer && m_state.answer->closure.areaMm2 < core::kLeastRegionMm2 && limits.steerableAtHand
                       ? core::Service::ClosureSteered
                       : core::Service::Closure;
        return steered ? core::Service::BothSteered : core::Service::Both;
    }

    static QString serviceWords(core::Service service) {
        switch (service) {
        case core::Service::Both:
            return Words::tr("serves repair and closure");
        case core::Service::BothSteered:
            return Words::tr("serves both with a steerable sheath");
        case core::Service::ClosureSteered:
            return Words::tr("serves the closure with a steerable sheath");
        default:
            return Words::tr("serves the closure");
        }
    }

    const core::ServingRegion& regionOf(core::Service service) const {
        switch (service) {
        case core::Service::Both:
            return m_state.answer->both;
        case core::Service::BothSteered:
            return m_state.answer->bothSteered;
        case core::Service::ClosureSteered:
            return m_state.answer->closureSteered;
        default:
            return m_state.answer->closure;
        }
    }

    void drawRegion() {
        if (!m_state.map || !m_state.answer) return;
        const core::Service what = service();
        if (!regionOf(what).middle) return;
        const QPainterPath path = pathOf(m_map, core::regionBorder(*m_state.map, m_state.plan.limits, what)).intersected(m_outline);
        const QColor colour = colourOf(Role::Crossing, Ground::Page);
        m_painter.setPen(Qt::NoPen);
        m_painter.setBrush(QBrush(colour, Qt::BDiagPattern));
        m_painter.drawPath(path);
        m_painter.setBrush(Qt::NoBrush);
        m_painter.setPen(QPen(colour, 2.0));
        m_painter.drawPath(path);
        m_regionLabel = {path.boundingRect(), serviceWords(what)};
    }

    void drawHeights() {
        const auto field = heightField(m_state);
        const auto range = m_state.map ? core::rangeOf(*m_state.map, field) : std::nullopt;
        if (!range) return;
        std::vector<std::pair<double, bool>> levels;
        const core::CrossingLimits& limits = m_state.plan.limits;
        for (double mm = kHeightStepMm * std::ceil(range->first / kHeightStepMm); mm <= range->second; mm += kHeightStepMm)
            if (!limits.repairPlanned || (mm != limits.lowestMm && mm != limits.highestMm)) levels.emplace_back(mm, false);
        if (limits.repairPlanned)
            for (const double mm : {limits.lowestMm, limits.highestMm})
                levels.emplace_back(mm, true);
        m_painter.save();
        m_painter.setClipPath(m_outline, Qt::IntersectClip);
        for (const auto& [mm, isLimit] : levels) {
            m_painter.setPen(QPen(tone::text, isLimit ? 2.2 : 1.1));
            m_painter.drawPath(pathOf(m_map, core::linesOfEqual(*m_state.map, field, mm)));
        }
        m_painter.restore();
        for (const auto& [mm, isLimit] : levels)
            nameLater(field, mm, quantity(mm, Unit::Millimetre), tone::text, 0.85, isLimit);
    }

    /// A line of equal values and its words; `across`: share of the way over the face from the left at which they are wanted.
    struct LineName {
        std::vector<QPointF> inside; ///< where the line runs, from left to right
        QString text;
        QColor colour;
        double across;
        bool isLimit;
    };

    void nameLater(const core::CrossingField& field, double value, const QString& text, const QColor& colour, double across, bool isLimit) {
        std::vector<QPointF> inside;
        for (const auto& line : core::linesOfEqual(*m_state.map, field, value))
            for (const auto& place : line)
                if (m_face.contains(place)) inside.push_back(m_map.from(place));
        if (inside.empty()) return;
        std::sort(inside.begin(), inside.end(), [](const QPointF& a, const QPointF& b) { return a.x() < b.x(); });
        m_names.push_back({std::move(inside), text, colour, across, isLimit});
    }

    /// On their lines; where the wanted place is taken, elsewhere along the line. Over a mark of the rim only limits are named, and
    /// only where there is no other place.
    void nameLines() {
        for (const LineName& name : m_names)
            for (const bool maybeOverRim : {false, true})
                if ((name.isLimit || !maybeOverRim) && nameLine(name, maybeOverRim)) break;
    }

    bool nameLine(const LineName& name, bool maybeOverRim) {
        const double across = name.across;
        for (const double share : {across, across > 0.5 ? across - 0.2 : across + 0.2, 0.5, 0.4, 0.6, 0.3, 0.7, 1.0 - across}) {
            const auto at = static_cast<std::size_t>(share * static_cast<double>(name.inside.size() - 1));
            const QPointF anchor = name.inside[at] + QPointF(-7.0 - 0.5 * labelWidth(name.text), 0);
            const QRectF plate = labelPlate(anchor, name.text, LabelSide::Right, m_area);
            const bool free = std::none_of(m_places.taken().begin(), m_places.taken().end(), [&](const QRectF& r) { return r.intersects(plate); });
            if (!free || (!maybeOverRim && overRim(plate))) continue;
            m_drawn.labels.push_back(drawLabel(m_painter, anchor, name.text, name.colour, LabelSide::Right, m_area, 12, plateColour()));
            m_places.keepFree(m_drawn.labels.back());
            return true;
        }
        return false;
    }

    void drawOutline() {
        m_painter.setBrush(Qt::NoBrush);
        m_painter.setPen(QPen(tone::text, 2.4));
        m_painter.drawPath(m_outline);
        for (const core::PatientPoint& point : m_state.marks.fossa)
            drawSeptumMarker(m_painter, m_map.from(m_face.frame.sectionFromPatient(point)), SeptumPoint::Fossa, 1.0, Ground::Page);
    }

    void drawCrossings() {
        if (const auto place = proposal()) drawProposal(m_map.from(*place));
        if (m_state.crossing) drawCrossing(m_map.from(m_state.crossing->place));
        nameRegion();
    }

    /// Beside the face, on as many lines as the room there asks for; over the face only where nothing else is free.
    void nameRegion() {
        if (!m_regionLabel) return;
        const auto& [box, words] = *m_regionLabel;
        const QColor colour = colourOf(Role::Crossing, Ground::Page);
        const QRectF face = m_outline.boundingRect().adjusted(-kRimMark, 0, kRimMark, 0);
        const QRectF left(m_area.topLeft(), QPointF(face.left(), m_area.bottom())), right(QPointF(face.right(), m_area.top()), m_area.bottomRight());
        const double row = QFontMetricsF(labelFont()).height();
        for (const double down : {0.0, -2.0, 2.0, -4.0, 4.0, 6.0}) {
            const double y = box.center().y() + down * row;
            if (label({face.left(), y}, words, colour, {LabelSide::Left}, left) || label({face.right(), y}, words, colour, {LabelSide::Right}, right)) return;
        }
        label({box.center().x(), box.bottom()}, words, colour, {LabelSide::Below, LabelSide::Above, LabelSide::Left, LabelSide::Right});
    }

    void drawProposal(const QPointF& at) {
        constexpr double r = kProposalReach - 1.0;
        m_painter.setBrush(plateColour());
        m_painter.setPen(QPen(colourOf(Role::Crossing, Ground::Page), 2.0));
        m_painter.drawPolygon(QPolygonF({at + QPointF(0, -r), at + QPointF(r, 0), at + QPointF(0, r), at + QPointF(-r, 0)}));
        labelOfSign(at, kProposalReach, Words::tr("most room"), tone::text);
    }

    void drawCrossing(const QPointF& at) {
        constexpr double r = 8.0, arm = kCrossingReach - 2.0;
        QPainterPath shape;
        shape.addEllipse(at, r, r);
        for (const QPointF& way : {QPointF(1, 0), QPointF(-1, 0), QPointF(0, 1), QPointF(0, -1)}) {
            shape.moveTo(at + 0.5 * r * way);
            shape.lineTo(at + arm * way);
        }
        m_painter.setBrush(Qt::NoBrush);
        m_painter.setPen(QPen(tone::panel, m_look.focused ? 6.5 : 5.0));
        m_painter.drawPath(shape);
        m_painter.setPen(QPen(colourOf(Role::Crossing, Ground::Page), m_look.focused ? 3.5 : 2.4));
        m_painter.drawPath(shape);
        labelOfSign(at, kCrossingReach, wordOf(Role::Crossing), colourOf(Role::Crossing, Ground::Page));
    }

    /// Beyond the outline in a direction of the face.
    QPointF beyond(const Eigen::Vector2d& direction) const {
        double reach = 0.0;
        for (const auto& place : m_face.outline)
            reach = std::max(reach, place.dot(direction));
        return m_map.from((reach + kRootReach) * direction);
    }

    void drawSides() {
        const double back = m_face.posteriorSign;
        const auto rootIsAbove = m_face.towardsRoot.y() > 0.85;
        side(m_face.towardsRoot, m_face.root ? Words::tr("aortic root") : Words::tr("front (aortic root)"));
        side({back, 0.0}, Words::tr("posterior wall"));
        if (!rootIsAbove) side({0.0, 1.0}, Words::tr("superior"));
        side({0.0, -1.0}, Words::tr("inferior"));
    }

    void side(const Eigen::Vector2d& direction, const QString& text) {
        const QPointF at = beyond(direction);
        const bool toLeft = (m_look.fromRight ? -direction.x() : direction.x()) < -0.5;
        const bool toRight = (m_look.fromRight ? -direction.x() : direction.x()) > 0.5;
        const QPointF towards = m_map.from(direction) - m_map.from(Eigen::Vector2d::Zero());
        const QPointF unit = towards / std::hypot(towards.x(), towards.y());
        m_painter.setPen(QPen(tone::soft, 1.6));
        const QPointF from = at - 1.6 * kRootReach * m_map.pixelsPerMm * 0.35 * unit, across(-unit.y(), unit.x());
        m_painter.drawLine(from, at);
        m_painter.drawPolyline(QPolygonF({at - 6 * unit + 4 * across, at, at - 6 * unit - 4 * across}));
        m_places.keepFree(QRectF(from, at).normalized().adjusted(-2, -2, 2, 2));
        // Beside the face a long name takes several lines.
        if (toLeft && label(at, text, tone::text, {LabelSide::Left}, QRectF(m_area.topLeft(), QPointF(at.x(), m_area.bottom())))) return;
        if (toRight && label(at, text, tone::text, {LabelSide::Right}, QRectF(QPointF(at.x(), m_area.top()), m_area.bottomRight()))) return;
        label(at, text, tone::text,
              toLeft    ? std::initializer_list<LabelSide>{LabelSide::Left, LabelSide::Above, LabelSide::Below}
              : toRight ? std::initializer_list<LabelSide>{LabelSide::Right, LabelSide::Above, LabelSide::Below}
                        : std::initializer_list<LabelSide>{direction.y() > 0 ? LabelSide::Above : LabelSide::Below, LabelSide::Right, LabelSide::Left});
    }

    void drawScale() {
        const QPointF left(m_area.left() + 12, m_area.bottom() - 12), right = left + QPointF(5.0 * m_map.pixelsPerMm, 0);
        m_painter.setPen(QPen(tone::text, 2, Qt::SolidLine, Qt::FlatCap));
        m_painter.drawLine(left, right);
        m_painter.setFont(labelFont(11));
        m_painter.drawText(left + QPointF(0, -5), quantity(5.0, Unit::Millimetre));
    }

    QPainter& m_painter;
    QRectF m_area;
    const SeptumState& m_state;
    const FaceLook& m_look;
    const core::SeptalFace& m_face;
    FaceMap m_map;
    QPainterPath m_outline;
    LabelPlaces m_places;
    std::vector<LineName> m_names;
    FacePlaces m_drawn;
    std::optional<std::pair<QRectF, QString>> m_regionLabel;
};

} // namespace

FaceMap faceMap(const core::SeptalFace& face, const QRectF& area, bool fromRight) {
    const Eigen::Vector2d size = face.high - face.low, middle = 0.5 * (face.high + face.low);
    const double besideMm = 2.0 * kRootReach;
    const auto perMm = [&](double labelsPx) { return (area.width() - 2.0 * (labelsPx + 10.0)) / (size.x() + besideMm); };
    const double byHeight = (area.height() - 76.0) / (size.y() + besideMm);
    const QString side = Words::tr("posterior wall");
    double longestWord = 0.0; // the names of the sides wrap where that makes the face larger
    for (const QString& word : side.split(QLatin1Char(' ')))
        longestWord = std::max(longestWord, labelWidth(word));
    const double byWidth = perMm(labelWidth(side)) < byHeight ? perMm(longestWord) : byHeight;
    FaceMap map;
    map.fromRight = fromRight;
    map.pixelsPerMm = std::max(2.0, std::min(byWidth, byHeight));
    map.zero = area.center();
    map.zero -= map.from(middle) - map.zero;
    return map;
}

FacePlaces drawSeptalFace(QPainter& painter, const QRectF& area, const SeptumState& state, const FaceLook& look) {
    return FaceDrawing(painter, area, state, look).draw();
}

void drawFaceHover(QPainter& painter, const QRectF& area, const SeptumState& state, const Eigen::Vector2d& place) {
    const QStringList lines = state.scene->face.contains(place) ? faceValues(core::crossingAt(*state.scene, place, state.plan.limits.steering))
                                                                : QStringList{Words::tr("outside the fossa")};
    const QFontMetricsF metrics(labelFont(12));
    double width = 0.0;
    for (const QString& line : lines)
        width = std::max(width, metrics.horizontalAdvance(line));
    const QSizeF size(width + 14, static_cast<double>(lines.size()) * metrics.height() + 8);
    const QRectF box(area.right() - 6 - size.width(), area.top() + 6, size.width(), size.height());
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(tone::border, 1));
    painter.setBrush(tone::panel);
    painter.drawRoundedRect(box, 3, 3);
    painter.setFont(labelFont(12));
    painter.setPen(tone::text);
    painter.drawText(box.adjusted(7, 4, -7, -4), Qt::AlignLeft | Qt::AlignTop, lines.join(QLatin1Char('\n')));
    painter.restore();
}

QString faceLegend(const SeptumState& state) {
    const QString datum = state.plan.limits.datum == core::HeightDatum::Annulus
                              ? Words::tr("Solid lines: height over the plane of the mitral annulus.")
                              : Words::tr("Solid lines: height over the level of coaptation, parallel to the septum.");
    return datum + QLatin1Char(' ') +
           Words::tr("Fill and dotted lines: angle of a straight sheath to the appendage's proximal axis; the limit is dashed.");
}

QStringList faceValues(const core::CrossingValues& values) {
    QStringList lines;
    if (values.overAnnulusMm) lines << Words::tr("%1 over the annulus").arg(quantity(*values.overAnnulusMm, Unit::Millimetre));
    if (values.overCoaptationMm) lines << Words::tr("%1 over the coaptation").arg(quantity(*values.overCoaptationMm, Unit::Millimetre));
    if (values.angleDeg) lines << Words::tr("%1 to the axis, straight").arg(quantity(*values.angleDeg, Unit::Degree));
    if (values.steeredAngleDeg) lines << Words::tr("%1 to the axis, steerable").arg(quantity(*values.steeredAngleDeg, Unit::Degree));
    if (values.distanceMm) lines << Words::tr("%1 to the ostium").arg(quantity(*values.distanceMm, Unit::Millimetre));
    return lines;
}

Eigen::Vector2d shownPlace(const SeptumState& state) {
    if (state.crossing) return state.crossing->place;
    if (state.answer && state.answer->place) return *state.answer->place;
    return Eigen::Vector2d::Zero();
}

} // namespace gauge::app
