// Edits as JSON. The kinds of entries are told apart by the input id: "drawing/7", "sizing".
#include "core/record/case_json.h"
#include "core/record/record_json.h"

#include <algorithm>

namespace gauge::core {
namespace record_json {
namespace {

struct EditWriter {
    Json operator()(const SetImages& e) const {
        return {{"edit", "set-images"}, {"images", writtenOptional(e.images)}};
    }
    Json operator()(const SetMark& e) const {
        return {{"edit", "set-mark"}, {"mark", name(e.kind)}, {"content", writtenOptional(e.mark)}};
    }
    Json operator()(const SetOstium& e) const {
        return {{"edit", "set-ostium"}, {"ostium", writtenOptional(e.ostium)}};
    }
    Json operator()(const SetLanding& e) const {
        return {{"edit", "set-landing"}, {"landing", record_json::written(e.landing)}};
    }
    Json operator()(const SetValues& e) const {
        return {{"edit", "set-values"}, {"group", e.group}, {"values", record_json::written(e.values)}};
    }
    template <class Content> Json operator()(const SetEntry<Content>& e) const {
        return {{"edit", "set-entry"}, {"id", entryInput<Content>(e.id)}, {"entry", writtenEntry(e.entry)}};
    }
    template <class Content> Json operator()(const SetSingle<Content>& e) const {
        return {{"edit", "set-entry"}, {"id", kEntryName<Content>}, {"entry", writtenEntry(e.entry)}};
    }
};

Edit readSetMark(Object& o) {
    const std::string word = o.text("mark");
    const auto kind = markKindFrom(word);
    if (!kind) throw Finding{o.pathOf("mark") + " is \"" + word + "\", which is no mark that this version knows"};
    return SetMark{*kind, o.has("content") ? std::optional(readMark(o.object("content"))) : std::nullopt};
}

Edit readSetValues(Object& o) {
    SetValues set{readValues(o.object("values")), o.has("group") ? o.text("group") : std::string(kCtValues)};
    for (const auto& value : set.values)
        if (value.group != set.group)
            throw Finding{o.pathOf("values") + " holds a value of the group \"" + value.group + "\" where \"" +
                          set.group + "\" is set"};
    return set;
}

/// The entry when `inputId` is one of this kind.
template <class Content>
std::optional<Edit> readOneOfMany(Object& o, const std::string& inputId, const SetEntry<Content>*) {
    constexpr std::string_view prefix = kEntryName<Content>;
    if (!inputId.starts_with(prefix) || inputId.size() == prefix.size()) return std::nullopt;
    SetEntry<Content> set{inputId.substr(prefix.size()), readOptionalEntry<Content>(o, "entry")};
    if (set.entry) checkId(set.id, set.entry->content, o.pathOf("entry"));
    return set;
}

template <class Content>
std::optional<Edit> readOneOfMany(Object& o, const std::string& inputId, const SetSingle<Content>*) {
    if (inputId != kEntryName<Content>) return std::nullopt;
    return SetSingle<Content>{readOptionalEntry<Content>(o, "entry")};
}

template <class Other> std::optional<Edit> readOneOfMany(Object&, const std::string&, const Other*) {
    return std::nullopt;
}

/// Asks every kind of edit in turn.
template <std::size_t I = 0> Edit readSetEntry(Object& o, const std::string& inputId) {
    if constexpr (I == std::variant_size_v<Edit>) {
        throw Finding{o.pathOf("id") + " is \"" + inputId + "\", which is no entry that this version knows"};
    } else {
        const std::variant_alternative_t<I, Edit>* kind = nullptr;
        if (auto edit = readOneOfMany(o, inputId, kind)) return std::move(*edit);
        return readSetEntry<I + 1>(o, inputId);
    }
}

} // namespace

Edit readEdit(Object& o) {
    const std::string kind = o.text("edit");
    if (kind == "set-images")
        return SetImages{o.has("images") ? std::optional(readImages(o.object("images"))) : std::nullopt};
    if (kind == "set-mark") return readSetMark(o);
    if (kind == "set-ostium")
        return SetOstium{o.has("ostium") ? std::optional(readOstium(o.object("ostium"))) : std::nullopt};
    if (kind == "set-landing") return SetLanding{readLanding(o.object("landing"))};
    if (kind == "set-values") return readSetValues(o);
    if (kind == "set-entry") return readSetEntry(o, o.text("id"));
    throw Finding{o.pathOf("edit") + " is \"" + kind + "\", which is no edit that this version knows"};
}

} // namespace record_json

nlohmann::json toJson(const Edit& edit) {
    return std::visit(record_json::EditWriter{}, edit);
}

Result<Edit> editFromJson(const nlohmann::json& json) {
    try {
        record_json::Object o(json, "");
        return record_json::readEdit(o);
    } catch (const json_reader::Finding& finding) {
        return failure(ErrorCode::RecordUnreadable, "Cannot read the case: " + finding.text + ".");
    }
}

} // namespace gauge::core
