#include "app/models/evidence_model.h"

#include "app/document/load_images.h"
#include "app/document/propose_evidence.h"
#include "app/format/evidence_words.h"
#include "app/format/terms.h"
#include "dicomio/ct/ct_choice.h"

#include <QStringList>
#include <algorithm>
#include <map>
#include <tuple>

namespace gauge::app {
namespace {

using dicomio::SeriesEntry;
using dicomio::SeriesStatus;

/// Refused, or set aside: the message says why, and there is nothing to choose in it.
bool cannotBeUsed(const SeriesEntry& series) {
    return series.status == SeriesStatus::Refused || series.status == SeriesStatus::SetAside;
}

QString kindOfSeries(const SeriesEntry& series) {
    if (series.kind == "ct" || series.kind == "ct-enhanced") return evidenceName(core::EvidenceKind::Ct);
    if (series.kind == "ultrasound") return EvidenceModel::tr("Echo");
    if (series.kind == "x-ray") return EvidenceModel::tr("Fluoroscopy");
    return EvidenceModel::tr("Images");
}

QString titleOf(const SeriesEntry& series) {
    const QString kind = kindOfSeries(series);
    return series.description.empty()
               ? kind
               : EvidenceModel::tr("%1: %2").arg(kind, QString::fromStdString(series.description));
}

QString notices(const SeriesEntry& series) {
    QStringList lines;
    for (const auto& message : series.messages)
        lines << QString::fromStdString(message.text);
    return lines.join(QLatin1Char('\n'));
}

QString measuredWords(int count) {
    return count == 0 ? EvidenceModel::tr("not measured") : EvidenceModel::tr("%n measurement(s)", nullptr, count);
}

} // namespace

int measurementCount(const core::CaseRecord& record, const std::string& evidence) {
    int count = 0;
    for (const auto& [id, entry] : record.drawings)
        count += entry.content.evidence == evidence;
    if (record.images && record.images->seriesUid == evidence)
        count += std::any_of(record.values.begin(), record.values.end(),
                             [](const auto& value) { return value.group == core::kCtValues; });
    return count;
}

EvidenceModel::EvidenceModel(QObject* parent) : QAbstractItemModel(parent) {}

void EvidenceModel::setCase(std::shared_ptr<const dicomio::SeriesIndex> index, const core::CaseRecord& record,
                            const std::string& patientKey) {
    m_index = std::move(index);
    m_record = record;
    m_patientKey = patientKey;
    m_isOffer = false;
    build();
}

void EvidenceModel::setOffer(std::shared_ptr<const dicomio::SeriesIndex> index) {
    m_index = std::move(index);
    m_isOffer = true;
    build();
}

void EvidenceModel::setNamesHidden(bool hidden) {
    if (hidden == m_namesHidden) return;
    m_namesHidden = hidden;
    build();
}

void EvidenceModel::setShownEvidence(const QString& id) {
    if (id == m_shown) return;
    m_shown = id;
    for (Node& node : m_nodes)
        if (node.kind == Row::Evidence) node.shown = !id.isEmpty() && node.evidence == id;
    if (m_nodes.empty()) return;
    for (const int top : m_top) {
        const QModelIndex heading = this->index(m_nodes[static_cast<std::size_t>(top)].row, 0);
        if (const int rows = rowCount(heading); rows > 0)
            emit dataChanged(this->index(0, 0, heading), this->index(rows - 1, 0, heading), {IsShownRole});
    }
}

int EvidenceModel::add(int parent, Node node) {
    const int at = static_cast<int>(m_nodes.size());
    std::vector<int>& siblings = parent < 0 ? m_top : m_nodes[static_cast<std::size_t>(parent)].children;
    node.parent = parent;
    node.row = static_cast<int>(siblings.size());
    siblings.push_back(at);
    m_nodes.push_back(std::move(node));
    return at;
}

void EvidenceModel::build() {
    beginResetModel();
    m_nodes.clear();
    m_top.clear();
    m_isOffer ? buildOffer() : buildCase();
    endResetModel();
}

void EvidenceModel::buildCase() {
    for (const core::Stage stage : core::kStages) {
        std::vector<std::pair<std::string, const core::Evidence*>> ofStage;
        for (const auto& [id, entry] : m_record.evidence)
            if (entry.content.stage == stage) ofStage.emplace_back(id, &entry.content);
        if (ofStage.empty()) continue;
        // ISO 8601 text of one length sorts as time; views of one time stand in the order of their angles.
        std::stable_sort(ofStage.begin(), ofStage.end(), [](const auto& a, const auto& b) {
            const auto key = [](const core::Evidence& e) {
                return std::tuple(e.acquired.empty(), e.acquired, e.probeAngleDeg.value_or(1e9), e.description);
            };
            return key(*a.second) < key(*b.second);
        });
        const int heading = add(-1, {Row::Heading, -1, 0, {}, capitalised(stageName(stage)), {}, {}, {}, {}});
        for (const auto& [id, evidence] : ofStage) {
            const QString uid = QString::fromStdString(id);
            const int count = measurementCount(m_record, id);
            QStringList parts{pressureWords(m_record, *evidence)};
            if (evidence->phase != core::BeatPhase::Unknown) parts << beatPhaseName(evidence->phase);
            parts << measuredWords(count);
            Node node{Row::Evidence, -1, 0, {}, evidenceTitle(*evidence), parts.join(QStringLiteral(" · ")), {}, uid, {}};
            QStringList tip{QString::fromStdString(evidence->description), timeWords(evidence->acquired)};
            if (m_index)
                if (const auto series = seriesOf(*m_index, *evidence)) {
                    const SeriesEntry& entry = m_index->series[*series];
                    tip << QString::fromStdString(entry.stage.reason) << notices(entry);
                }
            tip << measurableWords(evidence->kind);
            tip.removeAll(QString());
            tip << tr("Enter shows it; the context menu changes stage, moment, angle and phase");
            node.tip = tip.join(QLatin1Char('\n'));
            node.shown = !m_shown.isEmpty() && uid == m_shown;
            node.measured = count > 0;
            const int at = add(heading, std::move(node));
            if (evidence->kind == core::EvidenceKind::Ct) addPhases(at, *evidence, uid);
        }
    }
    addRefused(m_patientKey);
}

void EvidenceModel::addPhases(int parent, const core::Evidence& evidence, const QString& id) {
    const auto at = m_index ? seriesOf(*m_index, evidence) : std::nullopt;
    if (!at) return;
    const auto used = m_record.images ? find(*m_index, *m_record.images) : std::nullopt;
    const auto& phases = m_index->series[*at].phases;
    for (std::size_t p = 0; p < phases.size(); ++p) {
        const QString label = QString::fromStdString(phases[p].label);
        Node node{Row::Phase, -1, 0, {}, phases[p].percent ? tr("phase %1").arg(label) : label, {}, {}, id, std::pair(*at, p)};
        node.tip = tr("Measure this phase (double click or Enter)");
        node.shown = used == std::pair(*at, p);
        add(parent, std::move(node));
    }
}

void EvidenceModel::addRefused(const std::string& patientKey) {
    if (!m_index) return;
    int heading = -1;
    for (const SeriesEntry& series : m_index->series) {
        if (!cannotBeUsed(series) || dicomio::patientKey(series) != patientKey) continue;
        if (heading < 0) heading = add(-1, {Row::Heading, -1, 0, {}, tr("Not used"), {}, {}, {}, {}});
        const QString why =
            series.messages.empty() ? tr("cannot be used") : QString::fromStdString(series.messages.front().text);
        add(heading, {Row::Refused, -1, 0, {}, titleOf(series), why, notices(series), {}, {}});
    }
}

void EvidenceModel::buildOffer() {
    if (!m_index) return;
    std::map<std::string, int> headings;
    for (std::size_t s = 0; s < m_index->series.size(); ++s) {
        const SeriesEntry& series = m_index->series[s];
        const std::string key = dicomio::patientKey(series);
        if (!headings.contains(key)) {
            const QString name = QString::fromStdString(series.patientName);
            const QString id = QString::fromStdString(series.patientId);
            const QString title = m_namesHidden    ? tr("Patient %1").arg(headings.size() + 1)
                                  : name.isEmpty() ? tr("Patient without a name, ID %1").arg(id)
                                  : id.isEmpty()   ? name
                                                   : tr("%1, ID %2").arg(name, id);
            headings[key] = add(-1, {Row::Heading, -1, 0, {}, title, {}, {}, {}, {}});
        }
        Node node{Row::Series, -1, 0, {}, titleOf(series), tr("%n image(s)", nullptr, series.imageCount), notices(series), {}, {}};
        if (cannotBeUsed(series)) {
            node.kind = Row::Refused;
            node.detail = series.messages.empty() ? tr("cannot be used")
                                                  : QString::fromStdString(series.messages.front().text);
        } else {
            const auto phase = dicomio::choosePhase(series, std::nullopt);
            node.phase = std::pair(s, phase ? *phase : std::size_t{0});
        }
        add(headings[key], std::move(node));
    }
}

const EvidenceModel::Node* EvidenceModel::nodeAt(const QModelIndex& index) const {
    if (!index.isValid() || index.internalId() >= m_nodes.size()) return nullptr;
    return &m_nodes[index.internalId()];
}

const std::vector<int>& EvidenceModel::childrenOf(const QModelIndex& parent) const {
    const Node* node = nodeAt(parent);
    return node ? node->children : m_top;
}

std::optional<std::pair<std::size_t, std::size_t>> EvidenceModel::phaseAt(const QModelIndex& index) const {
    const Node* node = nodeAt(index);
    return node ? node->phase : std::nullopt;
}

QModelIndex EvidenceModel::indexOf(const QString& evidence) const {
    for (std::size_t i = 0; i < m_nodes.size(); ++i)
        if (m_nodes[i].kind == Row::Evidence && m_nodes[i].evidence == evidence)
            return createIndex(m_nodes[i].row, 0, static_cast<quintptr>(i));
    return {};
}

QModelIndex EvidenceModel::index(int row, int column, const QModelIndex& parent) const {
    if (!hasIndex(row, column, parent)) return {};
    return createIndex(row, column, static_cast<quintptr>(childrenOf(parent)[static_cast<std::size_t>(row)]));
}

QModelIndex EvidenceModel::parent(const QModelIndex& index) const {
    const Node* node = nodeAt(index);
    if (!node || node->parent < 0) return {};
    return createIndex(m_nodes[static_cast<std::size_t>(node->parent)].row, 0, static_cast<quintptr>(node->parent));
}

int EvidenceModel::rowCount(const QModelIndex& parent) const {
    return parent.column() > 0 ? 0 : static_cast<int>(childrenOf(parent).size());
}

int EvidenceModel::columnCount(const QModelIndex&) const {
    return 1;
}

QVariant EvidenceModel::data(const QModelIndex& index, int role) const {
    const Node* node = nodeAt(index);
    if (!node) return {};
    switch (role) {
    case Qt::DisplayRole:
        return node->title;
    case DetailRole:
        return node->detail;
    case Qt::ToolTipRole:
        return node->tip;
    case Qt::AccessibleTextRole:
        return node->detail.isEmpty() ? node->title : tr("%1, %2").arg(node->title, node->detail);
    case IsShownRole:
        return node->shown;
    case IsRefusedRole:
        return node->kind == Row::Refused;
    case RowRole:
        return static_cast<int>(node->kind);
    case EvidenceRole:
        return node->evidence;
    case IsMeasuredRole:
        return node->measured;
    default:
        return {};
    }
}

Qt::ItemFlags EvidenceModel::flags(const QModelIndex& index) const {
    const Node* node = nodeAt(index);
    if (!node) return Qt::NoItemFlags;
    const bool choosable = node->kind == Row::Evidence || node->kind == Row::Phase || node->kind == Row::Series;
    return choosable ? Qt::ItemIsEnabled | Qt::ItemIsSelectable : Qt::ItemIsEnabled;
}

} // namespace gauge::app
