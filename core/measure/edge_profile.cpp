#include "core/measure/edge_profile.h"

#include "core/fast/fast_path.h"
#include "core/geometry/planar_contour.h"
#include "core/measure/edge_model.h"
#include "core/volume/trilinear_rows.h"
#include "core/volume/volume_block.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <numeric>
#include <optional>

namespace gauge::core {
namespace {

constexpr double kSpacingMm = 0.35;        // of border points: below half a voxel nothing new is seen
constexpr double kSmoothOutlineMm = 0.7;   // outline noise is calmed over this before normals are taken
constexpr double kAverageMm = 0.45;        // profiles are averaged along the border over this (standard deviation)
constexpr double kLevelWindowMm = 2.5;     // levels are taken over this to each side along the border
constexpr double kOutlierMm = 0.7;         // a border point this far from its neighbours' median is no border
constexpr double kReachMm = 1.2;           // the border is sought this far from the outline
constexpr double kPlateauFromMm = -3.0, kPlateauToMm = -1.2;

/// Values along normals: row i belongs to outline point i, column c to t = kProfileFromMm + c * kProfileStepMm.
struct Profiles {
    std::vector<Eigen::Vector2d> points;
    std::vector<Eigen::Vector2d> normals; // outward
    Eigen::MatrixXd values;
    double stepMm = 0.0; // between points
};

/// Number on a ring of `n`, a few rounds off at most: no division.
std::size_t wrap(std::ptrdiff_t i, std::size_t n) {
    const auto s = static_cast<std::ptrdiff_t>(n);
    while (i < 0) i += s;
    while (i >= s) i -= s;
    return static_cast<std::size_t>(i);
}

/// The middle one in order (the upper of two), by counting how many lie before each: for a handful of values, where
/// sorting mispredicts at every step. What lies beyond one that was too low or too high is not tried. @param values  not empty.
double middleOf(std::span<const double> values) {
    const auto middle = static_cast<std::ptrdiff_t>(values.size() / 2);
    double tooLow = -std::numeric_limits<double>::infinity(), tooHigh = -tooLow;
    for (const double candidate : values) {
        if (candidate <= tooLow || candidate >= tooHigh) continue;
        std::ptrdiff_t below = 0, upTo = 0;
        for (const double v : values) {
            below += v < candidate;
            upTo += v <= candidate;
        }
        if (below > middle) tooHigh = candidate;
        else if (upTo <= middle) tooLow = candidate;
        else return candidate;
    }
    return values.front(); // not a number among them: no order
}

std::vector<double> halfKernel(double sigma) {
    const int reach = std::max(1, static_cast<int>(std::ceil(2.5 * sigma)));
    std::vector<double> k(static_cast<std::size_t>(reach) + 1);
    for (int i = 0; i <= reach; ++i)
        k[static_cast<std::size_t>(i)] = std::exp(-0.5 * i * i / (sigma * sigma));
    double sum = k[0];
    for (std::size_t i = 1; i < k.size(); ++i)
        sum += 2.0 * k[i];
    for (double& w : k)
        w /= sum;
    return k;
}

/// Circular Gaussian mean of the rows at `places`.
template <class Get, class Set>
void averageAt(std::span<const std::size_t> places, std::size_t n, double sigmaPoints, const Get& get, const Set& set) {
    const auto kernel = halfKernel(std::max(sigmaPoints, 0.3));
    for (const std::size_t i : places) {
        auto sum = (kernel[0] * get(i)).eval();
        for (std::size_t d = 1; d < kernel.size(); ++d) {
            const auto step = static_cast<std::ptrdiff_t>(d), at = static_cast<std::ptrdiff_t>(i);
            sum += kernel[d] * (get(wrap(at - step, n)) + get(wrap(at + step, n)));
        }
        set(i, sum);
    }
}

/// The same at every row.
template <class Get, class Set>
void averageAround(std::size_t n, double sigmaPoints, const Get& get, const Set& set) {
    std::vector<std::size_t> all(n);
    std::iota(all.begin(), all.end(), std::size_t{0});
    averageAt(all, n, sigmaPoints, get, set);
}

/// The same of plain numbers, laid out once round and a half so that the sums run straight.
std::vector<double> averagedNumbers(const std::vector<double>& values, double sigmaPoints) {
    const auto kernel = halfKernel(std::max(sigmaPoints, 0.3));
    const std::size_t n = values.size(), reach = kernel.size() - 1;
    std::vector<double> around(n + 2 * reach), sums(n);
    for (std::size_t i = 0; i < around.size(); ++i)
        around[i] = values[wrap(static_cast<std::ptrdiff_t>(i) - static_cast<std::ptrdiff_t>(reach), n)];
    for (std::size_t i = 0; i < n; ++i)
        sums[i] = kernel[0] * values[i];
    for (std::size_t d = 1; d <= reach; ++d)
        for (std::size_t i = 0; i < n; ++i)
            sums[i] += kernel[d] * (around[reach + i - d] + around[reach + i + d]);
    return sums;
}

Profiles sampleProfiles(const Volume& volume, const SectionFrame& frame, std::span<const Eigen::Vector2d> outline) {
    Profiles profiles;
    const double perimeter = perimeterMm(outline);
    const auto n = static_cast<std::size_t>(std::clamp(perimeter / kSpacingMm, 24.0, 600.0));
    const auto even = resampleByArcLength(outline, n);
    profiles.stepMm = perimeter / static_cast<double>(n);
    // A small blob must not be smoothed away.
    const double calm = std::min(kSmoothOutlineMm, 0.05 * perimeter);
    profiles.points.resize(n);
    averageAround(
        n, calm / profiles.stepMm, [&](std::size_t i) -> const Eigen::Vector2d& { return even[i]; },
        [&](std::size_t i, const Eigen::Vector2d& p) { profiles.points[i] = p; });
    profiles.normals.resize(n);
    for (std::size_t i = 0; i < n; ++i) {
        const Eigen::Vector2d along = profiles.points[wrap(static_cast<std::ptrdiff_t>(i) + 1, n)] -
                                      profiles.points[wrap(static_cast<std::ptrdiff_t>(i) - 1, n)];
        profiles.normals[i] = Eigen::Vector2d(along.y(), -along.x()).normalized();
    }
    const TrilinearRows& samples = fastOr(kTrilinearRows, trilinearRowsAvx2());
    const VoxelBlock block = voxelBlock(volume);
    const Eigen::Affine3d& toVoxel = volume.voxelFromPatient();
    profiles.values.resize(kProfileCount, static_cast<Eigen::Index>(n));
    for (std::size_t i = 0; i < n; ++i) {
        const Eigen::Vector2d& p = profiles.points[i];
        const Eigen::Vector2d& m = profiles.normals[i];
        const Eigen::Vector3d start =
            toVoxel * frame.patientFromSection(p + kProfileFromMm * m).mm;
        const Eigen::Vector3d step =
            toVoxel.linear() * (m.x() * frame.u.mm + m.y() * frame.v.mm) * kProfileStepMm;
        samples.held(block, voxelRow(start, step), 0, kProfileCount, profiles.values.col(static_cast<Eigen::Index>(i)).data());
    }
    return profiles;
}

/// Depth to which the inside of point i is blood: half the way to the opposite border at most.
double plateauDepth(const Profiles& profiles) {
    const double area = std::abs(signedAreaMm2(profiles.points));
    return std::min(-kPlateauFromMm, 0.9 * std::sqrt(area / std::numbers::pi));
}

/// Blood level at each point: mean over the plateau inside and a window along the border.
std::vector<double> bloodLevels(const Profiles& profiles, const SectionGuide& guide) {
    const std::size_t n = profiles.points.size();
    std::vector<double> level(n, guide.bloodHu);
    const double depth = plateauDepth(profiles);
    const double nearest = std::max(-kPlateauToMm, 2.5 * guide.edgeSigmaMm);
    const int from = profileColumn(-depth), to = profileColumn(-nearest);
    if (to - from < 2)
        return level; // too small to hold a plateau: the level of its surroundings stands
    const auto window = std::max(2.0, kLevelWindowMm / profiles.stepMm);
    std::vector<double> inner(n);
    const auto count = static_cast<std::size_t>(to - from + 1);
    for (std::size_t i = 0; i < n; ++i) // the median resists a neighbouring wall that a deep profile may touch
        inner[i] = middleOf({&profiles.values(from, static_cast<Eigen::Index>(i)), count});
    return averagedNumbers(inner, window);
}

/// Fits the edge model once a sector (about 2.5 mm of border).
struct SectorFit {
    std::vector<std::size_t> at; // middle point of each sector
    std::vector<EdgeFit> fits;
};

SectorFit fitSectors(const Profiles& profiles, const std::vector<double>& blood, const SectionGuide& guide,
                     const EdgeModel& model) {
    const std::size_t n = profiles.points.size();
    const auto sectors = std::max<std::size_t>(
        6, static_cast<std::size_t>(std::lround(static_cast<double>(n) * profiles.stepMm / kLevelWindowMm)));
    SectorFit result;
    const double share = static_cast<double>(n) / static_cast<double>(sectors);
    for (std::size_t s = 0; s < sectors; ++s)
        result.at.push_back(std::min(n - 1, static_cast<std::size_t>((static_cast<double>(s) + 0.5) * share)));
    // Noise left after averaging along the border, for the weight of the wall's prior.
    const double noise = std::sqrt(guide.noiseLineDensity / (1.77 * kLevelWindowMm));
    averageAt(
        result.at, n, 0.5 * kLevelWindowMm / profiles.stepMm,
        [&](std::size_t i) { return profiles.values.col(static_cast<Eigen::Index>(i)); },
        [&](std::size_t i, const Eigen::VectorXd& wide) {
            result.fits.push_back(model.fit(wide, blood[i], guide.wallHu, guide.wallSdHu, std::max(noise, 2.0)));
        });
    return result;
}

/// Wall level at every point, linear between sector middles.
std::vector<double> wallLevels(const SectorFit& sectors, std::size_t n) {
    std::vector<double> wall(n);
    const std::size_t count = sectors.at.size();
    for (std::size_t s = 0; s < count; ++s) {
        const std::size_t next = (s + 1) % count;
        const std::size_t from = sectors.at[s];
        const std::size_t span = next > s ? sectors.at[next] - from : n - from + sectors.at[next];
        for (std::size_t d = 0; d < span; ++d) {
            const double t = static_cast<double>(d) / static_cast<double>(span);
            wall[(from + d) % n] = (1.0 - t) * sectors.fits[s].wallHu + t * sectors.fits[next].wallHu;
        }
    }
    return wall;
}

// Columns between which a border within reach is crossed, and one more on either side.
constexpr int kNearFirst = profileColumn(-kReachMm) - 1, kNearCount = profileColumn(kReachMm) + 1 - kNearFirst + 1;
static_assert(kNearFirst >= 0 && kNearFirst + kNearCount <= kProfileCount);
using NearBorder = Eigen::Matrix<double, kNearCount, 1>;

/// Falling crossing of `level` nearest to t = 0.
std::optional<double> crossing(const NearBorder& profile, double level) {
    std::optional<double> best;
    for (int c = 0; c + 1 < kNearCount; ++c) {
        const double a = profile(c), b = profile(c + 1);
        if (a < level || b >= level)
            continue;
        const double t = profileTime(kNearFirst + c) + kProfileStepMm * (a - level) / (a - b);
        if (std::abs(t) <= kReachMm && (!best || std::abs(t) < std::abs(*best)))
            best = t;
    }
    return best;
}

/// The crossing of each point's profile, averaged with its neighbours', with the level there.
template <class Level> std::vector<std::optional<double>> crossings(const Profiles& profiles, const Level& level) {
    const std::size_t n = profiles.points.size();
    std::vector<std::optional<double>> shifts(n);
    averageAround(
        n, kAverageMm / profiles.stepMm,
        [&](std::size_t i) { return profiles.values.col(static_cast<Eigen::Index>(i)).segment<kNearCount>(kNearFirst); },
        [&](std::size_t i, const NearBorder& v) { shifts[i] = crossing(v, level(i)); });
    return shifts;
}

/// Replaces missing and outlying shifts by the median of their neighbours.
std::vector<double> mended(const std::vector<std::optional<double>>& shifts, double stepMm) {
    const std::size_t n = shifts.size();
    const auto reach = static_cast<std::ptrdiff_t>(std::max(2.0, 1.5 / stepMm));
    std::vector<double> result(n), near;
    near.reserve(2 * static_cast<std::size_t>(reach) + 1);
    for (std::size_t i = 0; i < n; ++i) {
        near.clear();
        for (std::ptrdiff_t d = -reach; d <= reach; ++d)
            if (const auto& s = shifts[wrap(static_cast<std::ptrdiff_t>(i) + d, n)])
                near.push_back(*s);
        const double median = near.empty() ? 0.0 : middleOf(near);
        result[i] = shifts[i] && std::abs(*shifts[i] - median) <= kOutlierMm ? *shifts[i] : median;
    }
    return result;
}

} // namespace

EdgeSet locateEdges(const Volume& volume, const SectionFrame& frame, std::span<const Eigen::Vector2d> outline,
                    const SectionGuide& guide) {
    return locateEdges(volume, frame, outline, guide, EdgeModel(guide.edgeSigmaMm));
}

EdgeSet locateEdges(const Volume& volume, const SectionFrame& frame, std::span<const Eigen::Vector2d> outline,
                    const SectionGuide& guide, const EdgeModel& model) {
    const Profiles profiles = sampleProfiles(volume, frame, outline);
    const std::size_t n = profiles.points.size();
    const auto blood = bloodLevels(profiles, guide);
    const SectorFit sectors = fitSectors(profiles, blood, guide, model);
    const auto wall = wallLevels(sectors, n);

    const auto shift =
        mended(crossings(profiles, [&](std::size_t i) { return 0.5 * (blood[i] + wall[i]); }), profiles.stepMm);

    EdgeSet edges;
    edges.points.resize(n);
    edges.slopeHuPerMm.resize(n);
    const double toSlope = 1.0 / (guide.edgeSigmaMm * std::sqrt(2.0 * std::numbers::pi));
    for (std::size_t i = 0; i < n; ++i) {
        edges.points[i] = profiles.points[i] + shift[i] * profiles.normals[i];
        edges.slopeHuPerMm[i] = std::max(1.0, (blood[i] - wall[i]) * toSlope);
        edges.bloodHu += blood[i] / static_cast<double>(n);
        edges.wallHu += wall[i] / static_cast<double>(n);
        edges.meanSlopeHuPerMm += edges.slopeHuPerMm[i] / static_cast<double>(n);
    }
    double misfit = 0.0;
    for (const auto& fit : sectors.fits)
        misfit += fit.misfitHu * fit.misfitHu / static_cast<double>(sectors.fits.size());
    edges.residualHu = std::sqrt(misfit);
    return edges;
}

std::optional<std::vector<Eigen::Vector2d>> broughtToLevel(const Volume& volume, const SectionFrame& frame,
                                                           std::span<const Eigen::Vector2d> outline, double levelHu) {
    const Profiles profiles = sampleProfiles(volume, frame, outline);
    const std::size_t n = profiles.points.size();
    const auto shifts = crossings(profiles, [&](std::size_t) { return levelHu; });
    const auto found = std::count_if(shifts.begin(), shifts.end(), [](const auto& s) { return s.has_value(); });
    if (2 * static_cast<std::size_t>(found) < n) return std::nullopt;
    const auto shift = mended(shifts, profiles.stepMm);
    std::vector<Eigen::Vector2d> points(n);
    for (std::size_t i = 0; i < n; ++i)
        points[i] = profiles.points[i] + shift[i] * profiles.normals[i];
    return points;
}

double edgeMisfitHu(const Volume& volume, const SectionFrame& frame, std::span<const Eigen::Vector2d> outline,
                    const SectionGuide& guide, double sigmaMm) {
    const Profiles profiles = sampleProfiles(volume, frame, outline);
    const auto blood = bloodLevels(profiles, guide);
    double sum = 0.0;
    const auto sectors = fitSectors(profiles, blood, guide, EdgeModel(sigmaMm));
    for (const auto& fit : sectors.fits)
        sum += fit.misfitHu * fit.misfitHu;
    return std::sqrt(sum / static_cast<double>(sectors.fits.size()));
}

} // namespace gauge::core
