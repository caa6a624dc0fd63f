#include "app/drawing/radiograph_drawing.h"
#include "app/drawing/labels.h"

#include <QPainterPath>
#include <algorithm>
#include <cmath>

namespace gauge::app {
namespace {

// As a fluoroscopy is shown: neither white nor black at the ends, so that lines stand out on both.
constexpr double kLightGrey = 218.0, kDarkGrey = 26.0;
constexpr double kOffPlaneRadius = 5.0;

struct ProjectedShape {
    QPainterPath path;
    QPointF labelAt; ///< the rightmost point on the picture
    bool isSeen = false;
};

ProjectedShape projected(const PatientLine& line, const core::PinholeCamera& camera, const QTransform& screen, const QRectF& area) {
    ProjectedShape shape;
    bool isDown = false;
    for (const core::PatientPoint& point : line.points) {
        const auto pixel = camera.project(point);
        if (!pixel) {
            isDown = false;
            continue;
        }
        const QPointF at = screen.map(QPointF(pixel->x(), pixel->y()));
        isDown ? shape.path.lineTo(at) : shape.path.moveTo(at);
        isDown = true;
        if (area.contains(at) && (!shape.isSeen || at.x() > shape.labelAt.x())) {
            shape.labelAt = at;
            shape.isSeen = true;
        }
    }
    if (line.closed && isDown) shape.path.closeSubpath();
    return shape;
}

PatientLine contourLine(Role role, const core::Section& section) {
    PatientLine line{role, {}, true, wordOf(role)};
    for (const Eigen::Vector2d& p : section.contour)
        line.points.push_back(section.frame.patientFromSection(p));
    return line;
}

} // namespace

QImage radiographImage(const core::Radiograph& picture, const RadiographWindow& window, EmptyRay empty) {
    QImage image(picture.camera.columns, picture.camera.rows, QImage::Format_RGB32);
    const double span = std::max(window.highMm - window.lowMm, 1e-3);
    const QRgb nothing = empty == EmptyRay::NoPicture ? tone::image.rgb()
                                                      : qRgb(static_cast<int>(kLightGrey), static_cast<int>(kLightGrey),
                                                             static_cast<int>(kLightGrey));
    for (int row = 0; row < image.height(); ++row) {
        auto* line = reinterpret_cast<QRgb*>(image.scanLine(row));
        for (int column = 0; column < image.width(); ++column) {
            const double mm = picture.at(column, row);
            const double share = std::clamp((mm - window.lowMm) / span, 0.0, 1.0);
            const int grey = static_cast<int>(std::lround(kLightGrey + share * (kDarkGrey - kLightGrey)));
            line[column] = mm > 0.0 ? qRgb(grey, grey, grey) : nothing;
        }
    }
    return image;
}

std::vector<PatientLine> appendageLines(const core::AppendageMeasurement* measurement, const core::LandingZone* landing,
                                        const core::AppendageMarks* marks) {
    std::vector<PatientLine> lines;
    if (measurement) {
        lines.push_back({Role::Axis, measurement->axis.points, false, wordOf(Role::Axis)});
        lines.push_back(contourLine(Role::Ostium, measurement->ostium.section));
    }
    if (landing) lines.push_back(contourLine(Role::Landing, landing->section));
    if (marks && marks->circumflex) lines.push_back({Role::Circumflex, {*marks->circumflex}, false, wordOf(Role::Circumflex)});
    return lines;
}

void drawPatientLines(QPainter& painter, const QRectF& area, const core::PinholeCamera& camera, const QTransform& screenFromPixel,
                      const std::vector<PatientLine>& lines, const std::vector<QRectF>& kept) {
    painter.save();
    painter.setClipRect(area);
    painter.setRenderHint(QPainter::Antialiasing);
    LabelPlaces labels;
    for (const QRectF& place : kept)
        labels.keepFree(place);
    std::vector<std::pair<QPointF, const PatientLine*>> named;
    for (const PatientLine& line : lines) {
        const ProjectedShape shape = projected(line, camera, screenFromPixel, area);
        if (!shape.isSeen) continue;
        if (line.points.size() == 1)
            drawMarker(painter, shape.labelAt, line.role, 1.0, kOffPlaneRadius);
        else
            drawHaloPath(painter, shape.path, penOf(line.role, 2.0));
        if (!line.label.isEmpty()) named.emplace_back(shape.labelAt, &line);
    }
    for (const auto& [at, line] : named)
        labels.draw(painter, at, line->label, colourOf(line->role),
                    {LabelSide::Right, LabelSide::Below, LabelSide::Above, LabelSide::Left}, area);
    painter.restore();
}

} // namespace gauge::app
