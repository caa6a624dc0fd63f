// Keeps the state of the septal crossing with the case: worked out when somebody asks, anew after every change that it rests on.
#pragma once

#include "app/document/session.h"
#include "app/models/septum_state.h"

#include <QObject>

namespace gauge::app {

class SeptumModel : public QObject {
    Q_OBJECT
public:
    explicit SeptumModel(Session& session, QObject* parent = nullptr);

    const SeptumState& state() const;
    Session& session() const { return m_session; }

    /// Moves the chosen crossing to a place of the face, or says why not (outside the fossa). Calls of one gesture are one step
    /// of undo. True when it was chosen.
    bool choose(const Eigen::Vector2d& place, int gesture);
    void setLimits(const core::CrossingLimits& limits);

signals:
    void changed();

private:
    void forget();

    Session& m_session;
    mutable std::optional<SeptumState> m_state;
};

} // namespace gauge::app
