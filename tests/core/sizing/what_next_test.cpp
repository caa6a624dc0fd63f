// The stated chance that an act changes the size against how often it does, over patients drawn from the
// model.
#include "tests/core/sizing/sizing_questions.h"

#include <cstdlib>
#include <random>

using namespace gauge::core;
using namespace gauge::test;

namespace {

constexpr int kPatients = 1000;
constexpr double kTolerance = 0.05;     // three standard errors of a frequency over 1,000 patients
constexpr PosteriorOptions kCoarse{64}; // the same for chance and truth, so that only counting is judged

/// One invented patient and what each act will find.
class Patient {
public:
    explicit Patient(std::mt19937_64& random) : m_random(random) {
        const Priors priors;
        do
            m_slope = priors.diameterSlope.mean + priors.diameterSlope.sd * normal();
        while (m_slope < 0.0);
        m_at12Mm = 17.0 + 12.0 * uniform();
        m_bias3d = bias(priors, Modality::Echo3d, Derivation::Contour);
        m_bias2d = bias(priors, Modality::Echo2d, Derivation::EllipseFromAngles);
        m_roomMmHg = priors.pressureOther.mean + priors.pressureOther.sd * normal();
        const double ctMmHg = priors.pressureOther.mean + priors.pressureOther.sd * normal();
        m_readings = {reading(Modality::Ct, Stage::BeforeProcedure, "CT day", ctMmHg),
                      reading(Modality::Echo2d, Stage::BeforeRepair, "room", m_roomMmHg)};
        m_readings[0].pressureMmHg = std::max(0.5, ctMmHg + priors.directPressureMmHg.value * normal());
        m_readings[0].pressureSource = PressureSource::Direct;
    }

    const std::vector<Observation>& readings() const { return m_readings; }

    double outcome(const PlannedAct& act) {
        const Priors priors;
        if (!act.reading) return m_roomMmHg + pressureUncertaintyMmHg(priors, act.source) * normal();
        const double mmHg = act.reading->pressureMmHg.value_or(m_roomMmHg);
        return reading(act.reading->modality, Stage::BeforeRepair, "x", mmHg).valueMm;
    }

private:
    double normal() { return m_normal(m_random); }
    double uniform() { return std::uniform_real_distribution<>()(m_random); }
    double bias(const Priors& priors, Modality m, Derivation d) {
        const SpreadPrior b = biasPrior(priors, m, d);
        return b.mean + b.sd * normal();
    }

    Observation reading(Modality m, Stage stage, const std::string& state, double mmHg) {
        const Priors priors;
        Observation o = readingOf(m, stage, state, 1.0, std::nullopt);
        o.phase = Phase::Other;
        const double offset = m == Modality::Ct ? 0.0 : m == Modality::Echo3d ? m_bias3d : m_bias2d;
        o.valueMm = m_at12Mm + m_slope * pressureTerm(PressureLaw::Logarithmic, mmHg, 12.0) + offset +
                    readingUncertaintyMm(priors, o) * normal();
        return o;
    }

    std::mt19937_64& m_random;
    std::normal_distribution<> m_normal;
    double m_slope = 0.0, m_at12Mm = 0.0, m_bias3d = 0.0, m_bias2d = 0.0, m_roomMmHg = 0.0;
    std::vector<Observation> m_readings;
};

int timesLonger() {
    return std::getenv("GAUGE_LONG") ? 5 : 1;
}

} // namespace

TEST(WhatNext, StatedChancesAreRealisedFrequencies) {
    const DeviceChart chart = demoLobeAndDisc();
    std::mt19937_64 random(20261125);
    const int patients = kPatients * timesLonger();
    std::map<Act, double> stated;
    std::map<Act, int> realised;
    for (int i = 0; i < patients; ++i) {
        Patient patient(random);
        const auto answer = answerChart(chart, patient.readings(), PressureLaw::Logarithmic,
                                        Pressure::fromMmHg(12.0), Priors{}, kCoarse);
        ASSERT_TRUE(answer) << answer.error().message;
        const std::size_t leading = leadingSize(chart, answer->posterior);
        // Few draws are enough: the mean of the stated chances is judged, and each draw is unbiased.
        const auto acts =
            whatNext(chart, *answer, patient.readings(), leading, {8 * timesLonger(), kCoarse.points});
        ASSERT_TRUE(acts) << acts.error().message;
        const auto planned = plannedActs(chart, *answer, patient.readings());
        ASSERT_EQ(planned.size(), 4u);
        for (std::size_t k = 0; k < planned.size(); ++k) {
            stated[planned[k].act] += (*acts)[k].chance;
            const auto next =
                answerAgain(answer->question,
                            after(planned[k], patient.readings(), patient.outcome(planned[k])), kCoarse);
            ASSERT_TRUE(next) << next.error().message;
            realised[planned[k].act] += leadingSize(chart, *next) != leading;
        }
    }
    for (const auto& [act, sum] : stated) {
        const double chance = sum / patients, frequency = static_cast<double>(realised[act]) / patients;
        EXPECT_NEAR(chance, frequency, kTolerance) << name(act);
        EXPECT_GT(frequency, 0.01) << name(act) << " changes nothing: the comparison would be empty";
        RecordProperty(std::string(name(act)) + "_stated", std::to_string(chance));
        RecordProperty(std::string(name(act)) + "_realised", std::to_string(frequency));
        std::printf("%s: stated %.3f, realised %.3f\n", name(act), chance, frequency);
    }
}
