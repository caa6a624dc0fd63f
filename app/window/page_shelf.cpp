#include "app/window/page_shelf.h"

#include <QHBoxLayout>
#include <QStackedWidget>
#include <QToolButton>
#include <QVBoxLayout>

namespace gauge::app {

QString tipWithKey(const QString& tip, const QKeySequence& key) {
    return key.isEmpty() ? tip : QStringLiteral("%1 (%2)").arg(tip, key.toString(QKeySequence::NativeText));
}

PageShelf::PageShelf(ViewState& state, QWidget* parent)
    : QWidget(parent), m_state(state), m_bar(new QWidget), m_buttons(new QHBoxLayout(m_bar)), m_stack(new QStackedWidget(this)) {
    m_bar->setObjectName("pageBar");
    m_buttons->setContentsMargins(10, 6, 10, 6);
    m_buttons->setSpacing(6);
    m_buttons->addStretch(1);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_stack);
    connect(&state, &ViewState::pageChanged, this, &PageShelf::showCurrent);
}

void PageShelf::addEntry(Page page, const QString& title, const QString& tip, const QKeySequence& key, QWidget* widget,
                         const QList<QAction*>& tools) {
    auto* action = new QAction(title, this);
    action->setShortcut(key);
    action->setCheckable(true);
    action->setToolTip(tipWithKey(tip, key));
    connect(action, &QAction::triggered, this, [this, page] {
        m_state.setPage(page);
        showCurrent(); // a click on the button of the page that is up leaves it checked
    });
    auto* button = new QToolButton(m_bar);
    button->setDefaultAction(action);
    button->setFocusPolicy(Qt::TabFocus);
    button->setAccessibleName(title);
    m_buttons->insertWidget(static_cast<int>(m_entries.size()), button);
    m_stack->addWidget(widget);
    m_entries.push_back({page, title, widget, tools, action});
}

void PageShelf::addBeside(Page page, QWidget* widget) {
    m_buttons->addWidget(widget);
    widget->hide();
    m_beside.emplace_back(page, widget);
}

void PageShelf::setStart(QWidget* start) {
    m_start = start;
    m_stack->addWidget(start);
    showCurrent();
}

void PageShelf::setOpen(bool open) {
    if (open == m_open) return;
    m_open = open;
    showCurrent();
}

void PageShelf::setWaiting(QWidget* waiting) {
    if (waiting == m_waiting) return;
    m_waiting = waiting;
    if (waiting && m_stack->indexOf(waiting) < 0) m_stack->addWidget(waiting);
    showCurrent();
}

const PageShelf::Entry* PageShelf::entry(Page page) const {
    for (const Entry& entry : m_entries)
        if (entry.page == page) return &entry;
    return nullptr;
}

void PageShelf::showCurrent() {
    const Entry* now = current();
    // While a case is open the start page takes no room: the stack is as wide as the widest of its parts.
    if (m_start) m_start->setSizePolicy(m_open ? QSizePolicy::Ignored : QSizePolicy::Preferred, m_open ? QSizePolicy::Ignored : QSizePolicy::Preferred);
    m_bar->setVisible(m_open);
    if (QWidget* wanted = m_waiting ? m_waiting : now ? now->widget : m_start) m_stack->setCurrentWidget(wanted);
    for (const Entry& entry : m_entries)
        entry.show->setChecked(&entry == now);
    for (const auto& [page, widget] : m_beside)
        widget->setVisible(now && page == now->page);
    emit shown();
}

} // namespace gauge::app
