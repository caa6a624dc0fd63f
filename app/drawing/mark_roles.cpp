#include "app/drawing/mark_roles.h"

namespace gauge::app {

Role roleOf(core::MarkKind kind) {
    switch (kind) {
    case core::MarkKind::Atrium:
        return Role::Atrium;
    case core::MarkKind::Tip:
        return Role::Tip;
    case core::MarkKind::Circumflex:
        return Role::Circumflex;
    case core::MarkKind::Ridge:
        return Role::Ridge;
    case core::MarkKind::Aorta:
        return Role::Aorta;
    case core::MarkKind::PulmonaryArtery:
        return Role::PulmonaryArtery;
    }
    return Role::Section;
}

std::vector<PlacedMark> placedMarks(const core::CaseRecord& record) {
    std::vector<PlacedMark> placed;
    for (const auto& [kind, mark] : record.marks)
        placed.push_back({roleOf(kind), mark.point});
    return placed;
}

std::optional<core::AppendageMarks> appendageMarks(const core::CaseRecord& record) {
    const auto point = [&](core::MarkKind kind) -> std::optional<core::PatientPoint> {
        const auto found = record.marks.find(kind);
        return found == record.marks.end() ? std::nullopt : std::optional(found->second.point);
    };
    const auto atrium = point(core::MarkKind::Atrium), tip = point(core::MarkKind::Tip);
    if (!atrium || !tip) return std::nullopt;
    core::AppendageMarks marks;
    marks.atrium = *atrium;
    marks.tip = *tip;
    marks.circumflex = point(core::MarkKind::Circumflex);
    marks.ridge = point(core::MarkKind::Ridge);
    marks.aorta = point(core::MarkKind::Aorta);
    if (record.ostium && record.ostium->confirmed) marks.ostium = record.ostium->plane;
    return marks;
}

} // namespace gauge::app
