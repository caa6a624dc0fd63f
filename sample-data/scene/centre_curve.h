// The centre line of a tube: straight pieces and circular arcs, joined without a corner and measured by arc
// length, so that its tangent, its length and the nearest point on it are known in closed form.
//
//   s = firstS            a frame (tangent, normal, binormal) travels along without turning about the tangent
//     o-----line-----.
//      (extended      `-. arc          towards: direction of the bend, measured from `normal` to `binormal`
//       straight)        \ s = lastS
//                         o- - - (extended straight)
#pragma once

#include <Eigen/Core>
#include <vector>

namespace gauge::sample_case {

/// A piece of a centre line: straight when `turnRad` is 0.
struct CurvePiece {
    double lengthMm = 0.0;   ///< > 0
    double turnRad = 0.0;    ///< total turn over the piece, 0 <= turn < pi
    double towardsRad = 0.0; ///< where the arc bends to: cos * normal + sin * binormal
};

class CentreCurve {
public:
    struct Frame {
        Eigen::Vector3d point, tangent, normal, binormal;
    };
    /// The nearest point of the curve, and where the query lies in the frame there.
    struct Foot {
        double s;
        double alongNormal;
        double alongBinormal;
    };

    CentreCurve() = default;
    /// @param normalHint  not parallel to `tangent`; the part perpendicular to it becomes the first normal.
    CentreCurve(const Eigen::Vector3d& start, const Eigen::Vector3d& tangent,
                const Eigen::Vector3d& normalHint, double firstS, const std::vector<CurvePiece>& pieces);

    double firstS() const { return m_firstS; }
    double lastS() const { return m_lastS; }
    /// Frame at `s`; beyond the ends the curve runs on straight.
    Frame at(double s) const;
    /// Nearest point, on the extended curve.
    Foot nearest(const Eigen::Vector3d& x) const;

private:
    struct Piece {
        double s0, length, turn;
        double radius; ///< of an arc; 0 for a line
        double cosTowards, sinTowards;
        Frame start, end;
        Eigen::Vector3d inward; ///< towards the arc's centre, at its start
        Eigen::Vector3d across; ///< tangent x inward
    };
    static Frame along(const Piece& piece, double distance);
    static Frame turned(const Piece& arc, double cosine, double sine);

    double m_firstS = 0.0;
    double m_lastS = 0.0;
    std::vector<Piece> m_pieces;
};

} // namespace gauge::sample_case
