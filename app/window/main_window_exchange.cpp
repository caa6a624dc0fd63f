// What comes in from other systems and goes out to them beside the report: readings of structured reports, the table of values,
// case and images without identity.
#include "app/document/report_offer.h"
#include "app/report/export_without_identity.h"
#include "app/report/value_table.h"
#include "app/window/main_window.h"

#include <QAction>
#include <QFileDialog>
#include <QFileInfo>
#include <QMenu>
#include <QMessageBox>
#include <QPushButton>
#include <QSaveFile>

namespace gauge::app {

using Kind = Message::Kind;

void MainWindow::addExchangeActions(QMenu& file) {
    file.addAction(tr("Read a &report into the table …"), this, &MainWindow::chooseReport)
        ->setToolTip(tr("Take readings from a DICOM Structured Report"));
    file.addAction(tr("&Values as CSV or JSON …"), this, &MainWindow::saveValues);
    file.addAction(tr("Export wit&hout identity …"), this, &MainWindow::exportWithoutIdentity)
        ->setToolTip(tr("Case and images without names, numbers and dates of the patient"));
}

void MainWindow::chooseReport() {
    const QString path = QFileDialog::getOpenFileName(this, tr("Read a structured report"), m_settings.lastFolder(),
                                                      tr("DICOM (*.dcm);;All files (*)"));
    if (!path.isEmpty()) readReport(path);
}

void MainWindow::readReport(const QString& path) {
    const auto offer = offerOf(m_session.record(), path.toStdString());
    if (!offer) {
        m_session.say(Kind::Error, QString::fromStdString(offer.error().message));
        return;
    }
    if (!offer->otherPatient.isEmpty()) {
        QMessageBox box(QMessageBox::Warning, tr("Another patient"),
                        tr("This report seems to be about another patient. Take its readings all the same?"), QMessageBox::NoButton,
                        this);
        // Names stay hidden where the person hid them: what differs is told by its kind alone.
        box.setInformativeText(m_state.namesHidden() ? tr("%n of ID, name and date of birth differ(s).", nullptr,
                                                         static_cast<int>(offer->otherPatient.size()))
                                                     : offer->otherPatient.join(QLatin1Char('\n')));
        box.addButton(tr("Take the readings"), QMessageBox::AcceptRole);
        box.setDefaultButton(box.addButton(QMessageBox::Cancel));
        box.setObjectName(QStringLiteral("otherPatient"));
        box.exec();
        if (box.buttonRole(box.clickedButton()) != QMessageBox::AcceptRole) {
            m_session.say(Kind::Information, tr("No reading was taken: the report is about another patient."));
            return;
        }
    }
    const int taken = takeReadings(m_session.document(), *offer);
    if (taken == 0 && !offer->fresh.empty()) return; // for reading only: the document has said why
    QString said = takenSentence(*offer, taken);
    if (offer->patientUnknown) said += QLatin1Char(' ') + tr("Whether it is the same patient could not be checked.");
    m_session.say(taken > 0 && offer->leftOut.empty() && !offer->patientUnknown ? Kind::Information : Kind::Warning, said);
    if (offer->leftOut.empty()) return;
    auto* box = new QMessageBox(QMessageBox::Information, tr("Read a structured report"), said, QMessageBox::Ok, this);
    box->setObjectName(QStringLiteral("leftOut"));
    box->setDetailedText(leftOutLines(*offer).join(QLatin1Char('\n')));
    box->setAttribute(Qt::WA_DeleteOnClose);
    box->open();
}

void MainWindow::saveValues() {
    const QString csv = tr("Table for spreadsheets (*.csv)"), json = tr("JSON for programs (*.json)");
    QString kind = csv;
    QString path = QFileDialog::getSaveFileName(this, tr("Values of the case"), tr("values.csv"), csv + QStringLiteral(";;") + json,
                                                &kind);
    if (path.isEmpty()) return;
    const bool asJson = path.endsWith(QLatin1String(".json"), Qt::CaseInsensitive) ||
                        (kind == json && !path.endsWith(QLatin1String(".csv"), Qt::CaseInsensitive));
    if (QFileInfo(path).suffix().isEmpty()) path += asJson ? QStringLiteral(".json") : QStringLiteral(".csv");
    core::CaseRecord record = m_session.record();
    if (m_state.namesHidden()) forgetPersons(record);
    const std::string text = asJson ? valuesJson(record).dump(1) + "\n" : valuesCsv(record);
    QSaveFile out(path);
    const auto size = static_cast<qint64>(text.size());
    const bool done = out.open(QIODevice::WriteOnly) && out.write(text.data(), size) == size && out.commit();
    m_session.say(done ? Kind::Information : Kind::Error,
                  done ? tr("The values were written to %1.").arg(path)
                       : tr("Cannot write %1: %2. Choose another folder, or make room.").arg(path, out.errorString()));
}

void MainWindow::exportWithoutIdentity() {
    const LoadedImages* images = m_session.images();
    const QString from = images ? QString::fromStdString(images->folder.string())
                                : QFileDialog::getExistingDirectory(this, tr("Folder with the images to export"), m_settings.lastFolder());
    if (from.isEmpty()) return;
    const QString to = QFileDialog::getExistingDirectory(this, tr("Empty folder for images and case without identity"),
                                                         m_settings.lastFolder());
    if (to.isEmpty()) return;
    ExportRequest request;
    request.images = from.toStdString();
    request.target = to.toStdString();
    if (m_session.document().nextRevision() > 1) request.record = m_session.record();
    m_session.say(Kind::Working, tr("Writing images without identity to %1 …").arg(to));
    m_exportJob.start<ExportResult>(
        [request](const core::WorkContext& work) { return app::exportWithoutIdentity(request, work); },
        [this, to](core::Result<ExportResult> result) {
            if (!result) return m_session.say(Kind::Error, QString::fromStdString(result.error().message));
            QStringList said{tr("%n image(s) were written to %1.", nullptr, static_cast<int>(result->images.written.size())).arg(to)};
            if (!result->images.refused.empty())
                said << tr("%n file(s) were left out, since text of the patient may be in them.", nullptr,
                           static_cast<int>(result->images.refused.size()));
            said << tr("Look at the pictures before you pass them on: text within the image is not removed.");
            m_session.say(Kind::Warning, said.join(QLatin1Char(' ')));
        });
}

} // namespace gauge::app
