#include "sample-data/case/sample_case.h"

#include "sample-data/case/heart.h"
#include "sample-data/case/json_vector.h"

#include <nlohmann/json.hpp>

#include <array>

namespace gauge::sample_case {
namespace {

using nlohmann::json;

constexpr std::string_view kFormat = "ostium-gauge/sample-case/1";

void setImaging(SamplePhase& phase, const json& given, const CtSeries& series, std::size_t index) {
    const json& imaging = given.at("imaging");
    const auto size = imaging.at("size").get<std::array<int, 3>>();
    phase.grid.size = {size[0], size[1], size[2]};
    phase.grid.spacingMm = vectorFrom(imaging.at("spacing_mm"));
    const Eigen::Vector3d middle =
        vectorFrom(given.at("patient").at("heart_centre_lps_mm")) + vectorFrom(imaging.at("centre_from_heart_mm"));
    phase.grid.firstVoxelMm =
        middle - 0.5 * ((phase.grid.size.array() - 1).cast<double>() * phase.grid.spacingMm.array()).matrix();
    phase.imaging.blurFwhmMm = imaging.at("blur_fwhm_mm").get<double>();
    phase.imaging.noiseSdHu = imaging.at("noise_sd_hu").get<double>();
    phase.imaging.noiseGrainFwhmMm = imaging.at("noise_grain_fwhm_mm").get<double>();
    phase.imaging.noiseSeed = imaging.at("noise_seed").get<std::uint64_t>() + index;
    phase.imaging.frameOfReferenceUid = uidFrom(series.uidText + "/frame of reference");
}

core::Result<SamplePhase> buildPhase(const json& given, const json& phaseGiven, const CtSeries& series,
                                     std::size_t index) {
    const Breathing breath{phaseGiven.at("appendage_width").get<double>(),
                           phaseGiven.at("appendage_length").get<double>(),
                           phaseGiven.at("atrium").get<double>(), phaseGiven.at("ventricle").get<double>()};
    SamplePhase phase;
    phase.percent = phaseGiven.at("percent").get<double>();
    const Heart heart = buildHeart(given, breath);
    phase.scene = heart.scene;
    phase.marks = heart.marks;
    phase.ridgeCrest = heart.ridgeCrest;
    phase.veinGapMm = heart.veinGapMm;
    const auto ostium = trueOstium(phase.scene, phase.marks.circumflex, phase.marks.ridge);
    if (!ostium || ostium->section.metrics.longestDiameterMm > heart.widestMm)
        return core::failure(core::ErrorCode::InvalidArgument,
                             "Cannot build the sample case: at phase " + std::to_string(phase.percent) +
                                 " % the section through ridge and circumflex artery opens into the atrium.");
    phase.ostium = *ostium;
    setImaging(phase, given, series, index);
    return phase;
}

CtSeries seriesOf(const json& given) {
    CtSeries series;
    const json &patient = given.at("patient"), &study = given.at("study");
    series.patientName = patient.at("name").get<std::string>();
    series.patientId = patient.at("id").get<std::string>();
    series.birthDate = patient.at("birth_date").get<std::string>();
    series.sex = patient.at("sex").get<std::string>();
    series.studyDescription = study.at("description").get<std::string>();
    series.seriesDescription = study.at("series_description").get<std::string>();
    series.date = study.at("date").get<std::string>();
    series.time = study.at("time").get<std::string>();
    series.heartRatePerMin = study.at("heart_rate_per_min").get<double>();
    series.uidText = "ostium gauge sample case " + series.patientId + " " + series.date + series.time;
    return series;
}

ImageFacts factsOf(const CtSeries& series) {
    ImageFacts facts;
    facts.studyText = series.uidText;
    facts.patientName = series.patientName;
    facts.patientId = series.patientId;
    facts.birthDate = series.birthDate;
    facts.sex = series.sex;
    facts.comments = series.comments;
    return facts;
}

} // namespace

core::Result<SampleCase> readSampleCase(std::string_view description) {
    try {
        const auto parsed = std::make_shared<const json>(json::parse(description));
        const json& given = *parsed;
        if (const auto format = given.at("format").get<std::string>(); format != kFormat)
            return core::failure(core::ErrorCode::InvalidArgument,
                                 "Cannot read the sample case: its format is \"" + format + "\" where \"" +
                                     std::string(kFormat) + "\" is needed.");
        SampleCase sample;
        sample.about = given.at("about").get<std::string>();
        sample.story = given.at("patient").at("story").get<std::string>();
        sample.series = seriesOf(given);
        sample.landingDepthsMm = given.at("landing_depths_mm").get<std::vector<double>>();
        for (const json& phaseGiven : given.at("phases")) {
            auto phase = buildPhase(given, phaseGiven, sample.series, sample.phases.size());
            if (!phase) return tl::unexpected(phase.error());
            sample.phases.push_back(*std::move(phase));
        }
        if (given.contains("pressure")) {
            auto procedure = readProcedure(parsed, sample.phases, factsOf(sample.series));
            if (!procedure) return tl::unexpected(procedure.error());
            sample.procedure = *std::move(procedure);
        }
        return sample;
    } catch (const json::exception& problem) {
        return core::failure(core::ErrorCode::InvalidArgument,
                             std::string("Cannot read the sample case: ") + problem.what() + ".");
    }
}

} // namespace gauge::sample_case
