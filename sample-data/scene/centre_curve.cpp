#include "sample-data/scene/centre_curve.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cassert>
#include <cmath>
#include <limits>
#include <numbers>

namespace gauge::sample_case {

CentreCurve::CentreCurve(const Eigen::Vector3d& start, const Eigen::Vector3d& tangent,
                         const Eigen::Vector3d& normalHint, double firstS,
                         const std::vector<CurvePiece>& pieces)
    : m_firstS(firstS), m_lastS(firstS) {
    assert(!pieces.empty());
    Frame frame;
    frame.point = start;
    frame.tangent = tangent.normalized();
    frame.normal = (normalHint - normalHint.dot(frame.tangent) * frame.tangent).normalized();
    frame.binormal = frame.tangent.cross(frame.normal);
    for (const CurvePiece& given : pieces) {
        assert(given.lengthMm > 0.0 && given.turnRad >= 0.0 && given.turnRad < std::numbers::pi);
        Piece piece;
        piece.s0 = m_lastS;
        piece.length = given.lengthMm;
        piece.turn = given.turnRad;
        piece.radius = given.turnRad > 1e-9 ? given.lengthMm / given.turnRad : 0.0;
        piece.cosTowards = std::cos(given.towardsRad);
        piece.sinTowards = std::sin(given.towardsRad);
        piece.start = frame;
        piece.inward = piece.cosTowards * frame.normal + piece.sinTowards * frame.binormal;
        piece.across = frame.tangent.cross(piece.inward);
        m_pieces.push_back(piece);
        m_lastS += given.lengthMm;
        frame = along(piece, given.lengthMm);
    }
}

CentreCurve::Frame CentreCurve::along(const Piece& piece, double distance) {
    Frame frame = piece.start;
    if (piece.radius == 0.0) {
        frame.point += distance * frame.tangent;
        return frame;
    }
    const double angle = distance / piece.radius;
    const double c = std::cos(angle), s = std::sin(angle);
    const Eigen::Vector3d inward = c * piece.inward - s * piece.start.tangent;
    frame.point += piece.radius * ((1.0 - c) * piece.inward + s * piece.start.tangent);
    frame.tangent = c * piece.start.tangent + s * piece.inward;
    frame.normal = piece.cosTowards * inward - piece.sinTowards * piece.across;
    frame.binormal = piece.sinTowards * inward + piece.cosTowards * piece.across;
    return frame;
}

CentreCurve::Frame CentreCurve::at(double s) const {
    const double held = std::clamp(s, m_firstS, m_lastS);
    std::size_t i = m_pieces.size() - 1;
    while (i > 0 && held < m_pieces[i].s0)
        --i;
    Frame frame = along(m_pieces[i], held - m_pieces[i].s0);
    frame.point += (s - held) * frame.tangent;
    return frame;
}

CentreCurve::Foot CentreCurve::nearest(const Eigen::Vector3d& x) const {
    double best = std::numeric_limits<double>::infinity();
    Foot foot{};
    for (std::size_t i = 0; i < m_pieces.size(); ++i) {
        const Piece& piece = m_pieces[i];
        const bool first = i == 0, last = i + 1 == m_pieces.size();
        const Eigen::Vector3d d = x - piece.start.point;
        if (piece.radius == 0.0) {
            double t = d.dot(piece.start.tangent);
            if (!first) t = std::max(t, 0.0);
            if (!last) t = std::min(t, piece.length);
            const Eigen::Vector3d rest = d - t * piece.start.tangent;
            if (const double squared = rest.squaredNorm(); squared < best) {
                best = squared;
                foot = {piece.s0 + t, rest.dot(piece.start.normal), rest.dot(piece.start.binormal)};
            }
            continue;
        }
        const double alongTangent = d.dot(piece.start.tangent);
        const double outward = piece.radius - d.dot(piece.inward);
        double angle = std::atan2(alongTangent, outward);
        if (angle < 0.0 || angle > piece.turn) {
            // The nearer end of the arc: compare angular distances round the circle.
            const double beyond = angle < 0.0 ? angle + 2.0 * std::numbers::pi : angle;
            angle = beyond - piece.turn < 2.0 * std::numbers::pi - beyond ? piece.turn : 0.0;
        }
        const Frame frame = along(piece, angle * piece.radius);
        Eigen::Vector3d rest = x - frame.point;
        double s = piece.s0 + angle * piece.radius;
        const double ahead = rest.dot(frame.tangent);
        if ((first && angle == 0.0 && ahead < 0.0) || (last && angle == piece.turn && ahead > 0.0)) {
            rest -= ahead * frame.tangent;
            s += ahead;
        }
        if (const double squared = rest.squaredNorm(); squared < best) {
            best = squared;
            foot = {s, rest.dot(frame.normal), rest.dot(frame.binormal)};
        }
    }
    return foot;
}

} // namespace gauge::sample_case
