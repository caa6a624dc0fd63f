#include "app/window/help_pages.h"

#include "app/drawing/palette.h"
#include "app/format/words.h"

#include <QDialog>
#include <QDir>
#include <QFile>
#include <QTextBrowser>
#include <QVBoxLayout>

namespace gauge::app {
namespace {

/// Rows "what | how" as a table.
QString table(std::initializer_list<std::pair<const char*, const char*>> rows) {
    QString html = QStringLiteral("<table cellspacing='0' cellpadding='4'>");
    for (const auto& [what, how] : rows)
        html += QStringLiteral("<tr><td style='padding-right:22px'><b>%1</b></td><td>%2</td></tr>")
                    .arg(QString::fromUtf8(how), QString::fromUtf8(what));
    return html + QStringLiteral("</table>");
}

void show(QWidget* parent, const QString& title, const QString& html, const QSize& size) {
    auto* window = new QDialog(parent);
    window->setAttribute(Qt::WA_DeleteOnClose);
    window->setWindowTitle(title);
    auto* page = new QTextBrowser(window);
    page->setOpenLinks(false);
    page->document()->setDocumentMargin(18);
    page->setHtml(html);
    auto* layout = new QVBoxLayout(window);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(page);
    window->resize(size);
    window->show();
}

QString helpText() {
    return QStringLiteral(
               "<h3>The way of a measurement</h3>"
               "<ol><li>Open a folder of DICOM images, or drop it on the window.</li>"
               "<li>Mark the atrium and the tip of the wanted lobe: the appendage is measured.</li>"
               "<li>Mark the circumflex artery and the ridge, or confirm the proposed ostium.</li>"
               "<li>Drag the landing zone along the depth strip.</li></ol>"
               "<h3>Keys</h3>") +
           table({{"mark atrium, tip, circumflex artery, ridge, aorta", "1 2 3 4 5"},
                  {"leave marking", "Esc"},
                  {"change between the appendage axis and the scanner axes", "T"},
                  {"confirm or release the ostium", "C"},
                  {"show the cross-section at the ostium, at the landing zone", "O, L"},
                  {"previous or next cross-section or slice", "arrow keys"},
                  {"turn the long section (when it has the focus)", "up, down"},
                  {"move the landing zone by 0.5 mm (depth strip)", "Shift + left, right"},
                  {"undo, redo", "Ctrl+Z, Ctrl+Shift+Z"},
                  {"copy the values for a spreadsheet", "Ctrl+Shift+C"},
                  {"fit all views again", "R"},
                  {"whole screen", "F11"}}) +
           QStringLiteral("<h3>Mouse</h3>") +
           table({{"grey window: sideways for width, up and down for centre", "right drag"},
                  {"scroll slices or depth", "wheel"},
                  {"zoom", "Ctrl + wheel"},
                  {"move the picture", "middle drag"},
                  {"long section: turn about the axis", "left drag"},
                  {"scanner axes: place the chosen mark, or move the crossing", "left click"},
                  {"depth strip: move the landing zone; show another depth", "left drag"}}) +
           QStringLiteral("<h3>Values</h3><p>Each value is shown ± its standard uncertainty (k = 1). Resting "
                          "the pointer on a value "
                          "shows what the uncertainty is made of. Grey values are being measured again.</p>");
}

QString licenceText() {
    QString html;
    QDir folder(QStringLiteral(":/licences"));
    for (const QString& name : folder.entryList(QDir::Files, QDir::Name)) {
        QFile file(folder.filePath(name));
        if (!file.open(QIODevice::ReadOnly)) continue;
        QString title = name.section(QLatin1Char('.'), 0, -2);
        html += QStringLiteral("<h3>%1</h3><pre style='white-space:pre-wrap; font-size:11px'>%2</pre>")
                    .arg(title.replace(QLatin1Char('_'), QLatin1Char(' ')).toHtmlEscaped(),
                         QString::fromUtf8(file.readAll()).toHtmlEscaped());
    }
    return html;
}

} // namespace

void showHelp(QWidget* parent) {
    show(parent, QObject::tr("Help"), helpText(), {620, 720});
}

void showCautions(QWidget* parent) {
    show(parent, QObject::tr("Cautions"),
         QStringLiteral("<p>") + cautionParagraphs().join(QStringLiteral("</p><p>")) + QStringLiteral("</p>"),
         {520, 260});
}

void showAbout(QWidget* parent) {
    show(parent, QObject::tr("About Ostium Gauge"),
         QStringLiteral(
             "<h2>Ostium Gauge %1</h2><p>Sizing of left atrial appendage closure from CT, echo and "
             "fluoroscopy. "
             "Sources under the Apache License 2.0.</p><p>%2</p><h2>Licences of the libraries in use</h2>")
                 .arg(QStringLiteral(GAUGE_VERSION), cautionParagraphs().front()) +
             licenceText(),
         {720, 640});
}

} // namespace gauge::app
