// The columns of the comparison table and what stands in their cells: from the record and its answers.
#include "app/models/comparison_rows.h"

#include "app/format/core_sentences.h"
#include "app/format/decision_words.h"
#include "core/pressure/difference_split.h"

#include <QCoreApplication>
#include <algorithm>
#include <set>

namespace gauge::app {
namespace {

std::optional<core::Modality> modalityOf(std::string_view group) {
    if (group == core::kCtValues) return core::Modality::Ct;
    if (group.starts_with("echo/")) return core::Modality::Echo2d;
    if (group.starts_with("echo-3d/")) return core::Modality::Echo3d;
    if (group.starts_with("fluoroscopy/")) return core::Modality::Fluoroscopy;
    return std::nullopt;
}

/// How many typed readings before this one would stand in the same cell: two reports may differ about one quantity.
int copyOf(const core::CaseReadings& readings, std::size_t which) {
    const core::Observation& o = readings.observations[which];
    int copies = 0;
    for (std::size_t i = 0; i < which; ++i) {
        const core::Observation& other = readings.observations[i];
        const bool sameCell = core::isView(o.derivation) ? other.derivation == o.derivation : !core::isView(other.derivation);
        copies += !readings.origins[i].typed.empty() && other.modality == o.modality && other.state == o.state &&
                  other.phase == o.phase && other.quantity == o.quantity && sameCell;
    }
    return copies;
}

/// A caliper on the CT that was put into the table.
bool isDrawnOnCt(const core::Drawing& drawing) {
    return drawing.evidence.empty() && drawing.role != core::DrawingRole::None && std::holds_alternative<core::SectionSite>(drawing.site);
}

/// Id of the value of such a drawing that belongs into the row with this id of the pictures; empty for none.
std::string drawnValueId(core::DrawingRole role, std::string_view row) {
    using enum core::DrawingRole;
    const std::string_view metric = row.substr(std::min(row.size(), row.find('/') + 1));
    const bool landing = row.starts_with("landing/"), ostium = row.starts_with("ostium/");
    if ((role == LandingWidth && landing && metric == "single-view") || (role == OstiumWidth && ostium && metric == "single-view") ||
        (role == Depth && row == "depth"))
        return "length";
    return (role == LandingContour && landing) || (role == OstiumContour && ostium) ? std::string(metric) : std::string();
}

/// Id of a recorded value of the CT: the second landing plane and the plug plane are numbered as the record has them.
std::string ctValueId(const core::CaseRecord& record, const std::string& id) {
    const auto numbered = [&](std::size_t number) { return "landing-" + std::to_string(number) + id.substr(id.find('/')); };
    const std::size_t planes = record.landing.depthsMm.size();
    if (id.starts_with("second/")) return planes > 1 ? numbered(2) : std::string();
    if (id.starts_with("plug/")) return record.landing.plugMm ? numbered(planes + 1) : std::string();
    return id;
}

QString pressureOf(const std::optional<double>& mmHg) {
    return mmHg ? pressureWords(*mmHg) : comparisonWords(QT_TRANSLATE_NOOP("Comparison", "pressure unknown"));
}

/// A published figure exists for this kind of reading.
bool hasPublishedLimits(const core::Observation& reading) {
    if (core::isView(reading.derivation)) return false;
    const auto& all = core::publishedDifferences();
    return std::any_of(all.begin(), all.end(), [&](const auto& p) { return p.modality == reading.modality; });
}

/// "−3.0 mm: −2.1 mm of it by pressure, −0.7 mm by modality, −0.2 ± 1.4 mm left."
QString splitWords(const core::Observation& reading, const core::Observation& ct) {
    const auto split = core::splitDifference(reading, ct, core::PressureLaw::Logarithmic);
    if (!split) return {};
    core::Estimate left;
    left.value = split->remainder.valueMm;
    left.components.observer = split->remainder.standardUncertaintyMm;
    return QCoreApplication::translate("Comparison",
                                       "Of the difference from CT, pressure explains %1, the modality %2; %3 is left.")
        .arg(differenceWords(split->pressure.valueMm), differenceWords(split->modality.valueMm),
             estimate(left, Unit::Millimetre));
}

} // namespace

std::vector<ComparisonModel::Column> ComparisonModel::columnsOf(const Answers& answers) const {
    std::vector<Column> columns;
    const core::CaseRecord& record = answers.record();
    std::set<std::string> groups;
    for (const core::RecordedValue& value : record.values)
        if (modalityOf(value.group)) groups.insert(value.group);
    for (const std::string& group : groups) {
        Column column;
        column.group = group;
        column.modality = *modalityOf(group);
        column.moment = std::string(core::momentOfGroup(group));
        for (const core::RecordedValue& value : record.values) {
            if (value.group != group) continue;
            const auto reading = core::readingOf(record, value);
            if (!reading) continue;
            column.stage = reading->stage;
            column.phase = reading->phase;
            column.pressure = pressureOf(reading->pressureMmHg);
            if (group == core::kCtValues && reading->state != core::kCtState) column.moment = reading->state;
            break;
        }
        if (column.pressure.isEmpty()) column.pressure = pressureOf(std::nullopt);
        columns.push_back(std::move(column));
    }
    if (std::any_of(record.drawings.begin(), record.drawings.end(), [](const auto& d) { return isDrawnOnCt(d.second.content); })) {
        Column drawn;
        for (const Column& column : columns)
            if (column.group == core::kCtValues) drawn = column;
        drawn.group = "drawing";
        drawn.drawn = true;
        if (drawn.pressure.isEmpty()) drawn.pressure = pressureOf(std::nullopt);
        columns.push_back(std::move(drawn));
    }
    for (std::size_t i = 0; i < answers.readings().origins.size(); ++i) {
        const core::ReadingOrigin& origin = answers.readings().origins[i];
        if (origin.typed.empty()) continue;
        const core::Observation& o = answers.readings().observations[i];
        const int copy = copyOf(answers.readings(), i);
        const auto same = [&](const Column& c) {
            return c.typed && c.modality == o.modality && c.moment == o.state && c.phase == o.phase && c.copy == copy;
        };
        if (std::any_of(columns.begin(), columns.end(), same)) continue;
        columns.push_back({{}, o.modality, o.stage, o.state, o.phase, true, pressureOf(o.pressureMmHg), copy});
    }
    std::stable_sort(columns.begin(), columns.end(), [](const Column& a, const Column& b) {
        const auto key = [](const Column& c) {
            return std::tuple(c.group != core::kCtValues, c.stage, c.modality, c.typed, c.moment, c.copy);
        };
        return key(a) < key(b);
    });
    return columns;
}

ComparisonModel::Cell ComparisonModel::measuredCell(const Answers& answers, const Column& column, const Row& row) const {
    Cell cell;
    const bool ct = column.group == core::kCtValues;
    if (!(ct ? row.ct : row.picture)) return cell;
    const core::CaseRecord& record = answers.record();
    const std::string id = ct ? ctValueId(record, row.ct) : row.picture;
    const auto found = std::find_if(record.values.begin(), record.values.end(), [&](const core::RecordedValue& v) {
        return v.group == column.group && v.id == id;
    });
    if (found == record.values.end()) return cell;
    cell.value = *found;
    cell.stale = core::isStale(record, *found);
    cell.reading = core::readingOf(record, *found);
    cell.place = placeOf(record, *found);
    const auto& origins = answers.readings().origins;
    for (std::size_t i = 0; i < origins.size(); ++i)
        if (origins[i].group == column.group && origins[i].values == std::vector{found->id} && i < answers.carried().size())
            cell.carried = answers.carried()[i];
    return cell;
}

/// Of several calipers for one row the one that was drawn or put there last.
ComparisonModel::Cell ComparisonModel::drawnCell(const core::CaseRecord& record, const Row& row) const {
    Cell cell;
    core::Revision newest = 0;
    for (const auto& [id, entry] : record.drawings) {
        if (!row.picture || !isDrawnOnCt(entry.content) || entry.revision < newest) continue;
        const std::string wanted = drawnValueId(entry.content.role, row.picture);
        const auto found = std::find_if(record.values.begin(), record.values.end(), [&, group = core::entryInput<core::Drawing>(id)](const auto& v) {
            return !wanted.empty() && v.group == group && v.id == wanted;
        });
        if (found == record.values.end()) continue;
        newest = entry.revision;
        cell.value = *found;
        cell.stale = core::isStale(record, *found);
        cell.place = placeOf(record, *found);
    }
    return cell;
}

ComparisonModel::Cell ComparisonModel::typedCell(const Answers& answers, const Column& column, const Row& row) const {
    Cell cell;
    if (!row.quantity) return cell;
    const auto& readings = answers.readings();
    for (std::size_t i = 0; i < readings.origins.size(); ++i) {
        const core::Observation& o = readings.observations[i];
        const bool view = core::isView(o.derivation);
        const bool fits = !readings.origins[i].typed.empty() && o.modality == column.modality && o.state == column.moment &&
                          o.phase == column.phase && o.quantity == *row.quantity && copyOf(readings, i) == column.copy &&
                          (view ? o.derivation == row.derivation : !core::isView(row.derivation));
        if (!fits) continue;
        cell.typed = readings.origins[i].typed;
        cell.reading = o;
        if (i < answers.carried().size()) cell.carried = answers.carried()[i];
        cell.place.page = Page::Course;
        cell.place.reading = QString::fromStdString(cell.typed);
        return cell;
    }
    return cell;
}

std::vector<ComparisonModel::Cell> ComparisonModel::cellsOf(const Answers& answers, const Column& column) const {
    std::vector<Cell> cells;
    for (const Row& row : rows())
        cells.push_back(row.heading    ? Cell{}
                        : column.typed ? typedCell(answers, column, row)
                        : column.drawn ? drawnCell(answers.record(), row)
                                       : measuredCell(answers, column, row));
    return cells;
}

/// Differences from the CT's contour of the same quantity.
void ComparisonModel::compare(const Answers&) {
    const auto ctColumn = std::find_if(m_columns.begin(), m_columns.end(),
                                       [](const Column& c) { return c.group == core::kCtValues; });
    if (ctColumn == m_columns.end()) return;
    const auto& ct = m_cells[static_cast<std::size_t>(ctColumn - m_columns.begin())];
    for (std::size_t column = 0; column < m_columns.size(); ++column) {
        if (m_columns[column].modality == core::Modality::Ct) continue;
        for (std::size_t row = 0; row < rows().size(); ++row) {
            Cell& cell = m_cells[column][row];
            const Cell& reference = ct[row];
            if (!cell.reading || !reference.reading || cell.stale || reference.stale) continue;
            cell.differenceMm = cell.reading->valueMm - reference.reading->valueMm;
            cell.hasLimits = hasPublishedLimits(*cell.reading) && cell.reading->quantity != core::Quantity::Depth;
            QStringList lines;
            if (cell.hasLimits)
                if (const auto notice = core::beyondPublishedLimits(*cell.reading, *reference.reading)) {
                    cell.outside = true;
                    lines << sentence(*notice);
                }
            if (const QString split = splitWords(*cell.reading, *reference.reading); !split.isEmpty()) lines << split;
            cell.explanation = lines.join(QLatin1Char('\n'));
        }
    }
}

void ComparisonModel::setAnswers(const Answers& answers) {
    std::vector<Column> columns = columnsOf(answers);
    const bool sameShape = columns.size() == m_columns.size() &&
                           std::equal(columns.begin(), columns.end(), m_columns.begin(), [](const auto& a, const auto& b) {
                               return a.group == b.group && a.typed == b.typed && a.moment == b.moment &&
                                      a.modality == b.modality && a.phase == b.phase && a.copy == b.copy;
                           });
    if (!sameShape) beginResetModel();
    m_record = answers.record();
    m_columns = std::move(columns);
    m_cells.clear();
    for (const Column& column : m_columns)
        m_cells.push_back(cellsOf(answers, column));
    compare(answers);
    if (!sameShape) {
        endResetModel();
        return;
    }
    emit dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
    emit headerDataChanged(Qt::Horizontal, 0, columnCount() - 1);
}

} // namespace gauge::app
