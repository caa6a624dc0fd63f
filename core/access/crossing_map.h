// The face map: both quantities over the fossa, and the regions in which a crossing serves.
#pragma once

#include "core/access/crossing.h"

#include <Eigen/Core>
#include <functional>
#include <optional>
#include <vector>

namespace gauge::core {

/// Values at the nodes of a regular grid over the outline's box and one step around it. Row after row from below:
/// node (column, row) lies at origin + step (column, row) in the face's frame.
struct CrossingMap {
    Eigen::Vector2d origin{0.0, 0.0};
    double stepMm = 1.0;
    int columns = 0, rows = 0;
    std::vector<CrossingValues> nodes; ///< columns * rows
    std::vector<char> inside;          ///< 1: within the outline
    std::vector<CrossingValues> rim;   ///< on the outline, about every step

    const CrossingValues& at(int column, int row) const { return nodes[static_cast<std::size_t>(row * columns + column)]; }
};

/// @param stepMm  0.25 … 5. The angles of a steerable sheath are searched at every node: about 30 ms for a fossa of 25 mm at 1 mm.
/// @errors InvalidArgument for another step.
Result<CrossingMap> crossingMap(const CrossingScene& scene, const Steering& steering, double stepMm = 1.0);

/// A number of a node, for lines of equal value; nothing where it is not known.
using CrossingField = std::function<std::optional<double>(const CrossingValues&)>;

/// Lines on which a field has this value, in the face's frame, mm: closed polygons, which run along the border of the grid
/// (outside the outline) where the line leaves it; to be clipped by the outline. Linear between nodes: heights are exact, angles
/// within 0.1 degrees at 1 mm and 40 mm away.
std::vector<std::vector<Eigen::Vector2d>> linesOfEqual(const CrossingMap& map, const CrossingField& field, double value);

/// Whom a crossing has to serve.
enum class Service { Repair, Closure, ClosureSteered, Both, BothSteered };
/// Positive inside the limits, the least distance from one of them (mm, or degrees); nothing when it cannot be told.
std::optional<double> marginOf(const CrossingValues& values, const CrossingLimits& limits, Service service);

/// Where a crossing serves.
struct ServingRegion {
    double areaMm2 = 0.0; ///< of the grid's cells whose node serves and lies in the outline
    /// The node with most room: how far it lies from everything that does not serve (other nodes, less half a step, and the
    /// outline), mm.
    std::optional<Eigen::Vector2d> middle;
    double roomMm = 0.0;
    std::optional<double> lowestMm, highestMm; ///< heights over the datum in it
    std::optional<double> leastAngleDeg;       ///< of the straight line in it
};
ServingRegion servingRegion(const CrossingMap& map, const SeptalFace& face, const CrossingLimits& limits, Service service);

/// The region's border as polygons, to be clipped by the outline.
std::vector<std::vector<Eigen::Vector2d>> regionBorder(const CrossingMap& map, const CrossingLimits& limits, Service service);

/// Least and greatest of a field over the fossa: the nodes within the outline and places on it.
std::optional<std::pair<double, double>> rangeOf(const CrossingMap& map, const CrossingField& field);

} // namespace gauge::core
