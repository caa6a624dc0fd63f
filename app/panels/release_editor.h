// The release check: findings of each look at the implant grouped by view, each beside its range and where the range comes
// from, the verdict in words; what was not looked at; what changed since the look before.
#pragma once

#include "app/document/answers.h"

#include <QWidget>

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;

namespace gauge::app {

class EntryPicker;
class NumberEdit;
class WrappedTree;
template <class Value> class Choice;

class ReleaseEditor : public QWidget {
    Q_OBJECT
public:
    explicit ReleaseEditor(Answers& answers, QWidget* parent = nullptr);
    ~ReleaseEditor() override;

    void addLook();
    void addFinding(const core::ReleaseFinding& finding);
    /// Removes the finding of the selected row; a computed row (the compression) has none.
    void removeFinding();
    WrappedTree& rows() { return *m_rows; }

protected:
    void changeEvent(QEvent* event) override;

private:
    QWidget* makeForm();
    void refresh();
    void refreshLook();
    const ReleaseLook* look() const;
    void edit(const std::function<void(core::ReleaseState&)>& change);

    Answers& m_answers;
    EntryPicker* m_picker;
    QWidget* m_fields;
    std::unique_ptr<Choice<core::Stage>> m_stage;
    QLineEdit* m_time;
    QCheckBox* m_withdrawn;
    WrappedTree* m_rows;
    QLabel* m_sentences;
    QComboBox* m_quantity;
    NumberEdit* m_value;
    NumberEdit* m_uncertainty;
    QLineEdit* m_view;
    QLineEdit* m_side;
    QLineEdit* m_seenBy;
};

} // namespace gauge::app
