#include "core/fast/fast_path.h"
#include "core/volume/box_field.h"
#include "core/volume/sampling.h"
#include "core/volume/section_image.h"
#include "core/volume/trilinear_rows.h"
#include "core/volume/volume_block.h"

#include <cstring>
#include <gtest/gtest.h>
#include <random>
#include <vector>

using namespace gauge::core;

namespace {

constexpr float kBeyond = -32768.0f;

std::shared_ptr<const Volume> randomVolume(const Eigen::Vector3i& size, unsigned seed) {
    std::mt19937 random(seed);
    std::uniform_int_distribution<int> value(-32768, 32767); // the whole range: differences pass int16
    std::vector<std::int16_t> voxels(static_cast<std::size_t>(size.prod()));
    for (auto& v : voxels)
        v = static_cast<std::int16_t>(value(random));
    Eigen::Affine3d place = Eigen::Affine3d::Identity();
    place.linear() << 0.5, 0.02, 0.1, 0, 0.45, 0, 0, 0, 0.8;
    return Volume::make(size, std::move(voxels), place, VoxelQuantity::HounsfieldUnits, "").value();
}

const Eigen::Vector3i kSizes[] = {{24, 20, 16}, {2, 9, 7}, {1, 6, 5}, {33, 1, 4}, {17, 5, 1}, {1, 1, 1}, {64, 64, 3}};

/// Rows that pass through, along faces, exactly over voxels, beyond the block, and none at all.
std::vector<VoxelRow> rowsThrough(const Volume& volume, std::mt19937& random) {
    std::uniform_real_distribution<double> share(-0.2, 1.2), step(-0.9, 0.9);
    const Eigen::Vector3d last = (volume.size().array() - 1).cast<double>();
    std::vector<VoxelRow> rows{voxelRow(Eigen::Vector3d::Zero(), {1, 0, 0}), voxelRow(last, {-1, 0, 0}),
                               voxelRow(last, {-0.5, -0.5, 0}), voxelRow(last, {0, 0, -1}),
                               voxelRow(last + Eigen::Vector3d(1e-10, 1e-10, 1e-10), {-1, 0, 0}),
                               voxelRow({-1e-10, 0, 0}, {0.25, 0, 0}), voxelRow({-50, -50, -50}, {-1, 0, 0})};
    for (int i = 0; i < 40; ++i)
        rows.push_back(voxelRow(Eigen::Vector3d(share(random), share(random), share(random)).cwiseProduct(last),
                                {step(random), step(random), step(random)}));
    return rows;
}

template <class Values> void expectSameBits(const Values& a, const Values& b, const char* what) {
    ASSERT_EQ(a.size(), b.size());
    for (std::size_t i = 0; i < a.size(); ++i)
        ASSERT_EQ(std::memcmp(&a[i], &b[i], sizeof(a[i])), 0) << what << ", place " << i << ": " << a[i] << " and " << b[i];
}

template <class Body> void forEachVolumeAndRow(const Body& body) {
    std::mt19937 random(11);
    unsigned seed = 1;
    for (const auto& size : kSizes) {
        const auto volume = randomVolume(size, seed++);
        for (const VoxelRow& row : rowsThrough(*volume, random))
            for (const auto& [first, end] : {std::pair{0, 37}, std::pair{3, 4}, std::pair{5, 9}, std::pair{2, 2}})
                body(*volume, row, first, end);
    }
}

} // namespace

TEST(TrilinearRows, GiveTheBitsOfTheSamplerPointByPoint) {
    forEachVolumeAndRow([](const Volume& volume, const VoxelRow& row, int first, int end) {
        const TrilinearSampler sample(volume);
        const Eigen::Vector3d start(row.start), step(row.step);
        std::vector<double> expected, values(static_cast<std::size_t>(end - first));
        for (int n = first; n < end; ++n)
            expected.push_back(sample.atVoxel(start + static_cast<double>(n) * step));
        kTrilinearRows.held(voxelBlock(volume), row, first, end, values.data());
        expectSameBits(values, expected, "portable against the sampler");
    });
}

TEST(TrilinearRows, GiveTheSameBitsWithAvx2) {
    const TrilinearRows* fast = trilinearRowsAvx2();
    if (fast == nullptr || bestFastPath() != FastPath::Avx2) GTEST_SKIP() << "this processor has no AVX2";
    forEachVolumeAndRow([&](const Volume& volume, const VoxelRow& row, int first, int end) {
        const auto count = static_cast<std::size_t>(end - first);
        const VoxelBlock block = voxelBlock(volume);
        std::vector<double> held(count), heldFast(count);
        kTrilinearRows.held(block, row, first, end, held.data());
        fast->held(block, row, first, end, heldFast.data());
        expectSameBits(held, heldFast, "held");
        std::vector<float> cut(count), cutFast(count);
        kTrilinearRows.inside(block, row, {1e-9, kBeyond}, first, end, cut.data());
        fast->inside(block, row, {1e-9, kBeyond}, first, end, cutFast.data());
        expectSameBits(cut, cutFast, "inside");
        for (const bool maximum : {false, true}) {
            const SlabPlanes planes{{0.3, -0.2, 0.45}, 5, maximum};
            kTrilinearRows.slab(block, row, planes, {1e-9, kBeyond}, first, end, cut.data());
            fast->slab(block, row, planes, {1e-9, kBeyond}, first, end, cutFast.data());
            expectSameBits(cut, cutFast, maximum ? "slab maximum" : "slab mean");
        }
    });
}

TEST(CutSection, GivesTheSamePictureOnEveryPath) {
    const auto volume = randomVolume({40, 36, 30}, 5);
    const PatientPoint middle{volume->patientFromVoxel() * Eigen::Vector3d(20, 18, 15)};
    const SectionGrid grid{frameOf(Plane{middle, {Eigen::Vector3d(0.3, -0.5, 0.8).normalized()}}), 131, 77, 0.2};
    const auto fast = cutSection(*volume, grid).values;
    const auto fastSlab = cutSlab(*volume, grid, {4.0, SlabValue::Mean}).values;
    const BoxGrid box = boxAround(*volume, {middle}, 5.0, 0.37);
    const auto fastBox = resample(*volume, box, kBeyond).values;
    const FastPathScope portable(FastPath::Portable);
    expectSameBits(cutSection(*volume, grid).values, fast, "section");
    expectSameBits(cutSlab(*volume, grid, {4.0, SlabValue::Mean}).values, fastSlab, "slab");
    expectSameBits(resample(*volume, box, kBeyond).values, fastBox, "box");
    // The whole picture against the sampler, tiles and all.
    const TrilinearSampler sample(*volume);
    for (int row = 0; row < grid.rows; ++row)
        for (int column = 0; column < grid.columns; ++column) {
            const PatientPoint p = grid.frame.patientFromSection(grid.sectionFromPixel(column, row));
            const float expected = volume->contains(p) ? static_cast<float>(sample(p)) : kOutsideVolume;
            // The sampler adds the pixel's place in another order: rounding of 1e-13 voxels on slopes up to 65535 HU.
            ASSERT_NEAR(fast[static_cast<std::size_t>(row * grid.columns + column)], expected, 0.01) << column << ' ' << row;
        }
}
