#include "core/fluoro/c_arm_reach.h"

#include "core/number_text.h"
#include "core/units/angle.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace gauge::core {
namespace {

Eigen::Matrix3d aboutHeadFeet(double deg) {
    const double c = std::cos(deg * kRadPerDegree), s = std::sin(deg * kRadPerDegree);
    Eigen::Matrix3d m;
    m << c, -s, 0, s, c, 0, 0, 0, 1;
    return m;
}

/// Turns what looks to the front towards the head.
Eigen::Matrix3d aboutLeftRight(double deg) {
    const double c = std::cos(deg * kRadPerDegree), s = std::sin(deg * kRadPerDegree);
    Eigen::Matrix3d m;
    m << 1, 0, 0, 0, c, s, 0, -s, c;
    return m;
}

double cosBetween(const CArmAngles& a, const CArmAngles& b) {
    return beamDirection(a).dot(beamDirection(b));
}

std::string upperTrimmed(std::string_view text) {
    std::string out;
    for (const char c : text)
        if (c != ' ' && c != '\0') out += c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
    return out;
}

} // namespace

Result<void> validate(const CArmReach& r) {
    const std::array limits{r.mostRaoDeg, r.mostLaoDeg, r.mostCraDeg, r.mostCauDeg};
    if (!std::all_of(limits.begin(), limits.end(), [](double d) { return std::isfinite(d); }))
        return failure(ErrorCode::NonFinite, "Cannot use the reach of the C-arm: one of its limits is no finite number.");
    const auto within = [](double deg, double most) { return deg >= 0.0 && deg <= most; };
    if (!within(r.mostRaoDeg, 180.0) || !within(r.mostLaoDeg, 180.0) || !within(r.mostCraDeg, 90.0) ||
        !within(r.mostCauDeg, 90.0))
        return failure(ErrorCode::InvalidArgument,
                       "Cannot use the reach of the C-arm: RAO " + general(r.mostRaoDeg) + ", LAO " + general(r.mostLaoDeg) +
                           ", CRA " + general(r.mostCraDeg) + ", CAU " + general(r.mostCauDeg) +
                           " degrees; RAO and LAO must lie within 0 to 180, CRA and CAU within 0 to 90.");
    if (r.mostRaoDeg + r.mostLaoDeg <= 0.0 && r.mostCraDeg + r.mostCauDeg <= 0.0)
        return failure(ErrorCode::InvalidArgument, "Cannot use the reach of the C-arm: all limits are 0 degrees, which leaves "
                                                   "one view only. Set how far the arm can be turned.");
    return {};
}

CArmAngles heldWithin(const CArmReach& reach, const CArmAngles& angles) {
    if (reach.contains(angles)) return angles;
    // The nearest view lies on the border: along each side the angle between lines of sight is smooth, so looking closely is
    // enough.
    constexpr int kSteps = 720;
    CArmAngles best{std::clamp(angles.primaryDeg, -reach.mostRaoDeg, reach.mostLaoDeg),
                    std::clamp(angles.secondaryDeg, -reach.mostCauDeg, reach.mostCraDeg)};
    const auto look = [&](const CArmAngles& view) {
        if (cosBetween(view, angles) > cosBetween(best, angles)) best = view;
    };
    for (int i = 0; i <= kSteps; ++i) {
        const double t = static_cast<double>(i) / kSteps;
        const double primary = -reach.mostRaoDeg + t * (reach.mostRaoDeg + reach.mostLaoDeg);
        const double secondary = -reach.mostCauDeg + t * (reach.mostCauDeg + reach.mostCraDeg);
        look({primary, reach.mostCraDeg});
        look({primary, -reach.mostCauDeg});
        look({reach.mostLaoDeg, secondary});
        look({-reach.mostRaoDeg, secondary});
    }
    return best;
}

Result<void> validate(const PatientTurn& turn) {
    if (!std::isfinite(turn.primaryDeg) || !std::isfinite(turn.secondaryDeg))
        return failure(ErrorCode::NonFinite, "Cannot use the patient's offset: one of its angles is no finite number.");
    if (std::abs(turn.primaryDeg) > kMostTurnDeg || std::abs(turn.secondaryDeg) > kMostTurnDeg)
        return failure(ErrorCode::InvalidArgument, "Cannot use the patient's offset: " + general(turn.primaryDeg) + " and " +
                                                       general(turn.secondaryDeg) + " degrees; both must lie within -" +
                                                       general(kMostTurnDeg) + " to " + general(kMostTurnDeg) + ".");
    return {};
}

Eigen::Matrix3d roomFromPatient(const PatientTurn& turn) {
    return aboutLeftRight(turn.secondaryDeg) * aboutHeadFeet(turn.primaryDeg);
}

CArmAngles roomAngles(const CArmAngles& patient, const PatientTurn& turn) {
    return turn.isNone() ? patient : anglesOf({roomFromPatient(turn) * beamDirection(patient).mm});
}

CArmAngles patientAngles(const CArmAngles& room, const PatientTurn& turn) {
    return turn.isNone() ? room : anglesOf({roomFromPatient(turn).transpose() * beamDirection(room).mm});
}

LyingPosition lyingPosition(std::string_view patientPosition) {
    const std::string word = upperTrimmed(patientPosition);
    if (word.empty()) return LyingPosition::Unknown;
    const std::string_view first = std::string_view(word).substr(0, 2), rest = std::string_view(word).substr(first.size());
    const bool along = first == "HF" || first == "FF", across = first == "LF" || first == "RF",
               upright = first == "AF" || first == "PF";
    if ((along || across) && rest == "S") return LyingPosition::Supine;
    if ((along || across) && rest == "P") return LyingPosition::Prone;
    if ((along || upright) && rest == "DL") return LyingPosition::LeftSideDown;
    if ((along || upright) && rest == "DR") return LyingPosition::RightSideDown;
    return LyingPosition::Other;
}

std::string words(LyingPosition position) {
    switch (position) {
    case LyingPosition::Unknown: return "in a position that the images do not tell";
    case LyingPosition::Supine: return "on the back";
    case LyingPosition::Prone: return "on the face";
    case LyingPosition::LeftSideDown: return "on the left side";
    case LyingPosition::RightSideDown: return "on the right side";
    case LyingPosition::Other: return "in an unusual position";
    }
    return {};
}

Result<PatientTurn> usableTurn(std::string_view patientPosition, const std::optional<PatientTurn>& stated) {
    if (stated) {
        if (auto valid = validate(*stated); !valid) return tl::make_unexpected(valid.error());
        return *stated;
    }
    const LyingPosition position = lyingPosition(patientPosition);
    if (position == LyingPosition::Supine) return PatientTurn{};
    const std::vector<Fact> facts{{"tag", "(0018,5100) PatientPosition"}, {"value", std::string(patientPosition)}};
    if (position == LyingPosition::Unknown)
        return failure(ErrorCode::AttributeMissing,
                       "Cannot predict angles of the C-arm: the CT does not tell how the patient lay ((0018,5100) "
                       "PatientPosition is absent or empty). If the patient lay on the back, state it by an offset of 0 degrees.",
                       facts);
    return failure(ErrorCode::ObjectUnsupported,
                   "Cannot predict angles of the C-arm: at CT the patient lay " + words(position) +
                       " ((0018,5100) PatientPosition is \"" + std::string(patientPosition) +
                       "\"), and the heart lies otherwise than on the back. State an offset of the patient to predict all the "
                       "same.",
                   facts);
}

} // namespace gauge::core
