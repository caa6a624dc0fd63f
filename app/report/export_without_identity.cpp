#include "app/report/export_without_identity.h"

#include "core/record/without_identity.h"

#include <QSaveFile>

namespace gauge::app {
namespace {

using core::ErrorCode;
using core::failure;
namespace fs = std::filesystem;

bool liesWithin(const fs::path& inner, const fs::path& outer) {
    std::error_code code;
    const fs::path a = fs::weakly_canonical(inner, code), b = fs::weakly_canonical(outer, code);
    const auto [endOfOuter, ignored] = std::mismatch(b.begin(), b.end(), a.begin(), a.end());
    return endOfOuter == b.end();
}

core::Result<void> writeText(const fs::path& file, const std::string& text) {
    QSaveFile out(QString::fromStdString(file.string()));
    const auto size = static_cast<qint64>(text.size());
    if (out.open(QIODevice::WriteOnly) && out.write(text.data(), size) == size && out.commit()) return {};
    return failure(ErrorCode::OutputUnwritable, "Cannot write " + file.string() + ": " + out.errorString().toStdString() +
                                                    ". Choose another folder, or make room.");
}

std::string patientOf(const core::CaseRecord& record) {
    return record.patient ? record.patient->content.id : std::string();
}

} // namespace

core::Result<ExportResult> exportWithoutIdentity(const ExportRequest& request, const core::WorkContext& work) {
    if (liesWithin(request.target, request.images))
        return failure(ErrorCode::InvalidArgument,
                       "Cannot export into " + request.target.string() +
                           ": it lies within the folder of the originals, and would be taken for one of them. Choose another folder.");
    std::error_code code;
    if (fs::exists(request.target, code) && !fs::is_empty(request.target, code))
        return failure(ErrorCode::InvalidArgument,
                       "Cannot export into " + request.target.string() + ": the folder is not empty. Choose an empty one.");
    const dicomio::Pseudonyms names(request.key.empty() ? dicomio::randomKey() : request.key);
    auto images = dicomio::deidentifyFolder(request.images, request.target / "images", names, request.options, work);
    if (!images) return tl::make_unexpected(images.error());
    ExportResult result{std::move(*images), {}, {}};
    if (!request.record) return result;

    const std::string patient = patientOf(*request.record);
    const int days = names.dayShift(patient);
    const bool keepDates = request.options.keepModifiedDates;
    const core::IdentityReplacement replacement{
        [&](std::string_view uid) { return names.uid(uid); },
        [=](std::string_view time) { return keepDates ? dicomio::shiftedDate(time, days).value_or("") : std::string(); },
        names.patientId(patient)};
    const auto stripped = core::withoutIdentity(*request.record, replacement);
    result.notices = stripped.notices;
    result.caseFile = request.target / "case.case.json";
    if (auto written = writeText(result.caseFile, core::caseText(stripped.file)); !written)
        return tl::make_unexpected(written.error());
    return result;
}

} // namespace gauge::app
