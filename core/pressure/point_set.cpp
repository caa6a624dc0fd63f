#include "core/pressure/point_set.h"

#include <algorithm>
#include <boost/random/sobol.hpp>
#include <cassert>
#include <cmath>
#include <random>

namespace gauge::core {

namespace {

constexpr double kEdge = 1e-12; // keeps quantiles finite

} // namespace

struct PointSet::Engine {
    boost::random::sobol_engine<std::uint_least64_t, 32u, boost::random::default_sobol_table> sobol;
};

PointSet::PointSet(int dimensions, std::uint32_t seed)
    : m_engine(std::make_unique<Engine>(Engine{
          boost::random::sobol_engine<std::uint_least64_t, 32u, boost::random::default_sobol_table>(static_cast<std::size_t>(dimensions))})),
      m_point(dimensions) {
    assert(dimensions >= 1);
    std::mt19937 random(seed); // its output is fixed by the standard
    for (int i = 0; i < dimensions; ++i)
        m_shift.push_back(random() / 4294967296.0);
}

PointSet::~PointSet() = default;

std::span<const double> PointSet::next() {
    for (std::size_t i = 0; i < m_point.size(); ++i) {
        const double moved = static_cast<double>(m_engine->sobol()) / 4294967296.0 + m_shift[i];
        m_point[i] = std::clamp(moved - std::floor(moved), kEdge, 1.0 - kEdge);
    }
    return m_point;
}

} // namespace gauge::core
