#include "app/report/report_pages.h"

#include <QAbstractTextDocumentLayout>
#include <QCoreApplication>
#include <QFontMetricsF>
#include <QLocale>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>
#include <QTextBlock>
#include <QTextCursor>
#include <QTextDocument>
#include <QTextList>
#include <QTextTable>
#include <QUrl>
#include <algorithm>
#include <cmath>
#include <optional>
#include <set>

namespace gauge::app {
namespace {

// Sizes here are points, 1/72 inch. The text is laid out in tenths of them, so that letters of every size keep their
// proportions on every device.
constexpr double kTenths = 10.0;
constexpr double kMarginSide = 48.0, kMarginTop = 42.0, kMarginBottom = 66.0, kCellPadding = 3.0;
constexpr double kTextPt = 9.5, kSmallPt = 8.0, kTitlePt = 17.0, kSectionPt = 12.0, kFootPt = 7.0;
const QColor kInk(0x15, 0x19, 0x1D), kSoft(0x44, 0x4E, 0x58), kRule(0xB8, 0xC0, 0xC8), kShade(0xEE, 0xF1, 0xF4),
    kHeed(0x75, 0x48, 0x00);

QSizeF paperPoints(Paper paper) {
    return QPageSize(paper == Paper::A4 ? QPageSize::A4 : QPageSize::Letter).sizePoints();
}

QSizeF textArea(Paper paper) {
    const QSizeF whole = paperPoints(paper);
    return {whole.width() - 2 * kMarginSide, whole.height() - kMarginTop - kMarginBottom};
}

QFont fontOf(double points, bool strong = false) {
    QFont font(QStringLiteral("DejaVu Sans"));
    font.setPixelSize(static_cast<int>(std::lround(kTenths * points)));
    font.setHintingPreference(QFont::PreferNoHinting);
    // Ligatures would hide words from a search ("ﬁlling" for "filling"); any spacing of letters switches them off.
    font.setLetterSpacing(QFont::AbsoluteSpacing, 0.02);
    font.setWeight(strong ? QFont::DemiBold : QFont::Normal);
    return font;
}

QTextCharFormat letters(double points, const QColor& colour = kInk, bool strong = false) {
    QTextCharFormat format;
    format.setFont(fontOf(points, strong));
    format.setForeground(colour);
    return format;
}

QTextBlockFormat block(double above, double below) {
    QTextBlockFormat format;
    format.setTopMargin(kTenths * above);
    format.setBottomMargin(kTenths * below);
    format.setLineHeight(118.0, QTextBlockFormat::ProportionalHeight);
    return format;
}

/// A paragraph, a row of a table or a line of pictures: what may begin a page.
struct PageUnit {
    QTextBlock block;            ///< of a paragraph
    QTextTable* table = nullptr; ///< of a row
    int row = 0;
    bool staysWithNext = false;  ///< a title, the head of a table or of a group
};

/// Numbers of the units that begin a new page.
using PageBreaks = std::set<std::size_t>;

/// Writes one report into a text document, from top to bottom.
class Writer {
public:
    Writer(QTextDocument& document, double width, const PageBreaks& breaks)
        : m_document(document), m_cursor(&document), m_width(width), m_breaks(breaks) {}

    const std::vector<PageUnit>& units() const { return m_units; }

    void write(const PrintedReport& report) {
        m_cursor.beginEditBlock();
        paragraph(report.title, letters(kTitlePt, kInk, true), block(0, 6));
        facts(report.facts);
        for (const ReportSection& section : report.sections) {
            title(section.title);
            for (const ReportBlock& one : section.blocks)
                std::visit([this](const auto& content) { write(content); }, one);
        }
        // Cautions and signature are read together: they stand on one page.
        title(QCoreApplication::translate("Report", "Cautions"));
        for (const QString& caution : report.cautions)
            paragraph(caution, letters(kTextPt), block(0, 4), report.withSignature);
        if (report.withSignature) signature();
        m_cursor.endEditBlock();
    }

private:
    void title(const QString& text) { paragraph(text, letters(kSectionPt, kInk, true), block(12, 4), true); }

    /// A fresh block at the end; the document's own first block is used up first.
    void paragraph(const QString& text, const QTextCharFormat& format, QTextBlockFormat shape, bool staysWithNext = false) {
        if (m_breaks.contains(m_units.size())) shape.setPageBreakPolicy(QTextFormat::PageBreak_AlwaysBefore);
        startBlock(shape, format);
        m_cursor.insertText(text, format);
        m_units.push_back({m_cursor.block(), nullptr, 0, staysWithNext});
    }

    void startBlock(const QTextBlockFormat& shape, const QTextCharFormat& format) {
        m_cursor.movePosition(QTextCursor::End);
        if (m_fresh) {
            m_cursor.setBlockFormat(shape);
            m_cursor.setBlockCharFormat(format);
        } else {
            m_cursor.insertBlock(shape, format);
        }
        m_fresh = false;
    }

    void facts(const std::vector<ReportFact>& facts) {
        if (facts.empty()) return;
        const int pairs = 2;
        const int rows = static_cast<int>((facts.size() + pairs - 1) / pairs);
        QTextTable* table = beginTable(rows, 2 * pairs, {0.17, 0.33, 0.17, 0.33}, 0);
        for (std::size_t n = 0; n < facts.size(); ++n) {
            const int row = static_cast<int>(n) % rows, column = 2 * (static_cast<int>(n) / rows);
            cell(*table, row, column, facts[n].label, letters(kSmallPt, kSoft));
            cell(*table, row, column + 1, facts[n].value, letters(kTextPt));
        }
        endTable();
    }

    void write(const ReportParagraph& p) {
        using Weight = ReportParagraph::Weight;
        switch (p.weight) {
        case Weight::Lead:
            return paragraph(p.text, letters(kTextPt + 1.0, kInk, true), block(0, 5), true);
        case Weight::Soft:
            return paragraph(p.text, letters(kSmallPt, kSoft), block(0, 4));
        case Weight::Warning:
            return paragraph(QStringLiteral("⚠ ") + p.text, letters(kTextPt, kHeed, true), block(0, 5), true);
        case Weight::Ordinary:
            return paragraph(p.text, letters(kTextPt), block(0, 5));
        }
    }

    void write(const ReportList& list) {
        for (const QString& item : list.items) {
            QTextBlockFormat shape = block(0, 3);
            shape.setLeftMargin(kTenths * 12.0);
            shape.setTextIndent(-kTenths * 12.0);
            paragraph((list.warnings ? QStringLiteral("⚠ ") : QStringLiteral("• ")) + item,
                      letters(kTextPt, list.warnings ? kHeed : kInk), shape);
        }
    }

    /// A table with more columns than the paper is wide becomes several, each with the first column: a number is never broken.
    void write(const ReportTable& content) {
        const int columns = static_cast<int>(content.header.size());
        std::vector<double> words;
        for (int column = 0; column < columns; ++column)
            words.push_back(roomOf(content, column).word);
        for (int from = 1; from < columns || from == 1;) {
            double used = words.empty() ? 0.0 : words[0];
            int to = from;
            while (to < columns && (to == from || used + words[static_cast<std::size_t>(to)] <= m_width))
                used += words[static_cast<std::size_t>(to++)];
            if (from == 1 && to >= columns) return writeWhole(content);
            writeWhole(columnsOf(content, from, to));
            from = to;
        }
    }

    /// The first column and those from `from` up to `to`.
    static ReportTable columnsOf(const ReportTable& content, int from, int to) {
        ReportTable some;
        const auto take = [&](const QStringList& cells) { return QStringList(cells.value(0)) + cells.mid(from, to - from); };
        some.header = take(content.header);
        for (const int column : content.numeric)
            if (column == 0 || (column >= from && column < to)) some.numeric.push_back(column == 0 ? 0 : column - from + 1);
        for (std::size_t row = 0; row < content.rows.size(); ++row) {
            if (std::find(content.headings.begin(), content.headings.end(), row) != content.headings.end())
                some.headings.push_back(some.rows.size());
            some.rows.push_back(take(content.rows[row]));
        }
        return some;
    }

    /// Rows up to the next one that begins a page make one table, with the head again.
    void writeWhole(const ReportTable& content) {
        if (content.header.isEmpty()) return;
        const std::vector<double> widths = shares(content);
        for (std::size_t from = 0; from < content.rows.size() || from == 0;) {
            std::size_t to = from + 1;
            // The head is a unit too, but only of the first part: breaks there are breaks before a row.
            const std::size_t first = m_units.size() + (from == 0 ? 1 : 0);
            while (to < content.rows.size() && !m_breaks.contains(first + to - from))
                ++to;
            writeRows(content, widths, from, std::min(to, content.rows.size()));
            from = to;
        }
    }

    void writeRows(const ReportTable& content, const std::vector<double>& widths, std::size_t from, std::size_t to) {
        const int columns = static_cast<int>(content.header.size());
        QTextTable* table = beginTable(static_cast<int>(to - from) + 1, columns, widths, 1);
        for (int column = 0; column < columns; ++column)
            cell(*table, 0, column, content.header[column], letters(kSmallPt, kInk, true), alignment(content, column), kShade);
        if (from == 0) m_units.push_back({{}, table, 0, true});
        for (std::size_t n = from; n < to; ++n) {
            const int row = static_cast<int>(n - from) + 1;
            const bool heading = std::find(content.headings.begin(), content.headings.end(), n) != content.headings.end();
            for (int column = 0; column < (heading ? 1 : columns); ++column)
                cell(*table, row, column, content.rows[n].value(column), letters(kSmallPt, kInk, heading),
                     heading ? Qt::AlignLeft : alignment(content, column), heading ? kShade : QColor());
            if (heading && columns > 1) table->mergeCells(row, 0, 1, columns);
            m_units.push_back({{}, table, row, heading});
        }
        endTable();
    }

    /// Pictures that fit side by side share a line; captions stand below them.
    void write(const std::vector<ReportPicture>& pictures) {
        std::size_t from = 0;
        while (from < pictures.size()) {
            std::size_t to = from + 1;
            double used = pictures[from].widthShare;
            while (to < pictures.size() && used + pictures[to].widthShare <= 1.001)
                used += pictures[to++].widthShare;
            pictureLine(pictures, from, to);
            from = to;
        }
    }

    void pictureLine(const std::vector<ReportPicture>& pictures, std::size_t from, std::size_t to) {
        std::vector<double> widths;
        for (std::size_t n = from; n < to; ++n)
            widths.push_back(pictures[n].widthShare);
        QTextTable* table = beginTable(1, static_cast<int>(to - from), widths, 0);
        for (std::size_t n = from; n < to; ++n) {
            const ReportPicture& picture = pictures[n];
            const QString name = QStringLiteral("picture-%1").arg(m_pictures++);
            m_document.addResource(QTextDocument::ImageResource, QUrl(name), picture.image);
            QTextImageFormat image;
            image.setName(name);
            const double width = picture.widthShare * m_width - kTenths * 10.0;
            image.setWidth(width);
            image.setHeight(width * picture.image.height() / std::max(1, picture.image.width()));
            QTextCursor at = table->cellAt(0, static_cast<int>(n - from)).firstCursorPosition();
            at.insertImage(image);
            at.insertBlock(block(2, 0), letters(kSmallPt, kSoft));
            at.insertText(picture.caption, letters(kSmallPt, kSoft));
        }
        m_units.push_back({{}, table, 0, false});
        endTable();
    }

    void signature() {
        paragraph(QString(), letters(kTextPt), block(18, 0), true);
        const QStringList labels{QCoreApplication::translate("Report", "Read and decided by"),
                                 QCoreApplication::translate("Report", "Date and time"),
                                 QCoreApplication::translate("Report", "Signature")};
        QTextTable* table = beginTable(1, 3, {0.4, 0.25, 0.35}, 0);
        for (int n = 0; n < 3; ++n) {
            QTextTableCell c = table->cellAt(0, n);
            QTextTableCellFormat format = c.format().toTableCellFormat();
            format.setTopBorder(kTenths * 0.7);
            format.setTopBorderBrush(kInk);
            format.setTopBorderStyle(QTextFrameFormat::BorderStyle_Solid);
            c.setFormat(format);
            c.firstCursorPosition().insertText(labels[n], letters(kSmallPt, kSoft));
        }
        m_units.push_back({{}, table, 0, false});
        endTable();
    }

    static Qt::Alignment alignment(const ReportTable& table, int column) {
        const bool numeric = std::find(table.numeric.begin(), table.numeric.end(), column) != table.numeric.end();
        return numeric ? Qt::AlignRight : Qt::AlignLeft;
    }

    struct Room {
        double word = 0.0, line = 0.0; ///< of the longest word and the longest line
    };

    Room roomOf(const ReportTable& table, int column) const {
        const QFontMetricsF letters(fontOf(kSmallPt, true));
        const double padding = 2 * kTenths * kCellPadding + kTenths;
        Room room;
        const auto look = [&](const QString& text) {
            for (const QString& one : text.split(QChar::LineSeparator)) {
                room.line = std::max(room.line, letters.horizontalAdvance(one) + padding);
                for (const QString& part : one.split(QLatin1Char(' '))) // non-breaking spaces stay within
                    room.word = std::max(room.word, letters.horizontalAdvance(part) + padding);
            }
        };
        look(table.header[column]);
        for (std::size_t row = 0; row < table.rows.size(); ++row)
            if (std::find(table.headings.begin(), table.headings.end(), row) == table.headings.end())
                look(table.rows[row].value(column));
        room.line = std::min(room.line, 0.5 * m_width);
        room.word = std::min(room.word, room.line);
        return room;
    }

    /// Each column gets the room of its longest word; what is left goes by how much longer its lines are.
    std::vector<double> shares(const ReportTable& table) const {
        std::vector<double> words, lines;
        double used = 0.0, wanted = 0.0;
        for (int column = 0; column < table.header.size(); ++column) {
            const Room room = roomOf(table, column);
            words.push_back(room.word);
            lines.push_back(room.line - room.word);
            used += room.word;
            wanted += room.line - room.word;
        }
        const double left = std::max(0.0, m_width - used);
        for (std::size_t column = 0; column < words.size(); ++column)
            words[column] += wanted > 0.0 ? left * lines[column] / wanted : left / static_cast<double>(words.size());
        return words;
    }

    QTextTable* beginTable(int rows, int columns, const std::vector<double>& shares, double border) {
        m_cursor.movePosition(QTextCursor::End);
        QTextTableFormat format;
        format.setCellPadding(kTenths * kCellPadding);
        format.setCellSpacing(0.0);
        format.setBorder(border > 0 ? kTenths * 0.5 : 0.0);
        format.setBorderBrush(kRule);
        format.setBorderStyle(border > 0 ? QTextFrameFormat::BorderStyle_Solid : QTextFrameFormat::BorderStyle_None);
        format.setBorderCollapse(true);
        format.setHeaderRowCount(border > 0 ? 1 : 0);
        if (m_breaks.contains(m_units.size())) format.setPageBreakPolicy(QTextFormat::PageBreak_AlwaysBefore);
        format.setWidth(QTextLength(QTextLength::PercentageLength, 100.0));
        format.setTopMargin(kTenths * 2.0);
        format.setBottomMargin(kTenths * 6.0);
        double all = 0.0;
        for (const double share : shares)
            all += share;
        QList<QTextLength> widths;
        for (const double share : shares)
            widths.append(QTextLength(QTextLength::PercentageLength, 100.0 * share / all));
        format.setColumnWidthConstraints(widths);
        m_fresh = false;
        return m_cursor.insertTable(rows, columns, format);
    }

    /// The block after a table, which Qt makes by itself, kept thin.
    void endTable() {
        m_cursor.movePosition(QTextCursor::End);
        QTextBlockFormat thin;
        thin.setLineHeight(1.0, QTextBlockFormat::FixedHeight);
        m_cursor.setBlockFormat(thin);
        m_cursor.setBlockCharFormat(letters(1.0));
    }

    static void cell(QTextTable& table, int row, int column, const QString& text, const QTextCharFormat& format,
                     Qt::Alignment alignment = Qt::AlignLeft, const QColor& background = {}) {
        QTextTableCell at = table.cellAt(row, column);
        if (background.isValid()) {
            QTextCharFormat shade = at.format();
            shade.setBackground(background);
            at.setFormat(shade);
        }
        QTextCursor cursor = at.firstCursorPosition();
        QTextBlockFormat shape;
        shape.setAlignment(alignment);
        cursor.setBlockFormat(shape);
        cursor.setBlockCharFormat(format);
        cursor.insertText(text, format);
    }

    QTextDocument& m_document;
    QTextCursor m_cursor;
    double m_width;
    const PageBreaks& m_breaks;
    std::vector<PageUnit> m_units;
    int m_pictures = 0;
    bool m_fresh = true;
};

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
        m_text->setDefaultFont(fontOf(kTextPt));
        m_text->documentLayout()->setPaintDevice(nullptr);
        Writer writer(*m_text, area.width(), breaks);
        writer.write(report);
        m_text->setPageSize(area); // after the writing, so that the pages are laid out once
        const auto more = missingBreak(*m_text, writer.units(), area.height(), breaks);
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
    painter.setFont(fontOf(kFootPt));
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
