#include "core/anatomy/blood_pool.h"

#include "core/anatomy/mask_walks.h"
#include "core/parallel/cancelled.h"
#include "core/parallel/parallel_for.h"
#include "core/volume/distance_transform.h"
#include "core/volume/section_image.h"

#include <Eigen/Eigenvalues>
#include <algorithm>
#include <cmath>
#include <limits>

namespace gauge::core {
namespace {

constexpr double kBoxStepMm = 0.5;
constexpr double kCalmSigmaMm = 0.4;  // calms single voxels; moves a border of 8 mm radius by 0.02 mm
constexpr std::ptrdiff_t kCrumbNodes = 60; // 7.5 mm3
constexpr double kSeedReachMm = 2.5;  // a seed this near to blood is taken into it
// A dark sheet between two lumens: a dip below this share of blood's height over wall with a second derivative
// above this share of it per mm2. A wall of 0.6 mm between lumens still shows; noise of 40 HU does not.
constexpr double kDipShare = 0.75;
constexpr double kDipCurvature = 0.4;

/// Greatest second derivative over all directions, HU/mm2.
double greatestCurvature(const BoxField<float>& f, std::size_t i) {
    const BoxGrid& g = f.grid;
    const Eigen::Vector3i n = g.node(i);
    if ((n.array() < 1).any() || (n.array() >= g.size.array() - 1).any())
        return 0.0;
    const std::ptrdiff_t d[3] = {1, g.strideY(), g.strideZ()};
    const float* v = f.values.data() + i;
    Eigen::Matrix3d h;
    for (int a = 0; a < 3; ++a) {
        h(a, a) = v[d[a]] + v[-d[a]] - 2.0 * v[0];
        for (int b = a + 1; b < 3; ++b)
            h(a, b) = h(b, a) = 0.25 * (v[d[a] + d[b]] - v[d[a] - d[b]] - v[-d[a] + d[b]] + v[-d[a] - d[b]]);
    }
    Eigen::SelfAdjointEigenSolver<Eigen::Matrix3d> solver;
    solver.computeDirect(h, Eigen::EigenvaluesOnly);
    return solver.eigenvalues()(2) / (g.stepMm * g.stepMm);
}

/// Nodes above the local half value, dark sheets between lumens left out.
BoxMask threshold(const BoxField<float>& hu, const Contrast& contrast, const LevelTrack& levels) {
    BoxMask mask(hu.grid);
    const double wall = contrast.wallHu;
    const bool even = levels.at.size() < 2;
    const double lowest = *std::min_element(levels.hu.begin(), levels.hu.end());
    const double floor = 0.5 * (lowest + wall);
    parallelFor(mask.values.size(), 1 << 16, [&](std::size_t begin, std::size_t end) {
        for (std::size_t i = begin; i < end; ++i) {
            const double v = hu[i];
            if (v < floor)
                continue;
            const double blood = even ? lowest : levels.nearestTo(hu.grid.patientFrom(i));
            const double height = blood - wall;
            if (v < wall + 0.5 * height)
                continue;
            const bool sheet =
                v < wall + kDipShare * height && greatestCurvature(hu, i) > kDipCurvature * height;
            mask[i] = !sheet;
        }
    });
    return mask;
}

/// Fills single dark nodes within blood (noise): background with at least 21 of 26 neighbours in the mask.
void fillPinholes(BoxMask& mask) {
    const BoxGrid& g = mask.grid;
    std::vector<std::size_t> holes;
    for (int z = 1; z + 1 < g.size.z(); ++z)
        for (int y = 1; y + 1 < g.size.y(); ++y)
            for (int x = 1; x + 1 < g.size.x(); ++x) {
                const std::size_t i = g.index({x, y, z});
                if (mask[i])
                    continue;
                // Cheap look first: most of the background has no blood beside it.
                if (!mask[i - 1] || !mask[i + 1])
                    continue;
                int neighbours = 0;
                for (int c = -1; c <= 1; ++c)
                    for (int b = -1; b <= 1; ++b)
                        for (int a = -1; a <= 1; ++a)
                            neighbours += mask[g.index({x + a, y + b, z + c})];
                if (neighbours >= 21)
                    holes.push_back(i);
            }
    for (const std::size_t i : holes)
        mask[i] = 1;
}

/// Median blood level along a way, from nodes deep enough to be free of the border.
LevelTrack levelsAlong(const std::vector<std::size_t>& way, const BoxField<float>& hu, const BoxField<float>& depth) {
    constexpr double kEveryMm = 2.0, kHalfWindowMm = 3.0;
    const BoxGrid& g = hu.grid;
    std::vector<double> raw(way.size());
    for (std::size_t i = 0; i < way.size(); ++i) {
        // Mean of a small ball, no wider than the lumen allows.
        const Eigen::Vector3i c = g.node(way[i]);
        const double radius = std::clamp(0.5 * depth[way[i]], 0.5, 3.0) / g.stepMm;
        const int r = static_cast<int>(radius);
        double sum = 0.0;
        int count = 0;
        for (int z = -r; z <= r; ++z)
            for (int y = -r; y <= r; ++y)
                for (int x = -r; x <= r; ++x) {
                    const Eigen::Vector3i n = c + Eigen::Vector3i(x, y, z);
                    if (x * x + y * y + z * z <= radius * radius && (n.array() >= 0).all() &&
                        (n.array() < g.size.array()).all()) {
                        sum += hu[g.index(n)];
                        ++count;
                    }
                }
        raw[i] = sum / count;
    }
    LevelTrack track;
    const auto window = static_cast<std::size_t>(kHalfWindowMm / g.stepMm);
    const auto every = static_cast<std::size_t>(kEveryMm / g.stepMm);
    for (std::size_t i = 0; i < way.size(); i += every) {
        const std::size_t from = i >= window ? i - window : 0, to = std::min(way.size(), i + window + 1);
        std::vector<double> near(raw.begin() + static_cast<std::ptrdiff_t>(from),
                                 raw.begin() + static_cast<std::ptrdiff_t>(to));
        std::nth_element(near.begin(), near.begin() + static_cast<std::ptrdiff_t>(near.size() / 2), near.end());
        track.at.push_back(g.patientFrom(way[i]));
        track.hu.push_back(near[near.size() / 2]);
    }
    return track;
}

tl::unexpected<Error> notConnected(const Contrast& c) {
    return failure(ErrorCode::SeedsNotConnected,
                   "Cannot measure: the tip seed (" + std::to_string(std::lround(c.tipHu)) +
                       " HU) lies in blood that is not connected with the atrium seed (" +
                       std::to_string(std::lround(c.atriumHu)) +
                       " HU). One of them is in another cavity (a ventricle, an artery, a vein of the lung or heart), "
                       "or the appendage is not filled between them. Move the seed that is in the wrong place.");
}

struct Linked {
    BoxMask mask;
    std::size_t atrium = kNoNode, tip = kNoNode;
};

Result<Linked> link(const BoxMask& blood, const PatientPoint& atrium, const PatientPoint& tip,
                    const Contrast& contrast) {
    Linked linked;
    linked.atrium = nearestNode(blood, atrium, kSeedReachMm);
    linked.tip = nearestNode(blood, tip, kSeedReachMm);
    if (linked.atrium == kNoNode || linked.tip == kNoNode)
        return failure(ErrorCode::SeedNotInBlood,
                       std::string("Cannot measure: no blood was found within 2.5 mm of the ") +
                           (linked.atrium == kNoNode ? "atrium" : "tip") + " seed. Move it into bright blood.");
    linked.mask = connectedTo(blood, {linked.atrium});
    if (!linked.mask[linked.tip]) {
        // The node nearest to the tip may be a crumb of noise beside the lumen; a cavity of its own is another matter.
        const BoxMask own = connectedTo(blood, {linked.tip});
        if (std::count(own.values.begin(), own.values.end(), 1) > kCrumbNodes)
            return notConnected(contrast);
        linked.tip = nearestNode(linked.mask, tip, kSeedReachMm);
        if (linked.tip == kNoNode)
            return notConnected(contrast);
    }
    return linked;
}

bool touchesFace(const BoxMask& mask) {
    const Eigen::Vector3i& size = mask.grid.size;
    for (std::size_t i = 0; i < mask.values.size(); ++i) {
        if (!mask[i])
            continue;
        const Eigen::Vector3i n = mask.grid.node(i);
        if ((n.array() == 0).any() || (n.array() == size.array() - 1).any())
            return true;
    }
    return false;
}

} // namespace

double LevelTrack::nearestTo(const PatientPoint& p) const {
    double least = std::numeric_limits<double>::max(), level = hu.front();
    for (std::size_t i = 0; i < at.size(); ++i) {
        const double d = (at[i].mm - p.mm).squaredNorm();
        if (d < least) {
            least = d;
            level = hu[i];
        }
    }
    return level;
}

SectionGuide BloodPool::guideAt(const PatientPoint& p) const {
    SectionGuide guide;
    guide.bloodHu = levels.nearestTo(p);
    guide.wallHu = contrast.wallHu;
    guide.wallSdHu = contrast.wallSdHu;
    guide.edgeSigmaMm = edgeSigmaMm;
    guide.noiseLineDensity = contrast.noiseLineDensity;
    return guide;
}

Result<BloodPool> findBloodPool(const Volume& volume, const PatientPoint& atrium, const PatientPoint& tip,
                                double marginMm, const WorkContext& work) {
    const BoxField<float> raw =
        resample(volume, boxAround(volume, {atrium, tip}, marginMm, kBoxStepMm), kOutsideVolume);
    if (work.stopped())
        return cancelled("Measuring");
    auto contrast = estimateContrast(volume, raw, atrium, tip);
    if (!contrast)
        return tl::make_unexpected(std::move(contrast.error()));

    BloodPool pool;
    pool.contrast = *contrast;
    pool.hu = smoothed(raw, kCalmSigmaMm);
    if (work.stopped())
        return cancelled("Measuring");

    // First with one level, the lower of the two, to find the way; then with the level along that way.
    pool.levels = {{tip}, {std::min(contrast->atriumHu, contrast->tipHu)}};
    const bool fades = contrast->tipHu < 0.9 * contrast->atriumHu || contrast->tipHu > 1.1 * contrast->atriumHu;
    for (int round = 0; round < (fades ? 2 : 1); ++round) {
        auto linked = link(threshold(pool.hu, pool.contrast, pool.levels), atrium, tip, pool.contrast);
        if (!linked)
            return tl::make_unexpected(std::move(linked.error()));
        pool.mask = std::move(linked->mask);
        pool.atriumNode = linked->atrium;
        pool.tipNode = linked->tip;
        fillPinholes(pool.mask);
        pool.depth = distanceInsideMm(pool.mask);
        if (work.stopped())
            return cancelled("Measuring");
        pool.way = middleWay(pool.depth, pool.tipNode, pool.atriumNode);
        if (pool.way.empty())
            return notConnected(pool.contrast);
        pool.levels = levelsAlong(pool.way, pool.hu, pool.depth);
        if (work.stopped())
            return cancelled("Measuring");
    }
    pool.touchesBoxFace = touchesFace(pool.mask);
    // Blur of the scanner (0.7 mm FWHM to begin with) and of linear interpolation (h^2 / 6 along each axis).
    const double h2 = volume.edgesMm().squaredNorm() / 3.0;
    pool.edgeSigmaMm = std::sqrt(0.3 * 0.3 + h2 / 6.0);
    return pool;
}

} // namespace gauge::core
