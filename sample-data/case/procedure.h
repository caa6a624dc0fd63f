// The day of the procedure: the described heart at other pressures, seen by echo and fluoroscopy. Read from the
// description's parts "pressure", "procedure", "echo", "doppler", "echo_volume" and "fluoroscopy".
#pragma once

#include "core/result.h"
#include "sample-data/case/heart.h"
#include "sample-data/dicom/image_facts.h"
#include "sample-data/echo/b_mode.h"
#include "sample-data/echo/doppler.h"
#include "sample-data/fluoro/radiograph.h"

#include <nlohmann/json_fwd.hpp>
#include <string>
#include <vector>

namespace gauge::sample_case {

struct SamplePhase;

/// The patient at one time: a stage, a pressure, and how wide the appendage is then.
struct PressureState {
    std::string id, stage, how, date, time;
    double meanMmHg = 0.0, vWaveMmHg = 0.0;
    double landingDiameterMm = 0.0; ///< perimeter-derived, at the law's depth and phase: the law holds exactly for it
    double widthFactor = 1.0;       ///< of the appendage against the described heart
};

struct PressureLaw {
    double slopeAt12MmPerMmHg = 0.0;
    double landingDepthMm = 10.0;
    double percent = 45.0;
    std::vector<PressureState> states; ///< the CT's first
};

/// Moments of a cine: frames at even times, R waves at even times.
struct CineTimes {
    int frames = 1;
    double frameMs = 40.0;
    double firstRWaveMs = 0.0;
    double beatMs = 800.0;

    double percentAt(int frame) const; ///< of the R-R interval
    std::vector<double> rWavesMs() const;
    /// The frame nearest to a phase, the first of equals.
    int frameNearest(double percent) const;
};

struct EchoSet {
    std::size_t state = 0; ///< of the law's states
    std::vector<EchoPlane> views;
    std::vector<ImageFacts> facts; ///< one a view
    CineTimes times;
    EcgStrip ecg;
    BModeOptions options;
    bool angleInFile = false, runLength = false;
};

struct DopplerImage {
    std::size_t state = 0;
    ImageFacts facts;
    DopplerStill still;
    double heartRatePerMin() const;
    /// Of the beats that the picture shows whole.
    double meanGradientMmHg() const;
    std::vector<InflowBeat> wholeBeats() const;
};

/// A 3D echo in a frame of reference of its own: apex at the origin, z along the beam, x = probe.left.
struct EchoVolumeSeries {
    std::size_t state = 0;
    ImageFacts facts;
    EchoProbe probe;
    std::vector<double> percents;
    RasterGrid grid; ///< in the volume's own frame of reference
    double blurFwhmMm = 1.3, halfAngleDeg = 42.0;
    std::uint64_t seed = 1;
    std::string volumeFrameOfReferenceUid;
    double beatMs = 800.0;
    /// Rigid.
    Eigen::Isometry3d patientFromVolume() const;
};

struct FluoroRun {
    std::size_t state = 0;
    ImageFacts facts;
    CArm arm;
    CineTimes times;
    Catheter catheter;
    double catheterFrench = 0.0;
    double stationBeforeTipMm = 10.0; ///< where the answers tell the catheter's edges
    double contrastArrivesMs = 0.0, contrastFullMs = 0.0;
    RadiographOptions options;
    double fillingAt(int frame) const;
    /// The first frame at the phase nearest to `percent` in which the appendage is full; without one, the nearest alone.
    int fullFrameNearest(double percent) const;
};

struct Procedure {
    std::shared_ptr<const nlohmann::json> given;
    double veinGapMm = 0.0;
    PressureLaw law;
    std::vector<EchoSet> echo;
    std::vector<DopplerImage> doppler;
    std::vector<EchoVolumeSeries> volumes;
    std::vector<FluoroRun> fluoro;

    BeatingHeart heartIn(std::size_t state) const;
};

/// @param ct  the CT's phases, one at the law's percent; `base` carries patient and UID text.
/// @errors InvalidArgument: a state that is not described, no CT phase at the law's percent, a probe inside the atrium.
/// Throws nlohmann::json::exception as buildHeart does.
core::Result<Procedure> readProcedure(std::shared_ptr<const nlohmann::json> given,
                                      const std::vector<SamplePhase>& ct, const ImageFacts& base);

// What the answers tell of a view; from the defining functions.

/// A chord across ostium or landing zone as one echo view shows it: the line in which the image plane cuts that plane,
/// across the blood, through the place where the beam axis meets it.
struct ViewChord {
    TrueChord chord; ///< first: on the picture's left
    Eigen::Vector2d firstPixel, secondPixel;
    double depthMm = 0.0; ///< of the beam axis' crossing, from the apex
};
/// @return nullopt when the beam axis meets the plane outside the blood.
std::optional<ViewChord> viewChord(const Heart& heart, const EchoPlane& view, const core::Plane& across);

/// A section as a fluoroscopic view shows it: how far its contour reaches across the axis.
struct ProjectedWidth {
    Eigen::Vector2d firstPixel, secondPixel; ///< the outermost contour points
    double widthMm = 0.0;       ///< between them across the projected axis, at the depth of the section's centre
    double distanceMm = 0.0;    ///< between them straight, at the same depth: as a caliper reads
    double centreDepthMm = 0.0; ///< from the source along the beam axis
    double fromEdgeOnDeg = 0.0; ///< between the view and the section's plane
};
ProjectedWidth projectedWidth(const TrueSection& section, const CArm& arm);

} // namespace gauge::sample_case
