#include "app/models/view_state.h"

#include <algorithm>
#include <cmath>

namespace gauge::app {

void ViewState::setWindow(const GreyWindow& window) {
    constexpr double kLeastWidthHu = 20.0, kMostWidthHu = 4000.0, kFarthestHu = 3000.0;
    const GreyWindow held{std::clamp(window.centerHu, -kFarthestHu, kFarthestHu),
                          std::clamp(window.widthHu, kLeastWidthHu, kMostWidthHu)};
    if (held == m_window) return;
    m_window = held;
    emit windowChanged();
}

void ViewState::showOstium() {
    m_depthKind = Depth::Ostium;
    emit depthChanged();
}

void ViewState::showLanding() {
    m_depthKind = Depth::Landing;
    emit depthChanged();
}

void ViewState::showDepth(double mm) {
    m_depthKind = Depth::Free;
    m_cursorMm = mm;
    emit depthChanged();
}

void ViewState::showPlug() {
    m_depthKind = Depth::Plug;
    emit depthChanged();
}

void ViewState::setTurnDeg(double deg) {
    double turned = std::remainder(deg, 360.0);
    if (turned <= -180.0) turned += 360.0;
    if (turned == m_turnDeg) return;
    m_turnDeg = turned;
    emit turnChanged();
}

void ViewState::setDepthScale(const DepthScale& scale) {
    if (scale == m_scale) return;
    m_scale = scale;
    emit scaleChanged();
}

void ViewState::setCrossing(const core::PatientPoint& point) {
    m_crossing = point;
    emit crossingChanged();
}

void ViewState::arm(std::optional<core::MarkKind> kind) {
    if (kind == m_armed && !m_armedSeptum) return;
    m_armed = kind;
    m_armedSeptum.reset();
    if (kind) armTool(std::nullopt);
    emit armedChanged();
}

void ViewState::armSeptum(std::optional<SeptumPoint> kind) {
    if (kind == m_armedSeptum) return;
    m_armedSeptum = kind;
    if (kind) {
        m_armed.reset();
        armTool(std::nullopt);
    }
    emit armedChanged();
}

void ViewState::armTool(std::optional<core::DrawingKind> kind, core::DrawingRole role) {
    if (!kind) role = core::DrawingRole::None;
    if (kind == m_tool && role == m_toolRole) return;
    m_tool = kind;
    m_toolRole = role;
    if (kind) arm(std::nullopt);
    emit toolChanged();
}

void ViewState::selectDrawing(const QString& id) {
    if (id == m_drawing) return;
    m_drawing = id;
    emit drawingSelected();
}

void ViewState::setPointer(const std::optional<core::PatientPoint>& point) {
    if (point.has_value() == m_pointer.has_value() && (!point || point->mm == m_pointer->mm)) return;
    m_pointer = point;
    emit pointerChanged();
}

void ViewState::setSlab(const Slab& slab) {
    constexpr double kThickestMm = 40.0;
    const Slab held{std::clamp(slab.thicknessMm, 0.0, kThickestMm), slab.shows};
    if (held == m_slab) return;
    m_slab = held;
    emit slabChanged();
}

void ViewState::setPage(Page page) {
    if (page == m_page) return;
    m_page = page;
    emit pageChanged();
}

void ViewState::goTo(const Place& place) {
    m_place = place;
    if (place.depth) {
        m_depthKind = *place.depth;
        m_cursorMm = place.depthMm;
        emit depthChanged();
    }
    if (place.point) setCrossing(*place.point);
    setPage(place.page);
    selectDrawing(place.drawing);
    emit placeChanged();
}

void ViewState::setMode(Mode mode) {
    if (mode == m_mode) return;
    m_mode = mode;
    emit modeChanged();
}

void ViewState::setNamesHidden(bool hidden) {
    if (hidden == m_namesHidden) return;
    m_namesHidden = hidden;
    emit namesHiddenChanged();
}

} // namespace gauge::app
