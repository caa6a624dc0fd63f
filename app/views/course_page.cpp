#include "app/views/course_page.h"

#include "app/panels/decision_editor.h"
#include "app/panels/editor_parts.h"
#include "app/panels/moments_editor.h"
#include "app/panels/readings_editor.h"
#include "app/panels/release_editor.h"
#include "app/panels/scores_editor.h"
#include "app/panels/stasis_editor.h"

#include <QAction>

namespace gauge::app {

CoursePage::CoursePage(Answers& answers, ViewState& state, QWidget* parent)
    : QTabWidget(parent), m_moments(new MomentsEditor(answers)), m_readings(new ReadingsEditor(answers)),
      m_stasis(new StasisEditor(answers)), m_release(new ReleaseEditor(answers)), m_scores(new ScoresEditor(answers)),
      m_decision(new DecisionEditor(answers)) {
    setDocumentMode(true);
    setAccessibleName(tr("The patient's course"));
    addTab(scrolled(m_moments), tr("Pressures"));
    addTab(scrolled(m_readings), tr("Typed readings"));
    addTab(scrolled(m_stasis), tr("Stasis"));
    addTab(scrolled(m_release), tr("Release check"));
    addTab(scrolled(m_scores), tr("Scores"));
    addTab(scrolled(m_decision), tr("Decision"));
    addAction(tr("Add a moment"), tr("Add a moment with its pressures to the course"), widget(0),
              [this] { m_moments->addMoment(); });
    addAction(tr("Type a reading in"), tr("A number that was not measured here"), widget(1),
              [this] { m_readings->addReading(); });
    addAction(tr("Record stasis"), tr("Smoke, sludge, thrombus, emptying velocity at a stage"), widget(2),
              [this] { m_stasis->addFinding(); });
    addAction(tr("Record a look at the implant"), tr("The checks before and after release"), widget(3),
              [this] { m_release->addLook(); });
    m_actions += m_decision->actions();
    // A typed reading is the only value measured on this page: its place brings up where it was typed.
    connect(&state, &ViewState::placeChanged, this, [this, &state] {
        if (state.place().page != Page::Course) return;
        setCurrentIndex(1);
        m_readings->choose(state.place().reading);
    });
}

void CoursePage::addAction(const QString& text, const QString& tip, QWidget* part, const std::function<void()>& act) {
    auto* action = new QAction(text, this);
    action->setToolTip(tip);
    connect(action, &QAction::triggered, this, [this, part, act] {
        setCurrentWidget(part);
        act();
    });
    m_actions.push_back(action);
}

} // namespace gauge::app
