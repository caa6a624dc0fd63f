#include "app/format/moment_sentences.h"

#include "app/format/evidence_words.h"
#include "core/record/case_readings.h"

#include <QCoreApplication>
#include <QRegularExpression>

namespace gauge::app {

std::string withMomentWords(const core::CaseRecord& record, const std::string& sentence) {
    const auto wordsOf = [&](const QString& id) {
        if (id.toStdString() == core::kCtState) return QCoreApplication::translate("Evidence", "CT, pressure unknown");
        return momentWords(record, id.section(QLatin1Char('/'), -1).toStdString()); // of values without a moment: their group
    };
    const QString text = QString::fromStdString(sentence);
    // Only the name is replaced: the sentence stays one that core_sentences.h knows and translates.
    static const QRegularExpression named(QStringLiteral("(state \")([^\"]*)\""));
    QString result;
    qsizetype from = 0;
    for (auto match = named.globalMatch(text); match.hasNext();) {
        const auto found = match.next();
        result += text.mid(from, found.capturedStart() - from) + found.captured(1) + wordsOf(found.captured(2)) + QLatin1Char('"');
        from = found.capturedEnd();
    }
    return (result + text.mid(from)).toStdString();
}

} // namespace gauge::app
