// Convex bodies of known line integrals, and volumes that hold them.
#pragma once

#include "core/volume/volume.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <optional>
#include <utility>
#include <vector>

namespace gauge::test {

/// Where a straight line lies within something, as parameters of the line; empty when second <= first.
struct Span {
    double first = -std::numeric_limits<double>::infinity(), second = std::numeric_limits<double>::infinity();
    void cut(double from, double to) {
        first = std::max(first, std::min(from, to));
        second = std::min(second, std::max(from, to));
    }
    double length() const { return std::max(0.0, second - first); }
};

/// A ball, cylinder or box at any place, in any direction; LPS mm.
struct ConvexBody {
    enum class Kind { Ball, Cylinder, Box } kind = Kind::Ball;
    Eigen::Vector3d centre = Eigen::Vector3d::Zero();
    Eigen::Matrix3d axes = Eigen::Matrix3d::Identity();     ///< orthonormal columns; of a cylinder the third is its axis
    Eigen::Vector3d half = Eigen::Vector3d::Constant(10.0); ///< radius (x) and half height (z), or half edges

    bool contains(const Eigen::Vector3d& p) const {
        const Eigen::Vector3d x = axes.transpose() * (p - centre);
        switch (kind) {
        case Kind::Ball:
            return x.squaredNorm() <= half.x() * half.x();
        case Kind::Cylinder:
            return x.head<2>().squaredNorm() <= half.x() * half.x() && std::abs(x.z()) <= half.z();
        case Kind::Box:
            return (x.array().abs() <= half.array()).all();
        }
        return false;
    }

    double reachMm() const { return kind == Kind::Ball ? half.x() : half.norm(); }

    /// Length of the line through `from` along the unit vector `direction` within the body: closed forms.
    double chordMm(const Eigen::Vector3d& from, const Eigen::Vector3d& direction) const {
        return spanOf(from, direction).length();
    }

    /// Which faces the line goes in and out by: 0 for what is round, else 1, 2 or 3 by axis; nothing when it misses.
    std::optional<std::pair<int, int>> facesOf(const Eigen::Vector3d& from, const Eigen::Vector3d& direction) const {
        const Span span = spanOf(from, direction);
        if (span.length() <= 0.0) return std::nullopt;
        return std::pair{faceAt(from + span.first * direction), faceAt(from + span.second * direction)};
    }

private:
    Span spanOf(const Eigen::Vector3d& from, const Eigen::Vector3d& direction) const {
        const Eigen::Vector3d x = axes.transpose() * (from - centre), d = axes.transpose() * direction;
        Span span;
        if (kind != Kind::Box) {
            const int dimensions = kind == Kind::Ball ? 3 : 2;
            const double dd = d.head(dimensions).squaredNorm(), xd = x.head(dimensions).dot(d.head(dimensions));
            const double root = xd * xd - dd * (x.head(dimensions).squaredNorm() - half.x() * half.x());
            if (root <= 0.0) return {0.0, 0.0};
            span.cut((-xd - std::sqrt(root)) / dd, (-xd + std::sqrt(root)) / dd);
        }
        for (int a = kind == Kind::Box ? 0 : 2; kind != Kind::Ball && a < 3; ++a) {
            if (d[a] == 0.0 && std::abs(x[a]) > half[a]) return {0.0, 0.0};
            if (d[a] != 0.0) span.cut((-half[a] - x[a]) / d[a], (half[a] - x[a]) / d[a]);
        }
        return span;
    }
    int faceAt(const Eigen::Vector3d& p) const {
        const Eigen::Vector3d x = axes.transpose() * (p - centre);
        for (int a = kind == Kind::Box ? 0 : 2; kind != Kind::Ball && a < 3; ++a)
            if (std::abs(std::abs(x[a]) - half[a]) < 1e-6) return a + 1;
        return 0;
    }
};

/// HU of a mixture: as much of `insideHu` as the body fills of each voxel's cell (5 x 5 x 5 places), the rest air.
inline std::shared_ptr<const core::Volume> volumeWith(const std::vector<ConvexBody>& bodies, double insideHu,
                                                      const Eigen::Vector3i& size, const Eigen::Affine3d& placement) {
    constexpr int kFine = 5;
    std::vector<std::int16_t> voxels;
    voxels.reserve(static_cast<std::size_t>(size.prod()));
    const auto inside = [&](const Eigen::Vector3d& ijk) {
        const Eigen::Vector3d p = placement * ijk;
        return std::any_of(bodies.begin(), bodies.end(), [&](const ConvexBody& body) { return body.contains(p); });
    };
    const double cellMm = placement.linear().colwise().norm().sum();
    const auto near = [&](const Eigen::Vector3d& ijk) {
        const Eigen::Vector3d p = placement * ijk;
        return std::any_of(bodies.begin(), bodies.end(),
                           [&](const ConvexBody& body) { return (p - body.centre).norm() < body.reachMm() + cellMm; });
    };
    for (int k = 0; k < size.z(); ++k)
        for (int j = 0; j < size.y(); ++j)
            for (int i = 0; i < size.x(); ++i) {
                const Eigen::Vector3d middle(i, j, k);
                if (!near(middle)) {
                    voxels.push_back(-1000);
                    continue;
                }
                int corners = 0;
                for (int c = 0; c < 8; ++c)
                    corners += inside(middle + Eigen::Vector3d((c & 1) - 0.5, (c >> 1 & 1) - 0.5, (c >> 2 & 1) - 0.5));
                double share = corners / 8.0;
                if (corners % 8 != 0 || inside(middle) != (corners == 8)) {
                    int count = 0;
                    for (int f = 0; f < kFine * kFine * kFine; ++f)
                        count += inside(middle + Eigen::Vector3d((f % kFine + 0.5) / kFine - 0.5,
                                                                 (f / kFine % kFine + 0.5) / kFine - 0.5,
                                                                 (f / kFine / kFine + 0.5) / kFine - 0.5));
                    share = static_cast<double>(count) / (kFine * kFine * kFine);
                }
                voxels.push_back(static_cast<std::int16_t>(std::lround(-1000.0 + share * (insideHu + 1000.0))));
            }
    return core::Volume::make(size, std::move(voxels), placement, core::VoxelQuantity::HounsfieldUnits, "").value();
}

/// A grid about `middle`; @param shear  of the slices along the rows, mm a slice.
inline Eigen::Affine3d gridAbout(const Eigen::Vector3d& middle, const Eigen::Vector3i& size, const Eigen::Vector3d& edgesMm,
                                 const Eigen::AngleAxisd& turn, double shear) {
    Eigen::Affine3d placement = Eigen::Affine3d::Identity();
    Eigen::Matrix3d edges = edgesMm.asDiagonal();
    edges(0, 2) = shear;
    placement.linear() = turn.toRotationMatrix() * edges;
    placement.translation() = middle - placement.linear() * (0.5 * (size.array() - 1).cast<double>()).matrix();
    return placement;
}

} // namespace gauge::test
