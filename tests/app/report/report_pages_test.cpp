// Layout is judged by the system's PDF tools (poppler: pdftotext, pdffonts, pdfinfo), which share no code with the writer.
#include "app/report/report_pages.h"

#include "app/report/graphics_session.h"

#include <QFile>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <gtest/gtest.h>

namespace {

using namespace gauge::app;

QString output(const QString& program, const QStringList& arguments) {
    QProcess process;
    process.start(program, arguments);
    EXPECT_TRUE(process.waitForFinished(60000)) << program.toStdString() << " is missing or hangs";
    EXPECT_EQ(process.exitCode(), 0) << process.readAllStandardError().toStdString();
    return QString::fromUtf8(process.readAllStandardOutput());
}

ReportTable longTable() {
    ReportTable table;
    table.header = {"Quantity", "CT, before the procedure", "2D echo, after the repair"};
    table.numeric = {1, 2};
    for (int n = 0; n < 70; ++n)
        table.rows.push_back({QStringLiteral("row %1").arg(n), QStringLiteral("%1.5 ± 0.4 mm").arg(n), QStringLiteral("%1.1 ± 0.9 mm").arg(n)});
    table.rows.insert(table.rows.begin() + 3, QStringList{"Landing zone", "", ""});
    table.headings = {3};
    return table;
}

PrintedReport manyPages() {
    PrintedReport report;
    report.title = QStringLiteral("Closure of the left atrial appendage: sizing");
    report.facts = {{"Patient", "Nemo^Ines"}, {"Patient ID", "INV-7"}, {"Born", "1951-02-03"}, {"Program", "Ostium Gauge 0.1.0"}};
    ReportSection table{"Comparison", {longTable()}};
    QImage image(400, 300, QImage::Format_RGB32);
    image.fill(Qt::darkCyan);
    ReportSection pictures{"Pictures", {std::vector<ReportPicture>{{image, "Ostium", 0.5}, {image, "Landing zone", 0.5}, {image, "Long section", 1.0}}}};
    ReportSection words{"Warnings",
                        {ReportList{{"Size 19.5 would be undersized at 20 mmHg.", "Zweite Warnung mit Umlauten: größer, schmäler."}, true},
                         ReportParagraph{QStringLiteral("Ein sehr langes Wort: Vorhofohrverschlusssystemgrößenbestimmung. ").repeated(12)}}};
    report.sections = {table, pictures, words};
    report.cautions = {"Research and teaching software, not a medical device.", "Re-measure when haemodynamics have changed."};
    report.foot = QStringLiteral("Nemo^Ines · INV-7 · Ostium Gauge 0.1.0");
    return report;
}

class ReportPagesTest : public testing::TestWithParam<Paper> {
protected:
    void SetUp() override {
        file = folder.filePath("report.pdf");
        const auto written = writePdf(manyPages(), GetParam(), file.toStdString());
        ASSERT_TRUE(written) << written.error().message;
    }
    GraphicsSession graphics;
    QTemporaryDir folder;
    QString file;
};

TEST_P(ReportPagesTest, HasThePaperAskedFor) {
    const QString info = output("pdfinfo", {file});
    const QString size = GetParam() == Paper::A4 ? "595" : "612"; // points: ISO 216 A4 595 x 842, Letter 612 x 792
    EXPECT_TRUE(info.contains(QRegularExpression("Page size:\\s+" + size))) << info.toStdString();
    EXPECT_TRUE(info.contains("Closure of the left atrial appendage")) << "the title is the document's title";
}

TEST_P(ReportPagesTest, EveryTextCanBeSearched) {
    const QString text = output("pdftotext", {"-layout", file, "-"});
    for (const char* expected : {"Nemo^Ines", "INV-7", "row 0", "row 69", "69.5", "±", "undersized at 20 mmHg", "größer, schmäler",
                                 "Research and teaching software", "Re-measure when", "Signature", "Landing zone"})
        EXPECT_TRUE(text.contains(QString::fromUtf8(expected))) << expected;
}

TEST_P(ReportPagesTest, EveryPageHasFootNumberAndTableHead) {
    const int count = [&] {
        const ReportPages pages(manyPages(), GetParam());
        return pages.count();
    }();
    ASSERT_GE(count, 3);
    for (int page = 1; page <= count; ++page) {
        const QString text = output("pdftotext", {"-f", QString::number(page), "-l", QString::number(page), "-layout", file, "-"});
        EXPECT_TRUE(text.contains(QStringLiteral("Page %1 of %2").arg(page).arg(count))) << page;
        EXPECT_TRUE(text.contains("Nemo^Ines · INV-7")) << page;
        EXPECT_TRUE(text.contains("not a medical device")) << page;
        if (text.contains("row ")) {
            EXPECT_TRUE(text.contains("CT, before the procedure")) << "a table's head is repeated, page " << page;
        }
    }
}

TEST_P(ReportPagesTest, FontsAreEmbedded) {
    const QStringList lines = output("pdffonts", {file}).split('\n', Qt::SkipEmptyParts);
    ASSERT_GT(lines.size(), 2) << "two lines of head, then fonts";
    for (const QString& line : lines.mid(2))
        EXPECT_TRUE(line.contains(QRegularExpression("\\byes\\s+(yes|no)\\s+yes\\b"))) << "embedded, subset or whole, with Unicode: " << line.toStdString();
}

TEST_P(ReportPagesTest, NoWordLeavesThePaperOrTouchesTheFoot) {
    const QString boxes = output("pdftotext", {"-bbox", file, "-"});
    static const QRegularExpression word("<word xMin=\"([-0-9.]+)\" yMin=\"([-0-9.]+)\" xMax=\"([-0-9.]+)\" yMax=\"([-0-9.]+)\">(.*)</word>");
    const double width = GetParam() == Paper::A4 ? 595.0 : 612.0, height = GetParam() == Paper::A4 ? 842.0 : 792.0;
    constexpr double kMargin = 40.0; // points; the layout's margins are 42 and more
    int words = 0;
    for (auto all = word.globalMatch(boxes); all.hasNext(); ++words) {
        const auto match = all.next();
        EXPECT_GE(match.captured(1).toDouble(), kMargin) << match.captured(5).toStdString();
        EXPECT_LE(match.captured(3).toDouble(), width - kMargin) << match.captured(5).toStdString();
        EXPECT_LE(match.captured(4).toDouble(), height - 10.0) << match.captured(5).toStdString();
    }
    EXPECT_GT(words, 300);
}

INSTANTIATE_TEST_SUITE_P(Papers, ReportPagesTest, testing::Values(Paper::A4, Paper::Letter),
                         [](const auto& paper) { return paper.param == Paper::A4 ? "A4" : "Letter"; });

TEST(WritePdf, SaysWhichFileCannotBeWritten) {
    const GraphicsSession graphics;
    const auto written = writePdf(manyPages(), Paper::A4, "/nowhere/at/all/report.pdf");
    ASSERT_FALSE(written);
    EXPECT_EQ(written.error().code, gauge::core::ErrorCode::OutputUnwritable);
    EXPECT_NE(written.error().message.find("/nowhere/at/all/report.pdf"), std::string::npos);
}

} // namespace
