#include "app/commands/landing_commands.h"

#include "app/document/case_document.h"

#include <QCoreApplication>
#include <algorithm>
#include <iterator>
#include <utility>

namespace gauge::app {
namespace {

constexpr int kFirstPlane = 1, kSecondPlane = 2, kPlug = 3; // ids of commands that may merge

core::LandingPlanes moved(const CaseDocument& document, double depthMm) {
    core::LandingPlanes landing = document.record().landing;
    if (landing.depthsMm.empty()) landing.depthsMm.push_back(depthMm);
    landing.depthsMm.front() = depthMm;
    return landing;
}

core::LandingPlanes tilted(const CaseDocument& document, const std::optional<core::PatientVector>& normal) {
    core::LandingPlanes landing = document.record().landing;
    landing.normal = normal ? std::optional(normal->normalized()) : std::nullopt;
    return landing;
}

core::LandingPlanes withSecond(const CaseDocument& document, std::optional<double> depthMm) {
    core::LandingPlanes landing = document.record().landing;
    if (landing.depthsMm.empty()) return landing; // nothing that it could follow
    landing.depthsMm.erase(landing.depthsMm.begin() + 1, landing.depthsMm.begin() + std::min<std::ptrdiff_t>(2, std::ssize(landing.depthsMm)));
    if (depthMm) landing.depthsMm.insert(landing.depthsMm.begin() + 1, *depthMm);
    return landing;
}

core::LandingPlanes plugged(const CaseDocument& document, std::optional<double> beyondRidgeMm) {
    core::LandingPlanes landing = document.record().landing;
    landing.plugMm = beyondRidgeMm;
    return landing;
}

core::SetLanding setting(const CaseDocument& document, core::LandingPlanes landing) {
    landing.revision = document.nextRevision();
    return {std::move(landing)};
}

} // namespace

LandingCommand::LandingCommand(CaseDocument& document, const QString& text, core::LandingPlanes landing, int id, int gesture)
    : EditCommand(document, text, setting(document, std::move(landing))), m_id(id), m_gesture(gesture) {}

bool LandingCommand::mergeWith(const QUndoCommand* other) {
    const auto* next = static_cast<const LandingCommand*>(other); // the same id()
    if (m_gesture == 0 || next->m_gesture != m_gesture) return false;
    replaceEdit(next->edit());
    return true;
}

MoveLanding::MoveLanding(CaseDocument& document, double depthMm, int gesture)
    : LandingCommand(document, QCoreApplication::translate("Edit", "Move the landing zone"), moved(document, depthMm), kFirstPlane,
                     gesture) {}

TiltLanding::TiltLanding(CaseDocument& document, const core::PatientVector& normal, int gesture)
    : LandingCommand(document, QCoreApplication::translate("Commands", "Tilt the landing plane"), tilted(document, normal),
                     kFirstPlane, gesture) {}

SquareLanding::SquareLanding(CaseDocument& document)
    : LandingCommand(document, QCoreApplication::translate("Commands", "Set the landing plane square to the axis"),
                     tilted(document, std::nullopt), kFirstPlane, 0) {}

SetSecondLanding::SetSecondLanding(CaseDocument& document, std::optional<double> depthMm, int gesture)
    : LandingCommand(document, QCoreApplication::translate("Commands", "Set the second landing plane"), withSecond(document, depthMm),
                     kSecondPlane, gesture) {}

SetPlugPlane::SetPlugPlane(CaseDocument& document, std::optional<double> beyondRidgeMm, int gesture)
    : LandingCommand(document, QCoreApplication::translate("Commands", "Set the plug plane"), plugged(document, beyondRidgeMm),
                     kPlug, gesture) {}

} // namespace gauge::app
