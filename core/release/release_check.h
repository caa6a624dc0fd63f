// Findings against their ranges, grouped by view, with sentences for what lies outside and what was not looked at.
#pragma once

#include "core/release/release_finding.h"

#include <optional>
#include <string>
#include <vector>

namespace gauge::core {

/// Where a range comes from; said beside every number.
enum class RangeBasis { Chart, Published, CommonPractice, Assumption };
/// "the chart", "published", "common practice, no source", "an assumption".
std::string_view words(RangeBasis basis);

struct ReleaseRange {
    std::optional<double> least, greatest;
    RangeBasis basis = RangeBasis::Assumption;
};

/// What the numbers are held against. Defaults: references in DEVELOPERS.md; a chart replaces them.
struct ReleaseLimits {
    bool hasDisc = false;            ///< lobe-and-disc; otherwise a plug
    std::optional<double> nominalMm; ///< of the chosen size; without it no compression
    ReleaseRange compressionPercent{8.0, 20.0, RangeBasis::Published};
    /// Least share of a lobe beyond the circumflex artery (lobe-and-disc).
    ReleaseRange shareBeyondCircumflex{200.0 / 3.0, std::nullopt, RangeBasis::CommonPractice};
    ReleaseRange sheathTipDepthMm{0.0, std::nullopt, RangeBasis::CommonPractice};
    ReleaseRange lobeToNeckDeg{std::nullopt, 30.0, RangeBasis::Assumption};
    ReleaseRange discSeparationMm{1.0, std::nullopt, RangeBasis::CommonPractice};
    ReleaseRange jetMm{std::nullopt, 5.0, RangeBasis::Published};
    ReleaseRange pulmonaryArteryMm{1.5, std::nullopt, RangeBasis::Published};
    std::optional<ReleaseRange> circumflexMm, mitralAnnulusMm, ridgeMm; ///< charts only: no published figure was found
    std::optional<ReleaseRange> mitralGradientMmHg;
    double gapGrowthMm = 1.0; ///< growth of a gap on the pull that is said, an assumption
};

enum class RangeVerdict { Within, Outside, NoRange };

struct ReleaseRow {
    std::string view; ///< empty: concerns no view
    std::string what; ///< words of the quantity, "compression", with the side where there is one
    double value = 0.0;
    std::string unit;
    std::optional<ReleaseRange> range;
    RangeVerdict verdict = RangeVerdict::NoRange;
    /// Within 2 standard uncertainties of an end of its range: either verdict may be wrong.
    bool nearLimit = false;
    std::string seenBy;
};

struct ReleaseReport {
    std::vector<ReleaseRow> rows; ///< grouped by view, views in the order in which they first came, without view last
    std::vector<ReleaseQuantity> notSeen; ///< what the stage asks for and nobody looked at
    std::vector<Notice> notices;
};

/// What a stage asks to be looked at.
std::vector<ReleaseQuantity> askedAt(Stage stage, bool hasDisc);

/// @errors those of `validate`; InvalidArgument for limits that are none (nominal size not above 0).
Result<ReleaseReport> checkRelease(const ReleaseState& state, const ReleaseLimits& limits);

} // namespace gauge::core
