// Places of a drawing on the screen and back, and the id of a drawing as the record has it.
#pragma once

#include <Eigen/Core>
#include <QPointF>
#include <QString>
#include <QTransform>
#include <string>

namespace gauge::app {

inline QPointF onScreen(const QTransform& screen, const Eigen::Vector2d& p) {
    return screen.map(QPointF(p.x(), p.y()));
}

inline Eigen::Vector2d fromScreen(const QTransform& screen, const QPointF& p) {
    const QPointF at = screen.inverted().map(p);
    return {at.x(), at.y()};
}

inline std::string idOf(const QString& id) {
    return id.toStdString();
}

} // namespace gauge::app
