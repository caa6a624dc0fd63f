#include "app/document/case_document.h"

#include "app/commands/edit_command.h"
#include "app/settings/settings.h"

#include <QDateTime>

namespace gauge::app {
namespace {

CaseDocument::Part partOf(const core::Edit& edit) {
    using Part = CaseDocument::Part;
    constexpr Part parts[] = {Part::Images,   Part::Marks,    Part::Ostium, Part::Landing,   Part::Values,  Part::Evidence,
                              Part::Moments,  Part::Readings, Part::Drawings, Part::Contours, Part::Scales, Part::Landmarks,
                              Part::Release,  Part::Stasis,   Part::Sizing, Part::Scores,    Part::Patient, Part::Decision};
    static_assert(std::size(parts) == std::variant_size_v<core::Edit>);
    return parts[edit.index()];
}

} // namespace

CaseDocument::CaseDocument(QObject* parent) : QObject(parent) {}

bool CaseDocument::push(std::unique_ptr<EditCommand> command) {
    if (core::changesNothing(m_record, command->edit())) return false;
    m_undo.push(command.release()); // the stack owns it and calls redo()
    return true;
}

core::Edit CaseDocument::apply(const core::Edit& edit) {
    core::Edit inverse = core::apply(m_record, edit);
    m_journal.append(edit, currentAuthor().toStdString(), currentTime().toStdString());
    emit changed(partOf(edit));
    return inverse;
}

void CaseDocument::clear() {
    m_undo.clear();
    m_record = {};
    m_journal = {};
    emit changed(Part::Everything);
}

QString currentAuthor() {
    if (const QString named = Settings().author().trimmed(); !named.isEmpty()) return named;
    const QString user = qEnvironmentVariable("USER");
    return user.isEmpty() ? qEnvironmentVariable("USERNAME") : user;
}

QString currentTime() {
    const QDateTime now = QDateTime::currentDateTime();
    return now.toOffsetFromUtc(now.offsetFromUtc()).toString(Qt::ISODate);
}

} // namespace gauge::app
