// Results, errors and notices: the one way in which the three rooms report that something failed
// (`Error`) or that something is worth knowing although the value stands (`Notice`).
// Codes are listed in DEVELOPERS.md and are never reused.
#pragma once

#include <memory>
#include <string>
#include <string_view>
#include <tl/expected.hpp>
#include <vector>

namespace gauge::core {

/// What went wrong, grouped by what the caller would do about it.
enum class ErrorCode {
    // The call itself: correct it and call again.
    InvalidArgument,
    TooFewPoints,
    NonFinite,
    Degenerate,
    // The input: choose or repair another one.
    FileUnreadable,
    NotDicom,
    FileDamaged,
    TransferSyntaxUnsupported,
    ObjectUnsupported,
    AttributeMissing,
    AttributeInvalid,
    SliceMissing,
    SliceDuplicate,
    SpacingUneven,
    SizesMixed,
    OrientationsMixed,
    SpacingInvalid,
    GeometryContradictory,
    NothingUsable,
    NotFound,
    // The measurement: move a mark, or accept that these images cannot answer.
    SeedOutsideVolume,
    SeedNotInBlood,
    SeedsNotConnected,
    SeedInVein,
    SeedInOtherChamber,
    NoNeckBetweenSeeds,
    ContrastPoor,
    SectionNotFound,
    SectionOpen,
    OstiumNotFound,
    LandingOutsideAppendage,
    LandmarksUnusable,
    NotAnEllipse,
    ScaleMissing,
    RegionsMixed,
    OutsideFossa,
    // The output.
    OutputUnwritable,
    RecordUnreadable,
    // Sizing: a chart or observations that cannot be used; no reading that answers the chart's question.
    ChartInvalid,
    ObservationsInvalid,
    NothingToSize,
    // Neither a fault of the input nor of the caller.
    Cancelled,
    Internal,
};

/// Stable kebab-case name of a code, as printed and as listed in DEVELOPERS.md.
std::string_view name(ErrorCode code);

/// One finding behind an error or a notice: path, tag, value, expected value…
struct Fact {
    std::string key;
    std::string value;
};

/// An expected failure. `message` is whole sentences for the person: what was attempted, on what, what was
/// found, what to do. `cause` is the lower error that it came from, if any.
struct Error {
    ErrorCode code = ErrorCode::Internal;
    std::string message;
    std::vector<Fact> facts;
    std::shared_ptr<const Error> cause;
};

/// Something worth knowing that does not spoil the value; travels with it to the screen and the report.
/// `code` is a stable kebab-case word listed in DEVELOPERS.md.
struct Notice {
    std::string code;
    std::string text;
    std::vector<Fact> facts;
};

template <class T> using Result = tl::expected<T, Error>;

/// Makes the unexpected side of a `Result`.
tl::unexpected<Error> failure(ErrorCode code, std::string message, std::vector<Fact> facts = {});

/// The same, wrapping the lower error that caused it.
tl::unexpected<Error> failure(ErrorCode code, std::string message, Error cause);

} // namespace gauge::core
