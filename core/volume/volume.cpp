#include "core/volume/volume.h"

#include <cmath>
#include <utility>

namespace gauge::core {

Result<std::shared_ptr<const Volume>> Volume::make(Eigen::Vector3i size, std::vector<std::int16_t> voxels,
                                                   const Eigen::Affine3d& patientFromVoxel,
                                                   VoxelQuantity quantity, std::string frameOfReferenceUid) {
    return hold(size, std::move(voxels), patientFromVoxel, quantity, std::move(frameOfReferenceUid));
}

Result<std::shared_ptr<const Volume>> Volume::takeOver(Eigen::Vector3i size, LargeVector<std::int16_t> voxels,
                                                       const Eigen::Affine3d& patientFromVoxel,
                                                       VoxelQuantity quantity, std::string frameOfReferenceUid) {
    return hold(size, std::move(voxels), patientFromVoxel, quantity, std::move(frameOfReferenceUid));
}

template <class Block>
Result<std::shared_ptr<const Volume>> Volume::hold(const Eigen::Vector3i& size, Block voxels,
                                                   const Eigen::Affine3d& patientFromVoxel, VoxelQuantity quantity,
                                                   std::string frameOfReferenceUid) {
    if ((size.array() < 1).any())
        return failure(ErrorCode::InvalidArgument, "Cannot make a volume: each of its sizes must be at least 1.");
    const auto wanted = static_cast<std::size_t>(size.x()) * static_cast<std::size_t>(size.y()) *
                        static_cast<std::size_t>(size.z());
    if (voxels.size() != wanted)
        return failure(ErrorCode::InvalidArgument, "Cannot make a volume: " + std::to_string(voxels.size()) +
                                                       " voxels were given where the size needs " +
                                                       std::to_string(wanted) + ".");
    if (!patientFromVoxel.matrix().allFinite())
        return failure(ErrorCode::NonFinite, "Cannot make a volume: its placement in the patient is not finite.");
    const Eigen::Matrix3d linear = patientFromVoxel.linear();
    const double scale = linear.col(0).norm() * linear.col(1).norm() * linear.col(2).norm();
    if (!(std::abs(linear.determinant()) > 1e-6 * scale))
        return failure(ErrorCode::Degenerate, "Cannot make a volume: its axes do not span space.");

    std::shared_ptr<Volume> volume(new Volume);
    volume->m_size = size;
    const auto block = std::make_shared<const Block>(std::move(voxels));
    volume->m_voxels = block->data();
    volume->m_count = block->size();
    volume->m_owner = block;
    volume->m_patientFromVoxel = patientFromVoxel;
    volume->m_voxelFromPatient = patientFromVoxel.inverse();
    volume->m_quantity = quantity;
    volume->m_frameOfReferenceUid = std::move(frameOfReferenceUid);
    return std::shared_ptr<const Volume>(std::move(volume));
}

Eigen::Vector3d Volume::edgesMm() const {
    return m_patientFromVoxel.linear().colwise().norm().transpose();
}

bool Volume::contains(const PatientPoint& p) const {
    const Eigen::Vector3d c = voxelFrom(p).ijk;
    const Eigen::Vector3d last = (m_size.array() - 1).cast<double>();
    return (c.array() >= 0.0).all() && (c.array() <= last.array()).all();
}

} // namespace gauge::core
