// What was recorded of the circulation, stage by stage: the time line beside the widths. Values only; what they mean for
// a diameter is the model's business (posterior.h).
#pragma once

#include "core/pressure/observation.h"
#include "core/result.h"

#include <nlohmann/json.hpp>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace gauge::core {

enum class Rhythm { Sinus, AtrialFibrillation, AtrialFlutter, Paced };
enum class Ventilation { Spontaneous, Controlled };
/// Grades of mitral regurgitation: none or trace, then 1+ to 4+.
enum class RegurgitationGrade { None, Mild, Moderate, ModerateToSevere, Severe };
/// Systolic wave of the pulmonary veins against the diastolic one.
enum class PulmonaryVeinFlow { SystolicDominant, Blunted, Reversed };
/// How a mean mitral gradient was obtained.
enum class GradientSource { SpectralEnvelope, Typed };

/// Words of the file: "atrial-fibrillation", "moderate-to-severe", "systolic-dominant", "spectral-envelope"…
std::string_view word(Rhythm);
std::string_view word(Ventilation);
std::string_view word(RegurgitationGrade);
std::string_view word(PulmonaryVeinFlow);
std::string_view word(GradientSource);

/// One moment of the patient's course. Pressures and gradient mmHg, rate per minute; what was not recorded is absent.
struct HaemodynamicState {
    Stage stage = Stage::BeforeProcedure;
    std::string state; ///< the id by which readings name this moment; not empty
    std::string time;  ///< ISO 8601, or empty
    std::optional<double> meanPressureMmHg;
    std::optional<PressureSource> pressureSource;
    std::optional<double> vWaveMmHg;
    std::optional<double> meanMitralGradientMmHg;
    std::optional<GradientSource> gradientSource;
    std::optional<double> heartRatePerMinute;
    std::optional<Rhythm> rhythm;
    std::optional<Ventilation> ventilation;
    std::optional<RegurgitationGrade> regurgitation;
    std::optional<PulmonaryVeinFlow> pulmonaryVeinFlow;

    bool operator==(const HaemodynamicState&) const = default;
};

/// What cannot be, or can hardly be, as sentences with the numbers: outside physiological bounds (mean pressure 0 to 60,
/// v wave 0 to 100, gradient 0 to 40 mmHg, rate 20 to 250 per minute: common practice, no source), a v wave below
/// its mean, a mitral gradient above the mean atrial pressure, systolic reversal without significant regurgitation.
/// Codes: "implausible-pressure", "v-wave-below-mean", "implausible-gradient", "implausible-rate", "regurgitation-doubtful".
std::vector<Notice> plausibility(const HaemodynamicState&);

/// What changed from one moment to the next and matters for a width: pressure up or down by 3 mmHg or more, other
/// rhythm, other ventilation, a repair after which the pressure did not fall, regurgitation less or more. Code "haemodynamics-changed".
std::vector<Notice> changes(const HaemodynamicState& before, const HaemodynamicState& after);

/// {"format":"ostium-gauge/haemodynamics/1","states":[{"stage":…,"state":…,"mean_pressure_mmHg":…|absent,…}]}
nlohmann::json toJson(std::span<const HaemodynamicState>);

/// @errors RecordUnreadable, naming the place: wrong format, a field of the wrong type, an unknown word, a number that is
/// not finite or below 0, a state twice. Fields nobody knows are an error too: a misspelt one would be lost.
Result<std::vector<HaemodynamicState>> haemodynamicsFromJson(const nlohmann::json&);

} // namespace gauge::core
