// Working projections: dome and curve of the C-arm's views, the radiograph that the CT simulates where the C-arm stands, what the view
// under the pointer shows of landing zone and ostium, the working views in a table, the chosen ones, and how C-arm and patient stand to
// each other. The whole panel is a page of its own (planning happens before the day); `Short` is what stands below a fluoroscopy: dome
// and words.
//
//   drag on dome or curve, their arrow keys, a row of the table ──► C-arm ──► simulated radiograph (which turns by its own drag, too)
#pragma once

#include "app/document/view_planner.h"
#include "app/views/projection_chart.h"
#include "app/views/when_shown.h"
#include "core/fluoro/c_arm_place.h"

#include <QAction>
#include <QWidget>

class QComboBox;
class QLabel;
class QTableWidget;

namespace gauge::app {

class CArmSettings;
class RadiographView;
class Seats;

class ProjectionPanel : public QWidget {
    Q_OBJECT
public:
    enum class Extent { Whole, Short };
    ProjectionPanel(Session& session, ViewPlanner& planner, Extent extent, QWidget* parent = nullptr);

    QList<QAction*> actions() const { return m_actions; }
    /// Angles of a fluoroscopy to point out; nothing: none.
    void setFluoroscopy(const std::optional<core::CArmAngles>& angles);
    /// Plans for "landing-1" or "ostium".
    void setSection(const std::string& section);
    const std::string& section() const { return m_section; }
    /// Draws the chosen size on the simulated radiograph.
    void setSeats(const Seats& seats);

    ProjectionChart& dome() { return *m_dome; }
    ProjectionChart* curve() { return m_curve; } ///< null in the short extent
    QTableWidget* table() { return m_table; }    ///< null in the short extent
    RadiographView* radiograph() { return m_radiograph; } ///< null in the short extent
    /// What is said, without markup; for tests and screen readers.
    QString text() const;

signals:
    /// Distances of the C-arm as the person set them.
    void distancesChanged(const std::optional<gauge::core::CArmDistances>& distances);

private:
    struct Row {
        core::CArmAngles angles;
        std::optional<core::ViewAim> aim;
        std::optional<std::size_t> chosen; ///< place among the chosen views
    };
    void makeActions();
    QWidget* makeTable();
    void layOut(QWidget* words);
    void connectRadiograph();
    void refresh() { m_upToDate.want(); }
    void bringUpToDate();
    void refreshWords();
    void refreshTable();
    /// Turns the C-arm to the view chosen last, else to the first working view, unless it was turned by hand.
    void refreshArm();
    ProjectionPicture picture() const;
    QString readout(const core::CArmAngles& view) const;
    void pointAt(const std::optional<core::CArmAngles>& view, const ProjectionChart* from);
    void take(const core::CArmAngles& view, std::optional<core::ViewAim> aim);
    void takeRow();
    void dropRow();

    Session& m_session;
    ViewPlanner& m_planner;
    Extent m_extent;
    std::string m_section{core::kLandingSection};
    ProjectionChart* m_dome;
    ProjectionChart* m_curve = nullptr;
    QComboBox* m_sections;
    QLabel* m_words;
    QTableWidget* m_table = nullptr;
    RadiographView* m_radiograph = nullptr;
    CArmSettings* m_settings = nullptr;
    bool m_isSteered = false;    ///< the C-arm was turned by hand
    bool m_isSettingArm = false; ///< it is being turned by refreshArm()
    QList<QAction*> m_actions;
    std::vector<Row> m_rows;
    std::optional<core::CArmAngles> m_fluoroscopy, m_pointer;
    WhenShown m_upToDate{*this, [this] { bringUpToDate(); }};
};

} // namespace gauge::app
