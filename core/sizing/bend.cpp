#include "core/sizing/bend.h"

#include "core/sizing/percent.h"

namespace gauge::core {
namespace {

constexpr double kPartialShare = 2.0 / 3.0; // of the depth needed; own rule, see the header

} // namespace

const char* name(FoldedReach reach) {
    switch (reach) {
    case FoldedReach::NotNeeded:
        return "not-needed";
    case FoldedReach::Full:
        return "full";
    case FoldedReach::Partial:
        return "partial";
    case FoldedReach::None:
        return "none";
    case FoldedReach::Unknown:
        return "unknown";
    }
    return "unknown";
}

FoldedReach foldedReach(const Bend& bend, const ChartSize& size, double neededMm) {
    if (bend.neckLengthMm >= neededMm) return FoldedReach::NotNeeded;
    if (!bend.widthMm || !bend.depthMm) return FoldedReach::Unknown;
    const double offeredMm = bend.neckLengthMm + *bend.depthMm;
    const bool wide = *bend.widthMm >= size.acceptsMm.lo;
    const bool passable = *bend.widthMm >= diameterAtCompression(size.nominalMm, size.compressionPercent.hi);
    if (offeredMm >= neededMm)
        return wide ? FoldedReach::Full : passable ? FoldedReach::Partial : FoldedReach::None;
    return wide && offeredMm >= kPartialShare * neededMm ? FoldedReach::Partial : FoldedReach::None;
}

} // namespace gauge::core
