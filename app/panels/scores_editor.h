// Indication scores from their items: points, what counted, published rates with their source; items that contradict each
// other are refused in words.
#pragma once

#include "app/document/answers.h"

#include <QWidget>
#include <functional>
#include <vector>

class QLabel;

namespace gauge::app {

/// The answers to one score in sentences.
QString strokeSentences(const ScoreAnswer& scores);
QString bleedingSentences(const ScoreAnswer& scores);

class ScoresEditor : public QWidget {
    Q_OBJECT
public:
    explicit ScoresEditor(Answers& answers, QWidget* parent = nullptr);

private:
    QWidget* makeStroke();
    QWidget* makeBleeding();
    void refresh();
    void editStroke(const std::function<void(core::StrokeItems&)>& change);
    void editBleeding(const std::function<void(core::BleedingItems&)>& change);

    Answers& m_answers;
    QLabel* m_strokeAnswer;
    QLabel* m_bleedingAnswer;
    std::vector<std::function<void(const core::StrokeItems&)>> m_showStroke;
    std::vector<std::function<void(const core::BleedingItems&)>> m_showBleeding;
};

} // namespace gauge::app
