#include "tests/app/support/layout_faults.h"

#include "app/format/language.h"
#include "tests/app/support/painted_texts.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QGroupBox>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPainter>
#include <QPlainTextEdit>
#include <QRegularExpression>
#include <QScrollArea>
#include <QScrollBar>
#include <QSplitter>
#include <QStackedWidget>
#include <QStyleOptionComboBox>
#include <QStyleOptionHeader>
#include <QTabBar>
#include <QTextBlock>
#include <QTextDocument>
#include <QTextDocumentFragment>
#include <QTextEdit>
#include <QTextLayout>
#include <algorithm>
#include <cmath>
#include <map>
#include <sstream>

namespace gauge::layout {
namespace {

constexpr int kSlackPx = 1;             // rounding of layouts at fractional scales
constexpr double kLeastContrast = 4.5;  // WCAG 2.1, success criterion 1.4.3
constexpr double kPaintedScale = 4.0;   // strokes of letters are several pixels wide then, so that their own colour is met
constexpr int kLeastLetters = 3;        // of a single letter the blended edges are too great a share
constexpr double kLeastShare = 0.12;    // of the painted letters: less is the blend along their edges

QString nameOf(const QWidget& widget) {
    QString name = QString::fromLatin1(widget.metaObject()->className());
    if (!widget.objectName().isEmpty()) name += QStringLiteral(" '%1'").arg(widget.objectName());
    if (!widget.accessibleName().isEmpty()) name += QStringLiteral(" (%1)").arg(widget.accessibleName());
    return name;
}

QString plain(const QString& text) {
    return Qt::mightBeRichText(text) ? QTextDocumentFragment::fromHtml(text).toPlainText() : text;
}

int widestWord(const QString& text, const QFontMetrics& metrics) {
    int widest = 0;
    for (const QString& word : text.split(QRegularExpression(QStringLiteral("[\\s\\-/\u2013]+")), Qt::SkipEmptyParts))
        widest = std::max(widest, metrics.horizontalAdvance(word));
    return widest;
}

bool isCut(const QLabel& label) {
    if (!label.wordWrap()) return label.sizeHint().width() > label.width() + kSlackPx || label.sizeHint().height() > label.height() + kSlackPx;
    const bool rich = label.textFormat() == Qt::RichText || (label.textFormat() == Qt::AutoText && Qt::mightBeRichText(label.text()));
    if (label.heightForWidth(label.width()) > label.height() + kSlackPx) return true;
    const QMargins margins = label.contentsMargins();
    const int room = label.width() - margins.left() - margins.right() - 2 * label.margin();
    if (!rich) return widestWord(label.text(), label.fontMetrics()) > room + kSlackPx;
    QTextDocument document;
    document.setDefaultFont(label.font());
    document.setDocumentMargin(0);
    document.setHtml(label.text());
    document.setTextWidth(room);
    return document.size().width() > room + kSlackPx;
}

QString cutText(const QWidget& widget) {
    if (const auto* label = qobject_cast<const QLabel*>(&widget); label && !label->text().isEmpty() && isCut(*label))
        return QStringLiteral("label: ") + plain(label->text()).left(160);
    if (const auto* button = qobject_cast<const QAbstractButton*>(&widget); button && !button->text().isEmpty()) {
        const QSize wanted = button->sizeHint();
        // A button may be flatter than it would like to be, as long as its letters fit.
        if (wanted.width() > button->width() + kSlackPx || button->fontMetrics().height() > button->height() + kSlackPx)
            return QStringLiteral("button: %1 (%2 of %3 x %4 of %5 pixels)").arg(button->text()).arg(button->width()).arg(wanted.width()).arg(button->height()).arg(wanted.height());
    }
    if (const auto* box = qobject_cast<const QComboBox*>(&widget)) {
        QStyleOptionComboBox option;
        option.initFrom(box);
        option.editable = box->isEditable();
        const QRect field = box->style()->subControlRect(QStyle::CC_ComboBox, &option, QStyle::SC_ComboBoxEditField, box);
        if (box->fontMetrics().horizontalAdvance(box->currentText()) > field.width() + kSlackPx && !box->property("mayBeCut").toBool())
            return QStringLiteral("box: %1 (%2 of %3 pixels)").arg(box->currentText()).arg(field.width()).arg(box->fontMetrics().horizontalAdvance(box->currentText()));
    }
    if (const auto* group = qobject_cast<const QGroupBox*>(&widget); group && group->minimumSizeHint().width() > group->width() + kSlackPx)
        return QStringLiteral("heading of a group: ") + group->title();
    if (const auto* line = qobject_cast<const QLineEdit*>(&widget)) {
        constexpr int kInnerMargins = 4 + 12; // Qt's own, and the style sheet's
        const QString text = line->text().isEmpty() ? line->placeholderText() : QString();
        if (line->fontMetrics().horizontalAdvance(text) + kInnerMargins > line->width() + kSlackPx)
            return QStringLiteral("placeholder: ") + text;
    }
    if (const auto* tabs = qobject_cast<const QTabBar*>(&widget)) {
        for (int i = 0; i < tabs->count(); ++i)
            if (tabs->isTabVisible(i) && !tabs->rect().adjusted(-kSlackPx, 0, kSlackPx, 0).contains(tabs->tabRect(i)))
                return QStringLiteral("tab: ") + tabs->tabText(i);
    }
    if (const auto* header = qobject_cast<const QHeaderView*>(&widget); header && header->orientation() == Qt::Horizontal && header->metaObject() == &QHeaderView::staticMetaObject) {
        const bool wraps = header->defaultAlignment() & static_cast<Qt::Alignment>(Qt::TextWordWrap);
        for (int i = 0; i < header->count() && header->model(); ++i) {
            if (header->isSectionHidden(i)) continue;
            const QString text = header->model()->headerData(i, Qt::Horizontal).toString();
            const QFontMetrics metrics = header->fontMetrics();
            const int width = wraps ? widestWord(text, metrics) : metrics.horizontalAdvance(text);
            QStyleOptionHeader option;
            option.initFrom(header);
            option.rect = QRect(0, 0, header->sectionSize(i), header->height());
            const QRect room = header->style()->subElementRect(QStyle::SE_HeaderLabel, &option, header);
            const int height = metrics.boundingRect(QRect(0, 0, room.width(), 10000), wraps ? Qt::TextWordWrap : 0, text).height();
            if (width > room.width() || height > header->height()) return QStringLiteral("heading of a column: ") + text;
        }
    }
    return {};
}

/// Cells whose words do not fit even where they wrap between words.
QStringList cutCells(const QAbstractItemView& view) {
    QStringList faults;
    if (!view.model()) return faults;
    for (int row = 0; row < view.model()->rowCount(); ++row)
        for (int column = 0; column < view.model()->columnCount(); ++column) {
            const QModelIndex at = view.model()->index(row, column);
            const QRect rect = view.visualRect(at);
            if (rect.isEmpty()) continue;
            const QString text = at.data().toString();
            if (widestWord(text, view.fontMetrics()) > rect.width() + kSlackPx) faults << QStringLiteral("cell: ") + text;
        }
    return faults;
}

/// Words that a document breaks in their middle, as it does where a column is narrower than they are.
QStringList brokenWords(const QTextDocument& document) {
    QStringList faults;
    for (QTextBlock block = document.begin(); block.isValid(); block = block.next())
        for (int i = 0; i + 1 < block.layout()->lineCount(); ++i) {
            const QTextLine line = block.layout()->lineAt(i);
            const int next = line.textStart() + line.textLength();
            const QString text = block.text();
            if (next > 0 && next < text.size() && text[next - 1].isLetterOrNumber() && text[next].isLetterOrNumber())
                faults << QStringLiteral("word broken in two: ") + text.mid(std::max(0, next - 20), 40);
        }
    return faults;
}

bool mayScrollSideways(const QWidget& area) {
    return area.property("scrollsSideways").toBool() || area.inherits("QPlainTextEdit");
}

/// Parts that Qt itself lays over each other or scrolls.
bool isQtsOwn(const QWidget& widget) {
    const QWidget* parent = widget.parentWidget();
    return qobject_cast<const QSplitterHandle*>(&widget) || qobject_cast<const QAbstractScrollArea*>(parent) ||
           (parent && qobject_cast<const QAbstractScrollArea*>(parent->parentWidget())) || qobject_cast<const QStackedWidget*>(parent) ||
           qobject_cast<const QTabBar*>(parent) || qobject_cast<const QComboBox*>(parent) || qobject_cast<const QLineEdit*>(parent) ||
           widget.isWindow() || widget.objectName().startsWith(QLatin1String("qt_"));
}

/// Shown, but for being scrolled away; a part of a window that is up.
bool isThere(const QWidget& widget, const QWidget& window) {
    return widget.isVisibleTo(&window) && (&widget == &window || !widget.isWindow());
}

QStringList placeFaults(const QWidget& widget, const QWidget& window) {
    QStringList faults;
    const QWidget* parent = widget.parentWidget();
    if (&widget == &window || !parent || isQtsOwn(widget) || widget.size().isEmpty()) return faults;
    if (!parent->rect().adjusted(-kSlackPx, -kSlackPx, kSlackPx, kSlackPx).contains(widget.geometry()))
        faults << nameOf(widget) + QStringLiteral(" is outside ") + nameOf(*parent);
    for (const QWidget* other : parent->findChildren<QWidget*>(Qt::FindDirectChildrenOnly)) {
        if (other <= &widget || !isThere(*other, window) || isQtsOwn(*other)) continue;
        const QRect common = other->geometry() & widget.geometry();
        if (common.width() > kSlackPx && common.height() > kSlackPx) faults << nameOf(widget) + QStringLiteral(" lies over ") + nameOf(*other);
    }
    return faults;
}

QString sidewaysFault(const QAbstractScrollArea& area) {
    if (mayScrollSideways(area)) return {};
    if (const auto* scroll = qobject_cast<const QScrollArea*>(&area)) {
        if (!scroll->widget() || scroll->widget()->width() <= scroll->viewport()->width() + kSlackPx) return {};
        return QStringLiteral("%1 holds %2 pixels in a width of %3: the widest is %4")
            .arg(nameOf(area)).arg(scroll->widget()->width()).arg(scroll->viewport()->width())
            .arg(scroll->widget()->minimumSizeHint().width());
    }
    if ((qobject_cast<const QAbstractItemView*>(&area) || qobject_cast<const QTextEdit*>(&area)) && area.horizontalScrollBar()->maximum() > 0)
        return QStringLiteral("%1 must be scrolled sideways by %2").arg(nameOf(area)).arg(area.horizontalScrollBar()->maximum());
    return {};
}

double luminance(const QColor& colour) {
    const auto linear = [](double c) { return c <= 0.03928 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4); };
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) + 0.0722 * linear(colour.blueF());
}

/// The part of the window that the widget covers, as it is painted with all that lies behind it.
QImage painted(QWidget& widget, const QRect& part) {
    QImage image((QSizeF(part.size()) * kPaintedScale).toSize(), QImage::Format_RGB32);
    image.setDevicePixelRatio(kPaintedScale);
    QWidget& window = *widget.window();
    window.render(&image, {}, QRegion(QRect(widget.mapTo(&window, part.topLeft()), part.size())));
    return image;
}

/// The commonest colour is what is behind; colours with a good share of the rest are letters.
QString contrastFault(const QImage& image) {
    std::map<QRgb, int> counts;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x)
            ++counts[image.pixel(x, y)];
    const auto behind = std::max_element(counts.begin(), counts.end(), [](const auto& a, const auto& b) { return a.second < b.second; })->first;
    const double rest = image.width() * image.height() - counts[behind];
    for (const auto& [colour, count] : counts) {
        if (colour == behind || count < kLeastShare * rest) continue;
        const double ratio = contrast(QColor(colour), QColor(behind));
        if (ratio < kLeastContrast) return QStringLiteral("%1 on %2: %3").arg(QColor(colour).name(), QColor(behind).name()).arg(ratio, 0, 'f', 2);
    }
    return {};
}

} // namespace

QStringList faultsOf(const QWidget& window) {
    QStringList faults;
    QList<const QWidget*> all{&window};
    for (const QWidget* widget : window.findChildren<QWidget*>())
        all << widget;
    for (const QWidget* widget : all) {
        if (!isThere(*widget, window)) continue;
        if (const QString cut = cutText(*widget); !cut.isEmpty()) faults << cut;
        faults << placeFaults(*widget, window);
        if (const auto* area = qobject_cast<const QAbstractScrollArea*>(widget))
            if (const QString sideways = sidewaysFault(*area); !sideways.isEmpty()) faults << sideways;
        if (const auto* view = qobject_cast<const QAbstractItemView*>(widget)) faults << cutCells(*view);
        if (const auto* text = qobject_cast<const QTextEdit*>(widget)) faults << brokenWords(*text->document());
    }
    faults.removeDuplicates();
    return faults;
}

QStringList contrastFaultsOf(QWidget& window) {
    QStringList faults;
    for (QLabel* label : window.findChildren<QLabel*>()) {
        if (!label->isVisibleTo(&window) || label->text().trimmed().size() < kLeastLetters) continue;
        const QRect seen = label->visibleRegion().boundingRect();
        if (seen.isEmpty()) continue; // scrolled away: the same colours are met elsewhere
        if (const QString fault = contrastFault(painted(*label, seen)); !fault.isEmpty())
            faults << QStringLiteral("%1 in “%2”").arg(fault, plain(label->text()).left(80));
    }
    return faults;
}

namespace {

/// A picture or plot of ours; labels, buttons, tables and the like are looked at by faultsOf().
bool paintsItself(const QWidget& widget) {
    if (widget.layout() || widget.inherits("QAbstractScrollArea") || widget.inherits("QTabWidget") || widget.inherits("QSplitter") || widget.inherits("QStackedWidget")) return false;
    return QLatin1String(widget.metaObject()->className()).startsWith(QLatin1String("gauge::app::")) || widget.testAttribute(Qt::WA_OpaquePaintEvent);
}

} // namespace

QStringList paintedFaultsOf(QWidget& window) {
    constexpr double kEdgePx = 1.0; // letters may touch the edge
    constexpr double kMostUnder = 0.2;  // of a letter: a corner touched
    const auto isHalo = [](const PaintedText& a, const PaintedText& b) { // the dark edge of letters on a picture
        return a.text == b.text && (a.box.center() - b.box.center()).manhattanLength() <= 2.0 * kEdgePx + 0.1;
    };
    QStringList faults;
    for (QWidget* view : window.findChildren<QWidget*>()) {
        if (!view->isVisibleTo(&window) || view->visibleRegion().isEmpty() || !paintsItself(*view)) continue;
        const QList<PaintedText> texts = paintedTexts(*view, Children::LeftOut);
        const QRectF room = QRectF(view->rect()).adjusted(-kEdgePx, -kEdgePx, kEdgePx, kEdgePx);
        for (qsizetype i = 0; i < texts.size(); ++i) {
            const PaintedText& text = texts[i];
            if (!text.seen.adjusted(-kEdgePx, -kEdgePx, kEdgePx, kEdgePx).contains(text.box))
                faults << QStringLiteral("%1 cuts off a part of: %2").arg(nameOf(*view), text.text);
            if (text.under > kMostUnder)
                faults << QStringLiteral("%1 paints something over %2 % of a letter of: %3").arg(nameOf(*view)).arg(100.0 * text.under, 0, 'f', 0).arg(text.text);
            if (!room.contains(text.box)) faults << QStringLiteral("%1 paints over its edge: %2").arg(nameOf(*view), text.text);
            if (text.pixelSize < std::lround(app::kSmallestLabelPx * app::labelScale())) faults << QStringLiteral("%1 paints in %2 pixels: %3").arg(nameOf(*view)).arg(text.pixelSize).arg(text.text);
            for (qsizetype j = i + 1; j < texts.size(); ++j) {
                const QRectF common = texts[j].box & text.box;
                if (common.width() > 2 * kEdgePx && common.height() > 2 * kEdgePx && !isHalo(text, texts[j]))
                    faults << QStringLiteral("%1 paints “%2” over “%3”").arg(nameOf(*view), texts[j].text, text.text);
            }
        }
    }
    faults.removeDuplicates();
    return faults;
}

double contrast(const QColor& a, const QColor& b) {
    const double one = luminance(a), two = luminance(b);
    return (std::max(one, two) + 0.05) / (std::min(one, two) + 0.05);
}

std::string said(const QStringList& faults) {
    return faults.join(QStringLiteral("\n")).toStdString();
}

std::vector<Look> everyLook() {
    std::vector<Look> looks;
    for (const char* language : {"en", "de", "fr"}) {
        for (const app::Theme theme : {app::Theme::Dark, app::Theme::Light})
            looks.push_back({language, theme, 1.0});
        looks.push_back({language, app::Theme::Dark, app::kLargestTextScale});
    }
    return looks;
}

void PrintTo(const Look& look, std::ostream* out) {
    *out << look.language << (look.theme == app::Theme::Dark ? "Dark" : "Light") << (look.textScale > 1.0 ? "LargeLetters" : "");
}

std::string nameOfLook(const ::testing::TestParamInfo<Look>& look) {
    std::ostringstream name;
    PrintTo(look.param, &name);
    return name.str();
}

void LookTest::SetUp() {
    app::setTextScale(GetParam().textScale);
    app::applyTheme(*qApp, GetParam().theme);
    app::useLanguage(*qApp, QString::fromLatin1(GetParam().language));
}

void LookTest::TearDown() {
    app::useLanguage(*qApp, QStringLiteral("en"));
    app::setTextScale(1.0);
    app::applyTheme(*qApp, app::Theme::Dark);
}

} // namespace gauge::layout
