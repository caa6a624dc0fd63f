#include "app/panels/message_line.h"

#include "app/drawing/palette.h"
#include "app/models/recent_cases.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QToolButton>

namespace gauge::app {
namespace {

using Kind = Message::Kind;

/// Sign and colour of a kind: the sign tells it apart without the colour.
std::pair<QString, QColor> signOf(Kind kind) {
    switch (kind) {
    case Kind::Error:
        return {QStringLiteral("✕"), tone::error};
    case Kind::Warning:
        return {QStringLiteral("!"), tone::warning};
    case Kind::Working:
        return {QStringLiteral("…"), tone::soft};
    case Kind::Information:
        return {QStringLiteral("i"), tone::soft};
    case Kind::Nothing:
        break;
    }
    return {QString(), tone::soft};
}

/// Only where it differs: a style sheet is costly to take up.
void takeUpStyle(QWidget& widget, const QString& style) {
    if (widget.styleSheet() != style) widget.setStyleSheet(style);
}

/// Keeps its place while it is hidden, so that the line neither wraps its text anew nor moves what stands above it.
void keepPlace(QWidget& widget) {
    QSizePolicy policy = widget.sizePolicy();
    policy.setRetainSizeWhenHidden(true);
    widget.setSizePolicy(policy);
}

} // namespace

MessageLine::MessageLine(Session& session, QWidget* parent)
    : QFrame(parent), m_session(session), m_sign(new QLabel(this)), m_text(new QLabel(this)),
      m_work(new QLabel(this)), m_progress(new QProgressBar(this)), m_cancel(new QToolButton(this)) {
    setObjectName("messageLine");
    m_work->setObjectName("soft");
    m_text->setObjectName("messageText");
    m_text->setWordWrap(true);
    m_text->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_sign->setFixedWidth(18);
    m_sign->setAlignment(Qt::AlignCenter);
    m_progress->setRange(0, 1000);
    m_progress->setTextVisible(false);
    m_progress->setFixedSize(200, 8);
    m_cancel->setText(tr("Cancel"));
    m_cancel->setToolTip(tr("Stop loading or measuring"));

    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(12, 5, 12, 5);
    layout->setSpacing(10);
    layout->addWidget(m_sign);
    layout->addWidget(m_text, 1);
    layout->addWidget(m_work);
    layout->addWidget(m_progress);
    layout->addWidget(m_cancel);
    setMinimumHeight(36);
    for (QWidget* part : std::initializer_list<QWidget*>{m_work, m_progress, m_cancel})
        keepPlace(*part);

    connect(m_cancel, &QToolButton::clicked, &session, &Session::cancel);
    connect(&session, &Session::messageChanged, this, &MessageLine::refresh);
    connect(&session, &Session::workChanged, this, [this] {
        m_progress->setValue(0);
        refresh();
    });
    connect(&session, &Session::progressed, this,
            [this](double share) { m_progress->setValue(static_cast<int>(1000 * share)); });
    refresh();
}

QString MessageLine::text() const {
    return m_text->text();
}

void MessageLine::setNamesHidden(bool hidden) {
    m_namesHidden = hidden;
    refresh();
}

void MessageLine::refresh() {
    const bool working = m_session.isLoading() || m_session.isMeasuringAppendage();
    Message message = m_session.message();
    if (m_session.isMeasuringAppendage() && message.kind != Kind::Information)
        message = {Kind::Working, tr("Measuring the appendage …")};
    if (message.kind == Kind::Nothing) message.text = tr("F1 shows what the mouse and the keys do.");
    const auto [sign, colour] = signOf(message.kind);
    m_sign->setText(sign);
    if (m_namesHidden)
        message.text = withoutPaths(message.text, {m_session.folderBeingOpened(), m_session.document().path(),
                                                   m_session.document().imagesFolder()});
    m_text->setText(message.text);
    const QString style = QStringLiteral("color: %1;").arg(colour.name());
    takeUpStyle(*m_sign, style + QStringLiteral("font-weight: bold;"));
    takeUpStyle(*m_text, message.kind == Kind::Error || message.kind == Kind::Warning ? style : QString());
    m_work->setText(m_session.isLoading() ? tr("Loading") : tr("Measuring"));
    m_work->setVisible(working);
    m_progress->setVisible(working);
    m_cancel->setVisible(working);
}

} // namespace gauge::app
