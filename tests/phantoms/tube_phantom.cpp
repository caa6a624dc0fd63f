#include "tests/phantoms/tube_phantom.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <vector>

namespace gauge::tests {
namespace {

constexpr double kStepMm = 0.1;

/// Blurred values on a fine grid over the cross-section.
class BlurredSection {
public:
    BlurredSection(const TubeShape& s, double halfMm) : m_half(halfMm), m_side(2 * static_cast<int>(halfMm / kStepMm) + 1) {
        std::vector<double> v(static_cast<std::size_t>(m_side) * static_cast<std::size_t>(m_side));
        for (int y = 0; y < m_side; ++y)
            for (int x = 0; x < m_side; ++x)
                v[index(x, y)] = mean(s, position(x), position(y));
        m_values = blurred(blurred(v, s.blurFwhmMm / 2.3548, 1), s.blurFwhmMm / 2.3548, m_side);
    }
    double at(double a, double b) const {
        const double x = std::clamp((a + m_half) / kStepMm, 0.0, m_side - 1.001);
        const double y = std::clamp((b + m_half) / kStepMm, 0.0, m_side - 1.001);
        const int i = static_cast<int>(x), j = static_cast<int>(y);
        const double p = x - i, q = y - j;
        return (1 - q) * ((1 - p) * m_values[index(i, j)] + p * m_values[index(i + 1, j)]) +
               q * ((1 - p) * m_values[index(i, j + 1)] + p * m_values[index(i + 1, j + 1)]);
    }

private:
    std::size_t index(int x, int y) const { return static_cast<std::size_t>(y) * static_cast<std::size_t>(m_side) + static_cast<std::size_t>(x); }
    double position(int i) const { return i * kStepMm - m_half; }
    static double level(const TubeShape& s, double x, double y) {
        const double in = std::hypot(x / s.semiLongMm, y / s.semiShortMm);
        if (in <= 1.0)
            return s.bloodHu;
        // Wall of about even thickness: an ellipse whose semi-axes are longer by it.
        return std::hypot(x / (s.semiLongMm + s.wallMm), y / (s.semiShortMm + s.wallMm)) <= 1.0 ? s.wallHu : s.outsideHu;
    }
    /// Mean over the grid cell where a border crosses it.
    static double mean(const TubeShape& s, double x, double y) {
        constexpr int kSub = 5;
        double sum = 0.0;
        for (int j = 0; j < kSub; ++j)
            for (int i = 0; i < kSub; ++i)
                sum += level(s, x + ((i + 0.5) / kSub - 0.5) * kStepMm, y + ((j + 0.5) / kSub - 0.5) * kStepMm);
        return sum / (kSub * kSub);
    }
    std::vector<double> blurred(const std::vector<double>& v, double sigmaMm, std::ptrdiff_t stride) const {
        const double sigma = sigmaMm / kStepMm;
        const int reach = static_cast<int>(std::ceil(4 * sigma));
        std::vector<double> k;
        double total = 0.0;
        for (int d = -reach; d <= reach; ++d) {
            k.push_back(std::exp(-0.5 * d * d / (sigma * sigma)));
            total += k.back();
        }
        std::vector<double> out(v.size());
        for (int y = 0; y < m_side; ++y)
            for (int x = 0; x < m_side; ++x) {
                const int along = stride == 1 ? x : y;
                double sum = 0.0;
                for (int d = -reach; d <= reach; ++d) {
                    const int held = std::clamp(along + d, 0, m_side - 1) - along;
                    sum += k[static_cast<std::size_t>(d + reach)] *
                           v[static_cast<std::size_t>(static_cast<std::ptrdiff_t>(index(x, y)) + held * stride)];
                }
                out[index(x, y)] = sum / total;
            }
        return out;
    }

    double m_half;
    int m_side;
    std::vector<double> m_values;
};

} // namespace

Tube makeTube(const TubeShape& shape, std::mt19937_64& random) {
    std::normal_distribution<double> normal;
    std::uniform_real_distribution<double> unit;
    Eigen::Quaterniond turn(normal(random), normal(random), normal(random), normal(random));
    turn.normalize();
    const Eigen::Matrix3d axes = turn.toRotationMatrix();
    const Eigen::Vector3d center = shape.spacingMm * (shape.sizeVoxels / 2) +
                                   shape.spacingMm.cwiseProduct(Eigen::Vector3d(unit(random), unit(random), unit(random)));

    const BlurredSection field(shape, shape.spacingMm.maxCoeff() * shape.sizeVoxels);
    std::vector<std::int16_t> voxels;
    voxels.reserve(static_cast<std::size_t>(shape.sizeVoxels) * static_cast<std::size_t>(shape.sizeVoxels) * static_cast<std::size_t>(shape.sizeVoxels));
    for (int k = 0; k < shape.sizeVoxels; ++k)
        for (int j = 0; j < shape.sizeVoxels; ++j)
            for (int i = 0; i < shape.sizeVoxels; ++i) {
                const Eigen::Vector3d p = axes.transpose() * (shape.spacingMm.cwiseProduct(Eigen::Vector3d(i, j, k)) - center);
                voxels.push_back(static_cast<std::int16_t>(
                    std::lround(field.at(p.x(), p.y()) + shape.noiseHu * normal(random))));
            }
    Eigen::Affine3d affine = Eigen::Affine3d::Identity();
    affine.linear() = shape.spacingMm.asDiagonal();
    Tube tube;
    tube.volume = *core::Volume::make(Eigen::Vector3i::Constant(shape.sizeVoxels), std::move(voxels), affine,
                                      core::VoxelQuantity::HounsfieldUnits, "");
    tube.section = {{center}, {axes.col(0)}, {axes.col(1)}, {axes.col(2)}};
    return tube;
}

} // namespace gauge::tests
