#include "core/access/crossing_answer.h"

#include "core/number_text.h"

#include <array>
#include <cmath>

namespace gauge::core {
namespace {

constexpr std::size_t kFewRimPoints = 6, kFewAnnulusPoints = 6;
/// Marks farther than this from their plane, root mean square, are told.
constexpr double kRoughMm = 2.5;
constexpr double kTetheredMm = 3.0;

std::string millimetres(double value) {
    return fixed(value, 1) + " mm";
}
std::string degrees(double value) {
    return fixed(value, 0) + " degrees";
}
std::string bandOf(const CrossingLimits& limits) {
    return general(limits.lowestMm) + " to " + general(limits.highestMm) + " mm " + std::string(words(limits.datum));
}
std::string limitOf(const CrossingLimits& limits) {
    return general(limits.mostAngleDeg) + " degrees";
}

/// Builds the answer sentence by sentence.
class Answering {
public:
    Answering(const CrossingScene& scene, const CrossingMap& map, const CrossingLimits& limits)
        : m_scene(scene), m_map(map), m_limits(limits) {}

    CrossingAnswer give() {
        findRegions();
        if (!m_scene.target)
            say("No answer yet: the appendage is not measured, so nothing is known of its ostium and axis.");
        else if (!m_limits.repairPlanned)
            answerClosureOnly();
        else if (!heightsKnown())
            sayWhatIsMissing();
        else if (m_answer.repair.areaMm2 < kLeastRegionMm2)
            sayNothingServesRepair();
        else
            answerBoth();
        sayBasis();
        noteMarks();
        return std::move(m_answer);
    }

private:
    void say(const std::string& sentence) { m_answer.sentence += (m_answer.sentence.empty() ? "" : " ") + sentence; }
    void note(const char* code, std::string text) { m_answer.notices.push_back({code, std::move(text), {}}); }

    void findRegions() {
        const auto region = [&](Service service) { return servingRegion(m_map, m_scene.face, m_limits, service); };
        m_answer.repair = region(Service::Repair);
        m_answer.closure = region(Service::Closure);
        m_answer.closureSteered = region(Service::ClosureSteered);
        m_answer.both = region(Service::Both);
        m_answer.bothSteered = region(Service::BothSteered);
    }

    bool heightsKnown() const {
        return m_scene.mitral && (m_limits.datum == HeightDatum::Annulus || m_scene.mitral->coaptation);
    }
    static bool counts(const ServingRegion& region) { return region.areaMm2 >= kLeastRegionMm2; }
    std::string share(const ServingRegion& region) const {
        double all = 0.0;
        for (const char inside : m_map.inside)
            all += inside ? m_map.stepMm * m_map.stepMm : 0.0;
        return fixed(all > 0.0 ? 100.0 * region.areaMm2 / all : 0.0, 0) + " %";
    }
    std::optional<std::pair<double, double>> heights() const {
        return rangeOf(m_map, [&](const CrossingValues& v) { return heightMm(v, m_limits.datum); });
    }

    void sayWhatIsMissing() {
        say(m_limits.datum == HeightDatum::Annulus || !m_scene.mitral
                ? "No answer for the repair yet: the mitral annulus is not marked, so no height is known."
                : "No answer for the repair yet: no point of coaptation is marked, and the height band counts from there.");
    }

    void sayNothingServesRepair() {
        const auto range = heights();
        say("No place of this fossa lies " + bandOf(m_limits) + ": it reaches from " + millimetres(range ? range->first : 0.0) + " to " +
            millimetres(range ? range->second : 0.0) + ".");
        say("Check the marks, the datum and the band before anything is concluded.");
    }

    void answerClosureOnly() {
        m_answer.advice = CrossingAdvice::ClosureOnly;
        say("No repair of the mitral valve is planned: only the closure counts.");
        sayClosureAlone();
    }

    void sayClosureAlone() {
        if (counts(m_answer.closure)) {
            say("Over " + share(m_answer.closure) + " of the fossa's area a straight sheath arrives within " + limitOf(m_limits) +
                " of the appendage's proximal axis.");
            sayPlace(m_answer.closure);
        } else if (m_limits.steerableAtHand && counts(m_answer.closureSteered)) {
            say("No straight sheath through this fossa arrives within " + limitOf(m_limits) + " of the appendage's proximal axis; a steerable one does so over " +
                share(m_answer.closureSteered) + " of its area, by a bend of radius " + general(m_limits.steering.radiusMm) + " mm.");
            sayPlace(m_answer.closureSteered);
        } else {
            sayNoClosure();
        }
    }

    void sayNoClosure() {
        const auto range = rangeOf(m_map, [](const CrossingValues& v) { return v.angleDeg; });
        say("No crossing of this fossa lets the sheath arrive within " + limitOf(m_limits) + " of the appendage's proximal axis: by a straight one the least is " +
            degrees(range ? range->first : 0.0) + ".");
    }

    void answerBoth() {
        if (counts(m_answer.both))
            answerSame();
        else if (m_limits.steerableAtHand && counts(m_answer.bothSteered))
            answerSteerable();
        else
            answerApart();
    }

    void answerSame() {
        m_answer.advice = CrossingAdvice::SameCrossing;
        say("One crossing can serve both: " + share(m_answer.both) + " of the fossa's area lie " + bandOf(m_limits) +
            " and let a straight sheath arrive within " + limitOf(m_limits) + " of the appendage's proximal axis.");
        sayPlace(m_answer.both);
    }

    void answerSteerable() {
        m_answer.advice = CrossingAdvice::SameWithSteerable;
        say("One crossing can serve both if the closure uses a steerable sheath: by a straight one no place that lies " + bandOf(m_limits) +
            " arrives within " + limitOf(m_limits) + " of the appendage's proximal axis.");
        say("By a bend of radius " + general(m_limits.steering.radiusMm) + " mm a crossing serves both over " + share(m_answer.bothSteered) + " of the fossa's area.");
        sayPlace(m_answer.bothSteered);
    }

    /// No place serves both with what is at hand.
    void answerApart() {
        const ServingRegion& closure = m_limits.steerableAtHand && !counts(m_answer.closure) ? m_answer.closureSteered : m_answer.closure;
        const bool lower = counts(closure) && closure.lowestMm && *closure.lowestMm < m_limits.lowestMm;
        m_answer.advice = lower ? CrossingAdvice::SecondLowerCrossing : CrossingAdvice::ClosureLast;
        say(m_limits.steerableAtHand ? "No single crossing serves both, also not with a steerable sheath."
                                     : "No single crossing serves both with a straight sheath.");
        if (lower) {
            say("The closure asks for a second, lower crossing: places within " + limitOf(m_limits) + " of the appendage's proximal axis begin at " +
                millimetres(*closure.lowestMm) + ", where the repair asks for " + bandOf(m_limits) + ".");
            sayPlace(closure);
        } else {
            if (!counts(closure)) sayNoClosure();
            say("Cross for the repair and close last: plan the closure anew from where the sheath then lies.");
        }
        if (!m_limits.steerableAtHand && counts(m_answer.bothSteered))
            note("steerable-would-serve", "With a steerable sheath of radius " + general(m_limits.steering.radiusMm) + " mm one crossing would serve both, over " +
                                              share(m_answer.bothSteered) + " of the fossa's area.");
    }

    void sayPlace(const ServingRegion& region) {
        m_answer.place = region.middle;
        if (!region.middle) return;
        const CrossingValues values = crossingAt(m_scene, *region.middle, m_limits.steering);
        const auto height = heightMm(values, m_limits.datum);
        const std::string where = "The place with most room is " + std::string(words(positionOf(m_scene.face, *region.middle))) + ": ";
        if (height)
            say(where + millimetres(*height) + " " + std::string(words(m_limits.datum)) + ", " + degrees(*values.angleDeg) +
                " to the axis by a straight sheath, " + millimetres(region.roomMm) + " to where it no longer serves.");
        else
            say(where + degrees(*values.angleDeg) + " to the axis by a straight sheath, " + millimetres(region.roomMm) +
                " to where it no longer serves.");
        if (region.roomMm < kLittleRoomMm)
            note("crossing-little-room", "Little room: the best place lies " + millimetres(region.roomMm) +
                                             " from where a crossing no longer serves, less than a needle is placed to.");
    }

    void sayBasis() {
        const SeptalFace& face = m_scene.face;
        std::string basis = "This rests on " + std::to_string(face.count) + " points of the fossa's rim (" + millimetres(face.fit.rmsMm) +
                            " from their plane, root mean square)";
        if (m_scene.mitral) {
            basis += ", " + std::to_string(m_scene.mitral->count) + " of the mitral annulus (" + millimetres(m_scene.mitral->annulus.rmsMm) + ")";
            if (const auto& level = m_scene.mitral->coaptation) basis += ", " + std::to_string(level->count) + " of the coaptation";
        }
        say(basis + ".");
        say("It is geometry on one phase of the CT; the local protocol and the operator decide.");
    }

    void noteMarks() {
        const SeptalFace& face = m_scene.face;
        if (face.count < kFewRimPoints)
            note("septum-few-points", "The fossa's rim is marked by " + std::to_string(face.count) + " points only; its outline between them is a guess.");
        if (face.fit.rmsMm > kRoughMm)
            note("septum-rough", "The points of the fossa's rim lie " + millimetres(face.fit.rmsMm) + " from their plane (root mean square): look at them again.");
        if (!face.root)
            note("septum-sides-by-axes", "No aortic root is marked: which side of the fossa is anterior is told by the patient's axes alone.");
        if (m_scene.mitral) noteMitral(*m_scene.mitral);
    }

    void noteMitral(const MitralDatum& mitral) {
        if (mitral.count < kFewAnnulusPoints)
            note("septum-few-points", "The mitral annulus is marked by " + std::to_string(mitral.count) + " points only; its plane rests on little.");
        if (mitral.annulus.rmsMm > kRoughMm)
            note("septum-rough", "The points of the mitral annulus lie " + millimetres(mitral.annulus.rmsMm) +
                                     " from their plane (root mean square): look at them again.");
        if (mitral.coaptation && mitral.coaptation->belowAnnulusMm > kTetheredMm)
            note("crossing-level-tethered", "The leaflets meet " + millimetres(mitral.coaptation->belowAnnulusMm) +
                                                " below the plane of the annulus: heights over the one and the other are not the same. Name the datum.");
    }

    const CrossingScene& m_scene;
    const CrossingMap& m_map;
    const CrossingLimits& m_limits;
    CrossingAnswer m_answer;
};

/// "It serves …" of a chosen place.
std::string serving(const CrossingValues& values, const CrossingLimits& limits) {
    const bool heightTold = limits.repairPlanned && heightMm(values, limits.datum).has_value();
    const bool repair = servesRepair(values, limits).value_or(false);
    const bool straight = servesClosure(values, limits).value_or(false);
    const bool steered = straight || (limits.steerableAtHand && servesClosureSteered(values, limits).value_or(false));
    if (!values.angleDeg) return !heightTold ? "" : repair ? "It serves the repair." : "It does not serve the repair.";
    if (!heightTold)
        return straight ? "It serves the closure."
               : steered ? "It serves the closure with a steerable sheath only."
                         : "It does not serve the closure.";
    if (repair)
        return straight  ? "It serves repair and closure."
               : steered ? "It serves the repair, and the closure with a steerable sheath only."
                         : "It serves the repair, not the closure.";
    return straight  ? "It serves the closure, not the repair."
           : steered ? "It serves the closure with a steerable sheath only, and not the repair."
                     : "It serves neither the repair nor the closure.";
}

} // namespace

std::string_view words(CrossingAdvice advice) {
    constexpr std::array<std::string_view, 6> kWords{"same crossing",  "same crossing with a steerable sheath", "second, lower crossing",
                                                     "closure last",   "closure alone",                        "no answer"};
    return kWords[static_cast<std::size_t>(advice)];
}

Result<CrossingAnswer> crossingAnswer(const CrossingScene& scene, const CrossingMap& map, const CrossingLimits& limits) {
    if (auto valid = validate(limits); !valid) return tl::unexpected(valid.error());
    return Answering(scene, map, limits).give();
}

std::string describeCrossing(const CrossingScene& scene, const CrossingValues& values, const CrossingLimits& limits) {
    if (const auto inside = insideFossa(scene.face, values.place); !inside) return inside.error().message;
    std::string text = "The crossing is " + std::string(words(positionOf(scene.face, values.place))) + ".";
    if (values.overAnnulusMm) text += " It lies " + millimetres(*values.overAnnulusMm) + " " + std::string(words(HeightDatum::Annulus)) + ".";
    if (values.overCoaptationMm)
        text += " It lies " + millimetres(*values.overCoaptationMm) + " " + std::string(words(HeightDatum::Coaptation)) + ".";
    if (values.distanceMm && values.angleDeg)
        text += " The ostium's centre is " + millimetres(*values.distanceMm) + " away, at " + degrees(*values.angleDeg) +
                " to the appendage's proximal axis.";
    const std::string serves = serving(values, limits);
    return serves.empty() ? text : text + " " + serves;
}

} // namespace gauge::core
