#include "app/format/drawing_words.h"

#include "app/format/quantity.h"
#include "app/format/terms.h"

#include <QCoreApplication>
#include <algorithm>

namespace gauge::app {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("Drawings", text);
}

} // namespace

QString kindName(core::DrawingKind kind) {
    switch (kind) {
    case core::DrawingKind::Straight:
        return tr("straight line");
    case core::DrawingKind::Curve:
        return tr("curved line");
    case core::DrawingKind::Angle:
        return tr("angle");
    case core::DrawingKind::Area:
        return tr("area");
    case core::DrawingKind::Ellipse:
        return tr("ellipse");
    case core::DrawingKind::Velocity:
        return tr("velocity");
    case core::DrawingKind::Interval:
        return tr("interval of time");
    case core::DrawingKind::Envelope:
        return tr("envelope of velocities");
    }
    return {};
}

QString roleName(core::DrawingRole role) {
    switch (role) {
    case core::DrawingRole::None:
        return tr("not in the table");
    case core::DrawingRole::OstiumWidth:
        return tr("ostium width");
    case core::DrawingRole::LandingWidth:
        return tr("landing zone width");
    case core::DrawingRole::Depth:
        return tr("depth");
    case core::DrawingRole::OstiumContour:
        return tr("ostium contour");
    case core::DrawingRole::LandingContour:
        return tr("landing zone contour");
    case core::DrawingRole::MitralInflow:
        return tr("mitral inflow");
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
    return value.isEmpty() ? name : tr("%1: %2").arg(name, value);
}

QString drawingCaption(const core::CaseRecord& record, const std::string& id) {
    const core::Drawing& drawing = record.drawings.at(id).content;
    QString caption = drawingCaption(drawing, drawingValueText(record, id));
    const auto* value = leadingValue(record, id);
    if (core::isPlaneMoved(record, drawing))
        caption += QLatin1Char('\n') + tr("Its plane has moved: stale until confirmed (Enter)");
    else if (value && core::isStale(record, *value))
        caption += QLatin1Char('\n') + tr("Stale: what it was measured on has changed");
    return caption;
}

} // namespace gauge::app
