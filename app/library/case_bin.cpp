// The bin: cases leave the list, and come back or go for ever.
#include "app/library/case_row.h"

namespace gauge::app {

using core::ErrorCode;

core::Result<void> CaseLibrary::changeBin(const QString& caseId, bool binned) {
    auto row = wholeCase(caseId, true);
    if (!row) return tl::make_unexpected(row.error());
    const auto lease = readLease(caseId);
    if (!lease) return tl::make_unexpected(lease.error());
    if (*lease && !(*lease)->info.mine && !(*lease)->info.dead)
        return libraryFailure(ErrorCode::InvalidArgument, tr("%1 is editing it. Wait until the case is closed there.")
                                                              .arg((*lease)->info.holder));
    const auto time = now();
    if (!time) return tl::make_unexpected(time.error());
    row->binnedAt = binned ? *time : QString();
    return updateCase(std::move(*row));
}

core::Result<void> CaseLibrary::moveToBin(const QString& caseId) {
    return write(tr("Cannot move the case into the bin"), [&] { return changeBin(caseId, true); });
}

core::Result<void> CaseLibrary::takeFromBin(const QString& caseId) {
    return write(tr("Cannot take the case out of the bin"), [&] { return changeBin(caseId, false); });
}

core::Result<void> CaseLibrary::removeForGood(const QString& caseId) {
    return write(tr("Cannot remove the case for good"), [&]() -> core::Result<void> {
        const auto row = readCase(caseId, true);
        if (!row) return tl::make_unexpected(row.error());
        if (!*row || (*row)->binnedAt.isEmpty())
            return libraryFailure(ErrorCode::InvalidArgument, tr("it is not in the bin. Move it there first."));
        const auto done = m_database->change(QStringLiteral("DELETE FROM cases WHERE id = ?"), {caseId});
        if (!done) return tl::make_unexpected(done.error());
        return {};
    });
}

} // namespace gauge::app
