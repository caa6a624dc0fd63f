// How each size would sit (core/sizing/seat.h), one row a size in the chart's order: reach along the sheath, share beyond the circumflex
// artery, cover of the ostium, gaps, clearances. For the panel, the report and the clipboard.
#pragma once

#include "app/document/answers.h"
#include "app/document/seats.h"

#include <QAbstractTableModel>
#include <vector>

namespace gauge::app {

class SeatModel : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { Size, Reach, BeyondArtery, Disc, Gaps, Clearances, ColumnCount };
    enum Role {
        IsChosenRole = Qt::UserRole,
        IsWarningRole, ///< the cell itself says something against the size
    };

    explicit SeatModel(QObject* parent = nullptr);
    void setAnswers(const Answers& answers);

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    /// Display: a cell of one line or several.
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    /// Whether the column says anything: a plug has no disc.
    bool isUsed(int column) const;
    /// Tab-separated, for a spreadsheet.
    QString asText() const;

private:
    QString display(const core::Seat& seat, int column) const;
    bool isWarning(const core::Seat& seat, int column) const;

    std::vector<core::Seat> m_seats;
    bool m_fromOstium = true;
    bool m_hasDisc = false;
    std::string m_chosen;
};

} // namespace gauge::app
