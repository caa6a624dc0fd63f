// The middle of the window: one page at a time, and the bar of buttons that chooses it. A page is any widget; what it can do
// it says by its actions(), which the window shows in the menu "Measure" while the page is up.
//
//     shelf->add(Page::Echo, tr("Echo"), tr("The echo views …"), Qt::CTRL | Qt::Key_3, new EchoPage(m_session, m_state));
#pragma once

#include "app/models/view_state.h"

#include <QAction>
#include <QKeySequence>
#include <QList>
#include <QWidget>
#include <vector>

class QHBoxLayout;
class QStackedWidget;

namespace gauge::app {

class PageShelf : public QWidget {
    Q_OBJECT
public:
    struct Entry {
        Page page;
        QString title;
        QWidget* widget;
        QList<QAction*> tools; ///< what can be done on the page
        QAction* show;         ///< brings the page up; checkable
    };

    explicit PageShelf(ViewState& state, QWidget* parent = nullptr);

    /// Takes the page; its key and tooltip are those of its button and of its entry in the menu "View".
    template <class Widget>
    void add(Page page, const QString& title, const QString& tip, const QKeySequence& key, Widget* widget) {
        addEntry(page, title, tip, key, widget, widget->actions());
    }
    /// Shown at the end of the bar while the page is up.
    void addBeside(Page page, QWidget* widget);
    /// Shown while nothing is open.
    void setStart(QWidget* start);
    void setOpen(bool open);
    /// Shown instead of any page while it is set: what there is to see while images are loaded. Null: the page again.
    void setWaiting(QWidget* waiting);

    /// The buttons; the window puts them where it wants.
    QWidget* bar() const { return m_bar; }
    const std::vector<Entry>& entries() const { return m_entries; }
    const Entry* entry(Page page) const;
    /// The page that is up; null while nothing is open.
    const Entry* current() const { return m_open ? entry(m_state.page()) : nullptr; }

signals:
    /// After another page has come up, or the start page.
    void shown();

private:
    void addEntry(Page page, const QString& title, const QString& tip, const QKeySequence& key, QWidget* widget,
                  const QList<QAction*>& tools);
    void showCurrent();

    ViewState& m_state;
    QWidget* m_bar;
    QHBoxLayout* m_buttons;
    QStackedWidget* m_stack;
    QWidget* m_start = nullptr;
    QWidget* m_waiting = nullptr;
    bool m_open = false;
    std::vector<Entry> m_entries;
    std::vector<std::pair<Page, QWidget*>> m_beside;
};

/// "What it does (Ctrl+3)": a tooltip names the key.
QString tipWithKey(const QString& tip, const QKeySequence& key);

} // namespace gauge::app
