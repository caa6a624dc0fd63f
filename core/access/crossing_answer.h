// Whether one crossing of the septum can serve the mitral repair and the closure of the appendage, in words.
#pragma once

#include "core/access/crossing_map.h"

#include <string>
#include <vector>

namespace gauge::core {

/// A region smaller than this is not counted on: a needle cannot be set to it. An assumption, no source.
inline constexpr double kLeastRegionMm2 = 10.0;
/// Less room than this around the best place is told. An assumption, no source.
inline constexpr double kLittleRoomMm = 2.0;

enum class CrossingAdvice {
    SameCrossing,       ///< one crossing, straight sheath
    SameWithSteerable,  ///< one crossing, the closure by a steerable sheath
    SecondLowerCrossing,///< the closure needs another crossing, lower than the repair's
    ClosureLast,        ///< nothing serves the closure beside the repair: cross for the repair, close last
    ClosureOnly,        ///< no repair planned
    Unanswered,         ///< something is not marked or measured, or no place of the fossa serves the repair
};
/// "same crossing", "same crossing with a steerable sheath", "second, lower crossing", "closure last", "closure alone", "no answer".
std::string_view words(CrossingAdvice advice);

struct CrossingAnswer {
    CrossingAdvice advice = CrossingAdvice::Unanswered;
    /// Whole sentences: the answer with its numbers and their datum, what it rests on, who decides.
    std::string sentence;
    ServingRegion repair, closure, closureSteered, both, bothSteered;
    /// The place with most room for the advice: the shared crossing, or that of the closure; nothing when there is none.
    std::optional<Eigen::Vector2d> place;
    /// `crossing-little-room`, `crossing-level-tethered` (the two data differ, by how much), `septum-few-points`,
    /// `septum-rough` (marks that lie far from their plane), `septum-sides-by-axes`, `steerable-would-serve`.
    std::vector<Notice> notices;
};

/// @param map  of the same scene and the same steering.
/// @errors those of validate(CrossingLimits).
Result<CrossingAnswer> crossingAnswer(const CrossingScene& scene, const CrossingMap& map, const CrossingLimits& limits);

/// What a crossing at one place means, as sentences: where it lies, both heights with their datum, distance and angle, whom it
/// serves. For a place outside the fossa, the message of insideFossa().
std::string describeCrossing(const CrossingScene& scene, const CrossingValues& values, const CrossingLimits& limits);

} // namespace gauge::core
