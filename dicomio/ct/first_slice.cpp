#include "dicomio/ct/first_slice.h"

#include "dicomio/ct/ct_requirements.h"
#include "dicomio/ct/hounsfield.h"
#include "dicomio/pixel/frame_reader.h"

#include <span>
#include <string>

namespace gauge::dicomio {
namespace {

core::Result<FirstSlice> readOne(const ImageReference& image) {
    const auto scanned = scanFile(image.file);
    if (!scanned) return tl::make_unexpected(scanned.error());
    const auto facts = sliceFacts(*scanned, image.frame);
    if (!facts) return tl::make_unexpected(facts.error());
    if (const auto usable = checkHounsfield(*facts, *scanned->format); !usable) return tl::make_unexpected(usable.error());
    const auto reader = FrameReader::open(*scanned);
    if (!reader) return tl::make_unexpected(reader.error());
    FirstSlice slice;
    slice.columns = facts->columns;
    slice.rows = facts->rows;
    slice.alongRowMm = facts->alongRowMm;
    slice.alongColumnMm = facts->alongColumnMm;
    slice.rowDirection = facts->rowDirection;
    slice.columnDirection = facts->columnDirection;
    slice.hounsfield.resize(static_cast<std::size_t>(slice.columns) * static_cast<std::size_t>(slice.rows));
    // int16 and its unsigned twin may share memory.
    const std::span words(reinterpret_cast<std::uint16_t*>(slice.hounsfield.data()), slice.hounsfield.size());
    if (const auto read = reader->readWords(facts->frame, words); !read) return tl::make_unexpected(read.error());
    toHounsfield(slice.hounsfield, *scanned->format, *facts->rescale, paddingOf(scanned->dataset, *scanned->format));
    return slice;
}

} // namespace

core::Result<FirstSlice> readMiddleSlice(const SeriesEntry& series, std::size_t phase) {
    if (phase >= series.phases.size() || series.phases[phase].images.empty())
        return core::failure(core::ErrorCode::InvalidArgument, "Cannot show a slice of series " + series.seriesUid + ": its phase " +
                                                                   std::to_string(phase + 1) + " holds no images.");
    const auto& images = series.phases[phase].images;
    const std::size_t middle = images.size() / 2;
    auto slice = readOne(images[middle]);
    if (!slice)
        return core::failure(slice.error().code, "Cannot read " + images[middle].file.string() + ": " + slice.error().message, slice.error());
    slice->number = middle + 1;
    slice->count = images.size();
    return slice;
}

} // namespace gauge::dicomio
