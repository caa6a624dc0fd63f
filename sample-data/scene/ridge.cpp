#include "sample-data/scene/ridge.h"

namespace gauge::sample_case {
namespace {

constexpr double kSearchStepMm = 0.25;
constexpr double kWidestFoldMm = 35.0;

struct Fold {
    double offset; ///< from lobe 0's axis, where tissue is thickest
    double depth;  ///< pool's defining function there: above 0 in tissue
};

/// The thickest tissue between the two lumens at height s: the greatest value of the pool's function on the
/// way from lobe 0's axis to the vein's lumen.
Fold foldAt(const Scene& scene, const Eigen::Vector3d& towards, double s) {
    const CentreCurve::Frame frame = scene.lobes.front().curve.at(0.0);
    const auto pool = [&](double offset) {
        return scene.pool(frame.point + s * frame.tangent + offset * towards);
    };
    const auto inVein = [&](double offset) {
        return scene.veins.front().distance(frame.point + s * frame.tangent + offset * towards) < -1.0;
    };
    Fold fold{0.0, pool(0.0)};
    for (double offset = 0.0; offset < kWidestFoldMm && !inVein(offset); offset += kSearchStepMm)
        if (const double value = pool(offset); value > fold.depth) fold = {offset, value};
    double step = kSearchStepMm;
    while (step > 1e-9) {
        const double left = pool(fold.offset - step), right = pool(fold.offset + step);
        if (std::max(left, right) > fold.depth)
            fold = left > right ? Fold{fold.offset - step, left} : Fold{fold.offset + step, right};
        else
            step *= 0.5;
    }
    return fold;
}

} // namespace

RidgeCrest findRidgeCrest(const Scene& scene, const Eigen::Vector3d& towardsVein, double depthMm) {
    double open = -7.5, closed = 30.0;
    while (closed - open > 1e-9) {
        const double middle = 0.5 * (open + closed);
        (foldAt(scene, towardsVein, middle).depth < 0.0 ? open : closed) = middle;
    }
    const CentreCurve::Frame frame = scene.lobes.front().curve.at(0.0);
    const auto place = [&](double s) -> Eigen::Vector3d {
        return frame.point + s * frame.tangent + foldAt(scene, towardsVein, s).offset * towardsVein;
    };
    return {closed, place(closed), place(closed + depthMm)};
}

double placeVeinForCrest(Scene& scene, const Eigen::Vector3d& towardsVein, double wantedS, double near,
                       double far, const std::function<Tube(double)>& veinAt) {
    scene.veins.resize(std::max<std::size_t>(scene.veins.size(), 1));
    // The farther the vein, the nearer to the atrium its fold from the appendage begins.
    for (int step = 0; step < 30; ++step) {
        const double middle = 0.5 * (near + far);
        scene.veins.front() = veinAt(middle);
        (findRidgeCrest(scene, towardsVein, 0.0).s > wantedS ? near : far) = middle;
    }
    scene.veins.front() = veinAt(0.5 * (near + far));
    return 0.5 * (near + far);
}

Eigen::Vector3d placeClearOfPool(const Scene& scene, const Eigen::Vector3d& from,
                                 const Eigen::Vector3d& direction, double clearanceMm) {
    constexpr double kFarthestMm = 80.0;
    double low = 0.0;
    while (low < kFarthestMm && scene.pool(from + (low + 0.25) * direction) < clearanceMm)
        low += 0.25;
    double high = low + 0.25;
    while (high - low > 1e-9) {
        const double middle = 0.5 * (low + high);
        (scene.pool(from + middle * direction) < clearanceMm ? low : high) = middle;
    }
    return from + high * direction;
}

} // namespace gauge::sample_case
