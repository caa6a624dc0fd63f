#include "dicomio/deidentify/deidentify.h"

#include "dicomio/ct/ct_reader.h"
#include "dicomio/pixel/colour.h"
#include "dicomio/scan/scanner.h"
#include "tests/dicomio/support/dicom_bytes.h"
#include "tests/dicomio/support/python.h"
#include "tests/dicomio/ultrasound/us_bytes.h"

#include <gmock/gmock.h>

using namespace gauge;
using namespace gauge::dicomio;
using namespace gauge::test;
using testing::HasSubstr;
using testing::Not;

namespace {

namespace fs = std::filesystem;

const Pseudonyms kNames("a key for tests, long enough");

/// A slice with a person's traces in every kind of attribute.
DatasetBytes talkativeSlice(const std::string& sop = "1.2.3.4.101") {
    CtSlice slice;
    slice.sopUid = sop;
    slice.patientId = "INV-998877";
    DatasetBytes ds = slice.dataset();
    ds.text(0x00080005, "CS", "ISO_IR 192")
        .text(0x00080008, "CS", "ORIGINAL\\PRIMARY\\WINTERBOTTOM") // where it does not belong
        .text(0x00080020, "DA", "20310405")
        .text(0x00080030, "TM", "101112")
        .text(0x0008002A, "DT", "20310405101112.500")
        .text(0x00080050, "SH", "ACC-4711")
        .text(0x00080080, "LO", "Hospital of Nowhere")
        .text(0x00080090, "PN", "Quack^Quentin")
        .text(0x00081010, "SH", "STATION-X9")
        .text(0x0008103E, "LO", "Heart of Ms Winterbottom")
        .text(0x00081048, "PN", "Physician^Phoebe")
        .sequence(0x00081140, {DatasetBytes().text(0x00081150, "UI", "1.2.840.10008.5.1.4.1.1.2").text(0x00081155, "UI", "1.2.3.4.102")})
        .text(0x00100010, "PN", "Winterbottom^Wanda^Q.")
        .text(0x00100030, "DA", "19510203")
        .text(0x00100040, "CS", "F")
        .text(0x00101010, "AS", "080Y")
        .text(0x00101030, "DS", "61.5")
        .text(0x00101040, "LO", "1 Winding Way")
        .text(0x00104000, "LT", "called twice")
        .text(0x00180060, "DS", "120")
        .text(0x00181030, "LO", "protocol for Winterbottom")
        .text(0x00181000, "LO", "SERIAL-123456")
        .text(0x00200010, "SH", "STUDY-77")
        .text(0x00204000, "LT", "comment on Wanda")
        .bytes(0x00290010, "LO", "MAKER PRIVATE ")
        .bytes(0x00291001, "OB", "Winterbottom")
        .sequence(0x00400275, {DatasetBytes().text(0x00401001, "SH", "REQ-0815").text(0x00400007, "LO", "for Wanda")})
        .us(0x60000010, 4);
    return ds;
}

const std::vector<std::string> kTraces{
    "Winterbottom", "WINTERBOTTOM", "Wanda",        "INV-998877", "ACC-4711",  "Nowhere",      "Quack",      "STATION-X9",
    "Physician",    "19510203",     "Winding",      "twice",      "SERIAL-123", "STUDY-77",    "MAKER",      "REQ-0815",
    "20310405",     "1.2.3.4"};

DeidentifiedFile exported(const fs::path& original, const fs::path& target, const DeidentifyOptions& options = {}) {
    const auto one = deidentifyFile(original, target, kNames, options);
    if (!one) throw std::runtime_error(one.error().message);
    return *one;
}

std::string text(const ScannedFile& scanned, Tag tag) {
    return scanned.dataset.text(tag);
}

} // namespace

TEST(DeidentifyFile, LeavesNoTraceOfThePerson) {
    const TempFolder folder;
    const auto original = folder.write("Winterbottom.dcm", talkativeSlice());
    exported(original, folder.path() / "out.dcm");
    const std::string bytes = contentOf(folder.path() / "out.dcm");
    for (const std::string& trace : kTraces)
        EXPECT_THAT(bytes, Not(HasSubstr(trace)));
    for (const char* removed : {"for Wanda", "protocol", "comment"})
        EXPECT_THAT(bytes, Not(HasSubstr(removed)));
}

TEST(DeidentifyFile, KeepsGeometryLevelsAndPixels) {
    const TempFolder folder;
    const auto original = folder.write("a.dcm", talkativeSlice());
    exported(original, folder.path() / "out.dcm");
    const auto before = scanFile(original), after = scanFile(folder.path() / "out.dcm");
    ASSERT_TRUE(before && after);
    for (const Tag tag : {tags::ImagePositionPatient, tags::ImageOrientationPatient, tags::PixelSpacing, tags::RescaleSlope,
                          tags::RescaleIntercept, tags::Modality, tags::SopClassUid, tags::StudyTime})
        EXPECT_EQ(text(*after, tag), text(*before, tag)) << describe(tag);
    const std::string a = contentOf(original), b = contentOf(folder.path() / "out.dcm");
    EXPECT_EQ(a.substr(before->pixels->native.offset, before->pixels->native.length),
              b.substr(after->pixels->native.offset, after->pixels->native.length));
}

TEST(DeidentifyFile, KeepsTogetherWhatBelongedTogether) {
    const TempFolder folder;
    exported(folder.write("a.dcm", talkativeSlice("1.2.3.4.101")), folder.path() / "a.out");
    const auto second = exported(folder.write("b.dcm", talkativeSlice("1.2.3.4.102")), folder.path() / "b.out");
    const auto a = scanFile(folder.path() / "a.out"), b = scanFile(folder.path() / "b.out");
    ASSERT_TRUE(a && b);
    for (const Tag tag : {tags::StudyInstanceUid, tags::SeriesInstanceUid, tags::PatientId, tags::StudyDate})
        EXPECT_EQ(text(*a, tag), text(*b, tag)) << describe(tag);
    EXPECT_NE(text(*a, tags::SopInstanceUid), text(*b, tags::SopInstanceUid));
    EXPECT_THAT(contentOf(folder.path() / "a.out"), HasSubstr(second.sopInstanceUid)) << "a reference follows what it refers to";
    EXPECT_EQ(text(*a, tags::StudyDate), text(*a, tags::AcquisitionDateTime).substr(0, 8)) << "moved by the same days";
}

TEST(DeidentifyFile, HonoursTheOptions) {
    const TempFolder folder;
    const auto original = folder.write("a.dcm", talkativeSlice());
    DeidentifyOptions none;
    none.keepModifiedDates = none.keepPatientCharacteristics = none.cleanPixels = false;
    exported(original, folder.path() / "none.dcm", none);
    EXPECT_EQ(text(*scanFile(folder.path() / "none.dcm"), tags::StudyDate), "");
    EXPECT_THAT(contentOf(folder.path() / "none.dcm"), Not(HasSubstr("080Y")));
    EXPECT_THAT(contentOf(folder.path() / "none.dcm"), Not(HasSubstr("101112")));

    DeidentifyOptions device;
    exported(original, folder.path() / "kept.dcm", device);
    EXPECT_THAT(contentOf(folder.path() / "kept.dcm"), HasSubstr("080Y"));
    EXPECT_THAT(contentOf(folder.path() / "kept.dcm"), HasSubstr("113108"));
}

TEST(DeidentifyFile, RefusesWhatIsNoImage) {
    const TempFolder folder;
    DatasetBytes report;
    report.text(0x00080016, "UI", "1.2.840.10008.5.1.4.1.1.88.33")
        .text(0x00080018, "UI", "1.2.3.9")
        .text(0x00080060, "CS", "SR")
        .text(0x0040A160, "UT", "Wanda Winterbottom was here");
    const auto one = deidentifyFile(folder.write("report.dcm", report), folder.path() / "out.dcm", kNames, {});
    ASSERT_FALSE(one);
    EXPECT_EQ(one.error().code, core::ErrorCode::ObjectUnsupported);
    EXPECT_THAT(one.error().message, HasSubstr("it is no image"));
    EXPECT_FALSE(fs::exists(folder.path() / "out.dcm"));
}

TEST(DeidentifyFile, BlanksUltrasoundOutsideItsRegions) {
    const TempFolder folder;
    DatasetBytes ds = usDataset(2);
    RegionBytes region; // columns 10 to 109, rows 20 to 119
    addRegions(ds, {region});
    const auto original = folder.write("us.dcm", ds);
    const auto one = exported(original, folder.path() / "out.dcm");
    ASSERT_EQ(one.notices.size(), 1u);
    EXPECT_EQ(one.notices[0].code, "burned-in-text");
    const auto before = scanFile(original), after = scanFile(folder.path() / "out.dcm");
    ASSERT_TRUE(before && after);
    const auto a = ColourReader::open(*before), b = ColourReader::open(*after);
    ASSERT_TRUE(a && b);
    ASSERT_EQ(b->count(), 2);
    for (int frame = 0; frame < 2; ++frame) {
        const auto was = a->readRgb(frame), is = b->readRgb(frame);
        ASSERT_TRUE(was && is);
        for (int y = 0; y < 240; ++y)
            for (int x = 0; x < 320; ++x) {
                const bool inside = x >= 10 && x <= 109 && y >= 20 && y <= 119;
                for (int c = 0; c < 3; ++c)
                    ASSERT_EQ(is->at(x, y)[c], inside ? was->at(x, y)[c] : 0) << x << ", " << y;
            }
    }
}

TEST(DeidentifyFile, RefusesUltrasoundWhoseTextCannotBeTold) {
    const TempFolder folder;
    const auto one = deidentifyFile(folder.write("us.dcm", usDataset(1)), folder.path() / "out.dcm", kNames, {});
    ASSERT_FALSE(one);
    EXPECT_EQ(one.error().code, core::ErrorCode::ObjectUnsupported);
    EXPECT_THAT(one.error().message, HasSubstr("no region tells where the image ends"));
}

TEST(DeidentifyFile, LeavesUltrasoundAloneThatSaysItHasNoText) {
    const TempFolder folder;
    DatasetBytes ds = usDataset(1);
    ds.text(0x00280301, "CS", "NO");
    EXPECT_TRUE(exported(folder.write("us.dcm", ds), folder.path() / "out.dcm").notices.empty());
}

TEST(DeidentifyFile, SaysWhereItCannotWrite) {
    const TempFolder folder;
    const auto one = deidentifyFile(folder.write("a.dcm", talkativeSlice()), "/nowhere/at/all/out.dcm", kNames, {});
    ASSERT_FALSE(one);
    EXPECT_EQ(one.error().code, core::ErrorCode::OutputUnwritable);
    EXPECT_THAT(one.error().message, HasSubstr("/nowhere/at/all/out.dcm"));
}

TEST(DeidentifyFolder, RefusesAFolderThatHoldsSomething) {
    const TempFolder folder, target;
    target.write("other.dcm", talkativeSlice());
    const auto all = deidentifyFolder(folder.path(), target.path(), kNames, {}, {});
    ASSERT_FALSE(all);
    EXPECT_THAT(all.error().message, HasSubstr("not empty"));
}

TEST(DeidentifyFolder, NamesFilesByNumberAndTellsWhatItLeftOut) {
    const TempFolder folder, target;
    folder.write("Wanda-1.dcm", talkativeSlice("1.2.3.4.101"));
    folder.write("Wanda-2.dcm", talkativeSlice("1.2.3.4.102"));
    writeFile(folder.path() / "notes.txt", "Wanda Winterbottom");
    folder.write("sr.dcm", DatasetBytes().text(0x00080016, "UI", "1.2.840.10008.5.1.4.1.1.88.33").text(0x00080018, "UI", "1.2.3.9"));
    const auto all = deidentifyFolder(folder.path(), target.path() / "new", kNames, {}, {});
    ASSERT_TRUE(all) << all.error().message;
    ASSERT_EQ(all->written.size(), 2u);
    EXPECT_EQ(all->written[1].file.filename(), "000002.dcm");
    ASSERT_EQ(all->refused.size(), 1u);
    EXPECT_EQ(all->refused[0].code, "not-exported");
}

// pydicom collects what identifies and searches the exports; it shares no code with the exporter.
TEST(DeidentifyFolder, StandsUpToAnotherReader) {
    const TempFolder folder, target;
    folder.write("1.dcm", talkativeSlice("1.2.3.4.101"));
    folder.write("2.dcm", talkativeSlice("1.2.3.4.102"));
    ASSERT_TRUE(deidentifyFolder(folder.path(), target.path() / "new", kNames, {}, {}));
    EXPECT_TRUE(runPython("check_deidentified.py", {folder.path().string(), (target.path() / "new").string()}, target.path() / "log"))
        << contentOf(target.path() / "log");
}

TEST(DeidentifyFolder, LeavesNoTraceOfRealFiles) {
    for (const char* part : {"ct-heart-contrast", "ultrasound", "xray", "syntaxes"}) {
        const fs::path real = realDataFolder() / part;
        if (!fs::exists(real)) GTEST_SKIP() << "no real data beside the source";
        const TempFolder target;
        const auto all = deidentifyFolder(real, target.path() / "new", kNames, {}, {});
        ASSERT_TRUE(all) << all.error().message;
        if (all->written.empty()) continue;
        EXPECT_TRUE(runPython("check_deidentified.py", {real.string(), (target.path() / "new").string()}, target.path() / "log"))
            << part << ": " << contentOf(target.path() / "log");
    }
}
