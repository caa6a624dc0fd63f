#include "app/panels/card_panel.h"

#include "app/drawing/palette.h"
#include "app/format/core_sentences.h"
#include "app/format/decision_words.h"
#include "app/format/quantity.h"
#include "app/format/rich_text.h"
#include "app/format/sizing_sentences.h"
#include "app/format/terms.h"
#include "app/format/words.h"

#include <QAction>
#include <QClipboard>
#include <QFileDialog>
#include <QFileInfo>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QPageSize>
#include <QPdfWriter>
#include <QTextBrowser>
#include <QTextDocument>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>
#include <functional>
#include <utility>
#include <vector>

namespace gauge::app {
namespace {

QString mm(double value) {
    return quantity(value, Unit::Millimetre);
}

/// "19.8 mm" above "18.1 to 21.6".
QString readingCell(const core::ExpectedReading& reading) {
    return QStringLiteral("<td align='right'><b>%1</b><br><small>%2</small></td>")
        .arg(mm(reading.medianMm),
             CardPanel::tr("%1 to %2").arg(mm(reading.interval95Mm.lo), mm(reading.interval95Mm.hi)));
}

QString headCell(const QString& text) {
    return QStringLiteral("<th align='right'><small>%1</small></th>").arg(text.toHtmlEscaped());
}

/// A reading to expect, by its name.
using CardColumn = std::pair<QString, std::function<core::ExpectedReading(const core::CardLine&)>>;

QString tableOf(const core::RoomCard& card, const std::vector<CardColumn>& columns) {
    // At 100 % Qt's tables end a pixel beyond the edge.
    QString html = QStringLiteral("<table cellspacing='0' cellpadding='3' width='99%'><tr>") + headCell(CardPanel::tr("Pressure"));
    for (const auto& [name, readingOf] : columns)
        html += headCell(name);
    html += QStringLiteral("</tr>");
    for (const core::CardLine& line : card.lines) {
        html += QStringLiteral("<tr><td align='right'><b>%1</b></td>").arg(pressureWords(line.pressureMmHg));
        for (const auto& [name, readingOf] : columns)
            html += readingCell(readingOf(line));
        html += QStringLiteral("</tr>");
    }
    return html + QStringLiteral("</table>");
}

/// What is derived, then the echo views, in tables of at most `most` readings: one table would be wider than the panel.
QString tables(const core::RoomCard& card, std::size_t most) {
    using core::CardLine;
    std::vector<CardColumn> columns{{CardPanel::tr("Width itself"), [](const CardLine& line) { return line.width; }},
                                    {CardPanel::tr("2D echo, ellipse"), [](const CardLine& line) { return line.echo2d; }},
                                    {CardPanel::tr("3D echo"), [](const CardLine& line) { return line.echo3d; }},
                                    {CardPanel::tr("Fluoroscopy"), [](const CardLine& line) { return line.fluoroscopy; }}};
    for (const auto& [angle, reading] : card.lines.front().echoByAngle)
        columns.emplace_back(CardPanel::tr("echo at %1°").arg(angle), [deg = angle](const CardLine& line) { return line.echoByAngle.at(deg); });
    QStringList html;
    for (std::size_t from = 0; from < columns.size(); from += most) {
        const auto begin = columns.begin() + static_cast<std::ptrdiff_t>(from);
        html << tableOf(card, {begin, begin + static_cast<std::ptrdiff_t>(std::min(most, columns.size() - from))});
    }
    return html.join(QStringLiteral("<p></p>"));
}

QString overturning(const core::RoomCard& card) {
    if (card.overturning.empty())
        return paragraph(CardPanel::tr("No reading that may be expected would make another size fit better."));
    QString html;
    for (const core::Overturning& o : card.overturning) {
        const QString limit = o.above ? CardPanel::tr("above %1").arg(mm(o.readingMm))
                                      : CardPanel::tr("below %1").arg(mm(o.readingMm));
        html += paragraph(CardPanel::tr("A reading by %1 at %2 %3 overturns the plan: size %4 would then have the greatest fit "
                                        "chance (chance of such a reading: %5).")
                              .arg(modalityName(card.overturningModality), pressureWords(card.overturningPressureMmHg), limit,
                                   QString::fromStdString(o.otherSize), chanceWords(o.chance)));
    }
    return html;
}

QString style(bool large, const QColor& text) {
    return QStringLiteral("<style>body{font-size:%1px;color:%2} th{font-weight:600} small{font-size:%3px}</style>")
        .arg(QString::number(large ? 20 : 12), text.name(), QString::number(large ? 16 : 11));
}

} // namespace

QString cardHtml(const Answers& answers, bool large) {
    const core::SizingAnswer* answer = answers.sizing();
    if (!answer) return style(large, tone::text) + paragraph(answers.missing().join(QLatin1Char(' ')));
    if (!answer->leading || answer->card.lines.empty())
        return style(large, tone::text) + paragraph(leadingSentence(*answer));
    const core::SizeFit* chosen = answers.chosenSize();
    QString html = style(large, tone::text) +
                   QStringLiteral("<h3>%1</h3>").arg(CardPanel::tr("Card for the room").toHtmlEscaped());
    html += paragraph(chosen ? CardPanel::tr("Chosen: size %1, fit chance %2.")
                                   .arg(QString::fromStdString(chosen->name), chanceWords(chosen->fitChance))
                             : CardPanel::tr("No size is chosen yet."));
    html += paragraph(leadingSentence(*answer));
    html += paragraph(CardPanel::tr("Readings to expect of the %1, with the interval that holds 95 of 100 readings:")
                          .arg(quantityName(answer->card.quantity)));
    constexpr std::size_t kReadings = 4, kLargeReadings = 2; // side by side
    html += tables(answer->card, large ? kLargeReadings : kReadings) + overturning(answer->card);
    for (const core::Notice& n : answer->warnings)
        html += paragraph(sentence(n));
    for (const QString& caution : cautionParagraphs())
        html += QStringLiteral("<p><small>%1</small></p>").arg(caution.toHtmlEscaped());
    return html;
}

CardPanel::CardPanel(Answers& answers, QWidget* parent) : QWidget(parent), m_answers(answers), m_text(new QTextBrowser(this)) {
    setAutoFillBackground(true);
    m_text->setAccessibleName(tr("Card for the room"));
    m_text->setWordWrapMode(QTextOption::WordWrap); // columns are as wide as their words
    m_copy = new QAction(tr("Copy card"), this);
    m_copy->setToolTip(tr("Copy the card as plain text"));
    connect(m_copy, &QAction::triggered, this, [this] { QGuiApplication::clipboard()->setText(m_text->toPlainText()); });
    m_save = new QAction(tr("Card as PDF …"), this);
    m_save->setToolTip(tr("Write the card on one page, to print it"));
    connect(m_save, &QAction::triggered, this, [this] {
        const QString path =
            QFileDialog::getSaveFileName(this, tr("Card for the room as PDF"), tr("card.pdf"), tr("PDF (*.pdf)"));
        if (!path.isEmpty()) savePdf(path);
    });
    m_large = new QAction(tr("Large type"), this);
    m_large->setCheckable(true);
    m_large->setToolTip(tr("Show the card in type to be read across the room"));
    connect(m_large, &QAction::toggled, this, &CardPanel::refresh);
    auto* buttons = new QHBoxLayout;
    buttons->setContentsMargins(8, 6, 8, 0);
    for (QAction* action : {m_large, m_copy, m_save}) {
        auto* button = new QToolButton(this);
        button->setDefaultAction(action);
        button->setFocusPolicy(Qt::TabFocus);
        buttons->addWidget(button);
    }
    buttons->addStretch(1);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addLayout(buttons);
    layout->addWidget(m_text, 1);
    connect(&answers, &Answers::sizingChanged, this, &CardPanel::refresh);
    refresh();
}

bool CardPanel::savePdf(const QString& path) {
    const Theme shown = theme();
    QString html;
    { // paper is light
        setTheme(Theme::Light);
        html = cardHtml(m_answers, false);
        setTheme(shown);
    }
    QPdfWriter writer(path);
    writer.setPageSize(QPageSize(QPageSize::A4));
    writer.setPageMargins(QMarginsF(15, 15, 15, 15), QPageLayout::Millimeter);
    writer.setTitle(tr("Card for the room"));
    QTextDocument page;
    page.setDefaultFont(font());
    page.setHtml(html);
    page.print(&writer);
    const bool written = QFileInfo(path).size() > 0;
    m_answers.session().say(written ? Message::Kind::Information : Message::Kind::Error,
                            written ? tr("The card was written to %1.").arg(path)
                                    : tr("The card could not be written to %1: choose a folder that can be written to.")
                                          .arg(path));
    return written;
}

void CardPanel::refresh() {
    m_text->setHtml(cardHtml(m_answers, m_large->isChecked()));
    const core::SizingAnswer* answer = m_answers.sizing();
    const bool has = answer && answer->leading && !answer->card.lines.empty();
    m_copy->setEnabled(has);
    m_save->setEnabled(has);
}

void CardPanel::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::StyleChange) refresh();
}

} // namespace gauge::app
