#include "app/panels/sizes_table.h"

#include "app/drawing/palette.h"

#include <QHeaderView>
#include <QScrollBar>
#include <QKeyEvent>
#include <QPainter>
#include <QStyledItemDelegate>
#include <algorithm>

namespace gauge::app {
namespace {

constexpr int kCellMargin = 4, kHeadMargin = 12; // of a side; of both sides together

QFont smaller(QFont font) {
    if (font.pixelSize() > 0)
        font.setPixelSize(font.pixelSize() - 1);
    else
        font.setPointSizeF(font.pointSizeF() - 1);
    return font;
}

QFont strong(QFont font, bool is) {
    font.setWeight(is ? QFont::DemiBold : QFont::Normal);
    return font;
}

int textHeight(const QString& text, const QFont& font, int width) {
    if (text.isEmpty()) return 0;
    return QFontMetrics(font).boundingRect(QRect(0, 0, std::max(20, width), 10000), Qt::TextWordWrap, text).height();
}

/// Of a size that is chosen or leads.
bool isStrong(int column) {
    return column <= SizesModel::Fit;
}

bool isBar(int column) {
    return column == SizesModel::Fit || column == SizesModel::Lasting;
}

class SizeDelegate : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    static int heightFor(const QModelIndex& index, const QFont& font, int width) {
        const int inner = width - 2 * kCellMargin;
        const int bar = isBar(index.column()) ? 9 : 0;
        return textHeight(index.data().toString(), strong(font, isStrong(index.column())), inner) +
               textHeight(index.data(SizesModel::DetailRole).toString(), smaller(font), inner) + bar + 8;
    }

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        painter->save();
        const bool chosen = index.data(SizesModel::IsChosenRole).toBool();
        const bool leads = index.data(SizesModel::IsLeadingRole).toBool();
        painter->fillRect(option.rect, option.state & QStyle::State_Selected ? tone::border
                                       : chosen                                ? tone::raised
                                                                               : tone::panel);
        if (chosen && index.column() == 0)
            painter->fillRect(QRect(option.rect.left(), option.rect.top(), 3, option.rect.height()), tone::text);
        QRect inner = option.rect.adjusted(kCellMargin, 4, -kCellMargin, -4);
        if (isBar(index.column())) {
            drawBar(*painter, inner, index.data(SizesModel::ChanceRole).toDouble(), leads || chosen);
            inner.setTop(inner.top() + 9);
        }
        painter->setFont(strong(option.font, (chosen || leads) && isStrong(index.column())));
        painter->setPen(index.data(SizesModel::IsWarningRole).toBool() ? tone::warning : tone::text);
        QRect used;
        painter->drawText(inner, Qt::TextWordWrap, index.data().toString(), &used);
        inner.setTop(used.bottom() + 1);
        painter->setFont(smaller(option.font));
        painter->setPen(tone::soft);
        painter->drawText(inner, Qt::TextWordWrap, index.data(SizesModel::DetailRole).toString());
        painter->setPen(tone::border);
        painter->drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
        painter->restore();
    }

private:
    static void drawBar(QPainter& painter, const QRect& inner, double chance, bool leading) {
        const QRect whole(inner.left(), inner.top() + 1, inner.width(), 6);
        painter.fillRect(whole, tone::raised.lighter(theme() == Theme::Dark ? 120 : 96));
        QRect part = whole;
        part.setWidth(static_cast<int>(std::lround(whole.width() * std::clamp(chance, 0.0, 1.0))));
        painter.fillRect(part, leading ? tone::text : tone::soft);
        painter.setPen(tone::border);
        painter.drawRect(whole.adjusted(0, 0, -1, 0));
    }
};

} // namespace

SizesTable::SizesTable(SizesModel& model, QWidget* parent) : QTableView(parent), m_model(model) {
    setModel(&model);
    setItemDelegate(new SizeDelegate(this));
    setAccessibleName(tr("Sizes of the chart"));
    verticalHeader()->hide();
    verticalHeader()->setMinimumSectionSize(8);
    setShowGrid(false);
    setFrameShape(QFrame::NoFrame);
    setSelectionBehavior(QAbstractItemView::SelectRows);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setTabKeyNavigation(false);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAsNeeded);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter | static_cast<Qt::Alignment>(Qt::TextWordWrap));
    horizontalHeader()->setHighlightSections(false);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    connect(&model, &QAbstractItemModel::modelReset, this, &SizesTable::fit);
    connect(&model, &QAbstractItemModel::dataChanged, this, &SizesTable::fit);
    connect(this, &QTableView::doubleClicked, this,
            [this](const QModelIndex& index) { emit chooseRequested(m_model.sizeAt(index.row())); });
}

void SizesTable::keyPressEvent(QKeyEvent* event) {
    if ((event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) && currentIndex().isValid()) {
        emit chooseRequested(m_model.sizeAt(currentIndex().row()));
        return;
    }
    QTableView::keyPressEvent(event);
}

/// Columns share the width by what their texts need; rows grow with wrapped texts.
void SizesTable::fit() {
    static constexpr int kShares[]{16, 20, 20, 20, 24};
    const int whole = std::max(200, viewport()->width());
    int sum = 0, used = 0;
    for (const int share : kShares)
        sum += share;
    // No word is cut, in headings and cells alike.
    const auto neededWidth = [&](int column) {
        const QFontMetrics head = horizontalHeader()->fontMetrics(), cells(strong(font(), isStrong(column)));
        int width = 0;
        for (const QString& word : headingOf(column).split(QLatin1Char(' ')))
            width = std::max(width, head.horizontalAdvance(word) + kHeadMargin);
        for (int row = 0; row < m_model.rowCount(); ++row)
            for (const QString& word : m_model.index(row, column).data().toString().split(QLatin1Char(' ')))
                width = std::max(width, cells.horizontalAdvance(word) + 2 * kCellMargin + 2);
        return width;
    };
    int least = 0;
    for (int column = 0; column < m_model.columnCount(); ++column)
        least += neededWidth(column);
    const int spare = std::max(0, whole - least);
    for (int column = 0; column < m_model.columnCount(); ++column) {
        const bool last = column == m_model.columnCount() - 1;
        const int width = last ? std::max(whole - used, neededWidth(column)) : neededWidth(column) + spare * kShares[column] / sum;
        setColumnWidth(column, width);
        used += width;
    }
    int headHeight = 0;
    for (int column = 0; column < m_model.columnCount(); ++column)
        headHeight = std::max(headHeight, textHeight(headingOf(column), horizontalHeader()->font(), columnWidth(column) - kHeadMargin));
    horizontalHeader()->setFixedHeight(headHeight + kHeadMargin);
    for (int row = 0; row < m_model.rowCount(); ++row) {
        int height = 0;
        for (int column = 0; column < m_model.columnCount(); ++column)
            height = std::max(height, SizeDelegate::heightFor(m_model.index(row, column), font(), columnWidth(column)));
        setRowHeight(row, height);
    }
    updateGeometry();
}

QString SizesTable::headingOf(int column) const {
    return m_model.headerData(column, Qt::Horizontal, Qt::DisplayRole).toString();
}

QSize SizesTable::sizeHint() const {
    const bool scrolls = horizontalHeader()->length() > viewport()->width(); // where words are long and the panel narrow
    return {380, horizontalHeader()->height() + verticalHeader()->length() + 2 +
                     (scrolls ? horizontalScrollBar()->sizeHint().height() : 0)};
}

void SizesTable::resizeEvent(QResizeEvent* event) {
    QTableView::resizeEvent(event);
    if (event->size().width() != event->oldSize().width()) fit();
}

void SizesTable::changeEvent(QEvent* event) {
    QTableView::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) fit();
}

} // namespace gauge::app
