#include "core/access/seat_wall.h"

#include "core/anatomy/appendage_trace.h"
#include "core/parallel/parallel_for.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace gauge::core {
namespace {

constexpr double kMarchMm = 0.25;
constexpr double kAtNode = 0.02;     // share of the edge's height to which the mask holds a node whose value says otherwise
constexpr int kLevelBlockNodes = 8;  // 4 mm: blood levels are known every 2 mm at best

double trilinear(const BoxField<float>& field, const Eigen::Vector3d& at) {
    const BoxGrid& g = field.grid;
    const Eigen::Array3i low =
        at.array().floor().cast<int>().max(0).min((g.size.array() - 2).max(0));
    const Eigen::Array3d f = (at.array() - low.cast<double>()).max(0.0).min(1.0);
    const float* v = field.values.data() + g.index(low.matrix());
    const std::ptrdiff_t dx = g.size.x() > 1 ? 1 : 0, dy = g.size.y() > 1 ? g.strideY() : 0,
                         dz = g.size.z() > 1 ? g.strideZ() : 0;
    const auto row = [&](std::ptrdiff_t o) {
        return static_cast<double>(v[o]) + f.x() * (static_cast<double>(v[o + dx]) - static_cast<double>(v[o]));
    };
    const double a = row(0), b = row(dy), c = row(dz), d = row(dy + dz);
    const double ab = a + f.y() * (b - a), cd = c + f.y() * (d - c);
    return ab + f.z() * (cd - ab);
}

bool within(const BoxGrid& g, const Eigen::Vector3d& at) {
    return (at.array() >= 0.0).all() && (at.array() <= (g.size.array() - 1).cast<double>()).all();
}

/// The part of `grid` around the set nodes of `mask`, which lies on it; first node and size.
std::pair<Eigen::Vector3i, Eigen::Vector3i> boxAroundSet(const BoxMask& mask, double marginMm) {
    const BoxGrid& g = mask.grid;
    Eigen::Array3i low = g.size.array(), high = Eigen::Array3i::Constant(-1);
    for (int z = 0; z < g.size.z(); ++z)
        for (int y = 0; y < g.size.y(); ++y) {
            const std::uint8_t* row = mask.values.data() + g.index({0, y, z});
            const auto first = std::find(row, row + g.size.x(), std::uint8_t{1}) - row;
            if (first == g.size.x()) continue;
            auto last = static_cast<std::ptrdiff_t>(g.size.x()) - 1;
            while (!row[last]) --last;
            low = low.min(Eigen::Array3i(static_cast<int>(first), y, z));
            high = high.max(Eigen::Array3i(static_cast<int>(last), y, z));
        }
    const int margin = static_cast<int>(std::ceil(marginMm / g.stepMm));
    low = (low - margin).max(0);
    high = (high + margin).min(g.size.array() - 1);
    return {low.matrix(), (high - low + 1).max(0).matrix()};
}

} // namespace

bool SeatWall::isBlood(const PatientPoint& p) const {
    const Eigen::Vector3d at = blood.grid.coordFrom(p);
    return within(blood.grid, at) && trilinear(blood, at) > 0.0;
}

Result<SeatWall> seatWallOf(const AppendageMeasurement& measurement) {
    const auto isWhole = [](const AppendageTrace& trace) {
        const BloodPool& pool = trace.pool;
        return !trace.appendage.values.empty() && !pool.levels.hu.empty() && pool.hu.values.size() == pool.mask.values.size() &&
               pool.hu.values.size() == trace.appendage.values.size();
    };
    if (!measurement.trace || !isWhole(*measurement.trace))
        return failure(ErrorCode::InvalidArgument,
                       "Cannot look for the wall around the sizes: the measurement came without its blood pool. Measure again.");
    const BloodPool& pool = measurement.trace->pool;
    const auto [first, size] = boxAroundSet(measurement.trace->appendage, kSeatMarginMm);
    if ((size.array() < 2).any())
        return failure(ErrorCode::InvalidArgument,
                       "Cannot look for the wall around the sizes: the measured appendage holds no blood. Measure again.");
    BoxGrid grid = pool.hu.grid;
    grid.origin = grid.patientFrom(first.cast<double>());
    grid.size = size;
    SeatWall wall;
    wall.blood = BoxField<float>(grid);
    const double wallHu = pool.contrast.wallHu;
    // Levels by blocks of nodes: one look-up a block.
    const Eigen::Vector3i blocks = ((size.array() + kLevelBlockNodes - 1) / kLevelBlockNodes).matrix();
    parallelFor(static_cast<std::size_t>(blocks.z()), 1, [&, first = first, size = size](std::size_t begin, std::size_t end) {
        for (auto bz = static_cast<int>(begin); bz < static_cast<int>(end); ++bz)
            for (int by = 0; by < blocks.y(); ++by)
                for (int bx = 0; bx < blocks.x(); ++bx) {
                    const Eigen::Array3i low = Eigen::Array3i(bx, by, bz) * kLevelBlockNodes;
                    const Eigen::Array3i high = (low + kLevelBlockNodes).min(size.array());
                    const double blood = pool.levels.nearestTo(
                        grid.patientFrom((0.5 * (low + high - 1).cast<double>()).matrix()));
                    const double height = std::max(1.0, blood - wallHu), half = 0.5 * (blood + wallHu);
                    for (int z = low.z(); z < high.z(); ++z)
                        for (int y = low.y(); y < high.y(); ++y) {
                            const std::size_t from = pool.hu.grid.index(first + Eigen::Vector3i(low.x(), y, z));
                            const std::size_t to = grid.index({low.x(), y, z});
                            for (int x = 0; x < high.x() - low.x(); ++x) {
                                const auto o = static_cast<std::size_t>(x);
                                const double above = (static_cast<double>(pool.hu[from + o]) - half) / height;
                                wall.blood[to + o] = static_cast<float>(pool.mask[from + o] ? std::max(above, kAtNode)
                                                                                            : std::min(above, -kAtNode));
                            }
                        }
                }
    });
    const double height = std::max(1.0, pool.contrast.tipHu - wallHu);
    const double slope = height / (std::sqrt(2.0 * std::numbers::pi) * std::max(0.2, pool.edgeSigmaMm));
    wall.placeSdMm = pool.contrast.noiseHu / slope;
    return wall;
}

WallRay rayToWall(const SeatWall& wall, const PatientPoint& from, const PatientVector& direction, double reachMm) {
    const BoxGrid& g = wall.blood.grid;
    const Eigen::Vector3d start = g.coordFrom(from);
    const Eigen::Vector3d perMm = g.axes.transpose() * direction.mm / g.stepMm;
    if (!within(g, start)) return {0.0, true};
    double before = 0.0, valueBefore = trilinear(wall.blood, start);
    if (valueBefore <= 0.0) return {0.0, false};
    while (before < reachMm) {
        const double t = std::min(before + kMarchMm, reachMm);
        const Eigen::Vector3d at = start + t * perMm;
        if (!within(g, at)) return {before, true};
        const double value = trilinear(wall.blood, at);
        if (value <= 0.0) {
            // False position, twice: the trilinear value along a ray is a cubic.
            double lo = before, vLo = valueBefore, hi = t, vHi = value;
            for (int round = 0; round < 3 && hi - lo > 1e-6; ++round) {
                const double mid = lo + (hi - lo) * vLo / (vLo - vHi);
                const double v = trilinear(wall.blood, start + mid * perMm);
                if (v > 0.0) {
                    lo = mid;
                    vLo = v;
                } else {
                    hi = mid;
                    vHi = v;
                }
            }
            return {vLo > vHi ? lo + (hi - lo) * vLo / (vLo - vHi) : hi, false};
        }
        before = t;
        valueBefore = value;
    }
    return {reachMm, true};
}

} // namespace gauge::core
