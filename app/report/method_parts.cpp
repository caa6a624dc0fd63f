// Pictures, and how everything was measured: what somebody needs who wants to check it.
#include "app/document/answers.h"
#include "app/format/core_sentences.h"
#include "app/format/evidence_words.h"
#include "app/format/terms.h"
#include "app/report/report_parts.h"

#include <QCoreApplication>
#include <algorithm>
#include <optional>
#include <set>

namespace gauge::app {
namespace {

using Weight = ReportParagraph::Weight;

/// Whose values a group holds: "CT", "2D echo, baseline", "Measurement: neck at 45 degrees".
QString groupName(const core::CaseRecord& record, const std::string& group) {
    const std::string kind = group.substr(0, group.find('/'));
    const std::string of = group.size() > kind.size() ? group.substr(kind.size() + 1) : std::string();
    const QString rest = QString::fromStdString(of), moment = momentWords(record, of);
    if (kind == core::kCtValues) return modalityName(core::Modality::Ct);
    if (kind == "echo") return QCoreApplication::translate("Report", "2D echo, %1").arg(moment);
    if (kind == "echo-3d") return QCoreApplication::translate("Report", "3D echo, %1").arg(moment);
    if (kind == "fluoroscopy") return QCoreApplication::translate("Report", "Fluoroscopy, %1").arg(moment);
    if (kind == "drawing") {
        const auto found = record.drawings.find(of);
        const QString label = found == record.drawings.end() ? QString() : QString::fromStdString(found->second.content.label);
        return label.isEmpty() ? QCoreApplication::translate("Report", "Measurement %1").arg(rest)
                               : QCoreApplication::translate("Report", "Measurement %1: %2").arg(rest, label);
    }
    return QString::fromStdString(group);
}

/// That a longest diameter does not answer a chart that asks for another one needs no saying for each of them.
bool isAboutAnotherQuantity(const Answers& answers, const core::Notice& notice) {
    if (notice.code != "reading-without-weight" || notice.facts.empty()) return false;
    const std::size_t reading = std::stoul(notice.facts.front().value);
    const auto& observations = answers.sizingQuestion().observations;
    return reading < observations.size() && observations[reading].quantity != answers.sizing()->question.quantity;
}

/// Number of a drawing's group; none for other groups.
std::optional<int> drawingNumber(const std::string& group) {
    constexpr std::string_view kDrawing = "drawing/";
    if (!group.starts_with(kDrawing)) return std::nullopt;
    bool isNumber = false;
    const int number = QString::fromStdString(group.substr(kDrawing.size())).toInt(&isNumber);
    return isNumber ? std::optional(number) : std::nullopt;
}

/// As in the record, but measurement 2 before measurement 10.
std::vector<const core::RecordedValue*> inOrder(const core::CaseRecord& record) {
    std::vector<const core::RecordedValue*> all, drawings;
    for (const core::RecordedValue& value : record.values)
        (drawingNumber(value.group) ? drawings : all).push_back(&value);
    std::stable_sort(drawings.begin(), drawings.end(), [](const auto* a, const auto* b) {
        return *drawingNumber(a->group) < *drawingNumber(b->group);
    });
    all.insert(all.end(), drawings.begin(), drawings.end());
    return all;
}

/// Everything in the record, one line a value.
ReportTable allValues(const core::CaseRecord& record) {
    ReportTable table;
    table.header = {QCoreApplication::translate("Report", "Quantity"), QCoreApplication::translate("Report", "Value"),
                    QCoreApplication::translate("Report", "Uncertainty from"), QCoreApplication::translate("Report", "How")};
    table.numeric = {1};
    std::string group;
    for (const core::RecordedValue* one : inOrder(record)) {
        const core::RecordedValue& value = *one;
        if (value.group != group) {
            group = value.group;
            table.headings.push_back(table.rows.size());
            table.rows.push_back({groupName(record, group)});
        }
        const Unit unit = unitOf(value.unit);
        QString what = placeName(value.id) + QStringLiteral(": ") + metricName(value.id);
        if (core::isStale(record, value)) what += QCoreApplication::translate("Report", " (stale: its plane or mark has moved since)");
        table.rows.push_back({what, estimate(value.estimate, unit), uncertaintyParts(value.estimate, unit),
                              coreWords(value.estimate.method)});
    }
    return table;
}

} // namespace

ReportSection picturesPart(const CaseReportSource& source) {
    ReportSection section{QCoreApplication::translate("Report", "Pictures"), {}};
    if (!source.pictures.empty()) section.blocks.push_back(source.pictures);
    return section;
}

ReportSection methodPart(const CaseReportSource& source) {
    const core::CaseRecord& record = source.record();
    ReportSection section{QCoreApplication::translate("Report", "How it was measured"), {}};
    QStringList assumed;
    for (const core::Notice& notice : source.answers->readings().notices)
        assumed << sentence(notice);
    if (const core::SizingAnswer* a = source.answers->sizing())
        for (const core::Notice& notice : a->notices)
            if (!isAboutAnotherQuantity(*source.answers, notice)) assumed << sentence(notice);
    assumed.removeDuplicates();
    if (!assumed.isEmpty()) {
        section.blocks.push_back(ReportParagraph{QCoreApplication::translate("Report", "What was assumed"), Weight::Lead});
        section.blocks.push_back(ReportList{assumed});
    }
    if (!record.values.empty()) {
        section.blocks.push_back(ReportParagraph{QCoreApplication::translate("Report", "All values"), Weight::Lead});
        section.blocks.push_back(allValues(record));
    }
    std::set<std::string> series;
    if (record.images) series.insert(record.images->seriesUid);
    for (const auto& [id, entry] : record.evidence)
        series.insert(entry.content.seriesUid);
    series.erase(std::string());
    if (!series.empty()) {
        QStringList uids;
        for (const std::string& uid : series)
            uids << QString::fromStdString(uid);
        section.blocks.push_back(ReportParagraph{
            QCoreApplication::translate("Report", "Images, by Series Instance UID: %1").arg(uids.join(QStringLiteral(", "))), Weight::Soft});
    }
    return section;
}

} // namespace gauge::app
