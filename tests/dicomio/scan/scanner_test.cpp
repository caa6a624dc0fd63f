#include "dicomio/scan/scanner.h"

#include "tests/dicomio/support/dicom_bytes.h"
#include "tests/dicomio/support/result_of.h"

#include <gmock/gmock.h>
#include <sys/resource.h>
#include <sys/stat.h>

using namespace gauge;
using namespace gauge::dicomio;
using namespace gauge::test;
using core::ErrorCode;
using testing::HasSubstr;

namespace {

/// Resident memory that the process has ever used, MiB.
double peakMiB() {
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    return static_cast<double>(usage.ru_maxrss) / 1024.0;
}

// A refusal may take the buffers of the scanner and of the test's own file; a bomb of these tests would take
// a gigabyte.
constexpr double kHonestGrowthMiB = 100.0;

core::Error refusal(const std::string& bytes) {
    const TempFolder folder;
    return errorOf(scanFile(folder.write("file", bytes)));
}

} // namespace

TEST(ScanFile, ReadsEveryUncompressedEncodingAlike) {
    const TempFolder folder;
    const DatasetBytes dataset = CtSlice{}.dataset();
    const auto files = {folder.write("explicit", dataset),
                        folder.write("implicit", dataset, Encoding::ImplicitLittle),
                        folder.write("big", dataset, Encoding::ExplicitBig),
                        folder.write("deflated", part10(kDeflatedUid, deflated(dataset.encode())))};
    for (const auto& file : files) {
        const auto scanned = scanFile(file);
        ASSERT_TRUE(scanned) << file << scanned.error().message;
        EXPECT_EQ(valueOf(scanned->dataset.integer(tags::Rows)), 4) << file;
        EXPECT_EQ(scanned->dataset.text(tags::SeriesInstanceUid), "1.2.3.4") << file;
        EXPECT_EQ(valueOf(scanned->dataset.numbers(tags::PixelSpacing)), (std::vector<double>{0.5, 0.25}))
            << file;
        EXPECT_EQ(scanned->format->columns, 5) << file;
        EXPECT_EQ(scanned->pixels->native.length, 40u) << file;
    }
}

TEST(ScanFile, ReadsADataSetWithoutPreambleOrMetaInformation) {
    const TempFolder folder;
    const DatasetBytes dataset = CtSlice{}.dataset();
    for (const Encoding encoding :
         {Encoding::ExplicitLittle, Encoding::ImplicitLittle, Encoding::ExplicitBig}) {
        const auto scanned = scanFile(folder.write("bare", dataset.encode(encoding)));
        ASSERT_TRUE(scanned) << scanned.error().message;
        EXPECT_EQ(valueOf(scanned->dataset.integer(tags::Columns)), 5);
    }
    const auto noPreamble = scanFile(folder.write("meta-first", part10(dataset).substr(132)));
    ASSERT_TRUE(noPreamble) << noPreamble.error().message;
    EXPECT_EQ(noPreamble->syntax.uid, kExplicitUid);
}

TEST(ScanFile, FollowsTheDataWhereTheDeclaredEncodingContradictsIt) {
    const TempFolder folder;
    const auto scanned = scanFile(
        folder.write("lying", part10(kImplicitUid, CtSlice{}.dataset().encode(Encoding::ExplicitLittle))));
    ASSERT_TRUE(scanned) << scanned.error().message;
    EXPECT_EQ(valueOf(scanned->dataset.integer(tags::Rows)), 4);
    ASSERT_EQ(scanned->notices.size(), 1u);
    EXPECT_EQ(scanned->notices[0].code, "transfer-syntax-contradicted");
}

TEST(ScanFile, RefusesWhatIsNoRegularFile) {
    const TempFolder folder;
    EXPECT_THAT(errorOf(scanFile(folder.path())).message, HasSubstr("It is a folder, not a regular file."));
    const auto pipe = folder.path() / "pipe";
    ASSERT_EQ(mkfifo(pipe.c_str(), 0600), 0);
    EXPECT_THAT(errorOf(scanFile(pipe)).message, HasSubstr("It is a pipe, not a regular file."));
    EXPECT_EQ(errorOf(scanFile("/dev/null")).code, ErrorCode::FileUnreadable);
    EXPECT_THAT(errorOf(scanFile(folder.path() / "none")).message, HasSubstr("cannot be opened"));
}

TEST(ScanFile, RefusesWhatIsNotDicomAndSaysWhy) {
    EXPECT_EQ(refusal("").message, "It is not DICOM: the file is empty.");
    const auto png = refusal("\x89PNG\r\n\x1a\n" + std::string(500, 'x'));
    EXPECT_EQ(png.code, ErrorCode::NotDicom);
    EXPECT_THAT(png.message, HasSubstr("no DICM mark at byte 128"));
    EXPECT_EQ(refusal("x").code, ErrorCode::NotDicom);
    EXPECT_EQ(refusal(part10(DatasetBytes{}.text(0x00080060, "CS", "CT"))).message,
              "It is not DICOM: (0008,0016) SOPClassUID is absent.");
}

TEST(ScanFile, NeverTakesACutFileForAnImage) {
    const std::string whole = part10(CtSlice{}.dataset());
    const TempFolder folder;
    for (std::size_t length = 0; length < whole.size(); ++length) {
        const auto scanned = scanFile(folder.write("cut", whole.substr(0, length)));
        // A cut between two attributes leaves a data set that is in order, but without the pixels that stand
        // last.
        EXPECT_TRUE(!scanned || !scanned->pixels) << "cut to " << length << " bytes";
    }
    EXPECT_TRUE(scanFile(folder.write("whole", whole)));
}

TEST(ScanFile, NamesTheAttributeWhoseLengthExceedsTheFile) {
    const auto error = refusal(part10(kExplicitUid, explicitElement(0x00080016, "UI", 26, "1.2")));
    EXPECT_EQ(error.code, ErrorCode::FileDamaged);
    EXPECT_THAT(error.message, HasSubstr("(0008,0016) SOPClassUID claims 26 bytes"));
    EXPECT_THAT(error.message, HasSubstr("only 3 are left in the file"));
    EXPECT_THAT(refusal(part10(kExplicitUid, explicitElement(0x00091001, "OB", 0xFFFFFFF0, "abc"))).message,
                HasSubstr("claims 4294967280 bytes"));
}

TEST(ScanFile, RefusesAnItemLongerThanItsSequence) {
    DatasetBytes item;
    item.text(0x00081150, "UI", "1.2");
    const std::string inside = item.encode();
    const std::string lying = explicitElement(0xFFFEE000, "", 0, "").substr(0, 4) +
                              littleU32(static_cast<std::uint32_t>(inside.size()) + 40) + inside;
    const std::string sequence =
        explicitElement(0x00081140, "SQ", static_cast<std::uint32_t>(lying.size()), lying);
    EXPECT_THAT(refusal(part10(kExplicitUid, sequence + CtSlice{}.dataset().encode())).message,
                HasSubstr("left in its sequence item"));
}

TEST(ScanFile, RefusesAValueRepresentationThatDoesNotExist) {
    EXPECT_THAT(refusal(part10(kExplicitUid, explicitElement(0x00080005, "q7", 2, "ab"))).message,
                HasSubstr("(0008,0005) SpecificCharacterSet has the value representation \"q7\""));
}

TEST(ScanFile, RefusesTenThousandNestedSequencesInEveryEncoding) {
    const std::string item = std::string("\xFE\xFF\x00\xE0\xFF\xFF\xFF\xFF", 8);
    std::string explicitNest, implicitNest, unknownNest;
    for (int i = 0; i < 10000; ++i) {
        explicitNest += explicitElement(0x00081140, "SQ", 0xFFFFFFFF, item);
        implicitNest += std::string("\x08\x00\x40\x11\xFF\xFF\xFF\xFF", 8) + item;
    }
    unknownNest = explicitElement(0x00091001, "UN", static_cast<std::uint32_t>(implicitNest.size() + 8),
                                  item + implicitNest);
    for (const std::string& file :
         {part10(kExplicitUid, explicitNest),
          part10(kImplicitUid, std::string("\x08\x00\x05\x00\x02\x00\x00\x00  ", 10) + implicitNest),
          part10(kExplicitUid, unknownNest + CtSlice{}.dataset().encode())}) {
        const auto error = refusal(file);
        EXPECT_EQ(error.code, ErrorCode::FileDamaged);
        EXPECT_THAT(error.message, HasSubstr("nested deeper than 64 levels"));
    }
}

TEST(ScanFile, AcceptsSixtyFourLevelsAndNoMore) {
    const auto nested = [](int levels) {
        DatasetBytes dataset;
        dataset.text(0x00081150, "UI", "1.2");
        for (int i = 0; i < levels; ++i) {
            DatasetBytes outer;
            outer.sequence(0x00081140, {dataset});
            dataset = outer;
        }
        dataset.text(0x00080016, "UI", kCtClass);
        return part10(dataset);
    };
    const TempFolder folder;
    EXPECT_TRUE(scanFile(folder.write("deep", nested(kMaxNesting))));
    EXPECT_FALSE(scanFile(folder.write("deeper", nested(kMaxNesting + 1))));
}

TEST(ScanFile, StopsADeflateBombWithinItsBudget) {
    // One private value of a gigabyte of zeros, deflated to about a megabyte.
    std::string bomb = explicitElement(0x00091001, "OB", 0x40000000, "");
    bomb.resize(bomb.size() + (std::size_t{1} << 28), '\0');
    const std::string file = part10(kDeflatedUid, deflated(bomb));
    bomb.clear();
    bomb.shrink_to_fit();
    const double before = peakMiB();
    const auto error = refusal(file);
    EXPECT_EQ(error.code, ErrorCode::FileDamaged);
    EXPECT_THAT(error.message, HasSubstr("deflated data set grows beyond"));
    EXPECT_LT(peakMiB() - before, kHonestGrowthMiB);
}

TEST(ScanFile, TakesNoMoreMemoryForMillionsOfEmptyItemsThanItMay) {
    const std::string item("\xFE\xFF\x00\xE0\x00\x00\x00\x00", 8);
    std::string items;
    for (int i = 0; i < 2000000; ++i)
        items += item;
    const std::string file = part10(
        kExplicitUid, explicitElement(0x52009230, "SQ", static_cast<std::uint32_t>(items.size()), items));
    const double before = peakMiB();
    EXPECT_THAT(refusal(file).message, HasSubstr("sequence items"));
    EXPECT_LT(peakMiB() - before, kHonestGrowthMiB);
}

TEST(ScanFile, ComparesThePixelsWithWhatTheAttributesAskFor) {
    const auto error = refusal(part10(CtSlice{}.dataset().us(0x00280010, 5)));
    EXPECT_EQ(error.code, ErrorCode::FileDamaged);
    EXPECT_THAT(error.message, HasSubstr("(7fe0,0010) PixelData holds 40 bytes where 5 rows x 5 columns x 1 "
                                         "frames x 1 samples of 16 bits need 50"));
    EXPECT_THAT(refusal(part10(CtSlice{}.dataset().us(0x00280010, 3))).message, HasSubstr("need 30"));
}

TEST(ScanFile, RefusesImplausiblePixelAttributesBeforeAnythingIsAllocated) {
    const auto encapsulated = [] {
        DatasetBytes d = CtSlice{}.dataset();
        d.fragments(0x7FE00010, {"", std::string(64, 'x')});
        return d;
    };
    const auto message = [](const DatasetBytes& d) { return refusal(part10(kRleUid, d.encode())).message; };
    EXPECT_THAT(message(encapsulated().us(0x00280010, 0)), HasSubstr("(0028,0010) Rows is 0"));
    EXPECT_THAT(message(encapsulated().remove(0x00280011)), HasSubstr("(0028,0011) Columns is absent"));
    EXPECT_THAT(message(encapsulated().us(0x00280100, 13)), HasSubstr("(0028,0100) BitsAllocated is 13"));
    EXPECT_THAT(message(encapsulated().us(0x00280101, 17)), HasSubstr("(0028,0101) BitsStored is 17"));
    EXPECT_THAT(message(encapsulated().text(0x00280008, "IS", "1A")),
                HasSubstr("(0028,0008) NumberOfFrames holds \"1A\""));
    EXPECT_THAT(message(encapsulated().us(0x00280010, 65535).us(0x00280011, 65535)),
                HasSubstr("which no image of this kind has"));
}

TEST(ScanFile, RefusesPixelsThatContradictTheTransferSyntax) {
    EXPECT_THAT(refusal(part10(kRleUid, CtSlice{}.dataset().encode())).message,
                HasSubstr("is not encapsulated although the transfer syntax is RLE"));
    DatasetBytes d = CtSlice{}.dataset();
    EXPECT_THAT(refusal(part10(kExplicitUid, d.fragments(0x7FE00010, {"", "abcd"}).encode())).message,
                HasSubstr("is encapsulated although"));
}

TEST(ScanFile, SurvivesEveryChangeOfOneByte) {
    // Every byte of a small file with a sequence and encapsulated pixels, replaced by the values that hurt
    // lengths most.
    DatasetBytes item;
    item.text(0x00081150, "UI", "1.2");
    DatasetBytes dataset = CtSlice{}.dataset();
    dataset.sequence(0x00081140, {item, item})
        .fragments(0x7FE00010, {"", rle16(std::vector<std::uint16_t>(20, 7))});
    const std::string whole = part10(kRleUid, dataset.encode());
    const TempFolder folder;
    for (std::size_t at = 128; at < whole.size(); ++at)
        for (const char value : {'\x00', '\x7F', '\xFF'}) {
            std::string changed = whole;
            changed[at] = value;
            (void)scanFile(folder.write("changed", changed)); // any answer, but an answer
        }
}

TEST(ScanFile, RecognisesADirectoryFile) {
    const TempFolder folder;
    DatasetBytes meta;
    meta.text(0x00020002, "UI", "1.2.840.10008.1.3.10").text(0x00020010, "UI", kExplicitUid);
    const std::string file = std::string(128, '\0') + "DICM" + meta.encode() +
                             DatasetBytes{}.text(0x00041130, "CS", "SET").encode();
    const auto scanned = scanFile(folder.write("DICOMDIR", file));
    ASSERT_TRUE(scanned) << scanned.error().message;
    EXPECT_TRUE(scanned->isDirectory());
}

TEST(ScanFile, TellsTheSeriesOfADamagedFileThatNamesIt) {
    const std::string whole = part10(CtSlice{}.dataset());
    const auto error = refusal(whole.substr(0, whole.size() - 4));
    EXPECT_THAT(error.facts, testing::Contains(testing::Field(&core::Fact::value, "1.2.3.4")));
}

TEST(Dataset, TellsAbsentEmptyAndWrongApart) {
    const TempFolder folder;
    DatasetBytes d = CtSlice{}.dataset();
    d.text(0x00180050, "DS", "").text(0x00180088, "DS", "two").text(0x00181120, "DS", "nan");
    const auto scanned = scanFile(folder.write("file", d));
    ASSERT_TRUE(scanned);
    const Dataset& data = scanned->dataset;
    EXPECT_EQ(errorOf(data.required(tags::ImagerPixelSpacing, 2)).message,
              "(0018,1164) ImagerPixelSpacing is absent.");
    EXPECT_EQ(errorOf(data.required(tags::SliceThickness, 1)).message,
              "(0018,0050) SliceThickness is empty.");
    EXPECT_THAT(errorOf(data.required(tags::SpacingBetweenSlices, 1)).message,
                HasSubstr("holds \"two\"; needed: a finite number"));
    EXPECT_THAT(errorOf(data.required(tags::GantryDetectorTilt, 1)).message, HasSubstr("holds \"nan\""));
    EXPECT_THAT(errorOf(data.required(tags::PixelSpacing, 3)).message, HasSubstr("needed: 3 numbers"));
}
