// Parts of a report made from parts of a record, one maker for each kind. Private to report_from_record.
#pragma once

#include "dicomio/report/report_from_record.h"

#include <map>
#include <set>
#include <string>

namespace gauge::dicomio {

/// Makes groups and remembers which images they refer to.
class GroupMaker {
public:
    GroupMaker(const core::CaseRecord& record, const ReportSources& sources);

    std::vector<MeasurementGroup> make();
    /// Images that the groups refer to, in the order of the sources.
    std::vector<SourceImage> used() const;
    const std::vector<std::string>& authors() const { return m_authors; }
    std::size_t staleValues() const { return m_stale; }
    std::size_t unmeasuredValues() const { return m_unmeasured; }
    std::size_t regionsLeftOut() const { return m_regionsLeftOut; }

private:
    MeasurementGroup started(const std::string& trackingId) const;
    /// Words and code, where the group has none yet.
    void setStage(MeasurementGroup& group, core::Stage stage) const;
    void setMoment(MeasurementGroup& group, const std::string& moment) const;
    void setEvidence(MeasurementGroup& group, const std::string& id) const;
    std::optional<FrameReference> imageOf(const std::string& uid, std::optional<int> frame);
    void addImages(MeasurementGroup& group, const core::Provenance& provenance);

    void leaveOutUnusable(MeasurementGroup& group);

    void addValues();
    MeasurementGroup& groupOf(const core::RecordedValue& value);
    ReportMeasurement measurementOf(const core::RecordedValue& value, const MeasurementGroup& group);
    MeasurementGroup& groupNamed(const std::string& trackingId);
    void addContours();
    void addDrawings();
    void addMarks();
    void addScales();
    void addMoments();
    void addReadings();
    void addRelease();
    void addStasis();
    void addSizing();
    void addScores();
    ReportMeasurement number(const MeasurementGroup& group, const Code& name, double value,
                             std::string_view unit, const std::string& key) const;

    const core::CaseRecord& m_record;
    const ReportSources& m_sources;
    std::map<std::string, const SourceImage*> m_known;
    std::set<std::string> m_used;
    std::vector<MeasurementGroup> m_groups;
    std::map<std::string, std::size_t> m_places; ///< by section and provenance
    std::vector<std::string> m_authors;
    std::size_t m_stale = 0;
    std::size_t m_unmeasured = 0; ///< values that are no finite number
    std::size_t m_regionsLeftOut = 0;
};

} // namespace gauge::dicomio
