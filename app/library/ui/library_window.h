// The library in the program's window: the actions for a menu, and what they do. The library of the settings is opened at
// first use; what goes wrong is said in the message line or in the library's own window.
#pragma once

#include "app/document/session.h"
#include "app/library/library_document.h"

#include <QAction>
#include <QPointer>

namespace gauge::app {

class LibraryDialog;

class LibraryWindow : public QObject {
    Q_OBJECT
public:
    /// @param window  the program's; the library's window stands over it.
    LibraryWindow(Session& session, QWidget* window);
    ~LibraryWindow() override;

    /// "Case library…", "Put the case into the library", "Save a version in the library".
    QList<QAction*> actions() const { return {m_show, m_put, m_save}; }

private:
    bool open();
    void show();
    void put();
    void save();
    void openCase(const QString& caseId, qint64 version);
    void tell(const core::Result<std::vector<core::Notice>>& opened);
    void lost();
    void refused(const WriteOutcome& outcome);
    void offerBoth(const WriteOutcome& outcome, const QString& said);
    void enable();

    Session& m_session;
    QWidget* m_window;
    QString m_whyNot;
    std::unique_ptr<CaseLibrary> m_library;
    std::unique_ptr<LibraryDocument> m_document; ///< before the library goes, it goes
    QPointer<LibraryDialog> m_dialog;
    QAction *m_show, *m_put, *m_save;
};

} // namespace gauge::app
