// A gated CT series as one object: its phases by core/volume/phase_set.h, each read when it is looked at or
// when it is a neighbour of that.
#pragma once

#include "core/volume/phase_set.h"
#include "dicomio/index/series_index.h"

#include <memory>

namespace gauge::dicomio {

/// Phase k of the set is series.phases[k]. Reads nothing yet.
/// @errors InvalidArgument for a series without phases or wrong options, ObjectUnsupported when it is no CT
/// series. PhaseSet::get gives the errors of readCtPhase.
core::Result<std::unique_ptr<core::PhaseSet>> openCtPhases(const SeriesEntry& series,
                                                           const core::PhaseSetOptions& options = {});

} // namespace gauge::dicomio
