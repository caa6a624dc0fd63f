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
        piece.end = along(piece, given.lengthMm);
        m_pieces.push_back(piece);
        m_lastS += given.lengthMm;
        frame = piece.end;
    }
}

/// Frame of an arc where it has turned by the angle of the given cosine and sine.
CentreCurve::Frame CentreCurve::turned(const Piece& arc, double cosine, double sine) {
    Frame frame;
    const Eigen::Vector3d inward = cosine * arc.inward - sine * arc.start.tangent;
    frame.point = arc.start.point + arc.radius * ((1.0 - cosine) * arc.inward + sine * arc.start.tangent);
    frame.tangent = cosine * arc.start.tangent + sine * arc.inward;
    frame.normal = arc.cosTowards * inward - arc.sinTowards * arc.across;
    frame.binormal = arc.sinTowards * inward + arc.cosTowards * arc.across;
    return frame;
}

CentreCurve::Frame CentreCurve::along(const Piece& piece, double distance) {
    if (piece.radius > 0.0)
        return turned(piece, std::cos(distance / piece.radius), std::sin(distance / piece.radius));
    Frame frame = piece.start;
    frame.point += distance * frame.tangent;
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
    // A foot at `frame`, moved along its straight prolongation where the curve has one there.
    const auto consider = [&](const Frame& frame, double s, bool prolonged) {
        Eigen::Vector3d rest = x - frame.point;
        if (prolonged) {
            const double ahead = rest.dot(frame.tangent);
            rest -= ahead * frame.tangent;
            s += ahead;
        }
        if (const double squared = rest.squaredNorm(); squared < best) {
            best = squared;
            foot = {s, rest.dot(frame.normal), rest.dot(frame.binormal)};
        }
    };
    for (const Piece& piece : m_pieces) {
        const Eigen::Vector3d d = x - piece.start.point;
        const double ahead = d.dot(piece.start.tangent);
        bool beforeStart = ahead < 0.0;
        if (piece.radius == 0.0) {
            if (!beforeStart && ahead <= piece.length) {
                consider(piece.start, piece.s0, true);
                continue;
            }
        } else {
            const double outward = piece.radius - d.dot(piece.inward);
            const double angle = std::atan2(ahead, outward);
            if (angle >= 0.0 && angle <= piece.turn) {
                const double length = std::max(std::hypot(ahead, outward), 1e-12);
                consider(turned(piece, outward / length, ahead / length), piece.s0 + angle * piece.radius,
                         false);
                continue;
            }
            // The nearer end of the arc: compare angular distances round the circle.
            const double beyond = angle < 0.0 ? angle + 2.0 * std::numbers::pi : angle;
            beforeStart = beyond - piece.turn >= 2.0 * std::numbers::pi - beyond;
        }
        const bool first = &piece == &m_pieces.front(), last = &piece == &m_pieces.back();
        if (beforeStart)
            consider(piece.start, piece.s0, first && ahead < 0.0);
        else
            consider(piece.end, piece.s0 + piece.length,
                     last && (x - piece.end.point).dot(piece.end.tangent) > 0.0);
    }
    return foot;
}

} // namespace gauge::sample_case
