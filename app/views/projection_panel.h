// Working projections: dome and curve of the C-arm's views, what the view under the pointer shows of landing zone and ostium, the
// working views in a table, the chosen ones, and how C-arm and patient stand to each other. The whole panel is a page of its own
// (planning happens before the day); `Short` is what stands below a fluoroscopy: dome and words.
#pragma once

#include "app/document/view_planner.h"
#include "app/models/view_state.h"
#include "app/views/projection_chart.h"

#include <QAction>
#include <QWidget>

class QCheckBox;
class QComboBox;
class QLabel;
class QTableWidget;

namespace gauge::app {

class NumberEdit;

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

    ProjectionChart& dome() { return *m_dome; }
    ProjectionChart* curve() { return m_curve; } ///< null in the short extent
    QTableWidget* table() { return m_table; }    ///< null in the short extent
    /// What is said, without markup; for tests and screen readers.
    QString text() const;

private:
    struct Row {
        core::CArmAngles angles;
        std::optional<core::ViewAim> aim;
        std::optional<std::size_t> chosen; ///< place among the chosen views
    };
    void makeActions();
    QWidget* makeTable();
    QWidget* makeSettings();
    void refresh();
    void refreshWords();
    void refreshTable();
    void refreshSettings();
    ProjectionPicture picture() const;
    QString readout(const core::CArmAngles& view) const;
    void pointAt(const std::optional<core::CArmAngles>& view, const ProjectionChart* from);
    void take(const core::CArmAngles& view, std::optional<core::ViewAim> aim);
    void takeRow();
    void dropRow();
    void setReach();
    void setTurn();

    Session& m_session;
    ViewPlanner& m_planner;
    Extent m_extent;
    std::string m_section{core::kLandingSection};
    ProjectionChart* m_dome;
    ProjectionChart* m_curve = nullptr;
    QComboBox* m_sections;
    QLabel* m_words;
    QTableWidget* m_table = nullptr;
    QLabel* m_notes = nullptr;
    QLabel* m_lying = nullptr;
    QCheckBox* m_turned = nullptr;
    NumberEdit *m_rao = nullptr, *m_lao = nullptr, *m_cra = nullptr, *m_cau = nullptr, *m_primary = nullptr, *m_secondary = nullptr;
    QList<QAction*> m_actions;
    std::vector<Row> m_rows;
    std::optional<core::CArmAngles> m_fluoroscopy, m_pointer;
};

} // namespace gauge::app
