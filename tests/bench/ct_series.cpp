#include "tests/bench/ct_series.h"

#include <dcmtk/config/osconfig.h>

#include <algorithm>
#include <dcmtk/dcmdata/dcrleerg.h>
#include <dcmtk/dcmdata/dctk.h>
#include <dcmtk/dcmjpeg/djencode.h>
#include <dcmtk/dcmjpls/djencode.h>
#include <stdexcept>
#include <string>
#include <vector>

namespace gauge::bench {
namespace {

const std::string kRoot = "1.2.826.0.1.3680043.10.999."; // an example arc; invented objects only

void put(DcmDataset& data, const DcmTagKey& tag, const std::string& value) {
    if (data.putAndInsertString(tag, value.c_str()).bad())
        throw std::runtime_error("cannot set an attribute of the benchmark's series");
}

void describe(DcmDataset& data, int slice) {
    put(data, DCM_SOPClassUID, UID_CTImageStorage);
    put(data, DCM_SOPInstanceUID, kRoot + "3." + std::to_string(slice + 1));
    put(data, DCM_StudyInstanceUID, kRoot + "1");
    put(data, DCM_SeriesInstanceUID, kRoot + "2");
    put(data, DCM_FrameOfReferenceUID, kRoot + "4");
    put(data, DCM_Modality, "CT");
    put(data, DCM_ImageType, "ORIGINAL\\PRIMARY\\AXIAL");
    put(data, DCM_PatientName, "Benchmark^Invented");
    put(data, DCM_PatientID, "BENCH");
    put(data, DCM_SeriesDescription, "Benchmark");
    put(data, DCM_InstanceNumber, std::to_string(slice + 1));
    put(data, DCM_ImageOrientationPatient, "1\\0\\0\\0\\1\\0");
    put(data, DCM_ImagePositionPatient, "-100\\-100\\" + std::to_string(0.5 * slice));
    put(data, DCM_PixelSpacing, "0.4\\0.4");
    put(data, DCM_SliceThickness, "0.5");
    put(data, DCM_RescaleIntercept, "-1024");
    put(data, DCM_RescaleSlope, "1");
    put(data, DCM_RescaleType, "HU");
    put(data, DCM_PhotometricInterpretation, "MONOCHROME2");
    data.putAndInsertUint16(DCM_SamplesPerPixel, 1);
    data.putAndInsertUint16(DCM_BitsAllocated, 16);
    data.putAndInsertUint16(DCM_BitsStored, 12);
    data.putAndInsertUint16(DCM_HighBit, 11);
    data.putAndInsertUint16(DCM_PixelRepresentation, 0);
}

void setPixels(DcmDataset& data, const std::vector<Uint16>& pixels, int columns, int rows) {
    data.putAndInsertUint16(DCM_Rows, static_cast<Uint16>(rows));
    data.putAndInsertUint16(DCM_Columns, static_cast<Uint16>(columns));
    data.putAndInsertUint16Array(DCM_PixelData, pixels.data(), static_cast<unsigned long>(pixels.size()));
}

E_TransferSyntax syntaxOf(Coding coding) {
    switch (coding) {
    case Coding::Rle:
        return EXS_RLELossless;
    case Coding::JpegLossless:
        return EXS_JPEGProcess14SV1;
    case Coding::JpegLs:
        return EXS_JPEGLSLossless;
    case Coding::None:
        break;
    }
    return EXS_LittleEndianExplicit;
}

void save(DcmFileFormat& file, E_TransferSyntax syntax, const std::filesystem::path& path) {
    if (file.getDataset()->chooseRepresentation(syntax, nullptr).bad() || file.saveFile(path.c_str(), syntax).bad())
        throw std::runtime_error("cannot write " + path.string());
}

/// Stored values of slice k, HU + 1024 in 12 bits.
void storedValues(const core::Volume& volume, int k, std::vector<Uint16>& pixels) {
    const std::int16_t* from = volume.data() + static_cast<std::ptrdiff_t>(pixels.size()) * k;
    std::transform(from, from + pixels.size(), pixels.begin(),
                   [](std::int16_t hu) { return static_cast<Uint16>(std::clamp(hu + 1024, 0, 4095)); });
}

} // namespace

void writeCtSeries(const std::filesystem::path& folder, const Eigen::Vector3i& size) {
    std::filesystem::create_directories(folder);
    std::vector<Uint16> pixels(static_cast<std::size_t>(size.x()) * static_cast<std::size_t>(size.y()));
    for (int slice = 0; slice < size.z(); ++slice) {
        for (std::size_t i = 0; i < pixels.size(); ++i)
            pixels[i] =
                static_cast<Uint16>((i * 2654435761u + static_cast<std::size_t>(slice) * 40503u) >> 7 & 0xfff);
        DcmFileFormat file;
        DcmDataset& data = *file.getDataset();
        describe(data, slice);
        setPixels(data, pixels, size.x(), size.y());
        save(file, EXS_LittleEndianExplicit, folder / ("slice-" + std::to_string(slice) + ".dcm"));
    }
}

void writeCtSeries(const std::filesystem::path& folder, const core::Volume& volume, const SeriesOptions& options) {
    DcmRLEEncoderRegistration::registerCodecs();
    DJEncoderRegistration::registerCodecs();
    DJLSEncoderRegistration::registerCodecs();
    std::filesystem::create_directories(folder);
    const Eigen::Vector3i& size = volume.size();
    std::vector<Uint16> pixels(static_cast<std::size_t>(size.x()) * static_cast<std::size_t>(size.y()));
    for (int phase = 0; phase < options.phases; ++phase)
        for (int slice = 0; slice < options.slices; ++slice) {
            DcmFileFormat file;
            DcmDataset& data = *file.getDataset();
            describe(data, slice);
            if (options.phases > 1) {
                data.putAndInsertFloat32(DCM_NominalPercentageOfCardiacPhase, static_cast<Float32>(10 * phase));
                put(data, DCM_SOPInstanceUID, kRoot + "3." + std::to_string(phase + 1) + "." + std::to_string(slice + 1));
            }
            storedValues(volume, (options.firstSlice + slice + 2 * phase) % size.z(), pixels);
            setPixels(data, pixels, size.x(), size.y());
            save(file, syntaxOf(options.coding),
                 folder / ("phase-" + std::to_string(phase) + "-slice-" + std::to_string(slice) + ".dcm"));
        }
}

} // namespace gauge::bench
