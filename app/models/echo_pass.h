// Measuring the echo views in one pass from the keyboard: which view and which length comes next. Knows no windows.
//
//   view 1: ostium width, landing-zone width, depth -> view 2: … -> done       skip: the next length; next: the next view
#pragma once

#include "core/record/entries.h"

#include <QObject>
#include <QString>
#include <QStringList>
#include <array>

namespace gauge::app {

class EchoPass : public QObject {
    Q_OBJECT
public:
    using QObject::QObject;

    static constexpr std::array kRoles{core::DrawingRole::OstiumWidth, core::DrawingRole::LandingWidth,
                                       core::DrawingRole::Depth};

    /// Begins with the first of these views (ids of evidence). Nothing happens without views.
    void start(const QStringList& views);
    bool isActive() const { return m_view >= 0; }
    /// The view whose turn it is; empty while not active.
    QString view() const { return isActive() ? m_views[m_view] : QString(); }
    int viewNumber() const { return m_view + 1; } ///< from 1
    int viewCount() const { return static_cast<int>(m_views.size()); }
    core::DrawingRole role() const { return kRoles[m_role]; }

    /// The length that is due has been drawn, or is left out: the next one, after the last the next view.
    void nextLength();
    /// The next view, whatever is missing in this one; after the last the pass ends.
    void nextView();
    void leave();

signals:
    /// Another view or length is due, or the pass has ended.
    void changed();

private:
    QStringList m_views;
    int m_view = -1;
    std::size_t m_role = 0;
};

/// "ostium width", "landing-zone width", "depth".
QString roleWords(core::DrawingRole role);

} // namespace gauge::app
