#include "app/models/recent_cases.h"

#include "app/document/case_file.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QDir>
#include <QFileInfo>
#include <QLocale>
#include <QRegularExpression>
#include <algorithm>

namespace gauge::app {
namespace {

QString translated(const char* text) {
    return QCoreApplication::translate("RecentCases", text);
}

/// "neck" of neck.case.json.
QString bareName(const QString& path) {
    QString name = QFileInfo(path).fileName();
    for (const QString& suffix : {QString::fromLatin1(kCaseSuffix), QStringLiteral(".json")})
        if (name.endsWith(suffix, Qt::CaseInsensitive)) return name.chopped(suffix.size());
    return name;
}

QString timeWordsOf(const QDateTime& time) {
    return QLocale::system().toString(time, QLocale::ShortFormat);
}

RecentCase readOne(const QString& path) {
    RecentCase one{path, bareName(path), {}, {}, {}, false};
    const QFileInfo info(path);
    if (!info.exists()) {
        one.problem = translated(QT_TRANSLATE_NOOP("RecentCases", "The file is no longer there."));
        return one;
    }
    one.when = timeWordsOf(info.lastModified());
    const auto opened = readCaseFile(path.toStdString());
    if (!opened) {
        one.problem = translated(QT_TRANSLATE_NOOP("RecentCases", "The file cannot be read."));
        return one;
    }
    if (const auto& patient = opened->file.record.patient) {
        one.patient = patientWords(QString::fromStdString(patient->content.name));
        if (!patient->content.title.empty()) one.title = QString::fromStdString(patient->content.title);
    }
    return one;
}

} // namespace

QString patientWords(const QString& dicomName) {
    QStringList parts = dicomName.section(QLatin1Char('='), 0, 0).split(QLatin1Char('^'));
    for (QString& part : parts)
        part = part.trimmed();
    parts.removeAll(QString());
    if (parts.isEmpty()) return {};
    const QString family = parts.takeFirst();
    return parts.isEmpty() ? family : QStringLiteral("%1, %2").arg(family, parts.join(QLatin1Char(' ')));
}

QList<RecentCase> readRecentCases(const QStringList& paths) {
    QList<RecentCase> cases;
    for (const QString& path : paths)
        cases << readOne(path);
    return cases;
}

QList<RecentCase> readLeftCases(const QString& folder) {
    QList<RecentCase> cases;
    for (const LeftCase& left : leftCases(folder.toStdString())) {
        const QDateTime time = QDateTime::fromString(QString::fromStdString(left.lastEdit), Qt::ISODate);
        cases << RecentCase{QString::fromStdString(left.journal.string()), translated(QT_TRANSLATE_NOOP("RecentCases", "Never saved")),
                            patientWords(QString::fromStdString(left.patientName)),
                            time.isValid() ? timeWordsOf(time) : QString(), {}, true};
    }
    return cases;
}

QString recentWords(const RecentCase& one, bool namesHidden) {
    const QString title = !namesHidden ? one.title : one.isLeft ? translated(QT_TRANSLATE_NOOP("RecentCases", "Never saved")) : translated(QT_TRANSLATE_NOOP("RecentCases", "Case without names"));
    QStringList rest;
    if (!namesHidden && !one.patient.isEmpty()) rest << one.patient;
    if (!one.when.isEmpty()) rest << one.when;
    if (!one.problem.isEmpty()) rest << one.problem;
    return rest.isEmpty() ? title : title + QLatin1Char('\n') + rest.join(QStringLiteral(" · "));
}

QString withoutPaths(QString text, const QStringList& known) {
    QStringList all;
    for (const QString& path : known)
        if (path.size() > 1) all << path << QDir::toNativeSeparators(path) << QFileInfo(path).fileName();
    all.removeAll(QString());
    // The longest first: a folder lies within the path of its file.
    std::sort(all.begin(), all.end(), [](const QString& a, const QString& b) { return a.size() > b.size(); });
    for (const QString& path : std::as_const(all))
        text.replace(path, QStringLiteral("…"));
    static const QRegularExpression path(QStringLiteral(R"((?<![\w…])(?:[A-Za-z]:\\|/)[^\s,;"“”]+)"));
    return text.replace(path, QStringLiteral("…"));
}

} // namespace gauge::app
