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
    QString text = QString::fromStdString(sentence);
    // Stage and id together, as in "(before the repair, state "echo")": the stage is enough.
    static const QRegularExpression besideStage(QStringLiteral(", state \"[^\"]*\"\\)"));
    text.replace(besideStage, QStringLiteral(")"));
    static const QRegularExpression alone(QStringLiteral("(\\()?((?:the )?state )\"([^\"]*)\"(?: \\(([^()]*)\\))?"));
    QString result;
    qsizetype from = 0;
    for (auto match = alone.globalMatch(text); match.hasNext();) {
        const auto found = match.next();
        const bool inBrackets = !found.captured(1).isEmpty();
        const QString words = QStringLiteral("“%1”").arg(wordsOf(found.captured(3)));
        result += text.mid(from, found.capturedStart() - from) + found.captured(1);
        result += inBrackets || !found.captured(2).startsWith(QLatin1String("the")) ? words : QStringLiteral("the moment ") + words;
        from = found.capturedEnd();
    }
    return (result + text.mid(from)).toStdString();
}

} // namespace gauge::app
