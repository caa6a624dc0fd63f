#include "core/pressure/haemodynamics.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <set>

namespace gauge::core {

namespace {

using namespace std::string_view_literals;
using nlohmann::json;

constexpr auto kFormat = "ostium-gauge/haemodynamics/1"sv;

// In the order of the enums.
constexpr std::array kRhythms = {"sinus"sv, "atrial-fibrillation"sv, "atrial-flutter"sv, "paced"sv};
constexpr std::array kVentilations = {"spontaneous"sv, "controlled"sv};
constexpr std::array kGrades = {"none"sv, "mild"sv, "moderate"sv, "moderate-to-severe"sv, "severe"sv};
constexpr std::array kFlows = {"systolic-dominant"sv, "blunted"sv, "reversed"sv};
constexpr std::array kGradientSources = {"spectral-envelope"sv, "typed"sv};
constexpr std::array kPressureSources = {"direct"sv, "wedge"sv, "echo"sv, "procedure-start"sv};
constexpr std::array kStages = {"before-procedure"sv, "before-repair"sv,     "after-repair"sv,
                                "sheath-in-appendage"sv, "partly-deployed"sv, "deployed-attached"sv,
                                "after-release"sv,       "follow-up"sv};

/// One state being read; collects the first finding instead of throwing.
class Reader {
public:
    Reader(const json& object, std::string place) : m_object(object), m_place(std::move(place)) {}

    std::string text(const char* key, bool isRequired) {
        m_known.insert(key);
        const auto found = m_object.find(key);
        if (found == m_object.end() || found->is_null()) {
            if (isRequired) find(std::string(key) + " is absent");
            return {};
        }
        if (!found->is_string()) {
            find(std::string(key) + " holds a " + found->type_name() + " where a text is needed");
            return {};
        }
        return found->get<std::string>();
    }

    std::optional<double> number(const char* key) {
        m_known.insert(key);
        const auto found = m_object.find(key);
        if (found == m_object.end() || found->is_null()) return std::nullopt;
        if (!found->is_number()) {
            find(std::string(key) + " holds a " + found->type_name() + " where a number is needed");
            return std::nullopt;
        }
        const double value = found->get<double>();
        if (std::isfinite(value) && value >= 0.0) return value;
        find(std::string(key) + " is " + found->dump() + ", which must be a number of at least 0");
        return std::nullopt;
    }

    template <class Enum, std::size_t n>
    std::optional<Enum> choice(const char* key, const std::array<std::string_view, n>& words, bool isRequired = false) {
        const std::string value = text(key, isRequired);
        if (value.empty()) return std::nullopt;
        const auto at = std::find(words.begin(), words.end(), value);
        if (at != words.end()) return static_cast<Enum>(at - words.begin());
        std::string all;
        for (const auto w : words)
            all.append(all.empty() ? "" : ", ").append(w);
        find(std::string(key) + " is \"" + value + "\"; it must be one of " + all);
        return std::nullopt;
    }

    void find(const std::string& what) {
        if (m_finding.empty()) m_finding = m_place + ": " + what;
    }

    void refuseOthers() {
        for (const auto& [key, value] : m_object.items())
            if (!m_known.contains(key)) find("nobody knows the field \"" + key + "\"");
    }

    const std::string& finding() const { return m_finding; }

private:
    const json& m_object;
    std::string m_place;
    std::set<std::string> m_known;
    std::string m_finding;
};

tl::unexpected<Error> unreadable(const std::string& finding) {
    return failure(ErrorCode::RecordUnreadable, "Cannot read the haemodynamic time line: " + finding + ".",
                   {{"finding", finding}});
}

template <class T> void put(json& out, const char* key, const std::optional<T>& value) {
    if (!value) return;
    if constexpr (std::is_same_v<T, double>)
        out[key] = *value;
    else
        out[key] = std::string(word(*value));
}

HaemodynamicState readState(Reader& in) {
    HaemodynamicState s;
    s.stage = in.choice<Stage>("stage", kStages, true).value_or(Stage::BeforeProcedure);
    s.state = in.text("state", true);
    if (s.state.empty()) in.find("state is empty");
    s.time = in.text("time", false);
    s.meanPressureMmHg = in.number("mean_pressure_mmHg");
    s.pressureSource = in.choice<PressureSource>("pressure_source", kPressureSources);
    s.vWaveMmHg = in.number("v_wave_mmHg");
    s.meanMitralGradientMmHg = in.number("mean_mitral_gradient_mmHg");
    s.gradientSource = in.choice<GradientSource>("gradient_source", kGradientSources);
    s.heartRatePerMinute = in.number("heart_rate_per_minute");
    s.rhythm = in.choice<Rhythm>("rhythm", kRhythms);
    s.ventilation = in.choice<Ventilation>("ventilation", kVentilations);
    s.regurgitation = in.choice<RegurgitationGrade>("regurgitation", kGrades);
    s.pulmonaryVeinFlow = in.choice<PulmonaryVeinFlow>("pulmonary_vein_flow", kFlows);
    in.refuseOthers();
    return s;
}

} // namespace

std::string_view word(Rhythm v) { return kRhythms[static_cast<std::size_t>(v)]; }
std::string_view word(Ventilation v) { return kVentilations[static_cast<std::size_t>(v)]; }
std::string_view word(RegurgitationGrade v) { return kGrades[static_cast<std::size_t>(v)]; }
std::string_view word(PulmonaryVeinFlow v) { return kFlows[static_cast<std::size_t>(v)]; }
std::string_view word(GradientSource v) { return kGradientSources[static_cast<std::size_t>(v)]; }

json toJson(std::span<const HaemodynamicState> states) {
    json list = json::array();
    for (const auto& s : states) {
        json one = {{"stage", std::string(word(s.stage))}, {"state", s.state}};
        if (!s.time.empty()) one["time"] = s.time;
        put(one, "mean_pressure_mmHg", s.meanPressureMmHg);
        put(one, "pressure_source", s.pressureSource);
        put(one, "v_wave_mmHg", s.vWaveMmHg);
        put(one, "mean_mitral_gradient_mmHg", s.meanMitralGradientMmHg);
        put(one, "gradient_source", s.gradientSource);
        put(one, "heart_rate_per_minute", s.heartRatePerMinute);
        put(one, "rhythm", s.rhythm);
        put(one, "ventilation", s.ventilation);
        put(one, "regurgitation", s.regurgitation);
        put(one, "pulmonary_vein_flow", s.pulmonaryVeinFlow);
        list.push_back(std::move(one));
    }
    return {{"format", std::string(kFormat)}, {"states", std::move(list)}};
}

Result<std::vector<HaemodynamicState>> haemodynamicsFromJson(const json& file) {
    if (!file.is_object()) return unreadable(std::string("it is a ") + file.type_name() + ", not an object");
    if (!file.contains("format") || file["format"] != std::string(kFormat))
        return unreadable("its format is not \"" + std::string(kFormat) + "\"");
    if (!file.contains("states") || !file["states"].is_array()) return unreadable("it has no list \"states\"");
    std::vector<HaemodynamicState> out;
    for (const auto& item : file["states"]) {
        const std::string place = "states[" + std::to_string(out.size()) + "]";
        if (!item.is_object()) return unreadable(place + " is a " + item.type_name() + ", not an object");
        Reader in(item, place);
        HaemodynamicState state = readState(in);
        for (const auto& other : out)
            if (other.state == state.state) in.find("state \"" + state.state + "\" comes twice");
        if (!in.finding().empty()) return unreadable(in.finding());
        out.push_back(std::move(state));
    }
    return out;
}

} // namespace gauge::core
