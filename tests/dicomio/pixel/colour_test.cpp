// Colours and brightness from bytes made here: expected values by hand, or from the standard's formulas.
#include "dicomio/pixel/colour.h"

#include "dicomio/pixel/greyscale.h"
#include "dicomio/pixel/palette_segments.h"
#include "tests/dicomio/support/dicom_bytes.h"
#include "tests/dicomio/support/result_of.h"

#include <gmock/gmock.h>
#include <thread>

using namespace gauge;
using namespace gauge::dicomio;
using namespace gauge::test;
using testing::ElementsAre;
using testing::HasSubstr;

namespace {

std::string asBytes(std::initializer_list<int> values) {
    std::string s;
    for (const int v : values)
        s += static_cast<char>(v);
    return s;
}

/// Two pixels side by side, 8 bits.
DatasetBytes pair(const std::string& photometric, std::uint16_t samples, std::initializer_list<int> pixels) {
    DatasetBytes d = CtSlice{}.dataset();
    d.us(0x00280002, samples).text(0x00280004, "CS", photometric).us(0x00280010, 1).us(0x00280011, 2);
    d.us(0x00280100, 8).us(0x00280101, 8).us(0x00280102, 7);
    if (samples == 3) d.us(0x00280006, 0);
    return d.bytes(0x7FE00010, "OB", asBytes(pixels));
}

/// The words of a palette of three entries from value 10 on.
DatasetBytes withPalette(DatasetBytes d, std::uint16_t bits, const std::string& data,
                         std::uint16_t entries = 3) {
    for (TagNumber channel = 0; channel < 3; ++channel) {
        d.words(0x00281101 + channel, "US", {entries, 10, bits});
        d.bytes(0x00281201 + channel, "OW", data);
    }
    return d;
}

core::Result<core::RgbFrame> rgbOf(const DatasetBytes& d, Encoding encoding = Encoding::ExplicitLittle) {
    const TempFolder folder;
    const auto scanned = scanFile(folder.write("file", d, encoding));
    if (!scanned) return tl::make_unexpected(scanned.error());
    const auto reader = ColourReader::open(*scanned);
    if (!reader) return tl::make_unexpected(reader.error());
    return reader->readRgb(0);
}

std::vector<int> colours(const DatasetBytes& d, Encoding encoding = Encoding::ExplicitLittle) {
    const core::RgbFrame frame = valueOf(rgbOf(d, encoding));
    return {frame.samples.begin(), frame.samples.end()};
}

std::string refusal(const DatasetBytes& d) {
    return errorOf(rgbOf(d)).message;
}

Greyscale greyOf(const DatasetBytes& d, int frame = 0) {
    const TempFolder folder;
    return valueOf(greyscaleOf(valueOf(scanFile(folder.write("file", d))), frame));
}

} // namespace

TEST(ColourReader, ShowsGreyOverItsWholeRangeAndMonochrome1Inverted) {
    EXPECT_THAT(colours(pair("MONOCHROME2", 1, {0, 255})), ElementsAre(0, 0, 0, 255, 255, 255));
    EXPECT_THAT(colours(pair("MONOCHROME1", 1, {0, 200})), ElementsAre(255, 255, 255, 55, 55, 55));
    DatasetBytes twelve = CtSlice{}.dataset();
    twelve.us(0x00280010, 1).us(0x00280011, 2).us(0x00280101, 12).us(0x00280102, 11).us(0x00280103, 1);
    EXPECT_THAT(colours(twelve.words(0x7FE00010, "OW", {0x0800, 0x07FF})),
                ElementsAre(0, 0, 0, 255, 255, 255));
}

TEST(ColourReader, ReadsRgbByPixelAndByPlaneInEveryByteOrder) {
    const std::vector<int> expected{1, 2, 3, 4, 5, 6};
    EXPECT_EQ(colours(pair("RGB", 3, {1, 2, 3, 4, 5, 6})), expected);
    EXPECT_EQ(colours(pair("RGB", 3, {1, 4, 2, 5, 3, 6}).us(0x00280006, 1)), expected);
    // 8-bit pixels as words (PS3.5 8.1.2), whose bytes a big-endian file swaps
    const DatasetBytes words = pair("RGB", 3, {}).words(0x7FE00010, "OW", {0x0201, 0x0403, 0x0605});
    EXPECT_EQ(colours(words, Encoding::ExplicitBig), expected);
    EXPECT_EQ(colours(words, Encoding::ImplicitLittle), expected);
    DatasetBytes deep = pair("RGB", 3, {}).us(0x00280100, 16).us(0x00280101, 16).us(0x00280102, 15);
    deep.words(0x7FE00010, "OW", {0, 257, 514, 65535, 32896, 257});
    EXPECT_THAT(colours(deep), ElementsAre(0, 1, 2, 255, 128, 1));
}

TEST(ColourReader, ConvertsYbrAsTheStandardDefinesIt) {
    // PS3.3 C.7.6.3.1.2, YBR_FULL of pure red (255, 0, 0): Y 76.2, Cb 85.0, Cr 255.5; of grey: chroma 128.
    EXPECT_THAT(colours(pair("YBR_FULL", 3, {76, 85, 255, 90, 128, 128})),
                ElementsAre(254, 0, 0, 90, 90, 90));
    EXPECT_THAT(colours(pair("YBR_FULL_422", 3, {76, 90, 128, 128})), ElementsAre(76, 76, 76, 90, 90, 90));
    EXPECT_THAT(
        colours(pair("YBR_FULL_422", 3, {76, 128, 128, 90, 128, 128})), // chroma not halved: told, read
        ElementsAre(76, 76, 76, 90, 90, 90));
}

TEST(ColourReader, LooksUpPalettesOfBothDepthsFromTheirFirstValueOn) {
    const std::string eight = asBytes({11, 22, 33, 0}), sixteen = asBytes({0, 11, 0, 22, 0, 33});
    for (const DatasetBytes& d : {withPalette(pair("PALETTE COLOR", 1, {9, 11}), 8, eight),
                                  withPalette(pair("PALETTE COLOR", 1, {9, 11}), 16, sixteen)})
        for (const Encoding encoding : {Encoding::ExplicitLittle, Encoding::ImplicitLittle})
            EXPECT_THAT(colours(d, encoding), ElementsAre(11, 11, 11, 22, 22, 22));
    EXPECT_THAT(colours(withPalette(pair("PALETTE COLOR", 1, {12, 200}), 8, eight)),
                ElementsAre(33, 33, 33, 33, 33, 33));
    // all 65536 entries of 16 bits: 0 stands for them
    std::string whole;
    for (int i = 0; i < 65536; ++i)
        whole += asBytes({i & 0xFF, i >> 8});
    DatasetBytes d = pair("PALETTE COLOR", 1, {}).us(0x00280100, 16).us(0x00280101, 16).us(0x00280102, 15);
    d.words(0x7FE00010, "OW", {0x120A, 0xFF0A});
    EXPECT_THAT(colours(withPalette(d, 16, whole, 0)), ElementsAre(0x12, 0x12, 0x12, 0xFF, 0xFF, 0xFF));
}

TEST(ColourReader, RefusesPalettesThatCannotBeTrue) {
    const DatasetBytes right =
        withPalette(pair("PALETTE COLOR", 1, {9, 11}), 16, asBytes({0, 1, 0, 2, 0, 3}));
    EXPECT_THAT(
        refusal(DatasetBytes(right).bytes(0x00281202, "OW", asBytes({0, 1, 0, 2}))),
        HasSubstr("(0028,1202) GreenPaletteColorLookupTableData holds 4 bytes where 3 entries of 16 bits "
                  "need 6: the palette is shorter than declared"));
    EXPECT_THAT(refusal(DatasetBytes(right).remove(0x00281203)),
                HasSubstr("(0028,1203) BluePaletteColorLookupTableData is absent or empty"));
    EXPECT_THAT(refusal(DatasetBytes(right).remove(0x00281101)), HasSubstr("(0028,1101)"));
    EXPECT_THAT(refusal(DatasetBytes(right).words(0x00281102, "US", {2, 10, 16})),
                HasSubstr("says otherwise than (0028,1101)"));
    EXPECT_THAT(refusal(DatasetBytes(right).words(0x00281101, "US", {3, 10, 33})), HasSubstr("have 33 bits"));
    EXPECT_THAT(refusal(DatasetBytes(right).words(0x00281101, "US", {3, 10})), HasSubstr("has 4 bytes"));
}

TEST(ColourReader, RefusesWhatThePhotometricInterpretationContradicts) {
    EXPECT_THAT(refusal(pair("RGB", 1, {1, 2})),
                HasSubstr("(0028,0004) PhotometricInterpretation is RGB, which has 3 samples a pixel, but "
                          "(0028,0002) SamplesPerPixel is 1"));
    EXPECT_THAT(refusal(pair("MONOCHROME2", 3, {1, 2, 3, 4, 5, 6})), HasSubstr("has 1 samples a pixel"));
    EXPECT_THAT(refusal(pair("YBR_ICT", 3, {1, 2, 3, 4, 5, 6})), HasSubstr("which only JPEG 2000 knows"));
    EXPECT_THAT(refusal(pair("YBR_PARTIAL_422", 3, {1, 2, 3, 4, 5, 6})),
                HasSubstr("is YBR_PARTIAL_422, which is not read here; have the image exported"));
    EXPECT_THAT(refusal(pair("MONOCHROME2", 1, {1, 2}).remove(0x00280004)), HasSubstr("is absent or empty"));
    const DatasetBytes odd = pair("YBR_FULL_422", 3, {1, 1, 1, 1, 1, 1}).us(0x00280011, 3);
    EXPECT_THAT(refusal(odd), HasSubstr("an odd number"));
}

TEST(ColourReader, RefusesFramesThatDoNotExist) {
    const TempFolder folder;
    const auto scanned = valueOf(scanFile(folder.write("file", pair("MONOCHROME2", 1, {1, 2}))));
    const auto reader = ColourReader::open(scanned);
    ASSERT_TRUE(reader);
    for (const int frame : {-1, 1})
        EXPECT_EQ(errorOf(reader->readRgb(frame)).code, core::ErrorCode::InvalidArgument);
    EXPECT_THAT(errorOf(reader->readRgb(1)).message,
                HasSubstr("Frame 2 does not exist; the image has 1 frame."));
}

TEST(ColourReader, ReadsDeflatedFramesInAnyOrderFromSeveralThreads) {
    // Larger than what is kept inflated: every step backwards inflates anew.
    constexpr int kFrames = 70, kSide = 1024;
    DatasetBytes d = pair("MONOCHROME2", 1, {}).us(0x00280010, kSide).us(0x00280011, kSide);
    std::string pixels;
    for (int f = 0; f < kFrames; ++f)
        pixels.append(std::size_t{kSide} * kSide, static_cast<char>(f));
    d.text(0x00280008, "IS", std::to_string(kFrames)).bytes(0x7FE00010, "OB", pixels);
    const TempFolder folder;
    const auto scanned = valueOf(scanFile(folder.write("file", part10(kDeflatedUid, deflated(d.encode())))));
    const auto reader = FrameReader::open(scanned);
    ASSERT_TRUE(reader) << reader.error().message;
    const auto check = [&](int frame) {
        const auto values = reader->readValues(frame);
        EXPECT_TRUE(values && values->front() == frame && values->back() == frame) << frame;
    };
    std::thread other([&] { check(69), check(3); });
    check(68), check(0);
    other.join();
}

TEST(ExpandSegments, UnrollsEveryKindOfSegment) {
    // PS3.3 C.7.9.2: two discrete, two in a line, both segments once more by pointing at byte 0.
    const std::string words = asBytes({0, 0, 2, 0, 5, 0, 6, 0, 1, 0, 2, 0, 10, 0, 2, 0, 2, 0, 0, 0, 0, 0});
    EXPECT_EQ(expandSegments(words, false, 8).value(),
              (std::vector<std::uint16_t>{5, 6, 8, 10, 5, 6, 8, 10}));
    EXPECT_EQ(expandSegments(asBytes({0, 1, 7, 1, 2, 9}), true, 3).value(),
              (std::vector<std::uint16_t>{7, 8, 9}));
}

TEST(ExpandSegments, RefusesBrokenOnesWithoutRunningOn) {
    const auto finding = [](const std::string& bytes, std::size_t entries) {
        const auto expanded = expandSegments(bytes, true, entries);
        return expanded ? std::string("expanded") : expanded.error();
    };
    EXPECT_THAT(finding(asBytes({0, 2, 7, 8}), 3), HasSubstr("ends after 2 of 3 entries"));
    EXPECT_THAT(finding(asBytes({0, 4, 7, 8, 9, 9}), 3), HasSubstr("more than the 3 entries"));
    EXPECT_THAT(finding(asBytes({1, 2, 9}), 2), HasSubstr("starts with a linear segment"));
    EXPECT_THAT(finding(asBytes({9, 1, 0}), 2), HasSubstr("a segment of kind 9"));
    EXPECT_THAT(finding(asBytes({0, 0, 0, 0}), 2), HasSubstr("an empty segment"));
    EXPECT_THAT(finding(asBytes({2, 1, 0, 0, 0, 0}), 2),
                HasSubstr("a segment of kind 2")); // points at itself
}

TEST(GreyscaleOf, ReadsRescaleAndWindowsAndLeavesOutWhatIsNone) {
    DatasetBytes d = CtSlice{}.dataset();
    d.text(0x00281050, "DS", "40\\0").text(0x00281051, "DS", "400\\0").text(0x00281055, "LO", "SOFT\\NONE");
    const Greyscale grey = greyOf(d);
    EXPECT_EQ(grey.modalityValue(1064), 40.0);
    ASSERT_EQ(grey.windows.size(), 1u);
    EXPECT_EQ(grey.windows[0].explanation, "SOFT");
    ASSERT_EQ(grey.notices.size(), 1u);
    EXPECT_EQ(grey.notices[0].code, "window-unusable");
    EXPECT_EQ(greyOf(d.text(0x00281051, "DS", "400")).notices.size(), 1u); // two centres, one width
}

TEST(GreyscaleOf, TakesTheFramesOwnGroupsBeforeSharedOnes) {
    const auto window = [](const char* centre) {
        DatasetBytes inner, group;
        inner.text(0x00281050, "DS", centre).text(0x00281051, "DS", "100");
        return group.sequence(0x00289132, {inner});
    };
    DatasetBytes d = CtSlice{}.dataset();
    d.sequence(0x52009229, {window("1")}).sequence(0x52009230, {window("7"), DatasetBytes{}});
    EXPECT_EQ(greyOf(d, 0).windows.at(0).centre, 7.0);
    EXPECT_EQ(greyOf(d, 1).windows.at(0).centre, 1.0);
}

TEST(GreyscaleOf, RefusesASlopeOfNothingAndABrokenModalityTable) {
    const auto failureOf = [](const DatasetBytes& d) {
        const TempFolder folder;
        return errorOf(greyscaleOf(valueOf(scanFile(folder.write("file", d))), 0)).message;
    };
    EXPECT_THAT(failureOf(CtSlice{}.dataset().text(0x00281053, "DS", "0")), HasSubstr("RescaleSlope is 0"));
    DatasetBytes table;
    table.words(0x00283002, "US", {4, 0, 16}).words(0x00283006, "OW", {1, 2});
    EXPECT_THAT(failureOf(CtSlice{}.dataset().sequence(0x00283000, {table})),
                HasSubstr("LUTData has 4 bytes for 4 entries"));
}

TEST(Shown, FollowsTheStandardsWindowsAndTables) {
    // PS3.3 C.11.2.1.2.1, the example of centre 2048 and width 4096 for outputs 0 to 255.
    const Window linear{2048, 4096, WindowFunction::Linear, {}};
    EXPECT_EQ(windowed(0, linear), 0.0);
    EXPECT_EQ(windowed(4096, linear), 255.0);
    EXPECT_NEAR(windowed(2048, linear), 255.0 * (0.5 / 4095.0 + 0.5), 1e-9);
    EXPECT_NEAR(windowed(5, {5, 10, WindowFunction::Sigmoid, {}}), 127.5, 1e-9);
    EXPECT_NEAR(windowed(10, {5, 10, WindowFunction::LinearExact, {}}), 255.0, 1e-9);
    Greyscale grey;
    grey.voiTables.push_back({1, 8, {0, 100, 255}, {}});
    const std::vector<std::int32_t> values{-5, 2, 9};
    EXPECT_THAT(shown(values, grey), ElementsAre(0, 100, 255));
    grey.inverted = true;
    EXPECT_THAT(shown(values, grey), ElementsAre(255, 155, 0));
    grey.voiTables.clear();
    EXPECT_THAT(shown(values, grey), ElementsAre(255, 127, 0)); // no window: the whole range
}
