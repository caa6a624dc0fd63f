#include "core/pressure/haemodynamics.h"

#include "core/pressure/prepared_readings.h"


namespace gauge::core {

namespace {

constexpr double kNotableMmHg = 3.0; // common practice, no source: twice a direct measurement's uncertainty

Notice notice(const char* code, const HaemodynamicState& s, const std::string& text) {
    return {code, text, {{"state", s.state}}};
}

std::string where(const HaemodynamicState& s) {
    return " (" + std::string(plainName(s.stage)) + ", state \"" + s.state + "\")";
}

struct PlausibleRange {
    const char* code;
    const char* name;
    const char* unit;
    double lowest, highest;
};

void checkBounds(std::vector<Notice>& out, const HaemodynamicState& s, std::optional<double> value, const PlausibleRange& b) {
    if (!value || (*value >= b.lowest && *value <= b.highest)) return;
    out.push_back(notice(b.code, s,
                         std::string(b.name) + " of " + numberText(*value) + " " + b.unit + where(s) +
                             " lies outside " + numberText(b.lowest) + " to " + numberText(b.highest) + " " + b.unit +
                             ". Look at it again."));
}

bool isSignificant(RegurgitationGrade grade) { return grade >= RegurgitationGrade::Moderate; }

} // namespace

std::vector<Notice> plausibility(const HaemodynamicState& s) {
    std::vector<Notice> out;
    checkBounds(out, s, s.meanPressureMmHg, {"implausible-pressure", "A left atrial mean pressure", "mmHg", 0.0, 60.0});
    checkBounds(out, s, s.vWaveMmHg, {"implausible-pressure", "A v wave", "mmHg", 0.0, 100.0});
    checkBounds(out, s, s.meanMitralGradientMmHg,
                {"implausible-gradient", "A mean mitral gradient", "mmHg", 0.0, 40.0});
    checkBounds(out, s, s.heartRatePerMinute, {"implausible-rate", "A heart rate", "per minute", 20.0, 250.0});
    if (s.vWaveMmHg && s.meanPressureMmHg && *s.vWaveMmHg < *s.meanPressureMmHg)
        out.push_back(notice("v-wave-below-mean", s,
                             "The v wave of " + numberText(*s.vWaveMmHg) + " mmHg lies below the mean of " +
                                 numberText(*s.meanPressureMmHg) + " mmHg" + where(s) +
                                 "; a peak cannot. Look at both again."));
    if (s.meanMitralGradientMmHg && s.meanPressureMmHg && *s.meanMitralGradientMmHg > *s.meanPressureMmHg)
        out.push_back(notice("implausible-gradient", s,
                             "The mean mitral gradient of " + numberText(*s.meanMitralGradientMmHg) +
                                 " mmHg exceeds the left atrial mean pressure of " + numberText(*s.meanPressureMmHg) +
                                 " mmHg" + where(s) + ", which would need a ventricle filling below 0 mmHg. Look at both again."));
    if (s.pulmonaryVeinFlow == PulmonaryVeinFlow::Reversed && s.regurgitation && !isSignificant(*s.regurgitation))
        out.push_back(notice("regurgitation-doubtful", s,
                             "Systolic flow in the pulmonary veins is reversed but regurgitation is graded " +
                                 std::string(word(*s.regurgitation)) + where(s) + "; grade it again."));
    return out;
}

std::vector<Notice> changes(const HaemodynamicState& before, const HaemodynamicState& after) {
    std::vector<Notice> out;
    const auto say = [&](const std::string& text) {
        out.push_back({"haemodynamics-changed", text, {{"from", before.state}, {"to", after.state}}});
    };
    if (before.meanPressureMmHg && after.meanPressureMmHg) {
        const double change = *after.meanPressureMmHg - *before.meanPressureMmHg;
        const std::string numbers = " from " + numberText(*before.meanPressureMmHg) + " to " +
                                    numberText(*after.meanPressureMmHg) + " mmHg" + where(after) + ".";
        if (change >= kNotableMmHg) say("Left atrial mean pressure rose" + numbers);
        if (change <= -kNotableMmHg) say("Left atrial mean pressure fell" + numbers);
        if (before.stage == Stage::BeforeRepair && after.stage == Stage::AfterRepair && change >= 0.0)
            say("Left atrial mean pressure did not fall with the repair:" + numbers +
                " In a large registry it fell in 59 % only.");
    }
    if (before.rhythm && after.rhythm && before.rhythm != after.rhythm)
        say("Rhythm changed from " + std::string(word(*before.rhythm)) + " to " + std::string(word(*after.rhythm)) +
            where(after) + ".");
    if (before.ventilation && after.ventilation && before.ventilation != after.ventilation)
        say("Ventilation changed from " + std::string(word(*before.ventilation)) + " to " +
            std::string(word(*after.ventilation)) + where(after) + ": pressures are not alike.");
    if (before.regurgitation && after.regurgitation && before.regurgitation != after.regurgitation)
        say("Mitral regurgitation changed from " + std::string(word(*before.regurgitation)) + " to " +
            std::string(word(*after.regurgitation)) + where(after) + ".");
    return out;
}

} // namespace gauge::core
