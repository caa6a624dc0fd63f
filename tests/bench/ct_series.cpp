#include "tests/bench/ct_series.h"

#include <dcmtk/config/osconfig.h>

#include <dcmtk/dcmdata/dctk.h>
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
        data.putAndInsertUint16(DCM_Rows, static_cast<Uint16>(size.y()));
        data.putAndInsertUint16(DCM_Columns, static_cast<Uint16>(size.x()));
        data.putAndInsertUint16Array(DCM_PixelData, pixels.data(), static_cast<unsigned long>(pixels.size()));
        const auto path = folder / ("slice-" + std::to_string(slice) + ".dcm");
        if (file.saveFile(path.c_str(), EXS_LittleEndianExplicit).bad())
            throw std::runtime_error("cannot write " + path.string());
    }
}

} // namespace gauge::bench
