// Which voxels lie inside, one bit each: rows of 64-bit words. What iso_surface.cpp counts and walks on, and what
// regions grow in (components.h): a sixteenth of the voxels' memory.
#pragma once

#include "core/fast/large_vector.h"
#include "core/volume/iso_surface.h"

#include <bit>
#include <cstddef>
#include <cstdint>

namespace gauge::core {

using Word = std::uint64_t;

/// Sets bit i of `bits` when values[i] > level; the words' unused bits are 0.
void bitsAbove(const std::int16_t* values, int count, std::int16_t level, Word* bits);

void bitsAbove(const float* values, int count, float level, Word* bits);

/// Sets bit i of `bits` when values[i] is not 0; the words' unused bits are 0.
void bitsSet(const std::uint8_t* values, int count, Word* bits);

/// Sets bits begin … end - 1 of a row.
void setBits(Word* row, int begin, int end);

/// The bits of a whole block, row after row; undefined until they are written.
class BitRows {
public:
    explicit BitRows(const Eigen::Vector3i& size)
        : m_size(size), m_words((static_cast<std::size_t>(size.x()) + 63) / 64),
          m_bits(m_words * static_cast<std::size_t>(size.y()) * static_cast<std::size_t>(size.z())) {}

    std::size_t words() const { return m_words; }
    const Eigen::Vector3i& size() const { return m_size; }
    Word* row(int j, int k) { return m_bits.data() + at(j, k); }
    const Word* row(int j, int k) const { return m_bits.data() + at(j, k); }
    /// Bits that are voxels.
    Word valid(std::size_t word) const { return firstBits(m_size.x(), word); }
    /// Bits that are voxels with a successor in the row.
    Word withNext(std::size_t word) const { return firstBits(m_size.x() - 1, word); }

private:
    std::size_t at(int j, int k) const {
        return m_words * (static_cast<std::size_t>(j) + static_cast<std::size_t>(m_size.y()) * static_cast<std::size_t>(k));
    }
    static Word firstBits(int count, std::size_t word) {
        const auto left = static_cast<std::ptrdiff_t>(count) - static_cast<std::ptrdiff_t>(64 * word);
        return left >= 64 ? ~Word{0} : left <= 0 ? Word{0} : (Word{1} << left) - 1;
    }

    Eigen::Vector3i m_size;
    std::size_t m_words;
    LargeVector<Word> m_bits;
};

/// Voxels above a level, and nodes of a mask that are not 0; threads share the slices.
BitRows bitsAbove(const ValueBlock& block, std::int16_t level);
BitRows bitsSet(const std::uint8_t* values, const Eigen::Vector3i& size);

/// Writes 1 for each set bit and 0 for the others, i fastest.
void writeBytes(const BitRows& bits, std::uint8_t* values);

/// The row moved by one: bit i is what bit i + 1 was.
inline Word shifted(const Word* row, std::size_t word, std::size_t words) {
    return row[word] >> 1 | (word + 1 < words ? row[word + 1] << 63 : 0);
}

inline std::uint32_t countOf(Word word) {
    return word == 0 ? 0u : static_cast<std::uint32_t>(std::popcount(word));
}

/// How many bits below bit `bit` (0 to 64) are set.
inline std::uint32_t countBelow(Word word, int bit) {
    return countOf(bit >= 64 ? word : word & ((Word{1} << bit) - 1));
}

} // namespace gauge::core
