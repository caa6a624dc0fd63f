#include <dcmtk/config/osconfig.h>

#include "dicomio/report/report_reader.h"

#include "dicomio/report/content_coding.h"
#include "dicomio/report/report_codes.h"
#include "dicomio/report/report_parts.h"
#include "dicomio/scan/character_set.h"
#include "dicomio/toolkit.h"

#include <dcmtk/dcmdata/dcdeftag.h>
#include <dcmtk/dcmdata/dcfilefo.h>
#include <dcmtk/dcmdata/dcuid.h>

#include <algorithm>
#include <array>
#include <new>

namespace gauge::dicomio {
namespace {

using core::ErrorCode;
using core::failure;
using core::Result;

constexpr std::array kReportClasses{UID_EnhancedSRStorage, UID_ComprehensiveSRStorage,
                                    UID_Comprehensive3DSRStorage};

/// Texts of a data set as UTF-8.
class Head {
public:
    explicit Head(DcmItem& dataset) : m_dataset(dataset) {
        OFString sets;
        dataset.findAndGetOFStringArray(DCM_SpecificCharacterSet, sets);
        std::string rest(sets.c_str());
        for (std::size_t at = 0; at != std::string::npos;) {
            const auto next = rest.find('\\', at);
            m_sets.push_back(rest.substr(at, next == std::string::npos ? next : next - at));
            m_sets.back().erase(m_sets.back().find_last_not_of(' ') + 1);
            at = next == std::string::npos ? next : next + 1;
        }
        if (m_sets.size() == 1 && m_sets[0].empty()) m_sets.clear();
    }

    const std::vector<std::string>& sets() const { return m_sets; }
    std::string text(const DcmTagKey& tag) const { return text(m_dataset, tag); }
    std::string text(DcmItem& from, const DcmTagKey& tag) const {
        OFString value;
        if (from.findAndGetOFStringArray(tag, value).bad()) return {};
        std::string out = toUtf8(std::string_view(value.c_str(), value.length()), m_sets);
        out.erase(out.find_last_not_of(std::string(" \0", 2)) + 1);
        return out;
    }
    template <class Use> void each(DcmItem& from, const DcmTagKey& tag, Use use) const {
        DcmSequenceOfItems* sequence = nullptr;
        if (from.findAndGetSequence(tag, sequence).bad() || sequence == nullptr) return;
        DcmObject* object = nullptr;
        while ((object = sequence->nextInContainer(object)) != nullptr)
            use(*static_cast<DcmItem*>(object));
    }

private:
    DcmItem& m_dataset;
    std::vector<std::string> m_sets;
};

void readEvidence(const Head& head, DcmItem& dataset, const DcmTagKey& tag,
                  std::vector<SourceImage>& images) {
    head.each(dataset, tag, [&](DcmItem& study) {
        head.each(study, DCM_ReferencedSeriesSequence, [&](DcmItem& series) {
            head.each(series, DCM_ReferencedSOPSequence, [&](DcmItem& instance) {
                images.push_back({head.text(study, DCM_StudyInstanceUID),
                                  head.text(series, DCM_SeriesInstanceUID),
                                  head.text(instance, DCM_ReferencedSOPClassUID),
                                  head.text(instance, DCM_ReferencedSOPInstanceUID),
                                  {}});
            });
        });
    });
}

void readHead(const Head& head, DcmItem& dataset, ReadReport& out) {
    ReportContent& content = out.content;
    out.sopClassUid = head.text(DCM_SOPClassUID);
    out.sopInstanceUid = head.text(DCM_SOPInstanceUID);
    out.seriesUid = head.text(DCM_SeriesInstanceUID);
    out.characterSet = head.sets().empty() ? "" : head.sets().front();
    out.complete = head.text(DCM_CompletionFlag) == "COMPLETE";
    out.verified = head.text(DCM_VerificationFlag) == "VERIFIED";
    content.patient = {head.text(DCM_PatientName), head.text(DCM_PatientID), head.text(DCM_IssuerOfPatientID),
                       head.text(DCM_PatientBirthDate), head.text(DCM_PatientSex)};
    content.study = {head.text(DCM_StudyInstanceUID), head.text(DCM_StudyID),
                     head.text(DCM_AccessionNumber),  head.text(DCM_StudyDate),
                     head.text(DCM_StudyTime),        head.text(DCM_ReferringPhysicianName),
                     head.text(DCM_StudyDescription)};
    content.time = isoTime(head.text(DCM_ContentDate) + head.text(DCM_ContentTime) +
                           head.text(DCM_TimezoneOffsetFromUTC));
    content.device = {{},
                      head.text(DCM_Manufacturer),
                      head.text(DCM_ManufacturerModelName),
                      head.text(DCM_DeviceSerialNumber),
                      head.text(DCM_SoftwareVersions)};
    readEvidence(head, dataset, DCM_CurrentRequestedProcedureEvidenceSequence, content.images);
    readEvidence(head, dataset, DCM_PertinentOtherEvidenceSequence, content.images);
    head.each(dataset, DCM_VerifyingObserverSequence, [&](DcmItem& observer) {
        content.signature = ReportSignature{head.text(observer, DCM_VerifyingObserverName),
                                            head.text(observer, DCM_VerifyingOrganization),
                                            isoTime(head.text(observer, DCM_VerificationDateTime))};
    });
}

tl::unexpected<core::Error> cannot(const std::filesystem::path& file, const core::Error& lower) {
    return failure(lower.code,
                   "Cannot read the report in " + file.filename().string() + ": " + lower.message +
                       (lower.message.ends_with('.') ? "" : "."),
                   lower);
}

Result<ReadReport> interpret(DcmFileFormat& loaded, const std::filesystem::path& file) {
    DcmItem& dataset = *loaded.getDataset();
    const Head head(dataset);
    ReadReport out;
    readHead(head, dataset, out);
    std::size_t ignored = 0;
    const auto tree = decode(dataset, head.sets(), {kMaxReportLevels, kMaxReportItems}, ignored);
    if (!tree) return cannot(file, tree.error());
    if (auto done = readTree(*tree, out, ignored); !done) return cannot(file, done.error());
    if (ignored > 0)
        out.notices.push_back(
            {"report-item-ignored",
             std::to_string(ignored) + " content items of the report have no place here and were left out.",
             {}});
    return out;
}

} // namespace

Result<ReadReport> readReport(const std::filesystem::path& file) {
    initialiseToolkit();
    const auto scanned = scanFile(file);
    if (!scanned) return cannot(file, scanned.error());
    const std::string kind = scanned->sopClassUid();
    if (std::find(kReportClasses.begin(), kReportClasses.end(), kind) == kReportClasses.end())
        return cannot(file,
                      {ErrorCode::ObjectUnsupported,
                       "it is no Enhanced, Comprehensive or Comprehensive 3D structured report (SOP class " +
                           (kind.empty() ? "not told" : kind) + ").",
                       {},
                       {}});
    try {
        DcmFileFormat loaded;
        const OFCondition read = loaded.loadFile(file.c_str());
        if (read.bad())
            return cannot(
                file,
                {ErrorCode::FileDamaged, std::string("the toolkit says \"") + read.text() + "\".", {}, {}});
        return interpret(loaded, file);
    } catch (const std::bad_alloc&) {
        return cannot(file, {ErrorCode::FileDamaged, "it asks for more memory than there is.", {}, {}});
    }
}

} // namespace gauge::dicomio
