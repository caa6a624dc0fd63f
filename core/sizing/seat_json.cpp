#include "core/sizing/seat_json.h"

#include "core/sizing/seat_words.h"

namespace gauge::core {
namespace {

using SeatJson = nlohmann::ordered_json;

SeatJson valueJson(const Estimate& e) {
    return {{"value", e.value}, {"standard_uncertainty", e.standardUncertainty()}};
}

SeatJson valueJson(const std::optional<Estimate>& e) {
    return e ? valueJson(*e) : SeatJson(nullptr);
}

SeatJson sentencesJson(const std::vector<Notice>& notices) {
    SeatJson all = SeatJson::array();
    for (const Notice& notice : notices)
        all.push_back({{"code", notice.code}, {"text", notice.text}});
    return all;
}

const char* endName(SeatEnd end) {
    switch (end) {
    case SeatEnd::Narrow:
        return "narrow";
    case SeatEnd::Aside:
        return "aside";
    case SeatEnd::Strand:
        return "strand";
    case SeatEnd::Ahead:
        return "ahead";
    case SeatEnd::Open:
        break;
    }
    return "open";
}

SeatJson sizeSeatJson(const Seat& seat) {
    if (!seat.problem.empty()) return {{"name", seat.name}, {"problem", seat.problem}};
    SeatJson clearances = SeatJson::array();
    for (const SeatClearance& c : seat.clearances)
        clearances.push_back({{"structure", name(c.structure)},
                              {"mm", valueJson(c.mm)},
                              {"least_mm", c.leastMm ? SeatJson(*c.leastMm) : SeatJson(nullptr)}});
    SeatJson disc = nullptr;
    if (seat.disc)
        disc = {{"share_percent", valueJson(seat.disc->sharePercent)},
                {"overlap_mm", valueJson(seat.disc->overlapMm)},
                {"least_at", sideWords(seat.disc->leastAt)}};
    return {{"name", seat.name},
            {"problem", nullptr},
            {"free_mm", seat.freeMm},
            {"narrowest_mm", seat.narrowestMm},
            {"landing_width_mm", valueJson(seat.landingWidthMm)},
            {"reach_mm", valueJson(seat.reachMm)},
            {"needed_mm", seat.neededMm},
            {"has_room", seat.hasRoom},
            {"end", endName(seat.end)},
            {"reaches", seat.reaches ? SeatJson(*seat.reaches) : SeatJson(nullptr)},
            {"stands_back_mm", seat.hasRoom ? SeatJson(seat.standsBackMm) : SeatJson(nullptr)},
            {"beyond_circumflex_percent", valueJson(seat.beyondCircumflexPercent)},
            {"disc", std::move(disc)},
            {"gap_superior_mm", valueJson(seat.gapSuperiorMm)},
            {"gap_inferior_mm", valueJson(seat.gapInferiorMm)},
            {"clearances", std::move(clearances)},
            {"facts", sentencesJson(seat.facts)},
            {"warnings", sentencesJson(seat.warnings)}};
}

} // namespace

nlohmann::ordered_json seatJson(const SeatAnswer& answer, const SeatQuestion& question, const std::string& only) {
    SeatJson sizes = SeatJson::array();
    for (const Seat& seat : answer.sizes)
        if (only.empty() || seat.name == only) sizes.push_back(sizeSeatJson(seat));
    const Eigen::Vector3d& d = question.direction.mm;
    return {{"basis", name(answer.basis)},
            {"direction_lps", {d.x(), d.y(), d.z()}},
            {"angle_to_axis_deg", answer.angleToAxisDeg},
            {"plug_plane_mm", question.plugPlaneMm ? SeatJson(*question.plugPlaneMm) : SeatJson(nullptr)},
            {"widened_by_mm", question.widenedByMm},
            {"notices", sentencesJson(answer.notices)},
            {"sizes", std::move(sizes)}};
}

} // namespace gauge::core
