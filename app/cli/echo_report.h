// What the verb `echo` says: its JSON document and a summary for people.
#pragma once

#include "core/echo/echo_section.h"

#include <string>
#include <vector>

namespace gauge::app {

/// The document "ostium-gauge/echo/1". Lengths mm, angles degrees; what is absent is null.
/// @param typedAngles  of each reading: the keys of `would_agree_mm`.
std::string echoJson(const core::EchoSection& section, const std::vector<std::string>& typedAngles);

/// A few lines with the values that a person looks for first, each with its standard uncertainty.
std::string echoSummary(const core::EchoSection& section);

} // namespace gauge::app
