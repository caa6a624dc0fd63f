// The page of the appendage: long section, cross-section, surface, depth strip and what the pointer reads there.
#pragma once

#include "app/document/session.h"
#include "app/models/view_state.h"

#include <QWidget>

class QToolButton;

namespace gauge::app {

class Answers;
class CrossSectionView;
class DepthReadout;
class DepthStripView;
class LongSectionView;
class SurfaceView;

class AppendagePage : public QWidget {
    Q_OBJECT
public:
    AppendagePage(Session& session, ViewState& state, QWidget* parent = nullptr);

    /// Gives depth strip and readout the widths at other pressures, and the pictures the chosen size where it would sit.
    void setAnswers(Answers& answers);
    void resetViews();
    LongSectionView& longSection() { return *m_longSection; }
    CrossSectionView& crossSection() { return *m_crossSection; }
    SurfaceView& surface() { return *m_surface; }

private:
    LongSectionView* m_longSection;
    CrossSectionView* m_crossSection;
    SurfaceView* m_surface;
    DepthStripView* m_strip;
    DepthReadout* m_readout;
};

/// "Cross-section at: ostium, landing zone": for the bar above the page.
class CrossSectionChoice : public QWidget {
    Q_OBJECT
public:
    CrossSectionChoice(Session& session, ViewState& state, QWidget* parent = nullptr);

private:
    void refresh();

    Session& m_session;
    ViewState& m_state;
    QToolButton* m_ostium;
    QToolButton* m_landing;
};

} // namespace gauge::app
