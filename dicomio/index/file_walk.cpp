#include "dicomio/index/file_walk.h"

#include <algorithm>
#include <set>
#include <system_error>

namespace gauge::dicomio {
namespace {

namespace fs = std::filesystem;

class Walk {
public:
    explicit Walk(const core::WorkContext& work) : m_work(work) {}

    core::Result<WalkedFolder> from(const fs::path& start) {
        m_folders.push_back(start);
        bool first = true;
        while (!m_folders.empty()) {
            const fs::path folder = m_folders.back();
            m_folders.pop_back();
            const std::error_code error = lookThrough(folder);
            if (error && first)
                return core::failure(core::ErrorCode::FileUnreadable,
                                     "Cannot look through " + start.string() + ": " + error.message() + ".",
                                     {{"file", start.string()}});
            if (error)
                m_result.skipped.push_back({folder, "The folder cannot be read: " + error.message() + "."});
            if (m_work.stopped())
                return core::failure(core::ErrorCode::Cancelled, "Looking through the folder was cancelled.");
            first = false;
        }
        std::sort(m_result.files.begin(), m_result.files.end());
        return std::move(m_result);
    }

private:
    std::error_code lookThrough(const fs::path& folder) {
        std::error_code error;
        const fs::path real = fs::canonical(folder, error);
        if (error || !m_seen.insert(real).second) return error;
        for (fs::directory_iterator at(folder, error), end; !error && at != end; at.increment(error)) {
            take(at->path());
            if (m_work.stopped()) break;
        }
        return error;
    }

    void take(const fs::path& path) {
        std::error_code error;
        const fs::file_status status = fs::status(path, error);
        if (fs::is_directory(status))
            m_folders.push_back(path);
        else if (fs::is_regular_file(status))
            m_result.files.push_back(path);
        else if (status.type() == fs::file_type::not_found)
            m_result.skipped.push_back({path, "It is a link that leads nowhere."});
        else
            m_result.skipped.push_back({path, error ? "It cannot be looked at: " + error.message() + "."
                                                    : "It is neither a file nor a folder."});
    }

    const core::WorkContext& m_work;
    WalkedFolder m_result;
    std::vector<fs::path> m_folders;
    std::set<fs::path> m_seen;
};

} // namespace

core::Result<WalkedFolder> walkFolder(const fs::path& folder, const core::WorkContext& work) {
    std::error_code error;
    const fs::file_status status = fs::status(folder, error);
    if (fs::is_regular_file(status)) return WalkedFolder{{folder}, {}};
    if (!fs::is_directory(status))
        return core::failure(core::ErrorCode::FileUnreadable,
                             "Cannot look through " + folder.string() + ": " +
                                 (status.type() == fs::file_type::not_found ? "there is no such folder."
                                  : error                                   ? error.message() + "."
                                          : "it is neither a folder nor a file."),
                             {{"file", folder.string()}});
    return Walk(work).from(folder);
}

} // namespace gauge::dicomio
