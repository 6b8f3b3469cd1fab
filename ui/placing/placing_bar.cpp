#include "ui/placing/placing_bar.h"

#include "core/book/container_numbers.h"
#include "ui/words/phrase_words.h"

#include <QAccessible>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>

namespace warmbench::ui {

PlacingBar::PlacingBar(PlacingHand& hand, QWidget* parent)
    : QFrame(parent), m_hand(hand), m_title(new QLabel(this)), m_words(new QLabel(this)),
      m_containersLabel(new QLabel(tr("&Containers"), this)), m_containers(new QLineEdit(this)),
      m_turn(new QPushButton(tr("Turn (T)"), this)), m_place(new QPushButton(this)),
      m_back(new QPushButton(this)) {
    setObjectName(QStringLiteral("placingBar"));
    setAccessibleName(tr("Placing by hand"));
    m_title->setObjectName(QStringLiteral("placingTitle"));
    m_words->setObjectName(QStringLiteral("placingWords"));
    m_words->setWordWrap(true);
    m_words->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    m_title->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    m_containers->setObjectName(QStringLiteral("placingContainers"));
    m_containers->setToolTip(tr("Which are moved, such as 1-4, 7"));
    m_containers->setMaximumWidth(140);
    m_containersLabel->setBuddy(m_containers);
    m_turn->setObjectName(QStringLiteral("placingTurn"));
    m_place->setObjectName(QStringLiteral("placingPlace"));
    m_place->setProperty("primary", true);
    m_back->setObjectName(QStringLiteral("placingBack"));
    auto* head = new QHBoxLayout;
    head->setSpacing(8);
    head->addWidget(m_title, 1);
    for (QWidget* widget :
         {static_cast<QWidget*>(m_containersLabel), static_cast<QWidget*>(m_containers),
          static_cast<QWidget*>(m_turn), static_cast<QWidget*>(m_place), static_cast<QWidget*>(m_back)})
        head->addWidget(widget);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(16, 4, 16, 4);
    column->setSpacing(4);
    column->addLayout(head);
    column->addWidget(m_words);
    connect(m_containers, &QLineEdit::editingFinished, this, &PlacingBar::readContainers);
    connect(m_containers, &QLineEdit::returnPressed, this, &PlacingBar::done);
    connect(m_turn, &QPushButton::clicked, this, [this] {
        m_hand.turn();
        Q_EMIT done();
    });
    connect(m_place, &QPushButton::clicked, this, [this] {
        if (m_hand.state() == PlacingHand::State::Asking)
            m_hand.answer(true);
        else
            m_hand.putDown();
        Q_EMIT done();
    });
    connect(m_back, &QPushButton::clicked, this, [this] {
        if (m_hand.state() == PlacingHand::State::Asking)
            m_hand.answer(false);
        else
            m_hand.putBack();
        Q_EMIT done();
    });
    connect(&m_hand, &PlacingHand::heldChanged, this, [this] {
        showContainers();
        refresh();
    });
    connect(&m_hand, &PlacingHand::aimChanged, this, &PlacingBar::refresh);
    refresh();
}

void PlacingBar::setType(const TypeSizes& type) {
    m_title->setFont(type.strong);
    m_words->setFont(type.quiet);
    // Two lines at least, so that nothing jumps while the aim moves.
    m_words->setMinimumHeight(2 * QFontMetrics(type.quiet).lineSpacing());
    m_words->setAlignment(Qt::AlignLeft | Qt::AlignTop);
}

void PlacingBar::showContainers() {
    if (!m_hand.isActive()) return;
    const QSignalBlocker quiet(m_containers);
    m_containers->setText(text(containerNumbers(m_hand.suitability()->carried().containers)));
}

void PlacingBar::readContainers() {
    if (!m_hand.isActive()) return;
    const auto numbers = readContainerNumbers(m_containers->text().toStdString());
    if (numbers && *numbers == m_hand.suitability()->carried().containers) return;
    const Outcome refusal = numbers ? m_hand.takeInstead(*numbers) : Outcome(numbers.refusal());
    if (!refusal) return;
    showContainers();
    m_words->setText(told(*refusal));
    tellWords();
}

void PlacingBar::refresh() {
    const bool active = m_hand.isActive();
    setVisible(active);
    if (!active) {
        m_told.clear();
        return;
    }
    const bool asking = m_hand.state() == PlacingHand::State::Asking;
    m_title->setText(m_hand.title());
    m_title->setToolTip(m_hand.title());
    m_words->setText(m_hand.words().join(u' '));
    m_turn->setVisible(m_hand.suitability()->carried().turnable);
    m_turn->setEnabled(!asking);
    m_containers->setEnabled(!asking);
    m_place->setText(asking ? tr("Move them") : tr("Put down"));
    m_place->setEnabled(asking || m_hand.fits());
    m_back->setText(asking ? tr("Leave them") : tr("Put back"));
    tellWords();
}

void PlacingBar::tellWords() {
    const QString words = m_title->text() + QStringLiteral(". ") + m_words->text();
    m_words->setAccessibleName(words);
    if (words == m_told) return;
    m_told = words;
    QAccessibleEvent said(m_words, QAccessible::Alert);
    QAccessible::updateAccessibility(&said);
}

} // namespace warmbench::ui
