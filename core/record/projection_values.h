// From a measured appendage to the working projections of a case: what the views are planned for, and the angles and widths as
// values of the record, in the group "projection". Neighbours: core/fluoro/working_views.h (the planning itself).
//
// Ids: plane ("ostium", "landing-1") / aim / what:
//   landing-1/en-face/primary            deg   the ideal view, whether or not the arm reaches it
//   landing-1/longest-width/primary      deg   the best view within the reach; with …/secondary and …/width, mm
//   view-1/primary, view-1/secondary     deg   views that the person chose; view-1/landing-1-width, …/ostium-width, mm
// All angles are those of the room: the patient's offset is in them.
#pragma once

#include "core/anatomy/appendage_surface.h"
#include "core/fluoro/working_views.h"
#include "core/record/case_record.h"

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace gauge::core {

inline constexpr std::string_view kProjectionValues = "projection";
inline constexpr std::string_view kOstiumSection = "ostium", kLandingSection = "landing-1";

/// Input id of the plane of such a section: input::kOstium or input::kLanding.
std::string_view planeInputOf(std::string_view section);

/// How the C-arm can be turned and the patient lies: as the person set it, or the defaults.
/// @param imagesPosition  PatientPosition of the loaded images, for a case that was recorded without it.
/// @errors those of usableTurn() for the patient's position at CT.
Result<ViewPlanOptions> viewPlanOptions(const CaseRecord& record, std::string_view imagesPosition = {});
/// (0018,5100) as above; empty when neither tells.
std::string patientPosition(const CaseRecord& record, std::string_view imagesPosition = {});

/// What the views of a section ("ostium", "landing-1") are planned for: its contour (the one a hand corrected, where there is
/// one and its plane still stands) and the axis. nullopt when the measurement has no such section.
std::optional<ProjectionSubject> projectionSubject(const CaseRecord& record, const AppendageMeasurement& measurement,
                                                   std::string_view section);

/// The plan for one section.
struct SectionPlan {
    std::string section; ///< "ostium", "landing-1"
    ProjectionSubject subject;
    ViewPlan plan;
};

/// Plans for landing zone (first, where there is one) and ostium. @param surface  of the same measurement; null: without overlap.
/// @errors those of planViews(); Cancelled.
Result<std::vector<SectionPlan>> planSections(const CaseRecord& record, const AppendageMeasurement& measurement,
                                              const AppendageSurface* surface, const ViewPlanOptions& options,
                                              const WorkContext& work = {});

/// Values of the plans and of the chosen views. Each rests on the places of ostium and landing plane, on corrected contours and on
/// the entry "projection", with the revisions that these have in `record`.
/// @param tiltDeg  how sure the planes' directions are (PlacementSpread): the angles' standard uncertainty.
std::vector<RecordedValue> projectionValues(const CaseRecord& record, const std::vector<SectionPlan>& plans,
                                            const ViewPlanOptions& options, double tiltDeg,
                                            std::shared_ptr<const Provenance> provenance);

/// Whether a chosen view was chosen for a plane that has moved since.
bool isStale(const CaseRecord& record, const ChosenView& view);

/// A section's en-face view as recorded, of values that are current; how a case is read without its images.
std::optional<CArmAngles> recordedEnFace(const CaseRecord& record, std::string_view section);

/// A view as the values of the group "projection" have it, current ones only.
struct RecordedView {
    std::string section; ///< "ostium", "landing-1"; of a chosen view that of its plane
    std::optional<ViewAim> aim;
    std::optional<std::size_t> chosen; ///< place in ProjectionChoice::views; nothing: a view that the program names
    CArmAngles angles;
    std::optional<Estimate> widthMm; ///< of the section
};
/// In the order in which they were recorded: working views, then chosen ones.
std::vector<RecordedView> recordedViews(const CaseRecord& record);

} // namespace gauge::core
