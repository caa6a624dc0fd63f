// The evidence, by stage in the order of time. Enter or a double click shows an entry, or measures another phase of a CT;
// the context menu and the keys change stage, moment, probe angle and phase of all that are selected.
#pragma once

#include "app/document/session.h"
#include "app/models/evidence_model.h"
#include "app/models/view_state.h"

#include <QWidget>

class QAction;
class QLabel;
class QMenu;
class QTreeView;

namespace gauge::app {

class EvidencePanel : public QWidget {
    Q_OBJECT
public:
    EvidencePanel(Session& session, ViewState& state, QWidget* parent = nullptr);

    /// What can be done with the selected evidence; keys work while the list has the focus.
    QList<QAction*> actions() const { return m_actions; }
    /// Ids of the selected evidence.
    QStringList selected() const;
    void select(const QString& evidence);
    /// The context menu as it stands for what is selected; the caller owns it.
    QMenu* makeMenu();

    // Undoable, for all that is selected.
    void setStage(core::Stage stage);
    void setMoment(const std::string& moment);
    void setProbeAngle(std::optional<double> deg);
    void setPhase(core::BeatPhase phase);

signals:
    void openRequested();

private:
    void makeActions();
    void refresh();
    void activate(const QModelIndex& index);
    void moveStage(int steps);
    void askProbeAngle();
    void showSkipped();
    template <class Push> void edit(const QString& text, Push&& push);

    Session& m_session;
    ViewState& m_state;
    EvidenceModel m_model;
    QTreeView* m_tree;
    QLabel* m_empty;
    QLabel* m_skipped;
    QList<QAction*> m_actions;
    bool m_refreshing = false;
};

/// The page that shows evidence of this kind.
Page pageOf(core::EvidenceKind kind);

} // namespace gauge::app
