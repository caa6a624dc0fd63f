#include "app/commands/mark_commands.h"

#include "app/document/case_document.h"
#include "app/drawing/mark_roles.h"

namespace gauge::app {
namespace {

QString verb(const CaseDocument& document, core::MarkKind kind) {
    return document.record().marks.contains(kind) ? QStringLiteral("Move the mark: ")
                                                  : QStringLiteral("Mark: ");
}

core::SetMark placing(const CaseDocument& document, core::MarkKind kind, const core::PatientPoint& point) {
    core::Mark mark;
    mark.point = point;
    mark.revision = document.nextRevision();
    return {kind, mark};
}

} // namespace

PlaceMark::PlaceMark(CaseDocument& document, core::MarkKind kind, const core::PatientPoint& point)
    : EditCommand(document, verb(document, kind) + wordOf(roleOf(kind)), placing(document, kind, point)) {}

RemoveMark::RemoveMark(CaseDocument& document, core::MarkKind kind)
    : EditCommand(document, QStringLiteral("Remove the mark: ") + wordOf(roleOf(kind)),
                  core::SetMark{kind, std::nullopt}) {}

} // namespace gauge::app
