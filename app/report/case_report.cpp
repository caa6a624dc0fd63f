#include "app/report/case_report.h"

#include "app/format/words.h"
#include "app/models/comparison_model.h"
#include "app/report/report_parts.h"

#include <QCoreApplication>

namespace gauge::app {
namespace {

std::vector<ReportFact> facts(const CaseReportSource& source) {
    std::vector<ReportFact> all;
    const auto add = [&](const QString& label, const QString& value) {
        if (!value.isEmpty()) all.push_back({label, value});
    };
    if (source.namesHidden) {
        add(QCoreApplication::translate("Report", "Patient"), QCoreApplication::translate("Report", "names are hidden"));
    } else if (const auto& patient = source.record().patient) {
        const core::Patient& p = patient->content;
        add(QCoreApplication::translate("Report", "Patient"), personName(p.name));
        add(QCoreApplication::translate("Report", "Patient ID"), QString::fromStdString(p.id));
        add(QCoreApplication::translate("Report", "Born"), isoDate(p.birthDate));
        add(QCoreApplication::translate("Report", "Sex"), QString::fromStdString(p.sex));
        add(QCoreApplication::translate("Report", "Case"), QString::fromStdString(p.title));
    }
    if (const auto& images = source.record().images) add(QCoreApplication::translate("Report", "CT phase"), QString::fromStdString(images->phaseLabel));
    if (const core::ChartReading* reading = source.answers->chart())
        add(QCoreApplication::translate("Report", "Device chart"), QCoreApplication::translate("Report", "%1, version %2").arg(QString::fromStdString(reading->chart.name), QString::fromStdString(reading->chart.version)));
    add(QCoreApplication::translate("Report", "Program"), source.program);
    add(QCoreApplication::translate("Report", "Report made"), source.time);
    return all;
}

QString foot(const CaseReportSource& source) {
    QStringList parts;
    if (!source.namesHidden)
        if (const auto& patient = source.record().patient) {
            parts << personName(patient->content.name) << QString::fromStdString(patient->content.id);
        }
    parts << source.program << source.time;
    parts.removeAll(QString());
    return parts.join(QStringLiteral(" · "));
}

} // namespace

ReportTable tableOf(const ComparisonModel& model) {
    using CellRole = ComparisonModel::Role;
    const auto lines = [](const QStringList& texts) {
        QStringList some = texts;
        some.removeAll(QString());
        return some.join(QChar::LineSeparator);
    };
    ReportTable table;
    for (int column = 0; column < model.columnCount(); ++column) {
        const auto head = [&](int role) { return model.headerData(column, Qt::Horizontal, role).toString(); };
        table.header << lines({head(Qt::DisplayRole), head(CellRole::CarriedRole), head(CellRole::DifferenceRole)});
        if (column > 0) table.numeric.push_back(column);
    }
    for (int row = 0; row < model.rowCount(); ++row) {
        const QModelIndex first = model.index(row, 0);
        const bool heading = first.data(CellRole::IsHeadingRole).toBool();
        if (!heading && first.data(CellRole::IsEmptyRole).toBool()) continue;
        // A heading with nothing below it is replaced by the next one.
        if (heading && !table.headings.empty() && table.headings.back() + 1 == table.rows.size()) {
            table.rows.pop_back();
            table.headings.pop_back();
        }
        if (heading) table.headings.push_back(table.rows.size());
        QStringList cells;
        for (int column = 0; column < model.columnCount(); ++column) {
            const QModelIndex cell = model.index(row, column);
            const auto text = [&](int role) { return cell.data(role).toString(); };
            cells << (column == 0 ? text(Qt::DisplayRole)
                                  : lines({text(Qt::DisplayRole), text(CellRole::CarriedRole), text(CellRole::DifferenceRole),
                                           text(CellRole::StaleWordsRole)}));
        }
        table.rows.push_back(std::move(cells));
    }
    if (!table.headings.empty() && table.headings.back() + 1 == table.rows.size()) {
        table.rows.pop_back();
        table.headings.pop_back();
    }
    return table;
}

PrintedReport caseReport(const CaseReportSource& source) {
    PrintedReport report;
    report.title = QCoreApplication::translate("Report", "Closure of the left atrial appendage");
    report.facts = facts(source);
    report.foot = foot(source);
    report.cautions = cautionParagraphs();
    for (auto part : {decisionPart, comparisonPart, sizesPart, seatPart, pressurePart, projectionPart, picturesPart, septumPart, releasePart, methodPart}) {
        ReportSection section = part(source);
        if (!section.blocks.empty()) report.sections.push_back(std::move(section));
    }
    return report;
}

} // namespace gauge::app
