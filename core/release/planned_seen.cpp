#include "core/release/planned_seen.h"

#include "core/number_text.h"

#include <algorithm>
#include <cmath>

namespace gauge::core {
namespace {

std::optional<Estimate> clearanceOf(const Seat& seat, Structure structure) {
    const auto found = std::find_if(seat.clearances.begin(), seat.clearances.end(),
                                    [structure](const SeatClearance& c) { return c.structure == structure; });
    if (found == seat.clearances.end()) return std::nullopt;
    return found->mm;
}

std::optional<Estimate> plannedFor(const Seat& seat, ReleaseQuantity quantity) {
    switch (quantity) {
    case ReleaseQuantity::ShareBeyondCircumflex:
        return seat.beyondCircumflexPercent;
    case ReleaseQuantity::ImplantWidth:
        return seat.landingWidthMm;
    case ReleaseQuantity::ClearanceCircumflex:
        return clearanceOf(seat, Structure::CircumflexArtery);
    case ReleaseQuantity::ClearancePulmonaryArtery:
        return clearanceOf(seat, Structure::PulmonaryArtery);
    case ReleaseQuantity::ClearanceMitralAnnulus:
        return clearanceOf(seat, Structure::MitralAnnulus);
    case ReleaseQuantity::ClearanceRidge:
        return clearanceOf(seat, Structure::Ridge);
    default:
        return std::nullopt;
    }
}

} // namespace

std::vector<PlannedSeen> plannedSeen(const Seat& seat, const ReleaseState& look) {
    std::vector<PlannedSeen> all;
    if (look.stage < Stage::DeployedAttached || !seat.problem.empty() || !seat.hasRoom) return all;
    for (const ReleaseFinding& finding : look.findings) {
        const auto planned = plannedFor(seat, finding.quantity);
        if (!planned) continue;
        PlannedSeen one{finding.quantity, finding.view, *planned, finding.value, finding.standardUncertainty, false, {}};
        const double sd = std::hypot(planned->standardUncertainty(), finding.standardUncertainty.value_or(0.0));
        one.differ = sd > 0.0 && std::abs(one.seen - planned->value) > 2.0 * sd;
        const std::string unit = " " + std::string(unitOf(finding.quantity));
        one.sentence = {one.differ ? "planned-differs" : "planned-seen",
                        "Planned and seen, " + std::string(words(finding.quantity)) + ": " + fixed(planned->value, 1) + unit +
                            " planned, " + fixed(one.seen, 1) + unit + " seen." +
                            (one.differ ? " They differ by more than both uncertainties allow." : ""),
                        {{"view", finding.view}}};
        all.push_back(std::move(one));
    }
    return all;
}

} // namespace gauge::core
