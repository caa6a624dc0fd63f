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

namespace {

/// Grows row by row: what a row gained is offered to its four neighbours, which take the runs that it overlaps. The
/// mask's rows are asked for when they are first needed, so that only those beside the region are ever made.
template <class MakeRow> class RowFlood {
public:
    RowFlood(const Eigen::Vector3i& size, const MakeRow& makeRow)
        : m_size(size), m_makeRow(makeRow), m_grown(size), m_waiting(rowCount(), 0), m_known(rowCount(), 0), m_mask(size) {
        for (int k = 0; k < size.z(); ++k)
            std::fill_n(m_grown.row(0, k), m_grown.words() * static_cast<std::size_t>(size.y()), Word{0});
    }

    void seed(const Eigen::Vector3i& at) {
        if ((at.array() < 0).any() || (at.array() >= m_size.array()).any())
            return;
        std::vector<Word> offered(m_grown.words(), 0);
        setBits(offered.data(), at.x(), at.x() + 1);
        offer(offered.data(), at.y(), at.z());
    }

    BitRows run() {
        while (!m_queue.empty()) {
            const std::uint32_t row = m_queue.back();
            m_queue.pop_back();
            m_waiting[row] = 0;
            const int j = static_cast<int>(row % static_cast<std::uint32_t>(m_size.y()));
            const int k = static_cast<int>(row / static_cast<std::uint32_t>(m_size.y()));
            const Word* gained = m_grown.row(j, k);
            if (j > 0) offer(gained, j - 1, k);
            if (j + 1 < m_size.y()) offer(gained, j + 1, k);
            if (k > 0) offer(gained, j, k - 1);
            if (k + 1 < m_size.z()) offer(gained, j, k + 1);
        }
        return std::move(m_grown);
    }

private:
    std::size_t rowCount() const { return static_cast<std::size_t>(m_size.y()) * static_cast<std::size_t>(m_size.z()); }

    /// Takes the runs of the row's mask that hold an offered bit.
    void offer(const Word* offered, int j, int k) {
        const std::size_t row = static_cast<std::size_t>(j) + static_cast<std::size_t>(m_size.y()) * static_cast<std::size_t>(k);
        Word* mask = m_mask.row(j, k);
        if (m_known[row] == 0) {
            m_makeRow(j, k, mask);
            m_known[row] = 1;
        }
        Word* grown = m_grown.row(j, k);
        const std::size_t words = m_grown.words();
        bool gained = false;
        for (std::size_t w = 0; w < words; ++w)
            for (Word left = offered[w] & mask[w] & ~grown[w]; left != 0; left &= ~grown[w]) {
                takeRun(mask, grown, w, std::countr_zero(left));
                gained = true;
            }
        if (gained && m_waiting[row] == 0) {
            m_waiting[row] = 1;
            m_queue.push_back(static_cast<std::uint32_t>(row));
        }
    }

    /// Sets in `grown` the whole run of `mask` around a bit of it.
    void takeRun(const Word* mask, Word* grown, std::size_t word, int bit) const {
        std::size_t first = word, last = word;
        int begin = bit - std::countl_one(mask[word] << (63 - bit)) + 1;
        for (; begin == 0 && first > 0 && mask[first - 1] >> 63 != 0; --first)
            begin = 64 - std::countl_one(mask[first - 1]);
        int end = bit + std::countr_one(mask[word] >> bit);
        for (; end == 64 && last + 1 < m_grown.words() && (mask[last + 1] & 1) != 0; ++last)
            end = std::countr_one(mask[last + 1]);
        setBits(grown, static_cast<int>(64 * first) + begin, static_cast<int>(64 * last) + end);
    }

    const Eigen::Vector3i m_size;
    const MakeRow& m_makeRow;
    BitRows m_grown;
    std::vector<std::uint8_t> m_waiting, m_known;
    BitRows m_mask; ///< of the known rows
    std::vector<std::uint32_t> m_queue;
};

template <class MakeRow>
BitRows flooded(const Eigen::Vector3i& size, std::span<const Eigen::Vector3i> seeds, const MakeRow& makeRow) {
    RowFlood<MakeRow> flood(size, makeRow);
    for (const Eigen::Vector3i& seed : seeds)
        flood.seed(seed);
    return flood.run();
}

} // namespace

BitRows grownFrom(const BitRows& bits, std::span<const Eigen::Vector3i> seeds) {
    return flooded(bits.size(), seeds, [&](int j, int k, Word* row) { std::copy_n(bits.row(j, k), bits.words(), row); });
}

BitRows grownAbove(const ValueBlock& block, std::int16_t level, std::span<const Eigen::Vector3i> seeds) {
    const std::ptrdiff_t rowLength = block.size.x(), sliceLength = rowLength * block.size.y();
    return flooded(block.size, seeds, [&](int j, int k, Word* row) {
        bitsAbove(block.values + j * rowLength + k * sliceLength, block.size.x(), level, row);
    });
}

BitRows grownIn(const std::uint8_t* mask, const Eigen::Vector3i& size, std::span<const Eigen::Vector3i> seeds) {
    const std::ptrdiff_t rowLength = size.x(), sliceLength = rowLength * size.y();
    return flooded(size, seeds, [&](int j, int k, Word* row) { bitsSet(mask + j * rowLength + k * sliceLength, size.x(), row); });
}

} // namespace gauge::core
