// A measured value with everything needed to say where it came from. Only core/record makes them
// (measurement_values.h).
#pragma once

#include "core/measure/estimate.h"

#include <cstdint>
#include <memory>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace gauge::core {

/// Sequence number of the edit that gave an input its content; 0: never set.
using Revision = std::uint64_t;

struct InputRevision {
    std::string id; ///< see core::input in case_record.h
    Revision revision = 0;

    bool operator==(const InputRevision&) const = default;
};

/// Where values came from; shared by all values of one measurement.
struct Provenance {
    std::vector<std::string> sopInstanceUids; ///< of the images
    std::string frameOfReferenceUid;
    std::string phase;  ///< in words: "45 %", "ungated"
    std::string state;  ///< stage of the patient's course: "before the procedure"
    std::string author; ///< who was at the screen; may be empty
    std::string time;   ///< ISO 8601 with offset
    std::optional<int> frame{}; ///< of a single picture, 0-based

    bool operator==(const Provenance&) const = default;
};

/// The group of the values that the CT's marks and planes give.
inline constexpr std::string_view kCtValues = "ct";

struct RecordedValue {
    std::string id;   ///< unique in its group: "ostium/perimeter-derived-diameter", "landing-1/area"…
    /// Values that are computed and replaced together: "ct", "echo/" + moment id, "fluoroscopy/" + moment id,
    /// "drawing/" + drawing id.
    std::string group = std::string(kCtValues);
    std::string unit; ///< "mm", "mm2", "mL", "deg", "HU", "1"
    Estimate estimate;
    std::vector<InputRevision> inputs;
    std::shared_ptr<const Provenance> provenance; ///< never null in a record
    nlohmann::json unknown = nlohmann::json::object();
};

/// Equal content; the provenance is compared by content too.
bool operator==(const RecordedValue& a, const RecordedValue& b);

} // namespace gauge::core
