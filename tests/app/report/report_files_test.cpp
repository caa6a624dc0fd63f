// One set of answers, several files: no number may differ between them.
#include "app/report/report_files.h"

#include "app/format/quantity.h"
#include "app/models/comparison_model.h"
#include "app/report/case_report.h"
#include "app/report/graphics_session.h"
#include "tests/app/support/synthetic_session.h"

#include <QFile>
#include <QProcess>
#include <QTemporaryDir>
#include <fstream>
#include <gmock/gmock.h>
#include <nlohmann/json.hpp>
#include <memory>

namespace {

using namespace gauge;
using namespace gauge::app;
using testing::HasSubstr;
using testing::Not;

std::string contentOf(const std::filesystem::path& file) {
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

template <class Content> void set(CaseDocument& document, const std::string& id, const Content& content) {
    document.apply(core::SetEntry<Content>{id, core::Entry<Content>{content, document.nextRevision()}});
}
template <class Content> void set(CaseDocument& document, const Content& content) {
    document.apply(core::SetSingle<Content>{core::Entry<Content>{content, document.nextRevision()}});
}

/// A finished case, made once for all tests: the simulation of further readings takes seconds.
struct FinishedCase {
    FinishedCase() : answers(session) {
        session.setEngine(fixture::syntheticEngine());
        fixture::openAndMeasure(session);
        CaseDocument& document = session.document();
        set(document, core::Patient{"Nemo^Ines", "INV-7", "19510203", "F", "Teaching case", {}});
        core::Moment baseline;
        baseline.circulation.state = "baseline";
        baseline.circulation.stage = core::Stage::BeforeRepair;
        baseline.circulation.meanPressureMmHg = 8.0;
        baseline.circulation.pressureSource = core::PressureSource::Direct;
        baseline.circulation.rhythm = core::Rhythm::AtrialFibrillation;
        set(document, "baseline", baseline);
        core::TypedReading echo;
        echo.observation.modality = core::Modality::Echo2d;
        echo.observation.derivation = core::Derivation::EllipseFromAngles;
        echo.observation.stage = core::Stage::BeforeRepair;
        echo.observation.state = "baseline";
        echo.observation.valueMm = 19.4;
        set(document, "1", echo);
        core::SizingChoice choice;
        choice.chartText = contentOf(std::string(GAUGE_SOURCE_DIR) + "/resources/charts/demo-lobe-and-disc.json");
        choice.chartSource = "demo-lobe-and-disc.json";
        choice.decisionPressureMmHg = 12.0;
        choice.lowestMmHg = 8.0;
        choice.highestMmHg = 18.0;
        set(document, choice);
        answers.finishNow();
        choice.size = answers.sizing()->sizes.at(*answers.sizing()->leading).name;
        set(document, choice);
        core::StasisFinding stasis;
        stasis.stage = core::Stage::BeforeRepair;
        stasis.echoContrastGrade = 2;
        stasis.seenBy = "reader A";
        set(document, "1", stasis);
        core::ReleaseState look;
        look.findings = {{core::ReleaseQuantity::JetWidth, 2.0, 0.5, "45 degrees", "", "reader A", ""},
                         {core::ReleaseQuantity::ImplantWidth, 19.0, 0.5, "90 degrees", "", "reader A", ""}};
        set(document, "1", look);
        set(document, core::Decision{"Close with the chosen size after filling.", choice.size, "", ""});
        answers.finishNow();
    }

    GraphicsSession graphics;
    Session session;
    Answers answers;
};

class ReportFilesTest : public testing::Test {
protected:
    static void SetUpTestSuite() { finished = std::make_unique<FinishedCase>(); }
    static void TearDownTestSuite() { finished.reset(); }
    ReportFilesTest() : answers(finished->answers) {
        if (const char* keep = std::getenv("GAUGE_KEEP_REPORT")) folder.setAutoRemove(keep[0] == '\0');
    }

    ReportFiles write(const ReportRequest& request = {}) {
        auto files = writeReportFiles(answers, folder.path().toStdString(), request);
        if (!files) throw std::runtime_error(files.error().message);
        return *files;
    }
    std::string pdfText() const {
        QProcess process;
        process.start("pdftotext", {"-layout", folder.filePath("report.pdf"), "-"});
        process.waitForFinished(30000);
        return process.readAllStandardOutput().toStdString();
    }
    std::filesystem::path path(const char* name) const { return folder.filePath(name).toStdString(); }

    inline static std::unique_ptr<FinishedCase> finished;
    QTemporaryDir folder;
    Answers& answers;
};

} // namespace

TEST_F(ReportFilesTest, HoldsDecisionWarningsChartAndCautions) {
    write();
    const std::string text = pdfText();
    for (const char* expected : {"Nemo, Ines", "INV-7", "1951-02-03", "Draft, not signed", "Close with the chosen size", "Chosen size",
                                 "fit chance", "atrial fibrillation", "8 mmHg", "invented", "Cautions", "not a medical device",
                                 "Signature", "Looks at the implant", "45 degrees", "Pressures and stasis"})
        EXPECT_THAT(text, HasSubstr(expected));
}

// Every number of the comparison table, and every recorded value, as shown on screen stands in the PDF too.
TEST_F(ReportFilesTest, PrintsEveryNumberAsTheScreenShowsIt) {
    write();
    QString text = QString::fromStdString(pdfText()).simplified();
    text = plainSpaces(text);
    ComparisonModel model;
    model.setAnswers(answers);
    int numbers = 0;
    for (int row = 0; row < model.rowCount(); ++row)
        for (int column = 1; column < model.columnCount(); ++column) {
            const QString shown = plainSpaces(model.index(row, column).data().toString());
            if (shown.isEmpty()) continue;
            EXPECT_TRUE(text.contains(shown)) << shown.toStdString();
            ++numbers;
        }
    EXPECT_GT(numbers, 15);
}

TEST_F(ReportFilesTest, GivesTheSameNumbersInCsvAndJson) {
    write();
    const auto json = nlohmann::json::parse(contentOf(path("report.json")));
    EXPECT_EQ(json["format"], "ostium-gauge/report/1");
    ASSERT_EQ(json["values"].size(), answers.record().values.size() + answers.record().readings.size());
    const std::string csv = contentOf(path("values.csv"));
    for (std::size_t n = 0; n < answers.record().values.size(); ++n) {
        const core::RecordedValue& value = answers.record().values[n];
        if (!std::isfinite(value.estimate.value)) continue;
        EXPECT_EQ(json["values"][n]["value"].get<double>(), value.estimate.value) << value.id;
        EXPECT_THAT(csv, HasSubstr(value.group + "," + value.id + "," + nlohmann::json(value.estimate.value).dump()));
    }
    EXPECT_EQ(json["sizing"]["sizes"].size(), answers.sizing()->sizes.size());
    EXPECT_EQ(json["case"]["chosen_size"], answers.chosenSize()->name);
}

TEST_F(ReportFilesTest, HidesNamesEverywhere) {
    ReportRequest request;
    request.namesHidden = true;
    const ReportFiles files = write(request);
    for (const auto& file : files.written) {
        EXPECT_NE(file.extension(), ".dcm");
        const std::string bytes = file.extension() == ".pdf" ? pdfText() : contentOf(file);
        for (const char* trace : {"Nemo", "INV-7", "1951"})
            EXPECT_THAT(bytes, Not(HasSubstr(trace))) << file;
    }
}

TEST_F(ReportFilesTest, SaysWhichFolderCannotBeWritten) {
    const auto files = writeReportFiles(answers, "/proc/nowhere", {});
    ASSERT_FALSE(files);
    EXPECT_EQ(files.error().code, core::ErrorCode::OutputUnwritable);
    EXPECT_THAT(files.error().message, HasSubstr("/proc/nowhere"));
}

TEST(PersonName, ReadsTheComponentsOfDicom) {
    EXPECT_EQ(personName("Nemo^Ines^Q."), "Nemo, Ines Q.");
    EXPECT_EQ(personName("Nemo"), "Nemo");
    EXPECT_EQ(personName("Yamada^Tarou=\xe5\xb1\xb1"), "Yamada, Tarou");
    EXPECT_EQ(personName(""), "");
}
