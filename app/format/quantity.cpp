#include "app/format/quantity.h"

#include <QCoreApplication>
#include <QStringList>
#include <cmath>

namespace gauge::app {
namespace {

constexpr QChar kSpace(0x00A0);
constexpr QChar kMinus(0x2212);

int decimals(Unit unit) {
    switch (unit) {
    case Unit::Millimetre:
    case Unit::Millilitre:
    case Unit::Centimetre:
    case Unit::MillimetreOfMercury:
        return 1;
    case Unit::Index:
        return 2;
    case Unit::SquareMillimetre:
    case Unit::Degree:
    case Unit::Hounsfield:
    case Unit::Percent:
    case Unit::CentimetrePerSecond:
    case Unit::Millisecond:
    case Unit::PerMinute:
        return 0;
    }
    return 1;
}

QString number(double value, int digits) {
    const double step = std::pow(10.0, -digits);
    double rounded = std::round(value / step) * step;
    if (std::abs(rounded) < 0.5 * step) rounded = 0.0;
    QString text = QString::number(std::abs(rounded), 'f', digits);
    return rounded < 0.0 ? kMinus + text : text;
}

/// Rounded up at the given digit; a hair above a printed digit (binary representation) stays at it.
QString uncertaintyNumber(double value, int digits) {
    constexpr double kHair = 1e-9;
    const double step = std::pow(10.0, -digits);
    return QString::number(std::ceil(value / step - kHair) * step, 'f', digits);
}

QString withUnit(const QString& text, Unit unit) {
    const QString unitText = symbol(unit);
    if (unit == Unit::Degree) // SI Brochure (9th ed.) 5.4.3: no space before the degree sign of a plane angle
        return text + unitText;
    return unitText.isEmpty() ? text : text + kSpace + unitText;
}

} // namespace

QString symbol(Unit unit) {
    switch (unit) {
    case Unit::Millimetre:
        return QStringLiteral("mm");
    case Unit::SquareMillimetre:
        return QStringLiteral("mm²");
    case Unit::Millilitre:
        return QStringLiteral("mL");
    case Unit::Degree:
        return QStringLiteral("°");
    case Unit::Hounsfield:
        return QStringLiteral("HU");
    case Unit::Percent:
        return QStringLiteral("%");
    case Unit::CentimetrePerSecond:
        return QStringLiteral("cm/s");
    case Unit::Centimetre:
        return QStringLiteral("cm");
    case Unit::Millisecond:
        return QStringLiteral("ms");
    case Unit::MillimetreOfMercury:
        return QStringLiteral("mmHg");
    case Unit::PerMinute:
        return QStringLiteral("min⁻¹");
    case Unit::Index:
        return {};
    }
    return {};
}

QString quantity(double value, Unit unit) {
    if (!std::isfinite(value)) return QCoreApplication::translate("Quantity", "not measured");
    return withUnit(number(value, decimals(unit)), unit);
}

QString estimate(const core::Estimate& estimate, Unit unit) {
    if (!std::isfinite(estimate.value)) return QCoreApplication::translate("Quantity", "not measured");
    const double u = estimate.standardUncertainty();
    const QString spread =
        std::isfinite(u) && u > 0.0 ? uncertaintyNumber(u, decimals(unit)) : QStringLiteral("?");
    return withUnit(number(estimate.value, decimals(unit)) + kSpace + QChar(0x00B1) + kSpace + spread, unit);
}

QString uncertaintyParts(const core::Estimate& estimate, Unit unit) {
    const auto& c = estimate.components;
    QStringList parts;
    const auto add = [&](const QString& what, double value) {
        if (value > 0.0 && std::isfinite(value))
            parts << what + kSpace + uncertaintyNumber(value, decimals(unit));
    };
    add(QCoreApplication::translate("Quantity", "edge"), c.edge);
    add(QCoreApplication::translate("Quantity", "plane"), c.plane);
    add(QCoreApplication::translate("Quantity", "observer"), c.observer);
    add(QCoreApplication::translate("Quantity", "scale"), c.scale);
    return parts.isEmpty() ? QString() : withUnit(parts.join(QStringLiteral(", ")), unit);
}

QString plainSpaces(QString text) {
    return text.replace(kSpace, QLatin1Char(' '));
}

} // namespace gauge::app
