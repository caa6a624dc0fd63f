#include "core/sizing/seat_words.h"

#include "core/geometry/polyline.h"
#include "core/number_text.h"
#include "core/sizing/wording.h"

#include <algorithm>
#include <cmath>

namespace gauge::core {
namespace {

constexpr double kTurnedDeg = 15.0;        // from here on the direction is worth a sentence; an assumption
constexpr double kShareWantedPercent = 200.0 / 3.0; // core/release/release_check.h: common practice, no source

/// "12.3 ± 0.4 mm". Uncertainties are rounded up, as on screen, so that none is understated; where there is none, none is told.
std::string withSpread(const Estimate& e, int decimals, const char* unit) {
    const double scale = std::pow(10.0, decimals), rounded = std::ceil(scale * e.standardUncertainty() - 1e-9) / scale;
    return fixed(e.value, decimals) + (rounded > 0.0 ? " ± " + fixed(rounded, decimals) : std::string()) + unit;
}

std::string spreadText(const Estimate& e) {
    return withSpread(e, 1, " mm");
}

std::string sharePercent(const Estimate& e) {
    return withSpread(e, 0, " %");
}

std::string fromWhere(const SeatQuestion& q) {
    return q.chart.depthFrom == DepthFrom::Ostium ? "from the ostium" : "from the landing plane";
}

std::string whatStops(const Seat& seat, const SeatQuestion& q) {
    const PatientVector way = seat.stoppedAt - q.landingCentre;
    const std::string side = sideWords(way - way.dot(q.direction) * q.direction);
    switch (seat.end) {
    case SeatEnd::Narrow:
        return "the appendage's narrowing below " + mmText(seat.narrowestMm);
    case SeatEnd::Strand:
        return "a trabecula or fold on the " + side + " side";
    case SeatEnd::Aside:
        return "the " + side + " wall";
    case SeatEnd::Ahead:
    case SeatEnd::Open:
        break;
    }
    return "the wall ahead";
}

Notice reachFact(const Seat& seat, const SeatQuestion& q) {
    const std::string asked = "the chart asks for " + mmText(seat.neededMm) + ".";
    if (seat.end == SeatEnd::Open)
        return {"seat-reach",
                "Along the sheath nothing stops size " + seat.name + " within " + mmText(seat.reachMm->value) + " " +
                    fromWhere(q) + ", where the measured images end; " + asked,
                {}};
    return {"seat-reach",
            "Along the sheath size " + seat.name + " reaches " + spreadText(*seat.reachMm) + " " + fromWhere(q) + " before " +
                whatStops(seat, q) + " stops it; " + asked,
            {}};
}

Notice noRoom(const Seat& seat, const SeatQuestion& q) {
    const std::string none = "Size " + seat.name + " finds no room along the sheath: ";
    if (seat.end != SeatEnd::Narrow)
        return {"seat-no-room", none + "at the landing zone " + whatStops(seat, q) + " stands in its way.", {}};
    std::string text = none + "square to it the landing zone leaves " + mmText(seat.leftMm) +
                       " by the chart's own measure, and its narrowest width is " + mmText(seat.narrowestMm) + ".";
    // Where the plane itself would leave enough, it is the direction that does not.
    if (const auto own = q.landingWidthMm; own && *own + q.widenedByMm >= seat.narrowestMm)
        text += " The landing plane itself, " + fixed(angleBetweenDeg(q.landingNormal, q.direction), 0) +
                " degrees off that direction, measures " + mmText(*own + q.widenedByMm) + ".";
    return {"seat-no-room", text, {{"left_mm", fixed(seat.leftMm, 6)}}};
}

Estimate mirrored(Estimate e) {
    e.value = -e.value;
    return e;
}

std::string gapText(const std::optional<Estimate>& gap) {
    if (!gap) return "not seen";
    if (std::abs(gap->value) < kTouchesMm) return "it touches the wall";
    return gap->value >= 0.0 ? spreadText(*gap) + " open"
                             : "wall pressed out by " + spreadText(mirrored(*gap));
}

} // namespace

std::string sideWords(const PatientVector& direction) {
    constexpr double kPart = 0.38;
    const double length = direction.norm();
    if (!(length > 0.0)) return "near";
    const Eigen::Vector3d d = direction.mm / length;
    // Left or right, posterior or anterior, superior or inferior: 0 where it is not among the two largest parts, or small.
    int sign[3] = {0, 0, 0};
    Eigen::Index least = 0;
    d.cwiseAbs().minCoeff(&least);
    for (Eigen::Index i = 0; i < 3; ++i)
        if (i != least && std::abs(d(i)) >= kPart) sign[i] = d(i) > 0.0 ? 1 : -1;
    static constexpr const char* kWords[3][3][3] = {
        {{"", "right-anterior", ""}, {"right-inferior", "right", "right-superior"}, {"", "right-posterior", ""}},
        {{"anterior-inferior", "anterior", "anterior-superior"},
         {"inferior", "near", "superior"},
         {"posterior-inferior", "posterior", "posterior-superior"}},
        {{"", "left-anterior", ""}, {"left-inferior", "left", "left-superior"}, {"", "left-posterior", ""}}};
    return kWords[sign[0] + 1][sign[1] + 1][sign[2] + 1];
}

std::vector<Notice> seatFacts(const Seat& seat, const SeatQuestion& q) {
    std::vector<Notice> facts;
    if (!seat.hasRoom) return facts; // a warning says it; it has no place of which to tell
    facts.push_back(reachFact(seat, q));
    if (seat.beyondCircumflexPercent)
        facts.push_back({"seat-circumflex",
                         sharePercent(*seat.beyondCircumflexPercent) + " of the body of size " + seat.name +
                             " lies beyond the circumflex artery.",
                         {}});
    if (seat.disc)
        facts.push_back({"seat-disc",
                         "The disc of size " + seat.name + " covers " + sharePercent(seat.disc->sharePercent) +
                             " of the ostium's area; its least overlap is " + spreadText(seat.disc->overlapMm) + ", on the " +
                             sideWords(seat.disc->leastAt) + " side.",
                         {}});
    if (seat.gapSuperiorMm || seat.gapInferiorMm)
        facts.push_back({"seat-gaps",
                         "At the landing zone, size " + seat.name + " being " + spreadText(*seat.landingWidthMm) +
                             " wide in place by the chart's own measure: above " + gapText(seat.gapSuperiorMm) + "; below " +
                             gapText(seat.gapInferiorMm) + ".",
                         {}});
    for (const SeatClearance& c : seat.clearances)
        facts.push_back({"seat-clearance",
                         "In place, size " + seat.name + " lies " + spreadText(c.mm) + " from the " + words(c.structure) +
                             (c.leastMm ? "; at least " + mmText(*c.leastMm) + " is wanted." : "; the chart names no least."),
                         {{"structure", name(c.structure)}}});
    return facts;
}

std::vector<Notice> seatWarnings(const Seat& seat, const SeatQuestion& q) {
    std::vector<Notice> warnings;
    if (!seat.hasRoom) return {noRoom(seat, q)};
    if (!seat.reaches.value_or(true))
        warnings.push_back({"seat-short",
                            "Along the sheath size " + seat.name + " is stopped by " + whatStops(seat, q) + " " +
                                mmText(seat.standsBackMm) + " before its place, and would stand back by as much.",
                            {{"short_mm", fixed(seat.standsBackMm, 6)}}});
    if (seat.disc && seat.disc->overlapMm.value < 0.0)
        warnings.push_back({"seat-disc-short",
                            "The disc of size " + seat.name + " leaves the ostium open on the " +
                                sideWords(seat.disc->leastAt) + " side, by " + mmText(-seat.disc->overlapMm.value) +
                                " at most.",
                            {{"short_mm", fixed(-seat.disc->overlapMm.value, 6)}}});
    if (q.chart.kind == DeviceKind::LobeAndDisc && seat.beyondCircumflexPercent &&
        seat.beyondCircumflexPercent->value < kShareWantedPercent)
        warnings.push_back({"seat-share-low",
                            "Only " + fixed(seat.beyondCircumflexPercent->value, 0) + " % of the lobe of size " + seat.name +
                                " lies beyond the circumflex artery; two thirds are wanted (common practice, no source).",
                            {}});
    for (const SeatClearance& c : seat.clearances)
        if (!c.ok())
            warnings.push_back({"too-near",
                                "Size " + seat.name + " would lie " + mmText(c.mm.value) + " from the " +
                                    words(c.structure) + "; at least " + mmText(*c.leastMm) + " is wanted.",
                                {{"structure", name(c.structure)}, {"clearance_mm", fixed(c.mm.value, 6)}}});
    return warnings;
}

std::vector<Notice> seatNotices(const SeatAnswer& answer, const SeatQuestion& q) {
    std::vector<Notice> notices;
    notices.push_back({"seat-basis", std::string("The sizes slide along ") + words(answer.basis) + ".", {}});
    if (q.plugPlaneMm)
        notices.push_back({"seat-plug-plane",
                           "They land at the plug plane, " + mmText(*q.plugPlaneMm) + " beyond the ridge.", {}});
    if (answer.angleToAxisDeg > kTurnedDeg)
        notices.push_back({"seat-oblique",
                           "That direction lies " + fixed(answer.angleToAxisDeg, 0) +
                               " degrees off the appendage's axis at the landing zone: the wall is met earlier than along the "
                               "axis.",
                           {}});
    if (q.tipUnfilled)
        notices.push_back({"seat-no-verdict",
                           "The tip was not filled: along the sheath the reach is a lower bound. No verdict on depth.", {}});
    if (!answer.hasSides)
        notices.push_back({"seat-no-sides",
                           "The sheath runs from head to foot: no side of the body lies above or below, so no gaps are told.",
                           {}});
    std::string missing;
    const auto miss = [&](const char* what) { missing += (missing.empty() ? "" : ", ") + std::string(what); };
    const auto marked = [&](Structure s) {
        return std::any_of(q.neighbours.begin(), q.neighbours.end(), [s](const SeatNeighbour& n) { return n.structure == s; });
    };
    if (!q.circumflex && !marked(Structure::CircumflexArtery)) miss(words(Structure::CircumflexArtery));
    for (const Structure s : {Structure::Ridge, Structure::PulmonaryArtery, Structure::MitralAnnulus})
        if (!marked(s)) miss(words(s));
    if (!missing.empty())
        notices.push_back({"seat-not-marked", "Not marked, and so not judged: " + missing + ".", {}});
    return notices;
}

} // namespace gauge::core
