#include "dicomio/ct/slice_facts.h"

#include <algorithm>
#include <array>

namespace gauge::dicomio {
namespace {

using core::ErrorCode;
using core::failure;

/// The data sets in which an attribute of a frame may stand.
class FrameScope {
public:
    FrameScope(const Dataset& dataset, int frame) : m_dataset(dataset) {
        const auto& perFrame = dataset.items(tags::PerFrameFunctionalGroupsSequence);
        if (static_cast<std::size_t>(frame) < perFrame.size())
            m_own = &perFrame[static_cast<std::size_t>(frame)];
        m_shared = dataset.firstItem(tags::SharedFunctionalGroupsSequence);
    }

    /// The data set that holds `tag`: within the functional group `group` of the frame, of all frames, or
    /// outside.
    const Dataset& holding(Tag group, Tag tag) const {
        for (const Dataset* functional : {m_own, m_shared}) {
            const Dataset* item = functional ? functional->firstItem(group) : nullptr;
            if (item && item->has(tag)) return *item;
        }
        return m_dataset;
    }

private:
    const Dataset& m_dataset;
    const Dataset* m_own = nullptr;
    const Dataset* m_shared = nullptr;
};

/// Advisory numbers: what cannot be read counts as not told, since nothing rests on it.
std::optional<double> advisory(const Dataset& dataset, Tag tag) {
    const auto value = dataset.number(tag);
    return value ? *value : std::nullopt;
}

core::Result<void> readPlace(const FrameScope& scope, SliceFacts& slice) {
    const auto position = scope.holding(tags::PlanePositionSequence, tags::ImagePositionPatient)
                              .required(tags::ImagePositionPatient, 3);
    if (!position) return tl::make_unexpected(position.error());
    const auto directions = scope.holding(tags::PlaneOrientationSequence, tags::ImageOrientationPatient)
                                .required(tags::ImageOrientationPatient, 6);
    if (!directions) return tl::make_unexpected(directions.error());
    slice.position = Eigen::Map<const Eigen::Vector3d>(position->data());
    slice.rowDirection = Eigen::Map<const Eigen::Vector3d>(directions->data());
    slice.columnDirection = Eigen::Map<const Eigen::Vector3d>(directions->data() + 3);
    return {};
}

core::Result<void> readSpacing(const FrameScope& scope, const Dataset& dataset, SliceFacts& slice) {
    const Dataset& measures = scope.holding(tags::PixelMeasuresSequence, tags::PixelSpacing);
    const auto spacing = measures.required(tags::PixelSpacing, 2);
    if (!spacing) {
        core::Error error = spacing.error();
        if (error.code == ErrorCode::AttributeMissing && dataset.has(tags::ImagerPixelSpacing))
            error.message +=
                " " + describe(tags::ImagerPixelSpacing) + " measures at the detector and is no substitute.";
        return tl::make_unexpected(std::move(error));
    }
    if (!((*spacing)[0] > 0.0 && (*spacing)[1] > 0.0))
        return failure(ErrorCode::SpacingInvalid,
                       describe(tags::PixelSpacing) + " is \"" + measures.text(tags::PixelSpacing) +
                           "\"; both values must be above zero.",
                       {{"tag", describe(tags::PixelSpacing)}, {"value", measures.text(tags::PixelSpacing)}});
    slice.alongColumnMm = (*spacing)[0];
    slice.alongRowMm = (*spacing)[1];
    slice.spacingTagMm = advisory(scope.holding(tags::PixelMeasuresSequence, tags::SpacingBetweenSlices),
                                  tags::SpacingBetweenSlices);
    slice.thicknessMm =
        advisory(scope.holding(tags::PixelMeasuresSequence, tags::SliceThickness), tags::SliceThickness);
    return {};
}

core::Result<void> readRescale(const FrameScope& scope, SliceFacts& slice) {
    const Dataset& values = scope.holding(tags::PixelValueTransformationSequence, tags::RescaleSlope);
    const auto slope = values.number(tags::RescaleSlope), intercept = values.number(tags::RescaleIntercept);
    if (!slope) return tl::make_unexpected(slope.error());
    if (!intercept) return tl::make_unexpected(intercept.error());
    if (*slope && *intercept) slice.rescale = Rescale{**slope, **intercept, values.text(tags::RescaleType)};
    return {};
}

void readPhase(const FrameScope& scope, SliceFacts& slice) {
    const auto in = [&](Tag group, Tag tag) { return advisory(scope.holding(group, tag), tag); };
    PhaseFacts& phase = slice.phase;
    phase.percent = in(tags::CardiacSynchronizationSequence, tags::NominalPercentageOfCardiacPhase);
    phase.triggerMs = in(tags::CardiacSynchronizationSequence, tags::NominalCardiacTriggerDelayTime);
    if (!phase.triggerMs) phase.triggerMs = in(tags::CardiacSynchronizationSequence, tags::TriggerTime);
    phase.temporal = in(tags::FrameContentSequence, tags::TemporalPositionIndex);
    if (!phase.temporal)
        phase.temporal = in(tags::TemporalPositionSequence, tags::TemporalPositionTimeOffset);
    if (!phase.temporal)
        phase.temporal = in(tags::TemporalPositionSequence, tags::TemporalPositionIdentifier);
}

std::optional<double> positive(std::optional<double> value) {
    return value && *value > 0.0 ? value : std::nullopt; // scanners write 0 for "not known"
}

void readBeats(const FrameScope& scope, SliceFacts& slice) {
    const auto cardiac = [&](Tag tag) {
        return advisory(scope.holding(tags::CardiacSynchronizationSequence, tag), tag);
    };
    BeatFacts& beats = slice.beats;
    for (const Tag tag :
         {tags::RRIntervalTimeNominal, tags::NominalInterval, tags::CardiacRRIntervalSpecified})
        if (!beats.beatMs) beats.beatMs = positive(cardiac(tag));
    if (const auto rate = positive(cardiac(tags::HeartRate)); rate && !beats.beatMs)
        beats.beatMs = 60000.0 / *rate;
    beats.shortestMs = positive(cardiac(tags::LowRRValue));
    beats.longestMs = positive(cardiac(tags::HighRRValue));
    beats.delayMs = cardiac(tags::ActualCardiacTriggerDelayTime);
    if (!beats.delayMs) beats.delayMs = slice.phase.triggerMs;
    beats.acquisitionNumber =
        advisory(scope.holding(tags::FrameContentSequence, tags::FrameAcquisitionNumber),
                 tags::FrameAcquisitionNumber);
    if (!beats.acquisitionNumber)
        beats.acquisitionNumber = advisory(scope.holding(tags::FrameContentSequence, tags::AcquisitionNumber),
                                           tags::AcquisitionNumber);
}

/// The attribute that an item of DimensionIndexSequence points to.
std::optional<Tag> pointedTo(const Dataset& dimension) {
    const Attribute* pointer = dimension.find(tags::DimensionIndexPointer);
    if (!pointer || pointer->value.size() != 4) return std::nullopt;
    const auto byte = [&](std::size_t i) {
        return static_cast<unsigned>(static_cast<unsigned char>(pointer->value[i]));
    };
    return Tag{static_cast<std::uint16_t>(byte(0) | byte(1) << 8),
               static_cast<std::uint16_t>(byte(2) | byte(3) << 8)};
}

bool countsMoments(Tag tag) {
    using namespace tags;
    return tag == NominalPercentageOfCardiacPhase || tag == NominalCardiacTriggerDelayTime ||
           tag == ActualCardiacTriggerDelayTime || tag == TriggerTime || tag == TemporalPositionIndex ||
           tag == TemporalPositionTimeOffset || tag == TemporalPositionIdentifier;
}

/// Stack and moment of a frame of an Enhanced object (PS3.3 C.7.6.16.2.2, C.7.6.17).
void readDimensions(const FrameScope& scope, const Dataset& dataset, SliceFacts& slice) {
    slice.stack = scope.holding(tags::FrameContentSequence, tags::StackId).text(tags::StackId);
    const auto values = scope.holding(tags::FrameContentSequence, tags::DimensionIndexValues)
                            .numbers(tags::DimensionIndexValues);
    const auto& dimensions = dataset.items(tags::DimensionIndexSequence);
    if (!values || !*values || (*values)->size() != dimensions.size()) return;
    for (std::size_t i = 0; i < dimensions.size(); ++i)
        if (const auto tag = pointedTo(dimensions[i]); tag && countsMoments(*tag))
            slice.phase.dimension.push_back((**values)[i]);
}

core::Result<void> checkGroups(const Dataset& dataset, int frames) {
    const std::size_t groups = dataset.items(tags::PerFrameFunctionalGroupsSequence).size();
    if (groups == 0 || groups == static_cast<std::size_t>(frames)) return {};
    return failure(ErrorCode::GeometryContradictory,
                   describe(tags::PerFrameFunctionalGroupsSequence) + " has " + std::to_string(groups) +
                       " item(s) where " + describe(tags::NumberOfFrames) + " is " + std::to_string(frames) +
                       ": nothing tells which frame lies where.",
                   {{"tag", describe(tags::PerFrameFunctionalGroupsSequence)}});
}

/// LOCALIZER is the standard's word (PS3.3 C.8.2.1.1.1); some scanners write their own.
bool isLocalizer(const std::vector<std::string>& type) {
    return std::any_of(type.begin(), type.end(), [](const std::string& word) {
        return word == "LOCALIZER" || word == "SCOUT" || word == "TOPOGRAM";
    });
}

} // namespace

std::string label(const SliceFacts& slice) {
    return slice.file.string() +
           (slice.multiFrame ? " (frame " + std::to_string(slice.frame + 1) + ")" : std::string());
}

core::Result<SliceFacts> sliceFacts(const ScannedFile& scanned, int frame) {
    if (!scanned.format)
        return failure(ErrorCode::AttributeMissing, describe(tags::PixelData) + " is absent.",
                       {{"tag", describe(tags::PixelData)}});
    const FrameScope scope(scanned.dataset, frame);
    SliceFacts slice;
    slice.file = scanned.path;
    slice.frame = frame;
    slice.multiFrame = scanned.format->frames > 1;
    slice.sopInstanceUid = scanned.dataset.text(tags::SopInstanceUid);
    slice.rows = scanned.format->rows;
    slice.columns = scanned.format->columns;
    slice.tiltTagDeg = advisory(scanned.dataset, tags::GantryDetectorTilt);
    slice.localizer =
        isLocalizer(scanned.dataset.texts(tags::ImageType)) ||
        isLocalizer(scope.holding(tags::CtImageFrameTypeSequence, tags::FrameType).texts(tags::FrameType));
    readPhase(scope, slice);
    readBeats(scope, slice);
    readDimensions(scope, scanned.dataset, slice);
    if (slice.localizer) // set aside: its geometry need not hold
        return slice;
    if (auto groups = checkGroups(scanned.dataset, scanned.format->frames); !groups)
        return tl::make_unexpected(groups.error());
    if (auto place = readPlace(scope, slice); !place) return tl::make_unexpected(place.error());
    if (auto spacing = readSpacing(scope, scanned.dataset, slice); !spacing)
        return tl::make_unexpected(spacing.error());
    if (auto rescale = readRescale(scope, slice); !rescale) return tl::make_unexpected(rescale.error());
    return slice;
}

} // namespace gauge::dicomio
