// The echo views of one moment side by side, their cines in step by the beat; below them the dial with the widths at their probe
// angles and the ellipse through them. Widths are drawn by hand, or in one pass from the keyboard.
//
//   M one pass · Shift+O, Shift+L, Shift+D what is drawn next · Shift+F one view alone · Shift+K calibrates
//   In the pass: "," and "." choose the frame; arrows (Shift finer) and Space, or the mouse, set the ends; S leaves a length out,
//   Backspace or Escape takes a begun one back, Enter goes to the next view, Escape ends.
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
class QLabel;
class QVBoxLayout;

namespace gauge::app {

class WrappingRow;

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
    QSize minimumSizeHint() const override;

protected:
    void resizeEvent(QResizeEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    void makeActions();
    void refresh();
    void refreshMoments();
    void goToPlace();
    void placeViews();
    void setActive(std::size_t view);
    void setAlone(bool alone);
    void startPass();
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
    QString m_other; ///< a picture that is no view of a moment, shown alone; empty: none
    std::array<CineView*, 4> m_views{};
    std::size_t m_active = 0;
    bool m_alone = false;
    bool m_following = false; ///< a view is being brought into step
    QSet<QString> m_known; ///< drawings there were when a length came due
    QList<QAction*> m_actions;
    QActionGroup* m_roles;
    WrappingRow* m_moments;
    QVBoxLayout* m_upper;
    QGridLayout* m_grid;
    QLabel* m_instruction;
    AngleDial* m_dial;
};

} // namespace gauge::app
