#include "dicomio/angiography/xray_times.h"

#include "dicomio/angiography/frame_scope.h"
#include "dicomio/ultrasound/frame_times.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <string>

namespace gauge::dicomio {
namespace {

using core::FrameTimes;
using core::FrameTimeSource;

std::optional<int> digits(std::string_view text, std::size_t at, std::size_t count) {
    if (text.size() < at + count) return std::nullopt;
    int value = 0;
    const char* begin = text.data() + at;
    const auto [end, error] = std::from_chars(begin, begin + count, value);
    if (error != std::errc{} || end != begin + count || *begin == '-') return std::nullopt;
    return value;
}

/// Days of the proleptic Gregorian calendar since 0000-03-01.
long daysOf(int year, int month, int day) {
    const long y = month > 2 ? year : year - 1;
    const long m = (month + 9) % 12;
    return 365 * y + y / 4 - y / 100 + y / 400 + (m * 306 + 5) / 10 + day - 1;
}

/// Times from the moments that each frame tells; nullopt when they are not told of all frames or fall.
std::optional<std::vector<double>> byMoments(const Dataset& dataset, int frames, Tag tag,
                                             std::vector<core::Notice>& notices) {
    const auto& perFrame = dataset.items(tags::PerFrameFunctionalGroupsSequence);
    if (perFrame.size() != static_cast<std::size_t>(frames)) return std::nullopt;
    std::vector<double> start;
    for (const Dataset& groups : perFrame) {
        const Dataset* content = groups.firstItem(tags::FrameContentSequence);
        const auto moment = content ? dateTimeMs(content->text(tag)) : std::nullopt;
        if (!moment) return std::nullopt;
        start.push_back(*moment);
    }
    const double first = start.front();
    for (double& ms : start)
        ms -= first;
    if (!std::is_sorted(start.begin(), start.end()) || start.back() <= 0.0) {
        notices.push_back({"frame-times-contradictory",
                           describe(tag) + " of the frames does not rise from first to last; it is not used.",
                           {}});
        return std::nullopt;
    }
    return start;
}

void addRWaves(const Dataset& dataset, FrameTimes& times, std::vector<core::Notice>& notices) {
    if (!times.rWaveMs.empty() || !times.known()) return;
    const auto pointers = dataset.numbers(tags::RWavePointer);
    if (!pointers || !*pointers) return;
    for (const double frame : **pointers) {
        if (frame < 1.0 || frame > static_cast<double>(times.startMs.size())) {
            notices.push_back({"frame-times-contradictory",
                               describe(tags::RWavePointer) + " names frame " +
                                   std::to_string(std::lround(frame)) + " of " +
                                   std::to_string(times.startMs.size()) + "; R waves are not known.",
                               {}});
            times.rWaveMs.clear();
            return;
        }
        times.rWaveMs.push_back(times.startMs[static_cast<std::size_t>(frame) - 1]);
    }
    std::sort(times.rWaveMs.begin(), times.rWaveMs.end());
}

} // namespace

std::optional<double> dateTimeMs(std::string_view text) {
    const auto year = digits(text, 0, 4), month = digits(text, 4, 2), day = digits(text, 6, 2),
               hour = digits(text, 8, 2), minute = digits(text, 10, 2), second = digits(text, 12, 2);
    if (!year || !month || !day || !hour || !minute || !second) return std::nullopt;
    if (*month < 1 || *month > 12 || *day < 1 || *day > 31 || *hour > 23 || *minute > 59 || *second > 60)
        return std::nullopt;
    text.remove_prefix(14);
    double fraction = 0.0;
    if (!text.empty() && text.front() == '.') {
        double unit = 0.1;
        for (text.remove_prefix(1); !text.empty() && text.front() >= '0' && text.front() <= '9';
             text.remove_prefix(1), unit /= 10.0)
            fraction += unit * (text.front() - '0');
    }
    int zoneMinutes = 0;
    if (!text.empty()) {
        const auto zoneHour = digits(text, 1, 2), zoneMinute = digits(text, 3, 2);
        if ((text.front() != '+' && text.front() != '-') || text.size() != 5 || !zoneHour || !zoneMinute)
            return std::nullopt;
        zoneMinutes = (text.front() == '-' ? -1 : 1) * (60 * *zoneHour + *zoneMinute);
    }
    const double minutes =
        1440.0 * static_cast<double>(daysOf(*year, *month, *day)) + 60.0 * *hour + *minute - zoneMinutes;
    return 1000.0 * (60.0 * minutes + *second + fraction);
}

FrameTimes xrayTimes(const Dataset& dataset, int frames, std::vector<core::Notice>& notices) {
    FrameTimes times;
    if (frames > 1) {
        auto moments = byMoments(dataset, frames, tags::FrameReferenceDateTime, notices);
        if (!moments) moments = byMoments(dataset, frames, tags::FrameAcquisitionDateTime, notices);
        if (moments) times = {FrameTimeSource::FrameTimeVector, std::move(*moments), {}};
    }
    if (!times.known()) times = readFrameTimes(dataset, frames, notices);
    addRWaves(dataset, times, notices);
    return times;
}

} // namespace gauge::dicomio
