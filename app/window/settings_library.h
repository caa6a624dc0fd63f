// The part of the settings that says where the case library is: a file of one person, or a team's PostgreSQL server. What is
// changed is kept at once. No password is asked for or kept: see LibraryPlace.
#pragma once

#include "app/jobs/job_runner.h"
#include "app/library/library_place.h"

#include <QObject>
#include <memory>
#include <vector>

class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QSpinBox;
class QWidget;

namespace gauge::app {

class LibrarySettingsPart : public QObject {
    Q_OBJECT
public:
    /// Adds its rows to the form; belongs to the dialog.
    LibrarySettingsPart(QFormLayout& form, QWidget* dialog);
    ~LibrarySettingsPart() override;

private:
    static QLabel* note(const QString& text);
    void addFile();
    void addServer();
    void addRow(const QString& label, QWidget* row, QWidget* field, LibraryPlace::Kind kind);
    LibraryPlace place() const;
    void show(const LibraryPlace& place);
    void showRows();
    void keep();
    void say(const QString& text);
    void tryConnection();

    QFormLayout& m_form;
    QWidget* m_dialog;
    std::vector<std::pair<QWidget*, LibraryPlace::Kind>> m_rows; ///< each shown for one kind of library
    QComboBox* m_kind;
    QLineEdit* m_file;
    QLineEdit* m_service;
    QLineEdit* m_host;
    QSpinBox* m_port;
    QLineEdit* m_database;
    QLineEdit* m_user;
    QComboBox* m_tls;
    QLabel* m_outcome;
    std::unique_ptr<JobRunner> m_try = std::make_unique<JobRunner>(); ///< outlives the dialog while a server does not answer
};

} // namespace gauge::app
