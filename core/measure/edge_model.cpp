#include "core/measure/edge_model.h"

#include <Eigen/Dense>
#include <cmath>
#include <limits>
#include <numbers>

namespace gauge::core {
namespace {

constexpr double kEdgeReachMm = 0.6;
constexpr double kPlaceStepMm = 0.1;
constexpr double kWindowFromMm = -1.05, kWindowToMm = 2.1;
constexpr double kNoEndMm = 6.0; // a wall whose end lies beyond the window

double normalCdf(double z) {
    return 0.5 * std::erfc(-z / std::numbers::sqrt2);
}

} // namespace

EdgeModel::EdgeModel(double sigmaMm)
    : m_first(profileColumn(kWindowFromMm)), m_count(profileColumn(kWindowToMm) - m_first + 1),
      m_firstPlaceMm(-kEdgeReachMm) {
    for (double e = -kEdgeReachMm; e <= kEdgeReachMm + 1e-9; e += kPlaceStepMm)
        m_edges.push_back(e);
    m_widths = {0.8, 1.0, 1.2, 1.4, 1.7, 2.0, 2.4, kNoEndMm};
    const auto places = static_cast<Eigen::Index>(std::lround((2.0 * kEdgeReachMm + 2.4) / kPlaceStepMm)) + 1;
    m_step.resize(m_count, places);
    for (Eigen::Index p = 0; p < places; ++p)
        for (int r = 0; r < m_count; ++r)
            m_step(r, p) =
                normalCdf((profileTime(m_first + r) - m_firstPlaceMm - kPlaceStepMm * static_cast<double>(p)) / sigmaMm);
    m_stepSquares.resize(places);
    for (Eigen::Index p = 0; p < places; ++p)
        m_stepSquares(p) = m_step.col(p).squaredNorm();
    for (const double width : m_widths) {
        m_endPlaces.emplace_back();
        for (const double edge : m_edges)
            m_endPlaces.back().push_back(placeIndex(edge + (width < kNoEndMm ? width : 0.0)));
    }
    for (const double edge : m_edges) {
        m_edgePlaces.push_back(placeIndex(edge));
        Eigen::VectorXd products(places);
        for (Eigen::Index p = 0; p < places; ++p)
            products(p) = m_step.col(m_edgePlaces.back()).dot(m_step.col(p));
        m_stepProducts.push_back(std::move(products));
    }
}

Eigen::Index EdgeModel::placeIndex(double placeMm) const {
    return static_cast<Eigen::Index>(std::lround((placeMm - m_firstPlaceMm) / kPlaceStepMm));
}

EdgeFit EdgeModel::fit(const Eigen::Ref<const Eigen::VectorXd>& profile, double bloodHu, double wallHu,
                       double wallSdHu, double noiseHu) const {
    // Unknowns: d = B - W and q = O - W. value = B - d F1 + q F2. Prior on d from the wall's level; a weak one on q,
    // which only keeps it finite where no second step is seen.
    const Eigen::VectorXd drop = Eigen::VectorXd::Constant(m_count, bloodHu) - profile.segment(m_first, m_count);
    const double priorWeight = (noiseHu / wallSdHu) * (noiseHu / wallSdHu);
    const double beyondWeight = (noiseHu / 1000.0) * (noiseHu / 1000.0);
    const double priorDrop = bloodHu - wallHu;

    Eigen::VectorXd dropProducts(m_step.cols()); // of `drop` with each step
    for (Eigen::Index p = 0; p < m_step.cols(); ++p)
        dropProducts(p) = m_step.col(p).dot(drop);

    // The sum of squares of a candidate follows from the products alone; its last digits do not matter for the choice.
    const double dropSquares = drop.squaredNorm();
    struct Candidate {
        double cost, drop, beyond;
    };
    const auto solve = [&](std::size_t edge, std::size_t width) -> Candidate {
        const Eigen::Index p1 = m_edgePlaces[edge];
        const double a11 = m_stepSquares(p1) + priorWeight, b1 = dropProducts(p1) + priorWeight * priorDrop;
        const double known = dropSquares + priorWeight * priorDrop * priorDrop;
        if (m_widths[width] >= kNoEndMm) {
            const double d = b1 / a11;
            return {known - d * b1, d, 0.0};
        }
        const Eigen::Index p2 = m_endPlaces[width][edge];
        const double a12 = -m_stepProducts[edge](p2), a22 = m_stepSquares(p2) + beyondWeight, b2 = -dropProducts(p2);
        const double det = a11 * a22 - a12 * a12;
        const double d = (b1 * a22 - b2 * a12) / det, q = (a11 * b2 - a12 * b1) / det;
        return {known - d * b1 - q * b2, d, q};
    };

    std::size_t bestEdge = 0, bestWidth = 0;
    Candidate best{std::numeric_limits<double>::max(), 0.0, 0.0};
    for (std::size_t width = 0; width < m_widths.size(); ++width) {
        for (std::size_t edge = 0; edge < m_edges.size(); ++edge) {
            const Candidate c = solve(edge, width);
            if (c.cost < best.cost) {
                best = c;
                bestEdge = edge;
                bestWidth = width;
            }
        }
    }
    // The misfit itself is summed in full: the difference of products above cancels where the fit is good.
    const bool ends = m_widths[bestWidth] < kNoEndMm;
    const auto ofEdge = m_step.col(m_edgePlaces[bestEdge]);
    const auto ofEnd = m_step.col(m_endPlaces[bestWidth][bestEdge]);
    const double off = best.drop - priorDrop;
    const double data = (drop - best.drop * ofEdge + (ends ? best.beyond : 0.0) * ofEnd).squaredNorm();
    const double cost = data + priorWeight * off * off + beyondWeight * best.beyond * best.beyond;
    return {m_edges[bestEdge], bloodHu - best.drop, m_widths[bestWidth], std::sqrt(cost / m_count)};
}

} // namespace gauge::core
