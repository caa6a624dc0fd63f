// Help, the sheet of keys, cautions, and about with the licences: pages in a window of their own that does not block the work.
//
// Pages lie in resources/help/LANGUAGE/TOPIC.md (English where a language lacks one). A widget says which page explains it by
// its property "help"; the widgets around it count for it. The sheet of keys is made from the actions that there are.
#pragma once

#include <QList>
#include <QString>
#include <utility>

class QWidget;

namespace gauge::app {

/// Topics in the order in which they are read.
QStringList helpTopics();
/// The page's text in the language in use; empty when there is no such topic.
QString helpText(const QString& topic);
/// Topic of the widget or of the nearest widget around it; "index" when none says one.
QString helpTopicOf(const QWidget* widget);

/// An empty topic shows the first page.
void showHelp(QWidget* parent, const QString& topic);
/// Every key of the window, grouped by menu, then those of its pages and panels.
struct KeyGroup {
    QString title;
    QList<std::pair<QString, QString>> keys; ///< "Ctrl+Z", "Undo"
};
QList<KeyGroup> keyGroups(const QWidget& window);
void showKeys(QWidget* window);
void showCautions(QWidget* parent);
void showAbout(QWidget* parent);

} // namespace gauge::app
