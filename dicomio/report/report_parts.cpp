#include "dicomio/report/report_parts.h"

#include "dicomio/report/report_codes.h"

#include <algorithm>

namespace gauge::dicomio {
namespace {

using core::ErrorCode;
using core::failure;
using core::Result;

bool isNamed(const ContentItem& item, const Code& name) {
    return item.name && *item.name == name;
}
bool isCode(const ContentItem& item, const Code& value) {
    return item.code && *item.code == value;
}

/// Codes of SRT (retired) for concepts that reports name by SCT today.
bool isSite(const ContentItem& item) {
    return isNamed(item, codes::kFindingSite) || isNamed(item, {"G-C0E3", "SRT", ""});
}
bool isMethod(const ContentItem& item) {
    return isNamed(item, codes::kMethod) || isNamed(item, {"G-C036", "SRT", ""});
}
bool isDeviation(const ContentItem& item) {
    return isNamed(item, codes::kStandardDeviation) || isNamed(item, codes::kStandardDeviationDcm) ||
           isNamed(item, {"R-10047", "SRT", ""});
}

std::optional<RegionKind> regionKind(const ContentItem& item, bool closed) {
    if (item.graphicType == "POINT") return RegionKind::Point;
    if (item.graphicType == "MULTIPOINT") return RegionKind::Points;
    if (item.graphicType == "POLYLINE")
        return closed && item.type == ValueType::Scoord ? RegionKind::Polygon : RegionKind::Polyline;
    if (item.graphicType == "POLYGON") return RegionKind::Polygon;
    if (item.graphicType == "ELLIPSE") return RegionKind::Ellipse;
    return std::nullopt; // circles and ellipsoids: nobody here draws them
}

template <class Point> void openAgain(std::vector<Point>& points, RegionKind kind) {
    if (kind == RegionKind::Polygon && points.size() > 1 && points.front() == points.back())
        points.pop_back();
}

FrameReference reference(const ContentItem& image, std::size_t which = 0) {
    FrameReference out{image.sopInstanceUid, {}};
    if (which < image.frames.size()) out.frame = image.frames[which] - 1;
    return out;
}

void addReferences(const ContentItem& image, std::vector<FrameReference>& to) {
    for (std::size_t i = 0; i < std::max<std::size_t>(image.frames.size(), 1); ++i)
        to.push_back(reference(image, i));
}

class TreeReader {
public:
    TreeReader(ReadReport& out, std::size_t& ignored) : m_out(out), m_ignored(ignored) {}

    Result<void> read(const ContentItem& root) {
        if (root.name) m_out.content.title = *root.name;
        for (const ContentItem& item : root.children)
            if (auto done = readTop(item); !done) return done;
        std::size_t numbers = 0;
        for (const MeasurementGroup& group : m_out.content.groups)
            numbers += group.measurements.size();
        if (numbers == 0)
            return failure(ErrorCode::ObjectUnsupported, "it holds no measurements (its title is \"" +
                                                             m_out.content.title.meaning + "\").");
        return {};
    }

private:
    ReportContent& content() { return m_out.content; }

    Result<void> readTop(const ContentItem& item) {
        if (item.type == ValueType::Container) {
            if (isNamed(item, codes::kImageLibrary))
                readLibrary(item, {});
            else
                return readMeasurements(item);
        } else if (item.relation == Relation::HasObsContext) {
            readObserver(item);
        } else if (isNamed(item, codes::kProcedureReported) && item.code) {
            content().procedures.push_back(*item.code);
        } else if (item.type == ValueType::Text) {
            (isNamed(item, codes::kWarning)   ? content().warnings
             : isNamed(item, codes::kCaution) ? content().cautions
                                              : content().conclusions)
                .push_back(item.text);
        } else if (!isNamed(item, codes::kLanguage)) {
            ++m_ignored;
        }
        return {};
    }

    void readObserver(const ContentItem& item) {
        if (item.type == ValueType::PName)
            content().persons.push_back(item.text);
        else if (isNamed(item, codes::kPersonOrganization))
            content().organization = item.text;
        else if (isNamed(item, codes::kDeviceUid))
            content().device.uid = item.text;
    }

    void readLibrary(const ContentItem& item, std::string modality) {
        for (const ContentItem& child : item.children) {
            if (isNamed(child, codes::kModality) && child.code) modality = child.code->value;
            if (child.type == ValueType::Container) readLibrary(child, modality);
            if (child.type != ValueType::Image) continue;
            for (SourceImage& image : content().images)
                if (image.sopInstanceUid == child.sopInstanceUid) image.modality = modality;
        }
    }

    /// Containers of measurements at any level; numbers outside a group make one of their container.
    Result<void> readMeasurements(const ContentItem& item) {
        if (isNamed(item, codes::kMeasurementGroup)) return readGroup(item);
        MeasurementGroup loose;
        loose.trackingId = item.name ? item.name->meaning : "measurements";
        for (const ContentItem& child : item.children) {
            if (child.type == ValueType::Container) {
                if (auto done = readMeasurements(child); !done) return done;
            } else if (auto done = readPart(child, loose); !done) {
                return done;
            }
        }
        if (!loose.measurements.empty() || !loose.findings.empty())
            content().groups.push_back(std::move(loose));
        return {};
    }

    Result<void> readGroup(const ContentItem& item) {
        MeasurementGroup group;
        for (const ContentItem& child : item.children)
            if (auto done = readPart(child, group); !done) return done;
        content().groups.push_back(std::move(group));
        return {};
    }

    Result<void> readPart(const ContentItem& item, MeasurementGroup& group) {
        if (item.relation == Relation::HasObsContext && item.type == ValueType::Num)
            return readPressure(item, group);
        switch (item.type) {
        case ValueType::Num:
            return readNumber(item, group);
        case ValueType::Image:
            addReferences(item, group.images);
            return {};
        case ValueType::Scoord:
            return readPicture(item, group.pictureRegions);
        case ValueType::Scoord3d:
            return readPatient(item, group.patientRegions);
        case ValueType::Text:
            readText(item, group);
            return {};
        case ValueType::Code:
            readCode(item, group);
            return {};
        case ValueType::PName:
            if (isNamed(item, codes::kPersonName)) group.author = item.text;
            return {};
        case ValueType::UidRef:
            if (isNamed(item, codes::kTrackingUid))
                group.trackingUid = item.text;
            else
                ++m_ignored;
            return {};
        default:
            ++m_ignored;
            return {};
        }
    }

    void readText(const ContentItem& item, MeasurementGroup& group) {
        if (isNamed(item, codes::kTrackingId))
            group.trackingId = item.text;
        else if (isNamed(item, codes::kTimePoint))
            group.stage = item.text;
        else if (isNamed(item, codes::kImagePhase))
            group.phase = item.text;
        else if (isNamed(item, codes::kMoment))
            pressureOf(group).moment = item.text;
        else if (isNamed(item, codes::kComment))
            group.comments.push_back(item.text);
        else if (isNamed(item, codes::kPersonOrganization))
            return;
        else
            group.findings.push_back({item.name.value_or(Code{}), {}, item.text});
    }

    void readCode(const ContentItem& item, MeasurementGroup& group) {
        if (!item.code) {
            ++m_ignored;
            return;
        }
        if (isNamed(item, codes::kFinding))
            group.finding = item.code;
        else if (isSite(item))
            group.sites.push_back(*item.code);
        else if (isNamed(item, codes::kTimePointType))
            group.stageCode = item.code;
        else if (isNamed(item, codes::kBeatPhase))
            group.beatPhase = item.code;
        else if (isNamed(item, codes::kObserverType))
            return;
        else
            group.findings.push_back({item.name.value_or(Code{}), item.code, {}});
    }

    static ReportPressure& pressureOf(MeasurementGroup& group) {
        if (!group.pressure) group.pressure.emplace();
        return *group.pressure;
    }

    Result<void> readPressure(const ContentItem& item, MeasurementGroup& group) {
        const bool mean = isNamed(item, codes::kMeanPressure), peak = isNamed(item, codes::kVWave);
        if ((!mean && !peak) || !item.number || !isCode(item, codes::unitCode("mmHg"))) {
            ++m_ignored;
            return {};
        }
        (mean ? pressureOf(group).meanMmHg : pressureOf(group).vWaveMmHg) = item.number;
        for (const ContentItem& child : item.children)
            if (mean && child.type == ValueType::Num && isDeviation(child))
                pressureOf(group).standardUncertaintyMmHg = child.number;
        return {};
    }

    Result<void> readNumber(const ContentItem& item, MeasurementGroup& group) {
        if (!item.name)
            return failure(ErrorCode::AttributeInvalid, "a number has no concept name (0040,A043).");
        if (!item.number) { // not obtained
            ++m_ignored;
            return {};
        }
        if (!item.code || item.code->value.empty())
            return failure(ErrorCode::AttributeInvalid,
                           "\"" + item.name->meaning +
                               "\" has no unit (MeasurementUnitsCodeSequence (0040,08EA)).");
        ReportMeasurement m;
        m.name = *item.name;
        m.value = *item.number;
        m.unit = *item.code;
        m.time = isoTime(item.observationTime);
        for (const ContentItem& child : item.children)
            if (auto done = readProperty(child, m); !done) return done;
        group.measurements.push_back(std::move(m));
        return {};
    }

    Result<void> readProperty(const ContentItem& item, ReportMeasurement& m) {
        const bool part = item.name && item.name->scheme == codes::kPrivateScheme &&
                          item.name->value.starts_with(codes::kPartPrefix);
        if (item.type == ValueType::Image)
            addReferences(item, m.images);
        else if (item.type == ValueType::Scoord)
            return readPicture(item, m.pictureRegions);
        else if (isNamed(item, codes::kTrackingId))
            m.trackingId = item.text;
        else if (isNamed(item, codes::kTrackingUid))
            m.trackingUid = item.text;
        else if (isNamed(item, codes::kMethodWords))
            m.method = item.text;
        else if (isMethod(item))
            m.methodCode = item.code;
        else if (isNamed(item, codes::kDerivation))
            m.derivation = item.code;
        else if (isSite(item))
            m.site = item.code;
        else if (item.type == ValueType::Num && (isDeviation(item) || part))
            return readDeviation(item, part, m);
        else
            ++m_ignored;
        return {};
    }

    Result<void> readDeviation(const ContentItem& item, bool part, ReportMeasurement& m) {
        if (!item.number) return {};
        if (!item.code || !(*item.code == m.unit))
            return failure(ErrorCode::AttributeInvalid, "the standard deviation of \"" + m.name.meaning +
                                                            "\" is in another unit (" +
                                                            (item.code ? item.code->value : "none") +
                                                            ") than the number (" + m.unit.value + ").");
        if (part)
            m.uncertaintyParts.push_back({item.name->value.substr(codes::kPartPrefix.size()), *item.number});
        else
            m.standardUncertainty = item.number;
        return {};
    }

    Result<void> readPicture(const ContentItem& item, std::vector<PictureRegion>& to) {
        PictureRegion region;
        for (std::size_t i = 0; i + 1 < item.graphicData.size(); i += 2)
            region.points.emplace_back(item.graphicData[i] - 0.5, item.graphicData[i + 1] - 0.5);
        const bool closed = region.points.size() > 3 && region.points.front() == region.points.back();
        const auto kind = regionKind(item, closed);
        const auto image = std::find_if(item.children.begin(), item.children.end(),
                                        [](const ContentItem& c) { return c.type == ValueType::Image; });
        if (!kind || image == item.children.end()) {
            ++m_ignored;
            return {};
        }
        region.kind = *kind;
        openAgain(region.points, region.kind);
        region.image = reference(*image);
        to.push_back(std::move(region));
        return {};
    }

    Result<void> readPatient(const ContentItem& item, std::vector<PatientRegion>& to) {
        PatientRegion region;
        region.frameOfReferenceUid = item.frameOfReferenceUid;
        if (region.frameOfReferenceUid.empty())
            return failure(ErrorCode::AttributeInvalid,
                           "a region in the patient has no frame of reference (3006,0024).");
        for (std::size_t i = 0; i + 2 < item.graphicData.size(); i += 3)
            region.points.push_back(
                {Eigen::Vector3d(item.graphicData[i], item.graphicData[i + 1], item.graphicData[i + 2])});
        const auto kind = regionKind(item, false);
        if (!kind) {
            ++m_ignored;
            return {};
        }
        region.kind = *kind;
        openAgain(region.points, region.kind);
        to.push_back(std::move(region));
        return {};
    }

    ReadReport& m_out;
    std::size_t& m_ignored;
};

bool usesOwnCodes(const ReportContent& content) {
    for (const MeasurementGroup& group : content.groups) {
        if (group.stageCode && group.stageCode->scheme == codes::kPrivateScheme) return true;
        for (const ReportMeasurement& m : group.measurements)
            if (m.name.scheme == codes::kPrivateScheme || m.unit.scheme == codes::kPrivateScheme) return true;
    }
    return !content.cautions.empty();
}

} // namespace

core::Result<void> readTree(const ContentItem& root, ReadReport& out, std::size_t& ignored) {
    if (auto done = TreeReader(out, ignored).read(root); !done) return done;
    out.ours = out.content.device.manufacturer == "Ostium Gauge" && usesOwnCodes(out.content);
    return {};
}

std::vector<ReportRow> rowsOf(const ReadReport& report) {
    std::vector<ReportRow> rows;
    const std::string everyone =
        report.content.persons.empty() ? std::string() : report.content.persons.front();
    int number = 0;
    for (const MeasurementGroup& group : report.content.groups) {
        ++number;
        std::string sites;
        for (const Code& site : group.sites)
            sites.append(sites.empty() ? "" : ", ").append(site.meaning);
        for (const ReportMeasurement& m : group.measurements) {
            ReportRow row;
            row.group = group.trackingId.empty() ? std::to_string(number) : group.trackingId;
            row.name = m.name;
            row.site = m.site ? m.site->meaning : sites;
            row.value = m.value;
            row.unit = m.unit;
            row.standardUncertainty = m.standardUncertainty;
            row.method = !m.method.empty() ? m.method : m.methodCode ? m.methodCode->meaning : std::string();
            row.derivation = m.derivation ? m.derivation->meaning : std::string();
            row.stage = group.stage;
            row.phase = !group.phase.empty() ? group.phase
                        : group.beatPhase    ? group.beatPhase->meaning
                                             : std::string();
            row.observer = group.author.empty() ? everyone : group.author;
            row.time = m.time.empty() ? report.content.time : m.time;
            rows.push_back(std::move(row));
        }
    }
    return rows;
}

} // namespace gauge::dicomio
