#include "core/anatomy/seed_checks.h"

#include "core/anatomy/mask_walks.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <string>

namespace gauge::core {
namespace {

constexpr float kAtriumLookMm = 8.0f;    // how far around a seed its cavity is judged
constexpr float kTipLookMm = 5.0f;       // a tip seed may lie near the mouth of a short appendage
constexpr double kLeastChamberMm = 8.5;  // inscribed radius; a pulmonary vein's is 4 to 8 (common practice, no source)
constexpr double kLeastTipChamberMm = 15.5; // inscribed radius that no appendage has (about 13 at most)
constexpr double kChamberDip = 0.72;     // a way that dips below this share between two chambers passes a valve

double widestAround(const BloodPool& pool, std::size_t node, float reachMm) {
    const auto walked = walkingDistanceMm(pool.mask, {node}, reachMm);
    double widest = 0.0;
    for (std::size_t i = 0; i < walked.values.size(); ++i)
        if (walked[i] != std::numeric_limits<float>::max())
            widest = std::max(widest, static_cast<double>(pool.depth[i]));
    return widest;
}

std::string wholeMm(double value) {
    return std::to_string(std::lround(value)) + " mm";
}

} // namespace

Result<void> checkAtriumSeed(const BloodPool& pool, const std::vector<std::size_t>& way) {
    const double radius = widestAround(pool, pool.atriumNode, kAtriumLookMm);
    if (radius < kLeastChamberMm)
        return failure(ErrorCode::SeedInVein,
                       "Cannot measure: around the atrium seed the blood is only " + wholeMm(2.0 * radius) +
                           " wide, as in a pulmonary vein or the appendage. Move the seed into the middle of the left "
                           "atrium.",
                       {{"width_mm", wholeMm(2.0 * radius)}});
    // From the tip on: the first chamber reached must be the seed's. A narrowing after a chamber is a valve.
    double first = 0.0, dip = std::numeric_limits<double>::max();
    for (const std::size_t node : way) {
        const double depth = pool.depth[node];
        if (first < kLeastTipChamberMm || depth > first) {
            first = std::max(first, depth);
            dip = std::numeric_limits<double>::max();
        } else {
            dip = std::min(dip, depth);
        }
        if (first >= kLeastTipChamberMm && dip < kChamberDip * first &&
            depth > std::max(1.25 * dip, kLeastChamberMm))
            return failure(ErrorCode::SeedInOtherChamber,
                           "Cannot measure: between the appendage and the atrium seed the blood passes a chamber and then "
                           "narrows to " + wholeMm(2.0 * dip) +
                               ", as at a valve. The atrium seed seems to lie in another chamber (the left ventricle); "
                               "move it into the left atrium.");
    }
    return {};
}

Result<void> checkTipSeed(const BloodPool& pool) {
    const double radius = widestAround(pool, pool.tipNode, kTipLookMm);
    if (radius > kLeastTipChamberMm)
        return failure(ErrorCode::SeedInOtherChamber,
                       "Cannot measure: around the tip seed the blood is " + wholeMm(2.0 * radius) +
                           " wide, as in a chamber (atrium or ventricle). Move the seed into the wanted lobe of the "
                           "appendage.",
                       {{"width_mm", wholeMm(2.0 * radius)}});
    return {};
}

} // namespace gauge::core
