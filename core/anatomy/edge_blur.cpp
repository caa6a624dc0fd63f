#include "core/anatomy/edge_blur.h"

#include "core/measure/section_outline.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

namespace gauge::core {
namespace {

constexpr int kSections = 5;
constexpr double kApartMm = 2.0;
constexpr double kLeastMm = 0.15, kGreatestMm = 1.2, kStepMm = 0.05;

} // namespace

double edgeBlurMm(const Volume& volume, const BloodPool& pool, const Neck& neck) {
    const auto axis = Polyline::make(neck.axis);
    if (!axis)
        return pool.edgeSigmaMm;
    std::vector<double> sigmas, misfit;
    for (double s = kLeastMm; s <= kGreatestMm + 1e-9; s += kStepMm)
        sigmas.push_back(s);
    misfit.assign(sigmas.size(), 0.0);
    int sections = 0;
    for (int i = 0; i < kSections; ++i) {
        const double s = neck.cleanMm - 0.5 - kApartMm * i;
        if (s < 4.0)
            break;
        const SectionFrame frame = frameOf({axis->pointAt(s), -axis->tangentAt(s, 2.5)});
        const SectionGuide guide = pool.guideAt(frame.origin);
        OutlineOptions options;
        options.levelHu = 0.5 * (guide.bloodHu + guide.wallHu);
        const auto outline = traceOutline(volume, frame, options);
        if (!outline)
            continue;
        ++sections;
        for (std::size_t k = 0; k < sigmas.size(); ++k) {
            const double m = edgeMisfitHu(volume, frame, outline->contour, guide, sigmas[k]);
            misfit[k] += m * m;
        }
    }
    if (sections == 0)
        return pool.edgeSigmaMm;
    const auto least = static_cast<std::size_t>(std::min_element(misfit.begin(), misfit.end()) - misfit.begin());
    if (least == 0 || least + 1 == sigmas.size())
        return sigmas[least];
    const double a = misfit[least - 1], b = misfit[least], c = misfit[least + 1];
    return sigmas[least] + kStepMm * 0.5 * (a - c) / (a - 2.0 * b + c);
}

} // namespace gauge::core
