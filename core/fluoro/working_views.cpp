#include "core/fluoro/working_views.h"

#include "core/geometry/polyline.h"
#include "core/parallel/cancelled.h"
#include "core/parallel/parallel_for.h"
#include "core/units/angle.h"

#include <algorithm>
#include <atomic>
#include <cmath>
#include <limits>
#include <utility>

namespace gauge::core {
namespace {

constexpr std::array<std::string_view, kViewAims.size()> kAimNames{"longest-width", "shortest-width", "bend-in-profile",
                                                                    "least-overlap", "en-face",        "one-for-all"};
constexpr double kDirectionSpanMm = 6.0, kShortestAxisMm = 15.0; // as for the recorded turn (core/anatomy)
constexpr double kCoarseDeg = 5.0, kFineDeg = 1.0;

/// Between two lines, 0 to 90 degrees; accurate for small angles too.
double betweenLinesDeg(const PatientVector& a, const PatientVector& b) {
    const double deg = angleBetweenDeg(a, b);
    return std::min(deg, 180.0 - deg);
}

double squareOf(double value) {
    return value * value;
}

PatientVector turned(const Eigen::Matrix3d& m, const PatientVector& v) {
    return {m * v.mm};
}

/// The subject in the room's axes, and what all views are compared with.
class PlanningScene {
public:
    static Result<PlanningScene> make(const ProjectionSubject& subject, const Silhouettes* silhouettes, const ViewPlanOptions& options) {
        if (auto valid = validate(options.reach); !valid) return tl::make_unexpected(valid.error());
        if (auto valid = validate(options.turn); !valid) return tl::make_unexpected(valid.error());
        PlanningScene stage(options, silhouettes);
        const Eigen::Matrix3d m = roomFromPatient(options.turn);
        for (const auto& p : subject.contour)
            stage.contour.push_back({m * p.mm});
        const auto sections = sectionViews(stage.contour);
        if (!sections) return tl::make_unexpected(sections.error());
        stage.sections = *sections;
        stage.normal = *contourNormal(stage.contour);
        if (auto bend = bendPlane(subject.axis))
            stage.bend = BendPlane{turned(m, bend->before), turned(m, bend->after), turned(m, bend->normal), bend->turnDeg};
        return stage;
    }

    /// Without tolerance and overlap, which take longer.
    ViewReading quick(const CArmAngles& view) const {
        ViewReading r;
        r.angles = view;
        r.withinReach = m_options.reach.contains(view);
        r.offNormalDeg = betweenLinesDeg(beamDirection(view), normal);
        if (const auto seen = projectedWidth(contour, view)) {
            r.openingDeg = seen->openingDeg;
            r.axisVisible = seen->axisVisible;
            r.widthMm = seen->widthMm;
        }
        if (r.widthMm) {
            r.lostOfLongestMm = std::max(0.0, sections.longestMm - *r.widthMm);
            r.beyondShortestMm = std::max(0.0, *r.widthMm - sections.shortestMm);
        }
        if (bend) r.offProfileDeg = betweenLinesDeg(beamDirection(view), bend->normal);
        return r;
    }

    ViewReading full(const CArmAngles& view) const {
        ViewReading r = quick(view);
        if (r.widthMm)
            if (const auto range = widthWithin(contour, view)) r.tolerance = *range;
        if (m_silhouettes) r.hiddenShare = m_silhouettes->hiddenShare(view);
        return r;
    }

    const CArmReach& reach() const { return m_options.reach; }
    const CompromiseScales& scales() const { return m_options.scales; }
    const Silhouettes* silhouettes() const { return m_silhouettes; }

    std::vector<PatientPoint> contour;
    SectionViews sections;
    PatientVector normal;
    std::optional<BendPlane> bend;

private:
    PlanningScene(const ViewPlanOptions& options, const Silhouettes* silhouettes) : m_options(options), m_silhouettes(silhouettes) {}

    ViewPlanOptions m_options;
    const Silhouettes* m_silhouettes;
};

/// Primary and secondary angles from end to end of the reach, at most so far apart, both ends among them.
std::vector<double> angleSteps(double from, double to, double stepDeg) {
    const int count = std::max(1, static_cast<int>(std::ceil((to - from) / stepDeg - 1e-9)));
    std::vector<double> all;
    for (int i = 0; i <= count; ++i)
        all.push_back(from + (to - from) * i / count);
    return all;
}

std::vector<CArmAngles> gridOf(const CArmReach& reach, double stepDeg) {
    std::vector<CArmAngles> views;
    for (const double secondary : angleSteps(-reach.mostCauDeg, reach.mostCraDeg, stepDeg))
        for (const double primary : angleSteps(-reach.mostRaoDeg, reach.mostLaoDeg, stepDeg))
            views.push_back({primary, secondary});
    return views;
}

/// Views about one, within the reach.
std::vector<CArmAngles> aroundOf(const CArmReach& reach, const CArmAngles& centre, double reachDeg, double stepDeg) {
    CArmReach near{-std::max(-reach.mostRaoDeg, centre.primaryDeg - reachDeg), std::min(reach.mostLaoDeg, centre.primaryDeg + reachDeg),
                   std::min(reach.mostCraDeg, centre.secondaryDeg + reachDeg), -std::max(-reach.mostCauDeg, centre.secondaryDeg - reachDeg)};
    return gridOf(near, stepDeg);
}

/// The view of the least cost; ties go to the one nearest to straight from the front. Nothing when the work was stopped.
/// `cost(view, least)` may answer with anything above `least`, the least cost so far, once it knows that it will be above.
template <class Cost>
std::optional<CArmAngles> leastOf(const std::vector<CArmAngles>& views, const Cost& cost, const WorkContext& work) {
    std::vector<double> costs(views.size());
    std::atomic<bool> stopped{false};
    std::atomic<double> least{std::numeric_limits<double>::infinity()};
    parallelFor(views.size(), 8, [&](std::size_t begin, std::size_t end) {
        for (std::size_t i = begin; i < end && !stopped; ++i) {
            if (work.stopped()) stopped = true;
            costs[i] = cost(views[i], least.load());
            for (double before = least; costs[i] < before && !least.compare_exchange_weak(before, costs[i]);) {
            }
        }
    });
    if (stopped || views.empty()) return std::nullopt;
    std::size_t best = 0;
    const auto steep = [&](std::size_t i) { return std::abs(views[i].primaryDeg) + std::abs(views[i].secondaryDeg); };
    for (std::size_t i = 1; i < views.size(); ++i)
        if (costs[i] < costs[best] || (costs[i] == costs[best] && steep(i) < steep(best))) best = i;
    return views[best];
}

/// Coarse over the whole reach, then finer about the best.
template <class Cost>
std::optional<CArmAngles> searched(const CArmReach& reach, const Cost& cost, const WorkContext& work, double coarseDeg = kCoarseDeg) {
    auto best = leastOf(gridOf(reach, coarseDeg), cost, work);
    for (const auto& [around, step] : {std::pair(0.8 * coarseDeg, 0.2 * coarseDeg), std::pair(0.2 * coarseDeg, kFineDeg)})
        if (best) best = leastOf(aroundOf(reach, *best, around, step), cost, work);
    return best;
}

/// The ideal or, seen from behind, its opposite, if one of them is within the reach.
std::optional<CArmAngles> reachable(const CArmReach& reach, const CArmAngles& ideal) {
    if (reach.contains(ideal)) return ideal;
    const CArmAngles behind = anglesOf(-beamDirection(ideal));
    return reach.contains(behind) ? std::optional(behind) : std::nullopt;
}

class Planner {
public:
    Planner(const PlanningScene& stage, const WorkContext& work) : m_stage(stage), m_work(work) {}

    Result<ViewPlan> plan() {
        m_plan.normal = m_stage.normal;
        m_plan.enFace = m_stage.sections.enFace;
        m_plan.longestMm = m_stage.sections.longestMm;
        m_plan.shortestMm = m_stage.sections.shortestMm;
        m_plan.bend = m_stage.bend;
        m_plan.edgeOn = edgeOnWithin(m_stage.normal, m_stage.reach());
        for (const auto& part : m_plan.edgeOn)
            m_edgeOn.insert(m_edgeOn.end(), part.begin(), part.end());
        if (m_edgeOn.empty())
            note("not-edge-on-within-reach", "No view within the reach of the C-arm shows the plane edge-on; the views nearest to "
                                             "edge-on stand instead, and widths are read there all the same across the axis.");
        addEdgeOn(ViewAim::LongestWidth, m_stage.sections.showsLongest,
                  [](const ViewReading& r) { return r.lostOfLongestMm.value_or(kNoWidth); });
        addEdgeOn(ViewAim::ShortestWidth, m_stage.sections.showsShortest,
                  [](const ViewReading& r) { return r.beyondShortestMm.value_or(kNoWidth); });
        addBend();
        if (!addLeastOverlap()) return cancelled("Planning of the views");
        addEnFace();
        if (!addOneForAll()) return cancelled("Planning of the views");
        return std::move(m_plan);
    }

private:
    static constexpr double kNoWidth = 1e3;

    void note(const char* code, std::string text) { m_plan.notices.push_back({code, std::move(text), {}}); }

    void add(ViewAim aim, const CArmAngles& ideal, const CArmAngles& used) {
        WorkingView view;
        view.aim = aim;
        view.ideal = ideal;
        view.seen = m_stage.full(used);
        view.movedDeg = betweenLinesDeg(beamDirection(ideal), beamDirection(used));
        if (m_leastHidden && view.seen.hiddenShare) view.hiddenBeyondLeast = std::max(0.0, *view.seen.hiddenShare - *m_leastHidden);
        m_plan.views.push_back(view);
    }

    template <class Loss> void addEdgeOn(ViewAim aim, const CArmAngles& ideal, const Loss& loss) {
        if (const auto exact = reachable(m_stage.reach(), ideal)) return add(aim, ideal, *exact);
        const auto cost = [&](const CArmAngles& view, double) { return loss(m_stage.quick(view)); };
        if (const auto best = leastOf(m_edgeOn, cost, {})) return add(aim, ideal, *best);
        constexpr double kTieBreak = 1e-3; // the opening decides, the loss among views equally open
        const auto opening = [&](const CArmAngles& view, double) {
            const ViewReading r = m_stage.quick(view);
            return r.openingDeg + kTieBreak * loss(r);
        };
        if (const auto best = searched(m_stage.reach(), opening, {})) add(aim, ideal, *best);
    }

    void addBend() {
        if (!m_stage.bend) {
            note("no-bend", "The axis hardly turns (or is too short to tell): no view in profile of a bend is named.");
            return;
        }
        const auto ideal = edgeOnAlong(m_stage.normal, m_stage.bend->normal);
        if (!ideal) {
            note("no-bend", "The bend lies within the plane itself: no edge-on view has it in profile.");
            return;
        }
        addEdgeOn(ViewAim::BendInProfile, *ideal, [](const ViewReading& r) { return r.offProfileDeg.value_or(90.0); });
    }

    bool addLeastOverlap() {
        if (!m_stage.silhouettes()) {
            note("no-surface", "There is no surface of atrium and appendage: how they overlap in a view is not told.");
            return true;
        }
        const auto cost = [&](const CArmAngles& view, double) { return m_stage.silhouettes()->hiddenShare(view); };
        constexpr double kOverlapDeg = 10.0; // silhouettes change slowly with the view
        const auto best = searched(m_stage.reach(), cost, m_work, kOverlapDeg);
        if (!best) return false;
        m_leastHidden = cost(*best, 0.0);
        for (WorkingView& view : m_plan.views)
            if (view.seen.hiddenShare) view.hiddenBeyondLeast = std::max(0.0, *view.seen.hiddenShare - *m_leastHidden);
        add(ViewAim::LeastOverlap, *best, *best);
        return true;
    }

    void addEnFace() {
        const CArmAngles ideal = m_stage.sections.enFace;
        const auto exact = reachable(m_stage.reach(), ideal);
        const CArmAngles front = heldWithin(m_stage.reach(), ideal),
                         back = heldWithin(m_stage.reach(), anglesOf(-beamDirection(ideal)));
        const auto off = [&](const CArmAngles& view) { return betweenLinesDeg(beamDirection(view), m_stage.normal); };
        add(ViewAim::EnFace, ideal, exact ? *exact : off(front) <= off(back) ? front : back);
    }

    bool addOneForAll() {
        const CompromiseScales& s = m_stage.scales();
        const auto cost = [&](const CArmAngles& view, double least) {
            const ViewReading r = m_stage.quick(view);
            double sum = squareOf(r.openingDeg / s.openingDeg) + squareOf(r.lostOfLongestMm.value_or(kNoWidth) / s.widthMm) +
                         squareOf(r.beyondShortestMm.value_or(kNoWidth) / s.widthMm);
            if (r.offProfileDeg) sum += squareOf(*r.offProfileDeg / s.profileDeg);
            if (m_leastHidden && sum <= least) // silhouettes take longest, and can only add
                sum += squareOf((m_stage.silhouettes()->hiddenShare(view) - *m_leastHidden) / s.hiddenShare);
            return sum;
        };
        const auto best = searched(m_stage.reach(), cost, m_work);
        if (!best) return false;
        add(ViewAim::OneForAll, *best, *best);
        return true;
    }

    const PlanningScene& m_stage;
    const WorkContext& m_work;
    ViewPlan m_plan;
    std::vector<CArmAngles> m_edgeOn;
    std::optional<double> m_leastHidden;
};

} // namespace

std::string_view name(ViewAim aim) {
    return kAimNames[static_cast<std::size_t>(aim)];
}

std::optional<ViewAim> viewAimFrom(std::string_view name) {
    const auto found = std::find(kAimNames.begin(), kAimNames.end(), name);
    if (found == kAimNames.end()) return std::nullopt;
    return kViewAims[static_cast<std::size_t>(found - kAimNames.begin())];
}

const WorkingView* ViewPlan::view(ViewAim aim) const {
    const auto found = std::find_if(views.begin(), views.end(), [&](const WorkingView& v) { return v.aim == aim; });
    return found == views.end() ? nullptr : &*found;
}

std::optional<BendPlane> bendPlane(std::span<const PatientPoint> axis) {
    const auto line = Polyline::make(axis);
    if (!line || line->lengthMm() < kShortestAxisMm) return std::nullopt;
    const auto sharpest = line->maximumTurn(kDirectionSpanMm);
    if (sharpest.angleDeg < kLeastBendDeg) return std::nullopt;
    BendPlane bend;
    const PatientPoint at = line->pointAt(sharpest.sMm);
    bend.before = (at - line->pointAt(sharpest.sMm - kDirectionSpanMm)).normalized();
    bend.after = (line->pointAt(sharpest.sMm + kDirectionSpanMm) - at).normalized();
    const PatientVector across = bend.before.cross(bend.after);
    if (!(across.norm() > 1e-9)) return std::nullopt; // straight back: any plane will do
    bend.normal = across.normalized();
    bend.turnDeg = sharpest.angleDeg;
    return bend;
}

Result<ViewReading> readView(const ProjectionSubject& subject, const Silhouettes* silhouettes, const CArmAngles& room,
                             const ViewPlanOptions& options) {
    if (auto valid = validate(room); !valid) return tl::make_unexpected(valid.error());
    const auto stage = PlanningScene::make(subject, silhouettes, options);
    if (!stage) return tl::make_unexpected(stage.error());
    return stage->full(room);
}

Result<ViewPlan> planViews(const ProjectionSubject& subject, const Silhouettes* silhouettes, const ViewPlanOptions& options,
                           const WorkContext& work) {
    const auto stage = PlanningScene::make(subject, silhouettes, options);
    if (!stage) return tl::make_unexpected(stage.error());
    return Planner(*stage, work).plan();
}

} // namespace gauge::core
