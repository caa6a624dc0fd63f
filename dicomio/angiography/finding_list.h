// Notices of a run: what holds for many frames is said once, with the number of frames.
#pragma once

#include "core/result.h"

#include <string>
#include <utility>
#include <vector>

namespace gauge::dicomio {

class FindingList {
public:
    /// Keeps different texts of one code up to kTextsPerCode; equal ones, and those beyond, are counted.
    void add(const std::string& code, std::string text) {
        int alike = 0;
        for (Found& found : m_found) {
            if (found.notice.code != code) continue;
            if (found.notice.text == text || ++alike == kTextsPerCode) {
                ++found.frames;
                return;
            }
        }
        m_found.push_back({{code, std::move(text), {}}, 1});
    }

    /// @param sayFrames  for findings that were added once a frame.
    void moveTo(std::vector<core::Notice>& notices, bool sayFrames) {
        for (auto& found : m_found) {
            if (sayFrames && found.frames > 1)
                found.notice.text +=
                    " Found in " + std::to_string(found.frames) + " places; this is the first.";
            notices.push_back(std::move(found.notice));
        }
        m_found.clear();
    }

private:
    struct Found {
        core::Notice notice;
        int frames = 0;
    };
    static constexpr int kTextsPerCode = 4;
    std::vector<Found> m_found;
};

} // namespace gauge::dicomio
