// What the CT views share, by mouse and keys alone: the place under the pointer, window by tissue, slab, and the key that puts a
// caliper into the table.
#include "app/interaction/drawing_layer.h"
#include "app/panels/comparison_panel.h"
#include "app/panels/comparison_table.h"
#include "app/views/scanner_section_view.h"
#include "app/window/main_window.h"
#include "tests/app/support/synthetic_session.h"

#include <QApplication>
#include <QClipboard>
#include <QTest>
#include <gtest/gtest.h>

using namespace gauge;
using namespace gauge::app;

namespace {

class PictureKeys : public ::testing::Test {
protected:
    MainWindow window;
    std::vector<ScannerSectionView*> views;

    void SetUp() override {
        window.resize(1440, 900);
        window.show();
        fixture::openAndMeasure(window.session());
        key(Qt::Key_T); // the scanner's sections
        for (auto* view : window.findChildren<ScannerSectionView*>())
            if (view->isVisible()) views.push_back(view);
        ASSERT_EQ(views.size(), 3u);
        ASSERT_TRUE(fixture::waitUntil([&] { return !window.isWorking(); }));
        for (int i = 0; i < 3; ++i) { // the parts find their room
            QTest::qWait(30);
            for (auto* view : views)
                view->grab();
        }
    }
    void key(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) {
        QTest::keyClick(QApplication::focusWidget() ? QApplication::focusWidget() : &window, key, modifiers);
        QCoreApplication::processEvents();
    }
    static void move(QWidget& view, const QPointF& to, Qt::MouseButtons held = Qt::NoButton) {
        QMouseEvent event(QEvent::MouseMove, to, view.mapToGlobal(to), Qt::NoButton, held, Qt::NoModifier);
        QCoreApplication::sendEvent(&view, &event);
        QCoreApplication::processEvents();
    }
    /// Pixels of a square about a place of the view that differ between two pictures of it.
    static int changed(const QImage& a, const QImage& b, const QPoint& at) {
        constexpr int kHalf = 7;
        int count = 0;
        for (int y = at.y() - kHalf; y <= at.y() + kHalf; ++y)
            for (int x = at.x() - kHalf; x <= at.x() + kHalf; ++x)
                count += a.rect().contains(x, y) && a.pixel(x, y) != b.pixel(x, y);
        return count;
    }
    static QImage pictureOf(QWidget& view) { return view.grab().toImage(); }
    static double meanGrey(const QImage& image, const QRect& part) {
        double sum = 0.0;
        for (int y = part.top(); y <= part.bottom(); ++y)
            for (int x = part.left(); x <= part.right(); ++x)
                sum += qGray(image.pixel(x, y));
        return sum / (part.width() * part.height());
    }
};

} // namespace

TEST_F(PictureKeys, ThePlaceUnderThePointerIsShownInTheOtherViewsAtTheSamePlace) {
    const QPointF at = QPointF(views[0]->rect().center()) + QPointF(25, -14);
    std::vector<QImage> before;
    for (auto* view : views)
        before.push_back(pictureOf(*view));
    move(*views[0], at);
    const core::PatientPoint place = views[0]->map()->patientFrom(at);
    ASSERT_TRUE(window.state().pointer());
    EXPECT_LT(core::distanceMm(*window.state().pointer(), place), 1e-9);
    for (std::size_t i = 1; i < views.size(); ++i) {
        const QPoint there = views[i]->map()->fromPatient(place).toPoint();
        EXPECT_GT(changed(before[i], pictureOf(*views[i]), there), 8) << views[i]->objectName().toStdString() << ": a cross stands there";
        EXPECT_EQ(changed(before[i], pictureOf(*views[i]), there + QPoint(0, 90)), 0) << "and nowhere else";
    }
    QEvent leave(QEvent::Leave);
    QCoreApplication::sendEvent(views[0], &leave);
    QCoreApplication::processEvents();
    for (std::size_t i = 1; i < views.size(); ++i)
        EXPECT_EQ(changed(before[i], pictureOf(*views[i]), views[i]->map()->fromPatient(place).toPoint()), 0) << "gone with the pointer";
}

TEST_F(PictureKeys, ASlabOfMaximaIsNowhereDarkerThanItsMeanAndThePictureSaysWhatItIs) {
    const QRect middle(views[0]->rect().center() - QPoint(60, 60), QSize(120, 120));
    const QImage thin = pictureOf(*views[0]);
    for (int i = 0; i < 6; ++i)
        key(Qt::Key_BracketRight);
    ASSERT_EQ(window.state().slab().thicknessMm, 6.0);
    ASSERT_EQ(window.state().slab().shows, core::SlabValue::Maximum);
    const QImage maximum = pictureOf(*views[0]);
    key(Qt::Key_Backslash);
    ASSERT_EQ(window.state().slab().shows, core::SlabValue::Mean);
    const QImage mean = pictureOf(*views[0]);
    int darker = 0;
    for (int y = middle.top(); y <= middle.bottom(); ++y)
        for (int x = middle.left(); x <= middle.right(); ++x)
            darker += qGray(maximum.pixel(x, y)) < qGray(mean.pixel(x, y));
    EXPECT_EQ(darker, 0);
    EXPECT_GT(meanGrey(maximum, middle), meanGrey(mean, middle) + 2.0) << "noise alone lifts the maximum";
    EXPECT_NE(thin.copy(middle), mean.copy(middle));
    // Its words stand below the title, and go with the slab.
    const QRect words(4, 30, 120, 16);
    EXPECT_NE(thin.copy(words), mean.copy(words));
    EXPECT_NE(maximum.copy(words), mean.copy(words));
    for (int i = 0; i < 6; ++i)
        key(Qt::Key_BracketLeft);
    EXPECT_EQ(pictureOf(*views[0]), thin);
}

TEST_F(PictureKeys, TheSlabHasKeysThatEveryKeyboardHas) {
    key(Qt::Key_PageUp, Qt::ControlModifier);
    key(Qt::Key_PageUp, Qt::ControlModifier);
    EXPECT_EQ(window.state().slab().thicknessMm, 2.0);
    const auto shows = window.state().slab().shows;
    key(Qt::Key_X);
    EXPECT_NE(window.state().slab().shows, shows);
    key(Qt::Key_PageDown, Qt::ControlModifier);
    EXPECT_EQ(window.state().slab().thicknessMm, 1.0);
}

TEST_F(PictureKeys, EachTissueHasItsKeyAndItsOwnPicture) {
    std::vector<QImage> pictures;
    for (int preset = 0; preset < 5; ++preset) {
        key(static_cast<Qt::Key>(Qt::Key_F1 + preset), Qt::ShiftModifier);
        const QImage picture = pictureOf(*views[0]);
        for (const QImage& other : pictures)
            EXPECT_NE(picture, other) << "preset " << preset;
        pictures.push_back(picture);
    }
    // In the window for lung the soft tissue is white; in that for bone the blood is mid-grey at most.
    key(Qt::Key_F5, Qt::ShiftModifier);
    const QPoint blood = views[0]->map()->fromPatient(window.session().record().marks.at(core::MarkKind::Atrium).point).toPoint() + QPoint(12, 9);
    EXPECT_EQ(qGray(pictureOf(*views[0]).pixel(blood)), 255);
    key(Qt::Key_F4, Qt::ShiftModifier);
    EXPECT_LT(qGray(pictureOf(*views[0]).pixel(blood)), 160);
    key(Qt::Key_F1, Qt::ShiftModifier);
    EXPECT_EQ(pictureOf(*views[0]), pictures.front());
}

TEST_F(PictureKeys, OneKeyPutsACaliperOnCtIntoTheTableAndEnterThereBringsItBack) {
    key(Qt::Key_1, Qt::AltModifier); // a straight line
    const QPoint from = views[0]->rect().center() + QPoint(-50, 8), to = views[0]->rect().center() + QPoint(40, 20);
    QTest::mousePress(views[0], Qt::LeftButton, {}, from);
    move(*views[0], QPointF(from + to) / 2, Qt::LeftButton);
    move(*views[0], QPointF(to), Qt::LeftButton);
    QTest::mouseRelease(views[0], Qt::LeftButton, {}, to);
    QCoreApplication::processEvents();
    ASSERT_EQ(window.session().record().drawings.size(), 1u);
    auto& panel = *window.findChild<ComparisonPanel*>();
    const int columns = panel.model().columnCount();
    key(Qt::Key_F4); // as the width of the landing zone
    ASSERT_TRUE(fixture::waitUntil([&] { return panel.model().columnCount() == columns + 1; }));
    QModelIndex cell;
    for (int row = 0; row < panel.model().rowCount(); ++row)
        for (int column = 1; column < panel.model().columnCount(); ++column)
            if (const auto* value = panel.model().valueAt(panel.model().index(row, column)); value && value->group.starts_with("drawing/"))
                cell = panel.model().index(row, column);
    ASSERT_TRUE(cell.isValid());
    EXPECT_TRUE(cell.data().toString().contains(QStringLiteral("±"))) << cell.data().toString().toStdString();
    EXPECT_NEAR(cell.data(ComparisonModel::NumberRole).toDouble(),
                core::distanceMm(views[0]->map()->patientFrom(from), views[0]->map()->patientFrom(to)), 1e-6);
    EXPECT_TRUE(panel.model().headerData(cell.column(), Qt::Horizontal, Qt::DisplayRole).toString().contains(QStringLiteral("drawn by hand")));

    key(Qt::Key_C, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_TRUE(QApplication::clipboard()->text().contains(QStringLiteral("drawn by hand")));
    const core::PatientPoint there = window.state().crossing();
    window.state().setCrossing({there.mm + Eigen::Vector3d(0, 0, 12)});
    window.state().selectDrawing({});
    key(Qt::Key_T);
    panel.table().cells().setFocus();
    panel.table().cells().setCurrentIndex(cell);
    QTest::keyClick(&panel.table().cells(), Qt::Key_Return);
    EXPECT_EQ(window.state().page(), Page::Scanner);
    EXPECT_NEAR(window.state().crossing().mm.z(), there.mm.z(), 1e-6) << "the slice on which it was drawn";
    EXPECT_FALSE(window.state().selectedDrawing().isEmpty());
    window.session().document().undoStack().undo();
    ASSERT_TRUE(fixture::waitUntil([&] { return panel.model().columnCount() == columns; })) << "taken out by undo";
}
