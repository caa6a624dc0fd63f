// The evidence as a list by stage in the order of time: what it is, its pressure, whether it is measured; under a CT its phases;
// last what cannot be used, and why. While a folder needs a choice: its patients and their series instead.
//
//   stage ─┬─ echo view 45°      "LA mean 7 mmHg · 2 measurements"
//          └─ CT: …  ─┬─ phase 45 %   (shown)
//                     └─ phase 75 %
#pragma once

#include "core/record/case_record.h"
#include "dicomio/index/series_index.h"

#include <QAbstractItemModel>
#include <memory>
#include <optional>
#include <utility>
#include <vector>

namespace gauge::app {

class EvidenceModel : public QAbstractItemModel {
    Q_OBJECT
public:
    enum class Row { Heading, Evidence, Phase, Refused, Series };
    enum Role {
        DetailRole = Qt::UserRole, ///< a second line: pressure and measurements, or why it is refused
        IsShownRole,               ///< the evidence on screen; of phases the one that is measured
        IsRefusedRole,
        RowRole,        ///< of `Row`, as int
        EvidenceRole,   ///< id of the evidence of this row or of the phase's series; empty for others
        IsMeasuredRole, ///< something is measured on it
    };

    explicit EvidenceModel(QObject* parent = nullptr);

    /// What to list. @param index  may be null: then the record alone tells. @param patientKey  whose refused series are listed.
    void setCase(std::shared_ptr<const dicomio::SeriesIndex> index, const core::CaseRecord& record,
                 const std::string& patientKey);
    /// Instead of a case: all that a folder holds, patient by patient, to choose from.
    void setOffer(std::shared_ptr<const dicomio::SeriesIndex> index);
    /// True while an offer is listed.
    bool isOffer() const { return m_isOffer; }
    void setShownEvidence(const QString& id);
    /// No identity: patients of an offer are numbered instead of named.
    void setNamesHidden(bool hidden);

    /// Series and phase of the index for what can be loaded: a phase, or a series of an offer.
    std::optional<std::pair<std::size_t, std::size_t>> phaseAt(const QModelIndex& index) const;
    /// The row of this evidence.
    QModelIndex indexOf(const QString& evidence) const;

    QModelIndex index(int row, int column, const QModelIndex& parent = {}) const override;
    QModelIndex parent(const QModelIndex& index) const override;
    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;

private:
    struct Node {
        Row kind = Row::Heading;
        int parent = -1; ///< in m_nodes; -1: top
        int row = 0;
        std::vector<int> children;
        QString title, detail, tip, evidence;
        std::optional<std::pair<std::size_t, std::size_t>> phase;
        bool shown = false, measured = false;
    };
    int add(int parent, Node node);
    void build();
    void buildCase();
    void buildOffer();
    void addRefused(const std::string& patientKey);
    void addPhases(int parent, const core::Evidence& evidence, const QString& id);
    const std::vector<int>& childrenOf(const QModelIndex& parent) const;
    const Node* nodeAt(const QModelIndex& index) const;

    std::shared_ptr<const dicomio::SeriesIndex> m_index;
    core::CaseRecord m_record;
    std::string m_patientKey;
    QString m_shown;
    bool m_isOffer = false;
    bool m_namesHidden = false;
    std::vector<Node> m_nodes;
    std::vector<int> m_top;
};

/// Whether and how often something is measured on this evidence: drawings on it, or for the CT of the record its values.
int measurementCount(const core::CaseRecord& record, const std::string& evidence);

} // namespace gauge::app
