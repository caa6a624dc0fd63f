#include "app/format/terms.h"

#include "app/format/projection_words.h"

#include <QCoreApplication>
#include <map>
#include <string_view>

namespace gauge::app {
namespace {

/// Not called tr: lupdate would look for a text in its call and not see the macro there.
QString term(const char* text) {
    return QCoreApplication::translate("Terms", text);
}

} // namespace

QString stageName(core::Stage stage) {
    switch (stage) {
    case core::Stage::BeforeProcedure:
        return term(QT_TRANSLATE_NOOP("Terms", "before the procedure"));
    case core::Stage::BeforeRepair:
        return term(QT_TRANSLATE_NOOP("Terms", "before the repair"));
    case core::Stage::AfterRepair:
        return term(QT_TRANSLATE_NOOP("Terms", "after the repair"));
    case core::Stage::SheathInAppendage:
        return term(QT_TRANSLATE_NOOP("Terms", "sheath in the appendage"));
    case core::Stage::PartlyDeployed:
        return term(QT_TRANSLATE_NOOP("Terms", "device partly deployed"));
    case core::Stage::DeployedAttached:
        return term(QT_TRANSLATE_NOOP("Terms", "deployed and attached"));
    case core::Stage::AfterRelease:
        return term(QT_TRANSLATE_NOOP("Terms", "after release"));
    case core::Stage::FollowUp:
        return term(QT_TRANSLATE_NOOP("Terms", "follow-up"));
    }
    return {};
}

QString modalityName(core::Modality modality) {
    switch (modality) {
    case core::Modality::Ct:
        return term(QT_TRANSLATE_NOOP("Terms", "CT"));
    case core::Modality::Echo2d:
        return term(QT_TRANSLATE_NOOP("Terms", "2D echo"));
    case core::Modality::Echo3d:
        return term(QT_TRANSLATE_NOOP("Terms", "3D echo"));
    case core::Modality::Fluoroscopy:
        return term(QT_TRANSLATE_NOOP("Terms", "fluoroscopy"));
    }
    return {};
}

QString derivationName(core::Derivation derivation) {
    switch (derivation) {
    case core::Derivation::Contour:
        return term(QT_TRANSLATE_NOOP("Terms", "contour"));
    case core::Derivation::EllipseFromAngles:
        return term(QT_TRANSLATE_NOOP("Terms", "ellipse from probe angles"));
    case core::Derivation::LargestOfViews:
        return term(QT_TRANSLATE_NOOP("Terms", "largest of the views"));
    case core::Derivation::SingleView:
        return term(QT_TRANSLATE_NOOP("Terms", "single view"));
    }
    return {};
}

QString quantityName(core::Quantity quantity) {
    switch (quantity) {
    case core::Quantity::LandingZonePerimeterDerivedDiameter:
        return term(QT_TRANSLATE_NOOP("Terms", "perimeter-derived diameter of the landing zone"));
    case core::Quantity::LandingZoneAreaDerivedDiameter:
        return term(QT_TRANSLATE_NOOP("Terms", "area-derived diameter of the landing zone"));
    case core::Quantity::LandingZoneLongestDiameter:
        return term(QT_TRANSLATE_NOOP("Terms", "longest diameter of the landing zone"));
    case core::Quantity::OstiumPerimeterDerivedDiameter:
        return term(QT_TRANSLATE_NOOP("Terms", "perimeter-derived diameter of the ostium"));
    case core::Quantity::OstiumLongestDiameter:
        return term(QT_TRANSLATE_NOOP("Terms", "longest diameter of the ostium"));
    case core::Quantity::Depth:
        return term(QT_TRANSLATE_NOOP("Terms", "depth"));
    }
    return {};
}

QString evidenceName(core::EvidenceKind kind) {
    switch (kind) {
    case core::EvidenceKind::Ct:
        return term(QT_TRANSLATE_NOOP("Terms", "CT"));
    case core::EvidenceKind::EchoCine:
        return term(QT_TRANSLATE_NOOP("Terms", "echo view"));
    case core::EvidenceKind::EchoVolume:
        return term(QT_TRANSLATE_NOOP("Terms", "3D echo"));
    case core::EvidenceKind::Doppler:
        return term(QT_TRANSLATE_NOOP("Terms", "spectral Doppler"));
    case core::EvidenceKind::Fluoroscopy:
        return term(QT_TRANSLATE_NOOP("Terms", "fluoroscopy"));
    case core::EvidenceKind::Other:
        return term(QT_TRANSLATE_NOOP("Terms", "other images"));
    }
    return {};
}

QString beatPhaseName(core::BeatPhase phase) {
    switch (phase) {
    case core::BeatPhase::EndSystole:
        return term(QT_TRANSLATE_NOOP("Terms", "end-systole"));
    case core::BeatPhase::EndDiastole:
        return term(QT_TRANSLATE_NOOP("Terms", "end-diastole"));
    case core::BeatPhase::Other:
        return term(QT_TRANSLATE_NOOP("Terms", "another phase"));
    case core::BeatPhase::Unknown:
        return term(QT_TRANSLATE_NOOP("Terms", "unknown phase"));
    }
    return {};
}

QString conditionName(core::Condition condition) {
    switch (condition) {
    case core::Condition::MitralRegurgitation:
        return term(QT_TRANSLATE_NOOP("Terms", "mitral regurgitation not yet treated"));
    case core::Condition::Hydrated:
        return term(QT_TRANSLATE_NOOP("Terms", "filled on purpose"));
    case core::Condition::Other:
        return term(QT_TRANSLATE_NOOP("Terms", "as usual"));
    }
    return {};
}

QString rhythmName(core::Rhythm rhythm) {
    switch (rhythm) {
    case core::Rhythm::Sinus:
        return term(QT_TRANSLATE_NOOP("Terms", "sinus rhythm"));
    case core::Rhythm::AtrialFibrillation:
        return term(QT_TRANSLATE_NOOP("Terms", "atrial fibrillation"));
    case core::Rhythm::AtrialFlutter:
        return term(QT_TRANSLATE_NOOP("Terms", "atrial flutter"));
    case core::Rhythm::Paced:
        return term(QT_TRANSLATE_NOOP("Terms", "paced"));
    }
    return {};
}

QString ventilationName(core::Ventilation ventilation) {
    switch (ventilation) {
    case core::Ventilation::Spontaneous:
        return term(QT_TRANSLATE_NOOP("Terms", "breathing spontaneously"));
    case core::Ventilation::Controlled:
        return term(QT_TRANSLATE_NOOP("Terms", "controlled ventilation"));
    }
    return {};
}

QString regurgitationName(core::RegurgitationGrade grade) {
    switch (grade) {
    case core::RegurgitationGrade::None:
        return term(QT_TRANSLATE_NOOP("Terms", "none or trace"));
    case core::RegurgitationGrade::Mild:
        return term(QT_TRANSLATE_NOOP("Terms", "mild (1+)"));
    case core::RegurgitationGrade::Moderate:
        return term(QT_TRANSLATE_NOOP("Terms", "moderate (2+)"));
    case core::RegurgitationGrade::ModerateToSevere:
        return term(QT_TRANSLATE_NOOP("Terms", "moderate to severe (3+)"));
    case core::RegurgitationGrade::Severe:
        return term(QT_TRANSLATE_NOOP("Terms", "severe (4+)"));
    }
    return {};
}

QString veinFlowName(core::PulmonaryVeinFlow flow) {
    switch (flow) {
    case core::PulmonaryVeinFlow::SystolicDominant:
        return term(QT_TRANSLATE_NOOP("Terms", "systolic wave dominant"));
    case core::PulmonaryVeinFlow::Blunted:
        return term(QT_TRANSLATE_NOOP("Terms", "systolic wave blunted"));
    case core::PulmonaryVeinFlow::Reversed:
        return term(QT_TRANSLATE_NOOP("Terms", "systolic wave reversed"));
    }
    return {};
}

QString pressureSourceName(core::PressureSource source) {
    switch (source) {
    case core::PressureSource::Direct:
        return term(QT_TRANSLATE_NOOP("Terms", "measured directly"));
    case core::PressureSource::Wedge:
        return term(QT_TRANSLATE_NOOP("Terms", "wedge pressure"));
    case core::PressureSource::Echo:
        return term(QT_TRANSLATE_NOOP("Terms", "estimated by echo"));
    case core::PressureSource::ProcedureStart:
        return term(QT_TRANSLATE_NOOP("Terms", "measured at the start of the procedure"));
    }
    return {};
}

QString releaseQuantityName(core::ReleaseQuantity quantity) {
    switch (quantity) {
    case core::ReleaseQuantity::SheathTipDepth:
        return term(QT_TRANSLATE_NOOP("Terms", "sheath tip beyond the landing plane"));
    case core::ReleaseQuantity::ShareBeyondCircumflex:
        return term(QT_TRANSLATE_NOOP("Terms", "share of the lobe beyond the circumflex artery"));
    case core::ReleaseQuantity::ImplantWidth:
        return term(QT_TRANSLATE_NOOP("Terms", "width of the implant"));
    case core::ReleaseQuantity::GapBeforePull:
        return term(QT_TRANSLATE_NOOP("Terms", "gap to the wall before the pull"));
    case core::ReleaseQuantity::GapAfterPull:
        return term(QT_TRANSLATE_NOOP("Terms", "gap to the wall after the pull"));
    case core::ReleaseQuantity::LobeToNeckAngle:
        return term(QT_TRANSLATE_NOOP("Terms", "angle of the lobe to the neck"));
    case core::ReleaseQuantity::DiscSeparation:
        return term(QT_TRANSLATE_NOOP("Terms", "separation of disc and lobe"));
    case core::ReleaseQuantity::UncoveredLobes:
        return term(QT_TRANSLATE_NOOP("Terms", "lobes left uncovered"));
    case core::ReleaseQuantity::JetWidth:
        return term(QT_TRANSLATE_NOOP("Terms", "width of the jet past the implant"));
    case core::ReleaseQuantity::ClearanceCircumflex:
        return term(QT_TRANSLATE_NOOP("Terms", "clearance to the circumflex artery"));
    case core::ReleaseQuantity::ClearancePulmonaryArtery:
        return term(QT_TRANSLATE_NOOP("Terms", "clearance to the pulmonary artery"));
    case core::ReleaseQuantity::ClearanceMitralAnnulus:
        return term(QT_TRANSLATE_NOOP("Terms", "clearance to the mitral annulus"));
    case core::ReleaseQuantity::ClearanceRidge:
        return term(QT_TRANSLATE_NOOP("Terms", "clearance to the ridge"));
    case core::ReleaseQuantity::Effusion:
        return term(QT_TRANSLATE_NOOP("Terms", "pericardial effusion"));
    case core::ReleaseQuantity::MitralGradient:
        return term(QT_TRANSLATE_NOOP("Terms", "mean mitral gradient"));
    case core::ReleaseQuantity::RegurgitationGrade:
        return term(QT_TRANSLATE_NOOP("Terms", "grade of mitral regurgitation"));
    case core::ReleaseQuantity::VeinFlowFree:
        return term(QT_TRANSLATE_NOOP("Terms", "pulmonary vein flow free"));
    case core::ReleaseQuantity::DeviceThrombus:
        return term(QT_TRANSLATE_NOOP("Terms", "thrombus on the device"));
    case core::ReleaseQuantity::SeptalHole:
        return term(QT_TRANSLATE_NOOP("Terms", "hole left in the septum"));
    }
    return {};
}

Unit unitOf(const std::string& recordUnit) {
    static const std::map<std::string_view, Unit> units{
        {"mm", Unit::Millimetre}, {"mm2", Unit::SquareMillimetre}, {"mL", Unit::Millilitre}, {"deg", Unit::Degree},
        {"HU", Unit::Hounsfield}, {"%", Unit::Percent},            {"1", Unit::Index},
        {"cm/s", Unit::CentimetrePerSecond}, {"cm", Unit::Centimetre}, {"ms", Unit::Millisecond},
        {"mmHg", Unit::MillimetreOfMercury}, {"1/min", Unit::PerMinute}};
    const auto found = units.find(recordUnit);
    return found == units.end() ? Unit::Index : found->second;
}

QString metricName(const std::string& valueId) {
    static const std::map<std::string_view, const char*> names{
        {"area", QT_TRANSLATE_NOOP("Terms", "area")},
        {"perimeter", QT_TRANSLATE_NOOP("Terms", "perimeter")},
        {"longest-diameter", QT_TRANSLATE_NOOP("Terms", "longest diameter")},
        {"shortest-diameter", QT_TRANSLATE_NOOP("Terms", "shortest diameter")},
        {"least-width", QT_TRANSLATE_NOOP("Terms", "least width")},
        {"mean-diameter", QT_TRANSLATE_NOOP("Terms", "mean diameter")},
        {"perimeter-derived-diameter", QT_TRANSLATE_NOOP("Terms", "perimeter-derived diameter")},
        {"area-derived-diameter", QT_TRANSLATE_NOOP("Terms", "area-derived diameter")},
        {"eccentricity-index", QT_TRANSLATE_NOOP("Terms", "eccentricity index")},
        {"straight-depth", QT_TRANSLATE_NOOP("Terms", "straight depth")},
        {"along-axis", QT_TRANSLATE_NOOP("Terms", "depth along the axis")},
        {"from-ostium-plane", QT_TRANSLATE_NOOP("Terms", "depth from the ostium plane")},
        {"depth", QT_TRANSLATE_NOOP("Terms", "depth")},
        {"volume", QT_TRANSLATE_NOOP("Terms", "volume")},
        {"angle", QT_TRANSLATE_NOOP("Terms", "turn of the axis")},
        {"at", QT_TRANSLATE_NOOP("Terms", "place of the turn")},
        {"direction", QT_TRANSLATE_NOOP("Terms", "direction of the longest diameter")},
        {"largest-of-views", QT_TRANSLATE_NOOP("Terms", "largest of the views")},
        {"single-view", QT_TRANSLATE_NOOP("Terms", "width in one view")},
        {"width", QT_TRANSLATE_NOOP("Terms", "width")},
        {"length", QT_TRANSLATE_NOOP("Terms", "length")},
        {"primary", QT_TRANSLATE_NOOP("Terms", "C-arm, LAO above 0°")},
        {"secondary", QT_TRANSLATE_NOOP("Terms", "C-arm, cranial above 0°")},
        {"atrium", QT_TRANSLATE_NOOP("Terms", "enhancement of the atrium")},
        {"appendage", QT_TRANSLATE_NOOP("Terms", "enhancement of the appendage")},
        {"tip", QT_TRANSLATE_NOOP("Terms", "enhancement of the tip")},
        {"aorta", QT_TRANSLATE_NOOP("Terms", "enhancement of the aorta")},
        {"over-annulus", QT_TRANSLATE_NOOP("Terms", "height over the plane of the mitral annulus")},
        {"over-coaptation", QT_TRANSLATE_NOOP("Terms", "height over the level of coaptation, parallel to the septum")},
        {"ostium-distance", QT_TRANSLATE_NOOP("Terms", "distance to the ostium's centre")},
        {"arrival-angle", QT_TRANSLATE_NOOP("Terms", "angle of a straight sheath to the proximal axis")},
        {"steered-arrival-angle", QT_TRANSLATE_NOOP("Terms", "angle of a steerable sheath to the proximal axis")},
        {"tip-to-aorta", QT_TRANSLATE_NOOP("Terms", "enhancement, tip to aorta")},
    };
    const std::size_t last = valueId.rfind('/');
    const auto found = names.find(valueId.substr(last + 1)); // the whole id when it has no part
    if (found == names.end()) return QString::fromStdString(valueId);
    // "landing-1/longest-width/primary": of the view that serves this aim.
    const std::size_t first = valueId.find('/');
    const auto aim = first < last ? core::viewAimFrom(std::string_view(valueId).substr(first + 1, last - first - 1)) : std::nullopt;
    return aim ? aimName(*aim) + QStringLiteral(", ") + term(found->second) : term(found->second);
}

QString placeName(const std::string& valueId) {
    const std::string place = valueId.substr(0, valueId.find('/'));
    if (place == "ostium") return term(QT_TRANSLATE_NOOP("Terms", "ostium"));
    if (place == "landing" || place == "landing-1") return term(QT_TRANSLATE_NOOP("Terms", "landing zone"));
    if (place.starts_with("landing-")) return term(QT_TRANSLATE_NOOP("Terms", "landing zone %1")).arg(QString::fromStdString(place.substr(8)));
    if (place == "crossing") return term(QT_TRANSLATE_NOOP("Terms", "septal crossing"));
    return term(QT_TRANSLATE_NOOP("Terms", "appendage"));
}

} // namespace gauge::app
