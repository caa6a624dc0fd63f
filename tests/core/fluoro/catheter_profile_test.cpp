// Simulated pieces of catheter: tubes and full bars of known width, drawn by another way of integration,
// blurred and noisy, over many seeds. The stated uncertainty must cover the truth as often as it says.
#include "core/fluoro/catheter_profile.h"

#include "tests/core/fluoro/expect.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <gmock/gmock.h>
#include <iostream>
#include <random>

using namespace gauge::core;
using namespace gauge::test;
using Eigen::Vector2d;
using testing::HasSubstr;

namespace {

struct Tube {
    double widthPx = 15.0;
    double boreRatio = 0.0; ///< bore over outer width; 0 is a full bar
    double boreShare = 1.0; ///< how much of the wall's attenuation the bore's content lacks
    double blurPx = 1.0;
    double depth = -60.0; ///< grey values of a full bar's middle
    double noise = 8.0;
    double sharedNoisePx = 0.0; ///< blur of the noise
    double angleDeg = 20.0;
    double bendPx = 0.0; ///< sagitta over the piece
    double slope = 0.2;  ///< of the background across, grey values a pixel
    Vector2d middle = {48.3, 47.6};
};

/// Shadow across the tube, blurred by Gauss and by the pixel's own width, on a fine grid by plain summation.
class Shadow {
public:
    explicit Shadow(const Tube& tube) {
        const double r = 0.5 * tube.widthPx, inner = tube.boreRatio * r;
        const auto sharp = [&](double u) {
            const double full = std::abs(u) < r ? std::sqrt(r * r - u * u) / r : 0.0;
            const double bore = std::abs(u) < inner ? std::sqrt(inner * inner - u * u) / r : 0.0;
            return full - tube.boreShare * bore;
        };
        std::vector<double> kernel;
        const int half = static_cast<int>(std::ceil((5.0 * tube.blurPx + 0.5) / kStep));
        for (int i = -half; i <= half; ++i) { // Gauss folded with a box of one pixel
            const double x = i * kStep, s = tube.blurPx * std::sqrt(2.0);
            kernel.push_back(0.5 * (std::erf((x + 0.5) / s) - std::erf((x - 0.5) / s)) * kStep);
        }
        std::vector<double> fine;
        const int count = static_cast<int>(kReach / kStep);
        for (int i = -count - half; i <= count + half; ++i) // mean over a grid step: the edge is steep
            fine.push_back(0.25 * (sharp((i - 0.375) * kStep) + sharp((i - 0.125) * kStep) +
                                   sharp((i + 0.125) * kStep) + sharp((i + 0.375) * kStep)));
        for (int i = 0; i <= 2 * count; ++i) {
            double sum = 0.0;
            for (int k = 0; k <= 2 * half; ++k)
                sum += kernel[static_cast<std::size_t>(k)] * fine[static_cast<std::size_t>(i + k)];
            m_values.push_back(sum);
        }
    }
    double at(double t) const {
        const double place = (t + kReach) / kStep;
        if (place < 0.0 || place >= static_cast<double>(m_values.size() - 1)) return 0.0;
        const auto i = static_cast<std::size_t>(place);
        const double f = place - static_cast<double>(i);
        return m_values[i] + f * (m_values[i + 1] - m_values[i]);
    }

private:
    static constexpr double kStep = 0.1, kReach = 30.0;
    std::vector<double> m_values;
};

struct Marks {
    Vector2d from, to;
};

/// What the fit leaves without noise: a full bar is taken for a tube with a very thin bore, 0.3 % of its
/// width.
constexpr double kQuietPx = 0.06;

constexpr int kSize = 96;
constexpr double kHalfPiecePx = 25.0;

Vector2d alongOf(const Tube& tube) {
    const double a = tube.angleDeg * M_PI / 180.0;
    return {std::cos(a), std::sin(a)};
}

Marks marksOn(const Tube& tube) {
    const Vector2d along = alongOf(tube);
    return {tube.middle - kHalfPiecePx * along, tube.middle + kHalfPiecePx * along};
}

GreyFrame picture(const Tube& tube, std::mt19937& random) {
    const Shadow shadow(tube);
    std::normal_distribution<double> normal;
    const Vector2d along = alongOf(tube), across(-along.y(), along.x());
    std::vector<double> noise(kSize * kSize);
    for (double& n : noise)
        n = tube.noise * normal(random);
    if (tube.sharedNoisePx > 0.0) { // neighbours share noise, as a detector with glare makes it
        std::vector<double> blurred(noise.size());
        const int far = static_cast<int>(std::ceil(3 * tube.sharedNoisePx));
        for (int y = 0; y < kSize; ++y)
            for (int x = 0; x < kSize; ++x)
                for (int dy = -far; dy <= far; ++dy)
                    for (int dx = -far; dx <= far; ++dx)
                        blurred[static_cast<std::size_t>(y * kSize + x)] +=
                            noise[static_cast<std::size_t>((y + dy + kSize) % kSize * kSize +
                                                           (x + dx + kSize) % kSize)] *
                            std::exp(-0.5 * (dx * dx + dy * dy) / (tube.sharedNoisePx * tube.sharedNoisePx));
        const double gain = 2.0 * std::sqrt(M_PI) * tube.sharedNoisePx; // keeps the variance, to a good part
        for (double& n : blurred)
            n /= gain;
        noise = blurred;
    }
    GreyFrame frame{kSize, kSize, std::vector<std::int32_t>(kSize * kSize)};
    for (int y = 0; y < kSize; ++y)
        for (int x = 0; x < kSize; ++x) {
            const Vector2d d = Vector2d(x, y) - tube.middle;
            const double s = d.dot(along) / kHalfPiecePx, t = d.dot(across);
            const double value = 400.0 + tube.slope * t + 0.1 * d.dot(along) +
                                 tube.depth * shadow.at(t - tube.bendPx * (s * s - 0.5)) +
                                 noise[static_cast<std::size_t>(y * kSize + x)];
            frame.values[static_cast<std::size_t>(y * kSize + x)] =
                static_cast<std::int32_t>(std::lround(value));
        }
    return frame;
}

Tube randomTube(std::mt19937& random) {
    const auto uniform = [&](double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(random);
    };
    Tube tube;
    tube.widthPx = uniform(8.0, 24.0);
    if (uniform(0, 1) < 0.7) {
        tube.boreRatio = uniform(0.55, 0.9);
        tube.boreShare = uniform(0.3, 1.0);
    }
    tube.blurPx = uniform(0.6, 1.6);
    tube.depth = -uniform(40.0, 120.0);
    // Contrast of the tube itself against the noise: between 4 and 20.
    const double seen = std::abs(tube.depth) * (1.0 - 0.6 * tube.boreRatio * tube.boreShare);
    tube.noise = std::max(0.5, seen / uniform(4.0, 20.0));
    tube.angleDeg = uniform(-90.0, 90.0);
    tube.bendPx = uniform(-0.8, 0.8);
    tube.slope = uniform(-0.4, 0.4);
    tube.middle += Vector2d(uniform(-0.5, 0.5), uniform(-0.5, 0.5));
    return tube;
}

struct Tally {
    int measured = 0, refused = 0, covered = 0;
    double bias = 0.0, squares = 0.0, stated = 0.0, worst = 0.0;
    std::vector<double> errors;
    double coverage() const { return 100.0 * covered / measured; }
};

/// Marks off the middle by up to a pixel, as a hand sets them.
Tally measureMany(int count, unsigned seed, double sharedNoisePx) {
    std::mt19937 random(seed);
    std::uniform_real_distribution<double> hand(-1.0, 1.0);
    Tally tally;
    for (int i = 0; i < count; ++i) {
        Tube tube = randomTube(random);
        tube.sharedNoisePx = sharedNoisePx;
        const auto frame = picture(tube, random);
        auto marks = marksOn(tube);
        marks.from += Vector2d(hand(random), hand(random));
        marks.to += Vector2d(hand(random), hand(random));
        const auto seen = catheterProfile(frame, marks.from, marks.to);
        if (!seen) {
            ++tally.refused;
            continue;
        }
        const double error = seen->width.px - tube.widthPx;
        ++tally.measured;
        tally.covered += std::abs(error) <= 2.0 * seen->width.standardUncertaintyPx;
        tally.bias += error / tube.widthPx;
        tally.squares += std::pow(error / seen->width.standardUncertaintyPx, 2);
        tally.stated += seen->width.standardUncertaintyPx / tube.widthPx;
        tally.errors.push_back(std::abs(error) / tube.widthPx);
    }
    tally.bias /= tally.measured;
    tally.stated /= tally.measured;
    std::sort(tally.errors.begin(), tally.errors.end());
    return tally;
}

int times(int count) {
    return std::getenv("GAUGE_LONG") ? 10 * count : count;
}

void print(const char* what, const Tally& t) {
    std::cout << what << ": measured " << t.measured << ", refused " << t.refused << ", covered at k = 2 "
              << t.coverage() << " %, bias " << 100 * t.bias << " %, error median "
              << 100 * t.errors[t.errors.size() / 2] << " %, 95th percentile "
              << 100 * t.errors[t.errors.size() * 95 / 100] << " % of the width, stated " << 100 * t.stated
              << " %\n";
}

} // namespace

TEST(CatheterProfile, MeasuresAQuietTubeToAFewHundredthsOfAPixel) {
    std::mt19937 random(1);
    for (const double ratio : {0.0, 0.7}) {
        Tube tube;
        tube.noise = 0.0;
        tube.depth = -2000.0; // so that rounding to whole grey values does not matter
        tube.boreRatio = ratio;
        const auto frame = picture(tube, random);
        const auto marks = marksOn(tube);
        const auto seen = valueOf(catheterProfile(frame, marks.from, marks.to));
        EXPECT_NEAR(seen.width.px, 15.0, kQuietPx) << ratio;
        EXPECT_TRUE(seen.dark);
        EXPECT_NEAR(seen.lengthPx, 50.0, 0.1);
        // Blur of the picture and of the pixel's own width together.
        EXPECT_NEAR(seen.blurPx, std::sqrt(1.0 + 1.0 / 12.0), 0.03);
        EXPECT_NEAR((seen.leftEdge[0] - seen.rightEdge[0]).norm(), 15.0, kQuietPx);
    }
}

TEST(CatheterProfile, MeasuresBrightTubesAlike) {
    std::mt19937 random(2);
    Tube tube;
    tube.depth = 60.0;
    tube.noise = 3.0;
    const auto frame = picture(tube, random);
    const auto marks = marksOn(tube);
    const auto seen = valueOf(catheterProfile(frame, marks.from, marks.to));
    EXPECT_FALSE(seen.dark);
    EXPECT_NEAR(seen.width.px, 15.0, 4.0 * seen.width.standardUncertaintyPx);
}

TEST(CatheterProfile, CoversTheTruthAsOftenAsItSays) {
    const Tally tally = measureMany(times(300), 20, 0.0);
    print("catheter profile, independent noise", tally);
    EXPECT_LE(tally.refused, tally.measured / 20);
    EXPECT_GE(tally.coverage(), 90.0);     // 93 % over many draws; 300 of them scatter by 1.5 %
    EXPECT_LE(std::abs(tally.bias), 0.01); // of the width; within what is stated, 3.5 % on average
}

TEST(CatheterProfile, CoversTheTruthUnderSharedNoiseToo) {
    const Tally tally = measureMany(times(100), 21, 0.7);
    print("catheter profile, noise that neighbours share", tally);
    EXPECT_GE(tally.coverage(), 90.0); // 100 draws scatter by 2.1 %
}

TEST(CatheterProfile, FindsTheTubeBesideOthersWhenToldItsWidth) {
    std::mt19937 random(3);
    Tube tube, other;
    tube.noise = 3.0;
    other = tube;
    const double angle = tube.angleDeg * M_PI / 180.0;
    other.middle += 24.0 * Vector2d(-std::sin(angle), std::cos(angle)); // 9 pixels free between them
    auto frame = picture(tube, random);
    Tube silent = other;
    silent.noise = 0.0;
    const auto second = picture(silent, random);
    for (std::size_t i = 0; i < frame.values.size(); ++i)
        frame.values[i] += second.values[i] - 400;
    const auto marks = marksOn(tube);
    CatheterProfileOptions options;
    options.roughWidthPx = 13.0;
    const auto seen = valueOf(catheterProfile(frame, marks.from, marks.to, options));
    EXPECT_NEAR(seen.width.px, 15.0, 0.5);
}

TEST(CatheterProfile, RefusesWhereNothingStandsOut) {
    std::mt19937 random(4);
    int refused = 0;
    for (int i = 0; i < 20; ++i) {
        Tube tube;
        tube.depth = 0.0;
        const auto frame = picture(tube, random);
        const auto marks = marksOn(tube);
        const auto seen = catheterProfile(frame, marks.from, marks.to);
        if (seen) continue;
        ++refused;
        EXPECT_EQ(seen.error().code, ErrorCode::ContrastPoor);
        EXPECT_THAT(seen.error().message, HasSubstr("stands out"));
    }
    EXPECT_EQ(refused, 20);
}

TEST(CatheterProfile, RefusesMarksThatCannotBe) {
    std::mt19937 random(5);
    const auto frame = picture(Tube{}, random);
    EXPECT_THAT(errorOf(catheterProfile(frame, {10, 10}, {15, 10})).message,
                HasSubstr("5.0 pixels long; at least 12"));
    EXPECT_THAT(errorOf(catheterProfile(frame, {10, 10}, {200, 10})).message,
                HasSubstr("leaves the picture"));
    EXPECT_EQ(errorOf(catheterProfile(frame, {std::nan(""), 10}, {40, 10})).code, ErrorCode::NonFinite);
    CatheterProfileOptions options;
    options.roughWidthPx = 500.0;
    EXPECT_THAT(errorOf(catheterProfile(frame, {10, 10}, {40, 10}, options)).message,
                HasSubstr("rough width"));
}
