#include "app/views/echo_page.h"

#include "app/format/evidence_words.h"
#include "app/views/wrapping_row.h"
#include "core/cine/beat_position.h"

#include <QAction>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QSplitter>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>
#include <set>

namespace gauge::app {
namespace {

constexpr int kWideEnough = 1000; ///< pixels in which four views stand in one row

bool hasFrames(core::EvidenceKind kind) {
    return kind != core::EvidenceKind::Ct && kind != core::EvidenceKind::Fluoroscopy;
}

/// The echo views of a moment in the order of their angles, those without an angle last.
QStringList viewsOf(const core::CaseRecord& record, const std::string& moment) {
    std::vector<std::pair<double, QString>> views;
    for (const auto& [id, entry] : record.evidence)
        if (entry.content.kind == core::EvidenceKind::EchoCine && core::momentKey(entry.content) == moment)
            views.emplace_back(entry.content.probeAngleDeg.value_or(1e9), QString::fromStdString(id));
    std::stable_sort(views.begin(), views.end());
    QStringList ids;
    for (const auto& view : views)
        ids << view.second;
    return ids;
}

/// Moments with echo views, in the order of the stages.
std::vector<std::string> momentsOf(const core::CaseRecord& record) {
    std::set<std::pair<core::Stage, std::string>> moments;
    for (const auto& [id, entry] : record.evidence)
        if (entry.content.kind == core::EvidenceKind::EchoCine)
            moments.emplace(entry.content.stage, core::momentKey(entry.content));
    std::vector<std::string> keys;
    for (const auto& moment : moments)
        keys.push_back(moment.second);
    return keys;
}

} // namespace

EchoPage::EchoPage(Session& session, ViewState& state, EvidenceImages& images, QWidget* parent)
    : QWidget(parent), m_session(session), m_state(state), m_roles(new QActionGroup(this)), m_moments(new WrappingRow),
      m_upper(new QVBoxLayout), m_grid(new QGridLayout), m_instruction(new QLabel(this)), m_dial(new AngleDial(this)) {
    setObjectName("page");
    m_instruction->setWordWrap(true);
    m_instruction->setContentsMargins(10, 4, 10, 4);
    m_moments->setContentsMargins(10, 4, 10, 4);
    m_grid->setContentsMargins(0, 0, 0, 0);
    m_grid->setSpacing(1);
    for (std::size_t i = 0; i < m_views.size(); ++i) {
        CineView* view = m_views[i] = new CineView(session, state, images, this);
        view->installEventFilter(this);
        connect(view, &CineView::entered, this, [this, i] { setActive(i); });
        connect(view, &CineView::frameShown, this, [this, view] { keepInStep(view); });
        connect(view, &CineView::opened, this, [this, view] {
            keepInStep(activeView());
            if (m_pass.isActive() && view == activeView()) arm(m_pass.role());
        });
    }
    makeActions();
    auto* tools = new WrappingRow;
    tools->setContentsMargins(10, 0, 10, 4);
    for (QAction* action : m_actions) {
        if (action->property("inBar").toBool()) {
            auto* button = new QToolButton(this);
            button->setDefaultAction(action);
            tools->addWidget(button);
        }
    }
    auto* top = new QWidget(this);
    top->setLayout(m_upper);
    m_upper->setContentsMargins(0, 0, 0, 0);
    m_upper->setSpacing(0);
    m_upper->addLayout(m_moments);
    m_upper->addLayout(tools);
    m_upper->addWidget(m_instruction);
    m_upper->addLayout(m_grid, 1);
    auto* split = new QSplitter(Qt::Vertical, this);
    split->setChildrenCollapsible(false);
    split->addWidget(top);
    split->addWidget(m_dial);
    split->setStretchFactor(0, 3);
    split->setStretchFactor(1, 2);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(split);
    setFocusProxy(m_views[0]);

    connect(&m_pass, &EchoPass::changed, this, &EchoPage::onPass);
    connect(&session, &Session::imagesChanged, this, [this] {
        m_pass.leave();
        m_moment.clear();
        refresh();
    });
    connect(&session.document(), &CaseDocument::changed, this, [this](CaseDocument::Part part) {
        using Part = CaseDocument::Part;
        if (part == Part::Drawings) onDrawings();
        if (part == Part::Evidence || part == Part::Moments || part == Part::Everything) refresh();
        if (part == Part::Values || part == Part::Drawings) m_dial->setMoment(m_session.record(), m_moment);
    });
    connect(&state, &ViewState::placeChanged, this, &EchoPage::goToPlace);
    connect(&state, &ViewState::toolChanged, this, [this] {
        for (QAction* action : m_roles->actions())
            action->setChecked(m_state.tool() && action->data().toInt() == static_cast<int>(m_state.toolRole()));
    });
    refresh();
}

void EchoPage::makeActions() {
    const auto add = [this](const QString& text, const QString& tip, const QKeySequence& key, bool inBar, auto slot) {
        auto* action = new QAction(text, this);
        action->setShortcut(key);
        action->setShortcutContext(Qt::WidgetWithChildrenShortcut);
        action->setToolTip(tr("%1 (key %2)").arg(tip, key.toString(QKeySequence::NativeText)));
        action->setProperty("inBar", inBar);
        connect(action, &QAction::triggered, this, slot);
        addAction(action);
        m_actions << action;
        return action;
    };
    add(tr("One pass"), tr("Measure the echo views one after the other"), Qt::Key_M, true, [this] {
        if (m_pass.isActive())
            m_pass.leave();
        else
            startPass();
    });
    const auto role = [&](const QString& text, const QString& tip, const QKeySequence& key, core::DrawingRole which) {
        QAction* action = add(text, tip, key, true, [this, which] {
            m_state.tool() && m_state.toolRole() == which ? m_state.armTool(std::nullopt) : arm(which);
        });
        action->setCheckable(true);
        action->setData(static_cast<int>(which));
        m_roles->addAction(action);
    };
    role(tr("Ostium width"), tr("Draw the width of the ostium"), Qt::SHIFT | Qt::Key_O, core::DrawingRole::OstiumWidth);
    role(tr("Landing-zone width"), tr("Draw the width of the landing zone"), Qt::SHIFT | Qt::Key_L,
         core::DrawingRole::LandingWidth);
    role(tr("Depth"), tr("Draw the depth from the ostium to the tip"), Qt::SHIFT | Qt::Key_D, core::DrawingRole::Depth);
    add(tr("One view alone"), tr("Show the view in hand alone, or all again"), Qt::SHIFT | Qt::Key_F, true,
        [this] { setAlone(!m_alone); });
    add(tr("Calibrate"), tr("Give the picture a scale: two clicks and a length"), Qt::SHIFT | Qt::Key_K, true,
        [this] { activeView()->startCalibration(Calibration::KnownLength); });
    m_roles->setExclusionPolicy(QActionGroup::ExclusionPolicy::ExclusiveOptional);
}

void EchoPage::startPass() {
    if (!m_other.isEmpty()) showMoment(m_moment); // the views of the moment come back
    const QStringList views = viewsOf(m_session.record(), m_moment).mid(0, 4);
    if (views.isEmpty()) m_session.say(Message::Kind::Information, tr("There are no echo views in this case."));
    m_pass.start(views);
}

void EchoPage::arm(core::DrawingRole role) {
    activeView()->armLine(role);
}

/// A width of echo is not to be drawn on another page by accident.
void EchoPage::hideEvent(QHideEvent* event) {
    QWidget::hideEvent(event);
    if (m_state.toolRole() != core::DrawingRole::None) m_state.armTool(std::nullopt);
}

void EchoPage::showMoment(const std::string& key) {
    if (key == m_moment && m_other.isEmpty()) return;
    m_pass.leave();
    m_moment = key;
    if (!m_other.isEmpty()) m_alone = false;
    m_other.clear();
    refresh();
}

void EchoPage::refresh() {
    const auto moments = momentsOf(m_session.record());
    if (std::find(moments.begin(), moments.end(), m_moment) == moments.end())
        m_moment = moments.empty() ? std::string() : moments.front();
    refreshMoments();
    if (!m_session.record().evidence.contains(m_other.toStdString())) m_other.clear();
    const QStringList views = m_other.isEmpty() ? viewsOf(m_session.record(), m_moment) : QStringList(m_other);
    for (std::size_t i = 0; i < m_views.size(); ++i)
        m_views[i]->setEvidence(views.value(static_cast<int>(i)));
    if (m_active >= std::max<std::size_t>(1, shownCount())) m_active = 0;
    placeViews();
    m_dial->setMoment(m_session.record(), m_moment);
    refreshInstruction();
}

void EchoPage::refreshMoments() {
    while (QLayoutItem* item = m_moments->takeAt(0)) {
        if (QWidget* button = item->widget()) {
            button->hide(); // at once: it is deleted when the event loop comes round
            button->deleteLater();
        }
        delete item;
    }
    for (const std::string& key : momentsOf(m_session.record())) {
        auto* button = new QToolButton(this);
        button->setText(momentWords(m_session.record(), key));
        button->setToolTip(tr("Show the echo views of this moment"));
        button->setCheckable(true);
        button->setChecked(key == m_moment && m_other.isEmpty());
        connect(button, &QToolButton::clicked, this, [this, key] {
            showMoment(key);
            refreshMoments();
        });
        m_moments->addWidget(button);
    }
}

std::size_t EchoPage::shownCount() const {
    return static_cast<std::size_t>(
        std::count_if(m_views.begin(), m_views.end(), [](const CineView* view) { return !view->evidence().isEmpty(); }));
}

void EchoPage::placeViews() {
    const std::size_t count = std::max<std::size_t>(1, shownCount());
    const std::size_t columns = m_alone ? 1 : width() >= kWideEnough ? count : std::min<std::size_t>(2, count);
    std::size_t place = 0;
    for (std::size_t i = 0; i < m_views.size(); ++i) {
        m_grid->removeWidget(m_views[i]);
        const bool shown = m_alone ? i == m_active : i < count;
        m_views[i]->setVisible(shown);
        if (!shown) continue;
        m_grid->addWidget(m_views[i], static_cast<int>(place / columns), static_cast<int>(place % columns));
        ++place;
    }
    setFocusProxy(m_views[m_active]);
}

/// That of two views beside each other: four in a row, where there was room for them, must not keep the window wide.
QSize EchoPage::minimumSizeHint() const {
    const QSize asPlaced = QWidget::minimumSizeHint();
    int least = std::max(2 * m_views.front()->minimumSizeHint().width() + m_grid->spacing(), m_dial->minimumSizeHint().width());
    for (int i = 0; i < m_upper->count(); ++i)
        if (m_upper->itemAt(i) != m_grid) least = std::max(least, m_upper->itemAt(i)->minimumSize().width());
    return {std::min(asPlaced.width(), least), asPlaced.height()};
}

void EchoPage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    placeViews();
}

void EchoPage::setActive(std::size_t view) {
    if (view == m_active) return;
    m_active = view;
    setFocusProxy(m_views[m_active]);
    if (m_alone) placeViews();
}

void EchoPage::setAlone(bool alone) {
    m_alone = alone;
    placeViews();
    activeView()->setFocus();
}

/// The other cines follow the view in hand: by the beat where both know it, else frame by frame.
void EchoPage::keepInStep(const CineView* leader) {
    if (m_following || leader != activeView() || leader->player().count() == 0) return;
    m_following = true;
    const auto position = core::beatPosition(leader->player().times(), leader->player().frame());
    for (CineView* view : m_views) {
        if (view == leader || view->player().count() == 0) continue;
        const auto frame = position ? core::frameAtBeatPosition(view->player().times(), *position) : std::nullopt;
        view->player().setFrame(frame.value_or(leader->player().frame()));
    }
    m_following = false;
}

void EchoPage::goToPlace() {
    const Place& place = m_state.place();
    if (place.page != Page::Echo || place.evidence.isEmpty()) return;
    const auto found = m_session.record().evidence.find(place.evidence.toStdString());
    if (found == m_session.record().evidence.end()) return;
    if (found->second.content.kind == core::EvidenceKind::EchoCine) {
        showMoment(core::momentKey(found->second.content));
    } else if (hasFrames(found->second.content.kind)) {
        m_pass.leave();
        m_other = place.evidence; // a trace, a 3D echo or another picture: alone
        refresh();
    }
    for (std::size_t i = 0; i < m_views.size(); ++i) {
        if (m_views[i]->evidence() != place.evidence) continue;
        setActive(i);
        m_views[i]->showFrame(place.frame);
    }
}

void EchoPage::onPass() {
    if (!m_pass.isActive()) {
        m_state.armTool(std::nullopt);
        setAlone(false);
        m_session.say(Message::Kind::Information, tr("The pass has ended. Undo takes back what was drawn."));
    } else {
        for (std::size_t i = 0; i < m_views.size(); ++i)
            if (m_views[i]->evidence() == m_pass.view()) m_active = i;
        setAlone(true);
        m_known.clear();
        for (const auto& [id, entry] : m_session.record().drawings)
            m_known.insert(QString::fromStdString(id));
        arm(m_pass.role());
    }
    refreshInstruction();
}

/// While the pass goes on, the length that was due is the first new drawing on its view.
void EchoPage::onDrawings() {
    if (!m_pass.isActive()) return;
    for (const auto& [id, entry] : m_session.record().drawings) {
        const bool due = entry.content.role == m_pass.role() && QString::fromStdString(entry.content.evidence) == m_pass.view();
        if (!due || m_known.contains(QString::fromStdString(id))) continue;
        // Once the tool that drew it has let go.
        QMetaObject::invokeMethod(&m_pass, &EchoPass::nextLength, Qt::QueuedConnection);
        m_known.insert(QString::fromStdString(id));
        return;
    }
}

QString EchoPage::instruction() const {
    if (m_session.record().evidence.empty()) return {};
    if (!m_other.isEmpty()) return measurableWords(m_session.record().evidence.at(m_other.toStdString()).content.kind);
    if (momentsOf(m_session.record()).empty()) return tr("There are no echo views in this case.");
    if (!m_pass.isActive()) return {};
    const core::Evidence* evidence = activeView()->content();
    return tr("%1 (%2 of %3): choose the frame with the comma and full stop keys and draw the %4: arrow keys and Space, or the "
              "mouse. S leaves it out, Enter goes to the next view, Escape ends the pass.")
        .arg(evidence ? evidenceTitle(*evidence) : QString())
        .arg(m_pass.viewNumber())
        .arg(m_pass.viewCount())
        .arg(roleWords(m_pass.role()));
}

void EchoPage::refreshInstruction() {
    m_instruction->setText(instruction());
    m_instruction->setVisible(!instruction().isEmpty());
}

bool EchoPage::eventFilter(QObject* watched, QEvent* event) {
    const bool isKey = event->type() == QEvent::KeyPress || event->type() == QEvent::ShortcutOverride;
    auto* view = qobject_cast<CineView*>(watched);
    // While a length is begun, the keys are the drawing's.
    if (!isKey || !view || !m_pass.isActive() || view->isCalibrating() || view->isDrawing())
        return QWidget::eventFilter(watched, event);
    const auto* pressed = static_cast<QKeyEvent*>(event);
    const int key = pressed->key();
    const bool isPlain = !(pressed->modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::ShiftModifier));
    const bool isMine = key == Qt::Key_Return || key == Qt::Key_Enter || key == Qt::Key_Escape || key == Qt::Key_S;
    if (!isPlain || !isMine) return QWidget::eventFilter(watched, event);
    event->accept();
    if (event->type() == QEvent::ShortcutOverride) return true;
    if (key == Qt::Key_Escape)
        m_pass.leave();
    else if (key == Qt::Key_S)
        m_pass.nextLength();
    else
        m_pass.nextView();
    return true;
}

} // namespace gauge::app
