#include "app/cli/projection_report.h"

#include "core/number_text.h"

#include <algorithm>
#include <nlohmann/json.hpp>

namespace gauge::app {
namespace {

using nlohmann::ordered_json;
using core::CArmAngles;
using core::fixed;

constexpr auto kFormat = "ostium-gauge/projection/1";

/// No negative zero.
double plain(double value) {
    return value + 0.0 == 0.0 ? 0.0 : value;
}

ordered_json angles(const CArmAngles& a) {
    return {{"lao_deg", plain(a.primaryDeg)}, {"cranial_deg", plain(a.secondaryDeg)}};
}

ordered_json edgeOn(const core::PatientVector& normal) {
    ordered_json list = ordered_json::array();
    for (const CArmAngles& view : core::edgeOnTable(normal))
        list.push_back(angles(view));
    return list;
}

ordered_json start(const core::PatientVector& normal) {
    return {{"format", kFormat}, {"en_face", angles(core::enFace(normal))}, {"edge_on", edgeOn(normal)}};
}

std::string dumped(const ordered_json& document) {
    return document.dump(2, ' ', false, ordered_json::error_handler_t::replace) + '\n';
}

template <class T> ordered_json projectionOrNull(const std::optional<T>& value) {
    return value ? ordered_json(*value) : ordered_json(nullptr);
}

ordered_json viewJson(const core::WorkingView& v) {
    const core::ViewReading& r = v.seen;
    ordered_json json = angles(r.angles);
    json["aim"] = core::name(v.aim);
    json["ideal"] = angles(v.ideal);
    json["moved_deg"] = v.movedDeg;
    json["opening_deg"] = r.openingDeg;
    json["axis_visible"] = r.axisVisible;
    json["width_mm"] = projectionOrNull(r.widthMm);
    json["width_within_5_deg_mm"] =
        r.tolerance ? ordered_json{r.tolerance->lowestMm, r.tolerance->highestMm} : ordered_json(nullptr);
    json["lost_of_longest_mm"] = projectionOrNull(r.lostOfLongestMm);
    json["beyond_shortest_mm"] = projectionOrNull(r.beyondShortestMm);
    json["off_profile_deg"] = projectionOrNull(r.offProfileDeg);
    json["hidden_share"] = projectionOrNull(r.hiddenShare);
    json["hidden_beyond_least"] = projectionOrNull(v.hiddenBeyondLeast);
    json["off_normal_deg"] = r.offNormalDeg;
    return json;
}

ordered_json sectionJson(const core::SectionPlan& p) {
    ordered_json views = ordered_json::array();
    for (const core::WorkingView& view : p.plan.views)
        views.push_back(viewJson(view));
    return {{"section", p.section},
            {"en_face", angles(p.plan.enFace)},
            {"edge_on", edgeOn(p.plan.normal)},
            {"longest_mm", p.plan.longestMm},
            {"shortest_mm", p.plan.shortestMm},
            {"turn_deg", p.plan.bend ? ordered_json(p.plan.bend->turnDeg) : ordered_json(nullptr)},
            {"edge_on_within_reach", !p.plan.edgeOn.empty()},
            {"views", std::move(views)}};
}

std::string padded(std::string text, std::size_t width) {
    text.resize(std::max(width, text.size()), ' ');
    return text;
}

std::string precise(double deg, const char* positive, const char* negative) {
    const std::string digits = fixed(std::abs(deg), 1);
    return padded(std::string(deg < 0.0 && digits != "0.0" ? negative : positive) + " " + digits, 10);
}

std::string precise(const CArmAngles& a) {
    return precise(a.primaryDeg, "LAO", "RAO") + precise(a.secondaryDeg, "CRA", "CAU");
}

std::string curveText(const core::PatientVector& normal) {
    std::string text = "  edge-on\n";
    for (const CArmAngles& view : core::edgeOnTable(normal))
        text += "    " + precise(view) + '\n';
    return text;
}

std::string enFaceText(const CArmAngles& a) {
    return "  en face\n    " + precise(a) + '\n';
}

std::string lossText(const core::WorkingView& v) {
    const core::ViewReading& r = v.seen;
    std::string text;
    const auto add = [&](const std::string& part) { text += (text.empty() ? "" : ", ") + part; };
    if (r.widthMm)
        add("width " + fixed(*r.widthMm, 1) + " mm" +
            (r.tolerance ? " (" + fixed(r.tolerance->lowestMm, 1) + " to " + fixed(r.tolerance->highestMm, 1) + " within 5 deg)" : ""));
    add("plane " + fixed(r.openingDeg, 0) + " deg open");
    if (v.aim == core::ViewAim::OneForAll && r.lostOfLongestMm)
        add(fixed(*r.lostOfLongestMm, 1) + " mm of the longest not shown, " + fixed(*r.beyondShortestMm, 1) +
            " mm beyond the shortest");
    if (r.offProfileDeg) add("bend " + fixed(*r.offProfileDeg, 0) + " deg off profile");
    if (r.hiddenShare) add(fixed(100.0 * *r.hiddenShare, 0) + " % behind the atrium");
    if (v.movedDeg > 0.05) add(fixed(v.movedDeg, 0) + " deg from the ideal " + core::words(v.ideal));
    return text;
}

std::string sectionText(const core::SectionPlan& p) {
    std::string text = p.section + ": longest " + fixed(p.plan.longestMm, 1) + " mm, shortest " + fixed(p.plan.shortestMm, 1) + " mm\n";
    text += "  working views within the reach\n";
    for (const core::WorkingView& view : p.plan.views)
        text += "    " + padded(std::string(core::name(view.aim)), 17) + precise(view.seen.angles) + lossText(view) + '\n';
    return text + enFaceText(p.plan.enFace) + curveText(p.plan.normal);
}

} // namespace

core::PatientVector CaseProjection::normal() const {
    return plans.empty() ? core::beamDirection(recorded.front().enFace) : plans.front().plan.normal;
}

std::string projectionText(const core::PatientVector& normal) {
    return enFaceText(core::enFace(normal)) + curveText(normal);
}

std::string projectionJson(const core::PatientVector& normal) {
    return dumped(start(normal));
}

std::string projectionText(const CaseProjection& c) {
    const core::CArmReach& r = c.options.reach;
    std::string text = "reach RAO " + fixed(r.mostRaoDeg, 0) + ", LAO " + fixed(r.mostLaoDeg, 0) + ", CRA " +
                       fixed(r.mostCraDeg, 0) + ", CAU " + fixed(r.mostCauDeg, 0) + " deg\n";
    text += "patient at CT: " + (c.patientPosition.empty() ? std::string("position not told") : c.patientPosition);
    if (c.offsetStated)
        text += ", offset LAO " + fixed(c.options.turn.primaryDeg, 1) + ", CRA " + fixed(c.options.turn.secondaryDeg, 1) + " deg";
    text += '\n';
    for (const core::SectionPlan& plan : c.plans)
        text += sectionText(plan);
    for (const CaseProjection::Recorded& one : c.recorded)
        text += one.section + ", as recorded\n" + enFaceText(one.enFace) + curveText(core::beamDirection(one.enFace));
    if (!c.chosen.empty()) text += "chosen views\n";
    for (const CaseProjection::Chosen& one : c.chosen)
        text += "    " + precise(one.view.angles) + (one.view.aim ? std::string(core::name(*one.view.aim)) : std::string("by hand")) +
                (one.isStale ? ", chosen before the plane moved" : "") + '\n';
    for (const core::Notice& notice : c.notices)
        text += "note: " + notice.text + '\n';
    return text;
}

std::string projectionJson(const CaseProjection& c) {
    const core::PatientVector normal = c.normal();
    ordered_json document = start(normal);
    document["section"] = c.plans.empty() ? c.recorded.front().section : c.plans.front().section;
    document["patient_position"] = c.patientPosition.empty() ? ordered_json(nullptr) : ordered_json(c.patientPosition);
    document["offset"] = c.offsetStated ? ordered_json{{"lao_deg", plain(c.options.turn.primaryDeg)},
                                                       {"cranial_deg", plain(c.options.turn.secondaryDeg)}}
                                        : ordered_json(nullptr);
    document["reach"] = {{"rao_deg", c.options.reach.mostRaoDeg},
                         {"lao_deg", c.options.reach.mostLaoDeg},
                         {"cranial_deg", c.options.reach.mostCraDeg},
                         {"caudal_deg", c.options.reach.mostCauDeg}};
    document["sections"] = ordered_json::array();
    for (const core::SectionPlan& plan : c.plans)
        document["sections"].push_back(sectionJson(plan));
    for (const CaseProjection::Recorded& one : c.recorded)
        document["sections"].push_back({{"section", one.section},
                                        {"en_face", angles(one.enFace)},
                                        {"edge_on", edgeOn(core::beamDirection(one.enFace))}});
    document["chosen_views"] = ordered_json::array();
    for (const CaseProjection::Chosen& one : c.chosen) {
        ordered_json view = angles(one.view.angles);
        view["aim"] = one.view.aim ? ordered_json(core::name(*one.view.aim)) : ordered_json(nullptr);
        view["plane"] = one.view.plane;
        view["stale"] = one.isStale;
        document["chosen_views"].push_back(std::move(view));
    }
    document["notices"] = ordered_json::array();
    for (const core::Notice& notice : c.notices)
        document["notices"].push_back({{"code", notice.code}, {"text", notice.text}});
    return dumped(document);
}

} // namespace gauge::app
