#include "app/report/value_table.h"

#include <QFile>
#include <QProcess>
#include <QTemporaryDir>
#include <gtest/gtest.h>
#include <limits>

namespace {

using namespace gauge;

core::RecordedValue value(std::string id, double number) {
    core::RecordedValue one;
    one.id = std::move(id);
    one.unit = "mm";
    one.estimate = {number, {0.1, 0.2, 0.0, 0.2}, "contour, \"smooth\""};
    one.inputs = {{"mark/tip", 4}};
    core::Provenance source;
    source.sopInstanceUids = {"1.2.3", "1.2.4"};
    source.phase = "45 %";
    source.state = "before the procedure";
    source.author = "=HYPERLINK(\"http://x\")";
    one.provenance = std::make_shared<const core::Provenance>(std::move(source));
    return one;
}

core::CaseRecord record() {
    core::CaseRecord all;
    all.marks[core::MarkKind::Tip] = {{{1, 2, 3}}, 4, core::UnknownFields::object()};
    all.values = {value("ostium/area", 401.23456789012345), value("turn/angle", -12.5),
                  value("volume", std::numeric_limits<double>::quiet_NaN())};
    all.values[1].inputs = {{"mark/tip", 3}};
    return all;
}

} // namespace

TEST(CsvText, MakesFormulasHarmlessAndQuotesWhatNeedsIt) {
    EXPECT_EQ(app::csvText("plain"), "plain");
    EXPECT_EQ(app::csvText("=1+1"), "'=1+1");
    EXPECT_EQ(app::csvText("@x"), "'@x");
    EXPECT_EQ(app::csvText("-x"), "'-x");
    EXPECT_EQ(app::csvText("\t=1"), "'\t=1");
    EXPECT_EQ(app::csvText("a,b"), "\"a,b\"");
    EXPECT_EQ(app::csvText("say \"so\""), "\"say \"\"so\"\"\"");
    EXPECT_EQ(app::csvText("=a,b"), "\"'=a,b\"");
}

// Read back by Python's csv module, which shares no code with the writer.
TEST(ValuesCsv, ReadsBackWithEveryDigitByAnotherReader) {
    const QTemporaryDir folder;
    QFile file(folder.filePath("values.csv"));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    const std::string csv = app::valuesCsv(record());
    file.write(csv.data(), static_cast<qint64>(csv.size()));
    file.close();
    QProcess python;
    python.start("/usr/bin/python3", {"-c", R"(
import csv, sys
rows = list(csv.DictReader(open(sys.argv[1], newline='', encoding='utf-8-sig')))
assert len(rows) == 3, rows
assert float(rows[0]['value']) == 401.23456789012345, rows[0]
assert abs(float(rows[0]['standard_uncertainty']) - 0.3) < 1e-12, rows[0]
assert rows[0]['method'] == 'contour, "smooth"', rows[0]
assert rows[0]['stale'] == 'no' and rows[1]['stale'] == 'yes', rows
assert float(rows[1]['value']) == -12.5 and rows[2]['value'] == '', rows
assert all(r['author'].startswith("'=") for r in rows), rows
assert rows[0]['sop_instance_uids'] == '1.2.3 1.2.4' and rows[0]['frame'] == '', rows
)",
                                      file.fileName()});
    ASSERT_TRUE(python.waitForFinished(30000));
    EXPECT_EQ(python.exitCode(), 0) << python.readAllStandardError().toStdString();
}

TEST(ValuesJson, SaysTheSameAsTheRecord) {
    const auto lines = app::valuesJson(record());
    ASSERT_EQ(lines.size(), 3u);
    EXPECT_EQ(lines[0]["value"].get<double>(), 401.23456789012345);
    EXPECT_EQ(lines[0]["group"], "ct");
    EXPECT_EQ(lines[0]["components"]["plane"], 0.2);
    EXPECT_EQ(lines[1]["stale"], true);
    EXPECT_TRUE(lines[2]["value"].is_null());
    EXPECT_EQ(lines[0]["sop_instance_uids"].size(), 2u);
}
