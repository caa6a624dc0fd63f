// From the text of an observations file (format ostium-gauge/observations/1) to readings and facts.
//
//   {"format": "ostium-gauge/observations/1",
//    "observations": [{"quantity", "modality", "derivation", "stage", "state", "condition", "phase",
//    "value_mm",
//                      "standard_uncertainty_mm", "pressure_mmHg", "pressure_source",
//                      "pressure_uncertainty_mmHg", "v_wave_mmHg", and optional "contour_per_view", "beats":
//                      "alike|mixed"}],
//    "depth_mm", "ostium_longest_mm",
//    and optional "depth_from_landing_zone_mm", "depth_is_lower_bound", "regurgitation_may_recur",
//    "section": {"longest_mm", "shortest_mm", "longest_at_deg"},
//    "bend": {"turn_deg", "neck_length_mm", "width_mm", "depth_mm"},
//    "clearances": [{"structure", "from": "landing-zone-wall|ostium-centre", "distance_mm"}],
//    "stasis": [{"stage", "echo_contrast_grade", "sludge", "thrombus", "emptying_velocity_cm_s",
//    "enhancement_ratio",
//                "enhancement_phase": "early|delayed|unknown", "looked_at_again", "seen_by"}]}
//
// Null and absent are the same. Fields that it does not know are left alone.
#pragma once

#include "core/sizing/appendage_facts.h"

#include <string_view>

namespace gauge::core {

struct ObservationsFile {
    std::vector<Observation> observations;
    AppendageFacts facts;
};

/// @param name  of the file, for messages.
/// @errors ObservationsInvalid; the message names the field (`observations[2].pressure_mmHg`), what stands
/// there and what is allowed. Readings of one state that contradict each other about its pressure, v wave or
/// condition too.
Result<ObservationsFile> readObservations(std::string_view json, std::string_view name);

} // namespace gauge::core
