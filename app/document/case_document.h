// The open case: its record, its journal and its undo stack, and the file it is kept in. The one way to change a case.
//
// Every edit goes to a working journal on disk at once, in a thread of its own (edit_log.h); saving folds the journal into
// the case file (case_file.h). A case that was never saved has its working journal in the folder of keepUnsavedIn(), from
// the first thing that the person did.
#pragma once

#include "app/document/case_file.h"
#include "app/document/edit_log.h"
#include "core/record/journal.h"

#include <QObject>
#include <QString>
#include <QUndoStack>
#include <memory>

namespace gauge::app {

class EditCommand;

class CaseDocument : public QObject {
    Q_OBJECT
public:
    /// What a change touched.
    enum class Part {
        Images, Marks, Ostium, Landing, Values, Evidence, Moments, Readings, Drawings, Contours, Scales, Landmarks,
        Release, Stasis, Sizing, Scores, Patient, Decision, Septum, Projection, Everything
    };
    Q_ENUM(Part)

    explicit CaseDocument(QObject* parent = nullptr);
    /// Leaves the case as clear() does.
    ~CaseDocument() override;

    const core::CaseRecord& record() const { return m_record; }
    const core::Journal& journal() const { return m_journal; }
    QUndoStack& undoStack() { return m_undo; }

    /// The revision that the next edit's content must carry.
    core::Revision nextRevision() const { return m_journal.nextSequence(); }

    /// Does the command and keeps it for undo; a command that would change nothing is dropped, and so is every command
    /// on a case that may only be read (then `refused` says why). True when done.
    bool push(std::unique_ptr<EditCommand> command);

    /// Applies and journals an edit, and returns its inverse. For commands, and for what is no decision of
    /// the person (values, the images of a newly opened folder); everything else goes through `push`. A case that may only be
    /// read stays as it is.
    core::Edit apply(const core::Edit& edit);

    /// Starts over with an empty record, journal and undo stack. What was open is saved if it has a file; if that fails,
    /// or it has none, its working journal stays and is offered again (leftCases in case_file.h).
    void clear();

    /// Folder for the working journals of cases that have no file. Empty (as at first): such cases are not kept.
    void keepUnsavedIn(const QString& folder) { m_unsavedFolder = folder; }

    /// Opens a case file with what its working journal holds; the present case is left as by clear(). A case that may only
    /// be read is opened too; see readOnlyReason(). @return what the person should know.
    /// @errors those of readCaseFile; the present case then stays.
    core::Result<std::vector<core::Notice>> open(const QString& path);
    /// Goes on with a case that was never saved. @errors as above.
    core::Result<std::vector<core::Notice>> openLeft(const QString& journal);
    /// Writes the case file. @errors OutputUnwritable (nothing is lost: the working journal has it); InvalidArgument without
    /// a path, for a case that may only be read, or when somebody else has written the file since it was opened.
    core::Result<void> save();
    /// Writes it as another file, which is the case's own from then on. @errors OutputUnwritable.
    core::Result<void> saveAs(const QString& path);
    /// Throws the present case away, and its working journal if it has no file. Edits of a case with a file stay.
    void discard();

    const QString& path() const { return m_path; } ///< empty: never saved
    bool isReadOnly() const { return !m_readOnlyReason.isEmpty(); }
    const QString& readOnlyReason() const { return m_readOnlyReason; }
    /// Last edit that is on disk, in the case file or the working journal.
    core::Revision savedSequence() const { return m_saved; }
    bool isSaved() const { return m_saved + 1 == m_journal.nextSequence(); }
    /// Last edit that the case file itself holds.
    bool isInCaseFile() const { return !m_path.isEmpty() && m_inCaseFile + 1 == m_journal.nextSequence(); }
    /// Something that the person did would be lost by discard().
    bool hasUnsavedWork() const { return m_path.isEmpty() && m_hasWork; }
    /// Waits until every edit is on disk; false when that cannot be.
    bool flush() { return m_log && m_log->flush(); }

    /// A hint where the images are, kept in the case file; no edit.
    QString imagesFolder() const;
    void setImagesFolder(const QString& folder);

signals:
    void changed(gauge::app::CaseDocument::Part part);
    /// Every edit up to this one is on disk and stays there, whatever happens to program or power.
    void saved(quint64 sequence);
    /// An edit could not be brought to disk; it is tried again every second while the case is open.
    void savingFailed(const QString& message);
    /// Path, read-only or unsaved work became another.
    void fileChanged();
    /// A command was not done because the case may only be read.
    void refused(const QString& reason);

private:
    void leave();
    void show(core::CaseFile file);
    core::CaseFile content() const;
    void continueLog(core::Result<GrowingFile> lock, OpenedCase& opened);
    core::Result<void> write(const std::filesystem::path& file);
    void becameSaved(std::string digest);
    void startLog(GrowingFile file, std::optional<core::WorkingHeader> header);
    void startLoneLog(const core::CaseFile& base);
    void endLog(bool removeFile);
    void reported(int log, core::Revision sequence);

    core::CaseRecord m_record;
    core::Journal m_journal;
    core::UnknownFields m_unknown = core::UnknownFields::object(); ///< of the case file
    QUndoStack m_undo;
    QString m_path, m_unsavedFolder, m_readOnlyReason;
    std::string m_imagesFolder; ///< as in the file: relative to it when below
    std::string m_digest;       ///< of the case file as it was opened or written last
    core::Revision m_saved = 0, m_inCaseFile = 0;
    bool m_hasWork = false;  ///< the person did something since the case was begun, opened or saved
    bool m_mustSave = false; ///< the same, or edits of an earlier run were taken from the journal
    bool m_isLone = false;   ///< the journal is not beside the case file
    int m_logNumber = 0;    ///< reports of an earlier log are not for this case
    std::unique_ptr<EditLog> m_log;
};

/// Name of the person at the screen: as in the settings, else as the system knows it; and the time now in ISO 8601 with offset.
QString currentAuthor();
QString currentTime();

} // namespace gauge::app
