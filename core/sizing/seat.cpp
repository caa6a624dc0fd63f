#include "core/sizing/seat.h"

#include "core/access/access_target.h"
#include "core/geometry/polyline.h"
#include "core/number_text.h"
#include "core/parallel/cancelled.h"
#include "core/parallel/parallel_for.h"
#include "core/sizing/seat_numbers.h"
#include "core/sizing/seat_words.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace gauge::core {
namespace {

constexpr RingGrain kSpreadGrain{48, 0.5}; // lines of the spread: only their differences count

tl::unexpected<Error> notSeated(ErrorCode code, const std::string& why) {
    return failure(code, "Cannot seat the sizes: " + why);
}

Result<void> checkSeatQuestion(const SeatWall& wall, const SeatQuestion& q) {
    const auto finite = [](const Eigen::Vector3d& v) { return v.allFinite(); };
    if (!finite(q.landingCentre.mm) || !finite(q.direction.mm) || !std::isfinite(q.landingDepthMm) ||
        !std::isfinite(q.widenedByMm))
        return notSeated(ErrorCode::NonFinite, "the landing zone's place, its depth or the sheath's direction is not a number.");
    const auto isUnit = [](const PatientVector& v) { return std::abs(v.norm() - 1.0) <= 1e-6; };
    if (!isUnit(q.direction) || !isUnit(q.axisAtLanding) || !isUnit(q.landingNormal))
        return notSeated(ErrorCode::InvalidArgument, "the sheath's direction, the axis and the landing plane's normal need length 1.");
    if (!(q.landingDepthMm > 0.0))
        return notSeated(ErrorCode::InvalidArgument,
                         "the landing zone lies " + fixed(q.landingDepthMm, 1) + " mm from the ostium; it must lie beyond it.");
    const double angle = angleBetweenDeg(q.direction, q.axisAtLanding);
    if (angle > kMostSheathAngleDeg)
        return notSeated(ErrorCode::InvalidArgument,
                         "the sheath comes in at " + fixed(angle, 0) +
                             " degrees to the appendage's axis at the landing zone, and a straight body says nothing beyond " +
                             fixed(kMostSheathAngleDeg, 0) + ". Choose another crossing or check the axis.");
    if (!wall.isBlood(q.landingCentre))
        return notSeated(ErrorCode::LandingOutsideAppendage,
                         "the middle of the landing zone lies in no blood. Move the landing zone.");
    return {};
}

/// A line of the spread: where it runs, relative to that of the question.
struct LineChange {
    double alongMm = 0.0, aboutU = 0.0, aboutV = 0.0, acrossUMm = 0.0, acrossVMm = 0.0;
};

/// Changes in pairs, one standard deviation to either side of each way to misplace the line.
std::array<LineChange, 10> changesOf(const PlacementSpread& spread) {
    const double s = spread.shiftMm, a = spread.tiltDeg * std::numbers::pi / 180.0;
    return {{{s, 0, 0, 0, 0},
             {-s, 0, 0, 0, 0},
             {0, a, 0, 0, 0},
             {0, -a, 0, 0, 0},
             {0, 0, a, 0, 0},
             {0, 0, -a, 0, 0},
             {0, 0, 0, s, 0},
             {0, 0, 0, -s, 0},
             {0, 0, 0, 0, s},
             {0, 0, 0, 0, -s}}};
}

/// Rings reach as far as any size is wide, and begin where the seat of any of them may lie.
struct LookAround {
    const SeatWall& wall;
    const SeatQuestion& question;
    double reachMm = 0.0, beforeMm = 0.0;

    LookAround(const SeatWall& w, const SeatQuestion& q, const std::vector<SeatMeasures>& sizes) : wall(w), question(q) {
        for (const SeatMeasures& m : sizes)
            reachMm = std::max(reachMm, m.limits.farthestMm() + 1.0 + std::abs(q.widenedByMm));
        beforeMm = q.landingDepthMm + 2.0;
    }
    SheathWalls along(const LineChange& change, const RingGrain& grain) const {
        const SectionFrame frame = frameOf(Plane{question.landingCentre, question.direction});
        const Eigen::AngleAxisd turn = change.aboutU != 0.0 ? Eigen::AngleAxisd(change.aboutU, frame.u.mm)
                                                            : Eigen::AngleAxisd(change.aboutV, frame.v.mm);
        const PatientPoint origin = question.landingCentre + change.alongMm * question.direction +
                                    change.acrossUMm * frame.u + change.acrossVMm * frame.v;
        return lookAround(wall, origin, {turn * question.direction.mm}, beforeMm, reachMm, grain);
    }
    /// What the landing zone's own section measures more than the hull of the same plane. (Of the CT as it is.)
    double measuresMoreMm(BodyMeasure by) const {
        if (!question.landingWidthMm) return 0.0;
        SheathWalls plane = lookAround(wall, question.landingCentre, question.landingNormal, 0.0, reachMm);
        BodyLimits widest; // as far as the rays reach
        widest.by = by;
        widest.freeMm = 4.0 / std::numbers::pi * reachMm;
        return plane.rings.front().leastMm > 0.0
                   ? *question.landingWidthMm - bodySection(plane, plane.rings.front(), widest).widthMm
                   : 0.0;
    }
};

/// What the spread of the lines means for a number: root mean square of its changes to either side, over all pairs. (The second-order
/// form that core/measure uses for sections would extrapolate the jumps that a reach makes past a trabecula.) Where one side of a
/// pair tells nothing, the other stands for both.
template <class Number>
double spreadOf(const SeatNumbers& placed, const std::array<SeatNumbers, 10>& changed, const Number& number) {
    const std::optional<double> here = number(placed);
    if (!here) return 0.0;
    double square = 0.0;
    for (std::size_t pair = 0; pair < changed.size(); pair += 2) {
        const std::optional<double> plus = number(changed[pair]), minus = number(changed[pair + 1]);
        const double a = plus ? *plus - *here : (minus ? *here - *minus : 0.0);
        const double b = minus ? *minus - *here : -a;
        square += 0.5 * (a * a + b * b);
    }
    return std::sqrt(square);
}

Estimate seatEstimate(double value, double edge, double plane, double observer, const char* method) {
    Estimate e;
    e.value = value;
    e.components.edge = edge;
    e.components.plane = plane;
    e.components.observer = observer;
    e.method = method;
    return e;
}

SeatEnd endOf(const SheathStop& stop) {
    switch (stop.by) {
    case SheathStop::By::Narrow:
        return SeatEnd::Narrow;
    case SheathStop::By::Aside:
        return SeatEnd::Aside;
    case SheathStop::By::Indented:
        return SeatEnd::Strand;
    case SheathStop::By::Ahead:
        return SeatEnd::Ahead;
    case SheathStop::By::Open:
        break;
    }
    return SeatEnd::Open;
}

/// The number of a size on the finest line and on all lines of the spread.
struct SizeNumbers {
    SeatMeasures measures;
    SeatNumbers fine, coarse;
    std::array<SeatNumbers, 10> changed;
    double reachEdgeMm = 0.0;
};

void addStop(const SizeNumbers& n, Seat& seat) {
    seat.hasRoom = !n.fine.stop.atOnce;
    seat.end = endOf(n.fine.stop);
    seat.stoppedAt = n.fine.stop.contact;
    seat.leftMm = n.fine.stop.leftMm;
}

void addReach(const SizeNumbers& n, const SeatQuestion& q, double placeSdMm, Seat& seat) {
    const bool fromOstium = q.chart.depthFrom == DepthFrom::Ostium, stopped = seat.end != SeatEnd::Open;
    const auto reach = [](const SeatNumbers& at) { return std::optional(at.stop.tMm); };
    const double plane = stopped ? spreadOf(n.coarse, n.changed, reach) : 0.0;
    seat.reachMm = seatEstimate(n.fine.stop.tMm + (fromOstium ? q.landingDepthMm : 0.0),
                                stopped ? std::hypot(n.reachEdgeMm, placeSdMm) : 0.0, plane, 0.0,
                                "straight along the sheath until the body, in the form of the wall, is stopped");
    const bool farEnough = n.fine.stop.tMm >= n.measures.farMm;
    if (!q.tipUnfilled && (farEnough || stopped)) seat.reaches = farEnough;
    seat.standsBackMm = n.fine.standsBackMm;
}

void addGaps(const SizeNumbers& n, double placeSdMm, Seat& seat) {
    const auto gap = [&](std::optional<double> SeatNumbers::*side) -> std::optional<Estimate> {
        const std::optional<double> value = n.fine.*side;
        if (!value) return std::nullopt;
        const double plane = spreadOf(n.coarse, n.changed, [side](const SeatNumbers& at) { return at.*side; });
        return seatEstimate(*value, placeSdMm, plane, 0.0, "between the body in place and the wall, square to the sheath");
    };
    seat.gapSuperiorMm = gap(&SeatNumbers::gapSuperiorMm);
    seat.gapInferiorMm = gap(&SeatNumbers::gapInferiorMm);
}

void addDiscCover(const SizeNumbers& n, const SeatQuestion& q, Seat& seat) {
    if (!n.fine.coverPercent) return;
    DiscCover cover;
    const double edgeShare = 100.0 * q.ostiumEdgeMm / std::max(1.0, *n.measures.discRadiusMm);
    cover.sharePercent = seatEstimate(
        *n.fine.coverPercent, *n.fine.coverPercent < 100.0 ? edgeShare : 0.0,
        spreadOf(n.coarse, n.changed, [](const SeatNumbers& at) { return at.coverPercent; }), 0.0,
        "area of the ostium's contour under the disc, seen along the sheath");
    cover.overlapMm = seatEstimate(*n.fine.overlapMm, q.ostiumEdgeMm,
                                   spreadOf(n.coarse, n.changed, [](const SeatNumbers& at) { return at.overlapMm; }), 0.0,
                                   "least distance of the disc's rim outside the ostium's, seen along the sheath");
    cover.leastAt = n.fine.leastOverlapAt;
    seat.disc = std::move(cover);
}

void addClearances(const SizeNumbers& n, const SeatQuestion& q, double placeSdMm, Seat& seat) {
    for (std::size_t i = 0; i < q.neighbours.size(); ++i) {
        SeatClearance clearance;
        clearance.structure = q.neighbours[i].structure;
        const auto of = [i](const SeatNumbers& at) {
            return at.seated ? std::optional(at.clearancesMm[i]) : std::nullopt; // a line on which it has no room tells none
        };
        clearance.mm = seatEstimate(n.fine.clearancesMm[i], placeSdMm, spreadOf(n.coarse, n.changed, of), q.markSdMm,
                                    "least distance from body and disc in place to the mark");
        if (const auto least = q.chart.leastClearanceMm.find(clearance.structure); least != q.chart.leastClearanceMm.end())
            clearance.leastMm = least->second;
        seat.clearances.push_back(std::move(clearance));
    }
}

double landingWidth(const SectionMetrics& metrics, BodyMeasure by) {
    switch (by) {
    case BodyMeasure::AreaDerived:
        return metrics.areaDerivedDiameterMm.value;
    case BodyMeasure::Longest:
        return metrics.longestDiameterMm.value;
    case BodyMeasure::PerimeterDerived:
        break;
    }
    return metrics.perimeterDerivedDiameterMm.value;
}

/// Empty where the size has a body to seat.
std::string whyNoBody(const SeatMeasures& measures, const ChartSize& size) {
    if (measures.farMm > measures.nearMm) return {};
    return "Cannot seat size " + size.name + ": its least depth of " + fixed(size.leastDepthMm, 1) +
           " mm does not reach beyond the landing zone. Check the chart, or move the landing zone towards the ostium.";
}

Seat seatFrom(const SizeNumbers& n, const ChartSize& size, const SeatQuestion& q, double placeSdMm) {
    Seat seat;
    seat.name = size.name;
    seat.freeMm = n.measures.limits.freeMm;
    seat.narrowestMm = n.measures.limits.narrowestMm;
    seat.neededMm = size.leastDepthMm;
    seat.problem = whyNoBody(n.measures, size);
    if (!seat.problem.empty()) return seat;
    addStop(n, seat);
    if (!seat.hasRoom) {
        seat.reaches = false;
        return seat;
    }
    seat.seated = n.fine.seated;
    const auto width = [](const SeatNumbers& at) {
        return at.seated ? std::optional(2.0 * at.seated->radiusMm(0.0)) : std::nullopt;
    };
    const bool free = *width(n.fine) >= seat.freeMm;
    seat.landingWidthMm = seatEstimate(*width(n.fine), free ? 0.0 : placeSdMm, spreadOf(n.coarse, n.changed, width), 0.0,
                                       "width in place at the landing zone by the chart's own measure, within the compression band");
    addReach(n, q, placeSdMm, seat);
    if (n.fine.beyondCircumflexPercent) {
        const double length = n.measures.farMm - n.measures.nearMm;
        const double share = *n.fine.beyondCircumflexPercent;
        const bool between = share > 0.0 && share < 100.0;
        seat.beyondCircumflexPercent = seatEstimate(
            share, 0.0, spreadOf(n.coarse, n.changed, [](const SeatNumbers& at) { return at.beyondCircumflexPercent; }),
            between ? 100.0 * q.markSdMm / length : 0.0,
            "share of the body's length beyond the plane through the circumflex mark square to the sheath");
    }
    addDiscCover(n, q, seat);
    addGaps(n, placeSdMm, seat);
    addClearances(n, q, placeSdMm, seat);
    return seat;
}

} // namespace

const char* name(SheathBasis basis) {
    switch (basis) {
    case SheathBasis::Crossing:
        return "crossing";
    case SheathBasis::SteeredCrossing:
        return "steered-crossing";
    case SheathBasis::ProximalAxis:
        return "proximal-axis";
    case SheathBasis::OstiumNormal:
        break;
    }
    return "ostium-normal";
}

const char* words(SheathBasis basis) {
    switch (basis) {
    case SheathBasis::Crossing:
        return "the sheath from the chosen crossing";
    case SheathBasis::SteeredCrossing:
        return "the steerable sheath from the chosen crossing";
    case SheathBasis::ProximalAxis:
        return "the appendage's proximal axis, as no crossing is chosen";
    case SheathBasis::OstiumNormal:
        break;
    }
    return "the ostium's normal, as no crossing is chosen";
}

bool asksTheSameOf(const SeatQuestion& a, const SeatQuestion& b) {
    return a.landingCentre == b.landingCentre && a.landingNormal == b.landingNormal && a.landingWidthMm == b.landingWidthMm &&
           a.plugPlaneMm == b.plugPlaneMm && a.landingDepthMm == b.landingDepthMm && a.direction == b.direction &&
           a.basis == b.basis && a.axisAtLanding == b.axisAtLanding && a.spread.shiftMm == b.spread.shiftMm &&
           a.spread.tiltDeg == b.spread.tiltDeg && a.ostium == b.ostium && a.ostiumEdgeMm == b.ostiumEdgeMm &&
           a.circumflex == b.circumflex && a.neighbours == b.neighbours && a.markSdMm == b.markSdMm &&
           a.widenedByMm == b.widenedByMm && a.tipUnfilled == b.tipUnfilled;
}

BodyMeasure measureOf(const DeviceChart& chart) {
    switch (chart.reading.by3d.quantity) {
    case Quantity::LandingZoneAreaDerivedDiameter:
        return BodyMeasure::AreaDerived;
    case Quantity::LandingZoneLongestDiameter:
    case Quantity::OstiumLongestDiameter:
        return BodyMeasure::Longest;
    default:
        return BodyMeasure::PerimeterDerived;
    }
}

Result<SeatQuestion> seatQuestionOf(const AppendageMeasurement& measurement, const DeviceChart& chart) {
    const auto& zones = measurement.landingZones;
    const auto firstOf = [&](LandingKind kind) {
        return std::find_if(zones.begin(), zones.end(), [kind](const LandingZone& zone) { return zone.kind == kind; });
    };
    auto landing = chart.kind == DeviceKind::Plug ? firstOf(LandingKind::Plug) : zones.end();
    if (landing == zones.end()) landing = firstOf(LandingKind::Axis);
    if (landing == zones.end())
        return notSeated(ErrorCode::LandingOutsideAppendage, "there is no landing zone. Set one in the depth strip.");
    SeatQuestion q;
    q.chart = chart;
    q.landingCentre = landing->section.center;
    q.landingNormal = landing->section.frame.normal;
    q.landingWidthMm = landingWidth(landing->section.metrics, measureOf(chart));
    q.landingDepthMm = landing->depthMm;
    if (landing->kind == LandingKind::Plug) {
        q.plugPlaneMm = landing->depthMm;
        if (const auto axis = Polyline::make(measurement.axis.points)) q.landingDepthMm = axis->nearestTo(q.landingCentre).sMm;
    }
    q.axisAtLanding = axisDirectionAt(measurement, q.landingDepthMm);
    q.direction = accessTarget(measurement).axis;
    q.spread = measurement.ostium.proposed ? PlacementSpread::proposed() : PlacementSpread::confirmed();
    for (const Eigen::Vector2d& p : measurement.ostium.section.contour)
        q.ostium.push_back(measurement.ostium.section.frame.patientFromSection(p));
    q.ostiumEdgeMm = 0.5 * measurement.ostium.section.metrics.longestDiameterMm.components.edge;
    q.tipUnfilled = std::any_of(measurement.notices.begin(), measurement.notices.end(),
                                [](const Notice& n) { return n.code == "tip-unfilled"; });
    return q;
}

Result<SeatAnswer> seatSizes(const SeatWall& wall, const SeatQuestion& question, const WorkContext& work) {
    if (const auto checked = checkSeatQuestion(wall, question); !checked) return tl::make_unexpected(checked.error());
    const std::size_t count = question.chart.sizes.size();
    std::vector<SizeNumbers> numbers(count);
    std::vector<SeatMeasures> measures;
    for (std::size_t i = 0; i < count; ++i) {
        measures.push_back(seatMeasures(question, question.chart.sizes[i]));
        numbers[i].measures = measures.back();
    }
    const LookAround look(wall, question, measures);
    const double more = look.measuresMoreMm(measureOf(question.chart));
    for (SizeNumbers& n : numbers)
        n.measures.limits.measuresMoreMm = more;
    const auto changes = changesOf(question.spread);
    // The fine line, the same line as coarse as those of the spread, and these.
    parallelFor(changes.size() + 2, 1, [&](std::size_t begin, std::size_t end) {
        for (std::size_t i = begin; i < end && !work.stopped(); ++i) {
            const bool fine = i == 0;
            const SheathWalls around = look.along(i < 2 ? LineChange{} : changes[i - 2], fine ? RingGrain{} : kSpreadGrain);
            for (SizeNumbers& n : numbers) {
                if (!(n.measures.farMm > n.measures.nearMm)) continue;
                SeatNumbers& to = fine ? n.fine : i == 1 ? n.coarse : n.changed[i - 2];
                to = seatNumbers(wall, around, question, n.measures);
                if (i != 1) continue;
                const auto reachWith = [&](double outwards) {
                    BodyLimits limits = n.measures.limits;
                    limits.outwardsMm += outwards;
                    return slideBody(wall, around, limits).tMm;
                };
                n.reachEdgeMm = 0.5 * std::abs(reachWith(wall.placeSdMm) - reachWith(-wall.placeSdMm));
            }
        }
    });
    if (work.stopped()) return cancelled("Seating the sizes");
    SeatAnswer answer;
    answer.basis = question.basis;
    answer.angleToAxisDeg = angleBetweenDeg(question.direction, question.axisAtLanding);
    answer.hasSides = superiorAcross(question.direction).has_value();
    for (std::size_t i = 0; i < count; ++i) {
        Seat seat = seatFrom(numbers[i], question.chart.sizes[i], question, wall.placeSdMm);
        if (seat.problem.empty()) {
            seat.facts = seatFacts(seat, question);
            seat.warnings = seatWarnings(seat, question);
        }
        answer.sizes.push_back(std::move(seat));
    }
    answer.notices = seatNotices(answer, question);
    work.report(1.0);
    return answer;
}

} // namespace gauge::core
