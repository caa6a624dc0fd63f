#include "app/library/search_text.h"

#include <QRegularExpression>

namespace gauge::app {
namespace {

QString folded(const QString& text) {
    QString plain;
    const QString decomposed = text.normalized(QString::NormalizationForm_KD).toCaseFolded();
    for (const QChar character : decomposed)
        if (character == QChar(0xDF))
            plain += QLatin1String("ss"); // sharp s
        else if (character.category() != QChar::Mark_NonSpacing)
            plain += character;
    static const QRegularExpression separators(QStringLiteral("[\\^\\s]+"));
    return plain.replace(separators, QStringLiteral(" ")).trimmed();
}

} // namespace

QString searchText(const QStringList& texts) {
    static const QRegularExpression date(QStringLiteral("^(\\d{4})(\\d{2})(\\d{2})$"));
    QStringList all;
    for (const QString& text : texts) {
        all << folded(text);
        const auto match = date.match(text);
        if (match.hasMatch()) all << match.captured(1) + QLatin1Char('-') + match.captured(2) + QLatin1Char('-') + match.captured(3);
    }
    all.removeAll(QString());
    return all.join(QLatin1Char('\n'));
}

QStringList searchWords(const QString& question) {
    return folded(question).split(QLatin1Char(' '), Qt::SkipEmptyParts);
}

QString likePattern(const QString& word) {
    QString pattern;
    for (const QChar character : word) {
        if (character == QLatin1Char('!') || character == QLatin1Char('%') || character == QLatin1Char('_'))
            pattern += QLatin1Char('!');
        pattern += character;
    }
    return QLatin1Char('%') + pattern + QLatin1Char('%');
}

} // namespace gauge::app
