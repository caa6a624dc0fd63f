#include "sample-data/case/write_procedure.h"

#include "core/parallel/parallel_for.h"
#include "sample-data/dicom/echo_volume_writer.h"
#include "sample-data/dicom/us_writer.h"
#include "sample-data/dicom/xa_writer.h"
#include "sample-data/echo/echo_volume.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>

namespace gauge::sample_case {
namespace {

namespace fs = std::filesystem;

constexpr auto kInvented = "INVENTED TEACHING CASE";
/// Lung in a volume, where no beam is followed into its shadow.
constexpr double kShadowedLung = 40.0;
const Colour kText = Colour::grey(205);
const Colour kFaint = Colour::grey(120);

std::string whole(double value) {
    return std::to_string(std::lround(value));
}

/// The half circle that shows how the plane is turned.
void drawDial(Picture& picture, int x, int y, double angleDeg) {
    constexpr double kRadius = 17.0;
    const auto at = [&](double degrees) {
        const double t = degrees * std::numbers::pi / 180.0;
        return Eigen::Vector2d(x - kRadius * std::cos(t), y - kRadius * std::sin(t));
    };
    for (int step = 0; step < 60; ++step) {
        const Eigen::Vector2d a = at(3.0 * step), b = at(3.0 * (step + 1));
        picture.line(a.x(), a.y(), b.x(), b.y(), kFaint);
    }
    const Eigen::Vector2d hand = at(angleDeg);
    picture.line(x, y, hand.x(), hand.y(), kText);
    picture.text(x - textWidth(whole(angleDeg)) / 2, y + 5, whole(angleDeg) + "~", kText);
}

/// Ticks every 10 mm of depth, each fifth longer.
void drawDepthScale(Picture& picture, const FanLayout& fan) {
    const int x = fan.columns - 26;
    for (int mm = 0; mm <= fan.depthMm; mm += 10) {
        const int y = static_cast<int>(std::lround(fan.apexPixel.y() + mm / fan.mmPerPixel));
        picture.line(x - (mm % 50 == 0 ? 8 : 4), y, x, y, kFaint);
        if (mm % 50 == 0 && mm > 0) picture.text(x + 4, y - 3, whole(mm / 10), kFaint);
    }
}

CodedWord teeView(double angleDeg) {
    // PS3.16 CID 12343: codes for 0, 45, 60, 90 and 135 degrees.
    const std::map<long, const char*> codes{
        {0, "131100"}, {45, "131101"}, {60, "131102"}, {90, "131103"}, {135, "131104"}};
    const long degrees = std::lround(angleDeg);
    const auto found = codes.find(degrees);
    if (found == codes.end()) return {};
    return {found->second, "DCM", "Mid-esophageal TEE " + std::to_string(degrees) + " degrees"};
}

std::vector<UsRegion> echoRegions(const EchoSet& set, std::size_t view) {
    const FanLayout& fan = set.views[view].fan;
    UsRegion tissue;
    const double half = fan.halfAngleDeg * std::numbers::pi / 180.0, reach = fan.depthMm / fan.mmPerPixel;
    tissue.x0 = static_cast<int>(std::floor(fan.apexPixel.x() - reach * std::sin(half)));
    tissue.x1 = static_cast<int>(std::ceil(fan.apexPixel.x() + reach * std::sin(half)));
    tissue.y0 = static_cast<int>(std::lround(fan.apexPixel.y()));
    tissue.y1 = static_cast<int>(std::ceil(fan.apexPixel.y() + reach));
    tissue.deltaX = tissue.deltaY = fan.mmPerPixel / 10.0;
    tissue.referencePixel = Eigen::Vector2i(static_cast<int>(std::lround(fan.apexPixel.x())), tissue.y0);
    UsRegion ecg;
    ecg.format = UsRegion::WaveForm;
    ecg.data = UsRegion::Ecg;
    ecg.x0 = set.ecg.x0;
    ecg.y0 = set.ecg.y0;
    ecg.x1 = set.ecg.x1;
    ecg.y1 = set.ecg.y1;
    ecg.unitX = UsRegion::Second;
    ecg.unitY = UsRegion::NoUnit;
    ecg.deltaX = set.ecg.secondsPerPixel;
    ecg.deltaY = 0.0;
    ecg.referencePixel = Eigen::Vector2i(set.ecg.x0, set.ecg.baselineY());
    return {tissue, ecg};
}

core::Result<void> writeEchoView(const Procedure& procedure, const EchoSet& set, std::size_t view,
                                 const fs::path& file, const core::WorkContext& work) {
    const FanLayout& fan = set.views[view].fan;
    BModeOptions options = set.options;
    options.seed = set.options.seed + 17 * view;
    const BMode mode(set.views[view], options);
    const BeatingHeart heart = procedure.heartIn(set.state);
    UsImage image;
    image.facts = set.facts[view];
    image.frames.assign(static_cast<std::size_t>(set.times.frames), Picture(fan.columns, fan.rows, 1));
    core::parallelFor(image.frames.size(), 1, [&](std::size_t begin, std::size_t end) {
        for (std::size_t i = begin; i < end && !work.stopped(); ++i) {
            const int frame = static_cast<int>(i);
            image.frames[i] = echoFrame(set, view, mode, heart.at(set.times.percentAt(frame)), frame);
        }
    });
    if (work.stopped()) return core::failure(core::ErrorCode::Cancelled, "Writing the sample case was stopped.");
    image.regions = echoRegions(set, view);
    image.frameMs = set.times.frameMs;
    image.heartRatePerMin = 60000.0 / set.times.beatMs;
    image.rWavesMs = set.times.rWavesMs();
    if (set.angleInFile)
        if (const CodedWord word = teeView(set.views[view].angleDeg); !word.value.empty()) image.view = word;
    image.runLength = set.runLength;
    return writeUsImage(image, file);
}

core::Result<void> writeDoppler(const DopplerImage& doppler, const fs::path& file) {
    const DopplerStill& still = doppler.still;
    UsImage image;
    image.facts = doppler.facts;
    image.frames = {dopplerPicture(doppler)};
    image.heartRatePerMin = doppler.heartRatePerMin();
    image.typeOfEcho = "0004";
    UsRegion spectrum;
    spectrum.format = UsRegion::Spectral;
    spectrum.data = UsRegion::ContinuousWave;
    spectrum.x0 = still.x0;
    spectrum.y0 = still.y0;
    spectrum.x1 = still.x1;
    spectrum.y1 = still.y1;
    spectrum.unitX = UsRegion::Second;
    spectrum.unitY = UsRegion::CentimetrePerSecond;
    spectrum.deltaX = still.secondsPerPixel;
    spectrum.deltaY = -still.cmPerSPerPixel; // downwards is away from the probe: negative
    spectrum.referencePixel = Eigen::Vector2i(still.x0, still.baselineY);
    UsRegion ecg;
    ecg.format = UsRegion::WaveForm;
    ecg.data = UsRegion::Ecg;
    ecg.x0 = still.ecg.x0;
    ecg.y0 = still.ecg.y0;
    ecg.x1 = still.ecg.x1;
    ecg.y1 = still.ecg.y1;
    ecg.unitX = UsRegion::Second;
    ecg.unitY = UsRegion::NoUnit;
    ecg.deltaX = still.ecg.secondsPerPixel;
    ecg.referencePixel = Eigen::Vector2i(still.ecg.x0, still.ecg.baselineY());
    image.regions = {spectrum, ecg};
    return writeUsImage(image, file);
}

core::Result<void> writeVolume(const Procedure& procedure, const EchoVolumeSeries& series, const fs::path& file,
                               const core::WorkContext& work) {
    EchoVolumeImage image;
    image.facts = series.facts;
    image.volumeFrameOfReferenceUid = series.volumeFrameOfReferenceUid;
    image.grid = series.grid;
    image.beatMs = series.beatMs;
    EchoVolumeOptions options;
    options.blurFwhmMm = series.blurFwhmMm;
    options.halfAngleDeg = series.halfAngleDeg;
    options.levels.lung = kShadowedLung;
    for (const double percent : series.percents) {
        options.seed = series.seed + image.volumes.size();
        auto volume = echoVolume(procedure.heartIn(series.state).at(percent).scene, series.grid,
                                 series.patientFromVolume(), options, {work.stop, {}});
        if (!volume) return tl::unexpected(volume.error());
        image.volumes.push_back(*std::move(volume));
        image.triggerMs.push_back(percent / 100.0 * series.beatMs);
    }
    return writeEchoVolume(image, file);
}

core::Result<void> writeFluoro(const Procedure& procedure, const FluoroRun& run, const fs::path& file,
                               const core::WorkContext& work) {
    auto frames = fluoroFrames(procedure, run, work);
    if (!frames) return core::failure(core::ErrorCode::Cancelled, "Writing the sample case was stopped.");
    XaRun image;
    image.facts = run.facts;
    image.arm = run.arm;
    image.frames = *std::move(frames);
    image.frameMs = run.times.frameMs;
    return writeXaRun(image, file);
}

std::vector<const ImageFacts*> allFacts(const Procedure& procedure) {
    std::vector<const ImageFacts*> all;
    for (const EchoSet& set : procedure.echo)
        for (const ImageFacts& facts : set.facts)
            all.push_back(&facts);
    for (const DopplerImage& doppler : procedure.doppler)
        all.push_back(&doppler.facts);
    for (const EchoVolumeSeries& volume : procedure.volumes)
        all.push_back(&volume.facts);
    for (const FluoroRun& run : procedure.fluoro)
        all.push_back(&run.facts);
    return all;
}

} // namespace

Picture echoFrame(const EchoSet& set, std::size_t view, const BMode& mode, const Heart& heart, int frame) {
    const EchoPlane& plane = set.views[view];
    Picture picture(plane.fan.columns, plane.fan.rows, 1);
    mode.draw(heart.scene, frame, picture);
    picture.text(10, 10, kInvented, kText, 2);
    picture.text(10, 32, "TRANSESOPHAGEAL ECHO, NO PATIENT", kFaint);
    picture.text(10, 44, "HR " + whole(60000.0 / set.times.beatMs) + "  FR " + whole(1000.0 / set.times.frameMs), kFaint);
    drawDial(picture, plane.fan.columns - 50, 30, plane.angleDeg);
    drawDepthScale(picture, plane.fan);
    drawEcg(picture, set.ecg, set.times.rWavesMs(), frame * set.times.frameMs, kText);
    return picture;
}

Picture dopplerPicture(const DopplerImage& image) {
    Picture picture = image.still.draw();
    picture.text(10, 10, kInvented, kText, 2);
    picture.text(10, 32, "TRANSESOPHAGEAL ECHO, NO PATIENT", kFaint);
    picture.text(10, 44, "MITRAL INFLOW CW  HR " + whole(image.heartRatePerMin()), kFaint);
    return picture;
}

std::optional<std::vector<Picture>> fluoroFrames(const Procedure& procedure, const FluoroRun& run,
                                                 const core::WorkContext& work) {
    const BeatingHeart heart = procedure.heartIn(run.state);
    const LineIntegrals background =
        backgroundIntegrals(heart.at(procedure.law.percent).scene, run.arm, run.options);
    const LineIntegrals catheter = catheterLengths(run.catheter, run.arm);
    // Frames at the same place in the beat share their contrast.
    std::map<long, LineIntegrals> byPercent;
    std::vector<double> percents;
    for (int frame = 0; frame < run.times.frames; ++frame)
        if (byPercent.try_emplace(std::lround(1000.0 * run.times.percentAt(frame))).second)
            percents.push_back(run.times.percentAt(frame));
    core::parallelFor(percents.size(), 1, [&](std::size_t begin, std::size_t end) {
        for (std::size_t i = begin; i < end && !work.stopped(); ++i)
            byPercent.at(std::lround(1000.0 * percents[i])) = contrastLengths(heart.at(percents[i]).scene, run.arm);
    });
    if (work.stopped()) return std::nullopt;
    std::vector<Picture> frames(static_cast<std::size_t>(run.times.frames), Picture(run.arm.columns, run.arm.rows, 1));
    const auto angle = [](double degrees, const char* plus, const char* minus) {
        return std::string(degrees < 0.0 ? minus : plus) + " " + whole(std::abs(degrees)) + "~";
    };
    core::parallelFor(frames.size(), 1, [&](std::size_t begin, std::size_t end) {
        for (std::size_t i = begin; i < end && !work.stopped(); ++i) {
            const int frame = static_cast<int>(i);
            frames[i] = exposeFrame(background, byPercent.at(std::lround(1000.0 * run.times.percentAt(frame))),
                                    catheter, run.fillingAt(frame), run.arm, run.options, frame);
            frames[i].text(10, 10, kInvented, Colour::grey(20), 2);
            frames[i].text(10, 32, angle(run.arm.primaryDeg, "LAO", "RAO") + "  " + angle(run.arm.secondaryDeg, "CRAN", "CAUD"),
                           Colour::grey(20));
        }
    });
    if (work.stopped()) return std::nullopt;
    return frames;
}

fs::path fileOf(const ImageFacts& facts) {
    return fs::path(facts.modality == "XA" ? "fluoroscopy" : "echo") /
           ("series-" + std::to_string(facts.seriesNumber) + ".dcm");
}

std::vector<fs::path> procedureFiles(const Procedure& procedure) {
    std::vector<fs::path> files;
    for (const ImageFacts* facts : allFacts(procedure))
        files.push_back(fileOf(*facts));
    return files;
}

core::Result<std::vector<fs::path>> writeProcedure(const Procedure& procedure, const fs::path& folder,
                                                   const core::WorkContext& work) {
    std::vector<fs::path> files;
    const double total = static_cast<double>(procedureFiles(procedure).size());
    const auto done = [&](const fs::path& file, const core::Result<void>& written) -> core::Result<void> {
        if (!written) return written;
        files.push_back(file);
        work.report(static_cast<double>(files.size()) / total);
        if (work.stopped()) return core::failure(core::ErrorCode::Cancelled, "Writing the sample case was stopped.");
        return {};
    };
    const auto path = [&](const ImageFacts& facts) { return folder / fileOf(facts); };
    for (const EchoSet& set : procedure.echo)
        for (std::size_t view = 0; view < set.views.size(); ++view) {
            const fs::path file = path(set.facts[view]);
            if (const auto ok = done(file, writeEchoView(procedure, set, view, file, work)); !ok)
                return tl::unexpected(ok.error());
        }
    for (const DopplerImage& doppler : procedure.doppler) {
        const fs::path file = path(doppler.facts);
        if (const auto ok = done(file, writeDoppler(doppler, file)); !ok) return tl::unexpected(ok.error());
    }
    for (const EchoVolumeSeries& volume : procedure.volumes) {
        const fs::path file = path(volume.facts);
        if (const auto ok = done(file, writeVolume(procedure, volume, file, work)); !ok)
            return tl::unexpected(ok.error());
    }
    for (const FluoroRun& run : procedure.fluoro) {
        const fs::path file = path(run.facts);
        if (const auto ok = done(file, writeFluoro(procedure, run, file, work)); !ok)
            return tl::unexpected(ok.error());
    }
    return files;
}

} // namespace gauge::sample_case
