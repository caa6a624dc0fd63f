// Words of files that stand for values of an enumeration. Private to core/sizing.
#pragma once

#include "core/pressure/observation.h"
#include "core/sizing/device_chart.h"
#include "core/sizing/json_fields.h"

#include <string>
#include <utility>
#include <vector>

namespace gauge::core::json_fields {

/// A field whose words are those of core/pressure; the message lists them.
template <class Enum> Enum wordOf(const Fields& fields, std::string_view key) {
    const auto value = fromWord<Enum>(fields.text(key));
    if (!value) fields.wrong(key, "one of " + allWords<Enum>());
    return *value;
}

/// The same; `otherwise` where the field is absent or null.
template <class Enum> Enum wordOf(const Fields& fields, std::string_view key, Enum otherwise) {
    return fields.has(key) ? wordOf<Enum>(fields, key) : otherwise;
}

inline const std::vector<std::pair<const char*, Structure>> kStructures{
    {"circumflex-artery", Structure::CircumflexArtery},
    {"ridge", Structure::Ridge},
    {"pulmonary-artery", Structure::PulmonaryArtery},
    {"mitral-annulus", Structure::MitralAnnulus},
};

} // namespace gauge::core::json_fields
