#include "app/document/edit_log.h"

#include <chrono>

namespace gauge::app {
namespace {

constexpr std::chrono::seconds kTryAgainAfter{1};

} // namespace

EditLog::EditLog(GrowingFile file, std::optional<core::WorkingHeader> header, Reports reports)
    : m_file(std::move(file)), m_reports(std::move(reports)), m_header(std::move(header)), m_thread([this] { run(); }) {}

EditLog::~EditLog() {
    {
        const std::lock_guard lock(m_mutex);
        m_isEnding = true;
    }
    m_wake.notify_all();
    m_thread.join();
}

void EditLog::append(core::JournalEntry entry) {
    {
        const std::lock_guard lock(m_mutex);
        m_pending.push_back(std::move(entry));
    }
    m_wake.notify_all();
}

core::Result<void> EditLog::restart(core::WorkingHeader header) {
    std::unique_lock lock(m_mutex);
    m_idle.wait(lock, [this] { return !m_isWriting; });
    m_pending.clear();
    m_isFailing = false;
    m_header = std::move(header);
    return m_file.cut(0);
}

bool EditLog::flush() {
    std::unique_lock lock(m_mutex);
    m_isFailing = false;
    m_wake.notify_all();
    m_idle.wait(lock, [this] { return !m_isWriting && (m_pending.empty() || m_isFailing); });
    return m_pending.empty();
}

void EditLog::run() {
    std::unique_lock lock(m_mutex);
    while (!m_isEnding || !m_pending.empty()) {
        if (m_pending.empty()) {
            m_wake.wait(lock, [this] { return m_isEnding || !m_pending.empty(); });
            continue;
        }
        if (writePending(lock)) continue;
        if (m_isEnding) return;
        m_wake.wait_for(lock, kTryAgainAfter);
    }
}

/// All that is pending in one go: one synchronisation, however many edits a drag makes.
bool EditLog::writePending(std::unique_lock<std::mutex>& lock) {
    const std::vector<core::JournalEntry> entries(m_pending.begin(), m_pending.end());
    const std::optional<core::WorkingHeader> header = m_header;
    m_isWriting = true;
    lock.unlock();
    std::string text = header ? core::workingLine(*header) : std::string();
    for (const auto& entry : entries)
        text += core::workingLine(entry);
    const auto written = m_file.add(text);
    lock.lock();
    m_isWriting = false;
    const bool isNewFailure = !written && !m_isFailing;
    m_isFailing = !written;
    if (written) {
        m_header.reset();
        m_pending.erase(m_pending.begin(), m_pending.begin() + static_cast<std::ptrdiff_t>(entries.size()));
    }
    m_idle.notify_all();
    lock.unlock();
    if (written)
        m_reports.saved(entries.back().sequence);
    else if (isNewFailure)
        m_reports.failed(written.error());
    lock.lock();
    return written.has_value();
}

} // namespace gauge::app
