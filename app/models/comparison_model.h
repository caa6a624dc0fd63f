// The comparison table: quantities down, one column per evidence state (modality, stage, moment, phase), so that echo before
// and after a repair stand side by side with CT. A cell holds the value as recorded, the value carried to the decision pressure,
// the difference from CT against the published limits, and the place where it was measured.
#pragma once

#include "app/document/answers.h"
#include "app/format/quantity.h"
#include "app/models/place.h"

#include <QAbstractTableModel>
#include <optional>
#include <string>
#include <vector>

namespace gauge::app {

class ComparisonModel : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Role {
        IsHeadingRole = Qt::UserRole,
        IsLeadingRole,    ///< the quantity that decides: drawn strong
        IsEmptyRole,      ///< a row without any value
        IsStaleRole,      ///< something that it was measured on has changed since
        CarriedRole,      ///< "22.1 ± 0.9 mm at 12 mmHg", or empty
        DifferenceRole,   ///< "−1.8 mm from CT, outside the published limits", or empty
        IsOutsideRole,    ///< the difference lies outside the published limits of agreement
        NumberRole,       ///< the value itself, in its unit
        StaleWordsRole,   ///< "out of date: …", or empty
    };

    explicit ComparisonModel(QObject* parent = nullptr);

    /// Takes over what the record and its answers say now.
    void setAnswers(const Answers& answers);
    /// The landing plane being dragged, shown in the CT's column; null when the drag has ended. What is not measured yet is said
    /// to be, instead of a value.
    void setPreview(const core::LandingZone* landing, bool measured = true);
    /// Whether values whose input has changed are being measured again: said instead of asking for a confirmation.
    void setMeasuring(bool measuring);

    /// Where the value was measured; nothing for an empty cell.
    std::optional<Place> placeAt(const QModelIndex& index) const;
    /// The recorded value of a cell; null for an empty one and for a typed reading.
    const core::RecordedValue* valueAt(const QModelIndex& index) const;
    /// Group and stale values of a column, for confirming; empty when none is stale.
    std::vector<std::string> staleIn(int column) const;
    const std::string& groupOf(int column) const;
    QModelIndex find(const std::string& group, const std::string& id) const;

    /// The whole table as tab-separated lines, for a spreadsheet: three columns for each evidence state. No cell can
    /// be taken for a formula.
    QString asText() const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    /// DisplayRole: "2D echo"; CarriedRole (a second line): stage; DifferenceRole (a third): pressure and phase.
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;

private:
    struct Row;
    struct Column {
        std::string group;      ///< of recorded values; empty for typed readings
        core::Modality modality = core::Modality::Ct;
        core::Stage stage = core::Stage::BeforeProcedure;
        std::string moment;     ///< id
        core::Phase phase = core::Phase::Unknown;
        bool typed = false;
        QString pressure;
        int copy = 0; ///< typed readings of one quantity and moment: the first of them, the second…
        bool drawn = false; ///< calipers on the CT that were put into the table
    };
    struct Cell {
        std::optional<core::RecordedValue> value;
        std::optional<core::Observation> reading;
        std::string typed; ///< id of a typed reading
        std::optional<core::CarriedValue> carried;
        std::optional<double> differenceMm;
        bool outside = false;
        bool hasLimits = false;
        QString explanation; ///< of the difference
        bool stale = false;
        Place place;

        bool isEmpty() const { return !value && typed.empty(); }
    };

    static const std::vector<Row>& rows();
    const Cell* cell(const QModelIndex& index) const;
    std::vector<Column> columnsOf(const Answers& answers) const;
    std::vector<Cell> cellsOf(const Answers& answers, const Column& column) const;
    Cell measuredCell(const Answers& answers, const Column& column, const Row& row) const;
    Cell drawnCell(const core::CaseRecord& record, const Row& row) const;
    Cell typedCell(const Answers& answers, const Column& column, const Row& row) const;
    void compare(const Answers& answers);
    bool isHeadingOfNothing(int row) const;
    QVariant quantityData(int row, int role) const;
    QString valueText(const Cell& cell, const Row& row) const;
    QString differenceText(const Cell& cell) const;
    QString toolTip(const Cell& cell, const Row& row) const;
    QString staleWords(const Cell& cell) const;

    std::vector<Column> m_columns;
    std::vector<std::vector<Cell>> m_cells; ///< by column, then row
    std::vector<core::RecordedValue> m_preview;
    bool m_unmeasuredPreview = false;
    core::CaseRecord m_record;
    bool m_measuring = false;
};

/// Text for a spreadsheet's cell: one line, no tabs, and nothing that a spreadsheet would compute.
QString spreadsheetText(QString text);

/// Where a recorded value was measured: page, evidence, frame, depth or plane, drawing.
Place placeOf(const core::CaseRecord& record, const core::RecordedValue& value);

} // namespace gauge::app
