// The report for programs: format "ostium-gauge/report/1".
#pragma once

#include "app/document/answers.h"

#include <string>

namespace gauge::app {

/// {"format", "program", "time", "patient": {…}|null, "case": {"title", "chosen_size", "decision": {"text", "signed_by",
/// "time"}|null, "why_not_signed": […]}, "values": […] (value_table.h), "sizing": {…}|null (as `ostium-gauge size --json`), "seat": {…}|null
/// (core/sizing/seat_json.h: the chosen size, or all where none is chosen),
/// "release": […], "notices": […], "cautions": […]}. Numbers have all their digits.
std::string reportJson(const Answers& answers, bool namesHidden, const QString& program, const QString& time);

} // namespace gauge::app
