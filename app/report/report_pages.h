// A report on paper: laid out on A4 or Letter, to a PDF with searchable text and embedded fonts, or to a printer. Black on
// white whatever the screen's theme.
#pragma once

#include "app/report/printed_report.h"
#include "core/result.h"

#include <filesystem>
#include <memory>

class QPagedPaintDevice;
class QPainter;
class QTextDocument;

namespace gauge::app {

enum class Paper { A4, Letter };

/// The paper usual where the person is: Letter in countries that use it, else A4.
Paper usualPaper();

/// Pages of a report; keeps the layout, so that it can be shown, counted and printed.
class ReportPages {
public:
    /// Precondition: a GUI application exists (app/report/graphics_session.h).
    ReportPages(const PrintedReport& report, Paper paper);
    ~ReportPages();
    ReportPages(const ReportPages&) = delete;
    ReportPages& operator=(const ReportPages&) = delete;

    int count() const;
    /// One page as a picture on white, for a preview. @param page  0-based, below count().
    QImage picture(int page, double dotsPerInch = 96.0) const;
    /// The whole text without layout, as a search would find it.
    QString plainText() const;
    /// Paints all pages. Precondition: the device has the paper of this layout.
    void paint(QPagedPaintDevice& device) const;

private:
    void paintPage(QPainter& painter, int page, double unit) const;

    PrintedReport m_report;
    Paper m_paper;
    std::unique_ptr<QTextDocument> m_text;
};

/// Writes the report as PDF; the file appears whole or not at all. The title is the document's title.
/// @errors OutputUnwritable, naming the file.
core::Result<void> writePdf(const PrintedReport& report, Paper paper, const std::filesystem::path& file);

} // namespace gauge::app
