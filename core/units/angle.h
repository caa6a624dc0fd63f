#pragma once

#include <compare>
#include <numbers>

namespace gauge::core {

inline constexpr double kRadPerDegree = std::numbers::pi / 180.0;

/// A plane angle. Degrees at every public edge, radians inside functions.
class Angle {
public:
    static constexpr Angle fromDegrees(double deg) { return Angle{deg * std::numbers::pi / 180.0}; }
    static constexpr Angle fromRadians(double rad) { return Angle{rad}; }
    constexpr double degrees() const { return m_rad * 180.0 / std::numbers::pi; }
    constexpr double radians() const { return m_rad; }
    constexpr auto operator<=>(const Angle&) const = default;

private:
    explicit constexpr Angle(double rad) : m_rad(rad) {}
    double m_rad;
};

} // namespace gauge::core
