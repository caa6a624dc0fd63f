#include "app/panels/caution_strip.h"

#include "app/format/words.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QToolButton>

namespace gauge::app {

CautionStrip::CautionStrip(QWidget* parent) : QFrame(parent) {
    setObjectName("cautionStrip");
    auto* text = new QLabel(cautionParagraphs().mid(0, 2).join(QLatin1Char(' ')), this);
    text->setWordWrap(true);
    auto* close = new QToolButton(this);
    close->setText(tr("Understood"));
    close->setToolTip(tr("Hide this strip; the cautions stay under Help"));
    connect(close, &QToolButton::clicked, this, [this] {
        hide();
        emit dismissed();
    });
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(14, 6, 10, 6);
    layout->setSpacing(14);
    layout->addWidget(text, 1);
    layout->addWidget(close);
}

} // namespace gauge::app
