// Decision, comparison and sizes: what the report is read for.
#include "app/document/answers.h"
#include "app/format/core_sentences.h"
#include "app/format/decision_words.h"
#include "app/models/comparison_model.h"
#include "app/report/report_parts.h"
#include "core/sizing/wording.h"

#include <QCoreApplication>

namespace gauge::app {
namespace {

using Weight = ReportParagraph::Weight;

QString text(const std::string& utf8) {
    return QString::fromStdString(utf8);
}

QString percent(double share) {
    return chanceWords(share);
}

QStringList sentences(const std::vector<core::Notice>& notices) {
    QStringList all;
    for (const core::Notice& notice : notices)
        all << sentence(notice);
    return all;
}

QString decisionSentence(const core::CaseRecord& record) {
    const auto& decision = record.decision;
    if (!decision) return QCoreApplication::translate("Report", "No decision has been written yet.");
    const core::Decision& d = decision->content;
    if (d.signedBy.empty()) return QCoreApplication::translate("Report", "Draft, not signed: %1").arg(text(d.text));
    return QCoreApplication::translate("Report", "Signed by %1 on %2: %3").arg(text(d.signedBy), text(d.time), text(d.text));
}

QString sizeSentence(const Answers& answers) {
    const core::SizeFit* size = answers.chosenSize();
    if (!size) return QCoreApplication::translate("Report", "No size has been chosen.");
    const core::SizingAnswer& a = *answers.sizing();
    return QCoreApplication::translate("Report",
                                       "Chosen size: %1. Its fit chance at %2 is %3; over the pressures to live with, %4 to %5, its "
                                       "compression stays inside its band with a chance of %6.")
        .arg(text(size->name), text(core::pressureText(a.diameter.pressureMmHg)), percent(size->fitChance),
             text(core::pressureText(a.living.lowestMmHg)), text(core::pressureText(a.living.highestMmHg)), percent(size->lastingFit));
}

QString widthSentence(const core::SizingAnswer& a) {
    return QCoreApplication::translate("Report", "Width that the chart asks for, at %1: %2, with a chance of 95 % from %3.")
        .arg(text(core::pressureText(a.diameter.pressureMmHg)), text(core::mmText(a.diameter.medianMm)),
             coreWords(core::mmRange(a.diameter.lower95Mm, a.diameter.upper95Mm)));
}

QString depthVerdict(const core::SizeFit& size) {
    if (!size.depthOk) return QCoreApplication::translate("Report", "not known");
    return *size.depthOk ? QCoreApplication::translate("Report", "enough") : QCoreApplication::translate("Report", "short");
}

ReportTable sizeTable(const Answers& answers) {
    const core::SizingAnswer& a = *answers.sizing();
    ReportTable table;
    table.header = {QCoreApplication::translate("Report", "Size"),          QCoreApplication::translate("Report", "Compression"),
                    QCoreApplication::translate("Report", "Fit chance"),    QCoreApplication::translate("Report", "Lasting fit"),
                    QCoreApplication::translate("Report", "Too small"),     QCoreApplication::translate("Report", "Too tight"),
                    QCoreApplication::translate("Report", "Depth")};
    table.numeric = {1, 2, 3, 4, 5};
    const core::SizeFit* chosen = answers.chosenSize();
    for (const core::SizeFit& size : a.sizes) {
        const QString name = text(size.name);
        table.rows.push_back({&size == chosen ? QCoreApplication::translate("Report", "%1 (chosen)").arg(name) : name,
                              text(core::percentText(size.compressionPercent)), percent(size.fitChance), percent(size.lastingFit),
                              percent(size.undersizeChance), percent(size.overcompressionChance), depthVerdict(size)});
    }
    return table;
}

} // namespace

ReportSection decisionPart(const CaseReportSource& source) {
    const Answers& answers = *source.answers;
    ReportSection section{QCoreApplication::translate("Report", "Decision"), {}};
    section.blocks.push_back(ReportParagraph{decisionSentence(source.record()), Weight::Lead});
    section.blocks.push_back(ReportParagraph{sizeSentence(answers)});
    if (const core::SizingAnswer* a = answers.sizing()) {
        section.blocks.push_back(ReportParagraph{widthSentence(*a)});
        QStringList warnings = sentences(a->warnings);
        if (const core::SizeFit* size = answers.chosenSize()) warnings += sentences(size->warnings);
        if (!warnings.isEmpty()) section.blocks.push_back(ReportList{warnings, true});
    } else {
        for (const QString& missing : answers.missing())
            section.blocks.push_back(ReportParagraph{missing, Weight::Warning});
    }
    const QStringList unsignedBecause = answers.whyNotSigned();
    const bool isSigned = source.record().decision && !source.record().decision->content.signedBy.empty();
    if (!unsignedBecause.isEmpty()) {
        section.blocks.push_back(ReportParagraph{
            isSigned ? QCoreApplication::translate("Report", "Since it was signed, this stands against it:")
                     : QCoreApplication::translate("Report", "It cannot be signed as things stand:"),
            Weight::Warning});
        section.blocks.push_back(ReportList{unsignedBecause, true});
    }
    return section;
}

ReportSection comparisonPart(const CaseReportSource& source) {
    ReportSection section{QCoreApplication::translate("Report", "Readings side by side"), {}};
    if (!source.comparison || source.comparison->rowCount() == 0) return section;
    section.blocks.push_back(tableOf(*source.comparison));
    section.blocks.push_back(ReportParagraph{
        QCoreApplication::translate("Report", "Each value with its standard uncertainty (twice as much holds the truth with a chance of about "
                                              "95 %). Values carried to another pressure are predictions of a model."),
        Weight::Soft});
    return section;
}

ReportSection sizesPart(const CaseReportSource& source) {
    const Answers& answers = *source.answers;
    ReportSection section{QCoreApplication::translate("Report", "Sizes of the chart"), {}};
    const core::ChartReading* chart = answers.chart();
    if (!chart) return section;
    section.blocks.push_back(ReportParagraph{QCoreApplication::translate("Report", "Chart: %1, version %2, %3. %4")
                                                 .arg(text(chart->chart.name), text(chart->chart.version),
                                                      text(chart->chart.date), text(chart->chart.source))});
    if (answers.sizing()) {
        section.blocks.push_back(sizeTable(answers));
        section.blocks.push_back(ReportParagraph{
            QCoreApplication::translate("Report",
                                        "Compression = 100 (nominal − width) / nominal at the decision pressure; below 0 the implant is "
                                        "narrower than the appendage. Too small at the highest, too tight at the lowest pressure to live with."),
            Weight::Soft});
        QStringList next;
        for (const core::NextAct& act : answers.sizing()->whatNext)
            next << QCoreApplication::translate("Report", "Chance to change the size %1: %2").arg(percent(act.chance), sentence(act.text));
        if (!next.isEmpty()) {
            section.blocks.push_back(ReportParagraph{QCoreApplication::translate("Report", "What would change it"), Weight::Lead});
            section.blocks.push_back(ReportList{next});
        }
    }
    return section;
}

} // namespace gauge::app
