#include "app/library/case_facts.h"

#include <algorithm>

namespace gauge::app {
namespace {

/// YYYYMMDD of an ISO 8601 moment; empty for anything else.
QString dateOf(const std::string& iso) {
    QString digits = QString::fromStdString(iso).left(10).remove(QLatin1Char('-'));
    const bool isDate = digits.size() == 8 && std::all_of(digits.begin(), digits.end(), [](QChar c) { return c.isDigit(); });
    return isDate ? digits : QString();
}

} // namespace

CaseFacts factsOf(const core::CaseRecord& record) {
    CaseFacts facts;
    if (record.patient) {
        const core::Patient& patient = record.patient->content;
        facts.title = QString::fromStdString(patient.title);
        facts.patientName = QString::fromStdString(patient.name);
        facts.patientId = QString::fromStdString(patient.id);
        facts.birthDate = QString::fromStdString(patient.birthDate);
        for (const std::string& tag : patient.tags) facts.tags << QString::fromStdString(tag);
    }
    std::optional<core::Stage> latest;
    for (const auto& [id, evidence] : record.evidence) {
        facts.studyDate = std::max(facts.studyDate, dateOf(evidence.content.acquired));
        if (!latest || evidence.content.stage > *latest) latest = evidence.content.stage;
    }
    if (latest) {
        const std::string_view word = core::name(*latest);
        facts.stage = QString::fromUtf8(word.data(), static_cast<qsizetype>(word.size()));
    }
    return facts;
}

} // namespace gauge::app
