// Our RLE decoder of greyscale frames against the toolkit's, bit by bit, and its errors.
#include "dicomio/pixel/decoders.h"

#include <algorithm>
#include <cstring>
#include <gmock/gmock.h>
#include <random>
#include <string>

using namespace gauge::dicomio;
using testing::HasSubstr;

namespace {

PixelFormat greyscale(int columns, int rows, int bits) {
    PixelFormat format;
    format.columns = columns;
    format.rows = rows;
    format.samplesPerPixel = 1;
    format.bitsAllocated = format.bitsStored = bits;
    format.highBit = bits - 1;
    format.frames = 1;
    format.photometric = "MONOCHROME2";
    return format;
}

/// PackBits with runs and literals of random length; where asked for, with the byte 128, which means nothing (PS3.5 G.3.1).
std::string packed(const std::string& bytes, std::mt19937& random, bool withNothing) {
    std::string out;
    for (std::size_t at = 0; at < bytes.size();) {
        if (withNothing && random() % 16 == 0) out += static_cast<char>(128);
        std::size_t run = 1;
        while (at + run < bytes.size() && run < 128 && bytes[at + run] == bytes[at]) ++run;
        if (run > 1) {
            out += static_cast<char>(257 - run);
            out += bytes[at];
            at += run;
            continue;
        }
        const std::size_t count = std::min<std::size_t>(1 + random() % 128, bytes.size() - at);
        out += static_cast<char>(count - 1);
        out += bytes.substr(at, count);
        at += count;
    }
    return out + std::string(out.size() % 2, '\0');
}

std::string frameOf(const std::vector<std::uint16_t>& words, int bits, std::mt19937& random, bool withNothing = false) {
    std::vector<std::string> segments;
    for (int shift = bits - 8; shift >= 0; shift -= 8) {
        std::string bytes;
        for (const std::uint16_t word : words)
            bytes += static_cast<char>(word >> shift & 0xFF);
        segments.push_back(packed(bytes, random, withNothing));
    }
    std::string head(64, '\0');
    const auto put = [&](std::size_t place, std::size_t value) {
        const auto v = static_cast<std::uint32_t>(value);
        std::memcpy(head.data() + place, &v, 4);
    };
    put(0, segments.size());
    put(4, 64);
    if (segments.size() > 1) put(8, 64 + segments[0].size());
    for (const std::string& segment : segments)
        head += segment;
    return head;
}

std::span<const std::byte> bytesOf(const std::string& text) {
    return std::as_bytes(std::span(text));
}

TransferSyntax rle() {
    return transferSyntax("1.2.840.10008.1.2.5");
}

} // namespace

TEST(DecodeGreyRle, GivesTheToolkitsWordsBitByBit) {
    for (std::uint32_t seed = 1; seed <= 100; ++seed) {
        std::mt19937 random(seed);
        const int bits = seed % 4 == 0 ? 8 : 16;
        const PixelFormat format = greyscale(1 + static_cast<int>(random() % 70), 1 + static_cast<int>(random() % 70), bits);
        std::vector<std::uint16_t> words(format.pixelsPerFrame()), ours(words.size());
        const unsigned levels = 1 + random() % 5000; // few: long runs; many: literals
        for (auto& word : words)
            word = static_cast<std::uint16_t>(random() % levels & (bits == 8 ? 0xFF : 0xFFFF));
        const std::string frame = frameOf(words, bits, random);
        ASSERT_TRUE(decodeGreyRle(bytesOf(frame), format, ours)) << "seed " << seed;
        EXPECT_EQ(ours, words) << "seed " << seed;
        const auto toolkit = decodeByToolkit(bytesOf(frame), rle(), format);
        ASSERT_TRUE(toolkit) << toolkit.error().message << ", seed " << seed;
        EXPECT_TRUE(std::equal(ours.begin(), ours.end(), toolkit->begin(), toolkit->end())) << "seed " << seed;
        // The toolkit takes 128 for a run of 129; the standard says that it means nothing.
        ASSERT_TRUE(decodeGreyRle(bytesOf(frameOf(words, bits, random, true)), format, ours)) << "seed " << seed;
        EXPECT_EQ(ours, words) << "seed " << seed;
    }
}

TEST(DecodeGreyRle, NamesWhatIsDamaged) {
    std::mt19937 random(1);
    const PixelFormat format = greyscale(8, 4, 16);
    std::vector<std::uint16_t> words(32, 700), out(32);
    const std::string frame = frameOf(words, 16, random);
    const auto refusal = [&](const std::string& text) {
        const auto decoded = decodeGreyRle(bytesOf(text), format, out);
        return decoded ? std::string() : decoded.error().message;
    };
    EXPECT_THAT(refusal(frame.substr(0, frame.size() - 2)), HasSubstr("cannot be decoded: segment 2 ends before its last pixel"));
    EXPECT_THAT(refusal(frame.substr(0, 40)), HasSubstr("header does not tell 2 segments"));
    std::string far = frame;
    far[9] = 'x';
    EXPECT_THAT(refusal(far), HasSubstr("segment 1 lies outside of it"));
}

TEST(DecodeGreyRle, StaysWithinTheFrameWhateverItHolds) {
    const PixelFormat format = greyscale(16, 16, 16);
    std::vector<std::uint16_t> out(256);
    for (std::uint32_t seed = 1; seed <= 2000; ++seed) {
        std::mt19937 random(seed);
        std::string frame = frameOf(std::vector<std::uint16_t>(256, static_cast<std::uint16_t>(seed)), 16, random);
        for (int n = 0; n < 6; ++n)
            frame[random() % frame.size()] = static_cast<char>(random());
        frame.resize(random() % (frame.size() + 1));
        (void)decodeGreyRle(bytesOf(frame), format, out); // the sanitizers watch
    }
}
