// The lines that the benchmark program prints at its end: each figure beside its goal.
#pragma once

#include <string>

namespace gauge::bench {

/// Adds a line, or replaces the one of the same name (Google Benchmark may call a benchmark several times).
void reportLine(const std::string& name, double value, const std::string& unit, double goal);

/// Prints all lines to stdout.
void printReport();

} // namespace gauge::bench
