#include "dicomio/angiography/scale_choice.h"

#include "core/number_text.h"

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

namespace gauge::dicomio {
namespace {

using core::FluoroScale;
using core::ScaleOrigin;
using Eigen::Vector2d;

// What is believed of an arm or a fluoroscopy table. Wide on purpose: they catch other units and zeros.
constexpr double kShortestMm = 200.0, kLongestMm = 3000.0;
constexpr double kFinestPixelMm = 0.01, kCoarsestPixelMm = 3.0;
constexpr double kLargestDetectorMm = 600.0; ///< side; the largest flat detectors measure about 430 mm
constexpr double kMostUnequal = 2.0;         ///< ratio of a pixel's sides
constexpr double kLargestMagnification = 5.0;
/// Relative difference of a told magnification against SID/SOD that rounding explains.
constexpr double kMagnificationTolerance = 0.02;
/// Spacings that differ less are the same number written twice.
constexpr double kSameSpacing = 1e-4;
/// A spacing that the device gives for its own depth against the one at the isocentre: 15 % is the whole
/// depth of a chest against the distance to the source.
constexpr double kDepthsApart = 0.15;

std::string plain(const Vector2d& v) {
    return core::general(v.x(), 5) + " x " + core::general(v.y(), 5) + " mm";
}

std::optional<double> numberIn(const Dataset& dataset, Tag tag, double low, double high, const char* unit,
                               FindingList& findings) {
    const auto value = dataset.number(tag);
    if (!value) {
        findings.add("xray-geometry-unusable", value.error().message + " It is not used.");
        return std::nullopt;
    }
    if (!*value || (**value >= low && **value <= high)) return *value;
    findings.add("xray-geometry-unusable", describe(tag) + " is " + core::general(**value, 5) + unit + ", outside " +
                                               core::general(low, 5) + " to " + core::general(high, 5) + ". It is not used.");
    return std::nullopt;
}

/// A pair of spacings in DICOM's order (between rows, between columns), given as along a row, along a column.
std::optional<Vector2d> spacingOf(const Dataset& dataset, Tag tag, FindingList& findings) {
    const auto values = dataset.numbers(tag);
    if (!values) {
        findings.add("xray-geometry-unusable", values.error().message + " It is not used.");
        return std::nullopt;
    }
    if (!*values) return std::nullopt;
    const auto& v = **values;
    const auto believed = [](double mm) { return mm >= kFinestPixelMm && mm <= kCoarsestPixelMm; };
    if (v.size() == 2 && believed(v[0]) && believed(v[1]) && v[0] <= kMostUnequal * v[1] &&
        v[1] <= kMostUnequal * v[0])
        return Vector2d(v[1], v[0]);
    std::string shown;
    for (std::size_t i = 0; i < std::min<std::size_t>(v.size(), 4); ++i)
        shown += (i ? "\\" : "") + core::general(v[i], 5);
    findings.add("xray-geometry-unusable", describe(tag) + " is \"" + shown +
                                               "\"; needed: two alike lengths from " + core::general(kFinestPixelMm, 5) +
                                               " to " + core::general(kCoarsestPixelMm, 5) + " mm. It is not used.");
    return std::nullopt;
}

bool alike(const Vector2d& a, const Vector2d& b, double tolerance) {
    return std::abs(a.x() - b.x()) <= tolerance * std::abs(b.x()) &&
           std::abs(a.y() - b.y()) <= tolerance * std::abs(b.y());
}

/// What the frame says of itself, before it is judged.
struct Told {
    std::optional<Vector2d> imager, pixel, object;
    std::optional<double> sid, sod, magnification;
    std::string calibration, description;
};

/// A spacing at the detector that makes no detector longer than there are.
std::optional<Vector2d> atDetector(const std::optional<Vector2d>& spacing, int longSide,
                                   FindingList& findings) {
    if (!spacing || spacing->maxCoeff() * longSide <= kLargestDetectorMm) return spacing;
    findings.add("xray-geometry-unusable", describe(tags::ImagerPixelSpacing) + " (" + plain(*spacing) +
                                               ") makes a detector " + core::general(spacing->maxCoeff() * longSide, 5) +
                                               " mm long; none is longer than " + core::general(kLargestDetectorMm, 5) +
                                               " mm. It is not used.");
    return std::nullopt;
}

Told readTold(const XrayScope& scope, int longSide, FindingList& findings) {
    const auto in = [&](Tag group, Tag tag) -> const Dataset& { return scope.holding(group, tag); };
    Told told;
    told.imager = atDetector(spacingOf(in(tags::FramePixelDataPropertiesSequence, tags::ImagerPixelSpacing),
                                       tags::ImagerPixelSpacing, findings),
                             longSide, findings);
    const Dataset& measures = in(tags::PixelMeasuresSequence, tags::PixelSpacing);
    told.pixel = spacingOf(measures, tags::PixelSpacing, findings);
    told.calibration = measures.text(tags::PixelSpacingCalibrationType);
    told.description = measures.text(tags::PixelSpacingCalibrationDescription);
    told.object =
        spacingOf(in(tags::ProjectionPixelCalibrationSequence, tags::ObjectPixelSpacingInCenterOfBeam),
                  tags::ObjectPixelSpacingInCenterOfBeam, findings);
    const auto distance = [&](Tag group, Tag tag) {
        return numberIn(in(group, tag), tag, kShortestMm, kLongestMm, " mm", findings);
    };
    told.sid = distance(tags::XRayGeometrySequence, tags::DistanceSourceToDetector);
    told.sod = distance(tags::XRayGeometrySequence, tags::DistanceSourceToIsocenter);
    if (!told.sod) told.sod = distance(tags::XRayGeometrySequence, tags::DistanceSourceToPatient);
    told.magnification =
        numberIn(in(tags::XRayGeometrySequence, tags::EstimatedRadiographicMagnificationFactor),
                 tags::EstimatedRadiographicMagnificationFactor, 1.0, kLargestMagnification, "", findings);
    return told;
}

/// SID / SOD, proved against the told magnification; nullopt when unknown or contradictory.
std::optional<double> magnificationOf(const Told& told, FindingList& findings) {
    if (told.sid && told.sod) {
        if (*told.sod >= *told.sid) {
            findings.add("xray-geometry-contradictory",
                         "The source is " + core::general(*told.sod, 5) + " mm from the isocentre and " +
                             core::general(*told.sid, 5) +
                             " mm from the detector: the isocentre must lie between them. Neither is used.");
            return std::nullopt;
        }
        const double ratio = *told.sid / *told.sod;
        if (told.magnification && std::abs(*told.magnification - ratio) > kMagnificationTolerance * ratio) {
            findings.add("xray-geometry-contradictory",
                         describe(tags::EstimatedRadiographicMagnificationFactor) + " is " +
                             core::general(*told.magnification, 5) + ", but the distances " + core::general(*told.sid, 5) + " / " +
                             core::general(*told.sod, 5) + " mm give " + core::general(ratio, 5) +
                             ". Which is right cannot be known: no scale is made of them.");
            return std::nullopt;
        }
        return ratio;
    }
    return told.magnification;
}

FluoroScale scaleOf(const Vector2d& mmPerPixel, ScaleOrigin origin, double own, const Told& told,
                    std::string detail) {
    FluoroScale scale;
    scale.planar.mmPerPixel = mmPerPixel;
    scale.planar.origin = origin;
    scale.planar.detail = std::move(detail);
    scale.ownRelative = own;
    // Within what was believed above, this cannot fail: 30 mm are less than the shortest distance.
    return *core::atDepth(scale, core::kUnknownDepthMm, told.sod.value_or(core::kUnknownSourceToObjectMm));
}

struct Candidate {
    XrayScaleSource source = XrayScaleSource::None;
    FluoroScale scale;
    std::string text;
};

const double kGeometryRelative = std::sqrt(2.0) * core::kDistanceRelativeUncertainty;

/// PixelSpacing as PS3.3 10.7 lets it be read.
std::optional<Candidate> fromPixelSpacing(const Told& told, FindingList& findings) {
    const std::string name = describe(tags::PixelSpacing),
                      typeName = describe(tags::PixelSpacingCalibrationType);
    const bool typed = told.calibration == "GEOMETRY" || told.calibration == "FIDUCIAL";
    if (!told.calibration.empty() && !typed)
        findings.add("xray-calibration-contradictory",
                     typeName + " is \"" + told.calibration.substr(0, 16) +
                         "\", neither GEOMETRY nor FIDUCIAL: how the spacing was calibrated is not known.");
    if (!told.pixel) {
        if (!told.calibration.empty())
            findings.add("xray-calibration-contradictory", typeName + " is " +
                                                               told.calibration.substr(0, 16) +
                                                               " but there is no usable " + name + ".");
        return std::nullopt;
    }
    if (told.imager && alike(*told.pixel, *told.imager, kSameSpacing)) {
        findings.add(typed ? "xray-calibration-contradictory" : "xray-spacing-at-detector",
                     name + " equals " + describe(tags::ImagerPixelSpacing) + " (" + plain(*told.imager) +
                         ")" +
                         (typed ? ", although " + typeName + " is " + told.calibration : std::string()) +
                         ": it measures at the detector and is no scale of the patient.");
        return std::nullopt;
    }
    if (told.imager && (told.pixel->x() > told.imager->x() || told.pixel->y() > told.imager->y())) {
        findings.add("xray-calibration-contradictory",
                     name + " (" + plain(*told.pixel) + ") is larger than " +
                         describe(tags::ImagerPixelSpacing) + " (" + plain(*told.imager) +
                         "): a patient before the detector is magnified, not reduced. "
                         "It is not used.");
        return std::nullopt;
    }
    const std::string said = told.description.empty() ? "" : " (\"" + told.description.substr(0, 64) + "\")";
    if (told.calibration == "FIDUCIAL")
        return Candidate{XrayScaleSource::Fiducial,
                         scaleOf(*told.pixel, ScaleOrigin::DeviceFiducial, core::kCatheterRelativeUncertainty,
                                 told, "pixels of " + plain(*told.pixel)),
                         name + ", calibrated by the device on an object of known size" + said +
                             "; it holds at that object's depth."};
    if (told.calibration == "GEOMETRY")
        return Candidate{XrayScaleSource::Geometry,
                         scaleOf(*told.pixel, ScaleOrigin::DeviceGeometry, kGeometryRelative, told,
                                 "pixels of " + plain(*told.pixel)),
                         name + ", calibrated by the device from its geometry" + said +
                             "; it holds at a depth that is not told."};
    if (!told.imager) {
        findings.add("xray-spacing-unexplained",
                     name + " is " + plain(*told.pixel) + ", but neither " + typeName + " nor " +
                         describe(tags::ImagerPixelSpacing) +
                         " tells whether it measures at the detector or in the patient. It is not used.");
        return std::nullopt;
    }
    findings.add("xray-spacing-unexplained", name + " (" + plain(*told.pixel) +
                                                 ") differs from the spacing at the detector, but how it was "
                                                 "calibrated is not told; its uncertainty is taken as 10 %.");
    return Candidate{XrayScaleSource::Untold,
                     scaleOf(*told.pixel, ScaleOrigin::PixelSpacing, core::kUntoldRelativeUncertainty, told,
                             "pixels of " + plain(*told.pixel)),
                     name + " in the patient; how it was calibrated is not told."};
}

std::optional<Candidate> fromObjectSpacing(const Told& told, FindingList& findings) {
    if (!told.object) return std::nullopt;
    const std::string name = describe(tags::ObjectPixelSpacingInCenterOfBeam);
    if (told.imager && (told.object->x() >= told.imager->x() || told.object->y() >= told.imager->y())) {
        findings.add("xray-calibration-contradictory",
                     name + " (" + plain(*told.object) + ") is not smaller than " +
                         describe(tags::ImagerPixelSpacing) + " (" + plain(*told.imager) +
                         "): an object before the detector is magnified. It is not used.");
        return std::nullopt;
    }
    return Candidate{XrayScaleSource::Geometry,
                     scaleOf(*told.object, ScaleOrigin::DeviceGeometry, kGeometryRelative, told,
                             "pixels of " + plain(*told.object)),
                     name + ", from the device's geometry; it holds in the middle of the beam."};
}

std::optional<Candidate> fromIsocentre(const Told& told, const std::optional<double>& magnification) {
    if (!told.imager || !magnification) return std::nullopt;
    return Candidate{
        XrayScaleSource::Isocentre,
        scaleOf(*told.imager / *magnification, ScaleOrigin::ImagerAtIsocentre, kGeometryRelative, told,
                "detector pixels of " + plain(*told.imager) + ", magnified " + core::general(*magnification, 5) +
                    " times"),
        describe(tags::ImagerPixelSpacing) + " reduced to the isocentre by " +
            (told.sid && told.sod ? "the distances " + core::general(*told.sod, 5) + " / " + core::general(*told.sid, 5) + " mm"
                                  : "the magnification factor " + core::general(*magnification, 5)) +
            "."};
}

std::string whyNone(const Told& told) {
    const std::string advice = " Calibrate on a catheter or markers to measure.";
    if (told.imager)
        return "No scale: " + describe(tags::ImagerPixelSpacing) + " (" + plain(*told.imager) +
               ") measures at the detector, and nothing usable reduces it to the patient." + advice;
    return "No scale: the file tells no usable spacing in the patient." + advice;
}

void compare(const Candidate& used, const Candidate& other, FindingList& findings) {
    const Vector2d& a = used.scale.planar.mmPerPixel;
    const Vector2d& b = other.scale.planar.mmPerPixel;
    if (alike(a, b, kDepthsApart)) return;
    findings.add("xray-scales-differ",
                 "The file allows two scales that no depth in a chest explains: " + plain(a) +
                     " a pixel by " + used.text + " And " + plain(b) + " by " + other.text +
                     " The first is used; check it on a catheter.");
}

} // namespace

ChosenScale chooseScale(const XrayScope& scope, int longSide, XrayFrame& frame, FindingList& findings) {
    const Told told = readTold(scope, longSide, findings);
    const auto magnification = magnificationOf(told, findings);
    frame.imagerSpacingMm = told.imager;
    frame.sourceToDetectorMm = told.sid;
    frame.sourceToIsocentreMm = told.sod;
    frame.magnification = told.magnification;
    std::vector<Candidate> candidates;
    for (auto& candidate : {fromPixelSpacing(told, findings), fromObjectSpacing(told, findings),
                            fromIsocentre(told, magnification)})
        if (candidate) candidates.push_back(*candidate);
    if (candidates.empty()) return {XrayScaleSource::None, whyNone(told)};
    std::stable_sort(candidates.begin(), candidates.end(),
                     [](const Candidate& a, const Candidate& b) { return a.source < b.source; });
    for (std::size_t i = 1; i < candidates.size(); ++i)
        compare(candidates.front(), candidates[i], findings);
    frame.scale = candidates.front().scale;
    return {candidates.front().source, candidates.front().text};
}

} // namespace gauge::dicomio
