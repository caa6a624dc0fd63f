#include "sample-data/phantom.h"
#include "sample-data/random.h"
#include "sample-data/scene/scene.h"

#include <gtest/gtest.h>

namespace gauge::sample_case {
namespace {

Eigen::Vector3d anywhere(const Phantom& phantom, Random& random) {
    const Eigen::Vector3d extent = phantom.grid.size.cast<double>().cwiseProduct(phantom.grid.spacingMm);
    const Eigen::Vector3d share(random.unit(), random.unit(), random.unit());
    return phantom.scene.sceneFrom(
        {phantom.grid.firstVoxelMm + phantom.grid.axes * extent.cwiseProduct(share)});
}

TEST(Scene, PaintsEachTissueAtItsLevel) {
    const Phantom phantom = makePhantom(Shape::Oval, 3);
    const Scene& scene = phantom.scene;
    Random random(1);
    int seen = 0;
    for (int trial = 0; trial < 3000; ++trial) {
        const Eigen::Vector3d x = anywhere(phantom, random);
        const double hu = scene.huAt(x);
        switch (scene.tissueAt(x)) {
        case Tissue::Lung:
            EXPECT_NEAR(hu, scene.levels.lungHu, 1e-6);
            break;
        case Tissue::Fat:
            EXPECT_NEAR(hu, scene.levels.fatHu, 1e-6);
            break;
        case Tissue::Muscle:
            EXPECT_NEAR(hu, scene.levels.muscleHu, 1e-6);
            break;
        case Tissue::Pool:
            EXPECT_GE(hu, 0.85 * scene.levels.atriumHu);
            EXPECT_LE(hu, scene.levels.atriumHu + 31.0);
            ++seen;
            break;
        case Tissue::CavityBlood:
            EXPECT_NEAR(hu, scene.cavities[static_cast<std::size_t>(scene.cavityAt(x))].hu, 1e-6);
            break;
        case Tissue::SoftTissue:
            EXPECT_NEAR(hu, scene.levels.softTissueHu, 1e-6);
            break;
        case Tissue::Bone:
            EXPECT_GT(hu, 150.0);
            break;
        }
    }
    EXPECT_GT(seen, 100);
}

TEST(Scene, KeepsCavitiesOffThePoolByTheirTissue) {
    for (const Shape shape : kShapes) {
        const Phantom phantom = makePhantom(shape, 11);
        const Scene& scene = phantom.scene;
        Random random(9);
        for (int trial = 0; trial < 2000; ++trial) {
            const Eigen::Vector3d x = anywhere(phantom, random);
            if (const int cavity = scene.cavityAt(x); cavity >= 0) {
                EXPECT_GE(scene.pool(x), scene.cavities[static_cast<std::size_t>(cavity)].keepOffMm)
                    << phantom.description() << ": " << scene.cavities[static_cast<std::size_t>(cavity)].name;
            }
        }
    }
}

TEST(SceneSampler, CallsARegionUniformOnlyWhenItIs) {
    for (const Shape shape : {Shape::MultiLobed, Shape::SharplyBent, Shape::NeighbourVein, Shape::Oval}) {
        const Phantom phantom = makePhantom(shape, 5);
        const SceneSampler sampler(phantom.scene);
        SceneSampler::Sample sample{};
        Random random(4);
        int uniform = 0;
        for (int trial = 0; trial < 4000; ++trial) {
            const Eigen::Vector3d x = anywhere(phantom, random);
            const double radius = random.uniform(0.2, 5.0);
            sampler.evaluate(x, sampler.everything(), sample);
            if (!sampler.isUniform(sample, radius)) continue;
            ++uniform;
            const Tissue middle = phantom.scene.tissueAt(x);
            for (int probe = 0; probe < 12; ++probe) {
                const Eigen::Vector3d way(random.normal(), random.normal(), random.normal());
                EXPECT_EQ(static_cast<int>(phantom.scene.tissueAt(x + radius * way.normalized())),
                          static_cast<int>(middle))
                    << phantom.description() << " at " << x.transpose() << " radius " << radius;
            }
        }
        EXPECT_GT(uniform, 500);
    }
}

TEST(SceneSampler, LeavesOutOnlyWhatDoesNotMatter) {
    const Phantom phantom = makePhantom(Shape::MultiLobed, 8);
    const SceneSampler sampler(phantom.scene);
    Random random(6);
    for (int trial = 0; trial < 3000; ++trial) {
        const Eigen::Vector3d x = anywhere(phantom, random);
        const double radius = random.uniform(0.2, 4.0);
        SceneSampler::Sample sample{}, full{};
        sampler.evaluate(x, sampler.everything(), sample);
        const SceneSampler::Mask kept = sampler.relevant(sample, sampler.everything(), radius);
        const Eigen::Vector3d way(random.normal(), random.normal(), random.normal());
        const Eigen::Vector3d near = x + random.uniform(0.0, radius) * way.normalized();
        sampler.evaluate(near, kept, sample);
        sampler.evaluate(near, sampler.everything(), full);
        // Levels that run on far from where they began may differ by what nobody sees.
        EXPECT_NEAR(sampler.hu(near, sample, 0.2), sampler.hu(near, full, 0.2), 0.6) << "trial " << trial;
    }
}

} // namespace
} // namespace gauge::sample_case
