#include "app/models/comparison_model.h"

#include "app/format/core_sentences.h"
#include "app/format/decision_words.h"
#include "app/format/terms.h"
#include "core/pressure/difference_split.h"
#include "core/record/measurement_values.h"

#include <QCoreApplication>
#include <algorithm>
#include <set>

namespace gauge::app {

/// One quantity: its ids in the CT's values and in those of the other modalities.
struct ComparisonModel::Row {
    const char* words;
    const char* ct = nullptr;
    const char* picture = nullptr;
    Unit unit = Unit::Millimetre;
    const char* explanation = "";
    std::optional<core::Quantity> quantity{};
    core::Derivation derivation = core::Derivation::Contour; ///< of typed readings: views stand in rows of their own
    bool heading = false;
    bool leading = false;
};

const std::vector<ComparisonModel::Row>& ComparisonModel::rows() {
    using Q = core::Quantity;
    constexpr auto contour = core::Derivation::Contour;
    constexpr auto views = core::Derivation::LargestOfViews;
    constexpr auto single = core::Derivation::SingleView;
    constexpr auto mm = Unit::Millimetre;
    const auto heading = [](const char* words) {
        Row row{words};
        row.heading = true;
        return row;
    };
    static const std::vector<Row> table = [&] {
        std::vector<Row> t;
        t.push_back(heading(QT_TRANSLATE_NOOP("Comparison", "Landing zone")));
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "perimeter-derived"), "landing-1/perimeter-derived-diameter",
                     "landing/perimeter-derived-diameter", mm, QT_TRANSLATE_NOOP("Comparison", "Perimeter divided by π"),
                     Q::LandingZonePerimeterDerivedDiameter, contour, false, true});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "longest"), "landing-1/longest-diameter", "landing/longest-diameter", mm,
                     QT_TRANSLATE_NOOP("Comparison", "Greatest distance between two points of the contour"),
                     Q::LandingZoneLongestDiameter});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "largest of the views"), nullptr, "landing/largest-of-views", mm,
                     QT_TRANSLATE_NOOP("Comparison", "Largest width among the views: no contour's diameter"),
                     Q::LandingZoneLongestDiameter, views});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "single view"), nullptr, "landing/single-view", mm,
                     QT_TRANSLATE_NOOP("Comparison", "Width in one view: no contour's diameter"),
                     Q::LandingZoneLongestDiameter, single});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "shortest"), "landing-1/shortest-diameter", "landing/shortest-diameter",
                     mm, QT_TRANSLATE_NOOP("Comparison", "Widest extent perpendicular to the longest diameter")});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "area-derived"), "landing-1/area-derived-diameter",
                     "landing/area-derived-diameter", mm,
                     QT_TRANSLATE_NOOP("Comparison", "Diameter of the circle of the same area"),
                     Q::LandingZoneAreaDerivedDiameter});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "mean"), "landing-1/mean-diameter", "landing/mean-diameter", mm,
                     QT_TRANSLATE_NOOP("Comparison", "Half the sum of longest and shortest diameter")});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "least width"), "landing-1/least-width", "landing/least-width", mm,
                     QT_TRANSLATE_NOOP("Comparison", "Smallest distance between two parallel lines that hold the contour")});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "perimeter"), "landing-1/perimeter", "landing/perimeter", mm,
                     QT_TRANSLATE_NOOP("Comparison", "Length of the smooth contour")});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "area"), "landing-1/area", "landing/area", Unit::SquareMillimetre,
                     QT_TRANSLATE_NOOP("Comparison", "Enclosed area")});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "eccentricity index"), "landing-1/eccentricity-index",
                     "landing/eccentricity-index", Unit::Index,
                     QT_TRANSLATE_NOOP("Comparison", "1 − shortest / longest: 0 is round")});
        for (const bool plug : {false, true}) { // they have no counterpart on pictures
            t.push_back(heading(plug ? QT_TRANSLATE_NOOP("Comparison", "Plug plane") : QT_TRANSLATE_NOOP("Comparison", "Second landing plane")));
            t.push_back({QT_TRANSLATE_NOOP("Comparison", "perimeter-derived"),
                         plug ? "plug/perimeter-derived-diameter" : "second/perimeter-derived-diameter", nullptr, mm,
                         QT_TRANSLATE_NOOP("Comparison", "Perimeter divided by π")});
            t.push_back({QT_TRANSLATE_NOOP("Comparison", "longest"), plug ? "plug/longest-diameter" : "second/longest-diameter", nullptr, mm,
                         QT_TRANSLATE_NOOP("Comparison", "Greatest distance between two points of the contour")});
            t.push_back({QT_TRANSLATE_NOOP("Comparison", "shortest"), plug ? "plug/shortest-diameter" : "second/shortest-diameter", nullptr,
                         mm, QT_TRANSLATE_NOOP("Comparison", "Widest extent perpendicular to the longest diameter")});
        }
        t.push_back(heading(QT_TRANSLATE_NOOP("Comparison", "Ostium")));
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "perimeter-derived"), "ostium/perimeter-derived-diameter",
                     "ostium/perimeter-derived-diameter", mm, QT_TRANSLATE_NOOP("Comparison", "Perimeter divided by π"),
                     Q::OstiumPerimeterDerivedDiameter});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "longest"), "ostium/longest-diameter", "ostium/longest-diameter", mm,
                     QT_TRANSLATE_NOOP("Comparison", "Greatest distance between two points of the contour"),
                     Q::OstiumLongestDiameter});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "largest of the views"), nullptr, "ostium/largest-of-views", mm,
                     QT_TRANSLATE_NOOP("Comparison", "Largest width among the views: no contour's diameter"),
                     Q::OstiumLongestDiameter, views});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "single view"), nullptr, "ostium/single-view", mm,
                     QT_TRANSLATE_NOOP("Comparison", "Width in one view: no contour's diameter"), Q::OstiumLongestDiameter,
                     single});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "shortest"), "ostium/shortest-diameter", "ostium/shortest-diameter", mm,
                     QT_TRANSLATE_NOOP("Comparison", "Widest extent perpendicular to the longest diameter")});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "area-derived"), "ostium/area-derived-diameter",
                     "ostium/area-derived-diameter", mm,
                     QT_TRANSLATE_NOOP("Comparison", "Diameter of the circle of the same area")});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "mean"), "ostium/mean-diameter", "ostium/mean-diameter", mm,
                     QT_TRANSLATE_NOOP("Comparison", "Half the sum of longest and shortest diameter")});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "least width"), "ostium/least-width", "ostium/least-width", mm,
                     QT_TRANSLATE_NOOP("Comparison", "Smallest distance between two parallel lines that hold the contour")});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "perimeter"), "ostium/perimeter", "ostium/perimeter", mm,
                     QT_TRANSLATE_NOOP("Comparison", "Length of the smooth contour")});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "area"), "ostium/area", "ostium/area", Unit::SquareMillimetre,
                     QT_TRANSLATE_NOOP("Comparison", "Enclosed area")});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "eccentricity index"), "ostium/eccentricity-index",
                     "ostium/eccentricity-index", Unit::Index,
                     QT_TRANSLATE_NOOP("Comparison", "1 − shortest / longest: 0 is round")});
        t.push_back(heading(QT_TRANSLATE_NOOP("Comparison", "Depth to the tip")));
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "from the ostium"), "depth/from-ostium-plane", "depth", mm,
                     QT_TRANSLATE_NOOP("Comparison", "Greatest distance from the ostium plane"), Q::Depth});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "from the landing zone"), "landing-1/straight-depth",
                     "landing/straight-depth", mm,
                     QT_TRANSLATE_NOOP("Comparison", "From the landing zone's centre along the ostium's normal to the "
                                                     "opposite wall")});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "along the axis"), "depth/along-axis", "depth/along-axis", mm,
                     QT_TRANSLATE_NOOP("Comparison", "From the ostium along the axis to the tip")});
        t.push_back(heading(QT_TRANSLATE_NOOP("Comparison", "Shape")));
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "volume"), "volume", "volume", Unit::Millilitre,
                     QT_TRANSLATE_NOOP("Comparison", "Blood volume beyond the ostium plane")});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "turn of the axis"), "turn/angle", nullptr, Unit::Degree,
                     QT_TRANSLATE_NOOP("Comparison", "Angle between the proximal and distal directions; 0 is straight")});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "turns at"), "turn/at", nullptr, mm,
                     QT_TRANSLATE_NOOP("Comparison", "Distance of the sharpest place from the ostium along the axis")});
        t.push_back(heading(QT_TRANSLATE_NOOP("Comparison", "Enhancement")));
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "atrium"), "enhancement/atrium", nullptr, Unit::Hounsfield,
                     QT_TRANSLATE_NOOP("Comparison", "Mean level at the mark")});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "appendage"), "enhancement/appendage", nullptr, Unit::Hounsfield,
                     QT_TRANSLATE_NOOP("Comparison", "Mean level beyond the ostium")});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "tip"), "enhancement/tip", nullptr, Unit::Hounsfield,
                     QT_TRANSLATE_NOOP("Comparison", "Mean level near the tip")});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "aorta"), "enhancement/aorta", nullptr, Unit::Hounsfield,
                     QT_TRANSLATE_NOOP("Comparison", "Mean level at the mark; mark the aorta to see it")});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "tip to aorta"), "enhancement/tip-to-aorta", nullptr, Unit::Index,
                     QT_TRANSLATE_NOOP("Comparison", "Ratio of the mean levels")});
        return t;
    }();
    return table;
}

namespace {

QString words(const char* text) {
    return QCoreApplication::translate("Comparison", text);
}

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
    return mmHg ? pressureWords(*mmHg) : words(QT_TRANSLATE_NOOP("Comparison", "pressure unknown"));
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

ComparisonModel::ComparisonModel(QObject* parent) : QAbstractTableModel(parent) {}

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
    QStringList lines{words(row.explanation)};
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
    if (role == Qt::DisplayRole) return words(row.words);
    if (role == Qt::ToolTipRole && !row.heading) return words(row.explanation);
    if (role == Qt::AccessibleTextRole) return words(row.words);
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
        QStringList parts{words(row.words), valueText(*c, row)};
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
