#include "tests/bench/compare/libraries.h"

#include <algorithm>
#include <opencv2/core.hpp>
#include <opencv2/imgproc.hpp>

namespace gauge::bench {
namespace {

using Sets = std::vector<std::vector<cv::Point2f>>;

Sets pointsOf(const std::vector<Stage::Points>& all) {
    Sets sets;
    for (const auto& points : all) {
        auto& set = sets.emplace_back();
        for (const auto& p : points)
            set.emplace_back(static_cast<float>(p.x()), static_cast<float>(p.y()));
    }
    return sets;
}

Contestant fits(Stage& stage) {
    cv::setNumThreads(2);
    auto sets = std::make_shared<const Sets>(pointsOf(stage.ellipsePoints()));
    return {"OpenCV, fitEllipseDirect", 1, timed([sets] {
                double sum = 0.0;
                for (const auto& points : *sets) {
                    const cv::RotatedRect box = cv::fitEllipseDirect(points);
                    sum += 0.5 * (box.size.width + box.size.height);
                }
                return [sum, n = sets->size()] { return sum / static_cast<double>(n); };
            })};
}

/// Perimeter of the points, hull, its longest pair, least width: by minAreaRect, the library's own rotating calipers, whose
/// shorter side is the least width or a little more.
double calipersOf(const std::vector<cv::Point2f>& points, std::vector<cv::Point2f>& hull) {
    cv::convexHull(points, hull);
    float longest = 0.0f;
    for (std::size_t a = 0; a < hull.size(); ++a)
        for (std::size_t b = a + 1; b < hull.size(); ++b) {
            const cv::Point2f d = hull[a] - hull[b];
            longest = std::max(longest, d.dot(d));
        }
    const cv::RotatedRect box = cv::minAreaRect(hull);
    return cv::arcLength(points, true) + std::sqrt(static_cast<double>(longest)) + std::min(box.size.width, box.size.height);
}

Contestant calipers(Stage& stage) {
    auto sets = std::make_shared<const Sets>(pointsOf(stage.contourPoints()));
    return {"OpenCV, hull and minAreaRect", 1, timed([sets] {
                double sum = 0.0;
                std::vector<cv::Point2f> hull;
                for (const auto& points : *sets)
                    sum += calipersOf(points, hull);
                return [sum, n = sets->size()] { return sum / static_cast<double>(n); };
            })};
}

} // namespace

Library openCv() {
    return {"OpenCV", true, {{Task::EllipseFits, fits}, {Task::Calipers, calipers}}, {}};
}

} // namespace gauge::bench
