#include "app/models/value_model.h"

#include "app/format/quantity.h"
#include "core/record/measurement_values.h"

#include <algorithm>

namespace gauge::app {

struct ValueModel::Row {
    const char* words;
    const char* ostium = nullptr; ///< id of the value in each column
    const char* landing = nullptr;
    Unit unit = Unit::Millimetre;
    bool spans = false;
    bool heading = false;
    const char* explanation = "";
};

namespace {

QString valueText(const core::RecordedValue& value, Unit unit) {
    // Mean levels are shown plainly: their spread is the tissue's, not an uncertainty of reading.
    if (unit == Unit::Hounsfield || value.id == "enhancement/tip-to-aorta")
        return quantity(value.estimate.value, unit);
    return estimate(value.estimate, unit);
}

} // namespace

const std::vector<ValueModel::Row>& ValueModel::rows() {
    constexpr auto mm = Unit::Millimetre;
    static const std::vector<Row> table{
        {"Diameters", nullptr, nullptr, mm, false, true},
        {"perimeter-derived", "ostium/perimeter-derived-diameter", "landing-1/perimeter-derived-diameter", mm,
         false, false, "Perimeter divided by π"},
        {"area-derived", "ostium/area-derived-diameter", "landing-1/area-derived-diameter", mm, false, false,
         "Diameter of the circle of the same area"},
        {"longest", "ostium/longest-diameter", "landing-1/longest-diameter", mm, false, false,
         "Greatest distance between two points of the contour"},
        {"shortest", "ostium/shortest-diameter", "landing-1/shortest-diameter", mm, false, false,
         "Widest extent perpendicular to the longest diameter"},
        {"mean", "ostium/mean-diameter", "landing-1/mean-diameter", mm, false, false,
         "Half the sum of longest and shortest diameter"},
        {"least width", "ostium/least-width", "landing-1/least-width", mm, false, false,
         "Smallest distance between two parallel lines that hold the contour"},
        {"Contour", nullptr, nullptr, mm, false, true},
        {"perimeter", "ostium/perimeter", "landing-1/perimeter", mm, false, false,
         "Length of the smooth contour"},
        {"area", "ostium/area", "landing-1/area", Unit::SquareMillimetre, false, false, "Enclosed area"},
        {"eccentricity index", "ostium/eccentricity-index", "landing-1/eccentricity-index", Unit::Index,
         false, false, "1 − shortest / longest: 0 is round"},
        {"Depth to the tip", nullptr, nullptr, mm, false, true},
        {"along the axis", "depth/along-axis", nullptr, mm, false, false,
         "From the ostium along the axis to the tip"},
        {"straight", "depth/from-ostium-plane", "landing-1/straight-depth", mm, false, false,
         "Ostium: greatest distance from the ostium plane. Landing zone: from its centre along the ostium's "
         "normal to the opposite wall"},
        {"Beyond the ostium", nullptr, nullptr, mm, false, true},
        {"volume", "volume", nullptr, Unit::Millilitre, true, false, "Blood volume beyond the ostium plane"},
        {"turn of the axis", "turn/angle", nullptr, Unit::Degree, true, false,
         "Angle between the proximal and distal directions; 0 is straight"},
        {"turns at", "turn/at", nullptr, mm, true, false,
         "Distance of the sharpest place from the ostium along the axis"},
        {"Enhancement", nullptr, nullptr, mm, false, true},
        {"atrium", "enhancement/atrium", nullptr, Unit::Hounsfield, true, false, "Mean level at the mark"},
        {"appendage", "enhancement/appendage", nullptr, Unit::Hounsfield, true, false,
         "Mean level beyond the ostium"},
        {"tip", "enhancement/tip", nullptr, Unit::Hounsfield, true, false, "Mean level near the tip"},
        {"aorta", "enhancement/aorta", nullptr, Unit::Hounsfield, true, false,
         "Mean level at the mark; mark the aorta to see it"},
        {"tip to aorta", "enhancement/tip-to-aorta", nullptr, Unit::Index, true, false,
         "Ratio of the mean levels"},
    };
    return table;
}

ValueModel::ValueModel(QObject* parent) : QAbstractTableModel(parent) {}

void ValueModel::setRecord(const core::CaseRecord& record) {
    m_record = record;
    emit dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
    emit headerDataChanged(Qt::Horizontal, 0, ColumnCount - 1);
}

void ValueModel::setStaleShown(bool shown) {
    if (shown == m_staleShown) return;
    m_staleShown = shown;
    emit dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
}

void ValueModel::setPreview(const core::LandingZone* landing) {
    m_preview.clear();
    if (landing) {
        core::AppendageMeasurement only;
        only.landingZones.push_back(*landing);
        m_preview = core::recordedValues(only, m_record, std::make_shared<const core::Provenance>());
        m_previewDepthMm = landing->depthMm;
    }
    emit dataChanged(index(0, LandingColumn), index(rowCount() - 1, LandingColumn));
    emit headerDataChanged(Qt::Horizontal, LandingColumn, LandingColumn);
}

int ValueModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows().size());
}

int ValueModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

ValueModel::Cell ValueModel::cell(int row, int column) const {
    const Row& r = rows()[static_cast<std::size_t>(row)];
    const char* id = column == OstiumColumn ? r.ostium : column == LandingColumn ? r.landing : nullptr;
    if (!id) return {};
    const bool previewed = column == LandingColumn && !m_preview.empty();
    const auto& values = previewed ? m_preview : m_record.values;
    const auto found =
        std::find_if(values.begin(), values.end(), [&](const auto& value) { return value.id == id; });
    if (found == values.end()) return {};
    const bool stale = !previewed && core::isStale(m_record, *found);
    return stale && !m_staleShown ? Cell{} : Cell{*found, stale};
}

QVariant ValueModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const Row& row = rows()[static_cast<std::size_t>(index.row())];
    switch (role) {
    case IsHeadingRole:
        return row.heading;
    case IsLeadingRole:
        return index.row() == 1;
    case SpansRole:
        return row.spans;
    case Qt::TextAlignmentRole:
        return QVariant(index.column() == Quantity ? Qt::AlignLeft | Qt::AlignVCenter
                                                   : Qt::AlignRight | Qt::AlignVCenter);
    default:
        break;
    }
    if (index.column() == Quantity) {
        if (role == Qt::DisplayRole) return QString::fromUtf8(row.words);
        return role == Qt::ToolTipRole ? QVariant(QString::fromUtf8(row.explanation)) : QVariant();
    }
    const Cell c = cell(index.row(), index.column());
    const bool hasPlace = index.column() == OstiumColumn ? row.ostium : row.landing;
    if (role == Qt::DisplayRole)
        return c.value ? valueText(*c.value, row.unit) : hasPlace ? QStringLiteral("–") : QString();
    if (role == IsStaleRole) return c.stale;
    if (role == NumberRole) return c.value ? QVariant(c.value->estimate.value) : QVariant();
    if (role == Qt::ToolTipRole && c.value) {
        const QString parts = uncertaintyParts(c.value->estimate, row.unit);
        QString tip = QString::fromUtf8(row.explanation);
        if (!parts.isEmpty()) tip += QStringLiteral("\nStandard uncertainty: ") + parts;
        return c.stale ? tip + QStringLiteral("\nA mark has moved since: being measured again.") : tip;
    }
    return {};
}

QVariant ValueModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole)
        return QVariant(section == Quantity ? Qt::AlignLeft | Qt::AlignVCenter
                                            : Qt::AlignRight | Qt::AlignVCenter);
    if (role != Qt::DisplayRole) return {};
    if (section == OstiumColumn) return QStringLiteral("Ostium");
    if (section != LandingColumn) return QString();
    const auto& depths = m_record.landing.depthsMm;
    if (m_preview.empty() && depths.empty()) return QStringLiteral("Landing zone");
    return QStringLiteral("Landing zone ") +
           quantity(m_preview.empty() ? depths.front() : m_previewDepthMm, Unit::Millimetre);
}

Qt::ItemFlags ValueModel::flags(const QModelIndex& index) const {
    return index.isValid() ? Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren
                           : Qt::NoItemFlags;
}

QString ValueModel::asText() const {
    QString text = QStringLiteral("Quantity\t") +
                   headerData(OstiumColumn, Qt::Horizontal, Qt::DisplayRole).toString() + QLatin1Char('\t') +
                   headerData(LandingColumn, Qt::Horizontal, Qt::DisplayRole).toString() + QLatin1Char('\n');
    for (int row = 0; row < rowCount(); ++row) {
        QStringList cells;
        for (int column = 0; column < ColumnCount; ++column)
            cells << data(index(row, column), Qt::DisplayRole).toString();
        text += cells.join(QLatin1Char('\t')) + QLatin1Char('\n');
    }
    return plainSpaces(text);
}

} // namespace gauge::app
