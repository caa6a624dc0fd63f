#include "sample-data/dicom/ct_writer.h"

#include "core/parallel/parallel_for.h"

#include <dcmtk/config/osconfig.h>

#include <dcmtk/dcmdata/dctk.h>

#include <Eigen/Geometry>
#include <algorithm>
#include <array>
#include <atomic>
#include <cmath>
#include <cstdio>
#include <mutex>

namespace gauge::sample_case {
namespace {

namespace fs = std::filesystem;
using core::ErrorCode;

constexpr int kUnsignedOffset = 1024;

std::string joined(std::initializer_list<double> values) {
    std::string text;
    for (const double value : values) {
        if (!text.empty()) text += '\\';
        text += decimalString(value);
    }
    return text;
}

std::string joined(const Eigen::Vector3d& v) {
    return joined({v.x(), v.y(), v.z()});
}

core::Result<void> check(const std::vector<CtPhase>& phases) {
    const auto refuse = [](const std::string& why) {
        return core::failure(ErrorCode::InvalidArgument, "Cannot write CT images: " + why);
    };
    if (phases.empty()) return refuse("there is no phase to write.");
    for (const CtPhase& phase : phases) {
        if (!phase.volume) return refuse("a phase has no volume.");
        if (phase.volume->quantity() != core::VoxelQuantity::HounsfieldUnits)
            return refuse("a volume does not hold Hounsfield units.");
        if ((phase.volume->size().head<2>().array() > 65535).any())
            return refuse("slices have more than 65535 rows or columns.");
        if (phase.volume->frameOfReferenceUid() != phases.front().volume->frameOfReferenceUid())
            return refuse("phases have different frames of reference.");
        const Eigen::Matrix3d axes = phase.volume->patientFromVoxel().linear().colwise().normalized();
        if (std::abs(axes.col(0).dot(axes.col(1))) > 1e-6)
            return refuse("rows and columns are not at right angles.");
    }
    return {};
}

/// Attributes of one slice. Every put is checked at the end: DCMTK reports by condition.
class SliceDataset {
public:
    SliceDataset(const CtPhase& phase, const CtSeries& series, std::size_t phaseIndex, std::size_t phaseCount,
                 int k)
        : m_phase(phase), m_series(series), m_phaseIndex(phaseIndex), m_phaseCount(phaseCount), m_k(k) {
        patientAndStudy();
        seriesAndEquipment();
        geometry();
        acquisition();
        pixels();
    }

    /// @return empty when the file was written, else what went wrong.
    std::string save(const fs::path& file) {
        if (!m_problem.empty()) return m_problem;
        const OFCondition condition = m_file.saveFile(file.c_str(), EXS_LittleEndianExplicit);
        return condition.good() ? "" : condition.text();
    }

private:
    void put(const DcmTagKey& tag, const std::string& value) {
        note(tag, [&] { return m_file.getDataset()->putAndInsertString(tag, value.c_str()); });
    }
    void put(const DcmTagKey& tag, int value) {
        note(tag, [&] { return m_file.getDataset()->putAndInsertUint16(tag, static_cast<Uint16>(value)); });
    }
    /// Runs one step unless an earlier one failed; remembers which failed.
    template <class Step> void note(const DcmTagKey& tag, const Step& step) {
        if (!m_problem.empty()) return;
        if (const OFCondition condition = step(); condition.bad())
            m_problem = std::string(tag.toString().c_str()) + ": " + condition.text();
    }
    std::string uid(const std::string& part) const { return uidFrom(m_series.uidText + "/" + part); }

    void patientAndStudy() {
        put(DCM_SpecificCharacterSet, "ISO_IR 192");
        put(DCM_PatientName, m_series.patientName);
        put(DCM_PatientID, m_series.patientId);
        put(DCM_PatientBirthDate, m_series.birthDate);
        put(DCM_PatientSex, m_series.sex);
        put(DCM_PatientComments, m_series.comments);
        put(DCM_StudyInstanceUID, uid("study"));
        put(DCM_StudyDate, m_series.date);
        put(DCM_StudyTime, m_series.time);
        put(DCM_ReferringPhysicianName, "");
        put(DCM_StudyID, "1");
        put(DCM_AccessionNumber, "");
        put(DCM_StudyDescription, m_series.studyDescription);
    }

    void seriesAndEquipment() {
        put(DCM_Modality, "CT");
        put(DCM_SeriesInstanceUID, uid("series"));
        put(DCM_SeriesNumber, "1");
        put(DCM_SeriesDate, m_series.date);
        put(DCM_SeriesTime, m_series.time);
        put(DCM_SeriesDescription, m_series.seriesDescription);
        put(DCM_BodyPartExamined, "HEART");
        put(DCM_PatientPosition, "HFS");
        put(DCM_FrameOfReferenceUID, m_phase.volume->frameOfReferenceUid());
        put(DCM_PositionReferenceIndicator, "");
        put(DCM_Manufacturer, "Invented");
        put(DCM_ManufacturerModelName, "Formula");
        put(DCM_SOPClassUID, UID_CTImageStorage);
        put(DCM_SOPInstanceUID,
            uid("phase " + std::to_string(m_phaseIndex) + " slice " + std::to_string(m_k)));
    }

    void geometry() {
        const core::Volume& volume = *m_phase.volume;
        const Eigen::Matrix3d linear = volume.patientFromVoxel().linear();
        const Eigen::Vector3d row = linear.col(0).normalized(), column = linear.col(1).normalized();
        put(DCM_ImageOrientationPatient,
            joined({row.x(), row.y(), row.z(), column.x(), column.y(), column.z()}));
        put(DCM_ImagePositionPatient,
            joined(volume.patientFromVoxel() * Eigen::Vector3d(0.0, 0.0, static_cast<double>(m_k))));
        // Between rows first (PS3.3 10.7.1.3).
        put(DCM_PixelSpacing, joined({linear.col(1).norm(), linear.col(0).norm()}));
        put(DCM_SliceThickness, decimalString(std::abs(linear.col(2).dot(row.cross(column)))));
    }

    void acquisition() {
        put(DCM_ImageType, "ORIGINAL\\PRIMARY\\AXIAL");
        put(DCM_InstanceNumber,
            std::to_string(m_phaseIndex * static_cast<std::size_t>(m_phase.volume->size().z()) +
                           static_cast<std::size_t>(m_k) + 1));
        put(DCM_AcquisitionNumber, "1");
        put(DCM_AcquisitionDate, m_series.date);
        put(DCM_AcquisitionTime, m_series.time);
        put(DCM_ContentDate, m_series.date);
        put(DCM_ContentTime, m_series.time);
        put(DCM_KVP, "100");
        put(DCM_ConvolutionKernel, "GAUSSIAN");
        put(DCM_ContrastBolusAgent, "Invented");
        if (m_phaseCount > 1) {
            put(DCM_TemporalPositionIdentifier, std::to_string(m_phaseIndex + 1));
            put(DCM_NumberOfTemporalPositions, std::to_string(m_phaseCount));
        }
        if (!m_phase.percent) return;
        const double beatMs = 60000.0 / m_series.heartRatePerMin;
        put(DCM_TriggerTime, decimalString(std::round(*m_phase.percent * beatMs / 100.0)));
        put(DCM_NominalInterval, std::to_string(std::lround(beatMs)));
        put(DCM_HeartRate, std::to_string(std::lround(m_series.heartRatePerMin)));
        note(DCM_NominalPercentageOfCardiacPhase, [&] {
            return m_file.getDataset()->putAndInsertFloat32(DCM_NominalPercentageOfCardiacPhase,
                                                            static_cast<Float32>(*m_phase.percent));
        });
    }

    void pixels() {
        const core::Volume& volume = *m_phase.volume;
        const auto count =
            static_cast<std::size_t>(volume.size().x()) * static_cast<std::size_t>(volume.size().y());
        const std::int16_t* hu = volume.data() + count * static_cast<std::size_t>(m_k);
        std::vector<Uint16> stored(count);
        std::transform(hu, hu + count, stored.begin(), [&](std::int16_t value) {
            return m_series.signedPixels ? static_cast<Uint16>(value)
                                         : static_cast<Uint16>(std::clamp(value + kUnsignedOffset, 0, 32767));
        });
        put(DCM_SamplesPerPixel, 1);
        put(DCM_PhotometricInterpretation, "MONOCHROME2");
        put(DCM_Rows, volume.size().y());
        put(DCM_Columns, volume.size().x());
        put(DCM_BitsAllocated, 16);
        put(DCM_BitsStored, 16);
        put(DCM_HighBit, 15);
        put(DCM_PixelRepresentation, m_series.signedPixels ? 1 : 0);
        put(DCM_RescaleIntercept, m_series.signedPixels ? "0" : std::to_string(-kUnsignedOffset));
        put(DCM_RescaleSlope, "1");
        put(DCM_RescaleType, "HU");
        put(DCM_WindowCenter, decimalString(m_series.windowCenterHu));
        put(DCM_WindowWidth, decimalString(m_series.windowWidthHu));
        note(DCM_PixelData, [&] {
            return m_file.getDataset()->putAndInsertUint16Array(DCM_PixelData, stored.data(),
                                                                static_cast<unsigned long>(count));
        });
    }

    const CtPhase& m_phase;
    const CtSeries& m_series;
    std::size_t m_phaseIndex, m_phaseCount;
    int m_k;
    DcmFileFormat m_file;
    std::string m_problem; ///< of the first step that failed
};

fs::path fileOf(const std::vector<CtPhase>& phases, std::size_t phase, int slice) {
    std::array<char, 40> name{};
    std::snprintf(name.data(), name.size(), "slice-%04d.dcm", slice + 1);
    if (phases.size() == 1) return name.data();
    std::array<char, 40> folder{};
    if (phases[phase].percent)
        std::snprintf(folder.data(), folder.size(), "phase-%02ld-percent",
                      std::lround(*phases[phase].percent));
    else
        std::snprintf(folder.data(), folder.size(), "phase-%02zu", phase + 1);
    return fs::path(folder.data()) / name.data();
}

} // namespace

std::string uidFrom(const std::string& text) {
    // Two FNV-1a hashes make the 128 bits; version 8 and the variant bits of RFC 9562 make them a UUID.
    std::uint64_t high = 0xCBF29CE484222325ull, low = 0x84222325CBF29CE4ull;
    for (const char c : text) {
        high = (high ^ static_cast<unsigned char>(c)) * 0x100000001B3ull;
        low = (low ^ static_cast<unsigned char>(c) ^ 0x5Au) * 0x100000001B3ull;
        low ^= low >> 29;
    }
    high = (high & ~0xF000ull) | 0x8000ull;
    low = (low & 0x3FFFFFFFFFFFFFFFull) | 0x8000000000000000ull;
    // Decimal digits by long division of the four 32-bit limbs.
    std::array<std::uint64_t, 4> limbs{high >> 32, high & 0xFFFFFFFFull, low >> 32, low & 0xFFFFFFFFull};
    std::string digits;
    while (std::any_of(limbs.begin(), limbs.end(), [](std::uint64_t limb) { return limb != 0; })) {
        std::uint64_t rest = 0;
        for (std::uint64_t& limb : limbs) {
            const std::uint64_t part = rest << 32 | limb;
            limb = part / 10;
            rest = part % 10;
        }
        digits.push_back(static_cast<char>('0' + rest));
    }
    std::reverse(digits.begin(), digits.end());
    return "2.25." + digits;
}

std::string decimalString(double value) {
    std::array<char, 40> text{};
    if (value == 0.0) return "0";
    for (int digits = 17; digits > 0; --digits) {
        const int length = std::snprintf(text.data(), text.size(), "%.*g", digits, value);
        if (length <= 16) break;
    }
    return text.data();
}

std::vector<fs::path> ctSeriesFiles(const std::vector<CtPhase>& phases) {
    std::vector<fs::path> files;
    for (std::size_t phase = 0; phase < phases.size(); ++phase)
        for (int k = 0; k < phases[phase].volume->size().z(); ++k)
            files.push_back(fileOf(phases, phase, k));
    return files;
}

core::Result<std::vector<fs::path>> writeCtSeries(const std::vector<CtPhase>& phases, const CtSeries& series,
                                                  const fs::path& folder, const core::WorkContext& work) {
    if (const auto fine = check(phases); !fine) return tl::unexpected(fine.error());
    std::vector<std::pair<std::size_t, int>> slices;
    for (std::size_t phase = 0; phase < phases.size(); ++phase)
        for (int k = 0; k < phases[phase].volume->size().z(); ++k)
            slices.emplace_back(phase, k);
    std::vector<fs::path> files;
    for (const fs::path& file : ctSeriesFiles(phases)) {
        files.push_back(folder / file);
        std::error_code error;
        fs::create_directories(files.back().parent_path(), error);
        if (error)
            return core::failure(ErrorCode::OutputUnwritable, "Cannot make the folder " +
                                                                  files.back().parent_path().string() + ": " +
                                                                  error.message() + ".");
    }

    std::mutex guard;
    std::optional<core::Error> firstError;
    std::atomic<bool> failed{false};
    std::size_t finished = 0;
    core::parallelFor(slices.size(), 1, [&](std::size_t begin, std::size_t end) {
        for (std::size_t i = begin; i < end && !failed && !work.stopped(); ++i) {
            const auto [phase, k] = slices[i];
            SliceDataset dataset(phases[phase], series, phase, phases.size(), k);
            const std::string problem = dataset.save(files[i]);
            const std::lock_guard lock(guard);
            if (!problem.empty() && !firstError) {
                failed = true;
                firstError = core::failure(ErrorCode::OutputUnwritable,
                                           "Cannot write " + files[i].string() + ": " + problem + ".",
                                           {{"path", files[i].string()}})
                                 .value();
            }
            work.report(static_cast<double>(++finished) / static_cast<double>(slices.size()));
        }
    });
    if (firstError) return tl::unexpected(*firstError);
    if (work.stopped()) return core::failure(ErrorCode::Cancelled, "Writing the CT images was stopped.");
    return files;
}

} // namespace gauge::sample_case
