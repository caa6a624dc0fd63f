#include "sample-data/echo/b_mode.h"

#include "sample-data/blur_kernel.h"
#include "sample-data/random.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace gauge::sample_case {
namespace {

constexpr double kDepthStepMm = 0.35;
constexpr double kBeamStepDeg = 0.6;
/// Pixels to a block of the first level when a scene is cut.
constexpr int kBlock = 16;
/// Bright rim of tissue where blood ends: its height as a share and its depth.
constexpr float kRimShare = 0.8f;
constexpr float kRimMm = 1.1f;
/// Grey at the apex, where the transducer rings.
constexpr float kRingGrey = 150.0f;
constexpr float kRingMm = 2.6f;

/// Gaussian taps over whole steps, their sum 1.
std::vector<float> taps(double sigma) {
    const int reach = std::max(1, static_cast<int>(std::ceil(3.0 * sigma)));
    std::vector<float> values;
    double sum = 0.0;
    for (int i = -reach; i <= reach; ++i) {
        values.push_back(static_cast<float>(std::exp(-0.5 * i * i / (sigma * sigma))));
        sum += values.back();
    }
    for (float& value : values)
        value = static_cast<float>(value / sum);
    return values;
}

/// Blurs rows and columns of a map of `width` x `height`; beyond the border the border's values go on.
void blur(std::vector<float>& map, int width, int height, const std::vector<float>& alongX,
          const std::vector<float>& alongY) {
    const auto at = [&](int x, int y) { return static_cast<std::size_t>(y) * static_cast<std::size_t>(width) + static_cast<std::size_t>(x); };
    std::vector<float> pass(map.size());
    const int rx = static_cast<int>(alongX.size()) / 2, ry = static_cast<int>(alongY.size()) / 2;
    for (int y = 0; y < height; ++y)
        for (int x = 0; x < width; ++x) {
            float sum = 0.0f;
            for (int i = -rx; i <= rx; ++i)
                sum += alongX[static_cast<std::size_t>(i + rx)] * map[at(std::clamp(x + i, 0, width - 1), y)];
            pass[at(x, y)] = sum;
        }
    std::fill(map.begin(), map.end(), 0.0f);
    for (int y = 0; y < height; ++y)
        for (int i = -ry; i <= ry; ++i) {
            const float weight = alongY[static_cast<std::size_t>(i + ry)];
            const float* source = &pass[at(0, std::clamp(y + i, 0, height - 1))];
            float* row = &map[at(0, y)];
            for (int x = 0; x < width; ++x)
                row[x] += weight * source[x];
        }
}

/// Fills a map by dividing blocks until each holds one tissue.
class Cutter {
public:
    Cutter(const Scene& scene, const EchoLevels& levels, const EchoPlane& plane, int x0, int y0, int width,
           int height, std::vector<EchoTissue>& map)
        : m_scene(scene), m_sampler(scene), m_levels(levels), m_width(width), m_height(height), m_map(map) {
        const Eigen::Isometry3d sceneFromPatient = scene.patientFromScene.inverse();
        const double step = plane.fan.mmPerPixel;
        m_origin = sceneFromPatient * plane.patientFromPixel(Eigen::Vector2d(x0, y0)).mm;
        m_right = sceneFromPatient.linear() * plane.lateral().mm * step;
        m_down = sceneFromPatient.linear() * plane.probe.beam.mm * step;
        m_step = step;
    }
    void run() {
        SceneSampler::Sample sample{};
        for (int y = 0; y < m_height; y += kBlock)
            for (int x = 0; x < m_width; x += kBlock)
                divide(x, y, kBlock, m_sampler.everything(), sample);
    }

private:
    Eigen::Vector3d place(int x, int y, int size) const {
        const double half = 0.5 * (size - 1);
        return m_origin + (x + half) * m_right + (y + half) * m_down;
    }
    void divide(int x, int y, int size, SceneSampler::Mask mask, SceneSampler::Sample& sample) {
        if (x >= m_width || y >= m_height) return;
        m_sampler.evaluate(place(x, y, size), mask, sample);
        const double radius = 0.5 * std::numbers::sqrt2 * size * m_step;
        // The rim follows the distance to blood, so blocks near it are divided too.
        if (size == 1 || m_sampler.isUniform(sample, radius + 0.5 * m_step)) {
            const EchoTissue tissue = echoTissue(m_scene, sample, m_levels, m_step);
            if (size <= 2 || tissue.edge < 0.0f || tissue.edge > 3.0f * kRimMm + static_cast<float>(radius)) {
                paint(x, y, size, tissue);
                return;
            }
        }
        const SceneSampler::Mask kept = m_sampler.relevant(sample, mask, radius);
        for (int c = 0; c < 4; ++c)
            divide(x + (c & 1) * size / 2, y + (c >> 1) * size / 2, size / 2, kept, sample);
    }
    void paint(int x, int y, int size, const EchoTissue& tissue) {
        for (int row = y; row < std::min(y + size, m_height); ++row)
            std::fill_n(m_map.begin() + static_cast<std::ptrdiff_t>(row) * m_width + x,
                        std::min(size, m_width - x), tissue);
    }

    const Scene& m_scene;
    SceneSampler m_sampler;
    EchoLevels m_levels;
    int m_width, m_height;
    std::vector<EchoTissue>& m_map;
    Eigen::Vector3d m_origin, m_right, m_down;
    double m_step = 0.0;
};

} // namespace

BMode::BMode(const EchoPlane& plane, const BModeOptions& options) : m_plane(plane), m_options(options) {
    const FanLayout& fan = plane.fan;
    m_depths = static_cast<int>(std::ceil(fan.depthMm / kDepthStepMm)) + 2;
    m_beams = static_cast<int>(std::ceil(2.0 * fan.halfAngleDeg / kBeamStepDeg)) + 2;
    const double half = fan.halfAngleDeg * std::numbers::pi / 180.0, reach = fan.depthMm / fan.mmPerPixel;
    m_x0 = std::max(0, static_cast<int>(std::floor(fan.apexPixel.x() - reach * std::sin(half))));
    m_y0 = std::max(0, static_cast<int>(std::floor(fan.apexPixel.y())));
    m_width = std::min(fan.columns, static_cast<int>(std::ceil(fan.apexPixel.x() + reach * std::sin(half))) + 1) - m_x0;
    m_height = std::min(fan.rows, static_cast<int>(std::ceil(fan.apexPixel.y() + reach)) + 1) - m_y0;
    for (int y = 0; y < m_height; ++y)
        for (int x = 0; x < m_width; ++x) {
            const Eigen::Vector2d pixel(m_x0 + x, m_y0 + y);
            if (!plane.inFan(pixel)) continue;
            const Eigen::Vector2d mm = fan.mmPerPixel * (pixel - fan.apexPixel);
            const double degrees = std::atan2(mm.x(), mm.y()) * 180.0 / std::numbers::pi;
            m_places.push_back({y * m_width + x, static_cast<float>((degrees + fan.halfAngleDeg) / kBeamStepDeg),
                                static_cast<float>(mm.norm() / kDepthStepMm)});
        }
    m_still = speckleField(0);
}

/// Blurred complex noise of unit mean power.
BMode::Field BMode::speckleField(std::uint64_t stream) const {
    Random random(m_options.seed, stream);
    const auto count = static_cast<std::size_t>(m_beams) * static_cast<std::size_t>(m_depths);
    Field field{std::vector<float>(count), std::vector<float>(count)};
    const std::vector<float> along = taps(gaussianSigmaFromFwhm(m_options.speckleAlongMm) / kDepthStepMm);
    const std::vector<float> across = taps(gaussianSigmaFromFwhm(m_options.speckleAcrossDeg) / kBeamStepDeg);
    double power = 0.5;
    for (const auto* kernel : {&along, &across}) {
        double squares = 0.0;
        for (const float tap : *kernel)
            squares += static_cast<double>(tap) * tap;
        power /= squares;
    }
    for (std::vector<float>* part : {&field.re, &field.im}) {
        for (float& value : *part)
            value = static_cast<float>(random.normal() * std::sqrt(power));
        blur(*part, m_depths, m_beams, along, across); // rows: one beam each
    }
    return field;
}

/// Factors of mean 1 over beams and depths.
std::vector<float> BMode::speckle(int frame) const {
    const Field fresh = speckleField(1 + static_cast<std::uint64_t>(frame));
    const auto moves = static_cast<float>(std::sqrt(m_options.speckleMoves));
    const auto stays = static_cast<float>(std::sqrt(1.0 - m_options.speckleMoves));
    const auto share = static_cast<float>(m_options.speckleShare);
    // Mean of a Rayleigh amplitude of unit power.
    const auto scale = static_cast<float>(2.0 / std::sqrt(std::numbers::pi));
    std::vector<float> factor(fresh.re.size());
    for (std::size_t i = 0; i < factor.size(); ++i) {
        const float re = stays * m_still.re[i] + moves * fresh.re[i];
        const float im = stays * m_still.im[i] + moves * fresh.im[i];
        factor[i] = 1.0f - share + share * scale * std::sqrt(re * re + im * im);
    }
    return factor;
}

void BMode::cut(const Scene& scene, std::vector<EchoTissue>& map) const {
    Cutter(scene, m_options.levels, m_plane, m_x0, m_y0, m_width, m_height, map).run();
}

/// Share of the beam that is left, over beams and depths.
std::vector<float> BMode::transmission(const std::vector<EchoTissue>& map) const {
    const FanLayout& fan = m_plane.fan;
    std::vector<float> left(static_cast<std::size_t>(m_beams) * static_cast<std::size_t>(m_depths), 1.0f);
    for (int beam = 0; beam < m_beams; ++beam) {
        const double angle = (beam * kBeamStepDeg - fan.halfAngleDeg) * std::numbers::pi / 180.0;
        float share = 1.0f;
        for (int depth = 0; depth < m_depths; ++depth) {
            const double pixels = depth * kDepthStepMm / fan.mmPerPixel;
            const int x = std::clamp(static_cast<int>(std::lround(fan.apexPixel.x() + pixels * std::sin(angle))) - m_x0, 0, m_width - 1);
            const int y = std::clamp(static_cast<int>(std::lround(fan.apexPixel.y() + pixels * std::cos(angle))) - m_y0, 0, m_height - 1);
            share *= 1.0f - static_cast<float>(kDepthStepMm) * map[static_cast<std::size_t>(y * m_width + x)].lossPerMm;
            left[static_cast<std::size_t>(beam * m_depths + depth)] = share;
        }
    }
    blur(left, m_depths, m_beams, taps(1.5), taps(1.2));
    return left;
}

void BMode::draw(const Scene& scene, int frame, Picture& picture) const {
    std::vector<EchoTissue> map(static_cast<std::size_t>(m_width) * static_cast<std::size_t>(m_height));
    cut(scene, map);
    std::vector<float> grey(map.size());
    const auto blood = static_cast<float>(m_options.levels.blood);
    for (std::size_t i = 0; i < map.size(); ++i) {
        const float outside = std::max(map[i].edge, 0.0f) / kRimMm;
        // The rim is tissue's alone: blood beside it stays as dark as it is.
        grey[i] = blood + (map[i].grey - blood) * (1.0f + kRimShare * std::exp(-outside));
    }
    const double sigma = gaussianSigmaFromFwhm(m_options.blurFwhmMm) / m_plane.fan.mmPerPixel;
    blur(grey, m_width, m_height, taps(sigma), taps(sigma));

    const std::vector<float> left = transmission(map), factor = speckle(frame);
    const auto atPolar = [&](const std::vector<float>& values, const Place& place) {
        const auto beam = static_cast<std::size_t>(place.beam), depth = static_cast<std::size_t>(place.depth);
        const float b = place.beam - static_cast<float>(beam), d = place.depth - static_cast<float>(depth);
        const float* first = &values[beam * static_cast<std::size_t>(m_depths) + depth];
        const float* next = first + m_depths;
        return (1 - b) * ((1 - d) * first[0] + d * first[1]) + b * ((1 - d) * next[0] + d * next[1]);
    };
    for (const Place& place : m_places) {
        const float depthMm = place.depth * static_cast<float>(kDepthStepMm);
        const float far = 1.08f - 0.0024f * depthMm; // gain is a little short in the depth
        const float ring = kRingGrey * std::exp(-depthMm / kRingMm);
        const float value = (grey[static_cast<std::size_t>(place.pixel)] * atPolar(left, place) * far + ring) * atPolar(factor, place);
        picture.set(m_x0 + place.pixel % m_width, m_y0 + place.pixel / m_width,
                    Colour::grey(static_cast<std::uint8_t>(std::clamp(std::lround(value), 0l, 255l))));
    }
}

} // namespace gauge::sample_case
