// The evidence: series and phases that were found; a double click measures another phase.
#pragma once

#include "app/document/session.h"
#include "app/models/evidence_model.h"

#include <QWidget>

class QLabel;
class QTreeView;

namespace gauge::app {

class EvidencePanel : public QWidget {
    Q_OBJECT
public:
    EvidencePanel(Session& session, QWidget* parent = nullptr);

signals:
    void openRequested();

private:
    void refresh();

    Session& m_session;
    EvidenceModel m_model;
    QTreeView* m_tree;
    QLabel* m_empty;
    QLabel* m_skipped;
};

} // namespace gauge::app
