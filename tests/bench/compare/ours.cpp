#include "tests/bench/compare/ours.h"

#include "core/anatomy/mask_walks.h"
#include "core/volume/components.h"
#include "core/volume/distance_transform.h"
#include "core/volume/iso_surface.h"
#include "core/volume/radiograph.h"
#include "core/volume/section_image.h"
#include "core/volume/surface_mesh.h"
#include "dicomio/ct/ct_phases.h"
#include "dicomio/ct/ct_reader.h"
#include "tests/bench/compare/large_block.h"

#include <algorithm>
#include <span>
#include <stdexcept>

namespace gauge::bench {
namespace {

template <class T> T valueOf(core::Result<T> result) {
    if (!result) throw std::runtime_error(result.error().message);
    return std::move(*result);
}

double meanOf(std::span<const float> values) {
    double sum = 0.0;
    for (const float v : values)
        sum += v;
    return sum / static_cast<double>(values.size());
}

double meanOf(const core::Volume& volume) {
    return LargeBlock::meanOf(volume.data(), volume.voxelCount());
}

core::BitRows bright(const core::Volume& volume) {
    return core::bitsAbove(core::ValueBlock{volume.data(), volume.size(), volume.patientFromVoxel()}, kLevelHu - 1);
}

double voxelsOf(const core::BitRows& bits) {
    double count = 0.0;
    for (int k = 0; k < bits.size().z(); ++k)
        for (int j = 0; j < bits.size().y(); ++j)
            for (std::size_t w = 0; w < bits.words(); ++w)
                count += core::countOf(bits.row(j, k)[w]);
    return count;
}

/// Sum of what lies above 0, in metres.
double metresAboveZero(const core::BoxField<float>& field, float sign) {
    double sum = 0.0;
    for (const float v : field.values)
        sum += std::max(0.0f, sign * v);
    return 1e-3 * sum;
}

/// What the way costs: step length times (3 mm / depth)^2, as middleWay() has it.
double costOf(const core::BoxField<float>& depth, const std::vector<std::size_t>& way) {
    const auto price = [&](std::size_t n) {
        const double d = std::max(static_cast<double>(depth[n]), 0.2);
        return 9.0 / (d * d);
    };
    double cost = 0.0;
    for (std::size_t i = 0; i + 1 < way.size(); ++i) {
        const Eigen::Vector3d step = (depth.grid.node(way[i + 1]) - depth.grid.node(way[i])).cast<double>();
        cost += depth.grid.stepMm * step.norm() * 0.5 * (price(way[i]) + price(way[i + 1]));
    }
    return cost;
}

} // namespace

std::function<Check()> ourLoad(const SeriesOnDisk& series) {
    return [&series]() -> Check {
        const auto ct = valueOf(dicomio::readCtPhase(series.series(), 0));
        return [volume = ct.volume] { return meanOf(*volume); };
    };
}

std::function<Check()> ourPhases(const SeriesOnDisk& series, std::size_t budgetBytes) {
    return [&series, budgetBytes]() -> Check {
        std::shared_ptr<core::PhaseSet> set =
            valueOf(dicomio::openCtPhases(series.series(), {.budgetBytes = budgetBytes, .neighbours = 0}));
        std::shared_ptr<const core::LoadedPhase> last;
        for (std::size_t phase = 0; phase < set->phases().size(); ++phase) {
            last.reset(); // nothing beyond the set's budget is kept
            last = valueOf(set->get(phase));
        }
        return [set, last] { return meanOf(*last->volume); };
    };
}

std::function<Check()> ourOblique(Stage& stage) {
    return [&volume = stage.volume(), grid = stage.obliqueGrid()]() -> Check {
        auto picture = std::make_shared<core::SectionImage>(core::cutSection(volume, grid));
        return [picture] { return meanOf(picture->values); };
    };
}

std::function<Check()> ourSlab(Stage& stage) {
    return [&volume = stage.volume(), grid = stage.obliqueGrid()]() -> Check {
        auto picture = std::make_shared<core::SectionImage>(core::cutSlab(volume, grid, {kSlabMm, core::SlabValue::Maximum}));
        return [picture] { return meanOf(picture->values); };
    };
}

std::function<Check()> ourGrow(Stage& stage) {
    return [&volume = stage.volume(), seed = stage.chamberVoxel()]() -> Check {
        const core::ValueBlock block{volume.data(), volume.size(), volume.patientFromVoxel()};
        auto grown = std::make_shared<core::BitRows>(core::grownAbove(block, kLevelHu - 1, std::span(&seed, 1)));
        return [grown] { return voxelsOf(*grown); };
    };
}

std::function<Check()> ourComponents(Stage& stage) {
    return [&volume = stage.volume()]() -> Check {
        auto parts = std::make_shared<core::Components>(core::componentsOf(bright(volume)));
        return [parts] { return static_cast<double>(parts->count()); };
    };
}

std::function<Check()> ourSurface(Stage& stage) {
    return [&volume = stage.volume()]() -> Check {
        auto mesh = std::make_shared<core::SurfaceMesh>(valueOf(core::isoSurface(volume, kLevelHu)));
        return [mesh] { return core::areaMm2(*mesh); };
    };
}

/// Rays as good as parallel, square to the oblique grid and through its pixels: what a slab of the whole depth adds up.
std::function<Check()> ourLineSums(Stage& stage, int pixels, int everySlice) {
    constexpr double kFarMm = 1e6;
    const core::SectionGrid grid = stage.obliqueGrid();
    const Eigen::Vector3d normal = grid.frame.u.mm.cross(grid.frame.v.mm);
    const double coarser = static_cast<double>(grid.columns - 1) / (pixels - 1);
    core::PinholeCamera camera;
    camera.source = {grid.frame.origin.mm - kFarMm * normal};
    camera.firstPixel = {grid.frame.patientFromSection(grid.sectionFromPixel(0, 0)).mm + kProjectionMm * normal};
    camera.columnStep = {coarser * grid.pixelMm * grid.frame.u.mm};
    camera.rowStep = {coarser * grid.pixelMm * grid.frame.v.mm};
    camera.columns = camera.rows = pixels;
    return [&volume = stage.volume(), camera, everySlice]() -> Check {
        auto picture = std::make_shared<core::Radiograph>(
            valueOf(core::simulateRadiograph(volume, camera, {.everySlice = everySlice})));
        return [picture] { return meanOf(picture->waterMm); };
    };
}

std::function<Check()> ourDistanceInside(Stage& stage) {
    return [&pool = stage.pool()]() -> Check {
        auto distance = std::make_shared<core::BoxField<float>>(core::distanceInsideMm(pool));
        return [distance] { return metresAboveZero(*distance, 1.0f); };
    };
}

std::function<Check()> ourDistanceSigned(Stage& stage) {
    return [&pool = stage.pool()]() -> Check {
        auto distance = std::make_shared<core::BoxField<float>>(core::signedDistanceMm(pool));
        return [distance] { return metresAboveZero(*distance, -1.0f); };
    };
}

std::function<Check()> ourArrival(Stage& stage) {
    return [&pool = stage.pool(), from = stage.chamberNode(), to = stage.tubeNode()]() -> Check {
        auto times = std::make_shared<core::BoxField<float>>(core::walkingDistanceMm(pool, {from}, 1e6f));
        return [times, to] { return static_cast<double>((*times)[to]); };
    };
}

std::function<Check()> ourMinimalPath(Stage& stage) {
    return [&depth = stage.poolDepth(), from = stage.chamberNode(), to = stage.tubeNode()]() -> Check {
        auto way = std::make_shared<std::vector<std::size_t>>(core::middleWay(depth, from, to));
        return [way, &depth] { return costOf(depth, *way); };
    };
}

} // namespace gauge::bench
