// The meeting: one picture at a time in large type, the values that matter beside it, and the chosen size with its warnings.
// The smallest letter is at least 1/40 of the window's height. Page Down, right and the space bar go on, Page Up and left back,
// Home and End to the ends; Esc ends the meeting.
#pragma once

#include "app/document/answers.h"
#include "app/document/evidence_images.h"
#include "app/models/comparison_model.h"
#include "app/models/sizes_model.h"
#include "app/models/view_state.h"

#include <QWidget>
#include <functional>
#include <vector>

class QLabel;
class QScrollArea;
class QStackedWidget;
class QVBoxLayout;

namespace gauge::app {

class CineView;

class MeetingView : public QWidget {
    Q_OBJECT
public:
    MeetingView(Session& session, ViewState& state, Answers& answers, EvidenceImages& images, QWidget* parent = nullptr);

    /// A picture to page through. `enter` is called when it comes up; `isThere` says whether the case has it.
    void addSlide(const QString& title, QWidget* widget, std::function<void()> enter = {},
                  std::function<bool()> isThere = {});
    int slideCount() const;
    /// Among those that the case has, from 0.
    int slide() const { return m_at; }
    void showSlide(int at);

    /// Height of the smallest letters in pixels for a window of this height.
    static int textPixels(int windowHeight);

signals:
    void left();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    struct Slide {
        QString title;
        QWidget* widget;
        std::function<void()> enter;
        std::function<bool()> isThere;
    };
    std::vector<const Slide*> present() const;
    void refreshEvidence();
    void showEvidence(const QString& id, int frame);
    void refresh();
    void refreshValues();
    QWidget* makeComparison();
    void refreshComparison();
    void refreshSize();
    void useLargeType();

    Session& m_session;
    ViewState& m_state;
    Answers& m_answers;
    SizesModel m_sizes;
    ComparisonModel m_comparison;
    QLabel* m_table = nullptr;
    std::vector<Slide> m_slides;
    std::vector<Slide> m_evidence; ///< echo views and X-ray runs, after those of CT
    CineView* m_cine;              ///< shows one of them
    int m_at = 0;
    QStackedWidget* m_pictures;
    QLabel* m_title;
    QLabel* m_count;
    QLabel* m_values;
    QLabel* m_size;
    QLabel* m_caution;
    QScrollArea* m_side;
};

} // namespace gauge::app
