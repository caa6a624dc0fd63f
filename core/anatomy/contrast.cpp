#include "core/anatomy/contrast.h"

#include "core/volume/sampling.h"
#include "core/volume/section_image.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <string>
#include <vector>

namespace gauge::core {
namespace {

constexpr double kAtriumBallMm = 2.5;
constexpr double kTipBallMm = 1.2;
constexpr double kTipSearchMm = 2.0;
constexpr double kFatBelowHu = -30.0, kAirBelowHu = -300.0, kBoneAboveHu = 900.0;
constexpr double kLeastContrastHu = 80.0; // blood over wall; below this a half-value contour means nothing
constexpr double kLeastAtriumHu = 130.0;  // unenhanced blood and muscle are alike (30-60 HU)
constexpr double kTypicalMuscleHu = 80.0; // first guess only; common practice, no source

std::string rounded(double hu) {
    return std::to_string(static_cast<int>(std::lround(hu))) + " HU";
}

std::vector<double> valuesAround(const Volume& volume, const PatientPoint& p, double radiusMm) {
    const Eigen::Vector3d center = volume.voxelFrom(p).ijk;
    // Half-extents of the ball in voxels: rows of the inverse bound them for any affine.
    const Eigen::Array3d reach =
        volume.voxelFromPatient().linear().rowwise().norm().array() * radiusMm + 1.0;
    const Eigen::Array3i low = (center.array() - reach).max(0.0).cast<int>();
    const Eigen::Array3i high =
        (center.array() + reach).min((volume.size().array() - 1).cast<double>()).cast<int>();
    std::vector<double> values;
    for (int k = low.z(); k <= high.z(); ++k)
        for (int j = low.y(); j <= high.y(); ++j)
            for (int i = low.x(); i <= high.x(); ++i)
                if (distanceMm(volume.patientFrom({Eigen::Vector3d(i, j, k)}), p) <= radiusMm)
                    values.push_back(volume.at(i, j, k));
    if (values.empty())
        values.push_back(TrilinearSampler(volume)(p));
    return values;
}

double quantile(std::vector<double>& v, double share) {
    const auto at = static_cast<std::ptrdiff_t>(share * static_cast<double>(v.size() - 1) + 0.5);
    std::nth_element(v.begin(), v.begin() + at, v.end());
    return v[static_cast<std::size_t>(at)];
}

/// Greatest median of a small ball about places near the tip seed: the seed need not be in the middle of its lobe.
double tipLevel(const Volume& volume, const PatientPoint& tip) {
    double best = medianAround(volume, tip, kTipBallMm);
    for (const double r : {0.5 * kTipSearchMm, kTipSearchMm})
        for (int axis = 0; axis < 3; ++axis)
            for (const double sign : {-1.0, 1.0}) {
                Eigen::Vector3d d = Eigen::Vector3d::Zero();
                d[axis] = sign * r;
                const PatientPoint p = tip + PatientVector{d};
                if (volume.contains(p))
                    best = std::max(best, medianAround(volume, p, kTipBallMm));
            }
    return best;
}

/// Commonest soft-tissue value of the box: the peak of a smoothed histogram between fat and half of the blood.
double wallLevel(const BoxField<float>& box, double bloodHu) {
    const double low = -20.0, high = std::max(low + 60.0, 0.5 * bloodHu);
    constexpr double kBin = 5.0;
    std::vector<double> bins(static_cast<std::size_t>((high - low) / kBin) + 1, 0.0);
    for (std::size_t i = 0; i < box.values.size(); i += 3) {
        const double v = box.values[i];
        if (v >= low && v < high)
            bins[static_cast<std::size_t>((v - low) / kBin)] += 1.0;
    }
    double best = -1.0, level = kTypicalMuscleHu;
    for (std::size_t b = 3; b + 3 < bins.size(); ++b) {
        double sum = 0.0;
        for (std::size_t d = b - 3; d <= b + 3; ++d)
            sum += bins[d];
        // A peak has lower shoulders; a tail of the blood or the fat does not count.
        const double left = bins[b - 3], right = bins[b + 3];
        if (sum > best && bins[b] >= left && bins[b] >= right) {
            best = sum;
            level = low + (static_cast<double>(b) + 0.5) * kBin;
        }
    }
    return level;
}

/// Noise from straight lines through the blood around the atrium seed: variance of the means of neighbouring
/// pieces of a few mm, times their length.
void measureNoise(const Volume& volume, const PatientPoint& atrium, Contrast& contrast) {
    constexpr double kPieceMm = 3.0, kStepMm = 0.25, kReachMm = 9.0;
    const TrilinearSampler sample(volume);
    const double floor = 0.5 * (contrast.atriumHu + contrast.wallHu);
    double sum = 0.0;
    int count = 0;
    const auto pieceMean = [&](const Eigen::Vector3d& start, const Eigen::Vector3d& along) -> std::optional<double> {
        double mean = 0.0;
        int n = 0;
        for (double t = 0.0; t < kPieceMm; t += kStepMm, ++n) {
            const PatientPoint p{start + t * along};
            if (!volume.contains(p))
                return std::nullopt;
            const double v = sample(p);
            if (v < floor)
                return std::nullopt;
            mean += v;
        }
        return mean / n;
    };
    for (int axis = 0; axis < 3; ++axis) {
        Eigen::Vector3d along = Eigen::Vector3d::Zero();
        along[axis] = 1.0;
        const Eigen::Vector3d a = along.cross(Eigen::Vector3d(along.z(), along.x(), along.y())).normalized();
        const Eigen::Vector3d b = along.cross(a);
        for (double x = -kReachMm; x <= kReachMm; x += 1.6)
            for (double y = -kReachMm; y <= kReachMm; y += 1.6)
                for (double t = -kReachMm; t + 2 * kPieceMm <= kReachMm; t += kPieceMm) {
                    const Eigen::Vector3d start = atrium.mm + x * a + y * b + t * along;
                    const auto first = pieceMean(start, along);
                    const auto second = first ? pieceMean(start + kPieceMm * along, along) : std::nullopt;
                    if (second) {
                        sum += 0.5 * (*first - *second) * (*first - *second);
                        ++count;
                    }
                }
    }
    auto values = valuesAround(volume, atrium, kAtriumBallMm);
    const double median = quantile(values, 0.5);
    for (double& v : values)
        v = std::abs(v - median);
    contrast.noiseHu = 1.4826 * quantile(values, 0.5);
    const double fallback = contrast.noiseHu * contrast.noiseHu * 0.45 * volume.edgesMm().mean();
    contrast.noiseLineDensity = count >= 40 ? sum / count * kPieceMm : fallback;
}

struct SeedWords {
    const char* name;
    const char* advice;
};

std::optional<Error> tissueError(const SeedWords& seed, double hu) {
    const auto say = [&](const std::string& where) {
        return Error{ErrorCode::SeedNotInBlood,
                     std::string("Cannot measure: the ") + seed.name + " seed lies in " + where + " (" + rounded(hu) +
                         "), not in blood. " + seed.advice,
                     {{"seed", seed.name}, {"value_hu", rounded(hu)}},
                     nullptr};
    };
    if (hu < kAirBelowHu)
        return say("air or lung");
    if (hu < kFatBelowHu)
        return say("fat");
    if (hu > kBoneAboveHu)
        return say("bone, metal or calcium");
    return std::nullopt;
}

constexpr SeedWords kAtriumSeed{"atrium", "Move it into the bright blood of the left atrium."};
constexpr SeedWords kTipSeed{"tip", "Move it into the bright blood of the wanted lobe."};

} // namespace

double medianAround(const Volume& volume, const PatientPoint& p, double radiusMm) {
    auto values = valuesAround(volume, p, radiusMm);
    return quantile(values, 0.5);
}

Result<Contrast> estimateContrast(const Volume& volume, const BoxField<float>& box, const PatientPoint& atrium,
                                  const PatientPoint& tip) {
    Contrast contrast;
    contrast.atriumHu = medianAround(volume, atrium, kAtriumBallMm);
    if (auto error = tissueError(kAtriumSeed, contrast.atriumHu))
        return tl::make_unexpected(std::move(*error));
    const double tipSeedHu = medianAround(volume, tip, kTipBallMm);
    if (auto error = tissueError(kTipSeed, tipSeedHu))
        return tl::make_unexpected(std::move(*error));

    contrast.wallHu = wallLevel(box, contrast.atriumHu);
    if (contrast.atriumHu < kLeastAtriumHu || contrast.atriumHu - contrast.wallHu < kLeastContrastHu) {
        // The same reading comes from a seed in muscle and from a scan without contrast medium: tell which.
        std::vector<double> bright(box.values.begin(), box.values.end());
        const bool enhanced = quantile(bright, 0.9) - contrast.wallHu > kLeastContrastHu &&
                              quantile(bright, 0.9) > kLeastAtriumHu;
        if (enhanced)
            return failure(ErrorCode::SeedNotInBlood,
                           "Cannot measure: the atrium seed lies in muscle or wall (" + rounded(contrast.atriumHu) +
                               "), not in blood. " + kAtriumSeed.advice,
                           {{"seed", "atrium"}, {"value_hu", rounded(contrast.atriumHu)}});
        return failure(ErrorCode::ContrastPoor,
                       "Cannot measure: the blood at the atrium seed reads " + rounded(contrast.atriumHu) +
                           " and the tissue around it " + rounded(contrast.wallHu) + "; at least " +
                           rounded(kLeastContrastHu) +
                           " between them is needed to find the border. Contrast is too poor, or the seed is not in "
                           "the left atrium: choose a contrast-enhanced series or move the seed.",
                       {{"atrium_hu", rounded(contrast.atriumHu)}, {"wall_hu", rounded(contrast.wallHu)}});
    }
    measureNoise(volume, atrium, contrast);
    contrast.tipHu = std::max(tipSeedHu, tipLevel(volume, tip));
    const double needed = contrast.wallHu + std::max(kLeastContrastHu, 0.25 * (contrast.atriumHu - contrast.wallHu));
    if (contrast.tipHu < needed)
        return failure(ErrorCode::ContrastPoor,
                       "Cannot measure: the tip seed reads " + rounded(tipSeedHu) + " where the atrium reads " +
                           rounded(contrast.atriumHu) + " and tissue " + rounded(contrast.wallHu) +
                           ". Either it lies in the wall, or the appendage is poorly filled there (slow flow or "
                           "thrombus: exclude it, a later phase tells them apart). Move the seed into filled blood "
                           "or choose a series with better filling.",
                       {{"tip_hu", rounded(tipSeedHu)}, {"atrium_hu", rounded(contrast.atriumHu)}});
    if (tipSeedHu < contrast.wallHu + 0.25 * (contrast.tipHu - contrast.wallHu))
        return failure(ErrorCode::SeedNotInBlood,
                       "Cannot measure: the tip seed lies in the wall or in a part that contrast has not filled (" +
                           rounded(tipSeedHu) + ", filled blood beside it " + rounded(contrast.tipHu) + "). " +
                           kTipSeed.advice,
                       {{"seed", "tip"}, {"value_hu", rounded(tipSeedHu)}});
    return contrast;
}

} // namespace gauge::core
