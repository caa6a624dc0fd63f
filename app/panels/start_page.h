// What is shown before anything is open: what the program does, the ways to begin, the cases opened last, and the cautions.
#pragma once

#include "app/jobs/job_runner.h"
#include "app/models/recent_cases.h"
#include "app/models/view_state.h"

#include <QWidget>

class QLabel;
class QListWidget;
class QListWidgetItem;
class QPushButton;

namespace gauge::app {

class StartPage : public QWidget {
    Q_OBJECT
public:
    explicit StartPage(ViewState& state, QWidget* parent = nullptr);

    /// Names the cases at once; what their files say follows, read in the background.
    void showRecent(const QStringList& paths, const QString& unsavedFolder);
    /// As shown now.
    const QList<RecentCase>& recent() const { return m_recent; }
    QListWidget& list() { return *m_list; }

signals:
    void openRequested();
    void openCaseRequested();
    void sampleRequested();
    void beginRequested();
    void libraryRequested();
    void caseChosen(const QString& path);
    void leftCaseChosen(const QString& journal);
    /// The person does not want it in the list any more.
    void forgetRequested(const QString& path);

private:
    QWidget* makeWays();
    QWidget* makeRecent();
    void fillList();
    void open(const QListWidgetItem* item);

    ViewState& m_state;
    QListWidget* m_list = nullptr;
    QLabel* m_nothing = nullptr;
    QPushButton* m_forget = nullptr;
    QWidget* m_acts = nullptr;
    QList<RecentCase> m_recent;
    JobRunner m_read;
};

} // namespace gauge::app
