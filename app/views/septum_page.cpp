#include "app/views/septum_page.h"

#include "app/commands/septum_commands.h"
#include "app/format/core_sentences.h"
#include "app/format/quantity.h"
#include "app/format/rich_text.h"
#include "app/format/terms.h"
#include "app/panels/editor_parts.h"
#include "app/panels/number_edit.h"
#include "app/panels/septum_mark_bar.h"
#include "app/panels/wrapped_check.h"
#include "app/views/beside.h"
#include "app/views/septal_face_view.h"
#include "app/views/sheath_view.h"
#include "app/views/wrapping_row.h"
#include "core/record/septum_values.h"

#include <QAction>
#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QScrollArea>
#include <QSplitter>
#include <QTextDocument>
#include <QToolButton>
#include <QVBoxLayout>

namespace gauge::app {
namespace {

QString adviceWords(core::CrossingAdvice advice) {
    switch (advice) {
    case core::CrossingAdvice::SameCrossing:
        return SeptumPage::tr("Same crossing");
    case core::CrossingAdvice::SameWithSteerable:
        return SeptumPage::tr("Same crossing, with a steerable sheath");
    case core::CrossingAdvice::SecondLowerCrossing:
        return SeptumPage::tr("Second, lower crossing");
    case core::CrossingAdvice::ClosureLast:
        return SeptumPage::tr("Closure last");
    case core::CrossingAdvice::ClosureOnly:
        return SeptumPage::tr("Closure alone");
    case core::CrossingAdvice::Unanswered:
        return SeptumPage::tr("No answer yet");
    }
    return {};
}

QString boldLine(const QString& text) {
    return QStringLiteral("<p><b>%1</b></p>").arg(text.toHtmlEscaped());
}

} // namespace

SeptumPage::SeptumPage(Session& session, ViewState& state, QWidget* parent)
    : QWidget(parent), m_session(session), m_state(state), m_model(session), m_face(new SeptalFaceView(m_model)),
      m_sheath(new SheathView(m_model, state)), m_side(new QComboBox), m_repair(new WrappedCheck(tr("The same session repairs the mitral valve"))),
      m_steerable(new WrappedCheck(tr("A steerable sheath is at hand"))), m_datum(new QComboBox), m_legend(wrappedLabel({}, "soft")),
      m_words(wrappedLabel({})) {
    makeActions();
    auto* marks = new SeptumMarkBar(session, state, this);
    for (QAction* action : marks->markActions())
        m_actions << action;
    addActions(m_actions);

    auto* buttons = new WrappingRow;
    buttons->setContentsMargins(10, 0, 10, 4);
    m_side->addItems({tr("Seen from the left atrium"), tr("Seen from the right atrium")});
    m_side->setAccessibleName(tr("Side from which the septum is seen"));
    m_side->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    buttons->addWidget(m_side);
    for (QAction* action : {m_take, m_giveUp}) {
        auto* button = new QToolButton;
        button->setDefaultAction(action);
        buttons->addWidget(button);
    }
    connect(m_side, &QComboBox::activated, this, [this](int row) { m_face->setFromRight(row == 1); });

    auto* faceSide = new QWidget;
    auto* faceLayout = new QVBoxLayout(faceSide);
    faceLayout->setContentsMargins(0, 0, 0, 0);
    faceLayout->setSpacing(0);
    faceLayout->addWidget(m_face, 1);
    m_legend->setContentsMargins(12, 4, 12, 4);
    faceLayout->addWidget(m_legend);

    m_words->setTextFormat(Qt::RichText);
    m_words->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    m_words->setContentsMargins(12, 4, 12, 8);
    auto* down = new QSplitter(Qt::Vertical);
    down->setChildrenCollapsible(false);
    down->addWidget(beside(faceSide, m_sheath, 3, 2));
    down->addWidget(beside(scrolled(m_words), scrolled(makeLimits()), 1, 1));
    down->setStretchFactor(0, 3);
    down->setStretchFactor(1, 2);
    down->setSizes({430, 260});

    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addWidget(marks);
    layout->addLayout(buttons);
    layout->addWidget(down, 1);
    setFocusProxy(m_face);

    connect(m_face, &SeptalFaceView::hovered, m_sheath, &SheathView::setPlace);
    connect(&m_model, &SeptumModel::changed, this, &SeptumPage::refresh);
    connect(&session.document(), &CaseDocument::changed, this, [this](CaseDocument::Part part) {
        if (part == CaseDocument::Part::Values || part == CaseDocument::Part::Everything) refresh();
    });
    refresh();
}

void SeptumPage::makeActions() {
    m_take = new QAction(tr("Cross where there is most room"), this);
    m_take->setToolTip(tr("Choose the middle of the hatched region as the crossing (key Shift+M)"));
    m_take->setShortcut(Qt::SHIFT | Qt::Key_M);
    m_take->setShortcutContext(Qt::WidgetWithChildrenShortcut);
    connect(m_take, &QAction::triggered, this, [this] {
        const SeptumState& state = m_model.state();
        if (state.answer && state.answer->place) m_model.choose(*state.answer->place, 0);
    });
    m_giveUp = new QAction(tr("Give the crossing up"), this);
    m_giveUp->setToolTip(tr("Take the chosen crossing away"));
    connect(m_giveUp, &QAction::triggered, this, [this] {
        CaseDocument& document = m_session.document();
        document.push(std::make_unique<ChooseCrossing>(document, std::nullopt));
    });
    m_turn = new QAction(tr("Look from the other atrium"), this);
    m_turn->setToolTip(tr("See the septum from the left or from the right atrium (key Shift+X)"));
    m_turn->setShortcut(Qt::SHIFT | Qt::Key_X);
    m_turn->setShortcutContext(Qt::WidgetWithChildrenShortcut);
    connect(m_turn, &QAction::triggered, this, [this] {
        m_side->setCurrentIndex(1 - m_side->currentIndex());
        m_face->setFromRight(m_side->currentIndex() == 1);
    });
    m_actions = {m_take, m_giveUp, m_turn};
}

void SeptumPage::addLimit(QFormLayout& form, const QString& label, double least, double most, double core::CrossingLimits::*member) {
    auto* field = new NumberEdit(least, most, label);
    form.addRow(wrappedLabel(label), field);
    connect(field, &NumberEdit::edited, this, [this, member](std::optional<double> value) {
        edit([&](core::CrossingLimits& limits) { limits.*member = value.value_or(core::CrossingLimits{}.*member); });
    });
    m_show.push_back([field, member](const core::CrossingLimits& limits) { field->setValue(limits.*member); });
}

QWidget* SeptumPage::makeLimits() {
    auto* fields = new QWidget;
    auto* form = new QFormLayout(fields);
    form->setContentsMargins(12, 8, 12, 8);
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    form->setFieldGrowthPolicy(QFormLayout::FieldsStayAtSizeHint);
    form->addRow(m_repair);
    m_datum->addItem(tr("over the annulus"));
    m_datum->addItem(tr("over the coaptation"));
    m_datum->setAccessibleName(tr("Datum of the height"));
    m_datum->setToolTip(tr("From where the height band of the repair counts. Published heights count from the annulus; DICOM's own height "
                           "(131130) counts from the leaflets, parallel to the septum."));
    m_datum->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    form->addRow(wrappedLabel(tr("Height counts")), m_datum);
    addLimit(*form, tr("Height from, mm"), 0.0, 100.0, &core::CrossingLimits::lowestMm);
    addLimit(*form, tr("Height to, mm"), 0.0, 100.0, &core::CrossingLimits::highestMm);
    addLimit(*form, tr("Angle at most, degrees"), 1.0, 90.0, &core::CrossingLimits::mostAngleDeg);
    form->addRow(m_steerable);
    const auto steering = [&](const QString& label, double least, double most, double core::Steering::*member) {
        auto* field = new NumberEdit(least, most, label);
        form->addRow(wrappedLabel(label), field);
        connect(field, &NumberEdit::edited, this, [this, member](std::optional<double> value) {
            edit([&](core::CrossingLimits& limits) { limits.steering.*member = value.value_or(core::Steering{}.*member); });
        });
        m_show.push_back([field, member](const core::CrossingLimits& limits) { field->setValue(limits.steering.*member); });
    };
    steering(tr("Radius of its bend, mm"), 5.0, 200.0, &core::Steering::radiusMm);
    steering(tr("Leaves the septum within, degrees"), 0.0, 90.0, &core::Steering::mostDepartureDeg);
    form->addRow(wrappedLabel(tr("Defaults: 40 mm and more over the annulus was read, the range 35 to 45 mm is from memory; 30 degrees was read. "
                                 "Radius and departure of the sheath are assumptions: enter those of the sheath in use."),
                              "soft"));
    connect(m_repair, &WrappedCheck::clicked, this, [this](bool on) { edit([on](core::CrossingLimits& l) { l.repairPlanned = on; }); });
    connect(m_steerable, &WrappedCheck::clicked, this, [this](bool on) { edit([on](core::CrossingLimits& l) { l.steerableAtHand = on; }); });
    connect(m_datum, &QComboBox::activated, this, [this](int row) {
        edit([row](core::CrossingLimits& l) { l.datum = row == 0 ? core::HeightDatum::Annulus : core::HeightDatum::Coaptation; });
    });
    return fields;
}

void SeptumPage::edit(const std::function<void(core::CrossingLimits&)>& change) {
    core::CrossingLimits limits = core::septumPlan(m_session.record()).limits;
    change(limits);
    m_model.setLimits(limits);
}

QString SeptumPage::answerWords() const {
    const SeptumState& state = m_model.state();
    if (state.problem) return paragraph(sentence(state.problem->message));
    if (!state.answer) return {};
    QString words = boldLine(adviceWords(state.answer->advice)) + paragraph(sentence(state.answer->sentence));
    for (const core::Notice& notice : state.answer->notices)
        words += paragraph(sentence(notice));
    return words;
}

QString SeptumPage::crossingWords() const {
    const SeptumState& state = m_model.state();
    if (!state.scene) return {};
    if (!state.crossing)
        return paragraph(tr("No crossing is chosen: click on the face, or take the place with most room."));
    QString words = boldLine(tr("The chosen crossing")) +
                    paragraph(sentence(core::describeCrossing(*state.scene, *state.crossing, state.plan.limits)));
    QString rows;
    for (const core::RecordedValue& value : m_session.record().values) {
        if (value.group != core::kSeptumValues) continue;
        const QString stale = core::isStale(m_session.record(), value) ? tr(" (being computed again)") : QString();
        rows += QStringLiteral("<tr><td style='padding-right:14px'>%1</td><td align='right'><b>%2</b>%3</td></tr>")
                    .arg(metricName(value.id).toHtmlEscaped(), estimate(value.estimate, unitOf(value.unit)), stale.toHtmlEscaped());
    }
    if (!rows.isEmpty()) words += QStringLiteral("<table>%1</table>").arg(rows);
    if (const auto bent = state.steered(state.crossing->place); bent && !*bent) words += paragraph(sentence(bent->error().message));
    return words;
}

void SeptumPage::refresh() {
    const SeptumState& state = m_model.state();
    const core::CrossingLimits& limits = state.plan.limits;
    m_repair->setChecked(limits.repairPlanned);
    m_steerable->setChecked(limits.steerableAtHand);
    m_datum->setCurrentIndex(limits.datum == core::HeightDatum::Annulus ? 0 : 1);
    for (const auto& show : m_show)
        show(limits);
    m_take->setEnabled(state.answer && state.answer->place);
    m_giveUp->setEnabled(state.plan.crossing.has_value());
    m_legend->setText(state.scene ? faceLegend(state) : QString());
    m_legend->setVisible(bool(state.scene));
    m_words->setText(answerWords() + crossingWords());
}

QString SeptumPage::text() const {
    QTextDocument document;
    document.setHtml(m_words->text());
    return document.toPlainText();
}

} // namespace gauge::app
