#include "app/document/answers.h"

#include "app/document/seats.h"
#include "app/format/moment_sentences.h"
#include "core/release/stasis.h"
#include "core/sizing/what_next.h"
#include "core/release/release_limits.h"

#include <algorithm>
#include <array>

namespace gauge::app {
namespace {

constexpr int kDelayMs = 60; // edits of one gesture or macro are answered once

QString text(const core::Error& error) {
    return QString::fromStdString(error.message);
}

/// The reading by CT that the profile's widths go with.
const core::Observation* ctLanding(const core::CaseReadings& readings) {
    for (std::size_t i = 0; i < readings.observations.size(); ++i)
        if (readings.origins[i].group == core::kCtValues &&
            readings.observations[i].quantity == core::Quantity::LandingZonePerimeterDerivedDiameter)
            return &readings.observations[i];
    return nullptr;
}

std::optional<PressureBands> bandsOf(const core::CaseReadings& readings, double decisionMmHg,
                                     const core::LivingRange& living, const core::Priors& priors) {
    const core::Observation* ct = ctLanding(readings);
    if (!ct) return std::nullopt;
    const std::array pressures{living.lowestMmHg, decisionMmHg, living.highestMmHg};
    const auto carried = core::carriedTo(*ct, pressures, core::PressureLaw::Logarithmic, priors);
    if (!carried) return std::nullopt;
    return PressureBands{carried->front().fromMmHg, carried->front().pressureMeasured, (*carried)[0], (*carried)[1],
                         (*carried)[2]};
}

/// core/ names moments by their ids; people know them by their words.
void sayMoments(const core::CaseRecord& record, core::SizingAnswer& answer) {
    const auto reword = [&record](std::vector<core::Notice>& notices) {
        for (core::Notice& notice : notices)
            notice.text = withMomentWords(record, notice.text);
    };
    reword(answer.warnings);
    reword(answer.notices);
    for (core::SizeFit& fit : answer.sizes)
        reword(fit.warnings);
    for (core::NextAct& act : answer.whatNext)
        act.text = withMomentWords(record, act.text);
}

} // namespace

Answers::Answers(Session& session, QObject* parent) : QObject(parent), m_session(session), m_seats(new Seats(*this)) {
    m_delay.setSingleShot(true);
    m_delay.setInterval(kDelayMs);
    connect(&m_delay, &QTimer::timeout, this, &Answers::start);
    connect(&session.document(), &CaseDocument::changed, this, &Answers::onChanged);
    connect(&session, &Session::measurementChanged, this, [this] { onChanged(CaseDocument::Part::Values); });
    connect(&m_job, &JobRunner::started, this, &Answers::workChanged);
    connect(&m_job, &JobRunner::finished, this, &Answers::workChanged);
    refresh();
}

void Answers::onChanged(CaseDocument::Part part) {
    using Part = CaseDocument::Part;
    if (part == Part::Patient || part == Part::Decision) {
        emit changed();
        return;
    }
    // The answer of another case must not be read as this one's.
    if (part == Part::Everything) m_sizing.reset();
    refresh();
}

void Answers::refresh() {
    m_readings = core::caseReadings(record());
    if (const auto* m = m_session.measurement())
        m_readings.facts.depthIsLowerBound = std::any_of(m->notices.begin(), m->notices.end(),
                                                         [](const core::Notice& n) { return n.code == "tip-unfilled"; });
    m_carried.assign(m_readings.observations.size(), std::nullopt);
    refreshChart();
    refreshRelease();
    refreshScores();
    m_stasis = core::judgeStasis(m_readings.facts.stasis, core::isRepaired(record()));
    m_missing = missingForQuestion();
    if (!m_missing.isEmpty()) m_sizing.reset();
    m_delay.start();
    emit changed();
    emit sizingChanged();
    emit workChanged();
}

void Answers::refreshChart() {
    const std::string text = record().sizing ? record().sizing->content.chartText : std::string();
    if (text == m_chartText) return;
    m_chartText = text;
    m_chart.reset();
    m_chartProblem.clear();
    if (text.empty()) return;
    auto chart = core::readChart(text, record().sizing->content.chartSource);
    if (chart)
        m_chart = std::move(*chart);
    else
        m_chartProblem = app::text(chart.error());
}

std::optional<double> Answers::decisionPressureMmHg() const {
    if (record().sizing && record().sizing->content.decisionPressureMmHg)
        return record().sizing->content.decisionPressureMmHg;
    return m_chart ? m_chart->chart.reading.decisionPressureMmHg : std::nullopt;
}

core::LivingRange Answers::livingRange() const {
    core::LivingRange range;
    if (!record().sizing) return range;
    range.lowestMmHg = record().sizing->content.lowestMmHg.value_or(range.lowestMmHg);
    range.highestMmHg = record().sizing->content.highestMmHg.value_or(range.highestMmHg);
    return range;
}

const core::SizeFit* Answers::chosenSize() const {
    if (!m_sizing || !record().sizing) return nullptr;
    const auto& sizes = m_sizing->answer.sizes;
    const auto found = std::find_if(sizes.begin(), sizes.end(), [&](const core::SizeFit& fit) {
        return fit.name == record().sizing->content.size;
    });
    return found == sizes.end() ? nullptr : &*found;
}

const core::ChartSize* Answers::chosenChartSize() const {
    if (!m_chart || !record().sizing) return nullptr;
    const auto& sizes = m_chart->chart.sizes;
    const auto found = std::find_if(sizes.begin(), sizes.end(), [&](const core::ChartSize& size) {
        return size.name == record().sizing->content.size;
    });
    return found == sizes.end() ? nullptr : &*found;
}

QStringList Answers::missingForQuestion() const {
    QStringList missing;
    if (!m_chartProblem.isEmpty())
        missing << m_chartProblem;
    else if (!m_chart)
        missing << tr("No device chart is loaded: load one typed from the device's current instructions, or a "
                      "demonstration chart.");
    if (m_chart && !decisionPressureMmHg())
        missing << tr("No decision pressure: the chart states none, so say at which left atrial pressure the reading "
                      "counts.");
    if (m_readings.observations.empty())
        missing << tr("No reading yet: mark the atrium and the tip on the CT, measure echo views, or type a reading in.");
    return missing;
}

std::optional<core::SizingQuestion> Answers::question() const {
    if (!m_missing.isEmpty() || !m_chart) return std::nullopt;
    core::SizingQuestion q;
    q.chart = m_chart->chart;
    q.observations = m_readings.observations;
    q.facts = m_readings.facts;
    const core::SizingChoice& choice = record().sizing->content;
    q.decisionPressureMmHg = choice.decisionPressureMmHg;
    q.lowestMmHg = choice.lowestMmHg;
    q.highestMmHg = choice.highestMmHg;
    q.cause = choice.cause;
    q.posterior = m_model;
    q.whatNext = m_acts;
    return q;
}

void Answers::start() {
    if (m_session.isMeasuring()) {
        m_delay.start(); // the values are about to be replaced
        return;
    }
    startWork({m_readings, question(), decisionPressureMmHg(), livingRange()}, false);
}

/// First without the simulated acts, which take longest; then with them.
void Answers::startWork(Work work, bool withWhatNext) {
    m_job.start<Outcome>([work, withWhatNext](const core::WorkContext&) { return workOut(work, withWhatNext); },
                         [this, work, withWhatNext](core::Result<Outcome> outcome) {
                             if (!outcome) return; // cancelled: what was shown stays
                             const bool more = !withWhatNext && outcome->sized && *outcome->sized;
                             take(std::move(*outcome));
                             if (more)
                                 QMetaObject::invokeMethod(
                                     this, [this, work] { if (!m_delay.isActive()) startWork(work, true); },
                                     Qt::QueuedConnection);
                         });
}

core::Result<Answers::Outcome> Answers::workOut(const Work& work, bool withWhatNext) {
    Outcome outcome;
    core::Priors priors;
    if (work.question) {
        core::SizingQuestion q = *work.question;
        if (!withWhatNext) q.whatNext.draws = 0;
        auto answer = core::sizeImplant(q);
        if (answer) {
            priors = core::withSlope(priors, answer->slope);
            outcome.sized = Sized{std::move(q), std::move(*answer)};
        } else {
            outcome.sized = tl::make_unexpected(answer.error());
        }
    }
    outcome.hasWhatNext = withWhatNext;
    outcome.carriage.carried.assign(work.readings.observations.size(), std::nullopt);
    if (!work.decisionMmHg) return outcome;
    const std::array pressures{*work.decisionMmHg};
    for (std::size_t i = 0; i < work.readings.observations.size(); ++i)
        if (const auto carried = core::carriedTo(work.readings.observations[i], pressures,
                                                 core::PressureLaw::Logarithmic, priors))
            outcome.carriage.carried[i] = carried->front();
    outcome.carriage.bands = bandsOf(work.readings, *work.decisionMmHg, work.living, priors);
    return outcome;
}

void Answers::take(Outcome outcome) {
    m_bands = std::move(outcome.carriage.bands);
    if (outcome.carriage.carried.size() == m_readings.observations.size())
        m_carried = std::move(outcome.carriage.carried);
    m_missing = missingForQuestion();
    if (!outcome.sized) {
        m_sizing.reset();
    } else if (!*outcome.sized) {
        m_sizing.reset();
        m_missing << QString::fromStdString(withMomentWords(record(), outcome.sized->error().message));
    } else {
        m_sizing = std::move(**outcome.sized);
        sayMoments(record(), m_sizing->answer);
        m_hasWhatNext = outcome.hasWhatNext;
    }
    emit changed();
    emit sizingChanged();
}

void Answers::refreshRelease() {
    m_release.clear();
    for (const auto& [id, entry] : record().release)
        m_release.push_back({id, entry.content, std::nullopt, {}, {}, {}, {}});
    std::stable_sort(m_release.begin(), m_release.end(), [](const ReleaseLook& a, const ReleaseLook& b) {
        return std::pair(a.state.stage, a.state.time) < std::pair(b.state.stage, b.state.time);
    });
    core::ReleaseLimits limits;
    if (const core::ChartSize* size = chosenChartSize()) limits = core::limitsFrom(m_chart->chart, *size);
    else if (m_chart) limits.hasDisc = m_chart->chart.kind == core::DeviceKind::LobeAndDisc;
    for (std::size_t i = 0; i < m_release.size(); ++i) {
        ReleaseLook& look = m_release[i];
        if (auto report = core::checkRelease(look.state, limits))
            look.report = std::move(*report);
        else
            look.problem = text(report.error());
        if (i == 0) continue;
        look.before = m_release[i - 1].id;
        if (auto changes = core::compareReleases(m_release[i - 1].state, look.state)) {
            look.changes = std::move(*changes);
            look.changeNotices = core::changeNotices(look.changes);
        }
    }
}

void Answers::refreshScores() {
    m_scores = {};
    if (!record().scores) return;
    const core::Scores& items = record().scores->content;
    if (items.stroke) {
        m_scores.stroke = core::cha2ds2Vasc(*items.stroke);
        m_scores.strokeWithoutSex = core::cha2ds2Va(*items.stroke);
    }
    if (items.bleeding) m_scores.bleeding = core::hasBled(*items.bleeding);
    if (items.stroke && items.bleeding)
        if (const auto together = core::checkTogether(*items.stroke, *items.bleeding); !together)
            m_scores.disagreement = together.error();
}

QStringList Answers::whyNotSigned() const {
    QStringList reasons;
    const auto& decision = record().decision;
    if (!decision || decision->content.text.empty())
        reasons << tr("The decision has no text yet: write down what was decided.");
    const std::string size = record().sizing ? record().sizing->content.size : std::string();
    if (size.empty())
        reasons << tr("No size is chosen: choose one in the list of sizes.");
    else if (!chosenChartSize())
        reasons << tr("The chosen size %1 is not in the chart that is loaded: choose again.")
                       .arg(QString::fromStdString(size));
    if (m_stasis.planStopped)
        reasons << tr("The plan is stopped: thrombus was seen in the appendage and no later look excludes it.");
    else if (!m_stasis.sizeMayBeSigned)
        reasons << tr("The appendage was not looked at again since the repair: look for smoke, sludge and thrombus, and "
                      "record it under Stasis.");
    const auto stale = std::count_if(record().values.begin(), record().values.end(),
                                     [&](const core::RecordedValue& v) { return core::isStale(record(), v); });
    if (stale > 0)
        reasons << tr("%n value(s) are out of date: measure them again, or confirm them in the table.", nullptr,
                      static_cast<int>(stale));
    if (isWorking())
        reasons << tr("The sizes are still being judged: wait for the answer.");
    else if (!m_missing.isEmpty())
        reasons << m_missing;
    return reasons;
}

void Answers::setEffort(const core::PosteriorOptions& model, const core::WhatNextOptions& acts) {
    m_model = model;
    m_acts = acts;
}

void Answers::finishNow() {
    m_delay.stop();
    m_job.drop();
    if (auto outcome = workOut({m_readings, question(), decisionPressureMmHg(), livingRange()}, true))
        take(std::move(*outcome));
    m_seats->finishNow();
    emit workChanged();
}

} // namespace gauge::app
