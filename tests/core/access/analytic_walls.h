// Lumens with a wall in closed form, laid anywhere in the patient and sampled on boxes of any direction: what seats are
// tried in. Local coordinates: z along the way of the body, 0 in the landing zone's middle.
#pragma once

#include "core/access/seat_wall.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <functional>
#include <random>

namespace gauge::test {

/// Above 0 in the lumen; its zero is the wall.
using Lumen = std::function<double(const Eigen::Vector3d&)>;

/// Straight, round, with a flat end.
inline Lumen cylinder(double radius, double end) {
    return [=](const Eigen::Vector3d& p) { return std::min(radius - std::hypot(p.x(), p.y()), end - p.z()); };
}
/// Narrows by `tangent` a millimetre.
inline Lumen cone(double radius, double tangent) {
    const double cosine = 1.0 / std::sqrt(1.0 + tangent * tangent);
    return [=](const Eigen::Vector3d& p) { return cosine * (radius - tangent * p.z() - std::hypot(p.x(), p.y())); };
}
/// Half-axes along x and y, flat end.
inline Lumen ovalTube(double alongX, double alongY, double end) {
    return [=](const Eigen::Vector3d& p) {
        const double rho = std::hypot(p.x() / alongX, p.y() / alongY);
        return std::min(std::min(alongX, alongY) * (1.0 - rho), end - p.z());
    };
}
/// A round tube whose middle line is straight before z = 0 and a circle of radius `bend` about (-bend, 0, 0) from there on.
inline Lumen bentTube(double radius, double bend) {
    return [=](const Eigen::Vector3d& p) {
        if (p.z() < 0.0) return radius - std::hypot(p.x(), p.y());
        return radius - std::hypot(std::hypot(p.x() + bend, p.z()) - bend, p.y());
    };
}
/// A tube that opens into a ball about (0, 0, centre).
inline Lumen pocket(double tube, double ball, double centre) {
    return [=](const Eigen::Vector3d& p) {
        const double inBall = ball - (p - Eigen::Vector3d(0, 0, centre)).norm();
        const double inTube = std::min(tube - std::hypot(p.x(), p.y()), centre - p.z());
        return std::max(inBall, inTube);
    };
}

inline Eigen::Matrix3d randomTurn(std::mt19937& random) {
    std::normal_distribution<double> normal;
    return Eigen::Quaterniond(normal(random), normal(random), normal(random), normal(random)).normalized().toRotationMatrix();
}

/// A lumen in the patient.
struct LaidLumen {
    Eigen::Isometry3d patientFromLocal = Eigen::Isometry3d::Identity();
    core::SeatWall wall;

    core::PatientPoint at(double x, double y, double z) const {
        return {patientFromLocal * Eigen::Vector3d(x, y, z)};
    }
    core::PatientVector towards(const Eigen::Vector3d& local) const {
        return {patientFromLocal.linear() * local};
    }
};

/// @param before, after  how far the box reaches before and behind the landing zone. @param across  to each side.
inline LaidLumen laid(const Lumen& lumen, const Eigen::Isometry3d& pose, const Eigen::Matrix3d& boxAxes, double before = 16.0,
                      double after = 44.0, double across = 26.0, double step = 0.5) {
    LaidLumen result;
    result.patientFromLocal = pose;
    Eigen::Array3d low = Eigen::Array3d::Constant(1e9), high = -low;
    for (int corner = 0; corner < 8; ++corner) {
        const Eigen::Vector3d p(corner & 1 ? across : -across, corner & 2 ? across : -across, corner & 4 ? after : -before);
        const Eigen::Array3d q = (boxAxes.transpose() * (pose * p)).array();
        low = low.min(q);
        high = high.max(q);
    }
    core::BoxGrid grid;
    grid.axes = boxAxes;
    grid.stepMm = step;
    grid.origin = {boxAxes * low.matrix()};
    grid.size = ((high - low) / step).ceil().cast<int>().matrix() + Eigen::Vector3i::Ones();
    result.wall.blood = core::BoxField<float>(grid);
    const Eigen::Isometry3d localFromPatient = pose.inverse();
    std::size_t i = 0;
    for (int z = 0; z < grid.size.z(); ++z)
        for (int y = 0; y < grid.size.y(); ++y)
            for (int x = 0; x < grid.size.x(); ++x)
                result.wall.blood[i++] = static_cast<float>(
                    lumen(localFromPatient * grid.patientFrom(Eigen::Vector3d(x, y, z)).mm));
    return result;
}

/// Laid at random, on a box of another random direction.
inline LaidLumen laidAnywhere(const Lumen& lumen, std::mt19937& random) {
    std::uniform_real_distribution<double> place(-80.0, 80.0);
    Eigen::Isometry3d pose = Eigen::Isometry3d::Identity();
    pose.linear() = randomTurn(random);
    pose.translation() = Eigen::Vector3d(place(random), place(random), place(random));
    return laid(lumen, pose, randomTurn(random));
}

} // namespace gauge::test
