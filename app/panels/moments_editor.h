// Pressures over time: the course as a picture, and each moment with what was recorded of the circulation; what cannot be, and
// what changed since the moment before, is said in sentences.
#pragma once

#include "app/document/answers.h"
#include "app/panels/number_edit.h"

#include <QWidget>
#include <memory>

class QFormLayout;
class QLabel;

namespace gauge::app {

class EntryPicker;

/// The picture; a click chooses a moment.
class PressureCourseView : public QWidget {
    Q_OBJECT
public:
    explicit PressureCourseView(Answers& answers, QWidget* parent = nullptr);
    void setChosen(const std::string& id);
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

signals:
    void clicked(const std::string& id);

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;

private:
    Answers& m_answers;
    std::string m_chosen;
};

class MomentsEditor : public QWidget {
    Q_OBJECT
public:
    explicit MomentsEditor(Answers& answers, QWidget* parent = nullptr);

    void addMoment();
    void removeMoment();
    std::string current() const;
    void choose(const std::string& id);

private:
    void makeForm(QFormLayout& form);
    void refresh();
    void refreshFields();
    void refreshSentences();
    /// Changes the current moment and pushes it.
    void edit(const std::function<void(core::Moment&)>& change);
    template <class Value>
    std::unique_ptr<Choice<Value>> choice(QFormLayout& form, const QString& label, typename Choice<Value>::Items items,
                                          const QString& none, std::function<void(core::Moment&, std::optional<Value>)> set);
    NumberEdit* number(QFormLayout& form, const QString& label, double least, double most,
                       std::function<void(core::Moment&, std::optional<double>)> set);

    Answers& m_answers;
    PressureCourseView* m_picture;
    EntryPicker* m_picker;
    QWidget* m_fields;
    QLabel* m_sentences;
    std::vector<std::function<void(const core::Moment&)>> m_show; ///< each field, from the moment
};

} // namespace gauge::app
