// The echo views of one moment side by side, their cines in step by the beat; below them the dial with the widths at their probe
// angles and the ellipse through them. Widths are drawn by hand, or in one pass from the keyboard.
//
//   B / A change the moment · 1 … 4 turn to a view · F one view alone · W O D what is drawn next · M one pass
#pragma once

#include "app/document/evidence_images.h"
#include "app/models/echo_pass.h"
#include "app/models/view_state.h"
#include "app/views/angle_dial.h"
#include "app/views/cine_view.h"

#include <QActionGroup>
#include <QSet>
#include <QWidget>
#include <array>

class QGridLayout;
class QHBoxLayout;
class QLabel;

namespace gauge::app {

class EchoPage : public QWidget {
    Q_OBJECT
public:
    EchoPage(Session& session, ViewState& state, EvidenceImages& images, QWidget* parent = nullptr);

    QList<QAction*> actions() const { return m_actions; }
    EchoPass& pass() { return m_pass; }
    /// The moment that is shown (core::momentKey).
    const std::string& moment() const { return m_moment; }
    void showMoment(const std::string& key);
    /// Views on screen, in the order of their angles; at most four.
    const std::array<CineView*, 4>& views() const { return m_views; }
    CineView* activeView() const { return m_views[m_active]; }
    AngleDial& dial() { return *m_dial; }
    QString instruction() const;

    bool eventFilter(QObject* watched, QEvent* event) override;

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void makeActions();
    void refresh();
    void refreshMoments();
    void goToPlace();
    void placeViews();
    void setActive(std::size_t view);
    void setAlone(bool alone);
    void arm(core::DrawingRole role);
    void keepInStep(const CineView* leader);
    void onPass();
    void onDrawings();
    void refreshInstruction();
    std::size_t shownCount() const;

    Session& m_session;
    ViewState& m_state;
    EchoPass m_pass;
    std::string m_moment;
    std::array<CineView*, 4> m_views{};
    std::size_t m_active = 0;
    bool m_alone = false;
    bool m_following = false; ///< a view is being brought into step
    QSet<QString> m_known; ///< drawings there were when a length came due
    QList<QAction*> m_actions;
    QActionGroup* m_roles;
    QHBoxLayout* m_moments;
    QGridLayout* m_grid;
    QLabel* m_instruction;
    AngleDial* m_dial;
};

} // namespace gauge::app
