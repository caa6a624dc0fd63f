#include "tests/core/sizing/sizing_questions.h"

#include "core/sizing/percent.h"

#include <gmock/gmock.h>

using namespace gauge::core;
using namespace gauge::test;
using testing::AllOf;
using testing::HasSubstr;

namespace {

// Enough for sentences and orderings; the model's own accuracy is proved in tests/core/pressure.
constexpr PosteriorOptions kQuick{1024};

SizingAnswer answerOf(SizingQuestion q, int draws = 0) {
    q.posterior = kQuick;
    q.whatNext.draws = draws;
    const auto answer = sizeImplant(q);
    EXPECT_TRUE(answer) << (answer ? "" : answer.error().message);
    return answer ? *answer : SizingAnswer{};
}

Error refusalOf(const SizingQuestion& q) {
    const auto answer = sizeImplant(q);
    EXPECT_FALSE(answer);
    return answer ? Error{} : answer.error();
}

bool has(const std::vector<Notice>& all, const char* code) {
    return find(all, code).has_value();
}

} // namespace

TEST(SizeImplant, ChancesAreThoseOfManyDrawnPatients) {
    const SizingQuestion q = passingPatient();
    const SizingAnswer a = answerOf(q);
    const auto answer =
        answerChart(q.chart, q.observations, q.law, Pressure::fromMmHg(12.0), q.priors, kQuick);
    ASSERT_TRUE(answer);
    const double pressures[] = {12.0, 8.0, 18.0};
    const int count = 20000;
    const auto draws = answer->posterior.draws(pressures, {}, count);
    ASSERT_TRUE(draws);
    for (std::size_t i = 0; i < q.chart.sizes.size(); ++i) {
        const ChartSize& size = q.chart.sizes[i];
        double fit = 0.0, lasting = 0.0, under = 0.0, over = 0.0;
        for (const PatientDraw& d : *draws) {
            const double low = compressionPercent(size.nominalMm, d.diametersMm[1]);
            const double high = compressionPercent(size.nominalMm, d.diametersMm[2]);
            fit += size.acceptsMm.holds(d.diametersMm[0]);
            lasting += size.compressionPercent.holds(low) && size.compressionPercent.holds(high);
            under += high < size.compressionPercent.lo;
            over += low > size.compressionPercent.hi;
        }
        const double tolerance = 0.015; // four standard errors of a frequency over 20,000
        EXPECT_NEAR(a.sizes[i].fitChance, fit / count, tolerance) << size.name;
        EXPECT_NEAR(a.sizes[i].lastingFit, lasting / count, tolerance) << size.name;
        EXPECT_NEAR(a.sizes[i].undersizeChance, under / count, tolerance) << size.name;
        EXPECT_NEAR(a.sizes[i].overcompressionChance, over / count, tolerance) << size.name;
    }
}

TEST(SizeImplant, NeverMixesCompressionAndOversizing) {
    const SizingAnswer a = answerOf(passingPatient());
    for (const SizeFit& s : a.sizes) {
        EXPECT_NEAR(s.compressionPercent, 100.0 * (s.nominalMm - a.diameter.medianMm) / s.nominalMm, 1e-9);
        EXPECT_NEAR(s.oversizingPercent, 100.0 * (s.nominalMm - a.diameter.medianMm) / a.diameter.medianMm,
                    1e-9);
    }
}

TEST(SizeImplant, WarnsOfTheSizeThatALowPressureEchoAloneWouldChoose) {
    const SizingAnswer a = answerOf(passingPatient());
    const auto warning = find(a.warnings, "undersized-if-pressure-returns");
    ASSERT_TRUE(warning);
    EXPECT_EQ(fact(*warning, "size"), "22.5 (invented)"); // its band, 18 to 21 mm, holds the echo's 19.4
    EXPECT_EQ(a.sizes[*a.leading].name, "25.5 (invented)");
    EXPECT_THAT(warning->text,
                AllOf(HasSubstr("3D echo"), HasSubstr("19.4 mm at 7 mmHg"), HasSubstr("passing"),
                      HasSubstr("At 18 mmHg"), HasSubstr("size 22.5 (invented) would then be narrower than the appendage by"),
                      HasSubstr("size 25.5 (invented) the greatest fit chance at 12 mmHg")));
    EXPECT_FALSE(has(a.warnings, "too-large-after-lasting-fall"));
}

TEST(SizeImplant, WarnsOfTheSizeThatACtBeforeALastingFallWouldChoose) {
    const SizingAnswer a = answerOf(lastingPatient());
    const auto warning = find(a.warnings, "too-large-after-lasting-fall");
    ASSERT_TRUE(warning);
    EXPECT_EQ(fact(*warning, "size"), "28.5 (invented)"); // its band, 24 to 27 mm, holds the CT's 24.8
    EXPECT_EQ(a.sizes[*a.leading].name, "25.5 (invented)");
    EXPECT_THAT(warning->text,
                AllOf(HasSubstr("CT before the repair"), HasSubstr("24.8 mm"), HasSubstr("not measured"),
                      HasSubstr("lasting"), HasSubstr("the atrium may shrink further")));
    EXPECT_FALSE(has(a.warnings, "undersized-if-pressure-returns"));
}

TEST(SizeImplant, ShowsBothDirectionsAndAWiderRangeWhenTheCauseIsUnknown) {
    SizingQuestion q = lastingPatient();
    const SizingAnswer lasting = answerOf(q);
    q.cause = PressureChange::Passing;
    const SizingAnswer passing = answerOf(q);
    q.cause = PressureChange::Unknown;
    const SizingAnswer unknown = answerOf(q);
    EXPECT_TRUE(has(unknown.warnings, "too-large-after-lasting-fall"));
    EXPECT_TRUE(has(unknown.warnings, "undersized-if-pressure-returns"));
    EXPECT_TRUE(has(unknown.notices, "cause-unknown"));
    ASSERT_EQ(unknown.livingWidths.size(), 2u);
    const auto length = [](const SizingAnswer& a) {
        return a.livingInterval95Mm.hi - a.livingInterval95Mm.lo;
    };
    EXPECT_GT(length(unknown), length(lasting));
    EXPECT_GT(length(unknown), length(passing));
}

TEST(SizeImplant, PutsPressuresBeforeTheRepairBackOnlyWhenRegurgitationMayRecur) {
    SizingQuestion q = lastingPatient();
    const SizingAnswer lasting = answerOf(q);
    q.facts.regurgitationMayRecur = true;
    const SizingAnswer recurring = answerOf(q);
    EXPECT_LT(lasting.livingWidths[0].pressures.highestMmHg, 10.5);
    EXPECT_EQ(recurring.livingWidths[0].pressures.highestMmHg, 14.0);
    EXPECT_GT(recurring.livingInterval95Mm.hi, lasting.livingInterval95Mm.hi);
}

TEST(SizeImplant, AsksForADecisionPressureAndChecksTheLivingRange) {
    SizingQuestion q = passingPatient();
    q.decisionPressureMmHg.reset();
    EXPECT_EQ(refusalOf(q).code, ErrorCode::InvalidArgument);
    EXPECT_THAT(refusalOf(q).message, HasSubstr("No decision pressure"));
    q.decisionPressureMmHg = 2.0;
    EXPECT_THAT(refusalOf(q).message, HasSubstr("3 to 60 mmHg"));
    q.decisionPressureMmHg = 12.0;
    q.lowestMmHg = 18.0;
    EXPECT_THAT(refusalOf(q).message, HasSubstr("must lie below"));
    q.lowestMmHg.reset();
    q.highestMmHg.reset();
    const SizingAnswer a = answerOf(q);
    EXPECT_EQ(a.living.lowestMmHg, 5.0);
    EXPECT_EQ(a.living.highestMmHg, 20.0);
    EXPECT_TRUE(has(a.notices, "living-range-assumed"));
}

TEST(SizeImplant, GivesAReadingWithoutCounterpartWeightZeroAndTheReason) {
    SizingQuestion q = passingPatient();
    q.observations.push_back(readingOf(Modality::Echo2d, Stage::BeforeRepair, "anaesthesia", 22.0, 7.0));
    q.observations.back().derivation = Derivation::LargestOfViews;
    const SizingAnswer with = answerOf(q);
    EXPECT_EQ(with.weights[2].weight, 0.0);
    EXPECT_THAT(with.weights[2].reason, HasSubstr("no counterpart in a contour"));
    EXPECT_DOUBLE_EQ(with.diameter.medianMm, answerOf(passingPatient()).diameter.medianMm);
}

TEST(SizeImplant, SaysWhatWasReadAndWhatIsAskedWhenNothingAnswersTheChart) {
    SizingQuestion q = passingPatient();
    for (Observation& o : q.observations)
        o.quantity = Quantity::OstiumLongestDiameter;
    const Error error = refusalOf(q);
    EXPECT_EQ(error.code, ErrorCode::NothingToSize);
    EXPECT_THAT(error.message, AllOf(HasSubstr("perimeter-derived diameter of the landing zone"),
                                     HasSubstr("Found: longest diameter of the ostium by CT")));
    q.observations.clear();
    EXPECT_THAT(refusalOf(q).message, HasSubstr("Found: none"));
}

TEST(SizeImplant, SizesByTheLargestOfViewsWhereTheChartAsksForItAndNothingElseIsThere) {
    SizingQuestion q = passingPatient();
    q.chart = demoPlug();
    Observation view = readingOf(Modality::Echo2d, Stage::BeforeRepair, "anaesthesia", 22.0, 12.0);
    view.quantity = Quantity::LandingZoneLongestDiameter;
    view.derivation = Derivation::LargestOfViews;
    view.phase = Phase::Other; // so that its pressure is the mean
    q.observations = {view};
    const SizingAnswer a = answerOf(q);
    EXPECT_TRUE(a.question.by2d);
    EXPECT_TRUE(has(a.notices, "sized-by-2d"));
    EXPECT_NEAR(a.diameter.medianMm, 22.0, 0.05); // read at the decision pressure, no bias against itself

    q.observations.push_back(readingOf(Modality::Ct, Stage::BeforeProcedure, "CT day", 24.0, 12.0));
    q.observations.back().quantity = Quantity::LandingZoneLongestDiameter;
    const SizingAnswer both = answerOf(q);
    EXPECT_FALSE(both.question.by2d);
    EXPECT_EQ(both.weights[0].weight, 0.0);
    EXPECT_NEAR(both.diameter.medianMm, 24.0, 0.3);
}

TEST(SizeImplant, GivesNoVerdictOnADepthThatIsUnknownOrALowerBound) {
    SizingQuestion q = passingPatient();
    q.facts.depthMm.reset();
    EXPECT_FALSE(answerOf(q).sizes[0].depthOk);
    q.facts.depthMm = 30.0;
    q.facts.depthIsLowerBound = true;
    const SizingAnswer bound = answerOf(q);
    EXPECT_FALSE(bound.sizes[0].depthOk);
    EXPECT_TRUE(has(bound.sizes[0].warnings, "depth-lower-bound"));
    q.facts.depthIsLowerBound = false;
    EXPECT_EQ(answerOf(q).sizes[0].depthOk, true);
    q.facts.depthMm = 13.0; // enough for 12.5, short of 14.5
    const SizingAnswer shallow = answerOf(q);
    EXPECT_EQ(shallow.sizes[0].depthOk, true);
    EXPECT_EQ(shallow.sizes[5].depthOk, false);
    EXPECT_THAT(
        find(shallow.sizes[5].warnings, "depth-short")->text,
        AllOf(HasSubstr("needs 14.5 mm from the ostium"), HasSubstr("13.0 mm"), HasSubstr("1.5 mm short")));
}

TEST(SizeImplant, MeasuresDepthFromWhereTheChartSays) {
    SizingQuestion q = passingPatient();
    q.chart = demoPlug();
    for (Observation& o : q.observations)
        o.quantity = Quantity::LandingZoneLongestDiameter;
    q.facts.depthMm = 20.0; // 12 mm behind a landing plane 8 mm inside the ostium
    const SizingAnswer a = answerOf(q);
    EXPECT_DOUBLE_EQ(*a.sizes[0].depthMm, 12.0);
    EXPECT_TRUE(has(a.notices, "depth-less-landing-offset"));
    q.facts.depthFromLandingZoneMm = 14.5;
    EXPECT_DOUBLE_EQ(*answerOf(q).sizes[0].depthMm, 14.5);
}

TEST(SizeImplant, TakesReadingsOfDepthWhereNoDepthIsGiven) {
    SizingQuestion q = passingPatient();
    q.facts.depthMm.reset();
    Observation depth = readingOf(Modality::Ct, Stage::BeforeProcedure, "CT day", 26.0, 13.0);
    depth.quantity = Quantity::Depth;
    q.observations.push_back(depth);
    const SizingAnswer a = answerOf(q);
    ASSERT_TRUE(a.sizes[0].depthMm);
    EXPECT_LT(*a.sizes[0].depthMm, 26.0); // shallower at the lowest living pressure
    EXPECT_GT(*a.sizes[0].depthMm, 20.0);
}

TEST(SizeImplant, SaysWhetherTheDiscCoversAndTheNeighboursAreClear) {
    SizingQuestion q = passingPatient();
    q.facts.ostiumLongestMm = 28.0;
    q.facts.clearances = {{Structure::PulmonaryArtery, Clearance::From::OstiumCentre, 17.0},
                          {Structure::CircumflexArtery, Clearance::From::LandingZoneWall, 1.4}};
    const SizingAnswer a = answerOf(q);
    const SizeFit& s =
        a.sizes[3]; // 25.5, disc 31.5: 0.5 mm short of 28 + 4; 17 - 15.75 = 1.25 mm to the artery
    EXPECT_EQ(s.discCovers, false);
    EXPECT_THAT(find(s.warnings, "disc-does-not-cover")->text, HasSubstr("0.5 mm too small"));
    EXPECT_EQ(a.sizes[4].discCovers, true);
    EXPECT_DOUBLE_EQ(s.clearances[0].clearanceMm, 1.25);
    EXPECT_FALSE(s.clearances[0].ok());
    EXPECT_TRUE(a.sizes[2].clearances[0].ok()); // 17 - 14.25
    EXPECT_THAT(find(s.warnings, "too-near")->text, HasSubstr("pulmonary artery"));
    EXPECT_FALSE(s.clearances[1].ok()); // below 2 mm, an assumption
}

TEST(SizeImplant, SaysWhatIsMissingWhenNothingFits) {
    SizingQuestion q = passingPatient();
    q.observations = {readingOf(Modality::Ct, Stage::BeforeProcedure, "CT day", 33.0, 12.0)};
    q.observations[0].phase = Phase::Other;
    const auto warning = find(answerOf(q).warnings, "nothing-fits");
    ASSERT_TRUE(warning);
    EXPECT_THAT(warning->text,
                AllOf(HasSubstr("3.0 mm above the nearest band"), HasSubstr("27.0 to 30.0 mm")));
}

TEST(SizeImplant, WarnsAboutReadingsShapeAndRange) {
    SizingQuestion q = lastingPatient();
    q.observations[0].phase = Phase::Other;
    q.facts.mixedBeats = {1};
    q.facts.section = LandingSection{26.0, 18.0, 60.0, true};
    q.facts.bend = Bend{95.0, 8.0, 20.0, 10.0};
    q.lowestMmHg = 4.0;
    q.highestMmHg = 24.0;
    const SizingAnswer a = answerOf(q);
    for (const char* code :
         {"pressure-unknown", "read-below-advised-pressure", "not-largest-phase", "mixed-beats",
          "oval-landing-zone", "sharp-early-bend", "extrapolated", "appendage-not-looked-at-again"})
        EXPECT_TRUE(has(a.warnings, code)) << code;
    EXPECT_FALSE(a.sizeMayBeSigned);
    const SizeFit& s = a.sizes[3];
    EXPECT_EQ(s.folded, FoldedReach::Partial); // 20 mm at the bend, its band begins at 21
    EXPECT_THAT(find(s.warnings, "folded-placement")->text,
                AllOf(HasSubstr("in part"), HasSubstr("The chart allows folded placement")));
    EXPECT_THAT(find(a.sizes[5].warnings, "folded-placement")->text, HasSubstr("silent"));
}

TEST(SizeImplant, WarnsWhenModalitiesDisagreeBeyondPublishedDifferences) {
    SizingQuestion q = passingPatient();
    EXPECT_FALSE(has(answerOf(q).warnings, "modalities-disagree"));
    q.observations[1].valueMm = 14.0;
    EXPECT_THAT(find(answerOf(q).warnings, "modalities-disagree")->text, HasSubstr("published differences"));
}

TEST(SizeImplant, SaysWhenItStandsBetweenTwoSizes) {
    SizingQuestion q = passingPatient();
    q.observations = {readingOf(Modality::Ct, Stage::BeforeProcedure, "CT day", 21.0, 12.0)};
    q.observations[0].phase = Phase::Other;
    const auto warning = find(answerOf(q).warnings, "between-two-sizes");
    ASSERT_TRUE(warning);
    EXPECT_THAT(warning->text, AllOf(HasSubstr("22.5 (invented)"), HasSubstr("25.5 (invented)")));
}

TEST(SizeImplant, DoesNotAssumeThatARepairLowersThePressure) {
    SizingQuestion q = lastingPatient();
    q.observations[1].pressureMmHg.reset();
    q.observations[1].pressureSource.reset();
    EXPECT_THAT(find(answerOf(q).warnings, "pressure-after-repair-unknown")->text, HasSubstr("59 %"));
    q.observations.pop_back();
    EXPECT_TRUE(has(answerOf(q).warnings, "no-reading-after-repair"));
}

TEST(RoomCard, ExpectsWiderReadingsAtHigherPressuresAndScalesTheSection) {
    SizingQuestion q = passingPatient();
    q.facts.section = LandingSection{24.0, 18.0, 90.0, true};
    const RoomCard card = answerOf(q).card;
    ASSERT_EQ(card.lines.size(), 8u);
    for (std::size_t i = 0; i < card.lines.size(); ++i) {
        const CardLine& line = card.lines[i];
        EXPECT_DOUBLE_EQ(line.pressureMmHg, 6.0 + 2.0 * static_cast<double>(i));
        EXPECT_GT(line.echo3d.interval95Mm.hi - line.echo3d.interval95Mm.lo,
                  line.width.interval95Mm.hi -
                      line.width.interval95Mm.lo); // one reading knows less than all together
        EXPECT_NEAR(line.echoByAngle.at(90).medianMm / line.echoByAngle.at(0).medianMm, 24.0 / 18.0, 1e-9);
        EXPECT_NEAR(line.fluoroscopyLongest->medianMm / line.fluoroscopyShortest->medianMm, 24.0 / 18.0,
                    1e-9);
        const double narrower = i == 0 ? 0.0 : card.lines[i - 1].width.medianMm;
        EXPECT_GT(line.width.medianMm, narrower);
    }
}

TEST(RoomCard, NamesTheReadingThatOverturnsThePlan) {
    SizingQuestion q = passingPatient();
    q.observations[0].valueMm = 21.5; // near the border between two sizes
    const SizingAnswer a = answerOf(q);
    ASSERT_FALSE(a.card.overturning.empty());
    const Overturning& o = a.card.overturning.front();
    // Taking that reading, and one half a millimetre on the other side of it, shows the change.
    const auto leadingWith = [&](double mm) {
        SizingQuestion next = q;
        next.observations.push_back(readingOf(a.card.overturningModality, Stage::BeforeProcedure, "again", mm,
                                              a.card.overturningPressureMmHg));
        next.observations.back().phase = Phase::Other;
        next.observations.back().pressureUncertaintyMmHg = 0.0;
        const SizingAnswer answer = answerOf(next);
        return answer.sizes[*answer.leading].name;
    };
    const double outwards = o.above ? 0.5 : -0.5;
    EXPECT_EQ(leadingWith(o.readingMm + outwards), o.otherSize);
    EXPECT_EQ(leadingWith(o.readingMm - outwards), a.sizes[*a.leading].name);
    EXPECT_THAT(plainText(a.card, "25.5"), HasSubstr("What would overturn the plan"));
}

TEST(WhatNext, GivesEveryActAChanceAndTheSameOneAgain) {
    SizingQuestion q = passingPatient();
    q.observations[0].valueMm = 21.4; // near the border between two sizes
    const SizingAnswer a = answerOf(q, 64), b = answerOf(q, 64);
    ASSERT_EQ(a.whatNext.size(), 4u);
    for (std::size_t i = 0; i < 4; ++i) {
        EXPECT_GE(a.whatNext[i].chance, 0.0);
        EXPECT_LE(a.whatNext[i].chance, 1.0);
        EXPECT_EQ(a.whatNext[i].chance, b.whatNext[i].chance);
    }
    EXPECT_STREQ(name(a.whatNext[0].act), "measure-la-pressure");
    EXPECT_EQ(a.whatNext[0].chance, 0.0); // measured directly already
    EXPECT_GT(a.whatNext[2].chance + a.whatNext[3].chance, 0.0);
}
