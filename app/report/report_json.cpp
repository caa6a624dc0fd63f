#include "app/report/report_json.h"

#include "app/cli/size_report.h"
#include "app/document/seats.h"
#include "app/format/words.h"
#include "app/report/value_table.h"
#include "core/record/projection_values.h"
#include "core/release/release_json.h"
#include "core/sizing/seat_json.h"

#include <nlohmann/json.hpp>

namespace gauge::app {
namespace {

using Json = nlohmann::ordered_json;

Json patientJson(const core::CaseRecord& record, bool namesHidden) {
    if (namesHidden || !record.patient) return nullptr;
    const core::Patient& p = record.patient->content;
    return {{"name", p.name}, {"id", p.id}, {"birth_date", p.birthDate}, {"sex", p.sex}};
}

Json caseJson(const Answers& answers, bool namesHidden) {
    const core::CaseRecord& record = answers.record();
    Json decision = nullptr;
    if (record.decision) {
        const core::Decision& d = record.decision->content;
        decision = {{"text", d.text}, {"size", d.size}, {"signed_by", namesHidden ? std::string() : d.signedBy}, {"time", d.time}};
    }
    Json reasons = Json::array();
    for (const QString& reason : answers.whyNotSigned())
        reasons.push_back(reason.toStdString());
    return {{"title", record.patient && !namesHidden ? record.patient->content.title : std::string()},
            {"chosen_size", record.sizing ? record.sizing->content.size : std::string()},
            {"decision", std::move(decision)},
            {"why_not_signed", std::move(reasons)}};
}

Json noticesJson(const std::vector<core::Notice>& notices) {
    Json all = Json::array();
    for (const core::Notice& notice : notices)
        all.push_back({{"code", notice.code}, {"text", notice.text}});
    return all;
}

/// The seat of the chosen size; of all where none is chosen.
Json seatsJson(const Answers& answers) {
    const core::SeatAnswer* answer = answers.seats().answer();
    if (!answer) return nullptr;
    const core::Seat* chosen = answers.seats().chosen();
    return core::seatJson(*answer, answers.seats().question(), chosen ? chosen->name : std::string());
}

/// Views of the C-arm as recorded; RAO and caudal negative.
Json projectionJson(const core::CaseRecord& record, bool namesHidden) {
    const auto views = core::recordedViews(record);
    if (views.empty() && !record.projection) return nullptr;
    const core::ProjectionChoice choice = record.projection ? record.projection->content : core::ProjectionChoice{};
    Json all = Json::array();
    for (const core::RecordedView& view : views) {
        const bool stale = view.chosen && core::isStale(record, choice.views[*view.chosen]);
        all.push_back({{"section", view.section},
                       {"aim", view.aim ? Json(core::name(*view.aim)) : Json(nullptr)},
                       {"chosen", view.chosen.has_value()},
                       {"label", view.chosen && !namesHidden ? choice.views[*view.chosen].label : std::string()},
                       {"plane_moved_since", stale},
                       {"lao_deg", view.angles.primaryDeg},
                       {"cranial_deg", view.angles.secondaryDeg},
                       {"width_mm", view.widthMm ? Json(view.widthMm->value) : Json(nullptr)},
                       {"width_standard_uncertainty_mm", view.widthMm ? Json(view.widthMm->standardUncertainty()) : Json(nullptr)}});
    }
    const std::string position = core::patientPosition(record);
    return {{"reach",
             {{"rao_deg", choice.reach.mostRaoDeg},
              {"lao_deg", choice.reach.mostLaoDeg},
              {"cranial_deg", choice.reach.mostCraDeg},
              {"caudal_deg", choice.reach.mostCauDeg}}},
            {"patient_position", position.empty() ? Json(nullptr) : Json(position)},
            {"offset", choice.turn ? Json{{"lao_deg", choice.turn->primaryDeg}, {"cranial_deg", choice.turn->secondaryDeg}} : Json(nullptr)},
            {"views", std::move(all)}};
}

} // namespace

std::string reportJson(const Answers& answers, bool namesHidden, const QString& program, const QString& time) {
    Json release = Json::array();
    for (const ReleaseLook& look : answers.releaseLooks())
        if (look.report) release.push_back(core::reportJson(look.state, *look.report));
    Json cautions = Json::array();
    for (const QString& caution : cautionParagraphs())
        cautions.push_back(caution.toStdString());
    core::CaseRecord record = answers.record();
    if (namesHidden) forgetPersons(record);
    Json values = valuesJson(record);
    const Json all{{"format", "ostium-gauge/report/1"},
                   {"program", program.toStdString()},
                   {"time", time.toStdString()},
                   {"patient", patientJson(answers.record(), namesHidden)},
                   {"case", caseJson(answers, namesHidden)},
                   {"values", std::move(values)},
                   {"sizing", answers.sizing() ? Json::parse(sizeJson(answers.sizingQuestion(), *answers.sizing())) : Json(nullptr)},
                   {"seat", seatsJson(answers)},
                   {"projection", projectionJson(answers.record(), namesHidden)},
                   {"release", std::move(release)},
                   {"notices", noticesJson(answers.readings().notices)},
                   {"cautions", std::move(cautions)}};
    return all.dump(1, ' ', false, Json::error_handler_t::replace) + "\n";
}

} // namespace gauge::app
