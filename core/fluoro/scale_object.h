// Objects of known size in a fluoroscopy: how wide a catheter or sheath is, said in millimetres or in French,
// and how sure that is. Neighbours: object_scale.h makes a scale of it.
//
//   catheter: n French = n/3 mm outside            sheath: n French = what fits inside; the outside is wider
//        .----.                                        .--------.
//        |    | n/3 mm                                 | .----. |
//        '----'                                        | |    | | n/3 mm inside, outer diameter unknown
//                                                      | '----' |
#pragma once

#include "core/fluoro/fluoro_scale.h"
#include "core/result.h"

#include <optional>
#include <string>
#include <vector>

namespace gauge::core {

enum class ScaleObjectKind { Catheter, Sheath };

/// What the person entered; at least one size.
struct ScaleObject {
    ScaleObjectKind kind = ScaleObjectKind::Catheter;
    std::optional<double> french;          ///< 3 to 34
    std::optional<double> outerDiameterMm; ///< as printed in the instructions, or measured; 0.5 to 15
    bool filledWithContrast = false;       ///< then the picture shows the bore rather than the outside
};

struct KnownDiameter {
    double mm = 0.0;
    double relativeUncertainty = 0.0; ///< standard
    std::string words;                ///< "6 F catheter, 2.00 mm"
    std::vector<Notice> notices;
};

/// 1 French = 1/3 mm (from memory; universally used).
inline constexpr double kMmPerFrench = 1.0 / 3.0;
/// An outer diameter in mm: per type SD 0.02 to 0.03 mm, about 1 % ([Ccd1994]).
inline constexpr double kPrintedDiameterRelative = 0.01;
/// A diameter told in French only: real catheters are thinner than told and images add their own error; the
/// published range of guiding catheters as a scale, -8.9 to +4 % ([Herrman1994]), as a
/// rectangular distribution.
inline constexpr double kFrenchDiameterRelative = kCatheterRelativeUncertainty;
/// Filled with contrast they read 3.9 to 15.5 % too small ([Herrman1994]): root mean square of that range,
/// computed.
inline constexpr double kContrastFilledRelative = 0.10;

/// Outer diameter of what was entered.
/// @errors InvalidArgument: no size; sizes out of range; a sheath without an outer diameter in mm, or with
/// one that its bore (its French) does not fit into; a catheter whose two sizes differ by more than 15 %.
Result<KnownDiameter> outerDiameter(const ScaleObject& object);

} // namespace gauge::core
