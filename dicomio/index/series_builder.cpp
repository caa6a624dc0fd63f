#include "dicomio/index/series_builder.h"

#include "dicomio/ct/ct_requirements.h"
#include "dicomio/ct/stack_geometry.h"
#include "dicomio/index/copies.h"
#include "dicomio/index/phases.h"

#include <algorithm>
#include <map>

namespace gauge::dicomio {
namespace {

using core::ErrorCode;

PhaseEntry entryOf(const PhaseGroup& group) {
    PhaseEntry entry{group.percent, group.triggerMs, group.label, {}};
    for (const SliceFacts& slice : group.slices)
        entry.images.push_back({slice.file, slice.sopInstanceUid, slice.frame});
    return entry;
}

/// Images of a phase in the order of the proof.
void sortImages(PhaseEntry& entry, const std::vector<std::size_t>& order) {
    std::vector<ImageReference> sorted;
    for (const std::size_t i : order)
        sorted.push_back(entry.images[i]);
    entry.images = std::move(sorted);
}

std::vector<SliceFacts> takeSlices(std::vector<FileFacts>& files, std::size_t& localizers) {
    std::vector<SliceFacts> slices;
    for (FileFacts& file : files)
        for (SliceFacts& slice : file.slices) {
            if (slice.localizer)
                ++localizers;
            else
                slices.push_back(std::move(slice));
        }
    return slices;
}

/// Proves one phase; what it finds goes to the series. Returns true when a volume can be made.
bool provePhase(const PhaseGroup& group, PhaseEntry& entry, SeriesEntry& series, bool only) {
    auto proved = proveStack(group.slices);
    if (!proved) {
        core::Notice notice = noticeOf(proved.error());
        if (!only) notice.text = "Phase " + group.label + ": " + notice.text;
        const bool single = group.slices.size() == 1;
        if (single && only)
            notice = {"single-image",
                      label(group.slices.front()) + " is the only image of the series: it can be listed, but "
                                                    "nothing can be measured without a volume.",
                      {}};
        addMessage(series, std::move(notice), only && !single);
        return false;
    }
    sortImages(entry, proved->order);
    for (core::Notice& notice : proved->notices)
        addMessage(series, std::move(notice), false);
    if (!series.spacingMm) {
        series.spacingMm = proved->spacingMm;
        series.tiltDeg = proved->tiltDeg;
    }
    return true;
}

/// What hinders Hounsfield units, if anything.
bool checkValues(const std::vector<SliceFacts>& slices, const PixelFormat& format, SeriesEntry& series) {
    for (const SliceFacts& slice : slices) {
        const auto usable = checkHounsfield(slice, format);
        if (usable) continue;
        if (isOtherQuantity(slice))
            addMessage(
                series,
                {"not-hounsfield", usable.error().message + " The series is listed, but not measured.", {}},
                false);
        else
            addMessage(series, noticeOf(usable.error()), true);
        return false;
    }
    return true;
}

void buildCt(std::vector<FileFacts>& files, SeriesEntry& series) {
    for (const FileFacts& file : files)
        if (file.geometryError) {
            addMessage(series, noticeOf(*file.geometryError), true);
            return;
        }
    const auto format = files.front().format;
    std::size_t localizers = 0;
    std::vector<SliceFacts> slices = takeSlices(files, localizers);
    if (localizers > 0)
        addMessage(series,
                   {"localizers-set-aside",
                    std::to_string(localizers) + " scout image(s) (" + describe(tags::ImageType) +
                        " LOCALIZER) were set aside.",
                    {}},
                   false);
    if (slices.empty() || !format) return;
    const bool hounsfield = checkValues(slices, *format, series);
    PhaseSplit split = splitPhases(std::move(slices));
    for (core::Notice& notice : split.notices)
        addMessage(series, std::move(notice), false);
    const bool only = split.phases.size() == 1;
    std::size_t proved = 0;
    for (const PhaseGroup& group : split.phases) {
        series.phases.push_back(entryOf(group));
        proved += provePhase(group, series.phases.back(), series, only) ? 1 : 0;
    }
    if (proved == 0 && !only)
        addMessage(series, {"nothing-usable", "No phase of the series has a usable geometry.", {}}, true);
    series.measurable = proved > 0 && hounsfield && series.status != SeriesStatus::Refused;
}

/// Series whose images are not stacked: all images in one entry.
void listImages(const std::vector<FileFacts>& files, SeriesEntry& series) {
    PhaseEntry all{std::nullopt, std::nullopt, "ungated", {}};
    for (const FileFacts& file : files)
        for (int frame = 0; frame < file.frames; ++frame)
            all.images.push_back({file.path, file.sopInstanceUid, frame});
    if (!all.images.empty()) series.phases.push_back(std::move(all));
}

/// Other modalities are not measured; where their images claim places in the patient, a broken stack is told
/// too.
void buildOther(const std::vector<FileFacts>& files, SeriesEntry& series) {
    addMessage(series,
               {"kind-unsupported",
                "Images of this kind (" +
                    (series.modality.empty() ? std::string("no modality") : series.modality) +
                    ") are not measured by this program.",
                {}},
               true);
    std::vector<SliceFacts> slices;
    for (const FileFacts& file : files) {
        if (file.geometryError) {
            addMessage(series, noticeOf(*file.geometryError), true);
            return;
        }
        slices.insert(slices.end(), file.slices.begin(), file.slices.end());
    }
    if (slices.size() < 2) return;
    const auto proved = proveStack(slices);
    if (proved) {
        series.spacingMm = proved->spacingMm;
        series.tiltDeg = proved->tiltDeg;
    } else {
        addMessage(series, noticeOf(proved.error()), true);
    }
}

void buildByKind(std::vector<FileFacts>& files, SeriesEntry& series) {
    const bool scaled =
        std::all_of(files.begin(), files.end(), [](const FileFacts& f) { return f.hasLengthScale; });
    if (series.kind == "ct" || series.kind == "ct-enhanced") {
        buildCt(files, series);
        return;
    }
    listImages(files, series);
    if (series.kind == "ultrasound" || series.kind == "x-ray") {
        addMessage(series,
                   {"listed-only",
                    "The images are listed and can be decoded; measuring in them is not offered yet.",
                    {}},
                   false);
        if (!scaled)
            addMessage(
                series,
                {"no-length-scale",
                 series.kind == "ultrasound"
                     ? "No region says how long a pixel is (" + describe(tags::SequenceOfUltrasoundRegions) +
                           "): no millimetres without a calibration."
                     : "Neither " + describe(tags::ImagerPixelSpacing) + " nor " +
                           describe(tags::PixelSpacing) + " is given: no millimetres without a calibration.",
                 {}},
                false);
    } else if (series.kind == "report") {
        addMessage(series,
                   {"listed-only", "Reports are listed; reading their measurements is not offered yet.", {}},
                   false);
    } else if (series.kind == "secondary-capture") {
        addMessage(series,
                   {"secondary-capture",
                    "These are pictures made after the examination (secondary captures), without geometry or "
                    "scale; they were set aside.",
                    {}},
                   true);
    } else {
        buildOther(files, series);
    }
}

} // namespace

core::Notice noticeOf(const core::Error& error) {
    return {std::string(core::name(error.code)), error.message, error.facts};
}

void addMessage(SeriesEntry& series, core::Notice message, bool refuse) {
    if (refuse) {
        series.status = SeriesStatus::Refused;
        series.measurable = false;
    } else if (series.status == SeriesStatus::Ok) {
        series.status = SeriesStatus::Notice;
    }
    const bool known =
        std::any_of(series.messages.begin(), series.messages.end(),
                    [&](const core::Notice& m) { return m.code == message.code && m.text == message.text; });
    if (!known) series.messages.push_back(std::move(message));
}

SeriesEntry buildSeries(std::vector<FileFacts> files) {
    SeriesEntry series;
    const FileFacts& first = files.front();
    series.seriesUid = first.seriesUid;
    series.studyUid = first.studyUid;
    series.patientId = first.patientId;
    series.patientName = first.patientName;
    series.modality = first.modality;
    series.kind = first.kind;
    series.description = first.description;
    series.frameOfReferenceUid = first.frameOfReferenceUid;
    for (core::Notice& notice : setCopiesAside(files))
        addMessage(series, std::move(notice), false);
    std::size_t reported = 0;
    for (FileFacts& file : files) {
        series.imageCount += file.frames;
        for (core::Notice& notice : file.notices)
            if (++reported <= 3) // the same deviation in hundreds of files is told for the first ones
                addMessage(series, {notice.code, file.path.string() + ": " + notice.text, {}}, false);
    }
    const bool frames = std::all_of(files.begin(), files.end(), [&](const FileFacts& f) {
        return f.frameOfReferenceUid == series.frameOfReferenceUid;
    });
    if (!frames && (series.kind == "ct" || series.kind == "ct-enhanced"))
        addMessage(series,
                   {"geometry-contradictory",
                    "The images of the series have different values of " +
                        describe(tags::FrameOfReferenceUid) + ": their positions do not refer to one origin.",
                    {}},
                   true);
    buildByKind(files, series);
    return series;
}

} // namespace gauge::dicomio
