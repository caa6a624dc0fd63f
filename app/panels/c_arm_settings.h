// How C-arm and patient stand to each other on the day, as the person says it: reach of the arm, its distances, how the patient lies.
#pragma once

#include "app/document/view_planner.h"
#include "core/fluoro/c_arm_place.h"

#include <QWidget>

class QLabel;

namespace gauge::app {

class NumberEdit;
class WrappedCheck;
class WrappingRow;

/// The distances that the person set for the room, in the program's settings; nothing: assumed.
std::optional<core::CArmDistances> usualDistances();

class CArmSettings : public QWidget {
    Q_OBJECT
public:
    CArmSettings(Session& session, ViewPlanner& planner, QWidget* parent = nullptr);

    /// Shows what is recorded; below it what the plans have to say.
    void refresh(std::vector<core::Notice> notices);

signals:
    void distancesChanged(const std::optional<gauge::core::CArmDistances>& distances);

private:
    NumberEdit* addNumber(WrappingRow& row, double least, double most, const QString& words, const QString& basis, void (CArmSettings::*slot)());
    void setReach();
    void setTurn();
    void setDistances();

    Session& m_session;
    ViewPlanner& m_planner;
    NumberEdit *m_rao, *m_lao, *m_cra, *m_cau, *m_primary, *m_secondary, *m_isocentre, *m_detector;
    WrappedCheck* m_turned;
    QLabel *m_lying, *m_notes;
    std::vector<core::Notice> m_said;
};

} // namespace gauge::app
