// One slice of a CT before the rest is loaded: something to look at while waiting. Neighbour: ct_reader.h proves and loads all.
#pragma once

#include "core/result.h"
#include "dicomio/index/series_index.h"

#include <Eigen/Core>
#include <cstddef>
#include <cstdint>
#include <vector>

namespace gauge::dicomio {

/// For looking at only: nothing is proved about the stack that it belongs to, so nothing may be measured on it.
struct FirstSlice {
    int columns = 0, rows = 0;
    std::vector<std::int16_t> hounsfield; ///< row after row
    double alongRowMm = 0.0, alongColumnMm = 0.0;
    Eigen::Vector3d rowDirection = Eigen::Vector3d::UnitX();    ///< LPS, as in the file
    Eigen::Vector3d columnDirection = Eigen::Vector3d::UnitY();
    std::size_t number = 0; ///< from 1, along the slice normal
    std::size_t count = 0;  ///< slices of the phase
};

/// The middle slice of a phase: one file is read, whatever the size of the series.
/// @errors InvalidArgument for a phase that does not exist or has no images; those of readCtPhase that one file can have.
core::Result<FirstSlice> readMiddleSlice(const SeriesEntry& series, std::size_t phase);

} // namespace gauge::dicomio
