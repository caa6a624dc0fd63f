// The open case and its place in the library. The document stays what it is, with a case file and a working journal of its
// own in a private folder (named by the case's id, without identity); this sends its edits to the library as they are made,
// saves versions, and renews the lease.
//
//   edit -> document (its own journal, at once) -> library (within kSendWithin) -> stored(sequence)
//
// All in the thread of the document: a commit takes milliseconds, a library that is held by others up to 5 s. While a hand drags
// nothing is sent, so that no picture waits for a disk, but no longer than kSendAtLatest.
#pragma once

#include "app/document/case_document.h"
#include "app/library/case_library.h"

#include <QElapsedTimer>
#include <QObject>
#include <QTimer>
#include <functional>

namespace gauge::app {

inline constexpr std::chrono::milliseconds kSendWithin{200}, kSendAtLatest{5000};

class LibraryDocument : public QObject {
    Q_OBJECT
public:
    /// Both outlive this. @param workFolder  for the private case files; made where needed.
    LibraryDocument(CaseDocument& document, CaseLibrary& library, const QString& workFolder, QObject* parent = nullptr);
    ~LibraryDocument() override;

    /// Opens the present version with its edits; for reading only when somebody else edits it (then `holder` says who).
    /// What was open is left as by CaseDocument::open. @return what the person should know.
    /// @errors those of CaseLibrary::open and of CaseDocument::open; the present case then stays.
    core::Result<std::vector<core::Notice>> open(const QString& caseId);
    /// Opens an earlier version as it was saved, or a refused one, for reading. Errors as above.
    core::Result<std::vector<core::Notice>> openVersion(const QString& caseId, qint64 number);
    /// Opens what is whole of a damaged case for reading; the notice `library-case-damaged` says what is missing.
    core::Result<std::vector<core::Notice>> openAsFarAsWhole(const QString& caseId);
    /// Puts the open case into the library as a new one, and goes on with it there. @return its id.
    core::Result<QString> put();
    /// Saves a new version. Refused: it is kept as a branch, and nothing more is sent.
    core::Result<WriteOutcome> save();
    /// Sends what is left, saves a version if there were edits, gives the lease back. The document stays open.
    core::Result<void> close();
    /// Removes working copies of which the library holds every edit; also done at the start and when a case is left. What is
    /// open anywhere, what the library does not know or does not hold to the last edit, and what cannot be read stays.
    /// @return how many were removed.
    int removeStoredCopies();

    /// Tells whether a hand is at work now; nothing: never.
    void setBusy(std::function<bool()> busy) { m_busy = std::move(busy); }

    QString caseId() const { return m_caseId; } ///< empty: the document is none of the library's
    bool mayWrite() const { return m_editing.has_value(); }
    const LeaseInfo& holder() const { return m_holder; }
    /// Last edit that the library has on disk.
    qint64 storedSequence() const { return m_editing ? m_editing->lastSequence : 0; }

signals:
    /// Every edit up to this one is in the library, committed.
    void stored(quint64 sequence);
    /// The library did not take the edits; it is tried again with the next one and every heartbeat. The document has them.
    void storingFailed(const QString& message);
    /// The lease is lost: somebody else edits the case now. save() keeps this text beside theirs.
    void leaseLost(const gauge::app::WriteOutcome& outcome);

private:
    core::Result<std::vector<core::Notice>> show(const StoredCase& stored, bool forReading);
    void follow(const Editing& editing);
    void sendWhenStill();
    void send();
    void beat();
    void detach();
    QByteArray text() const;
    bool isStored(const QString& workingCopy);

    CaseDocument& m_document;
    CaseLibrary& m_library;
    QString m_workFolder, m_caseId;
    core::UnknownFields m_unknown = core::UnknownFields::object(); ///< of the stored text; written again
    std::optional<Editing> m_editing;
    LeaseInfo m_holder;
    bool m_lost = false;    ///< the lease; nothing is sent any more
    bool m_opening = false; ///< the document's own change, while it is filled
    std::function<bool()> m_busy;
    QElapsedTimer m_unsent; ///< since the first edit that was not sent
    QTimer m_send, m_heartbeat;
};

} // namespace gauge::app
