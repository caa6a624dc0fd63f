// A triangle mesh in the patient, and what can be told from it alone: area, enclosed volume, topology, pieces.
// Neighbours: iso_surface.h (makes one from voxels), anatomy/appendage_surface.h (that of a measured appendage).
#pragma once

#include "core/geometry/points.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <vector>

namespace gauge::core {

/// Points in LPS mm as single floats: rounded by at most 0.0001 mm within 2 m of the origin.
struct SurfaceMesh {
    using Triangle = std::array<std::uint32_t, 3>;

    std::vector<Eigen::Vector3f> points;  ///< LPS, mm
    std::vector<Eigen::Vector3f> normals; ///< of length 1, pointing outwards; as many as points
    std::vector<Triangle> triangles;      ///< indices of points, counter-clockwise seen from outside

    bool empty() const { return triangles.empty(); }
    PatientPoint point(std::size_t index) const { return {points[index].cast<double>()}; }
};

/// Sum of the triangles' areas, mm2.
double areaMm2(const SurfaceMesh& mesh);

/// Enclosed volume, mm3 (divergence theorem): positive when the triangles are counter-clockwise seen from outside.
/// Meaningful for a closed mesh only.
double enclosedVolumeMm3(const SurfaceMesh& mesh);

/// How the triangles hang together.
struct MeshTopology {
    std::size_t points = 0; ///< those that a triangle uses
    std::size_t edges = 0;
    std::size_t triangles = 0;
    std::size_t borderEdges = 0;  ///< edges of one triangle only
    std::size_t tangledEdges = 0; ///< edges of more than two triangles, or run through twice in one direction
    std::size_t pieces = 0;       ///< parts that share no point

    bool closed() const { return borderEdges == 0 && tangledEdges == 0 && triangles > 0; }
    /// V - E + F: 2 for each sphere-like piece, 0 for a torus.
    long eulerCharacteristic() const {
        return static_cast<long>(points) - static_cast<long>(edges) + static_cast<long>(triangles);
    }
};

MeshTopology topology(const SurfaceMesh& mesh);

/// The mesh without the pieces that have less than `leastShare` (0 to 1) of all triangles. Keeps the order.
/// `kept`, when given, receives the former index of each point.
SurfaceMesh withoutCrumbs(const SurfaceMesh& mesh, double leastShare, std::vector<std::uint32_t>* kept = nullptr);

/// Replaces each normal by the mean of itself and its neighbours', `rounds` times: light calms, points stay.
void calmNormals(SurfaceMesh& mesh, int rounds);

} // namespace gauge::core
