// The list of cases as a table, and the words for a lease, an age and a version. No window.
#pragma once

#include "app/library/case_library.h"

#include <QAbstractTableModel>

namespace gauge::app {

class LibraryModel : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { Patient, PatientId, Born, Studied, Title, Stage, Tags, Changed, Editor, ColumnCount };

    explicit LibraryModel(QObject* parent = nullptr) : QAbstractTableModel(parent) {}

    void show(std::vector<ListedCase> cases);
    const ListedCase* at(int row) const;
    int rowOf(const QString& caseId) const; ///< -1: not in the list

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    QString text(const ListedCase& listed, int column) const;
    std::vector<ListedCase> m_cases;
};

/// "20260310" as 2026-03-10; what is no date as it is.
QString dateInWords(const QString& dicomDate);
/// "2026-03-10 11:04" in the time of this place.
QString momentInWords(const QString& iso);
/// A DICOM name for reading: family name, given name.
QString nameInWords(const QString& dicomName);

} // namespace gauge::app
