#include "dicomio/index/copies.h"

#include "dicomio/ct/stack_geometry.h"
#include "dicomio/scan/byte_stream.h"

#include <algorithm>
#include <array>
#include <map>

namespace gauge::dicomio {
namespace {

std::vector<ByteRange> pixelRanges(const FileFacts& file) {
    return file.pixels->encapsulated ? file.pixels->fragments : std::vector<ByteRange>{file.pixels->native};
}

bool sameBytes(const RegularFile& fileA, const ByteRange& a, const RegularFile& fileB, const ByteRange& b,
               const core::WorkContext& work) {
    if (a.length != b.length) return false;
    std::vector<std::byte> bufferA(64 * 1024), bufferB(64 * 1024);
    for (std::uint64_t at = 0; at < a.length;) {
        const auto take = static_cast<std::size_t>(std::min<std::uint64_t>(bufferA.size(), a.length - at));
        if (work.stopped()) return false;
        if (!fileA.read(a.offset + at, std::span(bufferA).first(take)) ||
            !fileB.read(b.offset + at, std::span(bufferB).first(take)) ||
            !std::equal(bufferA.begin(), bufferA.begin() + static_cast<std::ptrdiff_t>(take),
                        bufferB.begin()))
            return false;
        at += take;
    }
    return true;
}

bool samePixels(const FileFacts& a, const FileFacts& b, const core::WorkContext& work) {
    if (a.syntax.deflated) // places are in the inflated data set; the files themselves are compared instead
        return false;
    const auto rangesA = pixelRanges(a), rangesB = pixelRanges(b);
    const auto fileA = RegularFile::open(a.path), fileB = RegularFile::open(b.path);
    if (!fileA || !fileB || rangesA.size() != rangesB.size()) return false;
    for (std::size_t i = 0; i < rangesA.size(); ++i)
        if (!sameBytes(*fileA, rangesA[i], *fileB, rangesB[i], work)) return false;
    return true;
}

bool sameFile(const FileFacts& a, const FileFacts& b, const core::WorkContext& work) {
    const auto fileA = RegularFile::open(a.path), fileB = RegularFile::open(b.path);
    return fileA && fileB && sameBytes(*fileA, {0, fileA->size()}, *fileB, {0, fileB->size()}, work);
}

bool samePlaces(const FileFacts& a, const FileFacts& b) {
    return std::equal(a.slices.begin(), a.slices.end(), b.slices.begin(), b.slices.end(),
                      [](const SliceFacts& x, const SliceFacts& y) {
                          return x.rows == y.rows && x.columns == y.columns && x.position == y.position &&
                                 x.rowDirection == y.rowDirection && x.columnDirection == y.columnDirection &&
                                 x.alongRowMm == y.alongRowMm && x.alongColumnMm == y.alongColumnMm &&
                                 x.rescale.has_value() == y.rescale.has_value() &&
                                 (!x.rescale || (x.rescale->slope == y.rescale->slope &&
                                                 x.rescale->intercept == y.rescale->intercept));
                      });
}

bool isCopy(const FileFacts& a, const FileFacts& b, const core::WorkContext& work) {
    if (!a.pixels || !b.pixels || a.frames != b.frames || !samePlaces(a, b)) return false;
    return a.syntax.uid != b.syntax.uid || samePixels(a, b, work) || sameFile(a, b, work);
}

/// Lower is better to keep.
int preference(const FileFacts& file) {
    return (file.lossy ? 4 : 0) + (file.syntax.lossless ? 0 : 2) + (file.syntax.encapsulated() ? 1 : 0);
}

/// Marks copies within files of one SOP Instance UID; returns how many.
std::size_t markCopies(const std::vector<FileFacts>& files, std::vector<std::size_t> same,
                       std::vector<bool>& aside, const core::WorkContext& work) {
    std::stable_sort(same.begin(), same.end(), [&](std::size_t a, std::size_t b) {
        return preference(files[a]) < preference(files[b]);
    });
    std::size_t copies = 0;
    for (std::size_t i = 1; i < same.size() && !work.stopped(); ++i)
        if (isCopy(files[same.front()], files[same[i]], work)) {
            aside[same[i]] = true;
            ++copies;
        }
    return copies;
}

void remove(std::vector<FileFacts>& files, const std::vector<bool>& aside) {
    std::vector<FileFacts> kept;
    for (std::size_t i = 0; i < files.size(); ++i)
        if (!aside[i]) kept.push_back(std::move(files[i]));
    files = std::move(kept);
}

/// @param others  in the order of their third coordinate.
bool atPlaceOf(const SliceFacts& slice, const std::vector<const SliceFacts*>& others) {
    const auto first = std::lower_bound(others.begin(), others.end(), slice.position.z() - kSamePlaceMm,
                                        [](const SliceFacts* s, double z) { return s->position.z() < z; });
    const auto last = std::upper_bound(first, others.end(), slice.position.z() + kSamePlaceMm,
                                       [](double z, const SliceFacts* s) { return z < s->position.z(); });
    return std::any_of(first, last, [&](const SliceFacts* other) {
        return (slice.position - other->position).norm() < kSamePlaceMm &&
               slice.phase.percent == other->phase.percent && slice.phase.triggerMs == other->phase.triggerMs;
    });
}

/// Files with loss whose every slice is there without loss too.
std::size_t markLossy(const std::vector<FileFacts>& files, std::vector<bool>& aside) {
    std::vector<const SliceFacts*> clean;
    for (const FileFacts& file : files)
        if (!file.lossy)
            for (const SliceFacts& slice : file.slices)
                clean.push_back(&slice);
    std::sort(clean.begin(), clean.end(),
              [](const SliceFacts* a, const SliceFacts* b) { return a->position.z() < b->position.z(); });
    std::size_t marked = 0;
    for (std::size_t i = 0; i < files.size(); ++i) {
        const auto& slices = files[i].slices;
        if (!clean.empty() && files[i].lossy && !slices.empty() &&
            std::all_of(slices.begin(), slices.end(),
                        [&](const SliceFacts& s) { return atPlaceOf(s, clean); })) {
            aside[i] = true;
            ++marked;
        }
    }
    return marked;
}

} // namespace

std::vector<core::Notice> setCopiesAside(std::vector<FileFacts>& files, const core::WorkContext& work) {
    std::vector<core::Notice> notices;
    std::map<std::string, std::vector<std::size_t>> byUid;
    for (std::size_t i = 0; i < files.size(); ++i)
        byUid[files[i].sopInstanceUid].push_back(i);
    std::vector<bool> aside(files.size());
    std::size_t copies = 0;
    for (const auto& [uid, same] : byUid)
        if (same.size() > 1 && !uid.empty()) copies += markCopies(files, same, aside, work);
    if (copies > 0) {
        notices.push_back({"copies-set-aside",
                           std::to_string(copies) + " file(s) hold an image again, by " +
                               describe(tags::SopInstanceUid) + "; each image is used once.",
                           {}});
        remove(files, aside);
    }
    aside.assign(files.size(), false);
    if (const std::size_t lossy = markLossy(files, aside)) {
        notices.push_back({"lossy-set-aside",
                           std::to_string(lossy) + " file(s) are compressed with loss and lie at the place "
                                                   "of others that are not; they were set aside.",
                           {}});
        remove(files, aside);
    }
    return notices;
}

} // namespace gauge::dicomio
