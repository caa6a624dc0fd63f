#include "app/format/words.h"

#include "app/format/quantity.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <cmath>

namespace gauge::app {

QStringList cautionParagraphs() {
    return {
        QCoreApplication::translate("Cautions", "Research and teaching software, not a medical device; not for sole use in clinical decisions."),
        QCoreApplication::translate("Cautions", "Measurements must be confirmed by a licensed practitioner; device choice follows the device's "
            "current instructions for use, local protocol and law."),
        QCoreApplication::translate("Cautions", "Estimates at another pressure are model predictions: re-measure when haemodynamics have "
            "changed.")};
}

QString directionLetters(const core::PatientVector& direction) {
    constexpr double kShown = 0.35; // a second letter from about 20 degrees off the first
    static constexpr std::array<std::array<char, 2>, 3> letters{{{'L', 'R'}, {'P', 'A'}, {'H', 'F'}}};
    const Eigen::Vector3d d = direction.normalized().mm;
    std::array<int, 3> order{0, 1, 2};
    std::sort(order.begin(), order.end(), [&](int a, int b) { return std::abs(d[a]) > std::abs(d[b]); });
    QString text;
    for (std::size_t n = 0; n < 2; ++n) {
        const int axis = order[n];
        if (n == 0 || std::abs(d[axis]) > kShown)
            text += QLatin1Char(letters[static_cast<std::size_t>(axis)][d[axis] > 0 ? 0 : 1]);
    }
    return text;
}

QString placeWords(const core::PatientPoint& point) {
    const auto part = [](double mm, const QString& positive, const QString& negative) {
        return (mm >= 0 ? positive : negative).arg(quantity(std::abs(mm), Unit::Millimetre));
    };
    const auto words = [](const char* text) { return QCoreApplication::translate("Place", text); };
    return QStringList{
        part(point.mm.x(), words(QT_TRANSLATE_NOOP("Place", "left %1")), words(QT_TRANSLATE_NOOP("Place", "right %1"))),
        part(point.mm.y(), words(QT_TRANSLATE_NOOP("Place", "back %1")), words(QT_TRANSLATE_NOOP("Place", "front %1"))),
        part(point.mm.z(), words(QT_TRANSLATE_NOOP("Place", "head %1")), words(QT_TRANSLATE_NOOP("Place", "feet %1")))}
        .join(QStringLiteral(", "));
}

} // namespace gauge::app
