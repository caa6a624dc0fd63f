#include "app/models/evidence_model.h"

#include <QStringList>

namespace gauge::app {
namespace {

// internalId: 0 for a series row, series + 1 for its phases.
constexpr quintptr kSeriesRow = 0;

QString kindWord(const std::string& kind) {
    if (kind == "ct" || kind == "ct-enhanced") return QStringLiteral("CT");
    if (kind == "ultrasound") return QStringLiteral("Echo");
    if (kind == "x-ray") return QStringLiteral("Fluoroscopy");
    return kind.empty() ? QStringLiteral("Images") : QString::fromStdString(kind);
}

/// Refused, or set aside: the message says why, and there is nothing to choose in it.
bool cannotBeUsed(const dicomio::SeriesEntry& series) {
    return series.status == dicomio::SeriesStatus::Refused || series.status == dicomio::SeriesStatus::SetAside;
}

QString detail(const dicomio::SeriesEntry& series) {
    if (cannotBeUsed(series))
        return series.messages.empty() ? QStringLiteral("cannot be used")
                                       : QString::fromStdString(series.messages.front().text);
    QString text = QStringLiteral("%1 images").arg(series.imageCount);
    if (series.spacingMm) {
        const auto mm = [](double value) { return QString::number(value, 'f', 2); };
        const Eigen::Vector3d& s = *series.spacingMm;
        text +=
            QStringLiteral(", %1\u00A0×\u00A0%2\u00A0×\u00A0%3\u00A0mm").arg(mm(s.x()), mm(s.y()), mm(s.z()));
    }
    return text;
}

QString notices(const dicomio::SeriesEntry& series) {
    QStringList lines;
    for (const auto& message : series.messages)
        lines << QString::fromStdString(message.text);
    return lines.join(QLatin1Char('\n'));
}

} // namespace

EvidenceModel::EvidenceModel(QObject* parent) : QAbstractItemModel(parent) {}

void EvidenceModel::setIndex(std::shared_ptr<const dicomio::SeriesIndex> index) {
    beginResetModel();
    m_index = std::move(index);
    endResetModel();
}

void EvidenceModel::setShown(std::size_t series, std::size_t phase) {
    const auto before = m_shown;
    m_shown = {series, phase};
    for (const auto& [s, p] : {before, m_shown})
        if (const QModelIndex changed = indexOf(s, p); changed.isValid()) emit dataChanged(changed, changed);
}

std::optional<std::pair<std::size_t, std::size_t>> EvidenceModel::phaseAt(const QModelIndex& index) const {
    if (!index.isValid() || index.internalId() == kSeriesRow) return std::nullopt;
    return std::pair<std::size_t, std::size_t>(index.internalId() - 1, static_cast<std::size_t>(index.row()));
}

QModelIndex EvidenceModel::indexOf(std::size_t series, std::size_t phase) const {
    if (!m_index || series >= m_index->series.size() || phase >= m_index->series[series].phases.size())
        return {};
    return createIndex(static_cast<int>(phase), 0, series + 1);
}

QModelIndex EvidenceModel::index(int row, int column, const QModelIndex& parent) const {
    if (!hasIndex(row, column, parent)) return {};
    return createIndex(row, column, parent.isValid() ? static_cast<quintptr>(parent.row()) + 1 : kSeriesRow);
}

QModelIndex EvidenceModel::parent(const QModelIndex& index) const {
    if (!index.isValid() || index.internalId() == kSeriesRow) return {};
    return createIndex(static_cast<int>(index.internalId() - 1), 0, kSeriesRow);
}

int EvidenceModel::rowCount(const QModelIndex& parent) const {
    if (!m_index || parent.column() > 0) return 0;
    if (!parent.isValid()) return static_cast<int>(m_index->series.size());
    if (parent.internalId() != kSeriesRow) return 0;
    const auto& series = m_index->series[static_cast<std::size_t>(parent.row())];
    return cannotBeUsed(series) ? 0 : static_cast<int>(series.phases.size());
}

int EvidenceModel::columnCount(const QModelIndex&) const {
    return 1;
}

QVariant EvidenceModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    if (const auto phase = phaseAt(index)) return phaseData(phase->first, phase->second, role);
    return seriesData(m_index->series[static_cast<std::size_t>(index.row())], role);
}

QVariant EvidenceModel::seriesData(const dicomio::SeriesEntry& series, int role) const {
    switch (role) {
    case Qt::DisplayRole:
        return series.description.empty() ? kindWord(series.kind)
                                          : kindWord(series.kind) + QStringLiteral(": ") +
                                                QString::fromStdString(series.description);
    case DetailRole:
        return detail(series);
    case Qt::ToolTipRole:
        return notices(series);
    case IsRefusedRole:
        return cannotBeUsed(series);
    case IsShownRole:
        return false;
    default:
        return {};
    }
}

QVariant EvidenceModel::phaseData(std::size_t series, std::size_t phase, int role) const {
    const dicomio::PhaseEntry& entry = m_index->series[series].phases[phase];
    switch (role) {
    case Qt::DisplayRole:
        return entry.percent ? QStringLiteral("phase ") + QString::fromStdString(entry.label)
                             : QString::fromStdString(entry.label);
    case IsShownRole:
        return m_shown == std::pair(series, phase);
    case IsRefusedRole:
        return false;
    case Qt::ToolTipRole:
        return QStringLiteral("Measure this phase (double click or Enter)");
    default:
        return {};
    }
}

Qt::ItemFlags EvidenceModel::flags(const QModelIndex& index) const {
    if (!index.isValid()) return Qt::NoItemFlags;
    const Qt::ItemFlags base = Qt::ItemIsEnabled;
    return phaseAt(index) ? base | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren : base;
}

} // namespace gauge::app
