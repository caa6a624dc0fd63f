#include "app/cli/copied_case.h"

#include "app/document/case_file.h"

#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>
#include <QThread>

namespace gauge::app {

CopiedCase::CopiedCase(const QString& original) {
    const QString copy = m_folder.filePath(QFileInfo(original).fileName());
    if (!m_folder.isValid() || !QFile::copy(original, copy)) return;
    QFile::setPermissions(copy, QFile::ReadOwner | QFile::WriteOwner);
    const QString edits = QString::fromStdString(workingPath(original.toStdString()).string());
    if (QFile::exists(edits)) QFile::copy(edits, QString::fromStdString(workingPath(copy.toStdString()).string()));
    m_path = copy;
}

void waitForWork(Session& session, PictureDrawings* drawings, ViewPlanner* planner) {
    do {
        QCoreApplication::processEvents(QEventLoop::AllEvents, 50);
        QThread::msleep(2);
    } while (session.isLoading() || session.isMeasuring() || (drawings && drawings->isWaiting()) ||
             (planner && planner->isWorking()));
    QCoreApplication::processEvents();
}

} // namespace gauge::app
