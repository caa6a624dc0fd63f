// What was drawn and marked, as regions of the report.
#include "dicomio/report/report_codes.h"
#include "dicomio/report/report_groups.h"

#include <algorithm>

namespace gauge::dicomio {
namespace {

using core::DrawingKind;

RegionKind regionKind(DrawingKind kind) {
    switch (kind) {
    case DrawingKind::Area:
        return RegionKind::Polygon;
    case DrawingKind::Ellipse:
        return RegionKind::Ellipse;
    case DrawingKind::Velocity:
        return RegionKind::Point;
    case DrawingKind::Interval:
        return RegionKind::Points;
    case DrawingKind::Straight:
    case DrawingKind::Curve:
    case DrawingKind::Angle:
    case DrawingKind::Envelope:
        return RegionKind::Polyline;
    }
    return RegionKind::Polyline;
}

/// Centre and the ends of two half-axes become the ends of the longer axis and those of the shorter one.
std::vector<Eigen::Vector2d> regionPoints(DrawingKind kind, const std::vector<Eigen::Vector2d>& points) {
    if (kind != DrawingKind::Ellipse) return points;
    if (points.size() != 3) return {};
    Eigen::Vector2d a = points[1] - points[0], b = points[2] - points[0];
    if (b.norm() > a.norm()) std::swap(a, b);
    return {points[0] - a, points[0] + a, points[0] - b, points[0] + b};
}

Code roleSite(core::DrawingRole role) {
    using core::DrawingRole;
    if (role == DrawingRole::OstiumWidth || role == DrawingRole::OstiumContour) return codes::kOstium;
    if (role == DrawingRole::MitralInflow) return codes::kMitralValve;
    return codes::kAppendage;
}

std::vector<core::PatientPoint> inPatient(const core::SectionFrame& frame,
                                          const std::vector<Eigen::Vector2d>& points) {
    std::vector<core::PatientPoint> out;
    for (const Eigen::Vector2d& p : points)
        out.push_back(frame.patientFromSection(p));
    return out;
}

} // namespace

void GroupMaker::addContours() {
    const std::string frame = m_record.images ? m_record.images->frameOfReferenceUid : std::string();
    const auto add = [&](const std::string& id, std::vector<core::PatientPoint> points, const char* comment) {
        if (points.size() < 3) return;
        if (frame.empty()) {
            ++m_regionsLeftOut;
            return;
        }
        MeasurementGroup& group = groupNamed(id);
        group.patientRegions.push_back({RegionKind::Polygon, std::move(points), frame});
        if (comment != nullptr) group.comments.emplace_back(comment);
    };
    for (const FoundContour& contour : m_sources.contours) {
        const bool corrected = m_record.contours.count(contour.id) != 0;
        add(contour.id, contour.points, corrected ? "The contour was corrected by hand." : nullptr);
    }
    for (const auto& [key, entry] : m_record.contours) {
        const std::string& id = key; // clang 14 captures no structured binding
        const bool found = std::any_of(m_sources.contours.begin(), m_sources.contours.end(),
                                       [&](const FoundContour& c) { return c.id == id; });
        if (!found)
            add(id, inPatient(entry.content.frame, entry.content.points),
                "The contour was corrected by hand; a smooth closed line runs through its points.");
    }
}

void GroupMaker::addDrawings() {
    for (const auto& [id, entry] : m_record.drawings) {
        const core::Drawing& drawing = entry.content;
        MeasurementGroup& group = groupNamed("drawing/" + id);
        if (drawing.role != core::DrawingRole::None)
            group.sites = {roleSite(drawing.role)};
        else
            group.sites.clear(); // a measurement of its own, of whatever it was drawn on
        setEvidence(group, drawing.evidence);
        if (!drawing.label.empty()) group.comments.push_back(drawing.label);
        const RegionKind kind = regionKind(drawing.kind);
        const auto points = regionPoints(drawing.kind, drawing.points);
        if (const auto* picture = std::get_if<core::PictureSite>(&drawing.site)) {
            if (auto image = imageOf(picture->sopInstanceUid, picture->frame))
                group.pictureRegions.push_back({kind, points, *image});
            else
                ++m_regionsLeftOut;
        } else if (m_record.images && !m_record.images->frameOfReferenceUid.empty()) {
            const auto& section = std::get<core::SectionSite>(drawing.site);
            group.patientRegions.push_back(
                {kind, inPatient(section.frame, points), m_record.images->frameOfReferenceUid});
        } else {
            ++m_regionsLeftOut;
        }
    }
}

void GroupMaker::addMarks() {
    const std::string frame = m_record.images ? m_record.images->frameOfReferenceUid : std::string();
    const auto point = [&](MeasurementGroup& group, const core::PatientPoint& at) {
        if (frame.empty())
            ++m_regionsLeftOut;
        else
            group.patientRegions.push_back({RegionKind::Point, {at}, frame});
    };
    for (const auto& [kind, mark] : m_record.marks) {
        MeasurementGroup group = started("mark/" + std::string(core::name(kind)));
        group.finding = codes::own("mark", "Point marked by a person");
        group.sites = {codes::markCode(kind)};
        point(group, mark.point);
        m_groups.push_back(std::move(group));
    }
    for (const auto& [id, entry] : m_record.landmarks) {
        MeasurementGroup group = started("landmark/" + id);
        group.finding = codes::own("landmark", "Place seen on both CT and echo");
        if (!entry.content.label.empty()) group.comments.push_back(entry.content.label);
        point(group, entry.content.ct);
        if (auto image = imageOf(entry.content.echo.sopInstanceUid, entry.content.echo.frame))
            group.pictureRegions.push_back({RegionKind::Point, {entry.content.echoPoint}, *image});
        else
            ++m_regionsLeftOut;
        m_groups.push_back(std::move(group));
    }
}

void GroupMaker::addScales() {
    for (const auto& [uid, entry] : m_record.scales) {
        const core::PictureScale& scale = entry.content;
        MeasurementGroup group = started("scale/" + uid);
        group.finding = codes::own("scale", "Scale given to a picture by a person");
        ReportMeasurement m = number(
            group, codes::own("known-length", "Known length or diameter that a picture's scale rests on"),
            scale.knownMm, "mm", "known-length");
        m.method = std::string(core::words(scale.origin));
        if (auto image = imageOf(uid, scale.frame))
            m.pictureRegions.push_back({RegionKind::Polyline, {scale.from, scale.to}, *image});
        else
            ++m_regionsLeftOut;
        group.measurements.push_back(std::move(m));
        m_groups.push_back(std::move(group));
    }
}

} // namespace gauge::dicomio
