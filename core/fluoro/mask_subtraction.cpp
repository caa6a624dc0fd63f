#include "core/fluoro/mask_subtraction.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace gauge::core {
namespace {

constexpr double kLogScale = 1000.0;

tl::unexpected<Error> cannot(const std::string& what) {
    return failure(ErrorCode::InvalidArgument, "Cannot subtract a mask: " + what);
}

std::vector<int> maskFramesOf(int frame, const MaskSubtraction& mask) {
    if (mask.operation == MaskOperation::TimeDifference) return {frame - mask.timeOffset};
    return mask.maskFrames;
}

/// Mean of frames, as values whose difference is meaningful.
Result<std::vector<double>> meanOf(const FrameSource& frames, std::span<const int> which,
                                   IntensityRelation relation, std::int32_t lowest) {
    std::vector<double> sum;
    for (const int index : which) {
        const auto frame = frames.grey(index);
        if (!frame) return tl::make_unexpected(frame.error());
        sum.resize(frame->values.size(), 0.0);
        for (std::size_t i = 0; i < sum.size(); ++i)
            sum[i] += static_cast<double>(frame->values[i]) - lowest;
    }
    for (double& value : sum) {
        value /= static_cast<double>(which.size());
        if (relation == IntensityRelation::Linear) value = kLogScale * std::log(std::max(0.0, value) + 1.0);
    }
    return sum;
}

} // namespace

bool MaskSubtraction::appliesTo(int frame) const {
    return ranges.empty() || std::any_of(ranges.begin(), ranges.end(), [&](const FrameRange& range) {
               return frame >= range.first && frame <= range.last;
           });
}

Result<GreyFrame> subtractMask(const FrameSource& frames, int frame, const MaskSubtraction& mask,
                               IntensityRelation relation, std::int32_t lowest) {
    const int count = frames.count();
    if (frame < 0 || frame >= count)
        return cannot("frame " + std::to_string(frame + 1) + " of " + std::to_string(count) +
                      " does not exist.");
    if (!mask.appliesTo(frame))
        return cannot("it does not apply to frame " + std::to_string(frame + 1) + ".");
    const std::vector<int> masks = maskFramesOf(frame, mask);
    if (masks.empty()) return cannot("it names no mask frame.");
    for (const int m : masks)
        if (m < 0 || m >= count)
            return cannot("its mask frame " + std::to_string(m + 1) + " is not among the " +
                          std::to_string(count) + " frames.");
    std::vector<int> contrast;
    for (int f = frame; f < std::min(count, frame + std::max(1, mask.contrastFrames)); ++f)
        contrast.push_back(f);
    const auto shown = meanOf(frames, contrast, relation, lowest),
               hidden = meanOf(frames, masks, relation, lowest);
    if (!shown) return tl::make_unexpected(shown.error());
    if (!hidden) return tl::make_unexpected(hidden.error());
    if (shown->size() != hidden->size()) return cannot("its frames differ in size.");
    GreyFrame out{frames.columns(), frames.rows(), std::vector<std::int32_t>(shown->size())};
    for (std::size_t i = 0; i < out.values.size(); ++i)
        out.values[i] = static_cast<std::int32_t>(std::lround((*shown)[i] - (*hidden)[i]));
    return out;
}

} // namespace gauge::core
