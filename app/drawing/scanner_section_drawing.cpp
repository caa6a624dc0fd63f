#include "app/drawing/scanner_section_drawing.h"

#include "app/drawing/labels.h"
#include "app/drawing/marks_drawing.h"

#include <QCoreApplication>
#include <cmath>

namespace gauge::app {

QString wordOf(ScannerAxis axis) {
    switch (axis) {
    case ScannerAxis::Axial:
        return QCoreApplication::translate("Drawing", "axial");
    case ScannerAxis::Coronal:
        return QCoreApplication::translate("Drawing", "coronal");
    case ScannerAxis::Sagittal:
        return QCoreApplication::translate("Drawing", "sagittal");
    }
    return {};
}

core::SectionFrame scannerFrame(ScannerAxis axis, const core::PatientPoint& at) {
    const Eigen::Vector3d left = Eigen::Vector3d::UnitX(), back = Eigen::Vector3d::UnitY();
    const Eigen::Vector3d feet = -Eigen::Vector3d::UnitZ();
    switch (axis) {
    case ScannerAxis::Coronal:
        return {at, {left}, {feet}, {left.cross(feet)}};
    case ScannerAxis::Sagittal:
        return {at, {back}, {feet}, {back.cross(feet)}};
    case ScannerAxis::Axial:
        break;
    }
    return {at, {left}, {back}, {left.cross(back)}};
}

std::vector<Label> drawPlacedMarks(QPainter& painter, const QRectF& area, const SectionMap& map, const std::vector<PlacedMark>& marks) {
    using enum LabelSide;
    std::vector<Label> words;
    constexpr double kNearMm = 3.0, kShownMm = 15.0, kFaint = 0.35;
    for (const auto& mark : marks) {
        const double off = std::abs(core::signedDistanceMm(map.frame.plane(), mark.point));
        const QPointF at = map.fromPatient(mark.point);
        if (off > kShownMm || !area.contains(at)) continue;
        drawMarker(painter, at, mark.role, off <= kNearMm ? 1.0 : kFaint);
        if (off <= kNearMm) words.push_back({wordOf(mark.role), colourOf(mark.role), {{at, {Right, Left, Below, Above}}}});
    }
    return words;
}

} // namespace gauge::app
