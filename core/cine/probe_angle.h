// Rotation of a multiplane probe's image plane about its beam axis.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace gauge::core {

enum class ProbeAngleSource {
    File,   ///< a standard attribute of the file
    Person, ///< set by the person who read it off the picture
};

/// 0 = transverse, 90 = longitudinal; [0, 180). An unknown angle is no ProbeAngle at all.
struct ProbeAngle {
    double deg = 0.0;
    ProbeAngleSource source = ProbeAngleSource::Person;
    bool operator==(const ProbeAngle&) const = default;
};

/// "from the file", "set by hand".
std::string_view words(ProbeAngleSource source);

/// An angle taken into [0, 180): a plane turned by 180 degrees is the same plane, mirrored. nullopt for NaN
/// and infinity.
std::optional<ProbeAngle> probeAngle(double deg, ProbeAngleSource source);

} // namespace gauge::core
