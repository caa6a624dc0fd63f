#include "core/volume/components.h"

#include <gtest/gtest.h>
#include <random>
#include <vector>

using namespace gauge::core;

namespace {

/// A block of random values; `share` of them above 0. Every row length up to and beyond a word, and its multiples.
struct RandomMask {
    Eigen::Vector3i size;
    std::vector<std::int16_t> values;

    RandomMask(const Eigen::Vector3i& s, double share, unsigned seed) : size(s), values(static_cast<std::size_t>(s.prod())) {
        std::mt19937 random(seed);
        for (auto& v : values)
            v = static_cast<std::int16_t>(std::uniform_real_distribution<>()(random) < share ? 5 : -5);
    }
    std::size_t index(const Eigen::Vector3i& at) const {
        return static_cast<std::size_t>(at.x() + size.x() * (at.y() + size.y() * at.z()));
    }
    bool inside(const Eigen::Vector3i& at) const {
        return (at.array() >= 0).all() && (at.array() < size.array()).all() && values[index(at)] > 0;
    }
    BitRows bits() const { return bitsAbove(ValueBlock{values.data(), size, Eigen::Affine3d::Identity()}, 0); }
};

/// The plain twin: flood voxel by voxel, parts numbered by their first voxels.
std::vector<std::uint32_t> plainParts(const RandomMask& mask) {
    std::vector<std::uint32_t> part(mask.values.size(), Components::kNone);
    std::uint32_t count = 0;
    for (int k = 0; k < mask.size.z(); ++k)
        for (int j = 0; j < mask.size.y(); ++j)
            for (int i = 0; i < mask.size.x(); ++i) {
                const Eigen::Vector3i first(i, j, k);
                if (!mask.inside(first) || part[mask.index(first)] != Components::kNone) continue;
                std::vector<Eigen::Vector3i> stack{first};
                part[mask.index(first)] = count;
                while (!stack.empty()) {
                    const Eigen::Vector3i at = stack.back();
                    stack.pop_back();
                    for (int axis = 0; axis < 3; ++axis)
                        for (const int step : {-1, 1}) {
                            const Eigen::Vector3i next = at + step * Eigen::Vector3i::Unit(axis);
                            if (!mask.inside(next) || part[mask.index(next)] != Components::kNone) continue;
                            part[mask.index(next)] = count;
                            stack.push_back(next);
                        }
                }
                ++count;
            }
    return part;
}

template <class Body> void forEachVoxel(const Eigen::Vector3i& size, const Body& body) {
    for (int k = 0; k < size.z(); ++k)
        for (int j = 0; j < size.y(); ++j)
            for (int i = 0; i < size.x(); ++i)
                body(Eigen::Vector3i(i, j, k));
}

const Eigen::Vector3i kSizes[] = {{1, 1, 1}, {63, 5, 4}, {64, 6, 3}, {65, 4, 40}, {130, 9, 35}, {200, 3, 2}};
constexpr double kShares[] = {0.0, 0.1, 0.35, 0.6, 0.97, 1.0}; // around and away from where parts run together

} // namespace

TEST(Components, EqualThePlainFlood) {
    unsigned seed = 1;
    for (const auto& size : kSizes)
        for (const double share : kShares) {
            const RandomMask mask(size, share, seed++);
            const auto expected = plainParts(mask);
            const Components parts = componentsOf(mask.bits());
            std::vector<std::size_t> voxels(parts.count(), 0);
            forEachVoxel(size, [&](const Eigen::Vector3i& at) {
                const auto part = expected[mask.index(at)];
                ASSERT_EQ(parts.partAt(at), part) << at.transpose() << " of " << size.transpose() << ", share " << share;
                if (part != Components::kNone) ++voxels.at(part);
            });
            EXPECT_EQ(parts.voxels(), voxels);
        }
}

TEST(GrownFrom, KeepsThePartsOfItsSeeds) {
    unsigned seed = 100;
    for (const auto& size : kSizes)
        for (const double share : kShares) {
            const RandomMask mask(size, share, seed++);
            const auto expected = plainParts(mask);
            std::mt19937 random(seed);
            std::vector<Eigen::Vector3i> seeds{{-1, 0, 0}, size}; // beyond the block: nothing
            for (int n = 0; n < 3; ++n)
                seeds.emplace_back(random() % static_cast<unsigned>(size.x()), random() % static_cast<unsigned>(size.y()),
                                   random() % static_cast<unsigned>(size.z()));
            const auto bytesOf = [&](const BitRows& grown) {
                std::vector<std::uint8_t> bytes(mask.values.size(), 9);
                writeBytes(grown, bytes.data());
                return bytes;
            };
            const auto bytes = bytesOf(grownFrom(mask.bits(), seeds));
            const ValueBlock block{mask.values.data(), size, Eigen::Affine3d::Identity()};
            EXPECT_EQ(bytesOf(grownAbove(block, 0, seeds)), bytes);
            std::vector<std::uint8_t> positive;
            for (const auto v : mask.values)
                positive.push_back(v > 0 ? 200 : 0);
            EXPECT_EQ(bytesOf(grownIn(positive.data(), size, seeds)), bytes);
            forEachVoxel(size, [&](const Eigen::Vector3i& at) {
                const auto part = expected[mask.index(at)];
                bool kept = false;
                for (const auto& s : seeds)
                    kept = kept || (mask.inside(s) && part == expected[mask.index(s)]);
                ASSERT_EQ(bytes[mask.index(at)], kept ? 1 : 0) << at.transpose() << " of " << size.transpose();
            });
        }
}

TEST(BitRows, TakeBytesAndFloatsAsTheyTakeVoxels) {
    std::mt19937 random(7);
    for (const int length : {1, 15, 64, 65, 127, 128, 200}) {
        std::vector<std::uint8_t> bytes(static_cast<std::size_t>(length));
        std::vector<float> floats(bytes.size());
        for (std::size_t i = 0; i < bytes.size(); ++i) {
            bytes[i] = static_cast<std::uint8_t>(random() % 3 == 0 ? random() % 256 : 0);
            floats[i] = static_cast<float>(random() % 5);
        }
        const auto words = static_cast<std::size_t>((length + 63) / 64);
        std::vector<Word> set(words, ~Word{0}), above(words, ~Word{0});
        bitsSet(bytes.data(), length, set.data());
        bitsAbove(floats.data(), length, 2.0f, above.data());
        for (std::size_t bit = 0; bit < 64 * words; ++bit) {
            const bool within = bit < bytes.size();
            EXPECT_EQ(set[bit / 64] >> bit % 64 & 1, within && bytes[bit] != 0 ? 1u : 0u) << bit;
            EXPECT_EQ(above[bit / 64] >> bit % 64 & 1, within && floats[bit] > 2.0f ? 1u : 0u) << bit;
        }
    }
}
