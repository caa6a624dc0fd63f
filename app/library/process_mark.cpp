#include "app/library/process_mark.h"

#include <QCoreApplication>
#include <QFile>
#include <QStringList>

namespace gauge::app {
namespace {

QString textOf(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? QString::fromLatin1(file.readAll()).trimmed() : QString();
}

/// Boot and namespace, within which process numbers mean the same.
QString place() {
    const QString boot = textOf(QStringLiteral("/proc/sys/kernel/random/boot_id"));
    const QString space = QFile::symLinkTarget(QStringLiteral("/proc/self/ns/pid")).section(QLatin1Char('/'), -1);
    return boot.isEmpty() || space.isEmpty() ? QString() : boot + QLatin1Char(' ') + space;
}

/// Start of a process in ticks since boot: field 22 of /proc/PID/stat (proc(5)), counted after the name in parentheses.
QString startOf(const QString& process) {
    const QString stat = textOf(QStringLiteral("/proc/%1/stat").arg(process));
    const QStringList fields = stat.mid(stat.lastIndexOf(QLatin1Char(')')) + 2).split(QLatin1Char(' '));
    return fields.size() > 19 && fields[0] != QLatin1String("Z") ? fields[19] : QString();
}

} // namespace

QString processMark() {
    const QString where = place();
    const QString process = QString::number(QCoreApplication::applicationPid());
    const QString start = startOf(process);
    return where.isEmpty() || start.isEmpty() ? QString() : QStringList{where, process, start}.join(QLatin1Char(' '));
}

bool hasEnded(const QString& mark) {
    const QStringList parts = mark.split(QLatin1Char(' '));
    if (parts.size() != 4 || parts[0] + QLatin1Char(' ') + parts[1] != place()) return false;
    return startOf(parts[2]) != parts[3];
}

} // namespace gauge::app
