#include "app/document/picture_drawings.h"

#include "app/document/picture_scale.h"
#include "core/record/picture_readings.h"

#include <algorithm>

namespace gauge::app {

std::optional<core::Result<core::HandScale>> scaleByHand(const core::CaseRecord& record, const std::string& sopInstanceUid,
                                                         const EvidenceCine& cine) {
    const auto found = record.scales.find(sopInstanceUid);
    if (found == record.scales.end()) return std::nullopt;
    return cine.handScale(found->second.content);
}

core::PictureGround groundOf(const CineData& cine, int frame, const std::optional<core::Result<core::HandScale>>& byHand) {
    core::PictureGround ground;
    ground.regions = cine.regions;
    ground.pixelAspect = cine.pixelAspect;
    ground.whole = scaleOfFile(cine, frame);
    if (cine.xray) ground.noScale = cine.xray->facts.scaleText;
    if (byHand && *byHand) ground.hand = **byHand;
    if (byHand && !*byHand) ground.handFault = byHand->error();
    return ground;
}

PictureDrawings::PictureDrawings(Session& session, EvidenceImages& images) : m_session(session), m_images(images) {
    session.drawings().addFinder(this, [this](const core::Drawing& drawing) { return sourceOf(drawing); });
    const auto measure = [this] { m_session.drawings().refresh(); };
    connect(&images, &EvidenceImages::opened, this, measure);
    connect(&session, &Session::imagesChanged, this, measure); // of an opened case: now they can be read
}

bool PictureDrawings::isWaiting() const {
    const auto& drawings = m_session.record().drawings;
    return std::any_of(drawings.begin(), drawings.end(), [&](const auto& item) {
        if (!std::holds_alternative<core::PictureSite>(item.second.content.site) || !m_session.drawings().waits(item.first))
            return false;
        const auto cine = m_images.openCine(item.second.content.evidence);
        return cine && !cine->data() && !cine->failure();
    });
}

std::optional<DrawingRecorder::Source> PictureDrawings::sourceOf(const core::Drawing& drawing) const {
    const auto* site = std::get_if<core::PictureSite>(&drawing.site);
    const core::CaseRecord& record = m_session.record();
    const auto evidence = site ? record.evidence.find(drawing.evidence) : record.evidence.end();
    if (evidence == record.evidence.end()) return std::nullopt;
    const auto cine = m_images.cine(drawing.evidence);
    if (!cine || !cine->data()) return std::nullopt; // asked again when it is open
    DrawingRecorder::Source source{groundOf(*cine->data(), site->frame, scaleByHand(record, site->sopInstanceUid, *cine)), {}};
    const core::Evidence& content = evidence->second.content;
    source.provenance.sopInstanceUids = {site->sopInstanceUid};
    source.provenance.frame = site->frame;
    source.provenance.phase = std::string(core::words(content.phase));
    source.provenance.state = core::stateWords(record, content.kind, core::momentKey(content));
    return source;
}

} // namespace gauge::app
