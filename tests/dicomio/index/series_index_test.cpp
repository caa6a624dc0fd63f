#include "dicomio/index/series_index.h"

#include "tests/dicomio/support/dicom_bytes.h"
#include "tests/dicomio/support/result_of.h"

#include <gmock/gmock.h>

using namespace gauge;
using namespace gauge::dicomio;
using namespace gauge::test;
using core::ErrorCode;
using testing::HasSubstr;

namespace {

SeriesIndex listed(const TempFolder& folder, bool verify = false) {
    return valueOf(listFolder(folder.path(), {verify}));
}

const core::Notice& message(const SeriesEntry& series, const std::string& code) {
    for (const auto& m : series.messages)
        if (m.code == code) return m;
    throw std::runtime_error("no message " + code +
                             (series.messages.empty() ? "" : "; first: " + series.messages[0].text));
}

} // namespace

TEST(ListFolder, FindsSeriesBelowTheFolderWhateverTheNames) {
    const TempFolder folder;
    const auto slices = ctStack(3, 1.0);
    folder.write("a/b/c/I10", slices[2].dataset());
    folder.write("a/ünï cödé.txt", slices[0].dataset());
    folder.write("x.png", slices[1].dataset());
    folder.write("notes.dcm", "these are notes");
    folder.write("empty", "");
    const SeriesIndex index = listed(folder);
    ASSERT_EQ(index.series.size(), 1u);
    const SeriesEntry& series = index.series.front();
    EXPECT_EQ(series.status, SeriesStatus::Ok);
    EXPECT_TRUE(series.measurable);
    EXPECT_EQ(series.imageCount, 3);
    EXPECT_EQ(series.modality, "CT");
    EXPECT_EQ(series.kind, "ct");
    EXPECT_EQ(series.description, "Heart");
    EXPECT_EQ(*series.spacingMm, Eigen::Vector3d(0.25, 0.5, 1.0));
    EXPECT_EQ(series.phases.front().images.front().file.filename(),
              "ünï cödé.txt"); // in the order of positions
    ASSERT_EQ(index.skipped.size(), 2u);
    EXPECT_THAT(index.skipped[0].reason, HasSubstr("It is not DICOM"));
}

TEST(ListFolder, SurvivesLoopsOfLinksAndLooksAtEachFolderOnce) {
    const TempFolder folder;
    const auto slices = ctStack(2, 1.0);
    folder.write("deep/0", slices[0].dataset());
    folder.write("deep/1", slices[1].dataset());
    std::filesystem::create_directory_symlink(folder.path(), folder.path() / "deep/loop");
    std::filesystem::create_directory_symlink(folder.path() / "deep", folder.path() / "again");
    std::filesystem::create_symlink("nowhere", folder.path() / "dangling");
    const SeriesIndex index = listed(folder);
    ASSERT_EQ(index.series.size(), 1u);
    EXPECT_EQ(index.series.front().imageCount, 2);
    ASSERT_EQ(index.skipped.size(), 1u);
    EXPECT_EQ(index.skipped[0].reason, "It is a link that leads nowhere.");
}

TEST(ListFolder, NeverMixesPatientsThatShareASeriesUid) {
    const TempFolder folder;
    auto slices = ctStack(4, 1.0);
    slices[2].patientId = slices[3].patientId = "P2";
    writeStack(folder, slices);
    const SeriesIndex index = listed(folder);
    ASSERT_EQ(index.series.size(), 2u);
    for (const auto& series : index.series) {
        EXPECT_EQ(series.imageCount, 2);
        EXPECT_THAT(message(series, "series-uid-shared").text, HasSubstr("(0020,000e) SeriesInstanceUID"));
    }
}

TEST(ListFolder, SetsScoutsAndCopiesAside) {
    const TempFolder folder;
    const auto slices = ctStack(3, 1.0);
    writeStack(folder, slices);
    DatasetBytes scout = slices[0].dataset();
    scout.text(0x00080008, "CS", "ORIGINAL\\PRIMARY\\LOCALIZER")
        .text(0x00080018, "UI", "1.2.9")
        .us(0x00280010, 2)
        .us(0x00280011, 10);
    folder.write("scout", scout);
    folder.write("copy", slices[1].dataset());
    folder.write("encoded", slices[1].dataset(), Encoding::ExplicitBig);
    const SeriesIndex index = listed(folder);
    ASSERT_EQ(index.series.size(), 1u);
    EXPECT_TRUE(index.series[0].measurable);
    EXPECT_EQ(index.series[0].phases[0].images.size(), 3u);
    EXPECT_THAT(message(index.series[0], "localizers-set-aside").text,
                HasSubstr("1 scout image(s) ((0008,0008) ImageType LOCALIZER)"));
    EXPECT_THAT(message(index.series[0], "copies-set-aside").text,
                HasSubstr("2 file(s) hold an image again"));
}

TEST(ListFolder, RefusesTwoImagesThatClaimOneUidWithDifferentPixels) {
    const TempFolder folder;
    auto slices = ctStack(3, 1.0);
    writeStack(folder, slices);
    slices[1].pixels[0] += 1;
    folder.write("other", slices[1].dataset());
    const SeriesIndex index = listed(folder);
    EXPECT_EQ(index.series[0].status, SeriesStatus::Refused);
    EXPECT_FALSE(message(index.series[0], "slice-duplicate").text.empty());
}

TEST(ListFolder, SplitsAGatedSeriesAndTellsWhichPhaseIsBroken) {
    const TempFolder folder;
    int file = 0;
    for (const double percent : {75.0, 45.0})
        for (auto& slice : ctStack(5, 1.0)) {
            slice.sopUid += "." + std::to_string(file);
            DatasetBytes d = slice.dataset();
            if (file++ != 7) // the third slice at 45 % is missing
                folder.write(std::to_string(file), d.fd(0x00209241, percent));
        }
    const SeriesIndex index = listed(folder);
    ASSERT_EQ(index.series.size(), 1u);
    const SeriesEntry& series = index.series.front();
    ASSERT_EQ(series.phases.size(), 2u);
    EXPECT_EQ(series.phases[0].percent, 45.0);
    EXPECT_TRUE(series.measurable);
    EXPECT_EQ(series.status, SeriesStatus::Notice);
    EXPECT_THAT(message(series, "slice-missing").text, HasSubstr("Phase 45 %: Cannot build a volume"));
}

TEST(ListFolder, RefusesSeriesWithoutASpacingWhateverTheDetectorSays) {
    const TempFolder folder;
    const auto slices = ctStack(2, 1.0);
    for (std::size_t k = 0; k < 2; ++k) {
        DatasetBytes d = slices[k].dataset();
        folder.write(std::to_string(k), d.remove(0x00280030).text(0x00181164, "DS", "0.2\\0.2"));
    }
    const SeriesEntry series = listed(folder).series.front();
    EXPECT_EQ(series.status, SeriesStatus::Refused);
    EXPECT_THAT(message(series, "attribute-missing").text,
                HasSubstr("0 in the patient: (0028,0030) PixelSpacing is absent. (0018,1164) "
                          "ImagerPixelSpacing measures at "
                          "the detector and is no substitute."));
    EXPECT_FALSE(series.spacingMm);
}

TEST(ListFolder, RefusesSpacingOfZeroAndAMissingPosition) {
    const auto first = [](auto change) {
        const TempFolder folder;
        const auto slices = ctStack(2, 1.0);
        for (std::size_t k = 0; k < 2; ++k) {
            DatasetBytes d = slices[k].dataset();
            change(d);
            folder.write(std::to_string(k), d);
        }
        return listed(folder).series.front();
    };
    EXPECT_THAT(
        message(first([](DatasetBytes& d) { d.text(0x00280030, "DS", "0\\0.5"); }), "spacing-invalid").text,
        HasSubstr("(0028,0030) PixelSpacing is \"0\\0.5\"; both values must be above zero"));
    EXPECT_THAT(
        message(first([](DatasetBytes& d) { d.text(0x00280030, "DS", "NaN\\0.5"); }), "attribute-invalid")
            .text,
        HasSubstr("(0028,0030) PixelSpacing holds \"NaN\\0.5\""));
    EXPECT_THAT(message(first([](DatasetBytes& d) { d.remove(0x00200032); }), "attribute-missing").text,
                HasSubstr("(0020,0032) ImagePositionPatient is absent"));
    EXPECT_THAT(
        message(first([](DatasetBytes& d) { d.text(0x00200037, "DS", ""); }), "attribute-missing").text,
        HasSubstr("(0020,0037) ImageOrientationPatient is empty"));
}

TEST(ListFolder, TellsTheSeriesThatADamagedFileWasLeftOut) {
    const TempFolder folder;
    const auto slices = ctStack(4, 1.0);
    writeStack(folder, slices);
    const std::string last = part10(slices[3].dataset());
    folder.write("3.dcm", last.substr(0, last.size() - 10));
    const SeriesIndex index = listed(folder);
    EXPECT_EQ(index.skipped.size(), 1u);
    EXPECT_THAT(
        message(index.series.front(), "file-left-out").text,
        HasSubstr("3.dcm belongs to this series but was left out: (7fe0,0010) PixelData claims 40 bytes"));
}

TEST(ListFolder, LeavesOutAnImageWithoutPixelsAndTellsItsSeries) {
    const TempFolder folder;
    const auto slices = ctStack(3, 1.0);
    writeStack(folder, slices);
    DatasetBytes cut = slices[2].dataset();
    folder.write("2.dcm", cut.remove(0x7FE00010)); // as if the file ended just before its pixels
    const SeriesIndex index = listed(folder);
    ASSERT_EQ(index.series.size(), 1u);
    EXPECT_EQ(index.series[0].imageCount, 2);
    EXPECT_THAT(message(index.series[0], "file-left-out").text,
                HasSubstr("(7fe0,0010) PixelData is absent: the file is cut off"));
}

TEST(ListFolder, TellsWhatIsListedOnly) {
    const TempFolder folder;
    DatasetBytes us = CtSlice{}.dataset(), mr = CtSlice{}.dataset(), single = CtSlice{}.dataset(),
                 sc = CtSlice{}.dataset(), sr = CtSlice{}.dataset();
    us.text(0x00080016, "UI", "1.2.840.10008.5.1.4.1.1.6.1")
        .text(0x0020000E, "UI", "1.1")
        .text(0x00080060, "CS", "US");
    mr.text(0x00080016, "UI", "1.2.840.10008.5.1.4.1.1.4")
        .text(0x0020000E, "UI", "1.2")
        .text(0x00080060, "CS", "MR");
    single.text(0x0020000E, "UI", "1.3");
    sc.text(0x00080016, "UI", "1.2.840.10008.5.1.4.1.1.7").text(0x0020000E, "UI", "1.4");
    sr.text(0x00080016, "UI", "1.2.840.10008.5.1.4.1.1.88.33")
        .text(0x0020000E, "UI", "1.5")
        .remove(0x7FE00010);
    int n = 0;
    for (const auto& d : {us, mr, single, sc, sr})
        folder.write(std::to_string(n++), d);
    const SeriesIndex index = listed(folder, true);
    const auto series = [&](const std::string& uid) -> const SeriesEntry& {
        for (const SeriesEntry& candidate : index.series)
            if (candidate.seriesUid == uid) return candidate;
        throw std::runtime_error("no series " + uid);
    };
    for (const SeriesEntry& each : index.series)
        EXPECT_FALSE(each.measurable) << each.kind;
    EXPECT_EQ(series("1.1").kind, "ultrasound");
    EXPECT_THAT(message(series("1.1"), "no-length-scale").text,
                HasSubstr("(0018,6011) SequenceOfUltrasoundRegions"));
    EXPECT_EQ(series("1.1").status, SeriesStatus::Notice);
    EXPECT_THAT(message(series("1.2"), "kind-unsupported").text, HasSubstr("(MR)"));
    EXPECT_EQ(series("1.2").status, SeriesStatus::Refused);
    EXPECT_THAT(message(series("1.3"), "single-image").text,
                HasSubstr("nothing can be measured without a volume"));
    EXPECT_THAT(message(series("1.4"), "secondary-capture").text, HasSubstr("without geometry or scale"));
    EXPECT_EQ(series("1.5").kind, "report");
}

TEST(ListFolder, ShowsPatientNamesInTheDeclaredCharacterSet) {
    const TempFolder folder;
    DatasetBytes d = CtSlice{}.dataset();
    d.text(0x00080005, "CS", "\\ISO 2022 IR 87")
        .text(0x00100010, "PN", "Yamada^Tarou=\x1B$B;3ED\x1B(B^\x1B$BB@O:\x1B(B");
    folder.write("file", d);
    EXPECT_EQ(listed(folder).series.front().patientName, "Yamada^Tarou=山田^太郎");
}

TEST(ListFolder, VerifyRefusesACtSeriesWithAnImageThatDoesNotDecode) {
    const TempFolder folder;
    const auto slices = ctStack(3, 1.0);
    for (std::size_t k = 0; k < 3; ++k) {
        DatasetBytes d = slices[k].dataset();
        std::string frame = rle16(slices[k].pixels);
        if (k == 1) frame[64] = '\x00', frame.resize(66);
        folder.write(std::to_string(k), part10(kRleUid, d.fragments(0x7FE00010, {"", frame}).encode()));
    }
    EXPECT_EQ(listed(folder).series.front().status, SeriesStatus::Ok);
    const SeriesEntry series = listed(folder, true).series.front();
    EXPECT_EQ(series.status, SeriesStatus::Refused);
    EXPECT_FALSE(series.measurable);
    EXPECT_THAT(message(series, "file-damaged").text,
                HasSubstr("Cannot decode " + (folder.path() / "1").string()));
}

TEST(IndexFolder, RefusesAFolderWithoutAnythingUsableAndSaysWhatWasThere) {
    const TempFolder folder;
    folder.write("notes.txt", "nothing");
    const auto error = errorOf(indexFolder(folder.path()));
    EXPECT_EQ(error.code, ErrorCode::NothingUsable);
    EXPECT_THAT(error.message, HasSubstr("0 series were refused and 1 file(s) skipped"));
    EXPECT_THAT(error.message, HasSubstr("notes.txt: It is not DICOM"));
    EXPECT_THAT(errorOf(indexFolder(folder.path() / "none")).message, HasSubstr("there is no such folder"));
}

TEST(IndexFolder, TakesASingleFileAsAFolderOfOneAndCanBeCancelled) {
    const TempFolder folder;
    writeStack(folder, ctStack(2, 1.0));
    EXPECT_EQ(valueOf(indexFolder(folder.path() / "0.dcm")).series.size(), 1u);
    std::stop_source stop;
    stop.request_stop();
    EXPECT_EQ(errorOf(indexFolder(folder.path(), {}, {stop.get_token(), {}})).code, ErrorCode::Cancelled);
}
