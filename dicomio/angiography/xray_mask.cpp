#include "dicomio/angiography/xray_mask.h"

#include "dicomio/angiography/frame_scope.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <string>

namespace gauge::dicomio {
namespace {

using core::MaskOperation;
using core::MaskSubtraction;

class MaskReading {
public:
    MaskReading(int frames, std::vector<core::Notice>& notices) : m_frames(frames), m_notices(notices) {}

    std::optional<MaskSubtraction> read(const Dataset& item) {
        const std::string operation = item.text(tags::MaskOperation);
        if (operation == "NONE") return std::nullopt;
        MaskSubtraction mask;
        if (operation == "TID")
            mask.operation = MaskOperation::TimeDifference;
        else if (operation != "AVG_SUB")
            return leftOut(describe(tags::MaskOperation) + " is \"" + operation.substr(0, 16) +
                           "\", which is not subtracted here.");
        const auto ranges = rangesOf(item);
        const auto masks = framesOf(item, tags::MaskFrameNumbers);
        if (!ranges || !masks) return std::nullopt;
        mask.ranges = *ranges;
        mask.maskFrames = *masks;
        if (mask.operation == MaskOperation::Average && mask.maskFrames.empty())
            return leftOut(describe(tags::MaskFrameNumbers) + " is absent: there is nothing to subtract.");
        const auto offset = item.integer(tags::TidOffset),
                   averaged = item.integer(tags::ContrastFrameAveraging);
        if (!offset || !averaged) return leftOut((offset ? averaged.error() : offset.error()).message);
        mask.timeOffset = offset->value_or(1);
        mask.contrastFrames = std::clamp(averaged->value_or(1), 1, m_frames);
        if (mask.operation == MaskOperation::TimeDifference &&
            (mask.timeOffset == 0 || mask.timeOffset <= -m_frames || mask.timeOffset >= m_frames))
            return leftOut(describe(tags::TidOffset) + " is " + std::to_string(mask.timeOffset) +
                           " in a run of " + std::to_string(m_frames) + " frames.");
        sayShift(item);
        return mask;
    }

private:
    std::nullopt_t leftOut(const std::string& why) {
        m_notices.push_back({"mask-unusable", "A mask of the run is left out: " + why, {}});
        return std::nullopt;
    }

    /// Frame numbers as told, from 0 here; nullopt when one is not of this run.
    std::optional<std::vector<int>> framesOf(const Dataset& item, Tag tag) {
        const auto numbers = item.numbers(tag);
        if (!numbers) return leftOut(numbers.error().message);
        std::vector<int> frames;
        for (const double number : numbers->value_or(std::vector<double>{})) {
            if (!(number >= 1.0 && number <= m_frames && number == std::floor(number)))
                return leftOut(describe(tag) + " names frame " + std::to_string(std::lround(number)) +
                               " of " + std::to_string(m_frames) + ".");
            frames.push_back(static_cast<int>(number) - 1);
        }
        return frames;
    }

    std::optional<std::vector<core::FrameRange>> rangesOf(const Dataset& item) {
        const auto ends = framesOf(item, tags::ApplicableFrameRange);
        if (!ends) return std::nullopt;
        std::vector<core::FrameRange> ranges;
        for (std::size_t i = 0; i + 1 < ends->size(); i += 2)
            ranges.push_back({(*ends)[i], (*ends)[i + 1]});
        const bool backward =
            std::any_of(ranges.begin(), ranges.end(), [](const auto& r) { return r.last < r.first; });
        if (ends->size() % 2 != 0 || backward)
            return leftOut(describe(tags::ApplicableFrameRange) +
                           " holds no pairs of first and last frames.");
        return ranges;
    }

    void sayShift(const Dataset& item) {
        const auto shift = item.numbers(tags::MaskSubPixelShift);
        if (!shift || !*shift ||
            std::all_of((*shift)->begin(), (*shift)->end(), [](double s) { return s == 0.0; }))
            return;
        m_notices.push_back({"mask-shift-ignored",
                             describe(tags::MaskSubPixelShift) +
                                 " is not applied: edges may show where the mask does not fit.",
                             {}});
    }

    int m_frames;
    std::vector<core::Notice>& m_notices;
};

} // namespace

XrayMasks xrayMasks(const Dataset& dataset, int frames, std::vector<core::Notice>& notices) {
    XrayMasks out;
    MaskReading reading(frames, notices);
    for (const Dataset& item : dataset.items(tags::MaskSubtractionSequence))
        if (auto mask = reading.read(item)) out.masks.push_back(std::move(*mask));
    out.shownSubtracted = !out.masks.empty() && dataset.text(tags::RecommendedViewingMode) == "SUB";
    const std::string relation =
        XrayScope(dataset, 0)
            .holding(tags::FramePixelDataPropertiesSequence, tags::PixelIntensityRelationship)
            .text(tags::PixelIntensityRelationship);
    if (relation == "LIN") out.relation = core::IntensityRelation::Linear;
    if (relation == "LOG") out.relation = core::IntensityRelation::Logarithmic;
    return out;
}

} // namespace gauge::dicomio
