#include "app/models/comparison_rows.h"

#include "app/format/decision_words.h"
#include "app/format/terms.h"
#include "app/format/core_sentences.h"
#include "core/record/measurement_values.h"

#include <algorithm>

namespace gauge::app {

ComparisonModel::ComparisonModel(QObject* parent) : QAbstractTableModel(parent) {}

void ComparisonModel::setMeasuring(bool measuring) {
    if (measuring == m_measuring) return;
    m_measuring = measuring;
    emit dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
}

void ComparisonModel::setPreview(const core::LandingZone* landing, bool measured) {
    const bool unmeasured = landing && !measured;
    if (!landing && m_preview.empty() && !m_unmeasuredPreview) return;
    if (unmeasured && m_unmeasuredPreview) return; // nothing new to say
    m_unmeasuredPreview = unmeasured;
    m_preview.clear();
    if (landing && measured) {
        core::AppendageMeasurement only;
        only.landingZones.push_back(*landing);
        for (core::RecordedValue& value :
             core::recordedValues(only, m_record, std::make_shared<const core::Provenance>()))
            if (value.id.starts_with("landing-1/")) m_preview.push_back(std::move(value));
    }
    emit dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
}

const ComparisonModel::Cell* ComparisonModel::cell(const QModelIndex& index) const {
    if (!index.isValid() || index.column() == 0) return nullptr;
    const auto column = static_cast<std::size_t>(index.column() - 1);
    if (column >= m_cells.size()) return nullptr;
    const Cell& found = m_cells[column][static_cast<std::size_t>(index.row())];
    return found.isEmpty() ? nullptr : &found;
}

std::optional<Place> ComparisonModel::placeAt(const QModelIndex& index) const {
    const Cell* c = cell(index);
    return c ? std::optional(c->place) : std::nullopt;
}

const core::RecordedValue* ComparisonModel::valueAt(const QModelIndex& index) const {
    const Cell* c = cell(index);
    return c && c->value ? &*c->value : nullptr;
}

const std::string& ComparisonModel::groupOf(int column) const {
    static const std::string kNone;
    const auto at = static_cast<std::size_t>(column - 1);
    return column < 1 || at >= m_columns.size() ? kNone : m_columns[at].group;
}

/// All stale values of the group, also those without a row.
std::vector<std::string> ComparisonModel::staleIn(int column) const {
    std::vector<std::string> ids;
    const std::string& group = groupOf(column);
    if (group.empty()) return ids;
    for (const core::RecordedValue& value : m_record.values)
        if (value.group == group && core::isStale(m_record, value)) ids.push_back(value.id);
    return ids;
}

QModelIndex ComparisonModel::find(const std::string& group, const std::string& id) const {
    for (std::size_t column = 0; column < m_cells.size(); ++column)
        for (std::size_t row = 0; row < m_cells[column].size(); ++row) {
            const Cell& c = m_cells[column][row];
            if (c.value && c.value->group == group && c.value->id == id)
                return index(static_cast<int>(row), static_cast<int>(column) + 1);
        }
    return {};
}

int ComparisonModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows().size());
}

int ComparisonModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_columns.size()) + 1;
}

QString ComparisonModel::valueText(const Cell& c, const Row& row) const {
    if (!c.value) {
        core::Estimate typed;
        typed.value = c.reading->valueMm;
        typed.components.observer = c.reading->standardUncertaintyMm.value_or(0.0);
        return estimate(typed, row.unit);
    }
    if (m_unmeasuredPreview && c.value->group == core::kCtValues && c.value->id.starts_with("landing-1/")) return tr("measuring …");
    const auto& preview = std::find_if(m_preview.begin(), m_preview.end(),
                                       [&](const auto& v) { return v.id == c.value->id && c.value->group == core::kCtValues; });
    const core::Estimate& e = preview == m_preview.end() ? c.value->estimate : preview->estimate;
    // Mean levels are shown plainly: their spread is the tissue's, not an uncertainty of reading.
    if (row.unit == Unit::Hounsfield || c.value->id == "enhancement/tip-to-aorta") return quantity(e.value, row.unit);
    return estimate(e, row.unit);
}

QString ComparisonModel::differenceText(const Cell& c) const {
    if (!c.differenceMm) return {};
    const QString difference = differenceWords(*c.differenceMm);
    if (!c.hasLimits) return tr("%1 from CT; no published limits").arg(difference);
    return c.outside ? tr("%1 from CT: outside the published limits").arg(difference)
                     : tr("%1 from CT, within the published limits").arg(difference);
}

QString ComparisonModel::staleWords(const Cell& c) const {
    if (!c.stale) return {};
    return m_measuring ? tr("out of date: being measured again") : tr("out of date: measure again or confirm");
}

QString ComparisonModel::toolTip(const Cell& c, const Row& row) const {
    QStringList lines{comparisonWords(row.explanation)};
    if (c.value) {
        if (const QString parts = uncertaintyParts(c.value->estimate, row.unit); !parts.isEmpty())
            lines << tr("Standard uncertainty: %1").arg(parts);
        if (!c.value->estimate.method.empty())
            lines << tr("Obtained by: %1").arg(coreWords(c.value->estimate.method));
        lines << tr("Enter or double click shows where it was measured.");
    } else {
        lines << tr("Typed in, not measured here.");
    }
    if (c.carried)
        lines << tr("Carried from %1 (%2) by pressure alone: %3.")
                     .arg(pressureWords(c.carried->fromMmHg),
                          c.carried->pressureMeasured ? tr("measured") : tr("assumed"), differenceWords(c.carried->changeMm));
    if (!c.explanation.isEmpty()) lines << c.explanation;
    if (c.stale) lines << staleWords(c);
    return lines.join(QLatin1Char('\n'));
}

QVariant ComparisonModel::quantityData(int at, int role) const {
    const Row& row = rows()[static_cast<std::size_t>(at)];
    if (role == Qt::DisplayRole) return comparisonWords(row.words);
    if (role == Qt::ToolTipRole && !row.heading) return comparisonWords(row.explanation);
    if (role == Qt::AccessibleTextRole) return comparisonWords(row.words);
    return {};
}

QVariant ComparisonModel::data(const QModelIndex& at, int role) const {
    if (!checkIndex(at, CheckIndexOption::IndexIsValid)) return {};
    const Row& row = rows()[static_cast<std::size_t>(at.row())];
    if (role == IsHeadingRole) return row.heading;
    if (role == IsLeadingRole) return row.leading;
    if (role == IsEmptyRole)
        return !row.heading && std::all_of(m_cells.begin(), m_cells.end(), [&](const auto& column) {
            return column[static_cast<std::size_t>(at.row())].isEmpty();
        });
    if (role == Qt::TextAlignmentRole)
        return QVariant(at.column() == 0 ? Qt::AlignLeft | Qt::AlignVCenter : Qt::AlignRight | Qt::AlignVCenter);
    if (at.column() == 0) return quantityData(at.row(), role);
    const Cell* c = cell(at);
    if (!c) {
        if (role == Qt::DisplayRole) return row.heading ? QString() : QStringLiteral("–");
        if (role == IsStaleRole || role == IsOutsideRole) return false;
        return {};
    }
    switch (role) {
    case Qt::DisplayRole:
        return valueText(*c, row);
    case CarriedRole:
        return c->carried && !c->stale ? carriedWords(*c->carried) : QString();
    case DifferenceRole:
        return differenceText(*c);
    case IsOutsideRole:
        return c->outside;
    case IsStaleRole:
        return c->stale;
    case StaleWordsRole:
        return staleWords(*c);
    case NumberRole:
        return c->value ? c->value->estimate.value : c->reading->valueMm;
    case Qt::ToolTipRole:
        return toolTip(*c, row);
    case Qt::AccessibleTextRole: {
        QStringList parts{comparisonWords(row.words), valueText(*c, row)};
        for (const int more : {static_cast<int>(CarriedRole), static_cast<int>(DifferenceRole),
                               static_cast<int>(StaleWordsRole)})
            if (const QString text = data(at, more).toString(); !text.isEmpty()) parts << text;
        return parts.join(QStringLiteral(", "));
    }
    default:
        return {};
    }
}

QVariant ComparisonModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (section == 0) return role == Qt::DisplayRole ? QVariant(tr("Quantity")) : QVariant();
    const auto at = static_cast<std::size_t>(section - 1);
    if (at >= m_columns.size()) return {};
    const Column& c = m_columns[at];
    const QString name = modalityName(c.modality);
    const QString modality = c.typed ? tr("%1, typed in").arg(name) : c.drawn ? tr("%1, drawn by hand").arg(name) : name;
    switch (role) {
    case Qt::DisplayRole:
        return modality;
    case CarriedRole:
        return stageName(c.stage);
    case DifferenceRole:
        return tr("%1, %2").arg(c.pressure, phaseWords(c.phase));
    case Qt::ToolTipRole:
    case Qt::AccessibleTextRole:
        return QStringList{modality, stageName(c.stage), c.pressure, phaseWords(c.phase)}.join(QStringLiteral(", "));
    default:
        return {};
    }
}

Qt::ItemFlags ComparisonModel::flags(const QModelIndex& at) const {
    if (!at.isValid()) return Qt::NoItemFlags;
    const bool heading = rows()[static_cast<std::size_t>(at.row())].heading;
    return heading ? Qt::ItemIsEnabled | Qt::ItemNeverHasChildren
                   : Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
}

QString spreadsheetText(QString text) {
    text = plainSpaces(text);
    for (const QChar gap : {QLatin1Char('\t'), QLatin1Char('\n'), QLatin1Char('\r')})
        text.replace(gap, QLatin1Char(' '));
    static const QString kFormula = QStringLiteral("=+-@");
    return !text.isEmpty() && kFormula.contains(text.front()) ? QLatin1Char('\'') + text : text;
}

bool ComparisonModel::isHeadingOfNothing(int row) const {
    if (!rows()[static_cast<std::size_t>(row)].heading) return false;
    for (int below = row + 1; below < rowCount() && !rows()[static_cast<std::size_t>(below)].heading; ++below)
        if (!index(below, 0).data(IsEmptyRole).toBool()) return false;
    return true;
}

QString ComparisonModel::asText() const {
    const QChar tab = QLatin1Char('\t'), end = QLatin1Char('\n');
    QString text = spreadsheetText(tr("Quantity"));
    for (int column = 1; column < columnCount(); ++column) {
        const QString name = headerData(column, Qt::Horizontal, Qt::ToolTipRole).toString();
        for (const QString& title : {name, tr("%1: carried to the decision pressure").arg(name),
                                     tr("%1: against CT").arg(name)})
            text += tab + spreadsheetText(title);
    }
    text += end;
    for (int row = 0; row < rowCount(); ++row) {
        if (index(row, 0).data(IsEmptyRole).toBool() || isHeadingOfNothing(row)) continue;
        text += spreadsheetText(index(row, 0).data().toString());
        for (int column = 1; column < columnCount(); ++column) {
            const QModelIndex at = index(row, column);
            const QString stale = at.data(StaleWordsRole).toString();
            const QString value = at.data().toString();
            text += tab + spreadsheetText(stale.isEmpty() ? value : tr("%1 (%2)").arg(value, stale));
            text += tab + spreadsheetText(at.data(CarriedRole).toString());
            text += tab + spreadsheetText(at.data(DifferenceRole).toString());
        }
        text += end;
    }
    return text;
}

} // namespace gauge::app
