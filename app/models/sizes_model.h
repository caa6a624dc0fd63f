// Every size of the chart against the appendage: chance to fit at the decision pressure and over the living range,
// compression (percent of the nominal size), depth. One row a size, in the chart's order.
#pragma once

#include "app/document/answers.h"

#include <QAbstractTableModel>
#include <QStringList>
#include <string>
#include <vector>

namespace gauge::app {

class SizesModel : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { Size, Fit, Lasting, Compression, DepthCheck, ColumnCount };
    enum Role {
        ChanceRole = Qt::UserRole, ///< 0 to 1, of the columns Fit and Lasting
        IsChosenRole,
        IsLeadingRole,  ///< has the greatest fit chance
        DetailRole,     ///< a second line: "chosen", "greatest fit chance", the compression over the widths to live with
        IsWarningRole,  ///< the cell itself says something against the size
        WarningsRole,   ///< QStringList, sentences
    };

    explicit SizesModel(QObject* parent = nullptr);
    void setAnswers(const Answers& answers);
    std::string sizeAt(int row) const;
    int rowOf(const std::string& size) const; ///< −1: none

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    /// Tab-separated, for a spreadsheet.
    QString asText() const;

private:
    QString display(int row, int column) const;
    QString detail(int row, int column) const;

    std::vector<core::SizeFit> m_sizes;
    std::vector<core::Band> m_bands; ///< allowed compression
    core::Band m_widthsMm;           ///< to live with
    double m_medianMm = 0.0;
    int m_leading = -1;
    std::string m_chosen;
};

} // namespace gauge::app
