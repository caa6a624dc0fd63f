#include "core/sizing/room_card.h"

#include "core/geometry/ellipse.h"
#include "core/sizing/what_next.h"
#include "core/sizing/wording.h"

#include <cmath>
#include <cstdio>
#include <numbers>

namespace gauge::core {
namespace {

constexpr double kFirstMmHg = 6.0, kLastMmHg = 20.0, kStepMmHg = 2.0;
constexpr int kAngles[] = {0, 45, 90, 135};
constexpr double kOuter = 1e-5;   // readings rarer than this on either side are not looked at
constexpr int kScan = 12;         // readings tried on each side
constexpr int kBisections = 12;   // after which the reading is known to about 0.001 mm
constexpr int kCardPoints = 1024; // of the model, for the lines: their quantiles are printed to 0.1 mm
constexpr int kPoints = 512;      // of the model, for each reading tried

ExpectedReading expected(const GaussianMixture& m, double ratio = 1.0) {
    return {ratio * m.quantile(0.5), {ratio * m.quantile(0.025), ratio * m.quantile(0.975)}};
}

/// The quantity's value for that ellipse.
double quantityOf(const Ellipse& e, Quantity quantity) {
    switch (quantity) {
    case Quantity::LandingZonePerimeterDerivedDiameter:
        return perimeterMm(e) / std::numbers::pi;
    case Quantity::LandingZoneAreaDerivedDiameter:
        return 2.0 * std::sqrt(e.semiMajorMm * e.semiMinorMm);
    case Quantity::LandingZoneLongestDiameter:
        return 2.0 * e.semiMajorMm;
    default:
        return 0.0; // the section is not the ostium's
    }
}

FurtherReading readingAt(Modality modality, Derivation derivation, double mmHg) {
    FurtherReading r;
    r.modality = modality;
    r.derivation = derivation;
    r.pressureMmHg = mmHg;
    return r;
}

/// Widths along directions: the known section's shape, as large as the pressure makes it.
void addShape(const LandingSection& section, Quantity quantity, const GaussianMixture& echo,
              const GaussianMixture& fluoroscopy, CardLine& line) {
    Ellipse e;
    e.semiMajorMm = section.longestMm / 2.0;
    e.semiMinorMm = section.shortestMm / 2.0;
    e.angleRad = section.longestAtDeg * std::numbers::pi / 180.0;
    const double whole = quantityOf(e, quantity);
    if (whole <= 0.0) return;
    line.fluoroscopyLongest = expected(fluoroscopy, section.longestMm / whole);
    line.fluoroscopyShortest = expected(fluoroscopy, section.shortestMm / whole);
    if (!section.angleKnown) return;
    for (const int deg : kAngles)
        line.echoByAngle[deg] = expected(echo, chordMm(e, deg * std::numbers::pi / 180.0) / whole);
}

Result<CardLine> lineAt(const ChartAnswer& answer, const Posterior& posterior, const AppendageFacts& facts,
                        double mmHg) {
    const bool views = answer.question.derivation == Derivation::LargestOfViews;
    const auto predict = [&](Modality modality, Derivation derivation) {
        return posterior.predictive(
            readingAt(modality, views ? Derivation::LargestOfViews : derivation, mmHg));
    };
    CardLine line;
    line.pressureMmHg = mmHg;
    line.width = expected(posterior.diameter(mmHg));
    const auto echo2d = predict(Modality::Echo2d, Derivation::EllipseFromAngles);
    if (!echo2d) return tl::make_unexpected(echo2d.error());
    const auto echo3d = predict(Modality::Echo3d, Derivation::Contour);
    if (!echo3d) return tl::make_unexpected(echo3d.error());
    const auto fluoroscopy = predict(Modality::Fluoroscopy, Derivation::EllipseFromAngles);
    if (!fluoroscopy) return tl::make_unexpected(fluoroscopy.error());
    line.echo2d = expected(*echo2d);
    line.echo3d = expected(*echo3d);
    line.fluoroscopy = expected(*fluoroscopy);
    if (facts.section) addShape(*facts.section, answer.question.quantity, *echo2d, *fluoroscopy, line);
    return line;
}

/// Tries readings until another size leads.
class Overturner {
public:
    Overturner(const DeviceChart& chart, const ChartAnswer& answer, const std::vector<Observation>& readings,
               const PlannedAct& act, std::size_t leading)
        : m_chart(chart), m_answer(answer), m_readings(readings), m_act(act), m_leading(leading) {}

    /// The size that leads once the reading counts; the present one where the model refuses it.
    std::size_t sizeAfter(double readingMm) const {
        if (readingMm <= 0.0) return m_leading;
        const auto next =
            answerAgain(m_answer.question, after(m_act, m_readings, readingMm), PosteriorOptions{kPoints});
        return next ? leadingSize(m_chart, *next) : m_leading;
    }

    /// @param outerMm  the farthest reading tried, starting from `innerMm`.
    std::optional<Overturning> beyond(double innerMm, double outerMm, const GaussianMixture& readings) const {
        double kept = innerMm;
        for (int i = 0; i <= kScan; ++i) {
            const double tried = innerMm + (outerMm - innerMm) * i / kScan;
            if (const std::size_t other = sizeAfter(tried); other != m_leading)
                return refined(kept, tried, readings, outerMm > innerMm);
            kept = tried;
        }
        return std::nullopt;
    }

private:
    Overturning refined(double kept, double changed, const GaussianMixture& readings, bool above) const {
        for (int i = 0; i < kBisections && kept != changed; ++i) {
            const double middle = (kept + changed) / 2.0;
            (sizeAfter(middle) == m_leading ? kept : changed) = middle;
        }
        const double below = readings.cdf(changed);
        return {above, changed, above ? 1.0 - below : below, m_chart.sizes[sizeAfter(changed)].name};
    }

    const DeviceChart& m_chart;
    const ChartAnswer& m_answer;
    const std::vector<Observation>& m_readings;
    const PlannedAct& m_act;
    std::size_t m_leading;
};

/// The reading that would be taken in the room: by filling to the decision pressure and reading again.
const PlannedAct* rereading(const std::vector<PlannedAct>& acts) {
    for (const PlannedAct& act : acts)
        if (act.act == Act::RemeasureAfterFilling) return &act;
    return nullptr;
}

Result<void> addOverturning(const DeviceChart& chart, const ChartAnswer& answer,
                            const std::vector<Observation>& readings, std::size_t leading, RoomCard& card) {
    const auto acts = plannedActs(chart, answer, readings);
    const PlannedAct* act = rereading(acts);
    if (!act) return {};
    card.overturningModality = act->reading->modality;
    card.overturningDerivation = act->reading->derivation;
    card.overturningPressureMmHg =
        act->reading->pressureMmHg.value_or(answer.question.decisionPressure.mmHg());
    const auto readingsToCome = answer.posterior.predictive(*act->reading);
    if (!readingsToCome) return tl::make_unexpected(readingsToCome.error());
    const Overturner overturner(chart, answer, readings, *act, leading);
    const double median = readingsToCome->quantile(0.5);
    for (const double outer : {readingsToCome->quantile(kOuter), readingsToCome->quantile(1.0 - kOuter)})
        if (const auto found = overturner.beyond(median, outer, *readingsToCome))
            card.overturning.push_back(*found);
    return {};
}

std::string cell(const ExpectedReading& r) {
    char buffer[48];
    std::snprintf(buffer, sizeof buffer, "%5.1f (%4.1f-%4.1f)", r.medianMm, r.interval95Mm.lo,
                  r.interval95Mm.hi);
    return buffer;
}

std::string pressureCell(double mmHg) {
    char buffer[16];
    std::snprintf(buffer, sizeof buffer, "%4.0f ", mmHg);
    return buffer;
}

std::string shapeTable(const RoomCard& card) {
    if (!card.lines.front().fluoroscopyLongest) return {};
    const bool angles = !card.lines.front().echoByAngle.empty();
    std::string text =
        angles ? "\nExpected echo widths by probe angle, mm\nmmHg  0              45               "
                 "90               135\n"
               : "";
    if (angles)
        for (const CardLine& line : card.lines) {
            text += pressureCell(line.pressureMmHg);
            for (const auto& [deg, reading] : line.echoByAngle)
                text += cell(reading) + " ";
            text += '\n';
        }
    text += "\nExpected fluoroscopic widths in edge-on views, mm\nmmHg  longest           shortest\n";
    for (const CardLine& line : card.lines)
        text += pressureCell(line.pressureMmHg) + cell(*line.fluoroscopyLongest) + "  " +
                cell(*line.fluoroscopyShortest) + '\n';
    return text;
}

std::string overturningText(const RoomCard& card, const std::string& leadingSize) {
    const std::string how = std::string(plainName(card.overturningModality)) + " (" +
                            std::string(plainName(card.overturningDerivation)) + ") at " +
                            pressureText(card.overturningPressureMmHg);
    if (card.overturning.empty())
        return "No reading to be expected by " + how + " would put another size before " + leadingSize +
               ".\n";
    std::string text = "What would overturn the plan, by " + how + ":\n";
    for (const Overturning& o : card.overturning)
        text += std::string("  a reading ") + (o.above ? "above " : "below ") + mmText(o.readingMm) +
                " puts size " + o.otherSize + " before " + leadingSize + " (chance " + chanceText(o.chance) +
                ")\n";
    return text;
}

} // namespace

Result<RoomCard> roomCard(const DeviceChart& chart, const ChartAnswer& answer,
                          const std::vector<Observation>& readings, const AppendageFacts& facts,
                          std::size_t leading) {
    RoomCard card;
    card.quantity = answer.question.quantity;
    const auto posterior = answerAgain(answer.question, readings, PosteriorOptions{kCardPoints});
    if (!posterior) return tl::make_unexpected(posterior.error());
    for (double p = kFirstMmHg; p <= kLastMmHg; p += kStepMmHg) {
        auto line = lineAt(answer, *posterior, facts, p);
        if (!line) return tl::make_unexpected(line.error());
        card.lines.push_back(std::move(*line));
    }
    if (const auto done = addOverturning(chart, answer, readings, leading, card); !done)
        return tl::make_unexpected(done.error());
    return card;
}

std::string plainText(const RoomCard& card, const std::string& leadingSize) {
    std::string text = "Card for the room: expected readings of the " +
                       std::string(plainName(card.quantity)) +
                       ",\nmm, median and 95 % interval of one reading\n"
                       "mmHg  itself            2D echo           3D echo           fluoroscopy\n";
    for (const CardLine& line : card.lines)
        text += pressureCell(line.pressureMmHg) + cell(line.width) + "  " + cell(line.echo2d) + "  " +
                cell(line.echo3d) + "  " + cell(line.fluoroscopy) + '\n';
    if (!card.lines.empty()) text += shapeTable(card);
    return text + '\n' + overturningText(card, leadingSize);
}

} // namespace gauge::core
