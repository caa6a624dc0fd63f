// What was drawn: measurements, corrected contours, scales of pictures, places seen on both CT and echo.
#include "core/record/record_json.h"

#include <array>
#include <cmath>
#include <utility>

namespace gauge::core::record_json {

using namespace json_writer;
using namespace std::string_view_literals;

namespace {

constexpr std::array kDrawingKinds{
    std::pair{DrawingKind::Straight, "straight"sv}, std::pair{DrawingKind::Curve, "curve"sv},
    std::pair{DrawingKind::Angle, "angle"sv},       std::pair{DrawingKind::Area, "area"sv},
    std::pair{DrawingKind::Ellipse, "ellipse"sv},   std::pair{DrawingKind::Velocity, "velocity"sv},
    std::pair{DrawingKind::Interval, "interval"sv}, std::pair{DrawingKind::Envelope, "envelope"sv}};
constexpr std::array kDrawingRoles{std::pair{DrawingRole::None, "none"sv},
                                   std::pair{DrawingRole::OstiumWidth, "ostium-width"sv},
                                   std::pair{DrawingRole::LandingWidth, "landing-width"sv},
                                   std::pair{DrawingRole::Depth, "depth"sv},
                                   std::pair{DrawingRole::OstiumContour, "ostium-contour"sv},
                                   std::pair{DrawingRole::LandingContour, "landing-contour"sv},
                                   std::pair{DrawingRole::MitralInflow, "mitral-inflow"sv}};
constexpr std::array kScaleOrigins{std::pair{ScaleOrigin::RegionCalibration, "region-calibration"sv},
                                   std::pair{ScaleOrigin::HandCalibration, "hand-calibration"sv},
                                   std::pair{ScaleOrigin::ImagerAtIsocentre, "imager-at-isocentre"sv},
                                   std::pair{ScaleOrigin::Catheter, "catheter"sv},
                                   std::pair{ScaleOrigin::MarkerSpacing, "marker-spacing"sv},
                                   std::pair{ScaleOrigin::DeviceGeometry, "device-geometry"sv},
                                   std::pair{ScaleOrigin::DeviceFiducial, "device-fiducial"sv},
                                   std::pair{ScaleOrigin::PixelSpacing, "pixel-spacing"sv}};

Json written(const SectionFrame& f) {
    return {{"origin_lps_mm", triple(f.origin.mm)},
            {"u_lps", triple(f.u.mm)},
            {"v_lps", triple(f.v.mm)},
            {"normal_lps", triple(f.normal.mm)}};
}

/// Axes that are not right-handed and orthonormal would silently give other lengths.
SectionFrame readFrame(Object o) {
    SectionFrame f;
    f.origin.mm = o.triple("origin_lps_mm");
    f.u.mm = o.triple("u_lps");
    f.v.mm = o.triple("v_lps");
    f.normal.mm = o.triple("normal_lps");
    constexpr double kAxesTolerance = 1e-6; // written with all digits; anything else are other axes
    const Eigen::Matrix3d axes = (Eigen::Matrix3d() << f.u.mm, f.v.mm, f.normal.mm).finished();
    const double off = (axes.transpose() * axes - Eigen::Matrix3d::Identity()).cwiseAbs().maxCoeff();
    if (!(off <= kAxesTolerance) || !(axes.determinant() > 0.0))
        throw Finding{o.pathOf("u_lps") + ", v_lps and normal_lps are not at right angles, of length 1 and right-handed"};
    return f;
}

Json written(const DrawingSite& site) {
    if (const auto* picture = std::get_if<PictureSite>(&site))
        return {{"picture", {{"sop_instance_uid", picture->sopInstanceUid}, {"frame", picture->frame}}}};
    const auto& section = std::get<SectionSite>(site);
    return {{"section",
             {{"frame", written(section.frame)}, {"plane", section.plane}, {"plane_revision", section.planeRevision}}}};
}

PictureSite readPicture(Object o) {
    return {o.text("sop_instance_uid"), o.integer("frame")};
}

DrawingSite readSite(Object o) {
    if (o.has("picture") == o.has("section"))
        throw Finding{o.pathOf("picture") + " or section is needed, one of the two"};
    if (o.has("picture")) return readPicture(o.object("picture"));
    Object s = o.object("section");
    return SectionSite{readFrame(s.object("frame")), s.text("plane", true), s.count("plane_revision")};
}

Json written(const PixelBox& box) {
    return {{"min_x", box.minX}, {"min_y", box.minY}, {"max_x", box.maxX}, {"max_y", box.maxY}};
}

PixelBox readBox(Object o) {
    return {o.integer("min_x"), o.integer("min_y"), o.integer("max_x"), o.integer("max_y")};
}

} // namespace

Json written(const Drawing& d) {
    return {{"kind", word(kDrawingKinds, d.kind)},
            {"role", word(kDrawingRoles, d.role)},
            {"site", written(d.site)},
            {"points", pairs(d.points)},
            {"evidence", d.evidence},
            {"label", d.label}};
}

void read(Object& o, Drawing& d) {
    d.kind = o.choice("kind", kDrawingKinds);
    d.role = o.choice("role", kDrawingRoles);
    d.site = readSite(o.object("site"));
    d.points = o.pairs("points");
    d.evidence = o.text("evidence", true);
    d.label = o.text("label", true);
}

Json written(const CorrectedContour& c) {
    return {{"frame", written(c.frame)},
            {"points_mm", pairs(c.points)},
            {"plane", c.plane},
            {"plane_revision", c.planeRevision}};
}

void read(Object& o, CorrectedContour& c) {
    c.frame = readFrame(o.object("frame"));
    c.points = o.pairs("points_mm");
    c.plane = o.text("plane", true);
    c.planeRevision = o.count("plane_revision");
}

Json written(const PictureScale& s) {
    return {{"origin", word(kScaleOrigins, s.origin)},
            {"frame", s.frame},
            {"from", pair(s.from)},
            {"to", pair(s.to)},
            {"known_mm", s.knownMm},
            {"by_edge_profile", s.byEdgeProfile},
            {"within", s.within ? written(*s.within) : Json(nullptr)}};
}

void read(Object& o, PictureScale& s) {
    s.origin = o.choice("origin", kScaleOrigins);
    s.frame = o.integer("frame");
    s.from = o.pair("from");
    s.to = o.pair("to");
    s.knownMm = o.number("known_mm");
    s.byEdgeProfile = o.optionalFlag("by_edge_profile").value_or(false);
    if (o.has("within")) s.within = readBox(o.object("within"));
}

Json written(const PoseLandmark& l) {
    return {{"ct_lps_mm", triple(l.ct.mm)},
            {"echo", {{"sop_instance_uid", l.echo.sopInstanceUid}, {"frame", l.echo.frame}}},
            {"echo_point", pair(l.echoPoint)},
            {"label", l.label}};
}

void read(Object& o, PoseLandmark& l) {
    l.ct.mm = o.triple("ct_lps_mm");
    l.echo = readPicture(o.object("echo"));
    l.echoPoint = o.pair("echo_point");
    l.label = o.text("label", true);
}

} // namespace gauge::core::record_json
