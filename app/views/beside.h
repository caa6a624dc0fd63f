// Two parts of a page side by side, with a handle between them.
#pragma once

#include <QSplitter>

namespace gauge::app {

/// Neither part can be pushed away; they share the width as told, also when the page grows.
inline QSplitter* beside(QWidget* left, QWidget* right, int leftShare, int rightShare) {
    auto* row = new QSplitter(Qt::Horizontal);
    row->setChildrenCollapsible(false);
    row->addWidget(left);
    row->addWidget(right);
    row->setStretchFactor(0, leftShare);
    row->setStretchFactor(1, rightShare);
    row->setSizes({100 * leftShare, 100 * rightShare});
    return row;
}

} // namespace gauge::app
