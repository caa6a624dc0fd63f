#include "core/cine/echo_region.h"

namespace gauge::core {

std::string_view words(EchoRegionKind kind) {
    switch (kind) {
    case EchoRegionKind::Tissue:
        return "tissue";
    case EchoRegionKind::Colour:
        return "colour";
    case EchoRegionKind::MMode:
        return "m-mode";
    case EchoRegionKind::Spectral:
        return "spectral";
    case EchoRegionKind::Ecg:
        return "ecg";
    case EchoRegionKind::Other:
        return "other";
    }
    return "other";
}

std::string_view words(PhysicalUnit unit) {
    switch (unit) {
    case PhysicalUnit::None:
        return "none";
    case PhysicalUnit::Percent:
        return "%";
    case PhysicalUnit::Decibel:
        return "dB";
    case PhysicalUnit::Centimetre:
        return "cm";
    case PhysicalUnit::Second:
        return "s";
    case PhysicalUnit::Hertz:
        return "Hz";
    case PhysicalUnit::DecibelPerSecond:
        return "dB/s";
    case PhysicalUnit::CentimetrePerSecond:
        return "cm/s";
    case PhysicalUnit::SquareCentimetre:
        return "cm2";
    case PhysicalUnit::SquareCentimetrePerSecond:
        return "cm2/s";
    case PhysicalUnit::CubicCentimetre:
        return "cm3";
    case PhysicalUnit::CubicCentimetrePerSecond:
        return "cm3/s";
    case PhysicalUnit::Degree:
        return "deg";
    case PhysicalUnit::Unknown:
        return "not known";
    }
    return "not known";
}

namespace {

bool speaksBefore(const EchoRegion& a, const EchoRegion& b) {
    if (a.highPriority != b.highPriority) return a.highPriority;
    return a.box.area() < b.box.area();
}

} // namespace

std::optional<std::size_t> regionAt(std::span<const EchoRegion> regions, const Eigen::Vector2d& place) {
    std::optional<std::size_t> best;
    for (std::size_t i = 0; i < regions.size(); ++i)
        if (regions[i].box.contains(place) && (!best || speaksBefore(regions[i], regions[*best]))) best = i;
    return best;
}

} // namespace gauge::core
