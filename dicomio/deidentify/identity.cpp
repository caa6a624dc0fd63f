#include <dcmtk/config/osconfig.h>

#include "dicomio/deidentify/identity.h"

#include "dicomio/scan/tag.h"

#include <algorithm>
#include <cctype>
#include <dcmtk/dcmdata/dctk.h>

namespace gauge::dicomio {
namespace {

constexpr std::size_t kShortest = 4; // shorter words are not told apart from ordinary ones

std::string_view trimmed(std::string_view text) {
    const auto padding = [](char c) { return c == ' ' || c == '\0'; };
    while (!text.empty() && padding(text.front()))
        text.remove_prefix(1);
    while (!text.empty() && padding(text.back()))
        text.remove_suffix(1);
    return text;
}

std::string lowered(std::string_view text) {
    std::string out(text);
    std::transform(out.begin(), out.end(), out.begin(), [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return out;
}

/// Texts outside group 0010 that point to a person or a place.
bool pointsToSomebody(Tag tag) {
    constexpr Tag kTags[] = {
        {0x0008, 0x0050}, // AccessionNumber
        {0x0008, 0x0080}, // InstitutionName
        {0x0008, 0x0081}, // InstitutionAddress
        {0x0008, 0x0092}, // ReferringPhysicianAddress
        {0x0008, 0x0094}, // ReferringPhysicianTelephoneNumbers
        {0x0008, 0x1010}, // StationName
        {0x0008, 0x1040}, // InstitutionalDepartmentName
        {0x0018, 0x1000}, // DeviceSerialNumber
        {0x0020, 0x0010}, // StudyID
        {0x0038, 0x0010}, // AdmissionID
        {0x0038, 0x0300}, // CurrentPatientLocation
        {0x0040, 0x0241}, // PerformedStationAETitle
        {0x0040, 0x0253}, // PerformedProcedureStepID
        {0x0040, 0x1001}, // RequestedProcedureID
        {0x0040, 0x2016}, // PlacerOrderNumberImagingServiceRequest
        {0x0040, 0x2017}, // FillerOrderNumberImagingServiceRequest
    };
    return std::find(std::begin(kTags), std::end(kTags), tag) != std::end(kTags);
}

/// Texts of group 0010 that are shared by many: code strings, sizes.
bool isText(DcmEVR vr) {
    return vr == EVR_LO || vr == EVR_SH || vr == EVR_LT || vr == EVR_ST || vr == EVR_UT || vr == EVR_DA || vr == EVR_AE;
}

} // namespace

void Identity::add(std::string_view text) {
    text = trimmed(text);
    if (text.size() >= kShortest) m_texts.emplace(text);
}

void Identity::addPersonName(std::string_view name) {
    std::string part;
    const auto flush = [&] {
        add(part);
        part.clear();
    };
    for (const char c : name)
        if (c == '^' || c == '=' || c == '\\' || c == ' ' || c == ',')
            flush();
        else
            part += c;
    flush();
    add(name);
}

void Identity::collect(DcmItem& dataset) {
    for (unsigned long i = 0; i < dataset.card(); ++i) {
        DcmElement* element = dataset.getElement(i);
        if (auto* sequence = dynamic_cast<DcmSequenceOfItems*>(element)) {
            for (unsigned long n = 0; n < sequence->card(); ++n)
                collect(*sequence->getItem(n));
            continue;
        }
        const Tag tag{element->getGTag(), element->getETag()};
        const DcmEVR vr = element->ident();
        OFString value;
        if (vr != EVR_PN && vr != EVR_UI && !(isText(vr) && (tag.group == 0x0010 || pointsToSomebody(tag)))) continue;
        if (element->getOFStringArray(value, OFFalse).bad()) continue;
        const std::string_view text(value.c_str(), value.size());
        if (vr == EVR_PN)
            addPersonName(text);
        else if (vr != EVR_UI)
            add(text);
        else if (!text.starts_with("1.2.840.10008.") && text.size() >= 8)
            add(text);
    }
}

bool Identity::isIn(std::string_view text) const {
    const std::string here = lowered(text);
    return std::any_of(m_texts.begin(), m_texts.end(),
                       [&](const std::string& one) { return here.find(lowered(one)) != std::string::npos; });
}

bool Identity::isInBytes(std::string_view bytes, std::size_t shortest) const {
    return std::any_of(m_texts.begin(), m_texts.end(), [&](const std::string& one) {
        return one.size() >= shortest && std::search(bytes.begin(), bytes.end(), one.begin(), one.end()) != bytes.end();
    });
}

} // namespace gauge::dicomio
