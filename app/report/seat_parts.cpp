// How the sizes would sit: the chosen one in sentences, all of them in a table.
#include "app/document/seats.h"
#include "app/format/core_sentences.h"
#include "app/models/seat_model.h"
#include "app/report/report_parts.h"
#include "core/release/planned_seen.h"

#include <QCoreApplication>

namespace gauge::app {
namespace {

QStringList seatSentences(const std::vector<core::Notice>& notices) {
    QStringList all;
    for (const core::Notice& notice : notices)
        all << sentence(notice);
    return all;
}

ReportTable seatTable(const Answers& answers) {
    SeatModel model;
    model.setAnswers(answers);
    ReportTable table;
    for (int row = -1; row < model.rowCount(); ++row) {
        QStringList cells;
        for (int column = 0; column < model.columnCount(); ++column) {
            if (!model.isUsed(column)) continue;
            const QString words = (row < 0 ? model.headerData(column, Qt::Horizontal, Qt::DisplayRole) : model.index(row, column).data())
                                      .toString()
                                      .replace(QLatin1Char('\n'), QChar::LineSeparator);
            const bool chosen = row >= 0 && column == 0 && model.index(row, 0).data(SeatModel::IsChosenRole).toBool();
            cells << (chosen ? QCoreApplication::translate("Report", "%1 (chosen)").arg(words) : words);
        }
        if (row < 0)
            table.header = cells;
        else
            table.rows.push_back(cells);
    }
    return table;
}

/// The last look from the deployment on, against the plan.
QStringList plannedAgainstSeen(const Answers& answers, const core::Seat& seat) {
    QStringList all;
    for (auto look = answers.releaseLooks().rbegin(); look != answers.releaseLooks().rend() && all.isEmpty(); ++look)
        for (const core::PlannedSeen& one : core::plannedSeen(seat, look->state))
            all << sentence(one.sentence);
    return all;
}

} // namespace

ReportSection seatPart(const CaseReportSource& source) {
    using Weight = ReportParagraph::Weight;
    const Seats& seats = source.answers->seats();
    ReportSection section{QCoreApplication::translate("Report", "How the sizes would sit"), {}};
    if (!seats.answer()) {
        if (!seats.problem().isEmpty()) section.blocks.push_back(ReportParagraph{seats.problem(), Weight::Warning});
        return section;
    }
    section.blocks.push_back(ReportParagraph{seatSentences(seats.answer()->notices).join(QLatin1Char(' '))});
    if (const core::Seat* seat = seats.chosen()) {
        if (!seat->warnings.empty()) section.blocks.push_back(ReportList{seatSentences(seat->warnings), true});
        section.blocks.push_back(ReportList{seatSentences(seat->facts)});
        if (const QStringList seen = plannedAgainstSeen(*source.answers, *seat); !seen.isEmpty()) section.blocks.push_back(ReportList{seen});
    }
    section.blocks.push_back(seatTable(*source.answers));
    section.blocks.push_back(ReportParagraph{
        QCoreApplication::translate("Report", "A model of geometry: a straight body with the chart's dimensions slides into the blood that was "
                                              "measured and takes the form of its wall, as far as the chart's compression allows by the chart's "
                                              "own measure. It knows no force and no turning on the way."),
        Weight::Soft});
    return section;
}

} // namespace gauge::app
