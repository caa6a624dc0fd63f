// Sharply bent appendages: whether an implant finds its depth in the neck, or only folded around the bend.
#pragma once

#include "core/sizing/appendage_facts.h"

namespace gauge::core {

/// How far a folded placement, the implant lying around the bend into the lobe beyond, can be reached.
enum class FoldedReach { NotNeeded, Full, Partial, None, Unknown };

const char* name(FoldedReach reach); ///< "not-needed", "full", "partial", "none", "unknown"

/// A turn of more than 80 degrees, which is an interior angle below 100 (casts of 220 appendages: principal
/// axis angulated below 100 degrees in 42 %; Ernst et al. 1995, authors and year from memory).
inline constexpr double kSharpTurnDeg = 80.0;
inline bool isSharp(const Bend& bend) {
    return bend.turnDeg > kSharpTurnDeg;
}

/// Whether that size can be placed at a bend; a rule of geometry of this project's own, not of any
/// instructions:
/// - not needed: the neck before the bend alone offers the depth that the size needs;
/// - full: neck and the straight depth beyond the bend offer it together, and the bend is at least as wide as
/// the
///   narrowest reading that the size accepts, so that the folded part is pressed no more than the rest;
/// - partial: the depth is there, but the bend is narrower, though not narrower than the size's strongest
/// compression
///   allows; or the bend is wide enough, but neck and depth beyond offer only two thirds of what is needed;
/// - none: less than that;
/// - unknown: the width or the depth at the bend was not measured.
/// @param neededMm  depth that the size needs from the ostium plane (its landing offset included where the
/// chart counts
///                  from the landing plane).
FoldedReach foldedReach(const Bend& bend, const ChartSize& size, double neededMm);

} // namespace gauge::core
