#include "app/window/help_pages.h"

#include "app/drawing/palette.h"
#include "app/format/words.h"
#include "app/format/language.h"

#include <QDialog>
#include <QDir>
#include <QFile>
#include <QMainWindow>
#include <QMenu>
#include <QMenuBar>
#include <QSet>
#include <QTextBrowser>
#include <QUrl>
#include <QVBoxLayout>

namespace gauge::app {
namespace {

QTextBrowser* open(QWidget* parent, const QString& title, const QSize& size) {
    auto* window = new QDialog(parent);
    window->setAttribute(Qt::WA_DeleteOnClose);
    window->setWindowTitle(title);
    auto* page = new QTextBrowser(window);
    page->setOpenLinks(false);
    page->setAccessibleName(title);
    page->document()->setDocumentMargin(18);
    auto* layout = new QVBoxLayout(window);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(page);
    window->resize(size);
    window->show();
    return page;
}

QString readAll(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString();
}

void showTopic(QTextBrowser& page, const QString& topic) {
    page.setProperty("topic", topic);
    page.setMarkdown(helpText(topic));
    page.moveCursor(QTextCursor::Start);
}

std::pair<QString, QString> keyOf(const QAction& action) {
    QStringList keys;
    for (const QKeySequence& key : action.shortcuts())
        keys << key.toString(QKeySequence::NativeText);
    return {keys.join(QStringLiteral(", ")), action.text().remove(QLatin1Char('&'))};
}

/// Through menus within menus.
void addKeys(const QMenu& menu, KeyGroup& group, QSet<const QAction*>& seen) {
    for (const QAction* action : menu.actions()) {
        if (action->menu()) addKeys(*action->menu(), group, seen);
        if (action->shortcut().isEmpty() || seen.contains(action)) continue;
        seen.insert(action);
        group.keys.append(keyOf(*action));
    }
}

QString licenceText() {
    QString html;
    QDir folder(QStringLiteral(":/licences"));
    for (const QString& name : folder.entryList(QDir::Files, QDir::Name)) {
        QString title = name.section(QLatin1Char('.'), 0, -2);
        html += QStringLiteral("<h3>%1</h3><pre style='white-space:pre-wrap; font-size:11px'>%2</pre>")
                    .arg(title.replace(QLatin1Char('_'), QLatin1Char(' ')).toHtmlEscaped(),
                         readAll(folder.filePath(name)).toHtmlEscaped());
    }
    return html;
}

} // namespace

QStringList helpTopics() {
    return {QStringLiteral("index"),    QStringLiteral("open"),        QStringLiteral("marks"), QStringLiteral("appendage"),
            QStringLiteral("drawing"),  QStringLiteral("echo"),        QStringLiteral("fluoroscopy"), QStringLiteral("septum"), QStringLiteral("projection"),
            QStringLiteral("comparison"), QStringLiteral("sizes"),     QStringLiteral("course"), QStringLiteral("meeting"),
            QStringLiteral("mouse")};
}

QString helpText(const QString& topic) {
    const QString own = readAll(QStringLiteral(":/help/%1/%2.md").arg(languageInUse(), topic));
    return own.isEmpty() ? readAll(QStringLiteral(":/help/en/%1.md").arg(topic)) : own;
}

QString helpTopicOf(const QWidget* widget) {
    for (; widget; widget = widget->parentWidget())
        if (const QString topic = widget->property("help").toString(); !topic.isEmpty()) return topic;
    return QStringLiteral("index");
}

void showHelp(QWidget* parent, const QString& topic) {
    QTextBrowser* page = open(parent, QObject::tr("Help"), {680, 740});
    showTopic(*page, topic.isEmpty() ? QStringLiteral("index") : topic);
    // Links name topics: [Marks](marks).
    QObject::connect(page, &QTextBrowser::anchorClicked, page, [page](const QUrl& link) {
        if (!helpText(link.path()).isEmpty()) showTopic(*page, link.path());
    });
}

QList<KeyGroup> keyGroups(const QWidget& window) {
    QList<KeyGroup> groups;
    QSet<const QAction*> seen;
    if (const auto* main = qobject_cast<const QMainWindow*>(&window))
        for (const QAction* action : main->menuBar()->actions()) {
            if (!action->menu()) continue;
            KeyGroup group{action->text().remove(QLatin1Char('&')), {}};
            addKeys(*action->menu(), group, seen);
            if (!group.keys.isEmpty()) groups << group;
        }
    // Those of pages that are not up now.
    KeyGroup rest{QObject::tr("On their pages"), {}};
    for (const QAction* action : window.findChildren<QAction*>())
        if (!action->shortcut().isEmpty() && !seen.contains(action)) rest.keys.append(keyOf(*action));
    if (!rest.keys.isEmpty()) groups << rest;
    return groups;
}

void showKeys(QWidget* window) {
    QString html;
    for (const KeyGroup& group : keyGroups(*window)) {
        html += QStringLiteral("<h3>%1</h3><table cellspacing='0' cellpadding='4'>").arg(group.title.toHtmlEscaped());
        for (const auto& [keys, words] : group.keys)
            html += QStringLiteral("<tr><td style='padding-right:22px'><b>%1</b></td><td>%2</td></tr>")
                        .arg(keys.toHtmlEscaped(), words.toHtmlEscaped());
        html += QStringLiteral("</table>");
    }
    open(window, QObject::tr("Keys"), {560, 740})->setHtml(html);
}

void showCautions(QWidget* parent) {
    open(parent, QObject::tr("Cautions"), {520, 260})
        ->setHtml(QStringLiteral("<p>") + cautionParagraphs().join(QStringLiteral("</p><p>")) + QStringLiteral("</p>"));
}

void showAbout(QWidget* parent) {
    QString html = QStringLiteral("<h2>Ostium Gauge %1</h2>").arg(QStringLiteral(GAUGE_VERSION));
    html += QStringLiteral("<p>") +
            QObject::tr("Sizing of left atrial appendage closure from CT, echo and fluoroscopy. Sources under the Apache License "
                        "2.0.").toHtmlEscaped() +
            QStringLiteral("</p>");
    for (const QString& caution : cautionParagraphs())
        html += QStringLiteral("<p>") + caution.toHtmlEscaped() + QStringLiteral("</p>");
    html += QStringLiteral("<h2>") + QObject::tr("Licences of the libraries in use").toHtmlEscaped() + QStringLiteral("</h2>");
    open(parent, QObject::tr("About Ostium Gauge"), {720, 640})->setHtml(html + licenceText());
}

} // namespace gauge::app
