#include "dicomio/ct/stack_geometry.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <numbers>
#include <numeric>

namespace gauge::dicomio {
namespace {

using core::ErrorCode;
using core::failure;
using core::Result;
using Slices = std::span<const SliceFacts>;

std::string mm(double value) {
    char text[32];
    std::snprintf(text, sizeof text, "%.3f mm", value);
    return text;
}

std::string degrees(double value) {
    char text[32];
    std::snprintf(text, sizeof text, "%.1f degrees", value);
    return text;
}

std::string shown(const Eigen::Vector3d& v) {
    char text[96];
    std::snprintf(text, sizeof text, "(%.5g, %.5g, %.5g)", v.x(), v.y(), v.z());
    return text;
}

tl::unexpected<core::Error> refused(ErrorCode code, const std::string& finding, Tag tag,
                                    const SliceFacts& slice) {
    return failure(code, "Cannot build a volume: " + finding,
                   {{"tag", describe(tag)}, {"file", slice.file.string()}});
}

Eigen::Vector3d normalOf(const SliceFacts& slice) {
    return slice.rowDirection.normalized().cross(slice.columnDirection.normalized()).normalized();
}

Result<void> checkDirections(const SliceFacts& slice) {
    const double row = slice.rowDirection.norm(), column = slice.columnDirection.norm();
    const double cosine = slice.rowDirection.dot(slice.columnDirection);
    const std::string who = describe(tags::ImageOrientationPatient) + " of " + label(slice);
    if (!(std::abs(row - 1.0) <= kCosineTolerance && std::abs(column - 1.0) <= kCosineTolerance))
        return refused(ErrorCode::GeometryContradictory,
                       who + " has direction cosines of length " + std::to_string(row) + " and " +
                           std::to_string(column) + "; both must be 1 within 0.001.",
                       tags::ImageOrientationPatient, slice);
    if (!(std::abs(cosine) <= kCosineTolerance))
        return refused(ErrorCode::GeometryContradictory,
                       who + " has a row and a column direction that are not at right angles (cosine " +
                           std::to_string(cosine) + "; 0 within 0.001 is needed).",
                       tags::ImageOrientationPatient, slice);
    return {};
}

Result<void> checkNumbers(const SliceFacts& slice) {
    if (!slice.position.allFinite() || !slice.rowDirection.allFinite() || !slice.columnDirection.allFinite())
        return refused(ErrorCode::AttributeInvalid,
                       describe(tags::ImagePositionPatient) + " or " +
                           describe(tags::ImageOrientationPatient) + " of " + label(slice) +
                           " is not finite.",
                       tags::ImagePositionPatient, slice);
    if (!(slice.alongRowMm > 0.0 && slice.alongColumnMm > 0.0) ||
        !std::isfinite(slice.alongRowMm + slice.alongColumnMm))
        return refused(ErrorCode::SpacingInvalid,
                       describe(tags::PixelSpacing) + " of " + label(slice) +
                           " is not two finite numbers above zero.",
                       tags::PixelSpacing, slice);
    return {};
}

/// Size, spacing and orientation of every slice against the first.
Result<void> checkAlike(Slices slices) {
    const SliceFacts& first = slices.front();
    for (const SliceFacts& slice : slices) {
        if (slice.rows != first.rows || slice.columns != first.columns)
            return refused(ErrorCode::SizesMixed,
                           describe(tags::Rows) + " x " + describe(tags::Columns) + " is " +
                               std::to_string(first.rows) + " x " + std::to_string(first.columns) + " in " +
                               label(first) + " but " + std::to_string(slice.rows) + " x " +
                               std::to_string(slice.columns) + " in " + label(slice) + ".",
                           tags::Rows, slice);
        const double growth = std::max(std::abs(slice.alongRowMm - first.alongRowMm) * first.columns,
                                       std::abs(slice.alongColumnMm - first.alongColumnMm) * first.rows);
        if (growth > kSameExtentMm)
            return refused(ErrorCode::SizesMixed,
                           describe(tags::PixelSpacing) + " is " + mm(first.alongColumnMm) + " x " +
                               mm(first.alongRowMm) + " in " + label(first) + " but " +
                               mm(slice.alongColumnMm) + " x " + mm(slice.alongRowMm) + " in " +
                               label(slice) + ".",
                           tags::PixelSpacing, slice);
        const double turn = std::max((slice.rowDirection - first.rowDirection).cwiseAbs().maxCoeff(),
                                     (slice.columnDirection - first.columnDirection).cwiseAbs().maxCoeff());
        if (turn > kSameDirection)
            return refused(ErrorCode::OrientationsMixed,
                           describe(tags::ImageOrientationPatient) + " is " + shown(first.rowDirection) +
                               ", " + shown(first.columnDirection) + " in " + label(first) + " but " +
                               shown(slice.rowDirection) + ", " + shown(slice.columnDirection) + " in " +
                               label(slice) + "; the slices of a volume are parallel.",
                           tags::ImageOrientationPatient, slice);
    }
    return {};
}

/// The slices in order along the normal, with their places on it.
struct Stack {
    Slices slices;
    std::vector<std::size_t> order;
    std::vector<double> place; ///< along the normal, mm, ascending
    Eigen::Vector3d normal;

    const SliceFacts& at(std::size_t k) const { return slices[order[k]]; }
    std::size_t count() const { return order.size(); }
    double gap(std::size_t k) const { return place[k + 1] - place[k]; }
};

Stack sorted(Slices slices) {
    Stack stack{slices, std::vector<std::size_t>(slices.size()), {}, normalOf(slices.front())};
    std::vector<double> along(slices.size());
    for (std::size_t i = 0; i < slices.size(); ++i)
        along[i] = stack.normal.dot(slices[i].position);
    std::iota(stack.order.begin(), stack.order.end(), std::size_t{0});
    std::stable_sort(stack.order.begin(), stack.order.end(),
                     [&](std::size_t a, std::size_t b) { return along[a] < along[b]; });
    for (const std::size_t i : stack.order)
        stack.place.push_back(along[i]);
    return stack;
}

Result<void> checkDuplicates(const Stack& stack) {
    for (std::size_t k = 0; k + 1 < stack.count(); ++k)
        if (stack.gap(k) < kSamePlaceMm)
            return refused(ErrorCode::SliceDuplicate,
                           describe(tags::ImagePositionPatient) + " of " + label(stack.at(k)) + " and of " +
                               label(stack.at(k + 1)) + " is at the same place along the slice normal (" +
                               mm(stack.place[k]) + "); each place may occur once in a volume.",
                           tags::ImagePositionPatient, stack.at(k + 1));
    return {};
}

double medianGap(const Stack& stack) {
    std::vector<double> gaps;
    for (std::size_t k = 0; k + 1 < stack.count(); ++k)
        gaps.push_back(stack.gap(k));
    const auto middle = gaps.begin() + static_cast<std::ptrdiff_t>((gaps.size() - 1) / 2);
    std::nth_element(gaps.begin(), middle, gaps.end());
    return *middle;
}

std::string between(const Stack& stack, std::size_t k) {
    return "between " + label(stack.at(k)) + " and " + label(stack.at(k + 1));
}

double smallestGap(const Stack& stack) {
    double smallest = stack.gap(0);
    for (std::size_t k = 1; k + 1 < stack.count(); ++k)
        smallest = std::min(smallest, stack.gap(k));
    return smallest;
}

double largestGap(const Stack& stack) {
    double largest = stack.gap(0);
    for (std::size_t k = 1; k + 1 < stack.count(); ++k)
        largest = std::max(largest, stack.gap(k));
    return largest;
}

/// True when a gap is two or more whole steps.
bool isMultiple(double gap, double step) {
    const double share = gap / step;
    return std::round(share) >= 2.0 && std::abs(share - std::round(share)) <= kMissingFit;
}

tl::unexpected<core::Error> missing(const Stack& stack, std::size_t k, double step) {
    const auto lost = static_cast<long>(std::round(stack.gap(k) / step)) - 1;
    return refused(ErrorCode::SliceMissing,
                   "by " + describe(tags::ImagePositionPatient) + " the gap " + between(stack, k) + " is " +
                       mm(stack.gap(k)) + " where others are " + mm(step) + ": " + std::to_string(lost) +
                       " slice(s) are missing there. Copy the series again.",
                   tags::ImagePositionPatient, stack.at(k + 1));
}

/// Gaps that no resampling can honestly bridge.
Result<void> checkGaps(const Stack& stack) {
    const double median = medianGap(stack), smallest = smallestGap(stack);
    for (std::size_t k = 0; k + 1 < stack.count(); ++k)
        if (isMultiple(stack.gap(k), median)) return missing(stack, k, median);
    if (largestGap(stack) <= kLargestGap * smallest) return {};
    bool steps = true; // every gap one or more whole steps of the smallest
    std::size_t largest = 0;
    for (std::size_t k = 0; k + 1 < stack.count(); ++k) {
        steps =
            steps && (isMultiple(stack.gap(k), smallest) || stack.gap(k) <= (1.0 + kMissingFit) * smallest);
        if (stack.gap(k) > stack.gap(largest)) largest = k;
    }
    if (steps) return missing(stack, largest, smallest);
    return refused(ErrorCode::SpacingUneven,
                   "by " + describe(tags::ImagePositionPatient) + " the slices are " + mm(smallest) + " to " +
                       mm(largestGap(stack)) + " apart, most " + between(stack, largest) +
                       "; gaps can be evened out only up to one and a half times the smallest.",
                   tags::ImagePositionPatient, stack.at(largest + 1));
}

/// Every slice must lie on the line through the first and the last, apart from its place along the normal.
Result<Eigen::Vector3d> stackDirection(const Stack& stack) {
    const std::size_t last = stack.count() - 1;
    const Eigen::Vector3d origin = stack.at(0).position;
    const Eigen::Vector3d perMm = (stack.at(last).position - origin) / (stack.place[last] - stack.place[0]);
    for (std::size_t k = 0; k <= last; ++k) {
        const double sideways =
            (stack.at(k).position - origin - perMm * (stack.place[k] - stack.place[0])).norm();
        if (sideways > kSidewaysMm)
            return refused(ErrorCode::GeometryContradictory,
                           describe(tags::ImagePositionPatient) + " of " + label(stack.at(k)) + " is " +
                               mm(sideways) + " beside the line on which the other slices stand; at most " +
                               mm(kSidewaysMm) + " is accepted.",
                           tags::ImagePositionPatient, stack.at(k));
    }
    const double tilt =
        std::acos(std::clamp(stack.normal.dot(perMm.normalized()), -1.0, 1.0)) * 180.0 / std::numbers::pi;
    if (tilt > kSteepestTiltDeg)
        return refused(ErrorCode::GeometryContradictory,
                       "by " + describe(tags::ImagePositionPatient) + " the slices are shifted sideways by " +
                           degrees(tilt) + " from their normal, more than any scanner tilts.",
                       tags::ImagePositionPatient, stack.at(last));
    return perMm;
}

double largestDeviation(const Stack& stack) {
    const double step = (stack.place.back() - stack.place.front()) / static_cast<double>(stack.count() - 1);
    double largest = 0.0;
    for (std::size_t k = 0; k < stack.count(); ++k)
        largest =
            std::max(largest, std::abs(stack.place[k] - stack.place.front() - step * static_cast<double>(k)));
    return largest;
}

/// Places of an even grid with the first and the last slice on it, no coarser than the finest gap.
std::vector<double> evenPlaces(const Stack& stack) {
    const double length = stack.place.back() - stack.place.front();
    const auto steps = static_cast<std::size_t>(std::ceil(length / smallestGap(stack) - 1e-6));
    std::vector<double> places;
    std::size_t below = 0;
    for (std::size_t k = 0; k <= steps; ++k) {
        const double s = stack.place.front() + length * static_cast<double>(k) / static_cast<double>(steps);
        while (below + 2 < stack.count() && stack.place[below + 1] <= s)
            ++below;
        places.push_back(static_cast<double>(below) +
                         std::clamp((s - stack.place[below]) / stack.gap(below), 0.0, 1.0));
    }
    return places;
}

void compareTags(const Stack& stack, StackGeometry& geometry) {
    constexpr double kTagMm = 0.01, kTagDeg = 0.5, kTiltDeg = 0.1;
    const SliceFacts& first = stack.at(0);
    const double spacing = geometry.spacingMm.z();
    if (geometry.tiltDeg > kTiltDeg)
        geometry.notices.push_back(
            {"tilted",
             "The slices are tilted by " + degrees(geometry.tiltDeg) +
                 " against their stacking direction; the exact sheared geometry is used.",
             {}});
    if (first.spacingTagMm && std::abs(std::abs(*first.spacingTagMm) - spacing) > kTagMm)
        geometry.notices.push_back({"spacing-tag-disagrees",
                                    describe(tags::SpacingBetweenSlices) + " says " +
                                        mm(*first.spacingTagMm) + ", the positions say " + mm(spacing) +
                                        "; the positions are used.",
                                    {}});
    if (first.thicknessMm && *first.thicknessMm > 0.0 && *first.thicknessMm < spacing - kTagMm)
        geometry.notices.push_back({"slices-apart",
                                    describe(tags::SliceThickness) + " is " + mm(*first.thicknessMm) +
                                        " but the slices are " + mm(spacing) +
                                        " apart: what lies between them was not imaged.",
                                    {}});
    if (first.tiltTagDeg && std::abs(std::abs(*first.tiltTagDeg) - geometry.tiltDeg) > kTagDeg)
        geometry.notices.push_back({"tilt-tag-disagrees",
                                    describe(tags::GantryDetectorTilt) + " says " +
                                        degrees(*first.tiltTagDeg) + ", the positions and orientations say " +
                                        degrees(geometry.tiltDeg) + "; positions and orientations are used.",
                                    {}});
}

StackGeometry geometryOf(const Stack& stack, const Eigen::Vector3d& perMm) {
    StackGeometry geometry;
    geometry.order = stack.order;
    if (largestDeviation(stack) > kEvenMm) {
        geometry.resampleAt = evenPlaces(stack);
        geometry.notices.push_back({"spacing-evened",
                                    "The slices are " + mm(smallestGap(stack)) + " to " +
                                        mm(largestGap(stack)) +
                                        " apart; they were interpolated along the stack to an even spacing.",
                                    {}});
    }
    const std::size_t slices = geometry.resampleAt.empty() ? stack.count() : geometry.resampleAt.size();
    const double step = (stack.place.back() - stack.place.front()) / static_cast<double>(slices - 1);
    const SliceFacts& first = stack.at(0);
    geometry.size = {first.columns, first.rows, static_cast<int>(slices)};
    geometry.spacingMm = {first.alongRowMm, first.alongColumnMm, step};
    // PS3.3 equation C.7.6.2.1-1, with the third column from the positions.
    geometry.patientFromVoxel.linear().col(0) = first.rowDirection.normalized() * first.alongRowMm;
    geometry.patientFromVoxel.linear().col(1) = first.columnDirection.normalized() * first.alongColumnMm;
    geometry.patientFromVoxel.linear().col(2) = perMm * step;
    geometry.patientFromVoxel.translation() = first.position;
    geometry.tiltDeg =
        std::acos(std::clamp(stack.normal.dot(perMm.normalized()), -1.0, 1.0)) * 180.0 / std::numbers::pi;
    compareTags(stack, geometry);
    return geometry;
}

} // namespace

Result<StackGeometry> proveStack(Slices slices) {
    if (slices.empty()) return failure(ErrorCode::SliceMissing, "Cannot build a volume: there is no slice.");
    for (const SliceFacts& slice : slices) {
        if (auto numbers = checkNumbers(slice); !numbers) return tl::make_unexpected(numbers.error());
        if (auto directions = checkDirections(slice); !directions)
            return tl::make_unexpected(directions.error());
    }
    if (auto alike = checkAlike(slices); !alike) return tl::make_unexpected(alike.error());
    if (slices.size() == 1)
        return refused(ErrorCode::SliceMissing,
                       label(slices.front()) +
                           " is the only slice; a volume needs at least two, at different places by " +
                           describe(tags::ImagePositionPatient) + ".",
                       tags::ImagePositionPatient, slices.front());
    const Stack stack = sorted(slices);
    if (auto unique = checkDuplicates(stack); !unique) return tl::make_unexpected(unique.error());
    if (auto gaps = checkGaps(stack); !gaps) return tl::make_unexpected(gaps.error());
    return stackDirection(stack).map([&](const Eigen::Vector3d& perMm) { return geometryOf(stack, perMm); });
}

} // namespace gauge::dicomio
