#include "app/cli/size_report.h"

#include "core/sizing/wording.h"

#include <cstdio>
#include <sstream>

namespace gauge::app {
namespace {

constexpr std::size_t kColumns = 100;
constexpr double kShownChance = 0.05; // sizes below it keep their warnings to the JSON

constexpr auto kCautions = "Estimates at another pressure are model predictions: re-measure when "
                           "haemodynamics have changed. Research and "
                           "teaching software, not a medical device; not for sole use in clinical decisions. "
                           "Measurements must be confirmed by "
                           "a licensed practitioner; device choice follows the device's current instructions "
                           "for use, local protocol and law.";

/// A paragraph, broken at spaces; following lines are indented.
std::string wrapped(const std::string& text, const std::string& first, const std::string& next) {
    std::string out = first;
    std::size_t column = first.size();
    std::istringstream words(text);
    std::string word;
    bool fresh = true;
    while (words >> word) {
        if (!fresh && column + 1 + word.size() > kColumns) {
            out += '\n' + next;
            column = next.size();
            fresh = true;
        }
        if (!fresh) {
            out += ' ';
            ++column;
        }
        out += word;
        column += word.size();
        fresh = false;
    }
    return out + '\n';
}

std::string paragraph(const std::string& text) {
    return wrapped(text, "", "");
}

std::string bullets(const std::vector<core::Notice>& all) {
    std::string out;
    for (const core::Notice& n : all)
        out += wrapped(n.text, "- ", "  ");
    return out;
}

std::string widthText(const core::SizingQuestion& q, const core::SizingAnswer& a) {
    const core::DiameterAt& d = a.diameter;
    std::string text =
        "The " + std::string(core::plainName(a.question.quantity)) +
        (a.question.by2d ? " (" + std::string(core::plainName(a.question.derivation)) + ")" : "") + " at " +
        core::pressureText(d.pressureMmHg) + " is " + core::mmText(d.medianMm) +
        ", with a chance of 95 % from " + core::mmRange(d.lower95Mm, d.upper95Mm) + ".";
    char slope[160];
    std::snprintf(slope, sizeof slope,
                  " Near 12 mmHg it widens by %.2f mm per mmHg (give or take %.2f; %.0f %% of that is "
                  "this patient's own, the rest assumed).",
                  a.slope.meanMmPerMmHg, a.slope.sdMmPerMmHg, 100.0 * a.slope.patientShare);
    text += slope;
    if (q.law == core::PressureLaw::StraightLine) text += " Law: straight line.";
    return paragraph(text);
}

std::string causeText(const core::SizingAnswer& a) {
    std::string text = "Widths to live with, 95 %:";
    for (const core::LivingWidths& w : a.livingWidths)
        text += std::string(w.cause == core::PressureChange::Passing ? " if the change of pressure passes"
                                                                     : " if it lasts") +
                " (" + core::pressureText(w.pressures.lowestMmHg) + " to " +
                core::pressureText(w.pressures.highestMmHg) + ") " +
                core::mmRange(w.interval95Mm.lo, w.interval95Mm.hi) +
                (&w == &a.livingWidths.back() ? "." : ";");
    if (a.livingWidths.size() > 1)
        text +=
            " Not knowing which, " + core::mmRange(a.livingInterval95Mm.lo, a.livingInterval95Mm.hi) + ".";
    return paragraph(text);
}

std::string leadingText(const core::SizingAnswer& a) {
    if (!a.leading) return paragraph("No size of the chart has any chance to fit.");
    const core::SizeFit& s = a.sizes[*a.leading];
    std::string text =
        "Size " + s.name + " has the greatest fit chance, " + core::chanceText(s.fitChance) + ", at " +
        core::pressureText(a.diameter.pressureMmHg) + "; over the living range of " +
        core::pressureText(a.living.lowestMmHg) + " to " + core::pressureText(a.living.highestMmHg) +
        " its compression stays inside its band with a chance of " + core::chanceText(s.lastingFit) + ".";
    if (!a.card.overturning.empty()) {
        text += " It rests on the readings below; it would change with a reading by " +
                std::string(core::plainName(a.card.overturningModality)) + " at " +
                core::pressureText(a.card.overturningPressureMmHg);
        for (const core::Overturning& o : a.card.overturning)
            text += std::string(&o == &a.card.overturning.front() ? "" : " or") +
                    (o.above ? " above " : " below ") + core::mmText(o.readingMm);
        text += ".";
    }
    return paragraph(text);
}

std::string percent(double chance) {
    char buffer[16];
    std::snprintf(buffer, sizeof buffer, "%5.0f %%", 100.0 * chance);
    return buffer;
}

std::string sizeTable(const core::SizingAnswer& a) {
    std::size_t widest = 4;
    for (const core::SizeFit& s : a.sizes)
        widest = std::max(widest, s.name.size());
    std::string out = "size" + std::string(widest - 4, ' ') +
                      "  compression      fit  lasting  too small  too tight  depth\n";
    for (const core::SizeFit& s : a.sizes) {
        char row[128];
        std::snprintf(row, sizeof row, "  %8.1f %%  %s  %s    %s    %s  %s\n", s.compressionPercent,
                      percent(s.fitChance).c_str(), percent(s.lastingFit).c_str(),
                      percent(s.undersizeChance).c_str(), percent(s.overcompressionChance).c_str(),
                      !s.depthOk   ? "not known"
                      : *s.depthOk ? "enough"
                                   : "short");
        out += s.name + std::string(widest - s.name.size(), ' ') + row;
    }
    return out + "Compression = 100 (nominal - width)/nominal at the decision pressure; too small at the "
                 "highest, too tight "
                 "at\nthe lowest pressure of the living range.\n";
}

std::string readings(const core::SizingQuestion& q, const core::SizingAnswer& a) {
    std::string out;
    for (std::size_t i = 0; i < q.observations.size(); ++i) {
        const core::Observation& o = q.observations[i];
        const core::ReadingWeight& w = a.weights[i];
        char weight[32];
        std::snprintf(weight, sizeof weight, "weight %.2f", w.weight);
        out += wrapped(
            std::string(core::plainName(o.modality)) + ", " + std::string(core::plainName(o.derivation)) +
                ", " + std::string(core::plainName(o.stage)) + " (state \"" + o.state +
                "\"): " + std::string(core::plainName(o.quantity)) + " " + core::mmText(o.valueMm) +
                (o.pressureMmHg ? " at " + core::pressureText(*o.pressureMmHg) : ", pressure not measured") +
                ", " + weight + (w.reason.empty() ? "" : ". " + w.reason),
            "- ", "  ");
    }
    return out;
}

std::string sizeWarnings(const core::SizingAnswer& a) {
    std::string out;
    for (const core::SizeFit& s : a.sizes)
        if (s.fitChance >= kShownChance) out += bullets(s.warnings);
    return out;
}

std::string nextText(const core::SizingAnswer& a) {
    std::string out;
    for (const core::NextAct& act : a.whatNext)
        out += wrapped("Chance to change the size " + core::chanceText(act.chance) + ": " + act.text, "- ",
                       "  ");
    return out;
}

std::string section(const std::string& title, const std::string& content) {
    return content.empty() ? "" : '\n' + title + '\n' + content;
}

} // namespace

std::string sizeText(const core::SizingQuestion& q, const core::SizingAnswer& a) {
    std::string out = paragraph("Chart: " + q.chart.name + ", version " + q.chart.version + ", " +
                                q.chart.date + ". " + q.chart.source);
    out += '\n' + widthText(q, a) + causeText(a) + leadingText(a) + '\n' + sizeTable(a);
    out += section("Warnings", bullets(a.warnings) + sizeWarnings(a));
    out += section("Readings", readings(q, a));
    out += section("What next", nextText(a));
    if (a.leading) out += '\n' + core::plainText(a.card, a.sizes[*a.leading].name);
    out += section("What was assumed", bullets(a.notices));
    return out + '\n' + paragraph(kCautions);
}

} // namespace gauge::app
