#include "dicomio/ct/ct_reader.h"

#include "core/parallel/parallel_for.h"
#include "dicomio/ct/ct_requirements.h"
#include "dicomio/ct/hounsfield.h"
#include "dicomio/ct/stack_geometry.h"
#include "dicomio/index/shared_progress.h"
#include "dicomio/pixel/frame_reader.h"

#include <algorithm>
#include <atomic>
#include <cmath>
#include <map>
#include <mutex>
#include <new>
#include <utility>

namespace gauge::dicomio {
namespace {

using core::ErrorCode;
using core::failure;
using core::Result;

/// 4 GiB of voxels; a whole-body scan at the finest setting stays below.
constexpr std::uint64_t kMaxVoxels = std::uint64_t{1} << 31;
/// Share of the progress bar that reading the headers takes.
constexpr double kHeaderShare = 0.1;

tl::unexpected<core::Error> cancelled() {
    return failure(ErrorCode::Cancelled, "Loading was cancelled.");
}

/// The first error of work that runs on several threads, and the wish to stop.
class Failure {
public:
    explicit Failure(const core::WorkContext& work) : m_work(work) {}

    bool shouldStop() const { return m_failed.load(std::memory_order_relaxed) || m_work.stopped(); }
    void set(core::Error error) {
        const std::lock_guard lock(m_mutex);
        if (!m_failed.exchange(true)) m_error = std::move(error);
    }
    Result<void> result() {
        if (m_work.stopped()) return cancelled();
        if (m_failed) return tl::make_unexpected(std::move(m_error));
        return {};
    }

private:
    const core::WorkContext& m_work;
    std::atomic<bool> m_failed{false};
    std::mutex m_mutex;
    core::Error m_error;
};

core::Error inFile(core::Error error, const std::filesystem::path& file) {
    core::Error outer{error.code, "Cannot read " + file.string() + ": " + error.message, error.facts,
                      nullptr};
    if (std::none_of(outer.facts.begin(), outer.facts.end(),
                     [](const core::Fact& f) { return f.key == "file"; }))
        outer.facts.push_back({"file", file.string()});
    outer.cause = std::make_shared<const core::Error>(std::move(error));
    return outer;
}

/// The files of a phase, scanned, and the slices that they hold, in the order of the series index.
struct Source {
    std::vector<ScannedFile> files;
    std::vector<std::size_t> fileOfSlice;
    std::vector<SliceFacts> slices;
};

Result<void> scanFiles(const std::vector<std::filesystem::path>& paths, Source& source,
                       const core::WorkContext& work) {
    source.files.resize(paths.size());
    Failure failed(work);
    SharedProgress progress(work, paths.size(), 0.0, kHeaderShare);
    core::parallelFor(paths.size(), 8, [&](std::size_t begin, std::size_t end) {
        for (std::size_t i = begin; i < end && !failed.shouldStop(); ++i) {
            auto scanned = scanFile(paths[i]);
            if (scanned)
                source.files[i] = std::move(*scanned);
            else
                failed.set(inFile(std::move(scanned.error()), paths[i]));
            progress.add(1);
        }
    });
    return failed.result();
}

Result<Source> openSource(const PhaseEntry& phase, const core::WorkContext& work) {
    Source source;
    std::vector<std::filesystem::path> paths;
    std::map<std::filesystem::path, std::size_t> known;
    for (const ImageReference& image : phase.images) {
        const auto [at, isNew] = known.try_emplace(image.file, paths.size());
        if (isNew) paths.push_back(image.file);
        source.fileOfSlice.push_back(at->second);
    }
    if (auto scanned = scanFiles(paths, source, work); !scanned) return tl::make_unexpected(scanned.error());
    for (std::size_t i = 0; i < phase.images.size(); ++i) {
        const ScannedFile& file = source.files[source.fileOfSlice[i]];
        auto slice = sliceFacts(file, phase.images[i].frame);
        if (!slice) return tl::make_unexpected(inFile(std::move(slice.error()), file.path));
        if (auto usable = checkHounsfield(*slice, *file.format); !usable)
            return tl::make_unexpected(usable.error());
        source.slices.push_back(std::move(*slice));
    }
    return source;
}

/// Reads slices of a source as Hounsfield units.
class SliceLoader {
public:
    static Result<SliceLoader> make(const Source& source) {
        SliceLoader loader(source);
        std::vector<std::size_t> uses(source.files.size());
        for (const std::size_t file : source.fileOfSlice)
            ++uses[file];
        for (std::size_t f = 0; f < uses.size(); ++f) {
            loader.m_paddings.push_back(paddingOf(source.files[f].dataset, *source.files[f].format));
            if (uses[f] < 2) continue;
            auto reader = FrameReader::open(source.files[f]); // kept open: one file, many slices
            if (!reader) return tl::make_unexpected(inFile(std::move(reader.error()), source.files[f].path));
            loader.m_open.emplace(f, std::move(*reader));
        }
        return loader;
    }

    /// @return number of voxels whose value did not fit into int16.
    Result<std::size_t> load(std::size_t slice, std::span<std::int16_t> out) const {
        const std::size_t f = m_source->fileOfSlice[slice];
        const ScannedFile& file = m_source->files[f];
        const SliceFacts& facts = m_source->slices[slice];
        // int16 and its unsigned twin may share memory.
        const std::span words(reinterpret_cast<std::uint16_t*>(out.data()), out.size());
        const HounsfieldConversion conversion(*file.format, *facts.rescale, m_paddings[f]);
        std::size_t held = 0;
        const auto convert = [&](std::span<std::uint16_t> piece) {
            held += conversion.convert({reinterpret_cast<std::int16_t*>(piece.data()), piece.size()});
        };
        Result<void> read;
        if (const auto open = m_open.find(f); open != m_open.end()) {
            read = open->second.readWords(facts.frame, words, convert);
        } else {
            const auto reader = FrameReader::open(file);
            read = reader ? reader->readWords(facts.frame, words, convert) : tl::make_unexpected(reader.error());
        }
        if (!read) return tl::make_unexpected(inFile(std::move(read.error()), file.path));
        return held;
    }

private:
    explicit SliceLoader(const Source& source) : m_source(&source) {}
    const Source* m_source;
    std::vector<std::optional<Padding>> m_paddings;
    std::map<std::size_t, FrameReader> m_open;
};

struct Loading {
    const SliceLoader& loader;
    const StackGeometry& geometry;
    core::LargeVector<std::int16_t>& voxels;
    std::size_t sliceVoxels;
    Failure& failed;
    SharedProgress& progress;
    std::atomic<std::size_t>& held;

    std::span<std::int16_t> out(std::size_t k) const {
        return std::span(voxels).subspan(k * sliceVoxels, sliceVoxels);
    }

    bool load(std::size_t sorted, std::span<std::int16_t> to) const {
        auto loaded = loader.load(geometry.order[sorted], to);
        if (!loaded) {
            failed.set(std::move(loaded.error()));
            return false;
        }
        held += *loaded;
        return true;
    }
};

void loadAsTheyAre(const Loading& l, std::size_t begin, std::size_t end) {
    for (std::size_t k = begin; k < end && !l.failed.shouldStop(); ++k) {
        if (!l.load(k, l.out(k))) return;
        l.progress.add(1);
    }
}

/// Linear interpolation between the two slices that enclose each place.
void loadResampled(const Loading& l, std::size_t begin, std::size_t end) {
    std::vector<std::int16_t> below(l.sliceVoxels), above(l.sliceVoxels);
    std::size_t belowIs = l.geometry.order.size(), aboveIs = l.geometry.order.size();
    for (std::size_t k = begin; k < end && !l.failed.shouldStop(); ++k) {
        const double place = l.geometry.resampleAt[k];
        const auto lower = std::min(static_cast<std::size_t>(place), l.geometry.order.size() - 2);
        const double t = place - static_cast<double>(lower);
        if (aboveIs == lower) {
            std::swap(below, above);
            std::swap(belowIs, aboveIs);
        }
        if (belowIs != lower && !l.load(lower, below)) return;
        belowIs = lower;
        if (aboveIs != lower + 1 && !l.load(lower + 1, above)) return;
        aboveIs = lower + 1;
        const auto out = l.out(k);
        for (std::size_t i = 0; i < out.size(); ++i)
            out[i] = static_cast<std::int16_t>(std::lround(below[i] + t * (above[i] - below[i])));
        l.progress.add(1);
    }
}

/// Not filled: every slice writes its own part.
Result<core::LargeVector<std::int16_t>> allocate(const StackGeometry& geometry) {
    const std::uint64_t count = static_cast<std::uint64_t>(geometry.size.x()) *
                                static_cast<std::uint64_t>(geometry.size.y()) *
                                static_cast<std::uint64_t>(geometry.size.z());
    const auto tooLarge = [&] {
        return failure(ErrorCode::ObjectUnsupported,
                       "Cannot load the series: " + std::to_string(geometry.size.x()) + " x " +
                           std::to_string(geometry.size.y()) + " x " + std::to_string(geometry.size.z()) +
                           " voxels need more memory than there is or than is allowed.");
    };
    if (count > kMaxVoxels) return tooLarge();
    try {
        return core::LargeVector<std::int16_t>(static_cast<std::size_t>(count));
    } catch (const std::bad_alloc&) {
        return tooLarge();
    }
}

Result<core::LargeVector<std::int16_t>> loadVoxels(const Source& source, const StackGeometry& geometry,
                                                   CtVolume& result, const core::WorkContext& work) {
    const auto loader = SliceLoader::make(source);
    if (!loader) return tl::make_unexpected(loader.error());
    auto voxels = allocate(geometry);
    if (!voxels) return voxels;
    const auto slices = static_cast<std::size_t>(geometry.size.z());
    Failure failed(work);
    SharedProgress progress(work, slices, kHeaderShare, 1.0);
    std::atomic<std::size_t> held{0};
    const Loading loading{*loader, geometry, *voxels, voxels->size() / slices, failed, progress, held};
    // Evened stacks go in longer runs, so that each slice is decoded about once.
    const bool even = geometry.resampleAt.empty();
    core::parallelFor(slices, even ? 2 : 32, [&](std::size_t begin, std::size_t end) {
        even ? loadAsTheyAre(loading, begin, end) : loadResampled(loading, begin, end);
    });
    if (auto done = failed.result(); !done) return tl::make_unexpected(done.error());
    if (held > 0)
        result.notices.push_back({"values-held",
                                  std::to_string(held.load()) +
                                      " voxels lie outside -32768 to 32767 HU and were held at these ends.",
                                  {}});
    return voxels;
}

/// False for what the index found in another phase.
bool concerns(const core::Notice& message, const PhaseEntry& phase) {
    return std::none_of(message.facts.begin(), message.facts.end(), [&](const core::Fact& fact) {
        return fact.key == "phase" && fact.value != phase.label;
    });
}

void nameSlices(const Source& source, const StackGeometry& geometry, CtVolume& result) {
    const auto uid = [&](std::size_t sorted) { return source.slices[geometry.order[sorted]].sopInstanceUid; };
    for (std::size_t k = 0; k < static_cast<std::size_t>(geometry.size.z()); ++k)
        result.sopInstanceUids.push_back(uid(
            geometry.resampleAt.empty() ? k : static_cast<std::size_t>(std::lround(geometry.resampleAt[k]))));
}

} // namespace

Result<CtVolume> readCtPhase(const SeriesEntry& series, std::size_t phase, const core::WorkContext& work) {
    if (phase >= series.phases.size())
        return failure(ErrorCode::InvalidArgument,
                       "Series " + series.seriesUid + " has " + std::to_string(series.phases.size()) +
                           " phases; number " + std::to_string(phase + 1) + " does not exist.");
    if (series.kind != "ct" && series.kind != "ct-enhanced")
        return failure(ErrorCode::ObjectUnsupported,
                       "Series " + series.seriesUid + " is no CT series but " + series.kind + ".");
    const PhaseEntry& entry = series.phases[phase];
    auto source = openSource(entry, work);
    if (!source) return tl::make_unexpected(source.error());
    auto geometry = proveStack(source->slices);
    if (!geometry) return tl::make_unexpected(geometry.error());
    CtVolume result;
    auto voxels = loadVoxels(*source, *geometry, result, work);
    if (!voxels) return tl::make_unexpected(voxels.error());
    auto volume = core::Volume::takeOver(geometry->size, std::move(*voxels), geometry->patientFromVoxel,
                                         core::VoxelQuantity::HounsfieldUnits, series.frameOfReferenceUid);
    if (!volume) return tl::make_unexpected(volume.error());
    result.volume = std::move(*volume);
    result.seriesUid = series.seriesUid;
    result.phasePercent = entry.percent;
    result.phaseLabel = entry.label;
    result.spacingMm = geometry->spacingMm;
    result.tiltDeg = geometry->tiltDeg;
    nameSlices(*source, *geometry, result);
    result.notices.insert(result.notices.begin(), geometry->notices.begin(), geometry->notices.end());
    for (const core::Notice& message : series.messages) // what the index found travels with the data
        if (concerns(message, entry) &&
            std::none_of(result.notices.begin(), result.notices.end(), [&](const core::Notice& n) {
                return n.code == message.code && n.text == message.text;
            }))
            result.notices.push_back(message);
    return result;
}

} // namespace gauge::dicomio
