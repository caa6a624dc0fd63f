// The open case: its record, its journal and its undo stack. The one way to change a case.
#pragma once

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
        Release, Stasis, Sizing, Scores, Patient, Decision, Everything
    };
    Q_ENUM(Part)

    explicit CaseDocument(QObject* parent = nullptr);

    const core::CaseRecord& record() const { return m_record; }
    const core::Journal& journal() const { return m_journal; }
    QUndoStack& undoStack() { return m_undo; }

    /// The revision that the next edit's content must carry.
    core::Revision nextRevision() const { return m_journal.nextSequence(); }

    /// Does the command and keeps it for undo; a command that would change nothing is dropped. True when
    /// done.
    bool push(std::unique_ptr<EditCommand> command);

    /// Applies and journals an edit, and returns its inverse. For commands, and for what is no decision of
    /// the person (values, the images of a newly opened folder); everything else goes through `push`.
    core::Edit apply(const core::Edit& edit);

    /// Starts over with an empty record, journal and undo stack.
    void clear();

signals:
    void changed(gauge::app::CaseDocument::Part part);

private:
    core::CaseRecord m_record;
    core::Journal m_journal;
    QUndoStack m_undo;
};

/// Name of the person at the screen: as in the settings, else as the system knows it; and the time now in ISO 8601 with offset.
QString currentAuthor();
QString currentTime();

} // namespace gauge::app
