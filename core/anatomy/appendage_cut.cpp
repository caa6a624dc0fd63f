#include "core/anatomy/appendage_cut.h"

#include "core/anatomy/axis.h"
#include "core/anatomy/mask_walks.h"
#include "core/geometry/planar_contour.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace gauge::core {
namespace {

constexpr float kNoWay = std::numeric_limits<float>::max();

/// The contour enlarged about its centroid so that the disc reaches through the border's partial voxels.
std::vector<Eigen::Vector2d> enlarged(const std::vector<Eigen::Vector2d>& contour, double byMm) {
    const Eigen::Vector2d center = areaCentroid(contour);
    std::vector<Eigen::Vector2d> result;
    result.reserve(contour.size());
    for (const auto& p : contour) {
        const Eigen::Vector2d d = p - center;
        result.push_back(center + d * (1.0 + byMm / std::max(d.norm(), 1.0)));
    }
    return result;
}

/// Blood nodes within `halfMm` of the plane and inside the contour.
std::vector<std::size_t> discNodes(const BoxMask& mask, const SectionFrame& frame,
                                   const std::vector<Eigen::Vector2d>& contour, double halfMm) {
    double reach = 0.0;
    const Eigen::Vector2d center = areaCentroid(contour);
    for (const auto& p : contour)
        reach = std::max(reach, (p - center).norm());
    reach += halfMm + 1.0;
    const BoxGrid& g = mask.grid;
    const Eigen::Array3d c = g.coordFrom(frame.patientFromSection(center)).array();
    const Eigen::Array3i low = (c - reach / g.stepMm).floor().max(0.0).cast<int>();
    const Eigen::Array3i high = (c + reach / g.stepMm).ceil().min((g.size.array() - 1).cast<double>()).cast<int>();
    std::vector<std::size_t> nodes;
    for (int z = low.z(); z <= high.z(); ++z)
        for (int y = low.y(); y <= high.y(); ++y)
            for (int x = low.x(); x <= high.x(); ++x) {
                const std::size_t i = g.index({x, y, z});
                if (!mask[i])
                    continue;
                const PatientPoint p = g.patientFrom(i);
                if (std::abs(signedDistanceMm(frame.plane(), p)) <= halfMm &&
                    contains(contour, frame.sectionFromPatient(p)))
                    nodes.push_back(i);
            }
    return nodes;
}

bool onVolumeEdge(const Volume& volume, const PatientPoint& p) {
    const Eigen::Array3d c = volume.voxelFrom(p).ijk.array();
    const Eigen::Array3d last = (volume.size().array() - 1).cast<double>();
    return (c < 1.5).any() || (c > last - 1.5).any();
}

void measureCut(const Volume& volume, const BloodPool& pool, const Section& ostium, AppendageCut& cut) {
    const BoxGrid& g = cut.mask.grid;
    const Plane plane{ostium.center, ostium.frame.normal};
    std::size_t count = 0, faces = 0, farthest = kNoNode;
    double most = -1.0;
    const std::ptrdiff_t steps[6] = {1, -1, g.strideY(), -g.strideY(), g.strideZ(), -g.strideZ()};
    for (std::size_t i = 0; i < cut.mask.values.size(); ++i) {
        if (!cut.mask[i])
            continue;
        ++count;
        const Eigen::Vector3i n = g.node(i);
        const PatientPoint p = g.patientFrom(i);
        if ((n.array() < 1).any() || (n.array() >= g.size.array() - 1).any()) {
            cut.leavesBox = true;
            cut.leavesVolume = cut.leavesVolume || onVolumeEdge(volume, p);
            continue;
        }
        for (const std::ptrdiff_t step : steps)
            faces += !pool.mask[static_cast<std::size_t>(static_cast<std::ptrdiff_t>(i) + step)];
        const double distance = signedDistanceMm(plane, p);
        if (distance > most) {
            most = distance;
            farthest = i;
        }
    }
    const double cell = g.stepMm * g.stepMm * g.stepMm;
    cut.volumeMl = static_cast<double>(count) * cell / 1000.0;
    // Faces of a staircase are 3/2 of the smooth surface on average over all directions.
    cut.surfaceMm2 = static_cast<double>(faces) * g.stepMm * g.stepMm / 1.5;
    if (farthest != kNoNode) {
        cut.farthest = g.patientFrom(farthest);
        const double beyond = distanceToWallMm(pool, cut.farthest, plane.normal, 3.0).value_or(0.0);
        cut.farthest = cut.farthest + beyond * plane.normal;
        cut.farthestMm = most + beyond;
    }
}

} // namespace

Result<AppendageCut> cutAppendage(const Volume& volume, const BloodPool& pool, const Section& ostium,
                                  std::size_t inside) {
    const double half = 0.9 * pool.mask.grid.stepMm; // thick enough that no face-connected way passes
    for (const double enlargement : {1.0, 2.0, 3.5}) {
        const auto disc = discNodes(pool.mask, ostium.frame, enlarged(ostium.contour, enlargement), half);
        BoxMask open = pool.mask;
        for (const std::size_t i : disc)
            open[i] = 0;
        if (!open[inside])
            continue;
        AppendageCut cut;
        cut.mask = connectedTo(open, {inside});
        if (cut.mask[pool.atriumNode])
            continue;
        // The disc's nodes beyond the plane belong to the appendage; those that touch it are its threshold.
        for (const std::size_t i : disc)
            if (signedDistanceMm(ostium.frame.plane(), pool.mask.grid.patientFrom(i)) >= 0.0) {
                cut.mask[i] = 1;
                cut.threshold.push_back(i);
            }
        measureCut(volume, pool, ostium, cut);
        return cut;
    }
    return failure(ErrorCode::OstiumNotFound,
                   "Cannot cut the appendage off the atrium at this ostium: blood passes beside the ostium's contour. "
                   "The plane lies too far in the atrium or too oblique; move it towards the tip, or check the "
                   "circumflex and ridge points.");
}

std::size_t farthestOfLobe(const BoxMask& region, const std::vector<std::size_t>& threshold, std::size_t tip) {
    const auto walked = walkingDistanceMm(region, threshold, kNoWay);
    if (walked[tip] == kNoWay)
        return tip;
    // What lies beyond the tip is reached through it without a detour; another lobe only by way of the branching.
    constexpr float kDetourMm = 4.5f; // a seed need not lie in the middle of its lobe
    const auto fromTip = walkingDistanceMm(region, {tip}, kNoWay);
    std::size_t farthest = tip;
    for (std::size_t i = 0; i < region.values.size(); ++i)
        if (region[i] && fromTip[i] != kNoWay && walked[tip] + fromTip[i] - walked[i] <= kDetourMm &&
            walked[i] > walked[farthest])
            farthest = i;
    return farthest;
}

} // namespace gauge::core
