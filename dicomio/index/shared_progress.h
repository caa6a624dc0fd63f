// Counts finished pieces of work from several threads and reports the share, one call at a time.
#pragma once

#include "core/parallel/progress.h"

#include <cstddef>
#include <mutex>

namespace gauge::dicomio {

class SharedProgress {
public:
    /// Reports shares from `begin` to `end` while `total` pieces are done.
    SharedProgress(const core::WorkContext& work, std::size_t total, double begin, double end)
        : m_work(work), m_total(total), m_begin(begin), m_end(end) {}

    void add(std::size_t pieces) {
        const std::lock_guard lock(m_mutex);
        m_done += pieces;
        if (m_total > 0)
            m_work.report(m_begin +
                          (m_end - m_begin) * static_cast<double>(m_done) / static_cast<double>(m_total));
    }

private:
    const core::WorkContext& m_work;
    const std::size_t m_total;
    const double m_begin;
    const double m_end;
    std::size_t m_done = 0;
    std::mutex m_mutex;
};

} // namespace gauge::dicomio
