// A tick with words that wrap: a QCheckBox writes its words in one line and cuts what does not fit.
#pragma once

#include <QWidget>

class QCheckBox;
class QLabel;

namespace gauge::app {

class WrappedCheck : public QWidget {
    Q_OBJECT
public:
    explicit WrappedCheck(const QString& text, QWidget* parent = nullptr);

    bool isChecked() const;
    void setChecked(bool on); ///< without a signal
    void setToolTip(const QString& text);
    /// The box itself: it carries the words for screen readers.
    QCheckBox& box() { return *m_box; }

signals:
    /// By mouse, on box or words, or by the keyboard.
    void clicked(bool on);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    QCheckBox* m_box;
    QLabel* m_words;
};

} // namespace gauge::app
