#include "app/library/library_model.h"

#include "app/drawing/palette.h"
#include "app/format/terms.h"

#include <QDateTime>

namespace gauge::app {

QString dateInWords(const QString& dicomDate) {
    const QDate date = QDate::fromString(dicomDate, QStringLiteral("yyyyMMdd"));
    return date.isValid() ? date.toString(Qt::ISODate) : dicomDate;
}

QString momentInWords(const QString& iso) {
    const QDateTime moment = QDateTime::fromString(iso, Qt::ISODateWithMs).toLocalTime();
    return moment.isValid() ? moment.toString(QStringLiteral("yyyy-MM-dd HH:mm")) : iso;
}

QString nameInWords(const QString& dicomName) {
    QStringList parts = dicomName.split(QLatin1Char('^'));
    const QString family = parts.takeFirst();
    parts.removeAll(QString());
    return parts.isEmpty() ? family : family + QLatin1String(", ") + parts.join(QLatin1Char(' '));
}

void LibraryModel::show(std::vector<ListedCase> cases) {
    beginResetModel();
    m_cases = std::move(cases);
    endResetModel();
}

const ListedCase* LibraryModel::at(int row) const {
    return row >= 0 && row < static_cast<int>(m_cases.size()) ? &m_cases[static_cast<std::size_t>(row)] : nullptr;
}

int LibraryModel::rowOf(const QString& caseId) const {
    for (std::size_t row = 0; row < m_cases.size(); ++row)
        if (m_cases[row].id == caseId) return static_cast<int>(row);
    return -1;
}

int LibraryModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_cases.size());
}

int LibraryModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QString LibraryModel::text(const ListedCase& listed, int column) const {
    const CaseFacts& facts = listed.facts;
    if (listed.damaged && column <= Tags) return column == Patient ? tr("Damaged: do not trust") : QString();
    switch (column) {
    case Patient: return facts.patientName.isEmpty() ? tr("No name") : nameInWords(facts.patientName);
    case PatientId: return facts.patientId;
    case Born: return dateInWords(facts.birthDate);
    case Studied: return dateInWords(facts.studyDate);
    case Title: return facts.title;
    case Stage: {
        const auto stage = core::stageFrom(facts.stage.toStdString());
        return stage ? stageName(*stage) : facts.stage; // a word of a newer program as it is
    }
    case Tags: return facts.tags.join(QLatin1String(", "));
    case Changed: return momentInWords(listed.changedAt);
    case Editor:
        if (!listed.lease || listed.lease->dead) return {};
        return listed.lease->mine ? tr("You") : listed.lease->holder;
    default: return {};
    }
}

QVariant LibraryModel::data(const QModelIndex& index, int role) const {
    const ListedCase* listed = at(index.row());
    if (!listed) return {};
    if (role == Qt::DisplayRole) return text(*listed, index.column());
    if (role == Qt::ForegroundRole && listed->damaged) return tone::error;
    if (role == Qt::ToolTipRole && index.column() == Editor && listed->lease && !listed->lease->dead)
        return tr("Edited by %1 on %2 since %3")
            .arg(listed->lease->holder, listed->lease->station, momentInWords(listed->lease->takenAt));
    return {};
}

QVariant LibraryModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    switch (section) {
    case Patient: return tr("Patient");
    case PatientId: return tr("Patient ID");
    case Born: return tr("Born");
    case Studied: return tr("Studied");
    case Title: return tr("Title");
    case Stage: return tr("Stage");
    case Tags: return tr("Tags");
    case Changed: return tr("Changed");
    case Editor: return tr("Edited by");
    default: return {};
    }
}

} // namespace gauge::app
