#include "app/panels/release_editor.h"

#include "app/commands/course_commands.h"
#include "app/drawing/palette.h"
#include "app/format/core_sentences.h"
#include "app/format/decision_words.h"
#include "app/format/terms.h"
#include "app/panels/editor_parts.h"
#include "app/panels/number_edit.h"
#include "app/panels/wrapped_tree.h"

#include <QCheckBox>
#include <QEvent>
#include <QFormLayout>
#include <QHeaderView>
#include <QLineEdit>
#include <QVBoxLayout>

namespace gauge::app {
namespace {

QString utf8(std::string_view text) {
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

QString lookTitle(const core::ReleaseState& state) {
    const QString time = QString::fromStdString(state.time).left(16).replace(QLatin1Char('T'), QLatin1Char(' '));
    return time.isEmpty() ? stageName(state.stage) : stageName(state.stage) + QStringLiteral(" · ") + time;
}

/// What the row says, as core/release names it.
QString rowName(const core::ReleaseFinding& f) {
    return utf8(core::words(f.quantity)) + (f.side.empty() ? QString() : QStringLiteral(", ") + utf8(f.side));
}

/// The finding behind a row; −1 for a computed row.
int findingOf(const core::ReleaseState& state, const core::ReleaseRow& row) {
    for (std::size_t i = 0; i < state.findings.size(); ++i) {
        const core::ReleaseFinding& f = state.findings[i];
        if (f.view == row.view && f.value == row.value && rowName(f) == QString::fromStdString(row.what))
            return static_cast<int>(i);
    }
    return -1;
}

QString valueOf(const core::ReleaseState& state, const core::ReleaseRow& row) {
    if (const int at = findingOf(state, row); at >= 0) {
        const core::ReleaseFinding& f = state.findings[static_cast<std::size_t>(at)];
        const QString value = findingWords(f.quantity, f.value);
        return f.standardUncertainty ? ReleaseEditor::tr("%1 (± %2)").arg(value, plainNumber(*f.standardUncertainty)) : value;
    }
    return row.value < 0.0 ? ReleaseEditor::tr("wider than its nominal size by %1").arg(percentWords(-row.value))
                           : percentWords(row.value);
}

} // namespace

ReleaseEditor::ReleaseEditor(Answers& answers, QWidget* parent)
    : QWidget(parent), m_answers(answers), m_picker(new EntryPicker(tr("Look at the implant"), tr("Add a look"), tr("Remove"))),
      m_fields(new QWidget), m_rows(new WrappedTree), m_sentences(wrappedLabel({})) {
    m_rows->setAccessibleName(tr("Findings of this look by view"));
    m_rows->setHeaderLabels({tr("Finding"), tr("Value"), tr("Range"), tr("Verdict"), tr("Seen by")});
    m_rows->setRootIsDecorated(false);
    m_rows->setFrameShape(QFrame::NoFrame);
    m_rows->header()->moveSection(3, 2); // the verdict beside the value
    m_rows->setIndentation(12);
    auto* fields = new QVBoxLayout(m_fields);
    fields->setContentsMargins(0, 0, 0, 0);
    fields->setSpacing(10);
    auto* head = new QFormLayout;
    head->setRowWrapPolicy(QFormLayout::WrapLongRows);
    head->setFieldGrowthPolicy(QFormLayout::FieldsStayAtSizeHint);
    auto* stage = new QComboBox;
    stage->setAccessibleName(tr("Stage"));
    Choice<core::Stage>::Items stages;
    for (const core::Stage s : core::kStages)
        if (s >= core::Stage::SheathInAppendage) stages.push_back({s, stageName(s)});
    m_stage = std::make_unique<Choice<core::Stage>>(stage, stages, QString());
    connect(stage, &QComboBox::activated, this,
            [this] { edit([&](core::ReleaseState& s) { s.stage = m_stage->value().value_or(s.stage); }); });
    head->addRow(tr("Stage"), stage);
    m_time = new QLineEdit;
    m_time->setAccessibleName(tr("Time"));
    m_time->setMinimumWidth(fontMetrics().horizontalAdvance(QStringLiteral("2026-03-09T10:20:00+01:00")) + 24);
    connect(m_time, &QLineEdit::editingFinished, this,
            [this] { edit([&](core::ReleaseState& s) { s.time = m_time->text().trimmed().toStdString(); }); });
    head->addRow(tr("Time"), m_time);
    m_withdrawn = new QCheckBox(tr("The inner catheter has been taken out"));
    connect(m_withdrawn, &QCheckBox::clicked, this,
            [this](bool on) { edit([&](core::ReleaseState& s) { s.innerCatheterWithdrawn = on; }); });
    head->addRow(m_withdrawn);
    fields->addLayout(head);
    fields->addWidget(m_rows);
    fields->addWidget(m_sentences);
    fields->addWidget(makeForm());
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(12, 10, 12, 10);
    layout->setSpacing(10);
    layout->addWidget(m_picker);
    layout->addWidget(m_fields);
    layout->addStretch(1);
    connect(m_picker, &EntryPicker::picked, this, &ReleaseEditor::refreshLook);
    connect(m_picker, &EntryPicker::addRequested, this, &ReleaseEditor::addLook);
    connect(m_picker, &EntryPicker::removeRequested, this, [this] {
        CaseDocument& document = m_answers.session().document();
        document.push(std::make_unique<RemoveReleaseLook>(document, m_picker->current()));
    });
    connect(&answers, &Answers::changed, this, &ReleaseEditor::refresh);
    refresh();
}

ReleaseEditor::~ReleaseEditor() = default;

QWidget* ReleaseEditor::makeForm() {
    auto* part = new QWidget;
    auto* form = new QFormLayout(part);
    form->setContentsMargins(0, 0, 0, 0);
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    form->setFieldGrowthPolicy(QFormLayout::FieldsStayAtSizeHint);
    form->addRow(wrappedLabel(tr("Add a finding"), "heading"));
    m_quantity = new QComboBox;
    m_quantity->setAccessibleName(tr("What was seen"));
    for (std::size_t i = 0; i < core::kReleaseQuantityCount; ++i) {
        const auto q = static_cast<core::ReleaseQuantity>(i);
        const QString unit = utf8(core::unitOf(q));
        m_quantity->addItem(unit.isEmpty() ? releaseQuantityName(q) : tr("%1, %2").arg(releaseQuantityName(q), unit));
    }
    m_value = new NumberEdit(-60.0, 300.0, tr("Value; yes is 1, no is 0"));
    m_uncertainty = new NumberEdit(0.0, 60.0, tr("Standard uncertainty"));
    m_view = new QLineEdit;
    m_view->setPlaceholderText(tr("45 degrees, RAO 30 CAU 20 …"));
    m_side = new QLineEdit;
    m_side->setPlaceholderText(tr("circumflex side, ridge side …"));
    m_seenBy = new QLineEdit(currentAuthor());
    form->addRow(tr("What"), m_quantity);
    form->addRow(tr("Value (yes is 1, no is 0)"), m_value);
    form->addRow(tr("Standard uncertainty"), m_uncertainty);
    const std::pair<QString, QLineEdit*> lines[]{{tr("View"), m_view}, {tr("Side"), m_side}, {tr("Seen by"), m_seenBy}};
    for (const auto& [label, line] : lines) {
        line->setAccessibleName(label);
        line->setMinimumWidth(fontMetrics().horizontalAdvance(m_side->placeholderText()) + 30);
        form->addRow(label, line);
    }
    auto* add = new QToolButton;
    add->setText(tr("Add finding"));
    connect(add, &QToolButton::clicked, this, [this] {
        if (!m_value->value()) {
            m_answers.session().say(Message::Kind::Warning, tr("The finding was not added: give its value first."));
            return;
        }
        core::ReleaseFinding f;
        f.quantity = static_cast<core::ReleaseQuantity>(m_quantity->currentIndex());
        f.value = *m_value->value();
        f.standardUncertainty = m_uncertainty->value();
        f.view = m_view->text().trimmed().toStdString();
        f.side = m_side->text().trimmed().toStdString();
        f.seenBy = m_seenBy->text().trimmed().toStdString();
        addFinding(f);
    });
    auto* remove = new QToolButton;
    remove->setText(tr("Remove selected finding"));
    connect(remove, &QToolButton::clicked, this, &ReleaseEditor::removeFinding);
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(add);
    buttons->addWidget(remove);
    buttons->addStretch(1);
    form->addRow(buttons);
    return part;
}

/// The rows carry colours of the theme.
void ReleaseEditor::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange) refreshLook();
}

void ReleaseEditor::addLook() {
    CaseDocument& document = m_answers.session().document();
    core::ReleaseState state;
    state.time = currentTime().toStdString();
    const std::string id = freeId<core::ReleaseState>(document.record(), "l");
    m_picker->choose(id);
    document.push(std::make_unique<SetReleaseLook>(document, id, state));
}

/// A finding that cannot be judged is refused with the reason, and the look stays as it was.
void ReleaseEditor::addFinding(const core::ReleaseFinding& finding) {
    const ReleaseLook* now = look();
    if (!now) return;
    core::ReleaseState next = now->state;
    next.findings.push_back(finding);
    if (const auto ok = core::validate(next); !ok) {
        m_answers.session().say(Message::Kind::Error, QString::fromStdString(ok.error().message));
        return;
    }
    edit([&](core::ReleaseState& s) { s = next; });
    m_value->setValue(std::nullopt);
    m_uncertainty->setValue(std::nullopt);
}

void ReleaseEditor::removeFinding() {
    const QTreeWidgetItem* item = m_rows->currentItem();
    const int at = item ? item->data(0, Qt::UserRole).toInt() : -1;
    if (at < 0 || !item->data(0, Qt::UserRole).isValid()) return;
    edit([&](core::ReleaseState& s) {
        if (at < static_cast<int>(s.findings.size())) s.findings.erase(s.findings.begin() + at);
    });
}

const ReleaseLook* ReleaseEditor::look() const {
    for (const ReleaseLook& one : m_answers.releaseLooks())
        if (one.id == m_picker->current()) return &one;
    return nullptr;
}

void ReleaseEditor::edit(const std::function<void(core::ReleaseState&)>& change) {
    const ReleaseLook* now = look();
    if (!now) return;
    core::ReleaseState state = now->state;
    change(state);
    CaseDocument& document = m_answers.session().document();
    document.push(std::make_unique<SetReleaseLook>(document, m_picker->current(), state));
}

void ReleaseEditor::refresh() {
    std::vector<std::pair<std::string, QString>> entries;
    for (const ReleaseLook& one : m_answers.releaseLooks())
        entries.push_back({one.id, lookTitle(one.state)});
    m_picker->setEntries(entries);
    refreshLook();
}

void ReleaseEditor::refreshLook() {
    const ReleaseLook* one = look();
    m_fields->setVisible(one);
    m_rows->clear();
    if (!one) return;
    m_stage->show(one->state.stage);
    m_time->setText(QString::fromStdString(one->state.time));
    m_withdrawn->setChecked(one->state.innerCatheterWithdrawn);
    QTreeWidgetItem* group = nullptr;
    QString view;
    const auto rows = one->report ? one->report->rows : std::vector<core::ReleaseRow>();
    for (const core::ReleaseRow& row : rows) {
        const QString title = row.view.empty() ? tr("No view") : QString::fromStdString(row.view);
        if (!group || title != view) {
            group = new QTreeWidgetItem(m_rows, {title});
            group->setFirstColumnSpanned(true);
            group->setFlags(Qt::ItemIsEnabled);
            QFont strong = font();
            strong.setWeight(QFont::DemiBold);
            group->setFont(0, strong);
            view = title;
        }
        QString verdict = verdictWords(row.verdict);
        if (row.nearLimit) verdict = tr("%1, near the limit").arg(verdict);
        const QString unit = QString::fromStdString(row.unit);
        auto* item = new QTreeWidgetItem(group, {coreWords(row.what), valueOf(one->state, row),
                                                 rangeWords(row.range, unit), verdict, QString::fromStdString(row.seenBy)});
        for (int column = 0; column < m_rows->columnCount(); ++column)
            item->setToolTip(column, item->text(column));
        item->setData(0, Qt::UserRole, findingOf(one->state, row));
        if (row.verdict == core::RangeVerdict::Outside)
            for (const int column : {1, 3})
                item->setForeground(column, tone::warning);
    }
    m_rows->expandAll();
    m_rows->fit();
    QStringList lines;
    if (!one->problem.isEmpty()) lines << one->problem;
    if (one->report) {
        for (const core::Notice& n : one->report->notices)
            lines << sentence(n);
    }
    for (const core::ReleaseChange& change : one->changes)
        lines << (change.worse ? tr("Worse: %1").arg(QString::fromStdString(change.sentence))
                               : QString::fromStdString(change.sentence));
    if (!m_answers.chosenChartSize())
        lines << tr("No size is chosen: compression and the chart's own clearances cannot be judged.");
    m_sentences->setText(lines.join(QStringLiteral("\n\n")));
}

} // namespace gauge::app
