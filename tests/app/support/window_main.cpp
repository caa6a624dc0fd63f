#include "app/format/language.h"
#include "app/window/theme.h"

#include <QApplication>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <gtest/gtest.h>

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    // Settings and kept work of this process alone: the person's stay untouched, and tests that run side by side, each a process,
    // do not find each other's.
    const QTemporaryDir home;
    qputenv("HOME", home.path().toUtf8());
    QStandardPaths::setTestModeEnabled(true);
    QApplication application(argc, argv);
    QApplication::setOrganizationName(QStringLiteral("ostium-gauge-tests"));
    gauge::app::useLanguage(application, QStringLiteral("en"));
    gauge::app::applyTheme(application);
    testing::InitGoogleTest(&argc, argv);
    return RUN_ALL_TESTS();
}
