#include "core/volume/components.h"

#include "core/parallel/parallel_for.h"

#include <algorithm>
#include <bit>

namespace gauge::core {
namespace {

constexpr std::size_t kSlicesInARange = 16; // seams between ranges are joined by one thread

/// Bits of `word` that begin a run, and those one beyond the end of a run; `before` is the word before it.
Word runBegins(Word word, Word before) {
    return word & ~(word << 1 | before >> 63);
}
Word runEnds(Word word, Word before) {
    return ~word & (word << 1 | before >> 63);
}

std::uint32_t runsInRow(const Word* row, std::size_t words) {
    std::uint32_t count = 0;
    for (std::size_t w = 0; w < words; ++w)
        count += countOf(runBegins(row[w], w > 0 ? row[w - 1] : 0));
    return count;
}

void takeRuns(const Word* row, std::size_t words, int length, std::uint32_t firstNumber, Components::Run* out) {
    Components::Run* begin = out;
    Components::Run* end = out;
    for (std::size_t w = 0; w < words; ++w) {
        const Word before = w > 0 ? row[w - 1] : 0;
        const auto base = static_cast<std::int32_t>(64 * w);
        for (Word left = runBegins(row[w], before); left != 0; left &= left - 1, ++begin) {
            begin->begin = base + std::countr_zero(left);
            begin->part = firstNumber++;
        }
        for (Word left = runEnds(row[w], before); left != 0; left &= left - 1)
            (end++)->end = base + std::countr_zero(left);
    }
    if (end != begin) // the last one reaches the end of the row's words
        end->end = length;
}

} // namespace

/// Finds runs and joins them; Run::part is a parent in a union-find forest (never above the run's own number) until
/// number() turns it into the number of the part.
class ComponentSearch {
public:
    ComponentSearch(const BitRows& bits, Components& out) : m_bits(bits), m_out(out), m_slices(static_cast<std::size_t>(bits.size().z())) {}

    void run() {
        m_out.m_size = m_bits.size();
        findRuns();
        forRanges([&](std::size_t begin, std::size_t end) {
            for (std::size_t k = begin; k < end; ++k)
                joinSlice(static_cast<int>(k), k > begin);
        });
        for (std::size_t k = kSlicesInARange; k < m_slices; k += kSlicesInARange)
            joinToSliceBelow(static_cast<int>(k));
        number();
    }

private:
    using Run = Components::Run;

    template <class Body> void forRanges(const Body& body) const {
        const std::size_t ranges = (m_slices + kSlicesInARange - 1) / kSlicesInARange;
        parallelFor(ranges, 1, [&](std::size_t begin, std::size_t end) {
            for (std::size_t r = begin; r < end; ++r)
                body(r * kSlicesInARange, std::min((r + 1) * kSlicesInARange, m_slices));
        });
    }

    std::size_t rowAt(int j, int k) const {
        return static_cast<std::size_t>(j) + static_cast<std::size_t>(m_bits.size().y()) * static_cast<std::size_t>(k);
    }

    void findRuns() {
        const int rows = m_bits.size().y();
        auto& start = m_out.m_rowStart;
        start.assign(static_cast<std::size_t>(rows) * m_slices + 1, 0);
        forRanges([&](std::size_t begin, std::size_t end) {
            for (std::size_t k = begin; k < end; ++k)
                for (int j = 0; j < rows; ++j)
                    start[rowAt(j, static_cast<int>(k)) + 1] = runsInRow(m_bits.row(j, static_cast<int>(k)), m_bits.words());
        });
        for (std::size_t r = 1; r < start.size(); ++r)
            start[r] += start[r - 1];
        m_out.m_runs.resize(start.back());
        forRanges([&](std::size_t begin, std::size_t end) {
            for (std::size_t k = begin; k < end; ++k)
                for (int j = 0; j < rows; ++j) {
                    const std::uint32_t first = start[rowAt(j, static_cast<int>(k))];
                    takeRuns(m_bits.row(j, static_cast<int>(k)), m_bits.words(), m_bits.size().x(), first,
                             m_out.m_runs.data() + first);
                }
        });
    }

    std::uint32_t root(std::uint32_t r) {
        Run* runs = m_out.m_runs.data();
        while (runs[r].part != r)
            r = runs[r].part = runs[runs[r].part].part;
        return r;
    }

    void join(std::uint32_t a, std::uint32_t b) {
        a = root(a);
        b = root(b);
        if (a < b)
            m_out.m_runs[b].part = a;
        else
            m_out.m_runs[a].part = b;
    }

    /// Joins the runs of two rows that overlap.
    void joinRows(std::size_t one, std::size_t other) {
        const auto& start = m_out.m_rowStart;
        const Run* runs = m_out.m_runs.data();
        for (std::uint32_t a = start[one], b = start[other]; a < start[one + 1] && b < start[other + 1];) {
            if (runs[a].begin < runs[b].end && runs[b].begin < runs[a].end)
                join(a, b);
            if (runs[a].end < runs[b].end)
                ++a;
            else
                ++b;
        }
    }

    void joinSlice(int k, bool withSliceBelow) {
        for (int j = 1; j < m_bits.size().y(); ++j)
            joinRows(rowAt(j, k), rowAt(j - 1, k));
        if (withSliceBelow)
            joinToSliceBelow(k);
    }
    void joinToSliceBelow(int k) {
        for (int j = 0; j < m_bits.size().y(); ++j)
            joinRows(rowAt(j, k), rowAt(j, k - 1));
    }

    /// A parent lies before its child: one pass from the front turns parents into numbers of parts.
    void number() {
        Run* runs = m_out.m_runs.data();
        auto& voxels = m_out.m_voxels;
        for (std::uint32_t r = 0; r < m_out.m_runs.size(); ++r) {
            if (runs[r].part == r) {
                runs[r].part = static_cast<std::uint32_t>(voxels.size());
                voxels.push_back(0);
            } else {
                runs[r].part = runs[runs[r].part].part;
            }
            voxels[runs[r].part] += static_cast<std::size_t>(runs[r].end - runs[r].begin);
        }
    }

    const BitRows& m_bits;
    Components& m_out;
    const std::size_t m_slices;
};

std::span<const Components::Run> Components::row(int j, int k) const {
    const auto r = static_cast<std::size_t>(j) + static_cast<std::size_t>(m_size.y()) * static_cast<std::size_t>(k);
    return {m_runs.data() + m_rowStart[r], m_rowStart[r + 1] - m_rowStart[r]};
}

std::uint32_t Components::partAt(const Eigen::Vector3i& at) const {
    const auto runs = row(at.y(), at.z());
    const auto after = std::upper_bound(runs.begin(), runs.end(), at.x(), [](int i, const Run& run) { return i < run.end; });
    return after != runs.end() && after->begin <= at.x() ? after->part : kNone;
}

Components componentsOf(const BitRows& bits) {
    Components components;
    ComponentSearch(bits, components).run();
    return components;
}

BitRows grownFrom(const BitRows& bits, std::span<const Eigen::Vector3i> seeds) {
    const Components components = componentsOf(bits);
    std::vector<std::uint8_t> kept(components.count(), 0);
    for (const Eigen::Vector3i& seed : seeds) {
        if ((seed.array() < 0).any() || (seed.array() >= bits.size().array()).any())
            continue;
        if (const std::uint32_t part = components.partAt(seed); part != Components::kNone)
            kept[part] = 1;
    }
    BitRows grown(bits.size());
    const auto rows = static_cast<std::size_t>(bits.size().y());
    parallelFor(rows * static_cast<std::size_t>(bits.size().z()), 512, [&](std::size_t begin, std::size_t end) {
        for (std::size_t r = begin; r < end; ++r) {
            const int j = static_cast<int>(r % rows), k = static_cast<int>(r / rows);
            Word* out = grown.row(j, k);
            std::fill_n(out, grown.words(), Word{0});
            for (const Components::Run& run : components.row(j, k))
                if (kept[run.part] != 0)
                    setBits(out, run.begin, run.end);
        }
    });
    return grown;
}

} // namespace gauge::core
