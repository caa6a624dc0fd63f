#include "core/record/json_writer.h"

namespace gauge::core::json_writer {

Json over(const UnknownFields& unknown, Json known) {
    if (!unknown.is_object()) return known;
    for (const auto& [key, value] : unknown.items()) {
        const auto found = known.find(key);
        if (found == known.end())
            known[key] = value;
        else if (found->is_object() && value.is_object())
            *found = over(value, std::move(*found));
    }
    return known;
}

UnknownFields beyond(const Json& read, const Json& known) {
    UnknownFields rest = UnknownFields::object();
    for (const auto& [key, value] : read.items()) {
        const auto found = known.find(key);
        if (found == known.end()) {
            rest[key] = value;
        } else if (found->is_object() && value.is_object()) {
            UnknownFields inner = beyond(value, *found);
            if (!inner.empty()) rest[key] = std::move(inner);
        }
    }
    return rest;
}

} // namespace gauge::core::json_writer
