#include "app/document/seats.h"

#include "app/document/answers.h"
#include "core/access/access_target.h"
#include "core/record/septum_values.h"
#include "core/sizing/seat_inputs.h"

#include <algorithm>
#include <utility>

namespace gauge::app {
namespace {

constexpr int kSeatDelayMs = 80; // later than the answers, whose pressures it uses

} // namespace

Seats::Seats(Answers& answers) : QObject(&answers), m_answers(answers) {
    m_delay.setSingleShot(true);
    m_delay.setInterval(kSeatDelayMs);
    connect(&m_delay, &QTimer::timeout, this, &Seats::start);
    connect(&answers, &Answers::changed, this, &Seats::refresh);
    connect(&answers, &Answers::sizingChanged, this, &Seats::refresh);
    connect(&answers.session(), &Session::measurementChanged, this, &Seats::refresh);
    connect(&answers.session(), &Session::landingChanged, this, &Seats::refresh);
}

std::optional<core::SeatQuestion> Seats::present(QString& problem) const {
    const Session& session = m_answers.session();
    const core::AppendageMeasurement* measurement = session.measurement();
    if (!m_answers.chart()) return std::nullopt; // the list of sizes says so
    if (!measurement) {
        problem = tr("How the sizes would sit is told once the appendage is measured on CT.");
        return std::nullopt;
    }
    auto question = core::seatQuestionOf(*measurement, m_answers.chart()->chart);
    if (!question) {
        problem = QString::fromStdString(question.error().message);
        return std::nullopt;
    }
    const auto mark = [&](core::MarkKind kind) -> std::optional<core::PatientPoint> {
        const auto found = session.record().marks.find(kind);
        if (found == session.record().marks.end()) return std::nullopt;
        return found->second.point;
    };
    if (const auto circumflex = mark(core::MarkKind::Circumflex)) {
        question->circumflex = circumflex;
        question->neighbours.push_back({core::Structure::CircumflexArtery, {*circumflex}, false});
    }
    if (const auto ridge = mark(core::MarkKind::Ridge)) question->neighbours.push_back({core::Structure::Ridge, {*ridge}, false});
    if (const auto artery = mark(core::MarkKind::PulmonaryArtery))
        question->neighbours.push_back({core::Structure::PulmonaryArtery, {*artery}, false});
    const core::SeptumPlan plan = core::septumPlan(session.record());
    if (const auto annulus = core::annulusNeighbour(core::septumMarks(session.record()).annulus)) question->neighbours.push_back(*annulus);
    if (plan.crossing)
        if (const auto scene = core::crossingScene(session.record(), measurement))
            if (const auto arrival = core::sheathArrival(*plan.crossing, core::accessTarget(*measurement), scene->face.frame.normal,
                                                         plan.limits)) {
                question->direction = arrival->direction;
                question->basis = arrival->basis;
            }
    if (const PressureBands* bands = m_answers.bands()) question->widenedByMm = bands->decision.changeMm;
    return std::move(*question);
}

void Seats::refresh() {
    const bool wasMoving = std::exchange(m_isMoving, m_answers.session().isPlaneMoving());
    if (m_isMoving) {
        if (!wasMoving) emit changed();
        return;
    }
    QString problem;
    const auto question = present(problem);
    // What was answered is kept while its question stands: answers change for many reasons.
    if (question && isAnswered(*question)) {
        emit changed();
        return;
    }
    m_answer.reset();
    m_problem = problem;
    m_job.drop();
    if (question)
        m_delay.start();
    else
        m_delay.stop();
    emit changed();
}

std::optional<Seats::Work> Seats::work() {
    QString problem;
    auto question = present(problem);
    const core::AppendageMeasurement* measurement = m_answers.session().measurement();
    if (!question || !measurement) return std::nullopt;
    if (m_wallOf != measurement->trace) m_wall.reset();
    return Work{measurement->trace, m_wall, std::make_shared<const core::AppendageMeasurement>(*measurement),
                std::move(*question), chartText()};
}

std::string Seats::chartText() const {
    const auto& sizing = m_answers.record().sizing;
    return sizing ? sizing->content.chartText : std::string();
}

bool Seats::isAnswered(const core::SeatQuestion& question) const {
    const core::AppendageMeasurement* measurement = m_answers.session().measurement();
    return m_answer && measurement && measurement->trace == m_wallOf && chartText() == m_chartText &&
           core::asksTheSameOf(question, m_question);
}

core::Result<Seats::Outcome> Seats::workOut(const Work& work, const core::WorkContext& context) {
    Outcome outcome;
    outcome.wall = work.wall;
    if (!outcome.wall) {
        auto wall = core::seatWallOf(*work.measurement);
        if (!wall) {
            outcome.answer = tl::make_unexpected(std::move(wall.error()));
            return outcome;
        }
        outcome.wall = std::make_shared<const core::SeatWall>(std::move(*wall));
    }
    outcome.answer = core::seatSizes(*outcome.wall, work.question, context);
    return outcome;
}

void Seats::start() {
    if (m_answers.session().isMeasuring()) {
        m_delay.start(); // what it rests on is about to change
        return;
    }
    const auto now = work();
    if (!now) return;
    m_job.start<Outcome>([now = *now](const core::WorkContext& context) { return workOut(now, context); },
                         [this, now = *now](core::Result<Outcome> outcome) {
                             if (outcome) take(now, std::move(*outcome));
                         });
}

void Seats::take(const Work& work, Outcome outcome) {
    m_wallOf = work.of;
    m_wall = std::move(outcome.wall);
    m_problem.clear();
    m_answer.reset();
    if (outcome.answer) {
        m_question = work.question;
        m_chartText = work.chartText;
        m_answer = std::move(*outcome.answer);
    } else if (outcome.answer.error().code != core::ErrorCode::Cancelled) {
        m_problem = QString::fromStdString(outcome.answer.error().message);
    }
    emit changed();
}

void Seats::finishNow() {
    m_delay.stop();
    m_job.drop();
    const auto now = work();
    if (!now) {
        QString problem;
        present(problem);
        m_answer.reset();
        m_problem = problem;
        emit changed();
        return;
    }
    if (isAnswered(now->question)) return;
    if (auto outcome = workOut(*now, {})) take(*now, std::move(*outcome));
}

const core::Seat* Seats::seatOf(const std::string& size) const {
    if (!m_answer) return nullptr;
    const auto found = std::find_if(m_answer->sizes.begin(), m_answer->sizes.end(),
                                    [&](const core::Seat& seat) { return seat.name == size && seat.problem.empty(); });
    return found == m_answer->sizes.end() ? nullptr : &*found;
}

const core::Seat* Seats::chosen() const {
    const core::ChartSize* size = m_answers.chosenChartSize();
    return size && !m_answers.session().isPlaneMoving() ? seatOf(size->name) : nullptr;
}

} // namespace gauge::app
