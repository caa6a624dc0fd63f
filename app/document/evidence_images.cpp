#include "app/document/evidence_images.h"

#include "app/document/picture_scale.h"
#include "app/document/propose_evidence.h"
#include "dicomio/pixel/scanned_frames.h"
#include "dicomio/ultrasound/us_reader.h"
#include "dicomio/ultrasound/us_volume.h"

#include <QTimer>
#include <algorithm>
#include <cstring>

namespace gauge::app {
namespace {

std::size_t bytesOf(const CineFrame& frame) {
    return static_cast<std::size_t>(frame.colour.sizeInBytes()) +
           (frame.grey ? frame.grey->values.size() * sizeof(std::int32_t) : 0);
}

QImage imageOf(const core::RgbFrame& frame) {
    QImage image(frame.columns, frame.rows, QImage::Format_RGB888);
    const auto rowBytes = static_cast<std::size_t>(frame.columns) * 3;
    for (int y = 0; y < frame.rows; ++y)
        std::memcpy(image.scanLine(y), frame.samples.data() + static_cast<std::size_t>(y) * rowBytes, rowBytes);
    return image.convertToFormat(QImage::Format_RGB32);
}

core::Result<CineFrame> decodeFrame(const core::FrameSource& frames, int index) {
    CineFrame decoded;
    if (frames.isColour()) {
        auto rgb = frames.rgb(index);
        if (!rgb) return tl::unexpected(rgb.error());
        decoded.colour = imageOf(*rgb);
    } else {
        auto grey = frames.grey(index);
        if (!grey) return tl::unexpected(grey.error());
        decoded.grey = std::make_shared<const core::GreyFrame>(std::move(*grey));
    }
    return decoded;
}

bool hasFrames(core::EvidenceKind kind) {
    return kind == core::EvidenceKind::EchoCine || kind == core::EvidenceKind::Doppler ||
           kind == core::EvidenceKind::Fluoroscopy || kind == core::EvidenceKind::EchoVolume || kind == core::EvidenceKind::Other;
}

} // namespace

EvidenceCine::EvidenceCine(Open open) {
    m_open.start<CineData>([open = std::move(open)](const core::WorkContext&) { return open(); },
                           [this](core::Result<CineData> data) {
                               if (!data) {
                                   m_failure = data.error();
                                   emit failed();
                                   return;
                               }
                               m_data = std::move(*data);
                               m_frames.resize(static_cast<std::size_t>(frameCount()));
                               emit opened();
                               decode();
                           });
}

EvidenceCine::~EvidenceCine() = default;

CineFrame EvidenceCine::frame(int index) const {
    if (!m_data || index < 0 || index >= frameCount()) return {};
    m_wanted = index;
    {
        const std::lock_guard lock(m_mutex);
        if (!m_frames[static_cast<std::size_t>(index)].isNull()) return m_frames[static_cast<std::size_t>(index)];
    }
    if (!m_decode.isRunning() && !m_asked && !m_failure) {
        // Asked for after the first pass had to leave it out.
        m_asked = true;
        QMetaObject::invokeMethod(const_cast<EvidenceCine*>(this), [this] {
            m_asked = false;
            const_cast<EvidenceCine*>(this)->decode();
        }, Qt::QueuedConnection);
    }
    return {};
}

const core::Result<core::HandScale>& EvidenceCine::handScale(const core::PictureScale& scale) const {
    if (!m_handScale || !(m_handScale->first == scale)) m_handScale.emplace(scale, app::handScale(scale, *m_data));
    return m_handScale->second;
}

std::size_t EvidenceCine::bytesHeld() const {
    std::size_t bytes = 0;
    for (const CineFrame& frame : m_frames)
        bytes += bytesOf(frame);
    return bytes;
}

std::size_t EvidenceCine::keptBytes() const {
    const std::lock_guard lock(m_mutex);
    return bytesHeld();
}

void EvidenceCine::keepAtMost(std::size_t bytes) {
    m_keptBytes = std::min(bytes, kKeptBytes);
    const std::lock_guard lock(m_mutex);
    if (!m_frames.empty()) keepFew(m_wanted);
}

/// Drops decoded frames farthest from `around` until the rest is small enough. Precondition: the mutex is held.
void EvidenceCine::keepFew(int around) {
    const int count = static_cast<int>(m_frames.size());
    std::size_t bytes = bytesHeld();
    // Frames ahead are wanted sooner than those behind, the cine being a loop.
    for (int back = 1; back < count && bytes > m_keptBytes; ++back) {
        CineFrame& frame = m_frames[static_cast<std::size_t>((around - back + count) % count)];
        bytes -= bytesOf(frame);
        frame = {};
    }
}

void EvidenceCine::decode() {
    struct Done {};
    m_decode.start<Done>(
        [this, frames = m_data->frames](const core::WorkContext& work) -> core::Result<Done> {
            const int count = frames->count();
            int start = m_wanted;
            for (int ahead = 0; ahead < count; ++ahead) {
                if (work.stop.stop_requested()) return core::failure(core::ErrorCode::Cancelled, "Stopped.");
                if (const int wanted = m_wanted; wanted != start) {
                    const std::lock_guard lock(m_mutex);
                    if (m_frames[static_cast<std::size_t>(wanted)].isNull()) {
                        start = wanted;
                        ahead = 0;
                    }
                }
                const int index = (start + ahead) % count;
                std::size_t bytes = 0;
                {
                    const std::lock_guard lock(m_mutex);
                    if (!m_frames[static_cast<std::size_t>(index)].isNull()) continue;
                    for (int i = 0; i < ahead; ++i)
                        bytes += bytesOf(m_frames[static_cast<std::size_t>((start + i) % count)]);
                }
                if (bytes > m_keptBytes) break;
                auto frame = decodeFrame(*frames, index);
                if (!frame) return tl::unexpected(frame.error());
                {
                    const std::lock_guard lock(m_mutex);
                    m_frames[static_cast<std::size_t>(index)] = std::move(*frame);
                    keepFew(start);
                }
                QMetaObject::invokeMethod(this, [this, index] { emit frameDecoded(index); }, Qt::QueuedConnection);
            }
            return Done{};
        },
        [this](const core::Result<Done>& done) {
            if (done || done.error().code == core::ErrorCode::Cancelled) return;
            m_failure = done.error();
            emit failed();
        });
}

EvidenceImages::EvidenceImages(Session& session, QObject* parent)
    : QObject(parent), m_session(session), m_opener(readCine) {
    connect(&session, &Session::imagesChanged, this, [this] {
        QTimer::singleShot(0, this, [ended = std::move(m_cines)] {});
        m_cines.clear();
    });
}

std::shared_ptr<EvidenceCine> EvidenceImages::openCine(const std::string& evidence) const {
    const auto found = std::find_if(m_cines.begin(), m_cines.end(), [&](const auto& kept) { return kept.first == evidence; });
    return found == m_cines.end() ? nullptr : found->second;
}

std::shared_ptr<EvidenceCine> EvidenceImages::cine(const std::string& evidence) {
    const auto found = std::find_if(m_cines.begin(), m_cines.end(), [&](const auto& kept) { return kept.first == evidence; });
    if (found != m_cines.end()) {
        m_cines.splice(m_cines.begin(), m_cines, found);
        return found->second;
    }
    const auto entry = m_session.record().evidence.find(evidence);
    if (entry == m_session.record().evidence.end() || !hasFrames(entry->second.content.kind)) return nullptr;
    const core::Evidence content = entry->second.content;
    const auto index = m_session.index();
    const auto file = index ? fileOf(*index, content) : std::nullopt;
    auto made = std::make_shared<EvidenceCine>([opener = m_opener, content, file] { return opener(content, file); });
    connect(made.get(), &EvidenceCine::opened, this, [this, evidence] { emit opened(QString::fromStdString(evidence)); });
    m_cines.emplace_front(evidence, made);
    letGoOfOld();
    shareRoom();
    return made;
}

/// The ones asked for longest ago, but none that is still being opened: somebody waits for it. They end from the event loop, since
/// the call may come out of one of their own signals.
void EvidenceImages::letGoOfOld() {
    for (auto at = m_cines.end(); m_cines.size() > kKept && at != m_cines.begin();) {
        --at;
        if (!at->second->data() && !at->second->failure()) continue;
        QTimer::singleShot(0, this, [ended = std::move(at->second)] {});
        at = m_cines.erase(at);
    }
}

void EvidenceImages::shareRoom() {
    for (const auto& [id, cine] : m_cines)
        cine->keepAtMost(kAllBytes / m_cines.size());
}

namespace {

/// The slices of a 3D echo, each a picture with the lengths that the volume's geometry proves.
core::Result<CineData> readEchoVolume(const std::filesystem::path& file) {
    auto opened = dicomio::scanFile(file);
    if (!opened) return tl::unexpected(opened.error());
    const auto scanned = std::make_shared<const dicomio::ScannedFile>(std::move(*opened));
    const auto volume = dicomio::UltrasoundVolume::open(scanned);
    if (!volume) return tl::unexpected(volume.error());
    CineData data;
    data.sopInstanceUid = volume->sopInstanceUid();
    data.notices = volume->notices();
    auto frames = dicomio::openFrames(scanned, data.notices);
    if (!frames) return tl::unexpected(frames.error());
    data.frames = std::move(*frames);
    EchoStack stack;
    stack.voxelMm = volume->spacingMm();
    stack.timePoints = static_cast<int>(volume->timePoints().size());
    stack.slices = volume->size().z();
    stack.placeOfFrame.resize(static_cast<std::size_t>(data.frames->count()));
    for (int t = 0; t < stack.timePoints; ++t) {
        const auto& of = volume->timePoints()[static_cast<std::size_t>(t)].frames;
        for (std::size_t k = 0; k < of.size(); ++k)
            stack.placeOfFrame[static_cast<std::size_t>(of[k])] = {static_cast<int>(k), t};
    }
    core::EchoRegion whole;
    whole.kind = core::EchoRegionKind::Tissue;
    whole.box = {0, 0, data.frames->columns() - 1, data.frames->rows() - 1};
    whole.x = {core::PhysicalUnit::Centimetre, stack.voxelMm.x() / 10.0, std::nullopt, 0.0};
    whole.y = {core::PhysicalUnit::Centimetre, stack.voxelMm.y() / 10.0, std::nullopt, 0.0};
    whole.scale = core::PlanarScale{stack.voxelMm.head<2>(), core::kRegionScaleUncertainty, core::ScaleOrigin::PixelSpacing,
                                    "voxels of the 3D echo"};
    data.pixelAspect = stack.voxelMm.y() / stack.voxelMm.x();
    data.regions.push_back(std::move(whole));
    data.stack = std::move(stack);
    return data;
}

} // namespace

core::Result<CineData> readCine(const core::Evidence& evidence, const std::optional<std::filesystem::path>& file) {
    if (!file)
        return core::failure(core::ErrorCode::FileUnreadable,
                             "Cannot show \"" + evidence.description +
                                 "\": its images are not in the open folder. Open the folder that holds them.");
    if (evidence.kind == core::EvidenceKind::EchoVolume) return readEchoVolume(*file);
    CineData data;
    data.sopInstanceUid = evidence.sopInstanceUid;
    if (evidence.kind == core::EvidenceKind::Fluoroscopy) {
        auto run = dicomio::readXray(*file);
        if (!run) return tl::unexpected(run.error());
        data.frames = run->frames;
        data.times = run->facts.times;
        data.notices = run->notices;
        data.xray = std::move(*run);
        return data;
    }
    auto cine = dicomio::readUltrasound(*file);
    if (!cine) return tl::unexpected(cine.error());
    data.frames = cine->frames;
    data.times = cine->times;
    data.regions = cine->regions;
    data.pixelAspect = cine->pixelAspect;
    data.notices = cine->notices;
    return data;
}

} // namespace gauge::app
