// What a report says, page layout left open: sections of paragraphs, lists, tables and pictures. All texts are as shown on
// screen, in the screen's language; numbers are already rounded by app/format. Made by case_report.h, laid out by report_pages.h.
#pragma once

#include <QImage>
#include <QString>
#include <QStringList>
#include <variant>
#include <vector>

namespace gauge::app {

struct ReportParagraph {
    enum class Weight { Ordinary, Lead, Soft, Warning };
    QString text;
    Weight weight = Weight::Ordinary;
};

struct ReportList {
    QStringList items;
    bool warnings = false; ///< each item is something to heed: marked by a sign, not by colour alone
};

struct ReportTable {
    QStringList header;
    std::vector<QStringList> rows; ///< each as long as the header
    /// Rows that head a group: their first cell spans the table.
    std::vector<std::size_t> headings;
    /// Columns of numbers, set to the right.
    std::vector<int> numeric;
};

struct ReportPicture {
    QImage image;
    QString caption;
    double widthShare = 1.0; ///< of the text's width; pictures that fit side by side share a line
};

using ReportBlock = std::variant<ReportParagraph, ReportList, ReportTable, std::vector<ReportPicture>>;

struct ReportSection {
    QString title;
    std::vector<ReportBlock> blocks;
};

/// A line of the head: "Patient", "Marron^Ada".
struct ReportFact {
    QString label;
    QString value;
};

struct PrintedReport {
    QString title;
    std::vector<ReportFact> facts;
    std::vector<ReportSection> sections;
    QStringList cautions;   ///< printed whole at the end, the first of them at the foot of each page too
    QString foot;           ///< at the foot of each page: who the report is about, by which program
    bool withSignature = true;
};

} // namespace gauge::app
