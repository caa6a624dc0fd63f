#include "dicomio/report/readings_from_report.h"

#include "core/record/case_readings.h"
#include "dicomio/report/structured_report.h"
#include "tests/dicomio/report/outside_tools.h"
#include "tests/dicomio/report/report_fixture.h"
#include "tests/dicomio/support/dicom_bytes.h"
#include "tests/dicomio/support/result_of.h"

#include <algorithm>
#include <gmock/gmock.h>
#include <numbers>

using namespace gauge;
using namespace gauge::dicomio;
using namespace gauge::test;
using core::Derivation;
using core::Modality;
using core::Quantity;
namespace fs = std::filesystem;

namespace {

constexpr double kRounding = 1e-12; // a unit and a factor: the last bits of a double

class ReadingsOfReport : public testing::Test {
protected:
    ReportReadings ours(const core::CaseRecord& record) const {
        const auto content = reportFromRecord(record, sourcesOf(record));
        const auto written = writeStructuredReport(valueOf(content), m_folder.path() / "ours.dcm");
        return readingsOf(valueOf(readReport(valueOf(written).file)));
    }
    ReportReadings foreign(const std::string& name) const {
        const ToolRun run = runScript("make_foreign.py", quoted(m_folder.path()), m_folder.path());
        EXPECT_EQ(run.code, 0) << run.out << run.err;
        return readingsOf(valueOf(readReport(m_folder.path() / name)));
    }
    static const ReportReading* find(const ReportReadings& all, Quantity quantity, Modality modality) {
        const auto found = std::find_if(all.readings.begin(), all.readings.end(), [&](const ReportReading& r) {
            return r.reading.observation.quantity == quantity && r.reading.observation.modality == modality;
        });
        return found == all.readings.end() ? nullptr : &*found;
    }
    static const LeftOutNumber* left(const ReportReadings& all, const std::string& name) {
        const auto found = std::find_if(all.leftOut.begin(), all.leftOut.end(),
                                        [&](const LeftOutNumber& n) { return n.name == name; });
        return found == all.leftOut.end() ? nullptr : &*found;
    }
    TempFolder m_folder;
};

} // namespace

// What the case itself takes for readings must come back the same: quantity, way, stage, phase, pressure and every digit.
TEST_F(ReadingsOfReport, OfOurOwnAreThoseOfTheCase) {
    const core::CaseRecord record = fullRecord();
    const core::CaseReadings expected = core::caseReadings(record);
    ReportReadings found = ours(record);
    ASSERT_EQ(found.readings.size(), expected.observations.size());
    for (std::size_t i = 0; i < expected.observations.size(); ++i) {
        const core::Observation& e = expected.observations[i];
        SCOPED_TRACE(std::string(core::plainName(e.modality)) + " " + std::string(core::plainName(e.quantity)));
        const auto same = std::find_if(found.readings.begin(), found.readings.end(), [&](const ReportReading& r) {
            const core::Observation& o = r.reading.observation;
            return o.quantity == e.quantity && o.modality == e.modality && o.derivation == e.derivation &&
                   o.valueMm == e.valueMm;
        });
        ASSERT_NE(same, found.readings.end());
        const core::Observation& o = same->reading.observation;
        EXPECT_EQ(o.stage, e.stage);
        EXPECT_EQ(o.standardUncertaintyMm, e.standardUncertaintyMm);
        EXPECT_EQ(same->moment ? same->moment->circulation.meanPressureMmHg : std::nullopt, e.pressureMmHg);
        EXPECT_EQ(same->moment ? same->moment->circulation.vWaveMmHg : std::nullopt, e.vWaveMmHg);
        if (same->moment) {
            EXPECT_EQ(same->moment->pressureUncertaintyMmHg, e.pressureUncertaintyMmHg);
        }
        if (!expected.origins[i].typed.empty()) {
            EXPECT_EQ(o.phase, e.phase);
            EXPECT_EQ(same->reading.note, "from the ward's report");
        }
    }
}

// Each number of the report is a reading or told with its reason; none is lost.
TEST_F(ReadingsOfReport, LeavesNoNumberUntold) {
    const core::CaseRecord record = fullRecord();
    const auto content = reportFromRecord(record, sourcesOf(record));
    const auto written = writeStructuredReport(valueOf(content), m_folder.path() / "ours.dcm");
    const auto read = readReport(valueOf(written).file);
    const ReportReadings found = readingsOf(valueOf(read));
    EXPECT_EQ(found.readings.size() + found.leftOut.size(), rowsOf(*read).size());
    const LeftOutNumber* minor = left(found, "Left Atrial Appendage Minor Axis");
    ASSERT_TRUE(minor);
    EXPECT_EQ(minor->why, LeftOut::UnknownQuantity);
    const LeftOutNumber* perimeter = left(found, "Left Atrial Appendage Ostium Perimeter");
    ASSERT_TRUE(perimeter); // its diameter is in the report too
    EXPECT_EQ(perimeter->why, LeftOut::GivenOtherwise);
}

TEST_F(ReadingsOfReport, OfOthersAreInMillimetresWhateverTheUnit) {
    const ReportReadings found = foreign("echo-lab.dcm");
    const ReportReading* longest = find(found, Quantity::OstiumLongestDiameter, Modality::Echo2d);
    ASSERT_TRUE(longest);
    const core::Observation& o = longest->reading.observation;
    EXPECT_NEAR(o.valueMm, 23.5, kRounding); // 2.35 cm
    EXPECT_NEAR(o.standardUncertaintyMm.value(), 0.4, kRounding);
    EXPECT_EQ(o.derivation, Derivation::LargestOfViews);
    EXPECT_EQ(o.stage, core::Stage::BeforeRepair); // title (131091, DCM)
    EXPECT_EQ(o.phase, core::Phase::EndSystole);
    EXPECT_EQ(longest->observer, "Fremde^Ärztin");
    EXPECT_EQ(longest->method, "Their caliper");
    ASSERT_TRUE(longest->moment);
    EXPECT_EQ(longest->moment->circulation.meanPressureMmHg, 14.0);
    const ReportReading* depth = find(found, Quantity::Depth, Modality::Echo2d);
    ASSERT_TRUE(depth);
    EXPECT_NEAR(depth->reading.observation.valueMm, 28.1, kRounding);
    // In a container that is no measurement group, with retired SRT codes, on CT.
    const ReportReading* perimeter = find(found, Quantity::OstiumPerimeterDerivedDiameter, Modality::Ct);
    ASSERT_TRUE(perimeter);
    EXPECT_NEAR(perimeter->reading.observation.valueMm, 72.0 / std::numbers::pi, kRounding);
    EXPECT_THAT(perimeter->assumed, testing::Contains("computed"));
    const ReportReading* area = find(found, Quantity::LandingZoneAreaDerivedDiameter, Modality::Ct);
    ASSERT_TRUE(area);
    EXPECT_NEAR(area->reading.observation.valueMm, 2.0 * std::sqrt(350.0 / std::numbers::pi), kRounding); // 3.5 cm2
    EXPECT_EQ(area->reading.observation.derivation, Derivation::Contour);
}

TEST_F(ReadingsOfReport, SayWhyANumberOfOthersIsLeftOut) {
    const ReportReadings found = foreign("echo-lab.dcm");
    const auto expect = [&](const char* name, LeftOut why) {
        SCOPED_TRACE(name);
        const LeftOutNumber* number = left(found, name);
        ASSERT_TRUE(number);
        EXPECT_EQ(number->why, why);
    };
    expect("Major Axis", LeftOut::PlaceNotStated);
    expect("Something that only they measure", LeftOut::UnknownQuantity);
    expect("Left Atrial Appendage Landing Zone Major Axis", LeftOut::UnitUnknown); // in inches
    expect("Left Atrial Appendage Depth", LeftOut::Implausible);                   // 281 cm
    EXPECT_EQ(left(foreign("foreign.dcm"), "Area")->why, LeftOut::PlaceNotStated);
}

TEST_F(ReadingsOfReport, OfRealReportsOfOtherThingsAreNone) {
    const fs::path file = pydicomData() / "test_files" / "test-SR.dcm";
    const auto read = readReport(file);
    const ReportReadings found = readingsOf(valueOf(read));
    EXPECT_TRUE(found.readings.empty());
    EXPECT_EQ(found.leftOut.size(), rowsOf(*read).size());
}
