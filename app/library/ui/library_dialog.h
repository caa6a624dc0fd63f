// The window of the case library: find, open, import, export, earlier versions, bin.
//
//   [ search …………………… ] [ all tags ▾ ] [ □ bin ]
//   +--------------------------------------+ +---------------+
//   | patient  id  born  studied  title …  | | who edits it  |
//   |                                      | | versions      |
//   +--------------------------------------+ +---------------+
//   message                    [ Import… ] [ Export… ] [ Bin ] [ Open ]
#pragma once

#include "app/library/case_library.h"
#include "app/library/library_model.h"

#include <QAction>
#include <QDialog>
#include <QTimer>

class QToolButton;
class QComboBox;
class QLabel;
class QLineEdit;
class QListWidget;
class QPushButton;
class QStackedWidget;
class QTableView;

namespace gauge::app {

class LibraryDialog : public QDialog {
    Q_OBJECT
public:
    /// @param library  outlives the dialog; null when it could not be opened, then @p whyNot is shown instead of a list.
    explicit LibraryDialog(CaseLibrary* library, const QString& whyNot = {}, QWidget* parent = nullptr);

    QString selectedCase() const;
    void select(const QString& caseId);

public slots:
    /// Reads the list again; also done every few seconds while the window is shown, so that leases are up to date.
    void refresh();
    bool importFrom(const QString& path);
    bool exportTo(const QString& path);
    /// Reads and checks everything, and says what is wrong.
    void check();
    /// Copies what is whole into a new library.
    bool rescueTo(const QString& path);

signals:
    /// The person wants the present version.
    void openRequested(const QString& caseId);
    /// The person wants to read an earlier version or a refused one.
    void openVersionRequested(const QString& caseId, qint64 version);

protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    QWidget* makeSearch();
    QWidget* makeList();
    QWidget* makeDetails();
    QWidget* makeButtons();
    void wire();
    void showDetails();
    void showVersions(const ListedCase& listed);
    void showTags();
    void enable();
    void say(const QString& text, bool error = false);
    void fail(const core::Error& error) { say(QString::fromStdString(error.message), true); }
    void openSelected();
    void openSelectedVersion();
    void restoreVersion();
    void discardBranch();
    void binOrTakeBack();
    void removeForGood();
    void undoBin();
    void askImport();
    void askExport();
    void askRescue();
    qint64 selectedVersion() const;
    bool selectedIsBranch() const;

    CaseLibrary* m_library;
    QString m_whyNot, m_lastBinned;
    LibraryModel m_model;
    QTimer m_timer, m_typing;
    QLineEdit* m_search = nullptr;
    QComboBox* m_tags = nullptr;
    QToolButton* m_bin = nullptr;
    QStackedWidget* m_stack = nullptr;
    QTableView* m_table = nullptr;
    QLabel *m_empty = nullptr, *m_lease = nullptr, *m_message = nullptr, *m_versionsHeading = nullptr;
    QListWidget* m_versions = nullptr;
    QPushButton *m_open = nullptr, *m_import = nullptr, *m_export = nullptr, *m_binButton = nullptr, *m_undo = nullptr,
                *m_remove = nullptr, *m_check = nullptr, *m_rescue = nullptr, *m_openVersion = nullptr, *m_restore = nullptr, *m_discard = nullptr;
};

} // namespace gauge::app
