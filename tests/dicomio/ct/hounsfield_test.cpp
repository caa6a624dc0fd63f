#include "dicomio/ct/hounsfield.h"

#include "dicomio/pixel/frame_reader.h"

#include <cmath>
#include <gtest/gtest.h>

using namespace gauge::dicomio;

namespace {

PixelFormat format(int bitsStored, int highBit, bool isSigned) {
    PixelFormat f;
    f.bitsAllocated = 16;
    f.bitsStored = bitsStored;
    f.highBit = highBit;
    f.isSigned = isSigned;
    return f;
}

/// The definition, word by word.
std::int16_t reference(std::uint16_t word, const PixelFormat& f, const Rescale& r,
                       const std::optional<Padding>& padding) {
    std::int32_t stored = (word >> (f.highBit + 1 - f.bitsStored)) & ((1 << f.bitsStored) - 1);
    if (f.isSigned && stored >= 1 << (f.bitsStored - 1)) stored -= 1 << f.bitsStored;
    if (padding && stored >= padding->low && stored <= padding->high) return kPaddingHu;
    return static_cast<std::int16_t>(
        std::clamp(std::round(r.slope * stored + r.intercept), -32768.0, 32767.0));
}

} // namespace

TEST(StoredValue, TakesTheStoredBitsWithTheirSign) {
    EXPECT_EQ(storedValue(0x0FFF, format(12, 11, true)), -1);
    EXPECT_EQ(storedValue(0x0FFF, format(12, 11, false)), 4095);
    EXPECT_EQ(storedValue(0xF7FF, format(12, 11, true)),
              2047); // what lies above the high bit is no part of it
    EXPECT_EQ(storedValue(0xFFF0, format(12, 15, true)), -1);
    EXPECT_EQ(storedValue(0x8000, format(16, 15, true)), -32768);
}

TEST(ToHounsfield, AgreesWithTheDefinitionForEveryWord) {
    std::vector<std::int16_t> all(65536);
    for (const auto& [stored, high] : {std::pair{12, 11}, {16, 15}, {12, 15}, {10, 9}, {8, 7}})
        for (const bool isSigned : {false, true})
            for (const Rescale& rescale :
                 {Rescale{1, -1024, "HU"}, Rescale{1, 0, ""}, Rescale{1, 30000, ""}, Rescale{1, -30000, ""},
                  Rescale{0.7, -100.5, ""}, Rescale{-2, 5, ""}})
                for (const std::optional<Padding>& padding :
                     {std::optional<Padding>(), std::optional(Padding{-2000, -2000, false}),
                      std::optional(Padding{5, 40, false}), std::optional(Padding{63536, 63536, false})}) {
                    const PixelFormat f = format(stored, high, isSigned);
                    for (std::size_t w = 0; w < all.size(); ++w)
                        all[w] = static_cast<std::int16_t>(static_cast<std::uint16_t>(w));
                    toHounsfield(all, f, rescale, padding);
                    std::size_t wrong = 0;
                    for (std::size_t w = 0; w < all.size(); ++w)
                        wrong += all[w] != reference(static_cast<std::uint16_t>(w), f, rescale, padding);
                    EXPECT_EQ(wrong, 0u)
                        << stored << " bits, high " << high << ", signed " << isSigned << ", slope "
                        << rescale.slope << ", intercept " << rescale.intercept;
                }
}

TEST(ToHounsfield, CountsWhatItHadToHold) {
    std::vector<std::int16_t> words{-32768, 0, 5, static_cast<std::int16_t>(-32768 + 1023)};
    EXPECT_EQ(toHounsfield(words, format(16, 15, true), {1, -1024, ""}, {}), 2u);
    EXPECT_EQ(words[0], -32768);
    EXPECT_EQ(words[2], 5 - 1024);
    std::vector<std::int16_t> fine{0, 1, 2};
    EXPECT_EQ(toHounsfield(fine, format(12, 11, false), {1, -1024, ""}, {}), 0u);
}

TEST(HounsfieldConversion, GivesTheSamePieceByPiece) {
    for (const Rescale& rescale : {Rescale{1, -1024, "HU"}, Rescale{1, -30000, ""}, Rescale{0.7, -100.5, ""}})
        for (const std::optional<Padding>& padding : {std::optional<Padding>(), std::optional(Padding{5, 40, false})}) {
            std::vector<std::int16_t> whole(65536);
            for (std::size_t w = 0; w < whole.size(); ++w)
                whole[w] = static_cast<std::int16_t>(static_cast<std::uint16_t>(7 * w));
            std::vector<std::int16_t> pieces = whole;
            const PixelFormat f = format(16, 15, true);
            const std::size_t held = toHounsfield(whole, f, rescale, padding);
            const HounsfieldConversion conversion(f, rescale, padding);
            std::size_t heldInPieces = 0;
            for (std::size_t at = 0; at < pieces.size(); at += 8192)
                heldInPieces += conversion.convert(std::span(pieces).subspan(at, 8192));
            EXPECT_EQ(pieces, whole);
            EXPECT_EQ(heldInPieces, held);
        }
}
