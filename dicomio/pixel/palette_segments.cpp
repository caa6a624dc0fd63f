#include "dicomio/pixel/palette_segments.h"

#include <cmath>
#include <optional>

namespace gauge::dicomio {
namespace {

enum Opcode : unsigned { Discrete = 0, Linear = 1, Indirect = 2 };

class Expander {
public:
    Expander(const std::string& bytes, bool narrow, std::size_t wanted)
        : m_bytes(bytes), m_size(narrow ? 1 : 2), m_wanted(wanted) {}

    tl::expected<std::vector<std::uint16_t>, std::string> run() {
        std::size_t place = 0;
        while (m_out.size() < m_wanted) {
            const auto next = segment(place, true);
            if (!next) return tl::make_unexpected(m_finding);
            place = *next;
        }
        return std::move(m_out);
    }

private:
    std::optional<unsigned> cell(std::size_t place) const {
        if (place * m_size + m_size > m_bytes.size()) return std::nullopt;
        unsigned value = 0;
        for (std::size_t i = 0; i < m_size; ++i)
            value |= static_cast<unsigned>(static_cast<unsigned char>(m_bytes[place * m_size + i]))
                     << (8 * i);
        return value;
    }

    std::nullopt_t broken(const std::string& finding) {
        m_finding = finding;
        return std::nullopt;
    }
    std::nullopt_t shorter() {
        return broken("ends after " + std::to_string(m_out.size()) + " of " + std::to_string(m_wanted) +
                      " entries: the palette is shorter than declared.");
    }

    bool append(unsigned value) {
        if (m_out.size() >= m_wanted) return false;
        m_out.push_back(static_cast<std::uint16_t>(value));
        return true;
    }

    /// Unrolls the segment at a cell. @return the cell behind it.
    std::optional<std::size_t> segment(std::size_t place, bool mayPoint) {
        const auto code = cell(place), count = cell(place + 1);
        if (!code || !count) return shorter();
        if (*count == 0) return broken("has an empty segment.");
        if (*code == Discrete) return discrete(place + 2, *count);
        if (*code == Linear) return linear(place + 2, *count);
        if (*code == Indirect && mayPoint) return indirect(place + 2, *count);
        return broken("has a segment of kind " + std::to_string(*code) + " where none such may stand.");
    }

    std::optional<std::size_t> discrete(std::size_t place, unsigned count) {
        for (unsigned i = 0; i < count; ++i) {
            const auto value = cell(place + i);
            if (!value) return shorter();
            if (!append(*value)) return longer();
        }
        return place + count;
    }

    /// From the entry before, in `count` even steps, to the value that is given.
    std::optional<std::size_t> linear(std::size_t place, unsigned count) {
        const auto last = cell(place);
        if (!last) return shorter();
        if (m_out.empty()) return broken("starts with a linear segment, which needs an entry before it.");
        const double from = m_out.back(), step = (*last - from) / count;
        for (unsigned i = 1; i <= count; ++i)
            if (!append(static_cast<unsigned>(std::lround(from + step * i)))) return longer();
        return place + 1;
    }

    /// `count` segments once more, from a byte offset that two or four cells hold. They may not point in
    /// turn.
    std::optional<std::size_t> indirect(std::size_t place, unsigned count) {
        std::size_t offset = 0;
        const std::size_t cells = 4 / m_size;
        for (std::size_t i = 0; i < cells; ++i) {
            const auto part = cell(place + i);
            if (!part) return shorter();
            offset |= std::size_t{*part} << (8 * m_size * i);
        }
        std::size_t target = offset / m_size;
        for (unsigned s = 0; s < count && m_out.size() < m_wanted; ++s) {
            const auto next = segment(target, false);
            if (!next) return std::nullopt;
            target = *next;
        }
        return place + cells;
    }

    std::nullopt_t longer() {
        return broken("has more than the " + std::to_string(m_wanted) + " entries that are declared.");
    }

    const std::string& m_bytes;
    std::size_t m_size;
    std::size_t m_wanted;
    std::vector<std::uint16_t> m_out;
    std::string m_finding;
};

} // namespace

tl::expected<std::vector<std::uint16_t>, std::string> expandSegments(const std::string& bytes, bool narrow,
                                                                     std::size_t entries) {
    return Expander(bytes, narrow, entries).run();
}

} // namespace gauge::dicomio
