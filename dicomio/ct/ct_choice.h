// Which CT series and which phase to measure. Where the answer would mix patients or frames of reference, the
// person chooses.
#pragma once

#include "core/result.h"
#include "core/volume/phase_choice.h"
#include "dicomio/index/series_index.h"

#include <optional>
#include <string>
#include <vector>

namespace gauge::dicomio {

/// The series to measure when the person names none: the usable CT series with most slices (in one phase).
/// @param seriesUid, patientId  what the person named; both narrow the choice down.
/// @errors NothingUsable, or NotFound when something is named and absent or refused (message says why);
/// InvalidArgument when usable series of several patients, or of one patient in several frames of reference,
/// are left: the message lists them, and nothing is taken by itself.
core::Result<const SeriesEntry*> chooseCtSeries(const SeriesIndex& index,
                                                const std::optional<std::string>& seriesUid,
                                                const std::optional<std::string>& patientId = std::nullopt);

/// The moment that the person wants; at most one of the two.
struct PhaseWish {
    std::optional<double> percent; ///< of the R-R interval
    std::optional<double> delayMs; ///< from the R wave
};

/// What core/volume/phase_choice.h needs to know, phase by phase in the order of `series.phases`.
std::vector<core::PhaseInfo> phaseInfos(const SeriesEntry& series);

/// The phase nearest to the wish, and in words what was taken when it is not exactly that. Without a wish the
/// one nearest to 45 %, when the appendage is largest; of a series that tells no moments the first with most
/// images.
/// @errors NotFound when something is wished for and the series tells no moments; InvalidArgument when both
/// are wished for, or one outside its range.
core::Result<core::PhaseChoice> choosePhase(const SeriesEntry& series, const PhaseWish& wish);

/// The same by percentage alone: its place in `series.phases`.
core::Result<std::size_t> choosePhase(const SeriesEntry& series, std::optional<double> percent);

} // namespace gauge::dicomio
