// The comparison table with what can be done on it: go to where a value was measured, copy, confirm what is out of date; and
// below it what is worth knowing about the readings in sentences.
#pragma once

#include "app/document/answers.h"
#include "app/models/comparison_model.h"
#include "app/models/view_state.h"

#include <QWidget>

class QAction;
class QLabel;
class QScrollArea;
class QToolButton;

namespace gauge::app {

class ComparisonTable;

class ComparisonPanel : public QWidget {
    Q_OBJECT
public:
    ComparisonPanel(Answers& answers, ViewState& state, QWidget* parent = nullptr);

    ComparisonModel& model() { return m_model; }
    ComparisonTable& table() { return *m_table; }
    /// Copy the table; go to the value's place; confirm the values of the column.
    QList<QAction*> actions() const { return {m_copy, m_jump, m_confirm}; }
    void copyTable() const;
    void jump(const QModelIndex& index);
    /// Confirms every stale value of the column that has the cell.
    void confirm(const QModelIndex& index);

private:
    void refresh();
    void refreshConfirm();
    QStringList sentences() const;
    QModelIndex staleCell() const;

    Answers& m_answers;
    ViewState& m_state;
    ComparisonModel m_model;
    ComparisonTable* m_table;
    QLabel* m_note;
    QLabel* m_hint;
    QAction* m_copy;
    QAction* m_jump;
    QAction* m_confirm;
    QToolButton* m_confirmButton;
};

} // namespace gauge::app
