// Random contents of entries for properties: every kind, every word of every enum within reach.
#pragma once

#include "core/record/edit.h"

#include <rapidcheck.h>

namespace gauge::core::testing_edits {

inline bool flip() { return *rc::gen::inRange(0, 2) == 1; }
template <class Enum> Enum upTo(Enum last) { return static_cast<Enum>(*rc::gen::inRange(0, static_cast<int>(last) + 1)); }
inline double tenths() { return *rc::gen::inRange(-500, 500) / 10.0; }
template <class F> auto maybe(F make) { return flip() ? std::optional(make()) : std::nullopt; }
inline std::string text() {
    static const std::string kTexts[] = {"", "a", "Vorhofohr – weit", "\"quoted\"\n \"sha256\": \"0\"", "2031-02-03T10:00:00+01:00"};
    return kTexts[*rc::gen::inRange(0, 5)];
}

inline PatientPoint point() {
    const auto mm = [] { return *rc::gen::inRange(-3000, 3000) / 8.0 + 0.1; };
    return {Eigen::Vector3d(mm(), mm(), mm())};
}
inline Eigen::Vector2d spot() { return {tenths(), tenths()}; }
inline std::vector<Eigen::Vector2d> spots() {
    std::vector<Eigen::Vector2d> list(static_cast<std::size_t>(*rc::gen::inRange(0, 5)));
    for (auto& one : list)
        one = spot();
    return list;
}
inline SectionFrame sectionFrame() { return frameOf(Plane{point(), {point().mm.normalized()}}); }
inline PictureSite picture() { return {"2.25.77", *rc::gen::inRange(0, 40)}; }

inline void fill(Evidence& e, const std::string&) {
    e = {upTo(EvidenceKind::Other), text(), text(), upTo(Stage::FollowUp), text(), maybe(tenths), upTo(BeatPhase::Unknown),
         text(), text()};
}
inline void fill(Moment& m, const std::string& id) {
    m.circulation = {upTo(Stage::FollowUp), id, text(), maybe(tenths),
                     maybe([] { return upTo(PressureSource::ProcedureStart); }), maybe(tenths), maybe(tenths),
                     maybe([] { return upTo(GradientSource::Typed); }), maybe(tenths),
                     maybe([] { return upTo(Rhythm::Paced); }), maybe([] { return upTo(Ventilation::Controlled); }),
                     maybe([] { return upTo(RegurgitationGrade::Severe); }),
                     maybe([] { return upTo(PulmonaryVeinFlow::Reversed); })};
    m.condition = upTo(Condition::Other);
    m.pressureUncertaintyMmHg = maybe(tenths);
}
inline void fill(TypedReading& r, const std::string&) {
    r.observation = {upTo(Quantity::Depth), upTo(Modality::Fluoroscopy), upTo(Derivation::SingleView), upTo(Stage::FollowUp),
                     text(), upTo(Condition::Other), upTo(Phase::Unknown), tenths(), maybe(tenths), maybe(tenths),
                     maybe([] { return upTo(PressureSource::ProcedureStart); }), maybe(tenths), maybe(tenths), maybe(tenths)};
    r.mixedBeats = flip();
    r.note = text();
}
inline void fill(Drawing& d, const std::string&) {
    d.kind = upTo(DrawingKind::Envelope);
    d.role = upTo(DrawingRole::MitralInflow);
    d.site = flip() ? DrawingSite(picture())
                    : DrawingSite(SectionSite{sectionFrame(), text(), static_cast<Revision>(*rc::gen::inRange(0, 9))});
    d.points = spots();
    d.evidence = text();
    d.label = text();
}
inline void fill(CorrectedContour& c, const std::string&) {
    c = {sectionFrame(), spots(), text(), static_cast<Revision>(*rc::gen::inRange(0, 9))};
}
inline void fill(PictureScale& s, const std::string&) {
    s = {upTo(ScaleOrigin::PixelSpacing), *rc::gen::inRange(0, 40), spot(), spot(), tenths(), flip(),
         maybe([] { return PixelBox{1, -2, 30, *rc::gen::inRange(0, 40)}; })};
}
inline void fill(PoseLandmark& l, const std::string&) { l = {point(), picture(), spot(), text()}; }
inline void fill(ReleaseState& s, const std::string&) {
    s = {upTo(Stage::FollowUp), text(), flip(), {}};
    for (int n = *rc::gen::inRange(0, 3); n > 0; --n)
        s.findings.push_back({upTo(ReleaseQuantity::SeptalHole), tenths(), maybe(tenths), text(), text(), text(), text()});
}
inline void fill(StasisFinding& f, const std::string&) {
    f = {upTo(Stage::FollowUp), maybe([] { return *rc::gen::inRange(0, 5); }), maybe(flip), maybe(flip), maybe(tenths),
         maybe(tenths), upTo(EnhancementPhase::Unknown), flip(), text()};
}
inline void fill(SizingChoice& c, const std::string&) {
    c = {text(), text(), maybe(tenths), maybe(tenths), maybe(tenths), upTo(PressureChange::Unknown), flip(), text()};
}
inline void fill(ProjectionChoice& c, const std::string&) {
    c.reach = {*rc::gen::inRange(1, 181) * 1.0, *rc::gen::inRange(0, 181) * 1.0, *rc::gen::inRange(0, 91) * 1.0,
               *rc::gen::inRange(0, 91) * 1.0};
    c.turn = maybe([] { return PatientTurn{*rc::gen::inRange(-900, 901) / 10.0, *rc::gen::inRange(-900, 901) / 10.0}; });
    for (int n = *rc::gen::inRange(0, 3); n > 0; --n)
        c.views.push_back({{*rc::gen::inRange(-1800, 1801) / 10.0, *rc::gen::inRange(-900, 901) / 10.0},
                           maybe([] { return upTo(ViewAim::OneForAll); }),
                           text(),
                           static_cast<Revision>(*rc::gen::inRange(0, 9)),
                           text()});
}
inline void fill(Scores& s, const std::string&) {
    s.stroke = maybe([] {
        return StrokeItems{tenths(), maybe([] { return upTo(Sex::Male); }), flip(), flip(), flip(), flip(), flip()};
    });
    s.bleeding = maybe([] {
        return BleedingItems{tenths(), maybe(tenths), flip(), flip(), flip(), flip(), flip(), flip(), flip(), flip(), flip(),
                             maybe(tenths)};
    });
}
inline void fill(Patient& p, const std::string&) {
    p = {text(), text(), text(), text(), text(), std::vector<std::string>(static_cast<std::size_t>(*rc::gen::inRange(0, 3)), text())};
}
inline void fill(Decision& d, const std::string&) { d = {text(), text(), text(), text()}; }

inline void fill(SeptumMarks& m, const std::string&) {
    const auto places = [] { return std::vector<PatientPoint>(static_cast<std::size_t>(*rc::gen::inRange(0, 4)), point()); };
    m = {places(), places(), places(), maybe(point)};
}
inline void fill(SeptumPlan& p, const std::string&) {
    p = {{flip(), upTo(HeightDatum::Coaptation), tenths(), tenths(), tenths(), flip(), {tenths(), tenths()}}, maybe(point)};
}

/// Now and then a field of a later version, sometimes within an object of the content.
inline UnknownFields unknown() {
    UnknownFields fields = UnknownFields::object();
    if (*rc::gen::inRange(0, 4) == 0)
        fields["from_a_later_version"] = {{"depth", *rc::gen::inRange(0, 100)}, {"words", {"a", "b"}}};
    return fields;
}

template <class Content> std::optional<Entry<Content>> entry(const std::string& id, Revision revision) {
    if (*rc::gen::inRange(0, 3) == 0) return std::nullopt;
    Entry<Content> made;
    fill(made.content, id);
    made.revision = revision;
    made.unknown = unknown();
    return made;
}

template <class Content> void fillEdit(SetEntry<Content>& edit, Revision revision) {
    static const std::string kIds[] = {"1", "landing-1", "2.25.77", "Ω/ä"};
    edit.id = kIds[*rc::gen::inRange(0, 4)];
    edit.entry = entry<Content>(edit.id, revision);
}
template <class Content> void fillEdit(SetSingle<Content>& edit, Revision revision) {
    edit.entry = entry<Content>("", revision);
}

} // namespace gauge::core::testing_edits
