// The appendage cut off the pool at its ostium: which blood belongs to it, how much, and how far it reaches.
#pragma once

#include "core/anatomy/blood_pool.h"
#include "core/measure/section.h"
#include "core/result.h"

#include <vector>

namespace gauge::core {

struct AppendageCut {
    BoxMask mask;                      ///< nodes beyond the ostium
    std::vector<std::size_t> threshold; ///< its nodes next to the ostium plane
    double volumeMl = 0.0;
    double surfaceMm2 = 0.0;           ///< of its wall, about
    PatientPoint farthest;             ///< the place farthest from the ostium plane, at the wall
    double farthestMm = 0.0;           ///< its distance from the plane
    bool leavesVolume = false;         ///< it runs on to the edge of the images
    bool leavesBox = false;            ///< it runs on to the edge of the box looked at
};

/// Cuts the pool along the disc that the ostium's contour spans, so that an appendage that folds back behind its own
/// ostium plane stays whole.
/// @param ostium  the measured section; its normal points to the tip
/// @param inside  a node of the appendage (the tip seed's)
/// @errors OstiumNotFound when the disc does not separate appendage and atrium.
Result<AppendageCut> cutAppendage(const Volume& volume, const BloodPool& pool, const Section& ostium,
                                  std::size_t inside);

/// The node farthest (as one walks within `region` from `threshold`) of the lobe that holds `tip`: of what the way from
/// the threshold reaches through the tip node without a detour of more than 4.5 mm. Of several lobes beyond the tip node
/// the longest.
std::size_t farthestOfLobe(const BoxMask& region, const std::vector<std::size_t>& threshold, std::size_t tip);

} // namespace gauge::core
