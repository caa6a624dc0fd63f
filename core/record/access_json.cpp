// Septal crossing: what is marked, and what the person sets and chooses.
#include "core/record/record_json.h"

#include <array>
#include <utility>

namespace gauge::core::record_json {

using namespace json_writer;
using namespace std::string_view_literals;

namespace {

constexpr std::array kHeightData{std::pair{HeightDatum::Annulus, "annulus"sv}, std::pair{HeightDatum::Coaptation, "coaptation"sv}};

Json listOf(const std::vector<PatientPoint>& points) {
    Json list = Json::array();
    for (const PatientPoint& point : points)
        list.push_back(triple(point.mm));
    return list;
}

Json placeOrNull(const std::optional<PatientPoint>& point) {
    return point ? triple(point->mm) : Json(nullptr);
}

std::vector<PatientPoint> readPoints(Object& o, const char* key) {
    std::vector<PatientPoint> points;
    if (!o.has(key)) return points;
    for (const auto& item : o.array(key)) {
        const bool isPlace = item.is_array() && item.size() == 3 && item[0].is_number() && item[1].is_number() && item[2].is_number();
        if (!isPlace) throw Finding{o.pathOf(key) + "[" + std::to_string(points.size()) + "] is no place of three numbers"};
        points.push_back({{item[0].get<double>(), item[1].get<double>(), item[2].get<double>()}});
    }
    return points;
}

std::optional<PatientPoint> readPlace(Object& o, const char* key) {
    return o.has(key) ? std::optional(PatientPoint{o.triple(key)}) : std::nullopt;
}

} // namespace

Json written(const SeptumMarks& m) {
    return {{"annulus_lps_mm", listOf(m.annulus)},
            {"coaptation_lps_mm", listOf(m.coaptation)},
            {"fossa_lps_mm", listOf(m.fossa)},
            {"aortic_root_lps_mm", placeOrNull(m.aorticRoot)}};
}

void read(Object& o, SeptumMarks& m) {
    m.annulus = readPoints(o, "annulus_lps_mm");
    m.coaptation = readPoints(o, "coaptation_lps_mm");
    m.fossa = readPoints(o, "fossa_lps_mm");
    m.aorticRoot = readPlace(o, "aortic_root_lps_mm");
}

Json written(const SeptumPlan& p) {
    return {{"repair_planned", p.limits.repairPlanned},
            {"datum", word(kHeightData, p.limits.datum)},
            {"lowest_mm", p.limits.lowestMm},
            {"highest_mm", p.limits.highestMm},
            {"most_angle_deg", p.limits.mostAngleDeg},
            {"steerable_at_hand", p.limits.steerableAtHand},
            {"sheath_radius_mm", p.limits.steering.radiusMm},
            {"most_departure_deg", p.limits.steering.mostDepartureDeg},
            {"crossing_lps_mm", placeOrNull(p.crossing)}};
}

void read(Object& o, SeptumPlan& p) {
    p.limits.repairPlanned = o.flag("repair_planned");
    p.limits.datum = o.choice("datum", kHeightData);
    p.limits.lowestMm = o.number("lowest_mm");
    p.limits.highestMm = o.number("highest_mm");
    p.limits.mostAngleDeg = o.number("most_angle_deg");
    p.limits.steerableAtHand = o.flag("steerable_at_hand");
    p.limits.steering.radiusMm = o.number("sheath_radius_mm");
    p.limits.steering.mostDepartureDeg = o.number("most_departure_deg");
    p.crossing = readPlace(o, "crossing_lps_mm");
}

} // namespace gauge::core::record_json
