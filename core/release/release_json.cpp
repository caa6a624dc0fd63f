#include "core/release/release_json.h"

namespace gauge::core {
namespace {

using nlohmann::json;
using nlohmann::ordered_json;

constexpr std::string_view kFormat = "ostium-gauge/release/1";

template <class T> ordered_json orNull(const std::optional<T>& v) { return v ? ordered_json(*v) : ordered_json(nullptr); }

tl::unexpected<Error> unreadable(const std::string& where, const std::string& what) {
    return failure(ErrorCode::RecordUnreadable, "Cannot read the release findings: " + where + " " + what);
}

std::string textAt(const json& object, const char* key) {
    const auto it = object.find(key);
    return it != object.end() && it->is_string() ? it->get<std::string>() : std::string();
}

Result<ReleaseFinding> findingFrom(const json& object, const std::string& where) {
    if (!object.is_object()) return unreadable(where, "is no object.");
    ReleaseFinding f;
    const auto quantity = releaseQuantityFrom(textAt(object, "quantity"));
    if (!quantity) return unreadable(where, "has the unknown quantity \"" + textAt(object, "quantity") + "\".");
    const auto value = object.find("value");
    if (value == object.end() || !value->is_number()) return unreadable(where, "has no number under \"value\".");
    f.quantity = *quantity;
    f.value = value->get<double>();
    if (const auto u = object.find("standard_uncertainty"); u != object.end() && !u->is_null()) {
        if (!u->is_number()) return unreadable(where, "has no number under \"standard_uncertainty\".");
        f.standardUncertainty = u->get<double>();
    }
    f.view = textAt(object, "view");
    f.side = textAt(object, "side");
    f.seenBy = textAt(object, "seen_by");
    f.source = textAt(object, "source");
    return f;
}

Result<ReleaseState> stateFrom(const json& object, const std::string& where) {
    if (!object.is_object()) return unreadable(where, "is no object.");
    ReleaseState state;
    const auto stage = stageFrom(textAt(object, "stage"));
    if (!stage) return unreadable(where, "has the unknown stage \"" + textAt(object, "stage") + "\".");
    state.stage = *stage;
    state.time = textAt(object, "time");
    if (const auto out = object.find("inner_catheter_withdrawn"); out != object.end() && !out->is_null()) {
        if (!out->is_boolean()) return unreadable(where, "has no true or false under \"inner_catheter_withdrawn\".");
        state.innerCatheterWithdrawn = out->get<bool>();
    }
    const auto findings = object.find("findings");
    if (findings == object.end() || !findings->is_array()) return unreadable(where, "has no list \"findings\".");
    for (std::size_t i = 0; i < findings->size(); ++i) {
        auto f = findingFrom((*findings)[i], where + ", finding " + std::to_string(i + 1));
        if (!f) return tl::make_unexpected(f.error());
        state.findings.push_back(std::move(*f));
    }
    if (const auto ok = validate(state); !ok) return tl::make_unexpected(ok.error());
    return state;
}

const char* word(RangeVerdict verdict) {
    switch (verdict) {
    case RangeVerdict::Within: return "within";
    case RangeVerdict::Outside: return "outside";
    case RangeVerdict::NoRange: break;
    }
    return "no-range";
}

} // namespace

ordered_json releaseJson(const std::vector<ReleaseState>& states) {
    ordered_json list = ordered_json::array();
    for (const auto& s : states) {
        ordered_json findings = ordered_json::array();
        for (const auto& f : s.findings)
            findings.push_back({{"quantity", name(f.quantity)},
                                {"value", f.value},
                                {"standard_uncertainty", orNull(f.standardUncertainty)},
                                {"view", f.view},
                                {"side", f.side},
                                {"seen_by", f.seenBy},
                                {"source", f.source}});
        list.push_back({{"stage", name(s.stage)},
                        {"time", s.time},
                        {"inner_catheter_withdrawn", s.innerCatheterWithdrawn},
                        {"findings", std::move(findings)}});
    }
    return {{"format", kFormat}, {"states", std::move(list)}};
}

Result<std::vector<ReleaseState>> releaseFromJson(std::string_view text) {
    const json document = json::parse(text.begin(), text.end(), nullptr, false);
    if (document.is_discarded() || !document.is_object()) return unreadable("the text", "is no JSON object.");
    if (textAt(document, "format") != kFormat)
        return unreadable("its format", "is \"" + textAt(document, "format") + "\"; \"" + std::string(kFormat) +
                                            "\" is needed.");
    const auto list = document.find("states");
    if (list == document.end() || !list->is_array()) return unreadable("the document", "has no list \"states\".");
    std::vector<ReleaseState> states;
    for (std::size_t i = 0; i < list->size(); ++i) {
        auto state = stateFrom((*list)[i], "state " + std::to_string(i + 1));
        if (!state) return tl::make_unexpected(state.error());
        states.push_back(std::move(*state));
    }
    return states;
}

ordered_json reportJson(const ReleaseState& state, const ReleaseReport& report) {
    ordered_json rows = ordered_json::array(), notSeen = ordered_json::array(), notices = ordered_json::array();
    for (const auto& r : report.rows)
        rows.push_back({{"view", r.view},
                        {"what", r.what},
                        {"value", r.value},
                        {"unit", r.unit},
                        {"least", r.range ? orNull(r.range->least) : ordered_json(nullptr)},
                        {"greatest", r.range ? orNull(r.range->greatest) : ordered_json(nullptr)},
                        {"basis", r.range ? ordered_json(words(r.range->basis)) : ordered_json(nullptr)},
                        {"verdict", word(r.verdict)},
                        {"near_limit", r.nearLimit},
                        {"seen_by", r.seenBy}});
    for (const auto q : report.notSeen)
        notSeen.push_back(name(q));
    for (const auto& n : report.notices)
        notices.push_back({{"code", n.code}, {"text", n.text}});
    return {{"stage", name(state.stage)}, {"rows", std::move(rows)}, {"not_seen", std::move(notSeen)}, {"notices", std::move(notices)}};
}

} // namespace gauge::core
