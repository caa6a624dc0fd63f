// From files to volumes of Hounsfield units.
#include "core/fast/spare_memory.h"
#include "dicomio/ct/ct_phases.h"
#include "tests/bench/compare/large_block.h"
#include "tests/bench/compare/libraries.h"
#include "tests/bench/compare/ours.h"
#include "tests/bench/compare/rows.h"

#include <algorithm>
#include <chrono>
#include <fcntl.h>
#include <stdexcept>
#include <string>
#include <unistd.h>

namespace gauge::bench {
namespace {

constexpr double kSameVolume = 1e-12; // whole numbers: nothing may differ but the order of adding
constexpr double kVoxelMb = 2e-6;

Contestant ours(std::function<Check()> work) {
    return {"ours", 2, timed(std::move(work))};
}

Operation load(Stage& stage, const SeriesOnDisk& series, Task task, Goal goal) {
    Operation operation{goal, "mean HU", kSameVolume, ours(ourLoad(series)), {}, {}};
    addRivals(operation, task, stage);
    return operation;
}

/// Every byte of every file, one file after the other, into one block on large pages: what no loader can do without.
Contestant bytesAlone(const SeriesOnDisk& series) {
    return {"a plain read of the bytes", 1, timed([files = series.files()]() -> Check {
                std::size_t total = 0;
                for (const auto& file : files)
                    total += std::filesystem::file_size(file);
                auto block = std::make_shared<LargeBlock>((total + 1) / 2);
                std::size_t at = 0;
                for (const auto& file : files) {
                    const int descriptor = ::open(file.c_str(), O_RDONLY | O_CLOEXEC);
                    ssize_t got = 0;
                    while ((got = ::read(descriptor, reinterpret_cast<char*>(block->data()) + at, total - at)) > 0)
                        at += static_cast<std::size_t>(got);
                    ::close(descriptor);
                }
                if (at != total) throw std::runtime_error("the files could not be read");
                return [block] { return 0.0; };
            })};
}

std::unique_ptr<core::PhaseSet> openPhases(const SeriesOnDisk& series, int neighbours) {
    auto set = dicomio::openCtPhases(series.series(), {.neighbours = neighbours});
    if (!set) throw std::runtime_error(set.error().message);
    return std::move(*set);
}

std::shared_ptr<const core::LoadedPhase> phaseOf(core::PhaseSet& set, std::size_t phase) {
    auto got = set.get(phase);
    if (!got) throw std::runtime_error(got.error().message);
    return *got;
}

Contestant oursFirst(const SeriesOnDisk& series) {
    return {"ours", 2, timed([&series]() -> Check {
                std::shared_ptr<core::PhaseSet> set = openPhases(series, 0);
                auto first = phaseOf(*set, 0);
                return [set, first] { return 0.0; };
            })};
}

/// Jumps through the beat: the slowest of all phases counts.
Contestant oursAny(const SeriesOnDisk& series) {
    return {"ours, slowest of ten jumps", 2, [&series] {
                const auto set = openPhases(series, 1);
                Measured slowest;
                const std::size_t count = set->phases().size();
                for (std::size_t n = 0; n < count; ++n) {
                    const auto start = std::chrono::steady_clock::now();
                    phaseOf(*set, (n * 7 + 3) % count);
                    slowest.seconds = std::max(
                        slowest.seconds, std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count());
                }
                return slowest;
            }};
}

/// Everything that a case keeps of its voxels at the same time.
std::function<Check()> volumeWithMasks(Stage& stage) {
    return [load = ourLoad(stage.raw()), grow = ourGrow(stage), parts = ourComponents(stage),
            distance = ourDistanceInside(stage)]() -> Check {
        const Check volume = load(), mask = grow(), all = parts(), depth = distance();
        return [volume, mask, all, depth] { return mask(); };
    };
}

} // namespace

void addLoadingRows(Comparison& table, Stage& stage) {
    const StageSizes& sizes = stage.sizes();
    const double slice = static_cast<double>(sizes.columns) * sizes.columns;
    const std::string raw = "load " + std::to_string(sizes.slices) + " raw slices",
                      gated = "load " + std::to_string(sizes.phases) + " phases x " + std::to_string(sizes.phaseSlices),
                      coded = "load " + std::to_string(sizes.compressedSlices) + " slices, ";

    table.row(raw, [&] { return load(stage, stage.raw(), Task::LoadRaw, {.ratio = 2.5}); });
    table.row(raw + ", no memory at hand to use again", [&] {
        Contestant fresh = ours(ourLoad(stage.raw()));
        fresh.run = [run = fresh.run] {
            core::releaseSpareLarge();
            return run();
        };
        Operation operation{{.ratio = 2.5}, "mean HU", kSameVolume, fresh, {}, {}};
        addRivals(operation, Task::LoadRaw, stage);
        return operation;
    });
    table.row(raw + ", against their bytes", [&] {
        return Operation{{.ratio = 1.0 / 1.5}, "", 1.0, ours(ourLoad(stage.raw())), {bytesAlone(stage.raw())}, {}};
    });
    table.row(gated, [&] {
        constexpr std::size_t kOnePhase = 0; // into the same memory one after the other, as the others do
        Operation operation{{.ratio = 2.0}, "mean HU", kSameVolume, ours(ourPhases(stage.phases(), kOnePhase)), {}, {}};
        addRivals(operation, Task::LoadPhases, stage);
        return operation;
    });
    table.row(gated + ", kept as far as the budget allows", [&] {
        return Operation{{.peakMb = 700.0}, "mean HU", 0.0, ours(ourPhases(stage.phases())), {}, {}};
    });
    table.row(gated + ", the first against all", [&] {
        Contestant whole = ours(ourPhases(stage.phases()));
        whole.who = "ours, all phases";
        return Operation{{.ratio = 8.0}, "", 1e9, oursFirst(stage.phases()), {whole}, {}};
    });
    table.row(gated + ", any of them", [&] { return Operation{{.ms = 500.0}, "", 0.0, oursAny(stage.phases()), {}, {}}; });
    table.row(coded + "RLE", [&] { return load(stage, stage.compressed(Coding::Rle), Task::LoadRle, {.ratio = 1.8}); });
    table.row(coded + "JPEG lossless",
              [&] { return load(stage, stage.compressed(Coding::JpegLossless), Task::LoadJpeg, {.ratio = 1.8}); });
    table.row(coded + "JPEG-LS",
              [&] { return load(stage, stage.compressed(Coding::JpegLs), Task::LoadJpegLs, {.ratio = 1.8}); });
    table.row("memory: volume, masks of it and distance", [&] {
        stage.pool();
        return Operation{{.peakMb = 2.2 * kVoxelMb * slice * sizes.slices}, "voxels", 0.0, ours(volumeWithMasks(stage)), {}, {}};
    });
}

} // namespace gauge::bench
