#include "app/panels/decision_editor.h"

#include "app/commands/decision_commands.h"
#include "app/format/words.h"
#include "app/panels/editor_parts.h"
#include "app/settings/settings.h"

#include <QAction>
#include <QEvent>
#include <QFormLayout>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QVBoxLayout>

namespace gauge::app {

namespace {

/// Name and role of the settings: "A. Example, cardiologist".
QString signer() {
    const QString role = Settings().role().trimmed();
    return role.isEmpty() ? currentAuthor() : QStringLiteral("%1, %2").arg(currentAuthor(), role);
}

} // namespace

DecisionEditor::DecisionEditor(Answers& answers, QWidget* parent)
    : QWidget(parent), m_answers(answers), m_state(wrappedLabel({}, "heading")), m_text(new QPlainTextEdit),
      m_name(new QLineEdit(signer())), m_reasons(wrappedLabel({})) {
    m_text->setAccessibleName(tr("Decision"));
    m_text->setPlaceholderText(tr("What was decided, and why"));
    m_text->setTabChangesFocus(true);
    m_text->setMinimumHeight(7 * fontMetrics().height());
    m_text->installEventFilter(this);
    m_name->setAccessibleName(tr("Signed by"));
    m_sign = new QAction(tr("Sign the decision"), this);
    m_sign->setToolTip(tr("Sign the words and the chosen size as they stand"));
    connect(m_sign, &QAction::triggered, this, [this] { sign(m_name->text()); });
    m_withdraw = new QAction(tr("Take the signature off"), this);
    connect(m_withdraw, &QAction::triggered, this, [this] {
        CaseDocument& document = m_answers.session().document();
        document.push(std::make_unique<WithdrawSignature>(document));
    });
    auto* form = new QFormLayout;
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    form->addRow(tr("Signed by"), m_name);
    auto* buttons = new QHBoxLayout;
    for (QAction* action : {m_sign, m_withdraw}) {
        auto* button = new QToolButton;
        button->setDefaultAction(action);
        button->setFocusPolicy(Qt::TabFocus);
        buttons->addWidget(button);
    }
    buttons->addStretch(1);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(12, 10, 12, 10);
    layout->setSpacing(10);
    layout->addWidget(m_state);
    layout->addWidget(m_text);
    layout->addLayout(form);
    layout->addLayout(buttons);
    layout->addWidget(m_reasons);
    layout->addWidget(wrappedLabel(cautionParagraphs().join(QStringLiteral("\n\n")), "soft"));
    layout->addStretch(1);
    connect(&answers, &Answers::changed, this, &DecisionEditor::refresh);
    connect(&answers, &Answers::sizingChanged, this, &DecisionEditor::refresh);
    connect(&answers, &Answers::workChanged, this, &DecisionEditor::refresh);
    refresh();
}

/// The words become an edit when the field is left, not letter by letter.
bool DecisionEditor::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_text && event->type() == QEvent::FocusOut) takeText();
    return QWidget::eventFilter(watched, event);
}

void DecisionEditor::takeText() {
    const std::string words = m_text->toPlainText().trimmed().toStdString();
    const auto& decision = m_answers.record().decision;
    if (words == (decision ? decision->content.text : std::string())) return;
    CaseDocument& document = m_answers.session().document();
    document.push(std::make_unique<WriteDecision>(document, words));
}

bool DecisionEditor::sign(const QString& name) {
    takeText();
    QStringList reasons = m_answers.whyNotSigned();
    if (name.trimmed().isEmpty()) reasons << tr("Nobody signs: write who signs.");
    if (!reasons.isEmpty()) {
        m_answers.session().say(Message::Kind::Warning, tr("The decision was not signed. %1").arg(reasons.join(QLatin1Char(' '))));
        return false;
    }
    CaseDocument& document = m_answers.session().document();
    return document.push(std::make_unique<SignDecision>(document, name.trimmed().toStdString(), currentTime().toStdString()));
}

void DecisionEditor::refresh() {
    const auto& entry = m_answers.record().decision;
    const core::Decision decision = entry ? entry->content : core::Decision{};
    if (!m_text->hasFocus() || entry) {
        const QString words = QString::fromStdString(decision.text);
        if (words != m_text->toPlainText() && !m_text->hasFocus()) m_text->setPlainText(words);
    }
    const std::string size = SizingCommand::present(m_answers.session().document()).size;
    const QString chosen = QString::fromStdString(size);
    QStringList lines;
    if (!decision.signedBy.empty()) {
        m_state->setText(tr("Signed by %1 on %2 for size %3.")
                             .arg(QString::fromStdString(decision.signedBy),
                                  QString::fromStdString(decision.time).left(16).replace(QLatin1Char('T'), QLatin1Char(' ')),
                                  QString::fromStdString(decision.size)));
        if (decision.size != size)
            lines << tr("Size %1 is chosen now: the signature is for another one. Sign again, or choose that size again.")
                         .arg(chosen.isEmpty() ? tr("none") : chosen);
    } else {
        m_state->setText(chosen.isEmpty() ? tr("Draft. No size is chosen.") : tr("Draft, for size %1.").arg(chosen));
    }
    const QStringList reasons = m_answers.whyNotSigned();
    if (!reasons.isEmpty()) lines << tr("It cannot be signed yet:");
    for (const QString& reason : reasons)
        lines << QStringLiteral("• ") + reason;
    m_reasons->setText(lines.join(QStringLiteral("\n\n")));
    m_reasons->setVisible(!lines.isEmpty());
    m_withdraw->setEnabled(!decision.signedBy.empty());
}

} // namespace gauge::app
