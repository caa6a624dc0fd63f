// A vector of the sample case's description.
#pragma once

#include <Eigen/Core>
#include <array>
#include <nlohmann/json.hpp>

namespace gauge::sample_case {

/// [x, y, z]; throws nlohmann's exception for anything else.
inline Eigen::Vector3d vectorFrom(const nlohmann::json& value) {
    const auto numbers = value.get<std::array<double, 3>>();
    return {numbers[0], numbers[1], numbers[2]};
}

} // namespace gauge::sample_case
