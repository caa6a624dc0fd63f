#include "core/record/case_json.h"

#include "core/record/case_checksum.h"
#include "core/record/record_json.h"

namespace gauge::core {
namespace {

using namespace record_json;
using json_writer::over;

constexpr std::string_view kFormat = "ostium-gauge/case/";
constexpr unsigned long kVersion = 2;

/// `visit(key, entries)` for each kind of entry that a record has many of, and
/// `visit(key, entry)` for what it has once.
template <class Record, class Visitor> void forEachEntry(Record& record, Visitor&& visit) {
    visit("evidence", record.evidence);
    visit("moments", record.moments);
    visit("readings", record.readings);
    visit("drawings", record.drawings);
    visit("contours", record.contours);
    visit("scales", record.scales);
    visit("landmarks", record.landmarks);
    visit("release", record.release);
    visit("stasis", record.stasis);
    visit("sizing", record.sizing);
    visit("projection", record.projection);
    visit("scores", record.scores);
    visit("patient", record.patient);
    visit("decision", record.decision);
    visit("septum_marks", record.septumMarks);
    visit("septum_plan", record.septumPlan);
}

struct EntryWriter {
    Json& json;

    template <class Content> void operator()(const char* key, const Entries<Content>& entries) const {
        Json all = Json::object();
        for (const auto& [id, entry] : entries)
            all[id] = writtenEntry(entry);
        json[key] = std::move(all);
    }
    template <class Content> void operator()(const char* key, const std::optional<Entry<Content>>& entry) const {
        json[key] = writtenEntry(entry);
    }
};

struct EntryReader {
    Object& o;

    template <class Content> void operator()(const char* key, Entries<Content>& entries) const {
        if (!o.has(key)) return;
        const Object all = o.object(key);
        for (const auto& [id, item] : all.json().items()) {
            if (id.empty()) throw Finding{o.pathOf(key) + " has an entry without an id"};
            const std::string path = all.pathOf(id);
            auto entry = readEntry<Content>({item, path});
            checkId(id, entry.content, path);
            entries.emplace(id, std::move(entry));
        }
    }
    template <class Content> void operator()(const char* key, std::optional<Entry<Content>>& entry) const {
        entry = readOptionalEntry<Content>(o, key);
    }
};

CaseRecord readRecord(Object o) {
    CaseRecord record;
    if (o.has("images")) record.images = readImages(o.object("images"));
    Object marks = o.object("marks");
    for (const MarkKind kind : kMarkKinds)
        if (const std::string key(name(kind)); marks.has(key.c_str()))
            record.marks.emplace(kind, readMark(marks.object(key.c_str())));
    if (const Json others = marks.unknown(); !others.empty())
        throw Finding{marks.pathOf(others.begin().key()) + " is no mark that this version knows"};
    if (o.has("ostium")) record.ostium = readOstium(o.object("ostium"));
    record.landing = readLanding(o.object("landing"));
    forEachEntry(record, EntryReader{o});
    record.values = readValues(o.object("values"));
    record.unknown = o.unknown();
    return record;
}

JournalEntry readJournalEntry(Object o) {
    JournalEntry entry;
    entry.sequence = o.count("sequence");
    entry.author = o.text("author", true);
    entry.time = o.text("time", true);
    Object change = o.object("change");
    entry.edit = readEdit(change);
    entry.unknown = o.unknown();
    return entry;
}

/// Refuses what is no case, and newer versions.
void checkFormat(const std::string& format) {
    if (!format.starts_with(kFormat))
        throw Finding{"its format is \"" + format + "\", not a case of Ostium Gauge"};
    const std::string version = format.substr(kFormat.size());
    const bool isNumber = !version.empty() && version.size() < 6 &&
                          version.find_first_not_of("0123456789") == std::string::npos;
    if (!isNumber || version == "0")
        throw Finding{"its format is \"" + format + "\", whose version is no number from 1 on"};
    if (std::stoul(version) > kVersion)
        throw Finding{"it was written in version " + version +
                      " of the format, and this program reads up to version " + std::to_string(kVersion) +
                      ". Open it with a newer Ostium Gauge"};
}

tl::unexpected<Error> unreadable(const Finding& finding) {
    return failure(ErrorCode::RecordUnreadable, "Cannot read the case: " + finding.text + ".");
}

} // namespace

Json toJson(const CaseRecord& record) {
    Json marks = Json::object();
    for (const auto& [kind, mark] : record.marks)
        marks[std::string(name(kind))] = written(mark);
    Json json{{"images", writtenOptional(record.images)},
              {"marks", marks},
              {"ostium", writtenOptional(record.ostium)},
              {"landing", written(record.landing)},
              {"values", written(record.values)}};
    forEachEntry(record, EntryWriter{json});
    return over(record.unknown, std::move(json));
}

Json toJson(const JournalEntry& entry) {
    return over(entry.unknown, {{"sequence", entry.sequence},
                                {"author", entry.author},
                                {"time", entry.time},
                                {"change", toJson(entry.edit)}});
}

Json toJson(const CaseFile& file) {
    Json entries = Json::array();
    for (const auto& entry : file.journal.entries())
        entries.push_back(toJson(entry));
    return over(file.unknown, {{"format", std::string(kFormat) + std::to_string(kVersion)},
                               {"images_folder", file.imagesFolder},
                               {"record", toJson(file.record)},
                               {"journal", entries}});
}

std::string caseText(const CaseFile& file) {
    Json json = toJson(file);
    json[kChecksumKey] = std::string(kChecksumDigits, '0');
    return withChecksum(json.dump(1, ' ', false, Json::error_handler_t::replace) + "\n");
}

Result<JournalEntry> journalEntryFromJson(const Json& json) {
    try {
        return readJournalEntry({json, ""});
    } catch (const Finding& finding) {
        return unreadable(finding);
    }
}

Result<CaseFile> caseFromJson(std::string_view text) {
    const Json json = Json::parse(text, nullptr, /*allow_exceptions=*/false);
    if (json.is_discarded()) return unreadable({"the file is no JSON; it may be damaged or cut short"});
    try {
        Object o(json, "");
        checkFormat(o.text("format"));
        CaseFile file;
        file.record = readRecord(o.object("record"));
        std::vector<JournalEntry> entries;
        for (const auto& item : o.array("journal"))
            entries.push_back(readJournalEntry({item, "journal[" + std::to_string(entries.size()) + "]"}));
        auto journal = Journal::fromEntries(std::move(entries));
        if (!journal) return tl::unexpected(journal.error());
        file.journal = std::move(*journal);
        file.imagesFolder = o.text("images_folder", true);
        o.has(kChecksumKey); // of the file, not of the case (case_checksum.h)
        file.unknown = o.unknown();
        return file;
    } catch (const Finding& finding) {
        return unreadable(finding);
    }
}

} // namespace gauge::core
