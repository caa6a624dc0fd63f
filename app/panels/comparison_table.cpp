#include "app/panels/comparison_table.h"

#include "app/drawing/palette.h"

#include <QCoreApplication>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QPainter>
#include <QScrollBar>
#include <QStyledItemDelegate>
#include <algorithm>

namespace gauge::app {
namespace {

constexpr int kMargin = 8;
constexpr int kLeastColumn = 110;
constexpr int kWidestColumn = 142; ///< longer texts wrap

/// A text in a cell or header with its font and colour.
struct Line {
    QString text;
    QFont font;
    QColor colour;
};

QFont sized(const QFont& base, int more, bool strong = false) {
    QFont font = base;
    if (base.pixelSize() > 0)
        font.setPixelSize(base.pixelSize() + more);
    else
        font.setPointSizeF(base.pointSizeF() + more);
    font.setWeight(strong ? QFont::DemiBold : QFont::Normal);
    return font;
}

QSize sizeOf(const std::vector<Line>& lines, int width) {
    QSize size(0, 0);
    for (const Line& line : lines) {
        const QRect box = QFontMetrics(line.font).boundingRect(QRect(0, 0, std::max(40, width), 10000), Qt::TextWordWrap,
                                                               line.text);
        size = {std::max(size.width(), box.width()), size.height() + box.height()};
    }
    return size;
}

/// Width that the lines want, each unwrapped up to a column of width `widest`.
int wantedWidth(const std::vector<Line>& lines, int widest = kWidestColumn) {
    int width = 0;
    for (const Line& line : lines) {
        const int whole = QFontMetrics(line.font).horizontalAdvance(line.text) + 2;
        int word = 0;
        for (const QString& part : line.text.split(QLatin1Char(' ')))
            word = std::max(word, QFontMetrics(line.font).horizontalAdvance(part) + 2);
        width = std::max(width, std::max(word, std::min(whole, widest - 2 * kMargin)));
    }
    return width;
}

void draw(QPainter& painter, const std::vector<Line>& lines, QRect inner, Qt::Alignment across) {
    for (const Line& line : lines) {
        painter.setFont(line.font);
        painter.setPen(line.colour);
        QRect used;
        painter.drawText(inner, static_cast<int>(across | Qt::AlignTop) | Qt::TextWordWrap, line.text, &used);
        inner.setTop(used.bottom() + 1);
    }
}

std::vector<Line> cellLines(const QModelIndex& index, const QFont& base) {
    const bool leading = index.data(ComparisonModel::IsLeadingRole).toBool();
    const bool stale = index.data(ComparisonModel::IsStaleRole).toBool();
    std::vector<Line> lines{{index.data().toString(), sized(base, leading ? 1 : 0, leading), stale ? tone::faint : tone::text}};
    const auto add = [&](int role, const QColor& colour, const QString& before = {}) {
        if (const QString text = index.data(role).toString(); !text.isEmpty())
            lines.push_back({before + text, sized(base, -1), colour});
    };
    add(ComparisonModel::CarriedRole, tone::soft, QStringLiteral("→ "));
    add(ComparisonModel::DifferenceRole,
        index.data(ComparisonModel::IsOutsideRole).toBool() ? tone::warning : tone::soft);
    add(ComparisonModel::StaleWordsRole, tone::warning);
    return lines;
}

std::vector<Line> nameLines(const QModelIndex& index, const QFont& base) {
    const bool heading = index.data(ComparisonModel::IsHeadingRole).toBool();
    const bool leading = index.data(ComparisonModel::IsLeadingRole).toBool();
    return {{index.data().toString(), sized(base, heading ? -1 : 0, heading || leading),
             heading ? tone::faint : leading ? tone::text : tone::soft}};
}

std::vector<Line> headerLines(const QAbstractItemModel& model, int section, const QFont& base) {
    const auto text = [&](int role) { return model.headerData(section, Qt::Horizontal, role).toString(); };
    if (section == 0) return {{text(Qt::DisplayRole), sized(base, -1), tone::faint}};
    return {{text(Qt::DisplayRole), sized(base, 0, true), tone::text},
            {text(ComparisonModel::CarriedRole), sized(base, -1), tone::soft},
            {text(ComparisonModel::DifferenceRole), sized(base, -1), tone::soft}};
}

class CellDelegate : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        painter->save();
        const bool heading = index.data(ComparisonModel::IsHeadingRole).toBool();
        const bool leading = index.data(ComparisonModel::IsLeadingRole).toBool();
        painter->fillRect(option.rect, option.state & QStyle::State_Selected && !heading ? tone::border
                                       : leading                                       ? tone::raised
                                                                                       : tone::panel);
        if (option.state & QStyle::State_HasFocus && !heading) {
            painter->setPen(QPen(tone::text, 1.0));
            painter->drawRect(option.rect.adjusted(0, 0, -1, -1));
        }
        const bool name = index.column() == 0;
        const QRect inner = option.rect.adjusted(kMargin, heading ? 7 : 3, -kMargin, -2);
        draw(*painter, name ? nameLines(index, option.font) : cellLines(index, option.font), inner,
             name ? Qt::AlignLeft : Qt::AlignRight);
        painter->restore();
    }
};

/// Modality, stage, pressure and phase above each column, wrapped to its width.
class StateHeader : public QHeaderView {
public:
    explicit StateHeader(QWidget* parent) : QHeaderView(Qt::Horizontal, parent) { setSectionsClickable(true); }

    int neededHeight() const {
        int height = 0;
        for (int section = 0; section < count(); ++section)
            if (!isSectionHidden(section))
                height = std::max(height, sizeOf(headerLines(*model(), section, font()), sectionSize(section) - 2 * kMargin)
                                              .height());
        return height + 10;
    }

protected:
    void paintSection(QPainter* painter, const QRect& rect, int section) const override {
        painter->save();
        painter->fillRect(rect, tone::panel);
        draw(*painter, headerLines(*model(), section, font()), rect.adjusted(kMargin, 4, -kMargin, -4),
             section == 0 ? Qt::AlignLeft : Qt::AlignRight);
        painter->setPen(tone::border);
        painter->drawLine(rect.bottomLeft(), rect.bottomRight());
        painter->restore();
    }
};

void prepare(QTableView& view, QAbstractItemModel& model) {
    view.setModel(&model);
    view.setHorizontalHeader(new StateHeader(&view));
    view.setItemDelegate(new CellDelegate(&view));
    view.verticalHeader()->hide();
    view.verticalHeader()->setMinimumSectionSize(8);
    view.setShowGrid(false);
    view.setFrameShape(QFrame::NoFrame);
    view.setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    view.setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    view.horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    view.setWordWrap(true);
}

} // namespace

ComparisonTable::ComparisonTable(ComparisonModel& model, QWidget* parent)
    : QWidget(parent), m_model(model), m_names(new QTableView(this)), m_cells(new QTableView(this)) {
    prepare(*m_names, model);
    prepare(*m_cells, model);
    m_names->setAccessibleName(tr("Quantities"));
    m_cells->setAccessibleName(tr("Comparison of the evidence"));
    m_names->setFocusPolicy(Qt::NoFocus);
    m_names->setSelectionMode(QAbstractItemView::NoSelection);
    m_names->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_names->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_cells->setSelectionMode(QAbstractItemView::SingleSelection);
    m_cells->setProperty("scrollsSideways", true); // one column for each kind of evidence and moment
    m_cells->setTabKeyNavigation(false);
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addWidget(m_names);
    layout->addWidget(m_cells, 1);
    setFocusProxy(m_cells);

    connect(m_cells->verticalScrollBar(), &QScrollBar::valueChanged, m_names->verticalScrollBar(), &QScrollBar::setValue);
    connect(m_names->verticalScrollBar(), &QScrollBar::valueChanged, m_cells->verticalScrollBar(), &QScrollBar::setValue);
    connect(m_cells, &QTableView::doubleClicked, this, &ComparisonTable::jumpRequested);
    connect(&model, &QAbstractItemModel::modelReset, this, &ComparisonTable::fitLater);
    connect(&model, &QAbstractItemModel::dataChanged, this, &ComparisonTable::fitLater);
    const auto watchSelection = [this] {
        connect(m_cells->selectionModel(), &QItemSelectionModel::currentChanged, this, &ComparisonTable::currentChanged);
    };
    watchSelection();
    m_cells->installEventFilter(this);
    fit();
}

bool ComparisonTable::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_cells && event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if ((key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter) && current().isValid()) {
            emit jumpRequested(current());
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

/// Columns as wide as their texts up to the widest; rows as high as the highest cell.
void ComparisonTable::fit() {
    if (m_fitting) return;
    m_fitting = true;
    m_isUnfit = false;
    const QFont base = m_cells->font();
    int names = 0;
    for (int row = 0; row < m_model.rowCount(); ++row)
        names = std::max(names, wantedWidth(nameLines(m_model.index(row, 0), base)) + 2 * kMargin);
    names = std::min(names, std::max(120, width() / 3));
    m_names->setColumnWidth(0, names);
    m_names->setFixedWidth(names);
    const int room = width() - names - m_cells->verticalScrollBar()->sizeHint().width();
    const int widest = std::clamp(room / 2, kLeastColumn, kWidestColumn); // of two states that are compared, both are seen whole
    std::vector<int> widths;
    int sum = 0;
    for (int column = 1; column < m_model.columnCount(); ++column) {
        int wanted = wantedWidth(headerLines(m_model, column, base), widest);
        for (int row = 0; row < m_model.rowCount(); ++row)
            wanted = std::max(wanted, wantedWidth(cellLines(m_model.index(row, column), base), widest));
        widths.push_back(std::max(kLeastColumn, wanted + 2 * kMargin));
        sum += widths.back();
    }
    // What is left over is shared out.
    const int left = room - sum;
    m_cells->setColumnHidden(0, true);
    for (int column = 1; column < m_model.columnCount(); ++column) {
        m_names->setColumnHidden(column, true);
        m_cells->setColumnWidth(column, widths[static_cast<std::size_t>(column - 1)] +
                                            (left > 0 ? left / static_cast<int>(widths.size()) : 0));
    }
    // A heading stays while any row below it has a value.
    bool any = false;
    for (int row = m_model.rowCount() - 1; row >= 0; --row) {
        const QModelIndex name = m_model.index(row, 0);
        const bool heading = name.data(ComparisonModel::IsHeadingRole).toBool();
        const bool hidden = heading ? !any : name.data(ComparisonModel::IsEmptyRole).toBool();
        any = heading ? false : any || !hidden;
        int height = sizeOf(nameLines(name, base), names - 2 * kMargin).height() + (heading ? 10 : 6);
        for (int column = 1; column < m_model.columnCount() && !heading; ++column)
            height = std::max(height, sizeOf(cellLines(m_model.index(row, column), base),
                                             m_cells->columnWidth(column) - 2 * kMargin)
                                              .height() +
                                          7);
        for (QTableView* view : {m_names, m_cells}) {
            view->setRowHidden(row, hidden);
            view->setRowHeight(row, height);
        }
    }
    const int header = std::max(static_cast<StateHeader*>(m_names->horizontalHeader())->neededHeight(),
                                static_cast<StateHeader*>(m_cells->horizontalHeader())->neededHeight());
    for (QTableView* view : {m_names, m_cells})
        view->horizontalHeader()->setFixedHeight(header);
    m_fitting = false;
}

/// Before the next painting, once for however many changes there are until then.
void ComparisonTable::fitLater() {
    m_isUnfit = true;
    QCoreApplication::postEvent(this, new QEvent(QEvent::LayoutRequest));
}

bool ComparisonTable::event(QEvent* event) {
    if (event->type() == QEvent::LayoutRequest && m_isUnfit) fit();
    return QWidget::event(event);
}

void ComparisonTable::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fit();
}

void ComparisonTable::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange ||
        event->type() == QEvent::PaletteChange)
        fitLater();
}

} // namespace gauge::app
