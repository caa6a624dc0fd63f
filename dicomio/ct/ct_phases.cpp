#include "dicomio/ct/ct_phases.h"

#include "dicomio/ct/ct_reader.h"

namespace gauge::dicomio {

core::Result<std::unique_ptr<core::PhaseSet>> openCtPhases(const SeriesEntry& series,
                                                           const core::PhaseSetOptions& options) {
    if (series.kind != "ct" && series.kind != "ct-enhanced")
        return core::failure(core::ErrorCode::ObjectUnsupported,
                             "Series " + series.seriesUid + " is no CT series but " + series.kind + ".",
                             {{"series", series.seriesUid}});
    const auto shared = std::make_shared<const SeriesEntry>(series);
    return core::PhaseSet::make(
        phaseInfos(series),
        [shared](std::size_t phase, const core::WorkContext& work) -> core::Result<core::LoadedPhase> {
            auto ct = readCtPhase(*shared, phase, work);
            if (!ct) return tl::make_unexpected(std::move(ct.error()));
            return core::LoadedPhase{std::move(ct->volume), std::move(ct->sopInstanceUids),
                                     std::move(ct->notices)};
        },
        options);
}

} // namespace gauge::dicomio
