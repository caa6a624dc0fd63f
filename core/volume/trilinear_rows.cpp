#include "core/volume/trilinear_rows.h"

namespace gauge::core {
namespace {

struct VoxelPlace {
    double c[3];
};

VoxelPlace placeOnRow(const VoxelRow& row, int n) {
    VoxelPlace p;
    for (int a = 0; a < 3; ++a)
        p.c[a] = row.start[a] + static_cast<double>(n) * row.step[a];
    return p;
}

bool isInside(const VoxelBlock& block, const VoxelPlace& p, double tolerance) {
    for (int a = 0; a < 3; ++a)
        if (!(p.c[a] >= -tolerance && p.c[a] <= static_cast<double>(block.size[a] - 1) + tolerance))
            return false;
    return true;
}

double mixed(double a, double b, double t) {
    return a + (b - a) * t;
}

double heldValue(const VoxelBlock& block, const VoxelPlace& p) {
    std::ptrdiff_t index[3], step[3];
    double t[3];
    std::ptrdiff_t stride = 1;
    const std::int16_t* v = block.values;
    for (int a = 0; a < 3; ++a) {
        const double last = static_cast<double>(block.size[a] - 1);
        const double held = p.c[a] < 0.0 ? 0.0 : p.c[a] > last ? last : p.c[a];
        index[a] = static_cast<std::ptrdiff_t>(held);
        t[a] = held - static_cast<double>(index[a]);
        step[a] = index[a] + 1 < block.size[a] ? stride : 0;
        v += index[a] * stride;
        stride *= block.size[a];
    }
    const std::ptrdiff_t dx = step[0], dy = step[1], dz = step[2];
    const double near = mixed(mixed(v[0], v[dx], t[0]), mixed(v[dy], v[dx + dy], t[0]), t[1]);
    const double far = mixed(mixed(v[dz], v[dx + dz], t[0]), mixed(v[dy + dz], v[dx + dy + dz], t[0]), t[1]);
    return mixed(near, far, t[2]);
}

void heldRow(const VoxelBlock& block, const VoxelRow& row, int first, int end, double* out) {
    for (int n = first; n < end; ++n)
        out[n - first] = heldValue(block, placeOnRow(row, n));
}

void insideRow(const VoxelBlock& block, const VoxelRow& row, const OutsideRule& outside, int first, int end,
               float* out) {
    for (int n = first; n < end; ++n) {
        const VoxelPlace p = placeOnRow(row, n);
        out[n - first] =
            isInside(block, p, outside.toleranceVoxels) ? static_cast<float>(heldValue(block, p)) : outside.value;
    }
}

void slabRow(const VoxelBlock& block, const VoxelRow& row, const SlabPlanes& planes, const OutsideRule& outside,
             int first, int end, float* out) {
    for (int n = first; n < end; ++n) {
        const VoxelPlace middle = placeOnRow(row, n);
        double sum = 0.0, greatest = outside.value;
        int count = 0;
        for (int k = -planes.half; k <= planes.half; ++k) {
            VoxelPlace p;
            for (int a = 0; a < 3; ++a)
                p.c[a] = middle.c[a] + static_cast<double>(k) * planes.step[a];
            if (!isInside(block, p, outside.toleranceVoxels))
                continue;
            const double value = heldValue(block, p);
            sum += value;
            greatest = value > greatest ? value : greatest;
            ++count;
        }
        out[n - first] =
            count == 0 ? outside.value : static_cast<float>(planes.maximum ? greatest : sum / count);
    }
}

} // namespace

const TrilinearRows kTrilinearRows = {heldRow, insideRow, slabRow};

} // namespace gauge::core
