// Evenly spread points in the unit cube (Sobol's sequence, moved by a fixed amount modulo 1): the deterministic stand-in for
// random numbers in integrals over several unknowns. Private to core/pressure.
// Source: I. M. Sobol, USSR Comput. Math. Math. Phys. 7 (1967) 86-112; direction numbers of Boost.Random.
#pragma once

#include <cstdint>
#include <memory>
#include <span>
#include <vector>

namespace gauge::core {

class PointSet {
public:
    /// @param dimensions 1 to 3600  @param seed chooses the movement; the same seed gives the same points.
    PointSet(int dimensions, std::uint32_t seed);
    ~PointSet();
    PointSet(const PointSet&) = delete;
    PointSet& operator=(const PointSet&) = delete;

    /// Next point; each coordinate above 0 and below 1. Valid until the next call.
    std::span<const double> next();

private:
    struct Engine;
    std::unique_ptr<Engine> m_engine;
    std::vector<double> m_shift;
    std::vector<double> m_point;
};

} // namespace gauge::core
