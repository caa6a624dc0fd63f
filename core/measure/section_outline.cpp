#include "core/measure/section_outline.h"

#include "core/geometry/planar_contour.h"
#include "core/measure/marching_squares.h"
#include "core/volume/section_image.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <cstring>
#include <limits>
#include <string>

namespace gauge::core {
namespace {

constexpr double kPixelMm = 0.3;
constexpr double kSearchMm = 2.0;
constexpr auto kInsideDepthPixels = static_cast<float>(1.2 / kPixelMm);

/// A square picture of the section about the origin.
struct Field {
    SectionImage image;
    int side = 0;

    std::size_t index(int x, int y) const {
        return static_cast<std::size_t>(y) * static_cast<std::size_t>(side) + static_cast<std::size_t>(x);
    }
};

using Mask = std::vector<std::uint8_t>;

/// 1-2-1 mean of three rows of pixels, pixel by pixel; a place outside the volume keeps its mark.
void mixRows(const float* before, const float* here, const float* after, float* out, int count, bool anyOutside) {
    for (int x = 0; x < count && !anyOutside; ++x)
        out[x] = 0.25f * (before[x] + 2.0f * here[x] + after[x]);
    for (int x = 0; x < count && anyOutside; ++x) {
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
    LargeVector<float>& v = field.image.values;
    bool anyOutside = false;
    for (const float value : v)
        anyOutside |= value == kOutsideVolume;
    std::vector<float> rowwise(v.size()), framed(static_cast<std::size_t>(side) + 2);
    for (int y = 0; y < side; ++y) {
        const float* row = v.data() + field.index(0, y);
        std::copy(row, row + side, framed.begin() + 1);
        framed.front() = row[0];
        framed.back() = row[side - 1];
        mixRows(framed.data(), framed.data() + 1, framed.data() + 2, rowwise.data() + field.index(0, y), side, anyOutside);
    }
    const auto rowAt = [&](int y) { return rowwise.data() + field.index(0, std::clamp(y, 0, side - 1)); };
    for (int y = 0; y < side; ++y)
        mixRows(rowAt(y - 1), rowAt(y), rowAt(y + 1), v.data() + field.index(0, y), side, anyOutside);
}

Field fieldOf(const Volume& volume, const SectionFrame& frame, double reachMm) {
    Field field;
    field.side = 2 * static_cast<int>(std::ceil(reachMm / kPixelMm)) + 1;
    field.image = cutSection(volume, SectionGrid{frame, field.side, field.side, kPixelMm});
    calm(field);
    return field;
}

/// The greatest float that is no greater: for a float v, v > level and v > this say the same.
float floatBelow(double level) {
    const auto nearest = static_cast<float>(level);
    return static_cast<double>(nearest) > level ? std::nextafter(nearest, -std::numeric_limits<float>::infinity()) : nearest;
}

/// Blood, but for the outermost pixels, so that all pixels of a mask have neighbours.
Mask bloodOf(const Field& field, double levelHu) {
    Mask blood(field.image.values.size());
    const float level = floatBelow(levelHu);
    const int last = field.side - 1;
    for (int y = 1; y < last; ++y) {
        const float* values = field.image.values.data() + field.index(0, y);
        std::uint8_t* out = blood.data() + field.index(0, y);
        for (int x = 1; x < last; ++x)
            out[x] = values[x] > level;
    }
    return blood;
}

/// Flood by the four neighbours, run by run along the rows. @param allowed  nothing on the outermost pixels.
void flood(const Field& field, const Mask& allowed, std::size_t start, Mask& filled) {
    filled.assign(allowed.size(), 0);
    Mask left = allowed; // not filled yet
    std::uint8_t* const open = left.data();
    std::vector<std::size_t> starts{start};
    const auto side = static_cast<std::size_t>(field.side);
    while (!starts.empty()) {
        std::size_t begin = starts.back(), end = begin;
        starts.pop_back();
        if (!open[begin]) continue;
        while (open[begin - 1]) --begin;
        while (open[end]) ++end;
        std::fill(open + begin, open + end, std::uint8_t{0});
        std::fill(filled.data() + begin, filled.data() + end, std::uint8_t{1});
        for (const std::size_t beside : {begin - side, begin + side}) // one start for each run beside this one
            for (std::size_t n = beside; n < beside + (end - begin); ++n)
                if (open[n] && (n == beside || !open[n - 1])) starts.push_back(n);
    }
}

/// Whether a blob lies beside the outermost pixels of the field.
bool opensIn(const Field& field, const Mask& blob) {
    const int last = field.side - 2;
    for (int n = 1; n <= last; ++n)
        for (const int ring : {1, last})
            if (blob[field.index(n, ring)] || blob[field.index(ring, n)]) return true;
    return false;
}

/// The pixels of a mask and one around them, cut to the field; empty when x1 < x0.
struct Window {
    int x0, y0, x1, y1;
    bool empty() const { return x1 < x0; }
    Window within(int first, int last) const {
        return {std::max(x0, first), std::max(y0, first), std::min(x1, last), std::min(y1, last)};
    }
};

Window windowOf(const Field& field, const Mask& mask) {
    const int side = field.side;
    Window w{side, side, -1, -1};
    for (int y = 0; y < side; ++y) {
        const std::uint8_t* row = mask.data() + field.index(0, y);
        const auto* first = static_cast<const std::uint8_t*>(std::memchr(row, 1, static_cast<std::size_t>(side)));
        if (first == nullptr)
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
std::vector<float> insideDistance(const Field& field, const Mask& mask, const Window& w) {
    constexpr float kFarPixels = 1e6f;
    std::vector<float> d(mask.size(), 0.0f);
    if (w.empty())
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

/// The blood around one place, and how deep each of its pixels lies.
struct Blob {
    Mask mask;
    Window window;            ///< its pixels and one around them
    std::vector<float> depth; ///< insideDistance()
};

Blob blobOf(const Field& field, Mask mask) {
    Blob blob{std::move(mask), {}, {}};
    blob.window = windowOf(field, blob.mask);
    blob.depth = insideDistance(field, blob.mask, blob.window);
    return blob;
}

/// Uphill from `at` to a place none of whose neighbours is deeper.
std::size_t deepestAbove(const Field& field, const std::vector<float>& depth, std::size_t at) {
    const auto side = static_cast<std::size_t>(field.side);
    for (;;) {
        std::size_t next = at;
        for (const std::size_t n : {at - 1, at + 1, at - side, at + side, at - side - 1, at - side + 1, at + side - 1,
                                    at + side + 1})
            if (depth[n] > depth[next])
                next = n;
        if (next == at)
            return at;
        at = next;
    }
}

/// Adds to `kept` what of `blob` lies beside it.
void growOneRing(const Field& field, const Blob& blob, Mask& kept, Mask& before) {
    before = kept;
    const Window w = blob.window.within(1, field.side - 2);
    for (int y = w.y0; y <= w.y1; ++y) {
        const std::uint8_t *row = before.data() + field.index(0, y), *above = row - field.side, *under = row + field.side;
        const std::uint8_t* allowed = blob.mask.data() + field.index(0, y);
        std::uint8_t* out = kept.data() + field.index(0, y);
        for (int x = w.x0; x <= w.x1; ++x)
            out[x] = static_cast<std::uint8_t>(row[x] | (allowed[x] & (row[x - 1] | row[x + 1] | above[x] | under[x])));
    }
}

/// Cuts thin bridges: keeps what can be reached from `start` through places at least `radius` pixels inside, grown
/// back within the mask. A blob that is thin at the start is left as it is.
void cutBridges(const Field& field, Blob& blob, std::size_t start, float radius) {
    Mask core(blob.mask.size());
    std::transform(blob.depth.begin(), blob.depth.end(), core.begin(), [=](float depth) { return depth > radius ? 1 : 0; });
    const std::size_t at = deepestAbove(field, blob.depth, start);
    if (!core[at])
        return;
    Mask kept, before;
    flood(field, core, at, kept);
    const int rings = static_cast<int>(std::ceil(radius)) + 1;
    for (int ring = 0; ring < rings; ++ring)
        growOneRing(field, blob, kept, before);
    if (kept != blob.mask)
        blob = blobOf(field, std::move(kept));
}

/// Values for contouring: the picture where it belongs to the blob or borders on it, low elsewhere.
std::vector<float> isolated(const Field& field, const Blob& blob, double level) {
    const auto low = static_cast<float>(level - 1000.0);
    const float leastIn = static_cast<float>(level) + 1e-3f, mostBeside = static_cast<float>(level) - 1e-3f;
    std::vector<float> values(blob.mask.size(), low);
    const Window w = blob.window.within(1, field.side - 2);
    for (int y = w.y0; y <= w.y1; ++y) {
        const std::uint8_t *in = blob.mask.data() + field.index(0, y), *above = in - field.side, *under = in + field.side;
        const float* picture = field.image.values.data() + field.index(0, y);
        float* out = values.data() + field.index(0, y);
        for (int x = w.x0; x <= w.x1; ++x) {
            const bool beside = (in[x - 1] | in[x + 1] | above[x] | under[x]) != 0;
            const float held = std::min(picture[x], mostBeside), raised = std::max(picture[x], leastIn);
            out[x] = in[x] != 0 ? raised : beside ? held : low;
        }
    }
    return values;
}

/// The largest loop around the blob, counter-clockwise; empty when there is none.
std::vector<Eigen::Vector2d> contourOf(const Field& field, const Blob& blob, double level) {
    std::vector<Eigen::Vector2d> contour;
    double greatest = 0.0;
    for (auto& loop : isoContours(isolated(field, blob, level), field.side, field.side, static_cast<float>(level))) {
        if (loop.size() < 3)
            continue;
        const double area = std::abs(signedAreaMm2(loop));
        if (area > greatest) {
            greatest = area;
            contour = std::move(loop);
        }
    }
    for (auto& p : contour)
        p = field.image.grid.sectionFromPixel(p.x(), p.y());
    if (contour.size() >= 3 && signedAreaMm2(contour) < 0.0)
        std::reverse(contour.begin(), contour.end());
    return contour;
}

std::vector<float> valuesWellInside(const Field& field, const Blob& blob) {
    const Window& w = blob.window;
    std::vector<float> values(static_cast<std::size_t>(std::count(blob.mask.begin(), blob.mask.end(), 1)) + 1);
    std::size_t count = 0;
    for (int y = w.y0; y <= w.y1; ++y) {
        const float *depth = blob.depth.data() + field.index(0, y), *hu = field.image.values.data() + field.index(0, y);
        for (int x = w.x0; x <= w.x1; ++x) { // written in any case, kept where it counts
            values[count] = hu[x];
            count += static_cast<std::size_t>((depth[x] > kInsideDepthPixels) & (hu[x] != kOutsideVolume));
        }
    }
    values.resize(count);
    return values;
}

} // namespace

Result<Outline> traceOutline(const Volume& volume, const SectionFrame& frame, const OutlineOptions& options) {
    for (double reach = options.firstReachMm;; reach = std::min(2.0 * reach, options.greatestReachMm)) {
        const Field field = fieldOf(volume, frame, reach);
        const Mask blood = bloodOf(field, options.levelHu);
        const std::ptrdiff_t start = startPixel(field, blood);
        if (start < 0)
            return failure(ErrorCode::SectionNotFound,
                           "Cannot measure this section: no blood was found within " +
                               std::to_string(static_cast<int>(kSearchMm)) +
                               " mm of its middle. Move the plane so that it crosses the filled appendage.");
        Mask reached;
        flood(field, blood, static_cast<std::size_t>(start), reached);
        const bool greatest = reach >= options.greatestReachMm;
        if (!greatest && opensIn(field, reached))
            continue;
        Blob blob = blobOf(field, std::move(reached));
        cutBridges(field, blob, static_cast<std::size_t>(start), static_cast<float>(options.bridgeRadiusMm / kPixelMm));
        if (opensIn(field, blob.mask))
            return failure(ErrorCode::SectionOpen,
                           "Cannot measure this section: its blood runs on beyond " +
                               std::to_string(static_cast<int>(reach)) +
                               " mm, so the plane opens into a chamber. Move it towards the tip or tilt it.");
        Outline outline{contourOf(field, blob, options.levelHu), valuesWellInside(field, blob)};
        if (outline.contour.size() < 8)
            return failure(ErrorCode::SectionNotFound,
                           "Cannot measure this section: the blood in it is smaller than a voxel or two.");
        return outline;
    }
}

} // namespace gauge::core
