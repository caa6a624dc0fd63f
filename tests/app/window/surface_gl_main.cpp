// As window_main.cpp, on the platform that the environment names: OpenGL needs a screen.
#include "app/window/theme.h"

#include <QApplication>
#include <QStandardPaths>
#include <gtest/gtest.h>

int main(int argc, char** argv) {
    QStandardPaths::setTestModeEnabled(true); // settings of the person stay untouched
    QApplication application(argc, argv);
    QApplication::setOrganizationName(QStringLiteral("ostium-gauge-tests"));
    gauge::app::applyTheme(application);
    testing::InitGoogleTest(&argc, argv);
    return RUN_ALL_TESTS();
}
