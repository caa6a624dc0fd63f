// When images were taken: by the clock of the scanner, as far as the file tells. What it does not tell stays
// unknown.
#pragma once

#include "dicomio/scan/dataset.h"

#include <optional>
#include <string>

namespace gauge::dicomio {

/// A day, and a time of that day where one is told, in local time.
struct AcquisitionTime {
    int year = 0;
    int month = 0;                     ///< 1 to 12
    int day = 0;                       ///< 1 to 31
    std::optional<double> secondOfDay; ///< 0 up to (and without) 86,401: a leap second counts
    std::optional<int> offsetMinutes;  ///< local time minus UTC

    bool operator==(const AcquisitionTime&) const = default;
};

/// From the first of these that is there and can be read: AcquisitionDateTime; AcquisitionDate and -Time;
/// ContentDate and -Time; SeriesDate and -Time; StudyDate and -Time. A date without its time is a day; a time
/// without its date tells nothing. Of Enhanced objects FrameAcquisitionDateTime of the first frame comes
/// second. TimezoneOffsetFromUTC, or the offset within the date time, is kept.
std::optional<AcquisitionTime> acquisitionTime(const Dataset& dataset);

/// ISO 8601: "2026-03-14T10:15:30.25+01:00", without what is not known: "2026-03-14T10:15:30", "2026-03-14".
std::string iso(const AcquisitionTime& time);

/// For an order in time: seconds since 1970, by UTC (offset must be known) or by the local clock. A day
/// without a time counts from its beginning.
double secondsSince1970(const AcquisitionTime& time, bool utc);

/// Calendar days by the local clock: negative when a's day is before b's.
int compareDays(const AcquisitionTime& a, const AcquisitionTime& b);

} // namespace gauge::dicomio
