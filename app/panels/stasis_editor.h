// Stasis and thrombus stage by stage, and what they mean for the plan.
#pragma once

#include "app/document/answers.h"

#include <QWidget>
#include <functional>
#include <vector>

class QFormLayout;
class QLabel;

namespace gauge::app {

class EntryPicker;

class StasisEditor : public QWidget {
    Q_OBJECT
public:
    explicit StasisEditor(Answers& answers, QWidget* parent = nullptr);
    void addFinding();

private:
    void makeForm(QFormLayout& form);
    void refresh();
    void refreshFields();
    void edit(const std::function<void(core::StasisFinding&)>& change);

    Answers& m_answers;
    EntryPicker* m_picker;
    QWidget* m_fields;
    QLabel* m_verdict;
    QLabel* m_sentences;
    std::vector<std::function<void(const core::StasisFinding&)>> m_show;
};

} // namespace gauge::app
