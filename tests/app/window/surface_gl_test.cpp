// OpenGL and the processor draw the same picture. Needs a screen and a driver: started through xvfb-run with Mesa's software
// renderer (tests/app/window/CMakeLists.txt), and fails where no context of OpenGL 3.3 can be made.
#include "app/drawing/long_section_drawing.h"
#include "app/drawing/surface_drawing.h"
#include "app/drawing/surface_raster.h"
#include "app/views/surface_drawer.h"
#include "app/views/surface_gl.h"
#include "app/views/surface_view.h"
#include "core/geometry/frame_turn.h"
#include "tests/app/support/synthetic_case.h"
#include "tests/app/support/synthetic_session.h"
#include "tests/app/support/synthetic_surface.h"

#include <cstdlib>
#include <gtest/gtest.h>

using namespace gauge;
using namespace gauge::app;

namespace {

// A pixel whose middle lies on an edge may fall to either side: what is seen there then differs. Outlines are about 2 % of the
// pixels, and a tenth of them may be undecided.
constexpr double kShareOfPixels = 0.002;
constexpr int kLevels = 3;          // light is rounded to 255 steps in both, before and after it is interpolated
constexpr float kDepthMm = 0.01f;   // single floats, interpolated in another order

struct Difference {
    double pixels = 0.0, depths = 0.0, covered = 0.0; ///< shares of all pixels
};

Difference difference(const SurfacePicture& a, const SurfacePicture& b) {
    const QImage &p = a.image(), &q = b.image();
    EXPECT_EQ(p.size(), q.size());
    Difference result;
    for (int y = 0; y < p.height(); ++y)
        for (int x = 0; x < p.width(); ++x) {
            const QColor c = p.pixelColor(x, y), d = q.pixelColor(x, y);
            result.pixels += std::abs(c.red() - d.red()) > kLevels || std::abs(c.green() - d.green()) > kLevels ||
                             std::abs(c.blue() - d.blue()) > kLevels;
            const auto i = static_cast<std::size_t>(y * p.width() + x);
            result.depths += std::abs(a.depths()[i] - b.depths()[i]) > kDepthMm;
            result.covered += (a.tones()[i] & SurfacePicture::kCovered) != 0;
        }
    const double count = static_cast<double>(p.width()) * p.height();
    return {result.pixels / count, result.depths / count, result.covered / count};
}

class SurfaceGlTest : public ::testing::Test {
protected:
    std::unique_ptr<SurfaceGl> gl;
    SurfaceRaster raster;
    core::AppendageMeasurement measured = fixture::syntheticMeasurement();
    core::AppendageSurface surface;
    SectionMap map;
    static constexpr int kSide = 400;

    void SetUp() override {
        QString why;
        gl = SurfaceGl::make(&why);
        ASSERT_TRUE(gl) << why.toStdString();
        auto made = fixture::syntheticSurfaceMaker()(*fixture::syntheticVolume(), measured, {}, {});
        ASSERT_TRUE(made);
        surface = std::move(*made);
        map = surfaceMap(measured, longSectionFrame(measured, 30.0), QRectF(0, 0, kSide, kSide), 1.0);
    }
    SurfaceScene scene(std::uint64_t stamp = 1) const { return {&surface.mesh, &surface.beyondOstium, {}, stamp}; }

    void expectSame(const SurfaceScene& what, const QSize& size = {kSide, kSide}, double ratio = 1.0) {
        const SurfacePicture* drawn = gl->draw(what, map, size, ratio);
        ASSERT_TRUE(drawn) << gl->problem().toStdString();
        const Difference d = difference(raster.draw(what, map, size, ratio), *drawn);
        EXPECT_GT(d.covered, 0.1) << "there is something to compare";
        EXPECT_LT(d.pixels, kShareOfPixels);
        EXPECT_LT(d.depths, kShareOfPixels);
    }
};

} // namespace

TEST_F(SurfaceGlTest, IsDrawnBySoftwareHere) {
    EXPECT_TRUE(gl->isSoftware()) << gl->renderer().toStdString();
}

TEST_F(SurfaceGlTest, DrawsThePictureOfTheProcessorFromAllAround) {
    for (int turn = 0; turn < 12; ++turn) {
        expectSame(scene());
        map.frame = core::turned(map.frame, map.frame.v, 31.0);
        map.frame = core::turned(map.frame, map.frame.u, 17.0);
    }
}

TEST_F(SurfaceGlTest, DrawsThePictureOfTheProcessorCutOpen) {
    SurfaceScene cut = scene();
    for (const double sign : {1.0, -1.0}) {
        cut.cut = core::Plane{map.frame.origin, sign * map.frame.normal};
        expectSame(cut);
        cut.cut = core::Plane{map.frame.origin, sign * (0.6 * map.frame.u + 0.8 * map.frame.normal)};
        expectSame(cut);
    }
}

TEST_F(SurfaceGlTest, DrawsThePictureOfTheProcessorAtAnySizeScaleAndPlace) {
    expectSame(scene(), {333, 257}, 1.5);
    expectSame(scene(), {400, 400}, 2.0);
    map.zero += QPointF(60.25, -40.5);
    map.pixelsPerMm *= 2.3;
    expectSame(scene(), {401, 399});
}

TEST_F(SurfaceGlTest, DrawsAnotherMeshUnderAnotherStampAndWithoutOne) {
    expectSame(scene(1));
    for (auto& p : surface.mesh.points)
        p += Eigen::Vector3f(4, 0, 2);
    expectSame(scene(2));
    for (auto& p : surface.mesh.points)
        p -= Eigen::Vector3f(0, 5, 0);
    expectSame(scene(0));
    std::fill(surface.beyondOstium.begin(), surface.beyondOstium.end(), std::uint8_t{0});
    expectSame(scene(0));
    expectSame(scene(3));
}

TEST_F(SurfaceGlTest, DrawsNothingOfNoMesh) {
    const SurfacePicture* drawn = gl->draw({}, map, {50, 40});
    ASSERT_TRUE(drawn);
    const Difference d = difference(raster.draw({}, map, {50, 40}), *drawn);
    EXPECT_EQ(d.covered, 0.0);
    EXPECT_EQ(d.pixels, 0.0);
}

// The comparison itself can fail: half a degree of turn is seen in it.
TEST_F(SurfaceGlTest, AnotherPictureIsTold) {
    const SurfacePicture* drawn = gl->draw(scene(), map, {kSide, kSide});
    ASSERT_TRUE(drawn);
    map.frame = core::turned(map.frame, map.frame.v, 0.5);
    EXPECT_GT(difference(raster.draw(scene(), map, {kSide, kSide}), *drawn).depths, 10 * kShareOfPixels);
}

TEST_F(SurfaceGlTest, TheWishDecidesAndWithoutOneSoftwareIsLeftToTheProcessor) {
    SurfaceDrawer drawer;
    const auto usesOpenGl = [&](const QString& wish) {
        drawer.setWish(wish);
        drawer.draw(scene(), map, {60, 60}, 1.0);
        return drawer.usesOpenGl();
    };
    EXPECT_TRUE(usesOpenGl(QStringLiteral("opengl")));
    EXPECT_FALSE(usesOpenGl(QStringLiteral("processor")));
    EXPECT_FALSE(usesOpenGl(QString()));
}

TEST_F(SurfaceGlTest, TheViewLooksTheSameWithItsLinesAndLabels) {
    Session session;
    ViewState state;
    SurfaceView view(session, state);
    view.setMaker(fixture::syntheticSurfaceMaker());
    view.resize(kSide, kSide);
    view.show();
    fixture::openAndMeasure(session);
    ASSERT_TRUE(fixture::waitUntil([&] { return view.surface() && !view.isWorking(); }));
    view.setDrawing(QStringLiteral("opengl"));
    const QImage one = view.grab().toImage();
    EXPECT_TRUE(view.drawer().usesOpenGl());
    view.setDrawing(QStringLiteral("processor"));
    const QImage other = view.grab().toImage();
    EXPECT_FALSE(view.drawer().usesOpenGl());
    ASSERT_EQ(one.size(), other.size());
    int unlike = 0;
    for (int y = 0; y < one.height(); ++y)
        for (int x = 0; x < one.width(); ++x)
            unlike += std::abs(qGray(one.pixel(x, y)) - qGray(other.pixel(x, y))) > kLevels;
    EXPECT_LT(unlike, kShareOfPixels * one.width() * one.height());
}
