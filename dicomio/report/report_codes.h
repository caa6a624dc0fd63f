// The codes that reports use. Standard ones as PS3.16 (2026b) has them; scheme 99OSTIUM is ours, for what has
// no standard code; DEVELOPERS.md lists its meanings. They are never reused for another meaning.
#pragma once

#include "core/record/case_record.h"
#include "dicomio/report/report_content.h"

#include <optional>
#include <string>
#include <string_view>

namespace gauge::dicomio::codes {

inline constexpr std::string_view kPrivateScheme = "99OSTIUM";
/// Identifies the scheme to receivers: "2.25." and a UUID made once.
inline constexpr std::string_view kPrivateSchemeUid = "2.25.130086868216264053366413305338673844113";

inline Code dcm(const char* value, const char* meaning) {
    return {value, "DCM", meaning};
}
inline Code sct(const char* value, const char* meaning) {
    return {value, "SCT", meaning};
}
inline Code ln(const char* value, const char* meaning) {
    return {value, "LN", meaning};
}
inline Code ucum(const char* value, const char* meaning) {
    return {value, "UCUM", meaning};
}
inline Code own(const char* value, const char* meaning) {
    return {value, std::string(kPrivateScheme), meaning};
}

// Scaffolding of TID 1500 and its neighbours.
inline const Code kMeasurementReport = dcm("126000", "Imaging Measurement Report");
inline const Code kBeforeProcedure = dcm("131090", "Pre-procedural Structural Heart Measurement Report");
inline const Code kDuringProcedure = dcm("131091", "Intra-procedural Structural Heart Measurement Report");
inline const Code kAfterProcedure = dcm("131092", "Post-procedural Structural Heart Measurement Report");
inline const Code kLanguage = dcm("121049", "Language of Content Item and Descendants");
inline const Code kCountry = dcm("121046", "Country of Language");
inline const Code kEnglish{"en", "RFC5646", "English"};
inline const Code kBritain{"GB", "ISO3166_1", "UNITED KINGDOM"};
inline const Code kObserverType = dcm("121005", "Observer Type");
inline const Code kPerson = dcm("121006", "Person");
inline const Code kDevice = dcm("121007", "Device");
inline const Code kPersonName = dcm("121008", "Person Observer Name");
inline const Code kPersonOrganization = dcm("121009", "Person Observer's Organization Name");
inline const Code kDeviceUid = dcm("121012", "Device Observer UID");
inline const Code kDeviceName = dcm("121013", "Device Observer Name");
inline const Code kDeviceManufacturer = dcm("121014", "Device Observer Manufacturer");
inline const Code kDeviceModel = dcm("121015", "Device Observer Model Name");
inline const Code kDeviceSerial = dcm("121016", "Device Observer Serial Number");
inline const Code kProcedureReported = dcm("121058", "Procedure reported");
inline const Code kImageLibrary = dcm("111028", "Image Library");
inline const Code kImageLibraryGroup = dcm("126200", "Image Library Group");
inline const Code kModality = dcm("121139", "Modality");
inline const Code kImagingMeasurements = dcm("126010", "Imaging Measurements");
inline const Code kDerivedMeasurements = dcm("126011", "Derived Imaging Measurements");
inline const Code kMeasurementGroup = dcm("125007", "Measurement Group");
inline const Code kTrackingId = dcm("112039", "Tracking Identifier");
inline const Code kTrackingUid = dcm("112040", "Tracking Unique Identifier");
inline const Code kFinding = dcm("121071", "Finding");
inline const Code kFindingSite = sct("363698007", "Finding Site");
inline const Code kTimePoint{"C2348792", "UMLS", "Time Point"};
inline const Code kTimePointType = dcm("126072", "Time Point Type");
inline const Code kSource = sct("260753009", "Source");
inline const Code kSourceImage = dcm("121324", "Source image");
inline const Code kSourceOfMeasurement = dcm("121112", "Source of Measurement");
inline const Code kImageRegion = dcm("111030", "Image Region");
inline const Code kMethod = sct("370129005", "Measurement Method");
inline const Code kDerivation = dcm("121401", "Derivation");
inline const Code kStandardDeviation = sct("386136009", "Standard Deviation");
inline const Code kStandardDeviationDcm = dcm("113061", "Standard Deviation");
inline const Code kComment = dcm("121106", "Comment");
inline const Code kConclusion = dcm("121077", "Conclusion");
inline const Code kYes = sct("373066001", "Yes");
inline const Code kNo = sct("373067005", "No");

// Ours, around numbers.
inline const Code kMethodWords = own("method", "Method of measurement in words");
inline const Code kMoment = own("moment", "Moment of the circulation");
inline const Code kImagePhase = own("image-phase", "Phase of the images in the heart beat");
inline const Code kBeatPhase = sct("272518008", "Cardiac Cycle Point");
inline const Code kWarning = own("warning", "Warning");
inline const Code kCaution = own("caution", "Caution on use");
inline const Code kAbsentImage = own("image-absent", "UID of a source image that was not at hand");
/// Uncertainty parts have these with the part's name appended: "u-edge".
inline constexpr std::string_view kPartPrefix = "u-";

// Sites.
inline const Code kAppendage = sct("33626005", "Left auricular appendage");
inline const Code kOstium = dcm("131120", "Ostium of Left Auricular Appendage");
inline const Code kLandingZone = own("landing-zone", "Landing zone of the left atrial appendage");
inline const Code kLeftAtrium = sct("82471001", "Left atrium");
inline const Code kMitralValve = sct("91134007", "Mitral valve");
inline const Code kAscendingAorta = sct("54247002", "Ascending aorta");
inline const Code kPulmonaryArtery = sct("81040000", "Pulmonary artery");
inline const Code kSeptum = sct("58095006", "Interatrial septum");
inline const Code kCircumflex = sct("57396003", "Circumflex coronary artery");
inline const Code kClosureDevice = dcm("131112", "Left Atrial Appendage Closure Device");

// Points of the beat (CID 12233).
inline const Code kEndSystole = sct("416430001", "End Systole");
inline const Code kEndDiastole = sct("416190007", "End diastole");

// Quantities that reports use by name.
inline const Code kMeanPressure = sct("6797001", "Mean blood pressure");
inline const Code kVWave = dcm("109034", "V wave peak pressure");
inline const Code kHeartRate = ln("8867-4", "Heart rate");
inline const Code kMeanGradient = ln("20256-4", "Mean Gradient");
inline const Code kEmptyingVelocity = ln("29486-8", "Left Atrial Appendage Peak Velocity");

/// The coded unit of a unit as records write it ("mm", "mm2", "mL", "deg", "HU", "mmHg", "%", "1", "cm/s",
/// "ms", "s", "/min"…). Unknown ones become UCUM's annotation "{…}".
Code unitCode(std::string_view unit);

/// A recorded value's concept and what goes with it.
struct ValueConcept {
    Code name;
    std::optional<Code> site;
    std::optional<Code> derivation;
};
/// @param id  of the value in its group: "ostium/area", "landing-1/longest-diameter", "depth/along-axis".
/// Unknown ids get a concept by unit (SCT Length, Area, Angle, Volume…), and where none fits, ours of the
/// unit's own name.
/// @param landingDepthMm  of the landing section, if known: the standard's landing-zone axis holds 10–15 mm
/// deep.
ValueConcept conceptOf(std::string_view id, std::string_view unit, std::optional<double> landingDepthMm);

Code stageCode(core::Stage stage);
/// The document's title for reports whose latest stage this is (CID 12344); without one CID 7021's general
/// title.
Code titleOf(std::optional<core::Stage> latest);
std::optional<Code> beatPhaseCode(core::BeatPhase phase);
Code quantityConcept(core::Quantity quantity);
ValueConcept releaseConcept(core::ReleaseQuantity quantity);
Code derivationCode(core::Derivation derivation);
Code markCode(core::MarkKind kind);
/// "CT" to (CT, DCM, "Computed Tomography"): CID 29.
Code modalityCode(std::string_view modality);
/// What was reported, by modality (CID 100 is extensible).
Code procedureCode(std::string_view modality);

} // namespace gauge::dicomio::codes
