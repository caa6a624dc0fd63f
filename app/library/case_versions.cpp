// Versions: read, saved, restored.
#include "app/library/case_row.h"

#include <QUuid>

namespace gauge::app {

using core::ErrorCode;

core::Result<StoredCase> CaseLibrary::readStored(const CaseRow& row, qint64 number) {
    auto version = readVersion(row.id, number);
    if (!version) return tl::make_unexpected(version.error());
    if (!*version) return libraryFailure(ErrorCode::NotFound, tr("version %1 is not kept any more.").arg(number));
    QString damage;
    Tail tail;
    if ((*version)->info.damaged) {
        damage = tr("version %1 does not agree with its checksum").arg(number);
    } else {
        auto found = readTail(row.id, (*version)->info);
        if (!found) return tl::make_unexpected(found.error());
        tail = std::move(*found);
        damage = tail.damage;
        const bool present = number == row.version;
        if (damage.isEmpty() && present &&
            (static_cast<qint64>(tail.edits.size()) != row.editCount || tail.last != row.lastEdit))
            damage = tr("edits after number %1 are missing")
                         .arg((*version)->info.lastSequence + static_cast<qint64>(tail.edits.size()));
    }
    StoredCase stored{row.id, row.facts, (*version)->info, std::move((*version)->content), std::move(tail.edits), damage};
    if (stored.version.damaged) stored.content.clear(); // never handed out
    return stored;
}

core::Result<StoredCase> CaseLibrary::open(const QString& caseId) {
    const QString attempted = tr("Cannot open the case");
    const auto row = wholeCase(caseId, false);
    if (!row) return told(attempted, row.error());
    auto stored = openVersion(caseId, row->version);
    if (!stored) return told(attempted, stored.error().cause ? *stored.error().cause : stored.error());
    return stored;
}

core::Result<StoredCase> CaseLibrary::openVersion(const QString& caseId, qint64 number) {
    const QString attempted = tr("Cannot open version %1 of the case").arg(number);
    auto row = readCase(caseId, false);
    if (!row) return told(attempted, row.error());
    if (!*row)
        return told(attempted, core::Error{ErrorCode::NotFound, tr("it is not in the library any more.").toStdString(), {}, {}});
    if (!(*row)->isWhole()) (*row)->facts = {}; // not to be trusted
    auto stored = readStored(**row, number);
    if (!stored) return told(attempted, stored.error());
    if (stored->damage.isEmpty()) return stored;
    const auto whole = newestWhole(caseId);
    std::vector<core::Fact> facts;
    if (whole && *whole) facts.push_back({"whole-version", std::to_string(**whole)});
    const QString advice = facts.empty() ? tr("No whole version is left; bring back a copy.")
                                         : tr("Version %1 is whole: open that one.").arg(**whole);
    return told(attempted, core::Error{ErrorCode::FileDamaged,
                                       tr("it is damaged in the library: %1. %2").arg(stored->damage, advice).toStdString(),
                                       facts, {}});
}

core::Result<StoredCase> CaseLibrary::openAsFarAsWhole(const QString& caseId) {
    const QString attempted = tr("Cannot open what is whole of the case");
    auto row = readCase(caseId, false);
    if (!row) return told(attempted, row.error());
    const auto whole = newestWhole(caseId);
    if (!whole) return told(attempted, whole.error());
    if (!*whole)
        return told(attempted, core::Error{ErrorCode::FileDamaged,
                                           tr("no whole version of it is left. Bring back a copy of the library.").toStdString(),
                                           {}, {}});
    QStringList missing;
    CaseRow known;
    known.id = caseId;
    if (*row && (*row)->isWhole())
        known = **row;
    else
        missing << tr("what the library notes about the case is damaged, so edits at the end may be missing");
    if (!known.version) known.version = -1;
    auto stored = readStored(known, **whole);
    if (!stored) return told(attempted, stored.error());
    if (!stored->damage.isEmpty()) missing << stored->damage;
    if (!m_damage.isEmpty()) missing << tr("the library's file itself is damaged");
    if (known.version > **whole) missing << tr("version %1 is damaged; this is version %2").arg(known.version).arg(**whole);
    stored->damage = missing.join(QLatin1String("; "));
    return stored;
}

core::Result<Editing> CaseLibrary::create(const CaseFacts& facts, const QByteArray& content, qint64 lastSequence) {
    Editing editing{QUuid::createUuid().toString(QUuid::WithoutBraces), QUuid::createUuid().toString(QUuid::WithoutBraces), 1,
                    lastSequence};
    const auto done = write(tr("Cannot put the case into the library at %1").arg(place().shown()), [&]() -> core::Result<void> {
        const auto time = now();
        if (!time) return tl::make_unexpected(time.error());
        CaseRow row;
        row.id = editing.caseId;
        row.facts = facts;
        row.createdAt = row.changedAt = *time;
        row.version = 1;
        if (auto made = insertCase(row); !made) return made;
        if (auto put = insertVersion(row.id, {1, false, 0, lastSequence, *time, m_person, {}, 0, false}, content); !put) return put;
        return writeLease(row.id, editing.token);
    });
    if (!done) return tl::make_unexpected(done.error());
    m_mine.insert(editing.caseId, editing.token);
    return editing;
}

core::Result<WriteOutcome> CaseLibrary::save(Editing& editing, const CaseFacts& facts, const QByteArray& content,
                                             qint64 lastSequence) {
    WriteOutcome outcome;
    Editing after = editing;
    const auto done = write(tr("Cannot save the case in the library"), [&]() -> core::Result<void> {
        auto row = wholeCase(editing.caseId, true);
        if (!row) return tl::make_unexpected(row.error());
        const auto held = holds(editing);
        if (!held) return tl::make_unexpected(held.error());
        const auto number = freeNumber(editing.caseId);
        if (!number) return tl::make_unexpected(number.error());
        const auto time = now();
        if (!time) return tl::make_unexpected(time.error());
        const bool mine = *held && row->version == editing.version;
        if (mine && lastSequence < editing.lastSequence)
            return libraryFailure(ErrorCode::InvalidArgument, tr("its text ends at edit %1, but edit %2 was saved already.")
                                                                  .arg(lastSequence)
                                                                  .arg(editing.lastSequence));
        const VersionInfo version{*number, !mine, editing.version, lastSequence, *time, m_person, {}, 0, false};
        if (auto put = insertVersion(editing.caseId, version, content); !put) return put;
        if (!mine) {
            auto answer = refused(*row);
            if (!answer) return tl::make_unexpected(answer.error());
            outcome = *answer;
            outcome.branch = *number;
            return {};
        }
        row->facts = facts;
        row->version = *number;
        row->editCount = 0;
        row->lastEdit.clear();
        row->changedAt = *time;
        if (auto put = updateCase(std::move(*row)); !put) return put;
        after.version = *number;
        after.lastSequence = lastSequence;
        outcome = {WriteOutcome::Kind::Saved, *number, 0, std::nullopt};
        return prune(editing.caseId);
    });
    if (!done) return tl::make_unexpected(done.error());
    editing = after;
    return outcome;
}

core::Result<void> CaseLibrary::prune(const QString& caseId) {
    const auto kept = m_database->rows(QStringLiteral("SELECT number FROM versions WHERE case_id = ? AND kind = 'main' "
                                                      "ORDER BY number DESC LIMIT %1")
                                           .arg(kVersionsKept),
                                       {caseId});
    if (!kept) return tl::make_unexpected(kept.error());
    const qint64 oldest = kept->back().front().toLongLong();
    for (const char* statement : {"DELETE FROM versions WHERE case_id = ? AND kind = 'main' AND number < ?",
                                  "DELETE FROM edits WHERE case_id = ? AND base < ?"})
        if (auto done = m_database->change(QString::fromLatin1(statement), {caseId, oldest}); !done)
            return tl::make_unexpected(done.error());
    return {};
}

core::Result<WriteOutcome> CaseLibrary::restore(Editing& editing, qint64 number) {
    const QString attempted = tr("Cannot restore version %1").arg(number);
    const auto row = wholeCase(editing.caseId, false);
    if (!row) return told(attempted, row.error());
    if (row->editCount > 0)
        return told(attempted, core::Error{ErrorCode::InvalidArgument,
                                           tr("there are edits since the present version. Open the case and save it first, so "
                                              "that they are kept as a version.")
                                               .toStdString(),
                                           {}, {}});
    const auto version = readVersion(editing.caseId, number);
    if (!version) return told(attempted, version.error());
    if (!*version)
        return told(attempted, core::Error{ErrorCode::NotFound, tr("it is not kept any more.").toStdString(), {}, {}});
    if ((*version)->info.damaged)
        return told(attempted, core::Error{ErrorCode::FileDamaged,
                                           tr("it does not agree with its checksum. Choose another.").toStdString(), {}, {}});
    Editing earlier = editing;
    earlier.lastSequence = 0; // its text ends before edits that later versions hold
    const auto outcome = save(earlier, row->facts, (*version)->content, (*version)->info.lastSequence);
    if (outcome && outcome->kind == WriteOutcome::Kind::Saved) editing = earlier;
    return outcome;
}

core::Result<void> CaseLibrary::discardBranch(const QString& caseId, qint64 number) {
    return write(tr("Cannot forget the refused version %1").arg(number), [&]() -> core::Result<void> {
        const auto done = m_database->change(
            QStringLiteral("DELETE FROM versions WHERE case_id = ? AND number = ? AND kind = 'branch'"), {caseId, number});
        if (!done) return tl::make_unexpected(done.error());
        if (*done == 0) return libraryFailure(ErrorCode::NotFound, tr("there is no refused version of this number."));
        return {};
    });
}

} // namespace gauge::app
