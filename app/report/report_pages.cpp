#include "app/report/report_pages.h"

#include "app/report/report_style.h"
#include "app/report/report_writer.h"

#include <QAbstractTextDocumentLayout>
#include <QCoreApplication>
#include <QLocale>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>
#include <QTextBlock>
#include <QTextCursor>
#include <QTextDocument>
#include <QTextTable>
#include <algorithm>
#include <cmath>
#include <optional>

namespace gauge::app {
namespace {

QSizeF paperPoints(Paper paper) {
    return QPageSize(paper == Paper::A4 ? QPageSize::A4 : QPageSize::Letter).sizePoints();
}

QSizeF textArea(Paper paper) {
    const QSizeF whole = paperPoints(paper);
    return {whole.width() - 2 * kMarginSide, whole.height() - kMarginTop - kMarginBottom};
}

QRectF placeOf(const QTextDocument& text, const PageUnit& unit) {
    const QAbstractTextDocumentLayout& layout = *text.documentLayout();
    if (!unit.table) return layout.blockBoundingRect(unit.block);
    QRectF all;
    for (int column = 0; column < unit.table->columns(); ++column) {
        const QTextTableCell cell = unit.table->cellAt(unit.row, column);
        for (QTextBlock one = cell.firstCursorPosition().block(), last = cell.lastCursorPosition().block(); one.isValid();
             one = one.next()) {
            all = all.united(layout.blockBoundingRect(one));
            if (one == last) break;
        }
    }
    // The frame of a row stands its padding away from the text.
    const double padding = kTenths * (kCellPadding + 1.0);
    return all.adjusted(0.0, -padding, 0.0, padding);
}

/// The first unit that ought to begin a page and does not: a row or picture that the end of the page cuts, or a title whose
/// text stands on the next page.
std::optional<std::size_t> missingBreak(const QTextDocument& text, const std::vector<PageUnit>& units, double pageHeight,
                                        const PageBreaks& breaks) {
    const auto pageAt = [&](double y) { return static_cast<int>(std::floor(y / pageHeight)); };
    int before = 0; // last page of the unit before
    for (std::size_t n = 0; n < units.size(); ++n) {
        const QRectF place = placeOf(text, units[n]);
        const int last = pageAt(place.bottom() - 1.0);
        // Padding above is cut at the top of a page.
        const int first = std::min(last, pageAt(place.top() + (units[n].table ? kTenths * (kCellPadding + 1.5) : 1.0)));
        const bool isCut = units[n].table && last > first;
        const bool titleLeft = n > 0 && units[n - 1].staysWithNext && first > before;
        before = last;
        if (!isCut && !titleLeft) continue;
        std::size_t at = n;
        while (at > 0 && units[at - 1].staysWithNext)
            --at;
        if (at > 0 && !breaks.contains(at)) return at; // else it is longer than a page
    }
    return std::nullopt;
}

} // namespace

Paper usualPaper() {
    return QLocale::system().measurementSystem() == QLocale::ImperialUSSystem ? Paper::Letter : Paper::A4;
}

ReportPages::ReportPages(const PrintedReport& report, Paper paper) : m_report(report), m_paper(paper) {
    const QSizeF area = kTenths * textArea(paper);
    constexpr int kMostRounds = 60;
    PageBreaks breaks;
    for (int round = 0; round < kMostRounds; ++round) {
        m_text = std::make_unique<QTextDocument>();
        m_text->setUndoRedoEnabled(false);
        m_text->setDocumentMargin(0.0);
        m_text->setDefaultFont(reportFont(kTextPt));
        m_text->documentLayout()->setPaintDevice(nullptr);
        const auto units = writeReport(report, *m_text, area.width(), breaks);
        m_text->setPageSize(area); // after the writing, so that the pages are laid out once
        const auto more = missingBreak(*m_text, units, area.height(), breaks);
        if (!more) return;
        breaks.insert(*more);
    }
}

ReportPages::~ReportPages() = default;

int ReportPages::count() const {
    return m_text->pageCount();
}

QString ReportPages::plainText() const {
    return m_text->toPlainText() + QLatin1Char('\n') + m_report.foot;
}

void ReportPages::paintPage(QPainter& painter, int page, double unit) const {
    const QSizeF paper = kTenths * paperPoints(m_paper), area = kTenths * textArea(m_paper);
    const double side = kTenths * kMarginSide;
    painter.save();
    painter.scale(unit / kTenths, unit / kTenths);
    painter.save();
    painter.translate(side, kTenths * kMarginTop - page * area.height());
    QAbstractTextDocumentLayout::PaintContext context;
    context.palette.setColor(QPalette::Text, kInk);
    context.clip = QRectF(0, page * area.height(), area.width(), area.height());
    painter.setClipRect(context.clip);
    m_text->documentLayout()->draw(&painter, context);
    painter.restore();

    const double footTop = paper.height() - kTenths * (kMarginBottom - 12.0);
    painter.setPen(QPen(kRule, kTenths * 0.7));
    painter.drawLine(QPointF(side, footTop), QPointF(paper.width() - side, footTop));
    painter.setPen(kSoft);
    painter.setFont(reportFont(kFootPt));
    const QRectF foot(side, footTop + kTenths * 4.0, area.width(), kTenths * 40.0);
    const QString number = QCoreApplication::translate("Report", "Page %1 of %2").arg(page + 1).arg(count());
    painter.drawText(foot, Qt::AlignRight | Qt::AlignTop, number);
    painter.drawText(foot.adjusted(0, 0, -kTenths * 80.0, 0), Qt::AlignLeft | Qt::AlignTop, m_report.foot);
    if (!m_report.cautions.isEmpty())
        painter.drawText(foot.adjusted(0, kTenths * 11.0, 0, 0), Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap,
                         m_report.cautions.front());
    painter.restore();
}

QImage ReportPages::picture(int page, double dotsPerInch) const {
    const double unit = dotsPerInch / 72.0;
    const QSizeF paper = paperPoints(m_paper) * unit;
    QImage image(paper.toSize(), QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing | QPainter::SmoothPixmapTransform);
    paintPage(painter, page, unit);
    return image;
}

void ReportPages::paint(QPagedPaintDevice& device) const {
    QPainter painter(&device);
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    const double unit = device.logicalDpiX() / 72.0;
    for (int page = 0; page < count(); ++page) {
        if (page > 0) device.newPage();
        paintPage(painter, page, unit);
    }
}

core::Result<void> writePdf(const PrintedReport& report, Paper paper, const std::filesystem::path& file) {
    const ReportPages pages(report, paper);
    QSaveFile out(QString::fromStdString(file.string()));
    const auto unwritable = [&](const QString& why) {
        return core::failure(core::ErrorCode::OutputUnwritable,
                             QStringLiteral("Cannot write the report %1: %2. Choose another folder, or make room.")
                                 .arg(out.fileName(), why)
                                 .toStdString());
    };
    if (!out.open(QIODevice::WriteOnly)) return unwritable(out.errorString());
    {
        QPdfWriter writer(&out);
        writer.setPageSize(QPageSize(paper == Paper::A4 ? QPageSize::A4 : QPageSize::Letter));
        writer.setPageMargins(QMarginsF(0, 0, 0, 0));
        writer.setResolution(600);
        writer.setTitle(report.title);
        writer.setCreator(QStringLiteral("Ostium Gauge"));
        pages.paint(writer);
    }
    if (!out.commit()) return unwritable(out.errorString());
    return {};
}

} // namespace gauge::app
