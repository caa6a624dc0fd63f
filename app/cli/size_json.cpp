#include "app/cli/size_report.h"

#include <cmath>
#include <nlohmann/json.hpp>

namespace gauge::app {
namespace {

using nlohmann::ordered_json;

ordered_json notices(const std::vector<core::Notice>& all) {
    ordered_json list = ordered_json::array();
    for (const core::Notice& n : all) {
        ordered_json item{{"code", n.code}, {"text", n.text}};
        if (!n.facts.empty()) {
            item["facts"] = ordered_json::object();
            for (const core::Fact& fact : n.facts)
                item["facts"][fact.key] = fact.value;
        }
        list.push_back(std::move(item));
    }
    return list;
}

template <class T> ordered_json orNull(const std::optional<T>& value) {
    return value ? ordered_json(*value) : ordered_json(nullptr);
}

ordered_json band(const core::Band& b) {
    return ordered_json::array({b.lo, b.hi});
}

ordered_json weights(const core::SizingQuestion& q, const core::SizingAnswer& a) {
    ordered_json list = ordered_json::array();
    for (std::size_t i = 0; i < q.observations.size(); ++i) {
        const core::Observation& o = q.observations[i];
        const core::ReadingWeight& w = a.weights[i];
        list.push_back({{"observation", i},
                        {"state", o.state},
                        {"quantity", core::word(o.quantity)},
                        {"modality", core::word(o.modality)},
                        {"derivation", core::word(o.derivation)},
                        {"stage", core::word(o.stage)},
                        {"value_mm", o.valueMm},
                        {"weight", w.weight},
                        {"sensitivity", w.sensitivity},
                        {"residual_mm", orNull(w.residualMm)},
                        {"reason", w.reason.empty() ? ordered_json(nullptr) : ordered_json(w.reason)}});
    }
    return list;
}

ordered_json clearances(const core::SizeFit& fit) {
    ordered_json list = ordered_json::array();
    for (const core::ClearanceCheck& c : fit.clearances)
        list.push_back({{"structure", core::name(c.structure)},
                        {"clearance_mm", c.clearanceMm},
                        {"least_mm", c.leastMm},
                        {"ok", c.ok()}});
    return list;
}

ordered_json sizes(const core::SizingAnswer& a) {
    ordered_json list = ordered_json::array();
    for (const core::SizeFit& s : a.sizes)
        list.push_back(
            {{"name", s.name},
             {"nominal_mm", s.nominalMm},
             {"compression_percent", s.compressionPercent},
             {"oversizing_percent", s.oversizingPercent},
             {"fit_chance", s.fitChance},
             {"lasting_fit", s.lastingFit},
             {"undersize_chance", s.undersizeChance},
             {"overcompression_chance", s.overcompressionChance},
             {"depth_ok", orNull(s.depthOk)},
             {"depth_mm", orNull(s.depthMm)},
             {"least_depth_mm", s.leastDepthMm},
             {"disc_covers", orNull(s.discCovers)},
             {"clearances", clearances(s)},
             {"folded_placement", s.folded ? ordered_json(core::name(*s.folded)) : ordered_json(nullptr)},
             {"warnings", notices(s.warnings)}});
    return list;
}

ordered_json livingWidths(const core::SizingAnswer& a) {
    ordered_json list = ordered_json::array();
    for (const core::LivingWidths& w : a.livingWidths)
        list.push_back({{"cause", core::name(w.cause)},
                        {"pressures_mmHg", {w.pressures.lowestMmHg, w.pressures.highestMmHg}},
                        {"interval_95_mm", band(w.interval95Mm)}});
    return list;
}

ordered_json states(const core::SizingAnswer& a) {
    ordered_json list = ordered_json::array();
    for (const core::StatePressure& s : a.states)
        list.push_back({{"state", s.state},
                        {"pressure_mmHg", s.meanMmHg},
                        {"standard_uncertainty_mmHg", s.sdMmHg},
                        {"measured", s.measured}});
    return list;
}

ordered_json expected(const core::ExpectedReading& r) {
    return {{"value_mm", r.medianMm}, {"interval_95_mm", band(r.interval95Mm)}};
}

ordered_json expected(const std::optional<core::ExpectedReading>& r) {
    return r ? expected(*r) : ordered_json(nullptr);
}

ordered_json card(const core::RoomCard& c) {
    ordered_json lines = ordered_json::array();
    for (const core::CardLine& line : c.lines) {
        ordered_json angles = ordered_json::object();
        for (const auto& [deg, reading] : line.echoByAngle)
            angles[std::to_string(deg)] = expected(reading);
        lines.push_back({{"pressure_mmHg", line.pressureMmHg},
                         {"width", expected(line.width)},
                         {"echo_2d", expected(line.echo2d)},
                         {"echo_3d", expected(line.echo3d)},
                         {"fluoroscopy", expected(line.fluoroscopy)},
                         {"echo_by_angle", line.echoByAngle.empty() ? ordered_json(nullptr) : angles},
                         {"fluoroscopy_longest", expected(line.fluoroscopyLongest)},
                         {"fluoroscopy_shortest", expected(line.fluoroscopyShortest)}});
    }
    ordered_json overturning = ordered_json::array();
    for (const core::Overturning& o : c.overturning)
        overturning.push_back({{"modality", core::word(c.overturningModality)},
                               {"derivation", core::word(c.overturningDerivation)},
                               {"pressure_mmHg", c.overturningPressureMmHg},
                               {"side", o.above ? "above" : "below"},
                               {"reading_mm", o.readingMm},
                               {"chance", o.chance},
                               {"size", o.otherSize}});
    return {{"quantity", core::word(c.quantity)},
            {"lines", std::move(lines)},
            {"overturning", std::move(overturning)}};
}

ordered_json chart(const core::DeviceChart& c) {
    return {{"name", c.name}, {"kind", core::name(c.kind)}, {"invented", c.invented}, {"version", c.version},
            {"date", c.date}, {"source", c.source}};
}

} // namespace

std::string sizeJson(const core::SizingQuestion& q, const core::SizingAnswer& a) {
    ordered_json next = ordered_json::array();
    for (const core::NextAct& act : a.whatNext)
        next.push_back(
            {{"act", core::name(act.act)}, {"chance_to_change_size", act.chance}, {"text", act.text}});
    const ordered_json document{
        {"format", "ostium-gauge/size/1"},
        {"chart", chart(q.chart)},
        {"cause", core::name(q.cause)},
        {"law", core::word(q.law)},
        {"diameter",
         {{"quantity", core::word(a.question.quantity)},
          {"derivation", core::word(a.question.derivation)},
          {"at_pressure_mmHg", a.diameter.pressureMmHg},
          {"value_mm", a.diameter.medianMm},
          {"interval_95_mm", {a.diameter.lower95Mm, a.diameter.upper95Mm}}}},
        {"slope",
         {{"value_mm_per_mmHg", a.slope.meanMmPerMmHg},
          {"standard_uncertainty", a.slope.sdMmPerMmHg},
          {"patient_share", a.slope.patientShare}}},
        {"states", states(a)},
        {"weights", weights(q, a)},
        {"living_range_mmHg", {a.living.lowestMmHg, a.living.highestMmHg}},
        {"living_widths", livingWidths(a)},
        {"living_interval_95_mm", band(a.livingInterval95Mm)},
        {"greatest_fit", a.leading ? ordered_json(a.sizes[*a.leading].name) : ordered_json(nullptr)},
        {"plan_stopped", a.planStopped},
        {"size_may_be_signed", a.sizeMayBeSigned},
        {"sizes", sizes(a)},
        {"warnings", notices(a.warnings)},
        {"what_next", std::move(next)},
        {"room_card", card(a.card)},
        {"notices", notices(a.notices)}};
    return document.dump(2, ' ', false, ordered_json::error_handler_t::replace) + '\n';
}

} // namespace gauge::app
