#include "core/sizing/chart_reader.h"

#include "core/number_text.h"
#include "core/sizing/json_fields.h"
#include "core/sizing/json_words.h"
#include "core/sizing/percent.h"

#include <algorithm>
#include <cctype>
#include <set>

namespace gauge::core {
namespace {

using json_fields::Fields;
using json_fields::Finding;
using json_fields::kGreatestPressureMmHg;

// No appendage and no implant for one is outside these; a value that is was typed in another unit.
constexpr double kLeastSizeMm = 5.0;
constexpr double kGreatestSizeMm = 80.0;

const std::vector<std::pair<const char*, DeviceKind>> kKinds{{"plug", DeviceKind::Plug},
                                                             {"lobe-and-disc", DeviceKind::LobeAndDisc}};
const std::vector<std::pair<const char*, DepthFrom>> kDepths{{"ostium", DepthFrom::Ostium},
                                                             {"landing-zone", DepthFrom::LandingZone}};
const std::vector<std::pair<const char*, FoldedPlacement>> kFolded{
    {"allowed", FoldedPlacement::Allowed},
    {"not-allowed", FoldedPlacement::NotAllowed},
    {"silent", FoldedPlacement::Silent}};

bool isDate(const std::string& text) {
    if (text.size() != 10 || text[4] != '-' || text[7] != '-') return false;
    for (const std::size_t i : {0, 1, 2, 3, 5, 6, 8, 9})
        if (!std::isdigit(static_cast<unsigned char>(text[i]))) return false;
    const int month = std::stoi(text.substr(5, 2)), day = std::stoi(text.substr(8, 2));
    return month >= 1 && month <= 12 && day >= 1 && day <= 31;
}

InstructedQuantity quantityOf(const Fields& fields, const std::vector<Derivation>& allowed) {
    InstructedQuantity q;
    q.quantity = json_fields::wordOf<Quantity>(fields, "quantity");
    if (q.quantity == Quantity::Depth) fields.wrong("quantity", "a diameter");
    q.derivation = json_fields::wordOf<Derivation>(fields, "derivation");
    if (std::find(allowed.begin(), allowed.end(), q.derivation) == allowed.end()) {
        std::string names;
        for (const Derivation d : allowed)
            names += (names.empty() ? "" : ", ") + std::string(word(d));
        fields.wrong("derivation", "one of " + names);
    }
    return q;
}

InstructedReading readingOf(const Fields& fields) {
    InstructedReading r;
    r.by3d = quantityOf(fields.object("by_3d"), {Derivation::Contour});
    r.by2d = quantityOf(fields.object("by_2d"), {Derivation::EllipseFromAngles, Derivation::LargestOfViews});
    r.phase = json_fields::wordOf<Phase>(fields, "phase");
    r.leastPressureMmHg = fields.optionalNumber("least_pressure_mmHg", 0.0, kGreatestPressureMmHg);
    r.decisionPressureMmHg = fields.optionalNumber("decision_pressure_mmHg", 3.0, kGreatestPressureMmHg);
    return r;
}

Band bandOf(const Fields& fields, const char* key, double least, double most) {
    const auto [lo, hi] = fields.band(key, least, most);
    return {lo, hi};
}

void checkDiameters(const Fields& fields, const ChartSize& size, DeviceKind kind) {
    if (size.acceptsMm.hi >= size.nominalMm)
        throw Finding{fields.pathOf("accepts_mm") + " reaches " + general(size.acceptsMm.hi) +
                      " mm, not less than the nominal " + general(size.nominalMm) +
                      " mm: such an implant would not be held; the band ends below the nominal size"};
    if (kind == DeviceKind::LobeAndDisc && !size.discDiameterMm)
        throw Finding{fields.pathOf("disc_diameter_mm") + " is absent; a lobe-and-disc size needs it"};
    if (kind == DeviceKind::LobeAndDisc && !size.lobeDiameterMm)
        throw Finding{fields.pathOf("lobe_diameter_mm") + " is absent; a lobe-and-disc size needs it"};
    if (kind == DeviceKind::Plug && !size.outerDiameterMm)
        throw Finding{fields.pathOf("outer_diameter_mm") + " is absent; a plug size needs it"};
    if (size.discDiameterMm && size.lobeDiameterMm && *size.discDiameterMm <= *size.lobeDiameterMm)
        throw Finding{fields.pathOf("disc_diameter_mm") + " holds " + general(*size.discDiameterMm) +
                      "; a disc wider than its lobe (" + general(*size.lobeDiameterMm) + " mm) is needed"};
}

ChartSize sizeOf(const Fields& fields, DeviceKind kind) {
    ChartSize s;
    s.name = fields.text("name");
    s.text = fields.textOr("text", "");
    s.nominalMm = fields.number("nominal_mm", kLeastSizeMm, kGreatestSizeMm);
    s.acceptsMm = bandOf(fields, "accepts_mm", kLeastSizeMm, kGreatestSizeMm);
    s.compressionPercent = bandOf(fields, "compression_percent", 0.0, 80.0);
    s.leastDepthMm = fields.number("least_depth_mm", 0.0, kGreatestSizeMm);
    s.landingOffsetMm = fields.number("landing_offset_mm", 0.0, 40.0);
    s.lobeDiameterMm = fields.optionalNumber("lobe_diameter_mm", kLeastSizeMm, kGreatestSizeMm);
    s.outerDiameterMm = fields.optionalNumber("outer_diameter_mm", kLeastSizeMm, kGreatestSizeMm);
    s.discDiameterMm = fields.optionalNumber("disc_diameter_mm", kLeastSizeMm, kGreatestSizeMm);
    s.folded = fields.wordOr("folded_placement", FoldedPlacement::Silent, kFolded);
    checkDiameters(fields, s, kind);
    return s;
}

/// The row in words: `row 3 ("23.5")`, as a person counts.
std::string rowOf(std::size_t i, const nlohmann::json& rows) {
    std::string row = "row " + std::to_string(i + 1);
    const auto& json = rows[i];
    if (json.is_object() && json.contains("name") && json["name"].is_string())
        row += " (\"" + json["name"].get<std::string>() + "\")";
    return row;
}

void readSizes(const Fields& fields, DeviceChart& chart) {
    const auto& rows = fields.list("sizes");
    if (rows.empty()) throw Finding{"sizes is an empty list; at least one size is needed"};
    std::set<std::string> names;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        try {
            const Fields row(rows[i], "sizes[" + std::to_string(i) + "]");
            chart.sizes.push_back(sizeOf(row, chart.kind));
            const ChartSize& size = chart.sizes.back();
            if (!names.insert(size.name).second)
                throw Finding{row.pathOf("name") + " stands twice in the chart"};
            if (i > 0 && size.nominalMm <= chart.sizes[i - 1].nominalMm)
                throw Finding{row.pathOf("nominal_mm") + " holds " + general(size.nominalMm) +
                              "; sizes ascend, so more than the " + general(chart.sizes[i - 1].nominalMm) +
                              " mm of the row before is needed"};
        } catch (const Finding& finding) {
            throw Finding{rowOf(i, rows) + ": " + finding.text};
        }
    }
}

DeviceChart chartOf(const Fields& fields) {
    if (const std::string format = fields.text("format"); format != "ostium-gauge/chart/1")
        throw Finding{"format holds \"" + format + "\"; ostium-gauge/chart/1 is needed"};
    DeviceChart c;
    c.name = fields.text("name");
    c.kind = fields.word("kind", kKinds);
    c.invented = fields.flagOr("invented", false);
    c.version = fields.text("version");
    c.date = fields.text("date");
    if (!isDate(c.date)) fields.wrong("date", "the day of the instructions as YYYY-MM-DD");
    c.source = fields.text("source");
    c.reading = readingOf(fields.object("reading"));
    c.depthFrom = fields.word("depth_measured_from", kDepths);
    c.discOverlapMm = fields.optionalNumber("disc_overlap_mm", 0.0, 30.0).value_or(0.0);
    if (fields.has("least_clearance_mm")) {
        const Fields clearances = fields.object("least_clearance_mm");
        for (const auto& [word, structure] : json_fields::kStructures)
            if (const auto mm = clearances.optionalNumber(word, 0.0, 30.0))
                c.leastClearanceMm[structure] = *mm;
    }
    readSizes(fields, c);
    return c;
}

void compareNeighbours(const ChartSize& a, const ChartSize& b, std::vector<Notice>& notices) {
    const std::string between = "sizes " + a.name + " and " + b.name;
    if (b.acceptsMm.lo < a.acceptsMm.hi)
        notices.push_back({"chart-bands-overlap",
                           "The chart's " + between + " both accept readings from " + general(b.acceptsMm.lo) +
                               " to " + general(std::min(a.acceptsMm.hi, b.acceptsMm.hi)) + " mm.",
                           {{"sizes", a.name + ", " + b.name}}});
    if (b.acceptsMm.lo > a.acceptsMm.hi)
        notices.push_back({"chart-bands-gap",
                           "No size of the chart accepts readings between " + general(a.acceptsMm.hi) +
                               " and " + general(b.acceptsMm.lo) + " mm (between " + between + ").",
                           {{"sizes", a.name + ", " + b.name}}});
}

std::vector<Notice> noticesOf(const DeviceChart& chart) {
    std::vector<Notice> notices;
    if (chart.invented)
        notices.push_back(
            {"chart-invented",
             "The chart \"" + chart.name + "\" is invented for demonstration: it describes no device.",
             {}});
    for (std::size_t i = 1; i < chart.sizes.size(); ++i)
        compareNeighbours(chart.sizes[i - 1], chart.sizes[i], notices);
    for (const ChartSize& s : chart.sizes) {
        const double most = compressionPercent(s.nominalMm, s.acceptsMm.lo);
        const double least = compressionPercent(s.nominalMm, s.acceptsMm.hi);
        if (s.compressionPercent.holds(most) && s.compressionPercent.holds(least)) continue;
        notices.push_back({"chart-band-outside-compression",
                           "Size " + s.name + " accepts readings at which it would be compressed by " +
                               general(least) + " to " + general(most) + " %, outside its own band of " +
                               general(s.compressionPercent.lo) + " to " + general(s.compressionPercent.hi) +
                               " %.",
                           {{"size", s.name}}});
    }
    return notices;
}

} // namespace

const char* name(DeviceKind kind) {
    return kind == DeviceKind::Plug ? "plug" : "lobe-and-disc";
}

const char* name(Structure structure) {
    for (const auto& [word, value] : json_fields::kStructures)
        if (value == structure) return word;
    return "";
}

const char* words(Structure structure) {
    switch (structure) {
    case Structure::CircumflexArtery:
        return "circumflex artery";
    case Structure::Ridge:
        return "ridge to the upper left pulmonary vein";
    case Structure::PulmonaryArtery:
        return "pulmonary artery";
    case Structure::MitralAnnulus:
        return "mitral annulus";
    }
    return "";
}

Result<ChartReading> readChart(std::string_view json, std::string_view name) {
    ChartReading result;
    const std::string finding =
        json_fields::guarded(json, [&](const Fields& fields) { result.chart = chartOf(fields); });
    if (!finding.empty())
        return failure(ErrorCode::ChartInvalid, "Cannot use the device chart " + std::string(name) + ": " +
                                                    finding +
                                                    ". Correct it; chart.schema.json tells every field.");
    result.notices = noticesOf(result.chart);
    return result;
}

} // namespace gauge::core
