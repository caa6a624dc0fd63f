// The heart of the description at one moment: how full it is and where in the beat.
#pragma once

#include "core/result.h"
#include "sample-data/phantom.h"

#include <nlohmann/json_fwd.hpp>
#include <memory>
#include <optional>

namespace gauge::sample_case {

/// How the heart of a moment differs from the described one; factors.
struct Breathing {
    double width = 1.0;  ///< of the appendage, about its axis
    double length = 1.0; ///< of the appendage, along its axis
    double atrium = 1.0;
    double ventricle = 1.0;
};

struct Heart {
    Scene scene;
    Marks marks;
    core::PatientPoint ridgeCrest;
    double veinGapMm = 0.0; ///< between the appendage's half width and the upper left vein's offset
    double widestMm = 0.0;  ///< a section through the marks wider than this opens into the atrium
};

/// @param veinGapMm  where the upper left vein lies; nullopt: where it puts the ridge's crest at the described
/// height (takes a moment; the result tells the gap).
/// Throws nlohmann::json::exception where a key is missing or wrongly typed: for the readers of descriptions.
Heart buildHeart(const nlohmann::json& given, const Breathing& breath, std::optional<double> veinGapMm = {});

/// The described heart through the beat, its appendage widened by one factor: the same anatomy at another pressure.
class BeatingHeart {
public:
    BeatingHeart(std::shared_ptr<const nlohmann::json> given, double widthFactor, double veinGapMm)
        : m_given(std::move(given)), m_widthFactor(widthFactor), m_veinGapMm(veinGapMm) {}

    /// @param percent  of the R-R interval, 0 to 100; between the described phases by a smooth periodic course.
    /// Equals a CT phase at its percent, but for the place of the vein, which keeps its gap.
    Heart at(double percent) const;
    double widthFactor() const { return m_widthFactor; }

private:
    std::shared_ptr<const nlohmann::json> m_given;
    double m_widthFactor, m_veinGapMm;
};

/// The ostium plane by the marks without its section: as `trueOstium`, but through the axis point.
/// Also tells where lobe 0's centre line crosses it.
struct OstiumPlane {
    core::Plane plane;
    double axisS = 0.0;
};
OstiumPlane ostiumPlane(const Heart& heart);
/// Perpendicular to lobe 0's centre line, `depthMm` beyond the ostium plane.
core::Plane landingPlane(const Heart& heart, double depthMm);

} // namespace gauge::sample_case
