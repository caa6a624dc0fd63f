#include "app/format/core_sentences.h"

#include "app/format/core_sentence_list.h"
#include "app/format/language.h"

#include <QCoreApplication>
#include <QHash>
#include <QRegularExpression>
#include <algorithm>
#include <vector>

namespace gauge::app {
namespace {

QString translated(const char* english) {
    return QCoreApplication::translate("CoreSentences", english);
}

/// Numbers as core writes them, with the units that stand in its sentences.
QString numberPattern() {
    return QStringLiteral("-?[0-9][0-9.,]*(?:e-?[0-9]+)?(?: (?:mmHg|mm|%|degrees|HU|cm/s|per minute))?");
}

QString wordPattern() {
    std::vector<QString> words;
    for (const char* word : coreWordList())
        words.push_back(QRegularExpression::escape(QString::fromUtf8(word)));
    // The longest first: "gap" must not hide "gap after the pull".
    std::sort(words.begin(), words.end(), [](const QString& a, const QString& b) { return a.size() > b.size(); });
    return QStringList(words.begin(), words.end()).join(QLatin1Char('|'));
}

class Pattern {
public:
    Pattern(const CorePattern& from, const QString& words, bool isSentence) : m_from(from) {
        const QString english = QString::fromUtf8(from.english);
        QString expression;
        for (qsizetype i = 0; i < english.size(); ++i) {
            if (english[i] == QLatin1Char('%') && i + 1 < english.size() && english[i + 1].isDigit()) {
                const char kind = from.kinds[english[++i].digitValue() - 1];
                expression += QStringLiteral("(%1)").arg(kind == 'n'   ? numberPattern()
                                                         : kind == 'w' ? words
                                                                       : QStringLiteral(".+?"));
            } else {
                expression += QRegularExpression::escape(english.mid(i, 1));
                ++m_literals;
            }
        }
        expression += isSentence ? QStringLiteral("(?=\\s|$)") : QStringLiteral("$");
        m_expression.setPattern(expression);
        m_expression.setPatternOptions(QRegularExpression::DotMatchesEverythingOption);
    }

    int literals() const { return m_literals; }
    const char* kinds() const { return m_from.kinds; }
    QRegularExpressionMatch match(const QString& text, qsizetype from) const {
        return m_expression.match(text, from, QRegularExpression::NormalMatch, QRegularExpression::AnchorAtOffsetMatchOption);
    }
    /// The pattern in the screen's language with these at its places; a place's own text is never searched for places.
    QString with(const QStringList& arguments) const {
        const QString pattern = translated(m_from.english);
        QString out;
        for (qsizetype i = 0; i < pattern.size(); ++i) {
            const int place = pattern[i] == QLatin1Char('%') && i + 1 < pattern.size() ? pattern[i + 1].digitValue() : -1;
            if (place >= 1 && place <= arguments.size()) {
                out += arguments[place - 1];
                ++i;
            } else {
                out += pattern[i];
            }
        }
        return out;
    }

private:
    CorePattern m_from;
    QRegularExpression m_expression;
    int m_literals = 0;
};

class Sentences {
public:
    Sentences() {
        const QString words = wordPattern();
        for (const auto& list : {sizingSentences(), courseSentences(), imageSentences(), accessSentences()})
            for (const CorePattern& one : list)
                m_sentences.emplace_back(one, words, true);
        for (const CorePattern& one : sentenceParts())
            m_parts.emplace_back(one, words, false);
        for (const char* word : coreWordList())
            m_words.insert(QString::fromUtf8(word), word);
        // What says most by itself is tried first.
        for (auto* list : {&m_sentences, &m_parts})
            std::stable_sort(list->begin(), list->end(),
                             [](const Pattern& a, const Pattern& b) { return a.literals() > b.literals(); });
    }

    /// The sentences from there to the end.
    std::optional<QString> sentences(const QString& text, qsizetype from = 0) const {
        while (from < text.size() && text[from].isSpace())
            ++from;
        if (from == text.size()) return QString();
        for (const Pattern& pattern : m_sentences) {
            const auto match = pattern.match(text, from);
            if (!match.hasMatch()) continue;
            const auto arguments = argumentsOf(pattern, match);
            if (!arguments) continue;
            const auto rest = sentences(text, match.capturedEnd());
            if (!rest) continue;
            return rest->isEmpty() ? pattern.with(*arguments) : pattern.with(*arguments) + QLatin1Char(' ') + *rest;
        }
        return std::nullopt;
    }

    std::optional<QString> part(const QString& text) const {
        if (const auto word = m_words.find(text); word != m_words.end()) return translated(*word);
        if (auto all = list(text, QStringLiteral(", "))) return all;
        if (auto all = list(text, QStringLiteral("; "))) return all;
        for (const Pattern& pattern : m_parts) {
            const auto match = pattern.match(text, 0);
            if (!match.hasMatch()) continue;
            if (const auto arguments = argumentsOf(pattern, match)) return pattern.with(*arguments);
        }
        return std::nullopt;
    }

private:
    std::optional<QStringList> argumentsOf(const Pattern& pattern, const QRegularExpressionMatch& match) const {
        QStringList arguments;
        for (int i = 1; i <= match.lastCapturedIndex(); ++i) {
            const QString text = match.captured(i);
            switch (pattern.kinds()[i - 1]) {
            case 'n':
                arguments << number(text);
                break;
            case 'a':
                arguments << text;
                break;
            case 'q':
                arguments << part(text).value_or(text);
                break;
            default: {
                const auto known = part(text);
                if (!known) return std::nullopt;
                arguments << *known;
            }
            }
        }
        return arguments;
    }

    QString number(const QString& text) const {
        const qsizetype space = text.indexOf(QLatin1Char(' '));
        if (space < 0) return text;
        const auto unit = m_words.find(text.mid(space + 1));
        return unit == m_words.end() ? text : text.left(space + 1) + translated(*unit);
    }

    /// A list of which each item is known.
    std::optional<QString> list(const QString& text, const QString& separator) const {
        const QStringList items = text.split(separator);
        if (items.size() < 2) return std::nullopt;
        QStringList all;
        for (const QString& item : items) {
            const auto known = part(item);
            if (!known) return std::nullopt;
            all << *known;
        }
        return all.join(separator);
    }

    std::vector<Pattern> m_sentences, m_parts;
    QHash<QString, const char*> m_words;
};

const Sentences& patterns() {
    static const Sentences all;
    return all;
}

/// Panels ask for the same sentences at every refresh.
template <class Make> QString kept(const char* kind, const std::string& text, Make make) {
    thread_local QHash<QString, QString> cache;
    constexpr qsizetype kMost = 2000;
    const QString key = languageInUse() + QLatin1String(kind) + QString::fromStdString(text);
    if (const auto found = cache.constFind(key); found != cache.constEnd()) return *found;
    if (cache.size() >= kMost) cache.clear();
    return *cache.insert(key, make(QString::fromStdString(text)));
}

/// A moment named after its stage is named once: neither 'After the repair (after the repair)' nor
/// '(after the repair, state "After the repair")', in whatever language.
QString saidOnce(QString text) {
    static const QRegularExpression inBrackets(QStringLiteral("\\(([^(),]+), [^(),\"“„«]*[\"“„«]\\s?([^\"”“»]+?)\\s?[\"”“»]\\)"));
    static const QRegularExpression before(QStringLiteral("([\"“„«]\\s?([^\"”“»]+?)\\s?[\"”“»]) \\(([^()]+)\\)"));
    const auto shorten = [&](const QRegularExpression& pattern, int one, int other, const auto& kept) {
        for (qsizetype from = 0;;) {
            const auto match = pattern.match(text, from);
            if (!match.hasMatch()) return;
            from = match.capturedEnd();
            if (match.captured(one).compare(match.captured(other), Qt::CaseInsensitive) != 0) continue;
            const QString once = kept(match);
            text.replace(match.capturedStart(), match.capturedLength(), once);
            from = match.capturedStart() + once.size();
        }
    };
    shorten(inBrackets, 1, 2, [](const auto& match) { return QStringLiteral("(%1)").arg(match.captured(1)); });
    shorten(before, 2, 3, [](const auto& match) { return match.captured(1); });
    return text;
}

/// Core writes numbers in ASCII; below zero they carry the sign that all other numbers on screen have.
QString withMinus(QString text) {
    static const QRegularExpression belowZero(QStringLiteral("(^|[\\s(])-(?=[0-9])"));
    return text.replace(belowZero, QStringLiteral("\\1\u2212"));
}

} // namespace

std::optional<QString> knownSentence(const std::string& text) {
    return patterns().sentences(QString::fromStdString(text));
}

QString sentence(const std::string& text) {
    return kept("s", text, [](const QString& english) { return withMinus(saidOnce(patterns().sentences(english).value_or(english))); });
}

QString sentence(const core::Notice& notice) {
    return sentence(notice.text);
}

QString coreWords(const std::string& text) {
    return kept("w", text, [](const QString& english) { return patterns().part(english).value_or(english); });
}

} // namespace gauge::app
