// Readings of structured reports come into a case: as one step, once, and of this patient.
#include "app/document/report_offer.h"

#include "app/commands/images_commands.h"
#include "app/models/comparison_model.h"
#include "dicomio/report/report_codes.h"
#include "dicomio/report/report_from_record.h"
#include "dicomio/report/structured_report.h"
#include "tests/app/support/decision_case.h"
#include "tests/app/support/synthetic_session.h"

#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <gmock/gmock.h>

using namespace gauge;
using namespace gauge::app;
using testing::HasSubstr;

namespace {

const core::Patient kIda{"Tern^Ida", "INV-31", "19480311", "F", "", {}};

/// A case with CT values, moments, echo and a typed reading, and its own report.
class ReportOfferTest : public testing::Test {
protected:
    ReportOfferTest() {
        setPatient(theirs, kIda);
        fixture::addCtValues(theirs);
        fixture::addCourse(theirs);
    }
    QString report() {
        dicomio::ReportSources sources;
        sources.study.studyUid = "2.25.5001";
        sources.time = "2031-02-04T12:05:06+01:00";
        sources.device = {{}, "Ostium Gauge", "Ostium Gauge", {}, "0"};
        sources.cautions = {"For planning by licensed persons."};
        const auto content = dicomio::reportFromRecord(theirs.record(), sources);
        EXPECT_TRUE(content) << (content ? "" : content.error().message);
        const QString file = folder.filePath("report.dcm");
        const auto written = dicomio::writeStructuredReport(*content, file.toStdString());
        EXPECT_TRUE(written) << (written ? "" : written.error().message);
        return file;
    }
    ReportOffer offer(const core::CaseRecord& record) {
        auto made = offerOf(record, report().toStdString());
        EXPECT_TRUE(made) << (made ? "" : made.error().message);
        return *made;
    }
    QTemporaryDir folder;
    CaseDocument theirs, ours;
};

} // namespace

TEST_F(ReportOfferTest, GivesAnEmptyCaseEveryReadingWithItsPressureAsOneStep) {
    setPatient(ours, kIda);
    const ReportOffer offer = this->offer(ours.record());
    EXPECT_TRUE(offer.otherPatient.isEmpty());
    EXPECT_FALSE(offer.patientUnknown);
    const core::CaseReadings expected = core::caseReadings(theirs.record());
    ASSERT_EQ(offer.fresh.size(), expected.observations.size());
    const core::CaseRecord before = ours.record();
    EXPECT_EQ(takeReadings(ours, offer), static_cast<int>(offer.fresh.size()));
    EXPECT_EQ(ours.undoStack().count(), 1);

    const core::CaseReadings found = core::caseReadings(ours.record());
    ASSERT_EQ(found.observations.size(), expected.observations.size());
    for (const core::Observation& e : expected.observations) {
        const auto same = std::find_if(found.observations.begin(), found.observations.end(), [&](const core::Observation& o) {
            return o.quantity == e.quantity && o.modality == e.modality && o.derivation == e.derivation && o.stage == e.stage &&
                   o.valueMm == e.valueMm && o.pressureMmHg == e.pressureMmHg && o.vWaveMmHg == e.vWaveMmHg &&
                   o.standardUncertaintyMm == e.standardUncertaintyMm;
        });
        EXPECT_NE(same, found.observations.end()) << core::plainName(e.modality) << ' ' << core::plainName(e.quantity);
    }
    for (const auto& [id, entry] : ours.record().readings)
        EXPECT_THAT(entry.content.note, HasSubstr("report of 2031-02-04"));
    ours.undoStack().undo();
    EXPECT_EQ(ours.record(), before);
    ours.undoStack().redo();
    EXPECT_EQ(ours.record().readings.size(), offer.fresh.size());
}

TEST_F(ReportOfferTest, OffersNothingTwice) {
    setPatient(ours, kIda);
    takeReadings(ours, offer(ours.record()));
    const auto steps = ours.undoStack().count();
    const ReportOffer again = offer(ours.record());
    EXPECT_TRUE(again.fresh.empty());
    EXPECT_EQ(again.present, static_cast<int>(core::caseReadings(theirs.record()).observations.size()));
    EXPECT_EQ(takeReadings(ours, again), 0);
    EXPECT_EQ(ours.undoStack().count(), steps);
    // Nor to the case that the report was made of.
    EXPECT_TRUE(offer(theirs.record()).fresh.empty());
}

TEST_F(ReportOfferTest, SaysWhatSpeaksForAnotherPatient) {
    setPatient(ours, {"Heron^Max", "INV-32", "19520101", "M", "", {}});
    const ReportOffer other = offer(ours.record());
    ASSERT_EQ(other.otherPatient.size(), 3);
    EXPECT_THAT(other.otherPatient[0].toStdString(), HasSubstr("“INV-32” in the case and “INV-31” in the report"));
    EXPECT_THAT(other.otherPatient[1].toStdString(), HasSubstr("“Heron, Max” in the case and “Tern, Ida” in the report"));
    EXPECT_THAT(other.otherPatient[2].toStdString(), HasSubstr("1952-01-01 in the case and 1948-03-11 in the report"));
    CaseDocument padded; // the same person as another program writes the name
    setPatient(padded, {"TERN^Ida^^", "INV-31", "", "", "", {}});
    EXPECT_TRUE(offer(padded.record()).otherPatient.isEmpty());
    const ReportOffer nobody = offer({});
    EXPECT_TRUE(nobody.otherPatient.isEmpty());
    EXPECT_TRUE(nobody.patientUnknown);
}

TEST_F(ReportOfferTest, ListsWhatHasNoPlaceInWords) {
    setPatient(ours, kIda);
    const ReportOffer offer = this->offer(ours.record());
    const QStringList lines = leftOutLines(offer);
    ASSERT_EQ(lines.size(), static_cast<int>(offer.leftOut.size()));
    ASSERT_FALSE(lines.isEmpty());
    EXPECT_TRUE(std::any_of(lines.begin(), lines.end(), [](const QString& line) {
        return line.contains("the comparison table has no row for it");
    }));
    const QString said = takenSentence(offer, 3);
    EXPECT_THAT(said.toStdString(), HasSubstr("have no place in the comparison table"));
}

TEST_F(ReportOfferTest, ChangesNothingInACaseThatMayOnlyBeRead) {
    const QString file = folder.filePath("a.case.json");
    CaseDocument writer;
    setPatient(writer, kIda);
    ASSERT_TRUE(writer.saveAs(file));
    ASSERT_TRUE(ours.open(file)); // the writer holds it
    ASSERT_TRUE(ours.isReadOnly());
    const core::CaseRecord before = ours.record();
    QSignalSpy refused(&ours, &CaseDocument::refused);
    EXPECT_EQ(takeReadings(ours, offer(ours.record())), 0);
    EXPECT_EQ(refused.count(), 1);
    // Nor does what follows from images or marks: it would be another case than the one that is being read.
    ours.apply(core::SetEntry<core::Evidence>{"2.25.9", core::Entry<core::Evidence>{}});
    ours.apply(core::SetValues{{}, "ct"});
    EXPECT_EQ(ours.record(), before);
    EXPECT_EQ(ours.journal().entries().size(), writer.journal().entries().size());
}

// Two reports may say two things of the same quantity at the same moment; the table shows both.
TEST_F(ReportOfferTest, ShowsTwoReadingsOfOneQuantitySideBySide) {
    Session session;
    CaseDocument& document = session.document();
    for (const double mm : {19.0, 22.0}) {
        ReportOffer offer;
        dicomio::ReportReading one;
        one.reading.observation.modality = core::Modality::Echo3d;
        one.reading.observation.valueMm = mm;
        one.moment = core::Moment{};
        one.moment->circulation.meanPressureMmHg = 12.0;
        offer.fresh = {one};
        takeReadings(document, offer);
    }
    EXPECT_EQ(document.record().moments.size(), 1u);
    Answers answers(session);
    ComparisonModel model;
    model.setAnswers(answers);
    QStringList shown;
    for (int row = 0; row < model.rowCount(); ++row)
        for (int column = 1; column < model.columnCount(); ++column)
            shown << plainSpaces(model.index(row, column).data().toString());
    EXPECT_TRUE(std::any_of(shown.begin(), shown.end(), [](const QString& s) { return s.contains("19.0"); }));
    EXPECT_TRUE(std::any_of(shown.begin(), shown.end(), [](const QString& s) { return s.contains("22.0"); }));
}

TEST_F(ReportOfferTest, KnowsAReportFromOtherFiles) {
    EXPECT_TRUE(isReportFile(report()));
    QFile text(folder.filePath("notes.dcm"));
    ASSERT_TRUE(text.open(QIODevice::WriteOnly));
    text.write("no DICOM");
    text.close();
    EXPECT_FALSE(isReportFile(text.fileName()));
    const auto refused = offerOf({}, text.fileName().toStdString());
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error().message, HasSubstr("Cannot read the report in notes.dcm"));
}
