#include "core/record/measurement_values.h"

#include "core/echo/drawn_contour.h"
#include "core/record/metric_names.h"

#include <algorithm>

namespace gauge::core {
namespace {

class ValueList {
public:
    ValueList(const CaseRecord& record, std::shared_ptr<const Provenance> provenance)
        : m_record(record), m_provenance(std::move(provenance)) {
        use(m_shared, input::kImages);
        use(m_shared, input::kOstium);
        for (const MarkKind kind : {MarkKind::Atrium, MarkKind::Tip, MarkKind::Circumflex, MarkKind::Ridge})
            use(m_shared, input::mark(kind));
    }

    /// `extra`: inputs beyond those on which every value rests.
    void add(std::string id, const char* unit, const Estimate& estimate, const std::vector<InputRevision>& extra = {}) {
        RecordedValue value;
        value.id = std::move(id);
        value.unit = unit;
        value.estimate = estimate;
        value.inputs = m_shared;
        value.inputs.insert(value.inputs.end(), extra.begin(), extra.end());
        value.provenance = m_provenance;
        m_values.push_back(std::move(value));
    }

    std::vector<InputRevision> inputOf(std::string_view id) const { return {{std::string(id), revisionOf(m_record, id)}}; }

    /// A contour that a hand corrected takes the place of the one found, and holds while its plane lies where it lay.
    void addSection(const std::string& where, const Section& found, std::vector<InputRevision> extra = {}) {
        Section section = found;
        if (const auto corrected = m_record.contours.find(where); corrected != m_record.contours.end()) {
            const CorrectedContour& contour = corrected->second.content;
            if (auto drawn = measureDrawnContour(contour.frame, contour.points)) {
                section = std::move(*drawn);
                for (const MetricName& name : kMetricNames)
                    estimateOf(section.metrics, name.metric).method = "contour corrected by hand";
                extra.push_back({entryInput<CorrectedContour>(where), corrected->second.revision});
                extra.push_back({input::placeOf(contour.plane), contour.planeRevision});
            }
        }
        for (const MetricName& name : kMetricNames)
            add(where + "/" + name.id, name.unit, estimateOf(section.metrics, name.metric), extra);
    }

    std::vector<RecordedValue> take() { return std::move(m_values); }

private:
    void use(std::vector<InputRevision>& inputs, std::string_view id) const {
        inputs.push_back({std::string(id), revisionOf(m_record, id)});
    }

    const CaseRecord& m_record;
    std::shared_ptr<const Provenance> m_provenance;
    std::vector<InputRevision> m_shared;
    std::vector<RecordedValue> m_values;
};

/// The number of each landing plane: its place among the record's depths, the plug plane after them, so that a plane that could
/// not be measured leaves the others their names. Planes of which the record does not know are counted on.
std::vector<std::size_t> landingNumbers(const std::vector<LandingZone>& zones, const LandingPlanes& asked) {
    const auto& depths = asked.depthsMm;
    std::vector<std::size_t> numbers;
    const auto isFree = [&](std::size_t number) { return std::find(numbers.begin(), numbers.end(), number) == numbers.end(); };
    for (const LandingZone& zone : zones) {
        std::size_t number = zone.kind == LandingKind::Plug && asked.plugMm ? depths.size() + 1 : 0;
        for (std::size_t i = 0; i < depths.size() && number == 0 && zone.kind == LandingKind::Axis; ++i)
            if (depths[i] == zone.depthMm && isFree(i + 1)) number = i + 1;
        if (number == 0) number = numbers.size() + 1;
        while (!isFree(number))
            ++number;
        numbers.push_back(number);
    }
    return numbers;
}

} // namespace

std::vector<RecordedValue> recordedValues(const AppendageMeasurement& measurement, const CaseRecord& record,
                                          std::shared_ptr<const Provenance> provenance) {
    ValueList values(record, std::move(provenance));
    values.addSection("ostium", measurement.ostium.section);
    const auto numbers = landingNumbers(measurement.landingZones, record.landing);
    for (std::size_t i = 0; i < numbers.size(); ++i) {
        const LandingZone& landing = measurement.landingZones[i];
        const std::string where = "landing-" + std::to_string(numbers[i]);
        values.addSection(where, landing.section, values.inputOf(input::kLanding));
        values.add(where + "/straight-depth", "mm", landing.straightDepthMm, values.inputOf(input::kLanding));
    }
    values.add("depth/along-axis", "mm", measurement.depthAlongAxisMm);
    values.add("depth/from-ostium-plane", "mm", measurement.depthFromOstiumPlaneMm);
    values.add("volume", "mL", measurement.volumeMl);
    if (measurement.turn) {
        values.add("turn/angle", "deg", measurement.turn->angleDeg);
        values.add("turn/at", "mm", measurement.turn->atMm);
    }
    const auto level = [](double hu) { return Estimate{hu, {}, "mean level"}; };
    const Enhancement& e = measurement.enhancement;
    values.add("enhancement/atrium", "HU", level(e.atriumHu));
    values.add("enhancement/appendage", "HU", level(e.appendageHu));
    values.add("enhancement/tip", "HU", level(e.tipHu));
    const auto aorta = values.inputOf(input::mark(MarkKind::Aorta));
    if (e.aortaHu) values.add("enhancement/aorta", "HU", level(*e.aortaHu), aorta);
    if (e.tipToAorta) values.add("enhancement/tip-to-aorta", "1", level(*e.tipToAorta), aorta);
    return values.take();
}

} // namespace gauge::core
