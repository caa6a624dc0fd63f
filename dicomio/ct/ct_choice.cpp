#include "dicomio/ct/ct_choice.h"

#include <algorithm>
#include <set>

namespace gauge::dicomio {
namespace {

using core::ErrorCode;
using core::failure;
using core::Result;

constexpr double kBestPercent = 45.0; // the appendage is largest there, see the measuring part's sources

bool isCt(const SeriesEntry& series) {
    return series.kind == "ct" || series.kind == "ct-enhanced";
}

std::size_t mostImages(const SeriesEntry& series) {
    std::size_t images = 0;
    for (const PhaseEntry& phase : series.phases)
        images = std::max(images, phase.images.size());
    return images;
}

std::string inWords(const SeriesEntry& series) {
    return "series " + series.seriesUid + " (" +
           (series.description.empty() ? std::string("no description") : "\"" + series.description + "\"") +
           ", patient " + (series.patientName.empty() ? std::string("without a name") : series.patientName) +
           ", ID " + (series.patientId.empty() ? std::string("none") : series.patientId) +
           (series.acquired ? ", taken " + iso(*series.acquired) : std::string()) + ", " +
           std::to_string(series.imageCount) + " images)";
}

tl::unexpected<core::Error> choiceNeeded(const std::string& why,
                                         const std::vector<const SeriesEntry*>& candidates) {
    std::string message = why + " They are never mixed, so one must be chosen:";
    for (std::size_t i = 0; i < candidates.size(); ++i)
        message += (i == 0 ? " " : "; ") + inWords(*candidates[i]);
    return failure(ErrorCode::InvalidArgument, message + ".");
}

/// Refuses where choosing the largest would choose between patients, or between frames of reference.
Result<void> checkOneWhole(const std::vector<const SeriesEntry*>& candidates) {
    std::set<std::string> patients, frames, uids;
    for (const SeriesEntry* series : candidates) {
        patients.insert(patientKey(*series));
        frames.insert(series->frameOfReferenceUid);
        uids.insert(series->seriesUid);
    }
    if (patients.size() > 1)
        return choiceNeeded("The folder holds CT series of " + std::to_string(patients.size()) +
                                (uids.size() == 1 ? " patients under one series UID." : " patients."),
                            candidates);
    if (frames.size() > 1)
        return choiceNeeded("The folder holds CT series of one patient in " + std::to_string(frames.size()) +
                                " frames of reference (" + describe(tags::FrameOfReferenceUid) +
                                "): a point in one is not the same place in another.",
                            candidates);
    return {};
}

tl::unexpected<core::Error> noSuchSeries(const std::optional<std::string>& seriesUid,
                                         const std::optional<std::string>& patientId,
                                         const std::string& refusal) {
    const std::string ofPatient = patientId ? " of patient " + *patientId : "";
    if (seriesUid)
        return failure(ErrorCode::NotFound,
                       refusal.empty() ? "The folder holds no series " + *seriesUid + ofPatient + "."
                                       : "Series " + *seriesUid + " cannot be measured. " + refusal,
                       {{"series", *seriesUid}});
    if (patientId)
        return failure(ErrorCode::NotFound, "The folder holds no CT series" + ofPatient +
                                                " that can be measured." +
                                                (refusal.empty() ? "" : " " + refusal));
    return failure(ErrorCode::NothingUsable, "The folder holds no CT series that can be measured." +
                                                 (refusal.empty() ? "" : " " + refusal));
}

} // namespace

Result<const SeriesEntry*> chooseCtSeries(const SeriesIndex& index,
                                          const std::optional<std::string>& seriesUid,
                                          const std::optional<std::string>& patientId) {
    std::vector<const SeriesEntry*> candidates;
    std::string refusal;
    for (const SeriesEntry& series : index.series) {
        if (seriesUid && series.seriesUid != *seriesUid) continue;
        if (patientId && series.patientId != *patientId) continue;
        if (series.measurable && isCt(series))
            candidates.push_back(&series);
        else if (refusal.empty() && (seriesUid || series.modality == "CT"))
            refusal = series.messages.empty() ? "It is no CT series." : series.messages.front().text;
    }
    if (candidates.empty()) return noSuchSeries(seriesUid, patientId, refusal);
    if (auto whole = checkOneWhole(candidates); !whole) return tl::make_unexpected(whole.error());
    return *std::max_element(
        candidates.begin(), candidates.end(),
        [](const SeriesEntry* a, const SeriesEntry* b) { return mostImages(*a) < mostImages(*b); });
}

std::vector<core::PhaseInfo> phaseInfos(const SeriesEntry& series) {
    std::vector<core::PhaseInfo> infos;
    for (const PhaseEntry& phase : series.phases)
        infos.push_back({phase.percent, phase.triggerMs, phase.beatMs, phase.label, phase.bytes});
    return infos;
}

Result<core::PhaseChoice> choosePhase(const SeriesEntry& series, const PhaseWish& wish) {
    if (wish.percent && wish.delayMs)
        return failure(ErrorCode::InvalidArgument,
                       "Cannot choose a phase both by percent and by milliseconds.");
    const auto infos = phaseInfos(series);
    auto nearest = wish.delayMs ? core::nearestByDelay(infos, *wish.delayMs)
                                : core::nearestByPercent(infos, wish.percent.value_or(kBestPercent));
    const bool wished = wish.percent || wish.delayMs;
    if (nearest) {
        if (!wished && series.phases[nearest->phase].percent)
            nearest->words.clear(); // 45 % was our wish, not theirs
        return nearest;
    }
    if (nearest.error().code != ErrorCode::NotFound) return nearest;
    if (wished || series.phases.empty())
        return failure(ErrorCode::NotFound,
                       "Series " + series.seriesUid + " does not say at which " +
                           (wish.delayMs ? "time after the R wave" : "percent of the heart cycle") +
                           " its images were taken, so no phase can be chosen by " +
                           (wish.delayMs ? "milliseconds." : "percent."),
                       {{"series", series.seriesUid}});
    const auto most = std::max_element(
        series.phases.begin(), series.phases.end(),
        [](const PhaseEntry& a, const PhaseEntry& b) { return a.images.size() < b.images.size(); });
    return core::PhaseChoice{static_cast<std::size_t>(most - series.phases.begin()), {}};
}

Result<std::size_t> choosePhase(const SeriesEntry& series, std::optional<double> percent) {
    const auto choice = choosePhase(series, PhaseWish{percent, std::nullopt});
    if (!choice) return tl::make_unexpected(choice.error());
    return choice->phase;
}

} // namespace gauge::dicomio
