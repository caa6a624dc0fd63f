// The page of the septal crossing: the septal face with its map, the way of the sheath, the limits that the person sets, and the
// answer in words: whether one crossing serves repair and closure.
#pragma once

#include "app/models/septum_model.h"
#include "app/models/view_state.h"

#include <QWidget>
#include <functional>
#include <vector>

class QComboBox;
class QFormLayout;
class QLabel;

namespace gauge::app {

class NumberEdit;
class SeptalFaceView;
class SheathView;
class WrappedCheck;

class SeptumPage : public QWidget {
    Q_OBJECT
public:
    SeptumPage(Session& session, ViewState& state, QWidget* parent = nullptr);

    /// Mark each kind of point; cross at the place with most room; give the crossing up; look from the other side.
    QList<QAction*> actions() const { return m_actions; }

    SeptumModel& model() { return m_model; }
    SeptalFaceView& face() { return *m_face; }
    /// What is said below the map, without markup; for tests and for screen readers.
    QString text() const;

private:
    QWidget* makeLimits();
    void addLimit(QFormLayout& form, const QString& label, double least, double most, double core::CrossingLimits::*member);
    void makeActions();
    void refresh();
    QString answerWords() const;
    QString crossingWords() const;
    void edit(const std::function<void(core::CrossingLimits&)>& change);

    Session& m_session;
    ViewState& m_state;
    SeptumModel m_model;
    SeptalFaceView* m_face;
    SheathView* m_sheath;
    QComboBox* m_side;
    WrappedCheck *m_repair, *m_steerable;
    QComboBox* m_datum;
    QLabel *m_legend, *m_words;
    std::vector<std::function<void(const core::CrossingLimits&)>> m_show; ///< a field each
    QAction *m_take = nullptr, *m_giveUp = nullptr, *m_turn = nullptr;
    QList<QAction*> m_actions;
};

} // namespace gauge::app
