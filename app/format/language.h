// The language of the screen. English stands in the sources, but for its plurals; those,
// German and French come from resources/translations. Numbers keep
// a decimal point in every language: the same figure must not look different on two screens of one team.
#pragma once

#include <QString>
#include <QStringList>

class QCoreApplication;

namespace gauge::app {

/// "en", "de", "fr".
QStringList languages();
/// The language's own name, for choosing it.
QString nameOfLanguage(const QString& language);
/// The wanted one if there is such a language, else the first of the system's that there is, else English.
QString languageFor(const QString& wanted);
/// Puts the translators of the language in place, in the stead of those of an earlier call. Texts of widgets that exist already
/// stay as they are: to be called before the first one is made.
void useLanguage(QCoreApplication& application, const QString& language);
/// The language of what is written while it lives; afterwards the one that was in use before.
class ScreenLanguage {
public:
    explicit ScreenLanguage(const QString& language);
    ~ScreenLanguage();
    ScreenLanguage(const ScreenLanguage&) = delete;
    ScreenLanguage& operator=(const ScreenLanguage&) = delete;

private:
    QString m_before;
};
/// The language that was put in place last.
QString languageInUse();

} // namespace gauge::app
