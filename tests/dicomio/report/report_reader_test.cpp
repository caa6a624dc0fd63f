#include "dicomio/report/report_reader.h"

#include "core/record/journal.h"
#include "dicomio/report/report_codes.h"
#include "dicomio/report/structured_report.h"
#include "tests/core/record/random_edits.h"
#include "tests/dicomio/report/outside_tools.h"
#include "tests/dicomio/report/report_fixture.h"
#include "tests/dicomio/support/dicom_bytes.h"
#include "tests/dicomio/support/result_of.h"

#include <algorithm>
#include <fstream>
#include <gmock/gmock.h>
#include <iostream>
#include <map>
#include <random>
#include <rapidcheck.h>

using namespace gauge;
using namespace gauge::dicomio;
using namespace gauge::test;
using testing::HasSubstr;
namespace fs = std::filesystem;

namespace {

constexpr double kContourMm =
    0.01;                       // what is asked of contours; 32-bit coordinates lose 0.00006 mm at 1000 mm
constexpr double kPixel = 1e-4; // 32-bit coordinates of pictures up to 1000 pixels

class ReadReportFile : public testing::Test {
protected:
    ReportContent content() const {
        const auto record = fullRecord();
        return valueOf(reportFromRecord(record, sourcesOf(record)));
    }
    fs::path ours() const {
        const auto made = writeStructuredReport(content(), m_folder.path() / "ours.dcm");
        return valueOf(made).file;
    }
    void makeForeign(const std::string& more = {}) const {
        const ToolRun run =
            runScript("make_foreign.py", quoted(m_folder.path()) + " " + more, m_folder.path());
        ASSERT_EQ(run.code, 0) << run.out << run.err;
    }
    core::Error errorOfReading(const std::string& name) const {
        return errorOf(readReport(m_folder.path() / name));
    }
    TempFolder m_folder;
};

/// Regions are compared apart, since the file holds 32-bit numbers.
void expectRegions(MeasurementGroup& expected, MeasurementGroup& found) {
    ASSERT_EQ(found.patientRegions.size(), expected.patientRegions.size());
    for (std::size_t r = 0; r < expected.patientRegions.size(); ++r) {
        const PatientRegion &a = expected.patientRegions[r], &b = found.patientRegions[r];
        EXPECT_EQ(a.kind, b.kind);
        EXPECT_EQ(a.frameOfReferenceUid, b.frameOfReferenceUid);
        ASSERT_EQ(a.points.size(), b.points.size());
        for (std::size_t i = 0; i < a.points.size(); ++i)
            EXPECT_LT(core::distanceMm(a.points[i], b.points[i]), kContourMm);
    }
    ASSERT_EQ(found.pictureRegions.size(), expected.pictureRegions.size());
    for (std::size_t r = 0; r < expected.pictureRegions.size(); ++r) {
        const PictureRegion &a = expected.pictureRegions[r], &b = found.pictureRegions[r];
        EXPECT_EQ(a.kind, b.kind);
        EXPECT_EQ(a.image, b.image);
        ASSERT_EQ(a.points.size(), b.points.size());
        for (std::size_t i = 0; i < a.points.size(); ++i)
            EXPECT_LT((a.points[i] - b.points[i]).norm(), kPixel);
    }
    expected.patientRegions = found.patientRegions;
    expected.pictureRegions = found.pictureRegions;
}

} // namespace

TEST_F(ReadReportFile, GivesBackWhatWasWritten) {
    ReportContent expected = content();
    const auto read = readReport(ours());
    ReportContent found = valueOf(read).content;
    EXPECT_TRUE(read->ours);
    EXPECT_TRUE(read->complete);
    EXPECT_TRUE(read->verified);
    EXPECT_TRUE(read->notices.empty());
    EXPECT_EQ(found.title, expected.title);
    EXPECT_EQ(found.time, "2031-02-04T12:05:06.5+01:00");
    EXPECT_EQ(found.patient, expected.patient);
    EXPECT_EQ(found.study, expected.study);
    EXPECT_EQ(found.procedures, expected.procedures);
    EXPECT_EQ(found.persons, expected.persons);
    EXPECT_EQ(found.organization, expected.organization);
    EXPECT_EQ(found.images.size(), expected.images.size());
    for (const SourceImage& image : expected.images)
        EXPECT_THAT(found.images, testing::Contains(image));
    EXPECT_EQ(found.warnings, expected.warnings);
    EXPECT_EQ(found.cautions, expected.cautions);
    EXPECT_EQ(found.conclusions, expected.conclusions);
    EXPECT_EQ(found.signature, expected.signature);
    ASSERT_EQ(found.groups.size(), expected.groups.size());
    for (std::size_t g = 0; g < found.groups.size(); ++g) {
        SCOPED_TRACE(expected.groups[g].trackingId);
        expectRegions(expected.groups[g], found.groups[g]);
        ASSERT_EQ(found.groups[g].measurements.size(), expected.groups[g].measurements.size());
        for (std::size_t m = 0; m < found.groups[g].measurements.size(); ++m) {
            auto &a = expected.groups[g].measurements[m], &b = found.groups[g].measurements[m];
            a.pictureRegions.swap(b.pictureRegions); // the scale's two marks are whole numbers: exact
            EXPECT_EQ(a, b) << a.trackingId;
        }
        EXPECT_EQ(found.groups[g], expected.groups[g]);
    }
}

TEST_F(ReadReportFile, KeepsEveryNumberExactAndEveryContourInItsPlace) {
    EXPECT_TRUE(rc::check("numbers and contours", [this] {
        ReportContent content = this->content();
        content.groups.resize(1);
        MeasurementGroup& group = content.groups[0];
        group.measurements.resize(3);
        for (ReportMeasurement& m : group.measurements) {
            const double value = *rc::gen::arbitrary<double>();
            RC_PRE(std::isfinite(value));
            m.value = value;
        }
        const auto coordinate =
            rc::gen::map(rc::gen::inRange(-100000000, 100000001), [](int n) { return n * 1e-5; });
        group.patientRegions[0].points.clear();
        const int count = *rc::gen::inRange(3, 60);
        for (int i = 0; i < count; ++i)
            group.patientRegions[0].points.push_back(
                {Eigen::Vector3d(*coordinate, *coordinate, *coordinate)});
        const auto written = writeStructuredReport(content, m_folder.path() / "random.dcm");
        RC_ASSERT(written.has_value());
        const auto read = readReport(m_folder.path() / "random.dcm");
        RC_ASSERT(read.has_value());
        const MeasurementGroup& found = read->content.groups.at(0);
        for (std::size_t m = 0; m < 3; ++m)
            RC_ASSERT(found.measurements[m].value == group.measurements[m].value);
        const auto &a = group.patientRegions[0].points, &b = found.patientRegions.at(0).points;
        RC_ASSERT(a.size() == b.size());
        for (std::size_t i = 0; i < a.size(); ++i)
            RC_ASSERT(core::distanceMm(a[i], b[i]) < kContourMm);
    }));
}

// Whatever a case holds, half-drawn, nameless or strange, its report is valid and gives back every number.
TEST_F(ReadReportFile, OfAnyCaseHoldsEachOfItsCurrentValues) {
    EXPECT_TRUE(rc::check("any record", [this] {
        core::CaseRecord record = core::replay(core::testing_edits::journal());
        if (record.decision && !record.decision->content.signedBy.empty())
            record.decision->content.time = "2031-02-03T10:00:00Z"; // without a time nothing is signed
        ReportSources sources = sourcesOf(record);
        sources.contours.clear();
        sources.images.push_back({kStudy, "2.25.70", "1.2.840.10008.5.1.4.1.1.3.1", "2.25.77", "US"});
        const auto content = reportFromRecord(record, sources);
        RC_ASSERT(content.has_value());
        std::map<std::string, double> expected;
        for (const MeasurementGroup& group : content->groups)
            for (const ReportMeasurement& m : group.measurements)
                expected[m.trackingId] = m.value;
        for (const core::RecordedValue& value : record.values)
            if (!core::isStale(record, value))
                RC_ASSERT(expected.at(value.group + ":" + value.id) == value.estimate.value);
        const auto written = writeStructuredReport(*content, m_folder.path() / "any.dcm");
        if (content->groups.empty()) {
            RC_ASSERT(!written.has_value());
            return;
        }
        if (!written) RC_FAIL(written.error().message);
        const auto read = readReport(m_folder.path() / "any.dcm");
        if (expected.empty()) return; // nothing but marks: no report for a table of numbers
        if (!read) RC_FAIL(read.error().message);
        std::map<std::string, double> found;
        for (const MeasurementGroup& group : read->content.groups)
            for (const ReportMeasurement& m : group.measurements)
                found[m.trackingId] = m.value;
        RC_ASSERT(found == expected);
    }));
}

TEST_F(ReadReportFile, TakesRowsFromReportsOfOthers) {
    makeForeign();
    for (const char* name : {"foreign.dcm", "foreign-implicit.dcm"}) {
        SCOPED_TRACE(name);
        const auto read = readReport(m_folder.path() / name);
        EXPECT_FALSE(valueOf(read).ours);
        EXPECT_FALSE(read->verified);
        EXPECT_EQ(read->content.patient.name, "Müller^Änne");
        EXPECT_EQ(read->content.images.at(0).seriesUid, "1.2.9");
        const auto rows = rowsOf(*read);
        ASSERT_EQ(rows.size(), 3u);
        EXPECT_EQ(rows[0].group, "LAA 1");
        EXPECT_EQ(rows[0].name, codes::dcm("131223", ""));
        EXPECT_EQ(rows[0].site, "Left auricular appendage");
        EXPECT_EQ(rows[0].value, 23.5);
        EXPECT_EQ(rows[0].unit.value, "mm");
        EXPECT_EQ(rows[0].standardUncertainty, 0.4);
        EXPECT_EQ(rows[0].method, "Their caliper");
        EXPECT_EQ(rows[0].derivation, "Maximum");
        EXPECT_EQ(rows[0].observer, "Fremde^Ärztin");
        EXPECT_EQ(rows[0].time, "2030-01-02T03:04:05");
        EXPECT_EQ(rows[1].name.meaning, "Something that only they measure");
        EXPECT_EQ(rows[1].value, 12.5);
        EXPECT_EQ(rows[1].unit.value, "cm");
        EXPECT_EQ(rows[2].group, "Derived Imaging Measurements");
        EXPECT_EQ(rows[2].value, 350.0);
        const auto& region = read->content.groups.at(0).measurements.at(0).pictureRegions.at(0);
        EXPECT_EQ(region.points.at(0),
                  Eigen::Vector2d(10.0, 20.0)); // 10.5\20.5 is the centre of pixel (10, 20)
        EXPECT_EQ(region.image, (FrameReference{"1.2.9.9", 2}));
        EXPECT_EQ(read->content.groups.at(0).comments, std::vector<std::string>{"größer als früher"});
        ASSERT_EQ(read->notices.size(), 1u); // the number that was not obtained
        EXPECT_EQ(read->notices[0].code, "report-item-ignored");
        EXPECT_THAT(read->notices[0].text, HasSubstr("1 content items of the report have no place here"));
    }
}

TEST_F(ReadReportFile, TakesContoursAndPressureFromReportsOfOthers) {
    makeForeign();
    const auto read = readReport(m_folder.path() / "spatial.dcm");
    const MeasurementGroup& group = valueOf(read).content.groups.at(0);
    ASSERT_EQ(group.patientRegions.size(), 1u);
    EXPECT_EQ(group.patientRegions[0].kind, RegionKind::Polygon);
    EXPECT_EQ(group.patientRegions[0].frameOfReferenceUid, "1.2.7");
    ASSERT_EQ(group.patientRegions[0].points.size(), 3u); // the repeated first point is taken away
    EXPECT_EQ(group.patientRegions[0].points[2].mm, Eigen::Vector3d(10.0, 8.0, 5.0));
    ASSERT_TRUE(group.pressure);
    EXPECT_EQ(group.pressure->meanMmHg, 14.0);
    EXPECT_EQ(group.measurements.at(0).value, 34.1);
}

// Reports that other programs wrote: pydicom's own and those of the real data, number by number against
// pydicom.
TEST_F(ReadReportFile, FindsEveryNumberOfRealReports) {
    std::vector<fs::path> files{pydicomData() / "test_files" / "test-SR.dcm"};
    if (fs::is_directory(realDataFolder() / "sr"))
        for (const auto& entry : fs::directory_iterator(realDataFolder() / "sr"))
            if (entry.path().extension() == ".dcm") files.push_back(entry.path());
    if (files.size() == 1) std::cout << "no real reports in " << realDataFolder() << "\n";
    for (const fs::path& file : files) {
        SCOPED_TRACE(file);
        const auto read = readReport(file);
        std::vector<std::string> found;
        for (const ReportRow& row : rowsOf(valueOf(read))) {
            char text[200];
            std::snprintf(text, sizeof text, "%s %.9g %s", row.name.value.c_str(), row.value,
                          row.unit.value.c_str());
            found.emplace_back(text);
        }
        std::sort(found.begin(), found.end());
        std::string lines;
        for (const std::string& line : found)
            lines += line + "\n";
        EXPECT_GT(found.size(), 0u);
        EXPECT_EQ(lines, runScript("list_numbers.py", quoted(file), m_folder.path()).out);
    }
}

TEST_F(ReadReportFile, RefusesInWordsWhatIsWrong) {
    const fs::path file = ours();
    makeForeign(quoted(file));
    const auto expect = [&](const char* name, core::ErrorCode code, const char* text) {
        SCOPED_TRACE(name);
        const auto error = errorOfReading(std::string(name) + ".dcm");
        EXPECT_EQ(error.code, code) << error.message;
        EXPECT_THAT(error.message, HasSubstr("Cannot read the report in " + std::string(name) + ".dcm: "));
        EXPECT_THAT(error.message, HasSubstr(text));
    };
    using enum core::ErrorCode;
    expect("absent", FileUnreadable, "");
    expect("no-group", ObjectUnsupported,
           "it holds no measurements (its title is \"Imaging Measurement Report\")");
    expect("ct-class", ObjectUnsupported,
           "it is no Enhanced, Comprehensive or Comprehensive 3D structured report");
    expect("unit-absent", AttributeInvalid,
           "\"Area\" has no unit (MeasurementUnitsCodeSequence (0040,08EA))");
    expect("unit-without-code", AttributeInvalid,
           "\"Area\" has no unit (MeasurementUnitsCodeSequence (0040,08EA))");
    expect("number-text", AttributeInvalid,
           "\"Area\": NumericValue (0040,A30A) is \"about 20\", which is no number");
    expect("number-contradicted", AttributeInvalid,
           "NumericValue (0040,A30A) is 34.5, but FloatingPointValue (0040,A161) 345.678901234567");
    expect("deviation-unit", AttributeInvalid,
           "the standard deviation of \"Area\" is in another unit (cm) than the number (mm2)");
    expect("coordinate-nan", AttributeInvalid, "holds a coordinate that is no finite number");
    expect("coordinate-odd", AttributeInvalid, "a multiple of 3 is needed");
    expect("frame-zero", AttributeInvalid, "ReferencedFrameNumber (0008,1160) is 0; frames count from 1");
    expect("frame-of-reference-absent", AttributeInvalid,
           "a region in the patient has no frame of reference (3006,0024)");
    expect("deep", FileDamaged, "its content is nested more than 20 levels deep");
    std::ofstream(m_folder.path() / "text.dcm") << "no DICOM at all";
    expect("text", NotDicom, "");
}

TEST_F(ReadReportFile, SurvivesDamage) {
    const std::string whole = contentOf(ours());
    std::mt19937 random(20310204);
    const fs::path file = m_folder.path() / "damaged.dcm";
    int refused = 0;
    for (int round = 0; round < 400; ++round) {
        std::string bytes = whole;
        if (round % 4 == 0) bytes.resize(random() % bytes.size());
        for (unsigned n = random() % 6; !bytes.empty() && n > 0; --n)
            bytes[random() % bytes.size()] = static_cast<char>(random());
        std::ofstream(file, std::ios::binary) << bytes;
        const auto read = readReport(file);
        if (!read) {
            ++refused;
            EXPECT_THAT(read.error().message, HasSubstr("Cannot read the report in damaged.dcm: "));
        } else {
            for (const ReportRow& row : rowsOf(*read))
                EXPECT_TRUE(std::isfinite(row.value));
        }
    }
    EXPECT_GT(refused, 90); // every fourth is cut short
}
