// The text of a printed report: written from top to bottom into a document, with the places where a page may begin.
#pragma once

#include "app/report/printed_report.h"

#include <QTextBlock>
#include <cstddef>
#include <set>
#include <vector>

class QTextDocument;
class QTextTable;

namespace gauge::app {

/// A paragraph, a row of a table or a line of pictures: what may begin a page.
struct PageUnit {
    QTextBlock block;            ///< of a paragraph
    QTextTable* table = nullptr; ///< of a row
    int row = 0;
    bool staysWithNext = false;  ///< a title, the head of a table or of a group
};

/// Numbers of the units that begin a new page.
using PageBreaks = std::set<std::size_t>;

/// @param width  of the text, in tenths of points. @param breaks  see PageBreaks. @return all units, from top to bottom.
std::vector<PageUnit> writeReport(const PrintedReport& report, QTextDocument& document, double width, const PageBreaks& breaks);

} // namespace gauge::app
