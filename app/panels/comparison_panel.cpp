#include "app/panels/comparison_panel.h"

#include "app/commands/course_commands.h"
#include "app/format/core_sentences.h"
#include "app/panels/comparison_table.h"
#include "app/panels/editor_parts.h"

#include <QAction>
#include <QClipboard>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QSplitter>
#include <QToolButton>
#include <QVBoxLayout>

namespace gauge::app {
namespace {

QToolButton* buttonFor(QAction* action, QWidget* parent) {
    auto* button = new QToolButton(parent);
    button->setDefaultAction(action);
    button->setFocusPolicy(Qt::TabFocus);
    return button;
}

QLabel* wrappedLabel(QWidget* parent) {
    auto* label = new QLabel(parent);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    label->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    return label;
}

} // namespace

ComparisonPanel::ComparisonPanel(Answers& answers, ViewState& state, QWidget* parent)
    : QWidget(parent), m_answers(answers), m_state(state), m_model(this), m_table(new ComparisonTable(m_model, this)),
      m_note(wrappedLabel(this)), m_hint(wrappedLabel(this)) {
    setAutoFillBackground(true);
    setObjectName("comparison");
    auto* heading = new QLabel(tr("Comparison"), this);
    heading->setObjectName("heading");

    m_copy = new QAction(tr("Copy table"), this);
    m_copy->setShortcut(QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_C));
    m_copy->setToolTip(tr("Copy the table for a spreadsheet (Ctrl+Shift+C)"));
    connect(m_copy, &QAction::triggered, this, &ComparisonPanel::copyTable);
    m_jump = new QAction(tr("Show where it was measured"), this);
    m_jump->setToolTip(tr("Go to the view, frame and plane of the value (Enter in the table)"));
    connect(m_jump, &QAction::triggered, this, [this] { jump(m_table->current()); });
    m_confirm = new QAction(tr("Confirm values"), this);
    m_confirm->setShortcut(QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_K));
    m_confirm->setToolTip(tr("Say that the values of the column that are out of date still hold (Ctrl+Shift+K)"));
    connect(m_confirm, &QAction::triggered, this, [this] { confirm(staleCell()); });

    auto* top = new QHBoxLayout;
    top->setContentsMargins(8, 8, 8, 4);
    top->setSpacing(6);
    top->addWidget(heading, 1);
    m_confirmButton = buttonFor(m_confirm, this);
    top->addWidget(m_confirmButton);
    top->addWidget(buttonFor(m_copy, this));

    m_hint->setObjectName("soft");
    m_hint->setContentsMargins(8, 12, 8, 8);
    m_hint->setText(tr("Values ± standard uncertainty appear here, one column for each kind of evidence and moment, once the "
                       "appendage is measured on CT or echo, or a reading is typed in."));
    m_note->setContentsMargins(8, 6, 8, 8);
    auto* scroll = scrolled(m_note);
    scroll->setMinimumHeight(40);
    auto* parts = new QSplitter(Qt::Vertical, this);
    parts->setChildrenCollapsible(false);
    parts->addWidget(m_table);
    parts->addWidget(scroll);
    parts->setStretchFactor(0, 4);
    parts->setStretchFactor(1, 1);
    parts->setSizes({400, 90});

    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addLayout(top);
    layout->addWidget(m_hint);
    layout->addWidget(parts, 1);

    connect(m_table, &ComparisonTable::jumpRequested, this, &ComparisonPanel::jump);
    connect(m_table, &ComparisonTable::currentChanged, this, &ComparisonPanel::refreshConfirm);
    connect(&answers, &Answers::changed, this, &ComparisonPanel::refresh);
    Session& session = answers.session();
    connect(&session, &Session::workChanged, this, [this] {
        m_model.setMeasuring(m_answers.session().isMeasuring());
        refreshConfirm();
    });
    connect(&session, &Session::measurementChanged, this, &ComparisonPanel::refresh);
    connect(&session, &Session::imagesChanged, this, &ComparisonPanel::refresh);
    connect(&session, &Session::landingChanged, this, [this] {
        Session& s = m_answers.session();
        m_model.setPreview(s.isPreviewing() ? s.landingShown() : nullptr, s.isLandingMeasured());
    });
    refresh();
}

void ComparisonPanel::copyTable() const {
    QGuiApplication::clipboard()->setText(m_model.asText());
}

void ComparisonPanel::jump(const QModelIndex& index) {
    if (const auto place = m_model.placeAt(index)) m_state.goTo(*place);
}

/// The current cell where its column has something to confirm; else the first such column.
QModelIndex ComparisonPanel::staleCell() const {
    const QModelIndex now = m_table->current();
    if (now.isValid() && !m_model.staleIn(now.column()).empty()) return now;
    for (int column = 1; column < m_model.columnCount(); ++column)
        if (!m_model.staleIn(column).empty()) return m_model.index(0, column);
    return {};
}

void ComparisonPanel::confirm(const QModelIndex& index) {
    if (!index.isValid()) return;
    const auto stale = m_model.staleIn(index.column());
    if (stale.empty()) return;
    CaseDocument& document = m_answers.session().document();
    document.push(std::make_unique<ConfirmValues>(document, m_model.groupOf(index.column()), stale));
}

void ComparisonPanel::refreshConfirm() {
    const bool stale = staleCell().isValid() && !m_answers.session().isMeasuring();
    m_confirm->setEnabled(stale);
    m_confirmButton->setVisible(stale);
    m_jump->setEnabled(m_model.placeAt(m_table->current()).has_value());
}

QStringList ComparisonPanel::sentences() const {
    QStringList lines;
    Session& session = m_answers.session();
    if (session.failure()) lines << QString::fromStdString(session.failure()->message);
    for (const core::Notice& n : m_answers.readings().notices)
        lines << sentence(n);
    if (const auto* m = session.measurement())
        for (const auto& notice : m->notices)
            lines << sentence(notice);
    if (const auto* images = session.images())
        for (const auto& notice : images->ct.notices)
            lines << sentence(notice);
    return lines;
}

void ComparisonPanel::refresh() {
    Session& session = m_answers.session();
    m_model.setMeasuring(session.isMeasuring());
    m_model.setAnswers(m_answers);
    m_model.setPreview(session.isPreviewing() ? session.landingShown() : nullptr, session.isLandingMeasured());
    const bool empty = m_model.columnCount() < 2;
    m_hint->setVisible(empty);
    m_table->setVisible(!empty);
    const QStringList lines = sentences();
    m_note->setText(lines.isEmpty() && !empty ? tr("Nothing else to note about the readings.")
                                              : lines.join(QStringLiteral("\n\n")));
    refreshConfirm();
}

} // namespace gauge::app
