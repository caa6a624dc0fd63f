// Subtraction of a mask from the frames of a run: vessels alone, bone and soft tissue taken away. For looking
// only: nothing is measured on subtracted frames, since what moved between mask and frame leaves false edges.
#pragma once

#include "core/cine/frame_source.h"
#include "core/result.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace gauge::core {

enum class MaskOperation {
    Average,        ///< AVG_SUB: the mean of the mask frames is subtracted
    TimeDifference, ///< TID: the frame `timeOffset` earlier is subtracted
};

/// Frames counted from 0, both ends included.
struct FrameRange {
    int first = 0;
    int last = 0;
};

struct MaskSubtraction {
    MaskOperation operation = MaskOperation::Average;
    std::vector<int> maskFrames;    ///< of Average: at least one, 0-based
    int timeOffset = 1;             ///< of TimeDifference, frames, not 0; negative: a later frame
    std::vector<FrameRange> ranges; ///< where it applies; empty: everywhere
    int contrastFrames = 1;         ///< so many frames from the shown one on are averaged first, >= 1

    bool appliesTo(int frame) const;
};

/// How stored values follow from the X-rays that arrived (PixelIntensityRelationship).
enum class IntensityRelation {
    Linear,      ///< LIN: proportional; subtraction needs their logarithm
    Logarithmic, ///< LOG: subtracted as they are
    Displayed,   ///< DISP, absent or other: made for looking at; subtracted as they are
};

/// Differences of frame and mask, 0 where nothing changed: of stored values, or 1000 x the difference of
/// natural logarithms for a linear relation.
/// @param mask  must apply to `frame`. @param lowest  lowest stored value possible, taken as no X-rays.
/// @errors InvalidArgument (frame out of range, mask does not apply, mask frames out of range or none); those
/// of reading frames.
Result<GreyFrame> subtractMask(const FrameSource& frames, int frame, const MaskSubtraction& mask,
                               IntensityRelation relation, std::int32_t lowest = 0);

} // namespace gauge::core
