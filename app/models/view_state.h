// What the views share and no case contains: grey window, depth of the shown cross-section, turn of the long
// section, the horizontal axis of long section and depth strip, the place where scanner-axis sections cross,
// the armed mark.
#pragma once

#include "app/drawing/grey_image.h"
#include "app/drawing/long_section_drawing.h"
#include "app/models/place.h"
#include "app/models/septum_point.h"
#include "core/record/case_record.h"
#include "core/volume/section_image.h"

#include <QObject>
#include <optional>

namespace gauge::app {

class ViewState : public QObject {
    Q_OBJECT
public:
    using Page = gauge::app::Page;
    using Depth = gauge::app::Depth;
    using Slab = core::Slab;
    /// Reading room, or the meeting: large type, only what matters.
    enum class Mode { Reading, Meeting };
    Q_ENUM(Mode)

    using QObject::QObject;

    const GreyWindow& window() const { return m_window; }
    void setWindow(const GreyWindow& window);

    Depth depthKind() const { return m_depthKind; }
    double cursorMm() const { return m_cursorMm; } ///< meaningful for Depth::Free
    void showOstium();
    void showLanding();
    void showDepth(double mm);
    void showPlug();

    double turnDeg() const { return m_turnDeg; }
    void setTurnDeg(double deg); ///< kept within (-180, 180]

    const DepthScale& depthScale() const { return m_scale; }
    void setDepthScale(const DepthScale& scale);

    const core::PatientPoint& crossing() const { return m_crossing; }
    void setCrossing(const core::PatientPoint& point);

    std::optional<core::MarkKind> armed() const { return m_armed; }
    void arm(std::optional<core::MarkKind> kind); ///< nothing: disarms points of the septum too

    /// The kind of points of the septum that clicks mark on scanner-axis sections, until disarmed.
    std::optional<SeptumPoint> armedSeptum() const { return m_armedSeptum; }
    void armSeptum(std::optional<SeptumPoint> kind);

    /// The tool that draws with the next click, in every view; arming it disarms a mark, and the other way round. `role` is
    /// what its drawing will measure of the appendage.
    std::optional<core::DrawingKind> tool() const { return m_tool; }
    core::DrawingRole toolRole() const { return m_toolRole; }
    void armTool(std::optional<core::DrawingKind> kind, core::DrawingRole role = core::DrawingRole::None);

    /// Id of the drawing that keys and menus act on; empty: none.
    const QString& selectedDrawing() const { return m_drawing; }
    void selectDrawing(const QString& id);

    /// The place in the patient under the pointer of a CT view, shown in the others.
    const std::optional<core::PatientPoint>& pointer() const { return m_pointer; }
    void setPointer(const std::optional<core::PatientPoint>& point);

    /// How thick CT sections are shown, and what of their thickness.
    const Slab& slab() const { return m_slab; }
    void setSlab(const Slab& slab); ///< held within 0 … 40 mm

    Page page() const { return m_page; }
    void setPage(Page page);

    /// Where the person was sent last. `goTo` sets page and depth, then tells the views, which bring up the evidence, frame
    /// and drawing that are theirs; calling it again with the same place tells them again.
    const Place& place() const { return m_place; }
    void goTo(const Place& place);

    Mode mode() const { return m_mode; }
    void setMode(Mode mode);

    /// True while no identity may be shown on screen or in pictures.
    bool namesHidden() const { return m_namesHidden; }
    void setNamesHidden(bool hidden);

signals:
    void placeChanged();
    void modeChanged();
    void namesHiddenChanged();
    void windowChanged();
    void depthChanged();
    void turnChanged();
    void scaleChanged();
    void crossingChanged();
    void armedChanged();
    void pageChanged();
    void toolChanged();
    void drawingSelected();
    void pointerChanged();
    void slabChanged();

private:
    GreyWindow m_window;
    Depth m_depthKind = Depth::Landing;
    double m_cursorMm = 0.0;
    double m_turnDeg = 0.0;
    DepthScale m_scale;
    core::PatientPoint m_crossing;
    std::optional<core::MarkKind> m_armed;
    std::optional<SeptumPoint> m_armedSeptum;
    std::optional<core::DrawingKind> m_tool;
    core::DrawingRole m_toolRole = core::DrawingRole::None;
    QString m_drawing;
    std::optional<core::PatientPoint> m_pointer;
    Slab m_slab;
    Page m_page = Page::Scanner;
    Place m_place;
    Mode m_mode = Mode::Reading;
    bool m_namesHidden = false;
};

} // namespace gauge::app
