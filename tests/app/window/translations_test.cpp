// The texts of the screen in other languages against the English ones of the sources.
#include "app/format/language.h"
#include "app/window/main_window.h"

#include <QCoreApplication>
#include <QFile>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QXmlStreamReader>
#include <algorithm>
#include <gtest/gtest.h>

using namespace gauge::app;

namespace {

struct Text {
    QString context, source;
    QStringList translations; ///< more than one for plurals
    bool unfinished = false;
};

QString tsPath(const QString& language) {
    return QStringLiteral(GAUGE_SOURCE_DIR "/resources/translations/ostium-gauge_%1.ts").arg(language);
}

std::vector<Text> readTexts(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) return {};
    QXmlStreamReader xml(&file);
    std::vector<Text> texts;
    QString context;
    while (!xml.atEnd()) {
        if (xml.readNext() != QXmlStreamReader::StartElement) continue;
        if (xml.name() == u"name") context = xml.readElementText();
        if (xml.name() == u"message") texts.push_back({context, {}, {}, false});
        if (xml.name() == u"source") texts.back().source = xml.readElementText();
        if (xml.name() == u"translation") {
            texts.back().unfinished = xml.attributes().value("type") == u"unfinished";
            const QString plain = xml.readElementText(QXmlStreamReader::IncludeChildElements);
            texts.back().translations << plain;
        }
    }
    return texts;
}

QStringList sortedPlaceholders(const QString& text) {
    static const QRegularExpression placeholder(QStringLiteral("%(?:L?[0-9]+|n)"));
    QStringList found;
    for (auto match = placeholder.globalMatch(text); match.hasNext();)
        found << match.next().captured();
    found.removeDuplicates(); // both forms of a plural stand in one text here
    found.sort();
    return found;
}

bool hasMnemonic(QString text) {
    return text.remove(QStringLiteral("&&")).contains(QLatin1Char('&'));
}

class Translations : public ::testing::TestWithParam<const char*> {};

} // namespace

TEST_P(Translations, NothingIsUnfinished) {
    const auto texts = readTexts(tsPath(GetParam()));
    ASSERT_GT(texts.size(), 100U);
    for (const Text& text : texts) {
        EXPECT_FALSE(text.unfinished) << text.context.toStdString() << ": " << text.source.toStdString();
        EXPECT_FALSE(text.translations.join(QString()).trimmed().isEmpty() && !text.source.trimmed().isEmpty())
            << text.source.toStdString();
    }
}

TEST_P(Translations, PlaceholdersAndMnemonicsAreThoseOfTheEnglishText) {
    for (const Text& text : readTexts(tsPath(GetParam()))) {
        const QString all = text.translations.join(QLatin1Char(' '));
        EXPECT_EQ(sortedPlaceholders(all), sortedPlaceholders(text.source)) << text.source.toStdString();
        EXPECT_EQ(hasMnemonic(all), hasMnemonic(text.source)) << text.source.toStdString();
    }
}

TEST_P(Translations, HoldsEveryTextOfTheSources) {
    const QTemporaryDir folder;
    const QString copy = folder.filePath(QStringLiteral("copy.ts"));
    ASSERT_TRUE(QFile::copy(tsPath(GetParam()), copy));
    QProcess lupdate;
    lupdate.start(QStringLiteral(GAUGE_LUPDATE), {"-locations", "none", "-no-obsolete", GAUGE_SOURCE_DIR "/app", "-ts", copy});
    ASSERT_TRUE(lupdate.waitForStarted()) << GAUGE_LUPDATE;
    ASSERT_TRUE(lupdate.waitForFinished(120'000));
    ASSERT_EQ(lupdate.exitCode(), 0) << lupdate.readAllStandardError().toStdString();
    for (const Text& text : readTexts(copy))
        EXPECT_FALSE(text.unfinished) << "run resources/translations/translate.py update, then translate: "
                                      << text.context.toStdString() << ": " << text.source.toStdString();
}

TEST_P(Translations, AreInTheProgram) {
    useLanguage(*QCoreApplication::instance(), QString::fromLatin1(GetParam()));
    EXPECT_NE(QCoreApplication::translate("Role", "landing zone"), QStringLiteral("landing zone"));
    EXPECT_NE(MainWindow::tr("&File"), QStringLiteral("&File")) << "a class in a namespace";
    useLanguage(*QCoreApplication::instance(), QStringLiteral("en"));
    EXPECT_EQ(QCoreApplication::translate("Role", "landing zone"), QStringLiteral("landing zone"));
}

// "1 file(s)" is nobody's English.
TEST(EnglishPlurals, AreAllInTheProgram) {
    std::size_t plurals = 0;
    for (const Text& text : readTexts(tsPath(QStringLiteral("de"))))
        plurals += text.source.contains(QLatin1String("%n"));
    const auto english = readTexts(tsPath(QStringLiteral("en")));
    EXPECT_EQ(english.size(), plurals);
    for (const Text& text : english) {
        EXPECT_FALSE(text.unfinished) << text.source.toStdString();
        for (const int n : {1, 2}) {
            const QString shown = QCoreApplication::translate(text.context.toUtf8(), text.source.toUtf8(), nullptr, n);
            EXPECT_FALSE(shown.contains(QLatin1String("(s)"))) << shown.toStdString();
            EXPECT_TRUE(shown.contains(QString::number(n))) << shown.toStdString();
        }
    }
}

INSTANTIATE_TEST_SUITE_P(Languages, Translations, ::testing::Values("de", "fr"));
