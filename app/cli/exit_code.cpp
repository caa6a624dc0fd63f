#include "app/cli/exit_code.h"

namespace gauge::app {

ExitCode exitCodeFor(core::ErrorCode code) {
    using core::ErrorCode;
    switch (code) {
    case ErrorCode::InvalidArgument: return ExitCode::WrongUsage;
    case ErrorCode::FileUnreadable:
    case ErrorCode::NotDicom:
    case ErrorCode::FileDamaged:
    case ErrorCode::TransferSyntaxUnsupported:
    case ErrorCode::ObjectUnsupported:
    case ErrorCode::AttributeMissing:
    case ErrorCode::AttributeInvalid:
    case ErrorCode::SliceMissing:
    case ErrorCode::SliceDuplicate:
    case ErrorCode::SpacingUneven:
    case ErrorCode::SizesMixed:
    case ErrorCode::OrientationsMixed:
    case ErrorCode::SpacingInvalid:
    case ErrorCode::GeometryContradictory:
    case ErrorCode::NothingUsable:
    case ErrorCode::NotFound:
    case ErrorCode::ChartInvalid:
    case ErrorCode::ObservationsInvalid:
    case ErrorCode::RecordUnreadable: return ExitCode::InputUnreadable;
    case ErrorCode::TooFewPoints:
    case ErrorCode::NonFinite:
    case ErrorCode::Degenerate:
    case ErrorCode::SeedOutsideVolume:
    case ErrorCode::SeedNotInBlood:
    case ErrorCode::SeedsNotConnected:
    case ErrorCode::SeedInVein:
    case ErrorCode::SeedInOtherChamber:
    case ErrorCode::NoNeckBetweenSeeds:
    case ErrorCode::ContrastPoor:
    case ErrorCode::SectionNotFound:
    case ErrorCode::SectionOpen:
    case ErrorCode::OstiumNotFound:
    case ErrorCode::LandingOutsideAppendage:
    case ErrorCode::LandmarksUnusable:
    case ErrorCode::NothingToSize:
    case ErrorCode::NotAnEllipse:
    case ErrorCode::ScaleMissing:
    case ErrorCode::RegionsMixed:
    case ErrorCode::OutsideFossa: return ExitCode::NotMeasurable;
    case ErrorCode::OutputUnwritable: return ExitCode::OutputUnwritable;
    case ErrorCode::Cancelled:
    case ErrorCode::Internal: return ExitCode::InternalError;
    }
    return ExitCode::InternalError;
}

} // namespace gauge::app
