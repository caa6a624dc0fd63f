#include "app/document/drawing_recorder.h"

#include <algorithm>
#include <set>

namespace gauge::app {
namespace {

constexpr std::string_view kGroupPrefix = core::kEntryName<core::Drawing>;

/// What the drawing's values would rest on, apart from the images and planes of CT, whose change the person confirms.
std::vector<core::InputRevision> decisive(const core::CaseRecord& record, const std::string& id, const core::Drawing& drawing) {
    std::vector<core::InputRevision> inputs;
    const auto use = [&](std::string input) {
        const core::Revision revision = core::revisionOf(record, input);
        inputs.push_back({std::move(input), revision});
    };
    use(core::entryInput<core::Drawing>(id));
    if (const auto* picture = std::get_if<core::PictureSite>(&drawing.site))
        use(core::entryInput<core::PictureScale>(picture->sopInstanceUid));
    return inputs;
}

bool isMeasured(const core::CaseRecord& record, const std::string& id, const core::Drawing& drawing) {
    const std::string group = core::entryInput<core::Drawing>(id);
    const auto value = std::find_if(record.values.begin(), record.values.end(),
                                    [&](const core::RecordedValue& one) { return one.group == group; });
    if (value == record.values.end()) return false;
    const auto wanted = decisive(record, id, drawing);
    return std::all_of(wanted.begin(), wanted.end(), [&](const core::InputRevision& input) {
        return std::find(value->inputs.begin(), value->inputs.end(), input) != value->inputs.end();
    });
}

} // namespace

DrawingRecorder::DrawingRecorder(CaseDocument& document) : m_document(document) {
    connect(&document, &CaseDocument::changed, this, [this](CaseDocument::Part part) {
        using Part = CaseDocument::Part;
        if (part == Part::Everything) m_failures.clear(); // another case, with the same ids
        if (part == Part::Drawings || part == Part::Scales || part == Part::Everything) refresh();
    });
}

void DrawingRecorder::addFinder(QObject* owner, Finder find) {
    m_finders.push_back({owner, std::move(find)});
}

std::optional<DrawingRecorder::Source> DrawingRecorder::sourceOf(const core::Drawing& drawing) const {
    for (const Owned& one : m_finders)
        if (one.owner)
            if (auto source = one.find(drawing)) return source;
    return std::nullopt;
}

void DrawingRecorder::refresh() {
    if (m_busy) return;
    m_busy = true;
    dropValuesOfRemoved();
    const auto drawings = m_document.record().drawings; // values are recorded meanwhile
    for (const auto& [id, entry] : drawings)
        if (waits(id)) measure(id, entry.content);
    m_busy = false;
    emit recorded();
}

void DrawingRecorder::dropValuesOfRemoved() {
    std::set<std::string> gone;
    for (const auto& value : m_document.record().values)
        if (value.group.starts_with(kGroupPrefix) &&
            !m_document.record().drawings.contains(value.group.substr(kGroupPrefix.size())))
            gone.insert(value.group);
    for (const auto& group : gone)
        m_document.apply(core::SetValues{{}, group});
    std::erase_if(m_failures, [&](const auto& one) { return !m_document.record().drawings.contains(one.first); });
}

void DrawingRecorder::measure(const std::string& id, const core::Drawing& drawing) {
    auto source = sourceOf(drawing);
    if (!source) return; // not loaded: the values of before stay, stale
    source->provenance.author = currentAuthor().toStdString();
    source->provenance.time = currentTime().toStdString();
    auto values = core::drawingValues(m_document.record(), id, source->ground,
                                      std::make_shared<const core::Provenance>(std::move(source->provenance)));
    if (values)
        m_failures.erase(id);
    else
        m_failures.insert_or_assign(id, Failure{values.error(), decisive(m_document.record(), id, drawing)});
    core::SetValues edit{values ? std::move(*values) : std::vector<core::RecordedValue>{}, core::entryInput<core::Drawing>(id)};
    if (!core::changesNothing(m_document.record(), core::Edit(edit))) m_document.apply(std::move(edit));
}

const core::Error* DrawingRecorder::failureOf(const std::string& id) const {
    const auto found = m_failures.find(id);
    return found == m_failures.end() ? nullptr : &found->second.error;
}

bool DrawingRecorder::waits(const std::string& id) const {
    const auto drawing = m_document.record().drawings.find(id);
    if (drawing == m_document.record().drawings.end() || isMeasured(m_document.record(), id, drawing->second.content))
        return false;
    const auto failed = m_failures.find(id);
    return failed == m_failures.end() || failed->second.inputs != decisive(m_document.record(), id, drawing->second.content);
}

} // namespace gauge::app
