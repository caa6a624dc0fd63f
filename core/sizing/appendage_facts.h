// What is known of the appendage besides its widths: depth, ostium, section, bend, neighbours, stasis.
#pragma once

#include "core/release/stasis.h"
#include "core/sizing/device_chart.h"

#include <optional>
#include <vector>

namespace gauge::core {

/// The landing zone's ellipse as the echo's probe sees it.
struct LandingSection {
    double longestMm = 0.0;
    double shortestMm = 0.0;
    double longestAtDeg = 0.0; ///< probe angle, 0 to 180, at which the longest diameter shows
    bool angleKnown = false;
};

/// A sharp bend of the appendage's axis.
struct Bend {
    double turnDeg = 0.0;          ///< 0 = straight; sharply bent above 80
    double neckLengthMm = 0.0;     ///< from the ostium to the bend
    std::optional<double> widthMm; ///< least width at the bend
    std::optional<double> depthMm; ///< straight usable depth from the bend on
};

/// A distance to a neighbour, and from where it was taken.
struct Clearance {
    enum class From {
        LandingZoneWall, ///< the distance is the clearance
        OstiumCentre,    ///< the implant's face reaches out to half its diameter
    };
    Structure structure = Structure::CircumflexArtery;
    From from = From::LandingZoneWall;
    double distanceMm = 0.0;
};

struct AppendageFacts {
    std::optional<double> depthMm; ///< from the ostium plane
    std::optional<double>
        depthFromLandingZoneMm;     ///< from the landing plane; absent: depth less the landing offset
    bool depthIsLowerBound = false; ///< the tip was not filled: no verdict on depth
    std::optional<double> ostiumLongestMm;
    std::optional<LandingSection> section;
    std::optional<Bend> bend;
    std::vector<Clearance> clearances;
    std::vector<StasisFinding> stasis;
    bool regurgitationMayRecur = false;  ///< pressures before the repair may come back
    std::vector<std::size_t> mixedBeats; ///< readings (by index) taken over beats of different length
};

} // namespace gauge::core
