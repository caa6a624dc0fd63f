// From a finished measurement to the values of the record: the only maker of RecordedValue besides a case
// file.
#pragma once

#include "core/anatomy/appendage.h"
#include "core/record/case_record.h"

#include <memory>
#include <vector>

namespace gauge::core {

/// Values of a measurement, each with the revisions that its inputs have in `record` now. Ids: "ostium/…" and
/// "landing-1/…" (in the order of the landing planes) followed by a section metric's name;
/// "depth/along-axis", "depth/from-ostium-plane", "volume", "turn/angle", "turn/at",
/// "landing-1/straight-depth", "enhancement/atrium" and so on. Precondition: `measurement` was made from the
/// inputs as they are in `record`.
std::vector<RecordedValue> recordedValues(const AppendageMeasurement& measurement, const CaseRecord& record,
                                          std::shared_ptr<const Provenance> provenance);

} // namespace gauge::core
