#include "sample-data/scene/scene.h"

#include <cassert>
#include <limits>

namespace gauge::sample_case {
namespace {

constexpr double kFar = 1e9;
/// Boundaries of one solid reach this far from its surface (wall + fat, fillets), mm.
constexpr double kReachMm = 14.0;
/// Defining functions are distances to first order: near the surface they rise at most this fast (the square
/// root of 2 where two solids melt into each other)…
constexpr double kSteepnessNear = 1.45;
constexpr double kNearMm = 1.5;
/// …and farther away (in the middle of flat ellipsoids) at most this fast.
constexpr double kSteepnessFar = 2.2;
/// Soft tissue around bone, mm.
constexpr double kBoneCoverMm = 6.0;
/// Length over which a blood level passes from the atrium's to the vein's, mm.
constexpr double kVeinMixingMm = 15.0;
/// How close to a tube's lumen its own level holds, mm; falls to nothing over the same length again.
constexpr double kLevelMarginMm = 1.0;

double distanceTo(const std::variant<Tube, Ellipsoid>& solid, const Eigen::Vector3d& x) {
    return std::visit([&](const auto& s) { return s.distance(x); }, solid);
}

/// Share of a cell that lies inside, when its edge is a ramp of width `ramp`.
double covered(double distance, double ramp) {
    return std::clamp(0.5 - distance / ramp, 0.0, 1.0);
}

double smoothStep(double t) {
    t = std::clamp(t, 0.0, 1.0);
    return t * t * (3.0 - 2.0 * t);
}

double mix(double a, double b, double share) {
    return a + (b - a) * share;
}

bool clears(double distance, double radius) {
    const double d = std::abs(distance);
    return d > (d < kNearMm ? kSteepnessNear : kSteepnessFar) * radius && d > kSteepnessNear * radius;
}

} // namespace

SceneSampler::SceneSampler(const Scene& scene) : m_scene(scene) {
    assert(!scene.lobes.empty());
    m_firstLobe = 1;
    m_firstVein = m_firstLobe + static_cast<int>(scene.lobes.size());
    m_firstCavity = m_firstVein + static_cast<int>(scene.veins.size());
    m_firstBone = m_firstCavity + static_cast<int>(scene.cavities.size());
    m_firstFat = m_firstBone + static_cast<int>(scene.bones.size());
    m_firstChest = m_firstFat + static_cast<int>(scene.fatBodies.size());
    m_count = m_firstChest + 3 * static_cast<int>(scene.chest.size());
    assert(m_count <= kMaxSolids && scene.cavities.size() <= 16);
    m_everything = (Mask{1} << m_count) - 1;
}

void SceneSampler::evaluate(const Eigen::Vector3d& x, Mask mask, Sample& out) const {
    const auto fresh = [&](int index) { return (mask >> index & 1) != 0; };
    const auto sizeOf = [](const auto& list) { return static_cast<int>(list.size()); };
    if (fresh(0)) out.solid[0] = m_scene.atrium.distance(x);
    for (int i = 0; i < sizeOf(m_scene.lobes); ++i)
        if (fresh(m_firstLobe + i))
            out.solid[static_cast<std::size_t>(m_firstLobe + i)] =
                m_scene.lobes[static_cast<std::size_t>(i)].distance(x);
    for (int i = 0; i < sizeOf(m_scene.veins); ++i)
        if (fresh(m_firstVein + i))
            out.solid[static_cast<std::size_t>(m_firstVein + i)] =
                m_scene.veins[static_cast<std::size_t>(i)].distance(x);
    for (int i = 0; i < sizeOf(m_scene.cavities); ++i)
        if (fresh(m_firstCavity + i))
            out.solid[static_cast<std::size_t>(m_firstCavity + i)] =
                distanceTo(m_scene.cavities[static_cast<std::size_t>(i)].solid, x);
    for (int i = 0; i < sizeOf(m_scene.bones); ++i)
        if (fresh(m_firstBone + i))
            out.solid[static_cast<std::size_t>(m_firstBone + i)] =
                distanceTo(m_scene.bones[static_cast<std::size_t>(i)].solid, x);
    for (int i = 0; i < sizeOf(m_scene.fatBodies); ++i)
        if (fresh(m_firstFat + i))
            out.solid[static_cast<std::size_t>(m_firstFat + i)] =
                m_scene.fatBodies[static_cast<std::size_t>(i)].distance(x);
    if (!m_scene.chest.empty()) {
        const Scene::Chest& chest = m_scene.chest.front();
        const std::array<const Ellipsoid*, 3> shells{&chest.inner, &chest.muscle, &chest.outer};
        for (int i = 0; i < 3; ++i)
            if (fresh(m_firstChest + i))
                out.solid[static_cast<std::size_t>(m_firstChest + i)] =
                    shells[static_cast<std::size_t>(i)]->distance(x);
    }

    const auto solid = [&](int index) { return out.solid[static_cast<std::size_t>(index)]; };
    out.appendage = solid(m_firstLobe);
    for (int i = 1; i < sizeOf(m_scene.lobes); ++i)
        out.appendage = filletUnion(out.appendage, solid(m_firstLobe + i), m_scene.lobeFilletMm);
    out.pool = filletUnion(solid(0), out.appendage, m_scene.junctionFilletMm);
    out.vein = kFar;
    for (int i = 0; i < sizeOf(m_scene.veins); ++i) {
        const double vein = solid(m_firstVein + i);
        out.vein = std::min(out.vein, vein);
        out.pool = std::min(out.pool, filletUnion(solid(0), vein, m_scene.junctionFilletMm));
        if (i == 0) out.pool = std::min(out.pool, filletUnion(out.appendage, vein, m_scene.ridgeFilletMm));
    }

    double taken = out.pool;
    out.muscle = out.pool - m_scene.wallMm;
    double heart = out.muscle;
    for (int i = 0; i < sizeOf(m_scene.cavities); ++i) {
        const Cavity& cavity = m_scene.cavities[static_cast<std::size_t>(i)];
        const double own = std::max(solid(m_firstCavity + i), cavity.keepOffMm - taken);
        out.cavity[static_cast<std::size_t>(i)] = own;
        const double wall = solid(m_firstCavity + i) - cavity.wallMm;
        out.muscle = std::min(out.muscle, wall);
        if (cavity.inMediastinum) heart = std::min(heart, wall);
        taken = std::min(taken, own);
    }
    out.mediastinum = heart - m_scene.fatMm;
    for (int i = 0; i < sizeOf(m_scene.fatBodies); ++i)
        out.mediastinum = std::min(out.mediastinum, solid(m_firstFat + i));
    out.bone = kFar;
    out.marrow = kFar;
    for (int i = 0; i < sizeOf(m_scene.bones); ++i) {
        out.bone = std::min(out.bone, solid(m_firstBone + i));
        out.marrow =
            std::min(out.marrow, solid(m_firstBone + i) + m_scene.bones[static_cast<std::size_t>(i)].shellMm);
    }
    out.chestInner = m_scene.chest.empty() ? -kFar : solid(m_firstChest);
    out.chestMuscle = m_scene.chest.empty() ? -kFar : solid(m_firstChest + 1);
    out.chestOuter = m_scene.chest.empty() ? -kFar : solid(m_firstChest + 2);
}

SceneSampler::Mask SceneSampler::relevant(const Sample& sample, Mask mask, double radiusMm) const {
    Mask kept = 0;
    for (int i = 0; i < m_count; ++i)
        if ((mask >> i & 1) != 0 &&
            std::abs(sample.solid[static_cast<std::size_t>(i)]) < kReachMm + kSteepnessFar * radiusMm)
            kept |= Mask{1} << i;
    return kept;
}

bool SceneSampler::isUniform(const Sample& s, double r) const {
    if (!clears(s.pool, r)) return false;
    if (s.pool < 0.0) return true; // blood beats everything else
    for (std::size_t i = 0; i < m_scene.cavities.size(); ++i) {
        if (!clears(s.cavity[i], r)) return false;
        if (s.cavity[i] < 0.0) return true;
    }
    if (!clears(s.muscle, r)) return false;
    if (s.muscle < 0.0) return true;
    if (!m_scene.bones.empty()) {
        if (!clears(s.bone, r) || !clears(s.marrow, r)) return false;
        if (s.bone < 0.0) return true;
        if (!clears(s.bone - kBoneCoverMm, r)) return false;
    }
    if (!clears(s.mediastinum, r)) return false;
    return clears(s.chestInner, r) && clears(s.chestMuscle, r) && clears(s.chestOuter, r);
}

double SceneSampler::boundary(const Sample& s, int index) const {
    switch (index) {
    case 0:
        return s.pool;
    case 1:
        return s.muscle;
    case 2:
        return s.mediastinum;
    case 3:
        return s.bone;
    case 4:
        return s.marrow;
    case 5:
        return s.bone - kBoneCoverMm;
    case 6:
        return s.chestInner;
    case 7:
        return s.chestMuscle;
    case 8:
        return s.chestOuter;
    default:
        return s.cavity[static_cast<std::size_t>(index - 9)];
    }
}

int SceneSampler::nearestBoundary(const Sample& s) const {
    int nearest = 0;
    for (int i = 1; i < 9 + static_cast<int>(m_scene.cavities.size()); ++i)
        if (std::abs(boundary(s, i)) < std::abs(boundary(s, nearest))) nearest = i;
    return nearest;
}

bool SceneSampler::levelIsConstant(const Sample& s, double r) const {
    const double reach = kSteepnessFar * r;
    if (s.pool > reach) return true;
    const double margin = 2.0 * kLevelMarginMm + reach;
    if (s.appendage < margin) return false;
    return s.vein > margin || s.solid[0] > kVeinMixingMm + reach || s.solid[0] < -reach;
}

double SceneSampler::poolHu(const Eigen::Vector3d& x, const Sample& s) const {
    const auto nearness = [](double distance) { return smoothStep(2.0 - distance / kLevelMarginMm); };
    const auto nearer = [](double own, double other) { return smoothStep(0.5 + (other - own) / 2.0); };
    double level = m_scene.levels.atriumHu;
    if (const double share = nearness(s.appendage) * nearer(s.appendage, s.vein); share > 0.0) {
        const double along = m_scene.lobes.front().curve.nearest(x).s;
        level = mix(level, m_scene.levels.atriumHu * m_scene.appendageShare(along), share);
    }
    if (const double share = nearness(s.vein) * nearer(s.vein, s.appendage); share > 0.0)
        level = mix(level, m_scene.veinHu, share * smoothStep(s.solid[0] / kVeinMixingMm));
    return level;
}

double SceneSampler::hu(const Eigen::Vector3d& x, const Sample& s, double ramp) const {
    if (const double blood = covered(s.pool, ramp); blood >= 1.0) return poolHu(x, s);
    const TissueLevels& levels = m_scene.levels;
    double value = levels.lungHu;
    if (s.mediastinum < ramp) value = mix(value, levels.fatHu, covered(s.mediastinum, ramp));
    if (!m_scene.chest.empty()) {
        value = mix(value, levels.softTissueHu, 1.0 - covered(s.chestInner, ramp));
        value = mix(value, levels.fatHu, 1.0 - covered(s.chestMuscle, ramp));
        value = mix(value, -1000.0, 1.0 - covered(s.chestOuter, ramp));
    }
    if (!m_scene.bones.empty()) {
        value = mix(value, levels.softTissueHu, covered(s.bone - kBoneCoverMm, ramp));
        value = mix(value, m_scene.bones.front().shellHu, covered(s.bone, ramp));
        value = mix(value, m_scene.bones.front().marrowHu, covered(s.marrow, ramp));
    }
    value = mix(value, levels.muscleHu, covered(s.muscle, ramp));
    for (std::size_t i = 0; i < m_scene.cavities.size(); ++i)
        value = mix(value, m_scene.cavities[i].hu, covered(s.cavity[i], ramp));
    if (const double blood = covered(s.pool, ramp); blood > 0.0) value = mix(value, poolHu(x, s), blood);
    return value;
}

double Scene::appendage(const Eigen::Vector3d& x) const {
    double value = lobes.front().distance(x);
    for (std::size_t i = 1; i < lobes.size(); ++i)
        value = filletUnion(value, lobes[i].distance(x), lobeFilletMm);
    return value;
}

double Scene::pool(const Eigen::Vector3d& x) const {
    const double body = atrium.distance(x), branch = appendage(x);
    double value = filletUnion(body, branch, junctionFilletMm);
    for (std::size_t i = 0; i < veins.size(); ++i) {
        const double vein = veins[i].distance(x);
        value = std::min(value, filletUnion(body, vein, junctionFilletMm));
        if (i == 0) value = std::min(value, filletUnion(branch, vein, ridgeFilletMm));
    }
    return value;
}

int Scene::cavityAt(const Eigen::Vector3d& x) const {
    const SceneSampler sampler(*this);
    SceneSampler::Sample sample;
    sampler.evaluate(x, sampler.everything(), sample);
    for (std::size_t i = 0; i < cavities.size(); ++i)
        if (sample.cavity[i] < 0.0) return static_cast<int>(i);
    return -1;
}

Tissue Scene::tissueAt(const Eigen::Vector3d& x) const {
    const SceneSampler sampler(*this);
    SceneSampler::Sample s;
    sampler.evaluate(x, sampler.everything(), s);
    if (s.pool < 0.0) return Tissue::Pool;
    for (std::size_t i = 0; i < cavities.size(); ++i)
        if (s.cavity[i] < 0.0) return Tissue::CavityBlood;
    if (s.muscle < 0.0) return Tissue::Muscle;
    if (s.bone < 0.0) return Tissue::Bone;
    if (s.bone < kBoneCoverMm || s.chestInner > 0.0) return Tissue::SoftTissue;
    return s.mediastinum < 0.0 ? Tissue::Fat : Tissue::Lung;
}

double Scene::huAt(const Eigen::Vector3d& x) const {
    const SceneSampler sampler(*this);
    SceneSampler::Sample sample;
    sampler.evaluate(x, sampler.everything(), sample);
    return sampler.hu(x, sample, 1e-6);
}

} // namespace gauge::sample_case
