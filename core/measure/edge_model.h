// The blurred edge blood / wall / beyond as a model that is linear but for the places of its two steps; see the
// drawing in edge_profile.h. Fitted by a search over the two places, each with an exact least squares solution.
#pragma once

#include <Eigen/Core>
#include <vector>

namespace gauge::core {

inline constexpr double kProfileFromMm = -3.0;
inline constexpr double kProfileStepMm = 0.15;
inline constexpr int kProfileCount = 37; // to +2.4 mm

constexpr double profileTime(int column) {
    return kProfileFromMm + column * kProfileStepMm;
}
constexpr int profileColumn(double t) {
    return static_cast<int>((t - kProfileFromMm) / kProfileStepMm + 0.5);
}

struct EdgeFit {
    double edgeMm = 0.0;      ///< place of the border, relative to the profile's t = 0
    double wallHu = 0.0;
    double thicknessMm = 0.0; ///< of the wall; the greatest of the grid stands for "no end seen"
    double misfitHu = 0.0;    ///< RMS over the fitted window
};

class EdgeModel {
public:
    explicit EdgeModel(double sigmaMm);

    /// @param profile  kProfileCount values
    /// @param bloodHu  known level inside
    /// @param wallHu, wallSdHu  what is known of the wall beforehand
    /// @param noiseHu  noise of a profile value (weights the prior against the data)
    EdgeFit fit(const Eigen::Ref<const Eigen::VectorXd>& profile, double bloodHu, double wallHu, double wallSdHu,
                double noiseHu) const;

private:
    int m_first, m_count;         // fitted window of the profile
    std::vector<double> m_edges;  // grid of e
    std::vector<double> m_widths; // grid of w
    Eigen::MatrixXd m_step;       // column p: F((t - x_p)/s) for step places x_p
    Eigen::VectorXd m_stepSquares;       // of each column
    std::vector<Eigen::VectorXd> m_stepProducts; // of the column of each edge with every other
    std::vector<Eigen::Index> m_edgePlaces;                // of each edge
    std::vector<std::vector<Eigen::Index>> m_endPlaces; // of the wall's end, for each width and edge
    double m_firstPlaceMm;
    Eigen::Index placeIndex(double placeMm) const;
};

} // namespace gauge::core
