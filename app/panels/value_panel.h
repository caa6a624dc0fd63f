// The values of ostium and landing zone, and what is worth knowing about them in sentences.
#pragma once

#include "app/document/session.h"
#include "app/models/value_model.h"

#include <QWidget>

class QLabel;
class QTableView;

namespace gauge::app {

class ValuePanel : public QWidget {
    Q_OBJECT
public:
    ValuePanel(Session& session, QWidget* parent = nullptr);

    ValueModel& model() { return m_model; }
    QTableView& table() { return *m_table; }
    void copyTable() const;

private:
    void refresh();
    QStringList notices() const;

    Session& m_session;
    ValueModel m_model;
    QTableView* m_table;
    QLabel* m_notices;
};

} // namespace gauge::app
