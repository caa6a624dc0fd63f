#include "core/cine/probe_angle.h"

#include <cmath>

namespace gauge::core {

std::string_view words(ProbeAngleSource source) {
    return source == ProbeAngleSource::File ? "from the file" : "set by hand";
}

std::optional<ProbeAngle> probeAngle(double deg, ProbeAngleSource source) {
    if (!std::isfinite(deg)) return std::nullopt;
    double turned = std::fmod(deg, 180.0);
    if (turned < 0.0) turned += 180.0;
    if (turned >= 180.0) turned = 0.0; // a tiny negative angle rounds up to the full half turn
    return ProbeAngle{turned, source};
}

} // namespace gauge::core
