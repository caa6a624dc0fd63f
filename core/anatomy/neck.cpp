#include "core/anatomy/neck.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>
#include <numbers>

namespace gauge::core {
namespace {

constexpr double kStepMm = 0.5;
constexpr double kReachMm = 26.0;       // a ray this long without a wall has left the appendage
constexpr double kOpenShare = 0.04;
constexpr double kLeastNeckMm = 3.0;    // of closed slices in a row
constexpr double kLastingMm = 3.0;      // of open slices
constexpr double kFlare = 1.35;         // an area-derived radius this much above the deeper ones is no neck
constexpr int kRounds = 3;
constexpr double kFitMm = 9.0;          // length of neck that the continuation rests on
constexpr double kContinueMm = 8.0;     // beyond the mouth

constexpr double kBaseMm = 7.0;         // of neck that a ray's width is predicted from
constexpr double kFlareMm = 1.0;        // wider than predicted by this is a flare
constexpr double kFlareStepMm = 0.25;
constexpr double kMouthOffMm = 1.0;
constexpr double kBackMm = 0.5;        // the first slices without a flare still lean towards it
constexpr double kTipMm = 3.0;         // the dome at the tip is no neck
constexpr double kCleanReachMm = 6.0;  // how far inside the mouth an even neck is looked for
constexpr int kFlaringRaysOfClean = 1;  // noise may lift one of the rays

struct Probe {
    double s;
    double radiusMm;
    bool closed;
    AxisSlice slice;
};

/// Slices across the line with frames that do not turn from one to the next.
std::vector<Probe> probe(const BloodPool& pool, const Polyline& line, double fromMm, double toMm, double stepMm) {
    std::vector<Probe> probes;
    PatientVector hint = frameOf({{}, line.tangentAt(fromMm, 2.0)}).u;
    for (double s = std::max(0.0, fromMm); s <= std::min(toMm, line.lengthMm()); s += stepMm) {
        const PatientPoint p = line.pointAt(s);
        const double depth = interpolate(pool.depth, p);
        const PatientVector along = line.tangentAt(s, std::max(2.0, 0.5 * depth));
        const SectionFrame frame = std::abs(hint.dot(along)) < 0.95 ? frameOf({p, along}, hint) : frameOf({p, along});
        hint = frame.u;
        const AxisSlice slice = sliceAt(pool, frame, kReachMm);
        probes.push_back({s, slice.areaDerivedRadiusMm(), slice.openShare <= kOpenShare, slice});
    }
    return probes;
}

/// The width of each ray as a straight line in s, from the slices of [fromMm, toMm].
class PredictedRays {
public:
    PredictedRays(const std::vector<Probe>& probes, double fromMm, double toMm) : m_middle(0.5 * (fromMm + toMm)) {
        double n = 0.0, ss = 0.0;
        std::array<double, AxisSlice::kRays> sums{}, moments{};
        for (const Probe& p : probes) {
            if (p.s < fromMm || p.s > toMm)
                continue;
            const double d = p.s - m_middle;
            n += 1.0;
            ss += d * d;
            for (std::size_t i = 0; i < sums.size(); ++i) {
                sums[i] += p.slice.radiusMm[i];
                moments[i] += d * p.slice.radiusMm[i];
            }
        }
        for (std::size_t i = 0; i < sums.size(); ++i) {
            m_mean[i] = n > 0.0 ? sums[i] / n : 0.0;
            m_slope[i] = ss > 0.0 ? std::clamp(moments[i] / ss, -0.6, 0.6) : 0.0;
        }
    }
    double at(std::size_t ray, double s) const { return m_mean[ray] + m_slope[ray] * (s - m_middle); }

private:
    double m_middle;
    std::array<double, AxisSlice::kRays> m_mean{}, m_slope{};
};

double medianRadius(const std::vector<Probe>& probes, std::size_t from, std::size_t to) {
    std::vector<double> r;
    for (std::size_t i = from; i < to && i < probes.size(); ++i)
        r.push_back(probes[i].radiusMm);
    if (r.empty())
        return 0.0;
    std::nth_element(r.begin(), r.begin() + static_cast<std::ptrdiff_t>(r.size() / 2), r.end());
    return r[r.size() / 2];
}

/// Index of the last slice (towards the atrium) before the line comes out into the atrium: before the first
/// lasting run of open slices, seen from the tip. probes.size() when there is none.
std::size_t mouthIndex(const std::vector<Probe>& probes) {
    const auto tube = static_cast<std::size_t>(kLeastNeckMm / kStepMm);
    const auto lasting = static_cast<std::size_t>(kLastingMm / kStepMm);
    std::size_t closedRun = 0;
    for (std::size_t i = 0; i < probes.size(); ++i) {
        if (probes[i].closed) {
            ++closedRun;
            continue;
        }
        std::size_t open = 0;
        const std::size_t end = std::min(probes.size(), i + lasting);
        for (std::size_t n = i; n < end; ++n)
            open += !probes[n].closed;
        if (closedRun < tube || 5 * open < 4 * (end - i))
            continue; // a stray ray down a side lobe
        // Step back out of the flare: the mouth is where the radius is still that of what lies deeper.
        std::size_t mouth = i - 1;
        while (mouth > tube) {
            const std::size_t deep = mouth > 12 ? mouth - 12 : 0;
            if (probes[mouth].radiusMm <= kFlare * medianRadius(probes, deep, mouth - 3))
                break;
            --mouth;
        }
        return mouth;
    }
    return probes.size();
}

/// Index of the last slice, seen from the tip, none of whose rays flares against `baseMm` of deeper neck; `mouth`
/// when there is none within reach.
std::size_t lastWithoutFlare(const std::vector<Probe>& probes, std::size_t mouth, std::size_t least, double baseMm) {
    for (std::size_t i = mouth; i > least; --i) {
        if (!probes[i].closed)
            continue;
        const double s = probes[i].s;
        const PredictedRays predicted(probes, std::max(kTipMm, s - 1.5 - baseMm), s - 1.5);
        int flaring = 0;
        for (std::size_t r = 0; r < AxisSlice::kRays; ++r)
            flaring += std::abs(probes[i].slice.radiusMm[r] - predicted.at(r, s)) > 0.7 * kFlareMm;
        if (flaring <= kFlaringRaysOfClean)
            return i;
    }
    return mouth;
}

std::size_t cleanIndex(const std::vector<Probe>& probes, std::size_t mouth) {
    const auto steps = [](double mm) { return static_cast<std::size_t>(mm / kStepMm); };
    const std::size_t least = std::max(steps(kTipMm + 2.0), mouth > steps(kCleanReachMm) ? mouth - steps(kCleanReachMm) : 0);
    for (const double baseMm : {kBaseMm, 0.5 * kBaseMm}) {
        const std::size_t i = lastWithoutFlare(probes, mouth, least, baseMm);
        if (i != mouth)
            return std::max(std::min(least, i), i - std::min(i, steps(kBackMm)));
    }
    // Side lobes or a short, wide appendage leave no even neck: a little inside the mouth must do.
    return mouth > steps(2.0) + least ? mouth - steps(2.0) : std::min(least, mouth);
}

/// Where each ray leaves the neck's width for good.
std::array<Flare, AxisSlice::kRays> findFlares(const BloodPool& pool, const Polyline& axis, double cleanMm) {
    const auto probes =
        probe(pool, axis, std::max(0.0, cleanMm - kBaseMm - 1.0), axis.lengthMm(), kFlareStepMm);
    const PredictedRays predicted(probes, std::max(kTipMm, cleanMm - 0.5 - kBaseMm), cleanMm - 0.5);
    std::array<Flare, AxisSlice::kRays> flares;
    for (std::size_t r = 0; r < flares.size(); ++r) {
        // From the far side back: the last place that still keeps the width.
        for (std::size_t i = 1; i < probes.size(); ++i) {
            const double before = probes[i - 1].slice.radiusMm[r] - predicted.at(r, probes[i - 1].s);
            const double here = probes[i].slice.radiusMm[r] - predicted.at(r, probes[i].s);
            if (probes[i].s < cleanMm - 1.0 || here < kFlareMm)
                continue;
            const double share = before < kFlareMm ? (kFlareMm - before) / (here - before) : 0.0;
            Flare& flare = flares[r];
            flare.found = true;
            flare.sMm = probes[i - 1].s + share * kFlareStepMm;
            const double angle = 2.0 * std::numbers::pi * static_cast<double>(r) / AxisSlice::kRays;
            const double width = predicted.at(r, flare.sMm);
            flare.rim = probes[i].slice.frame.patientFromSection({width * std::cos(angle), width * std::sin(angle)}) -
                        (probes[i].s - flare.sMm) * probes[i].slice.frame.normal;
            break;
        }
    }
    return flares;
}

/// Points of the line up to `cleanMm`, then a parabola in arc length fitted to the last kFitMm of them.
std::vector<PatientPoint> continued(const Polyline& line, double cleanMm, double untilMm) {
    const double from = std::max(0.0, cleanMm - kFitMm);
    const bool straight = cleanMm - from < 5.0; // too short to tell a curve from noise
    const int terms = straight ? 2 : 3;
    const auto count = static_cast<int>((cleanMm - from) / 0.25) + 2;
    Eigen::MatrixXd a(count, terms);
    Eigen::MatrixXd b(count, 3);
    for (int i = 0; i < count; ++i) {
        const double s = from + (cleanMm - from) * i / (count - 1) - cleanMm;
        for (int t = 0; t < terms; ++t)
            a(i, t) = std::pow(s, t);
        b.row(i) = line.pointAt(s + cleanMm).mm.transpose();
    }
    // A bend is taken back a little: continuing noise is worse than continuing straight.
    Eigen::MatrixXd normal = a.transpose() * a;
    if (terms == 3)
        normal(2, 2) *= 1.05;
    const Eigen::MatrixXd c = normal.ldlt().solve(a.transpose() * b);
    std::vector<PatientPoint> points;
    for (double s = 0.0; s < cleanMm; s += kStepMm)
        points.push_back(line.pointAt(s));
    // The join: the fit passes within a few hundredths of the line.
    for (double s = kStepMm; cleanMm + s <= untilMm; s += kStepMm) {
        const double bend = terms == 3 ? std::min(s, 6.0) : 0.0;
        Eigen::RowVector3d p = c.row(0) + s * c.row(1);
        if (terms == 3)
            p += (bend * bend + 2.0 * bend * (s - bend)) * c.row(2);
        points.push_back({p.transpose()});
    }
    return points;
}

} // namespace

Result<Neck> findNeck(const BloodPool& pool, const Polyline& line) {
    Neck neck;
    Polyline along = line;
    // Near the mouth the line first bends into the atrium, and slices across it open too early or too late; each
    // round looks along the continuation of the round before.
    for (int round = 0; round < kRounds; ++round) {
        auto probes = probe(pool, along, 0.0, along.lengthMm(), kStepMm);
        const std::size_t mouth = mouthIndex(probes);
        if (mouth >= probes.size()) {
            if (round > 0)
                break;
            return failure(ErrorCode::NoNeckBetweenSeeds,
                           "Cannot measure: between the tip seed and the atrium seed the blood never narrows to a "
                           "neck. Both seeds seem to lie in the same chamber; put the tip seed into the appendage's "
                           "lobe.");
        }
        if (round == 0) {
            // The part inside the mouth once more, free of the atrium's pull.
            std::vector<PatientPoint> inside;
            for (double s = 0.0; s <= std::max(probes[mouth].s - kMouthOffMm, 4.0); s += kStepMm)
                inside.push_back(along.pointAt(s));
            if (const auto again = centreLine(pool, inside)) {
                const double shorter = probes[mouth].s - again->lengthMm();
                auto points = again->points();
                const PatientVector on = again->tangentAt(again->lengthMm(), 3.0);
                for (double s = kStepMm; s < shorter + 3.0; s += kStepMm)
                    points.push_back(again->points().back() + s * on);
                if (auto longer = Polyline::make(points)) {
                    along = *longer;
                    probes = probe(pool, along, 0.0, along.lengthMm(), kStepMm);
                }
            }
        }
        const std::size_t clean = cleanIndex(probes, std::min(mouth, probes.size() - 1));
        neck.mouthMm = probes[std::min(mouth, probes.size() - 1)].s;
        neck.cleanMm = probes[clean].s;
        neck.radiusMm = medianRadius(probes, clean > 10 ? clean - 10 : 0, clean + 1);
        neck.axis = continued(along, neck.cleanMm, neck.mouthMm + kContinueMm);
        auto next = Polyline::make(neck.axis);
        if (!next)
            return tl::make_unexpected(std::move(next.error()));
        along = *next;
    }
    neck.flares = findFlares(pool, along, neck.cleanMm);
    return neck;
}

} // namespace gauge::core
