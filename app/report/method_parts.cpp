// Pictures, and how everything was measured: what somebody needs who wants to check it.
#include "app/document/answers.h"
#include "app/format/terms.h"
#include "app/report/report_parts.h"

#include <QCoreApplication>
#include <set>

namespace gauge::app {
namespace {

using Weight = ReportParagraph::Weight;

QString drawingName(const core::CaseRecord& record, const core::RecordedValue& value) {
    constexpr std::string_view prefix = core::kEntryName<core::Drawing>;
    if (!std::string_view(value.group).starts_with(prefix)) return {};
    const auto found = record.drawings.find(std::string_view(value.group).substr(prefix.size()));
    return found == record.drawings.end() ? QString() : QString::fromStdString(found->second.content.label);
}

/// Everything in the record, one line a value.
ReportTable allValues(const core::CaseRecord& record) {
    ReportTable table;
    table.header = {QCoreApplication::translate("Report", "Quantity"), QCoreApplication::translate("Report", "Value"),
                    QCoreApplication::translate("Report", "Uncertainty from"), QCoreApplication::translate("Report", "How")};
    table.numeric = {1};
    std::string group;
    for (const core::RecordedValue& value : record.values) {
        if (value.group != group) {
            group = value.group;
            const QString label = drawingName(record, value);
            table.headings.push_back(table.rows.size());
            table.rows.push_back({label.isEmpty() ? QString::fromStdString(group) : QString::fromStdString(group) + QStringLiteral(": ") + label});
        }
        const Unit unit = unitOf(value.unit);
        QString what = placeName(value.id) + QStringLiteral(": ") + metricName(value.id);
        if (core::isStale(record, value)) what += QCoreApplication::translate("Report", " (stale: its plane or mark has moved since)");
        table.rows.push_back({what, estimate(value.estimate, unit), uncertaintyParts(value.estimate, unit),
                              QString::fromStdString(value.estimate.method)});
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
        assumed << QString::fromStdString(notice.text);
    if (const core::SizingAnswer* a = source.answers->sizing())
        for (const core::Notice& notice : a->notices)
            assumed << QString::fromStdString(notice.text);
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
