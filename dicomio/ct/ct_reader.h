// From a CT series to volumes of Hounsfield units with proved geometry. Neighbours: ct_choice.h says which
// series and phase, ct_phases.h keeps the phases of a gated series at hand.
#pragma once

#include "core/parallel/progress.h"
#include "core/result.h"
#include "core/volume/volume.h"
#include "dicomio/ct/ct_choice.h"
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

/// Loads one phase. Parallel over slices, cancellable, reports progress.
/// @errors those of the geometry proof (SliceMissing, SliceDuplicate, SpacingUneven, SizesMixed,
/// OrientationsMixed, SpacingInvalid, GeometryContradictory), of the files (FileUnreadable, FileDamaged,
/// TransferSyntaxUnsupported, AttributeMissing, AttributeInvalid), and Cancelled.
core::Result<CtVolume> readCtPhase(const SeriesEntry& series, std::size_t phase,
                                   const core::WorkContext& work = {});

} // namespace gauge::dicomio
