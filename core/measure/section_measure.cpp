#include "core/measure/section_measure.h"

#include "core/measure/closed_curve.h"
#include "core/measure/edge_model.h"
#include "core/measure/edge_uncertainty.h"
#include "core/measure/section_outline.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <numbers>

namespace gauge::core {
namespace {

constexpr double kFinestWaveMm = 2.5;      // detail below this is noise at cardiac CT's resolution
constexpr double kContourStepMm = 0.25;
constexpr double kNoiseLengthMm = 1.4;     // border errors are alike over about this (averaging and blur)
constexpr double kTightestRadiusMm = 1.5;  // the curvature correction goes no further
/// Standard uncertainty of a border's mean place from grid, interpolation and the model of the edge; found on
/// noise-free phantoms of random placement (tests/phantoms, DEVELOPERS.md "Accuracy").
constexpr double kModelMm = 0.009;
/// Levels are fitted to the same noisy profiles: they add this share to the variance of a border's place.
constexpr double kLevelShare = 0.35;

/// A plane moved by its spread whose area changes by more than this factor cuts something else.
constexpr double kAnotherSection = 1.5;

/// Most sections moved by their spread stay within a field this much wider than the section as placed.
constexpr double kPlacementMarginMm = 2.0;

const char* const kContourMethod = "sub-voxel contour at the local half value of blood and wall";

/// A blurred border of radius R crosses the half value s^2 / (2 R) too far inside; moved back along the normal.
std::vector<Eigen::Vector2d> unbend(const ClosedCurve& curve, std::size_t count, double sigmaMm) {
    std::vector<Eigen::Vector2d> points = curve.sample(count);
    for (std::size_t i = 0; i < count; ++i) {
        const double t = static_cast<double>(i) / static_cast<double>(count);
        const auto [d, dd] = curve.derivativesAt(t);
        const double speed = d.norm();
        const double curvature = (d.x() * dd.y() - d.y() * dd.x()) / (speed * speed * speed);
        const double held = std::clamp(curvature, -1.0 / kTightestRadiusMm, 1.0 / kTightestRadiusMm);
        points[i] += 0.5 * sigmaMm * sigmaMm * held * Eigen::Vector2d(d.y(), -d.x()) / speed;
    }
    return points;
}

struct Contoured {
    std::vector<Eigen::Vector2d> contour;
    EdgeSet edges;
};

/// What the sections of one plane, as placed and as moved by its spread, have in common.
struct Circumstances {
    const Volume& volume;
    const SectionGuide& guide;
    EdgeModel edgeModel;
    double firstReachMm;    ///< half width of the field looked at first: wider ones follow where the blood leaves it
    double greatestReachMm;
};

Result<Contoured> contourAt(const Circumstances& all, const SectionFrame& frame) {
    const Volume& volume = all.volume;
    const SectionGuide& guide = all.guide;
    OutlineOptions outlineOptions;
    outlineOptions.levelHu = 0.5 * (guide.bloodHu + guide.wallHu);
    outlineOptions.greatestReachMm = all.greatestReachMm;
    outlineOptions.firstReachMm = std::min(all.firstReachMm, all.greatestReachMm);
    auto outline = traceOutline(volume, frame, outlineOptions);
    if (!outline)
        return tl::make_unexpected(std::move(outline.error()));

    // The blood level of this very section, where it is wide enough to tell.
    SectionGuide local = guide;
    auto& inside = outline->insideHu;
    if (inside.size() >= 30) {
        std::nth_element(inside.begin(), inside.begin() + static_cast<std::ptrdiff_t>(inside.size() / 2), inside.end());
        local.bloodHu = inside[inside.size() / 2];
    }
    Contoured result{{}, locateEdges(volume, frame, outline->contour, local, all.edgeModel)};
    const ClosedCurve curve = smoothClosedCurve(result.edges.points, kNoiseLengthMm, kFinestWaveMm);
    const double perimeter = perimeterMm(result.edges.points);
    const auto count = static_cast<std::size_t>(std::clamp(perimeter / kContourStepMm, 72.0, 480.0));
    result.contour = unbend(curve, count, guide.edgeSigmaMm);
    if (!validateContour(result.contour) || signedAreaMm2(result.contour) <= 0.0)
        return failure(ErrorCode::SectionNotFound,
                       "Cannot measure this section: the blood in it has no border that closes.");
    return result;
}

EdgeNoise edgeNoiseOf(const EdgeSet& edges, const SectionGuide& guide) {
    double inverseSquare = 0.0;
    for (const double slope : edges.slopeHuPerMm)
        inverseSquare += 1.0 / (slope * slope) / static_cast<double>(edges.slopeHuPerMm.size());
    EdgeNoise noise;
    noise.lineDensityMm3 = (1.0 + kLevelShare) * guide.noiseLineDensity * inverseSquare;
    noise.correlationMm = kNoiseLengthMm;
    noise.commonMm = kModelMm;
    return noise;
}

/// Spread of each metric when the plane is shifted and tilted: root mean square about the value as placed, from
/// values at plus and minus one standard deviation of each of the three ways to misplace it. The mean square of
/// g z + h z^2 / 2 for a standard normal z is g^2 + 3 h^2 / 4.
MetricValues placementUncertainty(const Circumstances& all, const SectionFrame& frame, const PlacementSpread& spread,
                                  const MetricValues& placed, bool& opens) {
    const double tilt = spread.tiltDeg * std::numbers::pi / 180.0;
    const auto moved = [&](double shiftMm, double aboutU, double aboutV) -> std::optional<MetricValues> {
        const Eigen::AngleAxisd rotation = aboutU != 0.0 ? Eigen::AngleAxisd(aboutU, frame.u.mm)
                                                         : Eigen::AngleAxisd(aboutV, frame.v.mm);
        SectionFrame f{frame.origin + shiftMm * frame.normal,
                       {rotation * frame.u.mm},
                       {rotation * frame.v.mm},
                       {rotation * frame.normal.mm}};
        const auto contour = contourAt(all, f);
        if (!contour)
            return std::nullopt;
        const MetricValues values = metricValues(contour->contour);
        const double grown = values[static_cast<std::size_t>(Metric::Area)] / placed[static_cast<std::size_t>(Metric::Area)];
        if (grown > kAnotherSection || grown < 1.0 / kAnotherSection)
            return std::nullopt; // it opens into a neighbour, or has left the lumen: another section, not a spread
        return values;
    };
    // Where the whole way cannot be measured (it opens into the atrium, or passes the tip), half or a quarter of it
    // tells the slope.
    const auto change = [&](double shiftMm, double aboutU, double aboutV) -> std::optional<MetricValues> {
        for (const double part : {1.0, 0.5, 0.25}) {
            auto values = moved(part * shiftMm, part * aboutU, part * aboutV);
            if (!values) {
                opens = true;
                continue;
            }
            for (std::size_t m = 0; m < kMetricCount; ++m)
                (*values)[m] = ((*values)[m] - placed[m]) / part;
            return values;
        }
        return std::nullopt;
    };
    const std::optional<MetricValues> pairs[3][2] = {
        {change(spread.shiftMm, 0, 0), change(-spread.shiftMm, 0, 0)},
        {change(0, tilt, 0), change(0, -tilt, 0)},
        {change(0, 0, tilt), change(0, 0, -tilt)},
    };
    MetricValues u{};
    for (std::size_t m = 0; m < kMetricCount; ++m) {
        double square = 0.0;
        for (const auto& [plus, minus] : pairs) {
            // Where one side tells nothing the other stands for both; where neither does, the section says so.
            const double a = plus ? (*plus)[m] : (minus ? -(*minus)[m] : 0.0);
            const double b = minus ? (*minus)[m] : -a;
            const double gradient = 0.5 * (a - b), bend = a + b;
            square += gradient * gradient + 0.75 * bend * bend;
        }
        u[m] = std::sqrt(square);
    }
    return u;
}

/// Half width of the field about the origin that holds the contour.
double reachOf(const std::vector<Eigen::Vector2d>& contour) {
    double reach = 0.0;
    for (const auto& p : contour)
        reach = std::max(reach, p.cwiseAbs().maxCoeff());
    return reach;
}

void fillDiameterEnds(Section& section) {
    const Caliper longest = maximumCaliper(section.contour);
    const Eigen::Vector2d along = (longest.to - longest.from).normalized();
    const Caliper shortest = extentAlong(section.contour, {-along.y(), along.x()});
    section.longestFrom = longest.from;
    section.longestTo = longest.to;
    section.shortestFrom = shortest.from;
    section.shortestTo = shortest.to;
}

} // namespace

Result<Section> measureSection(const Volume& volume, const SectionFrame& frame, const SectionGuide& guide,
                               const SectionOptions& options) {
    Circumstances all{volume, guide, EdgeModel(guide.edgeSigmaMm), OutlineOptions{}.firstReachMm, options.greatestReachMm};
    auto contoured = contourAt(all, frame);
    if (!contoured)
        return tl::make_unexpected(std::move(contoured.error()));

    Section section;
    section.frame = frame;
    section.contour = std::move(contoured->contour);
    section.center = frame.patientFromSection(areaCentroid(section.contour));
    section.bloodHu = contoured->edges.bloodHu;
    section.wallHu = contoured->edges.wallHu;
    fillDiameterEnds(section);

    const MetricValues values = metricValues(section.contour);
    MetricValues edge{}, plane{};
    if (options.edgeUncertainty)
        edge = edgeUncertainty(section.contour, edgeNoiseOf(contoured->edges, guide));
    if (options.placement) {
        all.firstReachMm = std::min(all.firstReachMm, reachOf(section.contour) + kPlacementMarginMm);
        plane = placementUncertainty(all, frame, *options.placement, values, section.opensWithinSpread);
    }
    for (std::size_t m = 0; m < kMetricCount; ++m) {
        Estimate& e = estimateOf(section.metrics, static_cast<Metric>(m));
        e.value = values[m];
        e.components.edge = edge[m];
        e.components.plane = plane[m];
        e.method = kContourMethod;
    }
    return section;
}

Result<std::vector<Eigen::Vector2d>> refitContour(const Volume& volume, const SectionFrame& frame,
                                                  std::span<const Eigen::Vector2d> contour, const SectionGuide& guide) {
    if (const auto ok = validateContour(contour); !ok) return tl::make_unexpected(ok.error());
    std::vector<Eigen::Vector2d> outline(contour.begin(), contour.end());
    if (signedAreaMm2(outline) < 0.0) std::reverse(outline.begin(), outline.end());
    const auto count = static_cast<std::size_t>(std::clamp(perimeterMm(outline) / kContourStepMm, 72.0, 480.0));
    // The levels beside the border are read from an outline that lies on it already: a hand's line is brought there first.
    constexpr int kRounds = 3;
    for (int round = 0; round < kRounds; ++round) {
        auto nearer = broughtToLevel(volume, frame, outline, 0.5 * (guide.bloodHu + guide.wallHu));
        if (!nearer) return failure(ErrorCode::SectionNotFound, "Cannot refit this contour: there is no border of blood near it.");
        outline = std::move(*nearer);
    }
    const EdgeSet edges = locateEdges(volume, frame, outline, guide);
    auto fitted = unbend(smoothClosedCurve(edges.points, kNoiseLengthMm, kFinestWaveMm), count, guide.edgeSigmaMm);
    if (!validateContour(fitted) || signedAreaMm2(fitted) <= 0.0)
        return failure(ErrorCode::SectionNotFound,
                       "Cannot refit this contour: the border near it does not close. Draw it nearer to the border.");
    return fitted;
}

} // namespace gauge::core
