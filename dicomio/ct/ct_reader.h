// From a CT series to volumes of Hounsfield units with proved geometry.
#pragma once

#include "core/parallel/progress.h"
#include "core/result.h"
#include "core/volume/volume.h"
#include "dicomio/index/series_index.h"

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace gauge::dicomio {

/// One phase of a CT series as a volume, with what the person should know about it.
struct CtVolume {
    std::shared_ptr<const core::Volume> volume;
    std::string seriesUid;
    std::optional<double> phasePercent;
    std::string phaseLabel;
    /// Along a row, along a column, between slices (perpendicular distance), mm.
    Eigen::Vector3d spacingMm = Eigen::Vector3d::Zero();
    double tiltDeg = 0.0;
    std::vector<std::string> sopInstanceUids; ///< slice k of the volume came from entry k
    std::vector<core::Notice> notices;
};

/// The series to measure when the person names none: the usable CT series with most slices (in one phase).
/// @errors NothingUsable, or NotFound when `seriesUid` is given and absent or refused (message says why).
core::Result<const SeriesEntry*> chooseCtSeries(const SeriesIndex& index,
                                                const std::optional<std::string>& seriesUid);

/// Index of the phase nearest to `percent` (45 when none is asked for) in `series.phases`; of a series
/// without percentages, the first with most images.
/// @errors NotFound when a percent is asked for and the series knows none.
core::Result<std::size_t> choosePhase(const SeriesEntry& series, std::optional<double> percent);

/// Loads one phase. Parallel over slices, cancellable, reports progress.
/// @errors those of the geometry proof (SliceMissing, SliceDuplicate, SpacingUneven, SizesMixed,
/// OrientationsMixed, SpacingInvalid, GeometryContradictory), of the files (FileUnreadable, FileDamaged,
/// TransferSyntaxUnsupported, AttributeMissing, AttributeInvalid), and Cancelled.
core::Result<CtVolume> readCtPhase(const SeriesEntry& series, std::size_t phase,
                                   const core::WorkContext& work = {});

} // namespace gauge::dicomio
