// What a program gets from the DICOM toolkit by a plain loop: one file after the other, each slice copied and shifted into one
// volume, whose memory lies on large pages so that the toolkit is not charged for the system's page faults.
#include "tests/bench/compare/large_block.h"
#include "tests/bench/compare/libraries.h"

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

/// Phase after phase into the same block.
Check loadAll(const SeriesOnDisk& series, std::size_t slice) {
    const std::size_t phases = series.series().phases.size();
    auto voxels = std::make_shared<LargeBlock>(slice * series.files().size());
    for (std::size_t phase = 0; phase < phases; ++phase) {
        std::size_t at = 0;
        for (const auto& file : series.files(phase))
            loadSlice(file, voxels->data() + slice * at++, slice);
    }
    return [voxels] { return voxels->mean(); }; // of the last phase
}

Contestant load(Stage& stage, const SeriesOnDisk& series) {
    const auto slice = static_cast<std::size_t>(stage.sizes().columns) * static_cast<std::size_t>(stage.sizes().columns);
    return {"DICOM toolkit, serial loop", 1, timed([&series, slice] { return loadAll(series, slice); })};
}

} // namespace

Library toolkitLoops() {
    DcmRLEDecoderRegistration::registerCodecs();
    DJDecoderRegistration::registerCodecs();
    DJLSDecoderRegistration::registerCodecs();
    Library library{"DICOM toolkit", true, {}, {}};
    library.tasks[Task::LoadRaw] = [](Stage& s) { return load(s, s.raw()); };
    library.tasks[Task::LoadPhases] = [](Stage& s) { return load(s, s.phases()); };
    library.tasks[Task::LoadRle] = [](Stage& s) { return load(s, s.compressed(Coding::Rle)); };
    library.tasks[Task::LoadJpeg] = [](Stage& s) { return load(s, s.compressed(Coding::JpegLossless)); };
    library.tasks[Task::LoadJpegLs] = [](Stage& s) { return load(s, s.compressed(Coding::JpegLs)); };
    return library;
}

} // namespace gauge::bench
