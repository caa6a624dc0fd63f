#include "app/panels/editor_parts.h"

#include "app/format/core_sentences.h"

#include <QHBoxLayout>
#include <QScrollArea>
#include <QStringList>
#include <QVBoxLayout>
#include <algorithm>

namespace gauge::app {

QLabel* wrappedLabel(const QString& text, const char* name) {
    auto* label = new QLabel(text);
    label->setObjectName(QString::fromLatin1(name));
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    return label;
}

QWidget* scrolled(QWidget* inner) {
    if (!inner->layout()) { // words that change while nobody sees them: only a layout tells the area of it when it is shown
        auto* holder = new QWidget;
        auto* column = new QVBoxLayout(holder);
        column->setContentsMargins(0, 0, 0, 0);
        column->addWidget(inner);
        inner = holder;
    }
    inner->setAutoFillBackground(true);
    auto* scroll = new QScrollArea;
    scroll->setWidget(inner);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    return scroll;
}

QString paragraphs(const std::vector<core::Notice>& notices) {
    QStringList lines;
    for (const core::Notice& n : notices)
        lines << sentence(n);
    return lines.join(QStringLiteral("\n\n"));
}

EntryPicker::EntryPicker(const QString& accessibleName, const QString& add, const QString& remove, QWidget* parent)
    : QWidget(parent), m_box(new QComboBox(this)), m_remove(new QToolButton(this)) {
    m_box->setAccessibleName(accessibleName);
    m_box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_box->setMinimumContentsLength(20);
    auto* addButton = new QToolButton(this);
    addButton->setText(add);
    m_remove->setText(remove);
    // The box alone: an entry is told by its moment, which may be long.
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_box);
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(addButton);
    buttons->addWidget(m_remove);
    buttons->addStretch(1);
    layout->addLayout(buttons);
    connect(m_box, &QComboBox::activated, this, &EntryPicker::picked);
    connect(addButton, &QToolButton::clicked, this, &EntryPicker::addRequested);
    connect(m_remove, &QToolButton::clicked, this, &EntryPicker::removeRequested);
}

void EntryPicker::setEntries(const std::vector<std::pair<std::string, QString>>& entries) {
    const std::string now = m_wanted.empty() ? current() : m_wanted;
    m_ids.clear();
    const bool blocked = m_box->blockSignals(true);
    m_box->clear();
    for (const auto& [id, words] : entries) {
        m_ids.push_back(id);
        m_box->addItem(words);
    }
    const auto found = std::find(m_ids.begin(), m_ids.end(), now);
    m_box->setCurrentIndex(found == m_ids.end() ? static_cast<int>(m_ids.size()) - 1
                                                : static_cast<int>(found - m_ids.begin()));
    if (found != m_ids.end()) m_wanted.clear();
    m_box->blockSignals(blocked);
    m_box->setEnabled(!m_ids.empty());
    m_remove->setEnabled(!m_ids.empty());
}

std::string EntryPicker::current() const {
    const int at = m_box->currentIndex();
    return at < 0 || at >= static_cast<int>(m_ids.size()) ? std::string() : m_ids[static_cast<std::size_t>(at)];
}

void EntryPicker::choose(const std::string& id) {
    m_wanted = id;
    const auto found = std::find(m_ids.begin(), m_ids.end(), id);
    if (found == m_ids.end()) return;
    m_wanted.clear();
    m_box->setCurrentIndex(static_cast<int>(found - m_ids.begin()));
    emit picked();
}

} // namespace gauge::app
