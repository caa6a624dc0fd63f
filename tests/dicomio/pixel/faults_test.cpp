// Broken pixels and broken files, made byte by byte: what is said, and what it costs. The memory of every
// broken file is measured in a process of its own.
#include "dicomio/index/series_index.h"
#include "dicomio/pixel/colour.h"
#include "tests/dicomio/support/dicom_bytes.h"
#include "tests/dicomio/support/python.h"
#include "tests/dicomio/support/result_of.h"

#include <cstdlib>
#include <gmock/gmock.h>
#include <numeric>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

using namespace gauge;
using namespace gauge::dicomio;
using namespace gauge::test;
using testing::HasSubstr;

namespace {

namespace fs = std::filesystem;

constexpr const char* kJpegUid = "1.2.840.10008.1.2.4.50";
constexpr const char* kJpegLsUid = "1.2.840.10008.1.2.4.80";
constexpr const char* kJpeg2000Uid = "1.2.840.10008.1.2.4.90";

std::string asBytes(std::initializer_list<int> values) {
    std::string s;
    for (const int v : values)
        s += static_cast<char>(v);
    return s;
}

std::string big(std::uint64_t value, int bytes) {
    std::string s;
    for (int i = bytes - 1; i >= 0; --i)
        s += static_cast<char>(value >> (8 * i) & 0xFF);
    return s;
}

/// The start of a JPEG 2000 code stream of one component of 8 bits.
std::string jpeg2000(std::uint32_t width, std::uint32_t height, std::uint32_t tile) {
    return asBytes({0xFF, 0x4F, 0xFF, 0x51, 0, 41, 0, 0}) + big(width, 4) + big(height, 4) + big(0, 4) +
           big(0, 4) + big(tile, 4) + big(tile, 4) + big(0, 8) + asBytes({0, 1, 7, 1, 1}) +
           asBytes({0xFF, 0x52, 0, 12, 0, 0, 0, 1, 0, 5, 4, 4, 0, 0}) + asBytes({0xFF, 0x5C, 0, 19, 0x40}) +
           std::string(16, 0x48) +
           asBytes({0xFF, 0x90, 0, 10, 0, 0, 0, 0, 0, 0, 0, 1, 0xFF, 0x93, 0, 0, 0, 0});
}

/// The start of a JPEG or JPEG-LS stream of one component of 8 bits.
std::string jpeg(int startOfFrame, std::uint32_t width, std::uint32_t height) {
    return asBytes({0xFF, 0xD8, 0xFF, startOfFrame, 0, 11, 8}) + big(height, 2) + big(width, 2) +
           asBytes({1, 1, 0x11, 0, 0xFF, 0xDA, 0, 8, 1, 1, 0, 0, 63, 0, 0x55, 0x55});
}

DatasetBytes byteImage(std::uint16_t columns, std::uint16_t rows, int frames = 1) {
    DatasetBytes d = CtSlice{}.dataset();
    d.us(0x00280010, rows).us(0x00280011, columns).us(0x00280100, 8).us(0x00280101, 8).us(0x00280102, 7);
    return d.text(0x00280008, "IS", std::to_string(frames));
}

std::string compressed(const char* uid, DatasetBytes d, std::vector<std::string> fragments) {
    for (std::string& f : fragments)
        if (f.size() % 2) f += '\0';
    return part10(uid, d.fragments(0x7FE00010, std::move(fragments)).encode());
}

std::string refusal(const std::string& bytes, int frame = 0) {
    const TempFolder folder;
    const auto scanned = scanFile(folder.write("file", bytes));
    if (!scanned) return scanned.error().message;
    const auto reader = FrameReader::open(*scanned);
    return reader ? errorOf(reader->readValues(frame)).message : reader.error().message;
}

std::vector<std::uint16_t> ramp(std::uint16_t first) {
    std::vector<std::uint16_t> values(20);
    std::iota(values.begin(), values.end(), first);
    return values;
}

/// Two RLE frames of 5 x 4 with two fragments each.
struct TwoFrames {
    std::string first = rle16(ramp(0)), second = rle16(ramp(300));
    std::vector<std::string> fragments(const std::string& table) const {
        return {table, first.substr(0, 40), first.substr(40), second.substr(0, 40), second.substr(40)};
    }
    std::uint32_t secondOffset() const { return static_cast<std::uint32_t>(first.size()) + 16; }
    static DatasetBytes dataset() {
        DatasetBytes d = CtSlice{}.dataset();
        return d.text(0x00280008, "IS", "2");
    }
};

std::string u64(std::uint64_t value) {
    return littleU32(static_cast<std::uint32_t>(value)) + littleU32(static_cast<std::uint32_t>(value >> 32));
}

} // namespace

TEST(Faults, AnOffsetTableThatLiesIsNotFollowed) {
    const TwoFrames two;
    const auto with = [&](std::uint32_t first, std::uint32_t second) {
        return compressed(kRleUid.data(), TwoFrames::dataset(),
                          two.fragments(littleU32(first) + littleU32(second)));
    };
    const TempFolder folder;
    const auto right = valueOf(scanFile(folder.write("right", with(0, two.secondOffset()))));
    EXPECT_EQ(valueOf(valueOf(FrameReader::open(right)).readValues(1))[0], 300);
    for (const std::string& lying :
         {with(0, two.secondOffset() + 2), with(0, 0xFFFFFFF0), with(8, 8), with(0, 0)})
        EXPECT_THAT(refusal(lying),
                    HasSubstr("has 4 fragments for 2 frames, and nothing tells which belong"));
}

TEST(Faults, AnExtendedOffsetTableIsFollowedOnlyWhereItIsTrue) {
    const TwoFrames two;
    const auto with = [&](std::uint64_t second) {
        DatasetBytes d = TwoFrames::dataset();
        d.bytes(0x7FE00001, "OV", u64(0) + u64(second));
        return compressed(kRleUid.data(), d, two.fragments(""));
    };
    const TempFolder folder;
    const auto right = valueOf(scanFile(folder.write("right", with(two.secondOffset()))));
    EXPECT_EQ(valueOf(valueOf(FrameReader::open(right)).readValues(1))[19], 319);
    for (const std::uint64_t second : {std::uint64_t{4}, ~std::uint64_t{0}, std::uint64_t{1} << 40})
        EXPECT_THAT(refusal(with(second)), HasSubstr("nothing tells which belong to which frame"));
}

TEST(Faults, BrokenFragmentsAreNamed) {
    const TwoFrames two;
    const std::string whole = compressed(kRleUid.data(), TwoFrames::dataset(), two.fragments(""));
    EXPECT_THAT(refusal(whole.substr(0, whole.size() - 30)), HasSubstr("truncated"));
    std::string noMark = whole;
    noMark[noMark.rfind(std::string("\xFE\xFF\x00\xE0", 4))] = 'x';
    EXPECT_THAT(refusal(noMark), HasSubstr("inside the encapsulated (7fe0,0010) PixelData"));
    EXPECT_THAT(refusal(compressed(kRleUid.data(), CtSlice{}.dataset(), {std::string(6, 'x'), "abcd"})),
                HasSubstr("basic offset table has 6 bytes, which is no table of offsets"));
    EXPECT_THAT(refusal(compressed(kRleUid.data(), CtSlice{}.dataset(), {""})),
                HasSubstr("PixelData is empty"));
}

TEST(Faults, CodeStreamsThatContradictTheHeaderAreNotDecoded) {
    EXPECT_THAT(
        refusal(compressed(kJpegUid, byteImage(5, 4), {"", jpeg(0xC0, 6000, 4)})),
        HasSubstr("The JPEG frame is 6000 x 4 with 1 components of 8 bits, but the attributes say 5 x 4"));
    EXPECT_THAT(refusal(compressed(kJpegLsUid, byteImage(5, 4), {"", jpeg(0xF7, 5, 5)})),
                HasSubstr("The JPEG-LS frame is 5 x 5"));
    EXPECT_THAT(refusal(compressed(kJpeg2000Uid, byteImage(5, 4), {"", jpeg2000(5, 400, 8)})),
                HasSubstr("The JPEG 2000 frame is 5 x 400"));
}

TEST(Faults, CutCodeStreamsAreRefusedRatherThanShownInPart) {
    EXPECT_THAT(refusal(compressed(kJpegUid, byteImage(64, 64), {"", jpeg(0xC0, 64, 64)})),
                HasSubstr("JPEG Baseline pixels cannot be decoded"));
    EXPECT_THAT(refusal(compressed(kJpegLsUid, byteImage(64, 64), {"", jpeg(0xF7, 64, 64)})),
                HasSubstr("JPEG-LS Lossless pixels cannot be decoded"));
    EXPECT_THAT(refusal(compressed(kJpeg2000Uid, byteImage(64, 64), {"", jpeg2000(64, 64, 64)})),
                HasSubstr("The JPEG 2000 frame does not end as one must: it is truncated"));
    const std::string rle = rle16(ramp(0));
    EXPECT_THAT(refusal(compressed(kRleUid.data(), CtSlice{}.dataset(), {"", rle.substr(0, rle.size() - 8)})),
                HasSubstr("The RLE frame ends after 16 of 20 bytes of its segment 2"));
}

TEST(Faults, MoreThanAFrameCanHonestlyNeedIsRefused) {
    EXPECT_THAT(refusal(compressed(kJpeg2000Uid, byteImage(5000, 5000), {"", jpeg2000(5000, 5000, 5000)})),
                HasSubstr("bytes cannot hold 25000000 bytes of pixels"));
    EXPECT_THAT(
        refusal(compressed(kJpeg2000Uid, byteImage(20000, 20000), {"", jpeg2000(20000, 20000, 20000)})),
        HasSubstr("larger than what is read here"));
    EXPECT_THAT(refusal(compressed(kJpeg2000Uid, byteImage(512, 512), {"", jpeg2000(512, 512, 2)})),
                HasSubstr("claims 65536 tiles"));
    DatasetBytes shifted = byteImage(64, 64).us(0x00280100, 16).us(0x00280102, 15);
    EXPECT_THAT(refusal(compressed(kJpegUid, shifted, {"", jpeg(0xC0, 64, 64)})),
                HasSubstr("has its samples in the lowest bits"));
}

TEST(Faults, TransferSyntaxesThatAreNotReadAreNamed) {
    for (const auto& [uid, name] : std::vector<std::pair<std::string, std::string>>{
             {"1.2.840.10008.1.2.4.100", "MPEG-2 Main Profile, Main Level"},
             {"1.2.840.10008.1.2.4.107", "HEVC/H.265 Main Profile"},
             {"1.2.840.10008.1.2.4.201", "High-Throughput JPEG 2000 Lossless"},
             {"1.2.840.10008.1.2.4.55", "JPEG Full Progression"},
             {"1.2.3.4", "no transfer syntax of the standard"}})
        EXPECT_THAT(refusal(compressed(uid.c_str(), byteImage(5, 4), {"", "abcd"})),
                    testing::AllOf(HasSubstr(uid + " (" + name), HasSubstr("have the image sent")));
}

TEST(Faults, AWordOnWhatToDoFollowsTheFinding) {
    const std::string whole = part10(CtSlice{}.dataset());
    EXPECT_THAT(refusal(whole.substr(0, whole.size() - 4)), HasSubstr("Copy the file again"));
    EXPECT_THAT(refusal(part10(CtSlice{}.dataset().remove(0x00280011))),
                HasSubstr("(0028,0011) Columns is absent. Have the image exported again."));
}

TEST(Faults, TheRestOfAFolderStillLoads) {
    const TempFolder folder;
    writeStack(folder, ctStack(5, 1.0));
    folder.write("empty.dcm", "");
    folder.write("picture.dcm", "\x89PNG\r\n\x1a\n" + std::string(400, 'x'));
    folder.write("letter.dcm", "Dear colleague, " + std::string(400, 'x'));
    const std::string whole = part10(CtSlice{}.dataset());
    folder.write("cut.dcm", whole.substr(0, whole.size() - 5));
    fs::create_directory_symlink(folder.path(), folder.path() / "loop");
    fs::create_symlink("nowhere", folder.path() / "dangling");
    const SeriesIndex index = valueOf(listFolder(folder.path()));
    ASSERT_FALSE(index.series.empty());
    EXPECT_TRUE(index.series[0].measurable);
    std::string skipped;
    for (const auto& file : index.skipped)
        skipped += file.file.filename().string() + ": " + file.reason + "\n";
    EXPECT_THAT(skipped,
                testing::AllOf(HasSubstr("empty.dcm"), HasSubstr("picture.dcm"), HasSubstr("letter.dcm")));
}

#if !defined(__SANITIZE_ADDRESS__) // which takes memory of its own
namespace {

struct Cost {
    int status = -1;
    double mib = 0.0;       ///< peak resident memory
    double honestMib = 0.0; ///< one decoded frame
};

Cost costOf(const fs::path& file) {
    int pipeEnds[2];
    if (pipe(pipeEnds) != 0) throw std::runtime_error("pipe");
    const pid_t child = fork();
    if (child == 0) {
        dup2(pipeEnds[1], STDOUT_FILENO);
        close(pipeEnds[0]);
        execl(GAUGE_PEAK_MEMORY_PROBE, "probe", file.c_str(), static_cast<char*>(nullptr));
        _exit(127);
    }
    close(pipeEnds[1]);
    char text[32] = {};
    const ssize_t got = read(pipeEnds[0], text, sizeof text - 1);
    close(pipeEnds[0]);
    Cost cost;
    rusage usage{};
    wait4(child, &cost.status, 0, &usage);
    cost.mib = static_cast<double>(usage.ru_maxrss) / 1024.0;
    cost.honestMib = got > 0 ? std::strtod(text, nullptr) / (1024.0 * 1024.0) : 0.0;
    return cost;
}

/// What a broken file may take above its honest pixels.
constexpr double kAllowedMib = 256.0;

double worst = 0.0;

void expectModest(const fs::path& file) {
    const Cost cost = costOf(file);
    EXPECT_EQ(cost.status, 0) << file;
    EXPECT_LT(cost.mib - cost.honestMib, kAllowedMib) << file;
    worst = std::max(worst, cost.mib - cost.honestMib);
}

} // namespace

TEST(PeakMemory, OfFilesMadeToCostMuchStaysModest) {
    const TempFolder folder;
    const auto expect = [&](const std::string& bytes) { expectModest(folder.write("file", bytes)); };
    expect(compressed(kJpeg2000Uid, byteImage(5700, 5700),
                      {"", jpeg2000(5700, 5700, 5700) + std::string(20000, 'x') + asBytes({0xFF, 0xD9})}));
    expect(compressed(kJpeg2000Uid, byteImage(512, 512), {"", jpeg2000(512, 512, 8)}));
    expect(
        compressed(kJpegUid, byteImage(5700, 5700), {"", jpeg(0xC0, 5700, 5700) + std::string(20000, 'x')}));
    expect(compressed(kJpegLsUid, byteImage(5700, 5700),
                      {"", jpeg(0xF7, 5700, 5700) + std::string(20000, 'x')}));
    expect(compressed(kRleUid.data(), byteImage(65535, 65535), {"", std::string(64, 'x')}));
    // Millions of small attributes in thousands of items, deflated: a megabyte that would become gigabytes.
    const std::string item = [] {
        std::string inner;
        for (std::uint32_t e = 0x0010; e < 0x0019; ++e)
            inner += explicitElement(0x00280000 | e, "US", 0, "");
        for (const std::uint32_t tag : {0x00280100u, 0x00280101u, 0x00280102u, 0x00280103u, 0x00281050u,
                                        0x00281051u, 0x00281052u, 0x00281053u, 0x00281054u, 0x00282110u})
            inner += explicitElement(tag, "DS", 0, "");
        return std::string("\xFE\xFF\x00\xE0", 4) + littleU32(static_cast<std::uint32_t>(inner.size())) +
               inner;
    }();
    std::string items;
    while (items.size() < (std::size_t{60} << 20))
        items += item;
    expect(part10(kDeflatedUid, deflated(explicitElement(0x52009230, "SQ",
                                                         static_cast<std::uint32_t>(items.size()), items))));
    RecordProperty("worst_mib", std::to_string(worst));
}

TEST(PeakMemory, OfEveryOutsideFileStaysModest) {
    for (const fs::path& root : {pydicomData() / "test_files", realDataFolder() / "broken"}) {
        if (!fs::is_directory(root)) continue; // no real data: said by the tests that are about it
        for (const auto& entry : fs::directory_iterator(root))
            if (entry.is_regular_file()) expectModest(entry.path());
    }
    RecordProperty("worst_mib", std::to_string(worst));
}
#endif
