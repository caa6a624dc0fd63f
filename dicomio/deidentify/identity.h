// The texts of a file by which a person could be found: names, numbers, places, foreign UIDs. What leaves is searched for
// each of them.
#pragma once

#include <set>
#include <string>
#include <string_view>

class DcmItem;

namespace gauge::dicomio {

class Identity {
public:
    /// Everything in the data set that is about a person, a place or a request, at any depth.
    void collect(DcmItem& dataset);

    /// True when the text holds one of them, upper and lower case alike.
    bool isIn(std::string_view text) const;
    /// The same for bytes of a file, exactly as written. @param shortest  shorter texts are not looked for: by chance they
    /// occur among pixels.
    bool isInBytes(std::string_view bytes, std::size_t shortest) const;

    const std::set<std::string>& texts() const { return m_texts; }

private:
    void add(std::string_view text);
    void addPersonName(std::string_view name);

    std::set<std::string> m_texts;
};

} // namespace gauge::dicomio
