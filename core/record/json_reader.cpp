#include "core/record/json_reader.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace gauge::core::json_reader {

Object::Object(const nlohmann::json& json, std::string path) : m_json(&json), m_path(std::move(path)) {
    if (!json.is_object())
        throw Finding{(m_path.empty() ? std::string("the file") : m_path) + " is " + json.type_name() +
                      " where an object is needed"};
}

bool Object::has(const char* key) {
    m_known.emplace_back(key);
    const auto found = m_json->find(key);
    return found != m_json->end() && !found->is_null();
}

const nlohmann::json& Object::required(const char* key, const char* what) {
    if (!has(key)) throw Finding{pathOf(key) + " is absent; " + what + " is needed"};
    return m_json->at(key);
}

std::string Object::text(const char* key, bool mayBeAbsent) {
    if (mayBeAbsent && !has(key)) return {};
    const auto& value = required(key, "a text");
    if (!value.is_string()) wrong(key, value, "a text");
    return value.get<std::string>();
}

double Object::number(const char* key) {
    const auto& value = required(key, "a number");
    if (!value.is_number()) wrong(key, value, "a number");
    return value.get<double>();
}

std::optional<double> Object::optionalNumber(const char* key) {
    return has(key) ? std::optional(number(key)) : std::nullopt;
}

std::uint64_t Object::count(const char* key) {
    const auto& value = required(key, "a whole number");
    if (!value.is_number_unsigned()) wrong(key, value, "a whole number of at least 0");
    return value.get<std::uint64_t>();
}

bool Object::flag(const char* key) {
    const auto& value = required(key, "true or false");
    if (!value.is_boolean()) wrong(key, value, "true or false");
    return value.get<bool>();
}

std::optional<bool> Object::optionalFlag(const char* key) {
    return has(key) ? std::optional(flag(key)) : std::nullopt;
}

int Object::integer(const char* key) {
    const auto& value = required(key, "a whole number");
    if (!value.is_number_integer()) wrong(key, value, "a whole number");
    const bool fits = value.is_number_unsigned()
                          ? value.get<std::uint64_t>() <= std::uint64_t(std::numeric_limits<int>::max())
                          : value.get<std::int64_t>() >= std::numeric_limits<int>::min();
    if (!fits) throw Finding{pathOf(key) + " is " + value.dump() + ", which is beyond the numbers of this field"};
    return value.get<int>();
}

std::optional<int> Object::optionalInteger(const char* key) {
    return has(key) ? std::optional(integer(key)) : std::nullopt;
}

Eigen::Vector2d Object::pair(const char* key) {
    const std::vector<double> values = numbers(key);
    if (values.size() != 2)
        throw Finding{pathOf(key) + " has " + std::to_string(values.size()) + " numbers where two are needed"};
    return {values[0], values[1]};
}

std::vector<Eigen::Vector2d> Object::pairs(const char* key) {
    std::vector<Eigen::Vector2d> points;
    for (const auto& item : array(key)) {
        if (!item.is_array() || item.size() != 2 || !item[0].is_number() || !item[1].is_number())
            throw Finding{pathOf(key) + "[" + std::to_string(points.size()) + "] is no pair of numbers"};
        points.emplace_back(item[0].get<double>(), item[1].get<double>());
    }
    return points;
}

Eigen::Vector3d Object::triple(const char* key) {
    const std::vector<double> values = numbers(key);
    if (values.size() != 3)
        throw Finding{pathOf(key) + " has " + std::to_string(values.size()) +
                      " numbers where three are needed"};
    return {values[0], values[1], values[2]};
}

std::vector<double> Object::numbers(const char* key) {
    std::vector<double> values;
    for (const auto& item : array(key)) {
        if (!item.is_number()) wrong(key, item, "numbers only");
        values.push_back(item.get<double>());
    }
    return values;
}

std::vector<std::string> Object::texts(const char* key) {
    std::vector<std::string> values;
    for (const auto& item : array(key)) {
        if (!item.is_string()) wrong(key, item, "texts only");
        values.push_back(item.get<std::string>());
    }
    return values;
}

Object Object::object(const char* key) {
    return {required(key, "an object"), pathOf(key)};
}

const nlohmann::json& Object::array(const char* key) {
    const auto& value = required(key, "a list");
    if (!value.is_array()) wrong(key, value, "a list");
    return value;
}

std::string Object::pathOf(const std::string& key) const {
    return m_path.empty() ? key : m_path + "." + key;
}

nlohmann::json Object::unknown() const {
    nlohmann::json rest = nlohmann::json::object();
    for (const auto& [key, value] : m_json->items())
        if (std::find(m_known.begin(), m_known.end(), key) == m_known.end()) rest[key] = value;
    return rest;
}

void Object::wrong(const char* key, const nlohmann::json& found, const char* needed) const {
    throw Finding{pathOf(key) + " holds " + found.type_name() + " where " + needed + " is needed"};
}

} // namespace gauge::core::json_reader
