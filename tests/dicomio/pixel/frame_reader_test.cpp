#include "dicomio/pixel/frame_reader.h"

#include "dicomio/pixel/codestream_header.h"
#include "tests/dicomio/support/dicom_bytes.h"
#include "tests/dicomio/support/result_of.h"

#include <gmock/gmock.h>
#include <numeric>

using namespace gauge;
using namespace gauge::dicomio;
using namespace gauge::test;
using core::ErrorCode;
using testing::HasSubstr;

namespace {

std::vector<std::uint16_t> ramp(std::size_t count, std::uint16_t first = 0) {
    std::vector<std::uint16_t> values(count);
    std::iota(values.begin(), values.end(), first);
    return values;
}

std::vector<std::int32_t> decoded(const std::string& file, int frame = 0) {
    const TempFolder folder;
    const auto scanned = scanFile(folder.write("file", file));
    if (!scanned) throw std::runtime_error(scanned.error().message);
    return valueOf(valueOf(FrameReader::open(*scanned)).readValues(frame));
}

core::Error failure(const std::string& file) {
    const TempFolder folder;
    const auto scanned = scanFile(folder.write("file", file));
    if (!scanned) return scanned.error();
    const auto reader = FrameReader::open(*scanned);
    return reader ? errorOf(reader->readValues(0)) : reader.error();
}

DatasetBytes frames(int count) {
    DatasetBytes d = CtSlice{}.dataset();
    d.text(0x00280008, "IS", std::to_string(count));
    return d;
}

std::string asBytes(std::initializer_list<int> values) {
    std::string s;
    for (const int v : values)
        s += static_cast<char>(v);
    return s;
}

core::Error rejected(const std::string& frame, PixelCoding coding, const PixelFormat& format) {
    return errorOf(checkCodestream(std::as_bytes(std::span(frame)), coding, format));
}

PixelFormat fiveByFour() {
    PixelFormat f;
    f.rows = 4;
    f.columns = 5;
    return f;
}

} // namespace

TEST(FrameReader, ReadsEveryUncompressedEncodingAlike) {
    const DatasetBytes d = CtSlice{}.dataset();
    const std::vector<std::int32_t> expected = decoded(part10(d));
    EXPECT_EQ(expected[19], 19);
    EXPECT_EQ(decoded(part10(d, Encoding::ImplicitLittle)), expected);
    EXPECT_EQ(decoded(part10(d, Encoding::ExplicitBig)), expected);
    EXPECT_EQ(decoded(part10(kDeflatedUid, deflated(d.encode()))), expected);
}

TEST(FrameReader, ReadsEachFrameFromItsOwnPlace) {
    DatasetBytes d = frames(3);
    d.words(0x7FE00010, "OW", ramp(60));
    for (const std::string& file :
         {part10(d), part10(d, Encoding::ExplicitBig), part10(kDeflatedUid, deflated(d.encode()))})
        EXPECT_EQ(decoded(file, 2).front(), 40);
}

TEST(FrameReader, ReadsRleWithAndWithoutAnOffsetTable) {
    const std::string first = rle16(ramp(20)), second = rle16(ramp(20, 300));
    const std::string table = littleU32(0) + littleU32(static_cast<std::uint32_t>(first.size()) + 8);
    for (const std::string& offsets : {std::string(), table}) {
        DatasetBytes d = frames(2);
        d.fragments(0x7FE00010, {offsets, first, second});
        EXPECT_EQ(decoded(part10(kRleUid, d.encode()), 1)[3], 303);
    }
}

TEST(FrameReader, JoinsFragmentsOfAFrame) {
    const std::string first = rle16(ramp(20)), second = rle16(ramp(20, 300));
    const std::string table = littleU32(0) + littleU32(static_cast<std::uint32_t>(first.size()) + 16);
    DatasetBytes d = frames(2);
    d.fragments(0x7FE00010, {table, first.substr(0, 40), first.substr(40), second});
    EXPECT_EQ(decoded(part10(kRleUid, d.encode()), 0)[19], 19);
    EXPECT_EQ(decoded(part10(kRleUid, d.encode()), 1)[19], 319);
    d = frames(2);
    d.fragments(0x7FE00010, {"", first.substr(0, 40), first.substr(40), second});
    EXPECT_THAT(failure(part10(kRleUid, d.encode())).message,
                HasSubstr("has 3 fragments for 2 frames, and nothing tells which belong to which frame"));
}

TEST(FrameReader, ReadsSignedShiftedAndByteSizedPixels) {
    DatasetBytes d = CtSlice{}.dataset();
    d.us(0x00280101, 12)
        .us(0x00280102, 15)
        .us(0x00280103, 1)
        .words(0x7FE00010, "OW", std::vector<std::uint16_t>(20, 0xFFE0));
    EXPECT_EQ(decoded(part10(d))[0], -2);
    DatasetBytes bytes = CtSlice{}.dataset();
    bytes.us(0x00280100, 8)
        .us(0x00280101, 8)
        .us(0x00280102, 7)
        .bytes(0x7FE00010, "OB", std::string(19, 'x') + "\xFF");
    EXPECT_EQ(decoded(part10(bytes))[19], 255);
}

TEST(FrameReader, ReadsColourByPixelAndByPlane) {
    DatasetBytes d = CtSlice{}.dataset();
    d.us(0x00280002, 3)
        .text(0x00280004, "CS", "RGB")
        .us(0x00280100, 8)
        .us(0x00280101, 8)
        .us(0x00280102, 7)
        .us(0x00280010, 1)
        .us(0x00280011, 2);
    d.us(0x00280006, 0).bytes(0x7FE00010, "OB", asBytes({1, 2, 3, 4, 5, 6}));
    EXPECT_EQ(decoded(part10(d)), (std::vector<std::int32_t>{1, 2, 3, 4, 5, 6}));
    d.us(0x00280006, 1).bytes(0x7FE00010, "OB", asBytes({1, 4, 2, 5, 3, 6}));
    EXPECT_EQ(decoded(part10(d)), (std::vector<std::int32_t>{1, 2, 3, 4, 5, 6}));
}

TEST(FrameReader, ReadsOneBitPixelsAcrossFrames) {
    DatasetBytes d = frames(2);
    d.us(0x00280100, 1).us(0x00280101, 1).us(0x00280102, 0).us(0x00280010, 1).us(0x00280011, 5);
    d.bytes(0x7FE00010, "OB", asBytes({0b01100001, 0b00000011}));
    EXPECT_EQ(decoded(part10(d), 0), (std::vector<std::int32_t>{1, 0, 0, 0, 0}));
    EXPECT_EQ(decoded(part10(d), 1), (std::vector<std::int32_t>{1, 1, 0, 1, 1}));
}

TEST(FrameReader, NamesATransferSyntaxThatCannotBeDecoded) {
    DatasetBytes d = CtSlice{}.dataset();
    d.fragments(0x7FE00010, {"", "abcd"});
    const auto error = failure(part10("1.2.840.10008.1.2.4.102", d.encode()));
    EXPECT_EQ(error.code, ErrorCode::TransferSyntaxUnsupported);
    EXPECT_EQ(
        error.message,
        "(0002,0010) TransferSyntaxUID is 1.2.840.10008.1.2.4.102 (MPEG-4 AVC/H.264 High Profile), which "
        "cannot be decoded; have the image sent uncompressed, or as JPEG, JPEG-LS, JPEG 2000 or RLE.");
}

TEST(FrameReader, RefusesAFileWithoutPixels) {
    EXPECT_THAT(failure(part10(CtSlice{}.dataset().remove(0x7FE00010))).message,
                HasSubstr("(7fe0,0010) PixelData is absent"));
}

TEST(CheckCodestream, ComparesEachCodingWithTheAttributesBeforeDecoding) {
    const std::string jpeg = asBytes({0xFF, 0xD8, 0xFF, 0xC3, 0, 11, 16, 0, 4, 0, 6, 1, 0, 0, 0});
    EXPECT_THAT(
        rejected(jpeg, PixelCoding::Jpeg, fiveByFour()).message,
        HasSubstr("The JPEG frame is 6 x 4 with 1 components of 16 bits, but the attributes say 5 x 4"));
    EXPECT_THAT(rejected("nothing", PixelCoding::Jpeg, fiveByFour()).message, HasSubstr("no frame header"));
    EXPECT_THAT(rejected(asBytes({0xFF, 0xD8, 0xFF, 0xF7, 0, 11, 16, 0xFF, 0xFF, 0, 5, 1}),
                         PixelCoding::JpegLs, fiveByFour())
                    .message,
                HasSubstr("JPEG-LS frame is 5 x 65535"));
}

TEST(CheckCodestream, RefusesAnAbsurdJpeg2000SizeBeforeDecoding) {
    const auto siz = [](std::uint32_t width, std::uint32_t height, std::uint32_t tile) {
        const auto big = [](std::uint32_t v) {
            const std::string s = littleU32(v);
            return std::string(s.rbegin(), s.rend());
        };
        return asBytes({0xFF, 0x4F, 0xFF, 0x51, 0, 41, 0, 0}) + big(width) + big(height) + big(0) + big(0) +
               big(tile) + big(tile) + big(0) + big(0) + asBytes({0, 1, 15, 1, 1}) +
               asBytes({0xFF, 0x90, 0, 10, 0, 0, 0, 0, 0, 14, 0, 1, 0xFF, 0x93}); // an empty tile part
    };
    const std::string right = siz(5, 4, 64);
    EXPECT_TRUE(checkCodestream(std::as_bytes(std::span(right)), PixelCoding::Jpeg2000, fiveByFour()));
    EXPECT_THAT(
        rejected(siz(0x7FFFFFFF, 0x7FFFFFFF, 0x7FFFFFFF), PixelCoding::Jpeg2000, fiveByFour()).message,
        HasSubstr("2147483647 x 2147483647"));
    PixelFormat wide = fiveByFour();
    wide.rows = wide.columns = 4000;
    EXPECT_THAT(rejected(siz(4000, 4000, 1), PixelCoding::Jpeg2000, wide).message,
                HasSubstr("claims 16000000 tiles"));
    EXPECT_THAT(rejected(siz(5, 4, 0), PixelCoding::Jpeg2000, fiveByFour()).message,
                HasSubstr("impossible size segment"));
    EXPECT_THAT(rejected("short", PixelCoding::Jpeg2000, fiveByFour()).message,
                HasSubstr("does not start with a code stream"));
}

TEST(CheckCodestream, RefusesRleThatCannotHoldItsPixels) {
    std::string header = littleU32(2) + littleU32(64) + littleU32(64);
    header.resize(64, '\0');
    PixelFormat huge = fiveByFour();
    huge.rows = huge.columns = 16000;
    EXPECT_THAT(rejected(header, PixelCoding::Rle, huge).message, HasSubstr("cannot hold 512000000 bytes"));
    EXPECT_THAT(rejected(littleU32(7) + header.substr(4), PixelCoding::Rle, fiveByFour()).message,
                HasSubstr("7 segments where its attributes need 2"));
    EXPECT_THAT(
        rejected(header.substr(0, 8) + littleU32(1000) + header.substr(12), PixelCoding::Rle, fiveByFour())
            .message,
        HasSubstr("segment 2 outside of itself"));
    EXPECT_THAT(rejected("x", PixelCoding::Rle, fiveByFour()).message, HasSubstr("shorter than its header"));
}

// ITU-T T.81 table B.1 and B.2.1: TEM, restarts, SOI, EOI and reserved markers have no length and do not stand between SOI
// and the frame header. Debian 12's toolkit never returns from a stream with TEM there.
TEST(CheckCodestream, RefusesAMarkerWithoutLengthBeforeTheFrameHeader) {
    const std::string comment = asBytes({0xFF, 0xFE, 0, 4, 'h', 'i'});
    const std::string frameHeader = asBytes({0xFF, 0xC3, 0, 11, 16, 0, 4, 0, 5, 1, 1, 0x11, 0});
    const auto stream = [&](const std::string& between) { return asBytes({0xFF, 0xD8}) + between + frameHeader; };
    for (const auto coding : {PixelCoding::Jpeg, PixelCoding::JpegLs}) {
        const std::string right = stream(comment + asBytes({0xFF}));
        EXPECT_TRUE(checkCodestream(std::as_bytes(std::span(right)), coding, fiveByFour()));
        for (const int marker : {0x00, 0x01, 0x02, 0xBF, 0xD0, 0xD7, 0xD8, 0xD9}) {
            const auto error = rejected(stream(asBytes({0xFF, marker, 0, 2}) + comment), coding, fiveByFour());
            EXPECT_EQ(error.code, core::ErrorCode::FileDamaged) << marker;
            EXPECT_THAT(error.message, HasSubstr("has no frame header")) << marker;
        }
    }
}
