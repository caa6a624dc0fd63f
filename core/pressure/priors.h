// What the model of filling pressure assumes where nothing was measured, each figure with its basis in words.
// All of it is data that the person may change; a report prints `rows` so that an assumption is called one.
// Figures of clinical practice (advised pressure, compression band, leak classes…): practice_figures.h.
#pragma once

#include "core/pressure/observation.h"
#include "core/result.h"

#include <string>
#include <string_view>
#include <vector>

namespace gauge::core {

/// Where a figure comes from: a published text that was read; worked out from such figures; remembered and not
/// verified; assumed; a custom of the trade without a source.
enum class Basis { Read, Computed, Memory, Assumption, CommonPractice };

/// "read", "computed", "memory", "assumption", "common practice"
std::string_view word(Basis);
template <> std::optional<Basis> fromWord<Basis>(std::string_view);

/// A quantity known as a normal distribution before any reading.
struct SpreadPrior {
    double mean = 0.0;
    double sd = 0.0;
    Basis basis = Basis::Assumption;
    std::string words; ///< for a report: what it rests on
};

/// A single figure.
struct ValuePrior {
    double value = 0.0;
    Basis basis = Basis::Assumption;
    std::string words;
};

/// Bias of readings of one kind against a CT contour: reading minus contour, mm.
struct BiasPrior {
    Modality modality = Modality::Ct;
    Derivation derivation = Derivation::Contour;
    SpreadPrior bias;
};

struct Priors {
    /// Slopes at 12 mmHg, mm/mmHg: normal, cut at 0.
    SpreadPrior diameterSlope{0.35, 0.2, Basis::Computed,
                              "from loading studies and assumed pressure rises; no study read gives the slope itself"};
    SpreadPrior depthSlope{0.45, 0.3, Basis::Computed,
                           "from loading studies and assumed pressure rises; no study read gives the slope itself"};

    /// Left atrial mean pressure where it was not measured, mmHg.
    SpreadPrior pressureMitralRegurgitation{
        17.0, 6.0, Basis::Read, "17 +/- 6 mmHg before edge-to-edge repair (265 patients, congress abstract, 2024)"};
    SpreadPrior pressureHydrated{
        12.6, 3.9, Basis::Read, "12.6 +/- 3.9 mmHg before deployment (86 patients, congress abstract, 2021)"};
    SpreadPrior pressureOther{11.0, 4.0, Basis::Assumption, "no source"};
    /// Where only the v wave is known: mean = ratio times v, with this SD.
    ValuePrior meanPerVWave{0.6, Basis::Assumption, "no source"};
    ValuePrior meanFromVWaveSdMmHg{5.0, Basis::Assumption, "no source"};

    /// Standard uncertainty of a measured mean pressure, mmHg.
    ValuePrior directPressureMmHg{1.5, Basis::Assumption, "no source"};
    ValuePrior wedgePressureMmHg{3.0, Basis::Assumption, "no source"};
    ValuePrior echoPressureMmHg{4.0, Basis::Assumption, "no source"};
    ValuePrior procedureStartPressureMmHg{4.0, Basis::Assumption,
                                          "measured on another day than the reading; no source"};

    /// Standard uncertainty of a reading that states none, mm.
    ValuePrior ctReadingMm{0.5, Basis::Assumption, "order of magnitude of CT ring diameters between readers"};
    ValuePrior echoReadingMm{0.8, Basis::Assumption,
                             "repeated 2D echo cannot scatter more than 0.71 mm (computed from a loading study), rounded up"};
    ValuePrior fluoroscopyReadingMm{1.0, Basis::Assumption, "no source"};

    /// Biases by kind; a kind that is not listed takes `otherBias`. A CT contour is the reference: 0, exactly.
    std::vector<BiasPrior> biases = defaultBiases();
    SpreadPrior otherBias{0.0, 2.0, Basis::Assumption, "kind of reading without a figure of its own"};

    /// Pressures in which the law may be used without a warning, mmHg.
    ValuePrior lowestValidMmHg{5.0, Basis::Computed, "span of pressures in the loading studies"};
    ValuePrior highestValidMmHg{20.0, Basis::Computed, "span of pressures in the loading studies"};
    /// Outside, the SD of the pressure term is multiplied by 1 + distance / this.
    ValuePrior wideningMmHg{10.0, Basis::Assumption, "no source"};

    static std::vector<BiasPrior> defaultBiases();
};

/// Every distending pressure is cut here, mmHg: below, the logarithm has nothing to say about an appendage.
inline constexpr double kLeastPressureMmHg = 3.0;

/// No reading counts as better than this, mm: the wall itself is not defined better.
inline constexpr double kLeastReadingUncertaintyMm = 0.02;

/// The prior of the slope of that quantity.
const SpreadPrior& slopePrior(const Priors&, Quantity);

/// The prior of an unmeasured mean pressure.
const SpreadPrior& pressurePrior(const Priors&, Condition);

/// Standard uncertainty by source; none (a pressure whose source nobody stated): the widest of the four.
double pressureUncertaintyMmHg(const Priors&, std::optional<PressureSource>);

/// Standard uncertainty of the reading: its own, else the modality's default; at least kLeastReadingUncertaintyMm.
double readingUncertaintyMm(const Priors&, const Observation&);
double defaultReadingUncertaintyMm(const Priors&, Modality);

/// Bias of a kind of reading; mean 0 and SD 0 for a CT contour.
SpreadPrior biasPrior(const Priors&, Modality, Derivation);

/// @errors NonFinite, InvalidArgument (an SD below 0, an empty range…), with the figure named in words.
Result<void> validate(const Priors&);

/// One line of the table of assumptions.
struct PriorRow {
    std::string key;  ///< stable, kebab-case
    std::string name; ///< in words, with its unit
    double value = 0.0;
    std::optional<double> sd;
    Basis basis = Basis::Assumption;
    std::string words;
};
std::vector<PriorRow> rows(const Priors&);

/// A copy with the figure of that key changed by the person: its basis becomes an assumption, in words "set here".
/// @errors NotFound for an unknown key; InvalidArgument where `sd` is given for a figure that has none, or what
/// validate says.
Result<Priors> withFigure(const Priors&, std::string_view key, double value, std::optional<double> sd = {});

} // namespace gauge::core
