#include "app/panels/moments_editor.h"

#include "app/format/moment_sentences.h"
#include "app/commands/course_commands.h"
#include "app/drawing/pressure_course_drawing.h"
#include "app/format/decision_words.h"
#include "app/format/terms.h"
#include "app/panels/editor_parts.h"

#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QMouseEvent>
#include <QPainter>
#include <QVBoxLayout>

namespace gauge::app {
namespace {

template <class Value, std::size_t N>
typename Choice<Value>::Items itemsOf(const std::array<Value, N>& values, QString (*words)(Value)) {
    typename Choice<Value>::Items items;
    for (const Value value : values)
        items.push_back({value, words(value)});
    return items;
}

QString titleOf(const core::Moment& m) {
    const auto& mmHg = m.circulation.meanPressureMmHg;
    const QString pressure = mmHg ? pressureWords(*mmHg) : MomentsEditor::tr("pressure not measured");
    const QString date = QString::fromStdString(m.circulation.time).left(16).replace(QLatin1Char('T'), QLatin1Char(' '));
    const QString text = MomentsEditor::tr("%1, %2").arg(stageName(m.circulation.stage), pressure);
    return date.isEmpty() ? text : text + QStringLiteral(" · ") + date;
}

} // namespace

PressureCourseView::PressureCourseView(Answers& answers, QWidget* parent) : QWidget(parent), m_answers(answers) {
    setAccessibleName(tr("Pressures over time"));
    setToolTip(tr("Click on a moment to edit it"));
    connect(&answers, &Answers::changed, this, qOverload<>(&QWidget::update));
}

void PressureCourseView::setChosen(const std::string& id) {
    m_chosen = id;
    update();
}

QSize PressureCourseView::sizeHint() const {
    return {560, 16 * fontMetrics().height() + 40};
}

QSize PressureCourseView::minimumSizeHint() const {
    return {280, 13 * fontMetrics().height()};
}

void PressureCourseView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const auto course = courseOf(m_answers.record());
    drawPressureCourse(painter, rect(), course, m_chosen, m_answers.decisionPressureMmHg(), font());
}

void PressureCourseView::mousePressEvent(QMouseEvent* event) {
    const std::string id = courseAt(rect(), courseOf(m_answers.record()), event->position().x(), font());
    if (!id.empty()) emit clicked(id);
}

MomentsEditor::MomentsEditor(Answers& answers, QWidget* parent)
    : QWidget(parent), m_answers(answers), m_picture(new PressureCourseView(answers)),
      m_picker(new EntryPicker(tr("Moment of the course"), tr("Add a moment"), tr("Remove"))), m_fields(new QWidget),
      m_sentences(wrappedLabel({})) {
    auto* form = new QFormLayout(m_fields);
    form->setContentsMargins(0, 0, 0, 0);
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    form->setFieldGrowthPolicy(QFormLayout::FieldsStayAtSizeHint);
    makeForm(*form);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(12, 10, 12, 10);
    layout->setSpacing(10);
    layout->addWidget(m_picture);
    layout->addWidget(m_picker);
    layout->addWidget(m_sentences);
    layout->addWidget(m_fields);
    layout->addStretch(1);
    connect(m_picker, &EntryPicker::picked, this, &MomentsEditor::refreshFields);
    connect(m_picker, &EntryPicker::addRequested, this, &MomentsEditor::addMoment);
    connect(m_picker, &EntryPicker::removeRequested, this, &MomentsEditor::removeMoment);
    connect(m_picture, &PressureCourseView::clicked, this, &MomentsEditor::choose);
    connect(&answers, &Answers::changed, this, &MomentsEditor::refresh);
    refresh();
}

template <class Value>
std::unique_ptr<Choice<Value>> MomentsEditor::choice(QFormLayout& form, const QString& label,
                                                     typename Choice<Value>::Items items, const QString& none,
                                                     std::function<void(core::Moment&, std::optional<Value>)> set) {
    auto* box = new QComboBox;
    box->setAccessibleName(label);
    auto made = std::make_unique<Choice<Value>>(box, std::move(items), none);
    form.addRow(label, box);
    connect(box, &QComboBox::activated, this,
            [this, set, raw = made.get()] { edit([&](core::Moment& m) { set(m, raw->value()); }); });
    return made;
}

NumberEdit* MomentsEditor::number(QFormLayout& form, const QString& label, double least, double most,
                                  std::function<void(core::Moment&, std::optional<double>)> set) {
    auto* field = new NumberEdit(least, most, label);
    form.addRow(label, field);
    connect(field, &NumberEdit::edited, this,
            [this, set](std::optional<double> value) { edit([&](core::Moment& m) { set(m, value); }); });
    return field;
}

void MomentsEditor::makeForm(QFormLayout& form) {
    using core::HaemodynamicState;
    const QString none = tr("not recorded");
    // A field of the circulation: shown from it, written to it.
    const auto pick = [&]<class Value>(const QString& label, typename Choice<Value>::Items items,
                                       std::optional<Value> HaemodynamicState::*member) {
        std::shared_ptr<Choice<Value>> made = choice<Value>(
            form, label, std::move(items), none,
            [member](core::Moment& m, std::optional<Value> value) { m.circulation.*member = value; });
        m_show.push_back([made, member](const core::Moment& m) { made->show(m.circulation.*member); });
    };
    const auto value = [&](const QString& label, double most, std::optional<double> HaemodynamicState::*member) {
        NumberEdit* field = number(form, label, 0.0, most, [member](core::Moment& m, std::optional<double> v) {
            m.circulation.*member = v;
        });
        m_show.push_back([field, member](const core::Moment& m) { field->setValue(m.circulation.*member); });
    };
    std::shared_ptr<Choice<core::Stage>> stage = choice<core::Stage>(
        form, tr("Stage"), itemsOf(core::kStages, &stageName), {}, [](core::Moment& m, std::optional<core::Stage> s) {
            if (s) m.circulation.stage = *s;
        });
    m_show.push_back([stage](const core::Moment& m) { stage->show(m.circulation.stage); });
    auto* time = new QLineEdit;
    time->setAccessibleName(tr("Time"));
    time->setPlaceholderText(QStringLiteral("2026-03-09T10:20"));
    time->setMinimumWidth(fontMetrics().horizontalAdvance(QStringLiteral("2026-03-09T10:20:00+01:00")) + 24);
    form.addRow(tr("Time"), time);
    connect(time, &QLineEdit::editingFinished, this, [this, time] {
        edit([&](core::Moment& m) { m.circulation.time = time->text().trimmed().toStdString(); });
    });
    m_show.push_back([time](const core::Moment& m) { time->setText(QString::fromStdString(m.circulation.time)); });

    value(tr("Left atrial mean pressure, mmHg"), 200.0, &HaemodynamicState::meanPressureMmHg);
    using Source = core::PressureSource;
    pick.template operator()<Source>(tr("How it was obtained"),
                                     itemsOf(std::array{Source::Direct, Source::Wedge, Source::Echo, Source::ProcedureStart},
                                             &pressureSourceName),
                                     &HaemodynamicState::pressureSource);
    NumberEdit* uncertainty = number(form, tr("Its standard uncertainty, mmHg"), 0.0, 30.0,
                                     [](core::Moment& m, std::optional<double> v) { m.pressureUncertaintyMmHg = v; });
    m_show.push_back([uncertainty](const core::Moment& m) { uncertainty->setValue(m.pressureUncertaintyMmHg); });
    value(tr("v wave (peak), mmHg"), 200.0, &HaemodynamicState::vWaveMmHg);
    value(tr("Mean mitral gradient, mmHg"), 100.0, &HaemodynamicState::meanMitralGradientMmHg);
    using Gradient = core::GradientSource;
    pick.template operator()<Gradient>(tr("How the gradient was obtained"),
                                       itemsOf(std::array{Gradient::SpectralEnvelope, Gradient::Typed}, &gradientSourceWords),
                                       &HaemodynamicState::gradientSource);
    value(tr("Heart rate, per minute"), 400.0, &HaemodynamicState::heartRatePerMinute);
    using Rhythm = core::Rhythm;
    pick.template operator()<Rhythm>(
        tr("Rhythm"),
        itemsOf(std::array{Rhythm::Sinus, Rhythm::AtrialFibrillation, Rhythm::AtrialFlutter, Rhythm::Paced}, &rhythmName),
        &HaemodynamicState::rhythm);
    using Breath = core::Ventilation;
    pick.template operator()<Breath>(tr("Ventilation"),
                                     itemsOf(std::array{Breath::Spontaneous, Breath::Controlled}, &ventilationName),
                                     &HaemodynamicState::ventilation);
    using Grade = core::RegurgitationGrade;
    pick.template operator()<Grade>(
        tr("Mitral regurgitation"),
        itemsOf(std::array{Grade::None, Grade::Mild, Grade::Moderate, Grade::ModerateToSevere, Grade::Severe},
                &regurgitationName),
        &HaemodynamicState::regurgitation);
    using Vein = core::PulmonaryVeinFlow;
    pick.template operator()<Vein>(tr("Pulmonary-vein flow"),
                                   itemsOf(std::array{Vein::SystolicDominant, Vein::Blunted, Vein::Reversed}, &veinFlowName),
                                   &HaemodynamicState::pulmonaryVeinFlow);
    using C = core::Condition;
    std::shared_ptr<Choice<C>> condition = choice<C>(
        form, tr("Filling"), itemsOf(std::array{C::MitralRegurgitation, C::Hydrated, C::Other}, &conditionName), {},
        [](core::Moment& m, std::optional<C> c) {
            if (c) m.condition = *c;
        });
    condition->box()->setToolTip(tr("What an unmeasured pressure is assumed from"));
    m_show.push_back([condition](const core::Moment& m) { condition->show(m.condition); });
}

void MomentsEditor::addMoment() {
    CaseDocument& document = m_answers.session().document();
    core::Moment moment;
    if (const auto course = courseOf(document.record()); !course.empty())
        moment.circulation.stage = course.back().moment.circulation.stage;
    const std::string id = freeId<core::Moment>(document.record(), "m");
    m_picker->choose(id);
    document.push(std::make_unique<SetMoment>(document, id, moment));
}

void MomentsEditor::removeMoment() {
    if (current().empty()) return;
    CaseDocument& document = m_answers.session().document();
    document.push(std::make_unique<RemoveMoment>(document, current()));
}

std::string MomentsEditor::current() const {
    return m_picker->current();
}

void MomentsEditor::choose(const std::string& id) {
    m_picker->choose(id);
}

void MomentsEditor::edit(const std::function<void(core::Moment&)>& change) {
    CaseDocument& document = m_answers.session().document();
    const auto found = document.record().moments.find(current());
    if (found == document.record().moments.end()) return;
    core::Moment moment = found->second.content;
    change(moment);
    document.push(std::make_unique<SetMoment>(document, current(), std::move(moment)));
}

void MomentsEditor::refresh() {
    std::vector<std::pair<std::string, QString>> entries;
    for (const CoursePoint& point : courseOf(m_answers.record()))
        entries.push_back({point.id, titleOf(point.moment)});
    m_picker->setEntries(entries);
    refreshFields();
}

void MomentsEditor::refreshFields() {
    const auto found = m_answers.record().moments.find(current());
    const bool has = found != m_answers.record().moments.end();
    m_fields->setVisible(has);
    m_picture->setChosen(current());
    if (has)
        for (const auto& showField : m_show)
            showField(found->second.content);
    refreshSentences();
}

void MomentsEditor::refreshSentences() {
    const auto course = courseOf(m_answers.record());
    std::vector<core::Notice> all;
    const core::Moment* before = nullptr;
    for (const CoursePoint& point : course) {
        const auto doubts = core::plausibility(point.moment.circulation);
        all.insert(all.end(), doubts.begin(), doubts.end());
        if (before) {
            const auto changed = core::changes(before->circulation, point.moment.circulation);
            all.insert(all.end(), changed.begin(), changed.end());
        }
        before = &point.moment;
    }
    for (core::Notice& notice : all)
        notice.text = withMomentWords(m_answers.record(), notice.text);
    m_sentences->setText(course.empty() ? tr("No moment is recorded yet. Add the moments at which images were taken, each with "
                                             "its left atrial pressure: readings are compared at one pressure only.")
                                        : paragraphs(all));
}

} // namespace gauge::app
