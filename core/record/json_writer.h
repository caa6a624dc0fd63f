// Writing typed fields of a JSON object. Private to core/record.
#pragma once

#include "core/record/entries.h"

#include <Eigen/Core>
#include <cmath>
#include <nlohmann/json.hpp>
#include <optional>
#include <vector>

namespace gauge::core::json_writer {

using Json = nlohmann::json;

inline Json triple(const Eigen::Vector3d& v) {
    return {v.x(), v.y(), v.z()};
}

inline Json pair(const Eigen::Vector2d& v) {
    return Json::array({v.x(), v.y()});
}

inline Json pairs(const std::vector<Eigen::Vector2d>& points) {
    Json list = Json::array();
    for (const auto& point : points)
        list.push_back(pair(point));
    return list;
}

template <class T> Json orNull(const std::optional<T>& value) {
    return value ? Json(*value) : Json(nullptr);
}

/// A value that is not finite has no JSON number; null stands for it.
inline Json numberOrNull(double value) {
    return std::isfinite(value) ? Json(value) : Json(nullptr);
}

/// The word of a value in a table of pairs (value, word). Precondition: the table has every value.
template <class Words, class Value> Json word(const Words& known, const Value& value) {
    for (const auto& [one, text] : known)
        if (one == value) return std::string(text);
    return nullptr;
}

template <class Words, class Value> Json optionalWord(const Words& known, const std::optional<Value>& value) {
    return value ? word(known, *value) : Json(nullptr);
}

/// The known fields over the unknown ones, also within objects.
Json over(const UnknownFields& unknown, Json known);

/// What `read` has beyond the fields of `known`, also within objects: what over() adds again.
UnknownFields beyond(const Json& read, const Json& known);

} // namespace gauge::core::json_writer
