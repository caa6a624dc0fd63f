// Tells the session's DrawingRecorder what the drawings on echo views and X-ray frames lie on: which scales hold on their frame, by
// the file or by the person, and which evidence their values come from. Pictures of drawings that wait for their values are
// opened, and the recorder measures as soon as they are there.
#pragma once

#include "app/document/evidence_images.h"

#include <QObject>

namespace gauge::app {

/// The scale that the person gave to the picture, or why it cannot be told; nothing when none was given. Precondition: the cine
/// is open.
std::optional<core::Result<core::HandScale>> scaleByHand(const core::CaseRecord& record, const std::string& sopInstanceUid,
                                                         const EvidenceCine& cine);

/// What is known of the lengths of one frame.
core::PictureGround groundOf(const CineData& cine, int frame, const std::optional<core::Result<core::HandScale>>& byHand);

class PictureDrawings : public QObject {
    Q_OBJECT
public:
    PictureDrawings(Session& session, EvidenceImages& images);

    /// A picture is being opened on which something is to be measured.
    bool isWaiting() const;

private:
    std::optional<DrawingRecorder::Source> sourceOf(const core::Drawing& drawing) const;

    Session& m_session;
    EvidenceImages& m_images;
};

} // namespace gauge::app
