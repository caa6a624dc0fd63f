// Values whose uncertainty was evaluated even where it is zero, because nothing moved the value. Neighbour: quantity.h, which
// shows a zero as "not evaluated".
#pragma once

#include "app/format/quantity.h"

namespace gauge::app {

/// "24.3 ± 0.4 mm"; with an uncertainty that would be shown as zero "24.3 mm" alone.
inline QString evaluated(const core::Estimate& value, Unit unit) {
    return value.standardUncertainty() < 1e-3 ? quantity(value.value, unit) : estimate(value, unit);
}

} // namespace gauge::app
