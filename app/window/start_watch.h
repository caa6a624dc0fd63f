// Tells when the window can be used, for the benchmark that starts the program (tests/bench/start_bench.cpp).
#pragma once

#include <QWidget>

namespace gauge::app {

/// Name of an environment variable: where it is set, the program says on stdout when its window can be used, and ends.
inline constexpr const char* kStartOnlyVariable = "OSTIUM_GAUGE_START_ONLY";
/// What it says.
inline constexpr const char* kUsableLine = "ostium-gauge: the window can be used";

/// Does nothing unless that variable is set. A window can be used once it has painted and the application has worked off
/// everything that was waiting then: what a person does next is answered at once.
void watchStart(QWidget& window);

} // namespace gauge::app
