#include "dicomio/deidentify/profile.h"

#include <algorithm>
#include <array>

namespace gauge::dicomio {
namespace {

using namespace std::string_view_literals;

template <class List, class Value> bool holds(const List& list, const Value& value) {
    return std::find(std::begin(list), std::end(list), value) != std::end(list);
}

/// What objects must carry although it says nothing any more (type 2 of the patient, study, series and image modules).
constexpr Tag kEmptied[] = {
    {0x0008, 0x0050}, // AccessionNumber
    {0x0008, 0x0090}, // ReferringPhysicianName
    {0x0010, 0x0010}, // PatientName
    {0x0010, 0x0030}, // PatientBirthDate
    {0x0020, 0x0010}, // StudyID
    {0x0020, 0x1040}, // PositionReferenceIndicator
    {0x0018, 0x1030}, // ProtocolName, type 1C for some CT: empty is told apart from absent
};

/// Words that are no person's: codes, and texts from the standard's own lists.
constexpr Tag kHarmlessWords[] = {
    {0x0008, 0x0100}, // CodeValue
    {0x0008, 0x0102}, // CodingSchemeDesignator
    {0x0008, 0x0103}, // CodingSchemeVersion
    {0x0008, 0x0104}, // CodeMeaning
    {0x0008, 0x0119}, // LongCodeValue
    {0x0020, 0x9056}, // StackID
    {0x0028, 0x1054}, // RescaleType
    {0x0028, 0x1090}, // RecommendedViewingMode
    {0x0028, 0x3004}, // ModalityLUTType
};

constexpr Tag kDevice[] = {
    {0x0008, 0x0070}, // Manufacturer
    {0x0008, 0x1090}, // ManufacturerModelName
    {0x0018, 0x1000}, // DeviceSerialNumber
    {0x0018, 0x1020}, // SoftwareVersions
};

constexpr Tag kCharacteristics[] = {
    {0x0010, 0x0040}, // PatientSex
    {0x0010, 0x1010}, // PatientAge
    {0x0010, 0x1020}, // PatientSize
    {0x0010, 0x1030}, // PatientWeight
};

/// Sequences that are about persons, places, requests or earlier names, or that hold whole other objects.
constexpr Tag kForbiddenSequences[] = {
    {0x0008, 0x0051}, // IssuerOfAccessionNumberSequence
    {0x0008, 0x0082}, // InstitutionCodeSequence
    {0x0008, 0x0096}, // ReferringPhysicianIdentificationSequence
    {0x0008, 0x009D}, // ConsultingPhysicianIdentificationSequence
    {0x0008, 0x1041}, // InstitutionalDepartmentTypeCodeSequence
    {0x0008, 0x1049}, // PhysiciansOfRecordIdentificationSequence
    {0x0008, 0x1052}, // PerformingPhysicianIdentificationSequence
    {0x0008, 0x1062}, // PhysiciansReadingStudyIdentificationSequence
    {0x0008, 0x1072}, // OperatorIdentificationSequence
    {0x0008, 0x1084}, // AdmittingDiagnosesCodeSequence
    {0x0040, 0x0275}, // RequestAttributesSequence
    {0x0040, 0x1101}, // PersonIdentificationCodeSequence
    {0x0040, 0xA073}, // VerifyingObserverSequence
    {0x0040, 0xA078}, // AuthorObserverSequence
    {0x0040, 0xA07A}, // ParticipantSequence
    {0x0040, 0xA07C}, // CustodialOrganizationSequence
    {0x0040, 0xA088}, // VerifyingObserverIdentificationCodeSequence
    {0x0088, 0x0200}, // IconImageSequence
    {0x0400, 0x0561}, // OriginalAttributesSequence
};

/// Groups that speak of persons, requests, studies' management, trials, signatures, overlays, curves.
bool isForbiddenGroup(std::uint16_t group) {
    constexpr std::uint16_t kGroups[] = {0x0012, 0x0032, 0x0038, 0x0400, 0x4000, 0x4008, 0x4010, 0xFFFA, 0xFFFC};
    return group % 2 == 1 || holds(kGroups, group) || (group >= 0x5000 && group <= 0x501E) ||
           (group >= 0x6000 && group <= 0x601E);
}

bool isNumber(std::string_view vr) {
    constexpr std::array kNumbers{"DS"sv, "IS"sv, "US"sv, "SS"sv, "UL"sv, "SL"sv, "FL"sv, "FD"sv, "AT"sv, "UV"sv, "SV"sv};
    return holds(kNumbers, vr);
}

/// Bulk data that is measured, not written: pixels, palettes, look-up tables, colour profile, offset tables.
bool isHarmlessBulk(Tag tag) {
    return tag.group == 0x7FE0 || (tag.group == 0x0028 && (tag.element == 0x2000 || tag.element == 0x3006 ||
                                                          (tag.element >= 0x1200 && tag.element <= 0x1224)));
}

Fate dateFate(Tag tag, std::string_view vr, const DeidentifyOptions& options) {
    constexpr Tag kTypeTwo[] = {{0x0008, 0x0020}, {0x0008, 0x0030}, {0x0008, 0x0023}, {0x0008, 0x0033}};
    constexpr Tag kOfTheDevice[] = {{0x0018, 0x1200}, {0x0018, 0x1201}, {0x0018, 0x1202}}; // calibration, installation
    if (tag.group == 0x0010) return Fate::Remove;
    if (holds(kOfTheDevice, tag)) return options.keepDeviceIdentity && options.keepModifiedDates ? Fate::MoveDate : Fate::Remove;
    if (!options.keepModifiedDates) return holds(kTypeTwo, tag) ? Fate::Empty : Fate::Remove;
    return vr == "TM" ? Fate::Keep : Fate::MoveDate;
}

} // namespace

Fate fateOf(Tag tag, std::string_view vr, const DeidentifyOptions& options) {
    if (holds(kEmptied, tag)) return Fate::Empty;
    if (tag == tags::PatientId) return Fate::NewPatientId;
    if (holds(kCharacteristics, tag)) {
        if (options.keepPatientCharacteristics) return Fate::Keep;
        return tag == kCharacteristics[0] ? Fate::Empty : Fate::Remove;
    }
    if (holds(kDevice, tag)) {
        if (options.keepDeviceIdentity) return Fate::Keep;
        return tag == kDevice[0] ? Fate::Empty : Fate::Remove;
    }
    if (isForbiddenGroup(tag.group) || tag.group == 0x0010 || holds(kForbiddenSequences, tag)) return Fate::Remove;
    if (vr == "SQ") return Fate::Descend;
    if (vr == "UI") return Fate::NewUid;
    if (vr == "DA" || vr == "DT" || vr == "TM") return dateFate(tag, vr, options);
    if (isNumber(vr) || vr == "CS" || holds(kHarmlessWords, tag)) return Fate::Keep;
    const bool bulk = vr == "OB" || vr == "OW" || vr == "OF" || vr == "OD" || vr == "OL" || vr == "OV";
    return bulk && isHarmlessBulk(tag) ? Fate::Keep : Fate::Remove;
}

std::vector<MethodCode> methodCodes(const DeidentifyOptions& options) {
    // CID 7050, De-identification Method.
    std::vector<MethodCode> codes{{"113100", "Basic Application Confidentiality Profile"}};
    if (options.cleanPixels) codes.push_back({"113101", "Clean Pixel Data Option"});
    if (options.keepModifiedDates) codes.push_back({"113107", "Retain Longitudinal Temporal Information Modified Dates Option"});
    if (options.keepPatientCharacteristics) codes.push_back({"113108", "Retain Patient Characteristics Option"});
    if (options.keepDeviceIdentity) codes.push_back({"113109", "Retain Device Identity Option"});
    return codes;
}

} // namespace gauge::dicomio
