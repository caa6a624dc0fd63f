// The working projections of the open case: planned anew in the background whenever what they follow from has changed, and kept
// in the record as the values of the group "projection". Views and the report read these.
//
//   measurement, reach, patient's offset ──► plans of landing zone and ostium ──► values of the record
#pragma once

#include "app/document/session.h"
#include "core/record/projection_values.h"

#include <QObject>
#include <QTimer>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace gauge::app {

/// How the patient of the open case lies under the C-arm, against the CT. @errors why no view can be predicted: the CT does not tell how
/// the patient lay, or not on the back, and nobody stated a turn.
core::Result<core::PatientTurn> patientTurn(const Session& session);

class ViewPlanner : public QObject {
    Q_OBJECT
public:
    explicit ViewPlanner(Session& session, QObject* parent = nullptr);

    /// Landing zone first, where there is one; empty while there is none (`problem` says why). While newer ones are being made
    /// the last stay.
    const std::vector<core::SectionPlan>& plans() const { return m_plans; }
    const core::SectionPlan* plan(std::string_view section) const;
    /// What the plans were made with; also while there is none, as far as it is known.
    const core::ViewPlanOptions& options() const { return m_options; }
    /// Why there is no plan: not measured, or how the patient lay is not known. Nothing while there is one.
    const std::optional<core::Error>& problem() const { return m_problem; }
    /// Looks at one view of a section, with how much the atrium hides. nullopt without a plan for it.
    std::optional<core::ViewReading> read(std::string_view section, const core::CArmAngles& room) const;
    /// How the patient lay at CT, (0018,5100); empty when not told.
    std::string patientPosition() const;

    bool isWorking() const { return m_job.isRunning() || m_delay.isActive(); }
    /// Begins at once what would begin when control is back in the event loop.
    void refreshNow();

signals:
    void changed();

private:
    struct Planned {
        std::vector<core::SectionPlan> plans;
        std::shared_ptr<const core::AppendageSurface> surface;
        std::optional<core::Silhouettes> silhouettes;
    };
    void refresh();
    void take(core::Result<Planned> planned);
    void recordValues();
    std::vector<core::Revision> fingerprint() const;

    Session& m_session;
    std::vector<core::SectionPlan> m_plans;
    core::ViewPlanOptions m_options;
    std::optional<core::Error> m_problem;
    std::shared_ptr<const core::AppendageSurface> m_surface; ///< of the measurement; null: none could be made
    std::optional<core::Silhouettes> m_silhouettes;
    bool m_surfaceIsNew = true; ///< the measurement was made anew since
    std::vector<core::Revision> m_planned;                   ///< fingerprint of what the plans were made from
    std::optional<core::ViewPlanOptions> m_plannedWith;
    QTimer m_delay;
    JobRunner m_job;
};

} // namespace gauge::app
