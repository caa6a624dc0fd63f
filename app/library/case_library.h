// The library of cases: what is stored, how it is found, who edits it, and that nothing of it is lost.
//
//   versions 1 … n   the case's text at each saving, the last ten kept        (kVersionsKept)
//   edits            what was done since the present version, each on disk before it is reported saved
//   lease            one person at a time may write; everybody may read
//
// The library takes a case as bytes and facts; what the bytes mean is told by who stores them (core/record). Every row
// that is handed out was checked: a version and an edit by a SHA-256 that binds it to its case and place, the edits of a
// version by a chain, the facts and the length of that chain by the case's own. What does not agree is an error that names
// the newest whole version; `openAsFarAsWhole` gives what there is, and says what is missing.
//
// Each writing function is one transaction that checks the lease first. Not thread-safe: one object a thread.
// Errors, besides those named: OutputUnwritable (disk full, read-only, connection lost, held too long), FileDamaged,
// FileUnreadable. Messages hold no identity of a patient.
#pragma once

#include "app/library/database.h"

#include <QByteArray>
#include <QHash>
#include <QStringList>
#include <chrono>
#include <functional>
#include <memory>
#include <optional>
#include <vector>

namespace gauge::app {

inline constexpr int kVersionsKept = 10;
/// A lease that was not renewed for so long is dead; see LeaseInfo. It is renewed every quarter of that.
inline constexpr std::chrono::seconds kLeaseDead{60};
inline constexpr std::chrono::seconds kHeartbeat{15};

/// What a case is found by. Dates are YYYYMMDD or empty; names as DICOM has them.
struct CaseFacts {
    QString title, patientName, patientId, birthDate, studyDate, stage;
    QStringList tags;

    bool operator==(const CaseFacts&) const = default;
};

/// Who edits. A lease is dead, and may be taken,
///  - when its program has ended: same computer and boot, and no such process any more; or
///  - when this program saw it unrenewed for kLeaseDead by a clock that nobody can set (steady); or
///  - (PostgreSQL) when it is older than that by the server's clock.
/// No computer's own wall clock decides: set back or forward it neither takes nor keeps a lease. The server's clock set
/// forward can take one early; its holder is told at the next write, and loses nothing.
struct LeaseInfo {
    QString holder, station, takenAt;
    bool mine = false; ///< of this library object
    bool dead = false;
};

struct ListedCase {
    QString id;
    CaseFacts facts;
    QString createdAt, changedAt, binnedAt; ///< ISO 8601 UTC; for people, decide nothing
    qint64 version = 0;
    qint64 editsSince = 0;
    int branches = 0; ///< texts that were refused and wait for a person
    std::optional<LeaseInfo> lease;
    bool damaged = false; ///< its facts do not agree with their checksum: do not trust them
};

struct CaseQuery {
    QString text;               ///< words in name, id, dates, title, tags, stage; all must be there
    QString tag;                ///< exactly, whatever the case
    QString studiedFrom, studiedTo; ///< YYYYMMDD, both inclusive; cases without a date are then left out
    bool binned = false;        ///< the bin's instead of the others
    int limit = 500;
};

struct VersionInfo {
    qint64 number = 0;
    bool branch = false;
    qint64 base = 0;         ///< the version it was made from; 0 for the first
    qint64 lastSequence = 0; ///< last edit that its text holds
    QString savedAt, author;
    QString sha256; ///< of the text alone
    qint64 size = 0;
    bool damaged = false;
};

struct StoredEdit {
    qint64 sequence = 0;
    QByteArray content;

    bool operator==(const StoredEdit&) const = default;
};

struct StoredCase {
    QString id;
    CaseFacts facts;
    VersionInfo version;
    QByteArray content;
    std::vector<StoredEdit> edits; ///< made since, in order
    QString damage;                ///< openAsFarAsWhole: what is missing; else empty
};

/// The right to write one case, as it was when it was given; `version` and `lastSequence` go on with each writing.
struct Editing {
    QString caseId, token;
    qint64 version = 0;
    qint64 lastSequence = 0;
};

/// Either the right to write, or who has it.
struct LeaseAnswer {
    std::optional<Editing> editing;
    LeaseInfo lease;
};

/// What became of a text or of edits that were to be written.
struct WriteOutcome {
    enum class Kind { Saved, Refused };
    Kind kind = Kind::Saved;
    qint64 version = 0;          ///< the present version
    qint64 branch = 0;           ///< refused text: the number under which it is kept
    std::optional<LeaseInfo> by; ///< refused: who has the lease now, if anybody
};

struct LibraryClock {
    std::function<QDateTime()> wall;                    ///< for people
    std::function<std::chrono::milliseconds()> steady; ///< decides
};
LibraryClock systemClock();

class CaseLibrary {
    Q_DECLARE_TR_FUNCTIONS(CaseLibrary)
public:
    /// @param person  whose name others see on a lease; @param station  the computer's.
    /// A library up to 64 MiB is checked whole; damage does not refuse it but shows in damage(), and nothing is written.
    /// @errors also RecordUnreadable for a library of a newer program.
    static core::Result<std::unique_ptr<CaseLibrary>> open(const LibraryPlace& place, const QString& person,
                                                           const QString& station, LibraryClock clock = systemClock());

    const LibraryPlace& place() const { return m_database->place(); }
    /// Damage of the file that was found; then nothing is written any more. Empty: none.
    const QString& damage() const { return m_damage; }

    // Finding (case_list.cpp)
    core::Result<std::vector<ListedCase>> list(const CaseQuery& query = {});
    /// @errors NotFound.
    core::Result<ListedCase> find(const QString& caseId);
    core::Result<QStringList> tags();
    /// Newest first, branches among them. Reads and checks every text.
    core::Result<std::vector<VersionInfo>> versions(const QString& caseId);

    // Reading (case_versions.cpp)
    /// The present version and its edits. @errors NotFound; FileDamaged with the fact "whole-version", the newest that is
    /// whole, when there is one.
    core::Result<StoredCase> open(const QString& caseId);
    /// One version alone with the edits made on it. Errors as above.
    core::Result<StoredCase> openVersion(const QString& caseId, qint64 number);
    /// The newest whole version with the edits that still follow; `damage` says what is missing.
    core::Result<StoredCase> openAsFarAsWhole(const QString& caseId);

    // Leases (case_lease.cpp)
    core::Result<LeaseAnswer> beginEditing(const QString& caseId);
    /// False when the lease is lost.
    core::Result<bool> renew(const Editing& editing);
    core::Result<void> endEditing(const Editing& editing);

    // Writing (case_versions.cpp, case_edits.cpp)
    /// A new case, leased to this person. @param lastSequence  the last edit that the text holds.
    core::Result<Editing> create(const CaseFacts& facts, const QByteArray& content, qint64 lastSequence);
    /// Edits with consecutive sequence numbers after `editing.lastSequence`; all are on disk when Saved is returned. Edits
    /// that are there already are passed over when they are the same (a commit whose answer got lost). Refused: lease lost
    /// or version changed; nothing was written: save() keeps the whole text as a branch.
    /// @errors InvalidArgument for a gap in the sequence or other contents under the same number.
    core::Result<WriteOutcome> append(Editing& editing, const std::vector<StoredEdit>& edits);
    /// A new version, or when the lease is lost or somebody else has saved: a branch, which nobody overwrites or prunes.
    /// @errors InvalidArgument when the text does not hold the edits that were appended.
    core::Result<WriteOutcome> save(Editing& editing, const CaseFacts& facts, const QByteArray& content, qint64 lastSequence);
    /// Makes an earlier version or a branch the present one, as a new version. Edits since the present version must have
    /// been saved first. @errors NotFound; InvalidArgument; FileDamaged.
    core::Result<WriteOutcome> restore(Editing& editing, qint64 number);
    /// Forgets a branch. @errors NotFound for what is no branch.
    core::Result<void> discardBranch(const QString& caseId, qint64 number);

    // The bin (case_bin.cpp). @errors InvalidArgument while another person edits the case; NotFound.
    core::Result<void> moveToBin(const QString& caseId);
    core::Result<void> takeFromBin(const QString& caseId);
    /// From the bin for ever. @errors InvalidArgument for a case that is not in the bin.
    core::Result<void> removeForGood(const QString& caseId);

    // One case as one file (case_bundle.cpp)
    /// All versions and edits; written in one step. @errors OutputUnwritable; FileDamaged.
    core::Result<void> exportCase(const QString& caseId, const QString& path);
    /// As a new case with an id of its own. @return the id. @errors FileUnreadable; RecordUnreadable; FileDamaged.
    core::Result<QString> importCase(const QString& path);

    // Damage (case_rescue.cpp)
    /// Checks the file and every row. Sentences of what is wrong; empty: all is well.
    core::Result<QStringList> check();
    /// Copies of each case the newest whole version and its edits into another, whole library. @return how many.
    core::Result<int> rescueInto(CaseLibrary& other);

private:
    struct CaseRow;
    struct VersionRow;
    struct Seen {
        QString token;
        qint64 beat = 0;
        std::chrono::milliseconds since{0};
    };
    struct Lease {
        LeaseInfo info;
        QString token;
        qint64 beat = 0;
    };
    struct Tail {
        std::vector<StoredEdit> edits;
        QString last;   ///< checksum of the last
        QString damage; ///< why it ends before it should
    };

    CaseLibrary(std::unique_ptr<Database> database, QString person, QString station, LibraryClock clock);

    // case_rows.cpp: rows and their checksums
    static CaseRow caseRowOf(const Database::Row& row);
    static QString checksumOf(const CaseRow& row);
    static QString checksumOf(const QString& caseId, const VersionInfo& version);
    static QString checksumOf(const QString& caseId, qint64 base, const StoredEdit& edit, const QString& savedAt,
                              const QString& previous);
    core::Result<std::optional<CaseRow>> readCase(const QString& caseId, bool lock);
    core::Result<CaseRow> wholeCase(const QString& caseId, bool lock);
    core::Result<void> insertCase(CaseRow row);
    core::Result<void> updateCase(CaseRow row);
    core::Result<std::optional<VersionRow>> readVersion(const QString& caseId, qint64 number);
    core::Result<void> insertVersion(const QString& caseId, VersionInfo version, const QByteArray& content);
    core::Result<Tail> readTail(const QString& caseId, const VersionInfo& version);
    core::Result<std::optional<qint64>> newestWhole(const QString& caseId);
    core::Result<qint64> freeNumber(const QString& caseId);

    core::Result<StoredCase> readStored(const CaseRow& row, qint64 number);
    core::Result<std::optional<Lease>> readLease(const QString& caseId);
    core::Result<void> writeLease(const QString& caseId, const QString& token);
    core::Result<bool> holds(const Editing& editing);
    core::Result<WriteOutcome> refused(const CaseRow& row);
    core::Result<void> prune(const QString& caseId);
    core::Result<void> changeBin(const QString& caseId, bool binned);
    core::Result<void> mayWrite() const;
    core::Result<QString> now();
    /// Runs in a transaction; a failure is told as "`attempted`: reason".
    core::Result<void> write(const QString& attempted, const std::function<core::Result<void>()>& work);
    tl::unexpected<core::Error> told(const QString& attempted, const core::Error& cause);
    ListedCase listed(const CaseRow& row) const;

    std::unique_ptr<Database> m_database;
    QString m_person, m_station, m_process, m_damage;
    LibraryClock m_clock;
    QHash<QString, Seen> m_seen;     ///< leases of others, by case: since when unchanged
    QHash<QString, QString> m_mine; ///< tokens given to this object, by case
};

} // namespace gauge::app
