// The patient's course: pressures over time, typed readings, stasis, release check, scores and the decision, one part at a time.
#pragma once

#include "app/document/answers.h"
#include "app/models/view_state.h"

#include <QTabWidget>

namespace gauge::app {

class DecisionEditor;
class MomentsEditor;
class ReadingsEditor;
class ReleaseEditor;
class ScoresEditor;
class StasisEditor;

class CoursePage : public QTabWidget {
    Q_OBJECT
public:
    CoursePage(Answers& answers, ViewState& state, QWidget* parent = nullptr);

    /// Add a moment, type a reading in, record stasis, record a look at the implant, sign, take the signature off.
    QList<QAction*> actions() const { return m_actions; }

    MomentsEditor& moments() { return *m_moments; }
    ReadingsEditor& readings() { return *m_readings; }
    StasisEditor& stasis() { return *m_stasis; }
    ReleaseEditor& release() { return *m_release; }
    DecisionEditor& decision() { return *m_decision; }

private:
    void addAction(const QString& text, const QString& tip, QWidget* part, const std::function<void()>& act);

    MomentsEditor* m_moments;
    ReadingsEditor* m_readings;
    StasisEditor* m_stasis;
    ReleaseEditor* m_release;
    ScoresEditor* m_scores;
    DecisionEditor* m_decision;
    QList<QAction*> m_actions;
};

} // namespace gauge::app
