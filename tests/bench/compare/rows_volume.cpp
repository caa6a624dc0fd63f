// Work on the voxels of one volume, and on the box of masks and distances.
#include "tests/bench/compare/libraries.h"
#include "tests/bench/compare/ours.h"
#include "tests/bench/compare/rows.h"

namespace gauge::bench {
namespace {

constexpr double kExact = 1e-12;       // counts
constexpr double kRounded = 1e-5;      // single floats, added in another order
constexpr double kWholeHu = 2e-3;      // VTK rounds each pixel to a whole HU
constexpr double kCubeCases = 3e-3;    // ambiguous cubes are cut in another way
constexpr double kLineSums = 0.02;     // planes at even steps against slices of the volume, and its outermost half voxels
constexpr double kChamferError = 0.09; // ways along 26 directions against the eikonal equation

} // namespace

void addVolumeRows(Comparison& table, Stage& stage) {
    struct Row {
        const char* name;
        Task task;
        double ratio;
        const char* checks;
        double tolerance;
        int threads;
        std::function<Check()> (*ours)(Stage&);
    };
    const Row rows[] = {
        {"oblique section 512 x 512, trilinear", Task::Oblique, 2.5, "mean HU", kWholeHu, 2, ourOblique},
        {"oblique section 512 x 512, trilinear, one core", Task::ObliqueOneCore, 2.5, "mean HU", kWholeHu, 1, ourOblique},
        {"slab maximum, 10 mm", Task::SlabMaximum, 4.0, "mean HU", kWholeHu, 2, ourSlab},
        {"region growing, whole volume", Task::Grow, 8.0, "voxels", kExact, 2, ourGrow},
        {"all components of a threshold", Task::Components, 5.0, "parts", kExact, 2, ourComponents},
        {"surface of the blood pool, triangles and normals", Task::Surface, 2.0, "mm2", kCubeCases, 2, ourSurface},
        {"distance inside, 200^3", Task::DistanceInside, 3.0, "m, sum", kRounded, 2, ourDistanceInside},
        {"distance signed, 200^3", Task::DistanceSigned, 1.8, "m, sum outside", kRounded, 2, ourDistanceSigned},
        {"arrival times through the pool, 200^3", Task::Arrival, 10.0, "mm to the tube's end", kChamferError, 2, ourArrival},
        {"minimal path through the pool, 200^3", Task::MinimalPath, 10.0, "cost of the way", kRounded, 2, ourMinimalPath},
    };
    for (const Row& row : rows)
        table.row(row.name, [&] {
            auto work = row.ours(stage);
            Operation operation{{.ratio = row.ratio}, row.checks, row.tolerance,
                                {"ours", row.threads, timed(row.threads == 1 ? onOneCore(work) : work)}, {}, {}};
            addRivals(operation, row.task, stage);
            return operation;
        });
    table.row("simulated radiograph 512 x 512, line sums through the depth", [&] {
        Operation operation{{.ratio = 5.0}, "mm water, mean", kLineSums, {"ours", 2, timed(ourLineSums(stage, 512))}, {}, {}};
        addRivals(operation, Task::LineSums, stage);
        return operation;
    });
    table.row("simulated radiograph 256 x 256, preview", [&] {
        return Operation{{.ms = 60.0}, "mm water, mean", 0.0, {"ours", 2, timed(ourLineSums(stage, 256, 2))}, {}, {}};
    });
}

} // namespace gauge::bench
