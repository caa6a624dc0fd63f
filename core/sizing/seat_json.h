// Seats as JSON, for reports.
//
//   {"basis", "direction_lps": [x, y, z], "angle_to_axis_deg", "plug_plane_mm"|null, "widened_by_mm", "notices": [{"code", "text"}],
//    "sizes": [{"name", "problem"|null, "free_mm", "narrowest_mm", "landing_width_mm": {value}|null, "reach_mm": {value}|null, "needed_mm",
//      "has_room": true|false, "end": "narrow|aside|strand|ahead|open", "reaches": true|false|null, "stands_back_mm"|null,
//      "beyond_circumflex_percent": {value}|null, "disc": {"share_percent": {value}, "overlap_mm": {value}, "least_at"}|null,
//      "gap_superior_mm": {value}|null, "gap_inferior_mm": {value}|null, "clearances": [{"structure", "mm": {value}, "least_mm"|null}],
//      "facts": […], "warnings": […]}]}
//
// A {value} is {"value", "standard_uncertainty"}. Numbers have all their digits. Without room, `end` says what stands in the way at the
// landing zone, and nothing is told of the size in place.
#pragma once

#include "core/sizing/seat.h"

#include <nlohmann/json.hpp>
#include <string>

namespace gauge::core {

/// @param only  the size to tell of; empty: all.
nlohmann::ordered_json seatJson(const SeatAnswer& answer, const SeatQuestion& question, const std::string& only = {});

} // namespace gauge::core
