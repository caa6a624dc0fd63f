// What is chosen and decided, and for whom: chart and size, scores, patient, decision.
#include "core/record/record_json.h"

#include <array>
#include <utility>

namespace gauge::core::record_json {

using namespace json_writer;
using namespace std::string_view_literals;

namespace {

constexpr std::array kCauses{std::pair{PressureChange::Passing, "passing"sv},
                             std::pair{PressureChange::Lasting, "lasting"sv},
                             std::pair{PressureChange::Unknown, "unknown"sv}};
constexpr std::array kSexes{std::pair{Sex::Female, "female"sv}, std::pair{Sex::Male, "male"sv}};

Json written(const StrokeItems& i) {
    return {{"age_years", i.ageYears},
            {"sex", optionalWord(kSexes, i.sex)},
            {"heart_failure", i.heartFailure},
            {"hypertension", i.hypertension},
            {"diabetes", i.diabetes},
            {"stroke_or_embolism", i.strokeOrEmbolism},
            {"vascular_disease", i.vascularDisease}};
}

StrokeItems readStroke(Object o) {
    StrokeItems i;
    i.ageYears = o.number("age_years");
    i.sex = o.optionalChoice("sex", kSexes);
    i.heartFailure = o.flag("heart_failure");
    i.hypertension = o.flag("hypertension");
    i.diabetes = o.flag("diabetes");
    i.strokeOrEmbolism = o.flag("stroke_or_embolism");
    i.vascularDisease = o.flag("vascular_disease");
    return i;
}

Json written(const BleedingItems& i) {
    return {{"age_years", i.ageYears},
            {"systolic_mmHg", orNull(i.systolicMmHg)},
            {"uncontrolled_hypertension", i.uncontrolledHypertension},
            {"abnormal_renal_function", i.abnormalRenalFunction},
            {"abnormal_liver_function", i.abnormalLiverFunction},
            {"stroke", i.stroke},
            {"bleeding", i.bleeding},
            {"takes_vitamin_k_antagonist", i.takesVitaminKAntagonist},
            {"labile_inr", i.labileInr},
            {"antiplatelet_or_nsaid", i.antiplateletOrNsaid},
            {"alcohol", i.alcohol},
            {"drinks_per_week", orNull(i.drinksPerWeek)}};
}

BleedingItems readBleeding(Object o) {
    BleedingItems i;
    i.ageYears = o.number("age_years");
    i.systolicMmHg = o.optionalNumber("systolic_mmHg");
    i.uncontrolledHypertension = o.flag("uncontrolled_hypertension");
    i.abnormalRenalFunction = o.flag("abnormal_renal_function");
    i.abnormalLiverFunction = o.flag("abnormal_liver_function");
    i.stroke = o.flag("stroke");
    i.bleeding = o.flag("bleeding");
    i.takesVitaminKAntagonist = o.flag("takes_vitamin_k_antagonist");
    i.labileInr = o.flag("labile_inr");
    i.antiplateletOrNsaid = o.flag("antiplatelet_or_nsaid");
    i.alcohol = o.flag("alcohol");
    i.drinksPerWeek = o.optionalNumber("drinks_per_week");
    return i;
}

} // namespace

Json written(const SizingChoice& c) {
    return {{"chart_text", c.chartText},
            {"chart_source", c.chartSource},
            {"decision_pressure_mmHg", orNull(c.decisionPressureMmHg)},
            {"lowest_mmHg", orNull(c.lowestMmHg)},
            {"highest_mmHg", orNull(c.highestMmHg)},
            {"cause", word(kCauses, c.cause)},
            {"regurgitation_may_recur", c.regurgitationMayRecur},
            {"size", c.size}};
}

void read(Object& o, SizingChoice& c) {
    c.chartText = o.text("chart_text", true);
    c.chartSource = o.text("chart_source", true);
    c.decisionPressureMmHg = o.optionalNumber("decision_pressure_mmHg");
    c.lowestMmHg = o.optionalNumber("lowest_mmHg");
    c.highestMmHg = o.optionalNumber("highest_mmHg");
    c.cause = o.choice("cause", kCauses);
    c.regurgitationMayRecur = o.optionalFlag("regurgitation_may_recur").value_or(false);
    c.size = o.text("size", true);
}

Json written(const Scores& s) {
    return {{"stroke", s.stroke ? written(*s.stroke) : Json(nullptr)},
            {"bleeding", s.bleeding ? written(*s.bleeding) : Json(nullptr)}};
}

void read(Object& o, Scores& s) {
    if (o.has("stroke")) s.stroke = readStroke(o.object("stroke"));
    if (o.has("bleeding")) s.bleeding = readBleeding(o.object("bleeding"));
}

Json written(const Patient& p) {
    return {{"name", p.name}, {"id", p.id},       {"birth_date", p.birthDate},
            {"sex", p.sex},   {"title", p.title}, {"tags", p.tags}};
}

void read(Object& o, Patient& p) {
    p.name = o.text("name", true);
    p.id = o.text("id", true);
    p.birthDate = o.text("birth_date", true);
    p.sex = o.text("sex", true);
    p.title = o.text("title", true);
    if (o.has("tags")) p.tags = o.texts("tags");
}

Json written(const Decision& d) {
    return {{"text", d.text}, {"size", d.size}, {"signed_by", d.signedBy}, {"time", d.time}};
}

void read(Object& o, Decision& d) {
    d.text = o.text("text", true);
    d.size = o.text("size", true);
    d.signedBy = o.text("signed_by", true);
    d.time = o.text("time", true);
}

} // namespace gauge::core::record_json
