#include "dicomio/report/report_tree.h"

#include "dicomio/report/report_codes.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace gauge::dicomio {
namespace {

using core::ErrorCode;
using core::failure;
using core::Result;

std::string_view graphicWord(RegionKind kind, bool inPatient) {
    switch (kind) {
    case RegionKind::Point:
        return "POINT";
    case RegionKind::Points:
        return "MULTIPOINT";
    case RegionKind::Polyline:
        return "POLYLINE";
    case RegionKind::Polygon:
        return inPatient ? "POLYGON" : "POLYLINE"; // a closed one
    case RegionKind::Ellipse:
        return "ELLIPSE";
    }
    return "POINT";
}

class TreeMaker {
public:
    explicit TreeMaker(const ReportContent& content) : m_content(content) {
        for (const SourceImage& image : content.images)
            m_images.emplace(image.sopInstanceUid, &image);
    }

    Result<ContentItem> make() {
        if (auto fault = checkHead()) return tl::unexpected(*fault);
        ContentItem root = container(Relation::Root, m_content.title, "1500");
        addLanguage(root);
        addObservers(root);
        for (const Code& procedure : m_content.procedures)
            root.add(codeItem(Relation::HasConceptMod, codes::kProcedureReported, procedure));
        addImageLibrary(root);
        ContentItem measurements = container(Relation::Contains, codes::kImagingMeasurements);
        for (const MeasurementGroup& group : m_content.groups) {
            auto item = groupItem(group);
            if (!item) return tl::unexpected(item.error());
            measurements.add(std::move(*item));
        }
        root.add(std::move(measurements));
        addWords(root, codes::kConclusion, m_content.conclusions);
        addWords(root, codes::kWarning, m_content.warnings);
        addWords(root, codes::kCaution, m_content.cautions);
        return root;
    }

private:
    using Fault = std::optional<core::Error>;

    static core::Error fault(const std::string& finding) {
        return {ErrorCode::InvalidArgument, "Cannot write the structured report: " + finding, {}, {}};
    }

    Fault checkHead() const {
        if (m_content.study.studyUid.empty()) return fault("its study has no UID.");
        if (m_content.title.value.empty()) return fault("it has no title.");
        if (dicomTime(m_content.time).dateTime().empty())
            return fault("its time \"" + m_content.time + "\" is no ISO 8601 date and time.");
        if (m_content.procedures.empty()) return fault("it names no procedure that it reports on.");
        if (m_content.groups.empty()) return fault("it holds no measurement. Measure something first.");
        for (const SourceImage& image : m_content.images)
            if (image.studyUid.empty() || image.seriesUid.empty() || image.sopClassUid.empty() ||
                image.sopInstanceUid.empty())
                return fault("image " + image.sopInstanceUid + " lacks its study, series or kind.");
        return std::nullopt;
    }

    static void addWords(ContentItem& root, const Code& name, const std::vector<std::string>& texts) {
        for (const std::string& text : texts)
            if (!text.empty()) root.add(textItem(Relation::Contains, name, text));
    }

    static void addLanguage(ContentItem& root) { // TID 1204
        root.add(codeItem(Relation::HasConceptMod, codes::kLanguage, codes::kEnglish))
            .add(codeItem(Relation::HasConceptMod, codes::kCountry, codes::kBritain));
    }

    void addPerson(ContentItem& parent, const std::string& name) const { // TID 1002, 1003
        parent.add(codeItem(Relation::HasObsContext, codes::kObserverType, codes::kPerson));
        parent.add(nameItem(Relation::HasObsContext, codes::kPersonName, name));
        if (!m_content.organization.empty())
            parent.add(textItem(Relation::HasObsContext, codes::kPersonOrganization, m_content.organization));
    }

    void addObservers(ContentItem& root) const { // TID 1001
        for (const std::string& person : m_content.persons)
            addPerson(root, person);
        const ReportDevice& device = m_content.device;
        root.add(codeItem(Relation::HasObsContext, codes::kObserverType, codes::kDevice));
        root.add(uidItem(Relation::HasObsContext, codes::kDeviceUid, device.uid));
        root.add(textItem(Relation::HasObsContext, codes::kDeviceName,
                          device.model + " " + device.softwareVersion));
        root.add(textItem(Relation::HasObsContext, codes::kDeviceManufacturer, device.manufacturer));
        root.add(textItem(Relation::HasObsContext, codes::kDeviceModel, device.model));
        root.add(textItem(Relation::HasObsContext, codes::kDeviceSerial, device.serialNumber));
    }

    ContentItem imageItem(Relation relation, const Code* name, const FrameReference& reference) const {
        ContentItem item;
        item.relation = relation;
        item.type = ValueType::Image;
        if (name != nullptr) item.name = *name;
        const SourceImage& image = *m_images.at(reference.sopInstanceUid);
        item.sopClassUid = image.sopClassUid;
        item.sopInstanceUid = image.sopInstanceUid;
        if (reference.frame) item.frames = {*reference.frame + 1};
        return item;
    }

    void addImageLibrary(ContentItem& root) const { // TID 1600, a group for each series
        if (m_content.images.empty()) return;
        ContentItem library = container(Relation::Contains, codes::kImageLibrary, "1600");
        std::vector<std::string> series;
        for (const SourceImage& image : m_content.images)
            if (std::find(series.begin(), series.end(), image.seriesUid) == series.end())
                series.push_back(image.seriesUid);
        for (const std::string& uid : series) {
            ContentItem group = container(Relation::Contains, codes::kImageLibraryGroup);
            for (const SourceImage& image : m_content.images) {
                if (image.seriesUid != uid) continue;
                if (group.children.empty())
                    group.add(codeItem(Relation::HasAcqContext, codes::kModality,
                                       codes::modalityCode(image.modality)));
                group.add(imageItem(Relation::Contains, nullptr, {image.sopInstanceUid, {}}));
            }
            library.add(std::move(group));
        }
        root.add(std::move(library));
    }

    Fault known(const FrameReference& reference, const std::string& where) const {
        if (m_images.count(reference.sopInstanceUid) == 0)
            return fault(where + " refers to image " + reference.sopInstanceUid +
                         ", which is not among the report's images.");
        if (reference.frame && *reference.frame < 0)
            return fault(where + " refers to frame " + std::to_string(*reference.frame) +
                         "; frames count from 0.");
        return std::nullopt;
    }

    Fault addPictureRegion(ContentItem& parent, Relation relation, const Code& name,
                           const PictureRegion& region, const std::string& where) const {
        if (!fits(region.kind, region.points.size()))
            return fault(where + " has a region with " + std::to_string(region.points.size()) +
                         " points, which are too few or too many.");
        if (auto bad = known(region.image, where)) return bad;
        ContentItem item;
        item.relation = relation;
        item.type = ValueType::Scoord;
        item.name = name;
        item.graphicType = graphicWord(region.kind, false);
        for (const Eigen::Vector2d& p : region.points) {
            if (!p.allFinite())
                return fault(where + " has a region with a coordinate that is no finite number.");
            item.graphicData.push_back(p.x() + 0.5); // the corner of the first pixel is the origin
            item.graphicData.push_back(p.y() + 0.5);
        }
        if (region.kind == RegionKind::Polygon)
            item.graphicData.insert(item.graphicData.end(), {item.graphicData[0], item.graphicData[1]});
        item.add(imageItem(Relation::SelectedFrom, &codes::kSourceImage, region.image));
        parent.add(std::move(item));
        return std::nullopt;
    }

    static Fault addPatientRegion(ContentItem& parent, const PatientRegion& region,
                                  const std::string& where) {
        if (!fits(region.kind, region.points.size()))
            return fault(where + " has a region with " + std::to_string(region.points.size()) +
                         " points, which are too few or too many.");
        if (region.frameOfReferenceUid.empty())
            return fault(where + " has a region in the patient without frame of reference.");
        ContentItem item;
        item.relation = Relation::Contains;
        item.type = ValueType::Scoord3d;
        item.name = codes::kImageRegion;
        item.graphicType = graphicWord(region.kind, true);
        item.frameOfReferenceUid = region.frameOfReferenceUid;
        const auto put = [&](const core::PatientPoint& p) {
            item.graphicData.insert(item.graphicData.end(), p.mm.data(), p.mm.data() + 3);
        };
        for (const core::PatientPoint& p : region.points) {
            if (!p.mm.allFinite())
                return fault(where + " has a region with a coordinate that is no finite number.");
            put(p);
        }
        if (region.kind == RegionKind::Polygon) put(region.points.front());
        parent.add(std::move(item));
        return std::nullopt;
    }

    static void addDeviation(ContentItem& number, std::optional<double> deviation,
                             const Code& unit) { // TID 311
        if (deviation)
            number.add(numItem(Relation::HasProperties, codes::kStandardDeviation, *deviation, unit));
    }

    /// Pressures that hold for a group, as its observation context.
    static Fault addPressure(ContentItem& group, const ReportPressure& pressure, const std::string& where) {
        const Code unit = codes::unitCode("mmHg");
        for (const auto& number : {pressure.meanMmHg, pressure.vWaveMmHg, pressure.standardUncertaintyMmHg})
            if (number && !std::isfinite(*number))
                return fault(where + " has a pressure that is no finite number.");
        if (!pressure.moment.empty())
            group.add(textItem(Relation::HasObsContext, codes::kMoment, pressure.moment));
        if (pressure.meanMmHg) {
            ContentItem& item =
                group.add(numItem(Relation::HasObsContext, codes::kMeanPressure, *pressure.meanMmHg, unit));
            item.add(codeItem(Relation::HasConceptMod, codes::kFindingSite, codes::kLeftAtrium));
            addDeviation(item, pressure.standardUncertaintyMmHg, unit);
        }
        if (pressure.vWaveMmHg) {
            ContentItem& item =
                group.add(numItem(Relation::HasObsContext, codes::kVWave, *pressure.vWaveMmHg, unit));
            item.add(codeItem(Relation::HasConceptMod, codes::kFindingSite, codes::kLeftAtrium));
        }
        return std::nullopt;
    }

    Fault checkNumbers(const ReportMeasurement& m, const std::string& where) const {
        const std::string what = where + ", " + m.name.meaning + ",";
        if (m.name.value.empty() || m.name.scheme.empty())
            return fault(where + " holds a number without a code for what it is.");
        if (m.unit.value.empty() || m.unit.scheme.empty()) return fault(what + " has no unit.");
        bool finite = std::isfinite(m.value) && std::isfinite(m.standardUncertainty.value_or(0.0));
        for (const UncertaintyPart& part : m.uncertaintyParts)
            finite = finite && std::isfinite(part.value);
        if (!finite) return fault(what + " is no finite number, or its uncertainty is not.");
        if (m.standardUncertainty.value_or(0.0) < 0.0) return fault(what + " has a negative uncertainty.");
        return std::nullopt;
    }

    Fault addMeasurement(ContentItem& group, const ReportMeasurement& m,
                         const std::string& where) const { // TID 300
        if (auto bad = checkNumbers(m, where)) return bad;
        ContentItem item = numItem(Relation::Contains, m.name, m.value, m.unit);
        item.observationTime = dicomTime(m.time).dateTime();
        if (!m.trackingId.empty())
            item.add(textItem(Relation::HasObsContext, codes::kTrackingId, m.trackingId));
        if (!m.trackingUid.empty())
            item.add(uidItem(Relation::HasObsContext, codes::kTrackingUid, m.trackingUid));
        if (m.methodCode) item.add(codeItem(Relation::HasConceptMod, codes::kMethod, *m.methodCode));
        if (!m.method.empty()) item.add(textItem(Relation::HasConceptMod, codes::kMethodWords, m.method));
        if (m.derivation) item.add(codeItem(Relation::HasConceptMod, codes::kDerivation, *m.derivation));
        if (m.site) item.add(codeItem(Relation::HasConceptMod, codes::kFindingSite, *m.site));
        addDeviation(item, m.standardUncertainty, m.unit);
        for (const UncertaintyPart& part : m.uncertaintyParts) {
            const Code name{std::string(codes::kPartPrefix) + part.name, std::string(codes::kPrivateScheme),
                            "Part of the standard deviation: " + part.name};
            item.add(numItem(Relation::HasProperties, name, part.value, m.unit));
        }
        for (const FrameReference& image : m.images) {
            if (auto bad = known(image, where)) return bad;
            item.add(imageItem(Relation::InferredFrom, &codes::kSourceOfMeasurement, image));
        }
        for (const PictureRegion& region : m.pictureRegions)
            if (auto bad = addPictureRegion(item, Relation::InferredFrom, codes::kSourceOfMeasurement, region,
                                            where))
                return bad;
        group.add(std::move(item));
        return std::nullopt;
    }

    void addContext(ContentItem& item, const MeasurementGroup& group) const {
        item.add(textItem(Relation::HasObsContext, codes::kTrackingId, group.trackingId));
        item.add(uidItem(Relation::HasObsContext, codes::kTrackingUid, group.trackingUid));
        if (!group.author.empty()) addPerson(item, group.author);
        if (!group.stage.empty())
            item.add(textItem(Relation::HasObsContext, codes::kTimePoint, group.stage)); // TID 1502
        if (group.stageCode)
            item.add(codeItem(Relation::HasObsContext, codes::kTimePointType, *group.stageCode));
        if (group.finding) item.add(codeItem(Relation::Contains, codes::kFinding, *group.finding));
        for (const Code& site : group.sites)
            item.add(codeItem(Relation::HasConceptMod, codes::kFindingSite, site));
        if (group.beatPhase) item.add(codeItem(Relation::HasConceptMod, codes::kBeatPhase, *group.beatPhase));
        if (!group.phase.empty())
            item.add(textItem(Relation::HasObsContext, codes::kImagePhase, group.phase));
    }

    Fault addRegions(ContentItem& item, const MeasurementGroup& group, const std::string& where) const {
        for (const PictureRegion& region : group.pictureRegions)
            if (auto bad = addPictureRegion(item, Relation::Contains, codes::kImageRegion, region, where))
                return bad;
        for (const PatientRegion& region : group.patientRegions)
            if (auto bad = addPatientRegion(item, region, where)) return bad;
        return std::nullopt;
    }

    Result<ContentItem> groupItem(const MeasurementGroup& group) const {
        const std::string where = "group \"" + group.trackingId + "\"";
        if (group.trackingId.empty() || group.trackingUid.empty())
            return tl::unexpected(fault(where + " lacks its tracking identifier or UID."));
        // TID 1410 is for exactly one region, TID 1501 for anything.
        const bool planar = group.pictureRegions.size() + group.patientRegions.size() == 1;
        ContentItem item = container(Relation::Contains, codes::kMeasurementGroup, planar ? "1410" : "1501");
        addContext(item, group);
        if (group.pressure)
            if (auto bad = addPressure(item, *group.pressure, where)) return tl::unexpected(*bad);
        for (const FrameReference& image : group.images) {
            if (auto bad = known(image, where)) return tl::unexpected(*bad);
            item.add(imageItem(Relation::Contains, &codes::kSource, image));
        }
        if (auto bad = addRegions(item, group, where)) return tl::unexpected(*bad);
        for (const ReportMeasurement& measurement : group.measurements)
            if (auto bad = addMeasurement(item, measurement, where)) return tl::unexpected(*bad);
        for (const ReportFinding& finding : group.findings)
            item.add(finding.value ? codeItem(Relation::Contains, finding.name, *finding.value)
                                   : textItem(Relation::Contains, finding.name, finding.text));
        addWords(item, codes::kComment, group.comments);
        return item;
    }

    const ReportContent& m_content;
    std::map<std::string, const SourceImage*> m_images;
};

} // namespace

bool fits(RegionKind kind, std::size_t points) {
    switch (kind) {
    case RegionKind::Point:
        return points == 1;
    case RegionKind::Points:
        return points >= 1;
    case RegionKind::Polyline:
        return points >= 2;
    case RegionKind::Polygon:
        return points >= 3;
    case RegionKind::Ellipse:
        return points == 4;
    }
    return false;
}

bool hasPatientRegions(const ReportContent& content) {
    return std::any_of(content.groups.begin(), content.groups.end(),
                       [](const MeasurementGroup& g) { return !g.patientRegions.empty(); });
}

core::Result<ContentItem> reportTree(const ReportContent& content) {
    return TreeMaker(content).make();
}

} // namespace gauge::dicomio
