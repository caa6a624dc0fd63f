// What the operations work on, made when it is first asked for: a generated CT of one bright chamber with a curved tube, the
// same as files, and point sets. Files go to a temporary folder that is removed at the end.
#pragma once

#include "core/volume/box_field.h"
#include "core/volume/section_image.h"
#include "core/volume/volume.h"
#include "dicomio/index/series_index.h"
#include "tests/bench/ct_series.h"

#include <Eigen/Core>
#include <filesystem>
#include <map>
#include <memory>
#include <optional>
#include <vector>

namespace gauge::bench {

struct StageSizes {
    int columns = 512; ///< and rows
    int slices = 400;
    int phases = 10, phaseSlices = 250;
    int compressedSlices = 100;
    int boxNodes = 200; ///< along each edge of the box of masks and distances
    int sets = 10'000;  ///< of points
};

/// Files of one series, in the page cache, and what our index says of them.
struct SeriesOnDisk {
    std::filesystem::path folder;
    dicomio::SeriesIndex index;

    const dicomio::SeriesEntry& series() const { return index.series.front(); }
    /// In the order of the slices.
    std::vector<std::filesystem::path> files(std::size_t phase = 0) const;
};

inline constexpr int kLevelHu = 220; ///< halfway between blood (400 HU) and tissue (40 HU)
inline constexpr double kSlabMm = 10.0;      ///< thickness of the thick section
inline constexpr int kSlabPlanes = 27;       ///< cut for it: no farther apart than a voxel is wide, and odd
inline constexpr double kProjectionMm = 350.0; ///< depth of the simulated radiograph: the whole volume from any side

class Stage {
public:
    explicit Stage(const StageSizes& sizes);
    ~Stage();
    Stage(const Stage&) = delete;
    Stage& operator=(const Stage&) = delete;

    const StageSizes& sizes() const { return m_sizes; }
    const std::filesystem::path& folder() const { return m_folder; }

    const core::Volume& volume() { return *sharedVolume(); }
    std::shared_ptr<const core::Volume> sharedVolume();
    const SeriesOnDisk& raw();
    const SeriesOnDisk& phases();
    const SeriesOnDisk& compressed(Coding coding);

    /// Oblique through the middle of the volume and inside it everywhere, 512 x 512 pixels.
    core::SectionGrid obliqueGrid() const;
    /// Its picture.
    const core::SectionImage& picture();

    /// Voxel in the middle of the chamber.
    Eigen::Vector3i chamberVoxel();
    /// The blood of the phantom on a cube of nodes 0.5 mm apart, noise included, only what hangs together with the chamber.
    const core::BoxMask& pool();
    /// Its distance to the wall.
    const core::BoxField<float>& poolDepth();
    std::size_t chamberNode();
    std::size_t tubeNode(); ///< at the far end of the tube

    using Points = std::vector<Eigen::Vector2d>;
    const std::vector<Points>& ellipsePoints();  ///< 64 each, noisy
    const std::vector<Points>& contourPoints();  ///< 500 each, noisy

    /// Voxels and masks as bare files for other processes.
    std::filesystem::path volumeFile();
    std::filesystem::path poolFile();
    std::filesystem::path depthFile();
    std::filesystem::path pictureFile();

private:
    SeriesOnDisk index(const std::filesystem::path& folder) const;
    std::filesystem::path writeBytes(const std::string& name, const void* data, std::size_t bytes);

    StageSizes m_sizes;
    std::filesystem::path m_folder;
    std::shared_ptr<const core::Volume> m_volume;
    std::optional<SeriesOnDisk> m_raw, m_phases;
    std::map<Coding, SeriesOnDisk> m_compressed;
    std::optional<core::SectionImage> m_picture;
    std::optional<core::BoxMask> m_pool;
    std::optional<core::BoxField<float>> m_poolDepth;
    std::vector<Points> m_ellipses, m_contours;
};

} // namespace gauge::bench
