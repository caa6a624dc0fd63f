// Three-dimensional echo: Enhanced US Volume Storage (PS3.3 A.59) to volumes of echo intensity with proved
// geometry, one a time point. Sections are cut from them as from computed tomography
// (core/volume/section_image.h).
//
// Coordinates are those of the Volume Frame of Reference (C.8.24.2): millimetres, right-handed, tied to the
// probe. They are not the patient's left, back and head; lengths, areas and angles hold, anatomical
// directions do not.
#pragma once

#include "core/parallel/progress.h"
#include "core/result.h"
#include "core/volume/volume.h"
#include "dicomio/scan/scanner.h"

#include <cstddef>
#include <memory>
#include <optional>
#include <string_view>
#include <vector>

namespace gauge::dicomio {

/// Enhanced US Volume Storage.
bool isUltrasoundVolume(std::string_view sopClassUid);

/// Voxels that can be true, mm. Assumption, wide on purpose.
inline constexpr double kSmallestVoxelMm = 0.02;
inline constexpr double kLargestVoxelMm = 5.0;

struct EchoTimePoint {
    /// From the first time point (TemporalPositionTimeOffset, seconds in the file); nullopt when only an
    /// index, or nothing, tells the order.
    std::optional<double> offsetMs;
    std::vector<int> frames; ///< 0-based frames of the file, slice k of the volume is frames[k]
};

class UltrasoundVolume {
public:
    /// Proves the geometry of every time point from the header; reads no pixels.
    /// @param scanned  not null.
    /// @errors ObjectUnsupported (another kind of object, no greyscale tissue frames, values beyond int16),
    /// AttributeMissing and AttributeInvalid for missing or unusable geometry, GeometryContradictory when
    /// time points differ in it, SpacingInvalid for voxels that cannot be true, and those of the stack
    /// (SliceMissing, SliceDuplicate, SpacingUneven, SizesMixed, OrientationsMixed). Messages name the file
    /// and the attribute.
    static core::Result<UltrasoundVolume> open(std::shared_ptr<const ScannedFile> scanned);

    /// At least one, in the order of time.
    const std::vector<EchoTimePoint>& timePoints() const { return m_timePoints; }
    /// Along a row, along a column, between slices (perpendicular distance), mm; the same at every time
    /// point.
    const Eigen::Vector3d& spacingMm() const { return m_spacingMm; }
    const Eigen::Affine3d& patientFromVoxel() const { return m_affine; }
    const Eigen::Vector3i& size() const { return m_size; }
    const std::string& sopInstanceUid() const { return m_sopInstanceUid; }
    const std::vector<core::Notice>& notices() const { return m_notices; }

    /// One time point; nothing is kept. Parallel over slices, cancellable.
    /// @errors InvalidArgument for a time point that is not there; those of FrameReader; Cancelled.
    core::Result<std::shared_ptr<const core::Volume>> read(std::size_t timePoint,
                                                           const core::WorkContext& work = {}) const;

private:
    explicit UltrasoundVolume(std::shared_ptr<const ScannedFile> scanned) : m_scanned(std::move(scanned)) {}

    std::shared_ptr<const ScannedFile> m_scanned;
    std::vector<EchoTimePoint> m_timePoints;
    Eigen::Vector3i m_size = Eigen::Vector3i::Zero();
    Eigen::Vector3d m_spacingMm = Eigen::Vector3d::Zero();
    Eigen::Affine3d m_affine = Eigen::Affine3d::Identity();
    std::string m_frameOfReferenceUid;
    std::string m_sopInstanceUid;
    std::vector<core::Notice> m_notices;
};

} // namespace gauge::dicomio
