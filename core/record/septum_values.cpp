#include "core/record/septum_values.h"

#include "core/access/access_target.h"

namespace gauge::core {
namespace {

constexpr double kBesideFossaMm = 30.0;

std::optional<AppendageTarget> targetOf(const AppendageMeasurement* measurement) {
    return measurement ? std::optional(accessTarget(*measurement)) : std::nullopt;
}

std::vector<InputRevision> revisionsOf(const CaseRecord& record, std::vector<std::string> ids) {
    std::vector<InputRevision> inputs;
    for (std::string& id : ids) {
        const Revision revision = revisionOf(record, id);
        inputs.push_back({std::move(id), revision});
    }
    return inputs;
}

} // namespace

SeptumMarks septumMarks(const CaseRecord& record) {
    return record.septumMarks ? record.septumMarks->content : SeptumMarks{};
}

SeptumPlan septumPlan(const CaseRecord& record) {
    return record.septumPlan ? record.septumPlan->content : SeptumPlan{};
}

PatientPoint leftAtriumSide(const CaseRecord& record) {
    if (const auto atrium = record.marks.find(MarkKind::Atrium); atrium != record.marks.end()) return atrium->second.point;
    Eigen::Vector3d middle = Eigen::Vector3d::Zero();
    const std::vector<PatientPoint> fossa = septumMarks(record).fossa;
    for (const PatientPoint& point : fossa)
        middle += point.mm / static_cast<double>(fossa.size());
    return {middle + kBesideFossaMm * Eigen::Vector3d::UnitX()};
}

Result<CrossingScene> crossingScene(const CaseRecord& record, const AppendageMeasurement* measurement) {
    return crossingScene(septumMarks(record), targetOf(measurement), leftAtriumSide(record));
}

std::vector<RecordedValue> septumValues(const CaseRecord& record, const AppendageMeasurement* measurement,
                                        std::shared_ptr<const Provenance> provenance) {
    const SeptumPlan plan = septumPlan(record);
    if (!plan.crossing) return {};
    const PlacementSpread spread = measurement && measurement->ostium.proposed ? PlacementSpread::proposed() : PlacementSpread::confirmed();
    const auto estimates = crossingEstimates(septumMarks(record), targetOf(measurement), leftAtriumSide(record), *plan.crossing,
                                             plan.limits.steering, spread);
    if (!estimates) return {};

    std::vector<std::string> marked{std::string(input::kImages), entryInput<SeptumMarks>(""), entryInput<SeptumPlan>("")};
    std::vector<std::string> aimed = marked;
    aimed.emplace_back(input::kOstium);
    for (const MarkKind kind : {MarkKind::Atrium, MarkKind::Tip, MarkKind::Circumflex, MarkKind::Ridge})
        aimed.push_back(input::mark(kind));
    const auto ofMarks = revisionsOf(record, std::move(marked)), ofAim = revisionsOf(record, std::move(aimed));

    std::vector<RecordedValue> values;
    const auto add = [&](const char* id, const char* unit, const std::optional<Estimate>& estimate, const std::vector<InputRevision>& inputs) {
        if (!estimate) return;
        RecordedValue value;
        value.id = id;
        value.group = std::string(kSeptumValues);
        value.unit = unit;
        value.estimate = *estimate;
        value.inputs = inputs;
        value.provenance = provenance;
        values.push_back(std::move(value));
    };
    add("crossing/over-annulus", "mm", estimates->overAnnulusMm, ofMarks);
    add("crossing/over-coaptation", "mm", estimates->overCoaptationMm, ofMarks);
    add("crossing/ostium-distance", "mm", estimates->distanceMm, ofAim);
    add("crossing/arrival-angle", "deg", estimates->angleDeg, ofAim);
    add("crossing/steered-arrival-angle", "deg", estimates->steeredAngleDeg, ofAim);
    return values;
}

} // namespace gauge::core
