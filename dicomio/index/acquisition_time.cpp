#include "dicomio/index/acquisition_time.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <string_view>
#include <tuple>

namespace gauge::dicomio {
namespace {

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

/// `count` digits from `at` on as a number.
std::optional<int> digits(std::string_view s, std::size_t at, std::size_t count) {
    if (at + count > s.size() || !std::all_of(s.begin() + static_cast<std::ptrdiff_t>(at),
                                              s.begin() + static_cast<std::ptrdiff_t>(at + count), isDigit))
        return std::nullopt;
    int value = 0;
    std::from_chars(s.data() + at, s.data() + at + count, value);
    return value;
}

std::optional<AcquisitionTime> day(std::optional<int> year, std::optional<int> month,
                                   std::optional<int> dayOfMonth) {
    if (!year || !month || !dayOfMonth) return std::nullopt;
    const std::chrono::year_month_day date{std::chrono::year(*year),
                                           std::chrono::month(static_cast<unsigned>(*month)),
                                           std::chrono::day(static_cast<unsigned>(*dayOfMonth))};
    constexpr int kFirstYear = 1900; // before, it is a placeholder
    if (!date.ok() || *year < kFirstYear) return std::nullopt;
    return AcquisitionTime{*year, *month, *dayOfMonth, {}, {}};
}

/// DA: YYYYMMDD; the old form YYYY.MM.DD too (PS3.5 6.2).
std::optional<AcquisitionTime> date(std::string_view s) {
    if (s.size() == 10 && s[4] == '.' && s[7] == '.')
        return day(digits(s, 0, 4), digits(s, 5, 2), digits(s, 8, 2));
    return s.size() == 8 ? day(digits(s, 0, 4), digits(s, 4, 2), digits(s, 6, 2)) : std::nullopt;
}

/// TM: HH, HHMM, HHMMSS or HHMMSS.F to six digits; the old form with colons too. Seconds of the day.
std::optional<double> timeOfDay(std::string_view text) {
    std::string s(text);
    std::erase(s, ':');
    const auto point = s.find('.');
    const std::string whole = s.substr(0, point);
    if (whole.size() != 2 && whole.size() != 4 && whole.size() != 6) return std::nullopt;
    const auto part = [&](std::size_t at) {
        return at < whole.size() ? digits(whole, at, 2) : std::optional(0);
    };
    const auto hour = part(0), minute = part(2), second = part(4);
    if (!hour || !minute || !second || *hour > 23 || *minute > 59 || *second > 60) return std::nullopt;
    double fraction = 0.0;
    if (point != std::string::npos) {
        const std::string_view after = std::string_view(s).substr(point + 1);
        const auto value =
            after.size() <= 6 && !after.empty() ? digits(after, 0, after.size()) : std::nullopt;
        if (whole.size() != 6 || !value) return std::nullopt;
        fraction = *value / std::pow(10.0, static_cast<double>(after.size()));
    }
    return 3600.0 * *hour + 60.0 * *minute + *second + fraction;
}

/// "+0100", "-0330": from -12:00 to +14:00 (PS3.5 6.2).
std::optional<int> offset(std::string_view s) {
    if (s.size() != 5 || (s[0] != '+' && s[0] != '-')) return std::nullopt;
    const auto hours = digits(s, 1, 2), minutes = digits(s, 3, 2);
    if (!hours || !minutes || *minutes > 59) return std::nullopt;
    const int value = (s[0] == '-' ? -1 : 1) * (*hours * 60 + *minutes);
    return value < -720 || value > 840 ? std::nullopt : std::optional(value);
}

/// DT: as far as at least the day is told.
std::optional<AcquisitionTime> dateTime(std::string_view s) {
    std::optional<int> zone;
    if (s.size() > 5)
        if (const auto sign = s.size() - 5; s[sign] == '+' || s[sign] == '-') {
            zone = offset(s.substr(sign));
            s = s.substr(0, sign);
        }
    auto result = date(s.substr(0, std::min<std::size_t>(8, s.size())));
    if (!result) return std::nullopt;
    if (s.size() > 8) {
        result->secondOfDay = timeOfDay(s.substr(8));
        if (!result->secondOfDay) return std::nullopt;
    }
    result->offsetMinutes = zone;
    return result;
}

std::optional<AcquisitionTime> dateAndTime(const Dataset& dataset, Tag dateTag, Tag timeTag) {
    auto result = date(dataset.text(dateTag));
    if (result) result->secondOfDay = timeOfDay(dataset.text(timeTag));
    return result;
}

std::string firstFrameTime(const Dataset& dataset) {
    const Dataset* frame = dataset.firstItem(tags::PerFrameFunctionalGroupsSequence);
    const Dataset* content = frame ? frame->firstItem(tags::FrameContentSequence) : nullptr;
    return content ? content->text(tags::FrameAcquisitionDateTime) : std::string();
}

std::optional<AcquisitionTime> withoutZone(const Dataset& dataset) {
    for (const std::string& text : {dataset.text(tags::AcquisitionDateTime), firstFrameTime(dataset)})
        if (auto time = dateTime(text)) return time;
    constexpr std::array kPairs{std::pair{tags::AcquisitionDate, tags::AcquisitionTime},
                                std::pair{tags::ContentDate, tags::ContentTime},
                                std::pair{tags::SeriesDate, tags::SeriesTime},
                                std::pair{tags::StudyDate, tags::StudyTime}};
    for (const auto& [dateTag, timeTag] : kPairs)
        if (auto time = dateAndTime(dataset, dateTag, timeTag)) return time;
    return std::nullopt;
}

} // namespace

std::optional<AcquisitionTime> acquisitionTime(const Dataset& dataset) {
    auto time = withoutZone(dataset);
    if (time && !time->offsetMinutes) time->offsetMinutes = offset(dataset.text(tags::TimezoneOffsetFromUtc));
    return time;
}

std::string iso(const AcquisitionTime& time) {
    char text[64];
    std::snprintf(text, sizeof text, "%04d-%02d-%02d", time.year, time.month, time.day);
    std::string out = text;
    if (!time.secondOfDay) return out;
    const auto micros = std::llround(*time.secondOfDay * 1e6);
    // A leap second is the sixtieth of its minute.
    const long long second = micros / 1000000, hour = std::min(second / 3600, 23LL);
    const long long minute = std::min((second - hour * 3600) / 60, 59LL);
    std::snprintf(text, sizeof text, "T%02lld:%02lld:%02lld", hour, minute,
                  second - hour * 3600 - minute * 60);
    out += text;
    if (const long long rest = micros % 1000000; rest != 0) {
        std::snprintf(text, sizeof text, ".%06lld", rest);
        out += text;
        out.erase(out.find_last_not_of('0') + 1);
    }
    if (time.offsetMinutes) {
        const int m = std::abs(*time.offsetMinutes);
        std::snprintf(text, sizeof text, "%c%02d:%02d", *time.offsetMinutes < 0 ? '-' : '+', m / 60, m % 60);
        out += text;
    }
    return out;
}

double secondsSince1970(const AcquisitionTime& t, bool utc) {
    const std::chrono::sys_days days{std::chrono::year_month_day{
        std::chrono::year(t.year), std::chrono::month(static_cast<unsigned>(t.month)),
        std::chrono::day(static_cast<unsigned>(t.day))}};
    const double local =
        static_cast<double>(days.time_since_epoch().count()) * 86400.0 + t.secondOfDay.value_or(0.0);
    return utc ? local - 60.0 * t.offsetMinutes.value_or(0) : local;
}

int compareDays(const AcquisitionTime& a, const AcquisitionTime& b) {
    const auto of = [](const AcquisitionTime& t) { return std::tuple(t.year, t.month, t.day); };
    return of(a) < of(b) ? -1 : of(b) < of(a) ? 1 : 0;
}

} // namespace gauge::dicomio
