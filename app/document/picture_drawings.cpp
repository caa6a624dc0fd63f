#include "app/document/picture_drawings.h"

#include "core/record/picture_readings.h"

#include <algorithm>
#include <set>

namespace gauge::app {
namespace {

using Part = CaseDocument::Part;

const core::RecordedValue* valueOf(const core::CaseRecord& record, const std::string& group) {
    const auto found = std::find_if(record.values.begin(), record.values.end(),
                                    [&](const core::RecordedValue& value) { return value.group == group; });
    return found == record.values.end() ? nullptr : &*found;
}

} // namespace

core::Result<core::Estimate> pictureLength(const CineData& cine, int frame, const Eigen::Vector2d& from,
                                           const Eigen::Vector2d& to,
                                           const std::optional<core::Result<core::HandScale>>& byHand) {
    if (byHand && !*byHand) return tl::unexpected(byHand->error());
    const std::optional<core::HandScale> hand = byHand ? std::optional(**byHand) : std::nullopt;
    if (!cine.xray) return core::regionDistance(cine.regions, hand, from, to);
    if (hand) return core::planarDistance(from, to, hand->scale);
    if (const auto scale = scaleOfFile(cine, frame)) return core::planarDistance(from, to, *scale);
    return core::failure(core::ErrorCode::ScaleMissing, "Cannot measure on the X-ray frame: " + cine.xray->facts.scaleText +
                                                            " Calibrate it by hand.");
}

std::optional<core::Result<core::HandScale>> scaleByHand(const core::CaseRecord& record, const std::string& sopInstanceUid,
                                                         const CineData& cine) {
    const auto found = record.scales.find(sopInstanceUid);
    if (found == record.scales.end()) return std::nullopt;
    return handScale(found->second.content, cine);
}

PictureDrawings::PictureDrawings(Session& session, EvidenceImages& images) : m_session(session), m_images(images) {
    connect(&session.document(), &CaseDocument::changed, this, [this](Part part) {
        if (part == Part::Drawings || part == Part::Scales || part == Part::Everything) refresh();
    });
    connect(&images, &EvidenceImages::opened, this, &PictureDrawings::refresh);
    connect(&session, &Session::imagesChanged, this, &PictureDrawings::refresh); // of an opened case: now they can be read
}

bool PictureDrawings::isWaiting() const {
    const core::CaseRecord& record = m_session.record();
    return std::any_of(record.drawings.begin(), record.drawings.end(), [&](const auto& item) {
        const core::Drawing& drawing = item.second.content;
        if (!std::holds_alternative<core::PictureSite>(drawing.site) || drawing.kind != core::DrawingKind::Straight) return false;
        const core::RecordedValue* present = valueOf(record, core::entryInput<core::Drawing>(item.first));
        if ((present && !core::isStale(record, *present)) || m_failures.contains(item.first)) return false;
        const auto cine = m_images.openCine(drawing.evidence);
        return cine && !cine->data() && !cine->failure();
    });
}

void PictureDrawings::refresh() {
    if (m_busy) return;
    m_busy = true;
    const auto drawings = m_session.record().drawings; // a copy: measuring edits the record
    for (const auto& [id, entry] : drawings)
        if (std::holds_alternative<core::PictureSite>(entry.content.site) && entry.content.kind == core::DrawingKind::Straight)
            measure(id, entry.content);
    dropValuesOfRemoved();
    m_busy = false;
}

void PictureDrawings::measure(const std::string& id, const core::Drawing& drawing) {
    const core::CaseRecord& record = m_session.record();
    const std::string group = core::entryInput<core::Drawing>(id);
    const core::RecordedValue* present = valueOf(record, group);
    if (present && !core::isStale(record, *present)) return;
    const auto evidence = record.evidence.find(drawing.evidence);
    if (evidence == record.evidence.end() || drawing.points.size() != 2) return;
    const auto cine = m_images.cine(drawing.evidence);
    if (!cine || !cine->data()) return; // comes back when it is open
    const auto& site = std::get<core::PictureSite>(drawing.site);
    const auto length = pictureLength(*cine->data(), site.frame, drawing.points[0], drawing.points[1],
                                      scaleByHand(record, site.sopInstanceUid, *cine->data()));
    m_failures.erase(id);
    std::vector<core::RecordedValue> values;
    if (length) {
        core::Provenance provenance;
        provenance.sopInstanceUids = {site.sopInstanceUid};
        provenance.frame = site.frame;
        provenance.phase = std::string(core::words(evidence->second.content.phase));
        provenance.state = core::stateWords(record, evidence->second.content.kind, core::momentKey(evidence->second.content));
        provenance.author = currentAuthor().toStdString();
        provenance.time = currentTime().toStdString();
        core::RecordedValue& value = values.emplace_back();
        value.id = "length";
        value.group = group;
        value.unit = "mm";
        value.estimate = *length;
        for (const std::string& input : {group, core::entryInput<core::PictureScale>(site.sopInstanceUid)})
            value.inputs.push_back({input, core::revisionOf(record, input)});
        value.provenance = std::make_shared<const core::Provenance>(std::move(provenance));
    } else {
        m_failures.insert_or_assign(id, length.error());
        m_session.say(Message::Kind::Error, QString::fromStdString(length.error().message));
    }
    if (present || !values.empty()) m_session.document().apply(core::SetValues{std::move(values), group});
}

void PictureDrawings::dropValuesOfRemoved() {
    std::set<std::string> groups;
    for (const core::RecordedValue& value : m_session.record().values)
        if (value.group.starts_with(core::kEntryName<core::Drawing>) && core::revisionOf(m_session.record(), value.group) == 0)
            groups.insert(value.group);
    for (const std::string& group : groups)
        m_session.document().apply(core::SetValues{{}, group});
}

const core::Error* PictureDrawings::failureOf(const std::string& drawing) const {
    const auto found = m_failures.find(drawing);
    return found == m_failures.end() ? nullptr : &found->second;
}

} // namespace gauge::app
