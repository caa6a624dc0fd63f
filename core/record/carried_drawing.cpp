#include "core/record/carried_drawing.h"

#include <algorithm>
#include <cmath>

namespace gauge::core {
namespace {

void carry(std::vector<Eigen::Vector2d>& points, const SectionFrame& from, const SectionFrame& to) {
    for (auto& p : points)
        p = to.sectionFromPatient(from.patientFromSection(p));
}

} // namespace

Drawing carriedTo(Drawing drawing, const SectionSite& site) {
    const auto* present = std::get_if<SectionSite>(&drawing.site);
    if (!present) return drawing;
    carry(drawing.points, present->frame, site.frame);
    drawing.site = site;
    return drawing;
}

CorrectedContour carriedTo(CorrectedContour contour, const SectionFrame& frame) {
    carry(contour.points, contour.frame, frame);
    contour.frame = frame;
    return contour;
}

bool liesNear(const Drawing& drawing, const Plane& plane, double nearMm) {
    const auto* site = std::get_if<SectionSite>(&drawing.site);
    return site && std::all_of(drawing.points.begin(), drawing.points.end(), [&](const Eigen::Vector2d& p) {
        return std::abs(signedDistanceMm(plane, site->frame.patientFromSection(p))) <= nearMm;
    });
}

} // namespace gauge::core
