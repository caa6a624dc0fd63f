// Who may write a case.
#include "app/library/case_row.h"
#include "app/library/process_mark.h"

#include <QUuid>

namespace gauge::app {
namespace {

using core::ErrorCode;

} // namespace

core::Result<std::optional<CaseLibrary::Lease>> CaseLibrary::readLease(const QString& caseId) {
    // PostgreSQL: age in seconds by the server's clock. A negative one says that the clock was set back: no answer.
    const QString age = m_database->isSqlite()
                            ? QStringLiteral("-1")
                            : QStringLiteral("EXTRACT(EPOCH FROM clock_timestamp() - CAST(renewed_at AS timestamptz))");
    const auto rows = m_database->rows(
        QStringLiteral("SELECT token, holder, station, process, beat, taken_at, %1 FROM leases WHERE case_id = ?").arg(age),
        {caseId});
    if (!rows) return tl::make_unexpected(rows.error());
    if (rows->empty()) {
        m_seen.remove(caseId);
        return std::nullopt;
    }
    const Database::Row& row = rows->front();
    Lease lease{{row[1].toString(), row[2].toString(), row[5].toString(), false, false}, row[0].toString(), row[4].toLongLong()};
    lease.info.mine = m_mine.value(caseId) == lease.token;
    const auto steady = m_clock.steady();
    const auto seen = m_seen.constFind(caseId);
    if (seen == m_seen.constEnd() || seen->token != lease.token || seen->beat != lease.beat)
        m_seen.insert(caseId, {lease.token, lease.beat, steady});
    const bool unrenewed = steady - m_seen.value(caseId).since > kLeaseDead;
    const bool old = row[6].toDouble() > static_cast<double>(kLeaseDead.count());
    lease.info.dead = !lease.info.mine && (unrenewed || old || hasEnded(row[3].toString()));
    return lease;
}

core::Result<void> CaseLibrary::writeLease(const QString& caseId, const QString& token) {
    const auto time = now();
    if (!time) return tl::make_unexpected(time.error());
    const auto done = m_database->change(
        QStringLiteral("INSERT INTO leases (case_id, token, holder, station, process, beat, taken_at, renewed_at) "
                       "VALUES (?, ?, ?, ?, ?, 1, ?, ?) ON CONFLICT (case_id) DO UPDATE SET token = excluded.token, "
                       "holder = excluded.holder, station = excluded.station, process = excluded.process, beat = 1, "
                       "taken_at = excluded.taken_at, renewed_at = excluded.renewed_at"),
        {caseId, token, m_person, m_station, m_process, *time, *time});
    if (!done) return tl::make_unexpected(done.error());
    return {};
}

core::Result<LeaseAnswer> CaseLibrary::beginEditing(const QString& caseId) {
    LeaseAnswer answer;
    QString token;
    const auto done = write(tr("Cannot begin to edit the case"), [&]() -> core::Result<void> {
        const auto row = wholeCase(caseId, true);
        if (!row) return tl::make_unexpected(row.error());
        if (!row->binnedAt.isEmpty())
            return libraryFailure(ErrorCode::InvalidArgument, tr("it lies in the bin. Take it out first."));
        const auto lease = readLease(caseId);
        if (!lease) return tl::make_unexpected(lease.error());
        if (*lease && !(*lease)->info.mine && !(*lease)->info.dead) {
            answer.lease = (*lease)->info;
            return {};
        }
        const auto version = readVersion(caseId, row->version);
        if (!version) return tl::make_unexpected(version.error());
        if (!*version || (*version)->info.damaged)
            return libraryFailure(ErrorCode::FileDamaged, tr("its present version is damaged. Restore an earlier one first."));
        token = QUuid::createUuid().toString(QUuid::WithoutBraces);
        if (auto taken = writeLease(caseId, token); !taken) return taken;
        const auto time = now();
        if (!time) return tl::make_unexpected(time.error());
        answer.lease = {m_person, m_station, *time, true, false};
        answer.editing = Editing{caseId, token, row->version, (*version)->info.lastSequence + row->editCount};
        return {};
    });
    if (!done) return tl::make_unexpected(done.error());
    if (answer.editing) m_mine.insert(caseId, token);
    return answer;
}

core::Result<bool> CaseLibrary::holds(const Editing& editing) {
    const auto time = now();
    if (!time) return tl::make_unexpected(time.error());
    const auto renewed =
        m_database->change(QStringLiteral("UPDATE leases SET beat = beat + 1, renewed_at = ? WHERE case_id = ? AND token = ?"),
                           {*time, editing.caseId, editing.token});
    if (!renewed) return tl::make_unexpected(renewed.error());
    return *renewed == 1;
}

core::Result<bool> CaseLibrary::renew(const Editing& editing) {
    bool held = false;
    const auto done = write(tr("Cannot renew the right to edit the case"), [&]() -> core::Result<void> {
        const auto answer = holds(editing);
        if (!answer) return tl::make_unexpected(answer.error());
        held = *answer;
        return {};
    });
    if (!done) return tl::make_unexpected(done.error());
    return held;
}

core::Result<void> CaseLibrary::endEditing(const Editing& editing) {
    if (m_mine.value(editing.caseId) == editing.token) m_mine.remove(editing.caseId);
    return write(tr("Cannot give back the right to edit the case"), [&]() -> core::Result<void> {
        const auto done = m_database->change(QStringLiteral("DELETE FROM leases WHERE case_id = ? AND token = ?"),
                                             {editing.caseId, editing.token});
        if (!done) return tl::make_unexpected(done.error());
        return {};
    });
}

core::Result<WriteOutcome> CaseLibrary::refused(const CaseRow& row) {
    WriteOutcome outcome;
    outcome.kind = WriteOutcome::Kind::Refused;
    outcome.version = row.version;
    const auto lease = readLease(row.id);
    if (!lease) return tl::make_unexpected(lease.error());
    if (*lease) outcome.by = (*lease)->info;
    return outcome;
}

} // namespace gauge::app
