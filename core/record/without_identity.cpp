#include "core/record/without_identity.h"

#include <algorithm>
#include <map>

namespace gauge::core {
namespace {

constexpr auto kSomebody = "a reader";

class Stripper {
public:
    Stripper(const CaseRecord& record, const IdentityReplacement& replacement) : m_replacement(replacement) {
        std::vector<std::pair<Stage, std::string>> moments;
        for (const auto& [id, entry] : record.moments)
            moments.emplace_back(entry.content.circulation.stage, id);
        std::stable_sort(moments.begin(), moments.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
        for (const auto& [stage, id] : moments)
            momentName(id);
    }

    CaseRecord strip(const CaseRecord& record) {
        CaseRecord out;
        if (record.images) {
            ImagesUsed images = *record.images;
            images.seriesUid = uid(images.seriesUid);
            images.frameOfReferenceUid = uid(images.frameOfReferenceUid);
            images.phaseLabel = images.phasePercent ? images.phaseLabel : std::string();
            out.images = known(std::move(images));
        }
        for (const auto& [kind, mark] : record.marks)
            out.marks.emplace(kind, known(mark));
        if (record.ostium) out.ostium = known(*record.ostium);
        out.landing = known(record.landing);
        strip(record.evidence, out.evidence, [&](const std::string& id) { return uid(id); });
        strip(record.moments, out.moments, [&](const std::string& id) { return momentName(id); });
        strip(record.readings, out.readings);
        strip(record.drawings, out.drawings);
        strip(record.contours, out.contours);
        strip(record.scales, out.scales, [&](const std::string& id) { return uid(id); });
        strip(record.landmarks, out.landmarks);
        strip(record.release, out.release);
        strip(record.stasis, out.stasis);
        out.sizing = stripped(record.sizing);
        out.projection = stripped(record.projection);
        out.scores = stripped(record.scores);
        out.patient = stripped(record.patient);
        out.decision = stripped(record.decision);
        out.septumMarks = stripped(record.septumMarks);
        out.septumPlan = stripped(record.septumPlan);
        for (RecordedValue value : record.values)
            out.values.push_back(stripped(std::move(value)));
        std::stable_sort(out.values.begin(), out.values.end(),
                         [](const RecordedValue& a, const RecordedValue& b) { return a.group < b.group; });
        return out;
    }

    int wordsLeftOut() const { return m_wordsLeftOut; }

private:
    template <class T> static T known(T content) {
        content.unknown = UnknownFields::object();
        return content;
    }

    std::string uid(const std::string& original) const { return original.empty() ? original : m_replacement.uid(original); }
    std::string time(const std::string& original) const {
        return original.empty() ? original : m_replacement.time(original);
    }
    void forget(std::string& words) {
        m_wordsLeftOut += words.empty() ? 0 : 1;
        words.clear();
    }
    std::string momentName(const std::string& id) {
        if (id.empty()) return id;
        const auto [found, isNew] = m_moments.try_emplace(id);
        if (isNew) found->second = "moment-" + std::to_string(m_moments.size());
        return found->second;
    }
    /// Ids that people or programs gave: numbers and the names of planes say nothing about anybody, others are numbered anew.
    std::string plainId(const std::string& id, std::size_t place) const {
        const bool number = !id.empty() && id.find_first_not_of("0123456789") == std::string::npos;
        const bool plane = id == "ostium" || id.starts_with("landing-");
        return number || plane ? id : "entry-" + std::to_string(place + 1);
    }

    template <class Content> void strip(const Entries<Content>& from, Entries<Content>& to) {
        std::size_t place = 0;
        for (const auto& [id, entry] : from) {
            std::string name = plainId(id, place++);
            m_renamed[entryInput<Content>(id)] = entryInput<Content>(name);
            to.insert_or_assign(std::move(name), stripped(entry));
        }
    }
    template <class Content, class Rename> void strip(const Entries<Content>& from, Entries<Content>& to, const Rename& rename) {
        for (const auto& [id, entry] : from) {
            std::string name = rename(id);
            m_renamed[entryInput<Content>(id)] = entryInput<Content>(name);
            to.insert_or_assign(std::move(name), stripped(entry));
        }
    }
    template <class Content> Entry<Content> stripped(Entry<Content> entry) {
        strip(entry.content);
        return known(std::move(entry));
    }
    template <class Content> std::optional<Entry<Content>> stripped(const std::optional<Entry<Content>>& entry) {
        return entry ? std::optional(stripped(*entry)) : std::nullopt;
    }

    void strip(Evidence& e) {
        e.seriesUid = uid(e.seriesUid);
        e.sopInstanceUid = uid(e.sopInstanceUid);
        e.moment = momentName(e.moment);
        e.acquired = time(e.acquired);
        forget(e.description);
    }
    void strip(Moment& m) {
        m.circulation.state = momentName(m.circulation.state);
        m.circulation.time = time(m.circulation.time);
    }
    void strip(TypedReading& r) {
        r.observation.state = momentName(r.observation.state);
        forget(r.note);
    }
    void strip(Drawing& d) {
        if (auto* picture = std::get_if<PictureSite>(&d.site)) picture->sopInstanceUid = uid(picture->sopInstanceUid);
        d.evidence = uid(d.evidence);
        forget(d.label);
    }
    void strip(CorrectedContour&) {}
    void strip(PictureScale&) {}
    void strip(PoseLandmark& l) {
        l.echo.sopInstanceUid = uid(l.echo.sopInstanceUid);
        forget(l.label);
    }
    void strip(ReleaseState& s) {
        s.time = time(s.time);
        for (ReleaseFinding& finding : s.findings) {
            finding.seenBy = kSomebody;
            finding.source.clear();
        }
    }
    void strip(StasisFinding& f) { f.seenBy = f.seenBy.empty() ? f.seenBy : kSomebody; }
    void strip(SizingChoice& c) { c.chartSource = c.chartSource.substr(c.chartSource.find_last_of("/\\") + 1); }
    void strip(ProjectionChoice& c) {
        for (ChosenView& view : c.views)
            forget(view.label);
    }
    void strip(Scores&) {}
    void strip(SeptumMarks&) {}
    void strip(SeptumPlan&) {}
    void strip(Patient& p) {
        Patient left;
        left.id = m_replacement.patientId;
        left.sex = p.sex;
        m_wordsLeftOut += p.title.empty() ? 0 : 1;
        m_wordsLeftOut += static_cast<int>(p.tags.size());
        p = std::move(left);
    }
    void strip(Decision& d) {
        forget(d.text);
        d.signedBy.clear();
        d.time.clear();
    }

    RecordedValue stripped(RecordedValue value) {
        for (const std::string_view kind : {"echo/", "echo-3d/", "fluoroscopy/"})
            if (value.group.starts_with(kind)) value.group = std::string(kind) + momentName(value.group.substr(kind.size()));
        if (const auto found = m_renamed.find(value.group); found != m_renamed.end()) value.group = found->second;
        for (InputRevision& used : value.inputs)
            if (const auto found = m_renamed.find(used.id); found != m_renamed.end()) used.id = found->second;
        Provenance source = *value.provenance;
        for (std::string& one : source.sopInstanceUids)
            one = uid(one);
        source.frameOfReferenceUid = uid(source.frameOfReferenceUid);
        source.author.clear();
        source.time = time(source.time);
        value.provenance = shared(std::move(source));
        value.unknown = UnknownFields::object();
        return value;
    }
    std::shared_ptr<const Provenance> shared(Provenance source) {
        if (!m_last || !(*m_last == source)) m_last = std::make_shared<const Provenance>(std::move(source));
        return m_last;
    }

    const IdentityReplacement& m_replacement;
    std::map<std::string, std::string> m_moments;
    std::map<std::string, std::string> m_renamed; ///< input ids
    std::shared_ptr<const Provenance> m_last;
    int m_wordsLeftOut = 0;
};

/// One edit for each thing, under the sequence number that is its revision, so that every revision stays true.
class JournalMaker {
public:
    Journal make(const CaseRecord& r) {
        if (r.images) add(r.images->revision, SetImages{r.images});
        for (const auto& [kind, mark] : r.marks)
            add(mark.revision, SetMark{kind, mark});
        if (r.ostium) add(r.ostium->revision, SetOstium{r.ostium});
        if (!(r.landing == LandingPlanes{})) add(r.landing.revision, SetLanding{r.landing});
        addAll(r.evidence, r.moments, r.readings, r.drawings, r.contours, r.scales, r.landmarks, r.release, r.stasis);
        addOnce(r.sizing, r.scores, r.patient, r.decision, r.septumMarks, r.septumPlan, r.projection);
        Revision next = m_entries.empty() ? 1 : m_entries.rbegin()->first + 1;
        for (std::size_t from = 0; from < r.values.size();) {
            std::size_t to = from;
            while (to < r.values.size() && r.values[to].group == r.values[from].group)
                ++to;
            m_entries.emplace(next++, SetValues{{r.values.begin() + static_cast<std::ptrdiff_t>(from),
                                                 r.values.begin() + static_cast<std::ptrdiff_t>(to)},
                                                r.values[from].group});
            from = to;
        }
        std::vector<JournalEntry> entries;
        for (auto& [sequence, edit] : m_entries)
            entries.push_back({sequence, std::move(edit), {}, {}, UnknownFields::object()});
        return Journal::fromEntries(std::move(entries)).value_or(Journal());
    }

private:
    /// Contents that share a revision (written by hand, or set to the same number by a test) get the next free ones.
    void add(Revision revision, Edit edit) {
        revision = std::max<Revision>(revision, 1);
        while (m_entries.contains(revision))
            ++revision;
        m_entries.emplace(revision, std::move(edit));
    }
    template <class Content> void addEach(const Entries<Content>& entries) {
        for (const auto& [id, entry] : entries)
            add(entry.revision, SetEntry<Content>{id, entry});
    }
    template <class... All> void addAll(const All&... all) { (addEach(all), ...); }
    template <class Content> void addOne(const std::optional<Entry<Content>>& entry) {
        if (entry) add(entry->revision, SetSingle<Content>{entry});
    }
    template <class... All> void addOnce(const All&... all) { (addOne(all), ...); }

    std::map<Revision, Edit> m_entries;
};

} // namespace

CaseWithoutIdentity withoutIdentity(const CaseRecord& record, const IdentityReplacement& replacement) {
    Stripper stripper(record, replacement);
    CaseWithoutIdentity out;
    out.file.record = stripper.strip(record);
    out.file.journal = JournalMaker().make(out.file.record);
    if (const int words = stripper.wordsLeftOut(); words > 0)
        out.notices.push_back({"words-left-out",
                               std::to_string(words) + " labels, notes and other words that a person typed were left out: they "
                                                       "may name somebody.",
                               {}});
    return out;
}

} // namespace gauge::core
