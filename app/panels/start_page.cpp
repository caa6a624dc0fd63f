#include "app/panels/start_page.h"

#include "app/format/words.h"

#include <QIcon>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace gauge::app {

StartPage::StartPage(QWidget* parent) : QWidget(parent) {
    auto* icon = new QLabel(this);
    icon->setPixmap(QIcon(QStringLiteral(":/icons/ostium-gauge.svg")).pixmap(88, 88));
    auto* name = new QLabel(tr("Ostium Gauge"), this);
    name->setObjectName("title");
    auto* job = new QLabel(tr("Measures the left atrial appendage on CT: how wide it is at which depth, with "
                              "the uncertainty of every value."),
                           this);
    job->setObjectName("lead");
    auto* open = new QPushButton(tr("Open a folder of DICOM images …"), this);
    open->setObjectName("primary");
    open->setToolTip(tr("Ctrl+O"));
    open->setAutoDefault(true);
    setFocusProxy(open);
    connect(open, &QPushButton::clicked, this, &StartPage::openRequested);
    auto* drop = new QLabel(tr("or drop the folder on this window. Then mark the atrium and the tip of the "
                               "appendage with two clicks."),
                            this);
    drop->setObjectName("soft");
    auto* caution = new QLabel(cautionParagraphs().join(QStringLiteral("\n\n")), this);
    caution->setObjectName("soft");

    auto* column = new QVBoxLayout;
    column->setSpacing(12);
    for (QWidget* widget : std::initializer_list<QWidget*>{icon, name, job}) {
        column->addWidget(widget);
    }
    column->addSpacing(10);
    column->addWidget(open, 0, Qt::AlignLeft);
    column->addWidget(drop);
    column->addSpacing(22);
    column->addWidget(caution);
    for (QLabel* label : {job, drop, caution}) {
        label->setWordWrap(true);
        label->setFixedWidth(470);
    }
    auto* centre = new QHBoxLayout(this);
    centre->addStretch(1);
    auto* upright = new QVBoxLayout;
    upright->addStretch(2);
    upright->addLayout(column);
    upright->addStretch(3);
    centre->addLayout(upright);
    centre->addStretch(1);
}

} // namespace gauge::app
