#include "core/anatomy/findings.h"

#include "core/anatomy/axis.h"
#include "core/volume/sampling.h"

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

namespace gauge::core {
namespace {

constexpr double kShortestTurnMm = 15.0;
constexpr double kDirectionMm = 6.0;  // of axis that a direction is taken over
constexpr double kLastPartMm = 6.0;
constexpr double kWeakShare = 0.6;    // of the atrium's height over wall; common practice, no source
// Standard uncertainty of a direction over 6 mm of axis, degrees, from 0.3 mm of its course.
constexpr double kDirectionDeg = 3.0;

double meanWithin(const Volume& volume, const PatientPoint& center, double radiusMm) {
    const TrilinearSampler sample(volume);
    double sum = 0.0;
    int count = 0;
    const double step = radiusMm / 3.0;
    for (double z = -radiusMm; z <= radiusMm; z += step)
        for (double y = -radiusMm; y <= radiusMm; y += step)
            for (double x = -radiusMm; x <= radiusMm; x += step)
                if (x * x + y * y + z * z <= radiusMm * radiusMm) {
                    sum += sample(center + PatientVector{{x, y, z}});
                    ++count;
                }
    return sum / count;
}

/// Mean over the axis from `fromMm` to `toMm`, in balls that keep off the wall.
double meanAlong(const Volume& volume, const AppendageTrace& trace, double fromMm, double toMm) {
    double sum = 0.0;
    int count = 0;
    for (double s = fromMm; s <= toMm; s += 1.0) {
        const PatientPoint p = trace.pointAt(s);
        const double free = interpolate(trace.pool.depth, p) - 1.2;
        if (free < 0.3)
            continue;
        sum += meanWithin(volume, p, std::min(free, 4.0));
        ++count;
    }
    return count > 0 ? sum / count : TrilinearSampler(volume)(trace.pointAt(0.5 * (fromMm + toMm)));
}

} // namespace

std::optional<Turn> turnOf(const AppendageTrace& trace) {
    const double length = trace.lengthMm();
    if (length < kShortestTurnMm)
        return std::nullopt;
    std::vector<PatientPoint> points;
    for (double s = 0.0; s <= length; s += 0.5)
        points.push_back(trace.pointAt(s));
    const auto line = Polyline::make(points);
    if (!line)
        return std::nullopt;
    // The sharpest place, then the directions on both sides of the whole bend about it: they are taken where the
    // axis has become straight again, at most 8 mm away.
    const auto sharpest = line->maximumTurn(kDirectionMm);
    double greatest = sharpest.angleDeg;
    for (double away = 0.0; away <= 8.0; away += 1.0) {
        const double before = sharpest.sMm - away, after = sharpest.sMm + away;
        if (before - kDirectionMm < 0.0 || after + kDirectionMm > line->lengthMm())
            break;
        const PatientVector in = line->pointAt(before) - line->pointAt(before - kDirectionMm);
        const PatientVector out = line->pointAt(after + kDirectionMm) - line->pointAt(after);
        greatest = std::max(greatest, angleBetweenDeg(in, out));
    }
    Turn turn;
    turn.angleDeg.value = greatest;
    turn.angleDeg.components.edge = kDirectionDeg;
    turn.angleDeg.components.plane = trace.spread.tiltDeg;
    turn.angleDeg.method = "angle between the axis' directions before and after its sharpest place, each over 6 mm";
    turn.atMm.value = sharpest.sMm;
    turn.atMm.components.edge = 1.0;
    turn.atMm.components.plane = trace.spread.shiftMm;
    turn.atMm.method = "distance along the axis from the ostium";
    return turn;
}

Enhancement enhancementOf(const Volume& volume, const AppendageTrace& trace, const AppendageMarks& marks) {
    Enhancement e;
    const double free = interpolate(trace.pool.depth, marks.atrium) - 1.2;
    e.atriumHu = meanWithin(volume, marks.atrium, std::clamp(free, 1.0, 5.0));
    const double length = trace.lengthMm();
    e.appendageHu = meanAlong(volume, trace, std::min(2.0, 0.2 * length), 0.5 * length);
    e.tipHu = meanAlong(volume, trace, std::max(0.0, length - kLastPartMm), length);
    if (marks.aorta && volume.contains(*marks.aorta)) {
        e.aortaHu = meanWithin(volume, *marks.aorta, 4.0);
        if (*e.aortaHu > 1.0)
            e.tipToAorta = e.tipHu / *e.aortaHu;
    }
    return e;
}

std::optional<Notice> unfilledTip(const Volume& volume, const AppendageTrace& trace) {
    const PatientPoint tip = trace.pointAt(trace.lengthMm());
    const PatientVector out = trace.directionAt(trace.lengthMm());
    const double wall = trace.pool.contrast.wallHu, blood = trace.pool.levels.nearestTo(tip);
    // A wall is over within 2 mm of blur and muscle; what is still half bright after that is blood without contrast.
    std::vector<double> beyond;
    const TrilinearSampler sample(volume);
    const SectionFrame frame = frameOf({tip, out});
    for (double t = 2.0; t <= 5.0; t += 0.5)
        for (const auto& [a, b] : {std::pair{0.0, 0.0}, {1.0, 0.0}, {-1.0, 0.0}, {0.0, 1.0}, {0.0, -1.0}}) {
            const PatientPoint p = frame.patientFromSection({a, b}) + t * out;
            if (volume.contains(p))
                beyond.push_back(sample(p));
        }
    if (beyond.size() < 10)
        return std::nullopt;
    std::nth_element(beyond.begin(), beyond.begin() + static_cast<std::ptrdiff_t>(beyond.size() / 2), beyond.end());
    const double median = beyond[beyond.size() / 2];
    const double share = (median - wall) / (blood - wall);
    if (share < 0.2 || share > 0.6)
        return std::nullopt;
    return Notice{"tip-unfilled",
                  "Beyond the tip the image stays half bright (" + std::to_string(std::lround(median)) +
                      " HU): the end of the appendage seems to be unfilled. Depth and volume are lower bounds; exclude "
                      "thrombus before anything enters it.",
                  {{"beyond_hu", std::to_string(std::lround(median))}}};
}

std::optional<Notice> weakFilling(const Enhancement& e, const Contrast& contrast) {
    const double share = (e.tipHu - contrast.wallHu) / std::max(1.0, e.atriumHu - contrast.wallHu);
    if (share >= kWeakShare)
        return std::nullopt;
    return Notice{"weak-enhancement",
                  "The appendage's tip reads " + std::to_string(std::lround(e.tipHu)) + " HU where the atrium reads " +
                      std::to_string(std::lround(e.atriumHu)) +
                      " HU: poor filling by slow flow, or thrombus. Exclude thrombus before anything enters the "
                      "appendage; contours here are less certain than their stated uncertainty.",
                  {{"tip_hu", std::to_string(std::lround(e.tipHu))},
                   {"atrium_hu", std::to_string(std::lround(e.atriumHu))}}};
}

} // namespace gauge::core
