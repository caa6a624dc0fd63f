#include "app/models/septum_model.h"

#include "app/commands/septum_commands.h"
#include "app/format/core_sentences.h"

#include <QTimer>

namespace gauge::app {

SeptumModel::SeptumModel(Session& session, QObject* parent) : QObject(parent), m_session(session) {
    connect(&session.document(), &CaseDocument::changed, this, [this](CaseDocument::Part part) {
        using Part = CaseDocument::Part;
        if (part == Part::Septum || part == Part::Marks || part == Part::Images || part == Part::Everything) forget();
    });
    connect(&session, &Session::measurementChanged, this, &SeptumModel::forget);
    connect(&session, &Session::imagesChanged, this, &SeptumModel::forget);
}

void SeptumModel::forget() {
    m_state.reset();
    emit changed();
}

const SeptumState& SeptumModel::state() const {
    if (!m_state) m_state = septumState(m_session.record(), m_session.measurement());
    return *m_state;
}

bool SeptumModel::choose(const Eigen::Vector2d& place, int gesture) {
    const SeptumState& now = state();
    if (!now.scene) return false;
    if (const auto inside = core::insideFossa(now.scene->face, place); !inside) {
        m_session.say(Message::Kind::Warning, sentence(inside.error().message));
        return false;
    }
    if (m_session.message().kind == Message::Kind::Warning) m_session.say(Message::Kind::Nothing, {});
    CaseDocument& document = m_session.document();
    const core::PatientPoint point = now.scene->face.frame.patientFromSection(place);
    return document.push(std::make_unique<ChooseCrossing>(document, point, gesture));
}

void SeptumModel::setLimits(const core::CrossingLimits& limits) {
    if (const auto valid = core::validate(limits); !valid) {
        m_session.say(Message::Kind::Warning, sentence(valid.error().message));
        emit changed(); // fields go back to what is recorded
        return;
    }
    CaseDocument& document = m_session.document();
    document.push(std::make_unique<SetCrossingLimits>(document, limits));
}

} // namespace gauge::app
