#include "app/panels/wrapped_tree.h"

#include <QEvent>
#include <QHeaderView>
#include <QStyledItemDelegate>
#include <QTreeWidgetItemIterator>
#include <algorithm>
#include <numeric>

namespace gauge::app {
namespace {

constexpr int kCellMargin = 8, kRowMargin = 4; // of both sides together

int cellHeight(const QString& text, const QFont& font, int width) {
    return QFontMetrics(font).boundingRect(QRect(0, 0, width - kCellMargin, 10000), Qt::TextWordWrap, text).height() + kRowMargin;
}

int indentOf(const QTreeView& tree, int column, bool isChild) {
    return column == 0 && isChild ? tree.indentation() : 0;
}

/// Rows as high as their wrapped texts.
class WrappedCells : public QStyledItemDelegate {
public:
    explicit WrappedCells(QTreeView* tree) : QStyledItemDelegate(tree), m_tree(tree) {}

    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        QStyleOptionViewItem own = option;
        initStyleOption(&own, index);
        const bool isSpanned = m_tree->isFirstColumnSpanned(index.row(), index.parent());
        const int width = m_tree->columnWidth(index.column()) - indentOf(*m_tree, index.column(), index.parent().isValid());
        const int height = isSpanned ? QFontMetrics(own.font).height() + kRowMargin : cellHeight(index.data().toString(), own.font, width);
        return {QStyledItemDelegate::sizeHint(option, index).width(), height};
    }

private:
    QTreeView* m_tree;
};

/// Pixels that a column needs at least, for its longest word, and would like to have, for its longest text.
struct Need {
    int least = 0, wanted = 0;
};

Need needOf(const QString& text, const QFontMetrics& metrics, int indent) {
    const auto pixels = [&](const QString& words) { return metrics.horizontalAdvance(words) + kCellMargin + 2 + indent; };
    Need need{0, pixels(text)};
    for (const QString& word : text.split(QLatin1Char(' ')))
        need.least = std::max(need.least, pixels(word));
    return need;
}

} // namespace

WrappedTree::WrappedTree(QWidget* parent) : QTreeWidget(parent) {
    setWordWrap(true);
    setItemDelegate(new WrappedCells(this));
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    header()->setStretchLastSection(false);
    header()->setSectionResizeMode(QHeaderView::Fixed);
    header()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
}

std::vector<int> WrappedTree::columnWidths(int width) const {
    std::vector<Need> needs;
    for (int column = 0; column < columnCount(); ++column) {
        const int heading = needOf(headerItem()->text(column), header()->fontMetrics(), 0).wanted; // headings do not wrap
        needs.push_back({heading, heading});
    }
    for (QTreeWidgetItemIterator at(const_cast<WrappedTree*>(this)); *at; ++at) { // NOLINT: Qt's iterator reads alone
        const QTreeWidgetItem& item = **at;
        if (item.isFirstColumnSpanned()) continue;
        for (int column = 0; column < columnCount(); ++column) {
            const Need one = needOf(item.text(column), QFontMetrics(font()), indentOf(*this, column, item.parent() != nullptr));
            Need& need = needs[static_cast<std::size_t>(column)];
            need = {std::max(need.least, one.least), std::max(need.wanted, one.wanted)};
        }
    }
    int least = 0, wanted = 0;
    for (const Need& need : needs) {
        least += need.least;
        wanted += need.wanted;
    }
    const double share = wanted <= least ? 1.0 : std::clamp(static_cast<double>(width - least) / (wanted - least), 0.0, 1.0);
    std::vector<int> widths;
    for (const Need& need : needs)
        widths.push_back(need.least + static_cast<int>(share * (need.wanted - need.least)));
    return widths;
}

int WrappedTree::heightForWidth(int width) const {
    const std::vector<int> widths = columnWidths(width - 2 * frameWidth());
    int height = header()->sizeHint().height() + 2 * frameWidth();
    for (QTreeWidgetItemIterator at(const_cast<WrappedTree*>(this)); *at; ++at) { // NOLINT: Qt's iterator reads alone
        const QTreeWidgetItem& item = **at;
        int row = QFontMetrics(item.font(0)).height() + kRowMargin;
        for (int column = 0; column < columnCount() && !item.isFirstColumnSpanned(); ++column)
            row = std::max(row, cellHeight(item.text(column), font(), widths[static_cast<std::size_t>(column)] - indentOf(*this, column, item.parent() != nullptr)));
        height += row;
    }
    return height;
}

QSize WrappedTree::sizeHint() const {
    const int width = std::max(minimumSizeHint().width(), QTreeWidget::sizeHint().width());
    return {width, heightForWidth(width)};
}

QSize WrappedTree::minimumSizeHint() const {
    const std::vector<int> least = columnWidths(0);
    const int width = std::accumulate(least.begin(), least.end(), 2 * frameWidth());
    return {width, header()->sizeHint().height() + 2 * frameWidth()};
}

void WrappedTree::fit() {
    const std::vector<int> widths = columnWidths(viewport()->width());
    for (int column = 0; column < columnCount(); ++column)
        setColumnWidth(column, widths[static_cast<std::size_t>(column)]);
    scheduleDelayedItemsLayout();
    updateGeometry();
}

void WrappedTree::resizeEvent(QResizeEvent* event) {
    QTreeWidget::resizeEvent(event);
    if (event->size().width() != event->oldSize().width()) fit();
}

void WrappedTree::changeEvent(QEvent* event) {
    QTreeWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) fit();
}

} // namespace gauge::app
