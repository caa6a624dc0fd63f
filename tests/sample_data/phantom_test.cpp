#include "sample-data/phantom.h"

#include <gtest/gtest.h>

namespace gauge::sample_case {
namespace {

/// Sanitizers slow formulas down tenfold: they get fewer draws of the same.
#ifdef __SANITIZE_ADDRESS__
constexpr std::uint64_t kSeeds = 2;
#else
constexpr std::uint64_t kSeeds = 6;
#endif

Tissue tissueAt(const Phantom& phantom, const core::PatientPoint& p) {
    return phantom.scene.tissueAt(phantom.scene.sceneFrom(p));
}

bool inGrid(const Phantom& phantom, const core::PatientPoint& p) {
    const Eigen::Vector3d v = phantom.grid.patientFromVoxel().inverse() * p.mm;
    return (v.array() >= 0.0).all() && (v.array() <= phantom.grid.size.cast<double>().array() - 1.0).all();
}

class EveryShape : public testing::TestWithParam<Shape> {
protected:
    template <class Body> void forSeeds(const Body& body) {
        for (std::uint64_t seed = 1; seed <= kSeeds; ++seed) {
            const Phantom phantom = makePhantom(GetParam(), seed);
            SCOPED_TRACE(phantom.description());
            body(phantom);
        }
    }
};

TEST_P(EveryShape, HasItsMarksWhereTheyBelong) {
    forSeeds([](const Phantom& p) {
        EXPECT_TRUE(p.insidePool(p.marks.atrium));
        EXPECT_FALSE(p.insideAppendage(p.marks.atrium));
        EXPECT_TRUE(p.insideAppendage(p.marks.tip));
        EXPECT_EQ(p.scene.cavityAt(p.scene.sceneFrom(p.marks.circumflex)), 0);
        EXPECT_EQ(p.scene.cavities[0].name, "circumflex artery");
        EXPECT_EQ(tissueAt(p, p.marks.ridge), Tissue::Muscle);
        EXPECT_EQ(tissueAt(p, p.marks.aorta), Tissue::CavityBlood);
        EXPECT_NEAR(p.scene.pool(p.scene.sceneFrom(p.ridgeCrest)), 0.0, 1e-6);
        EXPECT_NEAR(core::distanceMm(p.ridgeCrest, p.marks.ridge), 1.0, 0.35);
        for (const auto& mark :
             {p.marks.atrium, p.marks.tip, p.marks.circumflex, p.marks.ridge, p.marks.aorta})
            EXPECT_TRUE(inGrid(p, mark));
    });
}

TEST_P(EveryShape, HasItsWrongSeedsInTheTissueTheyName) {
    forSeeds([](const Phantom& p) {
        EXPECT_TRUE(p.insidePool(p.wrong.vein));
        EXPECT_FALSE(p.insideAppendage(p.wrong.vein));
        EXPECT_EQ(p.scene.cavityAt(p.scene.sceneFrom(p.wrong.ventricle)), 1);
        EXPECT_EQ(p.scene.cavityAt(p.scene.sceneFrom(p.wrong.artery)), 0);
        EXPECT_EQ(tissueAt(p, p.wrong.wall), Tissue::Muscle);
        EXPECT_EQ(tissueAt(p, p.wrong.fat), Tissue::Fat);
        EXPECT_EQ(tissueAt(p, p.wrong.lung), Tissue::Lung);
        for (const auto& seed : {p.wrong.vein, p.wrong.ventricle, p.wrong.wall, p.wrong.fat, p.wrong.lung})
            EXPECT_TRUE(inGrid(p, seed));
        EXPECT_FALSE(inGrid(p, p.wrong.outside));
    });
}

TEST_P(EveryShape, HasAnOstiumThroughItsLandmarksWithinHumanSizes) {
    forSeeds([](const Phantom& p) {
        EXPECT_NEAR(core::signedDistanceMm(p.ostium.plane, p.marks.circumflex), 0.0, 1e-6);
        EXPECT_NEAR(core::signedDistanceMm(p.ostium.plane, p.marks.ridge), 0.0, 1e-6);
        EXPECT_GT(core::signedDistanceMm(p.ostium.plane, p.marks.tip), 5.0);
        EXPECT_LT(core::signedDistanceMm(p.ostium.plane, p.marks.atrium), 0.0);
        const TrueMetrics& m = p.ostium.section.metrics;
        EXPECT_GE(m.longestDiameterMm, 15.0);
        EXPECT_LE(m.longestDiameterMm, 32.0);
        EXPECT_GE(m.shortestDiameterMm / m.longestDiameterMm, 0.58);
        EXPECT_GE(p.axisLengthMm(), 16.0);
        EXPECT_LE(p.axisLengthMm(), 45.0);
        // Within 6 degrees of perpendicular to the axis.
        EXPECT_GT(p.ostium.plane.normal.dot(p.axisPlane(0.0).normal), std::cos(6.0 * 3.14159265 / 180.0));
    });
}

TEST_P(EveryShape, KeepsItsAxisInsideTheBloodUpToTheApex) {
    forSeeds([](const Phantom& p) {
        const auto axis = p.axis();
        for (std::size_t i = 0; i + 1 < axis.size(); ++i)
            EXPECT_TRUE(p.insidePool(axis[i]));
        EXPECT_NEAR(p.scene.pool(p.scene.sceneFrom(axis.back())), 0.0, 1e-6);
    });
}

TEST_P(EveryShape, ComesOutTheSameFromTheSameSeed) {
    PhantomOptions small;
    small.extentMm = {16.0, 14.0, 12.0};
    const auto first = makePhantom(GetParam(), 4, small).rasterise();
    const auto again = makePhantom(GetParam(), 4, small).rasterise();
    const auto other = makePhantom(GetParam(), 5, small).rasterise();
    const auto redrawn = makePhantom(GetParam(), 4, small).rasterise(1);
    const auto voxels = [](const core::Volume& v) {
        return std::vector(v.data(), v.data() + v.voxelCount());
    };
    EXPECT_EQ(voxels(*first), voxels(*again));
    EXPECT_NE(voxels(*first), voxels(*other));
    EXPECT_NE(voxels(*first), voxels(*redrawn));
    EXPECT_TRUE(first->patientFromVoxel().isApprox(redrawn->patientFromVoxel()));
}

INSTANTIATE_TEST_SUITE_P(Shapes, EveryShape, testing::ValuesIn(kShapes), [](const auto& shape) {
    std::string text(name(shape.param));
    text.erase(std::remove(text.begin(), text.end(), '-'), text.end());
    return text;
});

TEST(ShapeNames, LeadBackToTheShape) {
    for (const Shape shape : kShapes)
        EXPECT_EQ(shapeNamed(name(shape)), shape);
    EXPECT_FALSE(shapeNamed("square"));
}

TEST(SharplyBent, TurnsByMoreThanEightyDegrees) {
    for (std::uint64_t seed = 1; seed <= kSeeds; ++seed) {
        const Phantom p = makePhantom(Shape::SharplyBent, seed);
        const double turn =
            std::acos(p.axisPlane(0.0).normal.dot(p.axisPlane(p.axisLengthMm() - 1.0).normal));
        EXPECT_GT(turn * 180.0 / 3.14159265358979, 80.0) << p.description();
        EXPECT_NEAR(turn * 180.0 / 3.14159265358979, p.turnDeg, 1e-6) << p.description();
    }
}

TEST(NeighbourVein, RunsBesideTheAppendageAtTheStatedGap) {
    for (std::uint64_t seed = 1; seed <= kSeeds; ++seed) {
        const Phantom p = makePhantom(Shape::NeighbourVein, seed);
        EXPECT_GE(p.veinGapMm, 0.9);
        EXPECT_LE(p.veinGapMm, 1.5);
        // Walk from the appendage's axis towards the vein at several depths: blood, tissue of that width,
        // blood.
        for (const double depth : {4.0, 7.0, 10.0}) {
            const core::Plane plane = p.axisPlane(depth);
            const Eigen::Vector3d start = p.scene.sceneFrom(plane.point);
            const Eigen::Vector3d way = -p.scene.lobes.front().curve.at(p.ostium.axisS + depth).binormal;
            double tissue = 0.0;
            bool reached = false;
            for (double t = 0.0; t < 30.0 && !reached; t += 0.002) {
                const bool blood = p.scene.pool(start + t * way) < 0.0;
                tissue += blood ? 0.0 : 0.002;
                reached = blood && tissue > 0.0;
            }
            EXPECT_TRUE(reached);
            EXPECT_NEAR(tissue, p.veinGapMm, 0.01) << p.description() << " at " << depth;
        }
    }
}

TEST(Faded, LosesContrastTowardsTheTip) {
    const Phantom p = makePhantom(Shape::Faded, 2);
    const double atrium = p.scene.huAt(p.scene.sceneFrom(p.marks.atrium));
    const double tip = p.scene.huAt(p.scene.sceneFrom(p.axisPlane(p.axisLengthMm() - 0.5).point));
    EXPECT_GT(tip / atrium, 0.5);
    EXPECT_LT(tip / atrium, 0.62);
}

TEST(MultiLobed, PartsIntoSeveralLumensBeyondTheTrunk) {
    for (std::uint64_t seed = 1; seed <= kSeeds; ++seed) {
        const Phantom p = makePhantom(Shape::MultiLobed, seed);
        ASSERT_GE(p.scene.lobes.size(), 2u);
        for (std::size_t lobe = 1; lobe < p.scene.lobes.size(); ++lobe) {
            const Tube& side = p.scene.lobes[lobe];
            const Eigen::Vector3d end = side.curve.at(side.curve.lastS() - 2.0).point;
            EXPECT_LT(p.scene.pool(end), 0.0);
            EXPECT_GT(p.scene.lobes.front().distance(end), 1.5) << p.description() << " lobe " << lobe;
        }
    }
}

TEST(Interior, VolumeIsSettledAtTheDefaultCell) {
    const Phantom p = makePhantom(Shape::SharplyBent, 3);
    const double coarse = trueInterior(p.scene, p.ostium).volumeMl,
                 fine = trueInterior(p.scene, p.ostium, 0.25).volumeMl;
    EXPECT_NEAR(coarse / fine, 1.0, 0.003);
}

} // namespace
} // namespace gauge::sample_case
