#include "sample-data/dicom/dicom_object.h"

#include <dcmtk/dcmdata/dcrleerg.h>

#include <mutex>

namespace gauge::sample_case {

std::string ImageFacts::studyInstanceUid() const {
    return uidFrom(studyText + "/study");
}
std::string ImageFacts::seriesInstanceUid() const {
    return uidFrom(seriesText + "/series");
}
std::string ImageFacts::sopInstanceUid() const {
    return uidFrom(seriesText + "/image");
}

std::string decimals(const std::vector<double>& values) {
    std::string text;
    for (const double value : values) {
        if (!text.empty()) text += '\\';
        text += decimalString(value);
    }
    return text;
}

void ItemWriter::text(const DcmTagKey& tag, const std::string& value) {
    note(tag, [&] { return m_item->putAndInsertString(tag, value.c_str()); });
}
void ItemWriter::us(const DcmTagKey& tag, int value) {
    note(tag, [&] { return m_item->putAndInsertUint16(tag, static_cast<Uint16>(value)); });
}
void ItemWriter::ul(const DcmTagKey& tag, unsigned long value) {
    note(tag, [&] { return m_item->putAndInsertUint32(tag, static_cast<Uint32>(value)); });
}
void ItemWriter::sl(const DcmTagKey& tag, long value) {
    note(tag, [&] { return m_item->putAndInsertSint32(tag, static_cast<Sint32>(value)); });
}
void ItemWriter::fl(const DcmTagKey& tag, const std::vector<float>& values) {
    note(tag, [&] {
        return m_item->putAndInsertFloat32Array(tag, values.data(), static_cast<unsigned long>(values.size()));
    });
}
void ItemWriter::fd(const DcmTagKey& tag, const std::vector<double>& values) {
    note(tag, [&] {
        return m_item->putAndInsertFloat64Array(tag, values.data(), static_cast<unsigned long>(values.size()));
    });
}
void ItemWriter::at(const DcmTagKey& tag, const DcmTagKey& value) {
    note(tag, [&] { return m_item->putAndInsertTagKey(tag, value); });
}
void ItemWriter::ulList(const DcmTagKey& tag, const std::vector<unsigned int>& values) {
    note(tag, [&]() -> OFCondition {
        auto* element = new DcmUnsignedLong(tag);
        const OFCondition put =
            element->putUint32Array(values.data(), static_cast<unsigned long>(values.size()));
        const OFCondition inserted = put.good() ? m_item->insert(element, OFTrue) : put;
        if (inserted.bad()) delete element;
        return inserted;
    });
}
void ItemWriter::sequence(const DcmTagKey& tag) {
    note(tag, [&] { return m_item->insertEmptyElement(tag); });
}
ItemWriter ItemWriter::item(const DcmTagKey& tag) {
    DcmItem* added = m_item;
    note(tag, [&] { return m_item->findOrCreateSequenceItem(tag, added, -2); });
    return {*added, *m_problem};
}
ItemWriter ItemWriter::code(const DcmTagKey& tag, const CodedWord& word) {
    ItemWriter entry = item(tag);
    entry.text(DCM_CodeValue, word.value);
    entry.text(DCM_CodingSchemeDesignator, word.scheme);
    entry.text(DCM_CodeMeaning, word.meaning);
    return entry;
}
void ItemWriter::pixels(const std::vector<const std::vector<std::uint8_t>*>& frames) {
    std::vector<std::uint8_t> all;
    for (const auto* frame : frames)
        all.insert(all.end(), frame->begin(), frame->end());
    if (all.size() % 2 != 0) all.push_back(0);
    note(DCM_PixelData, [&] {
        return m_item->putAndInsertUint8Array(DCM_PixelData, all.data(), static_cast<unsigned long>(all.size()));
    });
}

DicomObject::DicomObject(const char* sopClass, const ImageFacts& facts) {
    ItemWriter put = root();
    put.text(DCM_SpecificCharacterSet, "ISO_IR 192");
    put.text(DCM_PatientName, facts.patientName);
    put.text(DCM_PatientID, facts.patientId);
    put.text(DCM_PatientBirthDate, facts.birthDate);
    put.text(DCM_PatientSex, facts.sex);
    put.text(DCM_PatientComments, facts.comments);
    put.text(DCM_StudyInstanceUID, facts.studyInstanceUid());
    put.text(DCM_StudyDate, facts.date);
    put.text(DCM_StudyTime, facts.studyTime);
    put.text(DCM_ReferringPhysicianName, "");
    put.text(DCM_StudyID, facts.studyId);
    put.text(DCM_AccessionNumber, "");
    put.text(DCM_StudyDescription, facts.studyDescription);
    put.text(DCM_Modality, facts.modality);
    put.text(DCM_SeriesInstanceUID, facts.seriesInstanceUid());
    put.text(DCM_SeriesNumber, std::to_string(facts.seriesNumber));
    put.text(DCM_SeriesDate, facts.date);
    put.text(DCM_SeriesTime, facts.time);
    put.text(DCM_SeriesDescription, facts.seriesDescription);
    put.text(DCM_BodyPartExamined, "HEART");
    put.text(DCM_Manufacturer, "Invented");
    put.text(DCM_ManufacturerModelName, "Formula");
    put.text(DCM_SOPClassUID, sopClass);
    put.text(DCM_SOPInstanceUID, facts.sopInstanceUid());
    put.text(DCM_InstanceNumber, "1");
    put.text(DCM_ContentDate, facts.date);
    put.text(DCM_ContentTime, facts.time);
    if (!facts.frameOfReferenceUid.empty()) {
        put.text(DCM_FrameOfReferenceUID, facts.frameOfReferenceUid);
        put.text(DCM_PositionReferenceIndicator, "");
    }
}

core::Result<void> DicomObject::save(const std::filesystem::path& file, bool runLength) {
    static std::once_flag once;
    std::call_once(once, [] { DcmRLEEncoderRegistration::registerCodecs(); });
    const E_TransferSyntax syntax = runLength ? EXS_RLELossless : EXS_LittleEndianExplicit;
    if (m_problem.empty() && runLength)
        if (const OFCondition packed = m_file.getDataset()->chooseRepresentation(syntax, nullptr); packed.bad())
            m_problem = packed.text();
    std::error_code error;
    std::filesystem::create_directories(file.parent_path(), error);
    if (m_problem.empty() && error) m_problem = error.message();
    if (m_problem.empty())
        if (const OFCondition saved = m_file.saveFile(file.c_str(), syntax); saved.bad()) m_problem = saved.text();
    if (m_problem.empty()) return {};
    return core::failure(core::ErrorCode::OutputUnwritable,
                         "Cannot write " + file.string() + ": " + m_problem + ".", {{"path", file.string()}});
}

} // namespace gauge::sample_case
