// How far a C-arm can be turned about the patient, and how the patient lies under it compared with the CT.
//
//                 CRA                    The reach is a rectangle of angles: primary from -mostRao to mostLao,
//            .-----------.               secondary from -mostCau to mostCra. A real arm's reach is no
//       RAO  |     o     |  LAO          rectangle (steep oblique and steep cranial exclude each other, and
//            '-----------'               table, head and anaesthesia take their share): set it to what the
//                 CAU                    room allows.
#pragma once

#include "core/fluoro/c_arm.h"
#include "core/result.h"

#include <Eigen/Core>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace gauge::core {

/// Degrees, each >= 0. The defaults are common practice [memory], no source: no published figure was found, and they are
/// meant to be replaced by the person who knows the room.
struct CArmReach {
    double mostRaoDeg = 60.0;
    double mostLaoDeg = 60.0;
    double mostCraDeg = 40.0;
    double mostCauDeg = 40.0;

    bool contains(const CArmAngles& angles) const {
        return angles.primaryDeg >= -mostRaoDeg && angles.primaryDeg <= mostLaoDeg && angles.secondaryDeg >= -mostCauDeg &&
               angles.secondaryDeg <= mostCraDeg;
    }
    bool operator==(const CArmReach&) const = default;
};

/// @errors NonFinite; InvalidArgument for limits outside 0 … 180 (primary) and 0 … 90 (secondary), or a reach of one view.
Result<void> validate(const CArmReach& reach);

/// The angles nearest to these (by the angle between the lines of sight) that the arm can reach.
CArmAngles heldWithin(const CArmReach& reach, const CArmAngles& angles);

/// How the patient lies in the room, against how the CT's axes have the patient: the angles by which the arm has to be turned
/// on so that it sees the same. Rolled to the patient's left (chest towards the left): primary positive. Chest towards the
/// head (head low): secondary positive. The roll is exactly an offset of the primary angle [Blake2012]; the secondary one is a turn
/// about the patient's left-right axis after it, an offset of the secondary angle for views straight from the front only.
struct PatientTurn {
    double primaryDeg = 0.0;
    double secondaryDeg = 0.0;

    bool isNone() const { return primaryDeg == 0.0 && secondaryDeg == 0.0; }
    bool operator==(const PatientTurn&) const = default;
};

/// Farther than this nobody lies otherwise than at CT and keeps the heart where it was. Assumption.
inline constexpr double kMostTurnDeg = 90.0;

/// @errors NonFinite; InvalidArgument beyond kMostTurnDeg.
Result<void> validate(const PatientTurn& turn);

/// Rotation that takes directions in the CT's axes to directions in the room's (as LPS of a patient who lies as the C-arm's
/// display supposes).
Eigen::Matrix3d roomFromPatient(const PatientTurn& turn);

/// What the arm must show so that it looks along `patient`, angles in the CT's axes.
CArmAngles roomAngles(const CArmAngles& patient, const PatientTurn& turn);
/// Its inverse.
CArmAngles patientAngles(const CArmAngles& room, const PatientTurn& turn);

/// How the patient lay at CT: (0018,5100) PatientPosition, PS3.3 C.7.3.1.1.2.
enum class LyingPosition { Unknown, Supine, Prone, LeftSideDown, RightSideDown, Other };

/// HFS, FFS, LFS, RFS: supine. HFP, FFP, LFP, RFP: prone. …DL, …DR: on the left, on the right side. Empty: unknown.
/// Anything else: other. Case and blanks around do not matter.
LyingPosition lyingPosition(std::string_view patientPosition);

/// "on the back", "on the face"… for sentences.
std::string words(LyingPosition position);

/// The turn to plan with. LPS axes are the patient's own, so that the plane's direction is right for head or feet first alike;
/// but angles predicted from a CT hold only while the heart lies as it lay then: supine, as for the procedure. Prone or on
/// one side the heart falls another way (several degrees and millimetres that no offset from the table knows), and of an
/// unknown position nothing can be said. SCCT's consensus on CT before valve implantation: if the patient was not supine, say
/// so and give no angles. So without a turn that the person states, anything but supine is refused.
/// @errors AttributeMissing when the position is unknown, ObjectUnsupported when it is none on the back; those of
/// validate(turn).
Result<PatientTurn> usableTurn(std::string_view patientPosition, const std::optional<PatientTurn>& stated);

} // namespace gauge::core
