// Edits on the present version, each batch in a transaction of its own.
#include "app/library/case_row.h"

namespace gauge::app {

using core::ErrorCode;

core::Result<WriteOutcome> CaseLibrary::append(Editing& editing, const std::vector<StoredEdit>& edits) {
    WriteOutcome outcome;
    Editing after = editing;
    const auto done = write(tr("Cannot save the edits in the library"), [&]() -> core::Result<void> {
        auto row = wholeCase(editing.caseId, true);
        if (!row) return tl::make_unexpected(row.error());
        const auto held = holds(editing);
        if (!held) return tl::make_unexpected(held.error());
        if (!*held || row->version != editing.version) {
            auto answer = refused(*row);
            if (!answer) return tl::make_unexpected(answer.error());
            outcome = *answer;
            return {};
        }
        const auto version = readVersion(editing.caseId, editing.version);
        if (!version) return tl::make_unexpected(version.error());
        if (!*version || (*version)->info.damaged)
            return libraryFailure(ErrorCode::FileDamaged, tr("the version that they follow is damaged. Save the case as a file."));
        const qint64 first = (*version)->info.lastSequence;
        QString previous = row->editCount == 0 ? (*version)->checksum : row->lastEdit;
        const auto time = now();
        if (!time) return tl::make_unexpected(time.error());
        for (const StoredEdit& edit : edits) {
            const qint64 last = first + row->editCount;
            if (edit.sequence <= last) {
                const auto there = m_database->rows(
                    QStringLiteral("SELECT content FROM edits WHERE case_id = ? AND base = ? AND sequence = ?"),
                    {editing.caseId, editing.version, edit.sequence});
                if (!there) return tl::make_unexpected(there.error());
                if (there->empty() || there->front().front().toByteArray() != edit.content)
                    return libraryFailure(ErrorCode::InvalidArgument,
                                          tr("another edit %1 is stored already. Save the case as a file.").arg(edit.sequence));
                continue;
            }
            if (edit.sequence != last + 1)
                return libraryFailure(ErrorCode::InvalidArgument,
                                      tr("edit %1 does not follow edit %2. Save the case as a file.").arg(edit.sequence).arg(last));
            const QString sum = checksumOf(editing.caseId, editing.version, edit, *time, previous);
            const auto put = m_database->change(
                QStringLiteral("INSERT INTO edits (case_id, base, sequence, saved_at, content, previous, sha256) "
                               "VALUES (?, ?, ?, ?, ?, ?, ?)"),
                {editing.caseId, editing.version, edit.sequence, *time, edit.content, previous, sum});
            if (!put) return tl::make_unexpected(put.error());
            previous = row->lastEdit = sum;
            ++row->editCount;
        }
        row->changedAt = *time;
        after.lastSequence = first + row->editCount;
        outcome = {WriteOutcome::Kind::Saved, row->version, 0, std::nullopt};
        return updateCase(std::move(*row));
    });
    if (!done) return tl::make_unexpected(done.error());
    editing = after;
    return outcome;
}

} // namespace gauge::app
