#include "core/record/drawing_values.h"

#include "core/cine/spectral.h"
#include "core/echo/drawn_contour.h"
#include "core/geometry/ellipse.h"
#include "core/geometry/smooth_line.h"
#include "core/record/metric_names.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <numbers>

namespace gauge::core {
namespace {

using Points = std::vector<Eigen::Vector2d>;
using Values = std::vector<DrawnValue>;

constexpr double kScaleAgreement = 1e-3; // as core/cine/region_caliper.h

/// Millimetres of drawing coordinates, and how surely a hand sets a point in them.
struct Lengths {
    PlanarScale scale;
    double endUnits = kHandSetPixels; ///< standard deviation of a hand-set point along each axis
    std::string ground;               ///< in words, for the method

    Eigen::Vector2d endMm() const { return endUnits * scale.mmPerPixel; }
    Points mm(std::span<const Eigen::Vector2d> points) const {
        Points out;
        for (const auto& p : points)
            out.push_back(p.cwiseProduct(scale.mmPerPixel));
        return out;
    }
};

Result<PlanarScale> scaleBetween(const PictureGround& ground, const Eigen::Vector2d& from, const Eigen::Vector2d& to) {
    if (ground.handFault)
        return failure(ErrorCode::ScaleMissing,
                       "Cannot measure on the picture by the scale that was given to it: " + ground.handFault->message,
                       *ground.handFault);
    auto scale = core::scaleBetween(ground.regions, ground.hand, from, to);
    if (scale || scale.error().code != ErrorCode::ScaleMissing || !ground.regions.empty()) return scale;
    if (ground.whole) return *ground.whole;
    if (ground.noScale.empty()) return scale;
    return failure(ErrorCode::ScaleMissing,
                   "Cannot measure a length on the picture: " + ground.noScale + " Calibrate it by hand to measure.");
}

/// The one scale that holds at all points.
Result<Lengths> lengthsOf(const PictureGround& ground, std::span<const Eigen::Vector2d> points) {
    Result<PlanarScale> first = scaleBetween(ground, points.front(), points.front());
    for (std::size_t i = 1; first && i < points.size(); ++i) {
        const auto scale = scaleBetween(ground, points.front(), points[i]);
        if (!scale) return tl::make_unexpected(scale.error());
        if (((scale->mmPerPixel - first->mmPerPixel).array().abs() > kScaleAgreement * first->mmPerPixel.array()).any())
            return failure(ErrorCode::RegionsMixed, "Cannot measure the drawing: its points lie where different scales hold. "
                                                    "Draw it within one region of the picture.");
        first->relativeUncertainty = std::max(first->relativeUncertainty, scale->relativeUncertainty);
    }
    if (!first) return tl::make_unexpected(first.error());
    if (const auto ok = validate(*first); !ok) return tl::make_unexpected(ok.error());
    std::string words = std::string(core::words(first->origin));
    if (!first->detail.empty()) words += " (" + first->detail + ")";
    return Lengths{*first, kHandSetPixels, words};
}

Result<Lengths> lengthsOf(const SectionGround& ground, std::span<const Eigen::Vector2d>) {
    if (!(ground.voxelMm > 0.0) || !std::isfinite(ground.voxelMm))
        return failure(ErrorCode::InvalidArgument, "Cannot measure the drawing: the voxels of its volume have no size.");
    PlanarScale one;
    one.mmPerPixel.setOnes();
    return Lengths{one, kHandSetPixels * ground.voxelMm, "section through a volume"};
}

Result<Lengths> lengthsOf(const DrawingGround& ground, std::span<const Eigen::Vector2d> points) {
    return std::visit([&](const auto& one) { return lengthsOf(one, points); }, ground);
}

/// Lengths, or for an angle the shape of the pixels alone where a picture tells nothing else.
Result<Lengths> shapeOf(const DrawingGround& ground, std::span<const Eigen::Vector2d> points) {
    auto lengths = lengthsOf(ground, points);
    const auto* picture = std::get_if<PictureGround>(&ground);
    if (lengths || !picture || !picture->regions.empty() || lengths.error().code != ErrorCode::ScaleMissing) return lengths;
    PlanarScale shape;
    shape.mmPerPixel = {1.0, picture->pixelAspect};
    return Lengths{shape, kHandSetPixels, "shape of the pixels"};
}

/// Standard uncertainty of f from independent deviations of every coordinate.
double carried(const std::function<double(const Points&)>& f, Points points, const Eigen::Vector2d& deviation) {
    constexpr double kStep = 0.05; // of a deviation: well above rounding, well below the curvature of f
    double squares = 0.0;
    for (auto& p : points)
        for (int axis = 0; axis < 2; ++axis) {
            const double middle = p[axis], step = kStep * deviation[axis];
            p[axis] = middle + step;
            const double high = f(points);
            p[axis] = middle - step;
            const double low = f(points);
            p[axis] = middle;
            squares += std::pow((high - low) / (2.0 * kStep), 2);
        }
    return std::sqrt(squares);
}

std::string method(const char* what, const Lengths& lengths) {
    return std::string(what) + " drawn by hand; " + lengths.ground;
}

Result<Values> straight(const Points& points, const Lengths& l) {
    auto length = planarDistance(points[0], points[1], l.scale, l.endUnits);
    if (!length) return tl::make_unexpected(length.error());
    length->method = method("straight line", l);
    return Values{{"length", "mm", *length}};
}

Result<Values> curve(const Points& points, const Lengths& l) {
    const auto lengthOf = [](const Points& p) {
        const auto line = SmoothLine::through(p, SmoothLine::Ends::Open);
        return line ? line->length() : 0.0;
    };
    const Points mm = l.mm(points);
    if (const auto line = SmoothLine::through(mm, SmoothLine::Ends::Open); !line)
        return tl::make_unexpected(line.error());
    Estimate length{lengthOf(mm), {}, method("smooth line", l)};
    length.components.observer = carried(lengthOf, mm, l.endMm());
    length.components.scale = l.scale.relativeUncertainty * length.value;
    return Values{{"length", "mm", length}};
}

Result<Values> angle(const Points& points, const Lengths& l) {
    const auto angleOf = [](const Points& p) {
        const Eigen::Vector2d a = p[0] - p[1], b = p[2] - p[1];
        return std::atan2(std::abs(a.x() * b.y() - a.y() * b.x()), a.dot(b)) * 180.0 / std::numbers::pi;
    };
    const Points mm = l.mm(points);
    const double shorter = std::min((mm[0] - mm[1]).norm(), (mm[2] - mm[1]).norm());
    if (shorter <= 3.0 * l.endMm().maxCoeff())
        return failure(ErrorCode::Degenerate, "Cannot measure the angle: one of its arms is hardly longer than what a hand can "
                                              "set. Draw longer arms.");
    Estimate e{angleOf(mm), {}, method("angle", l)};
    e.components.observer = carried(angleOf, mm, l.endMm());
    return Values{{"angle", "deg", e}};
}

Values valuesOf(const SectionMetrics& metrics) {
    Values values;
    for (const MetricName& name : kMetricNames)
        values.push_back({name.id, name.unit, estimateOf(metrics, name.metric)});
    return values;
}

Result<Values> area(const Points& points, const Lengths& l) {
    Points mm = l.mm(points);
    const auto line = SmoothLine::through(mm, SmoothLine::Ends::Closed);
    if (!line) return tl::make_unexpected(line.error());
    constexpr std::size_t kFewPoints = 5; // that measureDrawnContour needs
    constexpr int kPieces = 8;
    if (mm.size() < kFewPoints) mm = line->sampled(kPieces);
    DrawnContourOptions options;
    options.scaleUncertainty = l.scale.relativeUncertainty;
    auto section = measureDrawnContour({}, mm, options);
    if (!section) return tl::make_unexpected(section.error());
    for (const MetricName& name : kMetricNames)
        estimateOf(section->metrics, name.metric).method = method("closed line", l);
    return valuesOf(section->metrics);
}

Ellipse ellipseOf(std::span<const Eigen::Vector2d> mm) {
    const Eigen::Vector2d first = mm[1] - mm[0];
    const Eigen::Vector2d across = Eigen::Vector2d(-first.y(), first.x()).normalized();
    const double a = first.norm(), b = std::abs((mm[2] - mm[0]).dot(across));
    const double angle = std::atan2(first.y(), first.x());
    return a >= b ? Ellipse{mm[0], a, b, angle} : Ellipse{mm[0], b, a, angle + 0.5 * std::numbers::pi};
}

MetricValues metricsOf(double longest, double shortest) {
    const Ellipse e{{0.0, 0.0}, 0.5 * longest, 0.5 * shortest, 0.0};
    const double area = areaMm2(e), perimeter = perimeterMm(e);
    return {area, perimeter, longest, shortest, shortest, 0.5 * (longest + shortest), perimeter / std::numbers::pi,
            2.0 * std::sqrt(area / std::numbers::pi), 1.0 - shortest / longest};
}

/// The two diameters are set like calipers, each end by hand; everything else follows from them.
Result<Values> ellipse(const Points& points, const Lengths& l) {
    const Points mm = l.mm(points);
    const Ellipse e = ellipseOf(mm);
    const Eigen::Vector2d end = l.endMm();
    if (e.semiMinorMm <= end.maxCoeff())
        return failure(ErrorCode::Degenerate, "Cannot measure the ellipse: it is hardly wider than what a hand can set. Draw "
                                              "it larger.");
    const auto deviation = [&](double angle) {
        return std::numbers::sqrt2 * std::hypot(std::cos(angle) * end.x(), std::sin(angle) * end.y());
    };
    const double longest = 2.0 * e.semiMajorMm, shortest = 2.0 * e.semiMinorMm;
    const double uLongest = deviation(e.angleRad), uShortest = deviation(e.angleRad + 0.5 * std::numbers::pi);
    const MetricValues values = metricsOf(longest, shortest);
    const double step = 1e-4 * shortest;
    const MetricValues byLongest = metricsOf(longest + step, shortest), byShortest = metricsOf(longest, shortest + step);
    SectionMetrics metrics;
    for (std::size_t k = 0; k < kMetricCount; ++k) {
        Estimate& out = estimateOf(metrics, static_cast<Metric>(k));
        const double power = static_cast<Metric>(k) == Metric::Area                ? 2.0
                             : static_cast<Metric>(k) == Metric::EccentricityIndex ? 0.0
                                                                                   : 1.0;
        out.value = values[k];
        out.components.observer =
            std::hypot((byLongest[k] - values[k]) / step * uLongest, (byShortest[k] - values[k]) / step * uShortest);
        out.components.scale = power * l.scale.relativeUncertainty * values[k];
        out.method = method("ellipse", l);
    }
    return valuesOf(metrics);
}

Result<const EchoRegion*> regionFor(const DrawingGround& ground, const Eigen::Vector2d& place) {
    const auto* picture = std::get_if<PictureGround>(&ground);
    const auto at = picture ? regionAt(picture->regions, place) : std::nullopt;
    if (!at)
        return failure(ErrorCode::ScaleMissing, "Cannot measure velocities or times here: the drawing lies in no region of an "
                                                "ultrasound picture that tells its axes. Draw it on the spectrum.");
    return &picture->regions[*at];
}

Result<Values> velocity(const Points& points, const EchoRegion& region) {
    const auto v = velocityCmPerS(region, points[0]);
    if (!v) return tl::make_unexpected(v.error());
    return Values{{"velocity", "cm/s", *v}};
}

Result<Values> interval(const Points& points, const EchoRegion& region) {
    const auto time = intervalMs(region, points[0], points[1]);
    if (!time) return tl::make_unexpected(time.error());
    Values values{{"interval", "ms", *time}};
    if (const auto rate = heartRatePerMinute(region, points[0], points[1])) values.push_back({"heart-rate", "1/min", *rate});
    return values;
}

Result<Values> envelope(const Points& points, const EchoRegion& region) {
    const auto e = measureEnvelope(region, points);
    if (!e) return tl::make_unexpected(e.error());
    return Values{{"velocity-time-integral", "cm", e->velocityTimeIntegralCm},
                  {"peak-velocity", "cm/s", e->peakCmPerS},
                  {"mean-velocity", "cm/s", e->meanCmPerS},
                  {"peak-gradient", "mmHg", e->peakGradientMmHg},
                  {"mean-gradient", "mmHg", e->meanGradientMmHg},
                  {"duration", "ms", e->durationMs}};
}

Result<void> check(const Drawing& drawing) {
    const PointCount count = pointCount(drawing.kind);
    if (drawing.points.size() < count.least || drawing.points.size() > count.most)
        return failure(drawing.points.size() < count.least ? ErrorCode::TooFewPoints : ErrorCode::InvalidArgument,
                       "Cannot measure the drawing: it has " + std::to_string(drawing.points.size()) + " point(s), its kind has " +
                           std::to_string(count.least) + (count.most > count.least ? " or more." : "."));
    for (const auto& p : drawing.points)
        if (!p.allFinite())
            return failure(ErrorCode::NonFinite, "Cannot measure the drawing: one of its points is not finite.");
    return {};
}

template <class Measure> Result<Values> onLengths(const Drawing& d, const Result<Lengths>& lengths, Measure measure) {
    if (!lengths) return tl::make_unexpected(lengths.error());
    return measure(d.points, *lengths);
}

template <class Measure> Result<Values> onRegion(const Drawing& d, const DrawingGround& ground, Measure measure) {
    const auto region = regionFor(ground, d.points.front());
    if (!region) return tl::make_unexpected(region.error());
    return measure(d.points, **region);
}

bool isLength(PhysicalUnit unit) {
    return unit == PhysicalUnit::Centimetre;
}

bool isDoppler(DrawingKind kind) {
    return kind == DrawingKind::Velocity || kind == DrawingKind::Interval || kind == DrawingKind::Envelope;
}

/// What can be drawn on a region whose axes are not both lengths.
std::string offered(const EchoRegion& region) {
    const bool time = region.x.unit == PhysicalUnit::Second, velocity = region.y.unit == PhysicalUnit::CentimetrePerSecond;
    if (time && velocity) return "Mark a velocity, an interval of time or an envelope of velocities there.";
    if (time) return "Draw an interval of time there.";
    return velocity ? "Mark a velocity there." : "Draw in a region of tissue instead.";
}

/// No lengths on a spectrum or a trace, whatever its file says; nor where an axis is known to be something else.
bool refusesLengths(const EchoRegion& region) {
    const auto isOther = [](PhysicalUnit unit) {
        return unit != PhysicalUnit::Unknown && unit != PhysicalUnit::None && !isLength(unit);
    };
    return region.kind == EchoRegionKind::Spectral || region.kind == EchoRegionKind::Ecg ||
           region.kind == EchoRegionKind::MMode || isOther(region.x.unit) || isOther(region.y.unit);
}

Result<void> canBeginDoppler(DrawingKind kind, const EchoRegion& region, const Eigen::Vector2d& place) {
    if (kind == DrawingKind::Interval) {
        if (const auto time = intervalMs(region, place, place); !time) return tl::make_unexpected(time.error());
    } else if (const auto v = velocityCmPerS(region, place); !v) {
        return tl::make_unexpected(v.error());
    }
    return {};
}

} // namespace

Result<void> canBegin(DrawingKind kind, const DrawingGround& ground, const Eigen::Vector2d& place) {
    if (isDoppler(kind)) {
        const auto region = regionFor(ground, place);
        if (!region) return tl::make_unexpected(region.error());
        return canBeginDoppler(kind, **region, place);
    }
    const auto* picture = std::get_if<PictureGround>(&ground);
    const auto at = picture ? regionAt(picture->regions, place) : std::nullopt;
    if (!at || !refusesLengths(picture->regions[*at])) return {};
    const EchoRegion& region = picture->regions[*at];
    return failure(ErrorCode::ScaleMissing,
                   "Cannot measure lengths in the " + std::string(words(region.kind)) + " region: its axes are " +
                       std::string(words(region.x.unit)) + " across and " + std::string(words(region.y.unit)) + " down. " +
                       offered(region));
}

SectionGround sectionGround(const Volume& volume) {
    return {volume.edgesMm().maxCoeff()};
}

Result<HandScale> handScaleOf(const PictureScale& scale, double pixelAspect) {
    auto marked = markedScale(scale.from, scale.to, scale.knownMm, pixelAspect);
    if (!marked) return tl::make_unexpected(marked.error());
    marked->origin = scale.origin;
    return HandScale{*marked, scale.within};
}

Result<std::vector<DrawnValue>> measureDrawing(const Drawing& drawing, const DrawingGround& ground) {
    if (const auto ok = check(drawing); !ok) return tl::make_unexpected(ok.error());
    switch (drawing.kind) {
    case DrawingKind::Straight:
        return onLengths(drawing, lengthsOf(ground, drawing.points), straight);
    case DrawingKind::Curve:
        return onLengths(drawing, lengthsOf(ground, drawing.points), curve);
    case DrawingKind::Angle:
        return onLengths(drawing, shapeOf(ground, drawing.points), angle);
    case DrawingKind::Area:
        return onLengths(drawing, lengthsOf(ground, drawing.points), area);
    case DrawingKind::Ellipse:
        return onLengths(drawing, lengthsOf(ground, drawing.points), ellipse);
    case DrawingKind::Velocity:
        return onRegion(drawing, ground, velocity);
    case DrawingKind::Interval:
        return onRegion(drawing, ground, interval);
    case DrawingKind::Envelope:
        return onRegion(drawing, ground, envelope);
    }
    return failure(ErrorCode::Internal, "Cannot measure the drawing: its kind is not known.");
}

Result<std::vector<RecordedValue>> drawingValues(const CaseRecord& record, std::string_view id, const DrawingGround& ground,
                                                 std::shared_ptr<const Provenance> provenance) {
    const auto found = record.drawings.find(id);
    if (found == record.drawings.end())
        return failure(ErrorCode::InvalidArgument, "Cannot measure drawing " + std::string(id) + ": the case has none of that name.");
    const Drawing& drawing = found->second.content;
    const auto measured = measureDrawing(drawing, ground);
    if (!measured) return tl::make_unexpected(measured.error());
    std::vector<InputRevision> inputs{{entryInput<Drawing>(id), found->second.revision}};
    if (const auto* section = std::get_if<SectionSite>(&drawing.site)) {
        inputs.push_back({std::string(input::kImages), revisionOf(record, input::kImages)});
        if (!section->plane.empty()) inputs.push_back({input::placeOf(section->plane), section->planeRevision});
    } else {
        const std::string scale = entryInput<PictureScale>(std::get<PictureSite>(drawing.site).sopInstanceUid);
        inputs.push_back({scale, revisionOf(record, scale)});
    }
    std::vector<RecordedValue> values;
    for (const DrawnValue& one : *measured)
        values.push_back({one.id, entryInput<Drawing>(id), one.unit, one.estimate, inputs, provenance, UnknownFields::object()});
    return values;
}

Eigen::Vector2d unitMm(const Drawing& drawing, const DrawingGround& ground) {
    if (std::holds_alternative<SectionGround>(ground) || drawing.points.empty()) return Eigen::Vector2d::Ones();
    const auto lengths = shapeOf(ground, drawing.points);
    return lengths ? lengths->scale.mmPerPixel : Eigen::Vector2d(1.0, std::get<PictureGround>(ground).pixelAspect);
}

bool isClosed(DrawingKind kind) {
    return kind == DrawingKind::Area || kind == DrawingKind::Ellipse;
}

PointCount pointCount(DrawingKind kind) {
    constexpr std::size_t kMost = 4096; // what a hand draws stays far below
    switch (kind) {
    case DrawingKind::Straight:
    case DrawingKind::Interval:
        return {2, 2};
    case DrawingKind::Curve:
        return {2, kMost};
    case DrawingKind::Angle:
    case DrawingKind::Ellipse:
        return {3, 3};
    case DrawingKind::Area:
    case DrawingKind::Envelope:
        return {3, kMost};
    case DrawingKind::Velocity:
        return {1, 1};
    }
    return {1, kMost};
}

std::vector<Eigen::Vector2d> drawingLine(DrawingKind kind, std::span<const Eigen::Vector2d> points,
                                         const Eigen::Vector2d& unitMm) {
    constexpr int kPieces = 16, kEllipsePoints = 96;
    if (kind != DrawingKind::Curve && !isClosed(kind)) return {points.begin(), points.end()};
    Points mm;
    for (const auto& p : points)
        mm.push_back(p.cwiseProduct(unitMm));
    Points line;
    if (kind == DrawingKind::Ellipse) {
        if (mm.size() != 3 || mm[0] == mm[1]) return {points.begin(), points.end()};
        const Ellipse e = ellipseOf(mm);
        for (int i = 0; i < kEllipsePoints; ++i)
            line.push_back(pointAt(e, 2.0 * std::numbers::pi * i / kEllipsePoints));
    } else {
        const auto smooth =
            SmoothLine::through(mm, kind == DrawingKind::Area ? SmoothLine::Ends::Closed : SmoothLine::Ends::Open);
        if (!smooth) return {points.begin(), points.end()};
        line = smooth->sampled(kPieces);
    }
    for (auto& p : line)
        p = p.cwiseQuotient(unitMm);
    return line;
}

Eigen::Vector2d ellipseSquared(std::span<const Eigen::Vector2d> points, const Eigen::Vector2d& unitMm) {
    const Eigen::Vector2d center = points[0].cwiseProduct(unitMm);
    const Eigen::Vector2d first = points[1].cwiseProduct(unitMm) - center;
    if (first.norm() == 0.0) return points[2];
    const Eigen::Vector2d across = Eigen::Vector2d(-first.y(), first.x()).normalized();
    const Eigen::Vector2d third = points[2].cwiseProduct(unitMm) - center;
    return (center + third.dot(across) * across).cwiseQuotient(unitMm);
}

bool isPlaneMoved(const CaseRecord& record, const Drawing& drawing) {
    const auto* section = std::get_if<SectionSite>(&drawing.site);
    return section && !section->plane.empty() && revisionOf(record, input::placeOf(section->plane)) != section->planeRevision;
}

bool isPlaneMoved(const CaseRecord& record, const CorrectedContour& contour) {
    return !contour.plane.empty() && revisionOf(record, input::placeOf(contour.plane)) != contour.planeRevision;
}

} // namespace gauge::core
