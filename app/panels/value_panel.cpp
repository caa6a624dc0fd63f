#include "app/panels/value_panel.h"

#include "app/drawing/palette.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QHeaderView>
#include <QLabel>
#include <QPainter>
#include <QScrollArea>
#include <QSplitter>
#include <QStyledItemDelegate>
#include <QTableView>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

namespace gauge::app {
namespace {

class ValueDelegate : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override {
        painter->save();
        const QModelIndex first = index.siblingAtColumn(0);
        const bool heading = first.data(ValueModel::IsHeadingRole).toBool();
        const bool leading = first.data(ValueModel::IsLeadingRole).toBool();
        if (option.state & QStyle::State_Selected && !heading)
            painter->fillRect(option.rect, tone::raised.lighter(120));
        else if (leading)
            painter->fillRect(option.rect, tone::raised);
        const QRect inner =
            option.rect.adjusted(index.column() == 0 ? 12 : 4, 0, index.column() == 0 ? 0 : -12, 0);
        const bool stale = index.data(ValueModel::IsStaleRole).toBool();
        painter->setFont(heading ? labelFont(11, true)
                                 : labelFont(leading && index.column() > 0 ? 13 : 12, leading));
        painter->setPen(heading                           ? tone::faint
                        : stale                           ? tone::faint
                        : index.column() == 0 && !leading ? tone::soft
                                                          : tone::text);
        const auto alignment = static_cast<Qt::Alignment>(index.data(Qt::TextAlignmentRole).toInt());
        painter->drawText(heading ? inner.adjusted(0, 6, 0, 0) : inner, static_cast<int>(alignment),
                          index.data(Qt::DisplayRole).toString());
        painter->restore();
    }
};

/// Header with the colour and line style of ostium and landing zone under their words.
class ValueHeader : public QHeaderView {
public:
    explicit ValueHeader(QWidget* parent) : QHeaderView(Qt::Horizontal, parent) {}

protected:
    QSize sizeHint() const override { return {QHeaderView::sizeHint().width(), 50}; }
    void paintSection(QPainter* painter, const QRect& rect, int section) const override {
        painter->fillRect(rect, tone::panel);
        if (section == ValueModel::Quantity) return;
        const Role role = section == ValueModel::OstiumColumn ? Role::Ostium : Role::Landing;
        // "Landing zone" above, its depth below.
        const QString text = model()->headerData(section, Qt::Horizontal).toString();
        const auto digit = std::find_if(text.begin(), text.end(), [](QChar c) { return c.isDigit(); });
        const auto split = static_cast<int>(digit - text.begin());
        const QRect inner = rect.adjusted(0, 4, -12, -8);
        painter->setFont(labelFont(12, true));
        painter->setPen(colourOf(role));
        painter->drawText(inner, Qt::AlignRight | Qt::AlignTop, text.left(split).trimmed());
        painter->setFont(labelFont(12));
        painter->drawText(inner, Qt::AlignRight | Qt::AlignBottom,
                          split < text.size() ? text.mid(split) : tr("depth 0"));
        painter->setPen(penOf(role, 2.0));
        painter->drawLine(rect.left() + 22, rect.bottom() - 3, rect.right() - 12, rect.bottom() - 3);
    }
};

} // namespace

ValuePanel::ValuePanel(Session& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_model(this), m_table(new QTableView(this)),
      m_notices(new QLabel(this)) {
    setAutoFillBackground(true);
    auto* heading = new QLabel(tr("Values"), this);
    heading->setObjectName("heading");
    auto* copy = new QToolButton(this);
    copy->setText(tr("Copy"));
    copy->setToolTip(tr("Copy the table for a spreadsheet (Ctrl+Shift+C)"));
    connect(copy, &QToolButton::clicked, this, &ValuePanel::copyTable);
    auto* top = new QHBoxLayout;
    top->setContentsMargins(12, 8, 8, 0);
    top->addWidget(heading, 1);
    top->addWidget(copy);

    m_table->setModel(&m_model);
    m_table->setHorizontalHeader(new ValueHeader(m_table));
    m_table->setItemDelegate(new ValueDelegate(m_table));
    m_table->verticalHeader()->hide();
    m_table->setShowGrid(false);
    m_table->setFrameShape(QFrame::NoFrame);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_table->horizontalHeader()->setSectionResizeMode(ValueModel::Quantity, QHeaderView::Stretch);
    m_table->horizontalHeader()->setSectionResizeMode(ValueModel::OstiumColumn, QHeaderView::Fixed);
    m_table->horizontalHeader()->setSectionResizeMode(ValueModel::LandingColumn, QHeaderView::Fixed);
    m_table->horizontalHeader()->resizeSection(ValueModel::OstiumColumn, 134);
    m_table->horizontalHeader()->resizeSection(ValueModel::LandingColumn, 134);
    for (int row = 0; row < m_model.rowCount(); ++row) {
        const QModelIndex index = m_model.index(row, 0);
        const bool isHeading = index.data(ValueModel::IsHeadingRole).toBool();
        const bool leading = index.data(ValueModel::IsLeadingRole).toBool();
        m_table->setRowHeight(row, isHeading ? 25 : leading ? 28 : 20);
        if (isHeading) m_table->setSpan(row, 0, 1, ValueModel::ColumnCount);
    }

    m_notices->setWordWrap(true);
    m_notices->setTextFormat(Qt::RichText);
    m_notices->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    m_notices->setContentsMargins(12, 6, 12, 10);
    m_notices->setTextInteractionFlags(Qt::TextSelectableByMouse);
    auto* scroll = new QScrollArea(this);
    scroll->setWidget(m_notices);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto* parts = new QSplitter(Qt::Vertical, this);
    parts->addWidget(m_table);
    parts->addWidget(scroll);
    // The table keeps the height of its rows; the notices take what is left.
    parts->setStretchFactor(0, 0);
    parts->setStretchFactor(1, 1);
    parts->setChildrenCollapsible(false);
    parts->setSizes({m_table->verticalHeader()->length() + 56, 150});

    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(2);
    layout->addLayout(top);
    layout->addWidget(parts, 1);

    connect(&session.document(), &CaseDocument::changed, this, &ValuePanel::refresh);
    connect(&session, &Session::measurementChanged, this, &ValuePanel::refresh);
    connect(&session, &Session::imagesChanged, this, &ValuePanel::refresh);
    connect(&session, &Session::workChanged, this, &ValuePanel::refresh);
    connect(&session, &Session::landingChanged, this,
            [this] { m_model.setPreview(m_session.isPreviewing() ? m_session.landing() : nullptr); });
    refresh();
}

void ValuePanel::copyTable() const {
    QGuiApplication::clipboard()->setText(m_model.asText());
}

QStringList ValuePanel::notices() const {
    QStringList lines;
    if (m_session.failure()) lines << QString::fromStdString(m_session.failure()->message);
    if (const auto* m = m_session.measurement())
        for (const auto& notice : m->notices)
            lines << QString::fromStdString(notice.text);
    if (const auto* images = m_session.images())
        for (const auto& notice : images->ct.notices)
            lines << QString::fromStdString(notice.text);
    return lines;
}

void ValuePanel::refresh() {
    m_model.setPreview(m_session.isPreviewing() ? m_session.landing() : nullptr);
    m_model.setStaleShown(m_session.isMeasuring());
    m_model.setRecord(m_session.record());
    QString text;
    for (const QString& line : notices())
        text +=
            QStringLiteral("<p style='margin:0 0 7px 0'>") + line.toHtmlEscaped() + QStringLiteral("</p>");
    if (text.isEmpty())
        text = QStringLiteral("<p style='color:%1'>").arg(tone::faint.name()) +
               (m_session.measurement()
                    ? tr("Nothing else to note.")
                    : tr("Values ± standard uncertainty appear here once the appendage is measured.")) +
               QStringLiteral("</p>");
    m_notices->setText(text);
}

} // namespace gauge::app
