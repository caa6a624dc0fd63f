#include "dicomio/report/report_from_record.h"

#include "dicomio/report/content_item.h"
#include "dicomio/report/report_codes.h"
#include "dicomio/report/report_groups.h"

#include <algorithm>

namespace gauge::dicomio {
namespace {

using core::ErrorCode;
using core::failure;

std::optional<core::Stage> latestStage(const core::CaseRecord& record) {
    std::optional<core::Stage> latest;
    const auto see = [&](core::Stage stage) { latest = latest ? std::max(*latest, stage) : stage; };
    if (record.images) see(core::Stage::BeforeProcedure);
    for (const auto& [id, entry] : record.evidence)
        see(entry.content.stage);
    for (const auto& [id, entry] : record.moments)
        see(entry.content.circulation.stage);
    for (const auto& [id, entry] : record.readings)
        see(entry.content.observation.stage);
    for (const auto& [id, entry] : record.release)
        see(entry.content.stage);
    for (const auto& [id, entry] : record.stasis)
        see(entry.content.stage);
    return latest;
}

std::vector<Code> proceduresOf(const std::vector<SourceImage>& images) {
    std::vector<Code> out;
    for (const SourceImage& image : images) {
        const Code code = codes::procedureCode(image.modality);
        if (std::find(out.begin(), out.end(), code) == out.end()) out.push_back(code);
    }
    if (out.empty()) out.push_back(codes::procedureCode({}));
    return out;
}

void addPerson(std::vector<std::string>& persons, const std::string& name) {
    if (!name.empty() && std::find(persons.begin(), persons.end(), name) == persons.end())
        persons.push_back(name);
}

std::string counted(std::size_t n, const char* one, const char* many) {
    return std::to_string(n) + (n == 1 ? one : many);
}

/// Dates and sexes that are none are as good as unknown; DICOM has no place for them.
std::string dateOrNothing(const std::string& text) {
    return text.size() == 8 && text.find_first_not_of("0123456789") == std::string::npos ? text
                                                                                         : std::string();
}
std::string sexOrNothing(const std::string& text) {
    return text == "F" || text == "M" || text == "O" ? text : std::string();
}

core::Result<ReportPatient> patientOf(const core::CaseRecord& record, const ReportSources& sources) {
    if (!record.patient) return sources.imagePatient;
    const core::Patient& patient = record.patient->content;
    const ReportPatient& images = sources.imagePatient;
    if (!patient.id.empty() && !images.id.empty() && patient.id != images.id)
        return failure(
            ErrorCode::InvalidArgument,
            "Cannot make the report of the case: the case and its images name different patient IDs. "
            "Choose the folder with the images of this case.");
    return ReportPatient{patient.name, patient.id, images.issuerOfId, dateOrNothing(patient.birthDate),
                         sexOrNothing(patient.sex)};
}

void addDecision(const core::CaseRecord& record, const ReportSources& sources, ReportContent& out) {
    if (!record.decision) return;
    const core::Decision& decision = record.decision->content;
    if (!decision.text.empty()) out.conclusions.push_back(decision.text);
    if (!decision.size.empty()) out.conclusions.push_back("Size decided on: " + decision.size);
    if (decision.signedBy.empty()) return;
    addPerson(out.persons, decision.signedBy);
    out.signature = ReportSignature{decision.signedBy, sources.organization, decision.time};
}

} // namespace

core::Result<ReportContent> reportFromRecord(const core::CaseRecord& record, const ReportSources& sources) {
    if (sources.study.studyUid.empty())
        return failure(ErrorCode::InvalidArgument,
                       "Cannot make the report of the case: the study that it becomes part of has no UID.");
    if (dicomTime(sources.time).time.empty())
        return failure(ErrorCode::InvalidArgument, "Cannot make the report of the case: its time \"" +
                                                       sources.time + "\" is no ISO 8601 date and time.");
    ReportContent out;
    out.title = codes::titleOf(latestStage(record));
    out.time = sources.time;
    out.study = sources.study;
    out.device = sources.device;
    out.organization = sources.organization;
    auto patient = patientOf(record, sources);
    if (!patient) return tl::unexpected(patient.error());
    out.patient = std::move(*patient);
    GroupMaker maker(record, sources);
    out.groups = maker.make();
    out.images = maker.used();
    out.procedures = proceduresOf(out.images);
    for (const std::string& author : maker.authors())
        addPerson(out.persons, author);
    addDecision(record, sources, out);
    out.warnings = sources.warnings;
    if (maker.staleValues() > 0)
        out.warnings.push_back(counted(maker.staleValues(), " value is", " values are") +
                               " left out: something that it was measured from has been changed since.");
    if (maker.unmeasuredValues() > 0)
        out.warnings.push_back(counted(maker.unmeasuredValues(), " value is", " values are") +
                               " left out: no number was measured.");
    if (maker.regionsLeftOut() > 0)
        out.warnings.push_back(
            counted(maker.regionsLeftOut(), " drawing or point is", " drawings or points are") +
            " told without its place: its image or the frame of reference of the CT is not at hand, or it "
            "is not drawn to its end.");
    if (!out.signature) out.warnings.push_back("The decision is not signed: this report is a draft.");
    out.cautions = sources.cautions;
    return out;
}

} // namespace gauge::dicomio
