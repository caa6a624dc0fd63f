#include "dicomio/report/report_codes.h"

#include <map>
#include <vector>

namespace gauge::dicomio::codes {
namespace {

using core::ReleaseQuantity;

const Code kLength = sct("410668003", "Length");
const Code kArea = sct("42798000", "Area");
const Code kPerimeter = sct("131191004", "Perimeter");
const Code kMajorAxis = sct("131187009", "Major Axis");
const Code kMinorAxis = sct("131188004", "Minor Axis");
const Code kWidth = sct("103355008", "Width");
const Code kDepth = sct("131197000", "Depth");
const Code kAngle = sct("1483009", "Angle");
const Code kVolume = sct("118565006", "Volume");
const Code kAttenuation = dcm("112031", "Attenuation Coefficient");
const Code kMinimum = sct("255605001", "Minimum");
const Code kMaximum = sct("56851009", "Maximum");
const Code kMean = sct("373098007", "Mean");

const Code kPerimeterDiameter = own("dia-perimeter", "Perimeter-derived diameter: perimeter / pi");
const Code kAreaDiameter = own("dia-area", "Area-derived diameter: 2 sqrt(area / pi)");
const Code kMeanDiameter = own("dia-mean", "Mean of longest and shortest diameter");
const Code kEccentricity = own("eccentricity", "Eccentricity index: 1 - shortest / longest diameter");

// CID 12338, appendage closure.
const Code kLaaDepth = dcm("131221", "Left Atrial Appendage Depth");
const Code kLandingMajorAxis = dcm("131222", "Left Atrial Appendage Landing Zone Major Axis");
const Code kLaaMajorAxis = dcm("131223", "Left Atrial Appendage Major Axis");
const Code kLaaMinorAxis = dcm("131224", "Left Atrial Appendage Minor Axis");
const Code kLaaPerimeter = dcm("131225", "Left Atrial Appendage Ostium Perimeter");
const Code kDeviceDiameter = dcm("131219", "Left Atrial Appendage Closure Device Diameter");

// The landing zone of (131222, DCM): "1.0 to 1.5 cm beyond (below) the orifice".
constexpr double kLandingFromMm = 10.0, kLandingToMm = 15.0;

std::optional<ValueConcept> sectionConcept(std::string_view metric, bool ostium,
                                           const std::optional<Code>& site, std::optional<double> depthMm) {
    const bool standardDepth = depthMm && *depthMm >= kLandingFromMm && *depthMm <= kLandingToMm;
    if (metric == "area") return ValueConcept{kArea, site, {}};
    if (metric == "perimeter") return ValueConcept{ostium ? kLaaPerimeter : kPerimeter, site, {}};
    if (metric == "longest-diameter")
        return ValueConcept{ostium          ? kLaaMajorAxis
                            : standardDepth ? kLandingMajorAxis
                                            : kMajorAxis,
                            site,
                            {}};
    if (metric == "shortest-diameter") return ValueConcept{ostium ? kLaaMinorAxis : kMinorAxis, site, {}};
    if (metric == "least-width") return ValueConcept{kWidth, site, kMinimum};
    if (metric == "mean-diameter") return ValueConcept{kMeanDiameter, site, {}};
    if (metric == "perimeter-derived-diameter") return ValueConcept{kPerimeterDiameter, site, {}};
    if (metric == "area-derived-diameter") return ValueConcept{kAreaDiameter, site, {}};
    if (metric == "eccentricity-index") return ValueConcept{kEccentricity, site, {}};
    if (metric == "straight-depth")
        return ValueConcept{
            own("straight-depth", "Straight distance from ostium to landing plane"), site, {}};
    if (metric == "largest-of-views") return ValueConcept{kWidth, site, kMaximum};
    if (metric == "single-view")
        return ValueConcept{kWidth, site, derivationCode(core::Derivation::SingleView)};
    return std::nullopt;
}

Code byUnit(std::string_view unit) {
    static const std::map<std::string_view, Code> kByUnit{
        {"mm", kLength},
        {"mm2", kArea},
        {"mL", kVolume},
        {"deg", kAngle},
        {"HU", kAttenuation},
        {"mmHg", own("pressure", "Pressure difference or pressure")},
        {"cm/s", own("velocity", "Velocity")},
        {"m/s", own("velocity", "Velocity")},
        {"s", own("interval", "Interval of time")},
        {"ms", own("interval", "Interval of time")},
        {"cm", kLength},
        {"/min", own("rate", "Rate per minute")}};
    const auto found = kByUnit.find(unit);
    return found == kByUnit.end() ? own("number", "Number named by its tracking identifier") : found->second;
}

struct FixedConcept {
    std::string_view id;
    ValueConcept is;
};

const std::vector<FixedConcept>& fixedConcepts() {
    static const std::vector<FixedConcept> kFixed{
        {"depth/along-axis", {kDepth, kAppendage, {}}},
        {"depth", {kLaaDepth, kAppendage, {}}},
        {"depth/from-ostium-plane", {kLaaDepth, kAppendage, {}}},
        {"volume", {kVolume, kAppendage, {}}},
        {"velocity-time-integral", {ln("20354-7", "Velocity Time Integral"), {}, {}}},
        {"peak-velocity", {ln("11726-7", "Peak Blood Velocity"), {}, {}}},
        {"mean-velocity", {ln("20352-1", "Mean Blood Velocity"), {}, {}}},
        {"peak-gradient", {ln("20247-3", "Peak Gradient"), {}, {}}},
        {"mean-gradient", {kMeanGradient, {}, {}}},
        {"heart-rate", {kHeartRate, {}, {}}},
        {"turn/angle", {kAngle, kAppendage, {}}},
        {"turn/at", {own("turn-at", "Distance of the sharpest bend from the ostium"), kAppendage, {}}},
        // PS3.16: from the mitral leaflets to the puncture level, in systole, parallel to the septum (CID 12333).
        {"crossing/over-coaptation", {dcm("131130", "Transseptal puncture height"), kSeptum, {}}},
        {"crossing/over-annulus", {own("over-annulus", "Height of the septal crossing over the mitral annulus plane"), kSeptum, {}}},
        {"crossing/ostium-distance", {own("ostium-distance", "Distance from the septal crossing to the ostium's centre"), kSeptum, {}}},
        {"crossing/arrival-angle", {own("arrival-angle", "Angle of a straight sheath to the proximal axis of the appendage"), kSeptum, {}}},
        {"crossing/steered-arrival-angle",
         {own("steered-arrival", "Angle of a steerable sheath to the proximal appendage axis"), kSeptum, {}}},
        {"enhancement/atrium", {kAttenuation, kLeftAtrium, kMean}},
        {"enhancement/appendage", {kAttenuation, kAppendage, kMean}},
        {"enhancement/tip", {kAttenuation, own("tip", "Tip of the left atrial appendage"), kMean}},
        {"enhancement/aorta", {kAttenuation, kAscendingAorta, kMean}},
        {"enhancement/tip-to-aorta",
         {own("enhance-ratio", "Attenuation of the appendage tip over that of the aorta"), kAppendage, {}}},
    };
    return kFixed;
}

} // namespace

Code unitCode(std::string_view unit) {
    static const std::map<std::string_view, Code> kUnits{
        {"mm", ucum("mm", "millimeter")},
        {"cm", ucum("cm", "centimeter")},
        {"mm2", ucum("mm2", "square millimeter")},
        {"cm2", ucum("cm2", "square centimeter")},
        {"mL", ucum("ml", "milliliter")},
        {"deg", ucum("deg", "degree")},
        {"degrees", ucum("deg", "degree")},
        {"HU", ucum("[hnsf'U]", "Hounsfield unit")},
        {"mmHg", ucum("mm[Hg]", "millimeter of mercury")},
        {"%", ucum("%", "percent")},
        {"1", ucum("1", "no units")},
        {"", ucum("1", "no units")},
        {"cm/s", ucum("cm/s", "centimeter per second")},
        {"m/s", ucum("m/s", "meter per second")},
        {"s", ucum("s", "second")},
        {"ms", ucum("ms", "millisecond")},
        {"/min", ucum("/min", "per minute")},
        {"1/min", ucum("/min", "per minute")},
        {"mm/mmHg", ucum("mm/mm[Hg]", "millimeter per millimeter of mercury")},
        {"px", ucum("{pixels}", "pixels")}};
    const auto found = kUnits.find(unit);
    if (found != kUnits.end()) return found->second;
    std::string plain;
    for (const char c : unit) // a code value holds 16 characters
        if (c > ' ' && c < 127 && c != '{' && c != '}' && plain.size() < 14) plain += c;
    return {"{" + plain + "}", "UCUM", std::string(unit)};
}

ValueConcept conceptOf(std::string_view id, std::string_view unit, std::optional<double> landingDepthMm) {
    for (const FixedConcept& fixed : fixedConcepts())
        if (fixed.id == id) return fixed.is;
    const auto slash = id.find('/');
    const std::string_view where = slash == std::string_view::npos ? std::string_view{} : id.substr(0, slash);
    const std::string_view metric = slash == std::string_view::npos ? id : id.substr(slash + 1);
    const bool ostium = where == "ostium";
    const bool landing = where.starts_with("landing");
    const std::optional<Code> site = ostium    ? std::optional(kOstium)
                                     : landing ? std::optional(kLandingZone)
                                               : std::nullopt;
    // Views of the C-arm, of the plane that they show: PS3.16 annex D, 112011 and 112012 (pydicom's concept tables have them); RAO and
    // caudal negative. A width in a view is no length of its plane.
    if (unit == "deg" && id.ends_with("/primary")) return {dcm("112011", "Positioner Primary Angle"), site, {}};
    if (unit == "deg" && id.ends_with("/secondary")) return {dcm("112012", "Positioner Secondary Angle"), site, {}};
    if (unit == "mm" && (metric.ends_with("/width") || where.starts_with("view-"))) {
        const bool ofOstium = ostium || id.ends_with("/ostium-width");
        return {own("projected-width", "Width of the contour as a view of the C-arm shows it"), ofOstium ? kOstium : kLandingZone, {}};
    }
    if (unit == "mm" || unit == "mm2" || unit == "1")
        if (auto known = sectionConcept(metric, ostium, site, landing ? landingDepthMm : std::nullopt))
            return *known;
    return {byUnit(unit), site, {}};
}

Code stageCode(core::Stage stage) {
    using core::Stage;
    switch (stage) {
    case Stage::BeforeProcedure:
        return own("before-procedure", "Before the procedure");
    case Stage::BeforeRepair:
        return own("before-repair", "During the procedure, before a mitral repair or without one");
    case Stage::AfterRepair:
        return own("after-repair", "After the mitral repair");
    case Stage::SheathInAppendage:
        return own("sheath-in", "Sheath in the appendage");
    case Stage::PartlyDeployed:
        return own("partly-deployed", "Device partly deployed");
    case Stage::DeployedAttached:
        return own("attached", "Device deployed and attached");
    case Stage::AfterRelease:
        return own("after-release", "After release of the device");
    case Stage::FollowUp:
        return own("follow-up", "Follow-up");
    }
    return own("before-procedure", "Before the procedure");
}

Code titleOf(std::optional<core::Stage> latest) {
    if (!latest) return kMeasurementReport;
    if (*latest == core::Stage::BeforeProcedure) return kBeforeProcedure;
    if (*latest == core::Stage::FollowUp) return kAfterProcedure;
    return kDuringProcedure;
}

std::optional<Code> beatPhaseCode(core::BeatPhase phase) {
    if (phase == core::BeatPhase::EndSystole) return kEndSystole;
    if (phase == core::BeatPhase::EndDiastole) return kEndDiastole;
    if (phase == core::BeatPhase::Other)
        return own("other-phase", "Neither end of systole nor end of diastole");
    return std::nullopt;
}

Code quantityConcept(core::Quantity quantity) {
    using core::Quantity;
    switch (quantity) {
    case Quantity::LandingZonePerimeterDerivedDiameter:
    case Quantity::OstiumPerimeterDerivedDiameter:
        return kPerimeterDiameter;
    case Quantity::LandingZoneAreaDerivedDiameter:
        return kAreaDiameter;
    case Quantity::LandingZoneLongestDiameter:
        return kMajorAxis;
    case Quantity::OstiumLongestDiameter:
        return kLaaMajorAxis;
    case Quantity::Depth:
        return kDepth;
    }
    return kLength;
}

ValueConcept releaseConcept(ReleaseQuantity quantity) {
    switch (quantity) {
    case ReleaseQuantity::SheathTipDepth:
        return {own("sheath-depth", "Sheath tip beyond the landing plane"), {}, {}};
    case ReleaseQuantity::ShareBeyondCircumflex:
        return {own("share-beyond-cx", "Share of the lobe beyond the circumflex artery"), {}, {}};
    case ReleaseQuantity::ImplantWidth:
        return {kDeviceDiameter, {}, {}};
    case ReleaseQuantity::GapBeforePull:
        return {own("gap-before-pull", "Gap between implant and wall before the pull"), {}, {}};
    case ReleaseQuantity::GapAfterPull:
        return {own("gap-after-pull", "Gap between implant and wall after the pull"), {}, {}};
    case ReleaseQuantity::LobeToNeckAngle:
        return {own("lobe-neck-angle", "Angle of the lobe's axis to the neck's"), {}, {}};
    case ReleaseQuantity::DiscSeparation:
        return {own("disc-separation", "Distance of disc and lobe"), {}, {}};
    case ReleaseQuantity::UncoveredLobes:
        return {own("uncovered-lobes", "Lobes left uncovered"), {}, {}};
    case ReleaseQuantity::JetWidth:
        return {own("jet-width", "Width of the colour jet past the implant"), {}, {}};
    case ReleaseQuantity::ClearanceCircumflex:
        return {own("clear-circumflex", "Distance of implant and circumflex artery"), kCircumflex, {}};
    case ReleaseQuantity::ClearancePulmonaryArtery:
        return {own("clear-pulmonary", "Distance of implant and pulmonary artery"),
                kPulmonaryArtery,
                {}};
    case ReleaseQuantity::ClearanceMitralAnnulus:
        return {own("clear-mitral", "Distance of implant and mitral annulus"),
                sct("65197004", "Mitral annulus"),
                {}};
    case ReleaseQuantity::ClearanceRidge:
        return {own("clear-ridge", "Distance of implant and ridge or upper left pulmonary vein"), {}, {}};
    case ReleaseQuantity::Effusion:
        return {own("effusion-depth", "Greatest depth of pericardial fluid"), {}, kMaximum};
    case ReleaseQuantity::MitralGradient:
        return {kMeanGradient, kMitralValve, {}};
    case ReleaseQuantity::RegurgitationGrade:
        return {own("mr-grade", "Grade of mitral regurgitation, 0 to 4"), kMitralValve, {}};
    case ReleaseQuantity::VeinFlowFree:
        return {own("vein-flow-free", "Pulmonary vein flow is free"), {}, {}};
    case ReleaseQuantity::DeviceThrombus:
        return {own("device-thrombus", "Thrombus on the device"), {}, {}};
    case ReleaseQuantity::SeptalHole:
        return {own("septal-hole", "Hole left in the septum by the crossing"),
                sct("58095006", "Interatrial septum"),
                {}};
    }
    return {kLength, {}, {}};
}

Code derivationCode(core::Derivation derivation) {
    switch (derivation) {
    case core::Derivation::Contour:
        return own("by-contour", "From a contour");
    case core::Derivation::EllipseFromAngles:
        return own("by-ellipse", "From the ellipse through widths at probe angles");
    case core::Derivation::LargestOfViews:
        return kMaximum;
    case core::Derivation::SingleView:
        return own("single-view", "From a single view");
    }
    return kMaximum;
}

Code markCode(core::MarkKind kind) {
    switch (kind) {
    case core::MarkKind::Atrium:
        return kLeftAtrium;
    case core::MarkKind::Tip:
        return own("tip", "Tip of the left atrial appendage");
    case core::MarkKind::Circumflex:
        return kCircumflex;
    case core::MarkKind::Ridge:
        return own("ridge", "Ridge between appendage and upper left pulmonary vein");
    case core::MarkKind::Aorta:
        return kAscendingAorta;
    case core::MarkKind::PulmonaryArtery:
        return kPulmonaryArtery;
    }
    return kLeftAtrium;
}

Code modalityCode(std::string_view modality) {
    if (modality == "CT") return dcm("CT", "Computed Tomography");
    if (modality == "US") return dcm("US", "Ultrasound");
    if (modality == "XA") return dcm("XA", "X-Ray Angiography");
    return {std::string(modality.empty() ? "OT" : modality), "DCM",
            modality.empty() ? "Other" : std::string(modality)};
}

Code procedureCode(std::string_view modality) {
    if (modality == "CT") return sct("77477000", "Computed tomography");
    if (modality == "US") return sct("105376000", "Transesophageal echocardiography");
    if (modality == "XA")
        return own("fluoroscopy", "Fluoroscopy during closure of the left atrial appendage");
    return own("laa-planning", "Planning of left atrial appendage closure");
}

} // namespace gauge::dicomio::codes
