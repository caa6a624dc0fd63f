#include "core/fluoro/c_arm_place.h"

#include "core/number_text.h"

#include <array>
#include <cctype>
#include <cmath>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace gauge::core {
namespace {

struct AngleToken {
    std::string word; ///< capitals; empty for a number
    double number = 0.0;
};

tl::unexpected<Error> notAngles(std::string_view text, const std::string& found) {
    return failure(ErrorCode::InvalidArgument, "Cannot read \"" + std::string(text) + "\" as angles of a C-arm: " + found +
                                                   ". Type for example RAO 30 CAUD 12.");
}

bool isNumberBegin(std::string_view rest) {
    const std::size_t at = rest.front() == '-' || rest.front() == '+' ? 1 : 0;
    return at < rest.size() && std::isdigit(static_cast<unsigned char>(rest[at]));
}

/// Digits, and one point or comma with digits behind it.
AngleToken takeNumber(std::string_view& rest) {
    const double sign = rest.front() == '-' ? -1.0 : 1.0;
    if (rest.front() == '-' || rest.front() == '+') rest.remove_prefix(1);
    double value = 0.0, digit = 1.0;
    bool behind = false;
    while (!rest.empty()) {
        const char c = rest.front();
        if (std::isdigit(static_cast<unsigned char>(c))) {
            if (behind) digit *= 0.1;
            value = behind ? value + digit * (c - '0') : 10.0 * value + (c - '0');
        } else if (!behind && (c == '.' || c == ',') && rest.size() > 1 && std::isdigit(static_cast<unsigned char>(rest[1]))) {
            behind = true;
        } else {
            break;
        }
        rest.remove_prefix(1);
    }
    return {{}, sign * value};
}

AngleToken takeWord(std::string_view& rest) {
    AngleToken token;
    while (!rest.empty() && std::isalpha(static_cast<unsigned char>(rest.front()))) {
        token.word += static_cast<char>(std::toupper(static_cast<unsigned char>(rest.front())));
        rest.remove_prefix(1);
    }
    return token;
}

/// Which angle a word names, and its sign.
std::optional<std::pair<bool, double>> senseOf(const std::string& word) {
    struct Sense {
        std::string_view word;
        bool isPrimary;
        double sign;
    };
    static constexpr std::array kSenses{Sense{"LAO", true, 1},      Sense{"RAO", true, -1},  Sense{"CRA", false, 1},
                                        Sense{"CRAN", false, 1},    Sense{"CRANIAL", false, 1}, Sense{"CAU", false, -1},
                                        Sense{"CAUD", false, -1},   Sense{"CAUDAL", false, -1}};
    for (const Sense& sense : kSenses)
        if (sense.word == word) return std::pair{sense.isPrimary, sense.sign};
    return std::nullopt;
}

} // namespace

Result<void> validate(const CArmDistances& d) {
    if (!std::isfinite(d.sourceToIsocentreMm) || !std::isfinite(d.sourceToDetectorMm))
        return failure(ErrorCode::NonFinite, "Cannot use the distances of the C-arm: one of them is no finite number.");
    if (d.sourceToIsocentreMm >= kLeastSourceDistanceMm && d.sourceToDetectorMm <= kMostSourceDistanceMm &&
        d.sourceToDetectorMm > d.sourceToIsocentreMm)
        return {};
    return failure(ErrorCode::InvalidArgument,
                   "Cannot use the distances of the C-arm: from the source " + general(d.sourceToIsocentreMm) +
                       " mm to the isocentre and " + general(d.sourceToDetectorMm) + " mm to the detector; they must lie within " +
                       general(kLeastSourceDistanceMm) + " mm to " +
                       general(kMostSourceDistanceMm) + " mm, and the detector beyond the isocentre.");
}

std::vector<PatientPoint> roomPoints(std::span<const PatientPoint> points, const PatientTurn& turn) {
    std::vector<PatientPoint> turned(points.begin(), points.end());
    if (turn.isNone()) return turned;
    const Eigen::Matrix3d rotation = roomFromPatient(turn);
    for (PatientPoint& p : turned)
        p.mm = rotation * p.mm;
    return turned;
}

Result<PinholeCamera> cameraOf(const CArm& arm, const PatientTurn& turn) {
    if (auto valid = validate(turn); !valid) return tl::make_unexpected(valid.error());
    auto camera = cameraOf(arm);
    if (!camera || turn.isNone()) return camera;
    const Eigen::Matrix3d patientFromRoom = roomFromPatient(turn).transpose();
    const auto turnedPoint = [&](const PatientPoint& p) {
        return PatientPoint{arm.isocentre.mm + patientFromRoom * (p.mm - arm.isocentre.mm)};
    };
    camera->source = turnedPoint(camera->source);
    camera->firstPixel = turnedPoint(camera->firstPixel);
    camera->columnStep = {patientFromRoom * camera->columnStep.mm};
    camera->rowStep = {patientFromRoom * camera->rowStep.mm};
    return camera;
}

Result<CArm> aimedAt(const CArm& arm, const PatientPoint& point, const Eigen::Vector2d& pixel, const PatientTurn& turn) {
    if (!point.mm.allFinite() || !pixel.allFinite())
        return failure(ErrorCode::NonFinite, "Cannot aim the C-arm: the place to aim at is not finite.");
    CArm aimed = arm;
    aimed.isocentre = point;
    const auto camera = cameraOf(aimed, turn);
    if (!camera) return tl::make_unexpected(camera.error());
    // In the isocentre's plane a pixel is as long as at the detector, over the magnification.
    const Eigen::Vector2d off = pixel - 0.5 * Eigen::Vector2d(arm.columns - 1, arm.rows - 1);
    aimed.isocentre = point - (off.x() / arm.magnification()) * camera->columnStep - (off.y() / arm.magnification()) * camera->rowStep;
    return aimed;
}

Result<CArmAngles> anglesFromText(std::string_view text) {
    std::optional<double> primary, secondary;
    std::optional<std::pair<bool, double>> sense;
    std::string lastWord;
    std::string_view rest = text;
    while (!rest.empty()) {
        const char c = rest.front();
        if (std::isalpha(static_cast<unsigned char>(c))) {
            const std::string word = takeWord(rest).word;
            if (sense) return notAngles(text, "there is no number behind \"" + lastWord + "\"");
            sense = senseOf(word);
            if (!sense) return notAngles(text, "\"" + word + "\" is none of LAO, RAO, CRA, CAUD");
            lastWord = word;
        } else if (isNumberBegin(rest)) {
            const double number = takeNumber(rest).number;
            if (sense && number < 0.0) return notAngles(text, "behind \"" + lastWord + "\" stands a number below 0");
            const auto [isPrimary, sign] = sense.value_or(std::pair{!primary, 1.0});
            auto& angle = isPrimary ? primary : secondary;
            if (angle) return notAngles(text, isPrimary ? "LAO or RAO is said twice" : "CRA or CAUD is said twice");
            angle = sign * number;
            sense.reset();
        } else if (std::isspace(static_cast<unsigned char>(c)) || c == ',' || c == ';' || c == '/' || c == '\xC2' || c == '\xB0') {
            rest.remove_prefix(1); // also the degree sign, in UTF-8
        } else {
            return notAngles(text, std::string("\"") + c + "\" is neither word nor number");
        }
    }
    if (sense) return notAngles(text, "there is no number behind \"" + lastWord + "\"");
    if (!primary && !secondary) return notAngles(text, "there is no number");
    const CArmAngles angles{primary.value_or(0.0), secondary.value_or(0.0)};
    if (auto valid = validate(angles); !valid) return tl::make_unexpected(valid.error());
    return angles;
}

} // namespace gauge::core
