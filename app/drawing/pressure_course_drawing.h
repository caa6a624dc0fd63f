// The patient's course as a picture: left atrial mean pressure, v wave and mean mitral gradient moment by moment, stage by
// stage, with the rhythm below. Each quantity has its own line style and marker; colour is never the only carrier.
#pragma once

#include "core/record/case_record.h"

#include <QRectF>
#include <QString>
#include <optional>
#include <string>
#include <vector>

class QPainter;
class QFont;

namespace gauge::app {

/// One moment in the order of stage and time.
struct CoursePoint {
    std::string id;
    core::Moment moment;
};
std::vector<CoursePoint> courseOf(const core::CaseRecord& record);

/// Paints the course into `area`; `chosen` is pointed out. The decision pressure, if given, is a line across.
void drawPressureCourse(QPainter& painter, const QRectF& area, const std::vector<CoursePoint>& course,
                        const std::string& chosen, std::optional<double> decisionMmHg, const QFont& font);

/// The moment nearest to a place in the picture; empty when there is none.
std::string courseAt(const QRectF& area, const std::vector<CoursePoint>& course, double x, const QFont& font);

} // namespace gauge::app
