// How each size of the case's chart would sit (core/sizing/seat.h), from the measurement, the marks, the landing zone, the chosen crossing
// of the septum, the chart and the decision pressure as they stand. Computed anew in the background whenever one of them changes; nothing of it is recorded.
// Views, panels and reports read the same results.
#pragma once

#include "app/document/session.h"
#include "core/sizing/seat.h"

#include <QObject>
#include <QTimer>
#include <memory>
#include <optional>

namespace gauge::app {

class Answers;

class Seats : public QObject {
    Q_OBJECT
public:
    /// @param answers  owns this; outlives it.
    explicit Seats(Answers& answers);

    /// The last finished answer; null while there is none to the question as it stands.
    const core::SeatAnswer* answer() const { return m_answer ? &*m_answer : nullptr; }
    /// The question that it answers. Precondition: answer().
    const core::SeatQuestion& question() const { return m_question; }
    /// Why there is none, a whole sentence; empty while there is one or one is being made.
    const QString& problem() const { return m_problem; }
    /// The seat of a size of the chart; null when there is none or it cannot be seated (Seat::problem).
    const core::Seat* seatOf(const std::string& size) const;
    /// That of the size chosen in the case, to be drawn. Null while a plane is being dragged: it would lie at the old place.
    const core::Seat* chosen() const;
    bool isWorking() const { return m_job.isRunning() || m_delay.isActive(); }
    void cancel() { m_job.cancel(); }

    /// Does at once what would be done in the background: for reports and tests without an event loop.
    void finishNow();

signals:
    /// `answer`, `problem` or `chosen` is another one.
    void changed();

private:
    struct Outcome {
        std::shared_ptr<const core::SeatWall> wall;
        core::Result<core::SeatAnswer> answer;
    };
    struct Work {
        std::shared_ptr<const core::AppendageTrace> of; ///< whose wall it is
        std::shared_ptr<const core::SeatWall> wall; ///< null: to be made
        std::shared_ptr<const core::AppendageMeasurement> measurement;
        core::SeatQuestion question;
        std::string chartText; ///< of the question's chart
    };

    void refresh();
    void start();
    /// The question as it stands; nothing when something is missing, which `problem` then says.
    std::optional<core::SeatQuestion> present(QString& problem) const;
    std::optional<Work> work();
    bool isAnswered(const core::SeatQuestion& question) const;
    std::string chartText() const;
    void take(const Work& work, Outcome outcome);
    static core::Result<Outcome> workOut(const Work& work, const core::WorkContext& context);

    Answers& m_answers;
    core::SeatQuestion m_question;
    std::string m_chartText;
    std::optional<core::SeatAnswer> m_answer;
    QString m_problem;
    std::shared_ptr<const core::AppendageTrace> m_wallOf;
    std::shared_ptr<const core::SeatWall> m_wall;
    bool m_isMoving = false; ///< a plane is being dragged, and `changed` has told it
    QTimer m_delay;
    JobRunner m_job;
};

} // namespace gauge::app
