#include "app/document/septum_recorder.h"

#include "app/document/computed_again.h"
#include "core/record/septum_values.h"

#include <QTimer>
#include <algorithm>

namespace gauge::app {
SeptumRecorder::SeptumRecorder(CaseDocument& document, std::function<Source()> source)
    : m_document(document), m_source(std::move(source)) {
    connect(&document, &CaseDocument::changed, this, [this](CaseDocument::Part part) {
        using Part = CaseDocument::Part;
        if (part == Part::Septum || part == Part::Images || part == Part::Everything) refreshSoon();
    });
}

void SeptumRecorder::refreshSoon() {
    if (m_waiting) return;
    m_waiting = true;
    QTimer::singleShot(0, this, &SeptumRecorder::refresh);
}

void SeptumRecorder::refresh() {
    m_waiting = false;
    const core::CaseRecord& record = m_document.record();
    std::vector<core::RecordedValue> present;
    std::copy_if(record.values.begin(), record.values.end(), std::back_inserter(present),
                 [](const auto& value) { return value.group == core::kSeptumValues; });
    if (present.empty() && (!record.septumPlan || !record.septumPlan->content.crossing)) return;
    const Source source = m_source();
    if (!source.ready) return;
    auto values = core::septumValues(record, source.measurement, std::make_shared<const core::Provenance>(source.provenance));
    if (std::equal(values.begin(), values.end(), present.begin(), present.end(), sameButForAuthorAndTime)) return;
    m_document.apply(core::SetValues{std::move(values), std::string(core::kSeptumValues)});
}

} // namespace gauge::app
