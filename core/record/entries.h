// What a case holds besides the CT's marks and planes: evidence, moments of the circulation, drawings on pictures and
// sections, corrected contours, scales, looks at the implant, the chart and the choice. Each is a plain content; the
// record keeps it as an Entry, with the revision at which it got that content.
//
//   Entries<Drawing>            many of a kind, by id      edit: SetEntry<Drawing>{id, entry or nothing}
//   std::optional<Entry<…>>     at most one                edit: SetSingle<SizingChoice>{entry or nothing}
#pragma once

#include "core/access/septum_marks.h"
#include "core/cine/echo_region.h"
#include "core/cine/planar_scale.h"
#include "core/echo/width_reading.h"
#include "core/fluoro/working_views.h"
#include "core/geometry/plane.h"
#include "core/pressure/haemodynamics.h"
#include "core/pressure/observation.h"
#include "core/record/recorded_value.h"
#include "core/release/release_finding.h"
#include "core/release/stasis.h"
#include "core/scores/bleeding_score.h"
#include "core/scores/stroke_score.h"
#include "core/sizing/pressure_change.h"

#include <Eigen/Core>
#include <map>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace gauge::core {

/// Fields of a file that this version does not know; kept and written again.
using UnknownFields = nlohmann::json;

/// A content with the sequence number of the edit that set it (see case_record.h).
template <class Content> struct Entry {
    Content content;
    Revision revision = 0;
    UnknownFields unknown = UnknownFields::object();

    bool operator==(const Entry&) const = default;
};

template <class Content> using Entries = std::map<std::string, Entry<Content>, std::less<>>;

enum class EvidenceKind { Ct, EchoCine, EchoVolume, Doppler, Fluoroscopy, Other };

/// Images as the person ordered them: when in the patient's course they were taken and what they show. By series or, for
/// cines, by SOP instance. Ids of evidence: the SOP Instance UID of a cine, the Series Instance UID of a CT or volume.
struct Evidence {
    EvidenceKind kind = EvidenceKind::Other;
    std::string seriesUid;
    std::string sopInstanceUid; ///< of a cine or still; empty for a series of many instances
    Stage stage = Stage::BeforeProcedure;
    std::string moment;                       ///< id of the Moment it belongs to; may be empty
    std::optional<double> probeAngleDeg;      ///< of an echo view: as in the file, or as the person said
    BeatPhase phase = BeatPhase::Unknown;     ///< of the frames that were measured
    std::string acquired;                     ///< ISO 8601 as the file has it, or empty
    std::string description;                  ///< for people

    bool operator==(const Evidence&) const = default;
};

/// A moment of the patient's course with what is known of its circulation. Its id in the record is `circulation.state`.
struct Moment {
    HaemodynamicState circulation;
    Condition condition = Condition::Other;
    std::optional<double> pressureUncertaintyMmHg;

    bool operator==(const Moment&) const = default;
};

/// A number that was typed in, not measured here. `observation.state` is the id of a Moment, whose pressure, v wave and
/// condition hold for it; those fields of the observation itself stay empty.
struct TypedReading {
    Observation observation;
    bool mixedBeats = false;
    std::string note; ///< where it came from

    bool operator==(const TypedReading&) const = default;
};

/// A place on a frame of a picture; points are (column, row) in pixels, whole numbers at pixel centres.
struct PictureSite {
    std::string sopInstanceUid;
    int frame = 0; ///< 0-based

    bool operator==(const PictureSite&) const = default;
};

/// A place on a section through the CT; points are section coordinates in mm.
struct SectionSite {
    SectionFrame frame;
    /// Input id of the plane on which it was drawn (input::kOstium, "landing"), so that it is stale when that plane moves;
    /// empty for a plane that stands for itself.
    std::string plane;
    Revision planeRevision = 0; ///< of input::placeOf(plane) when the person drew or confirmed it

    bool operator==(const SectionSite&) const = default;
};

using DrawingSite = std::variant<PictureSite, SectionSite>;

enum class DrawingKind {
    Straight,  ///< 2 points
    Curve,     ///< 2 or more points, a smooth line through them
    Angle,     ///< 3 points, the vertex in the middle
    Area,      ///< 3 or more points, a smooth closed line
    Ellipse,   ///< centre, end of the one half-axis, end of the other
    Velocity,  ///< 1 point on a spectral region
    Interval,  ///< 2 points on a spectral, ECG or M-mode region
    Envelope,  ///< 3 or more points on a spectral region
};

/// What a drawing measures of the appendage; None: a measurement of its own.
enum class DrawingRole { None, OstiumWidth, LandingWidth, Depth, OstiumContour, LandingContour, MitralInflow };

/// A measurement drawn by hand. Its values are recorded in the group "drawing/" + id.
struct Drawing {
    DrawingKind kind = DrawingKind::Straight;
    DrawingRole role = DrawingRole::None;
    DrawingSite site;
    std::vector<Eigen::Vector2d> points;
    std::string evidence; ///< id of the Evidence it was drawn on; empty for the CT of the record
    std::string label;

    bool operator==(const Drawing&) const = default;
};

/// A contour that a hand corrected; it takes the place of the one found. Ids: "ostium", "landing-1"…
struct CorrectedContour {
    SectionFrame frame;
    std::vector<Eigen::Vector2d> points; ///< mm in the frame; a smooth closed line runs through them
    std::string plane;                   ///< input id of its plane, as in SectionSite
    Revision planeRevision = 0;

    bool operator==(const CorrectedContour&) const = default;
};

/// A scale that the person gave to a picture. Id: the SOP Instance UID.
struct PictureScale {
    ScaleOrigin origin = ScaleOrigin::HandCalibration; ///< HandCalibration, Catheter or MarkerSpacing
    int frame = 0;
    Eigen::Vector2d from{0.0, 0.0}, to{0.0, 0.0}; ///< pixels; along the known length, or along a catheter's axis
    double knownMm = 0.0;                         ///< length between the marks, or the catheter's outer diameter
    bool byEdgeProfile = false;                   ///< a catheter's width read off its shadow between the two marks
    std::optional<PixelBox> within;               ///< region in which it holds

    bool operator==(const PictureScale&) const = default;
};

/// One place seen on both CT and echo, to place the probe in the CT.
struct PoseLandmark {
    PatientPoint ct;
    PictureSite echo;
    Eigen::Vector2d echoPoint{0.0, 0.0}; ///< pixels
    std::string label;

    bool operator==(const PoseLandmark&) const = default;
};

/// The chart, the question and the size that the person chose.
struct SizingChoice {
    std::string chartText;   ///< the chart's JSON, whole
    std::string chartSource; ///< where it was loaded from
    std::optional<double> decisionPressureMmHg, lowestMmHg, highestMmHg;
    PressureChange cause = PressureChange::Unknown;
    bool regurgitationMayRecur = false;
    std::string size; ///< name in the chart; empty: none chosen yet

    bool operator==(const SizingChoice&) const = default;
};

/// A view of the C-arm that the person means to work with.
struct ChosenView {
    CArmAngles angles;           ///< as the arm shows them: the patient's turn is in them
    std::optional<ViewAim> aim;  ///< what it was chosen for; nothing: picked by hand
    std::string plane;           ///< input id of the plane it was chosen for (input::kOstium, "landing")
    Revision planeRevision = 0;  ///< of input::placeOf(plane) when it was chosen
    std::string label;           ///< in the words of the person, may be empty

    bool operator==(const ChosenView&) const = default;
};

/// How the C-arm and the patient stand to each other on the day, and the views that were chosen.
struct ProjectionChoice {
    CArmReach reach;
    std::optional<PatientTurn> turn; ///< against the CT; nothing: the patient will lie as at CT
    std::vector<ChosenView> views;

    bool operator==(const ProjectionChoice&) const = default;
};

struct Scores {
    std::optional<StrokeItems> stroke;
    std::optional<BleedingItems> bleeding;

    bool operator==(const Scores&) const = default;
};

/// Who the case is about, as the images say, and how it is found again.
struct Patient {
    std::string name;      ///< as DICOM has it, components joined by '^'
    std::string id;
    std::string birthDate; ///< YYYYMMDD, or empty
    std::string sex;       ///< "F", "M", "O", or empty
    std::string title;     ///< of the case, for lists
    std::vector<std::string> tags;

    bool operator==(const Patient&) const = default;
};

/// What was decided, in the words of the person who signs.
struct Decision {
    std::string text;
    std::string size;     ///< as in SizingChoice when it was signed
    std::string signedBy; ///< empty: a draft
    std::string time;     ///< ISO 8601 with offset, when signed

    bool operator==(const Decision&) const = default;
};

/// Limits of the septal crossing as the person set them, and where the person means to cross. What is marked: SeptumMarks.
struct SeptumPlan {
    CrossingLimits limits;
    std::optional<PatientPoint> crossing; ///< in the septum's plane when it was chosen; its foot counts when that plane moves

    bool operator==(const SeptumPlan&) const = default;
};

/// Prefix of the input ids of a kind ("drawing/"), or for what exists once its whole id ("sizing").
template <class Content> inline constexpr std::string_view kEntryName = "";
template <> inline constexpr std::string_view kEntryName<Evidence> = "evidence/";
template <> inline constexpr std::string_view kEntryName<Moment> = "moment/";
template <> inline constexpr std::string_view kEntryName<TypedReading> = "reading/";
template <> inline constexpr std::string_view kEntryName<Drawing> = "drawing/";
template <> inline constexpr std::string_view kEntryName<CorrectedContour> = "contour/";
template <> inline constexpr std::string_view kEntryName<PictureScale> = "scale/";
template <> inline constexpr std::string_view kEntryName<PoseLandmark> = "landmark/";
template <> inline constexpr std::string_view kEntryName<ReleaseState> = "release/";
template <> inline constexpr std::string_view kEntryName<StasisFinding> = "stasis/";
template <> inline constexpr std::string_view kEntryName<SizingChoice> = "sizing";
template <> inline constexpr std::string_view kEntryName<ProjectionChoice> = "projection";
template <> inline constexpr std::string_view kEntryName<Scores> = "scores";
template <> inline constexpr std::string_view kEntryName<Patient> = "patient";
template <> inline constexpr std::string_view kEntryName<Decision> = "decision";
template <> inline constexpr std::string_view kEntryName<SeptumMarks> = "septum-marks";
template <> inline constexpr std::string_view kEntryName<SeptumPlan> = "septum";

/// "drawing/7" for entriesId<Drawing>("7").
template <class Content> std::string entryInput(std::string_view id) {
    return std::string(kEntryName<Content>).append(id);
}

} // namespace gauge::core
