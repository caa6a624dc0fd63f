#include "tests/phantoms/phantom_run.h"

#include "core/geometry/polyline.h"

#include <algorithm>
#include <cstdio>

namespace gauge::tests {
namespace {

using core::Section;
using sample_case::Phantom;

/// The program's own section against the truth in the same plane.
void compareSection(const Phantom& phantom, const Section& section, ShapeResult& result) {
    const auto truth = phantom.section({section.frame.origin, section.frame.normal}, section.center);
    if (!truth) {
        result.failures.push_back(phantom.description() + ": no true section where one was measured");
        return;
    }
    const auto& m = section.metrics;
    result.errors["D_P"].add(m.perimeterDerivedDiameterMm.value - truth->metrics.perimeterDerivedDiameterMm);
    result.errors["D_A"].add(m.areaDerivedDiameterMm.value - truth->metrics.areaDerivedDiameterMm);
    result.errors["longest"].add(m.longestDiameterMm.value - truth->metrics.longestDiameterMm);
    result.errors["shortest"].add(m.shortestDiameterMm.value - truth->metrics.shortestDiameterMm);
    result.errors["area %"].add(100.0 * (m.areaMm2.value / truth->metrics.areaMm2 - 1.0));
}

void compareWhole(const Phantom& phantom, const core::AppendageMeasurement& m, ShapeResult& result) {
    compareSection(phantom, m.ostium.section, result);
    for (const auto& zone : m.landingZones)
        compareSection(phantom, zone.section, result);
    const auto interior = phantom.interior();
    result.errors["ostium centre"].add(core::distanceMm(m.ostium.section.center, phantom.ostium.section.center));
    result.errors["ostium normal deg"].add(
        core::angleBetweenDeg(m.ostium.section.frame.normal, phantom.ostium.plane.normal));
    result.errors["depth along axis"].add(m.depthAlongAxisMm.value - phantom.axisLengthMm());
    result.errors["depth from plane"].add(m.depthFromOstiumPlaneMm.value - interior.farthestFromPlaneMm);
    result.errors["volume %"].add(100.0 * (m.volumeMl.value / interior.volumeMl - 1.0));
    // The last point is the wall itself.
    for (std::size_t i = 0; i + 1 < m.axis.points.size(); ++i)
        result.axisPointsOutside += !phantom.insidePool(m.axis.points[i]);
}

} // namespace

double Errors::quantile(double share) const {
    if (m_values.empty()) return 1e9;
    std::sort(m_values.begin(), m_values.end());
    const auto at = static_cast<std::size_t>(share * static_cast<double>(m_values.size() - 1) + 0.5);
    return m_values[at];
}

const Errors& ShapeResult::of(const std::string& name) const {
    static const Errors none;
    const auto found = errors.find(name);
    return found == errors.end() ? none : found->second;
}

core::AppendageMarks marksOf(const Phantom& phantom, bool landmarks) {
    core::AppendageMarks marks;
    marks.atrium = phantom.marks.atrium;
    marks.tip = phantom.marks.tip;
    if (landmarks) {
        marks.circumflex = phantom.marks.circumflex;
        marks.ridge = phantom.marks.ridge;
    }
    return marks;
}

ShapeResult runShape(sample_case::Shape shape, int seeds) {
    ShapeResult result;
    result.shape = shape;
    for (int seed = 1; seed <= seeds; ++seed) {
        const Phantom phantom = sample_case::makePhantom(shape, static_cast<std::uint64_t>(seed));
        const auto volume = phantom.rasterise();
        core::AppendageOptions options;
        options.landingDepthsMm = {5.0, 10.0};
        options.profileStepMm = 4.0; // the profile's sections are measured like the landing zones; here a few do
        ++result.tried;
        const auto measured = core::measureAppendage(volume, marksOf(phantom, true), options);
        if (measured) {
            ++result.measured;
            compareWhole(phantom, *measured, result);
        } else {
            result.failures.push_back(phantom.description() + ": " + measured.error().message);
        }
        options.landingDepthsMm.clear();
        const auto proposed = core::measureAppendage(volume, marksOf(phantom, false), options);
        if (!proposed) continue;
        result.proposals.push_back(
            {proposed->ostium.confidence.value_or(-1.0),
             core::distanceMm(proposed->ostium.section.center, phantom.ostium.section.center),
             core::angleBetweenDeg(proposed->ostium.section.frame.normal, phantom.ostium.plane.normal)});
    }
    return result;
}

void print(const ShapeResult& r) {
    std::printf("%s: %d of %d measured, %d axis points outside the blood\n",
                std::string(sample_case::name(r.shape)).c_str(), r.measured, r.tried, r.axisPointsOutside);
    for (const auto& [what, errors] : r.errors)
        std::printf("  %-18s median %6.3f  p95 %6.3f  (%zu)\n", what.c_str(), errors.median(), errors.p95(),
                    errors.count());
    int good = 0;
    for (const auto& p : r.proposals)
        good += p.good();
    std::printf("  proposals %zu, good %d\n", r.proposals.size(), good);
    for (const auto& f : r.failures)
        std::printf("  ! %s\n", f.c_str());
    std::fflush(stdout);
}

} // namespace gauge::tests
