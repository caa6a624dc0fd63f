// Pictures of evidence (echo cines and stills, X-ray runs), loaded in the background when they are asked for. A cine opens from
// its header; its frames are decoded from the wanted one on, so that it shows before all of it is there. Few cines and a bounded
// number of frames are kept.
#pragma once

#include "app/document/session.h"
#include "core/cine/echo_cine.h"
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

/// A cine as its file tells it. Of echo: regions and angle; of X-ray: the run with angles, scale and window.
struct CineData {
    std::shared_ptr<const core::FrameSource> frames; ///< never null
    core::FrameTimes times;
    std::vector<core::EchoRegion> regions;
    double pixelAspect = 1.0; ///< height of a pixel to its width
    std::optional<dicomio::XrayCine> xray;
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

    /// Decoded frames that are kept, bytes; those farthest from the wanted one go first.
    static constexpr std::size_t kKeptBytes = std::size_t{96} << 20;

signals:
    void opened();
    void failed();
    void frameDecoded(int index);

private:
    void decode();
    void keepFew(int around);

    std::optional<CineData> m_data;
    std::optional<core::Error> m_failure;
    mutable std::mutex m_mutex;
    std::vector<CineFrame> m_frames; ///< guarded
    mutable std::atomic<int> m_wanted = 0;
    mutable bool m_asked = false;
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

    /// The pictures of this evidence, opened when they are not there; null for an id that the record does not know and for kinds
    /// without frames (CT, echo volumes).
    std::shared_ptr<EvidenceCine> cine(const std::string& evidence);
    /// The same only if it is open already.
    std::shared_ptr<EvidenceCine> openCine(const std::string& evidence) const;

    /// So many cines stay open when nobody shows them.
    static constexpr std::size_t kKept = 8;

signals:
    /// A cine of this evidence has been opened (its scale is known from now on).
    void opened(const QString& evidence);

private:
    void letGoOfOld();

    Session& m_session;
    Opener m_opener;
    std::list<std::pair<std::string, std::shared_ptr<EvidenceCine>>> m_cines; ///< the one asked for last comes first
};

/// Reads the file of an echo cine or an X-ray run. @errors FileUnreadable without a file, saying what to do; those of the readers.
core::Result<CineData> readCine(const core::Evidence& evidence, const std::optional<std::filesystem::path>& file);

} // namespace gauge::app
