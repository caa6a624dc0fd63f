#include "app/format/drawing_words.h"

#include "app/format/quantity.h"
#include "app/format/terms.h"

#include <QCoreApplication>
#include <algorithm>

namespace gauge::app {
namespace {

} // namespace

QString kindName(core::DrawingKind kind) {
    switch (kind) {
    case core::DrawingKind::Straight:
        return QCoreApplication::translate("Drawings", "straight line");
    case core::DrawingKind::Curve:
        return QCoreApplication::translate("Drawings", "curved line");
    case core::DrawingKind::Angle:
        return QCoreApplication::translate("Drawings", "angle");
    case core::DrawingKind::Area:
        return QCoreApplication::translate("Drawings", "area");
    case core::DrawingKind::Ellipse:
        return QCoreApplication::translate("Drawings", "ellipse");
    case core::DrawingKind::Velocity:
        return QCoreApplication::translate("Drawings", "velocity");
    case core::DrawingKind::Interval:
        return QCoreApplication::translate("Drawings", "interval of time");
    case core::DrawingKind::Envelope:
        return QCoreApplication::translate("Drawings", "envelope of velocities");
    }
    return {};
}

QString roleName(core::DrawingRole role) {
    switch (role) {
    case core::DrawingRole::None:
        return QCoreApplication::translate("Drawings", "not in the table");
    case core::DrawingRole::OstiumWidth:
        return QCoreApplication::translate("Drawings", "ostium width");
    case core::DrawingRole::LandingWidth:
        return QCoreApplication::translate("Drawings", "landing zone width");
    case core::DrawingRole::Depth:
        return QCoreApplication::translate("Drawings", "depth");
    case core::DrawingRole::OstiumContour:
        return QCoreApplication::translate("Drawings", "ostium contour");
    case core::DrawingRole::LandingContour:
        return QCoreApplication::translate("Drawings", "landing zone contour");
    case core::DrawingRole::MitralInflow:
        return QCoreApplication::translate("Drawings", "mitral inflow");
    }
    return {};
}

const core::RecordedValue* leadingValue(const core::CaseRecord& record, const std::string& id) {
    const std::string group = core::entryInput<core::Drawing>(id);
    const auto found = std::find_if(record.values.begin(), record.values.end(),
                                    [&](const core::RecordedValue& value) { return value.group == group; });
    return found == record.values.end() ? nullptr : &*found;
}

QString drawnValueText(const core::DrawnValue& value) {
    return estimate(value.estimate, unitOf(value.unit));
}

QString drawingValueText(const core::CaseRecord& record, const std::string& id) {
    const auto* value = leadingValue(record, id);
    return value ? estimate(value->estimate, unitOf(value->unit)) : QStringLiteral("–");
}

QString drawingCaption(const core::Drawing& drawing, const QString& value) {
    QString name = QString::fromStdString(drawing.label);
    if (name.isEmpty() && drawing.role != core::DrawingRole::None) name = roleName(drawing.role);
    if (name.isEmpty()) return value;
    return value.isEmpty() ? name : QCoreApplication::translate("Drawings", "%1: %2").arg(name, value);
}

QString drawingCaption(const core::CaseRecord& record, const std::string& id) {
    const core::Drawing& drawing = record.drawings.at(id).content;
    QString caption = drawingCaption(drawing, drawingValueText(record, id));
    const auto* value = leadingValue(record, id);
    if (core::isPlaneMoved(record, drawing))
        caption += QLatin1Char('\n') + QCoreApplication::translate("Drawings", "Its plane has moved: stale until confirmed (Enter)");
    else if (value && core::isStale(record, *value))
        caption += QLatin1Char('\n') + QCoreApplication::translate("Drawings", "Stale: what it was measured on has changed");
    return caption;
}

} // namespace gauge::app
