// From a measurement report that was read (report_reader.h) to readings for the comparison table: which numbers are of a
// kind that the table takes, in millimetres, with the pressure and the stage that the report states. What is left out is
// told with its reason; nothing is guessed from words.
//
//   concept + site ──► quantity      images ──► modality      stage, beat phase, pressure: as stated
//   longest diameter                 131222; 131223 of the ostium; Major Axis with the site of ostium or landing zone
//   perimeter-, area-derived         ours; perimeter / pi, 2 sqrt(area / pi) where only perimeter or area is given
//   depth                            131221; Depth of the appendage
#pragma once

#include "core/record/entries.h"
#include "dicomio/report/report_reader.h"

#include <optional>
#include <string>
#include <vector>

namespace gauge::dicomio {

/// One reading. `reading.observation.state` is empty; the moment says which pressure held.
struct ReportReading {
    core::TypedReading reading; ///< its note is what the report itself says about a reading that was typed in there
    std::optional<core::Moment> moment; ///< its id as the report names it, or empty
    std::string group;  ///< of the record that the report was made of, where it is ours: "ct", "echo/m2"; else empty
    std::string valueId; ///< in that group
    std::string tracking; ///< the report's own name of the group
    std::string method;   ///< as stated
    std::string observer, time;
    /// What the report does not say and was taken: "stage", "derivation", "computed" (from a perimeter or an area).
    std::vector<std::string> assumed;
};

/// Why a number is no reading.
enum class LeftOut {
    UnknownQuantity,   ///< a concept that the table has no row for
    PlaceNotStated,    ///< neither ostium nor landing zone
    ModalityNotStated, ///< no image, library entry or procedure tells
    UnitUnknown,       ///< no length or area in UCUM
    Implausible,       ///< outside 1 to 120 mm
    GivenOtherwise,    ///< a perimeter or area beside the diameter that follows from it
};

struct LeftOutNumber {
    std::string name; ///< meaning of the concept
    std::string tracking;
    double value = 0.0;
    std::string unit;
    LeftOut why = LeftOut::UnknownQuantity;
};

struct ReportReadings {
    std::vector<ReportReading> readings;
    std::vector<LeftOutNumber> leftOut; ///< each number of the report is here or there
};

/// Bounds of a reading, mm; those of an observations file.
inline constexpr double kLeastReadingMm = 1.0, kMostReadingMm = 120.0;

/// Never fails. Numbers keep every digit where the unit is mm; cm and cm2 are multiplied by 10 and 100.
/// A width read on flat ultrasound or X-ray without a stated derivation counts as that of a single view, a contour's
/// diameter as drawn on a volume.
ReportReadings readingsOf(const ReadReport& report);

} // namespace gauge::dicomio
