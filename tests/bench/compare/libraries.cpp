#include "tests/bench/compare/libraries.h"

#include <algorithm>

namespace gauge::bench {

#ifndef GAUGE_BENCH_GDCM
Library gdcm() {
    return {"GDCM", false, {}, {Task::LoadRaw, Task::LoadPhases, Task::LoadRle, Task::LoadJpeg, Task::LoadJpegLs}};
}
#endif

#ifndef GAUGE_BENCH_ITK
Library itk() {
    return {"ITK", false, {},
            {Task::LoadRaw, Task::Oblique, Task::Grow, Task::Components, Task::DistanceInside, Task::DistanceSigned,
             Task::SectionContour, Task::Arrival}};
}
#endif

#ifndef GAUGE_BENCH_VTK
Library vtk() {
    return {"VTK", false, {},
            {Task::Oblique, Task::ObliqueOneCore, Task::SlabMaximum, Task::Grow, Task::Surface, Task::SectionContour,
             Task::LineSums}};
}
#endif

#ifndef GAUGE_BENCH_OPENCV
Library openCv() {
    return {"OpenCV", false, {}, {Task::EllipseFits, Task::Calipers}};
}
#endif

const std::vector<Library>& libraries() {
    static const std::vector<Library> all{toolkitLoops(), gdcm(), itk(), vtk(), openCv(), sciPy()};
    return all;
}

void addRivals(Operation& operation, Task task, Stage& stage) {
    for (const Library& library : libraries()) {
        if (const auto at = library.tasks.find(task); at != library.tasks.end())
            operation.others.push_back(at->second(stage));
        else if (std::count(library.wouldHave.begin(), library.wouldHave.end(), task) > 0)
            operation.missing.push_back(library.name);
    }
}

} // namespace gauge::bench
