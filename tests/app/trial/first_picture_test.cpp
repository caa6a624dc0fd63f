// While a CT is loaded one slice of it is seen, with how far loading has come; nothing is measured on it, and cancelling works.
#include "app/panels/start_page.h"
#include "app/views/first_picture_view.h"
#include "app/views/scanner_section_view.h"
#include "app/window/page_shelf.h"
#include "tests/app/trial/hand.h"
#include "tests/app/trial/sample_stage.h"

#include <QCoreApplication>
#include <algorithm>
#include <gtest/gtest.h>
#include <vector>

using namespace gauge;
using namespace gauge::app;

namespace {

QString dicomFolder() {
    return QString::fromStdString((trial::sampleFolder() / "dicom").string());
}

class FirstPictureTest : public ::testing::Test {
protected:
    MainWindow window;
    trial::Hand hand{window};
    FirstPictureView* view = nullptr;

    void SetUp() override {
        window.resize(1280, 800);
        window.show();
        QCoreApplication::processEvents();
        view = window.findChild<FirstPictureView*>();
        ASSERT_TRUE(view);
    }
    bool isSeen() const { return window.isVisible() && view->isVisible(); }
    bool sectionsAreSeen() const {
        for (const auto* section : window.findChildren<ScannerSectionView*>())
            if (section->isVisible()) return true;
        return false;
    }
};

} // namespace

TEST_F(FirstPictureTest, IsTheMiddleSliceWithItsWordsAndNothingIsMeasuredOnIt) {
    bool seen = false, measurable = false, loading = false;
    QString title;
    int greys = 0;
    QObject::connect(&window.session(), &Session::firstPictureChanged, view, [&] {
        const FirstPicture* first = window.session().firstPicture();
        if (!first || seen) return;
        seen = isSeen();
        loading = window.session().isLoading();
        measurable = window.session().images() || window.session().volume() || sectionsAreSeen();
        title = view->title();
        EXPECT_EQ(first->slice.number, first->slice.count / 2 + 1);
        const QImage picture = view->grab().toImage();
        std::vector<bool> found(256);
        for (int y = 60; y < picture.height() - 60; y += 3)
            for (int x = 0; x < picture.width(); x += 3)
                found[static_cast<std::size_t>(qGray(picture.pixel(x, y)))] = true;
        greys = static_cast<int>(std::count(found.begin(), found.end(), true));
        hand.look("first-picture");
    });
    window.openFolder(dicomFolder());
    ASSERT_TRUE(trial::waitFor([&] { return !window.session().isLoading(); }));
    EXPECT_TRUE(seen) << "before the rest was loaded";
    EXPECT_TRUE(loading);
    EXPECT_FALSE(measurable);
    EXPECT_TRUE(title.startsWith(QStringLiteral("slice "))) << title.toStdString();
    EXPECT_TRUE(title.contains(QStringLiteral("phase 45 %"))) << title.toStdString();
    EXPECT_GT(greys, 40) << "a picture, not an empty page";
    EXPECT_FALSE(isSeen()) << "it goes when all is there";
    EXPECT_TRUE(sectionsAreSeen() || window.session().measurement());
    EXPECT_FALSE(window.session().firstPicture());
    EXPECT_TRUE(trial::settle(window));
}

TEST_F(FirstPictureTest, CancelTakesItAwayAgain) {
    bool pressed = false;
    QObject::connect(&window.session(), &Session::firstPictureChanged, view, [&] {
        if (!window.session().firstPicture() || pressed) return;
        pressed = true;
        QMetaObject::invokeMethod(view, [&] { hand.press("Cancel"); }, Qt::QueuedConnection);
    });
    window.openFolder(dicomFolder());
    ASSERT_TRUE(trial::waitFor([&] { return pressed && !window.session().isLoading(); }));
    EXPECT_FALSE(window.session().images());
    EXPECT_FALSE(isSeen());
    EXPECT_TRUE(window.start().isVisible()) << "back to where the person came from";
    EXPECT_EQ(window.session().message().text, QStringLiteral("Loading was cancelled."));
}

TEST_F(FirstPictureTest, NeverStandsBesideTheValuesOfAnotherCase) {
    window.beginWithoutImages();
    QCoreApplication::processEvents();
    bool valuesBeside = false, seen = false;
    QObject::connect(&window.session(), &Session::firstPictureChanged, view, [&] {
        if (!window.session().firstPicture()) return;
        seen = isSeen();
        for (const QWidget* part : window.findChildren<QWidget*>(QStringLiteral("comparison")))
            valuesBeside = valuesBeside || part->isVisible();
    });
    window.openFolder(dicomFolder());
    ASSERT_TRUE(trial::settle(window));
    EXPECT_TRUE(seen);
    EXPECT_FALSE(valuesBeside);
    EXPECT_TRUE(window.session().images());
}
