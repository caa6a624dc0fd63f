// What the start page says about the cases that were opened last, and the ones that were never saved.
#pragma once

#include <QList>
#include <QString>
#include <QStringList>

namespace gauge::app {

struct RecentCase {
    QString path;    ///< of the case file, or of the journal of a case that was never saved
    QString title;   ///< the case's own, else its file's name
    QString patient; ///< empty: the case names none
    QString when;    ///< when the file was written last, as people read it
    QString problem; ///< why it cannot be opened, as a sentence; empty: it can
    bool isLeft = false; ///< never saved: goes on from its journal
};

/// Reads each file; slow on slow disks, so for another thread.
QList<RecentCase> readRecentCases(const QStringList& paths);
/// The cases that were never saved, in `folder`.
QList<RecentCase> readLeftCases(const QString& folder);

/// Two lines for a list: what it is, and for whom and when. Without names nothing tells whose case it is: neither title nor
/// file name nor patient.
QString recentWords(const RecentCase& one, bool namesHidden);

/// "Doe, Jane" of DICOM's "Doe^Jane".
QString patientWords(const QString& dicomName);

/// A message with every path taken out, those of `known` and whatever else looks like one: file names often tell the patient.
QString withoutPaths(QString text, const QStringList& known);

} // namespace gauge::app
