// What is open: the case, the images that it is measured on, and the measurement that follows. Loads and
// measures in the background whenever the record says so: views only read this and push commands.
//
//   openFolder -> images -> record -> (atrium and tip marked) -> measurement -> values in the record
#pragma once

#include "app/document/case_document.h"
#include "app/document/drawing_recorder.h"
#include "app/document/load_images.h"
#include "app/document/picture_values.h"
#include "app/document/septum_recorder.h"
#include "app/jobs/following_job.h"
#include "core/anatomy/appendage.h"

#include <QObject>
#include <QString>
#include <functional>
#include <memory>
#include <optional>

namespace gauge::app {

/// One sentence or two for the message line.
struct Message {
    enum class Kind { Nothing, Information, Working, Warning, Error };
    Kind kind = Kind::Nothing;
    QString text;

    bool operator==(const Message&) const = default;
};

/// Where a landing plane goes through the axis, and how it is turned there.
struct LandingPlace {
    double depthMm = 0.0;
    std::optional<core::PatientVector> normal; ///< towards the tip; nothing: square to the axis

    bool operator==(const LandingPlace&) const = default;
};

/// Where the working journals of cases that were never saved live, in the person's own data.
QString unsavedFolder();

/// By its name: *.json, or an earlier version of a case; no folder.
bool isCaseFile(const QString& path);

class Session : public QObject {
    Q_OBJECT
public:
    /// The measuring engine (core/anatomy/appendage.h); tests put another in its place.
    struct Engine {
        std::function<core::Result<core::AppendageMeasurement>(
            const std::shared_ptr<const core::Volume>&, const core::AppendageMarks&,
            const core::AppendageOptions&, const core::WorkContext&)>
            measure;
        std::function<core::Result<core::LandingZone>(const core::Volume&, const core::AppendageMeasurement&,
                                                      double, const std::optional<core::PatientVector>&)>
            landingAt;
        /// May be empty: planes are then dragged without their section.
        std::function<core::Result<core::Section>(const core::Volume&, const core::AppendageMeasurement&, const core::Plane&)>
            sectionOn = {};
    };

    explicit Session(QObject* parent = nullptr);
    void setEngine(Engine engine) { m_engine = std::move(engine); }

    CaseDocument& document() { return m_document; }
    PictureValues& pictureValues() { return m_pictureValues; }
    SeptumRecorder& septumRecorder() { return m_septumRecorder; }
    const core::CaseRecord& record() const { return m_document.record(); }
    DrawingRecorder& drawings() { return m_drawings; }
    const DrawingRecorder& drawings() const { return m_drawings; }

    /// Opens the images of a folder as a new case. What was open stays until they are there.
    void openFolder(const QString& folder);
    /// The same from images that are already loaded.
    void open(LoadedImages images);

    // Case files (session_case.cpp). What happened is said in the message line.
    /// Opens a case file, then looks for its images: in the folder that the case remembers, then below the case file's own.
    /// A case whose images are not found is open all the same; `imagesMissing` asks for them. False when it cannot be read:
    /// what was open stays.
    bool openCase(const QString& path);
    /// Goes on with a case that was never saved (leftCases in case_file.h).
    bool openLeftCase(const QString& journal);
    /// The document was opened by somebody else (the case library): lets go of what was shown and looks for its images.
    void documentOpened();
    /// Looks for the images of the open case in another folder.
    void findImagesIn(const QString& folder);
    /// Writes the case file; with a path as that file, which is then the case's own. False when it cannot be written.
    bool saveCase(const QString& path = {});
    /// Measures another phase; undoable. Marks are kept within one frame of reference and removed with
    /// another.
    void chooseImages(std::size_t series, std::size_t phase);
    /// While the folder that was opened needs a choice (offered()): opens this series as the case.
    void openChosen(std::size_t series, std::size_t phase);
    void cancel();

    // Edits of the person; undoable.
    void placeMark(core::MarkKind kind, const core::PatientPoint& point);
    void removeMark(core::MarkKind kind);
    void confirmOstium();
    void releaseOstium();
    /// Shows the ostium plane while it is dragged, its section as soon as it is cut; nothing is recorded.
    void previewOstium(const core::Plane& plane);
    /// Records it as the person's own. Calls with one gesture number are one step of undo.
    void moveOstium(const core::Plane& plane, int gesture);
    void tiltOstium(const core::Plane& plane, int gesture);
    /// Ends a drag without recording.
    void dropPreviews();
    /// The ostium plane to show: the dragged one while dragging, else that of the record, else the measured one.
    std::optional<core::Plane> ostiumPlane() const;
    /// The section on the dragged plane; null while nothing is dragged or nothing has been cut yet.
    const core::Section* ostiumPreview() const { return m_ostiumSection ? &*m_ostiumSection : nullptr; }
    /// A second landing plane at this depth, held on the axis; nothing: none.
    void setSecondLanding(std::optional<double> depthMm, int gesture);
    /// The measured landing planes along the axis after the first.
    std::vector<const core::LandingZone*> furtherLandings() const;
    /// Plug plane this far beyond the ridge tip, mm; nothing: none.
    void setPlug(std::optional<double> beyondRidgeMm, int gesture);
    /// Shows a landing plane while it is dragged: at once its outline, as soon as it is measured its values. Nothing is recorded.
    void previewLanding(double depthMm);
    /// Records it. Calls with one gesture number are one step of undo.
    void moveLanding(double depthMm, int gesture);
    /// The same with another normal of the plane, towards the tip.
    void previewLandingTilt(const core::PatientVector& normal);
    /// Records it; a plane farther than core::kMostLandingTiltDeg from square to the axis is refused with a message.
    void tiltLanding(const core::PatientVector& normal, int gesture);
    /// Takes a tilt back.
    void squareLanding();
    /// The landing plane to show, through the axis: the dragged one while dragging, else the record's first. Nothing while there
    /// is none.
    std::optional<LandingPlace> landingPlace() const;
    std::optional<core::Plane> landingPlane() const;
    /// What is known of that plane: its measurement, or while that is being made the outline alone (core::unmeasuredLanding),
    /// of which no value may be told. Null when there is none.
    const core::LandingZone* landingShown() const { return m_outline ? &*m_outline : landing(); }
    /// Whether landingShown() is measured, and the same as landing().
    bool isLandingMeasured() const { return !m_outline && landing(); }
    /// A landing depth that lies on the axis: at least 0.5 mm from the ostium and from the tip.
    double heldLandingDepth(double depthMm) const;

    const LoadedImages* images() const { return m_images ? &*m_images : nullptr; }
    /// What the open folder holds; null when nothing is open. There may be an index without images: echo and X-ray alone.
    std::shared_ptr<const dicomio::SeriesIndex> index() const { return m_images ? m_images->index : m_pictures; }
    /// There is a case to show, be it without CT or without any images.
    bool hasCase() const { return index() || !m_document.path().isEmpty() || m_document.nextRevision() > 1; }
    /// The patient of the case (dicomio::patientKey); empty when no folder is open.
    const std::string& patientKey() const { return m_patientKey; }
    /// A folder of several patients or frames of reference, waiting for the person to choose; null when none does. What was open
    /// before stays meanwhile.
    std::shared_ptr<const dicomio::SeriesIndex> offered() const { return m_offered; }
    const core::Volume* volume() const { return m_images ? m_images->ct.volume.get() : nullptr; }
    const core::AppendageMeasurement* measurement() const {
        return m_measurement ? &*m_measurement : nullptr;
    }
    /// The landing plane that was measured last, dragged or of the record: its own depth may be another than landingPlace()'s
    /// while the newest is being measured. Null when there is none.
    const core::LandingZone* landing() const;
    /// The measured plug plane; null when there is none.
    const core::LandingZone* plug() const;
    /// A landing plane is being dragged.
    bool isPreviewing() const { return m_dragged.has_value(); }
    /// The ostium plane or a landing plane is being dragged: what nobody sees may wait until it is let go, which landingChanged() tells.
    bool isPlaneMoving() const { return m_ostiumPreview || m_dragged; }
    /// Why there is no measurement; nothing while there is one or one is being made.
    const std::optional<core::Error>& failure() const { return m_failure; }
    /// A slice of the CT that is being loaded; null when nothing is, or nothing of it is there yet. For looking at only.
    const FirstPicture* firstPicture() const { return m_first ? &*m_first : nullptr; }
    bool isLoading() const { return m_load.isRunning(); }
    /// Values of the CT are about to be replaced.
    bool isMeasuring() const { return m_measureJob.isRunning() || m_landingsJob.isRunning(); }
    /// The whole appendage is being measured: it takes seconds, and can be cancelled.
    bool isMeasuringAppendage() const { return m_measureJob.isRunning(); }
    const QString& folderBeingOpened() const { return m_folder; }
    const Message& message() const { return m_message; }
    void say(Message::Kind kind, const QString& text);

signals:
    void imagesChanged();
    /// firstPicture() is another one.
    void firstPictureChanged();
    /// offered() is another one.
    void offeredChanged();
    void measurementChanged();
    void landingChanged();
    /// The images of an opened case are not where they were.
    void imagesMissing();
    void workChanged();
    void progressed(double share);
    void messageChanged();

private:
    TellFirst tellFirst(bool ofNewCase);
    void loaded(core::Result<LoadedImages> images, bool asNewCase);
    void folderOpened(core::Result<OpenedFolder> folder);
    void openPictures(std::shared_ptr<const dicomio::SeriesIndex> index, const std::string& patientKey);
    void offer(std::shared_ptr<const dicomio::SeriesIndex> index);
    void placeTeachingMarks();
    bool mayLand(const LandingPlace& place);
    void showLanding(const LandingPlace& place);
    void landingPreviewed(const LandingPlace& place, core::Result<core::LandingZone> zone);
    void showOutline();
    void forgetPreviews();
    void forgetMeasurement();
    bool showCase(core::Result<std::vector<core::Notice>> opened, std::optional<LoadedImages> before);
    void findImages(std::vector<std::filesystem::path> folders);
    void imagesFound(core::Result<LoadedImages> images);
    void findPicturesIn(std::vector<std::filesystem::path> folders);
    void picturesFound(core::Result<FoundPictures> found);
    std::optional<LoadedImages> putImagesAway();
    void sayNotices(const QString& otherwise);
    void onChanged(CaseDocument::Part part);
    bool imagesAreThoseOfTheRecord() const;
    void reloadIfImagesDiffer();
    void measure();
    void measured(core::Result<core::AppendageMeasurement> result);
    void refreshLandings();
    void landingsCut(const core::LandingPlanes& asked, std::vector<core::Result<core::LandingZone>> zones);
    void recordValues();
    QString phaseWords() const;
    core::Provenance provenance() const;
    SeptumRecorder::Source septumSource() const;

    CaseDocument m_document;
    PictureValues m_pictureValues{m_document}; ///< what the drawings on pictures say together
    SeptumRecorder m_septumRecorder{m_document, [this] { return septumSource(); }};
    std::optional<LoadedImages> m_images;
    std::shared_ptr<const dicomio::SeriesIndex> m_pictures; ///< of a folder without CT
    std::shared_ptr<const dicomio::SeriesIndex> m_offered;
    std::string m_patientKey;
    std::optional<core::AppendageMeasurement> m_measurement;
    DrawingRecorder m_drawings{m_document};
    std::optional<LandingPlace> m_dragged;      ///< where the landing plane is dragged to now
    std::optional<LandingPlace> m_previewPlace; ///< of m_preview
    std::optional<core::LandingZone> m_preview; ///< measured last in this drag
    std::optional<core::LandingZone> m_outline; ///< of the plane to show, while that is not measured
    FollowingJob m_previewJob;                  ///< measures what is dragged
    FollowingJob m_landingsJob;                 ///< cuts the record's landing planes after they were moved
    std::optional<core::Plane> m_ostiumPreview;
    std::optional<core::Section> m_ostiumSection;
    FollowingJob m_ostiumJob;
    std::optional<double> m_plugMeasuredMm; ///< with which the measurement was made
    std::optional<core::Error> m_failure;
    JobRunner m_load;
    int m_loadNumber = 0;
    std::optional<FirstPicture> m_first;
    JobRunner m_measureJob;
    Engine m_engine;
    Message m_message;
    QString m_folder;
    std::vector<std::filesystem::path> m_lookedIn; ///< for the images of the opened case
    QString m_notices; ///< on the case that was opened last: said again when its images are there
};

} // namespace gauge::app
