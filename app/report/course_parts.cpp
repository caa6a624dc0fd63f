// The course of the patient: pressures by moment, stasis, looks at the implant.
#include "app/document/answers.h"
#include "app/format/core_sentences.h"
#include "app/format/terms.h"
#include "app/report/report_parts.h"
#include "core/sizing/wording.h"

#include <QCoreApplication>

namespace gauge::app {
namespace {

using Weight = ReportParagraph::Weight;

QString fromUtf8(std::string_view utf8) {
    return QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size()));
}

QString pressure(const std::optional<double>& mmHg) {
    return mmHg ? fromUtf8(core::pressureText(*mmHg)) : QStringLiteral("–");
}

QString number(double value, int digits) {
    return QString::number(value, 'f', digits);
}

ReportTable momentTable(const core::CaseRecord& record) {
    ReportTable table;
    table.header = {QCoreApplication::translate("Report", "Moment"),          QCoreApplication::translate("Report", "Stage"),
                    QCoreApplication::translate("Report", "LA mean pressure"), QCoreApplication::translate("Report", "v wave"),
                    QCoreApplication::translate("Report", "How known"),        QCoreApplication::translate("Report", "Mitral gradient"),
                    QCoreApplication::translate("Report", "Rhythm")};
    table.numeric = {2, 3, 5};
    std::vector<const core::Moment*> moments;
    for (const auto& [id, entry] : record.moments)
        moments.push_back(&entry.content);
    std::stable_sort(moments.begin(), moments.end(), [](const auto* a, const auto* b) { return a->circulation.stage < b->circulation.stage; });
    for (const core::Moment* moment : moments) {
        const core::HaemodynamicState& c = moment->circulation;
        table.rows.push_back({fromUtf8(c.state), stageName(c.stage),
                              c.meanPressureMmHg ? pressure(c.meanPressureMmHg) : QCoreApplication::translate("Report", "unknown"),
                              pressure(c.vWaveMmHg), c.pressureSource ? pressureSourceName(*c.pressureSource) : QStringLiteral("–"),
                              pressure(c.meanMitralGradientMmHg), c.rhythm ? rhythmName(*c.rhythm) : QStringLiteral("–")});
    }
    return table;
}

QString rangeWords(const core::ReleaseRow& row) {
    if (!row.range) return QStringLiteral("–");
    const QString unit = row.unit.empty() ? QString() : QLatin1Char(' ') + fromUtf8(row.unit);
    const auto& r = *row.range;
    const QString limits = r.least && r.greatest
                               ? QCoreApplication::translate("Report", "%1 to %2%3").arg(number(*r.least, 1), number(*r.greatest, 1), unit)
                           : r.least ? QCoreApplication::translate("Report", "at least %1%2").arg(number(*r.least, 1), unit)
                           : r.greatest ? QCoreApplication::translate("Report", "at most %1%2").arg(number(*r.greatest, 1), unit)
                                        : QStringLiteral("–");
    return limits + QStringLiteral(" (") + coreWords(std::string(core::words(r.basis))) + QLatin1Char(')');
}

QString verdictWords(const core::ReleaseRow& row) {
    switch (row.verdict) {
    case core::RangeVerdict::Within:
        return row.nearLimit ? QCoreApplication::translate("Report", "within, near its limit") : QCoreApplication::translate("Report", "within");
    case core::RangeVerdict::Outside:
        return row.nearLimit ? QCoreApplication::translate("Report", "outside, near its limit") : QCoreApplication::translate("Report", "outside");
    case core::RangeVerdict::NoRange:
        return QCoreApplication::translate("Report", "no range");
    }
    return {};
}

ReportTable lookTable(const core::ReleaseReport& report) {
    ReportTable table;
    table.header = {QCoreApplication::translate("Report", "What"), QCoreApplication::translate("Report", "Seen"),
                    QCoreApplication::translate("Report", "Range"), QCoreApplication::translate("Report", "Verdict"),
                    QCoreApplication::translate("Report", "Seen by")};
    table.numeric = {1};
    std::string view = "\n"; // no view is called so
    for (const core::ReleaseRow& row : report.rows) {
        if (row.view != view) {
            view = row.view;
            table.headings.push_back(table.rows.size());
            table.rows.push_back({view.empty() ? QCoreApplication::translate("Report", "Without a view") : fromUtf8(view)});
        }
        const QString unit = row.unit.empty() ? QString() : QLatin1Char(' ') + fromUtf8(row.unit);
        table.rows.push_back({coreWords(row.what), number(row.value, 1) + unit, rangeWords(row), verdictWords(row), fromUtf8(row.seenBy)});
    }
    return table;
}

} // namespace

ReportSection pressurePart(const CaseReportSource& source) {
    ReportSection section{QCoreApplication::translate("Report", "Pressures and stasis"), {}};
    const core::CaseRecord& record = source.record();
    if (!record.moments.empty()) section.blocks.push_back(momentTable(record));
    if (const core::SizingAnswer* a = source.answers->sizing())
        section.blocks.push_back(ReportParagraph{
            QCoreApplication::translate("Report", "Near 12 mmHg the width grows by %1 mm per mmHg (standard deviation %2); %3 % of that is this "
                                                  "patient's own, the rest is assumed.")
                .arg(number(a->slope.meanMmPerMmHg, 2), number(a->slope.sdMmPerMmHg, 2), number(100.0 * a->slope.patientShare, 0))});
    QStringList warnings, notices;
    for (const core::Notice& notice : source.answers->stasis().warnings)
        warnings << sentence(notice);
    for (const core::Notice& notice : source.answers->stasis().notices)
        notices << sentence(notice);
    if (!warnings.isEmpty()) section.blocks.push_back(ReportList{warnings, true});
    if (!notices.isEmpty()) section.blocks.push_back(ReportList{notices});
    return section;
}

ReportSection releasePart(const CaseReportSource& source) {
    ReportSection section{QCoreApplication::translate("Report", "Looks at the implant"), {}};
    for (const ReleaseLook& look : source.answers->releaseLooks()) {
        section.blocks.push_back(ReportParagraph{
            look.state.time.empty() ? stageName(look.state.stage)
                                    : QCoreApplication::translate("Report", "%1, %2").arg(stageName(look.state.stage), fromUtf8(look.state.time)),
            Weight::Lead});
        if (!look.report) {
            section.blocks.push_back(ReportParagraph{look.problem, Weight::Warning});
            continue;
        }
        section.blocks.push_back(lookTable(*look.report));
        QStringList notices;
        for (const core::Notice& notice : look.report->notices)
            notices << sentence(notice);
        for (const core::Notice& notice : look.changeNotices)
            notices << sentence(notice);
        if (!notices.isEmpty()) section.blocks.push_back(ReportList{notices, true});
    }
    return section;
}

} // namespace gauge::app
