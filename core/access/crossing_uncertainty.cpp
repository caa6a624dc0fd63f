#include "core/access/crossing_uncertainty.h"

#include "core/units/angle.h"

#include <array>
#include <cmath>

namespace gauge::core {
namespace {

constexpr std::size_t kValues = 5;
using Values = std::array<std::optional<double>, kValues>;
using Squares = std::array<double, kValues>;

Values valuesOf(const CrossingValues& v) {
    return {v.overCoaptationMm, v.overAnnulusMm, v.distanceMm, v.angleDeg, v.steeredAngleDeg};
}

/// Evaluates the crossing with one input after another moved.
class Propagation {
public:
    Propagation(SeptumMarks marks, std::optional<AppendageTarget> target, const PatientPoint& leftAtrium, const PatientPoint& crossing,
                const Steering& steering)
        : m_marks(std::move(marks)), m_target(std::move(target)), m_leftAtrium(leftAtrium), m_crossing(crossing), m_steering(steering) {}

    Result<Values> now() const {
        const auto scene = crossingScene(m_marks, m_target, m_leftAtrium);
        if (!scene) return tl::unexpected(scene.error());
        return valuesOf(crossingAt(*scene, scene->face.frame.sectionFromPatient(m_crossing), m_steering));
    }

    Squares byMarks() {
        Squares sum{};
        for (auto* points : {&m_marks.annulus, &m_marks.coaptation, &m_marks.fossa})
            for (PatientPoint& point : *points)
                addMoves(point.mm, kMarkUncertaintyMm, sum);
        return sum;
    }

    Squares byTarget(const PlacementSpread& spread) {
        Squares sum{};
        if (!m_target) return sum;
        addMoves(m_target->ostiumCentre.mm, spread.shiftMm, sum);
        const Eigen::Vector3d axis = m_target->axis.mm, first = axis.unitOrthogonal(), second = axis.cross(first);
        for (const Eigen::Vector3d& towards : {first, second}) {
            const auto tilt = [&](double sign) {
                const double rad = sign * spread.tiltDeg * kRadPerDegree;
                m_target->axis.mm = std::cos(rad) * axis + std::sin(rad) * towards;
                return now();
            };
            const auto plus = tilt(1.0), minus = tilt(-1.0);
            add(plus, minus, sum);
            m_target->axis.mm = axis;
        }
        return sum;
    }

private:
    void addMoves(Eigen::Vector3d& place, double byMm, Squares& sum) {
        const Eigen::Vector3d there = place;
        for (int axis = 0; axis < 3; ++axis) {
            place[axis] = there[axis] + byMm;
            const auto plus = now();
            place[axis] = there[axis] - byMm;
            const auto minus = now();
            place = there;
            add(plus, minus, sum);
        }
    }

    static void add(const Result<Values>& plus, const Result<Values>& minus, Squares& sum) {
        if (!plus || !minus) return; // a move that spoils the geometry: the others tell enough
        for (std::size_t i = 0; i < kValues; ++i)
            if ((*plus)[i] && (*minus)[i]) sum[i] += std::pow(0.5 * (*(*plus)[i] - *(*minus)[i]), 2);
    }

    SeptumMarks m_marks;
    std::optional<AppendageTarget> m_target;
    PatientPoint m_leftAtrium, m_crossing;
    Steering m_steering;
};

} // namespace

Result<CrossingEstimates> crossingEstimates(const SeptumMarks& marks, const std::optional<AppendageTarget>& target,
                                            const PatientPoint& leftAtrium, const PatientPoint& crossing, const Steering& steering,
                                            const PlacementSpread& spread) {
    const auto scene = crossingScene(marks, target, leftAtrium);
    if (!scene) return tl::unexpected(scene.error());
    if (auto inside = insideFossa(scene->face, scene->face.frame.sectionFromPatient(crossing)); !inside)
        return tl::unexpected(inside.error());
    Propagation propagation(marks, target, leftAtrium, crossing, steering);
    const auto values = propagation.now();
    if (!values) return tl::unexpected(values.error());
    const Squares marksSquares = propagation.byMarks(), targetSquares = propagation.byTarget(spread);
    const auto estimate = [&](std::size_t i, const char* method) -> std::optional<Estimate> {
        if (!(*values)[i]) return std::nullopt;
        Estimate one{*(*values)[i], {}, method};
        one.components.observer = std::sqrt(marksSquares[i]);
        one.components.plane = std::sqrt(targetSquares[i]);
        return one;
    };
    return CrossingEstimates{estimate(0, "over the level of coaptation, parallel to the septum, by marked points on CT"),
                             estimate(1, "over the plane of the mitral annulus, by marked points on CT"),
                             estimate(2, "from the crossing to the ostium's centre on CT"),
                             estimate(3, "line from the crossing to the ostium's centre against the proximal axis on CT"),
                             estimate(4, "arrival of a steerable sheath of the set radius against the proximal axis on CT")};
}

} // namespace gauge::core
