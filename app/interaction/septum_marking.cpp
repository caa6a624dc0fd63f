#include "app/interaction/septum_marking.h"

#include "app/commands/septum_commands.h"
#include "core/record/septum_values.h"

#include <QCoreApplication>
#include <cmath>

namespace gauge::app {
namespace {

constexpr double kGripPx = 9.0, kGripMm = 4.0; // in the picture, and from its plane

/// The point of that kind under the pointer.
std::optional<std::size_t> septumPointAt(const Session& session, SeptumPoint kind, const SectionMap& map, const QPointF& at) {
    std::optional<std::size_t> best;
    double nearest = kGripPx;
    const auto points = pointsOf(core::septumMarks(session.record()), kind);
    for (std::size_t i = 0; i < points.size(); ++i) {
        if (std::abs(core::signedDistanceMm(map.frame.plane(), points[i])) > kGripMm) continue;
        const QPointF away = map.fromPatient(points[i]) - at;
        const double distance = std::hypot(away.x(), away.y());
        if (distance > nearest) continue;
        nearest = distance;
        best = i;
    }
    return best;
}

int nextSeptumGesture() {
    static int gesture = 0;
    return ++gesture;
}

} // namespace

bool SeptumMarking::press(Session& session, ViewState& state, const SectionMap& map, const QPointF& at) {
    if (!state.armedSeptum()) return false;
    const SeptumPoint kind = *state.armedSeptum();
    if (const auto index = septumPointAt(session, kind, map, at)) {
        m_held = Held{kind, *index, nextSeptumGesture()};
        return true;
    }
    const core::PatientPoint point = map.patientFrom(at);
    if (!session.volume() || !session.volume()->contains(point)) {
        session.say(Message::Kind::Warning,
                    QCoreApplication::translate("SeptumMarking", "Marks must lie on the images: click inside the picture."));
        return true;
    }
    CaseDocument& document = session.document();
    document.push(std::make_unique<AddSeptumPoint>(document, kind, point));
    return true;
}

void SeptumMarking::move(Session& session, const SectionMap& map, const QPointF& at) {
    if (!m_held) return;
    const auto points = pointsOf(core::septumMarks(session.record()), m_held->kind);
    const core::PatientPoint to = map.patientFrom(at);
    if (m_held->index >= points.size() || !session.volume() || !session.volume()->contains(to)) return;
    CaseDocument& document = session.document();
    document.push(std::make_unique<MoveSeptumPoint>(document, m_held->kind, m_held->index, to, m_held->gesture));
}

bool SeptumMarking::remove(Session& session, const ViewState& state, const SectionMap& map, const QPointF& at) {
    if (!state.armedSeptum()) return false;
    const auto index = septumPointAt(session, *state.armedSeptum(), map, at);
    if (!index) return false;
    CaseDocument& document = session.document();
    document.push(std::make_unique<RemoveSeptumPoint>(document, *state.armedSeptum(), *index));
    return true;
}

} // namespace gauge::app
