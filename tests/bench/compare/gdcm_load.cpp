#include "tests/bench/compare/large_block.h"
#include "tests/bench/compare/libraries.h"

#include <gdcmImage.h>
#include <gdcmImageReader.h>
#include <stdexcept>

namespace gauge::bench {
namespace {

void loadSlice(const std::filesystem::path& path, std::int16_t* out, std::size_t count) {
    gdcm::ImageReader reader;
    reader.SetFileName(path.c_str());
    if (!reader.Read()) throw std::runtime_error("GDCM cannot read " + path.string());
    const gdcm::Image& image = reader.GetImage();
    if (image.GetBufferLength() != 2 * count || !image.GetBuffer(reinterpret_cast<char*>(out)))
        throw std::runtime_error("GDCM gives other pixels of " + path.string());
    const int by = static_cast<int>(image.GetIntercept());
    for (std::size_t i = 0; i < count; ++i)
        out[i] = static_cast<std::int16_t>(out[i] + by);
}

Check loadAll(const SeriesOnDisk& series, std::size_t slice) {
    auto voxels = std::make_shared<LargeBlock>(slice * series.files().size());
    for (std::size_t phase = 0; phase < series.series().phases.size(); ++phase) {
        std::size_t at = 0;
        for (const auto& file : series.files(phase))
            loadSlice(file, voxels->data() + slice * at++, slice);
    }
    return [voxels] { return voxels->mean(); }; // of the last phase
}

Contestant load(Stage& stage, const SeriesOnDisk& series) {
    const auto slice = static_cast<std::size_t>(stage.sizes().columns) * static_cast<std::size_t>(stage.sizes().columns);
    return {"GDCM, serial loop", 1, timed([&series, slice] { return loadAll(series, slice); })};
}

} // namespace

Library gdcm() {
    Library library{"GDCM", true, {}, {}};
    library.tasks[Task::LoadRaw] = [](Stage& s) { return load(s, s.raw()); };
    library.tasks[Task::LoadPhases] = [](Stage& s) { return load(s, s.phases()); };
    library.tasks[Task::LoadRle] = [](Stage& s) { return load(s, s.compressed(Coding::Rle)); };
    library.tasks[Task::LoadJpeg] = [](Stage& s) { return load(s, s.compressed(Coding::JpegLossless)); };
    library.tasks[Task::LoadJpegLs] = [](Stage& s) { return load(s, s.compressed(Coding::JpegLs)); };
    return library;
}

} // namespace gauge::bench
