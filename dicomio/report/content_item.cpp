#include "dicomio/report/content_item.h"

#include <algorithm>
#include <array>
#include <cctype>

namespace gauge::dicomio {
namespace {

// In the order of the enums.
constexpr std::array<std::string_view, 9> kRelations{"",
                                                     "CONTAINS",
                                                     "HAS OBS CONTEXT",
                                                     "HAS ACQ CONTEXT",
                                                     "HAS CONCEPT MOD",
                                                     "HAS PROPERTIES",
                                                     "INFERRED FROM",
                                                     "SELECTED FROM",
                                                     ""};
constexpr std::array<std::string_view, 14> kTypes{"CONTAINER", "TEXT",     "CODE",     "NUM",  "UIDREF",
                                                  "PNAME",     "DATETIME", "DATE",     "TIME", "IMAGE",
                                                  "COMPOSITE", "SCOORD",   "SCOORD3D", ""};

ContentItem made(Relation relation, ValueType type, const Code& name) {
    ContentItem item;
    item.relation = relation;
    item.type = type;
    item.name = name;
    return item;
}

std::string digits(std::string_view text) {
    std::string out;
    std::copy_if(text.begin(), text.end(), std::back_inserter(out),
                 [](unsigned char c) { return std::isdigit(c) != 0; });
    return out;
}

} // namespace

std::string_view word(Relation relation) {
    return kRelations[static_cast<std::size_t>(relation)];
}
std::string_view word(ValueType type) {
    return kTypes[static_cast<std::size_t>(type)];
}

Relation relationFrom(std::string_view word) {
    const auto found = std::find(kRelations.begin() + 1, kRelations.end(), word);
    return found == kRelations.end() ? Relation::Other : static_cast<Relation>(found - kRelations.begin());
}

ValueType valueTypeFrom(std::string_view word) {
    const auto found = std::find(kTypes.begin(), kTypes.end(), word);
    return found == kTypes.end() ? ValueType::Other : static_cast<ValueType>(found - kTypes.begin());
}

ContentItem container(Relation relation, const Code& name, std::string templateId) {
    ContentItem item = made(relation, ValueType::Container, name);
    item.templateId = std::move(templateId);
    return item;
}

ContentItem textItem(Relation relation, const Code& name, std::string text) {
    ContentItem item = made(relation, ValueType::Text, name);
    item.text = std::move(text);
    return item;
}

ContentItem codeItem(Relation relation, const Code& name, const Code& value) {
    ContentItem item = made(relation, ValueType::Code, name);
    item.code = value;
    return item;
}

ContentItem numItem(Relation relation, const Code& name, double value, const Code& unit) {
    ContentItem item = made(relation, ValueType::Num, name);
    item.number = value;
    item.code = unit;
    return item;
}

ContentItem uidItem(Relation relation, const Code& name, std::string uid) {
    ContentItem item = made(relation, ValueType::UidRef, name);
    item.text = std::move(uid);
    return item;
}

ContentItem nameItem(Relation relation, const Code& name, std::string person) {
    ContentItem item = made(relation, ValueType::PName, name);
    item.text = std::move(person);
    return item;
}

DicomTime dicomTime(std::string_view iso) {
    DicomTime out;
    const auto middle = iso.find('T');
    out.date = digits(iso.substr(0, middle));
    if (out.date.size() != 8) return {};
    if (middle == std::string_view::npos) return out;
    std::string_view clock = iso.substr(middle + 1);
    if (!clock.empty() && clock.back() == 'Z') {
        out.offset = "+0000";
        clock.remove_suffix(1);
    } else if (const auto sign = clock.find_first_of("+-"); sign != std::string_view::npos) {
        const std::string hours = digits(clock.substr(sign + 1));
        if (hours.size() == 4) out.offset = clock[sign] + hours;
        clock = clock.substr(0, sign);
    }
    const auto point = clock.find('.');
    out.time = digits(clock.substr(0, point));
    if (out.time.size() != 2 && out.time.size() != 4 && out.time.size() != 6) return {};
    if (point != std::string_view::npos && out.time.size() == 6)
        out.time += "." + digits(clock.substr(point + 1)).substr(0, 6);
    return out;
}

std::string isoTime(std::string_view dicom) {
    if (dicom.size() < 8) return {};
    std::string out = std::string(dicom.substr(0, 4))
                          .append("-")
                          .append(dicom.substr(4, 2))
                          .append("-")
                          .append(dicom.substr(6, 2));
    std::string_view rest = dicom.substr(8);
    const auto sign = rest.find_first_of("+-");
    const std::string_view clock = rest.substr(0, sign);
    if (clock.size() >= 4) {
        out.append("T").append(clock.substr(0, 2)).append(":").append(clock.substr(2, 2));
        if (clock.size() >= 6) out.append(":").append(clock.substr(4));
    }
    if (sign != std::string_view::npos && rest.size() >= sign + 5 && clock.size() >= 4)
        out.append(rest.substr(sign, 3)).append(":").append(rest.substr(sign + 3, 2));
    return out;
}

} // namespace gauge::dicomio
