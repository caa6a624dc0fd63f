#include "app/document/picture_values.h"

#include "app/document/computed_again.h"
#include "core/record/echo_values.h"
#include "core/record/fluoro_values.h"

#include <QTimer>
#include <algorithm>
#include <set>

namespace gauge::app {
namespace {

std::vector<core::RecordedValue> ofGroup(const core::CaseRecord& record, const std::string& group) {
    std::vector<core::RecordedValue> values;
    std::copy_if(record.values.begin(), record.values.end(), std::back_inserter(values),
                 [&](const auto& value) { return value.group == group; });
    return values;
}

bool isDrawnButNotMeasured(const core::CaseRecord& record, std::string_view input) {
    constexpr std::string_view prefix = core::kEntryName<core::Drawing>;
    return input.starts_with(prefix) && record.drawings.contains(input.substr(prefix.size())) &&
           ofGroup(record, std::string(input)).empty();
}

/// Whether values that cannot be computed anew stay as they are: while they are current, or while a drawing they come from waits
/// for its picture (of a case opened without its images, say). Values whose drawings are gone, or belong to another moment now, go.
bool stays(const core::CaseRecord& record, const std::vector<core::RecordedValue>& present) {
    return std::all_of(present.begin(), present.end(), [&](const core::RecordedValue& value) {
        return !core::isStale(record, value) || std::any_of(value.inputs.begin(), value.inputs.end(), [&](const auto& input) {
            return isDrawnButNotMeasured(record, input.id);
        });
    });
}

} // namespace

PictureValues::PictureValues(CaseDocument& document) : m_document(document) {
    connect(&document, &CaseDocument::changed, this, [this](CaseDocument::Part part) {
        using Part = CaseDocument::Part;
        constexpr std::array kParts{Part::Drawings, Part::Evidence, Part::Moments, Part::Scales, Part::Values, Part::Everything};
        if (m_waiting || m_busy || std::find(kParts.begin(), kParts.end(), part) == kParts.end()) return;
        m_waiting = true;
        QTimer::singleShot(0, this, &PictureValues::refresh);
    });
}

void PictureValues::refresh() {
    m_waiting = false;
    m_busy = true;
    refreshKind(core::EvidenceKind::EchoCine, core::kEchoValues);
    refreshKind(core::EvidenceKind::Fluoroscopy, core::kFluoroValues);
    m_busy = false;
}

void PictureValues::refreshKind(core::EvidenceKind kind, std::string_view prefix) {
    std::set<std::string> groups;
    for (const std::string& key : core::drawnMoments(m_document.record(), kind))
        groups.insert(std::string(prefix).append(key));
    // Groups of moments in which nothing is drawn any more.
    for (const core::RecordedValue& value : m_document.record().values)
        if (value.group.starts_with(prefix)) groups.insert(value.group);
    for (const std::string& group : groups) {
        const std::string key = group.substr(prefix.size());
        core::Provenance provenance;
        provenance.author = currentAuthor().toStdString();
        provenance.time = currentTime().toStdString();
        auto values = kind == core::EvidenceKind::EchoCine ? core::echoValues(m_document.record(), key, provenance)
                                                           : core::fluoroValues(m_document.record(), key, provenance);
        const auto present = ofGroup(m_document.record(), group);
        if (std::equal(values.begin(), values.end(), present.begin(), present.end(), sameButForAuthorAndTime)) continue;
        if (values.empty() && stays(m_document.record(), present)) continue;
        m_document.apply(core::SetValues{std::move(values), group});
    }
}

} // namespace gauge::app
