// The voxel volume: one immutable contiguous block of int16 with the affine that places it in the patient.
// Sampling is in volume/sampling.h, sections in volume/section_image.h.
#pragma once

#include "core/fast/large_vector.h"
#include "core/geometry/points.h"
#include "core/result.h"

#include <Eigen/Geometry>
#include <cstddef>
#include <cstdint>
#include <memory>
#include <string>
#include <vector>

namespace gauge::core {

/// What the numbers of a volume mean.
enum class VoxelQuantity { HounsfieldUnits, EchoIntensity };

/// Immutable voxel volume; shared as `std::shared_ptr<const Volume>`.
/// The affine is general: a tilted (sheared) acquisition keeps its exact geometry.
class Volume {
public:
    /// @param size  voxels along i, j, k; each >= 1.
    /// @param voxels  i fastest, then j, then k; size.prod() values.
    /// @param patientFromVoxel  maps voxel coordinates to LPS mm; must be finite and invertible.
    /// @param frameOfReferenceUid  DICOM Frame of Reference UID, may be empty when unknown.
    /// @errors InvalidArgument for a wrong number of voxels or a size below 1; NonFinite or Degenerate for an
    /// unusable affine.
    static Result<std::shared_ptr<const Volume>> make(Eigen::Vector3i size, std::vector<std::int16_t> voxels,
                                                      const Eigen::Affine3d& patientFromVoxel,
                                                      VoxelQuantity quantity, std::string frameOfReferenceUid);
    /// The same; the block, on large pages, is taken over as it is. For readers of whole series.
    static Result<std::shared_ptr<const Volume>> takeOver(Eigen::Vector3i size, LargeVector<std::int16_t> voxels,
                                                          const Eigen::Affine3d& patientFromVoxel,
                                                          VoxelQuantity quantity, std::string frameOfReferenceUid);

    const Eigen::Vector3i& size() const { return m_size; }
    const std::int16_t* data() const { return m_voxels; }
    std::size_t voxelCount() const { return m_count; }
    VoxelQuantity quantity() const { return m_quantity; }
    const std::string& frameOfReferenceUid() const { return m_frameOfReferenceUid; }
    const Eigen::Affine3d& patientFromVoxel() const { return m_patientFromVoxel; }
    const Eigen::Affine3d& voxelFromPatient() const { return m_voxelFromPatient; }

    std::int16_t at(int i, int j, int k) const {
        return m_voxels[static_cast<std::size_t>(i) +
                        static_cast<std::size_t>(m_size.x()) *
                            (static_cast<std::size_t>(j) +
                             static_cast<std::size_t>(m_size.y()) * static_cast<std::size_t>(k))];
    }

    PatientPoint patientFrom(const VoxelCoord& c) const { return {m_patientFromVoxel * c.ijk}; }
    VoxelCoord voxelFrom(const PatientPoint& p) const { return {m_voxelFromPatient * p.mm}; }

    /// Lengths of the voxel's edges along i, j, k, mm. With tilt the k edge is longer than the distance between
    /// slices.
    Eigen::Vector3d edgesMm() const;

    /// True when the point lies within the block of voxel centres.
    bool contains(const PatientPoint& p) const;

private:
    Volume() = default;
    template <class Block>
    static Result<std::shared_ptr<const Volume>> hold(const Eigen::Vector3i& size, Block voxels,
                                                      const Eigen::Affine3d& patientFromVoxel,
                                                      VoxelQuantity quantity, std::string frameOfReferenceUid);

    Eigen::Vector3i m_size = Eigen::Vector3i::Zero();
    std::shared_ptr<const void> m_owner; ///< of the block
    const std::int16_t* m_voxels = nullptr;
    std::size_t m_count = 0;
    Eigen::Affine3d m_patientFromVoxel = Eigen::Affine3d::Identity();
    Eigen::Affine3d m_voxelFromPatient = Eigen::Affine3d::Identity();
    VoxelQuantity m_quantity = VoxelQuantity::HounsfieldUnits;
    std::string m_frameOfReferenceUid;
};

} // namespace gauge::core
