// Values that are computed again by themselves: are they news?
#pragma once

#include "core/record/recorded_value.h"

namespace gauge::app {

/// Equal but for who computed it and when, and for fields of a file that this version does not know: then the value that stands
/// stays. Precondition: both have a provenance.
bool sameButForAuthorAndTime(const core::RecordedValue& a, const core::RecordedValue& b);

} // namespace gauge::app
