#include "core/access/crossing_map.h"

#include "core/geometry/planar_contour.h"
#include "core/measure/marching_squares.h"
#include "core/number_text.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace gauge::core {
namespace {

constexpr float kFarBelow = -1e6f;

template <class Visit> void forEachInside(const CrossingMap& map, Visit&& visit) {
    for (std::size_t i = 0; i < map.nodes.size(); ++i)
        if (map.inside[i]) visit(map.nodes[i]);
}

std::optional<double> least(std::optional<double> a, std::optional<double> b) {
    return a && b ? std::optional(std::min(*a, *b)) : std::nullopt;
}

} // namespace

Result<CrossingMap> crossingMap(const CrossingScene& scene, const Steering& steering, double stepMm) {
    if (!(stepMm >= 0.25 && stepMm <= 5.0))
        return failure(ErrorCode::InvalidArgument, "Cannot map the septum: the step is " + general(stepMm) + " mm; 0.25 to 5 are possible.");
    if (auto valid = validate(steering); !valid) return tl::unexpected(valid.error());
    CrossingMap map;
    map.stepMm = stepMm;
    map.origin = scene.face.low - Eigen::Vector2d::Constant(stepMm);
    const Eigen::Vector2d size = scene.face.high - scene.face.low;
    map.columns = static_cast<int>(std::ceil(size.x() / stepMm)) + 3;
    map.rows = static_cast<int>(std::ceil(size.y() / stepMm)) + 3;
    for (int row = 0; row < map.rows; ++row)
        for (int column = 0; column < map.columns; ++column) {
            const Eigen::Vector2d place = map.origin + stepMm * Eigen::Vector2d(column, row);
            map.nodes.push_back(crossingAt(scene, place, steering));
            map.inside.push_back(scene.face.contains(place) ? 1 : 0);
        }
    const auto around = static_cast<std::size_t>(std::ceil(perimeterMm(scene.face.outline) / stepMm));
    for (const Eigen::Vector2d& place : resampleByArcLength(scene.face.outline, std::max<std::size_t>(around, 3)))
        map.rim.push_back(crossingAt(scene, place, steering));
    return map;
}

std::vector<std::vector<Eigen::Vector2d>> linesOfEqual(const CrossingMap& map, const CrossingField& field, double value) {
    std::vector<float> heights;
    heights.reserve(map.nodes.size());
    for (const CrossingValues& node : map.nodes) {
        const auto one = field(node);
        heights.push_back(one ? static_cast<float>(*one - value) : kFarBelow);
    }
    auto lines = isoContours(heights, map.columns, map.rows, 0.0f);
    for (auto& line : lines)
        for (auto& place : line)
            place = map.origin + map.stepMm * place;
    return lines;
}

std::optional<double> marginOf(const CrossingValues& values, const CrossingLimits& limits, Service service) {
    const auto height = heightMm(values, limits.datum);
    const auto repair = height ? std::optional(std::min(*height - limits.lowestMm, limits.highestMm - *height)) : std::nullopt;
    const auto closure = values.angleDeg ? std::optional(limits.mostAngleDeg - *values.angleDeg) : std::nullopt;
    auto steered = closure;
    if (steered && values.steeredAngleDeg) steered = std::max(*steered, limits.mostAngleDeg - *values.steeredAngleDeg);
    switch (service) {
    case Service::Repair: return repair;
    case Service::Closure: return closure;
    case Service::ClosureSteered: return steered;
    case Service::Both: return least(repair, closure);
    case Service::BothSteered: return least(repair, steered);
    }
    return std::nullopt;
}

ServingRegion servingRegion(const CrossingMap& map, const SeptalFace& face, const CrossingLimits& limits, Service service) {
    ServingRegion region;
    std::vector<Eigen::Vector2d> serving, others;
    const auto widen = [](std::optional<double>& low, std::optional<double>& high, std::optional<double> value) {
        if (!value) return;
        low = std::min(low.value_or(*value), *value);
        high = std::max(high.value_or(*value), *value);
    };
    forEachInside(map, [&](const CrossingValues& node) {
        const auto margin = marginOf(node, limits, service);
        (margin && *margin >= 0.0 ? serving : others).push_back(node.place);
        if (!margin || *margin < 0.0) return;
        widen(region.lowestMm, region.highestMm, heightMm(node, limits.datum));
        if (node.angleDeg) region.leastAngleDeg = std::min(region.leastAngleDeg.value_or(180.0), *node.angleDeg);
    });
    region.areaMm2 = map.stepMm * map.stepMm * static_cast<double>(serving.size());
    for (const Eigen::Vector2d& place : serving) {
        double room = distanceToOutlineMm(face, place);
        for (const Eigen::Vector2d& other : others)
            room = std::min(room, (other - place).norm() - 0.5 * map.stepMm);
        if (region.middle && room <= region.roomMm) continue;
        region.middle = place;
        region.roomMm = room;
    }
    return region;
}

std::vector<std::vector<Eigen::Vector2d>> regionBorder(const CrossingMap& map, const CrossingLimits& limits, Service service) {
    return linesOfEqual(map, [&](const CrossingValues& node) { return marginOf(node, limits, service); }, 0.0);
}

std::optional<std::pair<double, double>> rangeOf(const CrossingMap& map, const CrossingField& field) {
    std::optional<std::pair<double, double>> range;
    const auto take = [&](const CrossingValues& place) {
        const auto value = field(place);
        if (!value) return;
        if (!range) range = {*value, *value};
        range->first = std::min(range->first, *value);
        range->second = std::max(range->second, *value);
    };
    forEachInside(map, take);
    std::for_each(map.rim.begin(), map.rim.end(), take);
    return range;
}

} // namespace gauge::core
