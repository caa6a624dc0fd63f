#include "app/panels/readings_editor.h"

#include "app/commands/course_commands.h"
#include "app/drawing/pressure_course_drawing.h"
#include "app/format/decision_words.h"
#include "app/format/quantity.h"
#include "app/format/terms.h"
#include "app/panels/editor_parts.h"
#include "app/panels/number_edit.h"

#include <QCheckBox>
#include <QFormLayout>
#include <QLineEdit>
#include <QVBoxLayout>
#include <memory>

namespace gauge::app {
namespace {

constexpr double kLeastMm = 1.0, kMostMm = 120.0; // those of an observations file
constexpr double kFirstMm = 20.0;                 // a reading has a value from the start; the person overwrites it

} // namespace

ReadingsEditor::ReadingsEditor(Answers& answers, QWidget* parent)
    : QWidget(parent), m_answers(answers), m_picker(new EntryPicker(tr("Typed reading"), tr("Type a reading in"), tr("Remove"))),
      m_fields(new QWidget), m_moment(new QComboBox), m_note(wrappedLabel({}, "soft")) {
    auto* form = new QFormLayout(m_fields);
    form->setContentsMargins(0, 0, 0, 0);
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    form->setFieldGrowthPolicy(QFormLayout::FieldsStayAtSizeHint);
    makeForm(*form);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(12, 10, 12, 10);
    layout->setSpacing(10);
    layout->addWidget(m_note);
    layout->addWidget(m_picker);
    layout->addWidget(m_fields);
    layout->addStretch(1);
    connect(m_picker, &EntryPicker::picked, this, &ReadingsEditor::refreshFields);
    connect(m_picker, &EntryPicker::addRequested, this, &ReadingsEditor::addReading);
    connect(m_picker, &EntryPicker::removeRequested, this, [this] {
        CaseDocument& document = m_answers.session().document();
        document.push(std::make_unique<RemoveTypedReading>(document, m_picker->current()));
    });
    connect(&answers, &Answers::changed, this, &ReadingsEditor::refresh);
    refresh();
}

void ReadingsEditor::makeForm(QFormLayout& form) {
    using R = core::TypedReading;
    const auto choice = [&]<class Value>(const QString& label, typename Choice<Value>::Items items,
                                         Value core::Observation::*member) {
        auto* box = new QComboBox;
        box->setAccessibleName(label);
        auto made = std::make_shared<Choice<Value>>(box, std::move(items), QString());
        form.addRow(label, box);
        connect(box, &QComboBox::activated, this, [this, made, member] {
            edit([&](R& r) { r.observation.*member = made->value().value_or(r.observation.*member); });
        });
        m_show.push_back([made, member](const R& r) { made->show(r.observation.*member); });
    };
    using Q = core::Quantity;
    Choice<Q>::Items quantities;
    for (const Q q : {Q::LandingZonePerimeterDerivedDiameter, Q::LandingZoneLongestDiameter, Q::LandingZoneAreaDerivedDiameter,
                      Q::OstiumPerimeterDerivedDiameter, Q::OstiumLongestDiameter, Q::Depth})
        quantities.push_back({q, quantityName(q)});
    choice.template operator()<Q>(tr("What"), quantities, &core::Observation::quantity);
    using M = core::Modality;
    Choice<M>::Items modalities;
    for (const M m : {M::Ct, M::Echo2d, M::Echo3d, M::Fluoroscopy})
        modalities.push_back({m, modalityName(m)});
    choice.template operator()<M>(tr("By"), modalities, &core::Observation::modality);
    using D = core::Derivation;
    Choice<D>::Items derivations;
    for (const D d : {D::Contour, D::EllipseFromAngles, D::LargestOfViews, D::SingleView})
        derivations.push_back({d, derivationName(d)});
    choice.template operator()<D>(tr("How"), derivations, &core::Observation::derivation);
    m_moment->setAccessibleName(tr("Moment"));
    m_moment->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    form.addRow(tr("Moment"), m_moment);
    connect(m_moment, &QComboBox::activated, this, [this](int at) {
        edit([&](R& r) { r.observation.state = m_moments[static_cast<std::size_t>(at)]; });
    });
    using P = core::Phase;
    Choice<P>::Items phases;
    for (const P p : {P::EndSystole, P::Other, P::Unknown})
        phases.push_back({p, phaseWords(p)});
    choice.template operator()<P>(tr("Phase"), phases, &core::Observation::phase);
    auto* value = new NumberEdit(kLeastMm, kMostMm, tr("Value, mm"));
    form.addRow(tr("Value, mm"), value);
    connect(value, &NumberEdit::edited, this, [this, value](std::optional<double> mm) {
        if (mm) edit([&](R& r) { r.observation.valueMm = *mm; });
        else refreshFields(); // a reading without a value is none: remove it instead
    });
    m_show.push_back([value](const R& r) { value->setValue(r.observation.valueMm); });
    auto* uncertainty = new NumberEdit(0.01, 20.0, tr("Standard uncertainty, mm"));
    form.addRow(tr("Standard uncertainty, mm"), uncertainty);
    connect(uncertainty, &NumberEdit::edited, this, [this](std::optional<double> mm) {
        edit([&](R& r) { r.observation.standardUncertaintyMm = mm; });
    });
    m_show.push_back([uncertainty](const R& r) { uncertainty->setValue(r.observation.standardUncertaintyMm); });
    auto* mixed = new QCheckBox(tr("Read over beats of different length"));
    form.addRow(mixed);
    connect(mixed, &QCheckBox::clicked, this, [this](bool on) { edit([&](R& r) { r.mixedBeats = on; }); });
    m_show.push_back([mixed](const R& r) { mixed->setChecked(r.mixedBeats); });
    auto* note = new QLineEdit;
    note->setAccessibleName(tr("Where it came from"));
    note->setMinimumWidth(24 * fontMetrics().averageCharWidth());
    form.addRow(tr("Where it came from"), note);
    connect(note, &QLineEdit::editingFinished, this,
            [this, note] { edit([&](R& r) { r.note = note->text().trimmed().toStdString(); }); });
    m_show.push_back([note](const R& r) { note->setText(QString::fromStdString(r.note)); });
}

void ReadingsEditor::addReading() {
    CaseDocument& document = m_answers.session().document();
    core::TypedReading reading;
    reading.observation.modality = core::Modality::Echo2d;
    reading.observation.derivation = core::Derivation::EllipseFromAngles;
    reading.observation.valueMm = kFirstMm;
    if (const auto course = courseOf(document.record()); !course.empty()) reading.observation.state = course.back().id;
    const std::string id = freeId<core::TypedReading>(document.record(), "r");
    m_picker->choose(id);
    document.push(std::make_unique<SetTypedReading>(document, id, reading));
}

void ReadingsEditor::choose(const QString& id) {
    m_picker->choose(id.toStdString());
    refresh();
}

void ReadingsEditor::edit(const std::function<void(core::TypedReading&)>& change) {
    CaseDocument& document = m_answers.session().document();
    const auto found = document.record().readings.find(m_picker->current());
    if (found == document.record().readings.end()) return;
    core::TypedReading reading = found->second.content;
    change(reading);
    document.push(std::make_unique<SetTypedReading>(document, m_picker->current(), reading));
}

void ReadingsEditor::refresh() {
    std::vector<std::pair<std::string, QString>> entries;
    for (const auto& [id, entry] : m_answers.record().readings) {
        const core::Observation& o = entry.content.observation;
        entries.push_back({id, tr("%1, %2: %3").arg(modalityName(o.modality), quantityName(o.quantity),
                                                    quantity(o.valueMm, Unit::Millimetre))});
    }
    m_picker->setEntries(entries);
    m_note->setText(entries.empty() ? tr("Numbers from elsewhere (a report, another machine) can be typed in; they are marked "
                                         "as such wherever they are shown.")
                                    : tr("Typed in, not measured here."));
    m_moments = {std::string()};
    m_moment->clear();
    m_moment->addItem(tr("none: pressure unknown"));
    for (const CoursePoint& point : courseOf(m_answers.record())) {
        const auto& mmHg = point.moment.circulation.meanPressureMmHg;
        m_moments.push_back(point.id);
        m_moment->addItem(tr("%1, %2").arg(stageName(point.moment.circulation.stage),
                                           mmHg ? pressureWords(*mmHg) : tr("pressure not measured")));
    }
    refreshFields();
}

void ReadingsEditor::refreshFields() {
    const auto found = m_answers.record().readings.find(m_picker->current());
    const bool has = found != m_answers.record().readings.end();
    m_fields->setVisible(has);
    if (!has) return;
    for (const auto& showField : m_show)
        showField(found->second.content);
    for (std::size_t i = 0; i < m_moments.size(); ++i)
        if (m_moments[i] == found->second.content.observation.state) m_moment->setCurrentIndex(static_cast<int>(i));
}

} // namespace gauge::app
