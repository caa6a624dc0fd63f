#include "app/format/language.h"
#include "app/window/theme.h"

#include <QApplication>
#include <QStandardPaths>
#include <gtest/gtest.h>

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QStandardPaths::setTestModeEnabled(true); // settings of the person stay untouched
    QApplication application(argc, argv);
    QApplication::setOrganizationName(QStringLiteral("ostium-gauge-tests"));
    gauge::app::useLanguage(application, QStringLiteral("en"));
    gauge::app::applyTheme(application);
    testing::InitGoogleTest(&argc, argv);
    return RUN_ALL_TESTS();
}
