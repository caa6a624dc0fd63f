// Words in pictures: the labels keep inside their picture whatever its width, and what the layout tests call a fault is found.
#include "app/drawing/labels.h"
#include "tests/app/support/layout_faults.h"
#include "tests/app/support/painted_texts.h"

#include <QPainter>
#include <QWidget>
#include <functional>
#include <gtest/gtest.h>
#include <random>

using namespace gauge;
using namespace gauge::app;
using layout::paintedFaultsOf;
using layout::paintedTexts;
using layout::said;

namespace {

/// A view in a window, which paints what a test asks of it.
class Painted : public QWidget {
public:
    Painted(const QSize& size, std::function<void(QPainter&)> paint) : m_paint(std::move(paint)), m_view(new View(m_paint, &m_window)) {
        m_window.resize(size);
        m_view->resize(size);
        m_window.show();
    }

    QWidget& window() { return m_window; }
    QWidget& view() { return *m_view; }

private:
    class View : public QWidget {
    public:
        View(const std::function<void(QPainter&)>& paint, QWidget* parent) : QWidget(parent), m_paint(paint) { setAttribute(Qt::WA_OpaquePaintEvent); }

    protected:
        void paintEvent(QPaintEvent*) override {
            QPainter painter(this);
            painter.setFont(labelFont());
            m_paint(painter);
        }

    private:
        const std::function<void(QPainter&)>& m_paint;
    };

    std::function<void(QPainter&)> m_paint;
    QWidget m_window;
    View* m_view;
};

QStringList faultsOfPainting(std::function<void(QPainter&)> paint) {
    Painted painted({300, 200}, std::move(paint));
    return paintedFaultsOf(painted.window());
}

void expectOneFault(const QString& words, std::function<void(QPainter&)> paint) {
    const QStringList faults = faultsOfPainting(std::move(paint));
    ASSERT_EQ(faults.size(), 1) << said(faults);
    EXPECT_TRUE(faults.front().contains(words)) << said(faults);
}

} // namespace

TEST(PaintedFaults, WordsInTheirPlacesAreNone) {
    const QStringList faults = faultsOfPainting([](QPainter& painter) {
        painter.fillRect(QRect(0, 0, 300, 200), Qt::black);
        painter.drawLine(0, 100, 300, 100);
        painter.drawText(QPointF(20, 50), QStringLiteral("ostium"));
        drawLabel(painter, QPointF(20, 100), QStringLiteral("landing zone"), tone::onImage, LabelSide::Right, QRectF(0, 0, 300, 200)); // over the line
        painter.drawRect(QRect(2, 2, 295, 195)); // around both
    });
    EXPECT_TRUE(faults.isEmpty()) << said(faults);
}

TEST(PaintedFaults, TheHaloOfWordsIsNone) {
    const QStringList faults = faultsOfPainting([](QPainter& painter) {
        painter.drawText(QPointF(21, 51), QStringLiteral("LA"));
        painter.drawText(QPointF(20, 50), QStringLiteral("LA"));
    });
    EXPECT_TRUE(faults.isEmpty()) << said(faults);
}

TEST(PaintedFaults, WordsBeyondTheEdgeAreFound) {
    expectOneFault(QStringLiteral("over its edge: beyond"), [](QPainter& painter) { painter.drawText(QPointF(270, 50), QStringLiteral("beyond")); });
}

TEST(PaintedFaults, WordsCutByTheirBoxAreFound) {
    expectOneFault(QStringLiteral("cuts off a part of: 20.0 mm"), [](QPainter& painter) { painter.drawText(QRectF(20, 50, 30, 20), Qt::AlignLeft, QStringLiteral("20.0 mm")); });
}

TEST(PaintedFaults, WordsCutByTheViewsClipAreFound) {
    expectOneFault(QStringLiteral("cuts off a part of: tip"), [](QPainter& painter) {
        painter.setClipRect(QRectF(0, 0, 300, 46));
        painter.drawText(QPointF(20, 50), QStringLiteral("tip"));
    });
}

TEST(PaintedFaults, WordsOverWordsAreFound) {
    expectOneFault(QStringLiteral("paints “30 mm” over “ostium”"), [](QPainter& painter) {
        painter.drawText(QPointF(20, 50), QStringLiteral("ostium"));
        painter.drawText(QPointF(40, 52), QStringLiteral("30 mm"));
    });
}

TEST(PaintedFaults, ALineOverWordsIsFound) {
    expectOneFault(QStringLiteral("of a letter of: limit 30°"), [](QPainter& painter) {
        painter.drawText(QPointF(20, 50), QStringLiteral("limit 30°"));
        painter.setPen(QPen(Qt::red, 3));
        painter.drawLine(30, 0, 30, 100);
    });
}

TEST(PaintedFaults, APictureOverWordsIsFound) {
    expectOneFault(QStringLiteral("of a letter of: axis"), [](QPainter& painter) {
        painter.drawText(QPointF(20, 50), QStringLiteral("axis"));
        painter.drawImage(QPointF(0, 0), QImage(28, 100, QImage::Format_RGB32));
    });
}

TEST(PaintedFaults, SmallLettersAreFound) {
    expectOneFault(QStringLiteral("paints in 9 pixels: small"), [](QPainter& painter) {
        QFont font = painter.font();
        font.setPixelSize(9);
        painter.setFont(font);
        painter.drawText(QPointF(20, 50), QStringLiteral("small"));
    });
}

TEST(Labels, KeepInsideTheirPictureAndLoseNoWord) {
    const QStringList vocabulary{QStringLiteral("Bogen,"), QStringLiteral("Radius"), QStringLiteral("25.0\u00A0mm:"), QStringLiteral("trifft"), QStringLiteral("ein"),
                                 QStringLiteral("unter"), QStringLiteral("0°"), QStringLiteral("Zirkumflexarterie")};
    const double widestWord = labelWidth(QStringLiteral("Zirkumflexarterie"));
    std::mt19937 random(7);
    for (int round = 0; round < 200; ++round) {
        SCOPED_TRACE(round);
        QStringList words;
        for (auto left = std::uniform_int_distribution(1, 9)(random); left > 0; --left)
            words << vocabulary[std::uniform_int_distribution(0, 7)(random)];
        const QString text = words.join(QLatin1Char(' '));
        const QRectF area(0, 0, widestWord + 4.0 + std::uniform_real_distribution(1.0, 300.0)(random), 240.0);
        const QPointF anchor(std::uniform_real_distribution(-50.0, area.width() + 50.0)(random), std::uniform_real_distribution(0.0, 240.0)(random));
        const auto side = static_cast<LabelSide>(std::uniform_int_distribution(0, 3)(random));
        QRectF plate;
        Painted painted(area.size().toSize(), [&](QPainter& painter) { plate = drawLabel(painter, anchor, text, tone::onImage, side, area); });
        QStringList found;
        for (const auto& painting : paintedTexts(painted.view())) {
            EXPECT_TRUE(plate.contains(painting.box)) << painting.text.toStdString();
            EXPECT_EQ(painting.seen, painting.box);
            found << painting.text;
        }
        EXPECT_EQ(found.join(QLatin1Char(' ')), QString(text).replace(QChar(0x00A0), QLatin1Char(' ')));
        EXPECT_TRUE(area.contains(plate));
        EXPECT_EQ(plate, labelPlate(anchor, text, side, area));
        const bool hasRoom = labelWidth(text) <= area.width() - 4.0;
        EXPECT_EQ(found.size() == 1, hasRoom || words.size() == 1);
    }
}

TEST(Labels, AskedForOnceMoreStandFartherAway) {
    QImage image(200, 200, QImage::Format_RGB32);
    QPainter painter(&image);
    LabelPlaces places;
    const QRectF area(0, 0, 200, 200);
    for (int i = 0; i < 6; ++i)
        EXPECT_TRUE(places.draw(painter, Label{QStringLiteral("tip"), tone::onImage, {{QPointF(100, 100), {LabelSide::Right}}}}, area));
    for (std::size_t i = 0; i < places.taken().size(); ++i)
        for (std::size_t j = 0; j < i; ++j)
            EXPECT_FALSE(places.taken()[i].intersects(places.taken()[j])) << i << " over " << j;
}
