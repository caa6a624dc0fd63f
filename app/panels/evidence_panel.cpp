#include "app/panels/evidence_panel.h"

#include "app/commands/evidence_commands.h"
#include "app/drawing/palette.h"
#include "app/format/evidence_words.h"
#include "app/format/quantity.h"
#include "app/format/terms.h"

#include <QAction>
#include <QInputDialog>
#include <QLabel>
#include <QMenu>
#include <QPainter>
#include <QStyledItemDelegate>
#include <QTimer>
#include <QToolButton>
#include <QTreeView>
#include <QVBoxLayout>
#include <algorithm>

namespace gauge::app {
namespace {

/// A title, and under it the detail in a softer tone; both wrap, nothing is cut off.
class EvidenceDelegate : public QStyledItemDelegate {
public:
    explicit EvidenceDelegate(QTreeView* view) : QStyledItemDelegate(view), m_view(view) {}

    QSize sizeHint(const QStyleOptionViewItem&, const QModelIndex& index) const override {
        const int width = m_view->viewport()->width();
        const int inner = width - indent(index) - 14;
        const int title = textHeight(title_(index), labelFont(12, isHeading(index)), inner);
        const QString detail = index.data(EvidenceModel::DetailRole).toString();
        return {width, title + (detail.isEmpty() ? 0 : textHeight(detail, labelFont(11), inner) + 2) + 10};
    }

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        painter->save();
        const bool shown = index.data(EvidenceModel::IsShownRole).toBool();
        const bool refused = index.data(EvidenceModel::IsRefusedRole).toBool();
        const bool heading = isHeading(index);
        const bool chosen = option.state & QStyle::State_Selected;
        const QRect row(0, option.rect.top(), m_view->viewport()->width(), option.rect.height());
        if (shown || chosen) painter->fillRect(row, tone::raised);
        if (shown) painter->fillRect(QRect(row.left(), row.top(), 3, row.height()), tone::text);
        if (chosen && m_view->hasFocus()) {
            painter->setPen(QPen(tone::soft, 1));
            painter->drawRect(row.adjusted(0, 0, -1, -1));
        }
        const QRect inner = row.adjusted(indent(index) + 4, 5, -10, -5);
        painter->setFont(labelFont(12, heading || shown));
        painter->setPen(heading || refused ? tone::soft : tone::text);
        QRect used;
        painter->drawText(inner, Qt::TextWordWrap, title_(index), &used);
        painter->setFont(labelFont(11));
        painter->setPen(refused ? tone::warning : tone::soft);
        painter->drawText(inner.adjusted(0, used.height() + 2, 0, 0), Qt::TextWordWrap,
                          index.data(EvidenceModel::DetailRole).toString());
        painter->restore();
    }

private:
    static bool isHeading(const QModelIndex& index) {
        return index.data(EvidenceModel::RowRole).toInt() == static_cast<int>(EvidenceModel::Row::Heading);
    }
    static QString title_(const QModelIndex& index) {
        const QString title = index.data(Qt::DisplayRole).toString();
        return index.data(EvidenceModel::IsShownRole).toBool() ? EvidencePanel::tr("%1 (shown)").arg(title) : title;
    }
    int indent(const QModelIndex& index) const {
        int depth = 0;
        for (QModelIndex i = index.parent(); i.isValid(); i = i.parent())
            ++depth;
        return 8 + 10 * depth;
    }
    static int textHeight(const QString& text, const QFont& font, int width) {
        return QFontMetrics(font)
            .boundingRect(QRect(0, 0, std::max(40, width), 10000), Qt::TextWordWrap, text)
            .height();
    }
    QTreeView* m_view;
};

} // namespace

Page pageOf(core::EvidenceKind kind) {
    switch (kind) {
    case core::EvidenceKind::Fluoroscopy:
        return Page::Fluoroscopy;
    case core::EvidenceKind::EchoCine:
    case core::EvidenceKind::EchoVolume:
    case core::EvidenceKind::Doppler:
    case core::EvidenceKind::Other:
        return Page::Echo;
    case core::EvidenceKind::Ct:
        break;
    }
    return Page::Appendage;
}

EvidencePanel::EvidencePanel(Session& session, ViewState& state, QWidget* parent)
    : QWidget(parent), m_session(session), m_state(state), m_model(this), m_tree(new QTreeView(this)),
      m_empty(new QLabel(this)), m_skipped(new QLabel(this)) {
    auto* heading = new QLabel(tr("Evidence"), this);
    heading->setObjectName("heading");
    auto* open = new QToolButton(this);
    open->setText(tr("Open folder …"));
    open->setToolTip(tr("Open a folder of DICOM images (Ctrl+O), or drop it on the window"));
    connect(open, &QToolButton::clicked, this, &EvidencePanel::openRequested);

    m_tree->setModel(&m_model);
    m_tree->setAccessibleName(tr("Evidence"));
    m_tree->setHeaderHidden(true);
    m_tree->setRootIsDecorated(false);
    m_tree->setIndentation(0);
    m_tree->setItemDelegate(new EvidenceDelegate(m_tree));
    m_tree->setFrameShape(QFrame::NoFrame);
    m_tree->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_tree->setExpandsOnDoubleClick(false);
    m_tree->setSelectionMode(QAbstractItemView::ExtendedSelection);
    m_tree->setContextMenuPolicy(Qt::CustomContextMenu);
    connect(m_tree, &QTreeView::activated, this, &EvidencePanel::activate);
    connect(m_tree, &QTreeView::customContextMenuRequested, this, [this](const QPoint& at) {
        QMenu* menu = makeMenu();
        menu->setAttribute(Qt::WA_DeleteOnClose);
        menu->popup(m_tree->viewport()->mapToGlobal(at));
    });
    m_empty->setText(tr("Nothing is open. Drop a folder of DICOM images here."));
    m_skipped->setObjectName("soft");
    for (QLabel* label : {m_empty, m_skipped}) {
        label->setWordWrap(true);
        label->setContentsMargins(12, 4, 12, 6);
    }
    m_empty->setObjectName("soft");

    auto* top = new QHBoxLayout;
    top->setContentsMargins(12, 8, 8, 4);
    top->addWidget(heading, 1);
    top->addWidget(open);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addLayout(top);
    layout->addWidget(m_empty);
    layout->addWidget(m_tree, 100);
    layout->addStretch(1); // keeps the sentence at the top while there is no tree
    layout->addWidget(m_skipped);
    makeActions();
    connect(&session, &Session::imagesChanged, this, &EvidencePanel::refresh);
    connect(&session, &Session::offeredChanged, this, &EvidencePanel::refresh);
    connect(&session.document(), &CaseDocument::changed, this, [this](CaseDocument::Part part) {
        using Part = CaseDocument::Part;
        constexpr std::array kParts{Part::Images, Part::Evidence, Part::Moments,
                                    Part::Drawings, Part::Values, Part::Everything};
        if (std::find(kParts.begin(), kParts.end(), part) == kParts.end() || m_refreshing) return;
        // One refresh for the many edits of one act.
        m_refreshing = true;
        QTimer::singleShot(0, this, [this] {
            m_refreshing = false;
            refresh();
        });
    });
    connect(&state, &ViewState::placeChanged, this,
            [this] { m_model.setShownEvidence(m_state.place().evidence); });
    connect(&state, &ViewState::namesHiddenChanged, this, [this] {
        m_model.setNamesHidden(m_state.namesHidden());
        m_tree->expandAll();
    });
    m_model.setNamesHidden(state.namesHidden());
    refresh();
}

void EvidencePanel::makeActions() {
    const auto add = [this](const QString& text, const QKeySequence& key, auto slot) {
        auto* action = new QAction(text, this);
        action->setShortcut(key);
        action->setShortcutContext(Qt::WidgetShortcut);
        connect(action, &QAction::triggered, this, slot);
        m_tree->addAction(action);
        m_actions << action;
    };
    add(tr("Evidence: a stage earlier"), QKeySequence(Qt::ALT | Qt::Key_Up), [this] { moveStage(-1); });
    add(tr("Evidence: a stage later"), QKeySequence(Qt::ALT | Qt::Key_Down), [this] { moveStage(1); });
    add(tr("Evidence: probe angle …"), QKeySequence(Qt::ALT | Qt::Key_A), [this] { askProbeAngle(); });
}

void EvidencePanel::refresh() {
    const auto offered = m_session.offered();
    const bool open = offered || m_session.index() || !m_session.record().evidence.empty();
    m_empty->setVisible(!open);
    m_tree->setVisible(open);
    const QStringList kept = selected();
    if (offered)
        m_model.setOffer(offered);
    else
        m_model.setCase(m_session.index(), m_session.record(), m_session.patientKey());
    m_tree->expandAll();
    for (const QString& id : kept)
        if (const QModelIndex index = m_model.indexOf(id); index.isValid())
            m_tree->selectionModel()->select(index, QItemSelectionModel::Select);
    showSkipped();
}

void EvidencePanel::showSkipped() {
    const auto index = m_session.offered() ? m_session.offered() : m_session.index();
    m_skipped->setVisible(index && !index->skipped.empty());
    if (!index) return;
    const auto& skipped = index->skipped;
    m_skipped->setText(tr("%n other file(s) were left out.", nullptr, static_cast<int>(skipped.size())));
    QStringList lines;
    constexpr std::size_t kListed = 12;
    for (std::size_t i = 0; i < std::min(skipped.size(), kListed); ++i)
        lines << QString::fromStdString(skipped[i].file.filename().string() + ": " + skipped[i].reason);
    if (skipped.size() > kListed) lines << tr("… and %1 more").arg(skipped.size() - kListed);
    m_skipped->setToolTip(lines.join(QLatin1Char('\n')));
}

void EvidencePanel::activate(const QModelIndex& index) {
    if (const auto phase = m_model.phaseAt(index)) {
        if (m_model.isOffer())
            m_session.openChosen(phase->first, phase->second);
        else
            m_session.chooseImages(phase->first, phase->second);
        return;
    }
    const QString id = index.data(EvidenceModel::EvidenceRole).toString();
    const auto found = m_session.record().evidence.find(id.toStdString());
    if (found == m_session.record().evidence.end()) return;
    Place place;
    place.page = pageOf(found->second.content.kind);
    if (place.page != Page::Appendage) place.evidence = id;
    else if (!m_session.measurement()) place.page = Page::Scanner;
    m_state.goTo(place);
}

QStringList EvidencePanel::selected() const {
    QStringList ids;
    for (const QModelIndex& index : m_tree->selectionModel()->selectedIndexes())
        if (index.data(EvidenceModel::RowRole).toInt() == static_cast<int>(EvidenceModel::Row::Evidence))
            ids << index.data(EvidenceModel::EvidenceRole).toString();
    return ids;
}

void EvidencePanel::select(const QString& evidence) {
    if (const QModelIndex index = m_model.indexOf(evidence); index.isValid())
        m_tree->selectionModel()->select(index, QItemSelectionModel::Select);
}

/// One step of undo for all that is selected.
template <typename Push> void EvidencePanel::edit(const QString& text, Push&& push) {
    const QStringList ids = selected();
    if (ids.isEmpty()) {
        m_session.say(Message::Kind::Information, tr("Choose evidence in the list first."));
        return;
    }
    QUndoStack& stack = m_session.document().undoStack();
    if (ids.size() > 1) stack.beginMacro(text);
    for (const QString& id : ids)
        push(m_session.document(), id.toStdString());
    if (ids.size() > 1) stack.endMacro();
}

void EvidencePanel::setStage(core::Stage stage) {
    edit(tr("Change the stage"), [&](CaseDocument& document, const std::string& id) {
        document.push(std::make_unique<ChangeStage>(document, id, stage));
    });
}

void EvidencePanel::setMoment(const std::string& moment) {
    edit(tr("Change the moment"), [&](CaseDocument& document, const std::string& id) {
        document.push(std::make_unique<ChangeMoment>(document, id, moment));
    });
}

void EvidencePanel::setProbeAngle(std::optional<double> deg) {
    edit(tr("Change the probe angle"), [&](CaseDocument& document, const std::string& id) {
        if (document.record().evidence.at(id).content.kind == core::EvidenceKind::EchoCine)
            document.push(std::make_unique<ChangeProbeAngle>(document, id, deg));
    });
}

void EvidencePanel::setPhase(core::BeatPhase phase) {
    edit(tr("Change the phase"), [&](CaseDocument& document, const std::string& id) {
        document.push(std::make_unique<ChangeBeatPhase>(document, id, phase));
    });
}

void EvidencePanel::moveStage(int steps) {
    edit(tr("Change the stage"), [&](CaseDocument& document, const std::string& id) {
        const int last = static_cast<int>(core::kStages.size()) - 1;
        const int now = static_cast<int>(document.record().evidence.at(id).content.stage);
        document.push(std::make_unique<ChangeStage>(document, id,
                                                    core::kStages[static_cast<std::size_t>(std::clamp(now + steps, 0, last))]));
    });
}

void EvidencePanel::askProbeAngle() {
    const QStringList ids = selected();
    if (ids.isEmpty()) return;
    const auto& evidence = m_session.record().evidence.at(ids.front().toStdString()).content;
    bool accepted = false;
    const double deg = QInputDialog::getDouble(this, tr("Probe angle"),
                                               tr("Rotation of the probe's plane as the picture shows it, degrees:"),
                                               evidence.probeAngleDeg.value_or(0.0), 0.0, 180.0, 0, &accepted);
    if (accepted) setProbeAngle(deg);
}

QMenu* EvidencePanel::makeMenu() {
    auto* menu = new QMenu(this);
    const QStringList ids = selected();
    if (ids.isEmpty()) {
        menu->addAction(tr("Choose evidence in the list first."))->setEnabled(false);
        return menu;
    }
    const core::Evidence evidence = m_session.record().evidence.at(ids.front().toStdString()).content;
    const auto choice = [&](QMenu* in, const QString& text, bool now, auto act) {
        QAction* action = in->addAction(text, this, act);
        action->setCheckable(true);
        action->setChecked(now);
    };
    QMenu* stages = menu->addMenu(tr("Stage"));
    for (const core::Stage stage : core::kStages)
        choice(stages, capitalised(stageName(stage)), evidence.stage == stage, [this, stage] { setStage(stage); });
    QMenu* moments = menu->addMenu(tr("Moment"));
    choice(moments, tr("None"), evidence.moment.empty(), [this] { setMoment({}); });
    for (const auto& [id, entry] : m_session.record().moments)
        choice(moments, momentWords(m_session.record(), id), evidence.moment == id, [this, id = id] { setMoment(id); });
    if (evidence.kind == core::EvidenceKind::EchoCine) {
        QMenu* angles = menu->addMenu(tr("Probe angle"));
        for (const double deg : {0.0, 45.0, 90.0, 135.0})
            choice(angles, quantity(deg, Unit::Degree), evidence.probeAngleDeg == deg, [this, deg] { setProbeAngle(deg); });
        choice(angles, tr("Not known"), !evidence.probeAngleDeg, [this] { setProbeAngle(std::nullopt); });
        angles->addAction(tr("Another angle … (Alt+A)"), this, &EvidencePanel::askProbeAngle);
    }
    QMenu* phases = menu->addMenu(tr("Phase of the frames that are measured"));
    using core::BeatPhase;
    for (const BeatPhase phase : {BeatPhase::EndSystole, BeatPhase::EndDiastole, BeatPhase::Other, BeatPhase::Unknown})
        choice(phases, capitalised(beatPhaseName(phase)), evidence.phase == phase, [this, phase] { setPhase(phase); });
    return menu;
}

} // namespace gauge::app
