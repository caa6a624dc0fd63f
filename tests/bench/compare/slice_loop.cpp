#include "tests/bench/compare/slice_loop.h"

#include "tests/bench/compare/large_block.h"

#include <memory>

namespace gauge::bench {
namespace {

Check loadAll(const SeriesOnDisk& series, std::size_t slice, const SliceReader& read) {
    auto voxels = std::make_shared<LargeBlock>(slice * series.files().size());
    for (std::size_t phase = 0; phase < series.series().phases.size(); ++phase) {
        std::size_t at = 0;
        for (const auto& file : series.files(phase))
            read(file, voxels->data() + slice * at++, slice);
    }
    return [voxels] { return voxels->mean(); }; // of the last phase
}

} // namespace

Library sliceLoop(const std::string& name, const SliceReader& read) {
    Library library{name, true, {}, {}};
    const auto add = [&](Task task, const std::function<const SeriesOnDisk&(Stage&)>& series) {
        library.tasks[task] = [=](Stage& stage) -> Contestant {
            const auto slice = static_cast<std::size_t>(stage.sizes().columns) * static_cast<std::size_t>(stage.sizes().columns);
            return {name + ", serial loop", 1, timed([&on = series(stage), slice, read] { return loadAll(on, slice, read); })};
        };
    };
    add(Task::LoadRaw, [](Stage& s) -> const SeriesOnDisk& { return s.raw(); });
    add(Task::LoadPhases, [](Stage& s) -> const SeriesOnDisk& { return s.phases(); });
    add(Task::LoadRle, [](Stage& s) -> const SeriesOnDisk& { return s.compressed(Coding::Rle); });
    add(Task::LoadJpeg, [](Stage& s) -> const SeriesOnDisk& { return s.compressed(Coding::JpegLossless); });
    add(Task::LoadJpegLs, [](Stage& s) -> const SeriesOnDisk& { return s.compressed(Coding::JpegLs); });
    return library;
}

} // namespace gauge::bench
