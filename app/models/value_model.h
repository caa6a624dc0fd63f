// The value panel as a table: quantities down, ostium and landing zone across. Shows what the record says;
// while the landing zone is dragged, its column shows the dragged plane.
#pragma once

#include "core/anatomy/appendage.h"
#include "core/record/case_record.h"

#include <QAbstractTableModel>
#include <optional>
#include <vector>

namespace gauge::app {

class ValueModel : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { Quantity, OstiumColumn, LandingColumn, ColumnCount };
    enum Role {
        IsHeadingRole = Qt::UserRole,
        IsLeadingRole, ///< the quantity that decides: drawn strong
        IsStaleRole,   ///< an input has changed since
        SpansRole,     ///< the value belongs to the appendage as a whole: one cell for both columns
        NumberRole,    ///< the value itself, in its unit
    };

    explicit ValueModel(QObject* parent = nullptr);

    void setRecord(const core::CaseRecord& record);
    /// Whether values whose input has changed are shown (greyed, while they are measured again) or left out.
    void setStaleShown(bool shown);
    /// The landing plane being dragged; nothing when the drag has ended.
    void setPreview(const core::LandingZone* landing);

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;

    /// The whole table as tab-separated lines, for a spreadsheet.
    QString asText() const;

private:
    struct Cell {
        std::optional<core::RecordedValue> value;
        bool stale = false;
    };
    struct Row;
    static const std::vector<Row>& rows();
    Cell cell(int row, int column) const;

    core::CaseRecord m_record;
    std::vector<core::RecordedValue> m_preview;
    double m_previewDepthMm = 0.0;
    bool m_staleShown = true;
};

} // namespace gauge::app
