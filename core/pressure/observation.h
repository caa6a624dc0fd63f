// Readings of the appendage as they enter the model of filling pressure, and the words that name them in files.
// What is assumed where a field is empty: priors.h. What the model makes of readings: posterior.h.
#pragma once

#include "core/stage.h"

#include <optional>
#include <string>
#include <string_view>

namespace gauge::core {

/// What was read. Readings of different quantities are never combined: a longest diameter is no
/// perimeter-derived one.
enum class Quantity {
    LandingZonePerimeterDerivedDiameter,
    LandingZoneAreaDerivedDiameter,
    LandingZoneLongestDiameter,
    OstiumPerimeterDerivedDiameter,
    OstiumLongestDiameter,
    Depth,
};

enum class Modality { Ct, Echo2d, Echo3d, Fluoroscopy };

/// How the value came about. LargestOfViews and SingleView have no counterpart in a contour.
enum class Derivation { Contour, EllipseFromAngles, LargestOfViews, SingleView };

/// What chooses the prior of an unmeasured pressure: significant mitral regurgitation not yet treated; filled on
/// purpose; anything else.
enum class Condition { MitralRegurgitation, Hydrated, Other };

/// Phase of the width: the ventricle's end-systole, when the v wave stretches the appendage, or another.
enum class Phase { EndSystole, Other, Unknown };

/// How a left atrial mean pressure was obtained. ProcedureStart: measured at the start of the procedure and used
/// for a state of another day (the CT's).
enum class PressureSource { Direct, Wedge, Echo, ProcedureStart };

/// The words of the observation file, for example "landing_zone_longest_diameter", "echo-2d", "largest-of-views".
std::string_view word(Quantity);
std::string_view word(Modality);
std::string_view word(Derivation);
std::string_view word(Stage);
std::string_view word(Condition);
std::string_view word(Phase);
std::string_view word(PressureSource);

/// The value that a word of the observation file names; none for any other text.
template <class Enum> std::optional<Enum> fromWord(std::string_view word);
template <> std::optional<Quantity> fromWord<Quantity>(std::string_view);
template <> std::optional<Modality> fromWord<Modality>(std::string_view);
template <> std::optional<Derivation> fromWord<Derivation>(std::string_view);
template <> std::optional<Stage> fromWord<Stage>(std::string_view);
template <> std::optional<Condition> fromWord<Condition>(std::string_view);
template <> std::optional<Phase> fromWord<Phase>(std::string_view);
template <> std::optional<PressureSource> fromWord<PressureSource>(std::string_view);

/// All words of one kind joined by ", " in the order of the enum: for messages that say what may stand there.
template <class Enum> std::string allWords();
template <> std::string allWords<Quantity>();
template <> std::string allWords<Modality>();
template <> std::string allWords<Derivation>();
template <> std::string allWords<Stage>();
template <> std::string allWords<Condition>();
template <> std::string allWords<Phase>();
template <> std::string allWords<PressureSource>();

/// The same for people: "perimeter-derived diameter of the landing zone", "2D echo", "ellipse from probe angles".
std::string_view plainName(Quantity);
std::string_view plainName(Modality);
std::string_view plainName(Derivation);
std::string_view plainName(Stage);

/// LargestOfViews and SingleView: widths that have no counterpart in a contour.
bool isView(Derivation);

/// Whether an implant sits in the appendage at that stage: its width is then no longer the appendage's own.
bool hasImplant(Stage);

/// One reading. Lengths mm, pressures mmHg (of the left atrium). Empty fields take the defaults of priors.h.
struct Observation {
    Quantity quantity = Quantity::LandingZonePerimeterDerivedDiameter;
    Modality modality = Modality::Ct;
    Derivation derivation = Derivation::Contour;
    Stage stage = Stage::BeforeProcedure;
    /// Names the moment: readings of one state share one pressure and its error. Not empty.
    std::string state;
    Condition condition = Condition::Other; ///< the same in all readings of a state
    Phase phase = Phase::Unknown;
    double valueMm = 0.0;                           ///< > 0
    std::optional<double> standardUncertaintyMm;    ///< > 0; of the reading alone, without pressure and bias
    std::optional<double> pressureMmHg;             ///< mean; given in one reading it holds for the whole state
    std::optional<PressureSource> pressureSource;   ///< absent beside a pressure: the widest uncertainty, with a notice
    std::optional<double> pressureUncertaintyMmHg;  ///< >= 0; absent: by source
    std::optional<double> vWaveMmHg;                ///< peak; holds for the whole state
    /// For a reading of a view (LargestOfViews, SingleView): the CT contour's value of `quantity` divided by the
    /// width that the same contour shows in the same view. With it the reading counts as value times this ratio;
    /// without, it is shown with weight 0.
    std::optional<double> contourPerView;

    bool operator==(const Observation&) const = default;
};

} // namespace gauge::core
