// Order in time, patients, proposed stages, and what is set aside.
#include "dicomio/index/series_index.h"

#include "tests/dicomio/support/dicom_bytes.h"
#include "tests/dicomio/support/result_of.h"

#include <gmock/gmock.h>

using namespace gauge;
using namespace gauge::dicomio;
using namespace gauge::test;
using core::Stage;
using testing::ElementsAre;
using testing::HasSubstr;

namespace {

constexpr std::string_view kUsClass = "1.2.840.10008.5.1.4.1.1.6.1",
                           kXaClass = "1.2.840.10008.5.1.4.1.1.12.1",
                           kDxClass = "1.2.840.10008.5.1.4.1.1.1.1", kScClass = "1.2.840.10008.5.1.4.1.1.7",
                           kDoseClass = "1.2.840.10008.5.1.4.1.1.88.67";

DatasetBytes picture(std::string_view sopClass, const std::string& modality, const std::string& uid,
                     const std::string& date, const std::string& time = "100000") {
    CtSlice slice;
    slice.seriesUid = uid;
    slice.sopUid = uid + ".1";
    DatasetBytes d = slice.dataset();
    d.text(0x00080016, "UI", sopClass).text(0x00080060, "CS", modality);
    if (!date.empty()) d.text(0x00080022, "DA", date).text(0x00080032, "TM", time);
    return d;
}

void writeCt(const TempFolder& folder, const std::string& uid, const std::string& date,
             const std::string& patient = "P1") {
    int k = 0;
    for (CtSlice& slice : ctStack(3, 1.0)) {
        slice.seriesUid = uid;
        slice.sopUid = uid + "." + std::to_string(k);
        slice.patientId = patient;
        DatasetBytes d = slice.dataset();
        if (!date.empty()) d.text(0x00080022, "DA", date).text(0x00080032, "TM", "070000");
        folder.write(patient + uid + "-" + std::to_string(k++), d);
    }
}

const SeriesEntry& of(const SeriesIndex& index, const std::string& uid) {
    for (const SeriesEntry& series : index.series)
        if (series.seriesUid == uid) return series;
    throw std::runtime_error("no series " + uid);
}

std::vector<std::string> uids(const SeriesIndex& index) {
    std::vector<std::string> result;
    for (const SeriesEntry& series : index.series)
        result.push_back(series.seriesUid);
    return result;
}

bool has(const SeriesEntry& series, const std::string& code) {
    return std::any_of(series.messages.begin(), series.messages.end(),
                       [&](const auto& m) { return m.code == code; });
}

} // namespace

TEST(ListFolder, OrdersThePatientsSeriesInTime) {
    const TempFolder folder;
    writeCt(folder, "1.9", "20260301");
    folder.write("echo late", picture(kUsClass, "US", "1.1", "20260305", "150000"));
    folder.write("echo early", picture(kUsClass, "US", "1.2", "20260305", "090000.5"));
    folder.write("no date", picture(kUsClass, "US", "1.0", ""));
    writeCt(folder, "1.5", "20200101", "P2"); // another patient, after the first
    const SeriesIndex index = valueOf(listFolder(folder.path()));
    EXPECT_THAT(uids(index), ElementsAre("1.9", "1.2", "1.1", "1.0", "1.5"));
    EXPECT_EQ(iso(*of(index, "1.2").acquired), "2026-03-05T09:00:00.5");
    EXPECT_FALSE(of(index, "1.0").acquired);
}

TEST(ProposeStages, PutsDaysBeforeAndAfterTheProcedure) {
    const TempFolder folder;
    writeCt(folder, "1.1", "20260301");
    folder.write("echo before", picture(kUsClass, "US", "1.2", "20260301"));
    folder.write("echo", picture(kUsClass, "US", "1.3", "20260305"));
    folder.write("run", picture(kXaClass, "XA", "1.4", "20260305"));
    writeCt(folder, "1.5", "20260501");
    writeCt(folder, "1.6", "20260305");
    folder.write("no date", picture(kUsClass, "US", "1.7", ""));
    folder.write("chest", picture(kDxClass, "DX", "1.8", "20260302")); // a radiograph is no fluoroscopy
    const SeriesIndex index = valueOf(listFolder(folder.path()));
    EXPECT_EQ(of(index, "1.1").stage.stage, Stage::BeforeProcedure);
    EXPECT_EQ(of(index, "1.1").stage.reason,
              "taken on 2026-03-01, before the day of the procedure (2026-03-05)");
    EXPECT_EQ(of(index, "1.2").stage.stage, Stage::BeforeProcedure);
    for (const char* uid : {"1.3", "1.4"}) {
        EXPECT_FALSE(of(index, uid).stage.stage) << uid; // before or after a repair: only the person knows
        EXPECT_TRUE(of(index, uid).stage.duringProcedure) << uid;
        EXPECT_THAT(of(index, uid).stage.reason, HasSubstr("whether before or after a repair is not known"));
    }
    EXPECT_EQ(of(index, "1.5").stage.stage, Stage::FollowUp);
    for (const char* uid : {"1.6", "1.7", "1.8"}) {
        EXPECT_FALSE(of(index, uid).stage.stage) << uid;
        EXPECT_FALSE(of(index, uid).stage.duringProcedure) << uid;
    }
}

TEST(ProposeStages, DoesNotChooseBetweenDays) {
    const TempFolder folder;
    writeCt(folder, "1.1", "20260101");
    folder.write("a", picture(kXaClass, "XA", "1.2", "20260201")); // coronary angiography, or the procedure?
    folder.write("b", picture(kXaClass, "XA", "1.3", "20260301"));
    SeriesIndex index = valueOf(listFolder(folder.path()));
    EXPECT_EQ(of(index, "1.1").stage.stage, Stage::BeforeProcedure); // before both
    EXPECT_TRUE(of(index, "1.2").stage.reason.empty());
    EXPECT_TRUE(of(index, "1.3").stage.reason.empty());
    folder.write("c", picture(kUsClass, "US", "1.4", "20260301")); // echo on one of the days decides
    index = valueOf(listFolder(folder.path()));
    EXPECT_EQ(of(index, "1.2").stage.stage, Stage::BeforeProcedure);
    EXPECT_TRUE(of(index, "1.3").stage.duringProcedure);
}

TEST(ProposeStages, KeepsPatientsApart) {
    const TempFolder folder;
    writeCt(folder, "1.1", "20260101", "P1");
    writeCt(folder, "1.2", "20260101", "P2");
    folder.write("echo", picture(kUsClass, "US", "1.3", "20260201")); // of P1
    const SeriesIndex index = valueOf(listFolder(folder.path()));
    EXPECT_EQ(of(index, "1.1").stage.stage, Stage::BeforeProcedure);
    EXPECT_FALSE(of(index, "1.2").stage.stage);
}

TEST(ListFolder, SetsScoutsDoseReportsAndScreenPicturesAside) {
    const TempFolder folder;
    DatasetBytes front = picture(kCtClass, "CT", "1.1", ""), side = picture(kCtClass, "CT", "1.1", "");
    front.text(0x00080008, "CS", "ORIGINAL\\PRIMARY\\LOCALIZER");
    side.text(0x00080008, "CS", "ORIGINAL\\PRIMARY\\LOCALIZER")
        .text(0x00080018, "UI", "1.1.2")
        .remove(0x00200032);
    folder.write("front", front);
    folder.write("side", side);
    folder.write("dose", picture(kDoseClass, "SR", "1.2", "").remove(0x7FE00010));
    folder.write("screen", picture(kScClass, "CT", "1.3", ""));
    DatasetBytes table = picture(kCtClass, "CT", "1.4", ""); // a dose table as a CT image without a place
    table.text(0x00080008, "CS", "DERIVED\\SECONDARY\\SCREEN SAVE").remove(0x00200032).remove(0x00200037);
    folder.write("table", table);
    const SeriesIndex index = valueOf(listFolder(folder.path(), {true}));
    EXPECT_TRUE(index.skipped.empty());
    for (const SeriesEntry& series : index.series) {
        EXPECT_EQ(series.status, SeriesStatus::SetAside) << series.seriesUid;
        EXPECT_FALSE(series.measurable);
    }
    EXPECT_TRUE(has(of(index, "1.1"), "localizers-set-aside"));
    EXPECT_THAT(of(index, "1.1").messages[0].text,
                HasSubstr("scout images only ((0008,0008) ImageType LOCALIZER)"));
    EXPECT_TRUE(has(of(index, "1.2"), "dose-report-set-aside"));
    EXPECT_TRUE(has(of(index, "1.3"), "secondary-capture"));
    EXPECT_TRUE(has(of(index, "1.4"), "secondary-capture"));
    const auto error = errorOf(indexFolder(folder.path()));
    EXPECT_EQ(error.code, core::ErrorCode::NothingUsable);
    EXPECT_THAT(error.message, HasSubstr("0 series were refused, 4 set aside and 0 file(s) skipped"));
}

TEST(ListFolder, NeverMergesPatientsWithoutAnIdOrOfOtherIssuers) {
    const TempFolder folder;
    int file = 0;
    for (const char* name : {"First^Invented", "Second^Invented"})
        for (CtSlice& slice : ctStack(2, 1.0)) {
            slice.patientId = "";
            slice.sopUid += "." + std::to_string(file);
            folder.write(std::to_string(file++), slice.dataset().text(0x00100010, "PN", name));
        }
    EXPECT_EQ(valueOf(listFolder(folder.path())).series.size(), 2u);
    const TempFolder issuers;
    for (const char* issuer : {"North", "South"})
        for (CtSlice& slice : ctStack(2, 1.0)) {
            slice.sopUid += "." + std::to_string(file);
            issuers.write(std::to_string(file++), slice.dataset().text(0x00100021, "LO", issuer));
        }
    const SeriesIndex index = valueOf(listFolder(issuers.path()));
    ASSERT_EQ(index.series.size(), 2u);
    EXPECT_TRUE(has(index.series[0], "series-uid-shared"));
    EXPECT_NE(patientKey(index.series[0]), patientKey(index.series[1]));
}

TEST(ListFolder, TellsThatOneIdCarriesSeveralNames) {
    const TempFolder folder;
    auto slices = ctStack(2, 1.0);
    folder.write("0", slices[0].dataset());
    folder.write("1", slices[1].dataset().text(0x00100010, "PN", "Other^Patient"));
    const SeriesIndex index = valueOf(listFolder(folder.path()));
    ASSERT_EQ(index.series.size(), 1u);
    ASSERT_TRUE(has(index.series[0], "patient-name-differs"));
    EXPECT_THAT(index.series[0].messages[0].text, HasSubstr("(\"Invented^Patient\", \"Other^Patient\")"));
}

TEST(ListFolder, CanBeCancelledWhileItLooks) {
    const TempFolder folder;
    for (int s = 0; s < 20; ++s)
        writeCt(folder, "1." + std::to_string(s), "20260301");
    std::stop_source stop;
    core::WorkContext work{stop.get_token(), [&](double share) {
                               if (share > 0.2) stop.request_stop();
                           }};
    EXPECT_EQ(errorOf(listFolder(folder.path(), {}, work)).code, core::ErrorCode::Cancelled);
}
