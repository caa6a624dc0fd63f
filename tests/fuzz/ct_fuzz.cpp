// From a folder with one file to a CT volume: index, phases, geometry and voxels.
#include "dicomio/ct/ct_reader.h"
#include "dicomio/index/series_index.h"
#include "tests/fuzz/fuzz_file.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace gauge::dicomio;
    auto& file = gauge::test::FuzzFile::instance();
    file.fill(data, size);
    const auto index = listFolder(file.folder());
    if (!index)
        return 0;
    for (const SeriesEntry& series : index->series)
        for (std::size_t phase = 0; phase < series.phases.size(); ++phase)
            if (series.measurable)
                (void)readCtPhase(series, phase);
    return 0;
}
