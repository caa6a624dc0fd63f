// What the integration leaves behind and every answer of a Posterior is read from. Private to core/pressure.
#pragma once

#include "core/pressure/posterior.h"
#include "core/pressure/prepared_readings.h"

#include <Eigen/Core>
#include <array>

namespace gauge::core {

/// Most linear unknowns: base, low and high departure, and one bias for every kind that is no CT contour.
inline constexpr int kMostLinear = 3 + 15;
using LinearVector = Eigen::Matrix<double, Eigen::Dynamic, 1, 0, kMostLinear + 1, 1>;
using LinearMatrix = Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, 0, kMostLinear + 1, kMostLinear + 1>;

/// Places of the slope that stand for its distribution at one point, equally likely.
inline constexpr std::size_t kSlopesPerPoint = 8;

/// One point of the integration: share, pressures and phases fixed. The linear unknowns, in the order D at the
/// reference less the centre, low departure, high departure, biases by kind, are normal given the slope k:
/// mean = without - k pull.
struct PosteriorNode {
    double weight = 0.0;
    std::array<double, kSlopesPerPoint> slopes{};
    double slopeMean = 0.0; ///< of the slope at this point, exactly
    double slopeVariance = 0.0;
    double share = 0.0;
    std::vector<double> meanPressures; ///< by state
    std::vector<char> endSystole;      ///< by state: whether its readings of unknown phase were at end-systole
    Eigen::VectorXd without;
    Eigen::VectorXd pull;
    std::shared_ptr<const Eigen::MatrixXd> covariance; ///< one for all points whose pressures lie in the valid range
};

/// A normal variable at a node: mean offset + k gain, given the slope k.
struct NodeNormal {
    double offset = 0.0;
    double gain = 0.0;
    double variance = 0.0;
};

struct Posterior::Content {
    Quantity quantity = Quantity::LandingZonePerimeterDerivedDiameter;
    double decisionMmHg = 0.0;
    double referenceMmHg = 0.0; ///< where the pressure term counts from
    PressureLaw law = PressureLaw::Logarithmic;
    Priors priors;
    PreparedReadings readings;
    double centreMm = 0.0; ///< subtracted from all readings to keep digits
    double slopeMeanBefore = 0.0;
    double slopeSdBefore = 0.0;
    std::vector<PosteriorNode> nodes;
    double effectivePoints = 0.0;
    double contradictionChance = 1.0; ///< chance that readings differ as much as these or more

    std::vector<ReadingWeight> weights;
    std::vector<StatePressure> states;
    SlopeEstimate slope;
    std::vector<Notice> notices;

    int linearCount() const { return 3 + static_cast<int>(readings.kinds.size()); }
    /// The row over the linear unknowns that gives, less the slope's term, D at that pressure (kind -1) or an error-free
    /// reading of that kind there.
    LinearVector row(double mmHg, int kind = -1) const;
    double term(double mmHg) const { return pressureTerm(law, mmHg, referenceMmHg); }
    /// D at that pressure (kind -1), or an error-free reading of that kind, at a node.
    NodeNormal normalAt(const PosteriorNode&, double mmHg, int kind = -1) const;
    /// SD of the departure from the law at that pressure, mm.
    double departureSd(double mmHg) const;
    /// Distending pressure at a node: of a state, of a reading.
    double pressureOf(const PosteriorNode&, std::size_t state, bool endSystole) const;
    double pressureOf(const PosteriorNode&, const CountedReading&) const;
};

/// Fills nodes, effectivePoints and contradictionChance; everything above them must be set.
void integrate(Posterior::Content&, int points);

/// Fills weights, states, slope and notices.
void summarise(Posterior::Content&, std::span<const Observation>);

} // namespace gauge::core
