// Everything read on echo at one moment: widths of ostium and landing zone and depth, view by view.
#pragma once

#include "core/echo/echo_section.h"
#include "core/echo/view_effects.h"
#include "core/stage.h"

#include <optional>
#include <string>
#include <vector>

namespace gauge::core {

/// One view; what was not read in it is absent. Lengths mm.
struct EchoView {
    double angleDeg = 0.0;
    BeatPhase phase = BeatPhase::Unknown;
    std::optional<double> ostiumMm, landingZoneMm, depthMm;
    std::string source; ///< SOP Instance UID and frame, or where else it was read
};

struct EchoReadings {
    Stage stage = Stage::BeforeRepair;
    std::vector<EchoView> views;
    std::optional<double> widthUncertaintyMm; ///< none: the assumed one
    double depthUncertaintyMm = 1.5;          ///< assumption: twice a width's, the tip is harder to see
    EchoSectionOptions section;
};

struct EchoDepth {
    Estimate greatestMm; ///< over the views: views that miss the tip read short, so it is a lower bound
    double angleDeg = 0.0;
    double leastMm = 0.0; ///< over the views
};

/// A part that cannot be measured keeps its reason; the others stand.
struct EchoMeasurement {
    std::optional<Result<EchoSection>> ostium, landingZone; ///< absent when no width was read
    std::optional<LargestOfViews> largestOstium, largestLandingZone;
    std::optional<EchoDepth> depth;
    std::vector<Notice> notices; ///< of the study as a whole: `depth-from-one-view`, `depth-short-in-a-view`
};

/// @errors InvalidArgument when there is no view with any reading, or a depth that is not above 0.
Result<EchoMeasurement> measureEcho(const EchoReadings& readings);

} // namespace gauge::core
