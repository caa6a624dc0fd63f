#include "app/models/echo_pass.h"

#include <QCoreApplication>

namespace gauge::app {

void EchoPass::start(const QStringList& views) {
    if (views.isEmpty()) return;
    m_views = views;
    m_view = 0;
    m_role = 0;
    emit changed();
}

void EchoPass::nextLength() {
    if (!isActive()) return;
    if (++m_role < kRoles.size())
        emit changed();
    else
        nextView();
}

void EchoPass::nextView() {
    if (!isActive()) return;
    m_role = 0;
    if (++m_view >= viewCount()) m_view = -1;
    emit changed();
}

void EchoPass::leave() {
    if (!isActive()) return;
    m_view = -1;
    m_role = 0;
    emit changed();
}

QString roleWords(core::DrawingRole role) {
    switch (role) {
    case core::DrawingRole::OstiumWidth:
        return QCoreApplication::translate("EchoPass", "ostium width");
    case core::DrawingRole::LandingWidth:
        return QCoreApplication::translate("EchoPass", "landing-zone width");
    case core::DrawingRole::Depth:
        return QCoreApplication::translate("EchoPass", "depth");
    default:
        return QCoreApplication::translate("EchoPass", "length of its own");
    }
}

} // namespace gauge::app
