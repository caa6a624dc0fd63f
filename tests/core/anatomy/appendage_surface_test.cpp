#include "core/anatomy/appendage_surface.h"

#include "sample-data/phantom.h"

#include <gtest/gtest.h>

using namespace gauge::core;
using namespace gauge::sample_case;

namespace {

struct Measured {
    Phantom phantom;
    std::shared_ptr<const Volume> volume;
    AppendageMeasurement measurement;
};

const Measured& measured() {
    static const Measured made = [] {
        Measured m;
        m.phantom = makePhantom(Shape::Oval, 3);
        m.volume = m.phantom.rasterise();
        const AppendageMarks marks{m.phantom.marks.atrium, m.phantom.marks.tip, m.phantom.marks.circumflex,
                                   m.phantom.marks.ridge, {}, {}};
        m.measurement = measureAppendage(m.volume, marks, {}).value();
        return m;
    }();
    return made;
}

// Half a voxel's edge: noise of 25 HU on 350 HU of contrast moves single points by 0.1 mm or so.
constexpr double kAsideMm = 0.3;
// The rest: single points that noise moved further.
constexpr double kShareOnTheWall = 0.97;

} // namespace

TEST(AppendageSurface, IsClosedAndLiesOnTheTrueWallOfAPhantomsAppendage) {
    for (const int coarseness : {1, 2}) {
        AppendageSurfaceOptions options;
        options.coarseness = coarseness;
        const auto surface = appendageSurface(*measured().volume, measured().measurement, options);
        ASSERT_TRUE(surface);
        const MeshTopology t = topology(surface->mesh);
        EXPECT_TRUE(t.closed()) << t.borderEdges << " border, " << t.tangledEdges << " tangled";
        EXPECT_GT(enclosedVolumeMm3(surface->mesh), 0.0) << "counter-clockwise seen from outside";
        ASSERT_EQ(surface->beyondOstium.size(), surface->mesh.points.size());
        std::size_t beyond = 0, onWall = 0;
        for (std::size_t i = 0; i < surface->mesh.points.size(); i += 3) {
            if (!surface->beyondOstium[i]) continue;
            const PatientPoint p = surface->mesh.point(i);
            const PatientVector out{surface->mesh.normals[i].cast<double>()};
            ++beyond;
            onWall += measured().phantom.insidePool(p - kAsideMm * coarseness * out) &&
                      !measured().phantom.insidePool(p + kAsideMm * coarseness * out);
        }
        ASSERT_GT(beyond, 300u);
        const double share = static_cast<double>(onWall) / static_cast<double>(beyond);
        EXPECT_GT(share, kShareOnTheWall) << "coarseness " << coarseness << ", " << measured().phantom.description();
    }
}

TEST(AppendageSurface, KnowsOnWhichSideOfTheOstiumItsPointsLie) {
    const auto surface = appendageSurface(*measured().volume, measured().measurement);
    ASSERT_TRUE(surface);
    const Plane ostium{measured().measurement.ostium.section.center, measured().measurement.ostium.section.frame.normal};
    std::size_t looked = 0, right = 0;
    for (std::size_t i = 0; i < surface->mesh.points.size(); i += 5) {
        const PatientPoint within = surface->mesh.point(i) - 0.6 * PatientVector{surface->mesh.normals[i].cast<double>()};
        if (!measured().phantom.insidePool(within) || std::abs(signedDistanceMm(ostium, within)) < 1.0) continue;
        ++looked;
        right += measured().phantom.insideAppendage(within) == (surface->beyondOstium[i] == 1);
    }
    ASSERT_GT(looked, 1000u);
    EXPECT_GT(static_cast<double>(right) / static_cast<double>(looked), 0.99);
}

TEST(AppendageSurface, SaysWhatItCannotDo) {
    AppendageMeasurement bare = measured().measurement;
    bare.trace.reset();
    EXPECT_EQ(appendageSurface(*measured().volume, bare).error().message,
              "Cannot make the surface: the measurement came without its blood pool. Measure again.");
    AppendageSurfaceOptions options;
    options.coarseness = 3;
    EXPECT_EQ(appendageSurface(*measured().volume, measured().measurement, options).error().message,
              "Cannot make the surface: its coarseness is 3, but 1 or 2 is needed.");
    std::stop_source stop;
    stop.request_stop();
    const auto stopped = appendageSurface(*measured().volume, measured().measurement, {}, {stop.get_token(), {}});
    ASSERT_FALSE(stopped);
    EXPECT_EQ(stopped.error().code, ErrorCode::Cancelled);
}
