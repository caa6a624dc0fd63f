// Volume and depth beyond the ostium, by counting weighted cells.
#include "sample-data/scene/truth.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <unordered_map>
#include <vector>

namespace gauge::sample_case {
namespace {

/// The plane parts atrium from appendage only near the ostium: within its contour and this margin, mm.
constexpr double kOstiumMarginMm = 3.0;
/// Step of the search for the farthest point about the farthest cells, mm.
constexpr double kFineStepMm = 0.04;

struct CellHash {
    std::size_t operator()(const Eigen::Vector3i& c) const {
        const auto wide = [](int v) { return static_cast<std::size_t>(static_cast<std::int64_t>(v) + 4096); };
        return ((wide(c.x()) << 26 | wide(c.y()) << 13 | wide(c.z())) * 0x9E3779B97F4A7C15ull) >> 16;
    }
};

/// Cells in the frame (u, v, n) of the ostium; layer k >= 0 lies beyond the plane.
class CellFlood {
public:
    CellFlood(const Scene& scene, const TrueOstium& ostium, double cell) : m_scene(scene), m_cell(cell) {
        const core::SectionFrame frame = core::frameOf(ostium.plane);
        const Eigen::Matrix3d turn = scene.patientFromScene.linear().transpose();
        m_origin = scene.sceneFrom(frame.origin);
        m_axes.col(0) = turn * frame.u.mm;
        m_axes.col(1) = turn * frame.v.mm;
        m_axes.col(2) = turn * frame.normal.mm;
        m_reach = 0.5 * ostium.section.metrics.longestDiameterMm + kOstiumMarginMm;
        run(scene.lobes.front().curve.at(scene.lobes.front().curve.lastS() - 2.5).point);
    }

    Eigen::Vector3d centre(const Eigen::Vector3i& c) const {
        return m_origin + m_axes * ((c.cast<double>().array() + 0.5) * m_cell).matrix();
    }
    double height(const Eigen::Vector3d& x) const { return (x - m_origin).dot(m_axes.col(2)); }
    /// Cells that were reached, with the pool's defining function at their centres; boundary cells included.
    const std::unordered_map<Eigen::Vector3i, double, CellHash>& cells() const { return m_cells; }

private:
    void run(const Eigen::Vector3d& seed) {
        const Eigen::Vector3d local = m_axes.transpose() * (seed - m_origin) / m_cell;
        std::vector<Eigen::Vector3i> open;
        visit({static_cast<int>(std::floor(local.x())), static_cast<int>(std::floor(local.y())),
               static_cast<int>(std::floor(local.z()))},
              open);
        while (!open.empty()) {
            const Eigen::Vector3i c = open.back();
            open.pop_back();
            for (int axis = 0; axis < 3; ++axis)
                for (const int step : {-1, 1}) {
                    Eigen::Vector3i next = c;
                    next[axis] += step;
                    if (!passesOstium(c, next)) visit(next, open);
                }
        }
    }
    void visit(const Eigen::Vector3i& c, std::vector<Eigen::Vector3i>& open) {
        const auto [place, fresh] = m_cells.try_emplace(c, 0.0);
        if (!fresh) return;
        place->second = m_scene.pool(centre(c));
        if (place->second < 0.5 * m_cell) open.push_back(c);
    }
    bool passesOstium(const Eigen::Vector3i& from, const Eigen::Vector3i& to) const {
        if ((from.z() >= 0) == (to.z() >= 0)) return false;
        const double across = (from.head<2>().cast<double>().array() + 0.5).matrix().norm() * m_cell;
        return across < m_reach;
    }

    const Scene& m_scene;
    double m_cell;
    Eigen::Vector3d m_origin;
    Eigen::Matrix3d m_axes;
    double m_reach = 0.0;
    std::unordered_map<Eigen::Vector3i, double, CellHash> m_cells;
};

double shareInside(double distance, double cell) {
    return std::clamp(0.5 - distance / cell, 0.0, 1.0);
}

/// Greatest height over the plane of points with f < 0, near the highest cells.
template <class Function> double farthest(const CellFlood& flood, const Function& f, double cell) {
    std::vector<std::pair<double, Eigen::Vector3i>> highest;
    for (const auto& [c, distance] : flood.cells())
        if (f(flood.centre(c)) < cell) highest.emplace_back(flood.height(flood.centre(c)), c);
    if (highest.empty()) return 0.0;
    const std::size_t kept = std::min<std::size_t>(highest.size(), 60);
    std::partial_sort(highest.begin(), highest.begin() + static_cast<std::ptrdiff_t>(kept), highest.end(),
                      [](const auto& a, const auto& b) { return a.first > b.first; });
    const int steps = static_cast<int>(std::ceil(cell / kFineStepMm));
    double best = 0.0;
    for (std::size_t i = 0; i < kept; ++i)
        for (int a = -steps; a <= steps; ++a)
            for (int b = -steps; b <= steps; ++b)
                for (int c = -steps; c <= steps; ++c) {
                    const Eigen::Vector3d x =
                        flood.centre(highest[i].second) + 0.5 * cell / steps * Eigen::Vector3d(a, b, c);
                    if (const double h = flood.height(x); h > best && f(x) < 0.0) best = h;
                }
    return best;
}

} // namespace

TrueInterior trueInterior(const Scene& scene, const TrueOstium& ostium, double cellMm) {
    const CellFlood flood(scene, ostium, cellMm);
    TrueInterior interior;
    double cells = 0.0;
    for (const auto& [c, distance] : flood.cells())
        cells += shareInside(distance, cellMm);
    interior.volumeMl = cells * cellMm * cellMm * cellMm / 1000.0;
    interior.farthestFromPlaneMm = farthest(
        flood, [&](const Eigen::Vector3d& x) { return scene.pool(x); }, cellMm);
    interior.farthestOfTipLobeMm = farthest(
        flood, [&](const Eigen::Vector3d& x) { return scene.lobes.front().distance(x); }, cellMm);
    return interior;
}

} // namespace gauge::sample_case
