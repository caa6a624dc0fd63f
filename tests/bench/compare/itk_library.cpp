#include "tests/bench/compare/itk_filters.h"
#include "tests/bench/compare/libraries.h"

namespace gauge::bench {
namespace {

std::array<double, 3> arrayOf(const Eigen::Vector3d& v) {
    return {v.x(), v.y(), v.z()};
}

ItkNode nodeOf(const Eigen::Vector3i& v) {
    return {v.x(), v.y(), v.z()};
}

ItkBlock<std::int16_t> ctOf(Stage& stage) {
    const core::Volume& volume = stage.volume();
    return {volume.data(), nodeOf(volume.size()), arrayOf(volume.edgesMm()), arrayOf(volume.patientFromVoxel().translation())};
}

template <class T> ItkBlock<T> boxOf(const core::BoxGrid& grid, const T* values) {
    return {values, nodeOf(grid.size), arrayOf(Eigen::Vector3d::Constant(grid.stepMm)), {}};
}

/// Keeps `owner` as long as the work.
template <class Owner> std::function<Check()> with(std::shared_ptr<Owner> owner, std::function<Check()> work) {
    return [owner, work = std::move(work)] { return work(); };
}

/// The distance to the nearest voxel of the background: of the inverted mask, outside of it.
Contestant distanceInside(Stage& stage) {
    auto inverted = std::make_shared<std::vector<std::uint8_t>>(stage.pool().values.begin(), stage.pool().values.end());
    for (auto& v : *inverted)
        v = !v;
    return {"ITK, SignedMaurer", 2, timed(with(inverted, itkDistanceOutside(boxOf<std::uint8_t>(stage.pool().grid, inverted->data()))))};
}

/// Within the mask this filter counts to its border voxels and we to the nearest voxel beyond: the check is on the outside,
/// where both agree.
Contestant distanceSigned(Stage& stage) {
    return {"ITK, SignedMaurer", 2, timed(itkDistanceOutside(boxOf<std::uint8_t>(stage.pool().grid, stage.pool().values.data())))};
}

Contestant oblique(Stage& stage) {
    const core::SectionGrid grid = stage.obliqueGrid();
    const Eigen::Vector3d u = grid.frame.u.mm, v = grid.frame.v.mm;
    const ItkPlane plane{arrayOf(grid.frame.patientFromSection(grid.sectionFromPixel(0, 0)).mm), arrayOf(u), arrayOf(v),
                         arrayOf(u.cross(v)), grid.pixelMm, grid.columns, grid.rows};
    return {"ITK, Resample", 2, timed(itkOblique(ctOf(stage), plane))};
}

Contestant sectionContour(Stage& stage) {
    const core::SectionImage& p = stage.picture();
    return {"ITK, ContourExtractor2D", 1, timed(itkSectionContour(p.values.data(), p.grid.columns, p.grid.rows, kLevelHu))};
}

/// The travel time of a front by the eikonal equation: shorter ways than along 26 neighbours, by up to 9 %.
Contestant arrival(Stage& stage) {
    const core::BoxMask& pool = stage.pool();
    auto speed = std::make_shared<std::vector<float>>(pool.values.begin(), pool.values.end());
    return {"ITK, FastMarching", 1,
            timed(with(speed, itkArrival(boxOf<float>(pool.grid, speed->data()), nodeOf(pool.grid.node(stage.chamberNode())),
                                         nodeOf(pool.grid.node(stage.tubeNode())))))};
}

Contestant loadRaw(Stage& stage) {
    std::vector<std::string> names;
    for (const auto& file : stage.raw().files())
        names.push_back(file.string());
    return {"ITK, ImageSeriesReader", 1, timed(itkLoad(names))};
}

} // namespace

Library itk() {
    setItkThreads(2);
    return {"ITK", true,
            {{Task::Grow, [](Stage& s) { return Contestant{"ITK, ConnectedThreshold", 1, timed(itkGrow(ctOf(s), nodeOf(s.chamberVoxel()), kLevelHu))}; }},
             {Task::Components, [](Stage& s) { return Contestant{"ITK, BinaryThreshold and ConnectedComponent", 2, timed(itkComponents(ctOf(s), kLevelHu))}; }},
             {Task::DistanceInside, distanceInside},
             {Task::DistanceSigned, distanceSigned},
             {Task::Oblique, oblique},
             {Task::SectionContour, sectionContour},
             {Task::Arrival, arrival},
             {Task::LoadRaw, loadRaw}},
            {}};
}

} // namespace gauge::bench
