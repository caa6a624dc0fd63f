#include "core/echo/echo_study.h"

#include "core/number_text.h"

#include <algorithm>
#include <cmath>

namespace gauge::core {
namespace {

std::vector<WidthReading> widthsOf(const EchoReadings& r, std::optional<double> EchoView::*width) {
    std::vector<WidthReading> readings;
    for (const auto& v : r.views)
        if (v.*width) readings.push_back({v.angleDeg, *(v.*width), r.widthUncertaintyMm, v.phase});
    return readings;
}

Result<void> readDepth(const EchoReadings& r, EchoMeasurement& m) {
    int count = 0;
    for (const auto& v : r.views) {
        if (!v.depthMm) continue;
        if (!(std::isfinite(*v.depthMm) && *v.depthMm > 0.0))
            return failure(ErrorCode::InvalidArgument, "Cannot use the depth read on echo: it is " + fixed(*v.depthMm, 1) + " mm; a depth above 0 is needed.");
        ++count;
        if (!m.depth) {
            m.depth = EchoDepth{};
            m.depth->leastMm = *v.depthMm;
        }
        m.depth->leastMm = std::min(m.depth->leastMm, *v.depthMm);
        if (*v.depthMm > m.depth->greatestMm.value) {
            m.depth->greatestMm = {*v.depthMm, {.observer = r.depthUncertaintyMm}, "greatest depth of the echo views"};
            m.depth->angleDeg = probeAngleIn180(v.angleDeg);
        }
    }
    if (count == 1)
        m.notices.push_back({"depth-from-one-view",
                             "The depth was read in one view only; the tip may lie outside it: a lower bound.",
                             {}});
    else if (m.depth && m.depth->leastMm < 0.75 * m.depth->greatestMm.value)
        m.notices.push_back({"depth-short-in-a-view",
                             "The depth reads " + fixed(m.depth->leastMm, 1) + " mm in one view and " +
                                 fixed(m.depth->greatestMm.value, 1) + " mm in another: an implant must fit in the plane where it is short, too.",
                             {}});
    return {};
}

} // namespace

Result<EchoMeasurement> measureEcho(const EchoReadings& readings) {
    EchoMeasurement m;
    const auto ostium = widthsOf(readings, &EchoView::ostiumMm);
    const auto landing = widthsOf(readings, &EchoView::landingZoneMm);
    if (!ostium.empty()) {
        m.ostium = measureEchoSection(ostium, readings.section);
        if (const auto largest = largestOfViews(ostium)) m.largestOstium = *largest;
    }
    if (!landing.empty()) {
        m.landingZone = measureEchoSection(landing, readings.section);
        if (const auto largest = largestOfViews(landing)) m.largestLandingZone = *largest;
    }
    if (const auto ok = readDepth(readings, m); !ok) return tl::make_unexpected(ok.error());
    if (!m.ostium && !m.landingZone && !m.depth)
        return failure(ErrorCode::InvalidArgument, "Cannot measure on echo: no width and no depth was read.");
    return m;
}

} // namespace gauge::core
