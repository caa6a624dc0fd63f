#include "core/pressure/prepared_readings.h"

#include <algorithm>
#include <charconv>
#include <cmath>

namespace gauge::core {

namespace {

using Place = std::span<const Observation>;

std::string inQuotes(std::string_view text) { return "\"" + std::string(text) + "\""; }

tl::unexpected<Error> unusable(ErrorCode code, std::size_t index, const std::string& found) {
    return failure(code, "Cannot use reading " + std::to_string(index + 1) + ": " + found + ".",
                   {{"reading", std::to_string(index + 1)}});
}

/// Finite and within bounds where given.
Result<void> checkNumber(std::size_t index, const char* name, std::optional<double> value, double least,
                         bool mayBeLeast) {
    if (!value) return {};
    if (!std::isfinite(*value))
        return unusable(ErrorCode::NonFinite, index, std::string("its ") + name + " is no finite number");
    if (*value > least || (mayBeLeast && *value == least)) return {};
    return unusable(ErrorCode::InvalidArgument, index,
                    std::string("its ") + name + " is " + numberText(*value, 3) + ", which must be " +
                        (mayBeLeast ? "at least " : "above ") + numberText(least));
}

Result<void> checkReading(std::size_t i, const Observation& o) {
    if (o.state.empty())
        return unusable(ErrorCode::InvalidArgument, i,
                        "it names no state; readings of one moment share a state and its pressure");
    for (const auto& checked :
         {checkNumber(i, "value in mm", o.valueMm, 0.0, false),
          checkNumber(i, "standard uncertainty in mm", o.standardUncertaintyMm, 0.0, false),
          checkNumber(i, "pressure in mmHg", o.pressureMmHg, 0.0, false),
          checkNumber(i, "pressure uncertainty in mmHg", o.pressureUncertaintyMmHg, 0.0, true),
          checkNumber(i, "v wave in mmHg", o.vWaveMmHg, 0.0, false),
          checkNumber(i, "ratio of contour to view", o.contourPerView, 0.0, false)})
        if (!checked) return checked;
    return {};
}

std::string whyNot(const Observation& o, Quantity asked) {
    if (o.quantity != asked)
        return "It is the " + std::string(plainName(o.quantity)) + ", another quantity than the " +
               std::string(plainName(asked)) + " asked for.";
    if (hasImplant(o.stage))
        return "It was read with an implant in the appendage (" + std::string(plainName(o.stage)) +
               "): the width is no longer the appendage's own.";
    if (o.derivation == Derivation::LargestOfViews && !o.contourPerView)
        return "The largest of several views has no counterpart in a contour: it misses the true longest diameter "
               "by an unknown amount and is no perimeter- or area-derived value.";
    if (o.derivation == Derivation::SingleView && !o.contourPerView)
        return "A width of a single view has no counterpart in a contour unless CT predicts the width of the same "
               "view.";
    return {};
}

/// The one value that the readings of a state give for a field; an error where they give two.
template <class Field>
auto shared(Place all, const std::string& state, const char* name, Field field)
    -> Result<decltype(field(all[0]))> {
    decltype(field(all[0])) found;
    for (const auto& o : all) {
        if (o.state != state || !field(o)) continue;
        if (found && *found != *field(o))
            return failure(ErrorCode::InvalidArgument,
                           "State " + inQuotes(state) + " has two different values of its " + name +
                               "; readings of one state share it. Give the readings of another moment a state of their "
                               "own.",
                           {{"state", state}});
        found = field(o);
    }
    return found;
}

Result<Condition> sharedCondition(Place all, const std::string& state) {
    auto found = shared(all, state, "condition", [](const Observation& o) { return std::optional(o.condition); });
    if (!found) return tl::make_unexpected(found.error());
    return **found;
}

Notice stateNotice(const char* code, const std::string& state, const std::string& text) {
    return {code, text, {{"state", state}}};
}

std::string spreadText(double mean, double sd) {
    return numberText(mean) + " +/- " + numberText(sd) + " mmHg";
}

/// Fills mean and SD where no mean pressure was recorded.
void assumePressure(PressureState& s, Condition condition, const Priors& priors, std::vector<Notice>& notices) {
    if (s.vWaveMmHg) {
        s.meanMmHg = priors.meanPerVWave.value * *s.vWaveMmHg;
        s.sdMmHg = priors.meanFromVWaveSdMmHg.value;
        notices.push_back(stateNotice(
            "mean-from-v-wave", s.name,
            "Only the v wave is recorded for state " + inQuotes(s.name) + ": a mean of " +
                spreadText(s.meanMmHg, s.sdMmHg) + " is taken from it (" +
                std::string(word(priors.meanPerVWave.basis)) + ")."));
        return;
    }
    const SpreadPrior& prior = pressurePrior(priors, condition);
    s.meanMmHg = prior.mean;
    s.sdMmHg = prior.sd;
    notices.push_back(stateNotice("pressure-unknown", s.name,
                                  "No left atrial pressure is recorded for state " + inQuotes(s.name) + ": " +
                                      spreadText(prior.mean, prior.sd) + " is taken (" +
                                      std::string(word(prior.basis)) + ": " + prior.words +
                                      "). Measuring it would narrow every answer."));
}

Result<PressureState> stateOf(Place all, const std::string& name, const Priors& priors,
                              std::vector<Notice>& notices) {
    const auto condition = sharedCondition(all, name);
    if (!condition) return tl::make_unexpected(condition.error());
    const auto mean = shared(all, name, "pressure", [](const Observation& o) { return o.pressureMmHg; });
    if (!mean) return tl::make_unexpected(mean.error());
    const auto v = shared(all, name, "v wave", [](const Observation& o) { return o.vWaveMmHg; });
    if (!v) return tl::make_unexpected(v.error());
    const auto u =
        shared(all, name, "pressure uncertainty", [](const Observation& o) { return o.pressureUncertaintyMmHg; });
    if (!u) return tl::make_unexpected(u.error());
    const auto source =
        shared(all, name, "pressure source", [](const Observation& o) { return o.pressureSource; });
    if (!source) return tl::make_unexpected(source.error());

    PressureState s;
    s.name = name;
    s.vWaveMmHg = *v;
    if (!*mean) {
        assumePressure(s, *condition, priors, notices);
        return s;
    }
    s.measured = true;
    s.meanMmHg = **mean;
    s.sdMmHg = u->value_or(pressureUncertaintyMmHg(priors, *source));
    if (!*source && !*u)
        notices.push_back(stateNotice("pressure-source-unknown", name,
                                      "Nobody said how the pressure of state " + inQuotes(name) + ", " +
                                          numberText(**mean) + " mmHg, was obtained: an uncertainty of " +
                                          numberText(s.sdMmHg) + " mmHg is taken."));
    if (s.vWaveMmHg && *s.vWaveMmHg < s.meanMmHg)
        notices.push_back(stateNotice("v-wave-below-mean", name,
                                      "The v wave of state " + inQuotes(name) + ", " + numberText(*s.vWaveMmHg) +
                                          " mmHg, lies below its mean, " + numberText(s.meanMmHg) +
                                          " mmHg; a peak cannot. Look at both again."));
    return s;
}

Result<std::size_t> stateIndex(Place all, const std::string& name, const Priors& priors, PreparedReadings& out) {
    for (std::size_t i = 0; i < out.states.size(); ++i)
        if (out.states[i].name == name) return i;
    auto made = stateOf(all, name, priors, out.notices);
    if (!made) return tl::make_unexpected(made.error());
    out.states.push_back(std::move(*made));
    return out.states.size() - 1;
}

int kindIndex(const Observation& o, const Priors& priors, std::vector<ReadingKind>& kinds) {
    if (o.modality == Modality::Ct && o.derivation == Derivation::Contour) return -1;
    for (std::size_t i = 0; i < kinds.size(); ++i)
        if (kinds[i].modality == o.modality && kinds[i].derivation == o.derivation) return static_cast<int>(i);
    kinds.push_back({o.modality, o.derivation, biasPrior(priors, o.modality, o.derivation)});
    return static_cast<int>(kinds.size()) - 1;
}

/// What a reading's phase and v wave leave open.
void notePhase(const Observation& o, PressureState& state, std::vector<Notice>& notices) {
    if (o.phase == Phase::EndSystole && !state.vWaveMmHg)
        notices.push_back(stateNotice("v-wave-missing", state.name,
                                      "Read at end-systole, when the v wave stretches the appendage, but no v wave is "
                                      "recorded: the mean pressure is taken for " +
                                          describe(o) + "."));
    if (o.phase == Phase::Unknown && state.vWaveMmHg) {
        state.phaseMatters = true;
        notices.push_back(stateNotice("phase-unknown", state.name,
                                      "Nobody said at which phase this was read: end-systole, under the v wave of " +
                                          numberText(*state.vWaveMmHg) +
                                          " mmHg, and another are held equally likely for " + describe(o) + "."));
    }
}

void noteUncertainty(const Observation& o, std::vector<Notice>& notices) {
    if (o.standardUncertaintyMm && *o.standardUncertaintyMm < kLeastReadingUncertaintyMm)
        notices.push_back({"uncertainty-raised",
                           "No reading counts as better than " + numberText(kLeastReadingUncertaintyMm, 2) +
                               " mm; stated for " + describe(o) + ": " +
                               numberText(*o.standardUncertaintyMm, 6) + " mm.",
                           {}});
}

Error nothingCounts(Place all, Quantity asked, const std::vector<std::string>& reasons) {
    std::string text = "Cannot give the " + std::string(plainName(asked)) + ": ";
    if (all.empty()) return {ErrorCode::NothingUsable, text + "there is no reading.", {}, nullptr};
    text += "none of the " + std::to_string(all.size()) + " readings counts.";
    for (std::size_t i = 0; i < all.size(); ++i)
        text += " Reading " + std::to_string(i + 1) + ": " + reasons[i];
    return {ErrorCode::NothingUsable, text, {{"quantity", std::string(word(asked))}}, nullptr};
}

} // namespace

std::string numberText(double value, int decimals) {
    char buffer[400]; // fixed notation of any double
    const auto end = std::to_chars(buffer, buffer + sizeof buffer, value, std::chars_format::fixed, decimals).ptr;
    std::string text(buffer, end);
    if (text.find('.') != std::string::npos) {
        text.erase(text.find_last_not_of('0') + 1);
        if (text.back() == '.') text.pop_back();
    }
    return text == "-0" ? "0" : text;
}

std::string describe(const Observation& o) {
    return std::string(plainName(o.modality)) + " (" + std::string(plainName(o.derivation)) + "), " +
           numberText(o.valueMm) + " mm, state " + inQuotes(o.state);
}

Result<PreparedReadings> prepareReadings(Place all, Quantity asked, const Priors& priors) {
    PreparedReadings out;
    for (std::size_t i = 0; i < all.size(); ++i) {
        const Observation& o = all[i];
        if (auto checked = checkReading(i, o); !checked) return tl::make_unexpected(checked.error());
        const auto state = stateIndex(all, o.state, priors, out);
        if (!state) return tl::make_unexpected(state.error());
        out.reasons.push_back(whyNot(o, asked));
        if (!out.reasons.back().empty()) continue;
        notePhase(o, out.states[*state], out.notices);
        noteUncertainty(o, out.notices);
        const double ratio = isView(o.derivation) ? *o.contourPerView : 1.0;
        out.counted.push_back({i, *state, kindIndex(o, priors, out.kinds), o.phase, o.valueMm * ratio,
                               readingUncertaintyMm(priors, o)});
    }
    if (out.counted.empty()) return tl::make_unexpected(nothingCounts(all, asked, out.reasons));
    return out;
}

} // namespace gauge::core
