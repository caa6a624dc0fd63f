#include "core/fluoro/silhouettes.h"

#include <algorithm>
#include <cmath>

namespace gauge::core {
namespace {

constexpr float kSilhouettePixelMm = 1.0f;

/// A picture of single bits, large enough for the appendage and nothing more.
class BitPicture {
public:
    BitPicture(const Eigen::Vector2f& lowest, const Eigen::Vector2f& highest)
        : m_origin(lowest.array() - kSilhouettePixelMm), m_columns(static_cast<int>((highest.x() - lowest.x()) / kSilhouettePixelMm) + 3),
          m_rows(static_cast<int>((highest.y() - lowest.y()) / kSilhouettePixelMm) + 3),
          m_seen(static_cast<std::size_t>(m_columns) * static_cast<std::size_t>(m_rows)) {}

    /// Marks the pixels whose centre the triangle covers with `bit`.
    void fill(const Eigen::Vector2f& a, const Eigen::Vector2f& b, const Eigen::Vector2f& c, std::uint8_t bit) {
        const Eigen::Vector2f p = (a - m_origin) / kSilhouettePixelMm, q = (b - m_origin) / kSilhouettePixelMm, r = (c - m_origin) / kSilhouettePixelMm;
        const int left = std::max(0, static_cast<int>(std::ceil(std::min({p.x(), q.x(), r.x()})))),
                  right = std::min(m_columns - 1, static_cast<int>(std::floor(std::max({p.x(), q.x(), r.x()})))),
                  top = std::max(0, static_cast<int>(std::ceil(std::min({p.y(), q.y(), r.y()})))),
                  bottom = std::min(m_rows - 1, static_cast<int>(std::floor(std::max({p.y(), q.y(), r.y()}))));
        for (int y = top; y <= bottom; ++y)
            for (int x = left; x <= right; ++x)
                if (covers(p, q, r, {static_cast<float>(x), static_cast<float>(y)})) m_seen[index(x, y)] |= bit;
    }

    double shareOfFirstInBoth() const {
        const auto first = std::count_if(m_seen.begin(), m_seen.end(), [](auto s) { return (s & 1) != 0; });
        const auto both = std::count(m_seen.begin(), m_seen.end(), 3);
        return first == 0 ? 0.0 : static_cast<double>(both) / static_cast<double>(first);
    }

private:
    std::size_t index(int x, int y) const {
        return static_cast<std::size_t>(y) * static_cast<std::size_t>(m_columns) + static_cast<std::size_t>(x);
    }
    static float side(const Eigen::Vector2f& a, const Eigen::Vector2f& b, const Eigen::Vector2f& p) {
        return (b.x() - a.x()) * (p.y() - a.y()) - (b.y() - a.y()) * (p.x() - a.x());
    }
    /// Either way round: a silhouette has front and back.
    static bool covers(const Eigen::Vector2f& a, const Eigen::Vector2f& b, const Eigen::Vector2f& c, const Eigen::Vector2f& p) {
        const float s = side(a, b, p), t = side(b, c, p), u = side(c, a, p);
        return (s >= 0.0f && t >= 0.0f && u >= 0.0f) || (s <= 0.0f && t <= 0.0f && u <= 0.0f);
    }

    Eigen::Vector2f m_origin;
    int m_columns, m_rows;
    std::vector<std::uint8_t> m_seen;
};

} // namespace

Result<Silhouettes> Silhouettes::make(const SurfaceMesh& mesh, std::span<const std::uint8_t> beyondOstium,
                                      const Eigen::Matrix3d& roomFromPatient) {
    if (beyondOstium.size() != mesh.points.size())
        return failure(ErrorCode::InvalidArgument, "Cannot make silhouettes: " + std::to_string(beyondOstium.size()) +
                                                       " sides of the ostium were given for " +
                                                       std::to_string(mesh.points.size()) + " points of the surface.");
    Silhouettes out;
    const Eigen::Matrix3f turn = roomFromPatient.cast<float>();
    for (const auto& p : mesh.points)
        out.m_points.push_back(turn * p);
    for (const auto& triangle : mesh.triangles) {
        const bool beyond = std::all_of(triangle.begin(), triangle.end(), [&](auto i) { return beyondOstium[i] != 0; });
        (beyond ? out.m_appendage : out.m_atrium).push_back(triangle);
    }
    if (out.m_appendage.empty() || out.m_atrium.empty())
        return failure(ErrorCode::NothingUsable, std::string("Cannot make silhouettes: the surface has no part ") +
                                                     (out.m_appendage.empty() ? "beyond the ostium." : "in the atrium."));
    return out;
}

double Silhouettes::hiddenShare(const CArmAngles& angles) const {
    const PictureAxes axes = pictureAxes(angles);
    const Eigen::Vector3f right = axes.right.mm.cast<float>(), up = axes.up.mm.cast<float>();
    std::vector<Eigen::Vector2f> flat;
    flat.reserve(m_points.size());
    for (const auto& p : m_points)
        flat.emplace_back(p.dot(right), p.dot(up));
    Eigen::Vector2f lowest = flat[m_appendage.front()[0]], highest = lowest;
    for (const auto& triangle : m_appendage)
        for (const auto i : triangle) {
            lowest = lowest.cwiseMin(flat[i]);
            highest = highest.cwiseMax(flat[i]);
        }
    BitPicture picture(lowest, highest);
    for (const auto& [a, b, c] : m_appendage)
        picture.fill(flat[a], flat[b], flat[c], 1);
    for (const auto& [a, b, c] : m_atrium)
        picture.fill(flat[a], flat[b], flat[c], 2);
    return picture.shareOfFirstInBoth();
}

} // namespace gauge::core
