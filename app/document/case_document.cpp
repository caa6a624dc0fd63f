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
                              Part::Release,  Part::Stasis,   Part::Sizing, Part::Scores,    Part::Patient, Part::Decision,
                              Part::Septum,   Part::Septum,   Part::Projection};
    static_assert(std::size(parts) == std::variant_size_v<core::Edit>);
    return parts[edit.index()];
}

} // namespace

CaseDocument::CaseDocument(QObject* parent) : QObject(parent) {}

CaseDocument::~CaseDocument() {
    m_undo.disconnect();
    leave();
}

bool CaseDocument::push(std::unique_ptr<EditCommand> command) {
    if (core::changesNothing(m_record, command->edit())) return false;
    if (isReadOnly()) {
        emit refused(m_readOnlyReason);
        return false;
    }
    const bool isFirstWork = !m_hasWork;
    m_hasWork = m_mustSave = true;
    if (!m_log) startLoneLog(content());
    m_undo.push(command.release()); // the stack owns it and calls redo()
    if (isFirstWork) emit fileChanged();
    return true;
}

core::Edit CaseDocument::apply(const core::Edit& edit) {
    if (isReadOnly()) return edit; // what follows from images or marks waits until somebody may write
    core::Edit inverse = core::apply(m_record, edit);
    m_journal.append(edit, currentAuthor().toStdString(), currentTime().toStdString());
    if (m_log) m_log->append(m_journal.entries().back());
    emit changed(partOf(edit));
    return inverse;
}

void CaseDocument::clear() {
    leave();
    show({});
    emit fileChanged();
}

core::CaseFile CaseDocument::content() const {
    return {m_record, m_journal, m_imagesFolder, m_unknown};
}

void CaseDocument::show(core::CaseFile file) {
    m_undo.clear();
    m_record = std::move(file.record);
    m_journal = std::move(file.journal);
    m_imagesFolder = std::move(file.imagesFolder);
    m_unknown = std::move(file.unknown);
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
