// No number differs between screen, PDF, CSV, JSON and Structured Report: a case with random values is written in all of these
// forms, each is read back by a reader of its own, and every value of one is looked for in all others.
#include "app/commands/course_commands.h"
#include "app/format/terms.h"
#include "app/models/comparison_model.h"
#include "app/report/case_report.h"
#include "app/report/graphics_session.h"
#include "app/report/report_files.h"
#include "app/report/report_pages.h"
#include "app/report/value_table.h"
#include "core/record/case_json.h"
#include "dicomio/report/report_from_record.h"
#include "dicomio/report/report_reader.h"
#include "dicomio/report/structured_report.h"
#include "tests/app/support/decision_case.h"
#include "tests/app/support/synthetic_session.h"

#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <gmock/gmock.h>
#include <map>
#include <random>

using namespace gauge;
using namespace gauge::app;

namespace {

using Key = std::pair<std::string, std::string>; ///< group and id
using Values = std::map<Key, double>;

/// Values of every row of the table at CT, echo before and after the repair, and fluoroscopy; typed readings beside them.
void fillAtRandom(CaseDocument& document, unsigned seed) {
    std::mt19937_64 random(seed);
    const auto between = [&](double least, double most) { return std::uniform_real_distribution(least, most)(random); };
    fixture::addCourse(document);
    fixture::addCtValues(document);
    fixture::addChart(document);
    for (const std::string group : {"ct", "echo/start", "echo/clipped", "fluoroscopy/start"}) {
        std::vector<core::RecordedValue> values;
        for (const core::RecordedValue& old : document.record().values)
            if (old.group == group) {
                core::RecordedValue value = old;
                value.estimate.value *= between(0.8, 1.25);
                value.estimate.components = {between(0.01, 0.6), between(0.01, 0.9), between(0.0, 0.4), between(0.0, 0.3)};
                values.push_back(std::move(value));
            }
        document.apply(core::SetValues{std::move(values), group});
    }
    for (const auto modality : {core::Modality::Echo2d, core::Modality::Echo3d, core::Modality::Fluoroscopy}) {
        core::TypedReading reading;
        reading.observation.modality = modality;
        reading.observation.quantity = core::Quantity::LandingZoneLongestDiameter;
        reading.observation.derivation =
            modality == core::Modality::Echo3d ? core::Derivation::Contour : core::Derivation::LargestOfViews;
        reading.observation.state = "clipped";
        reading.observation.valueMm = between(12.0, 34.0);
        reading.observation.standardUncertaintyMm = between(0.2, 1.4);
        document.push(std::make_unique<SetTypedReading>(document, freeId<core::TypedReading>(document.record(), "t"), reading));
    }
}

/// The record's numbers, and the typed ones under the names that the table of values gives them.
Values ofRecord(const core::CaseRecord& record) {
    Values all;
    for (const core::RecordedValue& value : record.values)
        if (std::isfinite(value.estimate.value)) all[{value.group, value.id}] = value.estimate.value;
    for (const auto& [id, entry] : record.readings)
        all[{"reading/" + id, std::string(core::word(entry.content.observation.quantity))}] = entry.content.observation.valueMm;
    return all;
}

Values ofJson(const nlohmann::json& lines) {
    Values all;
    for (const auto& line : lines)
        if (!line.at("value").is_null()) all[{line.at("group"), line.at("id")}] = line.at("value");
    return all;
}

/// By Python's csv module, which shares no code with the writer.
Values ofCsv(const QString& file) {
    QProcess python;
    python.start("/usr/bin/python3", {"-c", R"(
import csv, json, sys
rows = csv.DictReader(open(sys.argv[1], newline='', encoding='utf-8-sig'))
print(json.dumps([{'group': r['group'], 'id': r['id'], 'value': float(r['value']) if r['value'] else None} for r in rows]))
)",
                                      file});
    EXPECT_TRUE(python.waitForFinished(30000));
    return ofJson(nlohmann::json::parse(python.readAllStandardOutput().toStdString()));
}

/// By the reader of Structured Reports; typed readings under the name of their quantity again.
Values ofReport(const core::CaseRecord& record, const QString& file) {
    const auto read = dicomio::readReport(file.toStdString());
    EXPECT_TRUE(read) << (read ? "" : read.error().message);
    Values all;
    for (const auto& group : read->content.groups)
        for (const auto& m : group.measurements) {
            const auto colon = m.trackingId.find(':');
            const std::string named = m.trackingId.substr(0, colon), id = m.trackingId.substr(colon + 1);
            const bool measured = std::any_of(record.values.begin(), record.values.end(),
                                              [&](const core::RecordedValue& v) { return v.group == named && v.id == id; });
            if (measured) all[{named, id}] = m.value;
            if (named.starts_with("reading/") && id == "value") {
                const auto& reading = record.readings.at(named.substr(8)).content;
                all[{named, std::string(core::word(reading.observation.quantity))}] = m.value;
            }
        }
    return all;
}

dicomio::ReportSources sources() {
    dicomio::ReportSources s;
    s.study.studyUid = "2.25.5001";
    s.time = "2031-02-04T12:05:06+01:00";
    s.device = {{}, "Ostium Gauge", "Ostium Gauge", {}, "0"};
    s.cautions = {"For planning by licensed persons."};
    return s;
}

QString pdfText(const QString& file) {
    QProcess process;
    process.start("pdftotext", {"-layout", file, "-"});
    process.waitForFinished(30000);
    return plainSpaces(QString::fromUtf8(process.readAllStandardOutput())).simplified();
}

/// Every cell of the table on screen: the same number in the record, its text rounded from it, the text in the PDF.
int expectShown(const ComparisonModel& model, const Values& record, const QString& pdf) {
    int cells = 0;
    for (int row = 0; row < model.rowCount(); ++row)
        for (int column = 1; column < model.columnCount(); ++column) {
            const QModelIndex cell = model.index(row, column);
            const QString shown = plainSpaces(cell.data().toString());
            if (!cell.data(ComparisonModel::NumberRole).isValid()) continue; // a dash: nothing was measured
            ++cells;
            EXPECT_TRUE(pdf.contains(shown)) << "the PDF does not hold " << shown.toStdString();
            const double number = cell.data(ComparisonModel::NumberRole).toDouble();
            const bool isInRecord = std::any_of(record.begin(), record.end(), [&](const auto& v) { return v.second == number; });
            EXPECT_TRUE(isInRecord) << "no value of the case is " << number;
            const core::RecordedValue* value = model.valueAt(cell);
            if (value) {
                // Levels of enhancement have no evaluated uncertainty and are shown without one.
                const Unit unit = unitOf(value->unit);
                const QString full = plainSpaces(estimate(value->estimate, unit)), plain = plainSpaces(quantity(value->estimate.value, unit));
                EXPECT_TRUE(shown == full || shown == plain) << shown.toStdString() << " is not " << full.toStdString();
            }
        }
    return cells;
}

class SameNumbersTest : public testing::Test {
protected:
    void expectSame(Session& session, Answers& answers) {
        const core::CaseRecord& record = answers.record();
        const Values expected = ofRecord(record);
        ComparisonModel model;
        model.setAnswers(answers);
        const QString pdf = folder.filePath("a.pdf"), csv = folder.filePath("a.csv"), sr = folder.filePath("a.dcm");
        ASSERT_TRUE(writePdf(printedReport(answers, false), Paper::A4, pdf.toStdString()));
        QFile file(csv);
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        const std::string text = valuesCsv(record);
        file.write(text.data(), static_cast<qint64>(text.size()));
        file.close();
        const auto content = dicomio::reportFromRecord(record, sources());
        ASSERT_TRUE(content) << content.error().message;
        ASSERT_TRUE(dicomio::writeStructuredReport(*content, sr.toStdString()));

        EXPECT_EQ(ofJson(nlohmann::json::parse(valuesJson(record).dump())), expected);
        EXPECT_EQ(ofCsv(csv), expected);
        Values current = expected; // a report holds no value that has become stale
        for (const core::RecordedValue& value : record.values)
            if (core::isStale(record, value)) current.erase({value.group, value.id});
        EXPECT_EQ(ofReport(record, sr), current);
        const QString words = pdfText(pdf);
        m_cells = expectShown(model, expected, words);
        // Every value, also those without a row of the table, stands in the list of the report.
        for (const core::RecordedValue& value : record.values)
            if (std::isfinite(value.estimate.value)) {
                const QString shown = plainSpaces(estimate(value.estimate, unitOf(value.unit)));
                EXPECT_TRUE(words.contains(shown)) << value.group << ' ' << value.id << ": " << shown.toStdString();
            }
        Q_UNUSED(session);
    }
    GraphicsSession graphics;
    QTemporaryDir folder;
    int m_cells = 0;
};

} // namespace

TEST_F(SameNumbersTest, StandOnScreenInPdfCsvJsonAndReportOfRandomCases) {
    for (const unsigned seed : {1u, 20u, 303u}) {
        SCOPED_TRACE(seed);
        Session session;
        session.setEngine(fixture::syntheticEngine());
        fillAtRandom(session.document(), seed);
        Answers answers(session);
        expectSame(session, answers);
        EXPECT_GT(m_cells, 25);
    }
}

TEST_F(SameNumbersTest, StandOnScreenInPdfCsvJsonAndReportOfAMeasuredCase) {
    Session session;
    session.setEngine(fixture::syntheticEngine());
    fixture::openAndMeasure(session);
    fixture::addCourse(session.document());
    fixture::addChart(session.document());
    Answers answers(session);
    answers.finishNow();
    expectSame(session, answers);
    EXPECT_GT(m_cells, 25);
}
