#include "sample-data/echo/echo_tissue.h"

#include <algorithm>

namespace gauge::sample_case {
namespace {

constexpr float kLungLossPerMm = 0.13f;
constexpr float kBoneLossPerMm = 0.3f;

double covered(double distance, double ramp) {
    return std::clamp(0.5 - distance / ramp, 0.0, 1.0);
}

double mix(double a, double b, double share) {
    return a + (b - a) * share;
}

} // namespace

EchoTissue echoTissue(const Scene& scene, const SceneSampler::Sample& s, const EchoLevels& levels, double ramp) {
    double blood = s.pool;
    for (std::size_t i = 0; i < scene.cavities.size(); ++i)
        blood = std::min(blood, s.cavity[i]);
    double grey = levels.lung;
    grey = mix(grey, levels.fat, covered(s.mediastinum, ramp));
    if (!scene.chest.empty()) grey = mix(grey, levels.softTissue, 1.0 - covered(s.chestInner, ramp));
    grey = mix(grey, levels.bone, covered(s.bone, ramp));
    grey = mix(grey, levels.muscle, covered(s.muscle, ramp));
    grey = mix(grey, levels.blood, covered(blood, ramp));
    EchoTissue tissue{static_cast<float>(grey), 0.0f, static_cast<float>(blood)};
    if (blood > 0.0 && s.muscle > 0.0) {
        if (s.bone < 0.0)
            tissue.lossPerMm = kBoneLossPerMm;
        else if (s.mediastinum > 0.0 && s.chestInner < 0.0)
            tissue.lossPerMm = kLungLossPerMm;
    }
    return tissue;
}

Scene echoScene(const Scene& scene, const EchoLevels& levels) {
    Scene echo = scene;
    echo.levels = {levels.blood, levels.muscle, levels.fat, levels.lung, levels.softTissue};
    echo.veinHu = levels.blood;
    echo.appendageShare = 1.0;
    for (Cavity& cavity : echo.cavities)
        cavity.hu = levels.blood;
    for (Bone& bone : echo.bones)
        bone.shellHu = bone.marrowHu = levels.bone;
    echo.chest.clear();
    return echo;
}

} // namespace gauge::sample_case
