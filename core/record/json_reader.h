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
    std::optional<bool> optionalFlag(const char* key);
    int integer(const char* key);
    std::optional<int> optionalInteger(const char* key);
    Eigen::Vector3d triple(const char* key);
    Eigen::Vector2d pair(const char* key);
    std::vector<Eigen::Vector2d> pairs(const char* key);
    std::vector<double> numbers(const char* key);
    std::vector<std::string> texts(const char* key);
    Object object(const char* key);
    const nlohmann::json& array(const char* key);
    std::string pathOf(const std::string& key) const;
    const nlohmann::json& json() const { return *m_json; }

    /// One of the words of `known`, pairs of value and word. What stands there else is named, with all that may.
    template <class Words> auto choice(const char* key, const Words& known) {
        const std::string found = text(key);
        std::string all;
        for (const auto& [value, word] : known) {
            if (word == found) return value;
            all.append(all.empty() ? "" : ", ").append(word);
        }
        throw Finding{pathOf(key) + " is \"" + found + "\"; it must be one of " + all};
    }
    template <class Words> auto optionalChoice(const char* key, const Words& known) {
        return has(key) ? std::optional(choice(key, known)) : std::nullopt;
    }

    /// Fields that were never asked for.
    nlohmann::json unknown() const;

private:
    [[noreturn]] void wrong(const char* key, const nlohmann::json& found, const char* needed) const;

    const nlohmann::json* m_json;
    std::string m_path;
    std::vector<std::string> m_known;
};

} // namespace gauge::core::json_reader
