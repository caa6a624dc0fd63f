// Reading typed fields of a JSON object, with findings that name the place. Private to core/record.
#pragma once

#include "core/geometry/points.h"

#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <vector>

namespace gauge::core::json_reader {

/// Thrown inside core/record only, and turned into an Error before it leaves.
struct Finding {
    std::string text;
};

/// One object being read: hands out its fields by name and knows at the end which were not asked for.
class Object {
public:
    /// Throws Finding when `json` is no object.
    Object(const nlohmann::json& json, std::string path);

    /// Absent and null are the same: there is none.
    bool has(const char* key);
    const nlohmann::json& required(const char* key, const char* what);

    std::string text(const char* key, bool mayBeAbsent = false);
    double number(const char* key);
    std::optional<double> optionalNumber(const char* key);
    std::uint64_t count(const char* key);
    bool flag(const char* key);
    Eigen::Vector3d triple(const char* key);
    std::vector<double> numbers(const char* key);
    std::vector<std::string> texts(const char* key);
    Object object(const char* key);
    const nlohmann::json& array(const char* key);
    std::string pathOf(const std::string& key) const;

    /// Fields that were never asked for.
    nlohmann::json unknown() const;

private:
    [[noreturn]] void wrong(const char* key, const nlohmann::json& found, const char* needed) const;

    const nlohmann::json* m_json;
    std::string m_path;
    std::vector<std::string> m_known;
};

} // namespace gauge::core::json_reader
