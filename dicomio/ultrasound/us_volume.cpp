#include "dicomio/ultrasound/us_volume.h"

#include "core/number_text.h"

#include "core/parallel/parallel_for.h"
#include "dicomio/ct/stack_geometry.h"
#include "dicomio/pixel/frame_reader.h"
#include "dicomio/ultrasound/volume_frames.h"

#include <algorithm>
#include <atomic>
#include <mutex>
#include <new>
#include <string>
#include <utility>

namespace gauge::dicomio {
namespace {

using core::ErrorCode;
using core::failure;
using core::Result;

/// 2 GiB of voxels in one time point; the finest cubes of today have 2 % of that.
constexpr std::uint64_t kMaxVoxels = std::uint64_t{1} << 30;
/// Rows and columns of a plane; keeps what a lying header can make us allocate small.
constexpr int kLongestEdge = 4096;
/// Between time points: movement of the volume's corners that is rounding, mm.
constexpr double kSamePlacementMm = 0.01;

void replaceAll(std::string& text, const std::string& from, const std::string& to) {
    for (std::size_t at = text.find(from); at != std::string::npos; at = text.find(from, at + to.size()))
        text.replace(at, from.size(), to);
}

/// The proof of a stack is that of computed tomography and names its attributes; here they are the volume's.
std::string inVolumeTerms(std::string text) {
    replaceAll(text, describe(tags::ImagePositionPatient), describe(tags::ImagePositionVolume));
    replaceAll(text, describe(tags::ImageOrientationPatient), describe(tags::ImageOrientationVolume));
    replaceAll(text, "Copy the series again.", "Copy or export the volume again.");
    return text;
}

tl::unexpected<core::Error> cannotRead(const ScannedFile& scanned, core::Error cause) {
    cause.message = inVolumeTerms(std::move(cause.message));
    for (auto& fact : cause.facts)
        fact.value = inVolumeTerms(std::move(fact.value));
    const ErrorCode code = cause.code;
    std::string message = "Cannot read the ultrasound volume " + scanned.path.string() + ": " + cause.message;
    return failure(code, std::move(message), std::move(cause));
}

Result<void> checkPixels(const ScannedFile& scanned) {
    const auto bad = [](Tag tag, const std::string& found) {
        return failure(ErrorCode::ObjectUnsupported, describe(tag) + " is " + found,
                       {{"tag", describe(tag)}});
    };
    if (!isUltrasoundVolume(scanned.sopClassUid()))
        return bad(tags::SopClassUid, "\"" + scanned.sopClassUid() +
                                          "\", which is no ultrasound volume. Choose an Enhanced US Volume.");
    if (!scanned.format || !scanned.pixels)
        return failure(ErrorCode::ObjectUnsupported,
                       describe(tags::PixelData) + " is absent: it holds no image.");
    const PixelFormat& format = *scanned.format;
    if (format.samplesPerPixel != 1 || format.photometric != "MONOCHROME2")
        return bad(tags::PhotometricInterpretation,
                   "\"" + format.photometric + "\"; the volume's echo must be greyscale (MONOCHROME2).");
    if (format.rows > kLongestEdge || format.columns > kLongestEdge)
        return bad(tags::Rows, std::to_string(format.rows) + " and " + describe(tags::Columns) + " " +
                                   std::to_string(format.columns) + "; an ultrasound volume has at most " +
                                   std::to_string(kLongestEdge) + ". Export it again.");
    if ((format.bitsAllocated != 8 && format.bitsAllocated != 16) ||
        (format.bitsStored > 15 && !format.isSigned))
        return bad(tags::BitsStored, std::to_string(format.bitsStored) + " of " +
                                         std::to_string(format.bitsAllocated) +
                                         " allocated; 8 or 16 allocated with at most 15 stored can be read.");
    return {};
}

Result<void> checkVoxel(const Eigen::Vector3d& spacingMm) {
    if (spacingMm.minCoeff() >= kSmallestVoxelMm && spacingMm.maxCoeff() <= kLargestVoxelMm) return {};
    return failure(ErrorCode::SpacingInvalid,
                   "its voxels would be " + core::fixed(spacingMm.x(), 4) + " x " + core::fixed(spacingMm.y(), 4) +
                       " x " + core::fixed(spacingMm.z(), 4) + " mm by " + describe(tags::PixelSpacing) + " and " +
                       describe(tags::ImagePositionVolume) + ", where " + core::fixed(kSmallestVoxelMm, 2) +
                       " to " + core::fixed(kLargestVoxelMm, 0) + " mm can be true. Export the volume again.",
                   {{"tag", describe(tags::PixelSpacing)}});
}

bool samePlacement(const StackGeometry& a, const StackGeometry& b) {
    if (a.size != b.size) return false;
    const Eigen::Vector3d far = (a.size.array() - 1).cast<double>();
    for (int corner = 0; corner < 8; ++corner) {
        const Eigen::Vector3d c(corner & 1 ? far.x() : 0.0, corner & 2 ? far.y() : 0.0,
                                corner & 4 ? far.z() : 0.0);
        if ((a.patientFromVoxel * c - b.patientFromVoxel * c).norm() > kSamePlacementMm) return false;
    }
    return true;
}

Result<StackGeometry> proveTimePoint(const std::vector<SliceFacts>& slices) {
    auto proved = proveStack(slices);
    if (!proved) return proved;
    if (!proved->resampleAt.empty())
        return failure(
            ErrorCode::SpacingUneven,
            "by " + describe(tags::ImagePositionVolume) +
                " its planes are not evenly spaced, as those of a volume must be. Export it again.");
    if (auto voxel = checkVoxel(proved->spacingMm); !voxel) return tl::make_unexpected(voxel.error());
    return proved;
}

/// Steps between time points that a heart can have been imaged in, ms; seconds written as milliseconds lie
/// beyond.
constexpr double kShortestStepMs = 1.0;
constexpr double kLongestStepMs = 5000.0;

/// Forgets offsets that cannot be true; the order of the time points stays.
void judgeTimes(std::vector<EchoTimePoint>& points, std::vector<core::Notice>& notices) {
    if (points.size() < 2 || !points.back().offsetMs) return;
    const double stepMs = *points.back().offsetMs / static_cast<double>(points.size() - 1);
    if (stepMs >= kShortestStepMs && stepMs <= kLongestStepMs) return;
    for (auto& point : points)
        point.offsetMs.reset();
    notices.push_back(
        {"volume-times-implausible",
         describe(tags::TemporalPositionTimeOffset) + " has time points " + core::fixed(stepMs, 3) +
             " ms apart on average, which cannot be true; their order is kept, their times are not.",
         {}});
}

/// The first error of work on several threads.
class FirstError {
public:
    void set(core::Error error) {
        const std::lock_guard lock(m_mutex);
        if (!m_any.exchange(true)) m_error = std::move(error);
    }
    bool any() const { return m_any.load(std::memory_order_relaxed); }
    core::Error take() { return std::move(m_error); }

private:
    std::atomic<bool> m_any{false};
    std::mutex m_mutex;
    core::Error m_error;
};

} // namespace

bool isUltrasoundVolume(std::string_view sopClassUid) {
    return sopClassUid == "1.2.840.10008.5.1.4.1.1.6.2";
}

Result<UltrasoundVolume> UltrasoundVolume::open(std::shared_ptr<const ScannedFile> scanned) {
    const ScannedFile& file = *scanned;
    UltrasoundVolume out(std::move(scanned));
    if (auto pixels = checkPixels(file); !pixels) return cannotRead(file, pixels.error());
    out.m_notices = file.notices;
    auto groups = volumeFrames(file, out.m_notices);
    if (!groups) return cannotRead(file, groups.error());
    std::optional<StackGeometry> first;
    for (const auto& group : *groups) {
        auto proved = proveTimePoint(group.slices);
        if (!proved) return cannotRead(file, proved.error());
        if (first && !samePlacement(*first, *proved))
            return cannotRead(file, {ErrorCode::GeometryContradictory,
                                     "time point " + std::to_string(out.m_timePoints.size() + 1) +
                                         " has another size, place or orientation than the first, by " +
                                         describe(tags::ImagePositionVolume) + ". Export the volume again.",
                                     {{"tag", describe(tags::ImagePositionVolume)}},
                                     nullptr});
        EchoTimePoint point{group.offsetMs, {}};
        for (const std::size_t index : proved->order)
            point.frames.push_back(group.slices[index].frame);
        out.m_timePoints.push_back(std::move(point));
        if (!first) first = std::move(*proved);
    }
    judgeTimes(out.m_timePoints, out.m_notices);
    for (core::Notice notice : first->notices) {
        notice.text = inVolumeTerms(std::move(notice.text));
        out.m_notices.push_back(std::move(notice));
    }
    out.m_size = first->size;
    out.m_spacingMm = first->spacingMm;
    out.m_affine = first->patientFromVoxel;
    out.m_frameOfReferenceUid = file.dataset.text(tags::VolumeFrameOfReferenceUid);
    out.m_sopInstanceUid = file.dataset.text(tags::SopInstanceUid);
    if (out.m_frameOfReferenceUid.empty())
        out.m_notices.push_back({"volume-frame-absent",
                                 describe(tags::VolumeFrameOfReferenceUid) +
                                     " is absent: the volume cannot be related to other images of the probe.",
                                 {}});
    out.m_notices.push_back(
        {"volume-directions",
         "The axes of this volume are the probe's: lengths hold, but left, back and head of the "
         "patient are not known.",
         {}});
    return out;
}

Result<std::shared_ptr<const core::Volume>> UltrasoundVolume::read(std::size_t timePoint,
                                                                   const core::WorkContext& work) const {
    if (timePoint >= m_timePoints.size())
        return failure(ErrorCode::InvalidArgument, "Cannot read time point " + std::to_string(timePoint + 1) +
                                                       ": the volume has " +
                                                       std::to_string(m_timePoints.size()) + ".");
    const auto reader = FrameReader::open(*m_scanned);
    if (!reader) return cannotRead(*m_scanned, reader.error());
    const auto& frames = m_timePoints[timePoint].frames;
    const std::size_t plane = static_cast<std::size_t>(m_scanned->format->pixelsPerFrame());
    const core::Error tooLarge{ErrorCode::ObjectUnsupported,
                               "one time point needs more memory than there is or than is allowed.",
                               {},
                               nullptr};
    if (plane * frames.size() > kMaxVoxels) return cannotRead(*m_scanned, tooLarge);
    std::vector<std::uint16_t> trial(plane);
    if (auto read = reader->readWords(frames.front(), trial); !read) // before memory for all is taken
        return cannotRead(*m_scanned, read.error());
    std::vector<std::int16_t> voxels;
    try {
        voxels.resize(plane * frames.size());
    } catch (const std::bad_alloc&) {
        return cannotRead(*m_scanned, tooLarge);
    }
    FirstError failed;
    std::atomic<std::size_t> done{0};
    std::mutex reporting;
    core::parallelFor(frames.size(), 1, [&](std::size_t begin, std::size_t end) {
        std::vector<std::uint16_t> words(plane);
        for (std::size_t k = begin; k < end && !failed.any() && !work.stopped(); ++k) {
            if (auto read = reader->readWords(frames[k], words); !read) {
                failed.set(read.error());
                return;
            }
            std::transform(words.begin(), words.end(),
                           voxels.begin() + static_cast<std::ptrdiff_t>(k * plane), [&](std::uint16_t word) {
                               return static_cast<std::int16_t>(storedValue(word, *m_scanned->format));
                           });
            const std::lock_guard lock(reporting);
            work.report(static_cast<double>(++done) / static_cast<double>(frames.size()));
        }
    });
    if (work.stopped()) return failure(ErrorCode::Cancelled, "Loading was cancelled.");
    if (failed.any()) return cannotRead(*m_scanned, failed.take());
    return core::Volume::make(m_size, std::move(voxels), m_affine, core::VoxelQuantity::EchoIntensity,
                              m_frameOfReferenceUid);
}

} // namespace gauge::dicomio
