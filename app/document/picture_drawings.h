// Keeps in the record the lengths of straight lines drawn on echo views and X-ray frames: measured when their picture is open, and
// again when the line or the scale that the person gave to the picture changes; taken away with their line.
#pragma once

#include "app/document/evidence_images.h"
#include "app/document/picture_scale.h"

#include <QObject>
#include <map>
#include <string>

namespace gauge::app {

/// Length of a line on a frame, by the scale that the person gave, else by the file's.
/// @errors ScaleMissing with the reason; RegionsMixed; those of core::planarDistance.
core::Result<core::Estimate> pictureLength(const CineData& cine, int frame, const Eigen::Vector2d& from,
                                           const Eigen::Vector2d& to,
                                           const std::optional<core::Result<core::HandScale>>& byHand);

/// The scale that the person gave to the picture; nothing when none was given.
std::optional<core::Result<core::HandScale>> scaleByHand(const core::CaseRecord& record, const std::string& sopInstanceUid,
                                                         const CineData& cine);

class PictureDrawings : public QObject {
    Q_OBJECT
public:
    PictureDrawings(Session& session, EvidenceImages& images);

    /// Measures what has become measurable.
    void refresh();
    /// A picture is being opened on which something is to be measured.
    bool isWaiting() const;
    /// Why a drawing has no length; null when it has one or its picture is not open.
    const core::Error* failureOf(const std::string& drawing) const;

private:
    void measure(const std::string& id, const core::Drawing& drawing);
    void dropValuesOfRemoved();

    Session& m_session;
    EvidenceImages& m_images;
    std::map<std::string, core::Error> m_failures;
    bool m_busy = false;
};

} // namespace gauge::app
