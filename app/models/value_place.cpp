// Where a recorded value was measured.
#include "app/models/comparison_model.h"

#include "core/record/case_readings.h"
#include "core/record/septum_values.h"

#include <variant>

namespace gauge::app {
namespace {

constexpr std::string_view kLanding = "landing-";

/// The drawing among the inputs that measures the part of the appendage that the value is about; else the first.
const core::Entry<core::Drawing>* drawingOf(const core::CaseRecord& record, const core::RecordedValue& value,
                                            std::string& id) {
    using Role = core::DrawingRole;
    const auto fits = [&](Role role) {
        if (value.id.starts_with("landing")) return role == Role::LandingWidth || role == Role::LandingContour;
        if (value.id.starts_with("ostium")) return role == Role::OstiumWidth || role == Role::OstiumContour;
        return value.id.starts_with("depth") && role == Role::Depth;
    };
    const core::Entry<core::Drawing>* first = nullptr;
    for (const core::InputRevision& input : value.inputs) {
        if (!input.id.starts_with(core::kEntryName<core::Drawing>)) continue;
        const std::string name = input.id.substr(core::kEntryName<core::Drawing>.size());
        const auto found = record.drawings.find(name);
        if (found == record.drawings.end()) continue;
        const bool matches = fits(found->second.content.role);
        if (first && !matches) continue;
        first = &found->second;
        id = name;
        if (matches) break;
    }
    return first;
}

/// Id of the evidence with this picture; the one that the value names first where none has it.
std::string evidenceOf(const core::CaseRecord& record, const core::RecordedValue& value, const std::string& sop) {
    if (!sop.empty())
        for (const auto& [id, entry] : record.evidence)
            if (entry.content.sopInstanceUid == sop) return id;
    for (const core::InputRevision& input : value.inputs)
        if (input.id.starts_with(core::kEntryName<core::Evidence>))
            return input.id.substr(core::kEntryName<core::Evidence>.size());
    return {};
}

/// Depth of a landing plane by the number in "landing-2/…".
std::optional<double> landingDepth(const core::CaseRecord& record, std::string_view id) {
    const std::size_t number = static_cast<std::size_t>(id[kLanding.size()] - '1');
    if (number >= record.landing.depthsMm.size()) return std::nullopt;
    return record.landing.depthsMm[number];
}

Place ctPlace(const core::CaseRecord& record, const core::RecordedValue& value) {
    Place place;
    place.page = Page::Appendage;
    place.depth = Depth::Ostium;
    const std::string& id = value.id;
    if (id.starts_with(kLanding)) {
        place.depth = Depth::Landing;
        if (id[kLanding.size()] != '1') {
            const auto mm = landingDepth(record, id);
            place.depth = mm ? Depth::Free : Depth::Plug; // the plug plane comes after the depths along the axis
            place.depthMm = mm.value_or(0.0);
        }
    } else if (id.starts_with("turn/")) {
        for (const core::RecordedValue& other : record.values)
            if (other.group == value.group && other.id == "turn/at") {
                place.depth = Depth::Free;
                place.depthMm = other.estimate.value;
            }
    } else if (id == "enhancement/atrium" || id == "enhancement/aorta" || id == "enhancement/tip-to-aorta") {
        place.page = Page::Scanner;
        place.depth.reset();
        const auto mark = record.marks.find(id == "enhancement/atrium" ? core::MarkKind::Atrium : core::MarkKind::Aorta);
        if (mark != record.marks.end()) place.point = mark->second.point;
    }
    const std::string contour = id.substr(0, id.find('/'));
    if (record.contours.contains(contour)) place.plane = record.contours.find(contour)->second.content.frame;
    return place;
}

/// Where a caliper on the CT lies: on the plane that it was drawn on, on the scanner's sections, or else along the axis.
Place drawnPlace(const core::CaseRecord& record, const std::string& id) {
    Place place;
    place.drawing = QString::fromStdString(id);
    const core::Drawing& drawing = record.drawings.at(id).content;
    const auto& site = std::get<core::SectionSite>(drawing.site);
    place.plane = site.frame;
    constexpr double kAlongAxis = 0.999; // of the patient: a section of the scanner
    place.page = site.plane.empty() && site.frame.normal.mm.cwiseAbs().maxCoeff() > kAlongAxis ? Page::Scanner : Page::Appendage;
    if (site.plane == core::input::kOstium) place.depth = Depth::Ostium;
    if (site.plane == core::input::kLanding) place.depth = Depth::Landing;
    if (place.page == Page::Scanner && !drawing.points.empty()) place.point = site.frame.patientFromSection(drawing.points.front());
    return place;
}

} // namespace

Place placeOf(const core::CaseRecord& record, const core::RecordedValue& value) {
    if (value.group == core::kCtValues) return ctPlace(record, value);
    if (value.group.starts_with(core::kEntryName<core::Drawing>)) {
        const std::string id = value.group.substr(core::kEntryName<core::Drawing>.size());
        const auto drawn = record.drawings.find(id);
        if (drawn != record.drawings.end() && drawn->second.content.evidence.empty() &&
            std::holds_alternative<core::SectionSite>(drawn->second.content.site))
            return drawnPlace(record, id);
    }
    Place place;
    if (value.group == core::kSeptumValues) {
        place.page = Page::Septum;
        return place;
    }
    place.page = value.group.starts_with("fluoroscopy/") ? Page::Fluoroscopy : Page::Echo;
    std::string sop = value.provenance && !value.provenance->sopInstanceUids.empty()
                          ? value.provenance->sopInstanceUids.front()
                          : std::string();
    if (value.provenance) place.frame = value.provenance->frame.value_or(0);
    std::string drawing;
    if (const auto* entry = drawingOf(record, value, drawing)) {
        place.drawing = QString::fromStdString(drawing);
        if (const auto* picture = std::get_if<core::PictureSite>(&entry->content.site)) {
            sop = picture->sopInstanceUid;
            place.frame = picture->frame;
        } else {
            place.plane = std::get<core::SectionSite>(entry->content.site).frame;
        }
        if (!entry->content.evidence.empty() && record.evidence.contains(entry->content.evidence)) {
            place.evidence = QString::fromStdString(entry->content.evidence);
            return place;
        }
    }
    place.evidence = QString::fromStdString(evidenceOf(record, value, sop));
    return place;
}

} // namespace gauge::app
