#include "tests/bench/compare/stage.h"

#include "core/anatomy/mask_walks.h"
#include "core/volume/distance_transform.h"
#include "tests/bench/heart_volume.h"

#include <cmath>
#include <fstream>
#include <numbers>
#include <random>
#include <stdexcept>
#include <string>
#include <unistd.h>

namespace gauge::bench {
namespace {

namespace fs = std::filesystem;

constexpr double kNodeMm = 0.6;

/// A slightly squarish, noisy ellipse; draws of mt19937_64 alone, so that it is the same everywhere.
Stage::Points noisyEllipse(std::mt19937_64& random, std::size_t count, double noiseMm) {
    const auto unit = [&] { return static_cast<double>(random() >> 11) * 0x1p-53; };
    const double a = 10.0 + 6.0 * unit(), b = a * (0.6 + 0.35 * unit()), turn = std::numbers::pi * unit();
    const Eigen::Vector2d centre(4.0 * unit(), 4.0 * unit());
    Stage::Points points;
    for (std::size_t i = 0; i < count; ++i) {
        const double t = 2.0 * std::numbers::pi * static_cast<double>(i) / static_cast<double>(count);
        const double away = 1.0 + noiseMm / a * (unit() + unit() - 1.0);
        const Eigen::Vector2d p(away * a * std::cos(t), away * b * std::sin(t));
        points.emplace_back(centre + Eigen::Rotation2Dd(turn) * p);
    }
    return points;
}

std::vector<Stage::Points> noisyEllipses(int sets, std::size_t count, double noiseMm) {
    std::mt19937_64 random(count);
    std::vector<Stage::Points> all;
    for (int n = 0; n < sets; ++n)
        all.push_back(noisyEllipse(random, count, noiseMm));
    return all;
}

} // namespace

std::vector<fs::path> SeriesOnDisk::files(std::size_t phase) const {
    std::vector<fs::path> all;
    for (const auto& image : series().phases[phase].images)
        all.push_back(image.file);
    return all;
}

Stage::Stage(const StageSizes& sizes)
    : m_sizes(sizes), m_folder(fs::temp_directory_path() / ("gauge-compare-" + std::to_string(getpid()))) {
    fs::create_directories(m_folder);
}

Stage::~Stage() {
    std::error_code ignored;
    fs::remove_all(m_folder, ignored);
}

std::shared_ptr<const core::Volume> Stage::sharedVolume() {
    if (!m_volume) m_volume = heartVolume({m_sizes.columns, m_sizes.columns, m_sizes.slices});
    return m_volume;
}

SeriesOnDisk Stage::index(const fs::path& folder) const {
    auto found = dicomio::indexFolder(folder);
    if (!found) throw std::runtime_error(found.error().message);
    return {folder, std::move(*found)};
}

const SeriesOnDisk& Stage::raw() {
    if (!m_raw) {
        writeCtSeries(m_folder / "raw", volume(), {.slices = m_sizes.slices});
        m_raw = index(m_folder / "raw");
    }
    return *m_raw;
}

const SeriesOnDisk& Stage::phases() {
    if (!m_phases) {
        writeCtSeries(m_folder / "phases", volume(), {.slices = m_sizes.phaseSlices, .phases = m_sizes.phases});
        m_phases = index(m_folder / "phases");
    }
    return *m_phases;
}

const SeriesOnDisk& Stage::compressed(Coding coding) {
    auto& made = m_compressed[coding];
    if (made.folder.empty()) {
        const fs::path folder = m_folder / ("coding-" + std::to_string(static_cast<int>(coding)));
        writeCtSeries(folder, volume(),
                      {.coding = coding,
                       .firstSlice = std::max(0, (m_sizes.slices - m_sizes.compressedSlices) / 2),
                       .slices = m_sizes.compressedSlices});
        made = index(folder);
    }
    return made;
}

core::SectionGrid Stage::obliqueGrid() const {
    const Eigen::Vector3d sizeMm(0.4 * m_sizes.columns, 0.4 * m_sizes.columns, 0.5 * m_sizes.slices);
    const core::PatientPoint middle{Eigen::Vector3d(0.036 * sizeMm.x(), 0.036 * sizeMm.y(), 0.0)};
    const double pixelMm = 0.8 * sizeMm.minCoeff() / 512.0;
    return {core::frameOf(core::Plane{middle, {Eigen::Vector3d(0.4, -0.5, 0.77).normalized()}}), 512, 512, pixelMm};
}

const core::SectionImage& Stage::picture() {
    if (!m_picture) m_picture = core::cutSection(volume(), obliqueGrid());
    return *m_picture;
}

Eigen::Vector3i Stage::chamberVoxel() {
    return volume().voxelFrom({Eigen::Vector3d::Zero()}).ijk.array().round().matrix().cast<int>();
}

const core::BoxMask& Stage::pool() {
    if (!m_pool) {
        core::BoxGrid grid;
        grid.stepMm = kNodeMm;
        grid.size.setConstant(m_sizes.boxNodes);
        grid.origin = {Eigen::Vector3d(24.0, 5.0, 0.0) - Eigen::Vector3d::Constant(0.5 * kNodeMm * m_sizes.boxNodes)};
        const auto hu = core::resample(volume(), grid, core::kOutsideVolume);
        core::BoxMask bright(grid);
        for (std::size_t i = 0; i < bright.values.size(); ++i)
            bright[i] = hu[i] >= static_cast<float>(kLevelHu);
        m_pool = core::connectedTo(bright, {grid.index(grid.nearest({Eigen::Vector3d::Zero()}))});
    }
    return *m_pool;
}

const core::BoxField<float>& Stage::poolDepth() {
    if (!m_poolDepth) m_poolDepth = core::distanceInsideMm(pool());
    return *m_poolDepth;
}

std::size_t Stage::chamberNode() {
    return pool().grid.index(pool().grid.nearest({Eigen::Vector3d::Zero()}));
}

std::size_t Stage::tubeNode() {
    return pool().grid.index(pool().grid.nearest({heartTubeEnd()}));
}

const std::vector<Stage::Points>& Stage::ellipsePoints() {
    if (m_ellipses.empty()) m_ellipses = noisyEllipses(m_sizes.sets, 64, 0.4);
    return m_ellipses;
}

const std::vector<Stage::Points>& Stage::contourPoints() {
    if (m_contours.empty()) m_contours = noisyEllipses(m_sizes.sets, 500, 0.4);
    return m_contours;
}

fs::path Stage::writeBytes(const std::string& name, const void* data, std::size_t bytes) {
    const fs::path path = m_folder / name;
    if (fs::exists(path)) return path;
    std::ofstream out(path, std::ios::binary);
    out.write(static_cast<const char*>(data), static_cast<std::streamsize>(bytes));
    if (!out.flush()) throw std::runtime_error("cannot write " + path.string());
    return path;
}

fs::path Stage::volumeFile() {
    return writeBytes("volume.raw", volume().data(), 2 * volume().voxelCount());
}

fs::path Stage::poolFile() {
    return writeBytes("pool.raw", pool().values.data(), pool().values.size());
}

fs::path Stage::depthFile() {
    return writeBytes("depth.raw", poolDepth().values.data(), sizeof(float) * poolDepth().values.size());
}

fs::path Stage::pictureFile() {
    return writeBytes("picture.raw", picture().values.data(), sizeof(float) * picture().values.size());
}

} // namespace gauge::bench
