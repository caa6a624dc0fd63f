#include "tests/app/support/painted_texts.h"

#include "app/format/quantity.h"

#include <QBuffer>
#include <QFont>
#include <QFontMetricsF>
#include <QRegularExpression>
#include <QSvgGenerator>
#include <QTransform>
#include <QWidget>
#include <QXmlStreamReader>
#include <cmath>
#include <vector>

namespace gauge::layout {
namespace {

QTransform transformOf(const QString& attribute) {
    static const QRegularExpression matrix(QStringLiteral("matrix\\(([^)]*)\\)"));
    const auto found = matrix.match(attribute);
    if (!found.hasMatch()) return {};
    const QStringList numbers = found.captured(1).split(QLatin1Char(','));
    if (numbers.size() != 6) return {};
    return QTransform(numbers[0].toDouble(), numbers[1].toDouble(), numbers[2].toDouble(), numbers[3].toDouble(), numbers[4].toDouble(), numbers[5].toDouble());
}

} // namespace

/// Painted into SVG, whose text elements are read back.
QList<PaintedText> paintedTexts(QWidget& widget) {
    QBuffer buffer;
    buffer.open(QIODevice::ReadWrite);
    QSvgGenerator generator;
    generator.setOutputDevice(&buffer);
    generator.setSize(widget.size());
    generator.setViewBox(widget.rect());
    widget.render(&generator, {}, {}, QWidget::DrawWindowBackground | QWidget::DrawChildren);
    buffer.seek(0);
    QList<PaintedText> texts;
    std::vector<QTransform> groups{QTransform()};
    QXmlStreamReader xml(&buffer);
    while (!xml.atEnd()) {
        xml.readNext();
        if (xml.isStartElement() && xml.name() == QLatin1String("g")) {
            groups.push_back(transformOf(xml.attributes().value(QLatin1String("transform")).toString()) * groups.back());
        } else if (xml.isEndElement() && xml.name() == QLatin1String("g")) {
            groups.pop_back();
        } else if (xml.isStartElement() && xml.name() == QLatin1String("text")) {
            const auto attributes = xml.attributes();
            const QTransform group = groups.back();
            QFont font(attributes.value(QLatin1String("font-family")).toString());
            font.setPixelSize(std::max(1, static_cast<int>(std::lround(attributes.value(QLatin1String("font-size")).toDouble()))));
            font.setWeight(static_cast<QFont::Weight>(std::max(1, attributes.value(QLatin1String("font-weight")).toInt())));
            const QPointF at(attributes.value(QLatin1String("x")).toDouble(), attributes.value(QLatin1String("y")).toDouble());
            const QString text = app::plainSpaces(xml.readElementText());
            if (text.trimmed().isEmpty()) continue;
            const QRectF box = group.mapRect(QFontMetricsF(font).tightBoundingRect(text).translated(at));
            texts.append({text, box, static_cast<int>(std::lround(font.pixelSize() * std::sqrt(std::abs(group.determinant()))))});
        }
    }
    return texts;
}

} // namespace gauge::layout
