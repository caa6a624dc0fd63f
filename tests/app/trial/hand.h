// A person at the window: sees what is visible, points at it by its words, presses and types. Everything goes through mouse and
// key events at places on screen; a thing that is hidden, disabled, scrolled out of sight or covered cannot be pressed, and the
// test fails. Counts the acts and the time that the program lets the person wait.
#pragma once

#include <QMainWindow>
#include <QPoint>
#include <QString>
#include <functional>
#include <string>
#include <vector>

class QAbstractButton;
class QWidget;

namespace gauge::trial {

class Hand {
public:
    explicit Hand(QMainWindow& window) : m_window(window) {}

    /// Presses the button with this text, in the dialog that is up or the window.
    void press(const QString& text);
    /// Turns to the tab with this text.
    void turnTo(const QString& tab);
    /// Chooses an entry of the menu bar: "File", "Report as PDF …".
    void choose(const QString& menu, const QString& entry);
    /// The same through a menu in it.
    void choose(const QString& menu, const QString& inner, const QString& entry);
    /// Opens the list with this label and takes the entry that contains the text.
    void pick(const QString& label, const QString& entry);
    /// Clicks into the field with this label and types; what stood there is replaced.
    void type(const QString& label, const QString& words);
    /// Presses a key that the screen names.
    void key(Qt::Key key, Qt::KeyboardModifiers modifiers = {});
    void click(QWidget& view, const QPoint& at);
    void drag(QWidget& view, const QPoint& from, const QPoint& to, Qt::MouseButton button = Qt::LeftButton);
    void wheel(QWidget& view, const QPoint& at, int notches);
    /// Clicks the row of a table that contains the text.
    void clickRow(const QString& table, const QString& text);
    /// While the file dialog that `act` brings up is open: types the path and confirms.
    void answerFileDialog(const QString& path, const std::function<void()>& act);

    /// Reads until the words stand on screen; the time counts as waiting. False after three minutes.
    bool waitForWords(const QString& words);
    /// Waits until `done`; the time counts as waiting.
    bool waitUntil(const std::function<bool()>& done);
    /// Everything that can be read on screen now: labels, buttons, headings, fields.
    QString readable() const;

    /// Keeps a picture of the window in the folder named by GAUGE_TRIAL_PICTURES, where it is set.
    void look(const QString& name);

    int acts() const { return static_cast<int>(m_acts.size()); }
    double waitedS() const { return m_waitedS; }
    /// Prints each act, and the sum with so many seconds for each.
    void report(const std::string& title, double secondsAnAct) const;

private:
    QWidget* front() const;
    QWidget* reachable(const QString& what, const std::function<bool(const QWidget&)>& fits);
    void press(QWidget& widget, const QPoint& at, const QString& what);
    void act(const QString& what);

    QMainWindow& m_window;
    std::vector<std::string> m_acts;
    double m_waitedS = 0.0;
    int m_pictures = 0;
};

} // namespace gauge::trial
