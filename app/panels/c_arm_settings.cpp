#include "app/panels/c_arm_settings.h"

#include "app/commands/projection_commands.h"
#include "app/format/core_sentences.h"
#include "app/format/decision_words.h"
#include "app/format/projection_words.h"
#include "app/panels/editor_parts.h"
#include "app/panels/number_edit.h"
#include "app/panels/wrapped_check.h"
#include "app/settings/settings.h"
#include "app/views/wrapping_row.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

namespace gauge::app {
namespace {

constexpr core::CArmReach kUsualReach;
constexpr core::CArmDistances kUsualDistances;

} // namespace

std::optional<core::CArmDistances> usualDistances() {
    const Settings settings;
    const core::CArmDistances distances{settings.sourceToIsocentreMm(), settings.sourceToDetectorMm()};
    return core::validate(distances) ? std::optional(distances) : std::nullopt;
}

CArmSettings::CArmSettings(Session& session, ViewPlanner& planner, QWidget* parent)
    : QWidget(parent), m_session(session), m_planner(planner), m_turned(new WrappedCheck(tr("The patient will lie otherwise than at CT; the C-arm has to be turned on by"), this)),
      m_lying(wrappedLabel(QString(), "soft")), m_notes(wrappedLabel(QString(), "soft")) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 8, 12, 8);
    const auto addRow = [&](const QString& heading) {
        column->addWidget(wrappedLabel(heading, "heading"));
        auto* row = new WrappingRow;
        row->setSpacing(12);
        return row;
    };
    const auto memory = [](double usual) { return tr("Unless set: %1, from memory, without a source").arg(plainNumber(usual)); };
    const auto assumed = [](double usual) { return tr("Unless set: %1, an assumption without a source").arg(plainNumber(usual)); };

    WrappingRow* reach = addRow(tr("Reach of the C-arm, degrees"));
    m_rao = addNumber(*reach, 0, 180, tr("RAO up to"), memory(kUsualReach.mostRaoDeg), &CArmSettings::setReach);
    m_lao = addNumber(*reach, 0, 180, tr("LAO up to"), memory(kUsualReach.mostLaoDeg), &CArmSettings::setReach);
    m_cra = addNumber(*reach, 0, 90, tr("CRA up to"), memory(kUsualReach.mostCraDeg), &CArmSettings::setReach);
    m_cau = addNumber(*reach, 0, 90, tr("CAU up to"), memory(kUsualReach.mostCauDeg), &CArmSettings::setReach);
    column->addLayout(reach);
    column->addWidget(wrappedLabel(tr("RAO and LAO 60°, CRA and CAU 40° are from memory, without a source: set what your room allows."), "soft"));

    WrappingRow* turn = addRow(tr("The patient"));
    column->addWidget(m_lying);
    m_turned->setToolTip(tr("By how much the C-arm has to be turned on to see the same as at CT; 0 and 0: as if on the back"));
    connect(m_turned, &WrappedCheck::clicked, this, &CArmSettings::setTurn);
    column->addWidget(m_turned);
    m_primary = addNumber(*turn, -core::kMostTurnDeg, core::kMostTurnDeg, tr("LAO + / RAO −"), {}, &CArmSettings::setTurn);
    m_secondary = addNumber(*turn, -core::kMostTurnDeg, core::kMostTurnDeg, tr("CRA + / CAU −"), {}, &CArmSettings::setTurn);
    column->addLayout(turn);

    WrappingRow* distances = addRow(tr("The C-arm's distances from the source, mm"));
    m_isocentre = addNumber(*distances, core::kLeastSourceDistanceMm, core::kMostSourceDistanceMm, tr("to the isocentre"),
                            assumed(kUsualDistances.sourceToIsocentreMm), &CArmSettings::setDistances);
    m_detector = addNumber(*distances, core::kLeastSourceDistanceMm, core::kMostSourceDistanceMm, tr("to the detector"),
                           assumed(kUsualDistances.sourceToDetectorMm), &CArmSettings::setDistances);
    column->addLayout(distances);
    column->addWidget(wrappedLabel(tr("For the simulated radiograph, in every case; X-ray frames that tell their own keep them. Empty: %1 and %2 mm, assumptions without a source.")
                                       .arg(plainNumber(kUsualDistances.sourceToIsocentreMm), plainNumber(kUsualDistances.sourceToDetectorMm)),
                                   "soft"));
    column->addWidget(m_notes);
    column->addStretch(1);
}

NumberEdit* CArmSettings::addNumber(WrappingRow& row, double least, double most, const QString& words, const QString& basis, void (CArmSettings::*slot)()) {
    auto* pair = new QWidget(this);
    auto* edit = new NumberEdit(least, most, words, pair);
    if (!basis.isEmpty()) edit->setToolTip(edit->toolTip() + QLatin1Char('\n') + basis);
    auto* label = new QLabel(words, pair);
    label->setBuddy(edit);
    auto* line = new QHBoxLayout(pair);
    line->setContentsMargins(0, 0, 0, 0);
    line->addWidget(label);
    line->addWidget(edit);
    row.addWidget(pair);
    connect(edit, &NumberEdit::edited, this, slot);
    return edit;
}

void CArmSettings::refresh(std::vector<core::Notice> notices) {
    m_said = std::move(notices);
    const core::ProjectionChoice choice = ProjectionCommand::present(m_session.document());
    m_rao->setValue(choice.reach.mostRaoDeg);
    m_lao->setValue(choice.reach.mostLaoDeg);
    m_cra->setValue(choice.reach.mostCraDeg);
    m_cau->setValue(choice.reach.mostCauDeg);
    m_lying->setText(tr("At CT: %1.").arg(lyingWords(m_planner.patientPosition())));
    m_turned->setChecked(choice.turn.has_value());
    m_primary->setEnabled(choice.turn.has_value());
    m_secondary->setEnabled(choice.turn.has_value());
    m_primary->setValue(choice.turn ? std::optional(choice.turn->primaryDeg) : std::nullopt);
    m_secondary->setValue(choice.turn ? std::optional(choice.turn->secondaryDeg) : std::nullopt);
    const auto distances = usualDistances();
    m_isocentre->setValue(distances ? std::optional(distances->sourceToIsocentreMm) : std::nullopt);
    m_detector->setValue(distances ? std::optional(distances->sourceToDetectorMm) : std::nullopt);
    m_notes->setText(paragraphs(m_said));
    m_notes->setVisible(!m_said.empty());
}

void CArmSettings::setReach() {
    const core::CArmReach reach{m_rao->value().value_or(kUsualReach.mostRaoDeg), m_lao->value().value_or(kUsualReach.mostLaoDeg),
                                m_cra->value().value_or(kUsualReach.mostCraDeg), m_cau->value().value_or(kUsualReach.mostCauDeg)};
    if (const auto valid = core::validate(reach); !valid) {
        m_session.say(Message::Kind::Warning, sentence(valid.error().message));
        refresh(m_said);
        return;
    }
    m_session.document().push(std::make_unique<SetCArmReach>(m_session.document(), reach));
}

void CArmSettings::setTurn() {
    std::optional<core::PatientTurn> turn;
    if (m_turned->isChecked()) turn = core::PatientTurn{m_primary->value().value_or(0.0), m_secondary->value().value_or(0.0)};
    m_session.document().push(std::make_unique<SetPatientTurn>(m_session.document(), turn));
}

void CArmSettings::setDistances() {
    std::optional<core::CArmDistances> distances;
    if (m_isocentre->value() || m_detector->value())
        distances = core::CArmDistances{m_isocentre->value().value_or(kUsualDistances.sourceToIsocentreMm),
                                        m_detector->value().value_or(kUsualDistances.sourceToDetectorMm)};
    if (distances == core::CArmDistances{}) distances.reset(); // what is assumed anyway
    if (distances)
        if (const auto valid = core::validate(*distances); !valid) {
            m_session.say(Message::Kind::Warning, sentence(valid.error().message));
            refresh(m_said);
            return;
        }
    Settings settings;
    settings.setSourceToIsocentreMm(distances ? distances->sourceToIsocentreMm : 0.0);
    settings.setSourceToDetectorMm(distances ? distances->sourceToDetectorMm : 0.0);
    refresh(m_said);
    emit distancesChanged(distances);
}

} // namespace gauge::app
