// Widths read on echo at known rotations of the probe, and what repeated readings of one view say together.
// The ellipse through them: width_ellipse.h. The measured section: echo_section.h.
#pragma once

#include "core/result.h"

#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace gauge::core {

/// When in the beat a width was read; systole and diastole are the ventricle's.
enum class BeatPhase { EndSystole, EndDiastole, Other, Unknown };

/// "end-systole", "end-diastole", "another phase", "unknown phase".
std::string_view words(BeatPhase phase);

/// What a width's standard uncertainty is where nobody states one, mm: an assumption (no published repeatability
/// of 2D widths in mm could be read), editable.
inline constexpr double kAssumedWidthUncertaintyMm = 0.8;

/// One width of one view. The chord runs through the axis of the appendage.
struct WidthReading {
    double angleDeg = 0.0;                       ///< rotation of the probe's plane; taken modulo 180
    double widthMm = 0.0;                        ///< > 0
    std::optional<double> standardUncertaintyMm{}; ///< >= 0; of this reading alone
    BeatPhase phase = BeatPhase::Unknown;
};

/// All readings of one view (angles within 0.5 degrees modulo 180), averaged.
struct ViewWidth {
    double angleDeg = 0.0; ///< of the first reading, in [0, 180)
    double widthMm = 0.0;  ///< mean
    double standardUncertaintyMm = 0.0;
    std::size_t readings = 1;
    std::optional<double> spreadMm; ///< standard deviation of the readings; none for one reading
    BeatPhase phase = BeatPhase::Unknown; ///< Unknown also when the readings differ
};

struct ViewWidths {
    std::vector<ViewWidth> views;         ///< in the order in which the angles first came
    std::vector<std::size_t> viewOfReading; ///< for each reading, its place in `views`
    bool uncertaintyStated = false;       ///< every reading came with its own
    std::vector<Notice> notices;
};

/// Averages repeated readings. Scatter seen in repeats (pooled over the views) shrinks with their number, what the
/// stated uncertainty has beyond it does not: u^2 = max(u_stated^2 - s^2, 0) + s^2 / n.
/// @errors InvalidArgument for no reading, or a width that is not above 0, or a negative uncertainty; NonFinite.
/// Notices: `phases-differ`, `phase-unknown`, `width-implausible` (below 4 or above 60 mm: a wrong unit or scale?).
Result<ViewWidths> averageViews(std::span<const WidthReading> readings);

/// An angle taken into [0, 180).
double probeAngleIn180(double angleDeg);

} // namespace gauge::core
