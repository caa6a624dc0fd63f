#include "dicomio/ultrasound/volume_frames.h"

#include <algorithm>
#include <map>
#include <string>
#include <utility>

namespace gauge::dicomio {
namespace {

using core::ErrorCode;
using core::failure;
using core::Result;

/// One frame's functional groups: its own before those of all frames.
class FrameGroups {
public:
    FrameGroups(const Dataset& own, const Dataset* shared) : m_own(own), m_shared(shared) {}

    /// The item of `group` that holds `tag`; nullptr when neither does.
    const Dataset* holding(Tag group, Tag tag) const {
        for (const Dataset* groups : {&m_own, m_shared}) {
            const Dataset* item = groups ? groups->firstItem(group) : nullptr;
            if (item && item->has(tag)) return item;
        }
        return nullptr;
    }

    Result<std::vector<double>> required(Tag group, Tag tag, std::size_t count) const {
        const Dataset* item = holding(group, tag);
        if (item) return item->required(tag, count);
        return failure(ErrorCode::AttributeMissing,
                       describe(tag) + " is absent from " + describe(group) + ".", {{"tag", describe(tag)}});
    }

    Result<std::optional<double>> number(Tag group, Tag tag) const {
        const Dataset* item = holding(group, tag);
        return item ? item->number(tag) : std::optional<double>();
    }

    /// False for frames that say they show something else than tissue.
    bool isTissue() const {
        for (const Dataset* groups : {&m_own, m_shared}) {
            const Dataset* description =
                groups ? groups->firstItem(tags::UsImageDescriptionSequence) : nullptr;
            const Dataset* type = description ? description->firstItem(tags::ImageDataTypeSequence) : nullptr;
            if (!type) type = groups ? groups->firstItem(tags::ImageDataTypeSequence) : nullptr;
            if (!type) continue;
            const std::string kind = type->text(tags::UltrasoundDataType);
            return kind.empty() || kind == "TISSUE_INTENSITY";
        }
        return true;
    }

private:
    const Dataset& m_own;
    const Dataset* m_shared;
};

Result<SliceFacts> place(const ScannedFile& scanned, const FrameGroups& groups, int frame) {
    SliceFacts slice;
    slice.file = scanned.path;
    slice.frame = frame;
    slice.multiFrame = true;
    slice.rows = scanned.format->rows;
    slice.columns = scanned.format->columns;
    const auto position = groups.required(tags::PlanePositionVolumeSequence, tags::ImagePositionVolume, 3);
    if (!position) return tl::make_unexpected(position.error());
    const auto directions =
        groups.required(tags::PlaneOrientationVolumeSequence, tags::ImageOrientationVolume, 6);
    if (!directions) return tl::make_unexpected(directions.error());
    const auto spacing = groups.required(tags::PixelMeasuresSequence, tags::PixelSpacing, 2);
    if (!spacing) return tl::make_unexpected(spacing.error());
    slice.position = Eigen::Map<const Eigen::Vector3d>(position->data());
    slice.rowDirection = Eigen::Map<const Eigen::Vector3d>(directions->data());
    slice.columnDirection = Eigen::Map<const Eigen::Vector3d>(directions->data() + 3);
    slice.alongColumnMm = (*spacing)[0];
    slice.alongRowMm = (*spacing)[1];
    if (const auto apart = groups.number(tags::PixelMeasuresSequence, tags::SpacingBetweenSlices); apart)
        slice.spacingTagMm = *apart;
    return slice;
}

/// The moment of a frame: an offset in seconds, or an index.
struct Moment {
    std::optional<double> seconds;
    std::optional<double> index;
};

Result<Moment> moment(const FrameGroups& groups) {
    const auto seconds = groups.number(tags::TemporalPositionSequence, tags::TemporalPositionTimeOffset);
    if (!seconds) return tl::make_unexpected(seconds.error());
    const auto index = groups.number(tags::FrameContentSequence, tags::TemporalPositionIndex);
    if (!index) return tl::make_unexpected(index.error());
    return Moment{*seconds, *index};
}

struct PlacedFrame {
    SliceFacts slice;
    Moment moment;
};

Result<std::vector<VolumeFrames>> groupByTime(std::vector<PlacedFrame> frames) {
    const auto told = [&](auto member) {
        return static_cast<std::size_t>(
            std::count_if(frames.begin(), frames.end(),
                          [&](const PlacedFrame& f) { return (f.moment.*member).has_value(); }));
    };
    const std::size_t seconds = told(&Moment::seconds), indices = told(&Moment::index);
    const auto partly = [&](std::size_t count, Tag tag) {
        return failure(ErrorCode::GeometryContradictory,
                       describe(tag) + " is told of " + std::to_string(count) + " of " +
                           std::to_string(frames.size()) +
                           " frames: to which moment the others belong is not known.",
                       {{"tag", describe(tag)}});
    };
    if (seconds != 0 && seconds != frames.size()) return partly(seconds, tags::TemporalPositionTimeOffset);
    if (seconds == 0 && indices != 0 && indices != frames.size())
        return partly(indices, tags::TemporalPositionIndex);
    std::map<double, VolumeFrames> byTime;
    for (auto& frame : frames) {
        const double key = seconds ? *frame.moment.seconds : frame.moment.index.value_or(0.0);
        byTime[key].slices.push_back(std::move(frame.slice));
    }
    std::vector<VolumeFrames> groups;
    for (auto& [key, group] : byTime) {
        if (seconds) group.offsetMs = 1000.0 * (key - byTime.begin()->first);
        groups.push_back(std::move(group));
    }
    return groups;
}

core::Error ofFrame(core::Error error, int frame) {
    error.message = "frame " + std::to_string(frame + 1) + ": " + error.message;
    return error;
}

} // namespace

Result<std::vector<VolumeFrames>> volumeFrames(const ScannedFile& scanned,
                                               std::vector<core::Notice>& notices) {
    const auto& perFrame = scanned.dataset.items(tags::PerFrameFunctionalGroupsSequence);
    const Dataset* shared = scanned.dataset.firstItem(tags::SharedFunctionalGroupsSequence);
    const auto count = static_cast<std::size_t>(scanned.format->frames);
    if (perFrame.size() != count)
        return failure(ErrorCode::GeometryContradictory,
                       describe(tags::PerFrameFunctionalGroupsSequence) + " has " +
                           std::to_string(perFrame.size()) + " items for " + std::to_string(count) +
                           " frames: where the others lie is not known. Export the volume again.",
                       {{"tag", describe(tags::PerFrameFunctionalGroupsSequence)}});
    std::vector<PlacedFrame> frames;
    for (std::size_t f = 0; f < count; ++f) {
        const FrameGroups groups(perFrame[f], shared);
        if (!groups.isTissue()) continue;
        const int frame = static_cast<int>(f);
        auto slice = place(scanned, groups, frame);
        if (!slice) return tl::make_unexpected(ofFrame(slice.error(), frame));
        auto when = moment(groups);
        if (!when) return tl::make_unexpected(ofFrame(when.error(), frame));
        frames.push_back({std::move(*slice), *when});
    }
    if (frames.empty())
        return failure(ErrorCode::ObjectUnsupported,
                       describe(tags::UltrasoundDataType) +
                           " names no frame as TISSUE_INTENSITY: there is no echo of "
                           "tissue to measure on.");
    if (frames.size() < count)
        notices.push_back(
            {"volume-data-set-aside",
             std::to_string(count - frames.size()) + " of " + std::to_string(count) +
                 " frames show something else than tissue (flow, for example) and are set aside.",
             {}});
    return groupByTime(std::move(frames));
}

} // namespace gauge::dicomio
