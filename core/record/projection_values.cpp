#include "core/record/projection_values.h"

#include "core/echo/drawn_contour.h"
#include "core/units/angle.h"

#include <algorithm>
#include <cmath>

namespace gauge::core {
namespace {

class ProjectionList {
public:
    ProjectionList(const CaseRecord& record, std::shared_ptr<const Provenance> provenance) : m_provenance(std::move(provenance)) {
        for (const std::string& id :
             {input::placeOf(input::kOstium), input::placeOf(input::kLanding), entryInput<CorrectedContour>(kOstiumSection),
              entryInput<CorrectedContour>(kLandingSection), std::string(kEntryName<ProjectionChoice>)})
            m_inputs.push_back({id, revisionOf(record, id)});
    }

    void add(std::string id, const char* unit, Estimate estimate) {
        RecordedValue value;
        value.id = std::move(id);
        value.group = std::string(kProjectionValues);
        value.unit = unit;
        value.estimate = std::move(estimate);
        value.inputs = m_inputs;
        value.provenance = m_provenance;
        m_values.push_back(std::move(value));
    }

    /// The primary angle is less sure the steeper the view: a circle of latitude gets shorter.
    void addAngles(const std::string& id, const CArmAngles& view, double tiltDeg, const std::string& method) {
        constexpr double kMostDeg = 90.0;
        const double latitude = std::cos(view.secondaryDeg * kRadPerDegree);
        add(id + "/primary", "deg",
            {view.primaryDeg, {0.0, latitude > 0.0 ? std::min(kMostDeg, tiltDeg / latitude) : kMostDeg, 0.0, 0.0}, method});
        add(id + "/secondary", "deg", {view.secondaryDeg, {0.0, tiltDeg, 0.0, 0.0}, method});
    }

    /// Nothing for a view that shows no width.
    void addWidth(const std::string& id, const SectionPlan& plan, const CArmAngles& room, const PatientTurn& turn) {
        auto width = predictedWidth(plan.subject.contour, patientAngles(room, turn));
        if (!width) return;
        width->method = "width of the CT contour at " + words(room) + ", parallel rays";
        add(id, "mm", std::move(*width));
    }

    std::vector<RecordedValue> take() { return std::move(m_values); }

private:
    std::shared_ptr<const Provenance> m_provenance;
    std::vector<InputRevision> m_inputs;
    std::vector<RecordedValue> m_values;
};

/// As methods say it: whoever reads a value elsewhere must see what the view is for.
std::string aimText(ViewAim aim) {
    switch (aim) {
    case ViewAim::LongestWidth:
        return "longest width";
    case ViewAim::ShortestWidth:
        return "shortest width";
    case ViewAim::BendInProfile:
        return "bend in profile";
    case ViewAim::LeastOverlap:
        return "least overlap with the atrium";
    case ViewAim::OneForAll:
        return "all aims in one view";
    case ViewAim::EnFace:
        break;
    }
    return "en face";
}

std::vector<PatientPoint> inPatient(const Section& section) {
    std::vector<PatientPoint> points;
    for (const auto& p : section.contour)
        points.push_back(section.frame.patientFromSection(p));
    return points;
}

const Section* sectionOf(const AppendageMeasurement& measurement, std::string_view section) {
    if (section == kOstiumSection) return &measurement.ostium.section;
    if (section != kLandingSection) return nullptr;
    const auto found = std::find_if(measurement.landingZones.begin(), measurement.landingZones.end(),
                                    [](const LandingZone& zone) { return zone.kind == LandingKind::Axis; });
    return found == measurement.landingZones.end() ? nullptr : &found->section;
}

} // namespace

std::string_view planeInputOf(std::string_view section) {
    return section == kOstiumSection ? input::kOstium : input::kLanding;
}

std::string patientPosition(const CaseRecord& record, std::string_view imagesPosition) {
    return record.images && !record.images->patientPosition.empty() ? record.images->patientPosition : std::string(imagesPosition);
}

Result<ViewPlanOptions> viewPlanOptions(const CaseRecord& record, std::string_view imagesPosition) {
    ViewPlanOptions options;
    std::optional<PatientTurn> stated;
    if (record.projection) {
        options.reach = record.projection->content.reach;
        stated = record.projection->content.turn;
    }
    const auto turn = usableTurn(patientPosition(record, imagesPosition), stated);
    if (!turn) return tl::make_unexpected(turn.error());
    options.turn = *turn;
    return options;
}

std::optional<ProjectionSubject> projectionSubject(const CaseRecord& record, const AppendageMeasurement& measurement,
                                                   std::string_view section) {
    const Section* found = sectionOf(measurement, section);
    if (!found) return std::nullopt;
    ProjectionSubject subject;
    subject.axis = measurement.axis.points;
    subject.contour = inPatient(*found);
    if (const auto corrected = record.contours.find(section); corrected != record.contours.end()) {
        const CorrectedContour& contour = corrected->second.content;
        const bool stands = revisionOf(record, input::placeOf(contour.plane)) == contour.planeRevision;
        if (const auto drawn = measureDrawnContour(contour.frame, contour.points); drawn && stands) subject.contour = inPatient(*drawn);
    }
    return subject;
}

Result<std::vector<SectionPlan>> planSections(const CaseRecord& record, const AppendageMeasurement& measurement,
                                              const AppendageSurface* surface, const ViewPlanOptions& options,
                                              const WorkContext& work) {
    std::optional<Silhouettes> silhouettes;
    if (surface)
        if (auto made = Silhouettes::make(surface->mesh, surface->beyondOstium, roomFromPatient(options.turn)))
            silhouettes = std::move(*made);
    std::vector<SectionPlan> plans;
    for (const std::string_view section : {kLandingSection, kOstiumSection}) {
        auto subject = projectionSubject(record, measurement, section);
        if (!subject) continue;
        auto plan = planViews(*subject, silhouettes ? &*silhouettes : nullptr, options, work);
        if (!plan) return tl::make_unexpected(plan.error());
        plans.push_back({std::string(section), std::move(*subject), std::move(*plan)});
    }
    return plans;
}

std::vector<RecordedValue> projectionValues(const CaseRecord& record, const std::vector<SectionPlan>& plans,
                                            const ViewPlanOptions& options, double tiltDeg,
                                            std::shared_ptr<const Provenance> provenance) {
    ProjectionList values(record, std::move(provenance));
    for (const SectionPlan& plan : plans)
        for (const WorkingView& view : plan.plan.views) {
            const std::string id = plan.section + "/" + std::string(name(view.aim));
            if (view.aim == ViewAim::EnFace) {
                values.addAngles(id, view.ideal, tiltDeg, "angles of the C-arm along the plane's normal");
                continue;
            }
            values.addAngles(id, view.seen.angles, tiltDeg, "angles of the C-arm, best view within its reach for: " + aimText(view.aim));
            values.addWidth(id + "/width", plan, view.seen.angles, options.turn);
        }
    if (!record.projection) return values.take();
    int number = 1;
    for (const ChosenView& view : record.projection->content.views) {
        const std::string id = "view-" + std::to_string(number++);
        values.addAngles(id, view.angles, 0.0, "angles of the C-arm, chosen by the person");
        for (const SectionPlan& plan : plans)
            values.addWidth(id + "/" + plan.section + "-width", plan, view.angles, options.turn);
    }
    return values.take();
}

bool isStale(const CaseRecord& record, const ChosenView& view) {
    return !view.plane.empty() && revisionOf(record, input::placeOf(view.plane)) != view.planeRevision;
}

std::vector<RecordedView> recordedViews(const CaseRecord& record) {
    std::vector<RecordedView> views;
    std::vector<std::string> ids; // "landing-1/longest-width", "view-2": one for each of `views`
    const auto viewOf = [&](const std::string& id) -> RecordedView& {
        const auto found = std::find(ids.begin(), ids.end(), id);
        if (found != ids.end()) return views[static_cast<std::size_t>(found - ids.begin())];
        ids.push_back(id);
        return views.emplace_back();
    };
    const std::size_t chosen = record.projection ? record.projection->content.views.size() : 0;
    for (const RecordedValue& value : record.values) {
        if (value.group != kProjectionValues || isStale(record, value)) continue;
        const std::size_t last = value.id.rfind('/');
        if (last == std::string::npos) continue;
        const std::string id = value.id.substr(0, last), what = value.id.substr(last + 1);
        RecordedView& view = viewOf(id);
        if (what == "primary") view.angles.primaryDeg = value.estimate.value;
        if (what == "secondary") view.angles.secondaryDeg = value.estimate.value;
        if (const std::size_t slash = id.find('/'); slash != std::string::npos) {
            view.section = id.substr(0, slash);
            view.aim = viewAimFrom(std::string_view(id).substr(slash + 1));
            if (what == "width") view.widthMm = value.estimate;
            continue;
        }
        for (std::size_t i = 0; i < chosen; ++i) {
            if (id != "view-" + std::to_string(i + 1)) continue;
            const ChosenView& content = record.projection->content.views[i];
            view.chosen = i;
            view.aim = content.aim;
            view.section = std::string(content.plane == input::kOstium ? kOstiumSection : kLandingSection);
            if (what == view.section + "-width") view.widthMm = value.estimate;
        }
    }
    return views;
}

std::optional<CArmAngles> recordedEnFace(const CaseRecord& record, std::string_view section) {
    std::optional<double> primary, secondary;
    const std::string id = std::string(section) + "/" + std::string(name(ViewAim::EnFace));
    for (const RecordedValue& value : record.values) {
        if (value.group != kProjectionValues || isStale(record, value)) continue;
        if (value.id == id + "/primary") primary = value.estimate.value;
        if (value.id == id + "/secondary") secondary = value.estimate.value;
    }
    if (!primary || !secondary) return std::nullopt;
    return CArmAngles{*primary, *secondary};
}

} // namespace gauge::core
