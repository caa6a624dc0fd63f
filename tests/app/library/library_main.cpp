#include <QCoreApplication>
#include <gtest/gtest.h>

int main(int argc, char** argv) {
    QCoreApplication application(argc, argv); // database drivers are found through it
    testing::InitGoogleTest(&argc, argv);
    return RUN_ALL_TESTS();
}
