// The evidence as a tree: series, and under each its phases. What cannot be used says why.
#pragma once

#include "dicomio/index/series_index.h"

#include <QAbstractItemModel>
#include <memory>
#include <optional>
#include <utility>

namespace gauge::app {

class EvidenceModel : public QAbstractItemModel {
    Q_OBJECT
public:
    enum Role {
        DetailRole = Qt::UserRole, ///< a second line: counts, spacing, or why it is refused
        IsShownRole,               ///< the phase that is measured
        IsRefusedRole,
    };

    explicit EvidenceModel(QObject* parent = nullptr);

    void setIndex(std::shared_ptr<const dicomio::SeriesIndex> index);
    void setShown(std::size_t series, std::size_t phase);

    /// Series and phase of a phase row; nothing for a series row.
    std::optional<std::pair<std::size_t, std::size_t>> phaseAt(const QModelIndex& index) const;
    QModelIndex indexOf(std::size_t series, std::size_t phase) const;

    QModelIndex index(int row, int column, const QModelIndex& parent = {}) const override;
    QModelIndex parent(const QModelIndex& index) const override;
    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;

private:
    QVariant seriesData(const dicomio::SeriesEntry& series, int role) const;
    QVariant phaseData(std::size_t series, std::size_t phase, int role) const;

    std::shared_ptr<const dicomio::SeriesIndex> m_index;
    std::pair<std::size_t, std::size_t> m_shown{0, 0};
};

} // namespace gauge::app
