// The widths of the echo views on a dial: each as a spoke at its probe angle, and the ellipse through them, for ostium and landing
// zone. Beside it the diameters in words with their uncertainty.
#pragma once

#include "core/record/echo_values.h"

#include <QWidget>

class QLabel;

namespace gauge::app {

/// The painted dial alone.
class DialFace : public QWidget {
    Q_OBJECT
public:
    using QWidget::QWidget;
    struct Spoke {
        core::DrawingRole role = core::DrawingRole::LandingWidth;
        double angleDeg = 0.0, widthMm = 0.0, uncertaintyMm = 0.0;
    };
    struct Oval {
        core::DrawingRole role = core::DrawingRole::LandingWidth;
        double longestMm = 0.0, shortestMm = 0.0, directionDeg = 0.0;
    };
    void show(std::vector<Spoke> spokes, std::vector<Oval> ovals);
    const std::vector<Spoke>& spokes() const { return m_spokes; }
    const std::vector<Oval>& ovals() const { return m_ovals; }
    QSize sizeHint() const override { return {260, 260}; }
    QSize minimumSizeHint() const override { return {170, 170}; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    std::vector<Spoke> m_spokes;
    std::vector<Oval> m_ovals;
};

class AngleDial : public QWidget {
    Q_OBJECT
public:
    explicit AngleDial(QWidget* parent = nullptr);
    /// What is drawn on the echo views of this moment (core::momentKey).
    void setMoment(const core::CaseRecord& record, const std::string& key);
    const DialFace& face() const { return *m_face; }
    /// What is said beside the dial, without markup; for tests and for screen readers.
    QString text() const;

private:
    DialFace* m_face;
    QLabel* m_words;
};

} // namespace gauge::app
