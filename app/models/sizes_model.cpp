#include "app/models/sizes_model.h"

#include "app/format/core_sentences.h"
#include "app/format/decision_words.h"
#include "app/format/sizing_sentences.h"
#include "app/models/comparison_model.h"

#include <algorithm>

namespace gauge::app {

SizesModel::SizesModel(QObject* parent) : QAbstractTableModel(parent) {}

void SizesModel::setAnswers(const Answers& answers) {
    const core::SizingAnswer* answer = answers.sizing();
    const auto same = [&] {
        return answer && answer->sizes.size() == m_sizes.size() &&
               std::equal(m_sizes.begin(), m_sizes.end(), answer->sizes.begin(),
                          [](const auto& a, const auto& b) { return a.name == b.name; });
    };
    const bool reset = !same();
    if (reset) beginResetModel();
    m_sizes = answer ? answer->sizes : std::vector<core::SizeFit>();
    m_bands.clear();
    if (answer)
        for (const core::ChartSize& size : answers.sizingQuestion().chart.sizes)
            m_bands.push_back(size.compressionPercent);
    m_widthsMm = answer ? answer->livingInterval95Mm : core::Band{};
    m_medianMm = answer ? answer->diameter.medianMm : 0.0;
    m_leading = answer && answer->leading ? static_cast<int>(*answer->leading) : -1;
    m_chosen = answers.record().sizing ? answers.record().sizing->content.size : std::string();
    if (reset)
        endResetModel();
    else if (rowCount() > 0)
        emit dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
}

std::string SizesModel::sizeAt(int row) const {
    return row >= 0 && row < rowCount() ? m_sizes[static_cast<std::size_t>(row)].name : std::string();
}

int SizesModel::rowOf(const std::string& size) const {
    for (int row = 0; row < rowCount(); ++row)
        if (sizeAt(row) == size) return row;
    return -1;
}

int SizesModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_sizes.size());
}

int SizesModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QString SizesModel::display(int row, int column) const {
    const core::SizeFit& s = m_sizes[static_cast<std::size_t>(row)];
    switch (column) {
    case Size:
        return QString::fromStdString(s.name);
    case Fit:
        return chanceWords(s.fitChance);
    case Lasting:
        return chanceWords(s.lastingFit);
    case Compression:
        return compressionWords(s.nominalMm, m_medianMm);
    case DepthCheck:
        return depthWords(s);
    default:
        return {};
    }
}

QString SizesModel::detail(int row, int column) const {
    const auto at = static_cast<std::size_t>(row);
    if (column == Size) {
        const bool chosen = m_sizes[at].name == m_chosen, leads = row == m_leading;
        if (chosen && leads) return tr("chosen; greatest fit chance");
        return chosen ? tr("chosen") : leads ? tr("greatest fit chance") : QString();
    }
    if (column == Compression)
        return tr("living range: %1").arg(compressionRangeWords(m_sizes[at], m_widthsMm));
    return {};
}

QVariant SizesModel::data(const QModelIndex& at, int role) const {
    if (!checkIndex(at, CheckIndexOption::IndexIsValid)) return {};
    const core::SizeFit& s = m_sizes[static_cast<std::size_t>(at.row())];
    switch (role) {
    case Qt::DisplayRole:
        return display(at.row(), at.column());
    case DetailRole:
        return detail(at.row(), at.column());
    case ChanceRole:
        return at.column() == Fit ? QVariant(s.fitChance) : at.column() == Lasting ? QVariant(s.lastingFit) : QVariant();
    case IsChosenRole:
        return s.name == m_chosen;
    case IsLeadingRole:
        return at.row() == m_leading;
    case IsWarningRole:
        return (at.column() == DepthCheck && s.depthOk && !*s.depthOk) ||
               (at.column() == Compression && m_medianMm > s.nominalMm);
    case WarningsRole: {
        QStringList lines;
        for (const core::Notice& n : s.warnings)
            lines << sentence(n);
        return lines;
    }
    case Qt::ToolTipRole: {
        const core::Band& band = m_bands[static_cast<std::size_t>(at.row())];
        QStringList lines{tr("Size %1: compression allowed by the chart %2 to %3 of the nominal size.")
                              .arg(QString::fromStdString(s.name), percentWords(band.lo), percentWords(band.hi)),
                          tr("Oversizing, percent of the appendage: %1. The two percentages are different numbers.")
                              .arg(percentWords(s.oversizingPercent)),
                          tr("Too small at the highest pressure: %1; too tight at the lowest: %2.")
                              .arg(chanceWords(s.undersizeChance), chanceWords(s.overcompressionChance))};
        for (const core::Notice& n : s.warnings)
            lines << sentence(n);
        return lines.join(QLatin1Char('\n'));
    }
    case Qt::AccessibleTextRole: {
        const QString more = detail(at.row(), at.column());
        const QString text = tr("Size %1, %2: %3")
                                 .arg(QString::fromStdString(s.name),
                                      headerData(at.column(), Qt::Horizontal, Qt::DisplayRole).toString(),
                                      display(at.row(), at.column()));
        return more.isEmpty() ? text : text + QStringLiteral(", ") + more;
    }
    default:
        return {};
    }
}

QVariant SizesModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::DisplayRole) {
        switch (section) {
        case Size:
            return tr("Size");
        case Fit:
            return tr("Fit chance");
        case Lasting:
            return tr("Living range");
        case Compression:
            return tr("Compression");
        case DepthCheck:
            return tr("Depth");
        default:
            return {};
        }
    }
    if (role != Qt::ToolTipRole) return {};
    switch (section) {
    case Fit:
        return tr("Chance that the size's band holds the width at the decision pressure");
    case Lasting:
        return tr("Chance that the compression stays inside its band at every pressure of the living range");
    case Compression:
        return tr("100 (nominal size − width) / nominal size, at the decision pressure");
    case DepthCheck:
        return tr("Depth that there is, against the least depth that the chart asks for");
    default:
        return {};
    }
}

QString SizesModel::asText() const {
    QString text;
    for (int column = 0; column < ColumnCount; ++column)
        text += (column ? QStringLiteral("\t") : QString()) +
                spreadsheetText(headerData(column, Qt::Horizontal, Qt::DisplayRole).toString());
    text += QLatin1Char('\n');
    for (int row = 0; row < rowCount(); ++row) {
        for (int column = 0; column < ColumnCount; ++column)
            text += (column ? QStringLiteral("\t") : QString()) + spreadsheetText(display(row, column));
        text += QLatin1Char('\n');
    }
    return text;
}

} // namespace gauge::app
