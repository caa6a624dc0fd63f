#include "core/pressure/priors.h"

#include "core/pressure/prepared_readings.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace gauge::core {

namespace {

constexpr std::array<std::string_view, 5> kBases = {"read", "computed", "memory", "assumption",
                                                    "common practice"};

/// A figure of Priors with its name: the one list behind rows, validate and withFigure.
struct Figure {
    std::string key;
    std::string name;
    double* value;
    double* sd; ///< null: it has none
    Basis* basis;
    std::string* words;
    bool mayBeNegative;
    bool mayBeZero;
};

std::vector<Figure> figures(Priors& p) {
    std::vector<Figure> out;
    const auto spread = [&](const char* key, const char* name, SpreadPrior& s) {
        out.push_back({key, name, &s.mean, &s.sd, &s.basis, &s.words, false, false});
    };
    const auto single = [&](const char* key, const char* name, ValuePrior& v, bool mayBeZero = false) {
        out.push_back({key, name, &v.value, nullptr, &v.basis, &v.words, false, mayBeZero});
    };
    spread("diameter-slope", "slope of a diameter with pressure at 12 mmHg, mm/mmHg", p.diameterSlope);
    spread("depth-slope", "slope of the depth with pressure at 12 mmHg, mm/mmHg", p.depthSlope);
    spread("pressure-mitral-regurgitation",
           "left atrial mean pressure, not measured, untreated significant mitral regurgitation, mmHg",
           p.pressureMitralRegurgitation);
    spread("pressure-hydrated", "left atrial mean pressure, not measured, filled on purpose, mmHg",
           p.pressureHydrated);
    spread("pressure-other", "left atrial mean pressure, not measured, otherwise, mmHg", p.pressureOther);
    single("mean-per-v-wave", "mean pressure per v wave where only the v wave is known", p.meanPerVWave);
    single("mean-from-v-wave-sd", "SD of a mean pressure taken from the v wave, mmHg", p.meanFromVWaveSdMmHg);
    single("direct-pressure", "standard uncertainty of a pressure measured in the atrium, mmHg",
           p.directPressureMmHg, true);
    single("wedge-pressure", "standard uncertainty of a wedge pressure, mmHg", p.wedgePressureMmHg, true);
    single("echo-pressure", "standard uncertainty of a pressure estimated by echo, mmHg", p.echoPressureMmHg,
           true);
    single("procedure-start-pressure",
           "standard uncertainty of a pressure taken over from the start of the procedure, mmHg",
           p.procedureStartPressureMmHg, true);
    single("ct-reading", "standard uncertainty of a CT reading that states none, mm", p.ctReadingMm);
    single("echo-reading", "standard uncertainty of an echo reading that states none, mm", p.echoReadingMm);
    single("fluoroscopy-reading", "standard uncertainty of a fluoroscopic reading that states none, mm",
           p.fluoroscopyReadingMm);
    for (auto& row : p.biases)
        out.push_back({"bias-" + std::string(word(row.modality)) + "-" + std::string(word(row.derivation)),
                       "bias against a CT contour: " + std::string(plainName(row.modality)) + ", " +
                           std::string(plainName(row.derivation)) + ", mm",
                       &row.bias.mean, &row.bias.sd, &row.bias.basis, &row.bias.words, true, true});
    out.push_back({"bias-other", "bias against a CT contour: any other kind of reading, mm", &p.otherBias.mean,
                   &p.otherBias.sd, &p.otherBias.basis, &p.otherBias.words, true, true});
    single("lowest-valid-pressure", "lowest pressure of the valid range, mmHg", p.lowestValidMmHg);
    single("highest-valid-pressure", "highest pressure of the valid range, mmHg", p.highestValidMmHg);
    single("widening", "distance outside the valid range that doubles the SD of the pressure term, mmHg",
           p.wideningMmHg);
    return out;
}

tl::unexpected<Error> bad(ErrorCode code, const Figure& f, const std::string& found,
                          const std::string& needed) {
    return failure(code, "Cannot use the assumption \"" + f.name + "\": it is " + found + "; " + needed + ".",
                   {{"figure", f.key}, {"found", found}});
}

Result<void> check(const Figure& f) {
    if (!std::isfinite(*f.value) || (f.sd && !std::isfinite(*f.sd)))
        return bad(ErrorCode::NonFinite, f, "no finite number", "give a number");
    if (!f.mayBeNegative && (*f.value < 0.0 || (*f.value == 0.0 && !f.mayBeZero)))
        return bad(ErrorCode::InvalidArgument, f, numberText(*f.value, 3),
                   f.mayBeZero ? "it must not be below 0" : "it must be above 0");
    if (f.sd && (*f.sd < 0.0 || (*f.sd == 0.0 && !f.mayBeZero)))
        return bad(ErrorCode::InvalidArgument, f, "given with an SD of " + numberText(*f.sd, 3),
                   f.mayBeZero ? "an SD must not be below 0" : "an SD must be above 0");
    return {};
}

} // namespace

std::string_view word(Basis basis) { return kBases[static_cast<std::size_t>(basis)]; }

template <> std::optional<Basis> fromWord(std::string_view text) {
    const auto found = std::find(kBases.begin(), kBases.end(), text);
    if (found == kBases.end()) return std::nullopt;
    return static_cast<Basis>(found - kBases.begin());
}

std::vector<BiasPrior> Priors::defaultBiases() {
    const SpreadPrior fluoroscopy{-0.5, 2.0, Basis::Assumption,
                                  "against the CT contour's width at the same angles; no source"};
    const SpreadPrior ellipse{-0.5, 1.5, Basis::Assumption,
                              "most of the published -2.3 (SD 2.1) mm is plane and under-sampling"};
    return {
        {Modality::Echo3d,
         Derivation::Contour,
         {-0.2, 1.0, Basis::Computed, "from orifice areas (46 patients, 2011), reader errors taken out"}},
        {Modality::Echo2d, Derivation::EllipseFromAngles, ellipse},
        {Modality::Fluoroscopy, Derivation::SingleView, fluoroscopy},
        {Modality::Fluoroscopy, Derivation::LargestOfViews, fluoroscopy},
    };
}

const SpreadPrior& slopePrior(const Priors& priors, Quantity quantity) {
    return quantity == Quantity::Depth ? priors.depthSlope : priors.diameterSlope;
}

const SpreadPrior& pressurePrior(const Priors& priors, Condition condition) {
    switch (condition) {
    case Condition::MitralRegurgitation: return priors.pressureMitralRegurgitation;
    case Condition::Hydrated: return priors.pressureHydrated;
    case Condition::Other: break;
    }
    return priors.pressureOther;
}

double pressureUncertaintyMmHg(const Priors& p, std::optional<PressureSource> source) {
    if (!source)
        return std::max({p.directPressureMmHg.value, p.wedgePressureMmHg.value, p.echoPressureMmHg.value,
                         p.procedureStartPressureMmHg.value});
    switch (*source) {
    case PressureSource::Direct: return p.directPressureMmHg.value;
    case PressureSource::Wedge: return p.wedgePressureMmHg.value;
    case PressureSource::Echo: return p.echoPressureMmHg.value;
    case PressureSource::ProcedureStart: break;
    }
    return p.procedureStartPressureMmHg.value;
}

double defaultReadingUncertaintyMm(const Priors& priors, Modality modality) {
    switch (modality) {
    case Modality::Ct: return priors.ctReadingMm.value;
    case Modality::Echo2d:
    case Modality::Echo3d: return priors.echoReadingMm.value;
    case Modality::Fluoroscopy: break;
    }
    return priors.fluoroscopyReadingMm.value;
}

double readingUncertaintyMm(const Priors& priors, const Observation& o) {
    const double stated = o.standardUncertaintyMm.value_or(defaultReadingUncertaintyMm(priors, o.modality));
    const double ratio = isView(o.derivation) ? o.contourPerView.value_or(1.0) : 1.0;
    return std::max(stated * ratio, kLeastReadingUncertaintyMm);
}

SpreadPrior biasPrior(const Priors& priors, Modality modality, Derivation derivation) {
    if (modality == Modality::Ct && derivation == Derivation::Contour)
        return {0.0, 0.0, Basis::CommonPractice, "the CT contour is the reference"};
    for (const auto& row : priors.biases)
        if (row.modality == modality && row.derivation == derivation) return row.bias;
    return priors.otherBias;
}

Result<void> validate(const Priors& priors) {
    Priors copy = priors;
    for (const auto& figure : figures(copy))
        if (auto checked = check(figure); !checked) return checked;
    if (priors.lowestValidMmHg.value < priors.highestValidMmHg.value) return {};
    return failure(ErrorCode::InvalidArgument,
                   "Cannot use the valid range of pressures: its lowest, " +
                       numberText(priors.lowestValidMmHg.value) + " mmHg, is not below its highest, " +
                       numberText(priors.highestValidMmHg.value) + " mmHg.");
}

std::vector<PriorRow> rows(const Priors& priors) {
    Priors copy = priors;
    std::vector<PriorRow> out;
    for (const auto& f : figures(copy))
        out.push_back({f.key, f.name, *f.value, f.sd ? std::optional(*f.sd) : std::nullopt, *f.basis, *f.words});
    return out;
}

Result<Priors> withFigure(const Priors& priors, std::string_view key, double value, std::optional<double> sd) {
    Priors changed = priors;
    for (auto& f : figures(changed)) {
        if (f.key != key) continue;
        if (sd && !f.sd)
            return failure(ErrorCode::InvalidArgument,
                           "Cannot set an SD for \"" + f.name + "\": this figure has none.", {{"figure", f.key}});
        *f.value = value;
        if (sd) *f.sd = *sd;
        *f.basis = Basis::Assumption;
        *f.words = "set here";
        if (auto valid = validate(changed); !valid) return tl::make_unexpected(valid.error());
        return changed;
    }
    return failure(ErrorCode::NotFound, "There is no assumption named \"" + std::string(key) + "\".",
                   {{"figure", std::string(key)}});
}

} // namespace gauge::core
