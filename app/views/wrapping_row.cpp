#include "app/views/wrapping_row.h"

#include <QApplication>
#include <QStyle>
#include <QWidget>
#include <algorithm>

namespace gauge::app {
namespace {

constexpr int kGap = 6;

} // namespace

WrappingRow::WrappingRow(QWidget* parent) : QLayout(parent) {
    setContentsMargins(0, 0, 0, 0);
    setSpacing(kGap); // not that of the column it stands in
}

WrappingRow::~WrappingRow() {
    for (QLayoutItem* item : m_items)
        delete item;
}

void WrappingRow::addItem(QLayoutItem* item) {
    m_items.push_back(item);
}

int WrappingRow::count() const {
    return static_cast<int>(m_items.size());
}

QLayoutItem* WrappingRow::itemAt(int index) const {
    return index >= 0 && index < count() ? m_items[static_cast<std::size_t>(index)] : nullptr;
}

QLayoutItem* WrappingRow::takeAt(int index) {
    QLayoutItem* item = itemAt(index);
    if (item) m_items.erase(m_items.begin() + index);
    return item;
}

Qt::Orientations WrappingRow::expandingDirections() const {
    return Qt::Horizontal;
}

bool WrappingRow::hasHeightForWidth() const {
    return true;
}

int WrappingRow::heightForWidth(int width) const {
    return arrange(QRect(0, 0, width, 0), false);
}

QSize WrappingRow::minimumSize() const {
    QSize least;
    for (const QLayoutItem* item : m_items)
        if (!item->isEmpty()) least = least.expandedTo(item->minimumSize());
    const QMargins m = contentsMargins();
    return least + QSize(m.left() + m.right(), m.top() + m.bottom());
}

QSize WrappingRow::sizeHint() const {
    int width = 0, height = 0;
    for (const QLayoutItem* item : m_items) {
        if (item->isEmpty()) continue;
        width += (width > 0 ? spacing() : 0) + item->sizeHint().width();
        height = std::max(height, item->sizeHint().height());
    }
    const QMargins m = contentsMargins();
    return {width + m.left() + m.right(), height + m.top() + m.bottom()};
}

void WrappingRow::setGeometry(const QRect& area) {
    QLayout::setGeometry(area);
    arrange(area, true);
}

int WrappingRow::arrange(const QRect& area, bool move) const {
    const QRect inner = area.marginsRemoved(contentsMargins());
    const Qt::LayoutDirection direction = parentWidget() ? parentWidget()->layoutDirection() : QApplication::layoutDirection();
    int x = inner.x(), y = inner.y(), line = 0;
    for (QLayoutItem* item : m_items) {
        if (item->isEmpty()) continue;
        const QSize size(std::min(item->sizeHint().width(), std::max(inner.width(), item->minimumSize().width())),
                         item->sizeHint().height());
        if (x > inner.x() && x + size.width() > inner.x() + inner.width()) {
            x = inner.x();
            y += line + spacing();
            line = 0;
        }
        if (move) item->setGeometry(QStyle::visualRect(direction, inner, QRect(QPoint(x, y), size)));
        x += size.width() + spacing();
        line = std::max(line, size.height());
    }
    const QMargins m = contentsMargins();
    return y + line - inner.y() + m.top() + m.bottom();
}

} // namespace gauge::app
