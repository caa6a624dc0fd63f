#include "sample-data/case/sample_case.h"
#include "sample-data/echo/b_mode.h"

#include <gtest/gtest.h>

#include <cmath>

namespace gauge::sample_case {
namespace {

const Procedure& procedure() {
    static const auto sample = readSampleCase(builtInDescription());
    return *sample->procedure;
}

/// Mean of several frames of one moment: the speckle is averaged away.
class MeanPicture {
public:
    MeanPicture(const EchoPlane& view, const BModeOptions& options, const Scene& scene, int frames)
        : m_columns(view.fan.columns), m_sum(static_cast<std::size_t>(view.fan.columns * view.fan.rows), 0.0) {
        const BMode mode(view, options);
        for (int frame = 0; frame < frames; ++frame) {
            Picture picture(view.fan.columns, view.fan.rows, 1);
            mode.draw(scene, frame, picture);
            for (std::size_t i = 0; i < m_sum.size(); ++i)
                m_sum[i] += static_cast<double>(picture.bytes()[i]) / frames;
        }
    }
    /// Bilinear.
    double at(const Eigen::Vector2d& p) const {
        const int x = static_cast<int>(std::floor(p.x())), y = static_cast<int>(std::floor(p.y()));
        const double a = p.x() - x, b = p.y() - y;
        const auto value = [&](int i, int j) { return m_sum[static_cast<std::size_t>(j * m_columns + i)]; };
        return (1 - b) * ((1 - a) * value(x, y) + a * value(x + 1, y)) +
               b * ((1 - a) * value(x, y + 1) + a * value(x + 1, y + 1));
    }

private:
    int m_columns;
    std::vector<double> m_sum;
};

/// Where the picture crosses halfway between blood and the wall beside it, pixels from `end` outwards. The profile
/// is the mean of parallels a few pixels apart along the wall, to average what speckle is left.
double edgeOffset(const MeanPicture& picture, const Eigen::Vector2d& end, const Eigen::Vector2d& outwards,
                  const Eigen::Vector2d& alongWall) {
    const auto grey = [&](double t) {
        double sum = 0.0;
        for (int k = -4; k <= 4; ++k)
            sum += picture.at(end + t * outwards + 1.0 * k * alongWall);
        return sum / 9.0;
    };
    double blood = 0.0, wall = 0.0;
    for (int k = 0; k < 5; ++k) {
        blood += grey(-10.0 - k) / 5.0;
        wall = std::max(wall, grey(2.0 + 0.5 * k));
    }
    const double half = 0.5 * (blood + wall);
    for (double t = -6.0; t < 6.0; t += 0.05)
        if (grey(t) > half) return t;
    return 99.0;
}

TEST(BMode, PutsTheEdgeOfBloodAtTheTrueChordsEnds) {
    // A pixel of the picture, 0.27 mm.
    constexpr double kPixel = 1.0;
    const EchoSet& set = procedure().echo.front();
    const Heart heart = procedure().heartIn(set.state).at(45.0);
    for (const EchoPlane& view : set.views) {
        const MeanPicture picture(view, set.options, heart.scene, 10);
        for (const core::Plane& across : {ostiumPlane(heart).plane, landingPlane(heart, 10.0)}) {
            const auto chord = viewChord(heart, view, across);
            ASSERT_TRUE(chord);
            // Across the wall, along which the pool's function does not change in the plane.
            for (const auto& [pixel, end] : {std::pair{chord->firstPixel, chord->chord.first},
                                             std::pair{chord->secondPixel, chord->chord.second}}) {
                const auto pool = [&](const Eigen::Vector2d& at) {
                    return heart.scene.pool(heart.scene.sceneFrom(view.patientFromPixel(at)));
                };
                Eigen::Vector2d outwards(pool(pixel + Eigen::Vector2d(0.01, 0)) - pool(pixel - Eigen::Vector2d(0.01, 0)),
                                         pool(pixel + Eigen::Vector2d(0, 0.01)) - pool(pixel - Eigen::Vector2d(0, 0.01)));
                outwards.normalize();
                EXPECT_NEAR(edgeOffset(picture, pixel, outwards, {-outwards.y(), outwards.x()}), 0.0, kPixel)
                    << view.angleDeg << " degrees, end at " << pixel.transpose();
            }
        }
    }
}

TEST(BMode, IsDarkInBloodAndBrightInTheWall) {
    const EchoSet& set = procedure().echo.front();
    const Heart heart = procedure().heartIn(set.state).at(45.0);
    const EchoPlane& view = set.views.front();
    const MeanPicture picture(view, set.options, heart.scene, 3);
    const auto chord = viewChord(heart, view, ostiumPlane(heart).plane);
    EXPECT_LT(picture.at(0.5 * (chord->firstPixel + chord->secondPixel)), 20.0);
    const Eigen::Vector2d along = (chord->firstPixel - chord->secondPixel).normalized();
    double wall = 0.0;
    for (int k = 2; k < 7; ++k)
        wall += picture.at(chord->firstPixel + k * along) / 5.0;
    EXPECT_GT(wall, 60.0);
}

TEST(BMode, IsTheSameForTheSameSeedAndFrame) {
    const EchoSet& set = procedure().echo.front();
    const Heart heart = procedure().heartIn(set.state).at(45.0);
    const auto draw = [&](std::uint64_t seed, int frame) {
        BModeOptions options = set.options;
        options.seed = seed;
        Picture picture(640, 480, 1);
        BMode(set.views[1], options).draw(heart.scene, frame, picture);
        return picture.bytes();
    };
    EXPECT_EQ(draw(5, 2), draw(5, 2));
    EXPECT_NE(draw(5, 2), draw(5, 3));
    EXPECT_NE(draw(5, 2), draw(6, 2));
}

TEST(BMode, LeavesTheRestOfThePictureAlone) {
    const EchoSet& set = procedure().echo.front();
    const EchoPlane& view = set.views.front();
    Picture picture(view.fan.columns, view.fan.rows, 1);
    picture.fill(0, 0, view.fan.columns - 1, view.fan.rows - 1, Colour::grey(77));
    BMode(view, set.options).draw(procedure().heartIn(1).at(5.0).scene, 0, picture);
    for (int y = 0; y < view.fan.rows; ++y)
        for (int x = 0; x < view.fan.columns; ++x)
            if (!view.inFan(Eigen::Vector2d(x, y))) {
                ASSERT_EQ(picture.at(x, y).red, 77) << x << ", " << y;
            }
}

TEST(EchoPlane, TurnsAboutTheBeam) {
    const EchoProbe probe = probeLookingAt({{0, 30, 0}}, {{20, -20, 10}});
    EXPECT_NEAR(probe.left.dot(probe.beam), 0.0, 1e-12);
    EXPECT_NEAR(probe.up.dot(probe.beam), 0.0, 1e-12);
    EXPECT_GT(probe.left.mm.x(), 0.0);
    EXPECT_GT(probe.up.mm.z(), 0.0);
    const EchoPlane transverse{probe, 0.0, {}}, longitudinal{probe, 90.0, {}}, mirrored{probe, 180.0, {}};
    EXPECT_NEAR(transverse.lateral().dot(probe.left), 1.0, 1e-12);
    EXPECT_NEAR(longitudinal.lateral().dot(probe.up), 1.0, 1e-12);
    EXPECT_NEAR(mirrored.lateral().dot(probe.left), -1.0, 1e-12);
    const Eigen::Vector2d pixel(400.25, 212.5);
    const core::PatientPoint place = longitudinal.patientFromPixel(pixel);
    EXPECT_NEAR((longitudinal.pixelFromPatient(place) - pixel).norm(), 0.0, 1e-9);
    EXPECT_NEAR(longitudinal.outOfPlaneMm(place), 0.0, 1e-9);
}

} // namespace
} // namespace gauge::sample_case
