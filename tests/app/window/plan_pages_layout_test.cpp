// The pages of projection, septum and fluoroscopy, also where they are scrolled: nothing is wider than the part that scrolls it, no word
// is cut, in every language and theme, in windows of 1440 x 900 and 1280 x 800 pixels, with and without what they show. Scales other
// than 1 are those with which the process is started (CMakeLists.txt).
#include "app/format/language.h"
#include "app/window/main_window.h"
#include "app/window/page_shelf.h"
#include "app/window/theme.h"
#include "tests/app/support/synthetic_session.h"

#include <QAbstractButton>
#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QScrollArea>
#include <QStyleOptionComboBox>
#include <QTabWidget>
#include <QTableWidget>
#include <gtest/gtest.h>

using namespace gauge;
using namespace gauge::app;

namespace {

constexpr int kSlackPx = 1; // rounding of layouts at fractional scales
constexpr QSize kWindows[] = {{1440, 900}, {1280, 800}};
constexpr Page kPages[] = {Page::Projection, Page::Septum, Page::Fluoroscopy};

int widestWord(const QString& text, const QFontMetrics& metrics) {
    int widest = 0;
    for (const QString& word : text.split(QLatin1Char(' '), Qt::SkipEmptyParts))
        widest = std::max(widest, metrics.horizontalAdvance(word));
    return widest;
}

QString cutWords(const QWidget& part) {
    if (const auto* label = qobject_cast<const QLabel*>(&part); label && !label->text().isEmpty()) {
        const bool cut = label->wordWrap() ? label->heightForWidth(label->width()) > label->height() + kSlackPx ||
                                                 label->minimumSizeHint().width() > label->width() + kSlackPx
                                           : label->sizeHint().width() > label->width() + kSlackPx;
        if (cut) return QStringLiteral("label: ") + label->text();
    }
    if (const auto* button = qobject_cast<const QAbstractButton*>(&part); button && !button->text().isEmpty())
        if (button->sizeHint().width() > button->width() + kSlackPx) return QStringLiteral("button: ") + button->text();
    if (const auto* box = qobject_cast<const QComboBox*>(&part); box && !box->property("mayBeCut").toBool()) {
        QStyleOptionComboBox option;
        option.initFrom(box);
        const QRect field = box->style()->subControlRect(QStyle::CC_ComboBox, &option, QStyle::SC_ComboBoxEditField, box);
        if (box->fontMetrics().horizontalAdvance(box->currentText()) > field.width() + kSlackPx) return QStringLiteral("box: ") + box->currentText();
    }
    return {};
}

/// Of all parts of a page, scrolled out of sight or not.
QStringList scrolledFaults(const QWidget& page) {
    QStringList faults;
    for (const QScrollArea* area : page.findChildren<QScrollArea*>())
        if (area->isVisibleTo(&page) && area->widget() &&
            std::max(area->widget()->width(), area->widget()->minimumSizeHint().width()) > area->viewport()->width() + kSlackPx)
            faults << QStringLiteral("%1 holds %2 pixels in a width of %3")
                          .arg(area->accessibleName()).arg(area->widget()->minimumSizeHint().width()).arg(area->viewport()->width());
    for (const QTableWidget* table : page.findChildren<QTableWidget*>()) {
        if (!table->isVisibleTo(&page)) continue;
        for (int column = 0; column < table->columnCount(); ++column)
            for (int row = 0; row < table->rowCount(); ++row)
                if (const auto* item = table->item(row, column); item && widestWord(item->text(), table->fontMetrics()) > table->columnWidth(column))
                    faults << QStringLiteral("cell: ") + item->text();
    }
    for (const QWidget* part : page.findChildren<QWidget*>()) {
        if (!part->isVisibleTo(&page) || part->objectName().startsWith(QLatin1String("qt_"))) continue;
        if (const QString cut = cutWords(*part); !cut.isEmpty()) faults << cut;
    }
    return faults;
}

class PlanPagesLayout : public ::testing::TestWithParam<std::tuple<const char*, Theme>> {
protected:
    void SetUp() override {
        applyTheme(*qApp, std::get<Theme>(GetParam()));
        useLanguage(*qApp, QString::fromLatin1(std::get<const char*>(GetParam())));
    }
    void TearDown() override {
        useLanguage(*qApp, QStringLiteral("en"));
        applyTheme(*qApp, Theme::Dark);
    }
    /// Each page, and each of its tabs, in each window.
    static void lookAtAll(MainWindow& window, const std::string& what) {
        for (const QSize& size : kWindows) {
            window.resize(size);
            for (const Page page : kPages) {
                window.state().setPage(page);
                QWidget& shown = *window.shelf().entry(page)->widget;
                auto* tabs = shown.findChild<QTabWidget*>();
                for (int tab = 0; tab < (tabs ? tabs->count() : 1); ++tab) {
                    if (tabs) tabs->setCurrentIndex(tab);
                    QCoreApplication::processEvents();
                    const QStringList faults = scrolledFaults(shown);
                    EXPECT_TRUE(faults.isEmpty()) << what << ", " << window.shelf().entry(page)->title.toStdString() << ", tab " << tab << ", "
                                                  << size.width() << " pixels:\n" << faults.join(QStringLiteral("\n")).toStdString();
                }
            }
        }
    }
};

} // namespace

TEST_P(PlanPagesLayout, HoldsWithoutACase) {
    MainWindow window;
    window.show();
    window.beginWithoutImages();
    lookAtAll(window, "nothing open");
}

TEST_P(PlanPagesLayout, HoldsWithAMeasuredAppendage) {
    MainWindow window;
    window.show();
    fixture::openAndMeasure(window.session());
    ASSERT_TRUE(fixture::waitUntil([&] { return !window.isWorking(); }));
    lookAtAll(window, "measured");
}

INSTANTIATE_TEST_SUITE_P(Languages, PlanPagesLayout,
                         ::testing::Combine(::testing::Values("en", "de", "fr"), ::testing::Values(Theme::Dark, Theme::Light)), [](const auto& one) {
                             return std::string(std::get<0>(one.param)) + (std::get<1>(one.param) == Theme::Dark ? "Dark" : "Light");
                         });
