// What follows from the case as it stands: readings, the judgement of every size, widths at the pressures to live with, looks at
// the implant, stasis, scores, and what stands in the way of signing. Computed anew whenever the case changes, the slow part in
// the background; views, panels and the report read the same results.
//
//   record ── caseReadings ──► readings, bands, carried values ──► (chart loaded) ──► SizingAnswer
#pragma once

#include "app/document/session.h"
#include "core/agreement/published_limits.h"
#include "core/pressure/carried_value.h"
#include "core/record/case_readings.h"
#include "core/release/release_change.h"
#include "core/release/release_check.h"
#include "core/sizing/chart_reader.h"
#include "core/sizing/sizing.h"

#include <QObject>
#include <QStringList>
#include <QTimer>
#include <optional>
#include <vector>

namespace gauge::app {

class Seats;

/// By how much diameters are larger than on the CT at three pressures: what the depth strip's bands and the surface are drawn
/// from. A change is added to each width of the CT's profile.
struct PressureBands {
    double ctPressureMmHg = 0.0; ///< mean, as measured or as assumed
    bool ctPressureMeasured = false;
    core::CarriedValue lowest, decision, highest; ///< of the landing zone's perimeter-derived diameter
};

/// One look at the implant, judged, and compared with the look before it.
struct ReleaseLook {
    std::string id; ///< in the record
    core::ReleaseState state;
    std::optional<core::ReleaseReport> report; ///< none: `problem` says why
    QString problem;
    std::string before; ///< id of the look that it is compared with; empty for the first
    std::vector<core::ReleaseChange> changes;
    std::vector<core::Notice> changeNotices;
};

/// The scores of the case; an error where the items contradict each other.
struct ScoreAnswer {
    std::optional<core::Result<core::StrokeScore>> stroke;         ///< CHA2DS2-VASc
    std::optional<core::Result<core::StrokeScore>> strokeWithoutSex; ///< CHA2DS2-VA
    std::optional<core::Result<core::BleedingScore>> bleeding;     ///< HAS-BLED
    std::optional<core::Error> disagreement;                       ///< between the two sets of items
};

class Answers : public QObject {
    Q_OBJECT
public:
    explicit Answers(Session& session, QObject* parent = nullptr);

    const core::CaseRecord& record() const { return m_session.record(); }
    Session& session() { return m_session; }
    const core::AppendageMeasurement* measurement() const { return m_session.measurement(); }

    /// Always as the record says.
    const core::CaseReadings& readings() const { return m_readings; }
    /// The chart of the case; none when none is loaded or it cannot be read (`chartProblem`).
    const core::ChartReading* chart() const { return m_chart ? &*m_chart : nullptr; }
    const QString& chartProblem() const { return m_chartProblem; }

    /// The pressures asked about: as the person set them, else the chart's, else the defaults of core/sizing.
    std::optional<double> decisionPressureMmHg() const;
    core::LivingRange livingRange() const;

    /// The last finished answer; null while none is possible. While a newer one is being worked out, `isWorking`.
    const core::SizingAnswer* sizing() const { return m_sizing ? &m_sizing->answer : nullptr; }
    /// The question that `sizing` answers. Precondition: sizing().
    const core::SizingQuestion& sizingQuestion() const { return m_sizing->question; }
    /// The chosen size in the answer; nothing when none is chosen or the chart does not have it.
    const core::SizeFit* chosenSize() const;
    const core::ChartSize* chosenChartSize() const;
    /// Why there is no answer: whole sentences, one for each thing to do. Empty when there is one.
    const QStringList& missing() const { return m_missing; }
    /// False while the acts of `sizing().whatNext` are still being simulated.
    bool hasWhatNext() const { return m_hasWhatNext; }
    bool isWorking() const { return m_job.isRunning() || m_delay.isActive(); }
    void cancel() { m_job.cancel(); }

    /// Null without a CT landing zone or a decision pressure.
    const PressureBands* bands() const { return m_bands ? &*m_bands : nullptr; }
    /// Each reading carried to the decision pressure; nothing where that is not known. One per reading of `readings`.
    const std::vector<std::optional<core::CarriedValue>>& carried() const { return m_carried; }

    /// Looks at the implant in the order of stage and time.
    const std::vector<ReleaseLook>& releaseLooks() const { return m_release; }
    const core::StasisJudgement& stasis() const { return m_stasis; }
    const ScoreAnswer& scores() const { return m_scores; }

    /// How each size would sit.
    const Seats& seats() const { return *m_seats; }
    Seats& seats() { return *m_seats; }

    /// What forbids to sign the decision, as sentences; empty when it may be signed.
    QStringList whyNotSigned() const;

    /// Effort of the model and of the simulated acts; less of it makes tests quick.
    void setEffort(const core::PosteriorOptions& model, const core::WhatNextOptions& acts);

    /// Does at once what would be done in the background: for reports and tests without an event loop.
    void finishNow();

signals:
    /// Readings, bands, carried values, release, stasis or scores are new.
    void changed();
    /// `sizing` or `missing` is new.
    void sizingChanged();
    void workChanged();

private:
    struct Sized {
        core::SizingQuestion question;
        core::SizingAnswer answer;
    };
    struct Carriage {
        std::optional<PressureBands> bands;
        std::vector<std::optional<core::CarriedValue>> carried;
    };
    struct Work {
        core::CaseReadings readings;
        std::optional<core::SizingQuestion> question;
        std::optional<double> decisionMmHg;
        core::LivingRange living;
    };
    struct Outcome {
        std::optional<core::Result<Sized>> sized; ///< none: nothing was asked
        Carriage carriage;
        bool hasWhatNext = false;
    };

    void onChanged(CaseDocument::Part part);
    void refresh();
    void refreshChart();
    void refreshRelease();
    void refreshScores();
    QStringList missingForQuestion() const;
    std::optional<core::SizingQuestion> question() const;
    void start();
    void startWork(Work work, bool withWhatNext);
    void take(Outcome outcome);
    static core::Result<Outcome> workOut(const Work& work, bool withWhatNext);

    Session& m_session;
    core::CaseReadings m_readings;
    std::optional<core::ChartReading> m_chart;
    std::string m_chartText;
    QString m_chartProblem;
    std::optional<Sized> m_sizing;
    bool m_hasWhatNext = false;
    QStringList m_missing;
    std::optional<PressureBands> m_bands;
    std::vector<std::optional<core::CarriedValue>> m_carried;
    std::vector<ReleaseLook> m_release;
    core::StasisJudgement m_stasis;
    ScoreAnswer m_scores;
    core::PosteriorOptions m_model;
    core::WhatNextOptions m_acts;
    QTimer m_delay;
    JobRunner m_job;
    Seats* m_seats;
};

} // namespace gauge::app
