#include "app/document/propose_evidence.h"

#include "dicomio/index/picture_needs.h"

namespace gauge::app {
namespace {

using dicomio::SeriesEntry;
using dicomio::SeriesStatus;

bool isUsable(const SeriesEntry& series) {
    return series.status == SeriesStatus::Ok || series.status == SeriesStatus::Notice;
}

bool isCt(const SeriesEntry& series) {
    return series.kind == "ct" || series.kind == "ct-enhanced";
}

bool isVolume(const dicomio::PictureFacts& picture) {
    return picture.volumeSpacingMm || !picture.moments.empty() || picture.volumeError;
}

core::EvidenceKind kindOf(const SeriesEntry& series, const dicomio::PictureFacts& picture) {
    if (series.kind == "x-ray") return core::EvidenceKind::Fluoroscopy;
    if (isVolume(picture)) return core::EvidenceKind::EchoVolume;
    return dicomio::isVelocityOnly(picture) ? core::EvidenceKind::Doppler : core::EvidenceKind::EchoCine;
}

/// What all evidence of a series has in common.
ProposedEvidence common(const SeriesEntry& series) {
    ProposedEvidence proposed;
    core::Evidence& e = proposed.evidence;
    e.seriesUid = series.seriesUid;
    e.description = series.description;
    if (series.acquired) e.acquired = dicomio::iso(*series.acquired);
    e.stage = series.stage.stage.value_or(series.stage.duringProcedure && !isCt(series) ? core::Stage::BeforeRepair
                                                                                        : core::Stage::BeforeProcedure);
    proposed.stageIsGuess = !series.stage.stage;
    proposed.stageReason = series.stage.reason;
    return proposed;
}

void addPictures(const SeriesEntry& series, std::vector<ProposedEvidence>& all) {
    for (const dicomio::PictureFacts& picture : series.pictures) {
        ProposedEvidence proposed = common(series);
        core::Evidence& e = proposed.evidence;
        e.kind = kindOf(series, picture);
        if (e.kind == core::EvidenceKind::EchoVolume) {
            proposed.id = series.seriesUid;
            all.push_back(std::move(proposed));
            return;
        }
        proposed.id = e.sopInstanceUid = picture.sopInstanceUid;
        e.probeAngleDeg = picture.angleDeg;
        all.push_back(std::move(proposed));
    }
}

} // namespace

std::vector<ProposedEvidence> proposedEvidence(const dicomio::SeriesIndex& index, const std::string& patientKey) {
    std::vector<ProposedEvidence> all;
    for (const SeriesEntry& series : index.series) {
        if (!isUsable(series) || dicomio::patientKey(series) != patientKey) continue;
        if (isCt(series) && series.measurable) {
            ProposedEvidence proposed = common(series);
            proposed.id = series.seriesUid;
            proposed.evidence.kind = core::EvidenceKind::Ct;
            all.push_back(std::move(proposed));
        } else if (series.kind == "x-ray" || !series.pictures.empty()) {
            addPictures(series, all);
        }
    }
    return all;
}

void proposeEvidence(CaseDocument& document, const dicomio::SeriesIndex& index, const std::string& patientKey) {
    for (ProposedEvidence& proposed : proposedEvidence(index, patientKey)) {
        if (proposed.id.empty() || document.record().evidence.contains(proposed.id)) continue;
        core::Entry<core::Evidence> entry;
        entry.content = std::move(proposed.evidence);
        entry.revision = document.nextRevision();
        document.apply(core::SetEntry<core::Evidence>{std::move(proposed.id), std::move(entry)});
    }
}

std::optional<std::size_t> seriesOf(const dicomio::SeriesIndex& index, const core::Evidence& evidence) {
    for (std::size_t i = 0; i < index.series.size(); ++i) {
        const SeriesEntry& series = index.series[i];
        if (series.seriesUid != evidence.seriesUid) continue;
        if (evidence.sopInstanceUid.empty()) return i;
        for (const auto& picture : series.pictures)
            if (picture.sopInstanceUid == evidence.sopInstanceUid) return i;
    }
    return std::nullopt;
}

std::optional<std::filesystem::path> fileOf(const dicomio::SeriesIndex& index, const core::Evidence& evidence) {
    const auto series = seriesOf(index, evidence);
    if (!series) return std::nullopt;
    for (const dicomio::PhaseEntry& phase : index.series[*series].phases)
        for (const dicomio::ImageReference& image : phase.images)
            if (evidence.sopInstanceUid.empty() || image.sopInstanceUid == evidence.sopInstanceUid) return image.file;
    return std::nullopt;
}

} // namespace gauge::app
