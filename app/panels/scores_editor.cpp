#include "app/panels/scores_editor.h"

#include "app/commands/decision_commands.h"
#include "app/format/decision_words.h"
#include "app/panels/editor_parts.h"
#include "app/panels/number_edit.h"

#include <QCheckBox>
#include <QFormLayout>
#include <QVBoxLayout>
#include <memory>

namespace gauge::app {
namespace {

QString error(const core::Error& e) {
    return QString::fromStdString(e.message);
}

QString rateSentence(const core::PublishedRate& rate) {
    return ScoresEditor::tr("%1: %2 per 100 patient-years as published (%3; %4).")
        .arg(QString::fromStdString(rate.outcome), plainNumber(rate.perHundredYears), QString::fromStdString(rate.source),
             QString::fromUtf8(core::word(rate.basis).data(), static_cast<qsizetype>(core::word(rate.basis).size())));
}

QString countedSentence(const std::vector<std::string>& counted) {
    QStringList words;
    for (const std::string& item : counted)
        words << QString::fromStdString(item);
    return words.isEmpty() ? ScoresEditor::tr("No item counts.")
                           : ScoresEditor::tr("Counted: %1.").arg(words.join(QStringLiteral(", ")));
}

QFormLayout* formOf(QWidget* part) {
    auto* form = new QFormLayout(part);
    form->setContentsMargins(0, 0, 0, 0);
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    form->setFieldGrowthPolicy(QFormLayout::FieldsStayAtSizeHint);
    return form;
}

} // namespace

QString strokeSentences(const ScoreAnswer& scores) {
    QStringList lines;
    if (!scores.stroke) return ScoresEditor::tr("No item is recorded.");
    const auto& vasc = *scores.stroke;
    if (vasc) {
        lines << ScoresEditor::tr("CHA₂DS₂-VASc %1 of %2. %3").arg(vasc->points).arg(vasc->most).arg(countedSentence(vasc->counted));
        for (const core::PublishedRate& rate : vasc->rates)
            lines << rateSentence(rate);
    } else {
        lines << error(vasc.error());
    }
    const auto& va = *scores.strokeWithoutSex;
    if (va)
        lines << ScoresEditor::tr("CHA₂DS₂-VA (without sex) %1 of %2; no rates are published for it.").arg(va->points).arg(va->most);
    else if (vasc || va.error().message != vasc.error().message)
        lines << error(va.error());
    return lines.join(QStringLiteral("\n\n"));
}

QString bleedingSentences(const ScoreAnswer& scores) {
    QStringList lines;
    if (!scores.bleeding) return ScoresEditor::tr("No item is recorded.");
    if (const auto& bled = *scores.bleeding) {
        lines << (bled->isHigh ? ScoresEditor::tr("HAS-BLED %1 of 9: high. %2") : ScoresEditor::tr("HAS-BLED %1 of 9. %2"))
                     .arg(bled->points)
                     .arg(countedSentence(bled->counted));
        lines << (bled->rate ? rateSentence(*bled->rate)
                             : ScoresEditor::tr("No rate is published for so high a score: too few patients."));
    } else {
        lines << error(bled.error());
    }
    if (scores.disagreement) lines << error(*scores.disagreement);
    return lines.join(QStringLiteral("\n\n"));
}

ScoresEditor::ScoresEditor(Answers& answers, QWidget* parent)
    : QWidget(parent), m_answers(answers), m_strokeAnswer(wrappedLabel({})), m_bleedingAnswer(wrappedLabel({})) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(12, 10, 12, 10);
    layout->setSpacing(10);
    layout->addWidget(wrappedLabel(tr("Stroke risk"), "heading"));
    layout->addWidget(m_strokeAnswer);
    layout->addWidget(makeStroke());
    layout->addWidget(wrappedLabel(tr("Bleeding risk under anticoagulation"), "heading"));
    layout->addWidget(m_bleedingAnswer);
    layout->addWidget(makeBleeding());
    layout->addWidget(wrappedLabel(tr("The scores know nothing of a mitral repair or a closed appendage; no adjusted rate is "
                                      "made up."),
                                   "soft"));
    layout->addStretch(1);
    connect(&answers, &Answers::changed, this, &ScoresEditor::refresh);
    refresh();
}

QWidget* ScoresEditor::makeStroke() {
    using I = core::StrokeItems;
    auto* part = new QWidget;
    QFormLayout* form = formOf(part);
    auto* age = new NumberEdit(0.0, 130.0, tr("Age, years"));
    form->addRow(tr("Age, years"), age);
    connect(age, &NumberEdit::edited, this,
            [this](std::optional<double> v) { editStroke([&](I& i) { i.ageYears = v.value_or(0.0); }); });
    m_showStroke.push_back([age](const I& i) { age->setValue(i.ageYears > 0.0 ? std::optional(i.ageYears) : std::nullopt); });
    auto* box = new QComboBox;
    box->setAccessibleName(tr("Sex"));
    auto sex = std::make_shared<Choice<core::Sex>>(
        box, Choice<core::Sex>::Items{{core::Sex::Female, tr("female")}, {core::Sex::Male, tr("male")}}, tr("not stated"));
    form->addRow(tr("Sex"), box);
    connect(box, &QComboBox::activated, this, [this, sex] { editStroke([&](I& i) { i.sex = sex->value(); }); });
    m_showStroke.push_back([sex](const I& i) { sex->show(i.sex); });
    const std::pair<QString, bool I::*> flags[]{
        {tr("Heart failure or left ventricular dysfunction"), &I::heartFailure},
        {tr("Hypertension"), &I::hypertension},
        {tr("Diabetes"), &I::diabetes},
        {tr("Stroke, transient attack or embolism"), &I::strokeOrEmbolism},
        {tr("Vascular disease"), &I::vascularDisease}};
    for (const auto& [words, member] : flags) {
        auto* check = new QCheckBox(words);
        form->addRow(check);
        connect(check, &QCheckBox::clicked, this,
                [this, m = member](bool on) { editStroke([&](I& i) { i.*m = on; }); });
        m_showStroke.push_back([check, m = member](const I& i) { check->setChecked(i.*m); });
    }
    return part;
}

QWidget* ScoresEditor::makeBleeding() {
    using I = core::BleedingItems;
    auto* part = new QWidget;
    QFormLayout* form = formOf(part);
    auto* age = new NumberEdit(0.0, 130.0, tr("Age for the bleeding score, years"));
    form->addRow(tr("Age, years"), age);
    connect(age, &NumberEdit::edited, this,
            [this](std::optional<double> v) { editBleeding([&](I& i) { i.ageYears = v.value_or(0.0); }); });
    m_showBleeding.push_back([age](const I& i) { age->setValue(i.ageYears > 0.0 ? std::optional(i.ageYears) : std::nullopt); });
    const std::pair<QString, std::optional<double> I::*> numbers[]{{tr("Systolic pressure, mmHg"), &I::systolicMmHg},
                                                                   {tr("Drinks a week"), &I::drinksPerWeek}};
    for (const auto& [words, member] : numbers) {
        auto* field = new NumberEdit(0.0, 300.0, words);
        form->addRow(words, field);
        connect(field, &NumberEdit::edited, this,
                [this, m = member](std::optional<double> v) { editBleeding([&](I& i) { i.*m = v; }); });
        m_showBleeding.push_back([field, m = member](const I& i) { field->setValue(i.*m); });
    }
    const std::pair<QString, bool I::*> flags[]{
        {tr("Uncontrolled hypertension (above 160 mmHg systolic)"), &I::uncontrolledHypertension},
        {tr("Abnormal renal function"), &I::abnormalRenalFunction},
        {tr("Abnormal liver function"), &I::abnormalLiverFunction},
        {tr("Stroke"), &I::stroke},
        {tr("Bleeding or predisposition"), &I::bleeding},
        {tr("Takes a vitamin K antagonist"), &I::takesVitaminKAntagonist},
        {tr("Labile INR"), &I::labileInr},
        {tr("Antiplatelet drug or NSAID"), &I::antiplateletOrNsaid},
        {tr("Alcohol, eight drinks a week or more"), &I::alcohol}};
    for (const auto& [words, member] : flags) {
        auto* check = new QCheckBox(words);
        form->addRow(check);
        connect(check, &QCheckBox::clicked, this,
                [this, m = member](bool on) { editBleeding([&](I& i) { i.*m = on; }); });
        m_showBleeding.push_back([check, m = member](const I& i) { check->setChecked(i.*m); });
    }
    return part;
}

void ScoresEditor::editStroke(const std::function<void(core::StrokeItems&)>& change) {
    CaseDocument& document = m_answers.session().document();
    const auto& scores = document.record().scores;
    core::StrokeItems items = scores && scores->content.stroke ? *scores->content.stroke : core::StrokeItems{};
    change(items);
    document.push(std::make_unique<SetStrokeItems>(document, items));
}

void ScoresEditor::editBleeding(const std::function<void(core::BleedingItems&)>& change) {
    CaseDocument& document = m_answers.session().document();
    const auto& scores = document.record().scores;
    core::BleedingItems items = scores && scores->content.bleeding ? *scores->content.bleeding : core::BleedingItems{};
    change(items);
    document.push(std::make_unique<SetBleedingItems>(document, items));
}

void ScoresEditor::refresh() {
    const auto& scores = m_answers.record().scores;
    const core::Scores items = scores ? scores->content : core::Scores{};
    for (const auto& showField : m_showStroke)
        showField(items.stroke.value_or(core::StrokeItems{}));
    for (const auto& showField : m_showBleeding)
        showField(items.bleeding.value_or(core::BleedingItems{}));
    m_strokeAnswer->setText(strokeSentences(m_answers.scores()));
    m_bleedingAnswer->setText(bleedingSentences(m_answers.scores()));
}

} // namespace gauge::app
