#include "core/result.h"

#include <utility>

namespace gauge::core {

std::string_view name(ErrorCode code) {
    switch (code) {
    case ErrorCode::InvalidArgument: return "invalid-argument";
    case ErrorCode::TooFewPoints: return "too-few-points";
    case ErrorCode::NonFinite: return "non-finite";
    case ErrorCode::Degenerate: return "degenerate";
    case ErrorCode::FileUnreadable: return "file-unreadable";
    case ErrorCode::NotDicom: return "not-dicom";
    case ErrorCode::FileDamaged: return "file-damaged";
    case ErrorCode::TransferSyntaxUnsupported: return "transfer-syntax-unsupported";
    case ErrorCode::ObjectUnsupported: return "object-unsupported";
    case ErrorCode::AttributeMissing: return "attribute-missing";
    case ErrorCode::AttributeInvalid: return "attribute-invalid";
    case ErrorCode::SliceMissing: return "slice-missing";
    case ErrorCode::SliceDuplicate: return "slice-duplicate";
    case ErrorCode::SpacingUneven: return "spacing-uneven";
    case ErrorCode::SizesMixed: return "sizes-mixed";
    case ErrorCode::OrientationsMixed: return "orientations-mixed";
    case ErrorCode::SpacingInvalid: return "spacing-invalid";
    case ErrorCode::GeometryContradictory: return "geometry-contradictory";
    case ErrorCode::NothingUsable: return "nothing-usable";
    case ErrorCode::NotFound: return "not-found";
    case ErrorCode::SeedOutsideVolume: return "seed-outside-volume";
    case ErrorCode::SeedNotInBlood: return "seed-not-in-blood";
    case ErrorCode::SeedsNotConnected: return "seeds-not-connected";
    case ErrorCode::SeedInVein: return "seed-in-vein";
    case ErrorCode::SeedInOtherChamber: return "seed-in-other-chamber";
    case ErrorCode::NoNeckBetweenSeeds: return "no-neck-between-seeds";
    case ErrorCode::ContrastPoor: return "contrast-poor";
    case ErrorCode::SectionNotFound: return "section-not-found";
    case ErrorCode::SectionOpen: return "section-open";
    case ErrorCode::OstiumNotFound: return "ostium-not-found";
    case ErrorCode::LandingOutsideAppendage: return "landing-outside-appendage";
    case ErrorCode::LandmarksUnusable: return "landmarks-unusable";
    case ErrorCode::NotAnEllipse: return "not-an-ellipse";
    case ErrorCode::ScaleMissing: return "scale-missing";
    case ErrorCode::RegionsMixed: return "regions-mixed";
    case ErrorCode::OutsideFossa: return "outside-fossa";
    case ErrorCode::OutputUnwritable: return "output-unwritable";
    case ErrorCode::RecordUnreadable: return "record-unreadable";
    case ErrorCode::ChartInvalid: return "chart-invalid";
    case ErrorCode::ObservationsInvalid: return "observations-invalid";
    case ErrorCode::NothingToSize: return "nothing-to-size";
    case ErrorCode::Cancelled: return "cancelled";
    case ErrorCode::Internal: return "internal";
    }
    return "internal";
}

tl::unexpected<Error> failure(ErrorCode code, std::string message, std::vector<Fact> facts) {
    return tl::make_unexpected(Error{code, std::move(message), std::move(facts), nullptr});
}

tl::unexpected<Error> failure(ErrorCode code, std::string message, Error cause) {
    auto facts = cause.facts;
    return tl::make_unexpected(
        Error{code, std::move(message), std::move(facts), std::make_shared<const Error>(std::move(cause))});
}

} // namespace gauge::core
