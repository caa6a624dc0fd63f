// The simulated radiograph by synthetic mouse and keys: it turns with them, coarse first and sharp when still, the newest angles win;
// what is drawn over it lies where the pinhole formula says; how the patient lies is in it; what cannot be simulated is said.
#include "app/views/radiograph_view.h"

#include "app/commands/projection_commands.h"
#include "app/window/main_window.h"
#include "tests/app/support/decision_case.h"
#include "tests/app/support/synthetic_case.h"
#include "tests/app/support/synthetic_session.h"

#include <QComboBox>
#include <QLineEdit>
#include <QSignalSpy>
#include <QTest>
#include <cmath>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace gauge;
using namespace gauge::app;
using testing::HasSubstr;

namespace {

constexpr double kTinyPx = 0.01;    // the formula written down apart
constexpr double kSameMm = 0.05;    // of line integrals of some 100 mm: one camera by two ways of rounding
constexpr int kColourTolerance = 60; // a line's colour under antialiasing

class Radiograph : public ::testing::Test {
protected:
    Session session;

    void openCase(const std::string& position = "HFS") {
        session.setEngine(fixture::syntheticEngine());
        LoadedImages images = fixture::syntheticImages();
        auto index = std::make_shared<dicomio::SeriesIndex>(*images.index);
        index->series.front().patientPosition = position;
        images.index = index;
        session.open(std::move(images));
        const core::AppendageMarks marks = fixture::syntheticMarks();
        session.placeMark(core::MarkKind::Atrium, marks.atrium);
        session.placeMark(core::MarkKind::Tip, marks.tip);
        session.placeMark(core::MarkKind::Circumflex, *marks.circumflex);
        ASSERT_TRUE(fixture::waitUntil([&] { return session.measurement() && !session.isMeasuring(); }));
    }
    static void show(RadiographView& view, int width = 420, int height = 300) {
        view.resize(width, height);
        view.show();
        QCoreApplication::processEvents();
    }
    static bool sharpens(RadiographView& view) {
        return fixture::waitUntil([&] { return view.isSharp() && !view.isWorking(); });
    }
    core::PatientPoint landingCentre() const { return session.landing()->section.center; }
};

/// PS3.3 C.8.7.5 and a pinhole, written down once more: pixel of a point, for an arm without a turned patient.
Eigen::Vector2d pixelOf(const core::CArm& arm, const core::PatientPoint& point) {
    const double a = arm.angles.primaryDeg * M_PI / 180.0, b = arm.angles.secondaryDeg * M_PI / 180.0;
    const Eigen::Vector3d toDetector(std::sin(a) * std::cos(b), -std::cos(a) * std::cos(b), std::sin(b));
    const Eigen::Vector3d right(std::cos(a), std::sin(a), 0.0), up = toDetector.cross(right);
    const Eigen::Vector3d off = point.mm - arm.isocentre.mm;
    const double magnified = arm.sourceToDetectorMm / (arm.sourceToIsocentreMm + off.dot(toDetector));
    return {0.5 * (arm.columns - 1) + magnified * off.dot(right) / arm.imagerSpacingMm.x(),
            0.5 * (arm.rows - 1) - magnified * off.dot(up) / arm.imagerSpacingMm.y()};
}

/// The arm whose picture is shown: that of the view, with the picture's own pixels.
core::CArm armOf(const RadiographView& view) {
    core::CArm arm = *view.arm();
    const core::PinholeCamera& camera = view.picture()->camera;
    arm.imagerSpacingMm = {camera.columnStep.mm.norm(), camera.rowStep.mm.norm()};
    arm.columns = camera.columns;
    arm.rows = camera.rows;
    return arm;
}

bool isNear(const QColor& a, const QColor& b) {
    return std::abs(a.red() - b.red()) + std::abs(a.green() - b.green()) + std::abs(a.blue() - b.blue()) < kColourTolerance;
}

/// Whether the colour is on the screen within two pixels of the place.
bool isDrawnAt(const QImage& image, const QPointF& at, const QColor& colour) {
    for (int dy = -2; dy <= 2; ++dy)
        for (int dx = -2; dx <= 2; ++dx) {
            const QPoint pixel = at.toPoint() + QPoint(dx, dy);
            if (image.valid(pixel) && isNear(image.pixelColor(pixel), colour)) return true;
        }
    return false;
}

double greatestDifference(const core::Radiograph& a, const core::Radiograph& b) {
    double most = a.waterMm.size() == b.waterMm.size() ? 0.0 : 1e9;
    for (std::size_t i = 0; i < a.waterMm.size() && most < 1e9; ++i)
        most = std::max(most, static_cast<double>(std::abs(a.waterMm[i] - b.waterMm[i])));
    return most;
}

} // namespace

TEST_F(Radiograph, TurnsByKeysAndComesBack) {
    openCase();
    RadiographView view(session);
    show(view);
    view.setAngles({-20, 10});
    const QSignalSpy turned(&view, &RadiographView::anglesChanged);
    QTest::keyClick(&view, Qt::Key_Right);
    QTest::keyClick(&view, Qt::Key_Up, Qt::ShiftModifier);
    EXPECT_EQ(view.angles(), (core::CArmAngles{-19, 20}));
    QTest::keyClick(&view, Qt::Key_Left, Qt::ShiftModifier);
    QTest::keyClick(&view, Qt::Key_Down);
    EXPECT_EQ(view.angles(), (core::CArmAngles{-29, 19}));
    EXPECT_EQ(turned.count(), 4);
    QTest::keyClick(&view, Qt::Key_Home);
    EXPECT_EQ(view.angles(), (core::CArmAngles{-20, 10}));
    view.setAngles({175, 88});
    QTest::keyClick(&view, Qt::Key_Right, Qt::ShiftModifier);
    QTest::keyClick(&view, Qt::Key_Up, Qt::ShiftModifier);
    EXPECT_EQ(view.angles(), (core::CArmAngles{-175, 90})) << "goes round behind the patient, and ends at the poles";
}

TEST_F(Radiograph, IsDraggedAsTheHeartIsTurned) {
    openCase();
    RadiographView view(session);
    show(view);
    view.setAngles({0, 0});
    QTest::mousePress(&view, Qt::LeftButton, {}, {200, 150});
    QTest::mouseMove(&view, {225, 140});
    QTest::mouseRelease(&view, Qt::LeftButton, {}, {225, 140});
    // 0.4 degrees a pixel; the near side follows the hand, so the detector goes the other way.
    EXPECT_NEAR(view.angles().primaryDeg, -10.0, 1e-9);
    EXPECT_NEAR(view.angles().secondaryDeg, -4.0, 1e-9);
    QTest::mouseMove(&view, {300, 200});
    EXPECT_NEAR(view.angles().primaryDeg, -10.0, 1e-9) << "the hand let go";
}

TEST_F(Radiograph, TakesTypedAnglesAndSaysWhatItDoesNotUnderstand) {
    openCase();
    RadiographView view(session);
    show(view);
    view.setFocus();
    QTest::keyClick(&view, Qt::Key_A);
    auto* ask = view.findChild<QLineEdit*>();
    ASSERT_TRUE(ask->isVisible());
    ask->setText("LAO 12 cau 7,5");
    QTest::keyClick(ask, Qt::Key_Return);
    EXPECT_EQ(view.angles(), (core::CArmAngles{12, -7.5}));
    EXPECT_FALSE(ask->isVisible());
    view.typeAngles("left 20");
    EXPECT_EQ(session.message().kind, Message::Kind::Error);
    EXPECT_THAT(session.message().text.toStdString(), HasSubstr("LEFT"));
    EXPECT_EQ(view.angles(), (core::CArmAngles{12, -7.5}));
}

TEST_F(Radiograph, IsCoarseWhileItTurnsAndSharpWhenStill) {
    openCase();
    RadiographView view(session);
    show(view);
    ASSERT_TRUE(sharpens(view));
    EXPECT_EQ(view.picture()->camera.columns, 420);
    const QSignalSpy shown(&view, &RadiographView::pictureShown);
    QTest::keyClick(&view, Qt::Key_Right);
    EXPECT_FALSE(view.isSharp());
    EXPECT_TRUE(view.isWorking());
    ASSERT_TRUE(fixture::waitUntil([&] { return shown.count() >= 1; }));
    EXPECT_EQ(view.picture()->camera.columns, 256) << "the first picture after a turn is the coarse one";
    EXPECT_FALSE(view.isSharp());
    ASSERT_TRUE(sharpens(view));
    EXPECT_EQ(view.picture()->camera.columns, 420);
}

TEST_F(Radiograph, ShowsTheNewestAnglesAndNotEveryOneBetween) {
    openCase();
    RadiographView view(session);
    show(view);
    ASSERT_TRUE(sharpens(view));
    view.setAngles({-40, 0});
    const QSignalSpy shown(&view, &RadiographView::pictureShown);
    for (int i = 0; i < 60; ++i) // without a moment's rest: all but the first wait for the picture that is being made
        QTest::keyClick(&view, Qt::Key_Right);
    ASSERT_TRUE(sharpens(view));
    EXPECT_EQ(view.angles(), (core::CArmAngles{20, 0}));
    EXPECT_LT(shown.count(), 30);
    const core::PinholeCamera wanted = core::cameraOf(armOf(view)).value();
    EXPECT_LT((view.picture()->camera.source - wanted.source).norm(), 1e-6);
    EXPECT_LT((view.picture()->camera.firstPixel - wanted.firstPixel).norm(), 1e-6);
}

TEST_F(Radiograph, DrawsWhereThePinholeFormulaSays) {
    openCase();
    RadiographView view(session);
    show(view, 500, 420);
    for (const core::CArmAngles& angles : {core::CArmAngles{-30, -15}, core::CArmAngles{10, 25}, core::CArmAngles{60, 0}}) {
        view.setAngles(angles);
        ASSERT_TRUE(sharpens(view));
        const core::CArm arm = armOf(view);
        for (const core::PatientPoint& point : {fixture::syntheticMarks().tip, *fixture::syntheticMarks().circumflex, landingCentre()})
            EXPECT_LT((view.picture()->camera.project(point).value() - pixelOf(arm, point)).norm(), kTinyPx);
        // The middle of the landing zone is what the arm is aimed at.
        EXPECT_LT((pixelOf(arm, landingCentre()) - 0.5 * Eigen::Vector2d(arm.columns - 1, arm.rows - 1)).norm(), kTinyPx);
        const QImage image = view.grab().toImage();
        const QTransform screen = view.screenFromPixel();
        const core::Section& ostium = session.measurement()->ostium.section;
        int drawn = 0;
        for (const Eigen::Vector2d& p : ostium.contour) {
            const Eigen::Vector2d pixel = pixelOf(arm, ostium.frame.patientFromSection(p));
            drawn += isDrawnAt(image, screen.map(QPointF(pixel.x(), pixel.y())), colourOf(Role::Ostium));
        }
        EXPECT_GT(drawn, static_cast<int>(ostium.contour.size()) * 2 / 3) << "labels and other lines may lie over the rest";
    }
}

TEST_F(Radiograph, SeesATurnedPatientAsTheRoomDoes) {
    openCase();
    RadiographView view(session);
    show(view);
    view.setAngles({-30, 12});
    ASSERT_TRUE(sharpens(view));
    const core::Radiograph supine = *view.picture();
    // Rolled by 15 degrees to the left: what was seen at RAO 30 is seen at RAO 15.
    session.document().push(std::make_unique<SetPatientTurn>(session.document(), core::PatientTurn{15, 0}));
    EXPECT_FALSE(view.isSharp()) << "the picture no longer holds";
    ASSERT_TRUE(sharpens(view));
    EXPECT_GT(greatestDifference(*view.picture(), supine), 5.0);
    EXPECT_THAT(view.note().toStdString(), HasSubstr("turned against the CT"));
    view.setAngles({-15, 12});
    ASSERT_TRUE(sharpens(view));
    EXPECT_LT(greatestDifference(*view.picture(), supine), kSameMm);
    session.document().undoStack().undo();
    ASSERT_TRUE(sharpens(view));
    EXPECT_GT(greatestDifference(*view.picture(), supine), 5.0);
}

TEST_F(Radiograph, RefusesWhileNobodyKnowsHowThePatientLay) {
    openCase("");
    RadiographView view(session);
    show(view);
    EXPECT_FALSE(view.picture());
    EXPECT_FALSE(view.arm());
    EXPECT_FALSE(view.isWorking() && !fixture::waitUntil([&] { return !view.isWorking(); }));
    EXPECT_THAT(view.problem().toStdString(), HasSubstr("does not tell how the patient lay"));
    EXPECT_THAT(view.problem().toStdString(), HasSubstr("on the page Projection"));
    EXPECT_FALSE(view.grab().isNull());
    session.document().push(std::make_unique<SetPatientTurn>(session.document(), core::PatientTurn{}));
    ASSERT_TRUE(sharpens(view));
    EXPECT_TRUE(view.problem().isEmpty());
    session.document().undoStack().undo();
    EXPECT_FALSE(view.picture()) << "no picture stays that is no longer known to be right";
}

TEST_F(Radiograph, SaysWhyThereIsNone) {
    RadiographView view(session);
    show(view);
    EXPECT_EQ(view.problem(), "Nothing is open.");
    EXPECT_FALSE(view.isWorking());
    fixture::addCourse(session.document()); // pressures, echo and X-ray alone
    EXPECT_THAT(view.problem().toStdString(), HasSubstr("no CT"));
    QTest::keyClick(&view, Qt::Key_Right);
    QTest::keyClick(&view, Qt::Key_F);
    EXPECT_FALSE(view.picture());
    EXPECT_FALSE(view.isWorking());
    EXPECT_FALSE(view.grab().isNull());
}

TEST_F(Radiograph, FillsWhatIsChosen) {
    openCase();
    RadiographView view(session);
    const std::unique_ptr<QComboBox> box(view.makeFillingBox(nullptr));
    show(view);
    ASSERT_TRUE(sharpens(view));
    const core::PatientPoint inside{Eigen::Vector3d(12, 1, 0)};
    const auto at = [&](const core::PatientPoint& point) {
        const Eigen::Vector2d pixel = view.picture()->camera.project(point).value();
        return view.picture()->at(static_cast<int>(std::lround(pixel.x())), static_cast<int>(std::lround(pixel.y())));
    };
    view.setFilling(RadiographView::Filling::Nothing);
    ASSERT_TRUE(sharpens(view));
    const float plain = at(inside);
    QTest::keyClick(&view, Qt::Key_F);
    EXPECT_EQ(view.filling(), RadiographView::Filling::Appendage);
    EXPECT_EQ(box->currentIndex(), 1) << "the box follows the key";
    ASSERT_TRUE(sharpens(view));
    EXPECT_GT(at(inside), plain + 20.0f);
    box->setCurrentIndex(3);
    emit box->activated(3);
    EXPECT_EQ(view.filling(), RadiographView::Filling::AppendageAlone);
    ASSERT_TRUE(sharpens(view));
    EXPECT_GT(at(inside), 8.0f);
    EXPECT_EQ(at({Eigen::Vector3d(-20, 0, 0)}), 0.0f) << "nothing beside the appendage";
    EXPECT_THAT(view.note().toStdString(), HasSubstr("appendage alone"));
}

TEST_F(Radiograph, StandsAtTheDistancesThatThePersonSets) {
    openCase();
    RadiographView view(session);
    show(view);
    ASSERT_TRUE(sharpens(view));
    EXPECT_THAT(view.note().toStdString(), HasSubstr("Distances assumed: source to isocentre 750 mm, to detector 1100 mm."));
    view.setDistances(core::CArmDistances{600, 900});
    EXPECT_FALSE(view.isSharp());
    ASSERT_TRUE(sharpens(view));
    EXPECT_THAT(view.note().toStdString(), HasSubstr("as you set them: source to isocentre 600 mm, to detector 900 mm."));
    EXPECT_NEAR(view.picture()->camera.sourceToDetectorMm(), 900.0, 1e-9);
    EXPECT_NEAR(view.picture()->camera.depthMm(landingCentre()), 600.0, 1e-6);
    // A frame that tells its own keeps them.
    FrameGeometry frame;
    frame.arm.angles = {-30, 20};
    frame.arm.sourceToIsocentreMm = 740.0;
    frame.arm.sourceToDetectorMm = 1080.0;
    frame.arm.imagerSpacingMm = {0.3, 0.3};
    frame.arm.columns = frame.arm.rows = 512;
    frame.landingPixel = Eigen::Vector2d(200, 300);
    view.setFrame(frame);
    ASSERT_TRUE(sharpens(view));
    EXPECT_NEAR(view.picture()->camera.sourceToDetectorMm(), 1080.0, 1e-9);
    const double shrink = view.picture()->camera.columns / 512.0;
    const Eigen::Vector2d pixel = view.picture()->camera.project(landingCentre()).value();
    EXPECT_NEAR((pixel.x() + 0.5) / shrink - 0.5, 200.0, 0.1);
    EXPECT_NEAR((pixel.y() + 0.5) / shrink - 0.5, 300.0, 0.1);
}

TEST_F(Radiograph, WindowsByTheRightButtonAndFindsItAgain) {
    openCase();
    RadiographView view(session);
    show(view);
    ASSERT_TRUE(sharpens(view));
    const QImage found = view.grab().toImage();
    QTest::mousePress(&view, Qt::RightButton, {}, {200, 150});
    QTest::mouseMove(&view, {260, 150});
    QTest::mouseRelease(&view, Qt::RightButton, {}, {260, 150});
    EXPECT_NE(view.grab().toImage(), found);
    QTest::keyClick(&view, Qt::Key_W);
    EXPECT_EQ(view.grab().toImage(), found);
}

TEST_F(Radiograph, SaysNothingOfThePatientsIdentity) {
    openCase();
    core::Patient patient;
    patient.name = "Invented^Person";
    patient.id = "INV-77";
    patient.title = "The invented one";
    session.document().apply(core::SetSingle<core::Patient>{core::Entry<core::Patient>{patient, 5, core::UnknownFields::object()}});
    RadiographView view(session);
    show(view);
    ASSERT_TRUE(sharpens(view));
    for (const QString& text : {view.note(), view.problem(), view.accessibleName(), view.accessibleDescription(), view.toolTip()})
        for (const char* told : {"Invented", "INV-77", "invented one"})
            EXPECT_FALSE(text.contains(told)) << text.toStdString();
}

TEST(RadiographInTheWindow, CountsAsWorkAndIsTheSameWithoutNames) {
    MainWindow window;
    window.resize(1440, 900);
    window.show();
    fixture::openAndMeasure(window.session());
    window.state().setPage(Page::Projection);
    QCoreApplication::processEvents();
    RadiographView* view = nullptr;
    for (auto* one : window.findChildren<RadiographView*>())
        if (one->isVisible()) view = one;
    ASSERT_TRUE(view);
    ASSERT_TRUE(fixture::waitUntil([&] { return !window.isWorking() && view->isSharp(); }));
    view->turnTo({view->angles().primaryDeg + 5, view->angles().secondaryDeg});
    EXPECT_TRUE(view->isWorking());
    EXPECT_TRUE(window.isWorking());
    ASSERT_TRUE(fixture::waitUntil([&] { return !window.isWorking(); }));
    EXPECT_TRUE(view->isSharp()) << "work ends with the sharp picture";
    const QImage with = view->grab().toImage();
    window.state().setNamesHidden(true);
    QCoreApplication::processEvents();
    EXPECT_EQ(view->grab().toImage(), with);
    window.state().setNamesHidden(false);
}
