// Brings edits to disk as they are made, in a thread of its own: the person never waits for a disk. Format of the file:
// core/record/working_journal.h.
#pragma once

#include "app/document/disk_files.h"
#include "core/record/working_journal.h"

#include <condition_variable>
#include <deque>
#include <functional>
#include <mutex>
#include <thread>

namespace gauge::app {

class EditLog {
public:
    /// Called in the log's own thread.
    struct Reports {
        std::function<void(core::Revision)> saved;            ///< on disk, synchronised, up to this number
        std::function<void(const core::Error&)> failed;       ///< tried again every second and with every edit
    };

    /// @param header  written before the first edit; nothing when the file already has one.
    EditLog(GrowingFile file, std::optional<core::WorkingHeader> header, Reports reports);
    /// Tries once more to write what is pending, then closes.
    ~EditLog();

    void append(core::JournalEntry entry);
    /// Empties the file and forgets what is pending: all of it is in the case file now. The header comes before the next
    /// edit. @errors OutputUnwritable.
    core::Result<void> restart(core::WorkingHeader header);
    /// Waits until all is written; false when it cannot be.
    bool flush();

    const std::filesystem::path& path() const { return m_file.path(); }

private:
    void run();
    bool writePending(std::unique_lock<std::mutex>& lock);

    GrowingFile m_file;
    Reports m_reports;
    std::mutex m_mutex;
    std::condition_variable m_wake, m_idle;
    std::optional<core::WorkingHeader> m_header; ///< still to be written
    std::deque<core::JournalEntry> m_pending;
    bool m_isWriting = false;
    bool m_isFailing = false;
    bool m_isEnding = false;
    std::thread m_thread; ///< last: starts when all else is there
};

} // namespace gauge::app
