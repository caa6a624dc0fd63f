#include "app/panels/stasis_editor.h"

#include "app/commands/course_commands.h"
#include "app/format/decision_words.h"
#include "app/format/terms.h"
#include "app/panels/editor_parts.h"
#include "app/panels/number_edit.h"

#include <QCheckBox>
#include <QFormLayout>
#include <QLineEdit>
#include <QVBoxLayout>
#include <memory>

namespace gauge::app {

StasisEditor::StasisEditor(Answers& answers, QWidget* parent)
    : QWidget(parent), m_answers(answers),
      m_picker(new EntryPicker(tr("Finding of stasis"), tr("Add a finding"), tr("Remove"))), m_fields(new QWidget),
      m_verdict(wrappedLabel({}, "heading")), m_sentences(wrappedLabel({})) {
    auto* form = new QFormLayout(m_fields);
    form->setContentsMargins(0, 0, 0, 0);
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    form->setFieldGrowthPolicy(QFormLayout::FieldsStayAtSizeHint);
    makeForm(*form);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(12, 10, 12, 10);
    layout->setSpacing(10);
    for (QWidget* part : {static_cast<QWidget*>(m_verdict), static_cast<QWidget*>(m_sentences),
                          static_cast<QWidget*>(m_picker), m_fields})
        layout->addWidget(part);
    layout->addStretch(1);
    connect(m_picker, &EntryPicker::picked, this, &StasisEditor::refreshFields);
    connect(m_picker, &EntryPicker::addRequested, this, &StasisEditor::addFinding);
    connect(m_picker, &EntryPicker::removeRequested, this, [this] {
        CaseDocument& document = m_answers.session().document();
        document.push(std::make_unique<RemoveStasis>(document, m_picker->current()));
    });
    connect(&answers, &Answers::changed, this, &StasisEditor::refresh);
    refresh();
}

void StasisEditor::makeForm(QFormLayout& form) {
    using F = core::StasisFinding;
    const QString none = tr("not stated");
    const auto choice = [&]<class Value>(const QString& label, typename Choice<Value>::Items items, const QString& absent,
                                         std::function<std::optional<Value>(const F&)> get,
                                         std::function<void(F&, std::optional<Value>)> set) {
        auto* box = new QComboBox;
        box->setAccessibleName(label);
        auto made = std::make_shared<Choice<Value>>(box, std::move(items), absent);
        form.addRow(label, box);
        connect(box, &QComboBox::activated, this, [this, made, set] { edit([&](F& f) { set(f, made->value()); }); });
        m_show.push_back([made, get](const F& f) { made->show(get(f)); });
    };
    Choice<core::Stage>::Items stages;
    for (const core::Stage stage : core::kStages)
        stages.push_back({stage, stageName(stage)});
    choice.template operator()<core::Stage>(
        tr("Stage"), stages, {}, [](const F& f) { return std::optional(f.stage); },
        [](F& f, std::optional<core::Stage> s) { f.stage = s.value_or(f.stage); });
    Choice<int>::Items grades;
    for (int grade = 0; grade <= 4; ++grade)
        grades.push_back({grade, grade == 0 ? tr("0, none") : grade == 4 ? tr("4, severe") : QString::number(grade)});
    choice.template operator()<int>(
        tr("Spontaneous echo contrast (smoke), grade"), grades, none, [](const F& f) { return f.echoContrastGrade; },
        [](F& f, std::optional<int> v) { f.echoContrastGrade = v; });
    const Choice<bool>::Items yesNo{{false, tr("no")}, {true, tr("yes")}};
    choice.template operator()<bool>(
        tr("Sludge"), yesNo, none, [](const F& f) { return f.sludge; }, [](F& f, std::optional<bool> v) { f.sludge = v; });
    choice.template operator()<bool>(
        tr("Thrombus"), yesNo, none, [](const F& f) { return f.thrombus; },
        [](F& f, std::optional<bool> v) { f.thrombus = v; });
    const auto number = [&](const QString& label, double most, std::optional<double> F::*member) {
        auto* field = new NumberEdit(0.0, most, label);
        form.addRow(label, field);
        connect(field, &NumberEdit::edited, this,
                [this, member](std::optional<double> v) { edit([&](F& f) { f.*member = v; }); });
        m_show.push_back([field, member](const F& f) { field->setValue(f.*member); });
    };
    number(tr("Emptying velocity, cm/s"), 200.0, &F::emptyingVelocityCmPerS);
    number(tr("Enhancement of the tip over the aorta (ratio)"), 3.0, &F::enhancementRatio);
    using P = core::EnhancementPhase;
    Choice<P>::Items phases;
    for (const P phase : {P::Early, P::Delayed, P::Unknown})
        phases.push_back({phase, enhancementPhaseWords(phase)});
    choice.template operator()<P>(
        tr("Phase of the enhancement"), phases, {}, [](const F& f) { return std::optional(f.enhancementPhase); },
        [](F& f, std::optional<P> v) { f.enhancementPhase = v.value_or(P::Unknown); });
    auto* again = new QCheckBox(tr("The appendage was looked at on purpose"));
    form.addRow(again);
    connect(again, &QCheckBox::clicked, this, [this](bool on) { edit([&](F& f) { f.lookedAtAgain = on; }); });
    m_show.push_back([again](const F& f) { again->setChecked(f.lookedAtAgain); });
    auto* seenBy = new QLineEdit;
    seenBy->setAccessibleName(tr("Seen by"));
    form.addRow(tr("Seen by"), seenBy);
    connect(seenBy, &QLineEdit::editingFinished, this,
            [this, seenBy] { edit([&](F& f) { f.seenBy = seenBy->text().trimmed().toStdString(); }); });
    m_show.push_back([seenBy](const F& f) { seenBy->setText(QString::fromStdString(f.seenBy)); });
}

void StasisEditor::addFinding() {
    CaseDocument& document = m_answers.session().document();
    core::StasisFinding finding;
    finding.seenBy = currentAuthor().toStdString();
    const std::string id = freeId<core::StasisFinding>(document.record(), "s");
    m_picker->choose(id);
    document.push(std::make_unique<SetStasis>(document, id, finding));
}

void StasisEditor::edit(const std::function<void(core::StasisFinding&)>& change) {
    CaseDocument& document = m_answers.session().document();
    const auto found = document.record().stasis.find(m_picker->current());
    if (found == document.record().stasis.end()) return;
    core::StasisFinding finding = found->second.content;
    change(finding);
    document.push(std::make_unique<SetStasis>(document, m_picker->current(), finding));
}

void StasisEditor::refresh() {
    std::vector<std::pair<std::string, QString>> entries;
    std::vector<std::pair<core::Stage, std::string>> order;
    for (const auto& [id, entry] : m_answers.record().stasis)
        order.push_back({entry.content.stage, id});
    std::sort(order.begin(), order.end());
    for (const auto& [stage, id] : order) {
        const QString by = QString::fromStdString(m_answers.record().stasis.at(id).content.seenBy);
        entries.push_back({id, by.isEmpty() ? stageName(stage) : tr("%1, seen by %2").arg(stageName(stage), by)});
    }
    m_picker->setEntries(entries);
    const core::StasisJudgement& judgement = m_answers.stasis();
    m_verdict->setText(judgement.planStopped       ? tr("The plan is stopped: nothing may enter the appendage.")
                       : !judgement.sizeMayBeSigned ? tr("No size can be signed yet.")
                       : entries.empty()            ? tr("Nothing is recorded about stasis.")
                                                    : tr("Stasis does not forbid to sign a size."));
    std::vector<core::Notice> all = judgement.warnings;
    all.insert(all.end(), judgement.notices.begin(), judgement.notices.end());
    m_sentences->setText(paragraphs(all));
    m_sentences->setVisible(!all.empty());
    refreshFields();
}

void StasisEditor::refreshFields() {
    const auto found = m_answers.record().stasis.find(m_picker->current());
    const bool has = found != m_answers.record().stasis.end();
    m_fields->setVisible(has);
    if (has)
        for (const auto& showField : m_show)
            showField(found->second.content);
}

} // namespace gauge::app
