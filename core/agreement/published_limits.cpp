#include "core/agreement/published_limits.h"

#include "core/pressure/prepared_readings.h"

namespace gauge::core {

const std::vector<PublishedDifference>& publishedDifferences() {
    static const std::vector<PublishedDifference> kDifferences = {
        {Modality::Echo2d, -2.3, 2.1, 46, Basis::Computed,
         "from limits of agreement of orifice areas against 64-slice CT (Nucifora 2011), as area-derived diameters near 20 mm"},
        {Modality::Echo3d, -0.2, 1.3, 46, Basis::Computed,
         "from limits of agreement of orifice areas against 64-slice CT (Nucifora 2011), as area-derived diameters near 20 mm"},
    };
    return kDifferences;
}

const std::vector<ObserverSpread>& observerSpreads() {
    static const std::string kWords = "working value, order of magnitude only; no landing-zone figure was found in a text read";
    static const std::vector<ObserverSpread> kSpreads = {
        {Modality::Ct, 1.0, 1.5, Basis::Memory, kWords},
        {Modality::Echo3d, 1.5, 2.0, Basis::Memory, kWords},
        {Modality::Echo2d, 2.0, 2.5, Basis::Memory, kWords},
    };
    return kSpreads;
}

std::optional<Notice> beyondPublishedLimits(const Observation& reading, const Observation& ct) {
    if (reading.quantity != ct.quantity || ct.modality != Modality::Ct || ct.derivation != Derivation::Contour ||
        isView(reading.derivation))
        return std::nullopt;
    for (const auto& published : publishedDifferences()) {
        if (published.modality != reading.modality) continue;
        const double difference = reading.valueMm - ct.valueMm;
        if (difference >= published.lowerLimitMm() && difference <= published.upperLimitMm()) return std::nullopt;
        return Notice{"beyond-published-limits",
                      describe(reading) + " differs from " + describe(ct) + " by " + numberText(difference) +
                          " mm; published differences lie between " + numberText(published.lowerLimitMm()) + " and " +
                          numberText(published.upperLimitMm()) + " mm (" + std::string(word(published.basis)) + ": " +
                          published.words + "). Different pressure, another plane or a misreading; look at both.",
                      {{"difference_mm", numberText(difference, 2)}}};
    }
    return std::nullopt;
}

} // namespace gauge::core
