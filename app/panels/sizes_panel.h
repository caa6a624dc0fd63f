// The sizes of the chart against this appendage: chart, pressures and cause to ask with, what the answer rests on, every size
// with its chances, and what speaks against it in sentences.
#pragma once

#include "app/document/answers.h"
#include "app/models/sizes_model.h"

#include <QWidget>
#include <memory>

class QAction;
class QCheckBox;
class QComboBox;
class QLabel;
class QMenu;

namespace gauge::app {

class NumberEdit;
class SizesTable;

class SizesPanel : public QWidget {
    Q_OBJECT
public:
    explicit SizesPanel(Answers& answers, QWidget* parent = nullptr);

    SizesModel& model() { return m_model; }
    SizesTable& table() { return *m_table; }
    /// Load a chart from a file; choose the size under the cursor; give the choice up.
    QList<QAction*> actions() const { return {m_load, m_choose, m_giveUp}; }

    void loadChart(const QString& path);
    void choose(const std::string& size);

private:
    QWidget* makeQuestion();
    void askForChart();
    void refresh();
    void refreshQuestion();
    void refreshWarnings();
    void setPressures();
    void setCause();

    Answers& m_answers;
    SizesModel m_model;
    SizesTable* m_table;
    QLabel* m_chart;
    QLabel* m_problem;
    QLabel* m_answer;
    QLabel* m_warnings;
    NumberEdit* m_decision;
    NumberEdit* m_lowest;
    NumberEdit* m_highest;
    QComboBox* m_cause;
    QCheckBox* m_recur;
    QAction* m_load;
    QAction* m_choose;
    QAction* m_giveUp;
};

} // namespace gauge::app
