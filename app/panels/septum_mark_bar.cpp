#include "app/panels/septum_mark_bar.h"

#include "app/commands/septum_commands.h"
#include "app/drawing/septum_drawing.h"
#include "app/views/wrapping_row.h"
#include "core/record/septum_values.h"

#include <QPainter>
#include <QToolButton>

namespace gauge::app {
namespace {

QIcon septumIcon(SeptumPoint kind) {
    QPixmap pixmap(40, 40);
    pixmap.setDevicePixelRatio(2.0);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    drawSeptumMarker(painter, {10, 10}, kind, 1.0, Ground::Page);
    return QIcon(pixmap);
}

QKeySequence septumKey(SeptumPoint kind) {
    switch (kind) {
    case SeptumPoint::Annulus:
        return Qt::SHIFT | Qt::Key_A;
    case SeptumPoint::Coaptation:
        return Qt::SHIFT | Qt::Key_C;
    case SeptumPoint::Fossa:
        return Qt::SHIFT | Qt::Key_F;
    case SeptumPoint::AorticRoot:
        return Qt::SHIFT | Qt::Key_R;
    }
    return {};
}

} // namespace

SeptumMarkBar::SeptumMarkBar(Session& session, ViewState& state, QWidget* parent)
    : QWidget(parent), m_session(session), m_state(state), m_clear(new QAction(tr("Remove these points"), this)) {
    auto* row = new WrappingRow(this);
    row->setContentsMargins(10, 4, 10, 4);
    const auto addButton = [&](QAction* action) {
        auto* button = new QToolButton(this);
        button->setDefaultAction(action);
        button->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
        row->addWidget(button);
    };
    for (const SeptumPoint kind : kSeptumPoints) {
        auto* action = new QAction(this);
        action->setCheckable(true);
        const QString key = septumKey(kind).toString(QKeySequence::NativeText);
        action->setToolTip(tr("%1\nKey %2; drag moves a point, Delete removes the one under the pointer, Escape ends.").arg(purposeOf(kind), key));
        action->setShortcut(septumKey(kind));
        action->setShortcutContext(Qt::WidgetWithChildrenShortcut);
        connect(action, &QAction::triggered, this, [this, kind] { toggle(kind); });
        m_kinds.emplace(kind, action);
        m_actions << action;
        addButton(action);
    }
    m_clear->setToolTip(tr("Remove all points of the kind that is being marked"));
    connect(m_clear, &QAction::triggered, this, [this] {
        if (!m_state.armedSeptum()) return;
        CaseDocument& document = m_session.document();
        document.push(std::make_unique<ClearSeptumPoints>(document, *m_state.armedSeptum()));
    });
    m_actions << m_clear;
    addButton(m_clear);
    const auto again = [this] { refresh(); };
    connect(&session.document(), &CaseDocument::changed, this, [this](CaseDocument::Part part) {
        if (part == CaseDocument::Part::Septum || part == CaseDocument::Part::Everything) refresh();
    });
    connect(&session, &Session::imagesChanged, this, again);
    connect(&state, &ViewState::armedChanged, this, again);
    refresh();
}

void SeptumMarkBar::toggle(SeptumPoint kind) {
    if (!m_session.volume() || m_state.armedSeptum() == kind) {
        m_state.armSeptum(std::nullopt);
        refresh();
        return;
    }
    m_state.setPage(Page::Scanner);
    m_state.armSeptum(kind);
    const auto points = pointsOf(core::septumMarks(m_session.record()), kind);
    if (!points.empty()) m_state.setCrossing(points.back());
    m_session.say(Message::Kind::Information, tr("%1 Escape ends.").arg(purposeOf(kind)));
}

void SeptumMarkBar::refresh() {
    const core::SeptumMarks marks = core::septumMarks(m_session.record());
    for (const auto& [kind, action] : m_kinds) {
        action->setIcon(septumIcon(kind));
        action->setText(tr("%1 (%2)").arg(wordOf(kind)).arg(pointsOf(marks, kind).size()));
        action->setEnabled(m_session.volume());
        action->setChecked(m_state.armedSeptum() == kind);
    }
    m_clear->setEnabled(m_state.armedSeptum() && !pointsOf(marks, *m_state.armedSeptum()).empty());
}

} // namespace gauge::app
