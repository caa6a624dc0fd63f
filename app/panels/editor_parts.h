// Parts that the editors of the course share: wrapped labels, a scrolled column, the row that picks, adds and removes an
// entry.
#pragma once

#include "core/result.h"

#include <QComboBox>
#include <QLabel>
#include <QToolButton>
#include <QWidget>
#include <string>
#include <utility>
#include <vector>

namespace gauge::app {

/// A label that wraps and can be selected; `name` is its role in the style sheet ("heading", "soft", "warning").
QLabel* wrappedLabel(const QString& text, const char* name = "");
/// The widget inside an area that scrolls up and down only.
QWidget* scrolled(QWidget* inner);
/// One paragraph a notice; empty for none.
QString paragraphs(const std::vector<core::Notice>& notices);

/// Chooses one of several entries; adds and removes.
class EntryPicker : public QWidget {
    Q_OBJECT
public:
    EntryPicker(const QString& accessibleName, const QString& add, const QString& remove, QWidget* parent = nullptr);

    /// Shows these; the chosen one stays chosen while it is there, else the last.
    void setEntries(const std::vector<std::pair<std::string, QString>>& entries);
    /// Id of the chosen entry; empty when there is none.
    std::string current() const;
    void choose(const std::string& id);

signals:
    void picked();
    void addRequested();
    void removeRequested();

private:
    QComboBox* m_box;
    QToolButton* m_remove;
    std::vector<std::string> m_ids;
    std::string m_wanted; ///< chosen as soon as it is there
};

} // namespace gauge::app
