#include "dicomio/index/stage_proposal.h"

#include <algorithm>
#include <map>
#include <optional>
#include <set>
#include <string>

namespace gauge::dicomio {
namespace {

bool isCt(const SeriesEntry& series) {
    return series.kind == "ct" || series.kind == "ct-enhanced";
}

bool isEcho(const SeriesEntry& series) {
    return series.kind == "ultrasound";
}

/// Not plain radiographs, which share the kind.
bool isFluoroscopy(const SeriesEntry& series) {
    return series.kind == "x-ray" && (series.modality == "XA" || series.modality == "RF");
}

/// "2026-03-14": sorts as time does.
std::string dayOf(const AcquisitionTime& time) {
    return iso({time.year, time.month, time.day, {}, {}});
}

using Days = std::set<std::string>;

struct ProcedureDay {
    std::optional<std::string> day;
    std::optional<std::string> first; ///< of the days with echo or fluoroscopy
};

ProcedureDay procedureDay(const std::vector<SeriesEntry*>& ofPatient) {
    Days echo, fluoroscopy, both;
    for (const SeriesEntry* series : ofPatient) {
        if (!series->acquired) continue;
        if (isEcho(*series)) echo.insert(dayOf(*series->acquired));
        if (isFluoroscopy(*series)) fluoroscopy.insert(dayOf(*series->acquired));
    }
    std::set_intersection(echo.begin(), echo.end(), fluoroscopy.begin(), fluoroscopy.end(),
                          std::inserter(both, both.end()));
    ProcedureDay result;
    for (const Days* days : {&echo, &fluoroscopy})
        if (!days->empty() && (!result.first || *days->begin() < *result.first))
            result.first = *days->begin();
    const Days& candidates = fluoroscopy.empty() ? echo : fluoroscopy.size() > 1 ? both : fluoroscopy;
    if (candidates.size() == 1) result.day = *candidates.begin();
    return result;
}

StageProposal proposalFor(const SeriesEntry& series, const ProcedureDay& procedure) {
    const std::string day = dayOf(*series.acquired);
    if (!procedure.day) {
        if (isCt(series) && procedure.first && day < *procedure.first)
            return {core::Stage::BeforeProcedure, false,
                    "taken on " + day + ", before the first day with echo or fluoroscopy (" +
                        *procedure.first + ")"};
        return {};
    }
    const std::string& on = *procedure.day;
    if (day < on)
        return {core::Stage::BeforeProcedure, false,
                "taken on " + day + ", before the day of the procedure (" + on + ")"};
    if (day > on)
        return {core::Stage::FollowUp, false,
                "taken on " + day + ", after the day of the procedure (" + on + ")"};
    if (isCt(series)) return {};
    return {std::nullopt, true,
            "taken on the day of the procedure (" + on + "); whether before or after a repair is not known"};
}

} // namespace

void proposeStages(std::vector<SeriesEntry>& series) {
    std::map<std::string, std::vector<SeriesEntry*>> patients;
    for (SeriesEntry& each : series)
        patients[patientKey(each)].push_back(&each);
    for (const auto& [patient, ofPatient] : patients) {
        const ProcedureDay procedure = procedureDay(ofPatient);
        for (SeriesEntry* each : ofPatient)
            if (each->acquired && (isCt(*each) || isEcho(*each) || isFluoroscopy(*each)))
                each->stage = proposalFor(*each, procedure);
    }
}

} // namespace gauge::dicomio
