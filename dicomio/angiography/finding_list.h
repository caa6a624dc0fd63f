// Notices of a run: what holds for many frames is said once, with the number of frames.
#pragma once

#include "core/result.h"

#include <map>
#include <string>
#include <utility>
#include <vector>

namespace gauge::dicomio {

class FindingList {
public:
    /// Keeps the first text of each code and counts the others.
    void add(const std::string& code, std::string text) {
        const auto [at, isNew] = m_places.try_emplace(code, m_found.size());
        if (isNew)
            m_found.push_back({{code, std::move(text), {}}, 1});
        else
            ++m_found[at->second].frames;
    }

    /// @param sayFrames  for findings that were added once a frame.
    void moveTo(std::vector<core::Notice>& notices, bool sayFrames) {
        for (auto& found : m_found) {
            if (sayFrames && found.frames > 1)
                found.notice.text +=
                    " Found in " + std::to_string(found.frames) + " frames; this is the first.";
            notices.push_back(std::move(found.notice));
        }
        m_found.clear();
        m_places.clear();
    }

private:
    struct Found {
        core::Notice notice;
        int frames = 0;
    };
    std::vector<Found> m_found;
    std::map<std::string, std::size_t> m_places;
};

} // namespace gauge::dicomio
