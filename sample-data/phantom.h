// A family of invented hearts for tests: by shape and seed, each with its marks, its exact answers and the
// way it is scanned. The same shape and seed give the same voxels on every machine. Neighbours: scene/scene.h
// (the formulas), scene/truth.h (exact answers in any plane), rasterise.h (voxels).
#pragma once

#include "sample-data/rasterise.h"
#include "sample-data/scene/scene.h"
#include "sample-data/scene/truth.h"

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace gauge::sample_case {

enum class Shape {
    RoundStraight,  ///< nearly circular, straight
    Oval,           ///< least to most width 0.6-0.8, slightly squarish and twisted
    SharplyBent,    ///< turns by more than 80 degrees beyond a short neck
    MultiLobed,     ///< a trunk that parts into 2 or 3 lobes; the tip lies in one
    ShortWide,      ///< depth less than the longest diameter
    NeighbourVein,  ///< the upper left vein runs beside the appendage, 0.9-1.5 mm of wall between the lumens
    Faded,          ///< an oval whose contrast falls to about 55 % at the tip
    WindsockCurved, ///< one long lobe, gently curved
    Funnel,         ///< a wide mouth that tapers steadily: where it begins is a matter of the landmarks
};

inline constexpr std::array kShapes{Shape::RoundStraight, Shape::Oval,           Shape::SharplyBent,
                                    Shape::MultiLobed,    Shape::ShortWide,      Shape::NeighbourVein,
                                    Shape::Faded,         Shape::WindsockCurved, Shape::Funnel};

/// "round-straight", "oval"…
std::string_view name(Shape shape);
std::optional<Shape> shapeNamed(std::string_view name);

/// What a person would mark.
struct Marks {
    core::PatientPoint atrium;
    core::PatientPoint tip;        ///< in the wanted lobe's blood, 3 to 6 mm short of its end
    core::PatientPoint circumflex; ///< centre of the artery where it passes the ostium
    core::PatientPoint ridge;      ///< in the tissue of the fold's tip, 1 mm below its crest
    core::PatientPoint aorta;
};

/// Places where a seed is wrong; each with what a program should find there.
struct WrongSeeds {
    core::PatientPoint vein; ///< upper left vein, 25 mm from the atrium
    core::PatientPoint ventricle;
    core::PatientPoint artery; ///< circumflex artery, the mark itself
    core::PatientPoint wall;   ///< middle of the appendage's wall
    core::PatientPoint fat;
    core::PatientPoint lung;
    core::PatientPoint outside; ///< beyond the volume
};

struct PhantomOptions {
    Eigen::Vector3d extentMm{110.0, 110.0, 100.0};
    /// Where given, instead of what the seed would choose.
    std::optional<Eigen::Vector3d> spacingMm;
    std::optional<double> noiseSdHu, blurFwhmMm;
    double noiseGrainFwhmMm = 0.0;
    /// Turns the voxel grid against the patient's axes too (an oblique acquisition).
    bool obliqueGrid = false;
};

struct Phantom {
    Shape shape = Shape::Oval;
    std::uint64_t seed = 0;
    Scene scene;
    Marks marks;
    WrongSeeds wrong;
    RasterGrid grid;
    RasterOptions imaging;
    TrueOstium ostium;     ///< through the circumflex and ridge marks
    double turnDeg = 0.0;  ///< of lobe 0's centre line, 0 = straight
    double bendAtMm = 0.0; ///< distance of the bend's middle beyond the ostium; 0 when straight
    double veinGapMm =
        0.0; ///< tissue between vein and appendage where they run side by side; 0 when they do not
    core::PatientPoint ridgeCrest; ///< the fold's outermost point, on the boundary of the blood

    /// "oval seed 7: 0.41 x 0.41 x 0.52 mm, blur 0.7 mm, noise 25 HU", for messages of failed tests.
    std::string description() const;
    /// The scan. `noiseDraw` other than 0 draws another noise over the same picture.
    std::shared_ptr<const core::Volume> rasterise(std::uint64_t noiseDraw = 0) const;

    double axisLengthMm() const { return trueAxisLengthMm(scene, ostium); }
    std::vector<core::PatientPoint> axis(double stepMm = 0.5) const {
        return trueAxis(scene, ostium, stepMm);
    }
    core::Plane axisPlane(double sMm) const { return trueAxisPlane(scene, ostium, sMm); }
    std::optional<TrueSection> section(const core::Plane& plane, const core::PatientPoint& near) const {
        return trueSection(scene, plane, near);
    }
    TrueInterior interior() const { return trueInterior(scene, ostium); }
    bool insidePool(const core::PatientPoint& p) const { return sample_case::insidePool(scene, p); }
    bool insideBlood(const core::PatientPoint& p) const { return sample_case::insideBlood(scene, p); }
    bool insideAppendage(const core::PatientPoint& p) const {
        return sample_case::insideAppendage(scene, ostium, p);
    }
};

/// Always succeeds: a draw whose ostium section would open into the atrium is drawn again.
Phantom makePhantom(Shape shape, std::uint64_t seed, const PhantomOptions& options = {});

} // namespace gauge::sample_case
