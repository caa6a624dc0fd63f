#include "app/report/report_writer.h"

#include "app/report/report_style.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QTextCursor>
#include <QTextDocument>
#include <QTextList>
#include <QTextTable>
#include <QUrl>
#include <algorithm>
#include <cmath>
#include <utility>

namespace gauge::app {
namespace {

QTextCharFormat letters(double points, const QColor& colour = kInk, bool strong = false) {
    QTextCharFormat format;
    format.setFont(reportFont(points, strong));
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
        const QFontMetricsF letters(reportFont(kSmallPt, true));
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

} // namespace

QFont reportFont(double points, bool strong) {
    QFont font(QStringLiteral("DejaVu Sans"));
    font.setPixelSize(static_cast<int>(std::lround(kTenths * points)));
    font.setHintingPreference(QFont::PreferNoHinting);
    // Ligatures would hide words from a search ("ﬁlling" for "filling"); any spacing of letters switches them off.
    font.setLetterSpacing(QFont::AbsoluteSpacing, 0.02);
    font.setWeight(strong ? QFont::DemiBold : QFont::Normal);
    return font;
}

std::vector<PageUnit> writeReport(const PrintedReport& report, QTextDocument& document, double width, const PageBreaks& breaks) {
    Writer writer(document, width, breaks);
    writer.write(report);
    return writer.units();
}

} // namespace gauge::app
