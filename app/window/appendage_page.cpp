#include "app/window/appendage_page.h"

#include "app/document/seats.h"
#include "app/drawing/seat_drawing.h"
#include "app/panels/depth_readout.h"
#include "app/settings/settings.h"
#include "app/views/cross_section_view.h"
#include "app/views/depth_strip_view.h"
#include "app/views/long_section_view.h"
#include "app/views/shown_section.h"
#include "app/views/surface_view.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QToolButton>

namespace gauge::app {

AppendagePage::AppendagePage(Session& session, ViewState& state, QWidget* parent)
    : QWidget(parent), m_longSection(new LongSectionView(session, state)),
      m_crossSection(new CrossSectionView(session, state)), m_surface(new SurfaceView(session, state)),
      m_strip(new DepthStripView(session, state)) {
    m_surface->setDrawing(Settings().surfaceDrawing());
    m_longSection->setAccessibleName(tr("Long section"));
    m_crossSection->setAccessibleName(tr("Cross-section"));
    auto* readout = m_readout = new DepthReadout(session, state);
    connect(m_strip, &DepthStripView::hovered, readout, &DepthReadout::setHover);
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(1);
    grid->addWidget(m_longSection, 0, 0, 2, 1);
    grid->addWidget(m_crossSection, 0, 1);
    grid->addWidget(m_surface, 1, 1);
    grid->addWidget(m_strip, 2, 0);
    grid->addWidget(readout, 2, 1);
    grid->setColumnStretch(0, 3);
    grid->setColumnStretch(1, 2);
    grid->setRowStretch(0, 1);
    grid->setRowStretch(1, 1);
    grid->setRowStretch(2, 1);
    setFocusProxy(m_longSection);
}

void AppendagePage::setAnswers(Answers& answers) {
    m_strip->setAnswers(answers);
    m_readout->setAnswers(answers);
    m_longSection->setSeats(answers.seats());
    m_crossSection->setSeats(answers.seats());
    const auto drawSeat = [this, &answers] {
        const core::Seat* seat = answers.seats().chosen();
        m_surface->setLines(seat ? seatSurfaceLines(*seat) : std::vector<SurfaceLine>());
    };
    connect(&answers.seats(), &Seats::changed, this, drawSeat);
    drawSeat();
}

void AppendagePage::resetViews() {
    m_longSection->resetView();
    m_crossSection->resetView();
    m_surface->resetView();
}

CrossSectionChoice::CrossSectionChoice(Session& session, ViewState& state, QWidget* parent)
    : QWidget(parent), m_session(session), m_state(state), m_ostium(new QToolButton(this)),
      m_landing(new QToolButton(this)) {
    auto* which = new QLabel(tr("Cross-section at"), this);
    which->setObjectName("soft");
    m_ostium->setText(tr("Ostium"));
    m_ostium->setToolTip(tr("Cross-section at the ostium (key O)"));
    m_landing->setText(tr("Landing zone"));
    m_landing->setToolTip(tr("Cross-section at the landing zone (key L)"));
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(6);
    layout->addWidget(which);
    for (QToolButton* button : {m_ostium, m_landing}) {
        button->setCheckable(true);
        button->setFocusPolicy(Qt::TabFocus);
        layout->addWidget(button);
    }
    connect(m_ostium, &QToolButton::clicked, &state, &ViewState::showOstium);
    connect(m_landing, &QToolButton::clicked, &state, &ViewState::showLanding);
    connect(&state, &ViewState::depthChanged, this, &CrossSectionChoice::refresh);
    connect(&session, &Session::measurementChanged, this, &CrossSectionChoice::refresh);
    connect(&session, &Session::landingChanged, this, &CrossSectionChoice::refresh);
    refresh();
}

void CrossSectionChoice::refresh() {
    const auto shown = shownSection(m_session, m_state);
    setEnabled(shown.has_value());
    m_ostium->setChecked(shown && shown->role == Role::Ostium);
    m_landing->setChecked(shown && shown->role == Role::Landing);
}

} // namespace gauge::app
