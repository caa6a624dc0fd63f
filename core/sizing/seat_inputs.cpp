#include "core/sizing/seat_inputs.h"

#include "core/geometry/plane_fit.h"

#include <algorithm>
#include <cmath>

namespace gauge::core {

Result<SheathArrival> sheathArrival(const PatientPoint& crossing, const AppendageTarget& target, const PatientVector& leaving,
                                    const CrossingLimits& limits) {
    const auto straight = straightCourse(crossing, target, leaving);
    if (!straight) return tl::make_unexpected(straight.error());
    if (straight->arrivalAngleDeg > limits.mostAngleDeg && limits.steerableAtHand)
        if (const auto steered = steeredCourse(crossing, target, leaving, limits.steering))
            return SheathArrival{steered->arrival, SheathBasis::SteeredCrossing};
    return SheathArrival{straight->arrival, SheathBasis::Crossing};
}

std::optional<SeatNeighbour> annulusNeighbour(std::span<const PatientPoint> annulus) {
    if (annulus.empty()) return std::nullopt;
    SeatNeighbour ring{Structure::MitralAnnulus, {annulus.begin(), annulus.end()}, false};
    const auto fit = fitPlane(annulus, "the mitral annulus");
    if (!fit) return ring;
    const SectionFrame frame = frameOf(fit->plane);
    const auto angle = [&](const PatientPoint& p) {
        const Eigen::Vector2d at = frame.sectionFromPatient(p);
        return std::atan2(at.y(), at.x());
    };
    std::sort(ring.points.begin(), ring.points.end(),
              [&](const PatientPoint& a, const PatientPoint& b) { return angle(a) < angle(b); });
    ring.closed = true;
    return ring;
}

} // namespace gauge::core
