// Random numbers that are the same on every machine and for every number of threads: seeds make phantoms, and
// (seed, slice) makes the noise of a slice.
#pragma once

#include <cmath>
#include <cstdint>
#include <numbers>

namespace gauge::sample_case {

/// SplitMix64 (Steele, Lea, Flood 2014): a 64-bit counter passed through a mixing function.
class Random {
public:
    explicit Random(std::uint64_t seed, std::uint64_t stream = 0)
        : m_state(mixed(seed + 0x9E3779B97F4A7C15ull) ^ mixed(stream + 0xD1B54A32D192ED03ull)) {}

    std::uint64_t bits() { return mixed(m_state += 0x9E3779B97F4A7C15ull); }
    /// In [0, 1).
    double unit() { return static_cast<double>(bits() >> 11) * 0x1.0p-53; }
    double uniform(double low, double high) { return low + (high - low) * unit(); }
    /// A whole number in [low, high].
    int whole(int low, int high) { return low + static_cast<int>(unit() * (high - low + 1)); }
    /// -1 or 1.
    double sign() { return unit() < 0.5 ? -1.0 : 1.0; }
    /// Standard normal (Box and Muller, in pairs).
    double normal() {
        if (m_hasSpare) {
            m_hasSpare = false;
            return m_spare;
        }
        const double radius = std::sqrt(-2.0 * std::log(1.0 - unit()));
        const double angle = 2.0 * std::numbers::pi * unit();
        m_spare = radius * std::sin(angle);
        m_hasSpare = true;
        return radius * std::cos(angle);
    }

private:
    static std::uint64_t mixed(std::uint64_t z) {
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9ull;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBull;
        return z ^ (z >> 31);
    }

    std::uint64_t m_state;
    double m_spare = 0.0;
    bool m_hasSpare = false;
};

} // namespace gauge::sample_case
