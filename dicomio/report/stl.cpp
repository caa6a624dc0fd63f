#include "dicomio/report/new_object.h"
#include "dicomio/report/object_file.h"

#include <bit>
#include <cstring>

namespace gauge::dicomio {
namespace {

using core::ErrorCode;
using core::failure;

constexpr std::size_t kHeadingBytes = 80, kTriangleBytes = 50;

void putNumber(std::uint8_t* at, std::uint32_t bits) { // little endian, as the format is
    for (int i = 0; i < 4; ++i)
        at[i] = static_cast<std::uint8_t>(bits >> (8 * i));
}

void putVector(std::uint8_t* at, const Eigen::Vector3d& v) {
    for (int i = 0; i < 3; ++i)
        putNumber(at + 4 * i, std::bit_cast<std::uint32_t>(static_cast<float>(v[i])));
}

} // namespace

core::Result<std::vector<std::uint8_t>> stlBytes(const TriangleMesh& mesh) {
    const std::string attempt = "Cannot write the surface as STL: ";
    if (mesh.triangles.empty()) return failure(ErrorCode::InvalidArgument, attempt + "it has no triangle.");
    if (mesh.triangles.size() > UINT32_MAX)
        return failure(ErrorCode::InvalidArgument,
                       attempt + "it has more triangles than the format can count.");
    for (std::size_t i = 0; i < mesh.corners.size(); ++i)
        if (!mesh.corners[i].mm.allFinite())
            return failure(ErrorCode::InvalidArgument,
                           attempt + "corner " + std::to_string(i) + " is no finite point.");
    std::vector<std::uint8_t> bytes(kHeadingBytes + 4 + kTriangleBytes * mesh.triangles.size());
    constexpr char kHeading[] = "Binary STL, millimetres, patient LPS"; // must not begin with "solid"
    std::memcpy(bytes.data(), kHeading, sizeof kHeading - 1);
    putNumber(bytes.data() + kHeadingBytes, static_cast<std::uint32_t>(mesh.triangles.size()));
    std::uint8_t* at = bytes.data() + kHeadingBytes + 4;
    for (const auto& triangle : mesh.triangles) {
        Eigen::Vector3d corner[3];
        for (int i = 0; i < 3; ++i) {
            if (triangle[i] >= mesh.corners.size())
                return failure(ErrorCode::InvalidArgument, attempt + "a triangle names corner " +
                                                               std::to_string(triangle[i]) + " of " +
                                                               std::to_string(mesh.corners.size()) + ".");
            corner[i] = mesh.corners[triangle[i]].mm;
        }
        const Eigen::Vector3d normal = (corner[1] - corner[0]).cross(corner[2] - corner[0]);
        const double length = normal.norm();
        putVector(at,
                  length > 0.0 ? Eigen::Vector3d(normal / length) : Eigen::Vector3d(Eigen::Vector3d::Zero()));
        for (int i = 0; i < 3; ++i)
            putVector(at + 12 * (i + 1), corner[i]);
        at += kTriangleBytes;
    }
    return bytes;
}

core::Result<void> writeStl(const TriangleMesh& mesh, const std::filesystem::path& file) {
    const auto bytes = stlBytes(mesh);
    if (!bytes) return tl::unexpected(bytes.error());
    return save(std::span<const std::uint8_t>(*bytes), file);
}

} // namespace gauge::dicomio
