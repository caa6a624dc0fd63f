#include "app/models/seat_model.h"

#include "app/format/core_sentences.h"
#include "app/format/evaluated.h"
#include "app/models/comparison_model.h"
#include "core/sizing/seat_words.h"

#include <algorithm>
#include <cmath>

namespace gauge::app {
namespace {

QString structureWord(core::Structure structure) {
    return coreWords(core::words(structure));
}

/// "0.8 ± 0.3 mm", of a wall that is pressed out "pressed out 0.8 ± 0.3 mm".
QString gapWords(const std::optional<core::Estimate>& gap) {
    if (!gap) return SeatModel::tr("not seen");
    if (std::abs(gap->value) < core::kTouchesMm) return SeatModel::tr("touches the wall");
    if (gap->value >= 0.0) return evaluated(*gap, Unit::Millimetre);
    core::Estimate pressed = *gap;
    pressed.value = -pressed.value;
    return SeatModel::tr("pressed out %1").arg(evaluated(pressed, Unit::Millimetre));
}

} // namespace

SeatModel::SeatModel(QObject* parent) : QAbstractTableModel(parent) {}

void SeatModel::setAnswers(const Answers& answers) {
    beginResetModel();
    const core::SeatAnswer* answer = answers.seats().answer();
    m_seats = answer ? answer->sizes : std::vector<core::Seat>();
    m_chosen = answers.record().sizing ? answers.record().sizing->content.size : std::string();
    if (answer) {
        const core::DeviceChart& chart = answers.seats().question().chart;
        m_fromOstium = chart.depthFrom == core::DepthFrom::Ostium;
        m_hasDisc = chart.kind == core::DeviceKind::LobeAndDisc;
    }
    endResetModel();
}

int SeatModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_seats.size());
}

int SeatModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

bool SeatModel::isUsed(int column) const {
    return column != Disc || m_hasDisc;
}

QString SeatModel::display(const core::Seat& seat, int column) const {
    if (column == Size) return QString::fromStdString(seat.name);
    if (!seat.problem.empty()) return column == Reach ? tr("no body to seat") : QString();
    if (!seat.hasRoom && column != Reach) return QString(QChar(0x2014)); // it has no place of which to tell
    switch (column) {
    case Reach: {
        const QString needed = tr("%1 needed").arg(quantity(seat.neededMm, Unit::Millimetre));
        if (!seat.hasRoom) return tr("no room") + QLatin1Char('\n') + needed;
        const QString reach = seat.end == core::SeatEnd::Open
                                  ? tr("at least %1").arg(quantity(seat.reachMm->value, Unit::Millimetre))
                                  : evaluated(*seat.reachMm, Unit::Millimetre);
        return reach + QLatin1Char('\n') + needed;
    }
    case BeyondArtery:
        return seat.beyondCircumflexPercent ? evaluated(*seat.beyondCircumflexPercent, Unit::Percent) : tr("not marked");
    case Disc:
        if (!seat.disc) return m_hasDisc ? tr("not known") : QString();
        return evaluated(seat.disc->sharePercent, Unit::Percent) + QLatin1Char('\n') +
               tr("overlap %1").arg(evaluated(seat.disc->overlapMm, Unit::Millimetre));
    case Gaps:
        if (!seat.gapSuperiorMm && !seat.gapInferiorMm) return tr("not seen");
        return tr("above: %1").arg(gapWords(seat.gapSuperiorMm)) + QLatin1Char('\n') +
               tr("below: %1").arg(gapWords(seat.gapInferiorMm));
    case Clearances: {
        QStringList lines;
        for (const core::SeatClearance& c : seat.clearances)
            lines << tr("%1: %2").arg(structureWord(c.structure), evaluated(c.mm, Unit::Millimetre));
        return lines.isEmpty() ? tr("nothing marked") : lines.join(QLatin1Char('\n'));
    }
    default:
        return {};
    }
}

bool SeatModel::isWarning(const core::Seat& seat, int column) const {
    const auto warned = [&](const char* code) {
        return std::any_of(seat.warnings.begin(), seat.warnings.end(), [&](const auto& n) { return n.code == code; });
    };
    switch (column) {
    case Reach:
        return !seat.problem.empty() || warned("seat-short") || warned("seat-no-room");
    case BeyondArtery:
        return warned("seat-share-low");
    case Disc:
        return warned("seat-disc-short");
    case Clearances:
        return warned("too-near");
    default:
        return false;
    }
}

QVariant SeatModel::data(const QModelIndex& at, int role) const {
    if (!checkIndex(at, CheckIndexOption::IndexIsValid)) return {};
    const core::Seat& seat = m_seats[static_cast<std::size_t>(at.row())];
    switch (role) {
    case Qt::DisplayRole:
        return display(seat, at.column());
    case IsChosenRole:
        return seat.name == m_chosen;
    case IsWarningRole:
        return isWarning(seat, at.column());
    case Qt::AccessibleTextRole:
        return tr("Size %1, %2: %3")
            .arg(QString::fromStdString(seat.name), headerData(at.column(), Qt::Horizontal, Qt::DisplayRole).toString(),
                 display(seat, at.column()).replace(QLatin1Char('\n'), QStringLiteral(", ")));
    default:
        return {};
    }
}

QVariant SeatModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    switch (section) {
    case Size:
        return tr("Size");
    case Reach:
        return m_fromOstium ? tr("Reach from the ostium") : tr("Reach from the landing plane");
    case BeyondArtery:
        return tr("Beyond the artery");
    case Disc:
        return tr("Disc over the ostium");
    case Gaps:
        return tr("Gaps");
    case Clearances:
        return tr("Clearances");
    default:
        return {};
    }
}

QString SeatModel::asText() const {
    QStringList lines;
    for (int row = -1; row < rowCount(); ++row) {
        QStringList cells;
        for (int column = 0; column < ColumnCount; ++column)
            if (isUsed(column))
                cells << spreadsheetText((row < 0 ? headerData(column, Qt::Horizontal, Qt::DisplayRole)
                                                  : index(row, column).data())
                                             .toString()
                                             .replace(QLatin1Char('\n'), QStringLiteral("; ")));
        lines << cells.join(QLatin1Char('\t'));
    }
    return lines.join(QLatin1Char('\n')) + QLatin1Char('\n');
}

} // namespace gauge::app
