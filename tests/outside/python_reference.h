// Asks an independent library (NumPy, SciPy, scikit-image of the system's Python) for the same quantity on the same
// data. The functions are in reference.py, by name; arguments and answers travel as JSON files, doubles exactly.
#pragma once

#include <Eigen/Core>
#include <nlohmann/json.hpp>
#include <span>
#include <string>
#include <vector>

namespace gauge::test {

/// Runs `function` of reference.py. Throws std::runtime_error with what Python said when it fails (a test then
/// fails: these checks are never skipped).
nlohmann::json askPython(const std::string& function, const nlohmann::json& arguments);

/// [[x, y], ...]
nlohmann::json toJson(std::span<const Eigen::Vector2d> points);
nlohmann::json toJson(std::span<const Eigen::Vector3d> points);

} // namespace gauge::test
