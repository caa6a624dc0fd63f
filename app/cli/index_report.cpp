#include "app/cli/index_report.h"

#include <algorithm>
#include <cstdio>
#include <map>
#include <nlohmann/json.hpp>

namespace gauge::app {
namespace {

using dicomio::SeriesEntry;
using dicomio::SeriesIndex;
using dicomio::SeriesStatus;
using Json = nlohmann::ordered_json;

constexpr std::size_t kShownSkipped = 20;

std::string statusName(SeriesStatus status) {
    switch (status) {
    case SeriesStatus::Ok:
        return "ok";
    case SeriesStatus::Notice:
        return "notice";
    case SeriesStatus::Refused:
        return "refused";
    }
    return "refused";
}

Json messagesJson(const SeriesEntry& series) {
    Json messages = Json::array();
    for (const core::Notice& message : series.messages) {
        Json facts = Json::object();
        for (const core::Fact& fact : message.facts)
            facts[fact.key] = fact.value;
        messages.push_back({{"code", message.code}, {"text", message.text}});
        if (!facts.empty()) messages.back()["facts"] = facts;
    }
    return messages;
}

Json phasesJson(const SeriesEntry& series) {
    Json percents = Json::array();
    for (const dicomio::PhaseEntry& phase : series.phases)
        if (phase.percent) percents.push_back(*phase.percent);
    return percents;
}

Json phaseLabelsJson(const SeriesEntry& series) {
    Json labels = Json::array();
    for (const dicomio::PhaseEntry& phase : series.phases)
        labels.push_back(phase.label);
    return labels;
}

Json seriesJson(const SeriesEntry& series) {
    Json json;
    json["uid"] = series.seriesUid;
    json["modality"] = series.modality;
    json["kind"] = series.kind;
    json["description"] = series.description;
    json["images"] = series.imageCount;
    json["phases"] = phasesJson(series);
    json["spacing_mm"] = nullptr;
    if (series.spacingMm)
        json["spacing_mm"] = {series.spacingMm->x(), series.spacingMm->y(), series.spacingMm->z()};
    json["tilt_deg"] = series.tiltDeg ? Json(*series.tiltDeg) : Json(nullptr);
    json["status"] = statusName(series.status);
    json["messages"] = messagesJson(series);
    json["measurable"] = series.measurable;
    json["phase_labels"] = phaseLabelsJson(series);
    json["study_uid"] = series.studyUid;
    json["frame_of_reference_uid"] = series.frameOfReferenceUid;
    json["patient"] = {{"id", series.patientId}, {"name", series.patientName}};
    return json;
}

std::string counted(std::size_t count, const std::string& one, const std::string& many) {
    return std::to_string(count) + " " + (count == 1 ? one : many);
}

std::string heading(const SeriesEntry& series) {
    std::string text = (series.modality.empty() ? "--" : series.modality) + "  ";
    text += series.description.empty() ? "(no description)" : "\"" + series.description + "\"";
    text += "  " + series.kind + ", " +
            counted(static_cast<std::size_t>(std::max(series.imageCount, 0)), "image", "images");
    if (series.phases.size() > 1) text += " in " + std::to_string(series.phases.size()) + " phases";
    if (series.spacingMm) {
        char spacing[96];
        std::snprintf(spacing, sizeof spacing, ", %.3f x %.3f x %.3f mm", series.spacingMm->x(),
                      series.spacingMm->y(), series.spacingMm->z());
        text += spacing;
    }
    return text;
}

std::string seriesListing(const SeriesEntry& series) {
    std::string text =
        heading(series) + "\n    patient: " + (series.patientName.empty() ? "(no name)" : series.patientName);
    if (!series.patientId.empty()) text += " (" + series.patientId + ")";
    text += "\n    series:  " + series.seriesUid + "\n";
    const bool gated =
        series.phases.size() > 1 || (series.phases.size() == 1 && series.phases.front().percent);
    for (std::size_t i = 0; gated && i < series.phases.size(); ++i)
        text += (i == 0 ? "    phases:  " : ", ") + series.phases[i].label +
                (i + 1 == series.phases.size() ? "\n" : "");
    text += "    status:  " + statusName(series.status) + "\n";
    for (const core::Notice& message : series.messages)
        text += "      [" + message.code + "] " + message.text + "\n";
    return text;
}

} // namespace

std::string indexJson(const SeriesIndex& index) {
    Json json;
    json["format"] = "ostium-gauge/index/1";
    json["series"] = Json::array();
    for (const SeriesEntry& series : index.series)
        json["series"].push_back(seriesJson(series));
    json["skipped"] = Json::array();
    for (const dicomio::SkippedFile& skipped : index.skipped)
        json["skipped"].push_back({{"file", skipped.file.string()}, {"reason", skipped.reason}});
    // A file name need not be UTF-8; what is not becomes U+FFFD.
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

std::string indexListing(const SeriesIndex& index) {
    std::string text = counted(index.series.size(), "series", "series") + ", " +
                       counted(index.skipped.size(), "file skipped", "files skipped") + ".\n";
    for (const SeriesEntry& series : index.series)
        text += "\n" + seriesListing(series);
    if (!index.skipped.empty()) text += "\nSkipped:\n";
    for (std::size_t i = 0; i < std::min(index.skipped.size(), kShownSkipped); ++i)
        text += "    " + index.skipped[i].file.string() + ": " + index.skipped[i].reason + "\n";
    if (index.skipped.size() > kShownSkipped)
        text +=
            "    and " + std::to_string(index.skipped.size() - kShownSkipped) + " more; --json lists all.\n";
    return text;
}

std::string whyUnusable(const SeriesIndex& index, const std::string& folder) {
    constexpr std::size_t kShown = 3;
    if (std::any_of(index.series.begin(), index.series.end(),
                    [](const SeriesEntry& s) { return s.status != SeriesStatus::Refused; }))
        return {};
    std::string why = "Nothing in " + folder + " can be used: " + std::to_string(index.series.size()) +
                      " series were refused and " + counted(index.skipped.size(), "file was", "files were") +
                      " skipped.";
    std::size_t shown = 0;
    for (const SeriesEntry& series : index.series)
        if (!series.messages.empty() && shown++ < kShown) why += " " + series.messages.front().text;
    for (const dicomio::SkippedFile& skipped : index.skipped)
        if (index.series.empty() && shown++ < kShown)
            why += " " + skipped.file.string() + ": " + skipped.reason;
    return why;
}

} // namespace gauge::app
