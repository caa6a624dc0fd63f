#include "dicomio/report/readings_from_report.h"

#include "core/record/case_readings.h"
#include "dicomio/report/report_codes.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <numbers>
#include <set>
#include <string_view>

namespace gauge::dicomio {
namespace {

using core::Derivation;
using core::Modality;
using core::Quantity;

/// What the number itself is; lengths enter the table as they are, the others by their formula.
enum class Shape { Longest, PerimeterDiameter, AreaDiameter, Perimeter, Area, Depth };
enum class Site { None, Ostium, LandingZone };

struct Known {
    Code name;
    Shape shape;
    Site site = Site::None; ///< that the concept itself names
};

/// Concepts by code; the retired SRT codes of the same meaning as in pydicom 2.3 (sr/_snomed_dict.py).
const std::vector<Known>& knownConcepts() {
    using namespace codes;
    static const std::vector<Known> kKnown{
        {dcm("131221", ""), Shape::Depth},
        {sct("131197000", ""), Shape::Depth},
        {{"G-D785", "SRT", ""}, Shape::Depth},
        {dcm("131222", ""), Shape::Longest, Site::LandingZone},
        {dcm("131223", ""), Shape::Longest, Site::Ostium},
        {dcm("131225", ""), Shape::Perimeter, Site::Ostium},
        {sct("131187009", ""), Shape::Longest},
        {{"G-A193", "SRT", ""}, Shape::Longest},
        {sct("131191004", ""), Shape::Perimeter},
        {{"G-A197", "SRT", ""}, Shape::Perimeter},
        {sct("42798000", ""), Shape::Area},
        {{"G-A166", "SRT", ""}, Shape::Area},
        {own("dia-perimeter", ""), Shape::PerimeterDiameter},
        {own("dia-area", ""), Shape::AreaDiameter},
    };
    return kKnown;
}

const Known* knownOf(const Code& name) {
    const auto& all = knownConcepts();
    const auto found = std::find_if(all.begin(), all.end(), [&](const Known& known) { return known.name == name; });
    return found == all.end() ? nullptr : &*found;
}

Site siteOf(const MeasurementGroup& group, const ReportMeasurement& m, Site byConcept) {
    if (byConcept != Site::None) return byConcept;
    const auto named = [](const Code& code) {
        return code == codes::kOstium        ? Site::Ostium
               : code == codes::kLandingZone ? Site::LandingZone
                                             : Site::None;
    };
    if (m.site) return named(*m.site);
    if (group.finding && named(*group.finding) != Site::None) return named(*group.finding);
    for (const Code& site : group.sites)
        if (named(site) != Site::None) return named(site);
    return Site::None;
}

std::optional<Quantity> quantityOf(Shape shape, Site site) {
    const bool ostium = site == Site::Ostium;
    switch (shape) {
    case Shape::Depth:
        return Quantity::Depth;
    case Shape::Longest:
        return ostium ? Quantity::OstiumLongestDiameter : Quantity::LandingZoneLongestDiameter;
    case Shape::PerimeterDiameter:
    case Shape::Perimeter:
        return ostium ? Quantity::OstiumPerimeterDerivedDiameter : Quantity::LandingZonePerimeterDerivedDiameter;
    case Shape::AreaDiameter:
    case Shape::Area:
        if (ostium) return std::nullopt; // no row takes it
        return Quantity::LandingZoneAreaDerivedDiameter;
    }
    return std::nullopt;
}

/// Millimetres or square millimetres in one of the unit; UCUM's codes are case-sensitive.
std::optional<double> factorOf(const Code& unit, bool area) {
    static const std::map<std::string_view, double> kLengths{{"mm", 1.0}, {"cm", 10.0}, {"m", 1000.0}};
    static const std::map<std::string_view, double> kAreas{{"mm2", 1.0}, {"cm2", 100.0}};
    if (unit.scheme != "UCUM") return std::nullopt;
    const auto& table = area ? kAreas : kLengths;
    const auto found = table.find(unit.value);
    return found == table.end() ? std::nullopt : std::optional(found->second);
}

/// In mm, with its uncertainty carried along.
void setValue(core::Observation& o, const ReportMeasurement& m, Shape shape, double factor) {
    const double value = m.value * factor;
    double slope = factor; // of the value in mm by the number
    if (shape == Shape::Area && value > 0.0) {
        o.valueMm = 2.0 * std::sqrt(value / std::numbers::pi);
        slope = factor / std::sqrt(std::numbers::pi * value); // d(2 sqrt(A/pi)) = dA / sqrt(pi A)
    } else {
        const double over = shape == Shape::Perimeter ? std::numbers::pi : 1.0;
        o.valueMm = value / over;
        slope = factor / over;
    }
    const double u = m.standardUncertainty.value_or(0.0) * slope;
    if (u > 0.0) o.standardUncertaintyMm = u;
}

enum class Kind { Ct, Flat, Volume, Xray, Unknown };

Kind kindOf(std::string_view sopClass, std::string_view modality) {
    constexpr std::string_view kImages = "1.2.840.10008.5.1.4.1.1.";
    if (modality == "CT") return Kind::Ct;
    if (modality == "XA" || modality == "RF") return Kind::Xray;
    if (sopClass.starts_with(kImages)) {
        const std::string_view tail = sopClass.substr(kImages.size());
        if (tail == "2" || tail.starts_with("2.")) return Kind::Ct;
        if (tail == "6.2") return Kind::Volume;
        if (tail.starts_with("3.") || tail == "3" || tail == "6" || tail == "6.1") return Kind::Flat;
        if (tail.starts_with("12.")) return Kind::Xray;
    }
    return modality == "US" ? Kind::Flat : Kind::Unknown;
}

class Reader {
public:
    explicit Reader(const ReadReport& report) : m_report(report) {
        for (const SourceImage& image : report.content.images)
            m_kinds[image.sopInstanceUid] = kindOf(image.sopClassUid, image.modality);
    }

    ReportReadings take() {
        for (const MeasurementGroup& group : m_report.content.groups)
            addGroup(group);
        return std::move(m_out);
    }

private:
    void addGroup(const MeasurementGroup& group) {
        const std::size_t first = m_out.readings.size();
        // What follows from a perimeter or an area comes last: the diameter itself goes before it.
        for (const bool derived : {false, true})
            for (const ReportMeasurement& m : group.measurements) {
                const Known* known = knownOf(m.name);
                const bool isDerived = known && (known->shape == Shape::Perimeter || known->shape == Shape::Area);
                if (isDerived == derived) add(group, m, known, first);
            }
    }

    void leave(const MeasurementGroup& group, const ReportMeasurement& m, LeftOut why) {
        m_out.leftOut.push_back({m.name.meaning.empty() ? m.name.value : m.name.meaning, group.trackingId, m.value,
                                 m.unit.value, why});
    }

    void add(const MeasurementGroup& group, const ReportMeasurement& m, const Known* known, std::size_t first) {
        if (m_report.ours && isPartOfReading(m)) return; // said with its reading
        const bool width = m_report.ours && m.name == codes::sct("103355008", "Width");
        if (!known && !width) return leave(group, m, LeftOut::UnknownQuantity);
        const Shape shape = known ? known->shape : Shape::Longest;
        const Site site = siteOf(group, m, known ? known->site : Site::None);
        if (site == Site::None && shape != Shape::Depth) return leave(group, m, LeftOut::PlaceNotStated);
        const auto quantity = quantityOf(shape, site);
        if (!quantity) return leave(group, m, LeftOut::UnknownQuantity);
        const auto factor = factorOf(m.unit, shape == Shape::Area);
        if (!factor) return leave(group, m, LeftOut::UnitUnknown);
        ReportReading out;
        core::Observation& o = out.reading.observation;
        o.quantity = *quantity;
        setValue(o, m, shape, *factor);
        if (!std::isfinite(o.valueMm) || o.valueMm < kLeastReadingMm || o.valueMm > kMostReadingMm)
            return leave(group, m, LeftOut::Implausible);
        if (shape == Shape::Perimeter || shape == Shape::Area) {
            const auto same = [&](const ReportReading& r) { return r.reading.observation.quantity == *quantity; };
            if (std::any_of(m_out.readings.begin() + static_cast<std::ptrdiff_t>(first), m_out.readings.end(), same))
                return leave(group, m, LeftOut::GivenOtherwise);
            out.assumed.push_back("computed");
        }
        if (!(m_report.ours ? setOurs(out, group, m) : setKind(out, group, m)))
            return leave(group, m, m_report.ours ? LeftOut::UnknownQuantity : LeftOut::ModalityNotStated);
        setCourse(out, group);
        out.tracking = group.trackingId;
        out.method = !m.method.empty() ? m.method : m.methodCode ? m.methodCode->meaning : std::string();
        out.observer = !group.author.empty()             ? group.author
                       : m_report.content.persons.empty() ? std::string()
                                                          : m_report.content.persons.front();
        out.time = m.time.empty() ? m_report.content.time : m.time;
        m_out.readings.push_back(std::move(out));
    }

    bool isPartOfReading(const ReportMeasurement& m) const { return m.name == codes::own("contour-per-view", ""); }

    /// Our own reports name the recorded value, or say in words what was typed in.
    bool setOurs(ReportReading& out, const MeasurementGroup& group, const ReportMeasurement& m) const {
        core::Observation& o = out.reading.observation;
        const auto colon = m.trackingId.find(':');
        if (colon == std::string::npos) return false;
        const std::string named = m.trackingId.substr(0, colon), id = m.trackingId.substr(colon + 1);
        if (named.starts_with("reading/")) return setTyped(out, group, m);
        core::RecordedValue value;
        value.group = named;
        value.id = id;
        value.estimate.value = m.value;
        const auto reading = core::readingOf({}, value);
        if (!reading || reading->quantity != o.quantity) return false;
        o.modality = reading->modality;
        o.derivation = reading->derivation;
        out.group = named;
        out.valueId = id;
        return true;
    }

    static bool setTyped(ReportReading& out, const MeasurementGroup& group, const ReportMeasurement& m) {
        core::Observation& o = out.reading.observation;
        bool found = false;
        for (const Quantity quantity : kQuantities)
            for (const Modality modality : kModalities)
                for (const Derivation derivation : kDerivations)
                    if (m.method == "typed in: " + std::string(core::plainName(quantity)) + ", " +
                                        std::string(core::plainName(modality)) + ", " +
                                        std::string(core::plainName(derivation))) {
                        o.quantity = quantity;
                        o.modality = modality;
                        o.derivation = derivation;
                        found = true;
                    }
        for (const ReportMeasurement& other : group.measurements)
            if (other.name == codes::own("contour-per-view", "")) o.contourPerView = other.value;
        for (const std::string& comment : group.comments) {
            if (comment == "Read on mixed beats.")
                out.reading.mixedBeats = true;
            else
                out.reading.note = comment;
        }
        return found;
    }

    static constexpr std::array kQuantities{
        Quantity::LandingZonePerimeterDerivedDiameter, Quantity::LandingZoneAreaDerivedDiameter,
        Quantity::LandingZoneLongestDiameter,          Quantity::OstiumPerimeterDerivedDiameter,
        Quantity::OstiumLongestDiameter,               Quantity::Depth};
    static constexpr std::array kModalities{Modality::Ct, Modality::Echo2d, Modality::Echo3d, Modality::Fluoroscopy};
    static constexpr std::array kDerivations{Derivation::Contour, Derivation::EllipseFromAngles,
                                             Derivation::LargestOfViews, Derivation::SingleView};

    Kind kindOfImages(const std::vector<FrameReference>& images) const {
        std::set<Kind> kinds;
        for (const FrameReference& image : images) {
            const auto found = m_kinds.find(image.sopInstanceUid);
            if (found != m_kinds.end() && found->second != Kind::Unknown) kinds.insert(found->second);
        }
        return kinds.size() == 1 ? *kinds.begin() : Kind::Unknown;
    }

    /// The nearest images that tell: the number's own, its region's, the group's, the report's; then the procedure.
    Kind kindFor(const MeasurementGroup& group, const ReportMeasurement& m) const {
        const auto ofRegions = [](const std::vector<PictureRegion>& regions) {
            std::vector<FrameReference> images;
            for (const PictureRegion& region : regions)
                images.push_back(region.image);
            return images;
        };
        std::vector<FrameReference> all;
        for (const SourceImage& image : m_report.content.images)
            all.push_back({image.sopInstanceUid, std::nullopt});
        for (const auto& images :
             {m.images, ofRegions(m.pictureRegions), group.images, ofRegions(group.pictureRegions), all})
            if (const Kind kind = kindOfImages(images); kind != Kind::Unknown) return kind;
        std::set<Kind> kinds;
        for (const Code& procedure : m_report.content.procedures) {
            if (procedure == codes::procedureCode("CT")) kinds.insert(Kind::Ct);
            if (procedure == codes::procedureCode("US")) kinds.insert(Kind::Flat);
        }
        return kinds.size() == 1 && all.empty() ? *kinds.begin() : Kind::Unknown;
    }

    bool setKind(ReportReading& out, const MeasurementGroup& group, const ReportMeasurement& m) const {
        core::Observation& o = out.reading.observation;
        const Kind kind = kindFor(group, m);
        if (kind == Kind::Unknown) return false;
        o.modality = kind == Kind::Ct     ? Modality::Ct
                     : kind == Kind::Xray ? Modality::Fluoroscopy
                     : kind == Kind::Flat ? Modality::Echo2d
                                          : Modality::Echo3d;
        o.derivation = Derivation::Contour;
        if (o.quantity == Quantity::Depth || kind == Kind::Ct || kind == Kind::Volume) return true;
        const bool isWidth =
            o.quantity == Quantity::LandingZoneLongestDiameter || o.quantity == Quantity::OstiumLongestDiameter;
        if (!isWidth) {
            // A perimeter or an area needs a section across the appendage: a volume's, not a flat view's.
            if (kind == Kind::Flat) o.modality = Modality::Echo3d;
            out.assumed.push_back("derivation");
            return true;
        }
        const bool isMaximum = m.derivation && (m.derivation->meaning == "Maximum" ||
                                                *m.derivation == codes::derivationCode(Derivation::LargestOfViews));
        o.derivation = isMaximum ? Derivation::LargestOfViews : Derivation::SingleView;
        if (!isMaximum) out.assumed.push_back("derivation");
        return true;
    }

    void setCourse(ReportReading& out, const MeasurementGroup& group) const {
        core::Observation& o = out.reading.observation;
        if (const auto stage = stageOf(group))
            o.stage = *stage;
        else
            out.assumed.push_back("stage");
        if (group.beatPhase)
            o.phase = *group.beatPhase == codes::kEndSystole || group.beatPhase->meaning == codes::kEndSystole.meaning
                          ? core::Phase::EndSystole
                          : core::Phase::Other;
        if (!group.pressure || (!group.pressure->meanMmHg && !group.pressure->vWaveMmHg)) return;
        core::Moment moment;
        moment.circulation.state = group.pressure->moment;
        moment.circulation.stage = o.stage;
        moment.circulation.meanPressureMmHg = group.pressure->meanMmHg;
        moment.circulation.vWaveMmHg = group.pressure->vWaveMmHg;
        moment.pressureUncertaintyMmHg = group.pressure->standardUncertaintyMmHg;
        out.moment = std::move(moment);
    }

    std::optional<core::Stage> stageOf(const MeasurementGroup& group) const {
        for (const core::Stage stage : core::kStages)
            if ((group.stageCode && *group.stageCode == codes::stageCode(stage)) ||
                (!group.stage.empty() && group.stage == core::plainName(stage)))
                return stage;
        const Code& title = m_report.content.title;
        if (title == codes::kBeforeProcedure) return core::Stage::BeforeProcedure;
        if (title == codes::kDuringProcedure) return core::Stage::BeforeRepair;
        if (title == codes::kAfterProcedure) return core::Stage::FollowUp;
        return std::nullopt;
    }

    const ReadReport& m_report;
    std::map<std::string, Kind> m_kinds;
    ReportReadings m_out;
};

} // namespace

ReportReadings readingsOf(const ReadReport& report) {
    return Reader(report).take();
}

} // namespace gauge::dicomio
