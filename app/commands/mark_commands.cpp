#include "app/commands/mark_commands.h"

#include "app/document/case_document.h"
#include "app/drawing/mark_roles.h"

#include <QCoreApplication>

namespace gauge::app {
namespace {

QString verb(const CaseDocument& document, core::MarkKind kind) {
    return document.record().marks.contains(kind) ? QCoreApplication::translate("Edit", "Move the mark: %1")
                                                  : QCoreApplication::translate("Edit", "Mark: %1");
}

core::SetMark placing(const CaseDocument& document, core::MarkKind kind, const core::PatientPoint& point) {
    core::Mark mark;
    mark.point = point;
    mark.revision = document.nextRevision();
    return {kind, mark};
}

} // namespace

PlaceMark::PlaceMark(CaseDocument& document, core::MarkKind kind, const core::PatientPoint& point)
    : EditCommand(document, verb(document, kind).arg(wordOf(roleOf(kind))), placing(document, kind, point)) {}

RemoveMark::RemoveMark(CaseDocument& document, core::MarkKind kind)
    : EditCommand(document, QCoreApplication::translate("Edit", "Remove the mark: %1").arg(wordOf(roleOf(kind))),
                  core::SetMark{kind, std::nullopt}) {}

} // namespace gauge::app
