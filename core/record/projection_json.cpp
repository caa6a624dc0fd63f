// Reach of the C-arm, offset of the patient, chosen views.
#include "core/record/record_json.h"

#include <array>
#include <utility>

namespace gauge::core::record_json {

using namespace json_writer;

namespace {

std::vector<std::pair<ViewAim, std::string_view>> aimWords() {
    std::vector<std::pair<ViewAim, std::string_view>> words;
    for (const ViewAim aim : kViewAims)
        words.emplace_back(aim, name(aim));
    return words;
}

/// What validate() finds, with the place in the file.
void checkValid(const Result<void>& valid, const std::string& path) {
    if (!valid) throw Finding{path + " cannot be used: " + valid.error().message};
}

Json written(const CArmReach& r) {
    return {{"rao_deg", r.mostRaoDeg}, {"lao_deg", r.mostLaoDeg}, {"cranial_deg", r.mostCraDeg}, {"caudal_deg", r.mostCauDeg}};
}

CArmReach readCArmReach(Object o) {
    const CArmReach reach{o.number("rao_deg"), o.number("lao_deg"), o.number("cranial_deg"), o.number("caudal_deg")};
    checkValid(validate(reach), o.pathOf("rao_deg"));
    return reach;
}

Json written(const PatientTurn& t) {
    return {{"primary_deg", t.primaryDeg}, {"secondary_deg", t.secondaryDeg}};
}

PatientTurn readPatientTurn(Object o) {
    const PatientTurn turn{o.number("primary_deg"), o.number("secondary_deg")};
    checkValid(validate(turn), o.pathOf("primary_deg"));
    return turn;
}

Json written(const ChosenView& v) {
    return {{"lao_deg", v.angles.primaryDeg},   {"cranial_deg", v.angles.secondaryDeg},
            {"aim", optionalWord(aimWords(), v.aim)}, {"plane", v.plane},
            {"plane_revision", v.planeRevision}, {"label", v.label}};
}

ChosenView readChosenView(Object o) {
    ChosenView view;
    view.angles = {o.number("lao_deg"), o.number("cranial_deg")};
    checkValid(validate(view.angles), o.pathOf("lao_deg"));
    view.aim = o.optionalChoice("aim", aimWords());
    view.plane = o.text("plane", true);
    view.planeRevision = o.has("plane_revision") ? o.count("plane_revision") : 0;
    view.label = o.text("label", true);
    return view;
}

} // namespace

Json written(const ProjectionChoice& c) {
    Json views = Json::array();
    for (const ChosenView& view : c.views)
        views.push_back(written(view));
    return {{"reach", written(c.reach)}, {"patient_turn", c.turn ? written(*c.turn) : Json(nullptr)}, {"views", std::move(views)}};
}

void read(Object& o, ProjectionChoice& c) {
    c.reach = readCArmReach(o.object("reach"));
    if (o.has("patient_turn")) c.turn = readPatientTurn(o.object("patient_turn"));
    for (const auto& item : o.array("views"))
        c.views.push_back(readChosenView({item, o.pathOf("views") + "[" + std::to_string(c.views.size()) + "]"}));
}

} // namespace gauge::core::record_json
