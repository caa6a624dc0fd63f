#include "core/fluoro/scale_object.h"

#include <cmath>
#include <cstdio>

namespace gauge::core {
namespace {

constexpr double kLeastFrench = 3.0, kMostFrench = 34.0;
constexpr double kLeastMm = 0.5, kMostMm = 15.0;
constexpr double kSizesApart = 0.15;
/// A sheath's wall, both sides together, is hardly thinner; common practice, no source.
constexpr double kLeastWallMm = 0.2;

std::string number(double value, const char* form = "%g") {
    char text[48];
    std::snprintf(text, sizeof text, form, value);
    return text;
}

tl::unexpected<Error> unusable(const std::string& what) {
    return failure(ErrorCode::InvalidArgument, "Cannot use the object as a scale: " + what);
}

Result<void> checkRanges(const ScaleObject& object) {
    if (!object.french && !object.outerDiameterMm)
        return unusable("no size was entered. Enter its outer diameter.");
    const auto outside = [](double v, double low, double high) { return !(v >= low && v <= high); };
    if (object.french && outside(*object.french, kLeastFrench, kMostFrench))
        return unusable(number(*object.french) + " French lies outside " + number(kLeastFrench) + " to " +
                        number(kMostFrench) + ".");
    if (object.outerDiameterMm && outside(*object.outerDiameterMm, kLeastMm, kMostMm))
        return unusable("an outer diameter of " + number(*object.outerDiameterMm) + " mm lies outside " +
                        number(kLeastMm) + " to " + number(kMostMm) + " mm.");
    return {};
}

Result<void> checkSheath(const ScaleObject& object) {
    if (!object.outerDiameterMm)
        return unusable(
            "a sheath's French (" + number(*object.french) +
            " F) is the bore inside it, not its outer diameter. Enter the outer diameter in mm from its "
            "instructions, or use a catheter.");
    if (object.french && *object.outerDiameterMm < *object.french * kMmPerFrench + kLeastWallMm)
        return unusable("the outer diameter of " + number(*object.outerDiameterMm) +
                        " mm leaves no wall around a bore of " + number(*object.french) + " F (" +
                        number(*object.french * kMmPerFrench, "%.2f") +
                        " mm). The bore seems to have been entered as the outer diameter.");
    return {};
}

Result<void> checkCatheter(const ScaleObject& object) {
    if (!object.french || !object.outerDiameterMm) return {};
    const double byFrench = *object.french * kMmPerFrench;
    if (std::abs(*object.outerDiameterMm - byFrench) <= kSizesApart * byFrench) return {};
    return unusable(number(*object.french) + " F means " + number(byFrench, "%.2f") +
                    " mm, but the outer diameter entered is " + number(*object.outerDiameterMm) +
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
    known.words = (object.french ? number(*object.french) + " F " : std::string()) +
                  (sheath ? "sheath, " : "catheter, ") + number(known.mm, "%.2f") + " mm outside";
    if (sheath && !object.french && isWholeFrench(known.mm))
        known.notices.push_back({"sheath-french-suspected",
                                 "The sheath's outer diameter of " + number(known.mm, "%.2f") +
                                     " mm is exactly " + number(std::round(known.mm / kMmPerFrench)) +
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
