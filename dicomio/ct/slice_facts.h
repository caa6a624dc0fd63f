// What one image (or one frame of a multi-frame image) says about its place, its scale and its moment.
#pragma once

#include "core/result.h"
#include "dicomio/scan/scanner.h"

#include <Eigen/Core>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace gauge::dicomio {

/// Stored value to Hounsfield units: slope * stored + intercept (PS3.3 C.11.1.1.2).
struct Rescale {
    double slope = 1.0;
    double intercept = 0.0;
    std::string type; ///< RescaleType, empty when absent
};

/// The moment in the heart cycle, as far as it is told.
struct PhaseFacts {
    std::optional<double> percent;   ///< of the R-R interval
    std::optional<double> triggerMs; ///< from the R wave
    std::optional<double> temporal;  ///< temporal position: an index or an offset
    /// Dimension index values that count moments (PS3.3 C.7.6.17), in the order of the dimensions; of
    /// Enhanced objects.
    std::vector<double> dimension;
    std::string description; ///< of the series, UTF-8; filled in by the index
};

/// The heart beats that an image was made of, as far as they are told. Contradictions are found in beats.h.
struct BeatFacts {
    std::optional<double> beatMs;            ///< nominal R-R interval
    std::optional<double> shortestMs;        ///< shortest beat that was accepted
    std::optional<double> longestMs;         ///< longest beat that was accepted
    std::optional<double> delayMs;           ///< from the R wave: actual, or else nominal
    std::optional<double> acquisitionNumber; ///< of the pass of the scanner
};

struct SliceFacts {
    std::filesystem::path file;
    int frame = 0;
    bool multiFrame = false;
    std::string sopInstanceUid;
    int rows = 0;
    int columns = 0;
    Eigen::Vector3d position = Eigen::Vector3d::Zero();         ///< centre of the first voxel, LPS mm
    Eigen::Vector3d rowDirection = Eigen::Vector3d::UnitX();    ///< along a row, as in the file
    Eigen::Vector3d columnDirection = Eigen::Vector3d::UnitY(); ///< along a column
    double alongRowMm = 0.0;    ///< between columns: the second value of PixelSpacing
    double alongColumnMm = 0.0; ///< between rows: the first value
    std::optional<Rescale> rescale;
    PhaseFacts phase;
    BeatFacts beats;
    std::string stack; ///< StackID of Enhanced objects; frames of different stacks make different volumes
    bool localizer = false;
    std::optional<double> spacingTagMm; ///< SpacingBetweenSlices; compared, never trusted
    std::optional<double> thicknessMm;
    std::optional<double> tiltTagDeg; ///< GantryDetectorTilt; compared, never trusted
};

/// How messages name the slice: its path, and its frame where there are several.
std::string label(const SliceFacts& slice);

/// Reads one frame, per-frame functional groups before shared ones before the data set itself.
/// @errors AttributeMissing or AttributeInvalid naming the tag; SpacingInvalid for a PixelSpacing that is not
/// positive; GeometryContradictory when there are frames without functional groups of their own.
core::Result<SliceFacts> sliceFacts(const ScannedFile& scanned, int frame);

} // namespace gauge::dicomio
