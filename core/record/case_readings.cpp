#include "core/record/case_readings.h"

#include "core/number_text.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <set>
#include <utility>

namespace gauge::core {
namespace {

constexpr std::string_view kEcho = "echo/";
constexpr std::string_view kEcho3d = "echo-3d/";
constexpr std::string_view kFluoroscopy = "fluoroscopy/";
// The atrium is largest near the ventricle's end-systole: common practice, no source.
constexpr double kEarliestSystolePercent = 30.0, kLatestSystolePercent = 50.0;

/// How a value of a group is read.
struct Rule {
    std::string_view id;
    Quantity quantity;
    /// Instead of the derivation that is usual in the group.
    std::optional<Derivation> derivation{};
};

constexpr std::array kCtRules{
    Rule{"landing-1/perimeter-derived-diameter", Quantity::LandingZonePerimeterDerivedDiameter},
    Rule{"landing-1/area-derived-diameter", Quantity::LandingZoneAreaDerivedDiameter},
    Rule{"landing-1/longest-diameter", Quantity::LandingZoneLongestDiameter},
    Rule{"ostium/perimeter-derived-diameter", Quantity::OstiumPerimeterDerivedDiameter},
    Rule{"ostium/longest-diameter", Quantity::OstiumLongestDiameter},
    Rule{"depth/from-ostium-plane", Quantity::Depth},
};
constexpr std::array kPictureRules{
    Rule{"landing/perimeter-derived-diameter", Quantity::LandingZonePerimeterDerivedDiameter},
    Rule{"landing/area-derived-diameter", Quantity::LandingZoneAreaDerivedDiameter},
    Rule{"landing/longest-diameter", Quantity::LandingZoneLongestDiameter},
    Rule{"landing/largest-of-views", Quantity::LandingZoneLongestDiameter, Derivation::LargestOfViews},
    Rule{"landing/single-view", Quantity::LandingZoneLongestDiameter, Derivation::SingleView},
    Rule{"ostium/perimeter-derived-diameter", Quantity::OstiumPerimeterDerivedDiameter},
    Rule{"ostium/longest-diameter", Quantity::OstiumLongestDiameter},
    Rule{"ostium/largest-of-views", Quantity::OstiumLongestDiameter, Derivation::LargestOfViews},
    Rule{"ostium/single-view", Quantity::OstiumLongestDiameter, Derivation::SingleView},
    Rule{"depth", Quantity::Depth},
};

template <std::size_t N> const Rule* ruleFor(const std::array<Rule, N>& rules, std::string_view id) {
    const auto found = std::find_if(rules.begin(), rules.end(), [&](const Rule& rule) { return rule.id == id; });
    return found == rules.end() ? nullptr : &*found;
}

/// What readings of a group have in common.
struct GroupKind {
    Modality modality;
    Derivation derivation;
};

std::optional<GroupKind> kindOf(std::string_view group) {
    if (group == kCtValues) return GroupKind{Modality::Ct, Derivation::Contour};
    if (group.starts_with(kEcho)) return GroupKind{Modality::Echo2d, Derivation::EllipseFromAngles};
    if (group.starts_with(kEcho3d)) return GroupKind{Modality::Echo3d, Derivation::Contour};
    if (group.starts_with(kFluoroscopy)) return GroupKind{Modality::Fluoroscopy, Derivation::EllipseFromAngles};
    return std::nullopt;
}

const Rule* ruleOf(std::string_view group, std::string_view id) {
    return group == kCtValues ? ruleFor(kCtRules, id) : ruleFor(kPictureRules, id);
}

Phase phaseOf(BeatPhase phase) {
    if (phase == BeatPhase::EndSystole) return Phase::EndSystole;
    return phase == BeatPhase::Unknown ? Phase::Unknown : Phase::Other;
}

const Evidence* ctEvidence(const CaseRecord& record) {
    if (!record.images) return nullptr;
    for (const auto& [id, entry] : record.evidence)
        if (entry.content.kind == EvidenceKind::Ct && entry.content.seriesUid == record.images->seriesUid)
            return &entry.content;
    return nullptr;
}

Phase ctPhase(const CaseRecord& record, const Evidence* evidence) {
    if (evidence && evidence->phase != BeatPhase::Unknown) return phaseOf(evidence->phase);
    if (!record.images || !record.images->phasePercent) return Phase::Unknown;
    const double percent = *record.images->phasePercent;
    return percent >= kEarliestSystolePercent && percent <= kLatestSystolePercent ? Phase::EndSystole : Phase::Other;
}

/// The evidence that a value names among its inputs.
std::vector<const Evidence*> evidenceOf(const CaseRecord& record, const RecordedValue& value) {
    std::vector<const Evidence*> used;
    for (const InputRevision& input : value.inputs) {
        if (!input.id.starts_with(kEntryName<Evidence>)) continue;
        const auto found = record.evidence.find(input.id.substr(kEntryName<Evidence>.size()));
        if (found != record.evidence.end()) used.push_back(&found->second.content);
    }
    return used;
}

/// The phase of the frames, where all were of one.
Phase commonPhase(const std::vector<const Evidence*>& used) {
    std::set<Phase> phases;
    for (const Evidence* evidence : used)
        phases.insert(phaseOf(evidence->phase));
    return phases.size() == 1 ? *phases.begin() : Phase::Unknown;
}

const Moment* momentOf(const CaseRecord& record, std::string_view id) {
    const auto found = record.moments.find(id);
    return found == record.moments.end() ? nullptr : &found->second.content;
}

/// What a moment says of every reading made in it.
void setMoment(Observation& o, const Moment& moment) {
    const HaemodynamicState& c = moment.circulation;
    o.stage = c.stage;
    o.condition = moment.condition;
    o.pressureMmHg = c.meanPressureMmHg;
    o.pressureSource = c.meanPressureMmHg ? c.pressureSource : std::nullopt;
    o.pressureUncertaintyMmHg = c.meanPressureMmHg ? moment.pressureUncertaintyMmHg : std::nullopt;
    o.vWaveMmHg = c.vWaveMmHg;
}

/// Id of the moment of a group; for CT the one of its evidence.
std::string momentIdOf(const CaseRecord& record, std::string_view group) {
    if (group != kCtValues) return std::string(momentOfGroup(group));
    const Evidence* evidence = ctEvidence(record);
    return evidence ? evidence->moment : std::string();
}

class Collector {
public:
    explicit Collector(const CaseRecord& record) : m_record(record) {}

    CaseReadings take() {
        for (const RecordedValue& value : m_record.values)
            addMeasured(value);
        // CT leads whatever the names of the groups; else the order of the record.
        sortCtFirst();
        for (const auto& [id, entry] : m_record.readings)
            addTyped(id, entry.content);
        sayMoments();
        addFacts();
        return std::move(m_out);
    }

private:
    void addMeasured(const RecordedValue& value) {
        auto reading = readingOf(m_record, value);
        if (!reading) return;
        if (isStale(m_record, value)) {
            m_out.notices.push_back(
                {"stale-value-left-out",
                 "The " + std::string(plainName(reading->quantity)) + " by " + std::string(plainName(reading->modality)) +
                     " (" + fixed(reading->valueMm, 1) +
                     " mm) is left out: what it was measured on has changed since. Measure it again, or confirm it.",
                 {{"group", value.group}, {"value", value.id}}});
            return;
        }
        add(std::move(*reading), {value.group, {value.id}, {}, momentIdOf(m_record, value.group)});
    }

    void sortCtFirst() {
        std::vector<std::size_t> order(m_out.observations.size());
        for (std::size_t i = 0; i < order.size(); ++i)
            order[i] = i;
        std::stable_partition(order.begin(), order.end(),
                              [&](std::size_t i) { return m_out.origins[i].group == kCtValues; });
        CaseReadings sorted;
        for (const std::size_t i : order) {
            sorted.observations.push_back(std::move(m_out.observations[i]));
            sorted.origins.push_back(std::move(m_out.origins[i]));
        }
        m_out.observations = std::move(sorted.observations);
        m_out.origins = std::move(sorted.origins);
    }

    void addTyped(const std::string& id, const TypedReading& typed) {
        Observation o = typed.observation;
        const Moment* moment = momentOf(m_record, o.state);
        ReadingOrigin origin{{}, {}, id, moment ? o.state : std::string()};
        if (moment) setMoment(o, *moment);
        if (o.state.empty()) o.state = "reading " + id;
        if (typed.mixedBeats) m_out.facts.mixedBeats.push_back(m_out.observations.size());
        if (!moment && !typed.observation.state.empty()) m_unknownMoments.insert(typed.observation.state);
        add(std::move(o), std::move(origin));
    }

    void add(Observation o, ReadingOrigin origin) {
        // Pictures without a moment go by the name of their stage.
        const bool isStage = stageFrom(origin.moment).has_value() && !momentOf(m_record, origin.moment);
        if (isStage) origin.moment.clear();
        if (!origin.moment.empty() && !momentOf(m_record, origin.moment)) m_unknownMoments.insert(origin.moment);
        if (origin.moment.empty()) m_withoutMoment.insert(std::string(plainName(o.modality)));
        m_out.observations.push_back(std::move(o));
        m_out.origins.push_back(std::move(origin));
    }

    void sayMoments() {
        for (const std::string& what : m_withoutMoment)
            m_out.notices.push_back({"reading-without-moment",
                                     "The readings by " + what +
                                         " belong to no moment of the course: their pressure counts as not measured.",
                                     {{"modality", what}}});
        for (const std::string& id : m_unknownMoments)
            m_out.notices.push_back({"moment-unknown",
                                     "Readings name the moment \"" + id +
                                         "\", which the case does not hold: their pressure counts as not measured.",
                                     {{"moment", id}}});
        const Evidence* evidence = ctEvidence(m_record);
        const bool byPercent = (!evidence || evidence->phase == BeatPhase::Unknown) && m_record.images &&
                               m_record.images->phasePercent;
        const bool hasCt = std::any_of(m_out.origins.begin(), m_out.origins.end(),
                                       [](const ReadingOrigin& origin) { return origin.group == kCtValues; });
        if (byPercent && hasCt)
            m_out.notices.push_back(
                {"ct-phase-by-percent",
                 "The CT phase at " + fixed(*m_record.images->phasePercent, 1) + " % of the beat counts as " +
                     (ctPhase(m_record, evidence) == Phase::EndSystole ? "end-systole"
                                                                        : "a phase other than end-systole") +
                     " (30 to 50 % is taken for end-systole: common practice, no source).",
                 {}});
    }

    /// A value of the group that is there and not stale.
    std::optional<double> current(std::string_view group, std::string_view id) const {
        for (const RecordedValue& value : m_record.values)
            if (value.group == group && value.id == id && !isStale(m_record, value)) return value.estimate.value;
        return std::nullopt;
    }

    void addFacts() {
        AppendageFacts& facts = m_out.facts;
        facts.depthMm = current(kCtValues, "depth/from-ostium-plane");
        facts.depthFromLandingZoneMm = current(kCtValues, "landing-1/straight-depth");
        addSection(facts);
        const auto turn = current(kCtValues, "turn/angle");
        const auto at = current(kCtValues, "turn/at");
        if (turn && at) facts.bend = Bend{*turn, *at, std::nullopt, std::nullopt};
        addStasis(facts);
        if (m_record.sizing) facts.regurgitationMayRecur = m_record.sizing->content.regurgitationMayRecur;
    }

    /// Shape from CT; the probe angle of the longest diameter only echo can tell.
    void addSection(AppendageFacts& facts) const {
        const auto longest = current(kCtValues, "landing-1/longest-diameter");
        const auto shortest = current(kCtValues, "landing-1/shortest-diameter");
        if (!longest || !shortest) return;
        facts.section = LandingSection{*longest, *shortest, 0.0, false};
        for (const RecordedValue& value : m_record.values) {
            const bool tells = value.group.starts_with(kEcho) && value.id == "landing/direction";
            if (!tells || isStale(m_record, value)) continue;
            facts.section->longestAtDeg = value.estimate.value;
            facts.section->angleKnown = true;
        }
    }

    void addStasis(AppendageFacts& facts) const {
        for (const auto& [id, entry] : m_record.stasis)
            facts.stasis.push_back(entry.content);
        std::stable_sort(facts.stasis.begin(), facts.stasis.end(),
                         [](const StasisFinding& a, const StasisFinding& b) { return a.stage < b.stage; });
    }

    const CaseRecord& m_record;
    CaseReadings m_out;
    std::set<std::string> m_withoutMoment, m_unknownMoments;
};

} // namespace

CaseReadings caseReadings(const CaseRecord& record) {
    return Collector(record).take();
}

std::string_view momentOfGroup(std::string_view group) {
    for (const std::string_view prefix : {kEcho, kEcho3d, kFluoroscopy})
        if (group.starts_with(prefix)) return group.substr(prefix.size());
    return {};
}

std::optional<Observation> readingOf(const CaseRecord& record, const RecordedValue& value) {
    const auto kind = kindOf(value.group);
    const Rule* rule = kind ? ruleOf(value.group, value.id) : nullptr;
    if (!rule || !std::isfinite(value.estimate.value) || value.estimate.value <= 0.0) return std::nullopt;
    Observation o;
    o.quantity = rule->quantity;
    o.modality = kind->modality;
    o.derivation = rule->quantity == Quantity::Depth ? Derivation::Contour : rule->derivation.value_or(kind->derivation);
    o.valueMm = value.estimate.value;
    if (const double u = value.estimate.standardUncertainty(); u > 0.0) o.standardUncertaintyMm = u;
    const bool ct = value.group == kCtValues;
    const auto used = evidenceOf(record, value);
    if (ct)
        o.phase = ctPhase(record, ctEvidence(record));
    else
        o.phase = commonPhase(used);
    if (ct) {
        if (const Evidence* evidence = ctEvidence(record)) o.stage = evidence->stage;
    } else if (!used.empty()) {
        o.stage = used.front()->stage;
    }
    const std::string id = momentIdOf(record, value.group);
    if (const auto stage = stageFrom(id); stage && used.empty()) o.stage = *stage;
    o.state = id.empty() ? std::string(ct ? kCtState : std::string_view(value.group)) : id;
    if (const Moment* moment = momentOf(record, id)) setMoment(o, *moment);
    return o;
}

bool isRepaired(const CaseRecord& record) {
    const auto after = [](Stage stage) { return stage == Stage::AfterRepair; };
    const bool lasting = record.sizing && record.sizing->content.cause == PressureChange::Lasting;
    return lasting ||
           std::any_of(record.moments.begin(), record.moments.end(),
                       [&](const auto& item) { return after(item.second.content.circulation.stage); }) ||
           std::any_of(record.stasis.begin(), record.stasis.end(),
                       [&](const auto& item) { return after(item.second.content.stage); });
}

} // namespace gauge::core
