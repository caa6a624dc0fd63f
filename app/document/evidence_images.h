// Pictures of evidence (echo cines and stills, X-ray runs), loaded in the background when they are asked for. A cine opens from
// its header; its frames are decoded from the wanted one on, so that it shows before all of it is there. Few cines and a bounded
// number of frames are kept.
#pragma once

#include "app/document/session.h"
#include "core/cine/echo_cine.h"
#include "core/cine/region_caliper.h"
#include "dicomio/angiography/xray_reader.h"

#include <QImage>
#include <QObject>
#include <atomic>
#include <filesystem>
#include <functional>
#include <list>
#include <memory>
#include <mutex>
#include <optional>
#include <vector>

namespace gauge::app {

/// Where the frames of a 3D echo lie in it.
struct EchoStack {
    struct Place {
        int slice = 0, timePoint = 0; ///< 0-based
    };
    int slices = 1, timePoints = 1;
    Eigen::Vector3d voxelMm{1.0, 1.0, 1.0}; ///< along a row, along a column, between slices
    std::vector<Place> placeOfFrame;        ///< for each frame of the file; empty frames lie nowhere
};

/// A cine as its file tells it. Of echo: regions and angle; of X-ray: the run with angles, scale and window; of a 3D echo its
/// slices one after the other, each with the lengths that its geometry proves.
struct CineData {
    std::string sopInstanceUid; ///< of the file; empty where nobody has told
    std::shared_ptr<const core::FrameSource> frames; ///< never null
    core::FrameTimes times;
    std::vector<core::EchoRegion> regions;
    double pixelAspect = 1.0; ///< height of a pixel to its width
    std::optional<dicomio::XrayCine> xray;
    std::optional<EchoStack> stack;
    std::vector<core::Notice> notices;
};

/// A frame as decoded: colours, or grey values that a window turns into a picture.
struct CineFrame {
    QImage colour;
    std::shared_ptr<const core::GreyFrame> grey;
    bool isNull() const { return colour.isNull() && !grey; }
};

/// The pictures of one evidence, while they are wanted.
class EvidenceCine : public QObject {
    Q_OBJECT
public:
    using Open = std::function<core::Result<CineData>()>;
    explicit EvidenceCine(Open open);
    ~EvidenceCine() override;

    /// Null while it is being opened, or when that failed.
    const CineData* data() const { return m_data ? &*m_data : nullptr; }
    const std::optional<core::Error>& failure() const { return m_failure; }
    int frameCount() const { return m_data ? m_data->frames->count() : 0; }
    /// The frame, or nothing while it is not decoded: then frameDecoded tells when it is there, and it is decoded next.
    CineFrame frame(int index) const;

    /// What a scale of the person means on these frames (handScale() in picture_scale.h), worked out once for each.
    /// Precondition: data() is there.
    const core::Result<core::HandScale>& handScale(const core::PictureScale& scale) const;

    /// Decoded frames that are kept, bytes; those farthest from the wanted one go first.
    static constexpr std::size_t kKeptBytes = std::size_t{96} << 20;
    /// Keeps no more than this from now on, but always the wanted frame.
    void keepAtMost(std::size_t bytes);
    std::size_t keptBytes() const;

signals:
    void opened();
    void failed();
    void frameDecoded(int index);

private:
    void decode();
    void keepFew(int around);
    std::size_t bytesHeld() const;

    std::optional<CineData> m_data;
    std::optional<core::Error> m_failure;
    mutable std::mutex m_mutex;
    std::vector<CineFrame> m_frames; ///< guarded
    mutable std::atomic<int> m_wanted = 0;
    std::atomic<std::size_t> m_keptBytes = kKeptBytes;
    mutable bool m_asked = false;
    mutable std::optional<std::pair<core::PictureScale, core::Result<core::HandScale>>> m_handScale;
    JobRunner m_open;
    mutable JobRunner m_decode;
};

class EvidenceImages : public QObject {
    Q_OBJECT
public:
    using Opener = std::function<core::Result<CineData>(const core::Evidence&, const std::optional<std::filesystem::path>&)>;

    explicit EvidenceImages(Session& session, QObject* parent = nullptr);
    /// Tests put another in place of reading files.
    void setOpener(Opener opener) { m_opener = std::move(opener); }

    /// The pictures of this evidence, opened when they are not there; null for an id that the record does not know and for CT.
    std::shared_ptr<EvidenceCine> cine(const std::string& evidence);
    /// The same only if it is open already.
    std::shared_ptr<EvidenceCine> openCine(const std::string& evidence) const;

    /// So many cines stay open when nobody shows them.
    static constexpr std::size_t kKept = 8;
    /// Decoded frames of all open cines together, bytes: each may keep its equal part.
    static constexpr std::size_t kAllBytes = std::size_t{320} << 20;

signals:
    /// A cine of this evidence has been opened (its scale is known from now on).
    void opened(const QString& evidence);

private:
    void letGoOfOld();
    void shareRoom();

    Session& m_session;
    Opener m_opener;
    std::list<std::pair<std::string, std::shared_ptr<EvidenceCine>>> m_cines; ///< the one asked for last comes first
};

/// Reads the file of an echo cine or an X-ray run. @errors FileUnreadable without a file, saying what to do; those of the readers.
core::Result<CineData> readCine(const core::Evidence& evidence, const std::optional<std::filesystem::path>& file);

} // namespace gauge::app
