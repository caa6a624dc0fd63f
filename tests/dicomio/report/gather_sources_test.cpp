#include "dicomio/report/gather_sources.h"

#include "tests/dicomio/report/report_fixture.h"
#include "tests/dicomio/support/dicom_bytes.h"
#include "tests/dicomio/support/result_of.h"

#include <gmock/gmock.h>

using namespace gauge;
using namespace gauge::dicomio;
using namespace gauge::test;
using testing::HasSubstr;
using testing::Not;

namespace {

/// A CT of four slices whose headers tell a study and a patient.
class GatherSources : public testing::Test {
protected:
    void SetUp() override {
        int n = 0;
        for (const CtSlice& slice : ctStack(4, 1.0)) {
            DatasetBytes dataset = slice.dataset();
            dataset.text(0x00080005, "CS", "ISO_IR 100")
                .text(0x00080020, "DA", "20310203")
                .text(0x00080030, "TM", "101112");
            dataset.text(0x00080050, "SH", "ACC7")
                .text(0x00080090, "PN", "Referrer^Invented")
                .text(0x00200010, "SH", "S7");
            dataset.text(0x00100010, "PN", "M\xFCller^Invented")
                .text(0x00100020, "LO", "P1")
                .text(0x00100040, "CS", "F");
            m_folder.write(std::to_string(n++) + ".dcm", dataset);
            m_uids.push_back(slice.sopUid);
        }
        m_record.images = core::ImagesUsed{"1.2.3.4", {}, "ungated", "1.2.9", 1};
        core::RecordedValue value;
        value.id = "volume";
        value.unit = "mL";
        value.estimate.value = 8.0;
        value.inputs = {{"images", 1}};
        value.provenance = std::make_shared<const core::Provenance>(
            core::Provenance{m_uids, "1.2.9", "", "", "", "2031-02-03T10:00:00Z", {}});
        m_record.values = {value};
    }
    SeriesIndex index() const { return valueOf(listFolder(m_folder.path())); }

    TempFolder m_folder;
    std::vector<std::string> m_uids;
    core::CaseRecord m_record;
};

} // namespace

TEST_F(GatherSources, TakesStudyPatientAndPlaceOfEachImageFromTheFiles) {
    ReportSources sources;
    const auto gathered = gatherSources(index(), m_record, sources);
    ASSERT_TRUE(gathered) << gathered.error().message;
    EXPECT_EQ(sources.study,
              (ReportStudy{"1.2.3", "S7", "ACC7", "20310203", "101112", "Referrer^Invented", ""}));
    EXPECT_EQ(sources.imagePatient.name, "Müller^Invented");
    EXPECT_EQ(sources.imagePatient.id, "P1");
    ASSERT_EQ(sources.images.size(), 4u);
    for (std::size_t i = 0; i < 4; ++i)
        EXPECT_EQ(sources.images[i],
                  (SourceImage{"1.2.3", "1.2.3.4", "1.2.840.10008.5.1.4.1.1.2", m_uids[i], "CT"}));
    sources.time = "2031-02-03T11:00:00Z";
    const auto made = reportFromRecord(m_record, sources);
    EXPECT_EQ(valueOf(made).patient, sources.imagePatient);
    EXPECT_EQ(made->images.size(), 4u);
}

TEST_F(GatherSources, SaysWhenTheFolderIsAnotherCases) {
    ReportSources sources;
    auto other = *m_record.values[0].provenance;
    other.sopInstanceUids = {"2.25.1"};
    m_record.values[0].provenance = std::make_shared<const core::Provenance>(other);
    const auto error = errorOf(gatherSources(index(), m_record, sources));
    EXPECT_EQ(error.code, core::ErrorCode::NotFound);
    EXPECT_THAT(
        error.message,
        HasSubstr("the folder holds none of the 1 images that the case was measured on. Choose the folder"));
}

TEST_F(GatherSources, AReportIsNotMadeOfOnePatientOnAnothersImages) {
    ReportSources sources;
    ASSERT_TRUE(gatherSources(index(), m_record, sources));
    sources.time = "2031-02-03T11:00:00Z";
    m_record.patient = core::Entry<core::Patient>{{"Somebody^Else", "P2", "", "", "", {}}, 2};
    const auto error = errorOf(reportFromRecord(m_record, sources));
    EXPECT_EQ(error.code, core::ErrorCode::InvalidArgument);
    EXPECT_THAT(error.message, HasSubstr("the case and its images name different patient IDs"));
    EXPECT_THAT(error.message, Not(HasSubstr("P2"))); // messages may end in a log
}

TEST_F(GatherSources, AnImageThatIsNotAtHandIsToldInWords) {
    std::filesystem::remove(m_folder.path() / "2.dcm");
    ReportSources sources;
    ASSERT_TRUE(gatherSources(index(), m_record, sources));
    EXPECT_EQ(sources.images.size(), 3u);
    sources.time = "2031-02-03T11:00:00Z";
    const auto made = reportFromRecord(m_record, sources);
    const MeasurementGroup& group = valueOf(made).groups.at(0);
    EXPECT_EQ(group.images.size(), 3u);
    ASSERT_EQ(group.findings.size(), 1u);
    EXPECT_EQ(group.findings[0].text, m_uids[2]);
}

TEST(ImagesOf, ListsEachImageOfEveryKindOnce) {
    const auto uids = imagesOf(fullRecord());
    EXPECT_EQ(uids.size(), 21u); // 20 slices, one cine
    EXPECT_THAT(uids, testing::Contains(std::string(kEchoCine)).Times(1));
}
