// A header in the making, for tests: attributes as they would come out of the scanner.
#pragma once

#include "dicomio/angiography/xray_facts.h"
#include "dicomio/scan/dataset.h"

#include <algorithm>
#include <string>

namespace gauge::test {

class Header {
public:
    Header& text(dicomio::Tag tag, std::string value, std::string vr = "DS") {
        m_dataset.add(tag, {std::move(vr), std::move(value), {}});
        return *this;
    }
    Header& sequence(dicomio::Tag tag, std::vector<Header> items) {
        dicomio::Attribute attribute{"SQ", "", {}};
        for (auto& item : items)
            attribute.items.push_back(std::move(item.m_dataset));
        m_dataset.add(tag, std::move(attribute));
        return *this;
    }
    const dicomio::Dataset& dataset() const { return m_dataset; }
    dicomio::XrayFacts facts(int frames = 1) const { return dicomio::xrayFacts(m_dataset, 512, 512, frames); }

private:
    dicomio::Dataset m_dataset;
};

/// Text of the first notice with that code; "" when there is none.
inline std::string noticeText(const std::vector<core::Notice>& notices, const std::string& code) {
    const auto at =
        std::find_if(notices.begin(), notices.end(), [&](const auto& n) { return n.code == code; });
    return at == notices.end() ? std::string() : at->text;
}

} // namespace gauge::test
