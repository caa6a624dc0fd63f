// What leaves the program: the report as PDF, on paper and as files.
#include "app/report/report_files.h"
#include "app/window/main_window.h"
#include "app/window/screen_tour.h"

#include <QAction>
#include <QFileDialog>
#include <QMenu>
#include <QPrintDialog>
#include <QPrinter>

namespace gauge::app {

using Kind = Message::Kind;
namespace {
constexpr double kScreenDpi = 96.0; // at which the window is laid out at scale 1
} // namespace

void MainWindow::addReportActions(QMenu& file) {
    file.addAction(tr("Report as P&DF …"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_P), this, &MainWindow::reportAsPdf);
    file.addAction(tr("All &files of the report …"), this, &MainWindow::reportAsFiles);
    file.addAction(tr("Picture of the &window, without names …"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_G), this,
                   &MainWindow::savePicture);
    file.addAction(tr("&Print …"), QKeySequence::Print, this, &MainWindow::printReport);
}

void MainWindow::reportAsPdf() {
    const QString a4 = tr("PDF on A4 (*.pdf)"), letter = tr("PDF on Letter (*.pdf)");
    QString paper = usualPaper() == Paper::A4 ? a4 : letter;
    const QString path = QFileDialog::getSaveFileName(this, tr("Report as PDF"), tr("report.pdf"),
                                                      paper == a4 ? a4 + QStringLiteral(";;") + letter
                                                                  : letter + QStringLiteral(";;") + a4,
                                                      &paper);
    if (path.isEmpty()) return;
    m_answers.finishNow();
    const auto written = writePdf(printedReport(m_answers, m_state.namesHidden()), paper == letter ? Paper::Letter : Paper::A4,
                                  path.toStdString());
    m_session.say(written ? Kind::Information : Kind::Error,
                  written ? tr("The report was written to %1.").arg(path) : QString::fromStdString(written.error().message));
}

/// Names are hidden while it is taken, whatever the screen shows.
void MainWindow::savePicture() {
    QString path = QFileDialog::getSaveFileName(this, tr("Picture of the window"), tr("window.png"), tr("Pictures (*.png)"));
    if (path.isEmpty()) return;
    if (!path.endsWith(QLatin1String(".png"))) path += QStringLiteral(".png");
    const bool hidden = m_state.namesHidden();
    m_state.setNamesHidden(true);
    const QImage picture = pictureOf(*this, m_settings.dpi() / kScreenDpi);
    m_state.setNamesHidden(hidden);
    const bool written = picture.save(path, "PNG");
    m_session.say(written ? Kind::Information : Kind::Error,
                  written ? tr("The picture was written to %1. Look for names that are part of X-ray images.").arg(path)
                          : tr("The picture could not be written to %1. Choose a folder that can be written to and has space.").arg(path));
}

void MainWindow::reportAsFiles() {
    const QString folder = QFileDialog::getExistingDirectory(this, tr("Folder for the files of the report"));
    if (folder.isEmpty()) return;
    m_answers.finishNow();
    const auto written = writeReportFiles(m_answers, folder.toStdString(), {usualPaper(), m_state.namesHidden()});
    if (!written) {
        m_session.say(Kind::Error, QString::fromStdString(written.error().message));
        return;
    }
    QString said = tr("%n file(s) were written to %1.", nullptr, static_cast<int>(written->written.size())).arg(folder);
    for (const core::Notice& notice : written->notices)
        said += QLatin1Char(' ') + QString::fromStdString(notice.text);
    m_session.say(written->notices.empty() ? Kind::Information : Kind::Warning, said);
}

void MainWindow::printReport() {
    QPrinter printer(QPrinter::HighResolution);
    printer.setPageSize(QPageSize(usualPaper() == Paper::A4 ? QPageSize::A4 : QPageSize::Letter));
    printer.setFullPage(true);
    printer.setPageMargins(QMarginsF(0, 0, 0, 0)); // the layout has its own
    QPrintDialog dialog(&printer, this);
    if (dialog.exec() != QDialog::Accepted) return;
    m_answers.finishNow();
    // The person may have chosen the other paper in the dialog; on any third one the report is laid out for A4.
    const Paper paper = printer.pageLayout().pageSize().id() == QPageSize::Letter ? Paper::Letter : Paper::A4;
    if (paper == Paper::A4) printer.setPageSize(QPageSize(QPageSize::A4));
    ReportPages(printedReport(m_answers, m_state.namesHidden()), paper).paint(printer);
    m_session.say(Kind::Information, tr("The report was sent to the printer %1.").arg(printer.printerName()));
}

} // namespace gauge::app
