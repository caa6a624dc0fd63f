#include "app/views/shown_section.h"

#include "app/drawing/depth_strip_drawing.h"
#include "app/drawing/long_section_drawing.h"
#include "app/format/quantity.h"

#include <QCoreApplication>
#include <algorithm>

namespace gauge::app {
namespace {

/// Depth of the axis point nearest to a place.
double depthOf(const core::AppendageMeasurement& m, const core::PatientPoint& place) {
    const auto nearest = std::min_element(m.profile.begin(), m.profile.end(), [&](const auto& a, const auto& b) {
        return core::distanceMm(core::axisPointAt(m, a.sMm), place) < core::distanceMm(core::axisPointAt(m, b.sMm), place);
    });
    return nearest == m.profile.end() ? 0.0 : nearest->sMm;
}

} // namespace

std::optional<ShownSection> shownSection(const Session& session, const ViewState& state) {
    const core::AppendageMeasurement* m = session.measurement();
    if (!m) return std::nullopt;
    if (state.depthKind() == ViewState::Depth::Landing)
        if (const auto* landing = session.landingShown())
            return ShownSection{&landing->section, Role::Landing, landing->depthMm, landingWords(*landing), session.isLandingMeasured()};
    if (state.depthKind() == ViewState::Depth::Plug)
        if (const auto* plug = session.plug())
            return ShownSection{&plug->section, Role::Section, depthOf(*m, plug->section.center), landingWords(*plug)};
    if (state.depthKind() == ViewState::Depth::Free)
        if (const auto* nearest = nearestProfile(*m, state.cursorMm()))
            return ShownSection{&nearest->section, Role::Section, nearest->sMm,
                                QCoreApplication::translate("Drawing", "depth %1")
                                    .arg(quantity(nearest->sMm, Unit::Millimetre))};
    if (const auto* dragged = session.ostiumPreview())
        return ShownSection{dragged, Role::Ostium, 0.0, QCoreApplication::translate("Views", "ostium, being moved")};
    return ShownSection{&m->ostium.section, Role::Ostium, 0.0,
                        m->ostium.proposed ? QCoreApplication::translate("Drawing", "ostium, proposed") : wordOf(Role::Ostium)};
}

void scrollDepth(const Session& session, ViewState& state, int steps) {
    constexpr double kStepMm = 0.5;
    const auto shown = shownSection(session, state);
    if (!shown || session.measurement()->profile.empty()) return;
    const auto& profile = session.measurement()->profile;
    state.showDepth(std::clamp(shown->depthMm + steps * kStepMm, profile.front().sMm, profile.back().sMm));
}

} // namespace gauge::app
