#include "core/fluoro/scale_object.h"

#include "core/number_text.h"

#include <cmath>

namespace gauge::core {
namespace {

constexpr double kLeastFrench = 3.0, kMostFrench = 34.0;
constexpr double kLeastMm = 0.5, kMostMm = 15.0;
constexpr double kSizesApart = 0.15;
/// A sheath's wall, both sides together, is hardly thinner; common practice, no source.
constexpr double kLeastWallMm = 0.2;

tl::unexpected<Error> unusable(const std::string& what) {
    return failure(ErrorCode::InvalidArgument, "Cannot use the object as a scale: " + what);
}

Result<void> checkRanges(const ScaleObject& object) {
    if (!object.french && !object.outerDiameterMm)
        return unusable("no size was entered. Enter its outer diameter.");
    const auto outside = [](double v, double low, double high) { return !(v >= low && v <= high); };
    if (object.french && outside(*object.french, kLeastFrench, kMostFrench))
        return unusable(general(*object.french) + " French lies outside " + general(kLeastFrench) + " to " +
                        general(kMostFrench) + ".");
    if (object.outerDiameterMm && outside(*object.outerDiameterMm, kLeastMm, kMostMm))
        return unusable("an outer diameter of " + general(*object.outerDiameterMm) + " mm lies outside " +
                        general(kLeastMm) + " to " + general(kMostMm) + " mm.");
    return {};
}

Result<void> checkSheath(const ScaleObject& object) {
    if (!object.outerDiameterMm)
        return unusable(
            "a sheath's French (" + general(*object.french) +
            " F) is the bore inside it, not its outer diameter. Enter the outer diameter in mm from its "
            "instructions, or use a catheter.");
    if (object.french && *object.outerDiameterMm < *object.french * kMmPerFrench + kLeastWallMm)
        return unusable("the outer diameter of " + general(*object.outerDiameterMm) +
                        " mm leaves no wall around a bore of " + general(*object.french) + " F (" +
                        fixed(*object.french * kMmPerFrench, 2) +
                        " mm). The bore seems to have been entered as the outer diameter.");
    return {};
}

Result<void> checkCatheter(const ScaleObject& object) {
    if (!object.french || !object.outerDiameterMm) return {};
    const double byFrench = *object.french * kMmPerFrench;
    if (std::abs(*object.outerDiameterMm - byFrench) <= kSizesApart * byFrench) return {};
    return unusable(general(*object.french) + " F means " + fixed(byFrench, 2) +
                    " mm, but the outer diameter entered is " + general(*object.outerDiameterMm) +
                    " mm. Correct one of them; for a sheath, say that it is one.");
}

bool isWholeFrench(double mm) {
    const double french = mm / kMmPerFrench;
    return std::abs(french - std::round(french)) < 0.02;
}

} // namespace

Result<KnownDiameter> outerDiameter(const ScaleObject& object) {
    if (auto ranges = checkRanges(object); !ranges) return tl::make_unexpected(ranges.error());
    const bool sheath = object.kind == ScaleObjectKind::Sheath;
    if (auto sizes = sheath ? checkSheath(object) : checkCatheter(object); !sizes)
        return tl::make_unexpected(sizes.error());
    KnownDiameter known;
    known.mm = object.outerDiameterMm.value_or(object.french.value_or(0.0) * kMmPerFrench);
    known.relativeUncertainty = object.outerDiameterMm ? kPrintedDiameterRelative : kFrenchDiameterRelative;
    known.words = (object.french ? general(*object.french) + " F " : std::string()) +
                  (sheath ? "sheath, " : "catheter, ") + fixed(known.mm, 2) + " mm outside";
    if (sheath && !object.french && isWholeFrench(known.mm))
        known.notices.push_back({"sheath-french-suspected",
                                 "The sheath's outer diameter of " + fixed(known.mm, 2) +
                                     " mm is exactly " + general(std::round(known.mm / kMmPerFrench)) +
                                     " F. A sheath's French is its bore: make sure that this is the outside.",
                                 {}});
    if (object.filledWithContrast) {
        known.relativeUncertainty = std::hypot(known.relativeUncertainty, kContrastFilledRelative);
        known.notices.push_back(
            {"scale-object-contrast-filled",
             "Filled with contrast, the object shows its bore and reads 4 to 16 % too small; "
             "lengths measured with it come out too long. Flush it, or use another scale.",
             {}});
    }
    return known;
}

} // namespace gauge::core
