// GAUGE_LONG=1 in the environment: as many cases as the figures of DEVELOPERS.md rest on, instead of what every run
// can afford.
#pragma once

#include <cstdlib>

namespace gauge::tests {

inline bool longRun() {
    const char* asked = std::getenv("GAUGE_LONG");
    return asked != nullptr && asked[0] == '1';
}

} // namespace gauge::tests
