#include "app/panels/seat_panel.h"

#include "app/drawing/palette.h"
#include "app/format/core_sentences.h"
#include "app/format/quantity.h"
#include "app/format/rich_text.h"
#include "app/panels/editor_parts.h"
#include "core/release/planned_seen.h"

#include <QAction>
#include <QClipboard>
#include <QGuiApplication>
#include <QLabel>
#include <QTextDocument>
#include <QToolButton>
#include <QVBoxLayout>

namespace gauge::app {
namespace {

QString bold(const QString& text) {
    return QStringLiteral("<p><b>%1</b></p>").arg(text.toHtmlEscaped());
}

QString warningParagraph(const QString& text) {
    return QStringLiteral("<p style=\"color:%1\">%2 %3</p>").arg(tone::warning.name(), QString(QChar(0x26A0)), text.toHtmlEscaped());
}

} // namespace

SeatPanel::SeatPanel(Answers& answers, QWidget* parent)
    : QWidget(parent), m_answers(answers), m_model(this), m_words(new QLabel), m_copy(new QAction(tr("Copy the seats as a table"), this)) {
    setAutoFillBackground(true);
    m_words->setObjectName("seats");
    m_words->setWordWrap(true);
    m_words->setTextFormat(Qt::RichText);
    m_words->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    m_words->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    m_copy->setToolTip(tr("Copy reach, cover, gaps and clearances of all sizes for a spreadsheet"));
    connect(m_copy, &QAction::triggered, this, [this] { QGuiApplication::clipboard()->setText(plainSpaces(m_model.asText())); });
    auto* copy = new QToolButton(this);
    copy->setDefaultAction(m_copy);
    copy->setFocusPolicy(Qt::TabFocus);

    auto* inner = new QWidget;
    inner->setAutoFillBackground(true);
    auto* layout = new QVBoxLayout(inner);
    layout->setContentsMargins(10, 4, 10, 8);
    layout->addWidget(m_words);
    layout->addWidget(copy, 0, Qt::AlignLeft);
    layout->addStretch(1);
    auto* scroll = scrolled(inner);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(scroll);

    connect(&answers.seats(), &Seats::changed, this, &SeatPanel::refresh);
    connect(&answers, &Answers::sizingChanged, this, &SeatPanel::refresh);
    refresh();
}

/// The chosen size, else the one with the greatest fit chance, else none.
QString SeatPanel::sizeWords() const {
    const core::Seat* seat = m_answers.seats().chosen();
    QString title = seat ? tr("Size %1, chosen").arg(QString::fromStdString(seat->name)) : QString();
    if (!seat && m_answers.sizing() && m_answers.sizing()->leading) {
        seat = m_answers.seats().seatOf(m_answers.sizing()->sizes[*m_answers.sizing()->leading].name);
        if (seat) title = tr("Size %1, greatest fit chance").arg(QString::fromStdString(seat->name));
    }
    if (!seat) return {};
    QString text = bold(title);
    for (const core::Notice& warning : seat->warnings)
        text += warningParagraph(sentence(warning));
    for (const core::Notice& fact : seat->facts)
        text += paragraph(sentence(fact));
    // The last look from the deployment on that the plan says something of.
    const auto& looks = m_answers.releaseLooks();
    for (auto look = looks.rbegin(); look != looks.rend(); ++look) {
        const auto seen = core::plannedSeen(*seat, look->state);
        for (const core::PlannedSeen& one : seen)
            text += one.differ ? warningParagraph(sentence(one.sentence)) : paragraph(sentence(one.sentence));
        if (!seen.empty()) break;
    }
    return text;
}

/// The size above its values: a column for it would make the table wider than the panel.
QString SeatPanel::tableWords() const {
    QString text = QStringLiteral("<table width=\"100%\" cellspacing=\"0\" cellpadding=\"4\"><tr>");
    int columns = 0;
    for (int column = SeatModel::Size + 1; column < m_model.columnCount(); ++column)
        if (m_model.isUsed(column)) {
            ++columns;
            text += QStringLiteral("<th align=\"left\" style=\"font-weight:normal;color:%1\">%2</th>")
                        .arg(tone::soft.name(), m_model.headerData(column, Qt::Horizontal, Qt::DisplayRole).toString().toHtmlEscaped());
        }
    text += QStringLiteral("</tr>");
    for (int row = 0; row < m_model.rowCount(); ++row) {
        const QModelIndex size = m_model.index(row, SeatModel::Size);
        const QString begin = QStringLiteral("<tr%1>").arg(
            size.data(SeatModel::IsChosenRole).toBool() ? QStringLiteral(" bgcolor=\"%1\"").arg(tone::raised.name()) : QString());
        text += begin + QStringLiteral("<td colspan=\"%1\" style=\"border-top:1px solid %2\"><b>%3</b></td></tr>")
                            .arg(QString::number(columns), tone::border.name(), cellHtml(size.data().toString()));
        text += begin;
        for (int column = SeatModel::Size + 1; column < m_model.columnCount(); ++column) {
            if (!m_model.isUsed(column)) continue;
            const QModelIndex cell = m_model.index(row, column);
            const QString words = cellHtml(cell.data().toString());
            const bool warning = cell.data(SeatModel::IsWarningRole).toBool();
            text += QStringLiteral("<td valign=\"top\">%1</td>")
                        .arg(warning ? QStringLiteral("<span style=\"color:%1\">%2 %3</span>")
                                           .arg(tone::warning.name(), QString(QChar(0x26A0)), words)
                                     : words);
        }
        text += QStringLiteral("</tr>");
    }
    return text + QStringLiteral("</table>");
}

void SeatPanel::refresh() {
    const Seats& seats = m_answers.seats();
    m_model.setAnswers(m_answers);
    m_copy->setEnabled(seats.answer());
    QString text;
    if (const core::SeatAnswer* answer = seats.answer()) {
        text = sizeWords() + bold(tr("All sizes")) + tableWords() + bold(tr("What this rests on"));
        for (const core::Notice& notice : answer->notices)
            text += paragraph(sentence(notice));
        if (const double wider = seats.question().widenedByMm; wider != 0.0)
            text += paragraph(wider > 0.0 ? tr("At the decision pressure the wall is taken to lie farther out than on the CT: diameters are "
                                               "%1 larger.")
                                                .arg(quantity(wider, Unit::Millimetre))
                                          : tr("At the decision pressure the wall is taken to lie farther in than on the CT: diameters are "
                                               "%1 smaller.")
                                                .arg(quantity(-wider, Unit::Millimetre)));
        text += paragraph(tr("A model of geometry: a straight body with the chart's dimensions slides into the blood that was measured and takes the "
                             "form of its wall, as far as the chart's compression allows by the chart's own measure. It knows no force and no "
                             "turning on the way."));
    } else if (!seats.problem().isEmpty()) {
        text = paragraph(seats.problem());
    } else if (!m_answers.chart()) {
        text = paragraph(m_answers.missing().isEmpty() ? QString() : m_answers.missing().front());
    } else {
        text = paragraph(tr("The sizes are being seated …"));
    }
    m_words->setText(text);
}

QString SeatPanel::text() const {
    QTextDocument document;
    document.setHtml(m_words->text());
    return document.toPlainText();
}

} // namespace gauge::app
