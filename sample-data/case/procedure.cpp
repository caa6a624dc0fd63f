#include "sample-data/case/procedure.h"

#include "sample-data/case/json_vector.h"
#include "sample-data/case/sample_case.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace gauge::sample_case {
namespace {

using nlohmann::json;

constexpr double kFrenchMm = 1.0 / 3.0;
/// How closely a widening is found: a tenth of what two sections of one scene differ by on their grids.
constexpr double kLawMm = 1e-4;

tl::unexpected<core::Error> refuse(const std::string& finding) {
    return core::failure(core::ErrorCode::InvalidArgument, "Cannot build the sample case: " + finding);
}

std::optional<double> landingDiameter(const BeatingHeart& heart, const PressureLaw& law) {
    const Heart now = heart.at(law.percent);
    const core::Plane plane = landingPlane(now, law.landingDepthMm);
    const auto section = trueSection(now.scene, plane, plane.point);
    if (!section) return std::nullopt;
    return section->metrics.perimeterDerivedDiameterMm;
}

/// The widening with which the landing zone's perimeter-derived diameter is `wanted`: secant steps from the ratio.
std::optional<double> widthFactorFor(double wanted, double described, const std::shared_ptr<const json>& given,
                                     double veinGapMm, const PressureLaw& law) {
    const auto error = [&](double factor) -> std::optional<double> {
        const auto diameter = landingDiameter(BeatingHeart(given, factor, veinGapMm), law);
        if (!diameter) return std::nullopt;
        return *diameter - wanted;
    };
    double before = 1.0, factor = wanted / described;
    double errorBefore = described - wanted;
    for (int step = 0; step < 12; ++step) {
        const auto now = error(factor);
        if (!now) return std::nullopt;
        if (std::abs(*now) < kLawMm) return factor;
        if (*now == errorBefore) return std::nullopt;
        const double next = factor - *now * (factor - before) / (*now - errorBefore);
        before = factor;
        errorBefore = *now;
        factor = next;
    }
    return std::nullopt;
}

core::Result<PressureLaw> readLaw(const std::shared_ptr<const json>& given, double veinGapMm, double ctDiameterMm) {
    const json& part = given->at("pressure");
    PressureLaw law;
    law.slopeAt12MmPerMmHg = part.at("slope_mm_per_mmhg_at_12").get<double>();
    law.landingDepthMm = part.at("landing_depth_mm").get<double>();
    law.percent = part.at("percent").get<double>();
    for (const json& described : part.at("states")) {
        PressureState state;
        state.id = described.at("id").get<std::string>();
        state.stage = described.at("stage").get<std::string>();
        state.how = described.at("how").get<std::string>();
        state.date = described.at("date").get<std::string>();
        state.time = described.at("time").get<std::string>();
        state.meanMmHg = described.at("mean_mmhg").get<double>();
        state.vWaveMmHg = described.at("v_wave_mmhg").get<double>();
        if (!(state.meanMmHg > 0.0)) return refuse("the pressure of state \"" + state.id + "\" must be above 0.");
        const double ctMmHg = law.states.empty() ? state.meanMmHg : law.states.front().meanMmHg;
        state.landingDiameterMm =
            ctDiameterMm + law.slopeAt12MmPerMmHg * 12.0 * std::log(state.meanMmHg / ctMmHg);
        if (!law.states.empty()) {
            const auto factor = widthFactorFor(state.landingDiameterMm, ctDiameterMm, given, veinGapMm, law);
            if (!factor)
                return refuse("no widening of the appendage gives the landing zone of state \"" + state.id + "\".");
            state.widthFactor = *factor;
        }
        law.states.push_back(state);
    }
    if (law.states.empty()) return refuse("no pressure state is described.");
    return law;
}

/// Reads the parts of a procedure whose law is known.
class Reader {
public:
    Reader(Procedure& procedure, const ImageFacts& base) : m_procedure(procedure), m_base(base) {
        const json& part = m_procedure.given->at("procedure");
        m_base.studyDescription = part.at("description").get<std::string>();
        m_base.date = part.at("date").get<std::string>();
        m_base.studyTime = part.at("time").get<std::string>();
        m_base.studyText += "/procedure";
        m_beatMs = 60000.0 / part.at("heart_rate_per_min").get<double>();
        // The probe is aimed once, at the heart as it is before the repair, and stays.
        const Heart heart = m_procedure.heartIn(std::min<std::size_t>(1, m_procedure.law.states.size() - 1))
                                .at(m_procedure.law.percent);
        const double s = ostiumPlane(heart).axisS + part.at("probe_looks_at_s").get<double>();
        const Eigen::Vector3d apex = vectorFrom(part.at("probe_from_centre"));
        m_probeInBlood = heart.scene.pool(apex) < heart.scene.wallMm;
        m_probe = probeLookingAt(heart.scene.patientFrom(apex),
                                 heart.scene.patientFrom(heart.scene.lobes.front().curve.at(s).point));
    }

    core::Result<void> read() {
        if (m_probeInBlood) return refuse("the probe lies in the atrium or its wall.");
        for (const json& set : part("echo").at("sets"))
            if (auto read = echoSet(set); !read) return read;
        if (auto read = doppler(part("doppler")); !read) return read;
        if (auto read = volume(part("echo_volume")); !read) return read;
        for (const json& run : part("fluoroscopy").at("runs"))
            if (auto read = fluoroRun(part("fluoroscopy"), run); !read) return read;
        return {};
    }

private:
    const json& part(const char* name) const { return m_procedure.given->at(name); }

    core::Result<std::size_t> stateOf(const json& given) const {
        const auto wanted = given.at("state").get<std::string>();
        const auto& states = m_procedure.law.states;
        const auto found =
            std::find_if(states.begin(), states.end(), [&](const auto& state) { return state.id == wanted; });
        if (found == states.end()) return refuse("the pressure state \"" + wanted + "\" is not described.");
        return static_cast<std::size_t>(found - states.begin());
    }
    ImageFacts facts(const std::string& modality, int series, const std::string& description,
                     const std::string& time) const {
        ImageFacts facts = m_base;
        facts.modality = modality;
        facts.seriesNumber = series;
        facts.seriesDescription = description + " (invented)";
        facts.time = time;
        facts.seriesText = m_base.studyText + "/series " + std::to_string(series);
        return facts;
    }
    CineTimes times(const json& given) const {
        return {given.at("frames").get<int>(), given.at("frame_ms").get<double>(),
                given.at("first_r_wave_ms").get<double>(), m_beatMs};
    }

    core::Result<void> echoSet(const json& given) {
        const json& all = part("echo");
        const auto state = stateOf(given);
        if (!state) return tl::unexpected(state.error());
        EchoSet set;
        set.state = *state;
        FanLayout fan;
        const auto size = all.at("size").get<std::array<int, 2>>();
        const auto apex = all.at("apex_pixel").get<std::array<int, 2>>();
        fan.columns = size[0];
        fan.rows = size[1];
        fan.apexPixel = {apex[0], apex[1]};
        fan.mmPerPixel = all.at("mm_per_pixel").get<double>();
        fan.depthMm = all.at("depth_mm").get<double>();
        fan.halfAngleDeg = all.at("half_angle_deg").get<double>();
        set.times = times(all);
        set.angleInFile = given.at("angle_in_file").get<bool>();
        set.runLength = given.at("run_length").get<bool>();
        set.options.seed = all.at("seed").get<std::uint64_t>() + 1000 * set.state;
        int series = given.at("first_series").get<int>();
        for (const double angle : all.at("angles_deg").get<std::vector<double>>()) {
            set.views.push_back({m_probe, angle, fan});
            set.facts.push_back(facts("US", series++,
                                      given.at("description").get<std::string>() + ", view " +
                                          std::to_string(set.views.size()),
                                      given.at("time").get<std::string>()));
        }
        m_procedure.echo.push_back(std::move(set));
        return {};
    }

    core::Result<void> doppler(const json& given) {
        const auto state = stateOf(given);
        if (!state) return tl::unexpected(state.error());
        DopplerImage image;
        image.state = *state;
        image.facts = facts("US", given.at("series").get<int>(), given.at("description").get<std::string>(),
                            given.at("time").get<std::string>());
        image.still.rWavesMs = given.at("r_waves_ms").get<std::vector<double>>();
        for (const json& beat : given.at("beats"))
            image.still.beats.push_back({beat.at("start_ms").get<double>(), beat.at("end_ms").get<double>(),
                                         beat.at("peak_m_per_s").get<double>()});
        image.still.seed = given.at("seed").get<std::uint64_t>();
        image.still.ecg = {image.still.x0, 436, image.still.x1, 474, image.still.secondsPerPixel};
        m_procedure.doppler.push_back(std::move(image));
        return {};
    }

    core::Result<void> volume(const json& given) {
        const auto state = stateOf(given);
        if (!state) return tl::unexpected(state.error());
        EchoVolumeSeries volume;
        volume.state = *state;
        volume.facts = facts("US", given.at("series").get<int>(), given.at("description").get<std::string>(),
                             given.at("time").get<std::string>());
        volume.facts.frameOfReferenceUid = uidFrom(volume.facts.seriesText + "/frame of reference");
        volume.volumeFrameOfReferenceUid = uidFrom(volume.facts.seriesText + "/volume frame of reference");
        volume.probe = m_probe;
        volume.percents = given.at("percents").get<std::vector<double>>();
        volume.blurFwhmMm = given.at("blur_fwhm_mm").get<double>();
        volume.halfAngleDeg = given.at("half_angle_deg").get<double>();
        volume.seed = given.at("seed").get<std::uint64_t>();
        volume.beatMs = m_beatMs;
        const double spacing = given.at("spacing_mm").get<double>();
        const double half = given.at("half_width_mm").get<double>();
        const auto depth = given.at("depth_mm").get<std::array<double, 2>>();
        // Planes hold x (columns) and z (rows, along the beam) and follow each other along -y.
        const int across = static_cast<int>(std::lround(2.0 * half / spacing));
        volume.grid.size = {across, static_cast<int>(std::lround((depth[1] - depth[0]) / spacing)), across};
        volume.grid.spacingMm = Eigen::Vector3d::Constant(spacing);
        volume.grid.axes << 1, 0, 0, 0, 0, -1, 0, 1, 0;
        const double first = 0.5 * (across - 1) * spacing;
        volume.grid.firstVoxelMm = {-first, first, depth[0] + 0.5 * spacing};
        m_procedure.volumes.push_back(std::move(volume));
        return {};
    }

    core::Result<void> fluoroRun(const json& given, const json& runGiven) {
        const auto state = stateOf(given);
        if (!state) return tl::unexpected(state.error());
        FluoroRun run;
        run.state = *state;
        run.facts = facts("XA", runGiven.at("series").get<int>(), given.at("description").get<std::string>(),
                          runGiven.at("time").get<std::string>());
        run.times = times(given);
        const auto size = given.at("size").get<std::array<int, 2>>();
        const Heart heart = m_procedure.heartIn(run.state).at(m_procedure.law.percent);
        const auto place = [&](const Eigen::Vector3d& x) { return heart.scene.patientFrom(x); };
        run.arm.columns = size[0];
        run.arm.rows = size[1];
        run.arm.isocentre = place(vectorFrom(given.at("isocentre_from_centre")));
        run.arm.primaryDeg = runGiven.at("primary_deg").get<double>();
        run.arm.secondaryDeg = runGiven.at("secondary_deg").get<double>();
        run.arm.imagerSpacingMm = given.at("imager_spacing_mm").get<double>();
        run.arm.sidMm = given.at("sid_mm").get<double>();
        run.arm.sodMm = given.at("sod_mm").get<double>();
        const json& catheter = given.at("catheter");
        std::vector<core::PatientPoint> places;
        for (const json& at : catheter.at("places_from_centre"))
            places.push_back(place(vectorFrom(at)));
        // The straight end runs along lobe 0's axis where it is straight.
        const CentreCurve& axis = heart.scene.lobes.front().curve;
        const CentreCurve::Frame mouth = axis.at(0.0);
        const double ostium = ostiumPlane(heart).axisS;
        for (const char* key : {"straight_from_s", "tip_at_s"})
            places.push_back(place(mouth.point + (ostium + catheter.at(key).get<double>()) * mouth.tangent));
        run.catheterFrench = catheter.at("french").get<double>();
        run.catheter = catheterThrough(places, run.catheterFrench * kFrenchMm);
        run.stationBeforeTipMm = catheter.at("station_before_tip_mm").get<double>();
        run.contrastArrivesMs = given.at("contrast_arrives_ms").get<double>();
        run.contrastFullMs = given.at("contrast_full_ms").get<double>();
        run.options.seed = given.at("seed").get<std::uint64_t>() + m_procedure.fluoro.size();
        m_procedure.fluoro.push_back(std::move(run));
        return {};
    }

    Procedure& m_procedure;
    ImageFacts m_base;
    double m_beatMs = 800.0;
    EchoProbe m_probe;
    bool m_probeInBlood = false;
};

} // namespace

double CineTimes::percentAt(int frame) const {
    const double since = frame * frameMs - firstRWaveMs;
    return 100.0 * (since - beatMs * std::floor(since / beatMs)) / beatMs;
}

std::vector<double> CineTimes::rWavesMs() const {
    std::vector<double> waves;
    for (double at = firstRWaveMs; at <= frames * frameMs; at += beatMs)
        waves.push_back(at);
    return waves;
}

int FluoroRun::fullFrameNearest(double percent) const {
    const int nearest = times.frameNearest(percent);
    for (int later = nearest; later < times.frames; ++later)
        if (fillingAt(later) >= 1.0 && std::abs(times.percentAt(later) - times.percentAt(nearest)) < 1e-6) return later;
    return nearest;
}

int CineTimes::frameNearest(double percent) const {
    int best = 0;
    double least = 1e9;
    for (int frame = 0; frame < frames; ++frame) {
        const double away = std::abs(std::remainder(percentAt(frame) - percent, 100.0));
        if (away < least - 1e-6) {
            best = frame;
            least = away;
        }
    }
    return best;
}

std::vector<InflowBeat> DopplerImage::wholeBeats() const {
    std::vector<InflowBeat> whole;
    const double end = 1000.0 * still.secondsPerPixel * (still.x1 - still.x0);
    for (const InflowBeat& beat : still.beats)
        if (beat.startMs >= 0.0 && beat.endMs <= end) whole.push_back(beat);
    return whole;
}

double DopplerImage::meanGradientMmHg() const {
    double sum = 0.0;
    const auto beats = wholeBeats();
    for (const InflowBeat& beat : beats)
        sum += sample_case::meanGradientMmHg(beat);
    return beats.empty() ? 0.0 : sum / static_cast<double>(beats.size());
}

double DopplerImage::heartRatePerMin() const {
    const auto& waves = still.rWavesMs;
    if (waves.size() < 2) return 0.0;
    return 60000.0 * static_cast<double>(waves.size() - 1) / (waves.back() - waves.front());
}

Eigen::Isometry3d EchoVolumeSeries::patientFromVolume() const {
    Eigen::Isometry3d transform = Eigen::Isometry3d::Identity();
    transform.linear().col(0) = probe.left.mm;
    transform.linear().col(1) = probe.beam.cross(probe.left).mm;
    transform.linear().col(2) = probe.beam.mm;
    transform.translation() = probe.apex.mm;
    return transform;
}

double FluoroRun::fillingAt(int frame) const {
    const double t = (frame * times.frameMs - contrastArrivesMs) / (contrastFullMs - contrastArrivesMs);
    const double held = std::clamp(t, 0.0, 1.0);
    return held * held * (3.0 - 2.0 * held);
}

BeatingHeart Procedure::heartIn(std::size_t state) const {
    return {given, law.states[state].widthFactor, veinGapMm};
}

core::Result<Procedure> readProcedure(std::shared_ptr<const json> given, const std::vector<SamplePhase>& ct,
                                      const ImageFacts& base) {
    Procedure procedure;
    procedure.given = given;
    const double percent = given->at("pressure").at("percent").get<double>();
    const double depth = given->at("pressure").at("landing_depth_mm").get<double>();
    const auto phase = std::find_if(ct.begin(), ct.end(),
                                    [&](const SamplePhase& p) { return std::abs(p.percent - percent) < 1e-9; });
    if (phase == ct.end())
        return refuse("no phase of the CT is at " + std::to_string(percent) + " %, where the pressure law is stated.");
    procedure.veinGapMm = phase->veinGapMm;
    const core::Plane plane = trueAxisPlane(phase->scene, phase->ostium, depth);
    const auto landing = trueSection(phase->scene, plane, plane.point);
    if (!landing) return refuse("the landing zone of the pressure law opens into the atrium.");
    auto law = readLaw(given, procedure.veinGapMm, landing->metrics.perimeterDerivedDiameterMm);
    if (!law) return tl::unexpected(law.error());
    procedure.law = *std::move(law);
    if (const auto read = Reader(procedure, base).read(); !read) return tl::unexpected(read.error());
    return procedure;
}

std::optional<ViewChord> viewChord(const Heart& heart, const EchoPlane& view, const core::Plane& across) {
    const EchoProbe& probe = view.probe;
    const double depth = (across.point - probe.apex).dot(across.normal) / probe.beam.dot(across.normal);
    core::PatientVector along = across.normal.cross(view.normal());
    if (along.dot(view.lateral()) < 0.0) along = -along;
    const auto chord = trueChord(heart.scene, probe.apex + probe.beam * depth, along);
    if (!chord) return std::nullopt;
    return ViewChord{*chord, view.pixelFromPatient(chord->first), view.pixelFromPatient(chord->second), depth};
}

ProjectedWidth projectedWidth(const TrueSection& section, const CArm& arm) {
    const Eigen::Vector2d centre = arm.pixelOf(section.center);
    const Eigen::Vector2d axis = (arm.pixelOf(section.center + section.frame.normal) - centre).normalized();
    const Eigen::Vector2d across(-axis.y(), axis.x());
    ProjectedWidth width;
    double low = 1e9, high = -1e9;
    for (const Eigen::Vector2d& point : section.contour) {
        const Eigen::Vector2d pixel = arm.pixelOf(section.frame.patientFromSection(point));
        const double at = (pixel - centre).dot(across);
        if (at < low) low = at, width.firstPixel = pixel;
        if (at > high) high = at, width.secondPixel = pixel;
    }
    const double mmPerPixel = arm.imagerSpacingMm / arm.magnificationAt(section.center);
    width.widthMm = (high - low) * mmPerPixel;
    width.distanceMm = (width.secondPixel - width.firstPixel).norm() * mmPerPixel;
    width.centreDepthMm = arm.sidMm / arm.magnificationAt(section.center);
    width.fromEdgeOnDeg =
        std::asin(std::abs(section.frame.normal.dot(arm.towardsDetector()))) * 180.0 / std::numbers::pi;
    return width;
}

} // namespace gauge::sample_case
