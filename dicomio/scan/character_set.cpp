#include "dicomio/scan/character_set.h"

#include <algorithm>
#include <array>
#include <cerrno>
#include <cstdint>
#include <iconv.h>
#include <iterator>
#include <map>
#include <memory>

namespace gauge::dicomio {
namespace {

constexpr std::string_view kReplacement = "\xEF\xBF\xBD"; // U+FFFD
constexpr char kEscape = '\x1B';

/// A converter of one character set; whatever cannot be converted becomes U+FFFD, byte by byte.
class Converter {
public:
    explicit Converter(const char* from) : m_handle(iconv_open("UTF-8", from)) {}
    ~Converter() {
        if (m_handle != reinterpret_cast<iconv_t>(-1)) iconv_close(m_handle);
    }
    Converter(const Converter&) = delete;
    Converter& operator=(const Converter&) = delete;

    std::string operator()(std::string_view bytes) const {
        std::string out;
        if (m_handle == reinterpret_cast<iconv_t>(-1)) return std::string(kReplacement);
        std::string input(bytes);
        char* in = input.data();
        std::size_t left = input.size();
        while (left > 0) {
            std::array<char, 256> buffer{};
            char* to = buffer.data();
            std::size_t room = buffer.size();
            const std::size_t done = iconv(m_handle, &in, &left, &to, &room);
            out.append(buffer.data(), buffer.size() - room);
            if (done != static_cast<std::size_t>(-1) || errno == E2BIG) continue;
            out += kReplacement;
            ++in;
            --left;
            iconv(m_handle, nullptr, nullptr, nullptr, nullptr);
        }
        return out;
    }

private:
    iconv_t m_handle;
};

enum class Coding { Single, Katakana, Double, DoubleSupplement };

/// One coded character set as it may stand in G0 (bytes below 128) or G1 (bytes above).
struct CodeElement {
    std::string_view number; ///< of the international register, as in "ISO_IR 100"
    std::string_view escape; ///< without the escape character
    int half;                ///< 0 for G0, 1 for G1
    Coding coding;
    const char* iconvName;
};

// PS3.3 tables C.12-2 to C.12-4.
constexpr CodeElement kElements[] = {
    {"6", "(B", 0, Coding::Single, "ASCII"},
    {"13", "(J", 0, Coding::Single, "ASCII"}, // JIS X 0201 Roman; its yen sign is shown as a backslash
    {"13", ")I", 1, Coding::Katakana, ""},
    {"100", "-A", 1, Coding::Single, "ISO-8859-1"},
    {"101", "-B", 1, Coding::Single, "ISO-8859-2"},
    {"109", "-C", 1, Coding::Single, "ISO-8859-3"},
    {"110", "-D", 1, Coding::Single, "ISO-8859-4"},
    {"144", "-L", 1, Coding::Single, "ISO-8859-5"},
    {"127", "-G", 1, Coding::Single, "ISO-8859-6"},
    {"126", "-F", 1, Coding::Single, "ISO-8859-7"},
    {"138", "-H", 1, Coding::Single, "ISO-8859-8"},
    {"148", "-M", 1, Coding::Single, "ISO-8859-9"},
    {"203", "-b", 1, Coding::Single, "ISO-8859-15"},
    {"166", "-T", 1, Coding::Single, "TIS-620"},
    {"87", "$B", 0, Coding::Double, "EUC-JP"},
    {"159", "$(D", 0, Coding::DoubleSupplement, "EUC-JP"},
    {"149", "$)C", 1, Coding::Double, "EUC-KR"},
    {"58", "$)A", 1, Coding::Double, "GB2312"},
};

/// Sets that take the whole value and know no escapes.
const char* wholeValueSet(std::string_view declared) {
    if (declared == "ISO_IR 192") return "UTF-8";
    if (declared == "GB18030") return "GB18030";
    if (declared == "GBK") return "GBK";
    return nullptr;
}

const CodeElement* elementFor(std::string_view number, int half) {
    for (const CodeElement& element : kElements)
        if (element.number == number && element.half == half) return &element;
    return nullptr;
}

/// "ISO_IR 100" and "ISO 2022 IR 100" both name register entry 100.
std::string_view registerNumber(std::string_view declared) {
    const auto at = declared.rfind(' ');
    return at == std::string_view::npos ? std::string_view() : declared.substr(at + 1);
}

std::string withoutControls(std::string text) {
    for (char& c : text)
        if (static_cast<unsigned char>(c) < 0x20 || c == 0x7F) c = ' ';
    return text;
}

/// Decodes a value with ISO 2022 code extensions.
class Decoder {
public:
    explicit Decoder(std::string_view firstSet) {
        const auto number = registerNumber(firstSet);
        const CodeElement* upper = elementFor(number, 1);
        // Only single-byte sets may be in force from the start.
        m_initialUpper =
            upper && (upper->coding == Coding::Single || upper->coding == Coding::Katakana) ? upper : nullptr;
        reset();
    }

    std::string operator()(std::string_view bytes) {
        std::string out;
        while (!bytes.empty())
            bytes.remove_prefix(step(bytes, out));
        return out;
    }

private:
    void reset() {
        m_lower = &kElements[0];
        m_upper = m_initialUpper;
    }

    /// Decodes what stands at the front; returns how many bytes that took.
    std::size_t step(std::string_view bytes, std::string& out) {
        if (bytes.front() == kEscape) return escape(bytes);
        const bool high = static_cast<unsigned char>(bytes.front()) >= 0x80;
        const bool control = static_cast<unsigned char>(bytes.front()) <= 0x20;
        const CodeElement* element = high ? m_upper : m_lower;
        if (!element || (high && static_cast<unsigned char>(bytes.front()) < 0xA0)) {
            out += kReplacement;
            return 1;
        }
        if (control || element->coding == Coding::Single) return single(bytes, *element, out);
        if (element->coding == Coding::Katakana) return katakana(bytes, out);
        return pair(bytes, *element, out);
    }

    std::size_t escape(std::string_view bytes) {
        for (const CodeElement& element : kElements)
            if (bytes.substr(1).substr(0, element.escape.size()) == element.escape) {
                (element.half == 0 ? m_lower : m_upper) = &element;
                return 1 + element.escape.size();
            }
        return 1;
    }

    std::size_t single(std::string_view bytes, const CodeElement& element, std::string& out) {
        const char c = bytes.front();
        // PS3.5 6.1.2.5.3: code extensions end at these.
        if (c == '^' || c == '=' || c == '\\' || c == '\r' || c == '\n' || c == '\t' || c == '\f') reset();
        out += static_cast<unsigned char>(c) < 0x80 ? std::string(1, c)
                                                    : converter(element.iconvName)(bytes.substr(0, 1));
        return 1;
    }

    /// Half-width katakana, 0xA1 to 0xDF: U+FF61 to U+FF9F.
    static std::size_t katakana(std::string_view bytes, std::string& out) {
        const auto c = static_cast<unsigned char>(bytes.front());
        if (c < 0xA1 || c > 0xDF) {
            out += kReplacement;
            return 1;
        }
        const unsigned code = 0xFF61u + (c - 0xA1u);
        out += static_cast<char>(0xE0 | (code >> 12));
        out += static_cast<char>(0x80 | ((code >> 6) & 0x3F));
        out += static_cast<char>(0x80 | (code & 0x3F));
        return 1;
    }

    std::size_t pair(std::string_view bytes, const CodeElement& element, std::string& out) {
        if (bytes.size() < 2) {
            out += kReplacement;
            return 1;
        }
        std::string coded = element.coding == Coding::DoubleSupplement ? "\x8F" : "";
        for (std::size_t i = 0; i < 2; ++i)
            coded += static_cast<char>(static_cast<unsigned char>(bytes[i]) | 0x80);
        out += converter(element.iconvName)(coded);
        return 2;
    }

    const Converter& converter(const char* name) {
        auto& slot = m_converters[name];
        if (!slot) slot = std::make_unique<Converter>(name);
        return *slot;
    }

    const CodeElement* m_initialUpper = nullptr;
    const CodeElement* m_lower = nullptr;
    const CodeElement* m_upper = nullptr;
    std::map<std::string_view, std::unique_ptr<Converter>> m_converters;
};

bool isAscii(std::string_view bytes) {
    return std::all_of(bytes.begin(), bytes.end(),
                       [](char c) { return static_cast<unsigned char>(c) < 0x80 && c != kEscape; });
}

} // namespace

std::string toUtf8(std::string_view bytes, const std::vector<std::string>& characterSets) {
    if (isAscii(bytes)) return withoutControls(std::string(bytes));
    const std::string first = characterSets.empty() ? std::string() : characterSets.front();
    if (const char* whole = wholeValueSet(first)) return withoutControls(Converter(whole)(bytes));
    return withoutControls(Decoder(first)(bytes));
}

} // namespace gauge::dicomio
