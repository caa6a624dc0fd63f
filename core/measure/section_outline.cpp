#include "core/measure/section_outline.h"

#include "core/geometry/planar_contour.h"
#include "core/measure/marching_squares.h"
#include "core/volume/section_image.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <string>

namespace gauge::core {
namespace {

constexpr double kPixelMm = 0.3;
constexpr double kSearchMm = 2.0;
constexpr double kInsideDepthMm = 1.2;

/// A square picture of the section about the origin.
struct Field {
    SectionImage image;
    int side = 0;

    std::size_t index(int x, int y) const {
        return static_cast<std::size_t>(y) * static_cast<std::size_t>(side) + static_cast<std::size_t>(x);
    }
    bool onBorder(int x, int y) const { return x == 0 || y == 0 || x == side - 1 || y == side - 1; }
};

using Mask = std::vector<std::uint8_t>;

/// 1-2-1 mean of three rows of pixels, pixel by pixel; a place outside the volume keeps its mark.
void mixRows(const float* before, const float* here, const float* after, float* out, int count) {
    for (int x = 0; x < count; ++x) {
        const float a = before[x], b = here[x], c = after[x];
        const bool marked = (a == kOutsideVolume) | (b == kOutsideVolume) | (c == kOutsideVolume);
        const float mixed = 0.25f * (a + 2.0f * b + c);
        out[x] = marked ? b : mixed;
    }
}

/// 1-2-1 smoothing along both axes: enough to calm single voxels, too little to move a border. The outermost pixels
/// count twice at the field's border.
void calm(Field& field) {
    const int side = field.side;
    std::vector<float>& v = field.image.values;
    std::vector<float> rowwise(v.size()), framed(static_cast<std::size_t>(side) + 2);
    for (int y = 0; y < side; ++y) {
        const float* row = v.data() + field.index(0, y);
        std::copy(row, row + side, framed.begin() + 1);
        framed.front() = row[0];
        framed.back() = row[side - 1];
        mixRows(framed.data(), framed.data() + 1, framed.data() + 2, rowwise.data() + field.index(0, y), side);
    }
    const auto rowAt = [&](int y) { return rowwise.data() + field.index(0, std::clamp(y, 0, side - 1)); };
    for (int y = 0; y < side; ++y)
        mixRows(rowAt(y - 1), rowAt(y), rowAt(y + 1), v.data() + field.index(0, y), side);
}

Field fieldOf(const Volume& volume, const SectionFrame& frame, double reachMm) {
    Field field;
    field.side = 2 * static_cast<int>(std::ceil(reachMm / kPixelMm)) + 1;
    field.image = cutSection(volume, SectionGrid{frame, field.side, field.side, kPixelMm});
    calm(field);
    return field;
}

/// Flood by the four neighbours; returns whether the border of the field was reached.
bool flood(const Field& field, const Mask& allowed, std::size_t start, Mask& filled) {
    filled.assign(allowed.size(), 0);
    std::vector<std::size_t> stack{start};
    filled[start] = 1;
    bool open = false;
    const auto side = static_cast<std::size_t>(field.side);
    while (!stack.empty()) {
        const std::size_t i = stack.back();
        stack.pop_back();
        const int x = static_cast<int>(i % side), y = static_cast<int>(i / side);
        if (field.onBorder(x, y)) {
            open = true;
            continue;
        }
        for (const std::size_t n : {i - 1, i + 1, i - side, i + side}) {
            if (allowed[n] && !filled[n]) {
                filled[n] = 1;
                stack.push_back(n);
            }
        }
    }
    return open;
}

/// The pixels of a mask and one around them, cut to the field; empty when x1 < x0.
struct Window {
    int x0, y0, x1, y1;
};

Window windowOf(const Field& field, const Mask& mask) {
    const int side = field.side;
    Window w{side, side, -1, -1};
    for (int y = 0; y < side; ++y) {
        const auto row = mask.begin() + static_cast<std::ptrdiff_t>(y) * side;
        const auto first = std::find_if(row, row + side, [](std::uint8_t m) { return m != 0; });
        if (first == row + side)
            continue;
        int last = side - 1;
        while (row[last] == 0)
            --last;
        w = {std::min(w.x0, static_cast<int>(first - row)), std::min(w.y0, y), std::max(w.x1, last), y};
    }
    return {std::max(w.x0 - 1, 0), std::max(w.y0 - 1, 0), std::min(w.x1 + 1, side - 1), std::min(w.y1 + 1, side - 1)};
}

constexpr float kStraightStep = 0.96f, kDiagonalStep = 1.36f;

/// Lowers a row of distances by those of the row beside it, whose ends reach one further.
void lowerByRow(float* row, const float* beside, int count) {
    for (int x = 0; x < count; ++x)
        row[x] = std::min(std::min(row[x], beside[x] + kStraightStep),
                          std::min(beside[x - 1], beside[x + 1]) + kDiagonalStep);
}

/// City-block-and-diagonal (3-4 chamfer) distance to the background in pixels, within 6 % of Euclid. Pixels beyond the
/// field count as mask. Worked out in the mask's window; around it lies background.
std::vector<float> insideDistance(const Field& field, const Mask& mask) {
    constexpr float kFarPixels = 1e6f;
    std::vector<float> d(mask.size(), 0.0f);
    const Window w = windowOf(field, mask);
    if (w.x1 < w.x0)
        return d;
    const int columns = w.x1 - w.x0 + 1, rows = w.y1 - w.y0 + 1, stride = columns + 2;
    std::vector<float> work(static_cast<std::size_t>(stride) * static_cast<std::size_t>(rows + 2), kFarPixels);
    const auto rowAt = [&](int y) { return work.data() + (y + 1) * stride + 1; };
    for (int y = 0; y < rows; ++y) {
        float* row = rowAt(y);
        const std::uint8_t* in = mask.data() + field.index(w.x0, w.y0 + y);
        for (int x = 0; x < columns; ++x)
            row[x] = in[x] ? kFarPixels : 0.0f;
        lowerByRow(row, rowAt(y - 1), columns);
        for (int x = 1; x < columns; ++x)
            row[x] = std::min(row[x], row[x - 1] + kStraightStep);
    }
    for (int y = rows - 1; y >= 0; --y) {
        float* row = rowAt(y);
        lowerByRow(row, rowAt(y + 1), columns);
        for (int x = columns - 2; x >= 0; --x)
            row[x] = std::min(row[x], row[x + 1] + kStraightStep);
        std::copy(row, row + columns, d.data() + field.index(w.x0, w.y0 + y));
    }
    return d;
}

/// Index of the blood pixel nearest to the middle of the field, within the search distance.
std::ptrdiff_t startPixel(const Field& field, const Mask& blood) {
    const int middle = field.side / 2, reach = static_cast<int>(kSearchMm / kPixelMm);
    std::ptrdiff_t best = -1;
    int bestDistance = reach * reach + 1;
    for (int y = middle - reach; y <= middle + reach; ++y)
        for (int x = middle - reach; x <= middle + reach; ++x) {
            const int distance = (x - middle) * (x - middle) + (y - middle) * (y - middle);
            if (distance < bestDistance && blood[field.index(x, y)]) {
                bestDistance = distance;
                best = static_cast<std::ptrdiff_t>(field.index(x, y));
            }
        }
    return best;
}

/// Cuts thin bridges: keeps what can be reached from `start` through places at least `radius` pixels inside, grown
/// back within the mask. A blob that is thin at the start is left as it is.
void cutBridges(const Field& field, Mask& blob, std::size_t start, float radius) {
    const auto depth = insideDistance(field, blob);
    Mask core(blob.size());
    for (std::size_t i = 0; i < blob.size(); ++i)
        core[i] = depth[i] > radius;
    // The start climbs to a place deep enough.
    const auto side = static_cast<std::size_t>(field.side);
    std::size_t at = start;
    for (;;) {
        std::size_t next = at;
        for (const std::size_t n : {at - 1, at + 1, at - side, at + side, at - side - 1, at - side + 1, at + side - 1,
                                    at + side + 1})
            if (depth[n] > depth[next])
                next = n;
        if (next == at)
            break;
        at = next;
    }
    if (!core[at])
        return;
    Mask kept;
    flood(field, core, at, kept);
    // Grow back to the border: each pass adds one ring.
    const int rings = static_cast<int>(std::ceil(radius)) + 1;
    for (int ring = 0; ring < rings; ++ring) {
        Mask grown = kept;
        for (int y = 1; y < field.side - 1; ++y)
            for (int x = 1; x < field.side - 1; ++x) {
                const std::size_t i = field.index(x, y);
                if (blob[i] && !kept[i] &&
                    (kept[i - 1] || kept[i + 1] || kept[i - side] || kept[i + side]))
                    grown[i] = 1;
            }
        kept.swap(grown);
    }
    blob.swap(kept);
}

/// Values for contouring: the picture where it belongs to the blob or borders on it, low elsewhere.
std::vector<float> isolated(const Field& field, const Mask& blob, double level) {
    std::vector<float> values(blob.size(), static_cast<float>(level - 1000.0));
    const auto side = static_cast<std::size_t>(field.side);
    for (int y = 1; y < field.side - 1; ++y)
        for (int x = 1; x < field.side - 1; ++x) {
            const std::size_t i = field.index(x, y);
            const float v = field.image.values[i];
            if (blob[i])
                values[i] = std::max(v, static_cast<float>(level) + 1e-3f);
            else if (blob[i - 1] || blob[i + 1] || blob[i - side] || blob[i + side])
                values[i] = std::min(v, static_cast<float>(level) - 1e-3f);
        }
    return values;
}

} // namespace

Result<Outline> traceOutline(const Volume& volume, const SectionFrame& frame, const OutlineOptions& options) {
    for (double reach = options.firstReachMm;; reach = std::min(2.0 * reach, options.greatestReachMm)) {
        const Field field = fieldOf(volume, frame, reach);
        Mask blood(field.image.values.size());
        for (std::size_t i = 0; i < blood.size(); ++i)
            blood[i] = field.image.values[i] > options.levelHu;
        const std::ptrdiff_t start = startPixel(field, blood);
        if (start < 0)
            return failure(ErrorCode::SectionNotFound,
                           "Cannot measure this section: no blood was found within " +
                               std::to_string(static_cast<int>(kSearchMm)) +
                               " mm of its middle. Move the plane so that it crosses the filled appendage.");
        Mask blob;
        bool open = flood(field, blood, static_cast<std::size_t>(start), blob);
        if (!open || reach >= options.greatestReachMm) {
            cutBridges(field, blob, static_cast<std::size_t>(start),
                       static_cast<float>(options.bridgeRadiusMm / kPixelMm));
            open = false;
            for (int n = 0; n < field.side; ++n)
                open = open || blob[field.index(n, 0)] || blob[field.index(n, field.side - 1)] ||
                       blob[field.index(0, n)] || blob[field.index(field.side - 1, n)] ||
                       blob[field.index(1, n)] || blob[field.index(field.side - 2, n)] ||
                       blob[field.index(n, 1)] || blob[field.index(n, field.side - 2)];
            if (open)
                return failure(ErrorCode::SectionOpen,
                               "Cannot measure this section: its blood runs on beyond " +
                                   std::to_string(static_cast<int>(reach)) +
                                   " mm, so the plane opens into a chamber. Move it towards the tip or tilt it.");
            const auto loops = isoContours(isolated(field, blob, options.levelHu), field.side, field.side,
                                           static_cast<float>(options.levelHu));
            Outline outline;
            double greatest = 0.0;
            for (const auto& loop : loops) {
                if (loop.size() < 3)
                    continue;
                const double area = std::abs(signedAreaMm2(loop));
                if (area > greatest) {
                    greatest = area;
                    outline.contour = loop;
                }
            }
            if (outline.contour.size() < 8)
                return failure(ErrorCode::SectionNotFound,
                               "Cannot measure this section: the blood in it is smaller than a voxel or two.");
            for (auto& p : outline.contour)
                p = field.image.grid.sectionFromPixel(p.x(), p.y());
            if (signedAreaMm2(outline.contour) < 0.0)
                std::reverse(outline.contour.begin(), outline.contour.end());
            const auto depth = insideDistance(field, blob);
            for (std::size_t i = 0; i < depth.size(); ++i)
                if (depth[i] * kPixelMm > kInsideDepthMm && field.image.values[i] != kOutsideVolume)
                    outline.insideHu.push_back(field.image.values[i]);
            return outline;
        }
    }
}

} // namespace gauge::core
