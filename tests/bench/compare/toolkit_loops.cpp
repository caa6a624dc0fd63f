// What a program gets from the DICOM toolkit by a plain loop: one file after the other, each slice copied and shifted into place.
#include "tests/bench/compare/slice_loop.h"

#include <dcmtk/config/osconfig.h>

#include <dcmtk/dcmdata/dcrledrg.h>
#include <dcmtk/dcmdata/dctk.h>
#include <dcmtk/dcmjpeg/djdecode.h>
#include <dcmtk/dcmjpls/djdecode.h>
#include <stdexcept>

namespace gauge::bench {
namespace {

void loadSlice(const std::filesystem::path& path, std::int16_t* out, std::size_t count) {
    DcmFileFormat file;
    OFCondition status = file.loadFile(path.c_str());
    DcmDataset& data = *file.getDataset();
    if (status.good()) status = data.chooseRepresentation(EXS_LittleEndianExplicit, nullptr);
    const Uint16* pixels = nullptr;
    unsigned long found = 0;
    Float64 intercept = 0.0, slope = 1.0;
    if (status.good()) status = data.findAndGetUint16Array(DCM_PixelData, pixels, &found);
    if (status.good()) status = data.findAndGetFloat64(DCM_RescaleIntercept, intercept);
    if (status.good()) status = data.findAndGetFloat64(DCM_RescaleSlope, slope);
    if (status.bad() || found != count || slope != 1.0) throw std::runtime_error("the toolkit cannot load " + path.string());
    const int by = static_cast<int>(intercept);
    for (std::size_t i = 0; i < count; ++i)
        out[i] = static_cast<std::int16_t>(pixels[i] + by);
}

} // namespace

Library toolkitLoops() {
    DcmRLEDecoderRegistration::registerCodecs();
    DJDecoderRegistration::registerCodecs();
    DJLSDecoderRegistration::registerCodecs();
    return sliceLoop("DICOM toolkit", loadSlice);
}

} // namespace gauge::bench
