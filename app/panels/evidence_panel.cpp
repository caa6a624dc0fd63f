#include "app/panels/evidence_panel.h"

#include "app/drawing/palette.h"

#include <QAction>
#include <QLabel>
#include <QPainter>
#include <QStyledItemDelegate>
#include <QToolButton>
#include <QTreeView>
#include <QVBoxLayout>

namespace gauge::app {
namespace {

/// A title, and under it the detail in a softer tone; both wrap, nothing is cut off.
class EvidenceDelegate : public QStyledItemDelegate {
public:
    explicit EvidenceDelegate(QTreeView* view) : QStyledItemDelegate(view), m_view(view) {}

    QSize sizeHint(const QStyleOptionViewItem&, const QModelIndex& index) const override {
        const int width = m_view->viewport()->width();
        const int inner = width - indent(index) - 14;
        const int title = textHeight(index.data(Qt::DisplayRole).toString(), labelFont(12), inner);
        const QString detail = index.data(EvidenceModel::DetailRole).toString();
        return {width, title + (detail.isEmpty() ? 0 : textHeight(detail, labelFont(11), inner) + 2) + 10};
    }

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override {
        painter->save();
        const bool shown = index.data(EvidenceModel::IsShownRole).toBool();
        const bool refused = index.data(EvidenceModel::IsRefusedRole).toBool();
        const QRect row(0, option.rect.top(), m_view->viewport()->width(), option.rect.height());
        if (shown || option.state & QStyle::State_Selected)
            painter->fillRect(row, shown ? tone::raised.lighter(118) : tone::raised);
        if (shown) painter->fillRect(QRect(row.left(), row.top(), 3, row.height()), tone::text);
        const QRect inner = row.adjusted(indent(index) + 4, 5, -10, -5);
        painter->setFont(labelFont(12, shown));
        painter->setPen(refused ? tone::faint : tone::text);
        QRect used;
        painter->drawText(inner, Qt::TextWordWrap,
                          index.data(Qt::DisplayRole).toString() + (shown ? tr("  (shown)") : QString()),
                          &used);
        painter->setFont(labelFont(11));
        painter->setPen(refused ? tone::warning : tone::soft);
        painter->drawText(inner.adjusted(0, used.height() + 2, 0, 0), Qt::TextWordWrap,
                          index.data(EvidenceModel::DetailRole).toString());
        painter->restore();
    }

private:
    int indent(const QModelIndex& index) const { return index.parent().isValid() ? 24 : 8; }
    static int textHeight(const QString& text, const QFont& font, int width) {
        return QFontMetrics(font)
            .boundingRect(QRect(0, 0, std::max(40, width), 10000), Qt::TextWordWrap, text)
            .height();
    }
    QTreeView* m_view;
};

} // namespace

EvidencePanel::EvidencePanel(Session& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_model(this), m_tree(new QTreeView(this)),
      m_empty(new QLabel(this)), m_skipped(new QLabel(this)) {
    auto* heading = new QLabel(tr("Evidence"), this);
    heading->setObjectName("heading");
    auto* open = new QToolButton(this);
    open->setText(tr("Open folder …"));
    open->setToolTip(tr("Open a folder of DICOM images (Ctrl+O), or drop it on the window"));
    connect(open, &QToolButton::clicked, this, &EvidencePanel::openRequested);

    m_tree->setModel(&m_model);
    m_tree->setHeaderHidden(true);
    m_tree->setRootIsDecorated(false);
    m_tree->setIndentation(0);
    m_tree->setItemDelegate(new EvidenceDelegate(m_tree));
    m_tree->setFrameShape(QFrame::NoFrame);
    m_tree->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_tree->setExpandsOnDoubleClick(false);
    connect(m_tree, &QTreeView::activated, this, [this](const QModelIndex& index) {
        if (const auto phase = m_model.phaseAt(index)) m_session.chooseImages(phase->first, phase->second);
    });
    m_empty->setText(tr("Nothing is open. Drop a folder of DICOM images here."));
    m_skipped->setObjectName("soft");
    for (QLabel* label : {m_empty, m_skipped}) {
        label->setWordWrap(true);
        label->setContentsMargins(12, 4, 12, 6);
    }
    m_empty->setObjectName("soft");

    auto* top = new QHBoxLayout;
    top->setContentsMargins(12, 8, 8, 4);
    top->addWidget(heading, 1);
    top->addWidget(open);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addLayout(top);
    layout->addWidget(m_empty);
    layout->addWidget(m_tree, 100);
    layout->addStretch(1); // keeps the sentence at the top while there is no tree
    layout->addWidget(m_skipped);
    connect(&session, &Session::imagesChanged, this, &EvidencePanel::refresh);
    refresh();
}

void EvidencePanel::refresh() {
    const LoadedImages* images = m_session.images();
    m_empty->setVisible(!images);
    m_tree->setVisible(images);
    m_skipped->setVisible(images && !images->index->skipped.empty());
    if (!images) return;
    m_model.setIndex(images->index);
    m_model.setShown(images->series, images->phase);
    m_tree->expandAll();
    m_tree->scrollTo(m_model.indexOf(images->series, images->phase));
    const auto& skipped = images->index->skipped;
    m_skipped->setText(skipped.size() == 1 ? tr("1 other file was left out.")
                                           : tr("%1 other files were left out.").arg(skipped.size()));
    QStringList lines;
    constexpr std::size_t kListed = 12;
    for (std::size_t i = 0; i < std::min(skipped.size(), kListed); ++i)
        lines << QString::fromStdString(skipped[i].file.filename().string() + ": " + skipped[i].reason);
    if (skipped.size() > kListed) lines << tr("… and %1 more").arg(skipped.size() - kListed);
    m_skipped->setToolTip(lines.join(QLatin1Char('\n')));
}

} // namespace gauge::app
