#include "sample-data/fluoro/radiograph.h"

#include "core/parallel/parallel_for.h"
#include "sample-data/random.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace gauge::sample_case {
namespace {

constexpr int kCoarse = 8;
constexpr double kMarchMm = 2.5;
/// The body is looked for this far to either side of the isocentre.
constexpr double kBodyMm = 260.0;
constexpr double kFadeMm = 12.0;
/// Pixels to a block that is looked at as a whole first.
constexpr int kBlock = 8;
/// Defining functions rise at most this fast.
constexpr double kSteepness = 2.2;
constexpr double kLeastStepMm = 0.3;
/// Steps where the medium fades.
constexpr double kFadeStepMm = 1.2;
/// Levels without contrast medium, HU [common practice].
constexpr double kBloodHu = 45.0;

std::size_t pixelIndex(const CArm& arm, int x, int y) {
    return static_cast<std::size_t>(y) * static_cast<std::size_t>(arm.columns) + static_cast<std::size_t>(x);
}

/// The scene without the CT's contrast medium, and without the veins: the scene's run on for 110 mm unbranched, and
/// seen end-on would throw a round shadow that lungs do not show.
Scene plain(const Scene& scene) {
    Scene result = scene;
    result.levels.atriumHu = result.veinHu = result.levels.muscleHu = kBloodHu;
    result.appendageShare = 1.0;
    result.veins.clear();
    for (Cavity& cavity : result.cavities)
        cavity.hu = kBloodHu;
    return result;
}

double smoothStep(double t) {
    t = std::clamp(t, 0.0, 1.0);
    return t * t * (3.0 - 2.0 * t);
}

/// A ball around the appendage's lobes, scene mm.
struct Ball {
    Eigen::Vector3d centre;
    double radius;
};
Ball ballAround(const Scene& scene) {
    Eigen::AlignedBox3d box;
    double widest = 0.0;
    for (const Tube& lobe : scene.lobes)
        for (double s = lobe.curve.firstS(); s <= lobe.curve.lastS() + 0.5; s += 1.0) {
            box.extend(lobe.curve.at(s).point);
            widest = std::max({widest, lobe.semiA(s), lobe.semiB(s)});
        }
    return {box.center(), 0.5 * box.diagonal().norm() + widest + scene.lobeFilletMm};
}

/// Contrast-weighted length inside the appendage along one ray.
class ContrastRay {
public:
    explicit ContrastRay(const Scene& scene) : m_scene(scene), m_mouth(scene.lobes.front().curve.at(0.0)) {}

    double length(const Eigen::Vector3d& from, const Eigen::Vector3d& direction, double begin, double end) const {
        double t = begin, value = m_scene.appendage(from + t * direction), sum = 0.0;
        while (t < end) {
            double step = std::max(kLeastStepMm, std::abs(value) / kSteepness);
            if (value < 0.0 && share(from + t * direction) < 1.0) step = std::min(step, kFadeStepMm);
            const double next = m_scene.appendage(from + (t + step) * direction);
            double inside = 0.0, middle = 0.5;
            if (value < 0.0 && next < 0.0) {
                inside = 1.0;
            } else if ((value < 0.0) != (next < 0.0)) {
                const double crossing = value / (value - next);
                inside = value < 0.0 ? crossing : 1.0 - crossing;
                middle = value < 0.0 ? 0.5 * crossing : 1.0 - 0.5 * inside;
            }
            if (inside > 0.0) sum += inside * step * share(from + (t + middle * step) * direction);
            t += step;
            value = next;
        }
        return sum;
    }

    /// True when the appendage surely lies farther than `marginMm` from the ray.
    bool misses(const Eigen::Vector3d& from, const Eigen::Vector3d& direction, double begin, double end,
                double marginMm) const {
        for (double t = begin; t < end;) {
            const double value = m_scene.appendage(from + t * direction);
            if (value < kSteepness * marginMm) return false;
            t += std::max(0.5, value / kSteepness - marginMm);
        }
        return true;
    }

private:
    double share(const Eigen::Vector3d& x) const {
        return smoothStep(1.0 + (x - m_mouth.point).dot(m_mouth.tangent) / kFadeMm);
    }
    const Scene& m_scene;
    CentreCurve::Frame m_mouth;
};

void blur(std::vector<float>& map, const CArm& arm, double sigma) {
    const int reach = std::max(1, static_cast<int>(std::ceil(3.0 * sigma)));
    std::vector<float> taps;
    float sum = 0.0f;
    for (int i = -reach; i <= reach; ++i)
        sum += taps.emplace_back(static_cast<float>(std::exp(-0.5 * i * i / (sigma * sigma))));
    std::vector<float> pass(map.size());
    for (const bool alongX : {true, false}) {
        for (int y = 0; y < arm.rows; ++y)
            for (int x = 0; x < arm.columns; ++x) {
                float value = 0.0f;
                for (int i = -reach; i <= reach; ++i)
                    value += taps[static_cast<std::size_t>(i + reach)] *
                             (alongX ? map[pixelIndex(arm, std::clamp(x + i, 0, arm.columns - 1), y)]
                                     : map[pixelIndex(arm, x, std::clamp(y + i, 0, arm.rows - 1))]);
                pass[pixelIndex(arm, x, y)] = value / sum;
            }
        map.swap(pass);
    }
}

} // namespace

LineIntegrals backgroundIntegrals(const Scene& scene, const CArm& arm, const RadiographOptions& options) {
    const Scene body = plain(scene);
    const SceneSampler sampler(body);
    const Eigen::Isometry3d sceneFromPatient = scene.patientFromScene.inverse();
    const Eigen::Vector3d source = sceneFromPatient * arm.source().mm;
    const int columns = arm.columns / kCoarse + 2, rows = arm.rows / kCoarse + 2;
    std::vector<double> coarse(static_cast<std::size_t>(columns * rows));
    core::parallelFor(coarse.size(), 16, [&](std::size_t first, std::size_t last) {
        SceneSampler::Sample sample{};
        for (std::size_t at = first; at < last; ++at) {
            const Eigen::Vector2d pixel(static_cast<int>(at) % columns * kCoarse, static_cast<int>(at) / columns * kCoarse);
            const Eigen::Vector3d direction =
                (sceneFromPatient * arm.detectorPoint(pixel).mm - source).normalized();
            double sum = 0.0;
            for (double t = arm.sodMm - kBodyMm; t < arm.sodMm + kBodyMm; t += kMarchMm) {
                const Eigen::Vector3d x = source + t * direction;
                if (!body.chest.empty() && body.chest.front().outer.distance(x) > 0.0) continue;
                sampler.evaluate(x, sampler.everything(), sample);
                sum += kMarchMm * (sampler.hu(x, sample, 2.0) + 1000.0) / 1000.0;
            }
            coarse[at] = options.waterPerMm * sum;
        }
    });
    LineIntegrals fine(static_cast<std::size_t>(arm.columns) * static_cast<std::size_t>(arm.rows));
    for (int y = 0; y < arm.rows; ++y)
        for (int x = 0; x < arm.columns; ++x) {
            const int i = x / kCoarse, j = y / kCoarse;
            const double a = static_cast<double>(x % kCoarse) / kCoarse, b = static_cast<double>(y % kCoarse) / kCoarse;
            const auto at = [&](int di, int dj) { return coarse[static_cast<std::size_t>((j + dj) * columns + i + di)]; };
            fine[pixelIndex(arm, x, y)] = static_cast<float>((1 - b) * ((1 - a) * at(0, 0) + a * at(1, 0)) +
                                                             b * ((1 - a) * at(0, 1) + a * at(1, 1)));
        }
    return fine;
}

LineIntegrals contrastLengths(const Scene& scene, const CArm& arm) {
    LineIntegrals lengths(static_cast<std::size_t>(arm.columns) * static_cast<std::size_t>(arm.rows), 0.0f);
    const Ball ball = ballAround(scene);
    const Eigen::Isometry3d sceneFromPatient = scene.patientFromScene.inverse();
    const Eigen::Vector3d source = sceneFromPatient * arm.source().mm;
    const Eigen::Vector3d towards = ball.centre - source;
    const core::PatientPoint centre = scene.patientFrom(ball.centre);
    const Eigen::Vector2d middle = arm.pixelOf(centre);
    const double reach = 1.05 * ball.radius * arm.magnificationAt(centre) / arm.imagerSpacingMm;
    const ContrastRay ray(scene);
    const auto clipped = [](double value, int end) { return std::clamp(static_cast<int>(std::lround(value)), 0, end); };
    const int x0 = clipped(middle.x() - reach, arm.columns), x1 = clipped(middle.x() + reach, arm.columns);
    const int y0 = clipped(middle.y() - reach, arm.rows), y1 = clipped(middle.y() + reach, arm.rows);
    struct Ray {
        Eigen::Vector3d direction;
        double begin, end; ///< in the ball; nothing when begin >= end
    };
    const auto rayThrough = [&](double x, double y) {
        Ray r;
        r.direction = (sceneFromPatient * arm.detectorPoint(Eigen::Vector2d(x, y)).mm - source).normalized();
        const double along = towards.dot(r.direction);
        const double inside = ball.radius * ball.radius - (towards.squaredNorm() - along * along);
        const double half = inside > 0.0 ? std::sqrt(inside) : 0.0;
        r.begin = along - half;
        r.end = along + half;
        return r;
    };
    const double pixelMm = arm.imagerSpacingMm / arm.magnificationAt(centre);
    for (int by = y0; by < y1; by += kBlock)
        for (int bx = x0; bx < x1; bx += kBlock) {
            const Ray first = rayThrough(bx + 0.5 * (kBlock - 1), by + 0.5 * (kBlock - 1));
            if (ray.misses(source, first.direction, first.begin, first.end, kBlock * pixelMm)) continue;
            for (int y = by; y < std::min(by + kBlock, y1); ++y)
                for (int x = bx; x < std::min(bx + kBlock, x1); ++x) {
                    const Ray r = rayThrough(x, y);
                    lengths[pixelIndex(arm, x, y)] =
                        static_cast<float>(ray.length(source, r.direction, r.begin, r.end));
                }
        }
    return lengths;
}

LineIntegrals catheterLengths(const Catheter& catheter, const CArm& arm) {
    LineIntegrals lengths(static_cast<std::size_t>(arm.columns) * static_cast<std::size_t>(arm.rows), 0.0f);
    const double radius = 0.5 * catheter.outerDiameterMm;
    const Eigen::Vector3d source = arm.source().mm;
    for (std::size_t i = 0; i + 1 < catheter.course.size(); ++i) {
        const Eigen::Vector3d from = catheter.course[i].mm, to = catheter.course[i + 1].mm;
        const Eigen::Vector3d along = (to - from).normalized();
        const Eigen::Vector2d a = arm.pixelOf({from}), b = arm.pixelOf({to});
        const double reach = 1.2 * radius * arm.magnificationAt({from}) / arm.imagerSpacingMm + 2.0;
        const Eigen::Vector2d low = a.cwiseMin(b).array() - reach, high = a.cwiseMax(b).array() + reach;
        for (int y = std::max(0, static_cast<int>(low.y())); y <= std::min<double>(arm.rows - 1, high.y()); ++y)
            for (int x = std::max(0, static_cast<int>(low.x())); x <= std::min<double>(arm.columns - 1, high.x()); ++x) {
                const Eigen::Vector3d ray = (arm.detectorPoint(Eigen::Vector2d(x, y)).mm - source).normalized();
                // Nearest approach of the ray to the segment's line, where it belongs to this segment.
                const Eigen::Vector3d across = ray.cross(along);
                const double sine = across.norm();
                if (sine < 0.2) continue;
                const Eigen::Vector3d gap = from - source;
                const double distance = std::abs(gap.dot(across)) / sine;
                const double at = (gap.cross(ray)).dot(across) / (sine * sine);
                if (distance >= radius || at < -0.3 || at > (to - from).norm() + 0.3) continue;
                float& length = lengths[pixelIndex(arm, x, y)];
                length = std::max(length, static_cast<float>(2.0 * std::sqrt(radius * radius - distance * distance) / sine));
            }
    }
    return lengths;
}

Picture exposeFrame(const LineIntegrals& background, const LineIntegrals& contrast, const LineIntegrals& catheter,
                    double filling, const CArm& arm, const RadiographOptions& options, int frame) {
    const float clearest = *std::min_element(background.begin(), background.end());
    std::vector<float> light(background.size());
    Random random(options.seed, static_cast<std::uint64_t>(frame));
    for (std::size_t i = 0; i < light.size(); ++i)
        light[i] = static_cast<float>(std::exp(clearest - background[i] - options.contrastPerMm * filling * contrast[i] -
                                               options.catheterPerMm * catheter[i]));
    blur(light, arm, options.blurPixels);
    for (float& value : light) {
        value += static_cast<float>(options.scatterShare);
        value += static_cast<float>(std::sqrt(value / options.photons) * random.normal());
        value = static_cast<float>(options.brightestGrey +
                                   options.greyPerUnit * std::log(std::max(value, 1e-3f) / (1.0 + options.scatterShare)));
    }
    Picture picture(arm.columns, arm.rows, 1);
    for (int y = 0; y < arm.rows; ++y)
        for (int x = 0; x < arm.columns; ++x)
            picture.set(x, y, Colour::grey(static_cast<std::uint8_t>(
                                  std::clamp(std::lround(light[pixelIndex(arm, x, y)]), 0l, 255l))));
    return picture;
}

} // namespace gauge::sample_case
