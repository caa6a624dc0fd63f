#include <dcmtk/config/osconfig.h>

#include "dicomio/report/structured_report.h"

#include "dicomio/report/content_coding.h"
#include "dicomio/report/object_file.h"
#include "dicomio/report/report_codes.h"
#include "dicomio/report/report_tree.h"

#include <dcmtk/dcmdata/dcdeftag.h>
#include <dcmtk/dcmdata/dcfilefo.h>
#include <dcmtk/dcmdata/dcuid.h>
#include <dcmtk/dcmsr/dsrdoc.h>

namespace gauge::dicomio {
namespace {

using core::ErrorCode;
using core::failure;
using core::Result;

constexpr ObjectKind kFlat{UID_ComprehensiveSRStorage, "SR", "Measurement report", 9001};
constexpr ObjectKind kSpatial{UID_Comprehensive3DSRStorage, "SR", "Measurement report", 9001};

void put(DcmItem& into, const DcmTagKey& tag, const std::string& text, std::size_t longest = 64) {
    putText(into, tag.getGroup(), tag.getElement(), text, longest);
}

/// SR Document General module: what it is made of, and whether someone answers for it.
void putGeneral(DcmItem& into, const ReportContent& content) {
    into.insertEmptyElement(DCM_ReferencedPerformedProcedureStepSequence);
    into.insertEmptyElement(DCM_PerformedProcedureCodeSequence);
    putEvidence(into, DCM_CurrentRequestedProcedureEvidenceSequence.getGroup(),
                DCM_CurrentRequestedProcedureEvidenceSequence.getElement(), content.images);
    put(into, DCM_CompletionFlag, content.signature ? "COMPLETE" : "PARTIAL");
    put(into, DCM_VerificationFlag, content.signature ? "VERIFIED" : "UNVERIFIED");
    if (!content.signature) return;
    const ReportSignature& signature = *content.signature;
    DcmItem* observer = nullptr;
    into.findOrCreateSequenceItem(DCM_VerifyingObserverSequence, observer, -2);
    put(*observer, DCM_VerifyingOrganization,
        signature.organization.empty() ? "not stated" : signature.organization);
    put(*observer, DCM_VerificationDateTime, dicomTime(signature.time).dateTime());
    put(*observer, DCM_VerifyingObserverName, signature.name, 192);
    observer->insertEmptyElement(DCM_VerifyingObserverIdentificationCodeSequence);
}

/// Tells receivers whose codes 99OSTIUM are.
void putScheme(DcmItem& into) {
    DcmItem* scheme = nullptr;
    into.findOrCreateSequenceItem(DCM_CodingSchemeIdentificationSequence, scheme, -2);
    put(*scheme, DCM_CodingSchemeDesignator, std::string(codes::kPrivateScheme));
    put(*scheme, DCM_CodingSchemeUID, std::string(codes::kPrivateSchemeUid));
    put(*scheme, DCM_CodingSchemeName, "Ostium Gauge codes", 1024);
}

/// The toolkit's own check of the document's kind: value types and relationships.
Result<void> check(DcmItem& dataset) {
    DSRDocument document;
    const OFCondition read = document.read(dataset);
    if (read.good() && document.isValid()) return {};
    return failure(ErrorCode::Internal,
                   std::string("Cannot write the structured report: the toolkit does not accept it (") +
                       read.text() + ").");
}

Result<void> signatureUsable(const ReportContent& content) {
    if (!content.signature) return {};
    if (!content.signature->name.empty() && !dicomTime(content.signature->time).time.empty()) return {};
    return failure(ErrorCode::InvalidArgument,
                   "Cannot write the structured report: it is signed, but the signature's name is \"" +
                       content.signature->name + "\" and its time \"" + content.signature->time +
                       "\". Sign the decision again.");
}

} // namespace

Result<WrittenObject> writeStructuredReport(const ReportContent& given, const std::filesystem::path& file) {
    ReportContent content = given;
    content.device = completed(content.device);
    auto tree = reportTree(content);
    if (!tree) return tl::unexpected(tree.error());
    if (auto usable = signatureUsable(content); !usable) return tl::unexpected(usable.error());
    DcmFileFormat out;
    DcmItem& dataset = *out.getDataset();
    const ObjectContext context{content.patient, content.study, content.device, content.time, {}, {}, 1, {}};
    auto made = putCommon(dataset, context, hasPatientRegions(content) ? kSpatial : kFlat);
    if (!made) return made;
    putGeneral(dataset, content);
    putScheme(dataset);
    if (auto encoded = encode(*tree, dataset); !encoded) return tl::unexpected(encoded.error());
    if (auto checked = check(dataset); !checked) return tl::unexpected(checked.error());
    if (auto saved = save(out, file); !saved) return tl::unexpected(saved.error());
    made->file = file;
    return made;
}

} // namespace gauge::dicomio
