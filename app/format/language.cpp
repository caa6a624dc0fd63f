#include "app/format/language.h"

#include <QByteArrayView>
#include <QCoreApplication>
#include <QLibraryInfo>
#include <QLocale>
#include <QTranslator>
#include <memory>
#include <vector>

namespace gauge::app {
namespace {

/// lupdate lists classes without their namespace; tr() asks with it.
class OurTranslator : public QTranslator {
public:
    QString translate(const char* context, const char* source, const char* disambiguation, int n) const override {
        const QByteArrayView whole(context);
        const qsizetype colons = whole.lastIndexOf("::");
        return QTranslator::translate(colons < 0 ? context : context + colons + 2, source, disambiguation, n);
    }
};

QString g_language = QStringLiteral("en");
std::vector<std::unique_ptr<QTranslator>> g_translators;

void add(QCoreApplication& application, const QString& name, const QString& folder) {
    auto translator = std::make_unique<OurTranslator>();
    if (!translator->load(name, folder)) return; // Qt's own texts may not be installed: its dialogs stay English
    QCoreApplication::installTranslator(translator.get());
    Q_UNUSED(application);
    g_translators.push_back(std::move(translator));
}

} // namespace

QStringList languages() {
    return {QStringLiteral("en"), QStringLiteral("de"), QStringLiteral("fr")};
}

QString nameOfLanguage(const QString& language) {
    if (language == QLatin1String("de")) return QStringLiteral("Deutsch");
    if (language == QLatin1String("fr")) return QStringLiteral("Français");
    return QStringLiteral("English");
}

QString languageFor(const QString& wanted) {
    if (languages().contains(wanted)) return wanted;
    for (const QString& language : QLocale::system().uiLanguages())
        if (languages().contains(language.left(2))) return language.left(2);
    return QStringLiteral("en");
}

void useLanguage(QCoreApplication& application, const QString& language) {
    for (const auto& translator : g_translators)
        QCoreApplication::removeTranslator(translator.get());
    g_translators.clear();
    g_language = languageFor(language);
    QLocale::setDefault(QLocale::c());
    if (g_language != QLatin1String("en"))
        add(application, QStringLiteral("qtbase_") + g_language, QLibraryInfo::path(QLibraryInfo::TranslationsPath));
    add(application, QStringLiteral("ostium-gauge_") + g_language, QStringLiteral(":/translations"));
}

ScreenLanguage::ScreenLanguage(const QString& language) : m_before(languageInUse()) {
    useLanguage(*QCoreApplication::instance(), language);
}

ScreenLanguage::~ScreenLanguage() {
    useLanguage(*QCoreApplication::instance(), m_before);
}

QString languageInUse() {
    return g_language;
}

} // namespace gauge::app
