#include "app/commands/projection_commands.h"

#include <QCoreApplication>
#include <algorithm>

namespace gauge::app {
namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Command)
};

template <class Change> core::ProjectionChoice changedProjection(const CaseDocument& document, const Change& change) {
    core::ProjectionChoice choice = ProjectionCommand::present(document);
    change(choice);
    return choice;
}

} // namespace

core::ProjectionChoice ProjectionCommand::present(const CaseDocument& document) {
    return document.record().projection ? document.record().projection->content : core::ProjectionChoice{};
}

SetCArmReach::SetCArmReach(CaseDocument& document, const core::CArmReach& reach)
    : ProjectionCommand(document, Words::tr("Set the reach of the C-arm"),
                        changedProjection(document, [&](core::ProjectionChoice& c) { c.reach = reach; })) {}

SetPatientTurn::SetPatientTurn(CaseDocument& document, const std::optional<core::PatientTurn>& turn)
    : ProjectionCommand(document, Words::tr("Say how the patient will lie"),
                        changedProjection(document, [&](core::ProjectionChoice& c) { c.turn = turn; })) {}

ChooseView::ChooseView(CaseDocument& document, const core::ChosenView& view)
    : ProjectionCommand(document, Words::tr("Choose a working view"),
                        changedProjection(document, [&](core::ProjectionChoice& c) {
                            const auto same = std::find_if(c.views.begin(), c.views.end(), [&](const core::ChosenView& v) {
                                return v.plane == view.plane && (v.angles == view.angles || (view.aim && v.aim == view.aim));
                            });
                            if (same == c.views.end())
                                c.views.push_back(view);
                            else
                                *same = view;
                        })) {}

DropView::DropView(CaseDocument& document, std::size_t place)
    : ProjectionCommand(document, Words::tr("Give up a working view"),
                        changedProjection(document, [&](core::ProjectionChoice& c) {
                            if (place < c.views.size()) c.views.erase(c.views.begin() + static_cast<std::ptrdiff_t>(place));
                        })) {}

} // namespace gauge::app
