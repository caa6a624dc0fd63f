#include "app/format/words.h"

#include "app/format/quantity.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace gauge::app {

QStringList cautionParagraphs() {
    return {
        QStringLiteral(
            "Research and teaching software, not a medical device; not for sole use in clinical decisions."),
        QStringLiteral(
            "Measurements must be confirmed by a licensed practitioner; device choice follows the device's "
            "current instructions for use, local protocol and law."),
        QStringLiteral(
            "Estimates at another pressure are model predictions: re-measure when haemodynamics have "
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
    const auto part = [](double mm, const char* positive, const char* negative) {
        return QString::fromLatin1(mm >= 0 ? positive : negative) + QLatin1Char(' ') +
               quantity(std::abs(mm), Unit::Millimetre);
    };
    return QStringList{part(point.mm.x(), "left", "right"), part(point.mm.y(), "back", "front"),
                       part(point.mm.z(), "head", "feet")}
        .join(QStringLiteral(", "));
}

} // namespace gauge::app
