// The general libraries, each in files of its own that are only compiled where it is installed.
#pragma once

#include "tests/bench/compare/comparison.h"
#include "tests/bench/compare/stage.h"

#include <functional>
#include <map>
#include <string>
#include <vector>

namespace gauge::bench {

/// What is compared.
enum class Task {
    LoadRaw,
    LoadPhases,
    LoadRle,
    LoadJpeg,
    LoadJpegLs,
    Oblique,
    ObliqueOneCore,
    SlabMaximum,
    Grow,
    Components,
    Surface,
    DistanceInside,
    DistanceSigned,
    SectionContour,
    Arrival,
    MinimalPath,
    LineSums,
    EllipseFits,
    Calipers,
};

struct Library {
    std::string name;
    bool installed = false;
    std::map<Task, std::function<Contestant(Stage&)>> tasks;
    std::vector<Task> wouldHave; ///< of a library that is not installed
};

/// Each says "not installed" by itself.
Library toolkitLoops(); ///< plain loops over the DICOM toolkit that we build on
Library gdcm();
Library itk();
Library vtk();
Library openCv();
Library sciPy(); ///< and scikit-image, in a process of their own

/// All of them, made once.
const std::vector<Library>& libraries();

/// Adds the rivals at `task` to the operation.
void addRivals(Operation& operation, Task task, Stage& stage);

} // namespace gauge::bench
