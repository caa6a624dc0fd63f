// What the verb `size` says: its JSON document and a text for people.
#pragma once

#include "core/sizing/sizing.h"

#include <string>

namespace gauge::app {

/// The document "ostium-gauge/size/1". Lengths in mm, pressures in mmHg, chances from 0 to 1; what is absent
/// is null.
std::string sizeJson(const core::SizingQuestion& question, const core::SizingAnswer& answer);

/// The answer in sentences: width, sizes, warnings, what next, card for the room, what was assumed, cautions.
std::string sizeText(const core::SizingQuestion& question, const core::SizingAnswer& answer);

} // namespace gauge::app
