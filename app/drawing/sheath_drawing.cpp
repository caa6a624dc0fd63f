#include "app/drawing/sheath_drawing.h"

#include "app/drawing/labels.h"
#include "app/drawing/marks_drawing.h"
#include "app/format/quantity.h"

#include <QCoreApplication>
#include <QPainterPath>
#include <algorithm>

namespace gauge::app {
namespace {

struct SheathWords {
    Q_DECLARE_TR_FUNCTIONS(SeptumDrawing)
};

Eigen::Vector3d acrossTheLine(const core::AppendageTarget& target, const Eigen::Vector3d& along) {
    const Eigen::Vector3d across = target.axis.mm - target.axis.mm.dot(along) * along;
    if (across.norm() > 0.02) return across.normalized();
    const Eigen::Vector3d up = Eigen::Vector3d::UnitZ() - along.z() * along;
    return up.norm() > 0.02 ? up.normalized() : Eigen::Vector3d(along.unitOrthogonal());
}

void drawWay(QPainter& painter, const SectionMap& map, const std::vector<core::PatientPoint>& points, const QPen& pen) {
    if (points.size() < 2) return;
    QPainterPath path(map.fromPatient(points.front()));
    for (const auto& point : points)
        path.lineTo(map.fromPatient(point));
    drawHaloPath(painter, path, pen);
}

} // namespace

std::optional<SectionMap> sheathSection(const SeptumState& state, const Eigen::Vector2d& place, const QRectF& area) {
    if (!state.scene || !state.scene->target || area.width() < 20 || area.height() < 20) return std::nullopt;
    const core::PatientPoint crossing = state.scene->face.frame.patientFromSection(place);
    const core::AppendageTarget& target = *state.scene->target;
    const core::PatientVector way = target.ostiumCentre - crossing;
    if (way.norm() < 1.0) return std::nullopt;
    const Eigen::Vector3d along = way.mm.normalized(), across = acrossTheLine(target, along);
    const Eigen::Vector3d down = across.z() <= 0.0 ? across : Eigen::Vector3d(-across);
    SectionMap map;
    map.frame = {{crossing.mm + 0.5 * way.mm}, {along}, {down}, {along.cross(down)}};
    constexpr double kBeforeMm = 16.0, kBeyondMm = 34.0, kHalfHeightMm = 36.0;
    map.pixelsPerMm = std::min(area.width() / (way.norm() + kBeforeMm + kBeyondMm), area.height() / (2.0 * kHalfHeightMm));
    map.zero = area.center() - QPointF(0.5 * (kBeyondMm - kBeforeMm) * map.pixelsPerMm, 0);
    return map;
}

void drawSheath(QPainter& painter, const QRectF& area, const SectionMap& map, const SeptumState& state, const Eigen::Vector2d& place,
                const core::AppendageMeasurement* measurement) {
    using enum LabelSide;
    const core::CrossingScene& scene = *state.scene;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    std::vector<Label> labels; // the first come first
    // The septum as a line: where its plane cuts this section, as long as the fossa.
    const Eigen::Vector3d trace = scene.face.frame.normal.mm.cross(map.frame.normal.mm);
    const core::PatientPoint crossing = scene.face.frame.patientFromSection(place);
    if (trace.norm() > 0.05) {
        const core::PatientVector along{8.0 * trace.normalized()};
        drawHaloLine(painter, map.fromPatient(crossing - along), map.fromPatient(crossing + along), QPen(tone::onImageSoft, 2.0));
    }
    if (measurement) {
        std::vector<core::PatientPoint> axis = measurement->axis.points;
        drawWay(painter, map, axis, penOf(Role::Axis, 1.8));
        const core::SectionFrame& ostium = measurement->ostium.section.frame;
        const Eigen::Vector3d cut = ostium.normal.mm.cross(map.frame.normal.mm);
        if (cut.norm() > 0.05) {
            const core::PatientVector half{12.0 * cut.normalized()};
            const core::PatientPoint centre = scene.target->ostiumCentre;
            drawHaloLine(painter, map.fromPatient(centre - half), map.fromPatient(centre + half), penOf(Role::Ostium, 2.0));
            labels.push_back({wordOf(Role::Ostium), colourOf(Role::Ostium), {{map.fromPatient(centre - half), {Above, Right, Below}}}});
        }
    }
    const auto straight = state.straight(place);
    const auto bent = state.steered(place);
    if (bent && *bent && (*bent)->turnDeg > 0.5) {
        drawWay(painter, map, (*bent)->points, penOf(Role::Crossing, 2.6));
        const auto& points = (*bent)->points;
        labels.push_back({SheathWords::tr("bend, radius %1: arrives at %2").arg(quantity((*bent)->radiusMm, Unit::Millimetre), quantity((*bent)->arrivalAngleDeg, Unit::Degree)),
                          colourOf(Role::Crossing), {{map.fromPatient(points[points.size() / 2]), {Below, Above}}}});
    }
    if (straight) {
        drawWay(painter, map, straight->points, QPen(tone::onImage, 2.0, Qt::DashLine));
        labels.push_back({SheathWords::tr("straight: %1, arrives at %2").arg(quantity(straight->lengthMm, Unit::Millimetre), quantity(straight->arrivalAngleDeg, Unit::Degree)),
                          tone::onImage, {{0.5 * (map.fromPatient(straight->points.front()) + map.fromPatient(straight->points.back())), {Above, Below}}}});
    }
    drawMarker(painter, map.fromPatient(crossing), Role::Crossing, 1.0, 6.0);
    labels.push_back({wordOf(Role::Crossing), colourOf(Role::Crossing), {{map.fromPatient(crossing), {Below, Above, Right}}}});

    LabelPlaces places;
    for (const QRectF& letters : drawOrientation(painter, area, map.frame))
        places.keepFree(letters);
    places.keepFree(drawScaleBar(painter, area, map.pixelsPerMm));
    for (const Label& label : labels)
        places.draw(painter, label, area);
    painter.restore();
}

} // namespace gauge::app
