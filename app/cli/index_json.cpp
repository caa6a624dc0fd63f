// The JSON document of the verb `index`.
#include "app/cli/index_report.h"

#include <algorithm>
#include <nlohmann/json.hpp>

namespace gauge::app {
namespace {

using dicomio::SeriesEntry;
using dicomio::SeriesIndex;
using Json = nlohmann::ordered_json;

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

Json pair(const Eigen::Vector2d& v) {
    return {v.x(), v.y()};
}

/// The four kinds of the format and "other"; motion mode is one of the others.
std::string regionKind(core::EchoRegionKind kind) {
    return kind == core::EchoRegionKind::MMode ? "other" : std::string(core::words(kind));
}

Json regionJson(const core::EchoRegion& region, int image) {
    Json json;
    json["kind"] = regionKind(region.kind);
    json["min_px"] = {region.box.minX, region.box.minY};
    json["max_px"] = {region.box.maxX, region.box.maxY};
    json["units"] = {core::words(region.x.unit), core::words(region.y.unit)};
    json["delta"] = {region.x.delta, region.y.delta};
    json["mm_per_pixel"] = region.scale ? pair(region.scale->mmPerPixel) : Json(nullptr);
    json["reference_px"] = region.x.referencePixel && region.y.referencePixel
                               ? Json{*region.x.referencePixel, *region.y.referencePixel}
                               : Json(nullptr);
    json["image"] = image;
    return json;
}

Json regionsJson(const SeriesEntry& series) {
    Json regions = Json::array();
    for (const dicomio::PictureFacts& picture : series.pictures)
        for (const core::EchoRegion& region : picture.regions)
            regions.push_back(regionJson(region, picture.firstImage));
    return regions.empty() ? Json(nullptr) : regions;
}

Json scaleJson(const std::optional<dicomio::ListedScale>& scale) {
    if (!scale) return nullptr;
    return {{"source", scale->source},
            {"mm_per_pixel", pair(scale->mmPerPixel)},
            {"standard_uncertainty_percent",
             scale->relativeUncertainty ? Json(100.0 * *scale->relativeUncertainty) : Json(nullptr)}};
}

/// The scale of all its pictures; none when they differ, so that no picture gets another's.
std::optional<dicomio::ListedScale> commonScale(const SeriesEntry& series) {
    if (series.pictures.empty())
        return series.measurable && series.spacingMm
                   ? std::optional(
                         dicomio::ListedScale{"pixel-spacing", series.spacingMm->head<2>(), std::nullopt})
                   : std::nullopt;
    const auto& first = series.pictures.front().scale;
    const bool same = std::all_of(series.pictures.begin(), series.pictures.end(),
                                  [&](const dicomio::PictureFacts& p) { return p.scale == first; });
    return same ? first : std::nullopt;
}

Json anglesJson(const SeriesEntry& series) {
    Json angles = Json::array();
    for (const dicomio::PictureFacts& picture : series.pictures)
        if (picture.angleDeg &&
            std::find(angles.begin(), angles.end(), Json(*picture.angleDeg)) == angles.end())
            angles.push_back(*picture.angleDeg);
    return angles.empty() ? Json(nullptr) : angles;
}

Json timesJson(const std::vector<double>& times) {
    return times.empty() ? Json(nullptr) : Json(times);
}

/// One value an image, each from the first frame of its own object; null when a cine among them tells none.
Json frameTimesJson(const SeriesEntry& series) {
    std::vector<double> times;
    bool told = false;
    for (const dicomio::PictureFacts& picture : series.pictures) {
        told = told || !picture.frameTimesMs.empty();
        if (!picture.frameTimesMs.empty())
            times.insert(times.end(), picture.frameTimesMs.begin(), picture.frameTimesMs.end());
        else if (picture.frames == 1)
            times.push_back(0.0); // a still
        else
            return nullptr;
    }
    return told ? timesJson(times) : Json(nullptr);
}

Json positionerJson(const std::optional<core::CArmAngles>& angles) {
    return angles ? Json{angles->primaryDeg, angles->secondaryDeg} : Json(nullptr);
}

/// Each object of an ultrasound or X-ray series by itself.
Json objectsJson(const SeriesEntry& series) {
    Json objects = Json::array();
    for (const dicomio::PictureFacts& picture : series.pictures) {
        Json json;
        json["sop_instance_uid"] = picture.sopInstanceUid;
        json["image"] = picture.firstImage;
        json["frames"] = picture.frames;
        json["scale"] = scaleJson(picture.scale);
        json["angle_deg"] = picture.angleDeg ? Json(*picture.angleDeg) : Json(nullptr);
        json["frame_times_ms"] = timesJson(picture.frameTimesMs);
        json["positioner_deg"] = positionerJson(picture.positioner);
        if (picture.positionerEnd) json["positioner_end_deg"] = positionerJson(picture.positionerEnd);
        objects.push_back(std::move(json));
    }
    return objects.empty() ? Json(nullptr) : objects;
}

void addPictureKeys(const SeriesEntry& series, Json& json) {
    json["regions"] = regionsJson(series);
    json["scale"] = scaleJson(commonScale(series));
    json["angles_deg"] = anglesJson(series);
    json["frame_times_ms"] = frameTimesJson(series);
    const bool any = !series.pictures.empty();
    json["positioner_deg"] = any ? positionerJson(series.pictures.front().positioner) : Json(nullptr);
    if (any && series.pictures.front().positionerEnd)
        json["positioner_end_deg"] = positionerJson(series.pictures.front().positionerEnd);
    json["objects"] = objectsJson(series);
}

void addCourseKeys(const SeriesEntry& series, Json& json) {
    json["patient_id"] = series.patientId;
    json["acquired"] = series.acquired ? Json(dicomio::iso(*series.acquired)) : Json(nullptr);
    json["proposed_stage"] = series.stage.stage ? Json(core::name(*series.stage.stage)) : Json(nullptr);
    json["during_procedure"] = series.stage.duringProcedure;
    json["stage_reason"] = series.stage.reason.empty() ? Json(nullptr) : Json(series.stage.reason);
}

/// Where in the beat each phase lies, by its delay after the R wave.
Json phaseDelaysJson(const SeriesEntry& series) {
    Json delays = Json::array();
    for (const dicomio::PhaseEntry& phase : series.phases)
        delays.push_back(phase.triggerMs ? Json(*phase.triggerMs) : Json(nullptr));
    return delays;
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
    json["phase_delays_ms"] = phaseDelaysJson(series);
    json["study_uid"] = series.studyUid;
    json["frame_of_reference_uid"] = series.frameOfReferenceUid;
    json["patient"] = {
        {"id", series.patientId}, {"issuer", series.issuerOfPatientId}, {"name", series.patientName}};
    addCourseKeys(series, json);
    addPictureKeys(series, json);
    return json;
}

Json noticesJson(const std::vector<core::Notice>& notices) {
    Json json = Json::array();
    for (const core::Notice& notice : notices)
        json.push_back({{"code", notice.code}, {"text", notice.text}});
    return json;
}

Json tablesJson(const SeriesIndex& index) {
    Json tables = Json::array();
    for (const dicomio::TableOfContents& table : index.tables)
        tables.push_back({{"file", table.file.string()}, {"listed", table.listed}, {"agrees", table.agrees}});
    return tables;
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
    json["tables_of_contents"] = tablesJson(index);
    json["notices"] = noticesJson(index.notices);
    // A file name need not be UTF-8; what is not becomes U+FFFD.
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

} // namespace gauge::app
