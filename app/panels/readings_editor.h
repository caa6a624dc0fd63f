// Readings that were typed in, not measured here: what, by what, at which moment, and where the number came from.
#pragma once

#include "app/document/answers.h"

#include <QWidget>
#include <functional>
#include <vector>

class QComboBox;
class QFormLayout;
class QLabel;

namespace gauge::app {

class EntryPicker;

class ReadingsEditor : public QWidget {
    Q_OBJECT
public:
    explicit ReadingsEditor(Answers& answers, QWidget* parent = nullptr);
    void addReading();
    /// Brings this reading up.
    void choose(const QString& id);

private:
    void makeForm(QFormLayout& form);
    void refresh();
    void refreshFields();
    void edit(const std::function<void(core::TypedReading&)>& change);

    Answers& m_answers;
    EntryPicker* m_picker;
    QWidget* m_fields;
    QComboBox* m_moment;
    std::vector<std::string> m_moments;
    QLabel* m_note;
    std::vector<std::function<void(const core::TypedReading&)>> m_show;
};

} // namespace gauge::app
