// A way through the window by mouse and keys alone: mark, drag, stale, cancel, undo.
#include "app/models/key_values.h"
#include "app/panels/message_line.h"
#include "app/views/depth_strip_view.h"
#include "app/views/scanner_section_view.h"
#include "app/window/main_window.h"
#include "tests/app/support/synthetic_case.h"
#include "tests/app/support/synthetic_session.h"

#include <QAbstractButton>
#include <QApplication>
#include <QTest>
#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <thread>

using namespace gauge;
using namespace gauge::app;
using fixture::openAndMeasure;
using fixture::waitUntil;

namespace {

void drag(QWidget& widget, const QPoint& from, const QPoint& to) {
    QTest::mousePress(&widget, Qt::LeftButton, {}, from);
    for (int step = 1; step <= 4; ++step) {
        const QPointF at = QPointF(from) + (QPointF(to) - QPointF(from)) * step / 4.0;
        QMouseEvent move(QEvent::MouseMove, at, widget.mapToGlobal(at), Qt::NoButton, Qt::LeftButton, Qt::NoModifier);
        QCoreApplication::sendEvent(&widget, &move);
    }
    QTest::mouseRelease(&widget, Qt::LeftButton, {}, to);
}

template <class Widget> Widget* visible(MainWindow& window) {
    for (Widget* widget : window.findChildren<Widget*>())
        if (widget->isVisible()) return widget;
    return nullptr;
}

bool anyStale(const core::CaseRecord& record) {
    const auto lines = keyValues(record);
    return std::any_of(lines.begin(), lines.end(), [](const KeyValue& line) { return line.stale; });
}

class Tour : public ::testing::Test {
protected:
    MainWindow window;
    void SetUp() override {
        window.resize(1440, 900);
        window.show();
        openAndMeasure(window.session());
        QCoreApplication::processEvents();
    }
    core::PatientPoint mark(core::MarkKind kind) { return window.session().record().marks.at(kind).point; }
};

} // namespace

TEST_F(Tour, AKeyAndAClickMoveAMarkAndUndoBringsItBack) {
    const core::PatientPoint before = mark(core::MarkKind::Atrium);
    QTest::keyClick(&window, Qt::Key_1);
    QCoreApplication::processEvents();
    auto* view = visible<ScannerSectionView>(window);
    ASSERT_NE(view, nullptr);
    const QPoint there = view->map()->fromPatient(before).toPoint() + QPoint(12, 8);
    QTest::mouseClick(view, Qt::LeftButton, {}, there);
    EXPECT_GT(core::distanceMm(mark(core::MarkKind::Atrium), before), 1.0);
    EXPECT_TRUE(waitUntil([&] { return !window.session().isMeasuring() && window.session().measurement(); }));
    QTest::keyClick(&window, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(mark(core::MarkKind::Atrium).mm, before.mm);
}

TEST_F(Tour, DraggingTheLandingZoneChangesTheValuesThatTheMeetingShows) {
    const QString before = keyValues(window.session().record()).front().value;
    auto* strip = visible<DepthStripView>(window);
    ASSERT_NE(strip, nullptr);
    ASSERT_TRUE(strip->landingX());
    const QPoint from(static_cast<int>(std::lround(*strip->landingX())), strip->height() / 2);
    drag(*strip, from, from + QPoint(70, 0));
    EXPECT_TRUE(waitUntil([&] { return !anyStale(window.session().record()); }));
    EXPECT_NE(keyValues(window.session().record()).front().value, before);
}

TEST_F(Tour, AfterAMovedMarkValuesAreStaleUntilMeasuredAndCancelSaysHowToGoOn) {
    auto engine = fixture::syntheticEngine();
    engine.measure = [](const auto&, const auto&, const auto&,
                        const core::WorkContext& work) -> core::Result<core::AppendageMeasurement> {
        while (!work.stop.stop_requested())
            std::this_thread::sleep_for(std::chrono::milliseconds(2));
        return core::failure(core::ErrorCode::Cancelled, "cancelled");
    };
    window.session().setEngine(engine);
    core::PatientPoint moved = mark(core::MarkKind::Tip);
    moved.mm.y() += 2.0;
    window.session().placeMark(core::MarkKind::Tip, moved);
    ASSERT_TRUE(waitUntil([&] { return window.session().isMeasuring(); }));
    EXPECT_TRUE(anyStale(window.session().record()));
    auto* line = window.findChild<MessageLine*>();
    auto* cancel = line->findChild<QAbstractButton*>();
    ASSERT_TRUE(cancel && cancel->isVisible());
    QTest::mouseClick(cancel, Qt::LeftButton);
    EXPECT_TRUE(waitUntil([&] { return !window.session().isMeasuring(); }));
    EXPECT_TRUE(line->text().contains("Move a mark to measure again")) << line->text().toStdString();
    EXPECT_FALSE(cancel->isVisible());
}
