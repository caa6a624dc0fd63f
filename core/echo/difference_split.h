// Why echo reads another diameter than CT: CT - echo, split into plane, phase, pressure, modality and remainder.
#pragma once

#include "core/measure/estimate.h"
#include "core/result.h"

#include <optional>
#include <string>
#include <vector>

namespace gauge::core {

enum class DifferencePart { Plane, Phase, Pressure, Modality, Remainder };

/// "plane and few views", "phase", "pressure", "modality", "not explained".
std::string_view words(DifferencePart part);

/// What is known of each part, as CT - echo in mm, each with its standard uncertainty; none where nothing is known,
/// which then stays in the remainder.
struct DifferenceKnowledge {
    Estimate ct;   ///< the CT contour's diameter
    Estimate echo; ///< the same quantity from echo
    /// CT contour - what echo would have read on this CT (ctAsEchoWouldRead): cut, few views, ellipse.
    std::optional<Estimate> plane;
    /// CT in its phase - CT in the phase of the echo.
    std::optional<Estimate> phase;
    /// Wider or narrower by the filling pressures alone (core/pressure).
    std::optional<Estimate> pressure;
    /// What remains between the modalities in the same cut at the same pressure: minus the bias of the echo reading.
    std::optional<Estimate> modality;
};

struct DifferenceShare {
    DifferencePart part = DifferencePart::Remainder;
    bool known = true;
    double mm = 0.0;
    double standardUncertaintyMm = 0.0;
};

struct DifferenceSplit {
    double differenceMm = 0.0;            ///< CT - echo
    double standardUncertaintyMm = 0.0;   ///< of the difference of the two readings
    std::vector<DifferenceShare> shares;  ///< plane, phase, pressure, modality, remainder; they add up to the difference
    std::vector<Notice> notices;

    const DifferenceShare& share(DifferencePart part) const;
};

/// @errors NonFinite.
/// The remainder's uncertainty is that of both readings and of every known part, added in quadrature: parts are taken
/// as independent (plane and CT share the CT's own edge, which makes it a little too large).
/// Notices: `difference-unexplained` when the remainder exceeds twice its uncertainty; `difference-part-unknown` for
/// each part about which nothing is known.
Result<DifferenceSplit> splitDifference(const DifferenceKnowledge& knowledge);

/// `ct` - `asEcho` (the same metric of ctAsEchoWouldRead, whose uncertainty holds the spread of the pose) as the part
/// of the plane. The edge of the CT, common to both, is left out.
Estimate planePart(const Estimate& ct, const Estimate& asEcho);

} // namespace gauge::core
