#include "app/panels/marks_panel.h"

#include "app/drawing/mark_roles.h"
#include "app/drawing/marks_drawing.h"
#include "app/format/words.h"
#include "app/panels/landing_editor.h"

#include <QGridLayout>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QToolButton>
#include <QVBoxLayout>
#include <cmath>

namespace gauge::app {
namespace {

QIcon iconOf(Role role) {
    QPixmap pixmap(40, 40);
    pixmap.setDevicePixelRatio(2.0);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    drawMarker(painter, {10, 10}, role, 1.0, 5.0);
    return QIcon(pixmap);
}

QString purpose(core::MarkKind kind) {
    switch (kind) {
    case core::MarkKind::Atrium:
        return MarksPanel::tr("Anywhere in the blood of the left atrium. Needed.");
    case core::MarkKind::Tip:
        return MarksPanel::tr(
            "Anywhere in the blood of the wanted lobe; the axis runs on to its farthest point. Needed.");
    case core::MarkKind::Circumflex:
        return MarksPanel::tr(
            "The circumflex artery at the ostium. With the ridge it sets the ostium plane.");
    case core::MarkKind::Ridge:
        return MarksPanel::tr("The tip of the ridge to the upper left pulmonary vein. With the circumflex "
                              "artery it sets the ostium plane.");
    case core::MarkKind::Aorta:
        return MarksPanel::tr("In the ascending aorta, for the enhancement ratio.");
    case core::MarkKind::PulmonaryArtery:
        return MarksPanel::tr("On the wall of the left pulmonary artery or its trunk, where it lies nearest to the appendage. For the distance "
                              "that the sizes keep from it.");
    }
    return {};
}

} // namespace

int MarksPanel::keyOf(core::MarkKind kind) {
    return static_cast<int>(kind) + 1;
}

MarksPanel::MarksPanel(Session& session, ViewState& state, QWidget* parent)
    : QWidget(parent), m_session(session), m_state(state), m_ostium(new QLabel(this)),
      m_confirm(new QPushButton(this)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(12, 8, 8, 10);
    layout->setSpacing(4);
    auto* heading = new QLabel(tr("Marks"), this);
    heading->setObjectName("heading");
    layout->addWidget(heading);

    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(2);
    grid->setVerticalSpacing(2);
    grid->setColumnStretch(0, 1);
    for (const core::MarkKind kind : core::kMarkKinds) {
        Row row{new QToolButton(this), new QLabel(this), new QToolButton(this)};
        row.arm->setCheckable(true);
        row.arm->setIcon(iconOf(roleOf(kind)));
        row.arm->setIconSize({20, 20});
        row.arm->setText(QStringLiteral("%1  %2").arg(keyOf(kind)).arg(wordOf(roleOf(kind))));
        row.arm->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
        row.arm->setSizePolicy(QSizePolicy::MinimumExpanding, QSizePolicy::Fixed);
        row.arm->setObjectName("markButton");
        row.arm->setToolTip(
            tr("%1\nKey %2, then click on a scanner-axis section.").arg(purpose(kind)).arg(keyOf(kind)));
        row.state->setObjectName("soft");
        row.remove->setText(QStringLiteral("×"));
        row.remove->setObjectName("removeButton");
        row.remove->setToolTip(tr("Remove this mark"));
        const int line = keyOf(kind) - 1;
        grid->addWidget(row.arm, line, 0);
        grid->addWidget(row.state, line, 1);
        grid->addWidget(row.remove, line, 2);
        connect(row.arm, &QToolButton::clicked, this, [this, kind] { toggle(kind); });
        connect(row.remove, &QToolButton::clicked, this, [this, kind] { m_session.removeMark(kind); });
        m_rows.emplace(kind, row);
    }
    layout->addLayout(grid);
    auto* ostiumHeading = new QLabel(tr("Ostium"), this);
    ostiumHeading->setObjectName("heading");
    layout->addSpacing(8);
    layout->addWidget(ostiumHeading);
    m_ostium->setWordWrap(true);
    m_ostium->setObjectName("soft");
    layout->addWidget(m_ostium);
    layout->addWidget(m_confirm);
    auto* planesHeading = new QLabel(tr("Landing planes"), this);
    planesHeading->setObjectName("heading");
    layout->addSpacing(8);
    layout->addWidget(planesHeading);
    layout->addWidget(new LandingEditor(session, state, this));

    connect(m_confirm, &QPushButton::clicked, this, [this] {
        if (m_session.record().ostium)
            m_session.releaseOstium();
        else
            m_session.confirmOstium();
    });
    const auto again = [this] { refresh(); };
    connect(&session.document(), &CaseDocument::changed, this, again);
    connect(&session, &Session::imagesChanged, this, again);
    connect(&session, &Session::measurementChanged, this, again);
    connect(&session, &Session::workChanged, this, again);
    connect(&state, &ViewState::armedChanged, this, again);
    refresh();
}

void MarksPanel::toggle(core::MarkKind kind) {
    if (!m_session.volume()) {
        refresh();
        return;
    }
    if (m_state.armed() == kind) {
        m_state.arm(std::nullopt);
        return;
    }
    m_state.setPage(ViewState::Page::Scanner);
    m_state.arm(kind);
    const auto found = m_session.record().marks.find(kind);
    if (found != m_session.record().marks.end()) m_state.setCrossing(found->second.point);
    m_session.say(
        Message::Kind::Information,
        tr("Click on a section to mark: %1. %2 Esc leaves it.").arg(wordOf(roleOf(kind)), purpose(kind)));
    refresh();
}

void MarksPanel::refresh() {
    const auto& marks = m_session.record().marks;
    for (auto& [kind, row] : m_rows) {
        const bool placed = marks.contains(kind);
        const bool needed = kind == core::MarkKind::Atrium || kind == core::MarkKind::Tip;
        row.arm->setEnabled(m_session.volume());
        row.arm->setChecked(m_state.armed() == kind);
        row.state->setText(placed ? tr("placed") : needed ? tr("needed") : tr("optional"));
        row.state->setToolTip(placed ? placeWords(marks.at(kind).point) : QString());
        row.remove->setEnabled(placed);
    }
    refreshOstium();
}

void MarksPanel::refreshOstium() {
    const auto* m = m_session.measurement();
    const bool own = m_session.record().ostium.has_value();
    m_confirm->setEnabled(own || (m && !m_session.isMeasuringAppendage()));
    m_confirm->setText(own ? tr("Release the ostium") : tr("Confirm the ostium"));
    m_confirm->setToolTip(own ? tr("Let the landmarks or the proposal decide again (key C)")
                              : tr("Take the shown plane as your own (key C)"));
    if (!m)
        m_ostium->setText(tr("Not known yet."));
    else if (own)
        m_ostium->setText(tr("Confirmed by you."));
    else if (!m->ostium.proposed)
        m_ostium->setText(tr("Through your marks of the circumflex artery and the ridge."));
    else if (m->ostium.confidence)
        m_ostium->setText(tr("Proposed from the profile, confidence %1 %. Confirm it, or mark the circumflex "
                             "artery and the ridge.")
                              .arg(std::lround(100 * *m->ostium.confidence)));
    else
        m_ostium->setText(
            tr("Proposed from the profile. Confirm it, or mark the circumflex artery and the ridge."));
}

} // namespace gauge::app
